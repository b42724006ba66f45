//! Shorthand printed the one way in which all of it is written.

use std::fmt::{self, Display, Formatter, Write as _};

use arcata_score::BowDirection;
use arcata_score::places::tokens::tokens;
use arcata_score::places::{Cursor, quoted};
use arcata_score::words::is_roman;

use super::header;
use super::syntax::{Also, Bow, Item, NoteSpot, ShorthandLine, Statement, Text, Where};
use crate::model::{BowPlace, EntryForce};

impl Display for Text {
    fn fmt(&self, out: &mut Formatter<'_>) -> fmt::Result {
        self.lines.iter().try_for_each(|line| writeln!(out, "{line}"))
    }
}

impl Display for ShorthandLine {
    fn fmt(&self, out: &mut Formatter<'_>) -> fmt::Result {
        if let Some(movement) = &self.movement {
            let space = if self.items.is_empty() { "" } else { " " };
            write!(out, "{}:{space}", movement.value)?;
        }
        let mut before: Option<&Item> = None;
        for item in &self.items {
            match (before, item) {
                (None, _) => {}
                (Some(Item::Sections(_)), Item::Statement(_)) => out.write_char(' ')?,
                (Some(_), Item::Sections(_)) => out.write_str("; ")?,
                (Some(_), Item::Statement(_)) => out.write_str(", ")?,
            }
            match item {
                Item::Sections(names) => {
                    for (index, name) in names.iter().enumerate() {
                        let comma = if index > 0 { ", " } else { "" };
                        write!(out, "{comma}{}", section(&name.value))?;
                    }
                    out.write_char(':')?;
                }
                Item::Statement(statement) => write!(out, "{}", statement.value)?,
            }
            before = Some(item);
        }
        match &self.comment {
            Some(comment) if self.items.is_empty() && self.movement.is_none() => {
                write!(out, "{}", format!("# {comment}").trim_end())
            }
            Some(comment) => write!(out, "{}", format!("  # {comment}").trim_end()),
            None => Ok(()),
        }
    }
}

/// A section's name, in quotation marks where it would not be read as the one name that it is.
fn section(name: &str) -> String {
    let line = format!("{name}:");
    let (found, comment) = tokens(&line);
    let mut cursor = Cursor::new(&found, 1, &line);
    // A number by itself would take the name before it along, a numeral would be a movement.
    let whole = comment.is_none()
        && !is_roman(&name.trim().to_uppercase())
        && !found.first().is_some_and(|token| found.len() == 2 && header::is_number_alone(token))
        && header::begins(&cursor)
        && header::sections(&mut cursor).is_ok_and(|names| {
            matches!(names.as_slice(), [only] if only.value == name) && cursor.is_at_end()
        });
    if whole { name.to_owned() } else { quoted(name) }
}

impl Display for Statement {
    fn fmt(&self, out: &mut Formatter<'_>) -> fmt::Result {
        if self.force == EntryForce::Anchor {
            out.write_str("anchor ")?;
        }
        for (index, place) in self.places.iter().enumerate() {
            let comma = if index > 0 { ", " } else { "" };
            write!(out, "{comma}{}", place.value)?;
        }
        if let Some(bow) = &self.bow {
            write!(out, " {bow}")?;
        }
        self.also.iter().try_for_each(|also| write!(out, " {also}"))
    }
}

impl Display for Where {
    fn fmt(&self, out: &mut Formatter<'_>) -> fmt::Result {
        write!(out, "{}", self.from)?;
        let said = |to: &NoteSpot| {
            // Behind a pitch a hyphen would be taken for a part of it.
            let space = if self.from.pitch.is_some() { " " } else { "" };
            write!(out, "{space}-{space}{to}")
        };
        self.to.as_ref().map_or(Ok(()), said)
    }
}

impl Display for NoteSpot {
    fn fmt(&self, out: &mut Formatter<'_>) -> fmt::Result {
        write!(out, "{}", self.point())?;
        if let Some(voice) = &self.voice {
            let plain = !voice.is_empty() && voice.bytes().all(|letter| letter.is_ascii_digit());
            write!(out, " voice {}", if plain { voice.clone() } else { quoted(voice) })?;
        }
        if let Some(pitch) = &self.pitch {
            write!(out, " pitch {pitch}")?;
        }
        if let Some(grace) = self.grace {
            write!(out, " grace {grace}")?;
        }
        self.copy.map_or(Ok(()), |copy| write!(out, " copy {copy}"))
    }
}

const fn way(direction: BowDirection) -> &'static str {
    match direction {
        BowDirection::Down => "down",
        BowDirection::Up => "up",
    }
}

impl Display for Bow {
    fn fmt(&self, out: &mut Formatter<'_>) -> fmt::Result {
        let then = |bow: &Option<BowDirection>| bow.map_or(String::new(), |bow| format!(" {}", way(bow)));
        match self {
            Self::Directions(strokes) => {
                let said: Vec<&str> = strokes.iter().map(|stroke| way(*stroke)).collect();
                out.write_str(&said.join(" "))
            }
            Self::Double { first } => write!(out, "{} and {}", way(*first), way(first.other())),
            Self::Hook { count, bow, sign } => {
                let count = count.map_or(String::new(), |count| format!(" {count}"));
                let sign = sign.word().map_or(String::new(), |sign| format!(" {sign}"));
                write!(out, "hook{count}{sign}{}", then(bow))
            }
            Self::Retake { bow } => write!(out, "retake{}", then(bow)),
            Self::AsItComes => out.write_str("as it comes"),
        }
    }
}

impl Display for Also {
    fn fmt(&self, out: &mut Formatter<'_>) -> fmt::Result {
        match self {
            Self::Lift => out.write_str("lift"),
            Self::InBow(place) => out.write_str(in_bow(*place)),
            Self::Text(text) => out.write_str(&quoted(text)),
            Self::Slur => out.write_str("slur"),
            Self::NoSlur => out.write_str("no slur"),
            Self::SlurNow(place) => write!(out, "slur now {}", place.value),
        }
    }
}

const fn in_bow(place: BowPlace) -> &'static str {
    match place {
        BowPlace::Frog => "at the frog",
        BowPlace::LowerHalf => "lower half",
        BowPlace::Middle => "middle of the bow",
        BowPlace::UpperHalf => "upper half",
        BowPlace::Tip => "at the tip",
        BowPlace::Whole => "whole bow",
    }
}
