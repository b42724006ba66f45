//! What is known only once every part has been read: lengths, onsets, ties, strokes, bar numbers.

use std::collections::BTreeMap;

use crate::error::FixtureRead;
use crate::model::{
    BarFill, BarStyle, FixtureBar, FixtureChange, FixtureEvent, FixtureItem, FixturePart, FixtureSound,
    Fraction, Header, Leave, WrittenPitch,
};

pub(crate) fn settle(parts: &mut [FixturePart], header: &Header) -> FixtureRead<()> {
    check_bar_counts(parts, header)?;
    let Some((first, others)) = parts.split_first_mut() else { return Ok(()) };
    for part in others {
        copy_from_first(&first.bars, part);
    }
    for part in parts {
        number_bars(&mut part.bars, header);
        lay_out(part, header)?;
        tie(part, header)?;
        find_strokes(part);
    }
    Ok(())
}

fn check_bar_counts(parts: &[FixturePart], header: &Header) -> FixtureRead<()> {
    let wanted = parts.first().map_or(0, |part| part.bars.len());
    if header.asks(Leave::Unchecked) {
        return Ok(());
    }
    for part in parts {
        if part.bars.len() != wanted {
            let place = part.bars.last().map(|bar| bar.place.clone()).unwrap_or_default();
            return Err(place.error(format!(
                "{wanted} bars in {} as in {}, not {} (or the header unchecked)",
                part.name,
                parts[0].name,
                part.bars.len()
            )));
        }
    }
    Ok(())
}

/// Metre, key, bar lines and repeats of the first part hold for the others, unless they say otherwise.
fn copy_from_first(first: &[FixtureBar], part: &mut FixturePart) {
    for (theirs, ours) in first.iter().zip(&mut part.bars) {
        ours.repeat_start |= theirs.repeat_start;
        if ours.end == BarStyle::Plain {
            ours.end = theirs.end;
        }
        if ours.fill == BarFill::Full && matches!(theirs.fill, BarFill::Short | BarFill::Unnumbered) {
            ours.fill = theirs.fill;
        }
        ours.ending_start = ours.ending_start.take().or_else(|| theirs.ending_start.clone());
        ours.ending_stop = ours.ending_stop.take().or_else(|| theirs.ending_stop.clone());
        let copied: Vec<FixtureItem> = opening_changes(theirs)
            .filter(|change| matches!(change, FixtureChange::Time(_) | FixtureChange::Key(_)))
            .filter(|change| {
                !opening_changes(ours)
                    .any(|own| std::mem::discriminant(own) == std::mem::discriminant(*change))
            })
            .cloned()
            .map(FixtureItem::Change)
            .collect();
        ours.items.splice(0..0, copied);
    }
}

/// Changes before the first event of a bar.
pub(crate) fn opening_changes(bar: &FixtureBar) -> impl Iterator<Item = &FixtureChange> {
    bar.items
        .iter()
        .take_while(|item| !matches!(item, FixtureItem::Event(_) | FixtureItem::Voices(_)))
        .filter_map(|item| match item {
            FixtureItem::Change(change) => Some(change),
            _ => None,
        })
}

fn number_bars(bars: &mut [FixtureBar], header: &Header) {
    let mut number = 0;
    let mut unnumbered = 0;
    for (index, bar) in bars.iter_mut().enumerate() {
        let pickup = index == 0 && header.asks(Leave::Pickup);
        bar.label = if pickup {
            "0".to_owned()
        } else if bar.fill == BarFill::Unnumbered {
            unnumbered += 1;
            format!("X{unnumbered}")
        } else {
            number += 1;
            number.to_string()
        };
    }
}

/// Gives every event its onset and length, and holds every bar to its metre.
fn lay_out(part: &mut FixturePart, header: &Header) -> FixtureRead<()> {
    let mut metre = header.metre.clone();
    let mut note_element = 0;
    for (index, bar) in part.bars.iter_mut().enumerate() {
        for change in opening_changes(bar) {
            if let FixtureChange::Time(time) = change {
                metre = time.clone();
            }
        }
        bar.beat_value = metre.beat_value();
        let full = metre.bar_length();
        let mut walk = SettleWalk { events: &mut part.events, bar: index, full, header, note_element };
        bar.length = walk.items(&bar.items, Fraction::default(), 1)?;
        note_element = walk.note_element;
        let pickup = index == 0 && header.asks(Leave::Pickup);
        check_length(bar, full, pickup, header)?;
    }
    Ok(())
}

/// A bar fills its metre; a pickup is shorter.
fn check_length(bar: &FixtureBar, full: Option<Fraction>, pickup: bool, header: &Header) -> FixtureRead<()> {
    let Some(full) = full.filter(|_| bar.fill == BarFill::Full && !header.asks(Leave::Unchecked)) else {
        return Ok(());
    };
    if bar.length == full || (pickup && bar.length < full) {
        return Ok(());
    }
    let hint = if bar.length < full {
        "the header pickup, or short or unnumbered in the bar, allow less"
    } else {
        "short or unnumbered in the bar, or the header unchecked, allow more"
    };
    Err(bar.place.error(format!(
        "bar {} to last {full}, as its metre says, not {} (in whole notes; {hint})",
        bar.label, bar.length
    )))
}

struct SettleWalk<'a> {
    events: &'a mut [FixtureEvent],
    bar: usize,
    full: Option<Fraction>,
    header: &'a Header,
    note_element: usize,
}

impl SettleWalk<'_> {
    /// Lays the items out from `onset`; returns where they end.
    fn items(&mut self, items: &[FixtureItem], mut onset: Fraction, voice: u32) -> FixtureRead<Fraction> {
        for item in items {
            match item {
                FixtureItem::Event(index) => onset += self.event(*index, onset, voice)?,
                FixtureItem::Voices(voices) => onset = self.voices(voices, onset)?,
                FixtureItem::Direction(..) | FixtureItem::Change(_) => {}
            }
        }
        Ok(onset)
    }

    fn event(&mut self, index: usize, onset: Fraction, voice: u32) -> FixtureRead<Fraction> {
        let event = &mut self.events[index];
        if matches!(event.sound, FixtureSound::BarRest) && self.full.is_none() {
            return Err(event
                .place
                .error("rests with a value: without a metre a bar has no length of its own"));
        }
        let length = event.length_in(self.full.unwrap_or_default());
        let settled = &mut event.settled;
        (settled.bar, settled.onset, settled.length, settled.voice) = (self.bar, onset, length, voice);
        settled.note_element = self.note_element;
        self.note_element += event.note_elements();
        Ok(length)
    }

    fn voices(&mut self, voices: &[Vec<FixtureItem>], onset: Fraction) -> FixtureRead<Fraction> {
        let mut ends = Vec::new();
        for (voice, items) in (1..).zip(voices) {
            ends.push(self.items(items, onset, voice)?);
        }
        let end = ends.iter().max().copied().unwrap_or(onset);
        let even = ends.iter().all(|other| *other == end);
        if even || self.header.asks(Leave::Unchecked) {
            return Ok(end);
        }
        let last = voices.iter().rev().find_map(|voice| last_event(voice)).unwrap_or_default();
        let lengths: Vec<String> = ends.iter().map(|end| (end - onset).to_string()).collect();
        Err(self.events[last].place.error(format!("voices of one length, not {}", lengths.join(" and "))))
    }
}

fn last_event(items: &[FixtureItem]) -> Option<usize> {
    items.iter().rev().find_map(|item| match item {
        FixtureItem::Event(index) => Some(*index),
        _ => None,
    })
}

/// Finds the second note of every tie: the next event of the voice has the same pitch.
fn tie(part: &mut FixturePart, header: &Header) -> FixtureRead<()> {
    let loose = header.asks(Leave::BrokenTies);
    let mut waiting: BTreeMap<u32, (usize, Vec<WrittenPitch>)> = BTreeMap::new();
    for index in 0..part.events.len() {
        if part.events[index].grace.is_some() {
            continue;
        }
        let voice = part.events[index].settled.voice;
        if let Some((from, pitches)) = waiting.remove(&voice) {
            for pitch in pitches {
                let met = meet(&mut part.events[index], pitch, loose);
                if !met && !loose {
                    return Err(part.events[from].place.error(
                        "a tie to the same pitch in the next event of its voice (or the header broken-ties)",
                    ));
                }
            }
        }
        let tied: Vec<WrittenPitch> =
            part.events[index].notes().iter().filter(|note| note.tied_on).map(|note| note.pitch).collect();
        if !tied.is_empty() {
            waiting.insert(voice, (index, tied));
        }
    }
    match waiting.into_values().next() {
        Some((from, _)) if !loose => {
            Err(part.events[from].place.error("a note after the tie (or the header broken-ties)"))
        }
        _ => Ok(()),
    }
}

/// Ends a tie in this event; a loose one may end on another pitch.
fn meet(event: &mut FixtureEvent, pitch: WrittenPitch, loose: bool) -> bool {
    let FixtureSound::Notes(notes) = &mut event.sound else { return false };
    let same = notes.iter().position(|note| note.pitch == pitch);
    let single = (loose && notes.len() == 1).then_some(0);
    match same.or(single) {
        Some(index) => {
            notes[index].tied_from = true;
            true
        }
        None => false,
    }
}

/// Marks the events on which a stroke begins: no tie comes in, no slur is under way, no grace note has begun it.
fn find_strokes(part: &mut FixturePart) {
    let mut open: BTreeMap<u32, u32> = BTreeMap::new();
    let mut begun_by_grace: BTreeMap<u32, bool> = BTreeMap::new();
    for event in &mut part.events {
        let voice = event.settled.voice;
        let under_slur = open.values().any(|slur_voice| *slur_voice == voice);
        let played = !event.notes().is_empty() && !event.is_cue();
        let tied_from = played && event.notes().iter().all(|note| note.tied_from);
        let grace_before = begun_by_grace.remove(&voice).unwrap_or(false);
        event.settled.begins_stroke = played && !under_slur && !tied_from && !grace_before;
        // Grace notes that no slur holds go with the note after them.
        let slurred = under_slur || !event.slur_starts.is_empty();
        if event.grace.is_some() && !slurred {
            begun_by_grace.insert(voice, grace_before || event.settled.begins_stroke);
        }
        for number in &event.slur_stops {
            open.remove(number);
        }
        for number in &event.slur_starts {
            open.insert(*number, voice);
        }
    }
}
