//! The words of the trade, in the reader's English.

use arcata_score::BowDirection;

/// "down-bow" or "up-bow".
#[must_use]
pub const fn bow(direction: BowDirection) -> &'static str {
    match direction {
        BowDirection::Down => "down-bow",
        BowDirection::Up => "up-bow",
    }
}

/// Seconds with one place, from microseconds: `6.2 s`.
#[must_use]
pub fn seconds(micros: i64) -> String {
    let tenths = (micros + 50_000) / 100_000;
    format!("{}.{} s", tenths / 10, tenths % 10)
}

/// "a down-bow" or "an up-bow".
#[must_use]
pub const fn a_bow(direction: BowDirection) -> &'static str {
    match direction {
        BowDirection::Down => "a down-bow",
        BowDirection::Up => "an up-bow",
    }
}

/// A number as it begins a sentence: a word up to twelve.
///
/// ```
/// use arcata_review::words::number_first;
/// assert_eq!((number_first(4), number_first(13)), ("Four".to_owned(), "13".to_owned()));
/// ```
#[must_use]
pub fn number_first(number: usize) -> String {
    const WORDS: [&str; 13] = [
        "No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine", "Ten", "Eleven",
        "Twelve",
    ];
    WORDS.get(number).map_or_else(|| number.to_string(), |word| (*word).to_owned())
}

/// A number inside a sentence: a word up to twelve.
#[must_use]
pub fn number(number: usize) -> String {
    number_first(number).to_lowercase()
}
