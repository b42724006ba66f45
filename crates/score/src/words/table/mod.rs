//! The table of words: language, phrases, what they say.
//!
//! Phrases are written as they fold: lower case, no accents, one space between words. `con/c.` is a
//! choice, `la?` may be missing, a full stop says that the abbreviation counts only with its stop,
//! `#` is any whole number.
//!
//! * Reason: the words decide which tool the players hold and how many of them play.
//! * Source: the trade's vocabulary, common practice; abbreviations as 19th- and 20th-century parts
//!   print them.
//! * Status: from memory; read against the direction texts of nine quartets, two orchestral
//!   movements and the string works of an open corpus.

mod dynamics;
mod players;
mod playing;
mod road;
mod stroke;
mod tempo;

use crate::tempo_words::{self, TempoWord};
use crate::{DynamicKind, Jump, Meaning, SwellKind, TempoBack};

/// The language of a phrase.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum WordLanguage {
    /// English.
    English,
    /// Italian, and what all languages borrow from it.
    Italian,
    /// French.
    French,
    /// German.
    German,
}

/// An entry of the table.
#[derive(Clone, Copy)]
pub(crate) struct TableEntry {
    /// Whose words these are.
    #[cfg_attr(not(test), expect(dead_code, reason = "the table tells its readers; tests count by it"))]
    pub(crate) language: WordLanguage,
    /// What they say; nothing for phrases that would be misread otherwise.
    pub(crate) senses: &'static [Sense],
    /// When they count.
    pub(crate) when: When,
    /// The phrases, in the notation above.
    pub(crate) phrases: &'static [&'static str],
}

/// When a phrase counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum When {
    /// Wherever it stands.
    Anywhere,
    /// Only when the text begins with a capital: the head of a section, not a remark in it.
    Heading,
    /// An everyday word too: only when no more than half of the text is unknown.
    Doubtful,
    /// Only in small letters, and as [`When::Doubtful`]: dynamics.
    Letters,
    /// Only when nothing else is in the text.
    Alone,
    /// As [`When::Alone`], and with a capital: a syllable of a text sung otherwise.
    Title,
}

/// What a phrase says, as the table can write it.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Sense {
    /// How to play, or who.
    Instruction(Meaning),
    /// Divided; the number of parts follows in the text.
    Divisi,
    /// Growing or fading.
    Swell(SwellKind),
    /// Dynamic letters.
    Dynamic(DynamicKind),
    /// Softer or louder by a step.
    LevelStep(SwellKind),
    /// A sign of the road.
    Jump(Jump),
    /// A tempo word with its row of the table.
    TempoWord(&'static TempoWord),
    /// Gradually slower.
    Slowing,
    /// Gradually faster.
    Quickening,
    /// At once slower or faster.
    Change(tempo_words::TempoChange),
    /// Back to an earlier tempo.
    Back(TempoBack),
}

/// An entry whose phrases count wherever they stand.
const fn entry(
    language: WordLanguage,
    senses: &'static [Sense],
    phrases: &'static [&'static str],
) -> TableEntry {
    TableEntry { language, senses, when: When::Anywhere, phrases }
}

/// An entry with a condition.
const fn only(
    when: When,
    language: WordLanguage,
    senses: &'static [Sense],
    phrases: &'static [&'static str],
) -> TableEntry {
    TableEntry { language, senses, when, phrases }
}

/// All entries.
pub(crate) fn entries() -> impl Iterator<Item = TableEntry> {
    playing::ENTRIES
        .iter()
        .chain(players::ENTRIES)
        .chain(stroke::ENTRIES)
        .chain(dynamics::ENTRIES)
        .chain(tempo::ENTRIES)
        .chain(road::ENTRIES)
        .copied()
        .chain(tempo::words())
}

/// Words that say nothing by themselves and are at home in directions: they speak for the words beside them.
pub(crate) const COMPANIONS: &str = "sempre poco a molto e ed et und and ma mais aber but con avec mit with piu plus meno moins un ein \
    etwas peu assai tres sehr assez ziemlich non senza sans ohne nicht pas quasi troppo tanto trop zu \
    immer toujours always al alla il la le les der die das the of in di del possibile dolce dol \
    espressivo espress espr cantabile cant marcato marc leggiero leggero legg leggiermente tranquillo \
    agitato animato grazioso semplice sotto mezza voce pesante risoluto appassionato moto brio fuoco \
    spirito maestoso scherzando scherzoso energico dolcissimo feroce teneramente expressif doux zart \
    ausdrucksvoll tempo mosso violin violins violini violino viola viole violas cello celli cellos \
    violoncello violoncelli bass basses bassi vn vln vl vla vle vc vlc cb kb vi ii iii iv sul sulla \
    punta sfz ad lib libitum sostenuto lunga ritmico vibrato vibr";

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn four_languages_are_in_the_table() {
        for language in
            [WordLanguage::English, WordLanguage::Italian, WordLanguage::French, WordLanguage::German]
        {
            let phrases: usize =
                entries().filter(|entry| entry.language == language).map(|entry| entry.phrases.len()).sum();
            assert!(phrases >= 40, "{language:?} has only {phrases} patterns");
        }
    }
}
