//! Pitches, chords and note values.

use crate::cursor::Cursor;
use crate::error::Read;
use crate::model::{ChordNote, NoteValue, Pitch};

/// Reads `f#''`: letter, accidental, octave marks.
pub(crate) fn read_note(cursor: &mut Cursor<'_>) -> Read<ChordNote> {
    let Some(letter @ 'a'..='g') = cursor.peek() else {
        return Err(cursor.error(
            "a note (a to g), a rest (r, R), a chord <…>, a bar line, a dynamic, \"words\", or one of time, key, \
             clef, staff, transpose, quarter=, sound=, dashes(, dashes), short, unnumbered, empty, page",
        ));
    };
    cursor.take(letter);
    let alter = read_accidental(cursor);
    // Without an octave mark the small octave is meant, the one that begins below middle C (Helmholtz's names).
    let mut octave = 3;
    while cursor.take('\'') {
        octave += 1;
    }
    while octave <= 3 && cursor.take(',') {
        octave -= 1;
    }
    if !(0..=9).contains(&octave) {
        return Err(cursor.error("an octave from c,,, to c''''''"));
    }
    Ok(ChordNote {
        pitch: Pitch { step: letter.to_ascii_uppercase(), alter, octave },
        tied_on: false,
        tied_from: false,
    })
}

fn read_accidental(cursor: &mut Cursor<'_>) -> i32 {
    for (sign, alter) in [("##", 2), ("#", 1), ("bb", -2), ("b", -1)] {
        if cursor.take_text(sign) {
            return alter;
        }
    }
    0
}

/// Reads `<d' a'~>`.
pub(crate) fn read_chord(cursor: &mut Cursor<'_>) -> Read<Vec<ChordNote>> {
    cursor.take('<');
    let mut notes = Vec::new();
    loop {
        cursor.skip_spaces();
        if !notes.is_empty() && cursor.take('>') {
            return Ok(notes);
        }
        if cursor.peek().is_none() {
            return Err(cursor.error("`>` at the end of the chord"));
        }
        let mut note = read_note(cursor)?;
        note.tied_on = cursor.take('~');
        notes.push(note);
    }
}

/// Reads `4.`: a value and its dots, if one stands here.
pub(crate) fn read_value(cursor: &mut Cursor<'_>) -> Read<Option<NoteValue>> {
    let from = cursor.position();
    let Some(denominator) = cursor.take_number()? else {
        if cursor.peek() == Some('.') {
            return Err(cursor.error("a value before the dot, as in d'4. (staccato is written d'!.)"));
        }
        return Ok(None);
    };
    if !matches!(denominator, 1 | 2 | 4 | 8 | 16 | 32 | 64 | 128) {
        cursor.go_back(from);
        return Err(cursor.error("a value: 1, 2, 4, 8, 16, 32, 64 or 128"));
    }
    let mut dots = 0;
    while dots < 4 && cursor.take('.') {
        dots += 1;
    }
    Ok(Some(NoteValue { denominator, dots }))
}
