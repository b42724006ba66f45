//! A whole fixture: header, parts, expectations.

use crate::cursor::CharacterCursor;
use crate::error::{FixtureError, FixtureRead};
use crate::expect::{self, Expectation, ExpectationLine};
use crate::facts::{self, WrittenBar, WrittenNote, WrittenSlur};
use crate::header;
use crate::model::{Direction, FixtureItem, FixturePart, Header};
use crate::music::PartBuilder;
use crate::{settle, write};

/// A fixture that has been read and found sound.
///
/// # Examples
/// ```
/// use arcata_testkit::Fixture;
///
/// let fixture = Fixture::parse(
///     "key D  quarter=96
///      violin: mf 1/4 D4 (1/8 E4 F#4) 1/4 G4 A4 | 1/1 B4 |||
///              ?      D      U             D  U        D",
/// )?;
/// assert!(fixture.musicxml().contains("<part-name>violin</part-name>"));
/// let told: Vec<&str> = fixture.expectations().iter().map(|e| e.text.as_str()).collect();
/// assert_eq!(told, ["D", "U", "D", "U", "D"]);
/// # Ok::<(), arcata_testkit::FixtureError>(())
/// ```
#[derive(Debug, Clone)]
pub struct Fixture {
    pub(crate) header: Header,
    pub(crate) parts: Vec<FixturePart>,
    expectations: Vec<Expectation>,
}

impl Fixture {
    /// Reads a fixture in the notation that the crate's README describes.
    ///
    /// # Errors
    /// The first place that cannot be understood or does not add up, with line and column.
    pub fn parse(text: &str) -> Result<Self, FixtureError> {
        Self::parse_from_line(text, 1)
    }

    /// Reads a fixture that is part of a larger file, in which its first line is number `first_line`.
    ///
    /// # Errors
    /// As for [`Fixture::parse`]; lines are counted in the larger file.
    pub fn parse_from_line(text: &str, first_line: usize) -> Result<Self, FixtureError> {
        let mut lines = FixtureLines::default();
        for (index, line) in text.lines().enumerate() {
            lines.read(line, first_line + index)?;
        }
        lines.finish(first_line)
    }

    /// The fixture as a MusicXML document, in UTF-8.
    #[must_use]
    pub fn musicxml(&self) -> String {
        write::document(self)
    }

    /// What the expectation lines say, in the order in which they stand.
    #[must_use]
    pub fn expectations(&self) -> &[Expectation] {
        &self.expectations
    }

    /// Names of the parts, from the top down.
    #[must_use]
    pub fn part_names(&self) -> Vec<&str> {
        self.parts.iter().map(|part| part.name.as_str()).collect()
    }

    /// Every written note and rest, in the order of the `note` elements of each part.
    #[must_use]
    pub fn notes(&self) -> Vec<WrittenNote> {
        facts::notes(self)
    }

    /// Every slur that has both its ends, in the order in which they end.
    #[must_use]
    pub fn slurs(&self) -> Vec<WrittenSlur> {
        facts::slurs(self)
    }

    /// The bars of every part.
    #[must_use]
    pub fn bars(&self) -> Vec<WrittenBar> {
        facts::bars(self)
    }
}

/// The lines read so far.
#[derive(Debug, Default)]
struct FixtureLines {
    header: Header,
    readers: Vec<PartBuilder>,
    /// The part of the line of music above, with the events that stand in it.
    above: Option<(usize, std::ops::Range<usize>)>,
    expectations: Vec<ExpectationLine>,
}

impl FixtureLines {
    fn read(&mut self, line: &str, number: usize) -> FixtureRead<()> {
        let trimmed = line.trim_start();
        if trimmed.is_empty() || trimmed.starts_with('%') {
            return Ok(());
        }
        let mut cursor = CharacterCursor::new(line, number);
        cursor.skip_spaces();
        if trimmed.starts_with(['^', '?']) {
            return self.read_expectations(&mut cursor);
        }
        if let Some(name_length) = part_name_length(trimmed) {
            return self.read_music(&mut cursor, name_length);
        }
        if self.readers.is_empty() {
            return header::read_line(&mut self.header, &mut cursor);
        }
        Err(cursor
            .error("a part line `name: music`, or expectations behind ^ or ?; header lines stand on top"))
    }

    fn read_expectations(&mut self, cursor: &mut CharacterCursor<'_>) -> FixtureRead<()> {
        let Some((part, events)) = self.above.clone() else {
            return Err(cursor.error("a line of music above the expectations"));
        };
        self.expectations.push(ExpectationLine { part, events, items: expect::read_items(cursor)? });
        Ok(())
    }

    fn read_music(&mut self, cursor: &mut CharacterCursor<'_>, name_length: usize) -> FixtureRead<()> {
        let from = cursor.position();
        let named = read_part_name(cursor, name_length)?;
        let index = match self.readers.iter().position(|reader| reader.part.name == named.name) {
            Some(index) => index,
            None => {
                self.readers.push(PartBuilder::new(named, self.header.leave.clone()));
                self.readers.len() - 1
            }
        };
        let reader = &mut self.readers[index];
        let first_event = reader.part.events.len();
        reader.read_line(cursor)?;
        reader.last_line = cursor.place_from(from);
        self.above = Some((index, first_event..reader.part.events.len()));
        Ok(())
    }

    fn finish(self, first_line: usize) -> FixtureRead<Fixture> {
        if self.readers.is_empty() {
            return Err(
                CharacterCursor::new("", first_line).error("a part line such as `violin: 1/4 D4 E4 F4 G4`")
            );
        }
        let mut parts: Vec<FixturePart> =
            self.readers.into_iter().map(|reader| reader.finish()).collect::<FixtureRead<_>>()?;
        open_with(&mut parts, &self.header.opening);
        settle::settle(&mut parts, &self.header)?;
        let expectations = expect::resolve(&parts, &self.expectations)?;
        Ok(Fixture { header: self.header, parts, expectations })
    }
}

/// Puts the tempo marks of the header at the top of the first part.
fn open_with(parts: &mut [FixturePart], opening: &[Direction]) {
    let first_bar = parts.first_mut().and_then(|part| part.bars.first_mut());
    if let Some(bar) = first_bar {
        bar.items.splice(0..0, opening.iter().cloned().map(|direction| FixtureItem::Direction(direction, 1)));
    }
}

/// Characters before the colon, if the line begins with the name of a part.
fn part_name_length(line: &str) -> Option<usize> {
    let name = line.split(':').next().filter(|name| name.len() < line.len())?;
    let plain = !name.contains(['|', '"', '=', '(', '{', '<']);
    (plain && name.starts_with(char::is_alphabetic)).then(|| name.chars().count())
}

/// Reads `Melody [sound strings.viola; abbreviation Mel.]:`.
fn read_part_name(cursor: &mut CharacterCursor<'_>, length: usize) -> FixtureRead<FixturePart> {
    const EXPECTED: &str = "[abbreviation …], [sound …] or [program 1 to 128] behind the name of the part";
    let from = cursor.position();
    let mut whole = String::new();
    while whole.chars().count() < length {
        let next = cursor.take_while(|c| c != ':');
        whole.push_str(&next);
    }
    cursor.take(':');
    let (name, details) = whole.split_once('[').unwrap_or((&whole, ""));
    let mut part = FixturePart { name: name.trim().to_owned(), ..FixturePart::default() };
    for detail in details.trim_end().trim_end_matches(']').split(';').filter(|detail| !detail.is_empty()) {
        let place = cursor.place_from(from);
        let Some((word, value)) = detail.trim().split_once(' ') else {
            return Err(place.error(EXPECTED));
        };
        match word {
            "abbreviation" => part.abbreviation = Some(value.trim().to_owned()),
            "sound" => part.sound = Some(value.trim().to_owned()),
            "program" => {
                let program = value.trim().parse().ok().filter(|program| (1..=128).contains(program));
                part.program = Some(program.ok_or_else(|| place.error(EXPECTED))?);
            }
            _ => return Err(place.error(EXPECTED)),
        }
    }
    Ok(part)
}
