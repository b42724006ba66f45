//! A held note begun afresh: its tie taken out.

use arcata_score::{Moment, Part, TieEnd};
use arcata_xml::{NodeId, Tag};

use crate::Piece;
use crate::change::Change;

/// Takes the ties out that lead to a moment, in the first of the parts that has any.
pub(crate) fn over<'a>(piece: &Piece<'_>, parts: impl Iterator<Item = &'a usize>, at: Moment) -> Vec<Change> {
    let mut cut = parts.map(|part| ties_to(piece, &piece.score.parts[*part], at));
    cut.find(|changes| !changes.is_empty()).unwrap_or_default()
}

fn ties_to(piece: &Piece<'_>, part: &Part, at: Moment) -> Vec<Change> {
    let first = part.notes.partition_point(|note| note.onset < at);
    let held = part.notes[first..].iter().take_while(|note| note.onset == at);
    let ends = held.filter_map(|note| match note.tie.from_before {
        TieEnd::Joined(before) => {
            Some([(part.notes.get(before.0 as usize)?.node, "start"), (note.node, "stop")])
        }
        TieEnd::None | TieEnd::Open => None,
    });
    ends.flatten().flat_map(|(note, end)| elements(piece, note, end)).map(Change::Remove).collect()
}

/// The elements in a note that begin or end a tie.
fn elements(piece: &Piece<'_>, note: NodeId, end: &str) -> Vec<NodeId> {
    let note = piece.document.and_then(|document| document.element(note));
    let inside = note.into_iter().flat_map(|note| note.descendants());
    inside
        .filter(|element| [Tag::TIE, Tag::TIED].contains(&element.tag()))
        .filter(|element| element.attribute("type").is_some_and(|kind| kind == end))
        .map(|element| element.id())
        .collect()
}
