//! What a fixture says, as plain facts a test can hold a reader's result against.

use std::collections::BTreeMap;

use crate::fixture::Fixture;
use crate::model::{FixtureEvent, FixturePart, FixtureSound, Fraction, WrittenPitch};

/// One `note` element: a note, a note of a chord, or a rest.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct WrittenNote {
    /// Place of the part in the score, from 0.
    pub part_index: usize,
    /// Place of the bar in the part, from 0.
    pub bar_index: usize,
    /// From the start of the bar, in whole notes.
    pub onset: Fraction,
    /// Whole notes it takes, tuplets counted in; zero for a grace note.
    pub length: Fraction,
    /// Written pitch; none for a rest.
    pub pitch: Option<WrittenPitch>,
    /// Voice, from 1.
    pub voice: u32,
    /// Staff, from 1.
    pub staff: u32,
    /// How it stands in its bar.
    pub kind: NoteStands,
    /// Which ties it has.
    pub tie: TieFact,
}

/// How a note stands in its bar.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoteStands {
    /// A note, or the first note of a chord.
    Note,
    /// A further note of a chord.
    ChordNote,
    /// A grace note; of a chord before the beat every note is one.
    Grace,
    /// A cue, not played.
    Cue,
    /// A rest.
    Rest,
}

/// The ties of a note.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TieFact {
    /// Not tied.
    None,
    /// Tied to the note after it.
    Start,
    /// Tied to the note before it.
    Stop,
    /// Tied on both sides.
    Both,
}

/// A slur with both its ends.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct WrittenSlur {
    /// Place of the part in the score, from 0.
    pub part_index: usize,
    /// The slur's number in MusicXML.
    pub number: u32,
    /// How many `note` elements of the part stand before its first note.
    pub first_note: usize,
    /// How many `note` elements of the part stand before its last note or chord.
    pub last_note: usize,
}

/// A bar of one part.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct WrittenBar {
    /// Place of the part in the score, from 0.
    pub part_index: usize,
    /// The printed number.
    pub label: String,
    /// Whole notes of music in it.
    pub length: Fraction,
}

pub(crate) fn notes(fixture: &Fixture) -> Vec<WrittenNote> {
    let mut notes = Vec::new();
    for (part_index, part) in fixture.parts.iter().enumerate() {
        for event in &part.events {
            notes.extend(notes_of(event, part_index));
        }
    }
    notes
}

fn notes_of(event: &FixtureEvent, part_index: usize) -> Vec<WrittenNote> {
    let settled = &event.settled;
    let base = WrittenNote {
        part_index,
        bar_index: settled.bar,
        onset: settled.onset,
        length: settled.length,
        pitch: None,
        voice: settled.voice,
        staff: event.staff,
        kind: NoteStands::Rest,
        tie: TieFact::None,
    };
    match &event.sound {
        FixtureSound::Gap => Vec::new(),
        FixtureSound::Rest | FixtureSound::BarRest => vec![base],
        FixtureSound::Notes(chord) => chord
            .iter()
            .enumerate()
            .map(|(index, note)| WrittenNote {
                pitch: Some(note.pitch),
                kind: kind_of(event, index),
                tie: match (note.tied_from, note.tied_on) {
                    (false, false) => TieFact::None,
                    (false, true) => TieFact::Start,
                    (true, false) => TieFact::Stop,
                    (true, true) => TieFact::Both,
                },
                ..base.clone()
            })
            .collect(),
    }
}

fn kind_of(event: &FixtureEvent, index_in_chord: usize) -> NoteStands {
    if event.grace.is_some() {
        NoteStands::Grace
    } else if event.is_cue() {
        NoteStands::Cue
    } else if index_in_chord > 0 {
        NoteStands::ChordNote
    } else {
        NoteStands::Note
    }
}

pub(crate) fn slurs(fixture: &Fixture) -> Vec<WrittenSlur> {
    fixture.parts.iter().enumerate().flat_map(|(index, part)| slurs_of(part, index)).collect()
}

fn slurs_of(part: &FixturePart, part_index: usize) -> Vec<WrittenSlur> {
    let mut open: BTreeMap<u32, usize> = BTreeMap::new();
    let mut slurs = Vec::new();
    for event in &part.events {
        let here = event.settled.note_element;
        for number in &event.slur_stops {
            if let Some(first_note) = open.remove(number) {
                slurs.push(WrittenSlur { part_index, number: *number, first_note, last_note: here });
            }
        }
        for number in &event.slur_starts {
            open.insert(*number, here);
        }
    }
    slurs
}

pub(crate) fn bars(fixture: &Fixture) -> Vec<WrittenBar> {
    let mut bars = Vec::new();
    for (part_index, part) in fixture.parts.iter().enumerate() {
        bars.extend(part.bars.iter().map(|bar| WrittenBar {
            part_index,
            label: bar.label.clone(),
            length: bar.length,
        }));
    }
    bars
}
