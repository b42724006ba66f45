//! Bars, beats, notes in a bar, and stretches.

use super::cursor::Cursor;
use super::fraction;
use super::misread::Misread;
use super::roles::{Role, glued_bar, glued_note, plays};
use super::tokens::TokenKind;
use super::{BarName, Point, Within};

type PointRead<T> = Result<T, Box<Misread>>;

/// Whether a bar or a beat comes next.
#[must_use]
pub fn begins_point(cursor: &Cursor<'_, '_>) -> bool {
    matches!(cursor.kind(0), Some(TokenKind::Number(_) | TokenKind::Slash)) || begins_with_bar_word(cursor)
}

/// Whether a bar comes next, with the word for it.
#[must_use]
pub fn begins_with_bar_word(cursor: &Cursor<'_, '_>) -> bool {
    let Some(word) = cursor.word(0) else { return false };
    glued_bar(word).is_some() || (plays(word, Role::Bar) && is_label(cursor, 1))
}

/// Whether a bar's label stands that many places ahead, behind a bar word.
fn is_label(cursor: &Cursor<'_, '_>, by: usize) -> bool {
    match cursor.kind(by) {
        Some(TokenKind::Number(_) | TokenKind::Quoted(_)) => true,
        Some(TokenKind::Word(label)) => label.chars().any(|letter| letter.is_ascii_digit()),
        _ => false,
    }
}

/// Reads a bar, or a point in it. A bar whose number begins with a letter needs no word before it here.
///
/// # Errors
/// Where no bar or beat stands there.
pub fn point(cursor: &mut Cursor<'_, '_>) -> PointRead<Point> {
    if !begins_point(cursor) && !is_label(cursor, 0) {
        return Err(cursor.misread("a bar such as 37, 37/3 or 41-42", None));
    }
    let bar = bar(cursor)?;
    let within = within(cursor)?;
    Ok(Point { bar, within })
}

/// Reads a point, and a second one behind a dash or a word such as "to". `read` reads one of them.
///
/// # Errors
/// As `read` has them, and where nothing follows a dash.
pub fn stretch<P, E: From<Box<Misread>>>(
    cursor: &mut Cursor<'_, '_>,
    read: impl Fn(&mut Cursor<'_, '_>) -> Result<P, E>,
) -> Result<(P, Option<P>), E> {
    let from = read(cursor)?;
    let mut next = cursor.clone();
    next.at += joint(cursor);
    if next.at == cursor.at {
        return Ok((from, None));
    }
    if begins_point(&next) || (cursor.is(&TokenKind::Dash) && is_label(&next, 0)) {
        *cursor = next;
        return Ok((from, Some(read(cursor)?)));
    }
    if cursor.is(&TokenKind::Dash) {
        return Err(next.misread("the last bar or beat of the stretch", None).into());
    }
    Ok((from, None))
}

/// How many tokens stand between the ends of a stretch: a dash, `to`, `fino a`.
fn joint(cursor: &Cursor<'_, '_>) -> usize {
    let words = cursor.words();
    match (cursor.kind(0), words.as_slice()) {
        (Some(TokenKind::Dash), _) => 1,
        (_, [word, next, ..]) if plays(&format!("{word} {next}"), Role::To) => 2,
        (_, [word, ..]) if plays(word, Role::To) => 1,
        _ => 0,
    }
}

/// The bar; nothing where a beat follows at once.
fn bar(cursor: &mut Cursor<'_, '_>) -> PointRead<Option<BarName>> {
    if cursor.is(&TokenKind::Slash) {
        return Ok(None);
    }
    let glued = cursor.word(0).and_then(glued_bar);
    if glued.is_none() && begins_with_bar_word(cursor) {
        cursor.at += 1;
    }
    let label = match (glued, cursor.kind(0)) {
        (Some(label), _) => label.to_owned(),
        (None, Some(TokenKind::Number(label) | TokenKind::Word(label))) => (*label).to_owned(),
        (None, Some(TokenKind::Quoted(label))) => label.clone(),
        _ => return Err(cursor.misread("a bar's number", None)),
    };
    cursor.at += 1;
    let nth = nth(cursor)?;
    if cursor.is(&TokenKind::Dot) && cursor.is_glued(0) {
        // "37." is a bar with a full stop; "37.3" could be anything.
        if let (Some(beat), true) = (cursor.number(1), cursor.is_glued(1)) {
            let suggestion = Some(format!("{label}/{beat}"));
            return Err(cursor.misread("a slash between bar and beat", suggestion));
        }
        cursor.at += 1;
    }
    Ok(Some(BarName { label, nth }))
}

/// `(2)`: the second bar of this number.
fn nth(cursor: &mut Cursor<'_, '_>) -> PointRead<Option<u16>> {
    if !cursor.take(&TokenKind::Open) {
        return Ok(None);
    }
    let nth = cursor.number(0).and_then(|number| number.parse().ok()).filter(|nth| *nth > 0);
    let Some(nth) = nth else {
        return Err(cursor.misread("which of the bars with this number, such as (2)", None));
    };
    cursor.at += 1;
    if !cursor.take(&TokenKind::Close) {
        return Err(cursor.misread("a closing bracket", None));
    }
    Ok(Some(nth))
}

fn within(cursor: &mut Cursor<'_, '_>) -> PointRead<Within> {
    let mut next = cursor.clone();
    let comma = next.take(&TokenKind::Comma);
    let slash = !comma && next.take(&TokenKind::Slash);
    let named = |role| next.word(0).is_some_and(|word| plays(word, role));
    let glued = next.word(0).is_some_and(|word| glued_note(word).is_some());
    let counted = next.number(1).is_some();
    if named(Role::After) && counted {
        *cursor = next;
        cursor.at += 1;
        return fraction::note_value(cursor).map(Within::After);
    }
    if glued || named(Role::Note) && (slash || counted) {
        *cursor = next;
        return note(cursor);
    }
    if named(Role::Beat) && counted {
        *cursor = next;
        cursor.at += 1;
        return fraction::beat(cursor).map(Within::Beat);
    }
    if slash {
        *cursor = next;
        return fraction::beat(cursor).map(Within::Beat);
    }
    Ok(Within::Bar)
}

fn note(cursor: &mut Cursor<'_, '_>) -> PointRead<Within> {
    let glued = cursor.word(0).and_then(glued_note);
    if glued.is_none() {
        cursor.at += 1;
    }
    let number = glued.or_else(|| cursor.number(0)).and_then(|number| number.parse().ok());
    let Some(number) = number.filter(|number| *number > 0) else {
        return Err(cursor.misread("the number of a note, from 1", None));
    };
    cursor.at += 1;
    Ok(Within::Note(number))
}
