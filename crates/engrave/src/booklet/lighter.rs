//! Signs that were put into a score are printed lighter, as if in pencil, so that a leader sees what is new.

use std::collections::BTreeSet;

use arcata_xml::{Document, NodeId, Tag};

use super::part::PartCopy;

/// The tone of what is new (our own choice): it stays readable from the second desk, and nobody takes it for print. Its contrast with white is
/// 4.95 to 1.
const TONE: &str = "#707070";

/// Gives elements inside notes (signs for bows, slurs) the lighter tone in the picture; the part's file stays as it is.
pub(super) fn lighten(copy: &mut PartCopy, document: &Document, lighter: &BTreeSet<NodeId>) {
    if lighter.is_empty() {
        return;
    }
    let notes = copy.bars.iter_mut().flat_map(|bar| &mut bar.children);
    // What the engraver gets otherwise than as written is left alone.
    for child in notes.filter(|child| child.tag == Tag::NOTE && child.engraved.is_none()) {
        let Some(note) = child.node.and_then(|node| document.element(node)) else { continue };
        let start = note.range().start;
        let inside = note.descendants().filter(|element| lighter.contains(&element.id()));
        let behind_names: Vec<usize> =
            inside.map(|element| element.range().start - start + 1 + element.name().len()).collect();
        if behind_names.is_empty() {
            continue;
        }
        let mut text = child.source.clone();
        for at in behind_names.into_iter().rev().filter(|at| child.source.is_char_boundary(*at)) {
            text.insert_str(at, &format!(" color=\"{TONE}\""));
        }
        child.engraved = Some(text);
    }
}
