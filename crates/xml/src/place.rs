//! Lines and columns.

use std::fmt;

/// A place in the text of a document, both counted from 1.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct TextPlace {
    /// The line.
    pub line: usize,
    /// The column, in characters (not bytes).
    pub column: usize,
}

impl TextPlace {
    /// The first character of a document.
    pub const START: TextPlace = TextPlace { line: 1, column: 1 };

    /// The place of a byte offset; an offset past the end stands for the end.
    pub(crate) fn of(text: &[u8], offset: usize) -> TextPlace {
        let offset = offset.min(text.len());
        TextPlace::START.moved_over(text, 0, offset)
    }

    /// This place, being that of `from`, carried on to the offset `to`.
    fn moved_over(self, text: &[u8], from: usize, to: usize) -> TextPlace {
        let mut place = self;
        for at in from..to {
            match text[at] {
                b'\n' => place = TextPlace { line: place.line + 1, column: 1 },
                // A carriage return ends a line of its own unless a line feed follows.
                b'\r' if text.get(at + 1) != Some(&b'\n') => {
                    place = TextPlace { line: place.line + 1, column: 1 };
                }
                // Continuation bytes belong to the character before them.
                byte if byte & 0b1100_0000 == 0b1000_0000 => {}
                _ => place.column += 1,
            }
        }
        place
    }
}

impl fmt::Display for TextPlace {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "line {}, column {}", self.line, self.column)
    }
}

/// Bytes between two known places: a look-up reads at most as many.
const STRIDE: usize = 512;

/// The places of every `STRIDE`th byte, so that a look-up is quick however long the lines are.
#[derive(Debug)]
pub(crate) struct PlaceIndex {
    known: Vec<TextPlace>,
}

impl PlaceIndex {
    pub(crate) fn new(text: &[u8]) -> PlaceIndex {
        let mut known = Vec::with_capacity(text.len() / STRIDE + 1);
        let mut place = TextPlace::START;
        known.push(place);
        let mut from = 0;
        while from + STRIDE <= text.len() {
            place = place.moved_over(text, from, from + STRIDE);
            known.push(place);
            from += STRIDE;
        }
        PlaceIndex { known }
    }

    pub(crate) fn place(&self, text: &[u8], offset: usize) -> TextPlace {
        let offset = offset.min(text.len());
        let stride = offset / STRIDE;
        let known = self.known.get(stride).copied().unwrap_or(TextPlace::START);
        known.moved_over(text, stride * STRIDE, offset)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_kind_of_line_ending_counts_once() {
        let text = "a\nb\r\nc\rd".as_bytes();
        assert_eq!(TextPlace::of(text, 7), TextPlace { line: 4, column: 1 });
        assert_eq!(TextPlace::of(text, 5), TextPlace { line: 3, column: 1 });
    }

    #[test]
    fn columns_are_characters() {
        let text = "éß♯x".as_bytes();
        assert_eq!(TextPlace::of(text, text.len() - 1), TextPlace { line: 1, column: 4 });
    }

    #[test]
    fn the_index_agrees_with_counting() {
        let text = "ab♯\r\ncd\n".repeat(3000);
        let index = PlaceIndex::new(text.as_bytes());
        for offset in (0..=text.len()).step_by(97) {
            assert_eq!(index.place(text.as_bytes(), offset), TextPlace::of(text.as_bytes(), offset));
        }
    }
}
