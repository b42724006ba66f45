//! Findings that somebody has set aside, with a reason, in a small file beside the score.

mod read;
mod slurs;

use std::ops::RangeInclusive;

use arcata_score::places::BarName;
use arcata_score::{Length, Score};

use crate::Finding;

pub use read::AsideError;
pub use slurs::{SlurEntry, UnusedSlurEntry};

/// Places that are set aside: a finding in one of them is not reported.
///
/// ```
/// use arcata_review::Aside;
///
/// let aside = Aside::read(
///     "format = \"arcata-aside\"\nversion = 1\n\n\
///      [[aside]]\nrule = \"note-outlasts-bow\"\nbars = \"20-24\"\nreason = \"The section staggers.\"\n",
/// )?;
/// assert_eq!(aside.entries[0].reason, "The section staggers.");
/// assert!(Aside::read("[[aside]]\nrule = \"no-such-rule\"").is_err());
/// # Ok::<(), arcata_review::AsideError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Aside {
    /// In the order of the file.
    pub entries: Vec<AsideEntry>,
    /// What slurs are said to be, in the order of the file.
    pub slurs: Vec<SlurEntry>,
}

/// What one entry sets aside. What it does not name, it does not ask for: an entry with a rule alone sets the
/// rule aside everywhere.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct AsideEntry {
    /// Id of the rule; any rule where it is left out.
    pub rule: Option<String>,
    /// Name or abbreviation of the part, or the section as findings name it.
    pub part: Option<String>,
    /// First and last bar by printed number.
    pub bars: Option<(String, String)>,
    /// The beat, from 1.
    pub beat: Option<Length>,
    /// The movement, from 1, where bar numbers begin anew in a file.
    pub movement: Option<usize>,
    /// Why, in the user's words.
    pub reason: String,
}

/// A finding that was set aside.
#[derive(Clone, Debug, PartialEq)]
pub struct SetAside {
    /// The finding, of one place.
    pub finding: Finding,
    /// Index of the entry that holds it, the first of them.
    pub entry: usize,
}

/// Entries with their bars looked up in one score.
#[derive(Clone, Debug)]
pub(crate) struct AsideIn<'a> {
    aside: &'a Aside,
    score: &'a Score,
    /// For each entry, the bars it means; `None` means all.
    bars: Vec<Option<Vec<RangeInclusive<u32>>>>,
    /// Index of the bar from which findings count theirs.
    first: u32,
}

impl<'a> AsideIn<'a> {
    pub(crate) fn new(aside: &'a Aside, score: &'a Score) -> Self {
        let bars = aside.entries.iter().map(|entry| bars(entry, score)).collect();
        Self { aside, score, bars, first: 0 }
    }

    /// The same for findings of a movement that count bars from its beginning.
    pub(crate) fn counting_from(&self, first: u32) -> Self {
        Self { first, ..self.clone() }
    }

    /// The first entry that holds a finding of one place.
    pub(crate) fn holds(&self, finding: &Finding) -> Option<usize> {
        (0..self.aside.entries.len()).find(|entry| self.entry_holds(*entry, finding))
    }

    fn entry_holds(&self, index: usize, finding: &Finding) -> bool {
        let (entry, place) = (&self.aside.entries[index], &finding.place);
        let rule = entry.rule.as_ref().is_none_or(|rule| rule == finding.rule);
        let beat = entry.beat.is_none_or(|beat| beat == place.beat);
        let bars = self.bars[index]
            .as_ref()
            .is_none_or(|bars| bars.iter().any(|bars| bars.contains(&(place.bar + self.first))));
        rule && beat && bars && entry.part.as_ref().is_none_or(|part| self.is_in(part, finding))
    }

    fn is_in(&self, part: &str, finding: &Finding) -> bool {
        let known = finding.place.part.and_then(|part| self.score.parts.get(part));
        let names = known.into_iter().flat_map(|part| [part.name.as_str(), part.abbreviation.as_str()]);
        let asked = part.trim().to_lowercase();
        // What is about the whole score is asked for by this name, whatever the language.
        let section = if finding.place.part.is_none() { "the score" } else { &finding.place.section };
        names.chain([section]).any(|name| name.to_lowercase() == asked)
    }
}

/// The bars that an entry means, in every movement or in the one it names.
fn bars(entry: &AsideEntry, score: &Score) -> Option<Vec<RangeInclusive<u32>>> {
    if entry.bars.is_none() && entry.movement.is_none() {
        return None;
    }
    let movements: Vec<RangeInclusive<u32>> =
        score.movements.iter().map(|movement| movement.bars.clone()).collect();
    let asked: Vec<RangeInclusive<u32>> = match entry.movement {
        Some(number) => {
            number.checked_sub(1).and_then(|index| movements.get(index)).cloned().into_iter().collect()
        }
        None => movements,
    };
    let Some((first, last)) = &entry.bars else { return Some(asked) };
    Some(asked.iter().filter_map(|movement| between(score, movement, first, last)).collect())
}

/// From the first bar of a number to the last one of another, inside a movement.
fn between(
    score: &Score,
    movement: &RangeInclusive<u32>,
    first: &str,
    last: &str,
) -> Option<RangeInclusive<u32>> {
    let called = |label: &str| score.bars_called(&BarName::new(label), movement.clone());
    let from = called(first).first().copied()?;
    let to = called(last).last().copied()?;
    (from <= to).then_some(from..=to)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_that_go_back_begin_a_movement() {
        let text = "unchecked\nviolin: 1/4 D4 ||| D4 | D4 |||";
        let xml = arcata_testkit::musicxml(text);
        let xml =
            xml.replacen(r#"number="2""#, r#"number="1""#, 1).replacen(r#"number="3""#, r#"number="2""#, 1);
        let file = arcata_xml::open_score(xml.into_bytes(), &arcata_xml::Limits::default());
        let score = file.map(|file| arcata_score::read(file.document())).unwrap_or_default();
        let movements: Vec<_> = score.movements.iter().map(|movement| movement.bars.clone()).collect();
        assert_eq!(movements, [0..=2], "one bar 1 after another is the same number, not a lower one");
        let entry = |bars: (&str, &str), movement| AsideEntry {
            bars: Some((bars.0.to_owned(), bars.1.to_owned())),
            movement,
            ..AsideEntry::default()
        };
        assert_eq!(bars(&entry(("1", "2"), None), &score), Some(vec![0..=2]));
        assert_eq!(bars(&entry(("1", "2"), Some(2)), &score), Some(Vec::new()));
        assert_eq!(bars(&entry(("9", "9"), None), &score), Some(Vec::new()), "no such bar holds nothing");
    }
}
