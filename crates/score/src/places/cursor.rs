//! How far a line is read.

use super::Misread;
use super::tokens::{BeforeToken, Token, TokenKind};

/// A stretch of a text that was typed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Typed {
    /// Line, from 1.
    pub line: u32,
    /// Column in characters, from 1.
    pub column: u32,
    /// Characters.
    pub width: u32,
}

/// The tokens of a line and how far they are read.
#[derive(Clone, Debug)]
pub struct Cursor<'l, 't> {
    /// All tokens of the line.
    pub tokens: &'l [Token<'t>],
    /// Index of the next one.
    pub at: usize,
    pub(super) line: u32,
    /// The column behind the line.
    pub(super) end: u32,
}

impl<'l, 't> Cursor<'l, 't> {
    /// The tokens of a line, none of them read. `number` is the line's, from 1.
    #[must_use]
    pub fn new(tokens: &'l [Token<'t>], number: u32, line: &str) -> Self {
        let end = u32::try_from(line.trim_end().chars().count()).unwrap_or(u32::MAX).saturating_add(1);
        Self { tokens, at: 0, line: number, end }
    }

    /// Whether all is read.
    #[must_use]
    pub fn is_at_end(&self) -> bool {
        self.at >= self.tokens.len()
    }

    /// The token that many places ahead.
    #[must_use]
    pub fn ahead(&self, by: usize) -> Option<&'l Token<'t>> {
        self.tokens.get(self.at + by)
    }

    /// What the token that many places ahead is.
    #[must_use]
    pub fn kind(&self, by: usize) -> Option<&'l TokenKind<'t>> {
        self.ahead(by).map(|token| &token.kind)
    }

    /// Whether a token of this kind comes next.
    #[must_use]
    pub fn is(&self, kind: &TokenKind<'_>) -> bool {
        self.kind(0) == Some(kind)
    }

    /// Whether no space stands before the token that many places ahead.
    #[must_use]
    pub fn is_glued(&self, by: usize) -> bool {
        self.ahead(by).is_some_and(|token| token.before == BeforeToken::Token)
    }

    /// Goes behind the next token where it is of this kind; whether it was.
    pub fn take(&mut self, kind: &TokenKind<'_>) -> bool {
        let here = self.is(kind);
        self.at += usize::from(here);
        here
    }

    /// The word that many places ahead.
    #[must_use]
    pub fn word(&self, by: usize) -> Option<&'t str> {
        match self.kind(by) {
            Some(TokenKind::Word(word)) => Some(word),
            _ => None,
        }
    }

    /// The number that many places ahead, as typed.
    #[must_use]
    pub fn number(&self, by: usize) -> Option<&'t str> {
        match self.kind(by) {
            Some(TokenKind::Number(number)) => Some(number),
            _ => None,
        }
    }

    /// Words from here on, as many as follow each other, four at most.
    #[must_use]
    pub fn words(&self) -> Vec<&'t str> {
        (0..).map_while(|by| self.word(by)).take(4).collect()
    }

    /// Where the next token stands; behind the line at its end.
    #[must_use]
    pub fn spot(&self) -> Typed {
        let (column, width) = self.ahead(0).map_or((self.end, 1), |token| (token.column, token.width));
        Typed { line: self.line, column, width }
    }

    /// From a spot to the last token that was read.
    #[must_use]
    pub fn since(&self, from: Typed) -> Typed {
        let last = self.at.checked_sub(1).and_then(|at| self.tokens.get(at));
        let end = last.map_or(from.column, |token| token.column + token.width);
        Typed { width: end.saturating_sub(from.column).max(1), ..from }
    }

    /// What comes next, for a message.
    #[must_use]
    pub fn found(&self) -> String {
        match self.ahead(0) {
            None if self.tokens.is_empty() => "nothing".to_owned(),
            None => "the end of the line".to_owned(),
            Some(Token { kind: TokenKind::Unclosed, .. }) => {
                "a quotation mark that is never closed".to_owned()
            }
            Some(token) => format!("\"{}\"", token.text.chars().take(40).collect::<String>()),
        }
    }

    /// Says that something else belongs here.
    #[must_use]
    pub fn misread(&self, expected: &'static str, suggestion: Option<String>) -> Box<Misread> {
        Box::new(Misread { at: self.spot(), found: self.found(), expected, suggestion })
    }
}
