//! Places as people write and read them: one grammar, one way to print, one message.
//!
//! Whoever asks for bars, a beat or a note (the command line, shorthand, the file of what is set aside, the
//! workbench) reads what was typed with [`passage`], [`leading`] or [`beat`]; whoever tells a place prints it with
//! [`place_said`], [`bar_said`] or [`bars_said`]. What is printed is read again as the same place, whatever the
//! language of its words. The manual tells the ways to write a place, once: `docs/manual/places.md`.
//!
//! | medium | a place |
//! |---|---|
//! | text for people | `II, bar 12, beat 4¾` |
//! | shorthand | `II: 12/4¾` |
//! | JSON and CSV, a key or column each | `II`, `12`, `19/4` |

mod cursor;
mod find;
mod fraction;
mod misread;
mod passage;
mod point;
mod print;
mod roles;
#[cfg(test)]
mod tests;
pub mod tokens;

pub use cursor::{Cursor, Typed};
pub use find::{NoBeat, NotThere};
pub use misread::{Misread, WAYS};
pub use passage::{beat, leading, note_value, passage};
pub use point::{begins_point, begins_with_bar_word, point, stretch};
pub use print::{
    PlaceWords, at_beat, bar_said, bars_said, bars_typed, beat_exact, beat_said, in_movement, label_said,
    numeral, place_said, quoted,
};
pub use roles::{Role, plays};

use crate::Length;

/// A bar by its printed number.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BarName {
    /// As printed.
    pub label: String,
    /// Which of several bars with that number, from 1.
    pub nth: Option<u16>,
}

/// Where in a bar.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Within {
    /// Not said: the bar, or its first note.
    Bar,
    /// At a beat, from 1, as the bar's metre counts.
    Beat(Length),
    /// So many whole notes after the bar's beginning: what is said where the metre is not known.
    After(Length),
    /// At the note of this number, from 1, rests not counted.
    Note(u16),
}

/// A bar, or a point in it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Point {
    /// The bar; `None` for the bar named before (`/3`).
    pub bar: Option<BarName>,
    /// Where in the bar.
    pub within: Within,
}

/// A point or a stretch, in a movement and a section where they are said. The names are as typed: a score knows what
/// they mean.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Passage {
    /// The movement: its number, or its heading.
    pub movement: Option<String>,
    /// The section, part or line.
    pub section: Option<String>,
    /// Where it begins; its bar is always named.
    pub from: Point,
    /// Where it ends, for a stretch; the end belongs to it.
    pub to: Option<Point>,
}

impl BarName {
    /// The bar, or the first of the bars, of that number.
    #[must_use]
    pub fn new(label: &str) -> Self {
        Self { label: label.to_owned(), nth: None }
    }
}

impl Passage {
    /// The first and the last bar by name; twice the same where one bar is named.
    #[must_use]
    pub fn bars(&self) -> (BarName, BarName) {
        let first = self.from.bar.clone().unwrap_or_else(|| BarName::new(""));
        let last = self.to.as_ref().and_then(|to| to.bar.clone()).unwrap_or_else(|| first.clone());
        (first, last)
    }
}
