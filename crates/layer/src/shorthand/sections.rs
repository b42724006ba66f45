//! Which parts a typed name of a section means.

use std::collections::BTreeMap;

use arcata_score::instrument::{Naming, SectionName, bowed_names, section_name};
use arcata_score::words::folded_words;
use arcata_score::{Instrument, Score};

use super::problem::ShorthandProblemKind;
use super::words::nearest;

/// Names for all strings, in four languages.
const ALL: &str = "all|tutti|strings|all strings|archi|gli archi|tous|les cordes|cordes|alle|streicher";
const UPPER: &str = "upper strings|archi superiori|cordes aigues|hohe streicher";
const LOWER: &str = "lower strings|low strings|archi gravi|cordes graves|tiefe streicher";

/// The parts of a score that a typed name of a section means.
///
/// # Errors
///
/// No such section, or several for a name that means one.
///
/// ```
/// # let text = arcata_testkit::musicxml("Viola: 1/4 C4 D4 E4 F4");
/// # let document = arcata_xml::Document::parse(text.into_bytes(), &Default::default()).unwrap();
/// let score = arcata_score::read(&document);
/// assert_eq!(arcata_layer::shorthand::parts_named(&score, "Bratschen"), Ok(vec![0]));
/// assert!(arcata_layer::shorthand::parts_named(&score, "Vn1").is_err());
/// ```
pub fn parts_named(score: &Score, name: &str) -> Result<Vec<usize>, ShorthandProblemKind> {
    Sections::new(score).find(name)
}

/// The sections of a score, and the names that were looked up.
pub(super) struct Sections<'s> {
    score: &'s Score,
    known: BTreeMap<String, Result<Vec<usize>, ShorthandProblemKind>>,
}

impl<'s> Sections<'s> {
    pub(super) fn new(score: &'s Score) -> Self {
        Self { score, known: BTreeMap::new() }
    }

    /// The parts that a name means.
    pub(super) fn find(&mut self, name: &str) -> Result<Vec<usize>, ShorthandProblemKind> {
        if let Some(found) = self.known.get(name) {
            return found.clone();
        }
        let found = self.look_up(name);
        self.known.insert(name.to_owned(), found.clone());
        found
    }

    fn look_up(&self, name: &str) -> Result<Vec<usize>, ShorthandProblemKind> {
        let folded = folded_words(name).join(" ");
        let is = |names: &str| names.split('|').any(|known| known == folded);
        let named = self.named(&folded);
        if !named.is_empty() {
            return Ok(named);
        }
        let group: Option<&[Instrument]> = if is(ALL) {
            Some(&[
                Instrument::Violin,
                Instrument::Viola,
                Instrument::Cello,
                Instrument::Bass,
                Instrument::OtherBowed,
            ])
        } else if is(UPPER) {
            Some(&[Instrument::Violin, Instrument::Viola])
        } else if is(LOWER) {
            Some(&[Instrument::Cello, Instrument::Bass])
        } else {
            None
        };
        if let Some(group) = group {
            let parts = self.parts(|instrument| group.contains(&instrument));
            return if parts.is_empty() { Err(self.unknown(name)) } else { Ok(parts) };
        }
        match section_name(name) {
            Some(section) => self.by_instrument(name, section),
            None => Err(self.unknown(name)),
        }
    }

    /// Parts whose printed name, abbreviation or id this is.
    fn named(&self, folded: &str) -> Vec<usize> {
        let bears = |text: &str| !folded.is_empty() && folded_words(text).join(" ") == folded;
        let fits = |index: &usize| {
            let part = &self.score.parts[*index];
            bears(&part.name) || bears(&part.abbreviation) || bears(&part.id)
        };
        (0..self.score.parts.len()).filter(fits).collect()
    }

    fn parts(&self, fits: impl Fn(Instrument) -> bool) -> Vec<usize> {
        (0..self.score.parts.len()).filter(|part| fits(self.score.parts[*part].instrument)).collect()
    }

    fn by_instrument(&self, name: &str, section: SectionName) -> Result<Vec<usize>, ShorthandProblemKind> {
        let parts = self.parts(|instrument| instrument == section.instrument);
        let numbered: Vec<usize> = match section.number {
            None => parts,
            Some(number) => {
                // Numbers that the score prints count; where it prints none, the order of the parts does.
                let printed: Vec<Option<u8>> = parts.iter().map(|part| self.printed_number(*part)).collect();
                let any = printed.iter().any(Option::is_some);
                let fits = |(at, printed): &(usize, Option<u8>)| match any {
                    true => *printed == Some(number),
                    false => at + 1 == usize::from(number),
                };
                printed.into_iter().enumerate().filter(fits).map(|(at, _)| parts[at]).collect()
            }
        };
        match numbered.as_slice() {
            [] => Err(self.unknown(name)),
            [_] => Ok(numbered),
            _ if section.naming == Naming::All => Ok(numbered),
            several => Err(ShorthandProblemKind::SeveralSections {
                name: name.to_owned(),
                known: several.iter().map(|part| self.score.parts[*part].name.clone()).collect(),
            }),
        }
    }

    fn printed_number(&self, part: usize) -> Option<u8> {
        let part = &self.score.parts[part];
        let read = |text: &str| section_name(text).and_then(|section| section.number);
        read(&part.name).or_else(|| read(&part.abbreviation))
    }

    fn unknown(&self, name: &str) -> ShorthandProblemKind {
        let bowed: Vec<usize> = self.parts(Instrument::is_bowed);
        let known: Vec<String> = bowed.iter().map(|part| self.score.parts[*part].name.clone()).collect();
        let printed = bowed.iter().flat_map(|part| {
            let part = &self.score.parts[*part];
            [part.name.as_str(), part.abbreviation.as_str()]
        });
        let has = |instrument: Instrument| self.score.parts.iter().any(|part| part.instrument == instrument);
        let names = bowed_names().filter(|(_, instrument)| has(*instrument)).map(|(name, _)| name);
        let others = [ALL, UPPER, LOWER].into_iter().flat_map(|names| names.split('|'));
        let suggestion = nearest(name, printed.chain(names).chain(others).chain(["anchor", "bar"]))
            .or_else(|| self.nearest_with_number(name));
        ShorthandProblemKind::UnknownSection { name: name.to_owned(), suggestion, known }
    }

    /// "Voiln 2": the name without its number is compared, and the number put behind it again.
    fn nearest_with_number(&self, name: &str) -> Option<String> {
        let stem = name.trim_end_matches(|letter: char| letter.is_ascii_digit());
        let number = &name[stem.len()..];
        let stem = stem.trim_end();
        if number.is_empty() || stem.is_empty() {
            return None;
        }
        let has = |instrument: Instrument| self.score.parts.iter().any(|part| part.instrument == instrument);
        let names = bowed_names().filter(|(_, instrument)| has(*instrument)).map(|(name, _)| name);
        nearest(stem, names).map(|name| format!("{name} {number}"))
    }
}
