//! From one part to all that match.
//!
//! What moves in the same rhythm under the same slurs for at least a bar is bowed alike (violins and violas
//! strictly; cellos and basses may mirror); so are parts that a planner found to go together, though a few of
//! their notes differ. Entries are proposed for the other parts, and for passages
//! elsewhere that repeat the music; nothing is written by itself.

mod onsets;
mod spreader;

use std::collections::BTreeMap;
use std::fmt;
use std::ops::{Range, RangeInclusive};

use arcata_languages::Saying;
use arcata_score::Score;

use crate::address::Addresses;
use crate::model::{Address, Entry, Layer, Mark, NotReached};
use onsets::{Onset, onsets};
use spreader::Spreader;

/// What is to be spread.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct SpreadChoice {
    /// Index of the part that entries are taken from.
    pub from: usize,
    /// Bars (indices) that entries are taken from; all where it is nothing.
    pub bars: Option<RangeInclusive<u32>>,
    /// Indices of the parts that entries go to; all bowed ones where it is nothing.
    pub to: Option<Vec<usize>>,
    /// How far they reach.
    pub reach: SpreadReach,
    /// What cellos and basses get.
    pub low_strings: LowStrings,
    /// Parts that go together though not every note of theirs does, as a planner finds them.
    pub together: Vec<GoingTogether>,
}

/// Parts that play one rhythm for some bars, but for a few notes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct GoingTogether {
    /// Indices of the parts.
    pub parts: Vec<usize>,
    /// Indices of the bars, from the first to one past the last.
    pub bars: Range<u32>,
}

/// The keys of all reasons for which an entry does not go to a part.
pub(crate) const REASONS: [&str; 7] = [
    "spread-other-passage",
    "spread-nothing-played",
    "spread-other-slurs",
    "spread-other-rhythm",
    "spread-no-stroke",
    "spread-said-otherwise",
    "spread-slur-end-lost",
];

/// How far a bowing reaches.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum SpreadReach {
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
    /// Rhythm and slurs but for some notes.
    Mostly,
}

/// An entry proposed for another note.
#[derive(Clone, Debug, PartialEq)]
pub struct Proposed {
    /// The entry.
    pub entry: Entry,
    /// The note that it comes from.
    pub from: Address,
    /// How the two bars match.
    pub by: Match,
}

/// An entry that was not carried over to a part, and why.
#[derive(Clone, Debug, PartialEq)]
pub struct NotSpread {
    /// The entry.
    pub from: Address,
    /// What it says.
    pub mark: Mark,
    /// The part that it does not go to.
    pub part: String,
    /// Index of the bar.
    pub bar: u32,
    /// Why.
    pub why: Saying,
}

/// What spreading proposes.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Spread {
    /// New entries, in order.
    pub proposed: Vec<Proposed>,
    /// What does not go where it was asked to go.
    pub not_spread: Vec<NotSpread>,
    /// The part that was spread.
    pub from: String,
    /// The parts that it was asked to reach.
    pub to: Vec<String>,
    /// The bars (indices) that were asked for; all where it is nothing.
    pub bars: Option<RangeInclusive<u32>>,
}

impl Spread {
    /// Adds what is proposed to the layer, which also remembers what did not reach a part; what it
    /// remembered of the same parts and bars goes.
    pub fn put_into(&self, layer: &mut Layer, score: &Score) {
        layer.entries.extend(self.proposed.iter().map(|proposed| proposed.entry.clone()));
        layer.not_reached.retain(|left| {
            let asked = |bars: &RangeInclusive<u32>| bars.contains(&(left.bar_ordinal.saturating_sub(1)));
            left.from != self.from || !self.to.contains(&left.part) || !self.bars.as_ref().is_none_or(asked)
        });
        layer.not_reached.extend(self.by_bar(score));
        layer.put_in_order();
    }

    /// What did not reach a part, bar by bar.
    #[must_use]
    pub fn by_bar(&self, score: &Score) -> Vec<NotReached> {
        let mut counts: BTreeMap<(&str, u32, &Saying), u32> = BTreeMap::new();
        for left in &self.not_spread {
            *counts.entry((left.part.as_str(), left.bar, &left.why)).or_default() += 1;
        }
        let reached = counts.into_iter().map(|((part, bar, why), marks)| NotReached {
            from: self.from.clone(),
            part: part.to_owned(),
            bar_ordinal: bar + 1,
            bar: score.bars.get(bar as usize).map(|bar| bar.label.clone()).unwrap_or_default(),
            marks,
            why: why.to_string(),
        });
        reached.collect()
    }
}

impl fmt::Display for Match {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(match self {
            Self::Unison => "unison",
            Self::Octave => "octave",
            Self::Parallel => "same steps",
            Self::Rhythm => "same rhythm and slurs",
            Self::Mostly => "same rhythm and slurs but for some notes",
        })
    }
}

impl Proposed {
    /// As it is said where the score is known: by bar and beat.
    #[must_use]
    pub fn said(&self, addresses: &Addresses<'_>) -> String {
        let (place, part) = (&self.entry.place, &self.entry.place.part);
        let from = addresses.said(&self.from);
        let mark = self.entry.mark.words_in(addresses, part);
        format!("{}: {mark} (as {from}, {})", addresses.said(place), self.by)
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

/// Proposes the entries of one part for all that match it.
///
/// ```
/// use arcata_layer::{Addresses, Entry, Layer, Mark, SpreadChoice, spread};
/// # let text = arcata_testkit::musicxml("violin: 1/4 C5 D5 E5 F5\nviola: 1/4 C4 D4 E4 F4");
/// # let document = arcata_xml::Document::parse(text.into_bytes(), &Default::default()).unwrap();
/// let score = arcata_score::read(&document);
/// let place = Addresses::new(&score).place(0, arcata_score::NoteId(2)).unwrap();
/// let mut layer = Layer { entries: vec![Entry::new(place, Mark::Down)], ..Layer::default() };
/// let found = spread(&layer, &score, &SpreadChoice::default());
/// assert_eq!(found.proposed[0].entry.place.part, "viola");
/// assert_eq!(found.proposed[0].by.to_string(), "octave");
/// found.put_into(&mut layer, &score);
/// assert_eq!(layer.entries.len(), 2);
/// ```
#[must_use]
pub fn spread(layer: &Layer, score: &Score, choice: &SpreadChoice) -> Spread {
    let addresses = Addresses::new(score);
    let mut spread = Spread { bars: choice.bars.clone(), ..Spread::default() };
    let Some(from_part) = score.parts.get(choice.from) else { return spread };
    let bars: Vec<Vec<Vec<Onset>>> = score.parts.iter().map(|part| onsets(score, part)).collect();
    let bowed = (0..score.parts.len()).filter(|part| score.parts[*part].instrument.is_bowed());
    let targets: Vec<usize> = choice.to.clone().unwrap_or_else(|| bowed.collect());
    let keys = addresses.part_keys();
    spread.from.clone_from(&keys[choice.from]);
    spread.to = targets.iter().filter_map(|part| keys.get(*part).cloned()).collect();
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
