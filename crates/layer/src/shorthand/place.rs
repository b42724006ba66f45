//! Bars, beats, notes and stretches.

use arcata_score::Length;

use super::lexer::{Before, Kind, Token};
use super::parser::{Cursor, Failed};
use super::statement::begins_place;
use super::syntax::{At, BarName, NoteSpot, Where, Within};
use super::words::{Role, glued_bar, glued_note, plays};

const A_BEAT: &str = "a beat such as 3, 3½, 3.5, 3+1/3 or n2 for the second note";

/// Reads a bar, a note or a stretch.
pub(super) fn place(cursor: &mut Cursor<'_, '_>) -> Result<At<Where>, Failed> {
    let begin = cursor.spot();
    let from = spot(cursor)?;
    let mut next = cursor.clone();
    let stretches = match next.kind(0) {
        Some(Kind::Dash) => true,
        Some(Kind::Word(word)) => plays(word, Role::To),
        _ => false,
    };
    let mut to = None;
    if stretches {
        next.at += 1;
        if begins_place(&next) {
            *cursor = next;
            to = Some(spot(cursor)?);
        } else if cursor.is(&Kind::Dash) {
            cursor.at += 1;
            return Err(cursor.expected("the last bar or beat of the stretch", None));
        }
    }
    Ok(At { value: Where { from, to }, spot: cursor.since(begin) })
}

fn spot(cursor: &mut Cursor<'_, '_>) -> Result<NoteSpot, Failed> {
    let bar = bar(cursor)?;
    let within = within(cursor)?;
    let mut spot = NoteSpot { bar, within, voice: None, pitch: None, grace: None, copy: None };
    while let Some(word) = cursor.word(0) {
        let small = |cursor: &Cursor<'_, '_>| cursor.number(1).and_then(|number| number.parse::<u16>().ok());
        if spot.voice.is_none() && plays(word, Role::Voice) {
            spot.voice = Some(match cursor.kind(1) {
                Some(Kind::Number(voice) | Kind::Word(voice)) => (*voice).to_owned(),
                Some(Kind::Quoted(voice)) => voice.clone(),
                _ => {
                    cursor.at += 1;
                    return Err(cursor.expected("the voice's name, such as 2", None));
                }
            });
        } else if spot.pitch.is_none() && word.eq_ignore_ascii_case("pitch") {
            let Some(Kind::Raw(pitch)) = cursor.kind(1) else {
                cursor.at += 1;
                return Err(cursor.expected("a pitch such as F#5", None));
            };
            spot.pitch = Some((*pitch).to_owned());
        } else if spot.grace.is_none() && word.eq_ignore_ascii_case("grace") && small(cursor).is_some() {
            spot.grace = small(cursor);
        } else if spot.copy.is_none() && word.eq_ignore_ascii_case("copy") && small(cursor).is_some() {
            spot.copy = small(cursor);
        } else {
            break;
        }
        cursor.at += 2;
    }
    Ok(spot)
}

/// The bar; nothing where a beat follows at once.
fn bar(cursor: &mut Cursor<'_, '_>) -> Result<Option<BarName>, Failed> {
    if cursor.is(&Kind::Slash) {
        return Ok(None);
    }
    let mut label = None;
    if let Some(word) = cursor.word(0) {
        label = glued_bar(word).map(str::to_owned);
        if label.is_none() {
            cursor.at += 1;
        }
    }
    let label = match (label, cursor.kind(0)) {
        (Some(label), _) => label,
        (None, Some(Kind::Number(label) | Kind::Word(label))) => (*label).to_owned(),
        (None, Some(Kind::Quoted(label))) => label.clone(),
        _ => return Err(cursor.expected("a bar's number", None)),
    };
    cursor.at += 1;
    let nth = nth(cursor)?;
    if cursor.is_glued(&Kind::Dot) {
        // "37." is a bar with a full stop; "37.3" could be anything.
        if let (Some(beat), Some(Before::Token)) = (cursor.number(1), cursor.ahead(1).map(|it| it.before)) {
            let suggestion = Some(format!("{label}/{beat}"));
            return Err(cursor.expected("a slash between bar and beat", suggestion));
        }
        cursor.at += 1;
    }
    Ok(Some(BarName { label, nth }))
}

/// `(2)`: the second bar of this number.
fn nth(cursor: &mut Cursor<'_, '_>) -> Result<Option<u16>, Failed> {
    if !cursor.take(&Kind::Open) {
        return Ok(None);
    }
    let nth = cursor.number(0).and_then(|number| number.parse().ok()).filter(|nth| *nth > 0);
    let Some(nth) = nth else {
        return Err(cursor.expected("which of the bars with this number, such as (2)", None));
    };
    cursor.at += 1;
    if !cursor.take(&Kind::Close) {
        return Err(cursor.expected("a closing bracket", None));
    }
    Ok(Some(nth))
}

fn within(cursor: &mut Cursor<'_, '_>) -> Result<Within, Failed> {
    let mut next = cursor.clone();
    let comma = next.take(&Kind::Comma);
    let named = |cursor: &Cursor<'_, '_>, role| cursor.word(0).is_some_and(|word| plays(word, role));
    if !comma && next.take(&Kind::Slash) {
        *cursor = next;
        if named(cursor, Role::Note) || cursor.word(0).is_some_and(|word| glued_note(word).is_some()) {
            return note(cursor);
        }
        return beat(cursor);
    }
    if named(&next, Role::Beat) && matches!(next.kind(1), Some(Kind::Number(_))) {
        *cursor = next;
        cursor.at += 1;
        return beat(cursor);
    }
    let counted = named(&next, Role::Note) && next.number(1).is_some();
    if counted || next.word(0).is_some_and(|word| glued_note(word).is_some()) {
        *cursor = next;
        return note(cursor);
    }
    Ok(Within::Bar)
}

fn note(cursor: &mut Cursor<'_, '_>) -> Result<Within, Failed> {
    let glued = cursor.word(0).and_then(glued_note);
    if glued.is_none() {
        cursor.at += 1;
    }
    let number = glued.or_else(|| cursor.number(0)).and_then(|number| number.parse().ok());
    let Some(number) = number.filter(|number| *number > 0) else {
        return Err(cursor.expected("the number of a note, from 1", None));
    };
    cursor.at += 1;
    Ok(Within::Note(number))
}

/// A beat from 1: whole, with a sign for a fraction, decimal, or with an exact fraction behind a plus.
fn beat(cursor: &mut Cursor<'_, '_>) -> Result<Within, Failed> {
    const DIGITS: usize = 6;
    let plain = |number: &&str| number.len() <= DIGITS && number.bytes().all(|digit| digit.is_ascii_digit());
    let number = cursor.number(0).filter(plain).and_then(|number| number.parse::<i64>().ok());
    let Some(whole) = number.filter(|whole| *whole > 0) else {
        return Err(cursor.expected(A_BEAT, None));
    };
    cursor.at += 1;
    let rest = fraction(cursor)?;
    Ok(Within::Beat(Length::new(whole, 1) + rest))
}

fn fraction(cursor: &mut Cursor<'_, '_>) -> Result<Length, Failed> {
    let half = Length::new(1, 2);
    let Some(Token { kind, before: Before::Token, .. }) = cursor.ahead(0) else { return Ok(Length::ZERO) };
    let digits = |by: usize| {
        let number = cursor.number(by).filter(|number| number.len() <= 9)?;
        number.parse::<i64>().ok()
    };
    let (length, taken) = match kind {
        Kind::Fraction(numerator, denominator) => (Length::new(*numerator, *denominator), 1),
        Kind::Ampersand => (half, 1),
        Kind::Plus => match (digits(1), cursor.kind(2), digits(3)) {
            (Some(numerator), Some(Kind::Slash), Some(denominator)) if numerator < denominator => {
                (Length::new(numerator, denominator), 4)
            }
            (Some(_), _, _) => {
                cursor.at += 1;
                return Err(cursor.expected("a fraction below 1, such as 3+1/3", None));
            }
            (None, _, _) => (half, 1),
        },
        Kind::Dot => match cursor.number(1) {
            Some(decimals) => match decimal(decimals) {
                Some(length) => (length, 2),
                None => return Err(cursor.expected(A_BEAT, None)),
            },
            None => (Length::ZERO, 1),
        },
        _ => (Length::ZERO, 0),
    };
    cursor.at += taken;
    Ok(length)
}

/// `5`, `25`, `333`: thirds are what people round.
fn decimal(digits: &str) -> Option<Length> {
    match digits {
        "3" | "33" | "333" => return Some(Length::new(1, 3)),
        "6" | "66" | "67" | "666" | "667" => return Some(Length::new(2, 3)),
        _ => {}
    }
    let value: i64 = digits.parse().ok().filter(|_| digits.len() <= 4)?;
    Some(Length::new(value, 10_i64.pow(u32::try_from(digits.len()).ok()?)))
}
