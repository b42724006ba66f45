//! Pitches, chords and note values.

use crate::cursor::CharacterCursor;
use crate::error::FixtureRead;
use crate::model::{ChordNote, WrittenPitch, WrittenValue};

/// Reads `D4_+A4`: notes that sound together, and which of them are tied on.
pub(crate) fn read_notes(cursor: &mut CharacterCursor<'_>) -> FixtureRead<Vec<ChordNote>> {
    let mut notes = vec![read_note(cursor)?];
    while cursor.take('+') {
        notes.push(read_note(cursor)?);
    }
    Ok(notes)
}

/// Reads `F#4_`: letter, accidental, octave (the one that begins on middle C is 4, as acoustics counts them), tie.
fn read_note(cursor: &mut CharacterCursor<'_>) -> FixtureRead<ChordNote> {
    let Some(step @ 'A'..='G') = cursor.peek() else {
        return Err(cursor.error("a note such as F#4"));
    };
    cursor.take(step);
    let alter = read_accidental(cursor);
    let from = cursor.position();
    let octave = cursor.take_number()?.filter(|octave| *octave <= 9);
    let Some(octave) = octave.and_then(|octave| i32::try_from(octave).ok()) else {
        cursor.go_back(from);
        return Err(cursor.error("an octave from 0 to 9, as in F#4"));
    };
    Ok(ChordNote { pitch: WrittenPitch { step, alter, octave }, tied_on: cursor.take('_'), tied_from: false })
}

fn read_accidental(cursor: &mut CharacterCursor<'_>) -> i32 {
    for (sign, alter) in [("##", 2), ("#", 1), ("bb", -2), ("b", -1)] {
        if cursor.take_text(sign) {
            return alter;
        }
    }
    0
}

/// Reads `3/8`: a value as a part of the whole note, dots and all.
pub(crate) fn read_value(cursor: &mut CharacterCursor<'_>) -> FixtureRead<WrittenValue> {
    let from = cursor.position();
    let count = cursor.take_number()?;
    let of = if cursor.take('/') { cursor.take_number()? } else { None };
    let value = count.zip(of).and_then(|(count, of)| WrittenValue::of(count, of));
    value.ok_or_else(|| {
        cursor.go_back(from);
        cursor.error("a value: 1/1, 1/2, 1/4 … 1/128, or with dots 3/4, 3/8, 7/8 and their like")
    })
}
