//! The exact search: dynamic programming over (stroke, direction, cell of the bow).
//!
//! A row holds, for every direction and cell, the least cost of all plans so far whose last stroke
//! goes that way and ends there. Speed costs may have any shape: the step over the travel is a
//! min-plus product over whole rows, which compilers turn into vector instructions; lifts cost
//! linearly in their distance and are found by two passes. Rows are kept, and the plan is read back
//! from the last row to the first with a stated order among ties.

use arcata_score::BowDirection;

use super::anchors::offered;
use super::costs::{Costs, WaySpans};
use super::course::Course;
use super::links::{Approach, Carry};
use super::route::RoundMemory;
use super::rows::Towards;
use super::rows::{Distances, carried, least, lower, lower_all, pay, reach};
use super::{Allowed, Confined, Link, PlanSettings};
use crate::{BowInterval, Join, Line, SpeedWindow, Stroke};
use rustc_hash::FxHashMap;

/// More than any plan of one step can cost; added to itself it does not overflow (by definition).
pub(crate) const NEVER: i32 = 1 << 29;

const DIRECTIONS: [BowDirection; 2] = [BowDirection::Down, BowDirection::Up];

/// Least costs by direction (down, up) and end cell, less the base that was taken off.
pub(crate) type Row<const CELLS: usize> = [[i32; CELLS]; 2];

/// What one step costs, as numbers only. Tables that many strokes share are kept once.
struct Step {
    direction: [i32; 2],
    places: usize,
    travel: usize,
    links: Links,
}

/// What it costs to begin and to end at each cell.
struct PlacePrices<const CELLS: usize> {
    begin: [i32; CELLS],
    end: [i32; CELLS],
}

/// The four links' costs by direction; `NEVER` where not allowed. A lift costs more by the way it goes.
#[derive(Clone, Copy)]
struct Links {
    join: Option<Join>,
    change: [i32; 2],
    hooked: [i32; 2],
    retake: [i32; 2],
    /// By the direction before, then after.
    reset: [[i32; 2]; 2],
    lift: LiftPrice,
}

/// What a way through the air costs.
#[derive(Clone, Copy)]
struct LiftPrice {
    per_cell: i32,
    /// The shortest way that is one, and the longest that there is time for, in cells.
    least: usize,
    in_time: Option<usize>,
    rushed: i32,
}

impl LiftPrice {
    fn over(&self, way: usize) -> i32 {
        let rushed = if self.in_time.is_none_or(|far| way > far) { self.rushed } else { 0 };
        self.per_cell * i32::try_from(way).unwrap_or(0) + rushed
    }

    /// What each cell offers to those nearer the frog and nearer the tip: with the way there in time, or
    /// else in a rush.
    #[inline(always)]
    fn thrown<const CELLS: usize>(&self, row: &[i32; CELLS], towards: Towards) -> [i32; CELLS] {
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

/// What the steps cost, in tables.
struct StepTables<const CELLS: usize> {
    steps: Vec<Step>,
    travels: Vec<Distances>,
    places: Vec<PlacePrices<CELLS>>,
}

/// What of a search stays while only the leanings of its line change.
pub(crate) struct KeptTables<const CELLS: usize> {
    ways: (Course, WaySpans),
    tables: StepTables<CELLS>,
}

/// What a stroke costs that its leanings have a part in.
pub(crate) struct LeaningPrices {
    direction: [i32; 2],
    links: Links,
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
                        travels.push(Distances::new(&travels_of::<CELLS>(&costs, stroke, confined)));
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
                let direction = Self::directions(&costs, index, next(index));
                let links = Self::links(&costs, costs.approach(index).as_ref());
                Step { direction, places: place, travel, links }
            })
            .collect();
        Self {
            costs,
            tables: StepTables { steps, travels, places },
            arch: pulp::Arch::new(),
            allowed,
            rounds: None,
        }
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
        let direction = Self::directions(&self.costs, index, Some(index + 1));
        let links = Self::links(&self.costs, self.costs.approach(index).as_ref());
        self.put_back(index, LeaningPrices { direction, links })
    }

    /// Reckons with what was reckoned with before; gives what was put in its place.
    pub(crate) fn put_back(&mut self, index: usize, prices: LeaningPrices) -> LeaningPrices {
        let step = &mut self.tables.steps[index];
        let before = LeaningPrices { direction: step.direction, links: step.links };
        (step.direction, step.links) = (prices.direction, prices.links);
        before
    }

    fn directions(costs: &Costs<'_>, index: usize, next: Option<usize>) -> [i32; 2] {
        let next = next.and_then(|next| costs.strokes.get(next));
        DIRECTIONS.map(|direction| {
            let mut sum = 0i64;
            costs.direction_before(index, next, direction, &mut sum);
            narrow(sum)
        })
    }

    fn links(costs: &Costs<'_>, approach: Option<&Approach>) -> Links {
        let Some(approach) = approach else {
            let lift = LiftPrice { per_cell: 0, least: 1, in_time: Some(CELLS), rushed: 0 };
            let never = [NEVER; 2];
            return Links {
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
        Links {
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

    /// What a link costs between two stands; `NEVER` where the arm cannot do it.
    fn price(&self, links: &Links, link: Link, from: DirectionAndCell, to: DirectionAndCell) -> i32 {
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
        links: &Links,
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
                    begins[way] = places.begin.map(|place| place + step.direction[way]);
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
            pay(&mut begins[way], &places.begin, step.direction[way]);
        }
        begins
    }

    /// Changes and hooks, which leave the bow where it is.
    #[inline(always)]
    fn on_the_spot(
        &self,
        index: usize,
        links: &Links,
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
        links: &Links,
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
        links: &Links,
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
        links: &Links,
        before: Option<&Row<CELLS>>,
        direction: BowDirection,
    ) -> [i32; CELLS] {
        self.arch.dispatch(StepBegins { search: self, index, links, before, direction })
    }

    /// One forward step, by the way in which the stroke is reached first.
    pub(crate) fn forward(&self, index: usize, before: Option<&Row<CELLS>>) -> SettledRow<CELLS> {
        let links = &self.tables.steps[index].links;
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
        let links = approach
            .map_or(self.tables.steps[index].links, |approach| Self::links(&self.costs, Some(approach)));
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
        let links = way_in
            .map_or(self.tables.steps[index].links, |(approach, _)| Self::links(&self.costs, Some(approach)));
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
        begins[begin.cell] - step.direction[way] - self.tables.places[step.places].begin[begin.cell]
    }

    /// The cheapest link into a begin; ties go to change, hooked, retake, reset in this order. `paid` is
    /// what the cheapest link comes to, so that the first link that reaches it is the one.
    fn link_into(
        &self,
        index: usize,
        links: &Links,
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
        let begins = self.begins_widely(index, &self.tables.steps[index].links, before, begin.direction);
        let paid = self.without_place(index, &begins, begin);
        self.link_into(index, &self.tables.steps[index].links, before, begin, paid)
    }

    /// Where the bow stood before a begin reached by `link`, and the cost so far with the link. Ties: the
    /// shortest way, down before up, nearest the frog.
    fn link_from(
        &self,
        links: &Links,
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
        let links = approach
            .map_or(self.tables.steps[index].links, |approach| Self::links(&self.costs, Some(approach)));
        let begin = DirectionAndCell { direction: choice.direction, cell: choice.start };
        self.link_from(&links, before, begin, choice.link).0
    }

    /// Cost of beginning stroke `index` at `begin` from each stand, over `approach`: the price of a turn.
    /// What the stroke is allowed binds the printed way in, not the turn.
    pub(crate) fn turn(&self, approach: &Approach, begin: DirectionAndCell) -> Row<CELLS> {
        let links = Self::links(&self.costs, Some(approach));
        let all = [Link::Change, Link::Hooked, Link::Retake, Link::Reset];
        std::array::from_fn(|from| {
            std::array::from_fn(|cell| {
                let from = DirectionAndCell { direction: DIRECTIONS[from], cell };
                let cheapest = all.iter().map(|link| self.price(&links, *link, from, begin)).min();
                cheapest.unwrap_or(NEVER).min(NEVER)
            })
        })
    }

    /// What it costs to begin stroke `index` at each stand, the way in and the place included.
    pub(crate) fn begins_at(&self, index: usize, before: Option<&Row<CELLS>>) -> Row<CELLS> {
        let links = &self.tables.steps[index].links;
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
    links: &'s Links,
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
    links: &'s Links,
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
    links: &'s Links,
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
