//! From the model to JSON.

use arcata_score::BowDirection;
use arcata_xml::seen_json;
use serde::Serialize;

use super::document::{
    BeforeDocument, BowName, BowPlaceName, ConflictDocument, EntryDocument, ExactDocument, HookSlurDocument,
    MarkName, NotReachedDocument, ScoreDocument, SignName, SpotDocument, StateName, TakenDocument, TakenName,
};
use crate::model::{
    Address, BowPlace, Conflict, Entry, EntryForce, EntryState, Exact, HookSign, HookSlur, Layer, Mark,
    NotReached, Spot, Taken, TakenKind, VERSION,
};

/// The layer as JSON: entries in their order, each on a line of its own, with a newline at the end. The
/// same layer gives the same bytes.
///
/// ```
/// let mut layer = arcata_layer::Layer { title: "Tour".into(), ..Default::default() };
/// let text = arcata_layer::write(&layer);
/// assert!(text.starts_with("{\n\"format\": \"arcata-layer\",\n\"version\": 1,\n\"title\": \"Tour\","));
/// assert_eq!(arcata_layer::read(text.as_bytes()).unwrap(), layer);
/// ```
#[must_use]
pub fn write(layer: &Layer) -> String {
    let mut layer = layer.clone();
    layer.put_in_order();
    let mut out = String::from("{\n\"format\": \"arcata-layer\",\n");
    out.push_str(&format!("\"version\": {VERSION},\n"));
    field(&mut out, "title", &layer.title);
    field(&mut out, "owner", &layer.owner);
    field(&mut out, "ensemble", &layer.ensemble);
    field(&mut out, "date", &layer.date);
    let score = &layer.score;
    let score = ScoreDocument {
        title: score.title.clone(),
        bytes: score.bytes.clone(),
        music: score.music.clone(),
        other: score.other.clone(),
    };
    field(&mut out, "score", &score);
    lines(&mut out, "parts", &layer.parts);
    for (name, value) in &layer.other {
        out.push_str(&format!("{}: {},\n", json(name), json(value)));
    }
    if !layer.conflicts.is_empty() {
        lines(&mut out, "conflicts", &layer.conflicts.iter().map(conflict).collect::<Vec<_>>());
    }
    if !layer.orphans.is_empty() {
        lines(&mut out, "orphans", &layer.orphans.iter().map(entry).collect::<Vec<_>>());
    }
    if !layer.not_reached.is_empty() {
        lines(&mut out, "not_reached", &layer.not_reached.iter().map(not_reached).collect::<Vec<_>>());
    }
    lines(&mut out, "entries", &layer.entries.iter().map(entry).collect::<Vec<_>>());
    // The entries are the last field: no comma behind them.
    out.truncate(out.len() - 2);
    out.push_str("\n}\n");
    seen_json(out)
}

fn field<T: Serialize>(out: &mut String, name: &str, value: &T) {
    out.push_str(&format!("\"{name}\": {},\n", json(value)));
}

/// An array with one element a line.
fn lines<T: Serialize>(out: &mut String, name: &str, values: &[T]) {
    out.push_str(&format!("\"{name}\": ["));
    for (index, value) in values.iter().enumerate() {
        out.push_str(if index == 0 { "\n" } else { ",\n" });
        out.push_str(&json(value));
    }
    out.push_str(if values.is_empty() { "],\n" } else { "\n],\n" });
}

/// Strings, numbers and string-keyed maps only, which JSON can always carry.
fn json<T: Serialize + ?Sized>(value: &T) -> String {
    serde_json::to_string(value).unwrap_or_default()
}

fn spot(spot: &Spot) -> SpotDocument {
    SpotDocument {
        bar: spot.bar.clone(),
        bar_ordinal: spot.bar_ordinal,
        offset: spot.offset.to_string(),
        voice: (spot.voice != "1").then(|| spot.voice.clone()),
        pitch: spot.pitch.map(|pitch| pitch.to_string()),
        grace: spot.grace,
        copy: (spot.copy != 1).then_some(spot.copy),
    }
}

fn entry(entry: &Entry) -> EntryDocument {
    let Address { part, spot: at } = &entry.place;
    let at = spot(at);
    let mut document = EntryDocument {
        part: part.clone(),
        bar: at.bar,
        bar_ordinal: at.bar_ordinal,
        offset: at.offset,
        voice: at.voice,
        pitch: at.pitch,
        grace: at.grace,
        copy: at.copy,
        mark: MarkName::Down,
        bow: None,
        sign: None,
        place: None,
        text: None,
        to: None,
        new_from: None,
        new_to: None,
        anchor: entry.force == EntryForce::Anchor,
        owner: entry.owner.clone(),
        state: match entry.state {
            EntryState::Own => None,
            EntryState::Printed => Some(StateName::Printed),
            EntryState::LeftOut => Some(StateName::LeftOut),
        },
        written: entry.written.map(bow_name),
        before: entry.before.as_ref().map(|before| BeforeDocument {
            at: spot(&before.spot),
            bow: bow_name(before.direction),
            printed: before.printed,
            took_off: before.took_off.iter().map(taken).collect(),
        }),
        hook_slur: entry.hook_slur.as_ref().and_then(hook_slur),
        took_off: entry.took_off.as_ref().map(|list| list.iter().map(taken).collect()),
        exact: entry.exact.iter().map(exact).collect(),
        doubt: entry.doubt.clone(),
        other: entry.other.clone(),
    };
    put_mark(&mut document, &entry.mark);
    document
}

fn put_mark(document: &mut EntryDocument, mark: &Mark) {
    document.mark = match mark {
        Mark::Down => MarkName::Down,
        Mark::Up => MarkName::Up,
        Mark::Double { first: BowDirection::Down } => MarkName::DownUp,
        Mark::Double { first: BowDirection::Up } => MarkName::UpDown,
        Mark::Hook { bow, sign } => {
            document.bow = bow.map(bow_name);
            document.sign = sign_name(*sign);
            MarkName::Hook
        }
        Mark::Retake { bow } => {
            document.bow = bow.map(bow_name);
            MarkName::Retake
        }
        Mark::AsItComes => MarkName::AsItComes,
        Mark::Lift => MarkName::Lift,
        Mark::InBow { place } => {
            document.place = Some(place_name(*place));
            MarkName::InBow
        }
        Mark::Text { text } => {
            document.text = Some(text.clone());
            MarkName::Text
        }
        Mark::SlurAdded { to } => {
            document.to = Some(spot(to));
            MarkName::SlurAdded
        }
        Mark::SlurRemoved { to } => {
            document.to = Some(spot(to));
            MarkName::SlurRemoved
        }
        Mark::SlurMoved { to, new_from, new_to } => {
            document.to = Some(spot(to));
            document.new_from = new_from.as_ref().map(spot);
            document.new_to = new_to.as_ref().map(spot);
            MarkName::SlurMoved
        }
    };
}

fn bow_name(bow: BowDirection) -> BowName {
    match bow {
        BowDirection::Down => BowName::Down,
        BowDirection::Up => BowName::Up,
    }
}

/// Nothing for bow marks, which is how a hook is written unless the entry says otherwise.
fn sign_name(sign: HookSign) -> Option<SignName> {
    match sign {
        HookSign::Marks => None,
        HookSign::Dots => Some(SignName::Dots),
        HookSign::Dashes => Some(SignName::Dashes),
    }
}

/// A slur without dots or dashes is no hook's.
fn hook_slur(slur: &HookSlur) -> Option<HookSlurDocument> {
    Some(HookSlurDocument {
        from: spot(&slur.from),
        to: spot(&slur.to),
        sign: sign_name(slur.sign)?,
        hooked: slur.hooked.iter().map(spot).collect(),
        signs: slur.signs.iter().map(spot).collect(),
    })
}

fn place_name(place: BowPlace) -> BowPlaceName {
    match place {
        BowPlace::Frog => BowPlaceName::Frog,
        BowPlace::LowerHalf => BowPlaceName::LowerHalf,
        BowPlace::Middle => BowPlaceName::Middle,
        BowPlace::UpperHalf => BowPlaceName::UpperHalf,
        BowPlace::Tip => BowPlaceName::Tip,
        BowPlace::Whole => BowPlaceName::Whole,
    }
}

fn exact(exact: &Exact) -> ExactDocument {
    ExactDocument { into: exact.into.clone(), after: exact.after, skip: exact.skip, text: exact.text.clone() }
}

fn not_reached(left: &NotReached) -> NotReachedDocument {
    NotReachedDocument {
        from: left.from.clone(),
        not_to: left.part.clone(),
        bar: left.bar.clone(),
        bar_ordinal: left.bar_ordinal,
        marks: left.marks,
        why: left.why.clone(),
    }
}

fn taken(taken: &Taken) -> TakenDocument {
    let mark = match taken.kind {
        TakenKind::Down => TakenName::Down,
        TakenKind::Up => TakenName::Up,
        TakenKind::SlurStart => TakenName::SlurStart,
        TakenKind::SlurStop => TakenName::SlurStop,
    };
    TakenDocument { mark, exact: exact(&taken.exact) }
}

fn conflict(conflict: &Conflict) -> ConflictDocument {
    let list = |entries: &[Entry]| entries.iter().map(entry).collect();
    ConflictDocument {
        part: conflict.place.part.clone(),
        at: spot(&conflict.place.spot),
        base: list(&conflict.base),
        first_owner: conflict.first_owner.clone(),
        first: list(&conflict.first),
        second_owner: conflict.second_owner.clone(),
        second: list(&conflict.second),
    }
}
