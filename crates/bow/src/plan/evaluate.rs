//! A plan's cost, term by term, from what was chosen.

use super::costs::Costs;
use super::course::{Return, Weighed};
use super::links::Approach;
use super::search::{Choice, DirectionAndCell};
use super::step_prices::NEVER;
use super::{Link, Plan, PlannedStroke, Turn};
use crate::{Cost, Join, Term};

/// The plan that the choices make, with its costs.
pub(super) fn evaluate(costs: &Costs<'_>, choices: &[Choice]) -> Plan {
    let mut total = Cost::default();
    let mut strokes = Vec::with_capacity(choices.len());
    for (index, choice) in choices.iter().enumerate() {
        let mut cost = Cost::default();
        costs.direction(index, choice.direction, &mut cost);
        costs.begin_at(index, choice.start, &mut cost);
        costs.travel(&costs.pace(&costs.strokes[index]), choice.start.abs_diff(choice.end), &mut cost);
        costs.end_at(index, choice.end, &mut cost);
        let before = costs.course.into[index].before;
        let approach = costs.approach(index);
        let stands = (before.map_or(choice.begun(), |before| choices[before].ended()), choice.begun());
        costs.link(approach.as_ref(), choice.link, stands, &mut cost);
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
    let turns: Vec<Turn> = costs.course.returns.iter().map(|way| turn(costs, way, choices)).collect();
    for turn in &turns {
        total += turn.cost;
    }
    Plan { strokes, turns, total }
}

/// The cheapest way back to the beginning of a stretch, as chosen.
fn turn(costs: &Costs<'_>, way: &Return, choices: &[Choice]) -> Turn {
    let approach = costs.turn(way);
    let stands = (choices[way.from].ended(), choices[way.to].begun());
    let (link, cost) = [Link::Change, Link::Hooked, Link::Retake, Link::Reset]
        .into_iter()
        .filter_map(|link| {
            let mut cost = Cost::default();
            costs.link(Some(&approach), link, stands, &mut cost).then_some((link, cost))
        })
        .min_by_key(|(_, cost)| cost.total())
        .unwrap_or_else(|| (Link::Reset, set_down_anew(costs, way, &approach, stands)));
    Turn {
        stretch: way.stretch,
        from: way.from,
        to: way.to,
        leads: way.leads,
        weighed: way.weight,
        silence: way.silence,
        link,
        cost,
    }
}

/// Where no link leads over a turn, the bow is lifted and set down anew: at the price of a lift over that
/// distance. The search never leaves a turn that it weighs without a link.
fn set_down_anew(
    costs: &Costs<'_>,
    way: &Return,
    approach: &Approach,
    (from, to): (DirectionAndCell, DirectionAndCell),
) -> Cost {
    if way.weight == Weighed::InSearch {
        return Cost::of(Term::Repeat, i64::from(NEVER));
    }
    let mut cost = Cost::default();
    let over_the_bar = Approach { join: Join::Continues, ..*approach };
    costs.act(&over_the_bar, Link::Retake, to.direction, to.direction, &mut cost);
    let carry = costs.carry(approach);
    cost + Cost::of(Term::Retake, carry.per_cell * from.cell.abs_diff(to.cell) as i64)
}
