//! Shorthand read into its syntax. Nothing stops the reading: every trouble is reported, and the text
//! goes on after the next separator.

use super::header;
use super::problem::{ShorthandProblem, ShorthandProblemKind};
use arcata_score::places::tokens::{TokenKind, tokens};
use arcata_score::places::{Cursor, Typed, begins_point};

use super::statement;
use super::syntax::{Item, ShorthandLine, Text};

/// The largest text that is read, in bytes: some 30,000 lines (a limit).
pub const LARGEST_TEXT: usize = 1 << 20;
/// The longest line that is read, in bytes (a limit).
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
pub fn read(text: &str) -> (Text, Vec<ShorthandProblem>) {
    let mut complaints = Vec::new();
    if text.len() > LARGEST_TEXT {
        let at = Typed { line: 1, column: 1, width: 1 };
        complaints.push(ShorthandProblem::wrong(at, ShorthandProblemKind::TooLarge { most: LARGEST_TEXT }));
        return (Text::default(), complaints);
    }
    let lines = text.lines().zip(1..).map(|(line, number)| read_line(line, number, &mut complaints));
    (Text { lines: lines.collect() }, complaints)
}

fn read_line(line: &str, number: u32, complaints: &mut Vec<ShorthandProblem>) -> ShorthandLine {
    if line.len() > LONGEST_LINE {
        let at = Typed { line: number, column: 1, width: 1 };
        complaints.push(ShorthandProblem::wrong(at, ShorthandProblemKind::TooLarge { most: LONGEST_LINE }));
        return ShorthandLine::default();
    }
    let (tokens, comment) = tokens(line);
    let mut cursor = Cursor::new(&tokens, number, line);
    let movement = header::movement(&mut cursor);
    let mut items = Vec::new();
    loop {
        while cursor.take(&TokenKind::Comma) || cursor.take(&TokenKind::Semicolon) {}
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
    ShorthandLine { movement, items, comment: comment.map(str::to_owned) }
}

/// Goes on behind the next separator after which something begins that can be read by itself.
fn recover(cursor: &mut Cursor<'_, '_>) {
    while !cursor.is_at_end() {
        if cursor.take(&TokenKind::Semicolon) {
            return;
        }
        if cursor.take(&TokenKind::Comma) {
            if begins_point(cursor) {
                return;
            }
        } else {
            cursor.at += 1;
        }
    }
}

/// A complaint on its way up; boxed because it is rare and large.
pub(super) type ParseFailure = Box<ShorthandProblem>;

/// Complains that something else belongs here.
pub(super) fn unexpected(
    cursor: &Cursor<'_, '_>,
    expected: &'static str,
    suggestion: Option<String>,
) -> ParseFailure {
    let trouble = ShorthandProblemKind::Unexpected { found: cursor.found(), expected, suggestion };
    Box::new(ShorthandProblem::wrong(cursor.spot(), trouble))
}
