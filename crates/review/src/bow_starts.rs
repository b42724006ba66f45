//! On which notes a bow, or a breath of the tongue, begins as written.

use std::collections::BTreeSet;

use arcata_score::{NoteId, NoteKind, Part};

use crate::under_slur::{solid_slurs, tied_from_before};

/// The ordinary notes of a part that begin a stroke: neither tied nor slurred from before.
pub(crate) fn bow_starts(part: &Part) -> BTreeSet<NoteId> {
    let mut under = vec![false; part.notes.len()];
    for (_, start, end) in solid_slurs(part) {
        let first = part.notes.partition_point(|note| note.onset <= start.onset);
        for (index, note) in part.notes.iter().enumerate().skip(first) {
            if note.onset > end.onset {
                break;
            }
            under[index] |= note.voice == start.voice;
        }
    }
    let ids = (0u32..).map(NoteId).zip(part.notes.iter().zip(under));
    ids.filter(|(_, (note, under))| {
        !under && !tied_from_before(note) && note.kind == NoteKind::Ordinary && !note.pitch.is_rest()
    })
    .map(|(id, _)| id)
    .collect()
}
