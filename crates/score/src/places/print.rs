//! How places are printed.

use std::fmt::{self, Display, Formatter};

use super::tokens::{TokenKind, tokens};
use super::{BarName, Point, Within, passage};
use crate::Length;
use crate::words::roman;

/// A beat as people read it: `3`, `3½`, `2⅓`; rarer ones as `2+5/16`.
///
/// ```
/// use arcata_score::{Length, places::beat_said};
/// let said = [(2, 1), (7, 2), (37, 16)].map(|(above, below)| beat_said(Length::new(above, below)));
/// assert_eq!(said, ["2", "3½", "2+5/16"]);
/// ```
#[must_use]
pub fn beat_said(beat: Length) -> String {
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
        _ => return format!("{whole}+{rest}"),
    };
    format!("{whole}{sign}")
}

/// A beat as programs read it, in JSON and CSV: one exact fraction, `7/2`.
#[must_use]
pub fn beat_exact(beat: Length) -> String {
    beat.to_string()
}

/// A bar as people read it: `bar 17`, `II, bar 17`. `word` is what a bar is called, `movement` the movement's number
/// where the file has several, `label` the bar's printed number.
#[must_use]
pub fn bar_said(word: &str, movement: Option<&str>, label: &str) -> String {
    in_movement(movement, format!("{word} {}", label_said(word, label)))
}

/// A point as people read it: `bar 17, beat 3½`, `II, bar 17, beat 3½`.
#[must_use]
pub fn place_said(word: &str, movement: Option<&str>, label: &str, beat: Length) -> String {
    PlaceWords { bar: word, ..PlaceWords::default() }.place_said(movement, label, Some(beat))
}

/// A beat, as it is said, in a bar as it is said: `bar 17, beat 3½`.
#[must_use]
pub fn at_beat(bar: &str, beat: &str) -> String {
    PlaceWords::default().at_beat(bar, beat)
}

/// What a bar and a beat are called in the language that a place is printed in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PlaceWords<'a> {
    /// Before a bar's number: `bar`, `Takt`.
    pub bar: &'a str,
    /// Before the numbers of several: `bars`, `Takte`.
    pub bars: &'a str,
    /// Before a beat: `beat`, `Schlag`.
    pub beat: &'a str,
}

impl Default for PlaceWords<'_> {
    fn default() -> Self {
        Self { bar: "bar", bars: "bars", beat: "beat" }
    }
}

impl PlaceWords<'_> {
    /// A bar, or a point in it where a beat is named.
    ///
    /// ```
    /// use arcata_score::{Length, places::PlaceWords};
    /// let german = PlaceWords { bar: "Takt", bars: "Takte", beat: "Schlag" };
    /// assert_eq!(german.place_said(Some("2"), "17", Some(Length::new(7, 2))), "II, Takt 17, Schlag 3½");
    /// assert_eq!(german.place_said(None, "17", None), "Takt 17");
    /// assert_eq!(german.bars_said(None, ("5", "8")), "Takte 5-8");
    /// ```
    #[must_use]
    pub fn place_said(self, movement: Option<&str>, label: &str, beat: Option<Length>) -> String {
        let bar = bar_said(self.bar, movement, label);
        beat.map_or_else(|| bar.clone(), |beat| self.at_beat(&bar, &beat_said(beat)))
    }

    /// Bars; one bar where first and last are the same.
    #[must_use]
    pub fn bars_said(self, movement: Option<&str>, (first, last): (&str, &str)) -> String {
        if first == last {
            return bar_said(self.bar, movement, first);
        }
        let plain = format!("{} {first}-{last}", self.bars);
        let bars = if is_read_as(&plain, (first, last)) {
            plain
        } else {
            format!("{} {}-{}", self.bars, quoted(first), quoted(last))
        };
        in_movement(movement, bars)
    }

    /// A beat, as it is said, in a bar as it is said.
    #[must_use]
    pub fn at_beat(self, bar: &str, beat: &str) -> String {
        format!("{bar}, {} {beat}", self.beat)
    }
}

/// Bars as people read them: `bars 5-8`, `II, bars 5-8`; `bar 5` where it is but one.
#[must_use]
pub fn bars_said(word: &str, movement: Option<&str>, stretch: (&str, &str)) -> String {
    PlaceWords { bar: word, bars: &format!("{word}s"), ..PlaceWords::default() }.bars_said(movement, stretch)
}

/// What is said of bars, behind the movement where one is named.
#[must_use]
pub fn in_movement(movement: Option<&str>, said: String) -> String {
    match movement {
        Some(number) => format!("{}, {said}", numeral(number)),
        None => said,
    }
}

/// Bars as they are typed: `5-8`; `5` where it is but one.
#[must_use]
pub fn bars_typed((first, last): (&str, &str)) -> String {
    let plain = if first == last { first.to_owned() } else { format!("{first}-{last}") };
    if is_read_as(&plain, (first, last)) {
        return plain;
    }
    if first == last { quoted(first) } else { format!("{}-{}", quoted(first), quoted(last)) }
}

/// Whether a text is read as these bars and nothing else.
fn is_read_as(text: &str, (first, last): (&str, &str)) -> bool {
    let bars = (BarName::new(first), BarName::new(last));
    passage(text).is_ok_and(|read| {
        let within = [Some(&read.from), read.to.as_ref()].into_iter().flatten().map(|point| point.within);
        read.bars() == bars
            && (read.movement.is_none() && read.section.is_none())
            && within.into_iter().all(|within| within == Within::Bar)
    })
}

/// A movement's number as it stands before a bar: a numeral, for a plain number would be taken for a bar.
#[must_use]
pub fn numeral(number: &str) -> String {
    number.parse().map_or_else(|_| number.to_owned(), roman)
}

/// A bar's number behind the word, in quotation marks where it would not be read as the one that it is.
#[must_use]
pub fn label_said(word: &str, label: &str) -> String {
    let digits = !label.is_empty() && label.len() <= 9 && label.bytes().all(|digit| digit.is_ascii_digit());
    if digits {
        return label.to_owned();
    }
    let line = format!("{word} {label},");
    let (found, comment) = tokens(&line);
    let one = match found.as_slice() {
        [_, label, comma] if comma.kind == TokenKind::Comma => Some(label),
        _ => None,
    };
    let numbered = label.bytes().any(|letter| letter.is_ascii_digit());
    let plain = comment.is_none()
        && numbered
        && one.is_some_and(|token| {
            matches!(token.kind, TokenKind::Number(_) | TokenKind::Word(_)) && token.text == label
        });
    if plain { label.to_owned() } else { quoted(label) }
}

/// Text in quotation marks, with `\"`, `\\`, `\n` and `\r` for what cannot stand there.
#[must_use]
pub fn quoted(text: &str) -> String {
    let mut out = String::from("\"");
    for letter in text.chars() {
        match letter {
            '"' | '\\' => out.extend(['\\', letter]),
            '\n' => out.push_str("\\n"),
            '\r' => out.push_str("\\r"),
            _ => out.push(letter),
        }
    }
    out.push('"');
    out
}

/// As it is typed: `37`, `12a`, `bar "X1"`, `37(2)`.
impl Display for BarName {
    fn fmt(&self, out: &mut Formatter<'_>) -> fmt::Result {
        let digits = self.label.bytes().take_while(u8::is_ascii_digit).count();
        let plain = digits > 0 && self.label[digits..].bytes().all(|letter| letter.is_ascii_alphabetic());
        match plain {
            true => out.write_str(&self.label)?,
            false => write!(out, "bar {}", quoted(&self.label))?,
        }
        self.nth.map_or(Ok(()), |nth| write!(out, "({nth})"))
    }
}

/// As it is typed: `37/3½`, `/3`, `37 after 3/8`, `37/n4`.
impl Display for Point {
    fn fmt(&self, out: &mut Formatter<'_>) -> fmt::Result {
        if let Some(bar) = &self.bar {
            write!(out, "{bar}")?;
        }
        match self.within {
            Within::Bar => Ok(()),
            Within::Beat(beat) => write!(out, "/{}", beat_said(beat)),
            Within::After(length) if self.bar.is_some() => write!(out, " after {length}"),
            Within::After(length) => write!(out, "/after {length}"),
            Within::Note(number) => write!(out, "/n{number}"),
        }
    }
}
