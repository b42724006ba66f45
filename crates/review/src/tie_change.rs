//! Ties taken out, put in, and turned into slurs.

use arcata_score::{NoteId, Part};
use arcata_xml::{Element, NodeId, Tag};

use crate::Piece;
use crate::change::Change;
use crate::under_slur::note;

/// The number of a slur that is put in: high, so that it is not one that is open there (by definition).
const NUMBER: u8 = 16;

/// What the two ends of a line are called.
const ENDS: [&str; 2] = ["start", "stop"];

/// Ties one note to another; nothing where the file does not hold them.
pub(crate) fn tie(piece: &Piece<'_>, part: &Part, from: NoteId, to: NoteId) -> Vec<Change> {
    let mut changes = Vec::new();
    for (id, end) in [from, to].into_iter().zip(ENDS) {
        let Some(element) = element(piece, part, id) else { return Vec::new() };
        // The order of MusicXML 4.0: <tie> follows <duration> and any other <tie>.
        let before = [Tag::CHORD, Tag::PITCH, Tag::UNPITCHED, Tag::REST, Tag::DURATION, Tag::TIE];
        let Some(next) = element.children().find(|child| !before.contains(&child.tag())) else {
            return Vec::new();
        };
        changes.push(Change::Before { next: next.id(), xml: format!("<tie type=\"{end}\"/>") });
        changes.push(Change::Notation { note: element.id(), xml: format!("<tied type=\"{end}\"/>") });
    }
    changes
}

/// Turns the tie between two notes into a slur.
pub(crate) fn slur(piece: &Piece<'_>, part: &Part, from: NoteId, to: NoteId) -> Vec<Change> {
    let mut changes = Vec::new();
    for (id, end) in [from, to].into_iter().zip(ENDS) {
        let Some(element) = element(piece, part, id) else { return Vec::new() };
        changes.extend(ends(element, end).into_iter().map(Change::Remove));
        changes.push(Change::Notation {
            note: element.id(),
            xml: format!("<slur number=\"{NUMBER}\" type=\"{end}\"/>"),
        });
    }
    changes
}

/// The elements in a note that begin or end a tie.
pub(crate) fn ends(note: Element<'_>, end: &str) -> Vec<NodeId> {
    let inside = note.descendants().filter(|element| [Tag::TIE, Tag::TIED].contains(&element.tag()));
    inside
        .filter(|element| element.attribute("type").is_some_and(|kind| kind == end))
        .map(|element| element.id())
        .collect()
}

fn element<'a>(piece: &Piece<'a>, part: &Part, id: NoteId) -> Option<Element<'a>> {
    piece.document?.element(note(part, id)?.node)
}
