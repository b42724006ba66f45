//! The lines above the music: what holds for the whole fixture.

use crate::changes::{read_key, read_tempo, read_time};
use crate::cursor::CharacterCursor;
use crate::error::FixtureRead;
use crate::model::{Direction, Header, Leave};

const EXPECTED: &str = "a part line `violin: …`, or a header item: title \"…\", composer \"…\", time, key, \
     quarter=, sound=, version, \"words\", pickup, unchecked, timewise, broken-slurs, broken-ties";

/// Reads one header line.
pub(crate) fn read_line(header: &mut Header, cursor: &mut CharacterCursor<'_>) -> FixtureRead<()> {
    loop {
        cursor.skip_spaces();
        if cursor.peek().is_none() {
            return Ok(());
        }
        read_item(header, cursor)?;
    }
}

fn read_item(header: &mut Header, cursor: &mut CharacterCursor<'_>) -> FixtureRead<()> {
    if cursor.take('"') {
        header.opening.push(Direction::Words(cursor.take_quoted()?));
        return Ok(());
    }
    if let Some(tempo) = read_tempo(cursor)? {
        header.opening.push(tempo);
        return Ok(());
    }
    let from = cursor.position();
    let word = cursor.take_while(|c| c.is_ascii_alphabetic() || c == '-');
    match word.as_str() {
        "title" => header.title = Some(read_name(cursor)?),
        "composer" => header.composer = Some(read_name(cursor)?),
        "time" => header.metre = read_time(cursor)?,
        "key" => header.key = read_key(cursor)?,
        "version" => {
            cursor.skip_spaces();
            header.version = cursor.take_while(|c| c.is_ascii_digit() || c == '.');
        }
        "pickup" => header.leave.push(Leave::Pickup),
        "unchecked" => header.leave.push(Leave::Unchecked),
        "timewise" => header.leave.push(Leave::Timewise),
        "broken-slurs" => header.leave.push(Leave::BrokenSlurs),
        "broken-ties" => header.leave.push(Leave::BrokenTies),
        _ => {
            cursor.go_back(from);
            return Err(cursor.error(EXPECTED));
        }
    }
    Ok(())
}

fn read_name(cursor: &mut CharacterCursor<'_>) -> FixtureRead<String> {
    cursor.skip_spaces();
    if cursor.take('"') { cursor.take_quoted() } else { Err(cursor.error("a name in quotation marks")) }
}
