//! Shorthand read into its syntax. Nothing stops the reading: every trouble is reported, and the text
//! goes on after the next separator.

use super::complaint::{Complaint, Trouble};
use super::header;
use super::lexer::{Before, Kind, Token, tokens};
use super::statement;
use super::syntax::{Item, Line, Text, Typed};

/// The largest text that is read, in bytes: some 30,000 lines.
pub const LARGEST_TEXT: usize = 1 << 20;
/// The longest line that is read, in bytes.
pub const LONGEST_LINE: usize = 4096;

/// Reads a text of shorthand, without looking at a score.
///
/// What cannot be read is left out and complained about, in the order of the text.
///
/// ```
/// use arcata_layer::shorthand;
/// let (text, complaints) = shorthand::read("Vn1 37/3 down\n41-42 hook 2\n45 as it comes");
/// assert!(complaints.is_empty());
/// assert_eq!(text.to_string(), "Vn1: 37/3 down\n41-42 hook 2\n45 as it comes\n");
/// let (_, complaints) = shorthand::read("Vn1 37/3 dwon");
/// assert!(complaints[0].to_string().ends_with("found \"dwon\". Did you mean \"down\"?"));
/// ```
#[must_use]
pub fn read(text: &str) -> (Text, Vec<Complaint>) {
    let mut complaints = Vec::new();
    if text.len() > LARGEST_TEXT {
        let at = Typed { line: 1, column: 1, width: 1 };
        complaints.push(Complaint::wrong(at, Trouble::TooLarge { most: LARGEST_TEXT }));
        return (Text::default(), complaints);
    }
    let lines = text.lines().zip(1..).map(|(line, number)| read_line(line, number, &mut complaints));
    (Text { lines: lines.collect() }, complaints)
}

fn read_line(line: &str, number: u32, complaints: &mut Vec<Complaint>) -> Line {
    if line.len() > LONGEST_LINE {
        let at = Typed { line: number, column: 1, width: 1 };
        complaints.push(Complaint::wrong(at, Trouble::TooLarge { most: LONGEST_LINE }));
        return Line::default();
    }
    let (tokens, comment) = tokens(line);
    let mut cursor = Cursor::new(&tokens, number, line);
    let movement = header::movement(&mut cursor);
    let mut items = Vec::new();
    loop {
        while cursor.take(&Kind::Comma) || cursor.take(&Kind::Semicolon) {}
        if cursor.is_at_end() {
            break;
        }
        let read = match header::begins(&cursor) {
            true => header::sections(&mut cursor).map(Item::Sections),
            false => statement::statement(&mut cursor).map(Item::Statement),
        };
        match read {
            Ok(item) => items.push(item),
            Err(complaint) => {
                complaints.push(*complaint);
                recover(&mut cursor);
            }
        }
    }
    Line { movement, items, comment: comment.map(str::to_owned) }
}

/// Goes on behind the next separator after which something begins that can be read by itself.
fn recover(cursor: &mut Cursor<'_, '_>) {
    while !cursor.is_at_end() {
        if cursor.take(&Kind::Semicolon) {
            return;
        }
        if cursor.take(&Kind::Comma) {
            if statement::begins_place(cursor) {
                return;
            }
        } else {
            cursor.at += 1;
        }
    }
}

/// A complaint on its way up; boxed because it is rare and large.
pub(super) type Failed = Box<Complaint>;

/// The tokens of a line and how far they are read.
#[derive(Clone)]
pub(super) struct Cursor<'l, 't> {
    pub(super) tokens: &'l [Token<'t>],
    pub(super) at: usize,
    line: u32,
    /// The column behind the line.
    end: u32,
}

impl<'l, 't> Cursor<'l, 't> {
    /// The tokens of a line, none of them read.
    pub(super) fn new(tokens: &'l [Token<'t>], number: u32, line: &str) -> Self {
        let end = u32::try_from(line.trim_end().chars().count()).unwrap_or(u32::MAX).saturating_add(1);
        Self { tokens, at: 0, line: number, end }
    }

    pub(super) fn is_at_end(&self) -> bool {
        self.at >= self.tokens.len()
    }

    /// The token that many places ahead.
    pub(super) fn ahead(&self, by: usize) -> Option<&'l Token<'t>> {
        self.tokens.get(self.at + by)
    }

    pub(super) fn kind(&self, by: usize) -> Option<&'l Kind<'t>> {
        self.ahead(by).map(|token| &token.kind)
    }

    pub(super) fn is(&self, kind: &Kind<'_>) -> bool {
        self.kind(0) == Some(kind)
    }

    /// Whether a token of this kind comes next, with no space before it.
    pub(super) fn is_glued(&self, kind: &Kind<'_>) -> bool {
        self.ahead(0).is_some_and(|token| token.kind == *kind && token.before == Before::Token)
    }

    pub(super) fn take(&mut self, kind: &Kind<'_>) -> bool {
        let here = self.is(kind);
        self.at += usize::from(here);
        here
    }

    /// The word that many places ahead.
    pub(super) fn word(&self, by: usize) -> Option<&'t str> {
        match self.kind(by) {
            Some(Kind::Word(word)) => Some(word),
            _ => None,
        }
    }

    /// The number that many places ahead, as typed.
    pub(super) fn number(&self, by: usize) -> Option<&'t str> {
        match self.kind(by) {
            Some(Kind::Number(number)) => Some(number),
            _ => None,
        }
    }

    /// Words from here on, as many as follow each other.
    pub(super) fn words(&self) -> Vec<&'t str> {
        (0..).map_while(|by| self.word(by)).take(4).collect()
    }

    /// Where the next token stands; behind the line at its end.
    pub(super) fn spot(&self) -> Typed {
        let (column, width) = self.ahead(0).map_or((self.end, 1), |token| (token.column, token.width));
        Typed { line: self.line, column, width }
    }

    /// From a spot to the last token that was read.
    pub(super) fn since(&self, from: Typed) -> Typed {
        let last = self.at.checked_sub(1).and_then(|at| self.tokens.get(at));
        let end = last.map_or(from.column, |token| token.column + token.width);
        Typed { width: end.saturating_sub(from.column).max(1), ..from }
    }

    /// Complains that something else belongs here.
    pub(super) fn expected(&self, expected: &'static str, suggestion: Option<String>) -> Failed {
        let found = match self.ahead(0) {
            None => "the end of the line".to_owned(),
            Some(Token { kind: Kind::Unclosed, .. }) => "a quotation mark that is never closed".to_owned(),
            Some(token) => format!("\"{}\"", token.text.chars().take(40).collect::<String>()),
        };
        let trouble = Trouble::Unexpected { found, expected, suggestion };
        Box::new(Complaint::wrong(self.spot(), trouble))
    }
}
