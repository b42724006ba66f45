//! Marks in the markup of single notes.
//!
//! A [`TouchedNotes`] holds the text of every note that is touched, with the directions right before it, and
//! takes elements out of it and puts elements in, one after another. What is taken out is remembered by
//! structure ([`Exact`]) in the state in which everything taken out before it is gone already; put back
//! in reverse order it gives the same bytes.

mod piece;
mod unit;

use std::collections::BTreeMap;

use arcata_score::{BowDirection, NoteId};
use arcata_xml::{Document, Edit, EditError, EditList, NodeId};

use crate::model::Exact;
pub(crate) use piece::MarkupPiece;
use unit::MarkupUnit;
pub(crate) use unit::words_before;

/// The notes of a document that are touched, as they stand by now.
pub(crate) struct TouchedNotes<'d> {
    document: &'d Document,
    units: BTreeMap<NodeId, MarkupUnit>,
}

impl<'d> TouchedNotes<'d> {
    pub(crate) fn new(document: &'d Document) -> Self {
        Self { document, units: BTreeMap::new() }
    }

    fn unit(&mut self, note: NodeId) -> &mut MarkupUnit {
        let document = self.document;
        self.units.entry(note).or_insert_with(|| MarkupUnit::of(document, note))
    }

    /// Whether a piece stands at a note.
    pub(crate) fn has(&mut self, note: NodeId, piece: &MarkupPiece) -> bool {
        self.unit(note).has(piece)
    }

    /// The bow marks on a note in their order.
    pub(crate) fn bows(&mut self, note: NodeId) -> Vec<BowDirection> {
        self.unit(note).bows()
    }

    /// Takes a piece off a note; of several the one that looks like `exact`, else the one written
    /// plainly, else the last.
    pub(crate) fn take(&mut self, note: NodeId, piece: &MarkupPiece, exact: Option<&Exact>) -> Option<Exact> {
        self.unit(note).take(piece, exact)
    }

    /// Puts a piece onto a note: as it stood where that is known and still fits, else plainly. Says
    /// whether it could.
    pub(crate) fn put(&mut self, note: NodeId, piece: &MarkupPiece, exact: Option<&Exact>) -> bool {
        self.unit(note).put(piece, exact)
    }

    /// Whether putting a piece plainly would give the state before `exact` was taken.
    pub(crate) fn is_plain(&mut self, note: NodeId, piece: &MarkupPiece, exact: &Exact) -> bool {
        self.unit(note).is_plain(piece, exact)
    }

    /// Everything as edits of the document.
    pub(crate) fn finish(self) -> Result<EditList, EditError> {
        let edits = self.units.into_values().filter_map(MarkupUnit::into_edit);
        EditList::new(edits.collect::<Vec<Edit>>())
    }
}

/// The element of a note.
pub(crate) fn node(score: &arcata_score::Score, part: usize, note: NoteId) -> NodeId {
    score.parts[part].note(note).node
}
