//! The marks of a plan, to be written into a score.

use std::collections::BTreeSet;

use arcata_bow::plan::{BowReach, least_marks, strokes_before};
use arcata_bow::{Line, Link, Plan};
use arcata_layer::BowAddition;
use arcata_score::Score;

use arcata_analysis::first_note;

/// Which marks of a plan are written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PlannedMarks {
    /// One on every stroke.
    All,
    /// Where players bowing as it comes would go wrong; of a hook and a retake on both strokes, as players know them.
    Least,
}

/// The marks of a plan, each with its stroke, in their order. What is printed on a stroke already is not among them.
#[must_use]
pub fn planned_marks(
    score: &Score,
    (line, plan): (&Line, &Plan),
    reach: BowReach,
    which: PlannedMarks,
) -> Vec<(usize, BowAddition)> {
    let chosen: BTreeSet<usize> = match which {
        PlannedMarks::All => (0..plan.strokes.len()).collect(),
        PlannedMarks::Least => {
            let least = least_marks(line, plan, reach).into_iter().map(|mark| mark.stroke);
            let before = strokes_before(line, reach);
            let follows = |stroke: &usize| matches!(plan.strokes[*stroke].link, Link::Hooked | Link::Retake);
            let rows = (0..plan.strokes.len()).filter(follows);
            // A printed mark that the plan departs from would mislead everybody.
            let turned = |stroke: &usize| {
                let printed = line.strokes.get(*stroke).and_then(|stroke| stroke.printed);
                printed.is_some_and(|printed| printed != plan.strokes[*stroke].direction)
            };
            let rows = rows.flat_map(|stroke| before[stroke].into_iter().chain([stroke]));
            least.chain(rows).chain((0..plan.strokes.len()).filter(turned)).collect()
        }
    };
    let addition = |stroke: usize| {
        let (made, planned) = (line.strokes.get(stroke)?, plan.strokes.get(stroke)?);
        if made.printed == Some(planned.direction) {
            return None;
        }
        let note = first_note(score.parts.get(line.part)?, made)?;
        Some((stroke, BowAddition { part: line.part, note, direction: planned.direction }))
    };
    chosen.into_iter().filter_map(addition).collect()
}
