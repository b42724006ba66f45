//! What people call a section when they type its name: "Vn1", "violini II", "Erste Geigen", "Vc".

use super::names::{self, Claim, NameSpelling};
use crate::Instrument;
use crate::words::tokens;

/// A typed name of a section, understood.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SectionName {
    /// The bowed instrument.
    pub instrument: Instrument,
    /// First or second, when the name says so.
    pub number: Option<u8>,
    /// One section or all of a kind.
    pub naming: Naming,
}

/// Whether a name is the singular or the plural: "violins" without a number means both sections.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Naming {
    /// "Violin", or an abbreviation.
    One,
    /// "Violins", "violini".
    All,
}

/// Words that number a section, in four languages. Source: names as scores print them, common practice.
const NUMBERS: [(&str, u8); 30] = [
    ("i", 1),
    ("ii", 2),
    ("iii", 3),
    ("iv", 4),
    ("first", 1),
    ("firsts", 1),
    ("second", 2),
    ("seconds", 2),
    ("third", 3),
    ("primo", 1),
    ("primi", 1),
    ("prima", 1),
    ("prime", 1),
    ("secondo", 2),
    ("secondi", 2),
    ("seconda", 2),
    ("seconde", 2),
    ("terzo", 3),
    ("terzi", 3),
    ("premier", 1),
    ("premiers", 1),
    ("premiere", 1),
    ("deuxieme", 2),
    ("deuxiemes", 2),
    ("erste", 1),
    ("ersten", 1),
    ("zweite", 2),
    ("zweiten", 2),
    ("dritte", 3),
    ("dritten", 3),
];

/// Reads a typed name of a section of bowed strings; `None` for anything else.
///
/// A typed name is taken for a string section where a printed one would be doubtful: who types "Alto"
/// or "B." into a list of bowings means violas and basses.
///
/// ```
/// use arcata_score::Instrument;
/// use arcata_score::instrument::{Naming, section_name};
/// let read = section_name("Violini II").unwrap();
/// assert_eq!((read.instrument, read.number, read.naming), (Instrument::Violin, Some(2), Naming::All));
/// assert_eq!(section_name("vn1").unwrap().number, Some(1));
/// assert_eq!(section_name("2. Geigen").unwrap().number, Some(2));
/// assert_eq!(section_name("Alto").unwrap().instrument, Instrument::Viola);
/// assert!(section_name("Flute 2").is_none());
/// ```
#[must_use]
pub fn section_name(text: &str) -> Option<SectionName> {
    let short = names::read(text, NameSpelling::Short);
    let instrument = match short.claim {
        Claim::Sure(instrument) | Claim::Perhaps(instrument) => Some(instrument),
        Claim::Shared(_) | Claim::Nothing => None,
    };
    let instrument = instrument.filter(|instrument| instrument.is_bowed())?;
    let words = names::split_numbers(tokens(text));
    let numbers: Vec<u8> = words.iter().filter_map(|word| number(word)).collect();
    let naming = if names::is_plural(text) { Naming::All } else { Naming::One };
    Some(SectionName { instrument, number: numbers.first().copied(), naming })
}

fn number(word: &str) -> Option<u8> {
    let named = NUMBERS.iter().find(|(name, _)| *name == word).map(|(_, number)| *number);
    let digits = word.trim_end_matches(|letter: char| letter.is_ascii_alphabetic());
    named.or_else(|| digits.parse().ok()).filter(|number| (1..=12).contains(number))
}

/// Every name of a bowed section that the tables know, folded, with its instrument: what a misspelt
/// name is compared with.
pub fn bowed_names() -> impl Iterator<Item = (&'static str, Instrument)> {
    names::all().filter_map(|(claim, name)| match claim {
        Claim::Sure(instrument) if instrument.is_bowed() && name.len() > 1 => Some((name, instrument)),
        _ => None,
    })
}
