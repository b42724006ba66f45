//! What printed words mean to string players, in English, Italian, French and German.
//!
//! A text is folded to plain lower-case tokens; at every token the longest phrase of the
//! table that fits is taken. A word that negates ("senza", "nicht") silences what it stands before, unless
//! the table knows both together ("senza sord."). What the table does not know means nothing here:
//! a missed word is better than an invented instruction.

mod fold;
mod headings;
mod metronome;
mod phrases;
mod read;
mod table;

pub(crate) use fold::{WordToken, tokens};
pub use headings::{Heading, from_roman, heading, is_roman, roman};
pub use table::WordLanguage;

use std::collections::BTreeSet;
use std::sync::LazyLock;

use crate::{DynamicKind, Jump, Meaning, SwellKind, TempoKind};

/// One thing that a printed text says.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WordMeaning {
    /// How to play, or who.
    Instruction(Meaning),
    /// cresc., dim. and their like, until the next dynamic.
    Swell(SwellKind),
    /// A tempo, a change of tempo or a return to one.
    Tempo(TempoKind),
    /// A sign of the road: D.C., Fine …
    Jump(Jump),
    /// Dynamic letters printed as words: "sempre pp", "p cresc.".
    Dynamic(DynamicKind),
    /// A step from the level in force: "più f", "meno f", "più piano".
    LevelStep(SwellKind),
}

/// Everything a printed text says, in printed order, without repetitions.
///
/// A tempo word's speed counts quarter notes, as in simple time; see
/// [`tempo_words::quarters_in`](crate::tempo_words::quarters_in) for other time signatures.
///
/// ```
/// use arcata_score::words::{WordMeaning, meanings};
/// use arcata_score::Meaning;
/// let read = meanings("arco, div. a 3");
/// assert_eq!(
///     read,
///     [WordMeaning::Instruction(Meaning::Arco), WordMeaning::Instruction(Meaning::Divisi(3))]
/// );
/// assert!(meanings("non legato").is_empty());
/// ```
#[must_use]
pub fn meanings(text: &str) -> Vec<WordMeaning> {
    read::meanings(text)
}

/// The words of a text in lower case and without accents, marks between them left out: what people type
/// is compared by these.
///
/// ```
/// use arcata_score::words::folded_words;
/// assert_eq!(folded_words("Arcata in giù, À la corde"), ["arcata", "in", "giu", "a", "la", "corde"]);
/// ```
#[must_use]
pub fn folded_words(text: &str) -> Vec<String> {
    tokens(text).into_iter().map(|token| token.text).collect()
}

/// Whether a text says that the next movement begins at once. "Attaca" is a common slip.
///
/// ```
/// use arcata_score::words::is_attacca;
/// assert!(is_attacca("attacca subito") && is_attacca("Attaca"));
/// assert!(!is_attacca("attack"));
/// ```
#[must_use]
pub fn is_attacca(text: &str) -> bool {
    folded_words(text).iter().any(|word| word.starts_with("attacc") || word == "attaca")
}

/// Whether a single word belongs to music: one of the table's, or of the names of instruments, in any of the four languages.
///
/// ```
/// use arcata_score::words::is_of_music;
/// assert!(is_of_music("Forte") && is_of_music("bratsche") && is_of_music("al"));
/// assert!(!is_of_music("harbour"));
/// ```
#[must_use]
pub fn is_of_music(word: &str) -> bool {
    static KNOWN: LazyLock<BTreeSet<String>> = LazyLock::new(|| {
        let phrases = table::entries().flat_map(|entry| entry.phrases.iter().copied());
        let phrases = phrases.chain(crate::instrument::names()).chain([table::COMPANIONS]);
        phrases.flat_map(|phrase| folded_words(&phrase.replace(['/', '|', '?'], " "))).collect()
    });
    let words = folded_words(word);
    !words.is_empty() && words.iter().all(|word| KNOWN.contains(word))
}

#[cfg(test)]
mod tests;
