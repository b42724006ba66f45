//! The fewest marks that make players do a plan.

use arcata_score::BowDirection;

use super::as_it_comes::{Arrival, arrivals, entry};
use super::{BowReach, Link, Plan};
use crate::{Join, Line};

/// A sign that is printed over a note for the bow.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Sign {
    /// A down-bow.
    Down,
    /// An up-bow.
    Up,
    /// On in the same direction, on the string.
    Hook,
    /// On in the same direction, lifted.
    Lift,
}

/// A mark that is needed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LeastMark {
    /// Index of the stroke in its line.
    pub stroke: usize,
    /// What is printed over its first note.
    pub sign: Sign,
}

/// How a stroke in the direction of the one before it goes on from it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum StraightOn {
    Hooked,
    Lifted,
}

/// What a player does with one stroke: its direction, and, straight on in one direction, how.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct StrokeAct {
    direction: BowDirection,
    onward: Option<StraightOn>,
}

/// What can stand over one note, the fewest signs first.
const SIGNS: [&[Sign]; 9] = [
    &[],
    &[Sign::Down],
    &[Sign::Up],
    &[Sign::Hook],
    &[Sign::Lift],
    &[Sign::Down, Sign::Hook],
    &[Sign::Down, Sign::Lift],
    &[Sign::Up, Sign::Hook],
    &[Sign::Up, Sign::Lift],
];

/// What players who bow as it comes (see [`as_it_comes`](super::as_it_comes())) do with a stroke under these
/// signs, `before` being the direction of the stroke played before it.
fn played(line: &Line, index: usize, before: Option<BowDirection>, join: Join, signs: &[Sign]) -> StrokeAct {
    let has = |sign| signs.contains(&sign);
    let same = before.filter(|_| has(Sign::Hook) || has(Sign::Lift));
    let direction = match (before, join) {
        _ if has(Sign::Down) => BowDirection::Down,
        _ if has(Sign::Up) => BowDirection::Up,
        (Some(before), Join::Continues | Join::AfterRest) => same.unwrap_or(before.other()),
        _ => entry(line, index),
    };
    let onward = (join == Join::Continues && before == Some(direction)).then(|| {
        let lifted = has(Sign::Lift) || !has(Sign::Hook) && direction == BowDirection::Down;
        if lifted { StraightOn::Lifted } else { StraightOn::Hooked }
    });
    StrokeAct { direction, onward }
}

/// What a plan wants of a stroke on one way in. How a turn is taken the report says, not the printing: there
/// only the direction counts.
fn wanted(plan: &Plan, index: usize, arrival: Arrival, nth: usize) -> StrokeAct {
    let planned = &plan.strokes[index];
    let before = arrival.before.map(|before| plan.strokes[before].direction);
    let straight_on = nth == 0 && arrival.join == Join::Continues && before == Some(planned.direction);
    let onward = match planned.link {
        Link::Hooked => StraightOn::Hooked,
        Link::Change | Link::Retake | Link::Reset => StraightOn::Lifted,
    };
    StrokeAct { direction: planned.direction, onward: straight_on.then_some(onward) }
}

/// The smallest set of marks from which players bowing as it comes do the plan, on every pass.
///
/// A mark sets the bow right for its stroke, and an unmarked stroke follows from the one before alone.
/// When the plan is done, the bow before each stroke is the plan's on each way in; so what a stroke needs
/// does not depend on the marks elsewhere, and the fewest signs for each are the fewest for all.
///
/// ```
/// use arcata_bow::plan::{BowReach, least_marks};
/// use arcata_bow::{Line, Plan};
///
/// fn how_many(line: &Line, plan: &Plan) -> usize {
///     least_marks(line, plan, BowReach::default()).len()
/// }
/// ```
#[must_use]
pub fn least_marks(line: &Line, plan: &Plan, reach: BowReach) -> Vec<LeastMark> {
    if plan.strokes.len() != line.strokes.len() {
        return Vec::new();
    }
    let arrivals = arrivals(line, reach);
    let needed = arrivals.iter().enumerate().flat_map(|(index, ways)| {
        let signs = SIGNS.into_iter().find(|signs| does(line, plan, index, ways, signs));
        signs.unwrap_or_default().iter().map(move |sign| LeastMark { stroke: index, sign: *sign })
    });
    needed.collect()
}

/// Whether the signs make players do what the plan wants of a stroke, whichever way they come.
fn does(line: &Line, plan: &Plan, index: usize, ways: &[Arrival], signs: &[Sign]) -> bool {
    ways.iter().enumerate().all(|(nth, arrival)| {
        let before = arrival.before.map(|before| plan.strokes[before].direction);
        let act = played(line, index, before, arrival.join, signs);
        let wanted = wanted(plan, index, *arrival, nth);
        act.direction == wanted.direction && (wanted.onward.is_none() || act.onward == wanted.onward)
    })
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::plan::tests::repeats::nested_line;
    use crate::plan::{PlanSettings, plan};

    /// Players with these signs before them play all passes; whether they do the plan.
    fn plays(line: &Line, plan: &Plan, order: &[usize], signs: &[&[Sign]]) -> bool {
        let ways = arrivals(line, BowReach::default());
        let mut before: Option<(usize, BowDirection)> = None;
        order.iter().all(|index| {
            let nth = ways[*index].iter().position(|way| way.before == before.map(|(stroke, _)| stroke));
            let Some(nth) = nth else { return false };
            let way = ways[*index][nth];
            let act = played(line, *index, before.map(|(_, direction)| direction), way.join, signs[*index]);
            let wanted = wanted(plan, *index, way, nth);
            before = Some((*index, act.direction));
            act.direction == wanted.direction && (wanted.onward.is_none() || act.onward == wanted.onward)
        })
    }

    /// Every way of putting signs over the notes, with its number of signs.
    fn every_printing(strokes: usize) -> impl Iterator<Item = (usize, Vec<&'static [Sign]>)> {
        (0..SIGNS.len().pow(strokes as u32)).map(move |mut number| {
            let signs: Vec<&[Sign]> = (0..strokes)
                .map(|_| {
                    let one = SIGNS[number % SIGNS.len()];
                    number /= SIGNS.len();
                    one
                })
                .collect();
            (signs.iter().map(|signs| signs.len()).sum(), signs)
        })
    }

    fn printing(line: &Line, marks: &[LeastMark]) -> Vec<&'static [Sign]> {
        let over = |stroke: usize| {
            let signs: Vec<Sign> =
                marks.iter().filter(|mark| mark.stroke == stroke).map(|mark| mark.sign).collect();
            SIGNS.into_iter().find(|known| *known == signs.as_slice()).unwrap()
        };
        (0..line.strokes.len()).map(over).collect()
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(400))]

        /// All 9^n printings of small lines with nested repeats, played by the page.
        #[test]
        fn no_fewer_marks_do_the_plan((line, order) in nested_line(4)) {
            let plan = plan(&line, &PlanSettings::default());
            let marks = least_marks(&line, &plan, BowReach::default());
            prop_assert!(plays(&line, &plan, &order, &printing(&line, &marks)));
            let fewest = every_printing(line.strokes.len())
                .filter(|(_, signs)| plays(&line, &plan, &order, signs))
                .map(|(count, _)| count)
                .min();
            prop_assert_eq!(fewest, Some(marks.len()));
        }

        #[test]
        fn the_least_marks_make_players_do_long_plans((line, order) in nested_line(40)) {
            let plan = plan(&line, &PlanSettings::default());
            let marks = least_marks(&line, &plan, BowReach::default());
            prop_assert!(plays(&line, &plan, &order, &printing(&line, &marks)));
        }
    }
}
