//! The plan: direction, place and link of every stroke, at the least total cost.
//!
//! [`plan`] is exact on its grid of places: a brute-force twin in the tests proves it on small lines.
//! Where a stretch is repeated from one printing, the cost of coming back to its beginning counts, and
//! the optimum is found over every way in which the stretch can begin.

mod alternatives;
mod anchors;
mod as_it_comes;
mod backwards;
mod costs;
mod evaluate;
mod repairs;
mod route;
mod rows;
mod search;
mod ways;
mod weights;

pub use alternatives::{Alternative, Difference, DifferenceKind, alternatives};
pub use anchors::{Allowed, Anchor, MarkReading};
pub use as_it_comes::{as_it_comes, least_marks};
pub use backwards::{Anchored, Clash, Conflict, Wish, anchored};
pub use costs::Reach;
pub use repairs::{
    ChangeKind, Ending, Frontier, NotationChange, Passes, RepairRequest, Repaired, repairs, singly,
};
pub use ways::{WayThere, WaysThere, ways_to_end};
pub use weights::Weights;

use arcata_score::BowDirection;

use crate::{Cost, Line};
use costs::Costs;
use search::Search;

/// How a stroke follows the one before.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u8)]
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
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Plan {
    /// One entry a stroke of the line.
    pub strokes: Vec<PlannedStroke>,
    /// For each repeated stretch of the line, how its beginning is reached again.
    pub turns: Vec<Turn>,
    /// The sum of all strokes and turns.
    pub total: Cost,
}

/// How the beginning of a repeated stretch is reached again from its end.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Turn {
    /// The link into the second pass.
    pub link: Link,
    /// What it costs.
    pub cost: Cost,
}

/// How many places in the bow the planner tells apart.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Grid {
    /// 24 cells: quick looks.
    Coarse,
    /// 48 cells, 12.5 mm of a violin bow: the default.
    #[default]
    Fine,
    /// 96 cells.
    Finer,
    /// 192 cells: to see that the grid does not matter.
    Finest,
}

/// Everything that shapes a plan besides the line.
#[derive(Clone, Debug, Default)]
pub struct PlanSettings {
    /// Weights of the cost terms.
    pub weights: Weights,
    /// Hair and times of the instrument.
    pub reach: Reach,
    /// Grid of places.
    pub grid: Grid,
    /// How printed marks are read.
    pub marks: MarkReading,
    /// Required directions and links.
    pub anchors: Vec<Anchor>,
}

/// The cheapest plan of a line.
///
/// Linear in the number of strokes (repeated stretches: linear with a factor of twice the cells).
/// Ties go to the plan that ends nearest the frog, then to changes before hooks, retakes and resets,
/// then to the shortest travel, decided from the last stroke back.
#[must_use]
pub fn plan(line: &Line, settings: &PlanSettings) -> Plan {
    let allowed = anchors::allowed(line, settings);
    // Every stroke may go both ways or one, by every link that its place offers: there is a way through.
    plan_allowed(line, settings, &allowed).unwrap_or_default()
}

/// The cheapest plan within what is allowed; `None` where nothing is possible.
fn plan_allowed(line: &Line, settings: &PlanSettings, allowed: &[Allowed]) -> Option<Plan> {
    match settings.grid {
        Grid::Coarse => plan_on::<24>(line, settings, allowed),
        Grid::Fine => plan_on::<48>(line, settings, allowed),
        Grid::Finer => plan_on::<96>(line, settings, allowed),
        Grid::Finest => plan_on::<192>(line, settings, allowed),
    }
}

fn plan_on<const CELLS: usize>(line: &Line, settings: &PlanSettings, allowed: &[Allowed]) -> Option<Plan> {
    if line.strokes.is_empty() {
        return Some(Plan::default());
    }
    let costs = Costs::new(line, &settings.weights, settings.reach, CELLS);
    let search = Search::<CELLS>::new(costs, allowed);
    let choices = route::best(&search, &line.repeats)?;
    Some(evaluate::evaluate(line, settings, CELLS, &choices))
}

#[cfg(test)]
mod tests;
