//! The way through a line read back, last stroke first.

use super::course::{Cycle, Leg};
use super::route::{walk, walk_from};
use super::search::{Choice, DirectionAndCell, LineSearch, Row, cheapest};
use super::step_prices::NEVER;

/// What the search knows at the end of a leg.
pub(super) struct Passed<'c, const CELLS: usize> {
    pub(super) leg: &'c Leg,
    pub(super) row: Row<CELLS>,
    /// For a cycle: how its first stroke best begins, by the stand at its body's end.
    pub(super) begins: Vec<DirectionAndCell>,
}

/// Choices as they are made, by stroke.
struct ChoiceReader<'s, 'a, const CELLS: usize> {
    search: &'s LineSearch<'a, CELLS>,
    choices: Vec<Option<Choice>>,
}

/// How the first stroke of some legs begins.
#[derive(Clone, Copy)]
enum LegBegin {
    /// As is cheapest.
    Free,
    /// At a stand that is settled already.
    At(DirectionAndCell),
}

/// The cheapest choices of a whole line.
pub(super) fn read_back<const CELLS: usize>(
    search: &LineSearch<'_, CELLS>,
    passed: &[Passed<'_, CELLS>],
) -> Vec<Choice> {
    let mut reader = ChoiceReader { search, choices: vec![None; search.costs.strokes.len()] };
    if let Some(last) = passed.last() {
        reader.legs(passed, None, cheapest(&last.row), LegBegin::Free);
    }
    reader.choices.into_iter().flatten().collect()
}

impl<const CELLS: usize> ChoiceReader<'_, '_, CELLS> {
    /// Reads legs back from the stand at their end; returns the stand before them.
    fn legs(
        &mut self,
        passed: &[Passed<'_, CELLS>],
        before: Option<&Row<CELLS>>,
        end: DirectionAndCell,
        begin: LegBegin,
    ) -> DirectionAndCell {
        let mut stand = end;
        for (at, leg) in passed.iter().enumerate().rev() {
            let row = at.checked_sub(1).map(|at| &passed[at].row).or(before);
            let begin = if at == 0 { begin } else { LegBegin::Free };
            stand = match leg.leg {
                Leg::Stroke(index) => self.stroke(*index, row, stand, begin),
                Leg::Cycle(cycle) => {
                    let begin = match begin {
                        LegBegin::At(begin) => begin,
                        LegBegin::Free => leg.begins[stand.direction as usize * CELLS + stand.cell],
                    };
                    self.cycle(cycle, row, stand, begin)
                }
            };
        }
        stand
    }

    fn stroke(
        &mut self,
        index: usize,
        before: Option<&Row<CELLS>>,
        end: DirectionAndCell,
        begin: LegBegin,
    ) -> DirectionAndCell {
        let choice = match begin {
            LegBegin::Free => self.search.choose(index, None, before, end),
            LegBegin::At(begin) => {
                let link = self.search.link_to(index, before, begin);
                Choice { direction: begin.direction, link, start: begin.cell, end: end.cell }
            }
        };
        self.choices[index] = Some(choice);
        before.map_or(end, |before| self.search.stood(index, None, before, choice))
    }

    /// A cycle whose body ends at `end` and begins at `begin`.
    fn cycle(
        &mut self,
        cycle: &Cycle,
        before: Option<&Row<CELLS>>,
        end: DirectionAndCell,
        begin: DirectionAndCell,
    ) -> DirectionAndCell {
        for ending in &cycle.endings {
            let mut there = [[NEVER; CELLS]; 2];
            there[end.direction as usize][end.cell] = 0;
            let passed = walk(self.search, &ending.legs, Some(&there));
            let Some(last) = passed.last() else { continue };
            let way = &self.search.costs.course.returns[ending.turn];
            let turn = self.search.turn(&self.search.turn_links(way), begin);
            let mut paid = last.row;
            for (cost, price) in paid.iter_mut().flatten().zip(turn.iter().flatten()) {
                *cost = (*cost + price).min(NEVER);
            }
            self.legs(&passed, Some(&there), cheapest(&paid), LegBegin::Free);
        }
        let passed = walk_from(self.search, &cycle.body, begin);
        self.legs(&passed, before, end, LegBegin::At(begin))
    }
}
