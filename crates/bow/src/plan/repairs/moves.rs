//! Whether other slurs make a player do anything else.

use std::collections::BTreeMap;

use arcata_score::{BowDirection, NoteId};

use crate::Line;
use crate::plan::{Link, Plan};

/// Whether two plans of the same notes, slurred in two ways, have the bow go the same way on every note and turn or leave
/// the string before the same notes. A hook and a slur are one bow here: a change of the slurs that only turns one into
/// the other moves no arm.
#[must_use]
pub fn same_bows(one: (&Line, &Plan), other: (&Line, &Plan)) -> bool {
    moves(one) == moves(other)
}

/// For every note its direction, and whether the bow comes to it by a change or a lift.
fn moves((line, plan): (&Line, &Plan)) -> BTreeMap<NoteId, (BowDirection, bool)> {
    let strokes = line.strokes.iter().zip(&plan.strokes);
    strokes
        .flat_map(|(stroke, planned)| {
            let turns = planned.link != Link::Hooked;
            let notes = stroke.notes.iter().enumerate();
            notes.map(move |(at, note)| (*note, (planned.direction, turns && at == 0)))
        })
        .collect()
}
