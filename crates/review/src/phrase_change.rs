//! A slur drawn broken, as a phrase mark.

use arcata_score::{Part, Slur};
use arcata_xml::escape;

use crate::Piece;
use crate::change::Change;
use crate::under_slur::note;

/// Draws a slur's line dashed, all else as it was; nothing where the file does not hold it.
pub(crate) fn broken(piece: &Piece<'_>, part: &Part, slur: &Slur) -> Vec<Change> {
    let element = piece.document.and_then(|document| document.element(slur.start_node));
    let (Some(element), Some(note)) = (element, note(part, slur.start)) else { return Vec::new() };
    let kept = element.attributes().filter(|attribute| attribute.name() != "line-type");
    let kept: String =
        kept.map(|attribute| format!(" {}=\"{}\"", attribute.name(), escape(&attribute.value()))).collect();
    let xml = format!("<slur{kept} line-type=\"dashed\"/>");
    vec![Change::Remove(slur.start_node), Change::Notation { note: note.node, xml }]
}
