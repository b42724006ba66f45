//! What the steps of a line cost, as numbers: what the search adds up.
//!
//! What many strokes share, the ways on the bow and the places in it, stands in tables once.

use arcata_score::BowDirection;
use rustc_hash::FxHashMap;

use super::anchors::offered;
use super::costs::Costs;
use super::links::{Approach, Carry};
use super::rows::{Distances, Towards, carried, lower};
use super::{Confined, Link};
use crate::{BowInterval, Join, SpeedWindow, Stroke};

/// More than any plan of one step can cost; added to itself it does not overflow (by definition).
pub(crate) const NEVER: i32 = 1 << 29;

/// Down and up, in the order of rows.
pub(super) const DIRECTIONS: [BowDirection; 2] = [BowDirection::Down, BowDirection::Up];

/// What the steps cost.
pub(super) struct StepTables<const CELLS: usize> {
    pub(super) steps: Vec<Step>,
    pub(super) travels: Vec<Distances>,
    pub(super) places: Vec<PlacePrices<CELLS>>,
}

/// What one step costs.
pub(super) struct Step {
    pub(super) leaning: LeaningPrices,
    /// Which of the places.
    pub(super) places: usize,
    /// Which of the travels.
    pub(super) travel: usize,
}

/// What it costs to begin and to end at each cell.
pub(super) struct PlacePrices<const CELLS: usize> {
    pub(super) begin: [i32; CELLS],
    pub(super) end: [i32; CELLS],
}

/// What a stroke costs that its leanings have a part in.
#[derive(Clone, Copy)]
pub(crate) struct LeaningPrices {
    /// Down, up.
    pub(super) direction: [i32; 2],
    pub(super) links: LinkPrices,
}

/// The four links' costs by direction; `NEVER` where not allowed. A lift costs more by the way it goes.
#[derive(Clone, Copy)]
pub(crate) struct LinkPrices {
    pub(super) join: Option<Join>,
    pub(super) change: [i32; 2],
    pub(super) hooked: [i32; 2],
    pub(super) retake: [i32; 2],
    /// By the direction before, then after.
    pub(super) reset: [[i32; 2]; 2],
    pub(super) lift: LiftPrice,
}

/// What a way through the air costs.
#[derive(Clone, Copy)]
pub(super) struct LiftPrice {
    per_cell: i32,
    /// The shortest way that is one, and the longest that there is time for, in cells.
    least: usize,
    in_time: Option<usize>,
    rushed: i32,
}

impl LiftPrice {
    pub(super) fn over(&self, way: usize) -> i32 {
        let rushed = if self.in_time.is_none_or(|far| way > far) { self.rushed } else { 0 };
        self.per_cell * i32::try_from(way).unwrap_or(0) + rushed
    }

    /// What each cell offers to those nearer the frog and nearer the tip: with the way there in time, or
    /// else in a rush.
    #[inline(always)]
    pub(super) fn thrown<const CELLS: usize>(&self, row: &[i32; CELLS], towards: Towards) -> [i32; CELLS] {
        let mut thrown = [NEVER; CELLS];
        if let Some(far) = self.in_time.filter(|far| *far >= self.least) {
            thrown = carried(row, self.least..=far, self.per_cell, towards);
        }
        if self.in_time.is_none_or(|far| far + 1 < CELLS) {
            lower(&mut thrown, &carried(row, self.least..=CELLS, self.per_cell, towards), self.rushed);
        }
        thrown
    }
}

fn narrow(cost: i64) -> i32 {
    i32::try_from(cost).unwrap_or(NEVER).min(NEVER)
}

/// A table of costs by cell.
fn table<const CELLS: usize>(cost: impl Fn(usize, &mut i64)) -> [i32; CELLS] {
    std::array::from_fn(|cell| {
        let mut sum = 0i64;
        cost(cell, &mut sum);
        narrow(sum)
    })
}

/// What makes the ways on the bow cost the same: duration, speeds, how far the stroke may go.
type KnownTravel = (i64, SpeedWindow, Option<u16>);
/// What makes the places cost the same: home, accent, a soft entry, where the stroke may begin.
type KnownPlace = (BowInterval, u16, bool, Option<(u16, u16)>);

/// What the ways on the bow cost a stroke, by cells.
fn travels_of<const CELLS: usize>(
    costs: &Costs<'_>,
    stroke: &Stroke,
    confined: Option<Confined>,
) -> [i32; CELLS] {
    let pace = costs.pace(stroke);
    table(|cells, sum| {
        costs.travel(&pace, cells, sum);
        if confined.is_some_and(|kept| cells * 1000 > usize::from(kept.travels) * CELLS) {
            *sum += i64::from(NEVER);
        }
    })
}

impl<const CELLS: usize> StepTables<CELLS> {
    /// The tables of strokes in whatever order; `next` gives the index of a stroke that begins where another ends.
    pub(super) fn new(costs: &Costs<'_>, next: impl Fn(usize) -> Option<usize>) -> Self {
        let (mut travels, mut places) = (Vec::new(), Vec::new());
        let mut known_travels: FxHashMap<KnownTravel, usize> = FxHashMap::default();
        let mut known_places: FxHashMap<KnownPlace, usize> = FxHashMap::default();
        let steps = (0..costs.strokes.len())
            .map(|index| {
                let stroke = &costs.strokes[index];
                let confined = costs.confined(index);
                let travel = *known_travels
                    .entry((stroke.duration.micros, stroke.speed, confined.map(|kept| kept.travels)))
                    .or_insert_with(|| {
                        travels.push(Distances::new(&travels_of::<CELLS>(costs, stroke, confined)));
                        travels.len() - 1
                    });
                let kept = confined.map(|kept| kept.begins);
                let known = (stroke.home, stroke.emphasis.accent, Costs::enters_softly(stroke), kept);
                let place = *known_places.entry(known).or_insert_with(|| {
                    let begin = table(|cell, sum| {
                        costs.begin_at(index, cell, sum);
                        if kept.is_some_and(|(from, to)| {
                            !(from.into()..=to.into()).contains(&costs.thousandths(cell))
                        }) {
                            *sum += i64::from(NEVER);
                        }
                    });
                    let end = table(|cell, sum| costs.end_at(index, cell, sum));
                    places.push(PlacePrices { begin, end });
                    places.len() - 1
                });
                Step { leaning: LeaningPrices::of(costs, index, next(index)), places: place, travel }
            })
            .collect();
        Self { steps, travels, places }
    }
}

impl LeaningPrices {
    /// What a stroke costs before another.
    pub(super) fn of(costs: &Costs<'_>, index: usize, next: Option<usize>) -> Self {
        let next = next.and_then(|next| costs.strokes.get(next));
        let direction = DIRECTIONS.map(|direction| {
            let mut sum = 0i64;
            costs.direction_before(index, next, direction, &mut sum);
            narrow(sum)
        });
        Self { direction, links: LinkPrices::of(costs, costs.approach(index).as_ref()) }
    }
}

impl LinkPrices {
    /// What the links cost over a way in; none at the beginning.
    pub(super) fn of(costs: &Costs<'_>, approach: Option<&Approach>) -> Self {
        let Some(approach) = approach else {
            let lift = LiftPrice { per_cell: 0, least: 1, in_time: Some(costs.cells), rushed: 0 };
            let never = [NEVER; 2];
            return Self {
                join: None,
                change: never,
                hooked: never,
                retake: never,
                reset: [[0; 2]; 2],
                lift,
            };
        };
        let at = |link, from, to| {
            let offers = offered(approach.join).contains(&link);
            let mut sum = 0i64;
            costs.act(approach, link, from, to, &mut sum);
            if offers { narrow(sum) } else { NEVER }
        };
        let again = |link| DIRECTIONS.map(|direction| at(link, direction, direction));
        let Carry { per_cell, in_time, rushed } = costs.carry(approach);
        Self {
            join: Some(approach.join),
            change: DIRECTIONS.map(|direction| at(Link::Change, direction.other(), direction)),
            hooked: again(Link::Hooked),
            retake: again(Link::Retake),
            reset: DIRECTIONS.map(|from| DIRECTIONS.map(|to| at(Link::Reset, from, to))),
            lift: LiftPrice {
                per_cell: narrow(per_cell),
                least: costs.least_way(),
                in_time,
                rushed: narrow(rushed),
            },
        }
    }
}
