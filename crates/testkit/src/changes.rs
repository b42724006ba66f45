//! Metre, key, clef, tempo: what both the header and the music may say.

use crate::cursor::CharacterCursor;
use crate::error::FixtureRead;
use crate::model::{
    Clef, Direction, FixtureChange, FixtureKey, FixtureTempo, Metre, Mode, TempoEquals, WrittenValue,
};

const UNIT_NAMES: [(&str, u32); 6] =
    [("whole", 1), ("half", 2), ("quarter", 4), ("eighth", 8), ("sixteenth", 16), ("thirtysecond", 32)];

/// Reads what follows the keyword `time`.
pub(crate) fn read_time(cursor: &mut CharacterCursor<'_>) -> FixtureRead<Metre> {
    cursor.skip_spaces();
    for (word, metre) in [("common", Metre::Common), ("cut", Metre::Cut), ("none", Metre::Free)] {
        if cursor.take_text(word) {
            return Ok(metre);
        }
    }
    let mut groups = Vec::new();
    loop {
        groups.push(read_beats(cursor)?);
        if !cursor.take('+') {
            return Ok(Metre::Counted(groups));
        }
    }
}

/// Reads `3+2/8`.
fn read_beats(cursor: &mut CharacterCursor<'_>) -> FixtureRead<(String, u32)> {
    const EXPECTED: &str = "a metre: 3/4, 3+2/8, 3/8+2/4, common, cut or none";
    let from = cursor.position();
    let beats = cursor.take_while(|c| c.is_ascii_digit() || c == '+');
    let counts: Option<Vec<u32>> = beats.split('+').map(|count| count.parse().ok()).collect();
    let sound = counts.is_some_and(|counts| counts.iter().all(|count| (1..=999).contains(count)));
    if !sound || !cursor.take('/') {
        cursor.go_back(from);
        return Err(cursor.error(EXPECTED));
    }
    match cursor.take_number()? {
        Some(value @ (1 | 2 | 4 | 8 | 16 | 32 | 64)) => Ok((beats, value)),
        _ => {
            cursor.go_back(from);
            Err(cursor.error(EXPECTED))
        }
    }
}

/// Reads what follows the keyword `key`: a tonic and perhaps `minor`, or a count of sharps (`-2` for two flats).
pub(crate) fn read_key(cursor: &mut CharacterCursor<'_>) -> FixtureRead<FixtureKey> {
    const EXPECTED: &str =
        "a key: a tonic such as D, Bb, F# and perhaps minor, or a number of sharps from -7 to 7";
    cursor.skip_spaces();
    let from = cursor.position();
    let signature = read_signature(cursor)?;
    let tonic = if signature.is_none() { read_tonic(cursor) } else { None };
    let mode = read_mode(cursor);
    let fifths = match (signature, tonic, mode) {
        (Some(fifths), ..) | (None, Some(fifths), Mode::Major) => Some(fifths),
        // A minor key has three sharps fewer than the major key on its tonic.
        (None, Some(fifths), Mode::Minor) => Some(fifths - 3),
        (None, None, _) => None,
    };
    fifths.filter(|fifths| (-7..=7).contains(fifths)).map(|fifths| FixtureKey { fifths, mode }).ok_or_else(
        || {
            cursor.go_back(from);
            cursor.error(EXPECTED)
        },
    )
}

/// A count of sharps, or of flats behind a minus sign.
fn read_signature(cursor: &mut CharacterCursor<'_>) -> FixtureRead<Option<i32>> {
    let negative = cursor.take('-');
    let count = cursor.take_number()?.map(|count| i32::try_from(count).unwrap_or(i32::MAX));
    Ok(count.map(|count| if negative { -count } else { count }))
}

/// `minor` or `major` behind the key; major where neither is said.
fn read_mode(cursor: &mut CharacterCursor<'_>) -> Mode {
    let from = cursor.position();
    cursor.skip_spaces();
    if cursor.take_text("minor") {
        return Mode::Minor;
    }
    if !cursor.take_text("major") {
        cursor.go_back(from);
    }
    Mode::Major
}

/// Sharps of the major key on a tonic such as `D` or `Bb`.
fn read_tonic(cursor: &mut CharacterCursor<'_>) -> Option<i32> {
    let letter = cursor.peek()?;
    let natural = match letter {
        'C' => 0,
        'G' => 1,
        'D' => 2,
        'A' => 3,
        'E' => 4,
        'B' => 5,
        'F' => -1,
        _ => return None,
    };
    cursor.take(letter);
    Some(if cursor.take('#') {
        natural + 7
    } else if cursor.take('b') {
        natural - 7
    } else {
        natural
    })
}

/// Reads what follows the keyword `clef`.
pub(crate) fn read_clef(cursor: &mut CharacterCursor<'_>, staff: u32) -> FixtureRead<Clef> {
    cursor.skip_spaces();
    let from = cursor.position();
    let name = cursor.take_while(|c| c.is_ascii_alphanumeric());
    let (sign, sign_line, octave_change) = match name.as_str() {
        "treble" => ('G', 2, 0),
        "treble8" => ('G', 2, -1),
        "soprano" => ('C', 1, 0),
        "alto" => ('C', 3, 0),
        "tenor" => ('C', 4, 0),
        "bass" => ('F', 4, 0),
        "bass8" => ('F', 4, -1),
        _ => {
            cursor.go_back(from);
            return Err(cursor.error("a clef: treble, treble8, soprano, alto, tenor, bass or bass8"));
        }
    };
    Ok(Clef { sign, sign_line, octave_change, staff })
}

/// Reads a signed whole number of semitones after the keyword `transpose`.
pub(crate) fn read_transpose(cursor: &mut CharacterCursor<'_>) -> FixtureRead<FixtureChange> {
    cursor.skip_spaces();
    let negative = cursor.take('-');
    let semitones = cursor.take_number()?.filter(|count| *count <= 48).ok_or_else(|| {
        cursor.error("the semitones from the written to the sounding pitch, from -48 to 48")
    })?;
    let semitones = i32::try_from(semitones).unwrap_or_default();
    Ok(FixtureChange::Transpose(if negative { -semitones } else { semitones }))
}

/// Reads `quarter=96`, `quarter.=quarter` or `sound=96`, if one stands here.
pub(crate) fn read_tempo(cursor: &mut CharacterCursor<'_>) -> FixtureRead<Option<Direction>> {
    let from = cursor.position();
    if cursor.take_text("sound=") {
        return read_rate(cursor).map(|rate| Some(Direction::SoundTempo(rate)));
    }
    let Some(unit) = read_unit(cursor).filter(|_| cursor.take('=')) else {
        cursor.go_back(from);
        return Ok(None);
    };
    let equals = match read_unit(cursor) {
        Some(other) => TempoEquals::Unit(other),
        None => TempoEquals::PerMinute(read_rate(cursor)?),
    };
    Ok(Some(Direction::Tempo(FixtureTempo { unit, equals })))
}

/// Reads `quarter` or `quarter.`.
fn read_unit(cursor: &mut CharacterCursor<'_>) -> Option<WrittenValue> {
    let (name, denominator) = UNIT_NAMES.into_iter().find(|(name, _)| {
        let from = cursor.position();
        let there = cursor.take_text(name);
        cursor.go_back(from);
        there
    })?;
    cursor.take_text(name);
    let mut dots = 0;
    while cursor.take('.') {
        dots += 1;
    }
    Some(WrittenValue { denominator, dots })
}

fn read_rate(cursor: &mut CharacterCursor<'_>) -> FixtureRead<String> {
    let from = cursor.position();
    let rate = cursor.take_while(|c| c.is_ascii_digit() || c == '.' || c == '-');
    if rate.starts_with(|c: char| c.is_ascii_digit()) {
        return Ok(rate);
    }
    cursor.go_back(from);
    Err(cursor.error("beats a minute, such as 96, 92.5 or 92-96, or a note value for a change of beat"))
}
