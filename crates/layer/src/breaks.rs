//! Pages and lines of parts that somebody has asked to begin at a bar.
//!
//! They are kept apart from the score and from every layer, so that they outlive both: a break knows its part, its bar and what
//! sounds around it. In another version of the score it is found where most of that sounds again.

use std::collections::{BTreeMap, BTreeSet};

use arcata_languages::{SaidPlace, Saying};
use arcata_score::{Length, NoteKind, Score};
use sha2::{Digest as _, Sha256};

use crate::address::Addresses;

/// Bars before a break, and as many from it on, by which it is found again (rule of thumb).
const AROUND: u32 = 4;
/// What a bar counts that sounds as it did, and one of which only the rhythm is as it was: it was transposed, or notes were
/// corrected (rule of thumb).
const SOUNDS: u32 = 3;
/// See [`SOUNDS`] (rule of thumb).
const RHYTHM: u32 = 1;
/// How often the bar counts that is to begin: a page is asked for what it begins with (rule of thumb).
const BEGINS: u32 = 5;
/// The share of what all bars around count that is wanted: with less than a third the music is another (rule of thumb).
const SHARE: u32 = 3;

/// What is to begin at a bar.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum BreakOpening {
    /// A line of music.
    Line,
    /// A page.
    Page,
}

/// A break that somebody has asked for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct AskedBreak {
    /// The part, as layers name it.
    pub part: String,
    /// The bar as printed.
    pub bar: String,
    /// The bar by position in the file, from 1.
    pub bar_ordinal: u32,
    /// What begins with it.
    pub begins: BreakOpening,
    /// Sums of the bars around it, four before and four from it on: of what sounds, and behind a point of the rhythm alone. A
    /// bar that there is not is a dash.
    pub around: Vec<String>,
}

/// Where a break is in a score.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BreakPlace {
    /// Where it was asked for; the bar's index.
    Here(u32),
    /// At another bar: the music around it is there now.
    Moved(u32),
    /// The first bar: nothing can break before it.
    First,
    /// Nowhere: the music around it is not in the part any more.
    OtherMusic,
    /// Nowhere: no part bears that name.
    NoPart,
}

/// The breaks of one part in a score; bars are indices.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct PartBreaks {
    /// Bars that are to begin a page.
    pub pages: BTreeSet<u32>,
    /// Bars that are to begin a line.
    pub lines: BTreeSet<u32>,
}

impl PartBreaks {
    /// How many there are.
    #[must_use]
    pub fn count(&self) -> usize {
        self.pages.len() + self.lines.len()
    }
}

/// Breaks that somebody has asked for, by part and bar.
///
/// ```
/// use arcata_layer::{Addresses, AskedBreaks, BreakOpening, BreakPlace};
/// # let read = |text: &str| {
/// #     let text = arcata_testkit::musicxml(text).into_bytes();
/// #     let document = arcata_xml::Document::parse(text, &Default::default()).expect("well-formed");
/// #     arcata_score::read(&document)
/// # };
/// let score = read("viola: 1/4 C4 D4 E4 F4 | G4 A4 B4 C5 | 1/2 D5 C5 | 1/1 G4");
/// let mut asked = AskedBreaks::default();
/// asked.ask(&Addresses::new(&score), (0, 2), Some(BreakOpening::Page))?;
/// // A bar more at the beginning.
/// let longer = read("viola: 1/1 C5 | 1/4 C4 D4 E4 F4 | G4 A4 B4 C5 | 1/2 D5 C5 | 1/1 G4");
/// let places = asked.places(&Addresses::new(&longer));
/// assert_eq!(places[0].1, BreakPlace::Moved(3));
/// # Ok::<(), String>(())
/// ```
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct AskedBreaks {
    /// By part and bar.
    pub(crate) breaks: Vec<AskedBreak>,
}

impl AskedBreaks {
    /// Whether nothing is asked for.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.breaks.is_empty()
    }

    /// The breaks, by part and bar.
    #[must_use]
    pub fn all(&self) -> &[AskedBreak] {
        &self.breaks
    }

    /// Asks for a break before a bar of a part (indices), in the place of what is asked there; without an opening what is asked
    /// there is taken back.
    ///
    /// # Errors
    /// A part or a bar that there is not, the first bar, or a break to be taken back that is not there; in words.
    pub fn ask(
        &mut self,
        addresses: &Addresses<'_>,
        (part, bar): (usize, u32),
        begins: Option<BreakOpening>,
    ) -> Result<(), String> {
        let score = addresses.score();
        let name = addresses.part_keys().get(part).ok_or("there is no such part")?;
        let label = score.bars.get(bar as usize).ok_or("there is no such bar")?.label.clone();
        if bar == 0 {
            return Err("a part begins with its first bar: there is nothing to break before it".to_owned());
        }
        let before = self.breaks.len();
        let finder = BreakFinder::of(self, addresses, Some(part));
        let there = |asked: &AskedBreak| finder.bar(asked) == Some((part, bar));
        self.breaks.retain(|asked| !there(asked));
        let Some(begins) = begins else {
            let taken = self.breaks.len() < before;
            return if taken { Ok(()) } else { Err("no break was asked for there".to_owned()) };
        };
        self.breaks.push(AskedBreak {
            part: name.clone(),
            bar: label,
            bar_ordinal: bar + 1,
            begins,
            around: BarSums::of(score, part).around(bar),
        });
        self.put_in_order();
        Ok(())
    }

    pub(crate) fn put_in_order(&mut self) {
        self.breaks.sort_by(|one, other| {
            (&one.part, one.bar_ordinal, one.begins).cmp(&(&other.part, other.bar_ordinal, other.begins))
        });
    }

    /// Where each break is in a score.
    #[must_use]
    pub fn places(&self, addresses: &Addresses<'_>) -> Vec<(&AskedBreak, BreakPlace)> {
        let finder = BreakFinder::of(self, addresses, None);
        self.breaks.iter().map(|asked| (asked, finder.place(asked))).collect()
    }

    /// The bars of a part (indices) that are to begin a line or a page; of two breaks that have come to one bar the page counts.
    #[must_use]
    pub fn in_part(&self, addresses: &Addresses<'_>, part: usize) -> PartBreaks {
        let finder = BreakFinder::of(self, addresses, Some(part));
        let mut found = PartBreaks::default();
        for asked in &self.breaks {
            let Some((_, bar)) = finder.bar(asked).filter(|(of, _)| *of == part) else { continue };
            match asked.begins {
                BreakOpening::Page => found.pages.insert(bar),
                BreakOpening::Line => found.lines.insert(bar),
            };
        }
        found.lines.retain(|bar| !found.pages.contains(bar));
        found
    }

    /// What is to be told of the breaks of a part in a score, or, without a part, of those in parts that it does not have: which
    /// stand at another bar, and which cannot be made (these with `true`).
    #[must_use]
    pub fn told(&self, addresses: &Addresses<'_>, part: Option<usize>) -> Vec<(Saying, bool)> {
        let finder = BreakFinder::of(self, addresses, part);
        let of_part = self.breaks.iter().filter(|asked| addresses.part(&asked.part) == part);
        let told = of_part.filter_map(|asked| Some((finder.said(asked)?, finder.bar(asked).is_none())));
        told.collect()
    }

    /// The same breaks by the bars of another version of the score. What is not found stays as it was asked for.
    #[must_use]
    pub fn carried(&self, addresses: &Addresses<'_>) -> Self {
        let finder = BreakFinder::of(self, addresses, None);
        let carry = |asked: &AskedBreak| match finder.bar(asked) {
            Some((part, bar)) => AskedBreak {
                bar: addresses.score().bar_label(bar).to_owned(),
                bar_ordinal: bar + 1,
                around: finder.sums.get(&part).map(|sums| sums.around(bar)).unwrap_or_default(),
                ..asked.clone()
            },
            None => asked.clone(),
        };
        let mut carried = Self { breaks: self.breaks.iter().map(carry).collect() };
        carried.put_in_order();
        carried
    }
}

/// Finds breaks in a score.
struct BreakFinder<'a> {
    addresses: &'a Addresses<'a>,
    /// By the index of the part; of those that a break is asked for in.
    sums: BTreeMap<usize, BarSums>,
}

impl<'a> BreakFinder<'a> {
    /// For the breaks of one part, or of all.
    fn of(asked: &AskedBreaks, addresses: &'a Addresses<'a>, only: Option<usize>) -> Self {
        let mut sums = BTreeMap::new();
        let parts = asked.breaks.iter().filter_map(|asked| addresses.part(&asked.part));
        for part in parts.filter(|part| only.is_none_or(|only| only == *part)) {
            sums.entry(part).or_insert_with(|| BarSums::of(addresses.score(), part));
        }
        Self { addresses, sums }
    }

    /// The bar whose surroundings sound most like those of the break; of several the nearest to where it was.
    fn place(&self, asked: &AskedBreak) -> BreakPlace {
        let sums = self.addresses.part(&asked.part).and_then(|part| self.sums.get(&part));
        let Some(sums) = sums else { return BreakPlace::NoPart };
        let was = asked.bar_ordinal.saturating_sub(1);
        let bars = u32::try_from(sums.0.len()).unwrap_or(u32::MAX);
        let ranked = (0..bars)
            .map(|bar| (sums.likeness(bar, &asked.around), std::cmp::Reverse((bar.abs_diff(was), bar)), bar));
        match ranked.max().filter(|(likeness, ..)| likeness * SHARE >= most(&asked.around)) {
            None => BreakPlace::OtherMusic,
            Some((.., 0)) => BreakPlace::First,
            Some((.., bar)) if bar == was => BreakPlace::Here(bar),
            Some((.., bar)) => BreakPlace::Moved(bar),
        }
    }

    /// Part and bar (indices), where it can be made.
    fn bar(&self, asked: &AskedBreak) -> Option<(usize, u32)> {
        match self.place(asked) {
            BreakPlace::Here(bar) | BreakPlace::Moved(bar) => Some((self.addresses.part(&asked.part)?, bar)),
            _ => None,
        }
    }

    fn said(&self, asked: &AskedBreak) -> Option<Saying> {
        let begins = if asked.begins == BreakOpening::Page { "page" } else { "line" };
        let said = |key: &'static str| {
            Saying::new(key).choosing("begins", begins).with("bar", SaidPlace::bar(&asked.bar))
        };
        Some(match self.place(asked) {
            BreakPlace::Here(_) => return None,
            BreakPlace::Moved(bar) => {
                let score = self.addresses.score();
                let now = SaidPlace::bar(score.bar_label(bar)).of_movement(score.movement_said(bar));
                said("break-moved").with("now", now)
            }
            BreakPlace::First => said("break-first"),
            BreakPlace::OtherMusic => said("break-other-music"),
            BreakPlace::NoPart => said("break-no-part").quoting("part", asked.part.clone()),
        })
    }
}

/// What sounds in each bar of a part, in short.
struct BarSums(Vec<String>);

impl BarSums {
    fn of(score: &Score, part: usize) -> Self {
        let mut told: Vec<(Sha256, Sha256)> = score.bars.iter().map(|bar| begun(bar.length)).collect();
        let notes = score.parts.get(part).map_or(&[][..], |part| &part.notes);
        let mut played: Vec<_> = notes
            .iter()
            .filter(|note| !note.pitch.is_rest() && note.kind != NoteKind::Cue)
            .map(|note| (note.bar, note.onset, note.pitch.cents(), note.length))
            .collect();
        // Voices of a staff may change places: what sounds stays the same.
        played.sort_unstable();
        for (bar, onset, cents, length) in played {
            let Some((sound, rhythm)) = told.get_mut(bar as usize) else { continue };
            let time = format!("{} {length};", score.offset_in_bar(onset, bar));
            sound.update(format!("{cents:?} {time}"));
            rhythm.update(time);
        }
        let short = |sum: Sha256| -> String {
            sum.finalize().iter().take(3).map(|byte| format!("{byte:02x}")).collect()
        };
        Self(told.into_iter().map(|(sound, rhythm)| format!("{}.{}", short(sound), short(rhythm))).collect())
    }

    fn around(&self, bar: u32) -> Vec<String> {
        let at = |index: i64| {
            let sum = usize::try_from(index).ok().and_then(|index| self.0.get(index));
            sum.cloned().unwrap_or_else(|| "-".to_owned())
        };
        let (bar, around) = (i64::from(bar), i64::from(AROUND));
        (bar - around..bar + around).map(at).collect()
    }

    fn likeness(&self, bar: u32, around: &[String]) -> u32 {
        let rhythm = |sum: &str| sum.split_once('.').map(|(_, rhythm)| rhythm.to_owned());
        let alike = |(place, (now, was)): (u32, (&String, &String))| {
            let counts = match now == was {
                true => SOUNDS,
                false if rhythm(now).is_some() && rhythm(now) == rhythm(was) => RHYTHM,
                false => 0,
            };
            counts * weight(place, was)
        };
        (0..).zip(self.around(bar).iter().zip(around)).map(alike).sum()
    }
}

/// How much a bar counts among those around a break.
fn weight(place: u32, sum: &str) -> u32 {
    match (sum, place) {
        ("-", _) => 0,
        (_, AROUND) => BEGINS,
        _ => 1,
    }
}

/// What the bars around a break count where all sound as they did.
fn most(around: &[String]) -> u32 {
    (0..).zip(around).map(|(place, sum)| SOUNDS * weight(place, sum)).sum()
}

fn begun(length: Length) -> (Sha256, Sha256) {
    let begun = Sha256::new_with_prefix(format!("{length};"));
    (begun.clone(), begun)
}

#[cfg(test)]
mod tests;
