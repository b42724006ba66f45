//! A layer written as shorthand.

use arcata_score::ChordRole;

use super::strokes::is_played;
use super::syntax::{Also, At, BarName, Bow, Item, NoteSpot, ShorthandLine, Statement, Text, Where, Within};
use crate::address::{Addresses, NamedNote};
use crate::model::{Address, Entry, EntryForce, Layer, Mark, PitchName, Spot};

/// Writes a layer as shorthand: a heading a section and, where the file has several, a movement; a line a bar. Entered again it decides the same about
/// the same notes. What shorthand has no words for does not come along: owners of single entries, and what
/// entries remember of a file. Entries that the score has no note for become comments.
///
/// ```
/// use arcata_layer::{Addresses, Entry, Layer, Mark, shorthand};
/// # let text = arcata_testkit::musicxml("violin: 1/4 C5 D5 E5 F5");
/// # let document = arcata_xml::Document::parse(text.into_bytes(), &Default::default()).unwrap();
/// let score = arcata_score::read(&document);
/// let addresses = Addresses::new(&score);
/// let place = addresses.place(0, arcata_score::NoteId(1)).unwrap();
/// let layer = Layer {
///     parts: addresses.part_keys().to_vec(),
///     entries: vec![Entry::new(place, Mark::Up)],
///     ..Layer::default()
/// };
/// assert_eq!(shorthand::of_layer(&layer, &addresses).to_string(), "violin:\n1/2 up\n");
/// ```
#[must_use]
pub fn of_layer(layer: &Layer, addresses: &Addresses<'_>) -> Text {
    let mut lines: Vec<ShorthandLine> = Vec::new();
    let mut heading: Option<&str> = None;
    let mut bar: Option<u32> = None;
    let score = addresses.score();
    let mut movement: Option<usize> = None;
    for entry in &layer.entries {
        if heading != Some(entry.place.part.as_str()) {
            heading = Some(&entry.place.part);
            bar = None;
            if !lines.is_empty() {
                lines.push(ShorthandLine::default());
            }
            let name = At::nowhere(entry.place.part.clone());
            lines.push(ShorthandLine { items: vec![Item::Sections(vec![name])], ..ShorthandLine::default() });
        }
        let Some((index, statement)) = statement(entry, addresses) else {
            let comment = format!("not in this score: {}, {}", entry.place, entry.mark.words());
            let comment = comment.split_whitespace().collect::<Vec<_>>().join(" ");
            lines.push(ShorthandLine { comment: Some(comment), ..ShorthandLine::default() });
            bar = None;
            continue;
        };
        let of = score.movement_of(index);
        if score.movements.len() > 1 && movement != Some(of) {
            movement = Some(of);
            let number = At::nowhere(score.movements[of].numeral());
            lines.push(ShorthandLine { movement: Some(number), ..ShorthandLine::default() });
            bar = None;
        }
        match lines.last_mut() {
            Some(line) if bar == Some(index) => put(&mut line.items, statement),
            _ => {
                lines.push(ShorthandLine {
                    items: vec![Item::Statement(At::nowhere(statement))],
                    ..ShorthandLine::default()
                });
            }
        }
        bar = Some(index);
    }
    Text { lines }
}

/// Puts a statement behind the others of its bar, or into the last where both speak of one note.
fn put(items: &mut Vec<Item>, statement: Statement) {
    if let Some(Item::Statement(At { value: last, .. })) = items.last_mut()
        && last.places == statement.places
        && last.places[0].value.to.is_none()
        && last.force == statement.force
        && (last.bow.is_none() || statement.bow.is_none())
    {
        last.bow = last.bow.take().or(statement.bow);
        last.also.extend(statement.also);
        return;
    }
    items.push(Item::Statement(At::nowhere(statement)));
}

/// The bar and what is said of it; nothing where the score has no such note.
fn statement(entry: &Entry, addresses: &Addresses<'_>) -> Option<(u32, Statement)> {
    let found = addresses.find(&entry.place).ok()?;
    let bar = addresses.bar(&entry.place.spot).ok()?;
    let from = note_spot(found, addresses)?;
    let at = |spot: &Spot| {
        let place = Address { part: entry.place.part.clone(), spot: spot.clone() };
        note_spot(addresses.find(&place).ok()?, addresses)
    };
    let (mut bow, mut also, mut to) = (None, Vec::new(), None);
    match &entry.mark {
        Mark::Down | Mark::Up => {
            let down = entry.mark == Mark::Down;
            let way = if down { arcata_score::BowDirection::Down } else { arcata_score::BowDirection::Up };
            bow = Some(Bow::Directions(vec![way]));
        }
        Mark::Double { first } => bow = Some(Bow::Double { first: *first }),
        Mark::Hook { bow: way, sign } => bow = Some(Bow::Hook { count: None, bow: *way, sign: *sign }),
        Mark::Retake { bow: way } => bow = Some(Bow::Retake { bow: *way }),
        Mark::AsItComes => bow = Some(Bow::AsItComes),
        Mark::Lift => also.push(Also::Lift),
        Mark::InBow { place } => also.push(Also::InBow(*place)),
        Mark::Text { text } => also.push(Also::Text(text.clone())),
        Mark::SlurAdded { to: end } => {
            to = Some(at(end)?);
            also.push(Also::Slur);
        }
        Mark::SlurRemoved { to: end } => {
            to = Some(at(end)?);
            also.push(Also::NoSlur);
        }
        Mark::SlurMoved { to: end, new_from, new_to } => {
            let end = at(end)?;
            let now_from = new_from.as_ref().map_or(Some(from.clone()), at)?;
            let now_to = new_to.as_ref().map_or(Some(end.clone()), at)?;
            to = Some(end);
            also.push(Also::SlurNow(Box::new(At::nowhere(Where { from: now_from, to: Some(now_to) }))));
        }
    }
    let anchored =
        entry.force == EntryForce::Anchor && bow.as_ref().is_some_and(|bow| *bow != Bow::AsItComes);
    let force = if anchored { EntryForce::Anchor } else { EntryForce::Mark };
    let places = vec![At::nowhere(Where { from, to })];
    Some((bar, Statement { force, places, bow, also }))
}

/// A note as it is typed: no more is said of it than tells it from the others.
fn note_spot(found: NamedNote, addresses: &Addresses<'_>) -> Option<NoteSpot> {
    let score = addresses.score();
    let part = &score.parts[found.part];
    let note = part.note(found.note);
    let spot = addresses.spot(found.part, found.note)?;
    // The movement stands above it.
    let movement = score.movements.get(score.movement_of(note.bar));
    let inside = |index: u32| movement.is_none_or(|movement| movement.bars.contains(&index));
    let bars = || score.bars.iter().zip(0..).filter(|(bar, index)| bar.label == spot.bar && inside(*index));
    let nth = bars().take_while(|(_, index)| *index < note.bar).count() + 1;
    let nth = (bars().nth(1).is_some()).then(|| u16::try_from(nth).unwrap_or(u16::MAX));
    let here = addresses.at(found.part, note.bar, spot.offset);
    let main: Vec<_> = here
        .iter()
        .filter(|id| is_played(part.note(**id)) && part.note(**id).chord == ChordRole::Main)
        .collect();
    let first = main.iter().min_by_key(|id| (part.note(***id).voice, ***id));
    let is_first = first.is_some_and(|id| **id == found.note);
    let in_voice = main.iter().find(|id| part.note(***id).voice == note.voice);
    let leads_voice = in_voice.is_some_and(|id| **id == found.note);
    // A voice named in the file may have no name that can be typed; it is only said where it is needed.
    let voice = (!is_first).then(|| spot.voice.clone());
    let pitch = if is_first || leads_voice { None } else { spot.pitch };
    Some(NoteSpot {
        bar: Some(BarName { label: spot.bar.clone(), nth }),
        within: Within::Beat(score.beat_at(found.part, note.bar, spot.offset)),
        voice,
        pitch: pitch.map(|PitchName(pitch)| PitchName(pitch).to_string()),
        grace: spot.grace,
        copy: (spot.copy > 1).then_some(spot.copy),
    })
}
