//! The plan: direction, place and link of every stroke, at the least total cost.
//!
//! [`plan`] is exact on its grid of places: a brute-force twin in the tests proves it on small lines.
//! Where a stretch is repeated from one printing, the cost of coming back to its beginning counts, and
//! the optimum is found over every way in which the stretch can begin: exactly for stretches inside one
//! another and one after the other, with any number of endings. A stretch that crosses another one (dal
//! segno into the middle of a repeated one) is paid but not weighed; its turns say so
//! ([`Weighed::Afterwards`]), and their prices bound how far the plan is from the optimum.

mod alternatives;
mod anchors;
pub(crate) mod as_it_comes;
mod asked;
mod backwards;
mod costs;
mod course;
mod distinct_rows;
mod evaluate;
mod giving_way;
mod inverse;
mod joined;
mod leaning_search;
mod least;
mod lifts;
mod links;
mod read_back;
mod repairs;
mod route;
mod rows;
mod search;
mod second_pass;
mod standing;
mod step_prices;
mod sureness;
mod ways;
mod weights;

pub use alternatives::{Alternative, Difference, DifferenceKind, alternatives};
pub use anchors::{Allowed, Anchor, MarkReading};
pub use as_it_comes::{Told, as_it_comes, as_told, least_marks_for};
pub use asked::{Settled, settled, strokes_before};
pub use backwards::{Anchored, Clash, DemandConflict, DemandedBy, anchored};
pub use costs::BowReach;
pub use course::{Leads, Weighed};
pub use giving_way::giving_way;
pub use inverse::{Chances, Inverse};
pub(crate) use joined::{JoinedStrokes, joined_strokes};
pub(crate) use leaning_search::LeaningSearch;
pub use least::{LeastMark, Sign, least_marks};
pub use lifts::{LiftTime, lift_time};
pub use repairs::{
    ChangeKind, Frontier, NotationChange, Passes, RepairRequest, Repaired, WishedEnding, repairs, same_bows,
    singly,
};
pub use second_pass::{Comes, SecondPass, second_pass};
pub use standing::Standing;
pub use sureness::{Sureness, open_strokes, sureness};
pub use ways::{WayThere, WaysThere, ways_to_end};
pub use weights::Weights;

use arcata_score::BowDirection;

use crate::{Cost, Line, RealTime, Style, Term};
use costs::Costs;
use search::LineSearch;

/// How a stroke follows the one before: by what the arm does, in direction, place and silence.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u8)]
pub enum Link {
    /// The other direction, from where the bow was.
    Change,
    /// The same direction, from where the bow was: it stops on the string, or waits in a rest.
    Hooked,
    /// The same direction without a rest, the bow lifted and carried back against it.
    Retake,
    /// Out of a silence, set down elsewhere; or the first of a line, or wherever the bow is free.
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

/// Which way a stroke goes and how it follows the one before.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct BowAndLink {
    pub(crate) direction: BowDirection,
    pub(crate) link: Link,
}

impl From<&PlannedStroke> for BowAndLink {
    fn from(planned: &PlannedStroke) -> Self {
        Self { direction: planned.direction, link: planned.link }
    }
}

/// A planned line.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Plan {
    /// One entry a stroke of the line.
    pub strokes: Vec<PlannedStroke>,
    /// The ways back of every repeated stretch of the line, in the order of the stretches and of their
    /// endings.
    pub turns: Vec<Turn>,
    /// The sum of all strokes and turns.
    pub total: Cost,
}

/// How the beginning of a repeated stretch is reached again from its end; or how what follows a stretch
/// is reached where the stretch crosses another one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Turn {
    /// Index of the stretch in the line.
    pub stretch: usize,
    /// The last stroke before the turn.
    pub from: usize,
    /// The stroke that it leads to.
    pub to: usize,
    /// Where it leads.
    pub leads: Leads,
    /// Whether the search chose with its price in mind.
    pub weighed: Weighed,
    /// Silence between the two.
    pub silence: RealTime,
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
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct PlanSettings {
    /// Weights of the cost terms.
    pub weights: Weights,
    /// The style whose weights these are, for the record: plans say what they were made with.
    pub style: Style,
    /// Hair and times of the instrument.
    pub reach: BowReach,
    /// Grid of places.
    pub grid: Grid,
    /// How printed marks are read.
    pub marks: MarkReading,
    /// Required directions and links.
    pub anchors: Vec<Anchor>,
    /// Wishes of other strokes, in the order of their strokes.
    pub leanings: Vec<Leaning>,
}

/// A part of the bow that a stroke must keep to. A stroke that cannot leaves no plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Confined {
    /// Index of the stroke in its line.
    pub stroke: usize,
    /// Where it may begin, thousandths of the hair from the frog, from and to.
    pub begins: (u16, u16),
    /// How far it may travel at most, thousandths of the hair.
    pub travels: u16,
}

impl PlanSettings {
    /// The same without leanings, which belong to the strokes of one line as printed.
    pub(crate) fn alone(&self) -> Self {
        Self { leanings: Vec::new(), ..self.clone() }
    }
}

/// What a stroke had better do, for the sake of other strokes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wished {
    /// To go this way.
    Goes(BowDirection),
    /// To change from the stroke before it, or not to change: to be hooked, or lifted.
    Changes(bool),
}

impl Wished {
    /// The opposite wish.
    #[must_use]
    pub fn other(self) -> Self {
        match self {
            Self::Goes(direction) => Self::Goes(direction.other()),
            Self::Changes(changes) => Self::Changes(!changes),
        }
    }

    /// Whether a stroke does as wished.
    #[must_use]
    pub fn is_met(self, planned: &PlannedStroke) -> bool {
        self.is_met_by(planned.into())
    }

    pub(crate) fn is_met_by(self, done: BowAndLink) -> bool {
        match self {
            Self::Goes(direction) => done.direction == direction,
            Self::Changes(changes) => (done.link == Link::Change) == changes,
        }
    }
}

/// A wish that a stroke leans to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Leaning {
    /// Index of the stroke in its line.
    pub stroke: usize,
    /// What is wished for.
    pub wished: Wished,
    /// What doing otherwise costs.
    pub thousandths: i64,
    /// Under which name.
    pub term: Term,
}

/// The cheapest plan of a line.
///
/// Linear in the number of strokes (repeated stretches: linear with a factor of at most twice the cells,
/// whatever lies inside what).
/// Ties go to the plan that ends nearest the frog, then to changes before hooks, retakes and resets,
/// then to the shortest travel, decided from the last stroke back.
#[must_use]
pub fn plan(line: &Line, settings: &PlanSettings) -> Plan {
    let allowed = anchors::allowed(line, settings);
    // Every stroke may go both ways or one, by every link that its place offers: there is a way through.
    plan_allowed(line, settings, &allowed).unwrap_or_default()
}

/// The cheapest plan in which some strokes keep to a part of the bow; `None` where there is no such plan.
#[must_use]
pub fn plan_confined(line: &Line, settings: &PlanSettings, confined: &[Confined]) -> Option<Plan> {
    plan_within(line, settings, &anchors::allowed(line, settings), confined)
}

/// The cheapest plan within what is allowed; `None` where nothing is possible.
fn plan_allowed(line: &Line, settings: &PlanSettings, allowed: &[Allowed]) -> Option<Plan> {
    plan_within(line, settings, allowed, &[])
}

fn plan_within(
    line: &Line,
    settings: &PlanSettings,
    allowed: &[Allowed],
    confined: &[Confined],
) -> Option<Plan> {
    match settings.grid {
        Grid::Coarse => plan_on::<24>(line, settings, allowed, confined),
        Grid::Fine => plan_on::<48>(line, settings, allowed, confined),
        Grid::Finer => plan_on::<96>(line, settings, allowed, confined),
        Grid::Finest => plan_on::<192>(line, settings, allowed, confined),
    }
}

fn plan_on<const CELLS: usize>(
    line: &Line,
    settings: &PlanSettings,
    allowed: &[Allowed],
    confined: &[Confined],
) -> Option<Plan> {
    if line.strokes.is_empty() {
        return Some(Plan::default());
    }
    let costs = Costs::new(line, settings, CELLS).confining(confined);
    let search = LineSearch::<CELLS>::new(costs, allowed);
    let choices = route::best(&search)?;
    Some(evaluate::evaluate(&search.costs, &choices))
}

#[cfg(test)]
mod tests;
