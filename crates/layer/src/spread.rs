//! From one part to all that match.
//!
//! What moves in the same rhythm under the same slurs for at least a bar is bowed alike (design: violins and
//! violas strictly; cellos and basses may mirror). Entries are proposed for the other parts, and for passages
//! elsewhere that repeat the music; nothing is written by itself.

use std::collections::BTreeMap;
use std::fmt;
use std::ops::RangeInclusive;

use arcata_score::{BowDirection, ChordRole, Instrument, Length, NoteId, NoteKind, Part, Score, TieEnd};

use crate::address::Addresses;
use crate::model::{Entry, Layer, Mark, Place, Spot};

/// What is to be spread.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SpreadChoice {
    /// Index of the part that entries are taken from.
    pub from: usize,
    /// Bars (indices) that entries are taken from; all where it is nothing.
    pub bars: Option<RangeInclusive<u32>>,
    /// Indices of the parts that entries go to; all bowed ones where it is nothing.
    pub to: Option<Vec<usize>>,
    /// How far they reach.
    pub reach: Reach,
    /// What cellos and basses get.
    pub low_strings: LowStrings,
}

/// How far a bowing reaches.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Reach {
    /// The same bars of other parts.
    #[default]
    SameBars,
    /// These, and passages of at least two bars anywhere that repeat the music note for note, at any pitch.
    EveryPassage,
}

/// What cellos and basses get.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum LowStrings {
    /// The same bows.
    #[default]
    Same,
    /// The mirror image: down for up.
    Mirrored,
}

/// How a bar matches the one that its bowing comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Match {
    /// The same notes.
    Unison,
    /// The same notes in another octave.
    Octave,
    /// The same steps at another pitch.
    Parallel,
    /// Only the rhythm and the slurs.
    Rhythm,
}

/// An entry proposed for another note.
#[derive(Clone, Debug, PartialEq)]
pub struct Proposed {
    /// The entry.
    pub entry: Entry,
    /// The note that it comes from.
    pub from: Place,
    /// How the two bars match.
    pub by: Match,
}

/// An entry that was not carried over to a part, and why.
#[derive(Clone, Debug, PartialEq)]
pub struct NotSpread {
    /// The entry.
    pub from: Place,
    /// What it says.
    pub mark: Mark,
    /// The part that it does not go to.
    pub part: String,
    /// Why.
    pub why: &'static str,
}

/// What spreading proposes.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Spread {
    /// New entries, in order.
    pub proposed: Vec<Proposed>,
    /// What does not go where it was asked to go.
    pub not_spread: Vec<NotSpread>,
}

impl fmt::Display for Match {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(match self {
            Self::Unison => "unison",
            Self::Octave => "octave",
            Self::Parallel => "same steps",
            Self::Rhythm => "same rhythm and slurs",
        })
    }
}

impl fmt::Display for Proposed {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{}: {} (as {}, {})", self.entry.place, self.entry.mark.words(), self.from, self.by)
    }
}

impl fmt::Display for NotSpread {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{}, {}: not to {}, {}", self.from, self.mark.words(), self.part, self.why)
    }
}

/// A stroke's beginning in a bar, as the bow sees it.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Onset {
    note: NoteId,
    offset: Length,
    length: Length,
    cents: Option<i32>,
    /// Whether a slur or a tie leads into it.
    led_into: Led,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Led {
    No,
    BySlur,
    ByTie,
}

/// Proposes the entries of one part for all that match it.
#[must_use]
pub fn spread(layer: &Layer, score: &Score, choice: &SpreadChoice) -> Spread {
    let addresses = Addresses::new(score);
    let mut spread = Spread::default();
    let Some(from_part) = score.parts.get(choice.from) else { return spread };
    let bars: Vec<Vec<Vec<Onset>>> = score.parts.iter().map(|part| onsets(score, part)).collect();
    let bowed = (0..score.parts.len()).filter(|part| score.parts[*part].instrument.is_bowed());
    let targets: Vec<usize> = choice.to.clone().unwrap_or_else(|| bowed.collect());
    for entry in &layer.entries {
        let Ok(found) = addresses.find(&entry.place) else { continue };
        let bar = from_part.notes.get(found.note.0 as usize).map_or(0, |note| note.bar);
        if found.part != choice.from || choice.bars.as_ref().is_some_and(|bars| !bars.contains(&bar)) {
            continue;
        }
        let spreader = Spreader { addresses: &addresses, bars: &bars, choice, layer };
        for target in targets.iter().copied().filter(|part| *part < score.parts.len()) {
            spreader.to_part(entry, found.note, bar, target, &mut spread);
        }
    }
    spread
}

struct Spreader<'a, 's> {
    addresses: &'a Addresses<'s>,
    bars: &'a [Vec<Vec<Onset>>],
    choice: &'a SpreadChoice,
    layer: &'a Layer,
}

impl Spreader<'_, '_> {
    fn to_part(&self, entry: &Entry, note: NoteId, bar: u32, part: usize, spread: &mut Spread) {
        let mut reached = false;
        let mut why = "its rhythm or its slurs are others there";
        for other in self.bars_like(bar, part) {
            let Some(by) = self.matching((self.choice.from, bar), (part, other)) else { continue };
            match self.moved(entry, note, (part, other), by) {
                Ok(Some(proposed)) => {
                    match spread.proposed.iter().find(|there| same_note(there, &proposed)) {
                        Some(there) if there.entry.mark == proposed.entry.mark => reached = true,
                        Some(_) => why = "another passage proposes something else there",
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
                why,
            });
        }
    }

    /// The bars of a part that may take the bowing of a bar.
    fn bars_like(&self, bar: u32, part: usize) -> Vec<u32> {
        let mut like = Vec::new();
        if part != self.choice.from {
            like.push(bar);
        }
        if self.choice.reach == Reach::EveryPassage {
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

    /// How two bars match; nothing where they do not, or where nothing is played.
    fn matching(&self, one: (usize, u32), other: (usize, u32)) -> Option<Match> {
        let get = |(part, bar): (usize, u32)| self.bars.get(part)?.get(bar as usize);
        let (one, other) = (get(one)?, get(other)?);
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
        let place =
            self.twin(note, from_bar, (part, bar)).ok_or("its note is no beginning of a bow there")?;
        let place = Place { part: self.addresses.part_keys()[part].clone(), spot: place };
        let mark = self.mark(&entry.mark, from_bar, (part, bar))?;
        let mut moved = Entry::new(place, mark);
        moved.force = entry.force;
        moved.owner.clone_from(&entry.owner);
        let same_question =
            |other: &&Entry| other.place == moved.place && other.mark.question() == moved.mark.question();
        match self.layer.entries.iter().find(same_question) {
            Some(there) if there.mark == moved.mark => Ok(None),
            Some(_) => Err("the layer says something else there"),
            None => Ok(Some(Proposed { entry: moved, from: entry.place.clone(), by })),
        }
    }

    /// The note of a bar that stands where another stands in its bar.
    fn twin(&self, note: NoteId, from_bar: u32, (part, bar): (usize, u32)) -> Option<Spot> {
        let here = self.bars[self.choice.from].get(from_bar as usize)?;
        let index = here.iter().position(|onset| onset.note == note)?;
        let there = self.bars[part].get(bar as usize)?.get(index)?;
        self.addresses.spot(part, there.note)
    }

    fn mark(&self, mark: &Mark, from_bar: u32, (part, bar): (usize, u32)) -> Result<Mark, &'static str> {
        let low =
            matches!(self.addresses.score().parts[part].instrument, Instrument::Cello | Instrument::Bass);
        let mirror = low && self.choice.low_strings == LowStrings::Mirrored;
        let way = |way: BowDirection| if mirror { way.other() } else { way };
        let end = |spot: &Spot| {
            let lost = "the other end of its slur has no match there";
            let found = self.addresses.find_in(self.choice.from, spot).map_err(|_| lost)?;
            let end_bar = self.addresses.score().parts[self.choice.from].note(found.note).bar;
            let target = (bar + end_bar).checked_sub(from_bar).ok_or(lost)?;
            self.matching((self.choice.from, end_bar), (part, target)).ok_or(lost)?;
            self.twin(found.note, end_bar, (part, target)).ok_or(lost)
        };
        Ok(match mark {
            Mark::Down => Mark::of(way(BowDirection::Down)),
            Mark::Up => Mark::of(way(BowDirection::Up)),
            Mark::Hook { bow } => Mark::Hook { bow: bow.map(way) },
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

/// The onsets of every bar of a part's first sounding voice there, chords once, grace notes aside.
fn onsets(score: &Score, part: &Part) -> Vec<Vec<Onset>> {
    let mut bars: Vec<BTreeMap<(Length, NoteId), Onset>> = vec![BTreeMap::new(); score.bars.len()];
    let mut voices: Vec<Option<u16>> = vec![None; score.bars.len()];
    let slurred = slurred_into(part);
    for (index, (note, id)) in part.notes.iter().zip(0..).enumerate() {
        let plain = note.kind == NoteKind::Ordinary && note.chord == ChordRole::Main && !note.pitch.is_rest();
        let Some(bar) = bars.get_mut(note.bar as usize).filter(|_| plain) else { continue };
        if *voices[note.bar as usize].get_or_insert(note.voice) != note.voice {
            continue;
        }
        let offset = score.offset_in_bar(note.onset, note.bar);
        let led_into = match (note.tie.from_before, slurred[index]) {
            (TieEnd::Joined(_), _) => Led::ByTie,
            (_, true) => Led::BySlur,
            _ => Led::No,
        };
        let cents = note.pitch.cents().map(|cents| cents + part.transpose_cents);
        let onset = Onset { note: NoteId(id), offset, length: note.length, cents, led_into };
        bar.insert((offset, NoteId(id)), onset);
    }
    bars.into_iter().map(|bar| bar.into_values().collect()).collect()
}

/// For each note whether a slur leads into it.
fn slurred_into(part: &Part) -> Vec<bool> {
    let mut led = vec![false; part.notes.len()];
    let mut by_onset: Vec<usize> = (0..part.notes.len()).collect();
    by_onset.sort_by_key(|index| (part.notes[*index].onset, *index));
    for slur in &part.slurs {
        let (start, end) = (part.note(slur.start), part.note(slur.end));
        let from = by_onset.partition_point(|index| part.notes[*index].onset <= start.onset);
        let under = by_onset[from..].iter().take_while(|index| part.notes[**index].onset <= end.onset);
        for index in under.filter(|index| part.notes[**index].voice == start.voice) {
            led[*index] = true;
        }
    }
    led
}
