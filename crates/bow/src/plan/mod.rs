//! The plan: direction, place and link of every stroke, at the least total cost.

use arcata_score::BowDirection;

use crate::Cost;

/// How a stroke follows the one before.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Link {
    /// The other direction, on the string.
    Change,
    /// The same direction, stopped on the string.
    Hooked,
    /// The same direction, lifted and set down elsewhere.
    Retake,
    /// Any direction, any place, out of a silence (or the first of a line).
    Reset,
}

/// What the bow does in one stroke.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PlannedStroke {
    /// Which way.
    pub direction: BowDirection,
    /// How it follows the one before.
    pub link: Link,
    /// Where it begins, thousandths of the usable hair from the frog.
    pub start: u16,
    /// Where it ends.
    pub end: u16,
    /// What it costs, term by term.
    pub cost: Cost,
}

/// A planned line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plan {
    /// One entry a stroke of the line.
    pub strokes: Vec<PlannedStroke>,
    /// The sum.
    pub total: Cost,
}
