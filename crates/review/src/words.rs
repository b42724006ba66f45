//! The words of the trade, in the reader's English.

use arcata_score::{BowDirection, Length};

/// "down-bow" or "up-bow".
#[must_use]
pub const fn bow(direction: BowDirection) -> &'static str {
    match direction {
        BowDirection::Down => "down-bow",
        BowDirection::Up => "up-bow",
    }
}

/// A beat as players say it: `3`, `3½`, `2⅓`; rarer places as `2 + 5/16`.
///
/// ```
/// use arcata_review::words::beat_text;
/// use arcata_score::Length;
/// assert_eq!(beat_text(Length::new(7, 2)), "3½");
/// assert_eq!(beat_text(Length::new(2, 1)), "2");
/// assert_eq!(beat_text(Length::new(37, 16)), "2 + 5/16");
/// ```
#[must_use]
pub fn beat_text(beat: Length) -> String {
    let whole = beat.floor();
    let rest = beat - Length::new(whole, 1);
    let sign = match (rest.numerator(), rest.denominator()) {
        (0, _) => return whole.to_string(),
        (1, 2) => "½",
        (1, 3) => "⅓",
        (2, 3) => "⅔",
        (1, 4) => "¼",
        (3, 4) => "¾",
        (1, 6) => "⅙",
        (5, 6) => "⅚",
        (1, 8) => "⅛",
        (3, 8) => "⅜",
        (5, 8) => "⅝",
        (7, 8) => "⅞",
        _ => return format!("{whole} + {rest}"),
    };
    format!("{whole}{sign}")
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
