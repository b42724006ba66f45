//! On which notes a bow, or a breath of the tongue, begins as written.

use std::collections::BTreeSet;

use arcata_score::{Note, NoteId, NoteKind, Part};

use crate::under_slur::{is_main, solid_slurs, tied_from_before};

/// The ordinary notes of a part that begin a stroke: neither tied nor slurred from before.
pub(crate) fn bow_starts(part: &Part) -> BTreeSet<NoteId> {
    let mut under = vec![false; part.notes.len()];
    let mut slurs: Vec<_> = solid_slurs(part).map(|(_, start, end)| (start, end)).collect();
    slurs.sort_by_key(|(start, end)| (start.onset, end.onset));
    for (index, (start, end)) in slurs.iter().enumerate() {
        // Of slurs inside each other the inner ones are the bows.
        let holds = |(first, last): &(&Note, &Note)| {
            let shorter = (first.onset, last.onset) != (start.onset, end.onset);
            first.voice == start.voice
                && first.onset >= start.onset
                && last.onset <= end.onset
                && shorter
                && is_main(first)
        };
        let from =
            slurs[..index].iter().rposition(|(first, _)| first.onset < start.onset).map_or(0, |at| at + 1);
        let near = slurs[from..].iter().take_while(|(first, _)| first.onset <= end.onset);
        if near.into_iter().any(holds) {
            continue;
        }
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
