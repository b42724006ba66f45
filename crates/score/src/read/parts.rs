//! `<part-list>`: who plays.

use std::collections::BTreeMap;

use arcata_xml::{Element, NodeId, Tag};

use super::numbers::integer_in;
use crate::instrument::{PartHead, Recognised, RecognisedBy, recognise};
use crate::{Instrument, Part, Players};

/// What is known of a part that nobody has listed.
pub(super) const UNKNOWN: Recognised =
    Recognised { instrument: Instrument::NotBowed, players: Players::Unknown, by: RecognisedBy::Nothing };

/// A `<score-part>` and what it tells.
pub(super) struct ListedPart {
    pub(super) node: NodeId,
    pub(super) name: String,
    abbreviation: String,
    pub(super) recognised: Recognised,
}

/// The listed parts by their ids; of two with the same id the first.
pub(super) fn part_list(root: Element<'_>) -> BTreeMap<String, ListedPart> {
    let mut listed = BTreeMap::new();
    let parts = root.child(Tag::PART_LIST).into_iter().flat_map(|list| list.children_named(Tag::SCORE_PART));
    for part in parts {
        let id = part.attribute("id").unwrap_or_default().into_owned();
        listed.entry(id).or_insert_with(|| read_listed(part));
    }
    listed
}

fn read_listed(part: Element<'_>) -> ListedPart {
    let name = displayed(part, Tag::PART_NAME, Tag::PART_NAME_DISPLAY);
    let abbreviation = displayed(part, Tag::PART_ABBREVIATION, Tag::PART_ABBREVIATION_DISPLAY);
    let player = part.child(Tag::SCORE_INSTRUMENT);
    let inside = |tag| player.and_then(|player| player.child(tag));
    let text = |tag| inside(tag).map(Element::text).unwrap_or_default();
    let midi_program = part
        .child(Tag::MIDI_INSTRUMENT)
        .and_then(|midi| midi.child(Tag::MIDI_PROGRAM))
        .and_then(integer_in)
        .and_then(|program| u8::try_from(program).ok());
    let mut recognised = recognise(&PartHead {
        name: &name,
        abbreviation: &abbreviation,
        instrument_name: &text(Tag::INSTRUMENT_NAME),
        instrument_sound: &text(Tag::INSTRUMENT_SOUND),
        midi_program,
    });
    recognised.players = match recognised.players {
        Players::Unknown if inside(Tag::ENSEMBLE).is_some() => Players::Section,
        Players::Unknown if inside(Tag::SOLO).is_some() => Players::Solo,
        known => known,
    };
    ListedPart { node: part.id(), name, abbreviation, recognised }
}

/// The name as printed: the display form where there is one.
fn displayed(part: Element<'_>, plain: Tag, display: Tag) -> String {
    let plain = part.child(plain).map(|name| name.text().into_owned()).unwrap_or_default();
    if !plain.is_empty() {
        return plain;
    }
    let pieces =
        part.child(display).into_iter().flat_map(|display| display.children_named(Tag::DISPLAY_TEXT));
    pieces.map(|piece| piece.text().into_owned()).collect()
}

/// A part without any music yet.
pub(super) fn empty_part(id: &str, listed: Option<&ListedPart>) -> Part {
    let (name, abbreviation) =
        listed.map(|listed| (listed.name.clone(), listed.abbreviation.clone())).unwrap_or_default();
    let recognised = listed.map_or(UNKNOWN, |listed| listed.recognised);
    Part {
        id: id.to_owned(),
        name,
        abbreviation,
        instrument: recognised.instrument,
        players: recognised.players,
        transpose_cents: 0,
        staves: 1,
        voices: Vec::new(),
        notes: Vec::new(),
        slurs: Vec::new(),
        open_slurs: Vec::new(),
        dynamics: Vec::new(),
        swells: Vec::new(),
        instructions: Vec::new(),
        meters: Vec::new(),
        keys: Vec::new(),
        clefs: Vec::new(),
        measures: Vec::new(),
    }
}
