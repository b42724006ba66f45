//! A plan's cost, term by term, from what was chosen.

use super::costs::Costs;
use super::search::Choice;
use super::{Link, Plan, PlanSettings, PlannedStroke, Turn};
use crate::{Cost, Line, RepeatedStretch};

/// The plan that the choices make, with its costs.
pub(super) fn evaluate(line: &Line, settings: &PlanSettings, cells: usize, choices: &[Choice]) -> Plan {
    let costs = Costs::new(line, settings, cells);
    let count = line.strokes.len();
    let mut total = Cost::default();
    let mut strokes = Vec::with_capacity(choices.len());
    for (index, choice) in choices.iter().enumerate() {
        let mut cost = Cost::default();
        costs.direction(index, choice.direction, &mut cost);
        costs.begin_at(index, choice.start, &mut cost);
        costs.travel(&costs.pace(&line.strokes[index]), choice.start.abs_diff(choice.end), &mut cost);
        costs.end_at(index, choice.end, &mut cost);
        let skipped = line.repeats.iter().find(|stretch| skips_to(stretch, index, count));
        let (approach, before) = match skipped {
            Some(stretch) => (costs.skip(stretch), Some(stretch.body_end - 1)),
            None => (costs.approach(index), index.checked_sub(1)),
        };
        let distance = before.map_or(0, |before| choices[before].end.abs_diff(choice.start));
        costs.link(approach.as_ref(), choice.link, distance, &mut cost);
        total += cost;
        let place = |cell| u16::try_from(costs.thousandths(cell)).unwrap_or(0);
        strokes.push(PlannedStroke {
            direction: choice.direction,
            link: choice.link,
            start: place(choice.start),
            end: place(choice.end),
            cost,
        });
    }
    let turns: Vec<Turn> = line
        .repeats
        .iter()
        .filter(|stretch| stretch.is_sound(count))
        .map(|stretch| turn(&costs, stretch, choices))
        .collect();
    for turn in &turns {
        total += turn.cost;
    }
    Plan { strokes, turns, total }
}

fn skips_to(stretch: &RepeatedStretch, index: usize, count: usize) -> bool {
    stretch.is_sound(count) && stretch.first_ending_end == index && stretch.body_end < index
}

/// The cheapest way back to the beginning of a stretch, as chosen.
fn turn(costs: &Costs<'_>, stretch: &RepeatedStretch, choices: &[Choice]) -> Turn {
    let (last, first) = (stretch.first_ending_end - 1, stretch.first);
    let approach = costs.turn(stretch);
    let (from, to) = (choices[last], choices[first]);
    let distance = from.end.abs_diff(to.start);
    let same_way = from.direction == to.direction;
    [Link::Change, Link::Hooked, Link::Retake, Link::Reset]
        .into_iter()
        .filter(|link| match link {
            Link::Change => !same_way && distance == 0,
            Link::Hooked => same_way && distance == 0,
            Link::Retake => same_way,
            Link::Reset => true,
        })
        .filter_map(|link| {
            let mut cost = Cost::default();
            costs.link(Some(&approach), link, distance, &mut cost).then_some(Turn { link, cost })
        })
        .min_by_key(|turn| turn.cost.total())
        .unwrap_or(Turn { link: Link::Reset, cost: Cost::default() })
}
