//! One line of text and a place in it.

use crate::error::{FixtureError, FixtureRead};

/// A place in the text that an event, a mark or a trouble can be traced to.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub(crate) struct FixturePlace {
    pub(crate) line: usize,
    /// First column, counted from 1.
    pub(crate) from: usize,
    /// The column after the last one.
    pub(crate) to: usize,
    pub(crate) source_line: String,
}

impl FixturePlace {
    /// The trouble `expected` at this place.
    pub(crate) fn error(&self, expected: impl Into<String>) -> FixtureError {
        let length = self.to.saturating_sub(self.from);
        FixtureError {
            line: self.line,
            column: self.from,
            expected: expected.into(),
            found: self.source_line.chars().skip(self.from - 1).take(length).collect(),
            source_line: self.source_line.clone(),
        }
    }
}

/// Reads one line character by character.
#[derive(Debug)]
pub(crate) struct CharacterCursor<'a> {
    text: &'a str,
    characters: Vec<char>,
    at: usize,
    line: usize,
}

impl<'a> CharacterCursor<'a> {
    /// A cursor at the start of `text`, which is line number `line`.
    pub(crate) fn new(text: &'a str, line: usize) -> Self {
        Self { text, characters: text.chars().collect(), at: 0, line }
    }

    pub(crate) fn peek(&self) -> Option<char> {
        self.peek_by(0)
    }

    pub(crate) fn peek_by(&self, ahead: usize) -> Option<char> {
        self.characters.get(self.at + ahead).copied()
    }

    pub(crate) fn take(&mut self, wanted: char) -> bool {
        let there = self.peek() == Some(wanted);
        self.at += usize::from(there);
        there
    }

    pub(crate) fn take_text(&mut self, wanted: &str) -> bool {
        let there = wanted.chars().enumerate().all(|(i, c)| self.peek_by(i) == Some(c));
        if there {
            self.at += wanted.chars().count();
        }
        there
    }

    pub(crate) fn take_while(&mut self, wanted: impl Fn(char) -> bool) -> String {
        let from = self.at;
        while self.peek().is_some_and(&wanted) {
            self.at += 1;
        }
        self.characters[from..self.at].iter().collect()
    }

    pub(crate) fn skip_spaces(&mut self) {
        self.take_while(char::is_whitespace);
    }

    /// A number written in digits, if one stands here.
    pub(crate) fn take_number(&mut self) -> FixtureRead<Option<u32>> {
        let from = self.at;
        let digits = self.take_while(|c| c.is_ascii_digit());
        if digits.is_empty() {
            return Ok(None);
        }
        digits.parse().map(Some).map_err(|_| self.place_from(from).error("a number of at most nine digits"))
    }

    /// The text up to the closing quotation mark; the opening one is already read.
    pub(crate) fn take_quoted(&mut self) -> FixtureRead<String> {
        let words = self.take_while(|c| c != '"');
        if self.take('"') { Ok(words) } else { Err(self.error("a closing quotation mark `\"`")) }
    }

    /// The place of the reader; can be gone back to.
    pub(crate) fn position(&self) -> usize {
        self.at
    }

    pub(crate) fn go_back(&mut self, position: usize) {
        self.at = position;
    }

    /// The place from an earlier position up to here.
    pub(crate) fn place_from(&self, position: usize) -> FixturePlace {
        FixturePlace {
            line: self.line,
            from: position + 1,
            to: self.at + 1,
            source_line: self.text.to_owned(),
        }
    }

    /// The trouble `expected` at the place of the reader, with the word that stands there.
    pub(crate) fn error(&self, expected: impl Into<String>) -> FixtureError {
        let word = self.characters[self.at..]
            .iter()
            .take_while(|c| !c.is_whitespace())
            .count()
            .max(usize::from(self.at < self.characters.len()));
        FixturePlace {
            line: self.line,
            from: self.at + 1,
            to: self.at + 1 + word,
            source_line: self.text.to_owned(),
        }
        .error(expected)
    }
}
