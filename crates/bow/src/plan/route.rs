//! The way through a line: stroke after stroke, with its repeated stretches as cycles.

use arcata_score::BowDirection;

use super::costs::Approach;
use super::search::{Choice, NEVER, Row, Search, Settled, Stand, cheapest};
use crate::RepeatedStretch;

/// A piece of the way.
enum Leg<'a> {
    Stroke(usize),
    Stretch(&'a RepeatedStretch),
}

/// What the search knows at the end of a leg.
struct Passed<'a, const CELLS: usize> {
    leg: Leg<'a>,
    row: Row<CELLS>,
    /// For a stretch: how its first stroke best begins, by the stand at its end.
    begins: Vec<Stand>,
}

/// The cheapest choices for all strokes; `None` where what is allowed leaves no way through.
pub(super) fn best<const CELLS: usize>(
    search: &Search<'_, CELLS>,
    repeats: &[RepeatedStretch],
) -> Option<Vec<Choice>> {
    let count = search.costs.strokes.len();
    let mut passed: Vec<Passed<'_, CELLS>> = Vec::with_capacity(count);
    let mut index = 0;
    while index < count {
        let before = passed.last().map(|leg| &leg.row);
        let stretch = repeats.iter().find(|stretch| stretch.first == index && stretch.is_sound(count));
        let next = if let Some(stretch) = stretch {
            let (row, begins) = stretch_row(search, stretch, before);
            index = stretch.first_ending_end;
            Passed { leg: Leg::Stretch(stretch), row, begins }
        } else {
            let skip = skip_into(search, &passed);
            let Settled { row, .. } = match (&skip, before) {
                (Some(approach), Some(before)) => search.forward_by(index, approach, before),
                _ => search.forward(index, before),
            };
            index += 1;
            Passed { leg: Leg::Stroke(index - 1), row, begins: Vec::new() }
        };
        // Settled rows hold a nought wherever anything is within reach.
        if !next.row.iter().any(|way| way.contains(&0)) {
            return None;
        }
        passed.push(next);
    }
    Some(read_back(search, &passed))
}

/// The approach over a skipped first ending, when the leg before is a stretch that has one.
fn skip_into<const CELLS: usize>(
    search: &Search<'_, CELLS>,
    passed: &[Passed<'_, CELLS>],
) -> Option<Approach> {
    match &passed.last()?.leg {
        Leg::Stretch(stretch) => search.costs.skip(stretch),
        Leg::Stroke(_) => None,
    }
}

/// Rows through the body of a stretch whose first stroke begins at `begin`, and what was taken off them.
fn body_rows<const CELLS: usize>(
    search: &Search<'_, CELLS>,
    stretch: &RepeatedStretch,
    before: Option<&Row<CELLS>>,
    begin: Stand,
) -> (Vec<Row<CELLS>>, i64) {
    let mut rows: Vec<Row<CELLS>> = Vec::with_capacity(stretch.body_end - stretch.first);
    let mut base = 0;
    for index in stretch.first..stretch.body_end {
        let settled = match rows.last() {
            None => search.forward_from(index, before, begin),
            Some(last) => search.forward(index, Some(last)),
        };
        base += i64::from(settled.base);
        rows.push(settled.row);
    }
    (rows, base)
}

/// The row at the end of a stretch's body, the way back to its beginning paid, and for each stand the
/// begin that makes it cheapest.
fn stretch_row<const CELLS: usize>(
    search: &Search<'_, CELLS>,
    stretch: &RepeatedStretch,
    before: Option<&Row<CELLS>>,
) -> (Row<CELLS>, Vec<Stand>) {
    let approach = search.costs.turn(stretch);
    let nowhere = Stand { direction: BowDirection::Down, cell: 0 };
    let mut best = vec![(i64::MAX, nowhere); 2 * CELLS];
    for direction in [BowDirection::Down, BowDirection::Up] {
        for cell in 0..CELLS {
            let begin = Stand { direction, cell };
            let (rows, base) = body_rows(search, stretch, before, begin);
            let mut back = search.turn(&approach, begin);
            for index in (stretch.body_end..stretch.first_ending_end).rev() {
                back = search.backward(index, &back);
            }
            let Some(last) = rows.last() else { continue };
            for way in 0..2 {
                for at in 0..CELLS {
                    if last[way][at] >= NEVER || back[way][at] >= NEVER {
                        continue;
                    }
                    let cost = base + i64::from(last[way][at]) + i64::from(back[way][at]);
                    if cost < best[way * CELLS + at].0 {
                        best[way * CELLS + at] = (cost, begin);
                    }
                }
            }
        }
    }
    let least = best.iter().map(|(cost, _)| *cost).min().unwrap_or(0);
    // A stand that nothing reaches stays out of reach, also where nothing reaches any.
    let value = |cost: i64| match cost {
        i64::MAX => NEVER,
        cost => i32::try_from(cost - least).unwrap_or(NEVER).min(NEVER),
    };
    let row = std::array::from_fn(|way| std::array::from_fn(|at| value(best[way * CELLS + at].0)));
    (row, best.into_iter().map(|(_, begin)| begin).collect())
}

fn read_back<const CELLS: usize>(search: &Search<'_, CELLS>, passed: &[Passed<'_, CELLS>]) -> Vec<Choice> {
    let mut choices = Vec::with_capacity(search.costs.strokes.len());
    let Some(last) = passed.last() else { return choices };
    let mut stand = cheapest(&last.row);
    for (at, leg) in passed.iter().enumerate().rev() {
        let before = at.checked_sub(1).map(|before| &passed[before].row);
        match leg.leg {
            Leg::Stroke(index) => {
                let skip = skip_into(search, &passed[..at]);
                let choice = search.choose(index, skip.as_ref(), before, stand);
                choices.push(choice);
                if let Some(before) = before {
                    stand = search.stood(index, skip.as_ref(), before, choice);
                }
            }
            Leg::Stretch(stretch) => {
                let begin = leg.begins[stand.direction as usize * CELLS + stand.cell];
                ending_back(search, stretch, stand, begin, &mut choices);
                stand = body_back(search, stretch, before, stand, begin, &mut choices);
            }
        }
    }
    choices.reverse();
    choices
}

/// The first ending, given where the body ended and where the second pass begins, last stroke first.
fn ending_back<const CELLS: usize>(
    search: &Search<'_, CELLS>,
    stretch: &RepeatedStretch,
    body_end: Stand,
    begin: Stand,
    choices: &mut Vec<Choice>,
) {
    if stretch.first_ending_end == stretch.body_end {
        return;
    }
    let mut first = [[NEVER; CELLS]; 2];
    first[body_end.direction as usize][body_end.cell] = 0;
    let mut rows = vec![first];
    for index in stretch.body_end..stretch.first_ending_end {
        let settled = search.forward(index, rows.last());
        rows.push(settled.row);
    }
    let turn = search.turn(&search.costs.turn(stretch), begin);
    let mut last = rows[rows.len() - 1];
    for (way, row) in last.iter_mut().enumerate() {
        for (cell, cost) in row.iter_mut().enumerate() {
            *cost = (*cost + turn[way][cell]).min(NEVER);
        }
    }
    let mut stand = cheapest(&last);
    for index in (stretch.body_end..stretch.first_ending_end).rev() {
        let before = &rows[index - stretch.body_end];
        let choice = search.choose(index, None, Some(before), stand);
        choices.push(choice);
        stand = search.stood(index, None, before, choice);
    }
}

/// The body, last stroke first; returns the stand before it.
fn body_back<const CELLS: usize>(
    search: &Search<'_, CELLS>,
    stretch: &RepeatedStretch,
    before: Option<&Row<CELLS>>,
    mut stand: Stand,
    begin: Stand,
    choices: &mut Vec<Choice>,
) -> Stand {
    let (rows, _) = body_rows(search, stretch, before, begin);
    for index in (stretch.first + 1..stretch.body_end).rev() {
        let row = &rows[index - stretch.first - 1];
        let choice = search.choose(index, None, Some(row), stand);
        choices.push(choice);
        stand = search.stood(index, None, row, choice);
    }
    let link = search.link_to(stretch.first, before, begin);
    let choice = Choice { direction: begin.direction, link, start: begin.cell, end: stand.cell };
    choices.push(choice);
    before.map_or(stand, |before| search.stood(stretch.first, None, before, choice))
}
