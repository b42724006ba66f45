//! The words that the program itself says.

use std::collections::BTreeSet;
use std::sync::LazyLock;

use crate::Language;

/// Whether a word stands in the English texts: those that sentences about music are made of.
///
/// ```
/// assert!(arcata_languages::says("Mark") && arcata_languages::says("long"));
/// assert!(!arcata_languages::says("Marrowfen"));
/// ```
#[must_use]
pub fn says(word: &str) -> bool {
    static WORDS: LazyLock<BTreeSet<String>> = LazyLock::new(|| {
        let files = Language::English.files();
        let lines = files.iter().flat_map(|file| file.lines()).filter(|line| !line.starts_with('#'));
        let words = lines.flat_map(|line| line.split(|letter: char| !letter.is_alphabetic()));
        words.filter(|word| !word.is_empty()).map(str::to_lowercase).collect()
    });
    WORDS.contains(&word.to_lowercase())
}
