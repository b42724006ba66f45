//! The slurs of a part while some are taken off and others put on.

use arcata_score::{NoteId, Part, SlurEnd};
use arcata_xml::NodeId;

/// Slur numbers that MusicXML has.
const NUMBERS: std::ops::RangeInclusive<u8> = 1..=16;

/// A slur as it stands by now.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct SlurStanding {
    pub(crate) from: NoteId,
    pub(crate) to: NoteId,
    pub(crate) number: u8,
}

/// The slurs of one part by now.
#[derive(Clone, Debug, Default)]
pub(crate) struct PartSlurs {
    standing: Vec<SlurStanding>,
    /// The elements of the notes: numbers are paired in the order of the file, which is not that of time
    /// where voices are written one after another.
    nodes: Vec<NodeId>,
    /// Slurs with one end: their number stays taken from there on, or up to there.
    open: Vec<(NoteId, u8, SlurEnd)>,
}

impl PartSlurs {
    pub(crate) fn of(part: &Part) -> Self {
        let standing = part.slurs.iter();
        let standing = standing
            .map(|slur| SlurStanding { from: slur.start, to: slur.end, number: slur.number })
            .collect();
        let open = part.open_slurs.iter().map(|slur| (slur.note, slur.number, slur.written)).collect();
        Self { standing, nodes: part.notes.iter().map(|note| note.node).collect(), open }
    }

    /// The slur between two notes; of several the last.
    pub(crate) fn between(&self, from: NoteId, to: NoteId) -> Option<SlurStanding> {
        self.standing.iter().rev().find(|slur| slur.from == from && slur.to == to).copied()
    }

    /// The slur of a number between two notes; of several the last.
    pub(crate) fn numbered(&self, from: NoteId, to: NoteId, number: u8) -> Option<SlurStanding> {
        let is_it = |slur: &&SlurStanding| slur.from == from && slur.to == to && slur.number == number;
        self.standing.iter().rev().find(is_it).copied()
    }

    /// The first and last notes of all of them.
    pub(crate) fn pairs(&self) -> Vec<(NoteId, NoteId)> {
        self.standing.iter().map(|slur| (slur.from, slur.to)).collect()
    }

    pub(crate) fn add(&mut self, slur: SlurStanding) {
        self.standing.push(slur);
    }

    pub(crate) fn remove(&mut self, slur: SlurStanding) {
        if let Some(at) = self.standing.iter().rposition(|other| *other == slur) {
            self.standing.remove(at);
        }
    }

    /// The smallest number that no slur bears which is open at any note between two, those included: a
    /// reader pairs numbers in the order of the file, and nothing is then left to its wits.
    pub(crate) fn free_number(&self, from: NoteId, to: NoteId) -> Option<u8> {
        let at = |note: NoteId| self.nodes.get(note.0 as usize).copied().unwrap_or(NodeId(u32::MAX));
        let (first, last) = (at(from).min(at(to)), at(from).max(at(to)));
        let taken = |number: u8| {
            self.standing.iter().any(|slur| {
                let (begins, ends) = (at(slur.from).min(at(slur.to)), at(slur.from).max(at(slur.to)));
                slur.number == number && begins <= last && ends >= first
            }) || self.open.iter().any(|(note, open, end)| {
                *open == number
                    && match end {
                        SlurEnd::Start => at(*note) <= last,
                        SlurEnd::Stop => at(*note) >= first,
                    }
            })
        };
        NUMBERS.into_iter().find(|number| !taken(*number))
    }
}
