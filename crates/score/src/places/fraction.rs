//! Beats as numbers: `4¾`, `4 3/4`, `19/4`, `4.75`, `4+3/4`.

use super::cursor::Cursor;
use super::misread::Misread;
use super::tokens::{BeforeToken, Token, TokenKind};
use crate::Length;

const A_BEAT: &str = "a beat such as 3, 3½, 3.5, 7/2 or 3+1/3";
const A_NOTE_VALUE: &str = "a note value such as 1/4 or 3/8";
/// Digits of a number that is read (a limit).
const MOST_DIGITS: usize = 15;
/// The last beat that a bar can have; music has no longer ones (a limit).
const LAST_BEAT: i64 = 999_999;
/// The largest number that another is divided by: score time is no finer (a limit).
const LARGEST_BELOW: i64 = 1 << 31;

type FractionRead<T> = Result<T, Box<Misread>>;

/// A beat from 1: whole, with a sign or a fraction behind it, decimal, or one fraction.
pub(super) fn beat(cursor: &mut Cursor<'_, '_>) -> FractionRead<Length> {
    let begin = cursor.clone();
    let misread = || begin.misread(A_BEAT, None);
    let whole = digits(cursor, 0).ok_or_else(misread)?;
    let beat = match fraction_ahead(cursor, 0) {
        // "19/4": with no space in it, for "3 /4" goes on to beat 4.
        Some((above, below)) if cursor.is_glued(1) => {
            cursor.at += 3;
            Length::new(above, below)
        }
        // "3/0".
        _ if cursor.kind(1) == Some(&TokenKind::Slash)
            && cursor.is_glued(1)
            && cursor.number(2).is_some() =>
        {
            return Err(misread());
        }
        _ => {
            cursor.at += 1;
            Length::new(whole, 1) + behind(cursor)?
        }
    };
    if (1..=LAST_BEAT).contains(&beat.floor()) { Ok(beat) } else { Err(misread()) }
}

/// A note value: `1/4`, `3/8`, `1`.
pub(super) fn note_value(cursor: &mut Cursor<'_, '_>) -> FractionRead<Length> {
    let misread = || cursor.misread(A_NOTE_VALUE, None);
    let whole = digits(cursor, 0).ok_or_else(misread)?;
    let (length, taken) = match fraction_ahead(cursor, 0) {
        Some((above, below)) => (Length::new(above, below), 3),
        None => (Length::new(whole, 1), 1),
    };
    if length.floor() > LAST_BEAT {
        return Err(misread());
    }
    cursor.at += taken;
    Ok(length)
}

/// What stands behind the whole number of a beat.
fn behind(cursor: &mut Cursor<'_, '_>) -> FractionRead<Length> {
    let half = Length::new(1, 2);
    let proper = |by| fraction_ahead(cursor, by).filter(|(above, below)| above < below);
    let Some(Token { kind, before, .. }) = cursor.ahead(0) else { return Ok(Length::ZERO) };
    let (length, taken) = match (kind, before) {
        (TokenKind::Fraction(above, below), _) => (Length::new(*above, *below), 1),
        // "4 3/4".
        (TokenKind::Number(_), BeforeToken::Space) => match proper(0) {
            Some((above, below)) => (Length::new(above, below), 3),
            None => (Length::ZERO, 0),
        },
        // "4+3/4", "4 + 3/4", and a plus or an ampersand alone for the half.
        (TokenKind::Plus, before) => match (proper(1), before) {
            (Some((above, below)), _) => (Length::new(above, below), 4),
            (None, BeforeToken::Space) => (Length::ZERO, 0),
            (None, BeforeToken::Token) if cursor.number(1).is_some() && cursor.is_glued(1) => {
                cursor.at += 1;
                return Err(cursor.misread("a fraction below 1, such as 3+1/3", None));
            }
            (None, BeforeToken::Token) => (half, 1),
        },
        (TokenKind::Ampersand, BeforeToken::Token) => (half, 1),
        (TokenKind::Dot, BeforeToken::Token) => match cursor.number(1).filter(|_| cursor.is_glued(1)) {
            Some(typed) => (decimal(typed).ok_or_else(|| cursor.misread(A_BEAT, None))?, 2),
            None => (Length::ZERO, 1),
        },
        _ => (Length::ZERO, 0),
    };
    cursor.at += taken;
    Ok(length)
}

/// A number, a slash and a number that many places ahead, the last two with no space between; none is divided by
/// nothing.
fn fraction_ahead(cursor: &Cursor<'_, '_>, by: usize) -> Option<(i64, i64)> {
    let above = digits(cursor, by)?;
    let below = digits(cursor, by + 2).filter(|below| (1..=LARGEST_BELOW).contains(below))?;
    (cursor.kind(by + 1) == Some(&TokenKind::Slash) && cursor.is_glued(by + 2)).then_some((above, below))
}

fn digits(cursor: &Cursor<'_, '_>, by: usize) -> Option<i64> {
    let number = cursor.number(by).filter(|number| number.len() <= MOST_DIGITS)?;
    number.parse().ok()
}

/// `5`, `25`, `333`: thirds and sixths are what people round.
fn decimal(digits: &str) -> Option<Length> {
    let rounded = [
        (1, 3, ["3", "33", "333", "3333"].as_slice()),
        (2, 3, &["6", "66", "67", "666", "667", "6666", "6667"]),
        (1, 6, &["17", "166", "167", "1666", "1667"]),
        (5, 6, &["83", "833", "8333"]),
    ];
    if let Some((above, below, _)) = rounded.into_iter().find(|(_, _, typed)| typed.contains(&digits)) {
        return Some(Length::new(above, below));
    }
    let value: i64 = digits.parse().ok().filter(|_| digits.len() <= 4)?;
    Some(Length::new(value, 10_i64.pow(u32::try_from(digits.len()).ok()?)))
}
