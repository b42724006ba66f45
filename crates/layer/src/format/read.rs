//! From JSON to the model, with errors that a person can mend the file by.

use std::fmt;

use arcata_score::places::bar_said;
use arcata_score::{BowDirection, Length};
use serde::Deserialize;
use serde_json::Value;
use serde_json::error::Category;

use super::document::{
    BowName, BowPlaceName, ConflictDocument, EntryDocument, ExactDocument, HookSlurDocument, LayerDocument,
    MarkName, NotReachedDocument, SignName, SpotDocument, StateName, TakenDocument, TakenName,
};
use crate::model::{
    Address, BowPlace, Conflict, Entry, EntryForce, EntryState, Exact, HookSign, HookSlur, Layer, Mark,
    MarkBefore, NotReached, PitchName, ScoreIdentity, Spot, Taken, TakenKind, VERSION,
};

/// Largest file that is read. A symphony with a mark on every note takes under 30 MB (a limit).
const LARGEST_FILE: usize = 256 << 20;

/// Why a layer cannot be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ReadError {
    /// What is wrong.
    pub kind: ReadErrorKind,
    /// Line, from 1; 0 where no line can be named.
    pub line: usize,
}

/// What can be wrong with a layer file.
#[derive(Clone, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum ReadErrorKind {
    /// It is larger than any layer.
    TooLarge {
        /// The limit in bytes.
        limit: usize,
    },
    /// It is JSON of something else, or no JSON at all.
    NotALayer,
    /// It ends in the middle.
    CutShort,
    /// It is written in a later version of the format.
    LaterVersion {
        /// The version it gives.
        version: u64,
    },
    /// It is no sound JSON, or a field is missing or of the wrong kind.
    Unsound {
        /// What was found or missing, as the JSON reader says it.
        detail: String,
    },
    /// An entry cannot be understood.
    Entry {
        /// Which, from 1.
        number: usize,
        /// The place it gives.
        place: String,
        /// What is wrong with it and what would be right.
        detail: String,
    },
}

impl fmt::Display for ReadError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.line > 0 {
            write!(out, "line {}: ", self.line)?;
        }
        match &self.kind {
            ReadErrorKind::TooLarge { limit } => {
                write!(out, "the file is larger than {limit} bytes; no bowing layer is")
            }
            ReadErrorKind::NotALayer => {
                write!(out, "this is not a bowing layer: a layer is JSON with \"format\": \"arcata-layer\"")
            }
            ReadErrorKind::CutShort => write!(
                out,
                "the file ends in the middle, as when writing was broken off; look beside it for its \
                 backup, or take it from version control"
            ),
            ReadErrorKind::LaterVersion { version } => write!(
                out,
                "the layer is written in version {version} of the format; this program reads version \
                 {VERSION}. Take a newer program, or have the layer written in version {VERSION}"
            ),
            ReadErrorKind::Unsound { detail } => write!(out, "the layer cannot be read: {detail}"),
            ReadErrorKind::Entry { number, place, detail } => {
                write!(out, "entry {number} ({place}): {detail}")
            }
        }
    }
}

impl std::error::Error for ReadError {}

/// The two fields by which a file says what it is.
#[derive(Deserialize)]
struct FormatHeading {
    format: Option<String>,
    version: Option<u64>,
}

/// Reads a layer and puts its entries in order.
///
/// # Errors
///
/// One [`ReadError`] for a file that is no layer, is cut short, is of a later version, or holds an entry
/// that cannot be understood.
pub fn read(bytes: &[u8]) -> Result<Layer, ReadError> {
    let failed = |kind| ReadError { kind, line: 0 };
    if bytes.len() > LARGEST_FILE {
        return Err(failed(ReadErrorKind::TooLarge { limit: LARGEST_FILE }));
    }
    let bytes = bytes.strip_prefix(b"\xEF\xBB\xBF").unwrap_or(bytes);
    // The heading first: what a later version says is not for this one to judge.
    let heading: FormatHeading = serde_json::from_slice(bytes).map_err(|error| unsound(&error, bytes))?;
    if heading.format.as_deref() != Some("arcata-layer") {
        return Err(failed(ReadErrorKind::NotALayer));
    }
    match heading.version {
        Some(version) if version == u64::from(VERSION) => {}
        Some(version) if version > u64::from(VERSION) => {
            return Err(failed(ReadErrorKind::LaterVersion { version }));
        }
        _ => {
            let detail = format!("\"version\" is missing or no version there is; write {VERSION}");
            return Err(failed(ReadErrorKind::Unsound { detail }));
        }
    }
    let document: LayerDocument = serde_json::from_slice(bytes).map_err(|error| unsound(&error, bytes))?;
    let mut layer = Layer {
        title: document.title,
        owner: document.owner,
        ensemble: document.ensemble,
        date: document.date,
        score: ScoreIdentity {
            title: document.score.title,
            bytes: document.score.bytes,
            music: document.score.music,
            other: document.score.other,
        },
        parts: document.parts,
        entries: entries(document.entries)?,
        conflicts: document.conflicts.into_iter().map(conflict).collect::<Result<_, _>>()?,
        orphans: entries(document.orphans)?,
        not_reached: document.not_reached.into_iter().map(not_reached).collect(),
        other: document.other,
    };
    layer.put_in_order();
    Ok(layer)
}

fn unsound(error: &serde_json::Error, bytes: &[u8]) -> ReadError {
    let begins_otherwise = bytes.iter().find(|byte| !byte.is_ascii_whitespace()) != Some(&b'{');
    let kind = match error.classify() {
        _ if begins_otherwise => ReadErrorKind::NotALayer,
        Category::Eof => ReadErrorKind::CutShort,
        // Its own line number is said by ours.
        _ => {
            let detail = error.to_string();
            let detail = detail.rsplit_once(" at line ").map_or(detail.as_str(), |(said, _)| said);
            ReadErrorKind::Unsound { detail: detail.to_owned() }
        }
    };
    ReadError { kind, line: error.line() }
}

fn entries(documents: Vec<EntryDocument>) -> Result<Vec<Entry>, ReadError> {
    let numbered = documents.into_iter().enumerate();
    numbered.map(|(index, document)| entry(index + 1, document)).collect()
}

/// What is wrong with an entry and how it would be right.
type EntryProblem = String;

fn entry(number: usize, document: EntryDocument) -> Result<Entry, ReadError> {
    let place = format!("{}, {}", document.part, bar_said("bar", None, &document.bar));
    let failed = |detail: EntryProblem| ReadError {
        kind: ReadErrorKind::Entry { number, place: place.clone(), detail },
        line: 0,
    };
    let mark = mark(&document).map_err(failed)?;
    let at = SpotDocument {
        bar: document.bar,
        bar_ordinal: document.bar_ordinal,
        offset: document.offset,
        voice: document.voice,
        pitch: document.pitch,
        grace: document.grace,
        copy: document.copy,
    };
    let mut other = document.other;
    Ok(Entry {
        place: Address { part: document.part, spot: spot(at).map_err(failed)? },
        mark,
        force: if document.anchor { EntryForce::Anchor } else { EntryForce::Mark },
        owner: document.owner,
        state: match document.state {
            // As the first form said it, before there were other states.
            None if other.remove("already_printed") == Some(Value::Bool(true)) => EntryState::Printed,
            None => EntryState::Own,
            Some(StateName::Printed) => EntryState::Printed,
            Some(StateName::LeftOut) => EntryState::LeftOut,
        },
        written: document.written.map(direction),
        before: match document.before {
            Some(before) => Some(MarkBefore {
                spot: spot(before.at).map_err(failed)?,
                direction: direction(before.bow),
                printed: before.printed,
                took_off: before.took_off.into_iter().map(taken).collect(),
            }),
            None => None,
        },
        hook_slur: document.hook_slur.map(hook_slur).transpose().map_err(failed)?,
        took_off: document.took_off.map(|list| list.into_iter().map(taken).collect()),
        exact: document.exact.into_iter().map(exact).collect(),
        doubt: document.doubt,
        other,
    })
}

fn hook_slur(document: HookSlurDocument) -> Result<HookSlur, EntryProblem> {
    let spots = |list: Vec<SpotDocument>| list.into_iter().map(spot).collect::<Result<_, _>>();
    Ok(HookSlur {
        from: spot(document.from)?,
        to: spot(document.to)?,
        sign: hook_sign(document.sign),
        hooked: spots(document.hooked)?,
        signs: spots(document.signs)?,
    })
}

fn spot(document: SpotDocument) -> Result<Spot, EntryProblem> {
    let offset = length(&document.offset).ok_or_else(|| {
        format!(
            "\"offset\": \"{}\" is no length; write whole notes as a fraction, such as 3/8",
            document.offset
        )
    })?;
    let pitch = match &document.pitch {
        None => None,
        Some(text) => Some(
            PitchName::parse(text)
                .ok_or_else(|| format!("\"pitch\": \"{text}\" is no pitch; write one like F#5, Bb3 or x"))?,
        ),
    };
    if document.copy == Some(0) || document.grace == Some(0) || document.bar_ordinal == Some(0) {
        return Err("\"bar_ordinal\", \"grace\" and \"copy\" count from 1".to_owned());
    }
    Ok(Spot {
        bar: document.bar,
        bar_ordinal: document.bar_ordinal,
        offset,
        voice: document.voice.unwrap_or_else(|| "1".to_owned()),
        pitch,
        grace: document.grace,
        copy: document.copy.unwrap_or(1),
    })
}

fn length(text: &str) -> Option<Length> {
    let (numerator, denominator) = text.split_once('/').unwrap_or((text, "1"));
    let (numerator, denominator): (i64, i64) =
        (numerator.trim().parse().ok()?, denominator.trim().parse().ok()?);
    (denominator > 0 && numerator >= 0).then(|| Length::new(numerator, denominator))
}

fn mark(document: &EntryDocument) -> Result<Mark, EntryProblem> {
    let bow = document.bow.map(direction);
    let other_spot = |spot_document: &Option<SpotDocument>| spot_document.clone().map(spot).transpose();
    if document.sign.is_some() && !matches!(document.mark, MarkName::Hook) {
        return Err("\"sign\" says how a hook is written; take it out, or make the mark a hook".to_owned());
    }
    let to = || other_spot(&document.to)?.ok_or_else(|| "a slur needs \"to\", its last note".to_owned());
    Ok(match document.mark {
        MarkName::Down => Mark::Down,
        MarkName::Up => Mark::Up,
        MarkName::DownUp => Mark::Double { first: BowDirection::Down },
        MarkName::UpDown => Mark::Double { first: BowDirection::Up },
        MarkName::Hook => Mark::Hook { bow, sign: document.sign.map_or(HookSign::Marks, hook_sign) },
        MarkName::Retake => Mark::Retake { bow },
        MarkName::AsItComes => Mark::AsItComes,
        MarkName::Lift => Mark::Lift,
        MarkName::InBow => {
            let place = document.place.ok_or(
                "a mark \"in bow\" needs \"place\"; write frog, lower-half, middle, upper-half, tip or whole",
            )?;
            Mark::InBow { place: bow_place(place) }
        }
        MarkName::Text => {
            let text = document.text.clone().filter(|text| !text.trim().is_empty());
            Mark::Text { text: text.ok_or("a mark \"text\" needs \"text\", the words to print")? }
        }
        MarkName::SlurAdded => Mark::SlurAdded { to: to()? },
        MarkName::SlurRemoved => Mark::SlurRemoved { to: to()? },
        MarkName::SlurMoved => {
            let (new_from, new_to) = (other_spot(&document.new_from)?, other_spot(&document.new_to)?);
            if new_from.is_none() && new_to.is_none() {
                return Err("a slur moved needs \"new_from\" or \"new_to\"".to_owned());
            }
            Mark::SlurMoved { to: to()?, new_from, new_to }
        }
    })
}

fn direction(bow: BowName) -> BowDirection {
    match bow {
        BowName::Down => BowDirection::Down,
        BowName::Up => BowDirection::Up,
    }
}

fn hook_sign(sign: SignName) -> HookSign {
    match sign {
        SignName::Dots => HookSign::Dots,
        SignName::Dashes => HookSign::Dashes,
    }
}

fn bow_place(place: BowPlaceName) -> BowPlace {
    match place {
        BowPlaceName::Frog => BowPlace::Frog,
        BowPlaceName::LowerHalf => BowPlace::LowerHalf,
        BowPlaceName::Middle => BowPlace::Middle,
        BowPlaceName::UpperHalf => BowPlace::UpperHalf,
        BowPlaceName::Tip => BowPlace::Tip,
        BowPlaceName::Whole => BowPlace::Whole,
    }
}

fn exact(document: ExactDocument) -> Exact {
    Exact { into: document.into, after: document.after, skip: document.skip, text: document.text }
}

fn not_reached(document: NotReachedDocument) -> NotReached {
    NotReached {
        from: document.from,
        part: document.not_to,
        bar_ordinal: document.bar_ordinal,
        bar: document.bar,
        marks: document.marks,
        why: document.why,
    }
}

fn taken(document: TakenDocument) -> Taken {
    let kind = match document.mark {
        TakenName::Down => TakenKind::Down,
        TakenName::Up => TakenKind::Up,
        TakenName::SlurStart => TakenKind::SlurStart,
        TakenName::SlurStop => TakenKind::SlurStop,
    };
    Taken { kind, exact: exact(document.exact) }
}

fn conflict(document: ConflictDocument) -> Result<Conflict, ReadError> {
    let at = spot(document.at.clone()).map_err(|detail| {
        let place = format!("conflict at {}, {}", document.part, bar_said("bar", None, &document.at.bar));
        ReadError { kind: ReadErrorKind::Entry { number: 0, place, detail }, line: 0 }
    })?;
    Ok(Conflict {
        place: Address { part: document.part, spot: at },
        base: entries(document.base)?,
        first: entries(document.first)?,
        second: entries(document.second)?,
        first_owner: document.first_owner,
        second_owner: document.second_owner,
    })
}
