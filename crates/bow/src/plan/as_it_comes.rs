//! Bowing as it comes: what players do without marks, and the marks that make them do a plan.

use arcata_score::BowDirection;

use super::Plan;
use crate::{Join, Line, MetricPlace};

/// The direction that players take at an entry without a mark: down where the next downbeat can then
/// come down by plain alternation, else up (common practice; "after-rest-parity" in the treatises).
fn entry(line: &Line, index: usize) -> BowDirection {
    let strokes = &line.strokes;
    for (away, stroke) in strokes[index..].iter().enumerate() {
        if away > 0 && stroke.join == Join::Entry {
            break;
        }
        if stroke.emphasis.metric == MetricPlace::Downbeat {
            return if away % 2 == 0 { BowDirection::Down } else { BowDirection::Up };
        }
    }
    BowDirection::Down
}

/// What an unmarked stroke gets after a stroke in direction `before`.
fn unmarked(line: &Line, index: usize, before: Option<BowDirection>) -> BowDirection {
    match before {
        Some(before) if line.strokes[index].join != Join::Entry => before.other(),
        _ => entry(line, index),
    }
}

/// Plain alternation from each entry, with no marks read.
#[must_use]
pub fn as_it_comes(line: &Line) -> Vec<BowDirection> {
    let mut before = None;
    (0..line.strokes.len())
        .map(|index| {
            let direction = unmarked(line, index, before);
            before = Some(direction);
            direction
        })
        .collect()
}

/// The smallest set of marks from which players bowing as it comes do the plan.
///
/// A marked stroke sets the bow right, and an unmarked one follows from the stroke before alone; so a
/// mark is needed just where the plan differs from what comes, and nowhere else.
#[must_use]
pub fn least_marks(line: &Line, plan: &Plan) -> Vec<usize> {
    let mut before = None;
    let mut marks = Vec::new();
    for (index, planned) in plan.strokes.iter().enumerate() {
        if unmarked(line, index, before) != planned.direction {
            marks.push(index);
        }
        before = Some(planned.direction);
    }
    marks
}
