//! How numbers, places and pitches are printed in a language.

use arcata_score::places::{PlaceWords, beat_said, label_said};

use crate::{Argument, Language, SaidPlace, Saying, Texts, TradeWords};

/// The largest number that is written as a word.
const LAST_WORD: i64 = 12;

/// Puts thousandths with up to two places; noughts at the end are left out.
pub(crate) fn thousandths(value: i64, language: Language) -> String {
    let hundredths = (value.unsigned_abs() + 5) / 10;
    let sign = if value < 0 && hundredths > 0 { "−" } else { "" };
    let plain = match (hundredths / 100, hundredths % 100) {
        (whole, 0) => format!("{sign}{whole}"),
        (whole, part) if part % 10 == 0 => format!("{sign}{whole}.{}", part / 10),
        (whole, part) => format!("{sign}{whole}.{part:02}"),
    };
    with_decimal_mark(&plain, language)
}

/// Thousandths of a point of a penalty as people read them, everywhere: in points, with two decimals, halves away from nought.
///
/// ```
/// use arcata_languages::{Language, points};
///
/// assert_eq!(points(336, Language::English), "0.34");
/// assert_eq!(points(-1_995, Language::German), "-2,00");
/// assert_eq!(points(-4, Language::English), "0.00");
/// ```
#[must_use]
pub fn points(value: i64, language: Language) -> String {
    let hundredths = (value.unsigned_abs() + 5) / 10;
    let sign = if value < 0 && hundredths > 0 { "-" } else { "" };
    with_decimal_mark(&format!("{sign}{}.{:02}", hundredths / 100, hundredths % 100), language)
}

/// Microseconds as seconds with one place and the unit.
pub(crate) fn seconds(micros: i64, language: Language) -> String {
    let tenths = micros.saturating_add(50_000) / 100_000;
    with_decimal_mark(&format!("{}.{} s", tenths / 10, tenths % 10), language)
}

/// A number that was printed with a point, with the mark of the language.
pub(crate) fn with_decimal_mark(number: &str, language: Language) -> String {
    match language {
        Language::English => number.to_owned(),
        Language::Italian | Language::French | Language::German => number.replace('.', ","),
    }
}

/// A number in words up to twelve, in figures above.
pub(crate) fn in_words(number: i64, texts: &Texts) -> String {
    match number {
        0..=LAST_WORD => texts.word(&format!("number-{number}")),
        _ => number.to_string(),
    }
}

/// A text that begins with a capital.
///
/// ```
/// assert_eq!(arcata_languages::capital("écrire arco ici"), "Écrire arco ici");
/// ```
#[must_use]
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// Which words stand before a place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Before {
    /// The plain word: `mesure`.
    Nothing,
    /// The preposition of a place: `à la mesure`.
    In,
    /// The article, where the language wants one: `la mesure`.
    The,
}

/// A place in a sentence.
pub(crate) fn place(place: &SaidPlace, before: Before, texts: &Texts, words: &TradeWords) -> String {
    let key = match before {
        Before::Nothing => "place-bar",
        Before::In => "place-in-bar",
        Before::The => "place-the-bar",
    };
    let (bar, beat) = (texts.trade_word(key, words), texts.word("place-beat"));
    let said = PlaceWords { bar: &bar, beat: &beat, ..PlaceWords::default() }.place_said(
        place.movement.as_deref(),
        &place.bar,
        place.beat,
    );
    if place.detail.is_empty() { said } else { format!("{said}, {}", place.detail) }
}

/// Bars from one to another.
pub(crate) fn bars(
    movement: Option<&str>,
    stretch: (&str, &str),
    texts: &Texts,
    words: &TradeWords,
) -> String {
    let (bar, bars) = (texts.trade_word("place-bar", words), texts.trade_word("place-bars", words));
    PlaceWords { bar: &bar, bars: &bars, ..PlaceWords::default() }.bars_said(movement, stretch)
}

/// A beat of the bar that is spoken of.
pub(crate) fn beat(beat: arcata_score::Length, before: Before, texts: &Texts) -> String {
    let key = match before {
        Before::Nothing => "place-beat",
        Before::In => "place-in-beat",
        Before::The => "place-the-beat",
    };
    format!("{} {}", texts.word(key), beat_said(beat))
}

/// A bar's number without the word.
pub(crate) fn bar_number(label: &str, texts: &Texts, words: &TradeWords) -> String {
    label_said(&texts.trade_word("place-bar", words), label)
}

/// A pitch by name, as sounding, in the octaves of the language: `F#3` with middle C as C4, `fa♯2` with middle C as do3,
/// `kleines fis`. Quarter tones are named after the semitone below.
pub(crate) fn pitch(cents: i32, texts: &Texts) -> String {
    let semitone = cents.div_euclid(100);
    let mut name = texts.word(&format!("pitch-{}", semitone.rem_euclid(12)));
    if name.contains(' ') {
        name.push(' ');
    }
    let octave = semitone.div_euclid(12) - 1;
    let said = Saying::new("pitch-in-octave")
        .quoting("capital", capital(&name))
        .quoting("name", name)
        .with("octave", i64::from(octave))
        .with("below", i64::from(octave - 1));
    texts.say(&said, &TradeWords::default())
}

/// Several in a row, with *and* before the last.
pub(crate) fn list(items: &[String], texts: &Texts) -> String {
    match items {
        [] => String::new(),
        [one] => one.clone(),
        [first @ .., last] => format!("{} {} {last}", first.join(", "), texts.word("and")),
    }
}

/// Several with *and* between all of them, places with the words before them.
pub(crate) fn chain(items: &[Argument], before: Before, texts: &Texts, words: &TradeWords) -> String {
    let said = items.iter().map(|item| match item {
        Argument::Place(said) => place(said, before, texts, words),
        Argument::Beat(said) => beat(*said, before, texts),
        other => argument(other, texts, words),
    });
    said.collect::<Vec<_>>().join(&format!(" {} ", texts.word("and")))
}

/// An argument as it is printed.
pub(crate) fn argument(argument: &Argument, texts: &Texts, words: &TradeWords) -> String {
    let language = texts.language();
    let all = |items: &[Argument]| -> Vec<String> {
        items.iter().map(|item| self::argument(item, texts, words)).collect()
    };
    match argument {
        Argument::Whole(number) => number.to_string(),
        Argument::Thousandths(value) => thousandths(*value, language),
        Argument::Tenths(tenths) => {
            let (sign, size) = (if *tenths < 0 { "−" } else { "" }, tenths.unsigned_abs());
            with_decimal_mark(&format!("{sign}{}.{}", size / 10, size % 10), language)
        }
        Argument::Points(value) => points(*value, language),
        Argument::Seconds(micros) => seconds(*micros, language),
        Argument::Text(text) => text.clone(),
        Argument::Choice(case) => (*case).to_owned(),
        Argument::Place(said) => place(said, Before::Nothing, texts, words),
        Argument::Beat(said) => beat(*said, Before::Nothing, texts),
        Argument::BarNumber(label) => bar_number(label, texts, words),
        Argument::Pitch(cents) => pitch(*cents, texts),
        Argument::Saying(saying) => texts.say(saying, words),
        Argument::List(items) => list(&all(items), texts),
        Argument::Chain(items) => chain(items, Before::Nothing, texts, words),
        Argument::Clauses(items) => all(items).join(texts.language().semicolon()),
        Argument::Row(items) => all(items).join(", "),
    }
}
