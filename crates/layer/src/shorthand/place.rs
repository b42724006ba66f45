//! Places of notes: a place as all of the program reads it, and which of several notes is meant there.

use arcata_score::places::tokens::TokenKind;
use arcata_score::places::{Cursor, Point, Role, Within, plays, point, stretch};

use super::parser::{ParseFailure, unexpected};
use super::syntax::{At, NoteSpot, Where};
use crate::model::PitchName;

/// Reads a bar, a note or a stretch.
pub(super) fn place(cursor: &mut Cursor<'_, '_>) -> Result<At<Where>, ParseFailure> {
    let begin = cursor.spot();
    let (from, to) = stretch(cursor, spot)?;
    Ok(At { value: Where { from, to }, spot: cursor.since(begin) })
}

fn spot(cursor: &mut Cursor<'_, '_>) -> Result<NoteSpot, ParseFailure> {
    let Point { bar, within } = point(cursor)?;
    let mut spot = NoteSpot { bar, within, voice: None, pitch: None, grace: None, copy: None };
    loop {
        // Printed places part what they say with commas: "bar 37, beat 3½, voice 2, F#5".
        let mut next = cursor.clone();
        next.take(&TokenKind::Comma);
        if !one_more(&mut next, &mut spot)? {
            break;
        }
        *cursor = next;
    }
    if spot.pitch.is_none() && cursor.is(&TokenKind::Comma) {
        spot.pitch = printed_pitch(cursor, within);
    }
    Ok(spot)
}

/// Reads one more thing that is said of the note, if one comes next.
fn one_more(cursor: &mut Cursor<'_, '_>, spot: &mut NoteSpot) -> Result<bool, ParseFailure> {
    let Some(word) = cursor.word(0) else { return Ok(false) };
    let small = |by| cursor.number(by).and_then(|number| number.parse::<u16>().ok());
    // "grace note 1".
    let grace = 1 + usize::from(cursor.word(1).is_some_and(|word| plays(word, Role::Note)));
    let mut taken = 2;
    if spot.voice.is_none() && plays(word, Role::Voice) {
        spot.voice = Some(match cursor.kind(1) {
            Some(TokenKind::Number(voice) | TokenKind::Word(voice)) => (*voice).to_owned(),
            Some(TokenKind::Quoted(voice)) => voice.clone(),
            _ => {
                cursor.at += 1;
                return Err(unexpected(cursor, "the voice's name, such as 2", None));
            }
        });
    } else if spot.pitch.is_none() && word.eq_ignore_ascii_case("pitch") {
        let Some(TokenKind::Raw(pitch)) = cursor.kind(1) else {
            cursor.at += 1;
            return Err(unexpected(cursor, "a pitch such as F#5", None));
        };
        spot.pitch = Some((*pitch).to_owned());
    } else if spot.grace.is_none() && word.eq_ignore_ascii_case("grace") && small(grace).is_some() {
        spot.grace = small(grace);
        taken = 1 + grace;
    } else if spot.copy.is_none() && word.eq_ignore_ascii_case("copy") && small(1).is_some() {
        spot.copy = small(1);
    } else {
        return Ok(false);
    }
    cursor.at += taken;
    Ok(true)
}

/// The pitch behind a comma, as it is printed behind a beat. Behind a bar alone it would be another bar: "37, B5".
fn printed_pitch(cursor: &mut Cursor<'_, '_>, within: Within) -> Option<String> {
    let said = match cursor.kind(1) {
        Some(TokenKind::Raw(pitch) | TokenKind::Word(pitch)) => *pitch,
        _ => return None,
    };
    let behind_beat = matches!(within, Within::Beat(_) | Within::After(_));
    let is_pitch = behind_beat
        && said.starts_with(char::is_uppercase)
        && PitchName::parse(said).is_some_and(|pitch| pitch.to_string() == said);
    if is_pitch {
        cursor.at += 2;
    }
    is_pitch.then(|| said.to_owned())
}
