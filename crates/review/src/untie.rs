//! A held note begun afresh: its tie taken out.

use arcata_score::{Moment, Part, TieEnd};
use arcata_xml::NodeId;

use crate::Piece;
use crate::change::Change;
use crate::tie_change;

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
    let document = piece.document;
    let note = |node: NodeId| document.and_then(|document| document.element(node));
    let ends = ends.flatten().filter_map(|(node, end)| Some(tie_change::ends(note(node)?, end)));
    ends.flatten().map(Change::Remove).collect()
}
