//! What a bar is called, wherever a text of ours says it: one word in one text, never a mix.

use std::borrow::Cow;

/// The word for a bar. Sentences are made with "bar"; this is the last thing that is done to them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum BarWord {
    /// As British players say.
    #[default]
    Bar,
    /// As American players say.
    Measure,
}

/// What stands before "bar" or "bars" where a bar of music is meant and no number follows.
const BEFORE: [&str; 25] = [
    "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve",
    "these", "this", "that", "other", "more", "every", "each", "same", "the", "in", "of", "no", "single",
];

impl BarWord {
    /// The word that a profile names: "measure", or else "bar".
    #[must_use]
    pub fn named(word: &str) -> Self {
        if word == "measure" { Self::Measure } else { Self::Bar }
    }

    /// The word.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Bar => "bar",
            Self::Measure => "measure",
        }
    }

    /// The word over a narrow column.
    pub(crate) const fn short(self) -> &'static str {
        match self {
            Self::Bar => "bar",
            Self::Measure => "meas.",
        }
    }

    /// A text in this word. What is meant is told by its neighbours: a number or a count; keys of data and parts of words
    /// ("barline") stay.
    ///
    /// ```
    /// use arcata_report::BarWord;
    /// let said = BarWord::Measure.said("bars 3-5: in these bars, 2 bars long; the barline of bar 7");
    /// assert_eq!(said, "measures 3-5: in these measures, 2 measures long; the barline of measure 7");
    /// assert_eq!(BarWord::Measure.said(r#"{"bar": "7"} Short bar: stop"#), r#"{"bar": "7"} Short bar: stop"#);
    /// assert_eq!(BarWord::Bar.said("bar 7"), "bar 7");
    /// ```
    #[must_use]
    pub fn said(self, text: &str) -> Cow<'_, str> {
        if self == Self::Bar || !text.contains("ar") {
            return Cow::Borrowed(text);
        }
        let mut out = String::with_capacity(text.len() + text.len() / 16);
        let mut rest = text;
        while let Some(at) = found(rest) {
            let (before, here) = rest.split_at(at);
            out.push_str(before);
            let length = if here[3..].starts_with('s') { 4 } else { 3 };
            let (word, after) = here.split_at(length);
            if is_meant(&out, word, after) {
                out.push_str(if word.starts_with('B') { "Measure" } else { "measure" });
                out.push_str(&word[3..]);
            } else {
                out.push_str(word);
            }
            rest = after;
        }
        out.push_str(rest);
        Cow::Owned(out)
    }
}

/// Where the word stands first, in one way through the text: pages are large.
fn found(text: &str) -> Option<usize> {
    let begins = |at: &usize| text[..*at].ends_with(['b', 'B']);
    text.match_indices("ar").map(|(at, _)| at).find(begins).map(|at| at - 1)
}

/// Several bars are always bars of music; one may be a bar of a drawing.
fn is_meant(before: &str, word: &str, after: &str) -> bool {
    let inside = |letter: char| letter.is_alphanumeric() || matches!(letter, '_' | '-' | '"' | '\'' | '/');
    if before.ends_with(inside) || after.starts_with(inside) {
        return false;
    }
    if word.ends_with('s') {
        return true;
    }
    if after
        .strip_prefix([' ', '\u{a0}'])
        .is_some_and(|next| next.starts_with(|letter: char| letter.is_ascii_digit()))
    {
        return true;
    }
    let Some(before) = before.strip_suffix([' ', '\u{a0}']) else { return false };
    let last = before.rsplit(|letter: char| !letter.is_alphanumeric()).next().unwrap_or_default();
    last.ends_with(|letter: char| letter.is_ascii_digit()) || BEFORE.contains(&last.to_lowercase().as_str())
}
