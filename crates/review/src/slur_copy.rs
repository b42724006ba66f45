//! The slurs of one part given to another that plays the same notes.

use std::collections::{BTreeMap, BTreeSet};

use arcata_score::NoteId;

use crate::Piece;
use crate::change::Change;
use crate::under_slur::{note, solid_slurs};

/// Replaces the slurs of the second part around some notes by those of the first; nothing where a slur of the
/// first part has an end that the second part does not play.
pub(crate) fn copied(
    piece: &Piece<'_>,
    (from, to): (usize, usize),
    notes: &[(NoteId, NoteId)],
    around: &[(NoteId, NoteId)],
) -> Vec<Change> {
    let target = &piece.score.parts[to];
    let pairs: BTreeMap<NoteId, NoteId> = notes.iter().copied().collect();
    let over = |ids: &[NoteId], part: usize| -> BTreeSet<(NoteId, NoteId)> {
        let slurs = solid_slurs(&piece.score.parts[part]);
        slurs
            .filter(|(slur, ..)| ids.iter().any(|at| (slur.start..=slur.end).contains(at)))
            .map(|(slur, ..)| (slur.start, slur.end))
            .collect()
    };
    let (ours, theirs): (Vec<NoteId>, Vec<NoteId>) = around.iter().copied().unzip();
    // The bow before the place is written otherwise too: the note before each place is looked at as well.
    let before = |ids: &[NoteId], side: usize| -> Vec<NoteId> {
        let line: Vec<NoteId> = notes.iter().map(|pair| if side == 0 { pair.0 } else { pair.1 }).collect();
        let with = ids.iter().flat_map(|id| {
            let at = line.iter().position(|other| other == id);
            at.and_then(|at| at.checked_sub(1)).map(|at| line[at]).into_iter().chain([*id])
        });
        with.collect()
    };
    let wanted = over(&before(&ours, 0), from);
    let there = over(&before(&theirs, 1), to);
    let mut made = Vec::new();
    for (start, end) in &wanted {
        let (Some(start), Some(end)) = (pairs.get(start), pairs.get(end)) else { return Vec::new() };
        made.push((*start, *end));
    }
    let mut changes = Vec::new();
    for slur in target.slurs.iter().filter(|slur| there.contains(&(slur.start, slur.end))) {
        if !made.contains(&(slur.start, slur.end)) {
            changes.extend([Change::Remove(slur.start_node), Change::Remove(slur.end_node)]);
        }
    }
    for (start, end) in made.iter().filter(|ends| !there.contains(ends)) {
        let ends = [(*start, "start"), (*end, "stop")];
        for (id, kind) in ends {
            let Some(note) = note(target, id) else { return Vec::new() };
            changes.push(Change::Notation {
                note: note.node,
                xml: format!("<slur number=\"1\" type=\"{kind}\"/>"),
            });
        }
    }
    changes
}
