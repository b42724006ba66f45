//! Bowing as it comes: what players do without marks, and the marks that make them do a plan.

use std::collections::BTreeMap;

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

/// What a mark tells a player about one stroke.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Told {
    /// This way.
    Way(BowDirection),
    /// The way of the stroke before: hooked or retaken.
    Again,
}

/// The directions that players take who bow as it comes and keep to the marks, by index of the stroke.
#[must_use]
pub fn as_told(line: &Line, marks: &BTreeMap<usize, Told>) -> Vec<BowDirection> {
    let mut before = None;
    (0..line.strokes.len())
        .map(|index| {
            let direction = match (marks.get(&index), before) {
                (Some(Told::Way(direction)), _) => *direction,
                (Some(Told::Again), Some(before)) => before,
                _ => unmarked(line, index, before),
            };
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
    let directions: Vec<BowDirection> = plan.strokes.iter().map(|stroke| stroke.direction).collect();
    least_marks_for(line, &directions)
}

/// The smallest set of marks from which players bowing as it comes take these directions; see
/// [`least_marks`].
#[must_use]
pub fn least_marks_for(line: &Line, directions: &[BowDirection]) -> Vec<usize> {
    let mut before = None;
    let mut marks = Vec::new();
    for (index, wanted) in directions.iter().enumerate().take(line.strokes.len()) {
        if unmarked(line, index, before) != *wanted {
            marks.push(index);
        }
        before = Some(*wanted);
    }
    marks
}
