//! One entry and the parts and passages that it may go to.

use arcata_languages::Saying;
use arcata_score::{BowDirection, Instrument, NoteId};

use super::onsets::Onset;
use super::{LowStrings, Match, NotSpread, Proposed, Spread, SpreadChoice, SpreadReach};
use crate::address::Addresses;
use crate::model::{Address, Entry, Layer, Mark, Spot};

pub(super) struct Spreader<'a, 's> {
    pub(super) addresses: &'a Addresses<'s>,
    pub(super) bars: &'a [Vec<Vec<Onset>>],
    pub(super) choice: &'a SpreadChoice,
    pub(super) layer: &'a Layer,
}

impl Spreader<'_, '_> {
    pub(super) fn to_part(&self, entry: &Entry, note: NoteId, bar: u32, part: usize, spread: &mut Spread) {
        let mut reached = false;
        let mut why = self.difference((self.choice.from, bar), (part, bar));
        for other in self.bars_like(bar, part) {
            let Some(by) = self.matching((self.choice.from, bar), (part, other)) else { continue };
            match self.moved(entry, note, (part, other), by) {
                Ok(Some(proposed)) => {
                    match spread.proposed.iter().find(|there| same_note(there, &proposed)) {
                        Some(there) if there.entry.mark == proposed.entry.mark => reached = true,
                        Some(_) => why = "spread-other-passage",
                        None => {
                            spread.proposed.push(proposed);
                            reached = true;
                        }
                    }
                }
                Ok(None) => reached = true,
                Err(said) => why = said,
            }
        }
        if !reached && part != self.choice.from {
            let part = self.addresses.part_keys()[part].clone();
            spread.not_spread.push(NotSpread {
                from: entry.place.clone(),
                mark: entry.mark.clone(),
                part,
                bar,
                why: Saying::new(why),
            });
        }
    }

    /// The bars of a part that may take the bowing of a bar.
    fn bars_like(&self, bar: u32, part: usize) -> Vec<u32> {
        let mut like = Vec::new();
        if part != self.choice.from {
            like.push(bar);
        }
        if self.choice.reach == SpreadReach::EveryPassage {
            let count = u32::try_from(self.bars[part].len()).unwrap_or(u32::MAX);
            like.extend((0..count).filter(|other| *other != bar && self.is_passage(bar, part, *other)));
        }
        like
    }

    /// Whether a bar and a neighbour of it repeat a bar and its neighbour, step for step.
    fn is_passage(&self, bar: u32, part: usize, other: u32) -> bool {
        let repeats = |by: i64| {
            let (one, two) = (i64::from(bar) + by, i64::from(other) + by);
            let (Ok(one), Ok(two)) = (u32::try_from(one), u32::try_from(two)) else { return false };
            self.matching((self.choice.from, one), (part, two)).is_some_and(|by| by <= Match::Parallel)
        };
        repeats(0) && (repeats(1) || repeats(-1))
    }

    fn onsets(&self, (part, bar): (usize, u32)) -> &[Onset] {
        self.bars.get(part).and_then(|bars| bars.get(bar as usize)).map_or(&[], Vec::as_slice)
    }

    /// In what two bars differ.
    fn difference(&self, one: (usize, u32), other: (usize, u32)) -> &'static str {
        let rhythm = |bar| self.onsets(bar).iter().map(|onset| (onset.offset, onset.length));
        if self.onsets(other).is_empty() {
            "spread-nothing-played"
        } else if rhythm(one).eq(rhythm(other)) {
            "spread-other-slurs"
        } else {
            "spread-other-rhythm"
        }
    }

    /// How two bars match; nothing where they do not, or where nothing is played.
    fn matching(&self, one: (usize, u32), other: (usize, u32)) -> Option<Match> {
        self.matching_wholly(one, other).or_else(|| {
            let together = self.choice.together.iter().any(|group| {
                one.1 == other.1
                    && group.bars.contains(&one.1)
                    && [one.0, other.0].iter().all(|part| group.parts.contains(part))
            });
            together.then_some(Match::Mostly)
        })
    }

    fn matching_wholly(&self, one: (usize, u32), other: (usize, u32)) -> Option<Match> {
        let (one, other) = (self.onsets(one), self.onsets(other));
        let alike = |one: &Onset, other: &Onset| {
            one.offset == other.offset && one.length == other.length && one.led_into == other.led_into
        };
        if one.is_empty() || one.len() != other.len() || !one.iter().zip(other).all(|(a, b)| alike(a, b)) {
            return None;
        }
        let shifts = one.iter().zip(other).map(|(one, other)| Some(other.cents? - one.cents?));
        let shifts: Vec<Option<i32>> = shifts.collect();
        let same = shifts.windows(2).all(|pair| pair[0] == pair[1]);
        Some(match shifts.first().copied().flatten() {
            Some(0) if same => Match::Unison,
            Some(shift) if same && shift % 1200 == 0 => Match::Octave,
            Some(_) if same => Match::Parallel,
            _ => Match::Rhythm,
        })
    }

    /// An entry on the note of another bar; nothing where it stands there already.
    fn moved(
        &self,
        entry: &Entry,
        note: NoteId,
        (part, bar): (usize, u32),
        by: Match,
    ) -> Result<Option<Proposed>, &'static str> {
        let from_bar = self.addresses.score().parts[self.choice.from].note(note).bar;
        let place = self.twin(note, from_bar, (part, bar)).ok_or("spread-no-stroke")?;
        let place = Address { part: self.addresses.part_keys()[part].clone(), spot: place };
        let mark = self.mark(&entry.mark, from_bar, (part, bar))?;
        let mut moved = Entry::new(place, mark);
        moved.force = entry.force;
        moved.owner.clone_from(&entry.owner);
        let same_question =
            |other: &&Entry| other.place == moved.place && other.mark.question() == moved.mark.question();
        match self.layer.entries.iter().find(same_question) {
            Some(there) if there.mark == moved.mark => Ok(None),
            Some(_) => Err("spread-said-otherwise"),
            None => Ok(Some(Proposed { entry: moved, from: entry.place.clone(), by })),
        }
    }

    /// The note of a bar that stands where another stands in its bar.
    fn twin(&self, note: NoteId, from_bar: u32, (part, bar): (usize, u32)) -> Option<Spot> {
        let here = self.onsets((self.choice.from, from_bar)).iter().find(|onset| onset.note == note)?;
        let mut there = self.onsets((part, bar)).iter();
        let twin = there.find(|onset| (onset.offset, onset.led_into) == (here.offset, here.led_into))?;
        self.addresses.spot(part, twin.note)
    }

    fn mark(&self, mark: &Mark, from_bar: u32, (part, bar): (usize, u32)) -> Result<Mark, &'static str> {
        let low =
            matches!(self.addresses.score().parts[part].instrument, Instrument::Cello | Instrument::Bass);
        let mirror = low && self.choice.low_strings == LowStrings::Mirrored;
        let way = |way: BowDirection| if mirror { way.other() } else { way };
        let end = |spot: &Spot| {
            let lost = "spread-slur-end-lost";
            let found = self.addresses.find_in(self.choice.from, spot).map_err(|_| lost)?;
            let end_bar = self.addresses.score().parts[self.choice.from].note(found.note).bar;
            let target = (bar + end_bar).checked_sub(from_bar).ok_or(lost)?;
            self.matching((self.choice.from, end_bar), (part, target)).ok_or(lost)?;
            self.twin(found.note, end_bar, (part, target)).ok_or(lost)
        };
        Ok(match mark {
            Mark::Down => Mark::of(way(BowDirection::Down)),
            Mark::Up => Mark::of(way(BowDirection::Up)),
            Mark::Double { first } => Mark::Double { first: way(*first) },
            Mark::Hook { bow, sign } => Mark::Hook { bow: bow.map(way), sign: *sign },
            Mark::Retake { bow } => Mark::Retake { bow: bow.map(way) },
            Mark::SlurAdded { to } => Mark::SlurAdded { to: end(to)? },
            Mark::SlurRemoved { to } => Mark::SlurRemoved { to: end(to)? },
            Mark::SlurMoved { to, new_from, new_to } => Mark::SlurMoved {
                to: end(to)?,
                new_from: new_from.as_ref().map(end).transpose()?,
                new_to: new_to.as_ref().map(end).transpose()?,
            },
            other => other.clone(),
        })
    }
}

/// Whether two proposals answer the same question about the same note.
fn same_note(one: &Proposed, other: &Proposed) -> bool {
    one.entry.place == other.entry.place && one.entry.mark.question() == other.entry.mark.question()
}
