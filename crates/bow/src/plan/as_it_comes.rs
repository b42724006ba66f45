//! Bowing as it comes: what players do without marks.
//!
//! What is assumed of them (common practice, from memory, but for the second point):
//! 1. Each stroke goes the other way than the one played before it, also over a rest that does not free
//!    the bow.
//! 2. Where the bow is free (at the beginning; after pizzicato, a tremolo, a long rest) the first stroke
//!    takes the bow from which plain alternation brings the next downbeat down, and a down-bow where the
//!    bow is free again before any downbeat comes (the treatises' rule of counting back from the bar line).
//! 3. A mark holds for the note that it stands on, every time that note is played. Of two successive
//!    down-bows straight on the second is retaken, of two up-bows it is hooked; a sign for a hook or a lift
//!    says so otherwise, and means the direction of the stroke before where no other mark stands.
//! 4. Nobody reads ahead for marks. The second pass of a repeat is played from the same printing, and its
//!    first stroke follows the one really played before it.

use std::collections::BTreeMap;

use arcata_score::BowDirection;

use super::BowReach;
use super::course::{Course, Leads, WalkBy};
use crate::{Join, Line, MetricPlace, RealTime, StrokeKind};

/// The direction that players take where the bow is free and no mark stands.
pub(crate) fn entry(line: &Line, index: usize) -> BowDirection {
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

/// Plain alternation from each entry in the order of printing, with no marks read.
#[must_use]
pub fn as_it_comes(line: &Line) -> Vec<BowDirection> {
    let mut before: Option<BowDirection> = None;
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

/// The smallest set of down- and up-bows from which players bowing as it comes take these directions, the
/// line played once.
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

/// What an unmarked stroke gets after a stroke in direction `before`.
pub(super) fn unmarked(line: &Line, index: usize, before: Option<BowDirection>) -> BowDirection {
    match before {
        Some(before) if line.strokes[index].join != Join::Entry => before.other(),
        _ => entry(line, index),
    }
}

/// One way in which a stroke is reached when the line is played.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Arrival {
    /// The stroke played before; none at the beginning.
    pub(crate) before: Option<usize>,
    /// How the line goes on from it.
    pub(crate) join: Join,
}

/// Every way into every stroke, the first one first.
pub(crate) fn arrivals(line: &Line, reach: BowReach) -> Vec<Vec<Arrival>> {
    let course = Course::new(line);
    let over = |before: usize, silence: RealTime| {
        if line.strokes[before].kind == StrokeKind::Tremolo || silence >= reach.free_rest {
            Join::Entry
        } else if silence.micros > 0 {
            Join::AfterRest
        } else {
            Join::Continues
        }
    };
    let mut arrivals: Vec<Vec<Arrival>> = course
        .into
        .iter()
        .enumerate()
        .map(|(index, way)| {
            let join = match (way.before, way.by) {
                (None, _) | (_, WalkBy::Anew) => Join::Entry,
                (Some(_), WalkBy::Print) => line.strokes[index].join,
                (Some(before), WalkBy::Skip(silence)) => over(before, silence),
            };
            vec![Arrival { before: way.before, join }]
        })
        .collect();
    for way in &course.returns {
        let arrival = Arrival { before: Some(way.from), join: over(way.from, way.silence) };
        match way.leads {
            Leads::Back => arrivals[way.to].push(arrival),
            // What the last pass leaves out is no way in.
            Leads::On => arrivals[way.to] = vec![arrival],
        }
    }
    arrivals
}
