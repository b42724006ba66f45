//! The exact search: dynamic programming over (stroke, direction, cell of the bow).
//!
//! A row holds, for every direction and cell, the least cost of all plans so far whose last stroke
//! goes that way and ends there. Speed costs may have any shape: the step over the travel is a
//! min-plus product over whole rows, which compilers turn into vector instructions; lifts cost
//! linearly in their distance and are found by two passes. Rows are kept, and the plan is read back
//! from the last row to the first with a stated order among ties.

use arcata_score::BowDirection;

use super::costs::{Costs, WaySpans};
use super::course::{Course, Return};
use super::links::Approach;
use super::route::RoundMemory;
use super::rows::{Towards, least, lower, lower_all, pay, reach};
use super::step_prices::{DIRECTIONS, LeaningPrices, LinkPrices, NEVER, StepTables};
use super::{Allowed, Link, PlanSettings};
use crate::{Join, Line};

/// Least costs by direction (down, up) and end cell, less the base that was taken off.
pub(crate) type Row<const CELLS: usize> = [[i32; CELLS]; 2];

/// Where one stroke was found to begin and how it was reached.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Choice {
    pub(crate) direction: BowDirection,
    pub(crate) link: Link,
    pub(crate) start: usize,
    pub(crate) end: usize,
}

impl Choice {
    /// Where the stroke begins.
    pub(crate) fn begun(&self) -> DirectionAndCell {
        DirectionAndCell { direction: self.direction, cell: self.start }
    }

    /// Where it ends.
    pub(crate) fn ended(&self) -> DirectionAndCell {
        DirectionAndCell { direction: self.direction, cell: self.end }
    }
}

/// A direction and an end cell.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct DirectionAndCell {
    pub(crate) direction: BowDirection,
    pub(crate) cell: usize,
}

/// All numbers of a line, ready for the search.
pub(crate) struct LineSearch<'a, const CELLS: usize> {
    pub(crate) costs: Costs<'a>,
    tables: StepTables<CELLS>,
    arch: pulp::Arch,
    allowed: &'a [Allowed],
    /// Rounds of cycles that are remembered, where any are.
    pub(crate) rounds: Option<&'a RoundMemory<CELLS>>,
}

/// What of a search stays while only the leanings of its line change.
pub(crate) struct KeptTables<const CELLS: usize> {
    ways: (Course, WaySpans),
    tables: StepTables<CELLS>,
}

impl<'a, const CELLS: usize> LineSearch<'a, CELLS> {
    pub(crate) fn new(costs: Costs<'a>, allowed: &'a [Allowed]) -> Self {
        Self::over(costs, allowed, |index| Some(index + 1))
    }

    /// A search over strokes in whatever order; `next` gives the index of a stroke that begins where
    /// another ends.
    pub(crate) fn over(
        costs: Costs<'a>,
        allowed: &'a [Allowed],
        next: impl Fn(usize) -> Option<usize>,
    ) -> Self {
        let tables = StepTables::new(&costs, next);
        Self { costs, tables, arch: pulp::Arch::new(), allowed, rounds: None }
    }

    /// A search over a line that was searched before with other leanings.
    pub(crate) fn again(
        line: &'a Line,
        settings: &'a PlanSettings,
        allowed: &'a [Allowed],
        kept: KeptTables<CELLS>,
    ) -> Self {
        let costs = Costs::kept(&line.strokes, kept.ways, settings, CELLS);
        Self { costs, tables: kept.tables, arch: pulp::Arch::new(), allowed, rounds: None }
    }

    /// What stays while only leanings change.
    pub(crate) fn into_kept(self) -> KeptTables<CELLS> {
        KeptTables { ways: self.costs.into_kept(), tables: self.tables }
    }

    /// Reckons with what the settings let a stroke lean to now; gives what was reckoned with before.
    pub(crate) fn lean_anew(&mut self, index: usize) -> LeaningPrices {
        self.put_back(index, LeaningPrices::of(&self.costs, index, Some(index + 1)))
    }

    /// Reckons with what was reckoned with before; gives what was put in its place.
    pub(crate) fn put_back(&mut self, index: usize, prices: LeaningPrices) -> LeaningPrices {
        std::mem::replace(&mut self.tables.steps[index].leaning, prices)
    }

    /// What the links into a stroke cost: as printed, or over another way in.
    fn links(&self, index: usize, approach: Option<&Approach>) -> LinkPrices {
        match approach {
            Some(approach) => LinkPrices::of(&self.costs, Some(approach)),
            None => self.tables.steps[index].leaning.links,
        }
    }

    /// What a link costs between two stands; `NEVER` where the arm cannot do it.
    fn price(&self, links: &LinkPrices, link: Link, from: DirectionAndCell, to: DirectionAndCell) -> i32 {
        let Some(join) = links.join else { return if link == Link::Reset { 0 } else { NEVER } };
        if !self.costs.is_link(join, link, from, to) {
            return NEVER;
        }
        let (before, after) = (from.direction as usize, to.direction as usize);
        let over = || links.lift.over(from.cell.abs_diff(to.cell));
        match link {
            Link::Change => links.change[after],
            Link::Hooked => links.hooked[after],
            Link::Retake => links.retake[after] + over(),
            // Wherever the bow stood; a leaning to change is not met.
            Link::Reset if join == Join::Entry => links.reset[before][after],
            Link::Reset => links.reset[before][after] + over(),
        }
    }

    /// Cost of setting the bow down for stroke `index`, by direction and cell, from `before`, in the
    /// directions asked for.
    #[inline(always)]
    fn begins(
        &self,
        index: usize,
        links: &LinkPrices,
        before: Option<&Row<CELLS>>,
        directions: &[BowDirection],
    ) -> Row<CELLS> {
        let step = &self.tables.steps[index];
        let places = &self.tables.places[step.places];
        let allowed = self.allowed[index];
        let mut begins = [[NEVER; CELLS]; 2];
        let Some(before) = before else {
            for direction in directions.iter().copied() {
                let way = direction as usize;
                if allowed.permits(direction, Link::Reset) {
                    begins[way] = places.begin.map(|place| place + step.leaning.direction[way]);
                }
            }
            return begins;
        };
        match links.join {
            Some(Join::Continues) => self.straight_on(index, links, before, directions, &mut begins),
            Some(Join::AfterRest) => self.over_a_rest(index, links, before, directions, &mut begins),
            Some(Join::Entry) | None => {
                let free = least(&before[0]).min(least(&before[1]));
                for direction in directions {
                    if allowed.permits(*direction, Link::Reset) {
                        let way = *direction as usize;
                        begins[way] = [(free + links.reset[way][way]).min(NEVER); CELLS];
                    }
                }
            }
        }
        for direction in directions {
            let way = *direction as usize;
            pay(&mut begins[way], &places.begin, step.leaning.direction[way]);
        }
        begins
    }

    /// Changes and hooks, which leave the bow where it is.
    #[inline(always)]
    fn on_the_spot(
        &self,
        index: usize,
        links: &LinkPrices,
        before: &Row<CELLS>,
        direction: BowDirection,
        begin: &mut [i32; CELLS],
    ) {
        let (way, allowed) = (direction as usize, self.allowed[index]);
        if allowed.permits(direction, Link::Change) {
            lower(begin, &before[1 - way], links.change[way]);
        }
        if allowed.permits(direction, Link::Hooked) {
            lower(begin, &before[way], links.hooked[way]);
        }
    }

    #[inline(always)]
    fn straight_on(
        &self,
        index: usize,
        links: &LinkPrices,
        before: &Row<CELLS>,
        directions: &[BowDirection],
        begins: &mut Row<CELLS>,
    ) {
        for direction in directions.iter().copied() {
            let way = direction as usize;
            self.on_the_spot(index, links, before, direction, &mut begins[way]);
            if self.allowed[index].permits(direction, Link::Retake) {
                let towards = if direction == BowDirection::Down { Towards::Frog } else { Towards::Tip };
                lower(&mut begins[way], &links.lift.thrown(&before[way], towards), links.retake[way]);
            }
        }
    }

    #[inline(always)]
    fn over_a_rest(
        &self,
        index: usize,
        links: &LinkPrices,
        before: &Row<CELLS>,
        directions: &[BowDirection],
        begins: &mut Row<CELLS>,
    ) {
        let thrown: Row<CELLS> = std::array::from_fn(|from| {
            let mut both = links.lift.thrown(&before[from], Towards::Frog);
            lower_all(&mut both, &links.lift.thrown(&before[from], Towards::Tip));
            both
        });
        for direction in directions.iter().copied() {
            let way = direction as usize;
            self.on_the_spot(index, links, before, direction, &mut begins[way]);
            if self.allowed[index].permits(direction, Link::Reset) {
                for (from, thrown) in thrown.iter().enumerate() {
                    lower(&mut begins[way], thrown, links.reset[from][way]);
                }
            }
        }
    }

    /// Travel from the begins to the ends of stroke `index`. The up-bow is the down-bow mirrored.
    #[inline(always)]
    fn travel(&self, index: usize, begins: &Row<CELLS>) -> Row<CELLS> {
        let step = &self.tables.steps[index];
        let distances = &self.tables.travels[step.travel];
        let down = reach(&begins[0], distances);
        let mut mirrored = begins[1];
        mirrored.reverse();
        let mut up = reach(&mirrored, distances);
        up.reverse();
        let mut ends = [down, up];
        for way in &mut ends {
            pay(way, &self.tables.places[step.places].end, 0);
        }
        ends
    }

    /// Cost of setting the bow down for stroke `index` in one direction, by cell.
    fn begins_widely(
        &self,
        index: usize,
        links: &LinkPrices,
        before: Option<&Row<CELLS>>,
        direction: BowDirection,
    ) -> [i32; CELLS] {
        self.arch.dispatch(StepBegins { search: self, index, links, before, direction })
    }

    /// One forward step, by the way in which the stroke is reached first.
    pub(crate) fn forward(&self, index: usize, before: Option<&Row<CELLS>>) -> SettledRow<CELLS> {
        let links = &self.tables.steps[index].leaning.links;
        self.arch.dispatch(WholeStep { search: self, index, links, before })
    }

    /// The cheapest way in which stroke `index` can have begun and ended at `stand`, given the row before.
    pub(crate) fn choose(
        &self,
        index: usize,
        approach: Option<&Approach>,
        before: Option<&Row<CELLS>>,
        stand: DirectionAndCell,
    ) -> Choice {
        self.choose_priced(index, approach, before, stand).0
    }

    /// See [`Self::choose`]; with what it costs up to the end of the travel.
    pub(crate) fn choose_priced(
        &self,
        index: usize,
        approach: Option<&Approach>,
        before: Option<&Row<CELLS>>,
        stand: DirectionAndCell,
    ) -> (Choice, i32) {
        let links = self.links(index, approach);
        let begins = self.begins_widely(index, &links, before, stand.direction);
        let table = self.tables.travels[self.tables.steps[index].travel].by_cell(CELLS);
        // Ties: the shortest travel, which is tried first.
        let mut best = (i32::MAX, stand.cell);
        for (used, cost) in table.iter().enumerate() {
            let start = match stand.direction {
                BowDirection::Down => stand.cell.wrapping_sub(used),
                BowDirection::Up => stand.cell + used,
            };
            if start >= CELLS {
                break;
            }
            let whole = begins[start] + cost;
            if whole < best.0 {
                best = (whole, start);
            }
        }
        let start = best.1;
        let begin = DirectionAndCell { direction: stand.direction, cell: start };
        let link = self.link_into(index, &links, before, begin, self.without_place(index, &begins, begin));
        (Choice { direction: stand.direction, link, start, end: stand.cell }, best.0)
    }

    /// Costs of setting the bow down for stroke `index`, both directions, over a way in.
    pub(crate) fn landings(&self, index: usize, way_in: Option<(&Approach, &Row<CELLS>)>) -> Row<CELLS> {
        let links = self.links(index, way_in.map(|(approach, _)| approach));
        let before = way_in.map(|(_, before)| before);
        self.arch.dispatch(Landings { search: self, index, links: &links, before })
    }

    /// The row at the end of stroke `index` from what setting the bow down costs.
    pub(crate) fn travelled(&self, index: usize, begins: &Row<CELLS>) -> SettledRow<CELLS> {
        self.arch.dispatch(Travel { search: self, index, begins })
    }

    /// A begin's cost up to and with its link.
    fn without_place(&self, index: usize, begins: &[i32; CELLS], begin: DirectionAndCell) -> i32 {
        let step = &self.tables.steps[index];
        let way = begin.direction as usize;
        begins[begin.cell] - step.leaning.direction[way] - self.tables.places[step.places].begin[begin.cell]
    }

    /// The cheapest link into a begin; ties go to change, hooked, retake, reset in this order. `paid` is
    /// what the cheapest link comes to, so that the first link that reaches it is the one.
    fn link_into(
        &self,
        index: usize,
        links: &LinkPrices,
        before: Option<&Row<CELLS>>,
        begin: DirectionAndCell,
        paid: i32,
    ) -> Link {
        let Some(before) = before else { return Link::Reset };
        let permitted = |link: &Link| self.allowed[index].permits(begin.direction, *link);
        let all = [Link::Change, Link::Hooked, Link::Retake, Link::Reset];
        let cost = |link: &Link| self.link_from(links, before, begin, *link).1;
        all.into_iter()
            .filter(permitted)
            .find(|link| cost(link) == paid)
            .or_else(|| all.into_iter().filter(permitted).min_by_key(cost))
            .unwrap_or(Link::Reset)
    }

    /// See [`Self::link_into`]; by the printed way in.
    pub(crate) fn link_to(&self, index: usize, before: Option<&Row<CELLS>>, begin: DirectionAndCell) -> Link {
        let begins =
            self.begins_widely(index, &self.tables.steps[index].leaning.links, before, begin.direction);
        let paid = self.without_place(index, &begins, begin);
        self.link_into(index, &self.tables.steps[index].leaning.links, before, begin, paid)
    }

    /// Where the bow stood before a begin reached by `link`, and the cost so far with the link. Ties: the
    /// shortest way, down before up, nearest the frog.
    fn link_from(
        &self,
        links: &LinkPrices,
        before: &Row<CELLS>,
        begin: DirectionAndCell,
        link: Link,
    ) -> (DirectionAndCell, i32) {
        let mut best = (DirectionAndCell { direction: begin.direction, cell: begin.cell }, NEVER, usize::MAX);
        let mut offer = |from: DirectionAndCell| {
            let paid = before[from.direction as usize][from.cell];
            let cost = (paid + self.price(links, link, from, begin)).min(NEVER);
            let way = from.cell.abs_diff(begin.cell);
            if (cost, way) < (best.1, best.2) {
                best = (from, cost, way);
            }
        };
        match link {
            Link::Change => offer(DirectionAndCell { direction: begin.direction.other(), cell: begin.cell }),
            Link::Hooked => offer(begin),
            Link::Retake | Link::Reset => {
                for direction in DIRECTIONS {
                    (0..CELLS).for_each(|cell| offer(DirectionAndCell { direction, cell }));
                }
            }
        }
        (best.0, best.1)
    }

    /// Where the bow stood before a choice.
    pub(crate) fn stood(
        &self,
        index: usize,
        approach: Option<&Approach>,
        before: &Row<CELLS>,
        choice: Choice,
    ) -> DirectionAndCell {
        let links = self.links(index, approach);
        let begin = DirectionAndCell { direction: choice.direction, cell: choice.start };
        self.link_from(&links, before, begin, choice.link).0
    }

    /// What the links of a turn cost.
    pub(crate) fn turn_links(&self, way: &Return) -> LinkPrices {
        LinkPrices::of(&self.costs, Some(&self.costs.turn(way)))
    }

    /// Cost of beginning at `begin` over the links of a turn, from each stand.
    /// What the stroke is allowed binds the printed way in, not the turn.
    pub(crate) fn turn(&self, links: &LinkPrices, begin: DirectionAndCell) -> Row<CELLS> {
        let all = [Link::Change, Link::Hooked, Link::Retake, Link::Reset];
        std::array::from_fn(|from| {
            std::array::from_fn(|cell| {
                let from = DirectionAndCell { direction: DIRECTIONS[from], cell };
                let cheapest = all.iter().map(|link| self.price(links, *link, from, begin)).min();
                cheapest.unwrap_or(NEVER).min(NEVER)
            })
        })
    }

    /// What it costs to begin stroke `index` at each stand, the way in and the place included.
    pub(crate) fn begins_at(&self, index: usize, before: Option<&Row<CELLS>>) -> Row<CELLS> {
        let links = &self.tables.steps[index].leaning.links;
        DIRECTIONS.map(|direction| self.begins_widely(index, links, before, direction))
    }

    /// The row behind stroke `index` when it begins at `begin`, that begin itself not counted.
    pub(crate) fn forward_from(&self, index: usize, begin: DirectionAndCell) -> SettledRow<CELLS> {
        let mut one = [[NEVER; CELLS]; 2];
        one[begin.direction as usize][begin.cell] = 0;
        self.arch.dispatch(Travel { search: self, index, begins: &one })
    }
}

/// One whole step, compiled for each width of vectors (a closure would be compiled for the narrowest).
struct WholeStep<'s, 'a, const CELLS: usize> {
    search: &'s LineSearch<'a, CELLS>,
    index: usize,
    links: &'s LinkPrices,
    before: Option<&'s Row<CELLS>>,
}

impl<const CELLS: usize> pulp::NullaryFnOnce for WholeStep<'_, '_, CELLS> {
    type Output = SettledRow<CELLS>;
    #[inline(always)]
    fn call(self) -> SettledRow<CELLS> {
        settled(
            self.search
                .travel(self.index, &self.search.begins(self.index, self.links, self.before, &DIRECTIONS)),
        )
    }
}

/// The first half of a step, see [`WholeStep`].
struct StepBegins<'s, 'a, const CELLS: usize> {
    search: &'s LineSearch<'a, CELLS>,
    index: usize,
    links: &'s LinkPrices,
    before: Option<&'s Row<CELLS>>,
    direction: BowDirection,
}

impl<const CELLS: usize> pulp::NullaryFnOnce for StepBegins<'_, '_, CELLS> {
    type Output = [i32; CELLS];
    #[inline(always)]
    fn call(self) -> [i32; CELLS] {
        let row = self.search.begins(self.index, self.links, self.before, &[self.direction]);
        row[self.direction as usize]
    }
}

/// The first half of a step in both directions, see [`WholeStep`].
struct Landings<'s, 'a, const CELLS: usize> {
    search: &'s LineSearch<'a, CELLS>,
    index: usize,
    links: &'s LinkPrices,
    before: Option<&'s Row<CELLS>>,
}

impl<const CELLS: usize> pulp::NullaryFnOnce for Landings<'_, '_, CELLS> {
    type Output = Row<CELLS>;
    #[inline(always)]
    fn call(self) -> Row<CELLS> {
        self.search.begins(self.index, self.links, self.before, &DIRECTIONS)
    }
}

/// The second half of a step, see [`WholeStep`].
struct Travel<'s, 'a, const CELLS: usize> {
    search: &'s LineSearch<'a, CELLS>,
    index: usize,
    begins: &'s Row<CELLS>,
}

impl<const CELLS: usize> pulp::NullaryFnOnce for Travel<'_, '_, CELLS> {
    type Output = SettledRow<CELLS>;
    #[inline(always)]
    fn call(self) -> SettledRow<CELLS> {
        settled(self.search.travel(self.index, self.begins))
    }
}

/// A row with its least value taken off, so that rows never overflow, and that value.
pub(crate) struct SettledRow<const CELLS: usize> {
    pub(crate) row: Row<CELLS>,
    /// What was taken off; `NEVER` where nothing is within reach.
    pub(crate) base: i64,
}

impl<const CELLS: usize> SettledRow<CELLS> {
    /// At one stand, for nothing.
    pub(crate) fn one(stand: DirectionAndCell) -> Self {
        let mut row = [[NEVER; CELLS]; 2];
        row[stand.direction as usize][stand.cell] = 0;
        Self { row, base: 0 }
    }

    /// A row on top of what was taken off before.
    pub(crate) fn on_top(row: Row<CELLS>, base: i64) -> Self {
        let Self { row, base: more } = settled(row);
        Self { row, base: (base + more).min(i64::from(NEVER)) }
    }
}

#[inline(always)]
fn settled<const CELLS: usize>(mut row: Row<CELLS>) -> SettledRow<CELLS> {
    let base = least(&row[0]).min(least(&row[1]));
    if base < NEVER {
        for way in &mut row {
            for cell in way {
                // Out of reach stays out of reach.
                *cell = if *cell >= NEVER { NEVER } else { *cell - base };
            }
        }
    }
    SettledRow { row, base: i64::from(base) }
}

/// The cheapest stand of a row: ties go to the end nearest the frog, down before up.
pub(crate) fn cheapest<const CELLS: usize>(row: &Row<CELLS>) -> DirectionAndCell {
    let mut best = (NEVER, DirectionAndCell { direction: BowDirection::Down, cell: 0 });
    for (cell, (down, up)) in row[0].iter().zip(&row[1]).enumerate() {
        for (direction, cost) in [(BowDirection::Down, *down), (BowDirection::Up, *up)] {
            if cost < best.0 {
                best = (cost, DirectionAndCell { direction, cell });
            }
        }
    }
    best.1
}
