//! The exact search: dynamic programming over (stroke, direction, cell of the bow).
//!
//! A row holds, for every direction and cell, the least cost of all plans so far whose last stroke
//! goes that way and ends there. Speed costs may have any shape: the step over the travel is a
//! min-plus product over whole rows, which compilers turn into vector instructions; lifts cost
//! linearly in their distance and are found by two passes. Rows are kept, and the plan is read back
//! from the last row to the first with a stated order among ties.

use arcata_score::BowDirection;

use super::costs::{Approach, Costs};
use super::{Allowed, Link};
use crate::{BowInterval, SpeedWindow};
use rustc_hash::FxHashMap;

/// More than any plan of one step can cost; added to itself it does not overflow.
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
struct Places<const CELLS: usize> {
    begin: [i32; CELLS],
    end: [i32; CELLS],
}

/// The four links' costs; `NEVER` where not allowed. A lift costs `base + per_cell · distance`.
#[derive(Clone, Copy)]
struct Links {
    change: i32,
    hooked: i32,
    retake: Lift,
    reset: Lift,
}

impl Links {
    fn offer(&self, link: Link) -> bool {
        let cost = match link {
            Link::Change => self.change,
            Link::Hooked => self.hooked,
            Link::Retake => self.retake.base,
            Link::Reset => self.reset.base,
        };
        cost < NEVER
    }
}

#[derive(Clone, Copy)]
struct Lift {
    base: i32,
    per_cell: i32,
}

/// Where one stroke was found to begin and how it was reached.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Choice {
    pub(crate) direction: BowDirection,
    pub(crate) link: Link,
    pub(crate) start: usize,
    pub(crate) end: usize,
}

/// A direction and an end cell.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Stand {
    pub(crate) direction: BowDirection,
    pub(crate) cell: usize,
}

/// All numbers of a line, ready for the search.
pub(crate) struct Search<'a, const CELLS: usize> {
    pub(crate) costs: Costs<'a>,
    steps: Vec<Step>,
    travels: Vec<[i32; CELLS]>,
    places: Vec<Places<CELLS>>,
    allowed: &'a [Allowed],
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

impl<'a, const CELLS: usize> Search<'a, CELLS> {
    pub(crate) fn new(costs: Costs<'a>, allowed: &'a [Allowed]) -> Self {
        let (mut travels, mut places) = (Vec::new(), Vec::new());
        let mut known_travels: FxHashMap<(i64, SpeedWindow), usize> = FxHashMap::default();
        let mut known_places: FxHashMap<(BowInterval, u16), usize> = FxHashMap::default();
        let steps = (0..costs.strokes.len())
            .map(|index| {
                let stroke = &costs.strokes[index];
                let travel =
                    *known_travels.entry((stroke.duration.micros, stroke.speed)).or_insert_with(|| {
                        travels.push(table(|cell, sum| costs.travel(index, cell, sum)));
                        travels.len() - 1
                    });
                let place = *known_places.entry((stroke.home, stroke.emphasis.accent)).or_insert_with(|| {
                    let begin = table(|cell, sum| costs.begin_at(index, cell, sum));
                    let end = table(|cell, sum| costs.end_at(index, cell, sum));
                    places.push(Places { begin, end });
                    places.len() - 1
                });
                let direction = DIRECTIONS.map(|direction| {
                    let mut sum = 0i64;
                    costs.direction(index, direction, &mut sum);
                    narrow(sum)
                });
                let links = Self::links(&costs, costs.approach(index).as_ref());
                Step { direction, places: place, travel, links }
            })
            .collect();
        Self { costs, steps, travels, places, allowed }
    }

    fn links(costs: &Costs<'_>, approach: Option<&Approach>) -> Links {
        let at = |link, distance| {
            let mut sum = 0i64;
            if costs.link(approach, link, distance, &mut sum) { narrow(sum) } else { NEVER }
        };
        let lift = |link| {
            let base = at(link, 0);
            Lift { base, per_cell: if base == NEVER { 0 } else { at(link, 1) - base } }
        };
        Links {
            change: at(Link::Change, 0),
            hooked: at(Link::Hooked, 0),
            retake: lift(Link::Retake),
            reset: lift(Link::Reset),
        }
    }

    /// Cost of setting the bow down for stroke `index`, by direction and cell, from `before`.
    fn begins(&self, index: usize, links: &Links, before: Option<&Row<CELLS>>) -> Row<CELLS> {
        let step = &self.steps[index];
        let places = &self.places[step.places];
        let allowed = self.allowed[index];
        let mut begins = [[NEVER; CELLS]; 2];
        let Some(before) = before else {
            for (way, direction) in DIRECTIONS.into_iter().enumerate() {
                if allowed.permits(direction, Link::Reset) {
                    begins[way] = places.begin.map(|place| place + step.direction[way]);
                }
            }
            return begins;
        };
        let reset = (links.reset.base < NEVER).then(|| {
            let mut either: [i32; CELLS] = std::array::from_fn(|cell| before[0][cell].min(before[1][cell]));
            carry(&mut either, links.reset.per_cell);
            either
        });
        for (way, direction) in DIRECTIONS.into_iter().enumerate() {
            let begin = &mut begins[way];
            if links.change < NEVER && allowed.permits(direction, Link::Change) {
                lower(begin, &before[1 - way], links.change);
            }
            if links.hooked < NEVER && allowed.permits(direction, Link::Hooked) {
                lower(begin, &before[way], links.hooked);
            }
            if links.retake.base < NEVER && allowed.permits(direction, Link::Retake) {
                let mut carried = before[way];
                carry(&mut carried, links.retake.per_cell);
                lower(begin, &carried, links.retake.base);
            }
            if let (Some(carried), true) = (&reset, allowed.permits(direction, Link::Reset)) {
                lower(begin, carried, links.reset.base);
            }
            for (cell, place) in begin.iter_mut().zip(&places.begin) {
                *cell = (*cell + place + step.direction[way]).min(NEVER);
            }
        }
        begins
    }

    /// Travel from the begins to the ends of stroke `index`.
    fn travel(&self, index: usize, begins: &Row<CELLS>) -> Row<CELLS> {
        let step = &self.steps[index];
        let table = &self.travels[step.travel];
        let mut ends = [[NEVER; CELLS]; 2];
        for start in 0..CELLS {
            let from = begins[0][start];
            for (end, cost) in ends[0][start..].iter_mut().zip(table) {
                *end = (*end).min(from + cost);
            }
        }
        // The up-bow mirrored: the same loop over cells counted from the tip.
        let mut mirrored = [NEVER; CELLS];
        for start in 0..CELLS {
            let from = begins[1][CELLS - 1 - start];
            for (end, cost) in mirrored[start..].iter_mut().zip(table) {
                *end = (*end).min(from + cost);
            }
        }
        mirrored.reverse();
        ends[1] = mirrored;
        for way in &mut ends {
            for (end, place) in way.iter_mut().zip(&self.places[step.places].end) {
                *end = (*end + place).min(NEVER);
            }
        }
        ends
    }

    /// One forward step by the printed order.
    pub(crate) fn forward(&self, index: usize, before: Option<&Row<CELLS>>) -> Row<CELLS> {
        self.travel(index, &self.begins(index, &self.steps[index].links, before))
    }

    /// One forward step that reaches stroke `index` over another way in (a turn or a skip).
    pub(crate) fn forward_by(&self, index: usize, approach: &Approach, before: &Row<CELLS>) -> Row<CELLS> {
        let links = Self::links(&self.costs, Some(approach));
        self.travel(index, &self.begins(index, &links, Some(before)))
    }

    /// The cheapest way in which stroke `index` can have begun and ended at `stand`, given the row before.
    pub(crate) fn choose(
        &self,
        index: usize,
        approach: Option<&Approach>,
        before: Option<&Row<CELLS>>,
        stand: Stand,
    ) -> Choice {
        let links =
            approach.map_or(self.steps[index].links, |approach| Self::links(&self.costs, Some(approach)));
        let begins = self.begins(index, &links, before);
        let table = &self.travels[self.steps[index].travel];
        let way = stand.direction as usize;
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
            let whole = begins[way][start] + cost;
            if whole < best.0 {
                best = (whole, start);
            }
        }
        let start = best.1;
        let begin = Stand { direction: stand.direction, cell: start };
        let link = self.link_into(index, &links, before, begin, self.without_place(index, &begins, begin));
        Choice { direction: stand.direction, link, start, end: stand.cell }
    }

    /// A begin's cost up to and with its link.
    fn without_place(&self, index: usize, begins: &Row<CELLS>, begin: Stand) -> i32 {
        let step = &self.steps[index];
        let way = begin.direction as usize;
        begins[way][begin.cell] - step.direction[way] - self.places[step.places].begin[begin.cell]
    }

    /// The cheapest link into a begin; ties go to change, hooked, retake, reset in this order. `paid` is
    /// what the cheapest link comes to, so that the first link that reaches it is the one.
    fn link_into(
        &self,
        index: usize,
        links: &Links,
        before: Option<&Row<CELLS>>,
        begin: Stand,
        paid: i32,
    ) -> Link {
        let Some(before) = before else { return Link::Reset };
        let offered = |link: &Link| self.allowed[index].permits(begin.direction, *link) && links.offer(*link);
        let all = [Link::Change, Link::Hooked, Link::Retake, Link::Reset];
        let cost = |link: &Link| self.link_from(links, before, begin.direction, begin.cell, *link).1;
        all.into_iter()
            .filter(offered)
            .find(|link| cost(link) == paid)
            .or_else(|| all.into_iter().filter(offered).min_by_key(cost))
            .unwrap_or(Link::Reset)
    }

    /// See [`Self::link_into`]; by the printed way in.
    pub(crate) fn link_to(&self, index: usize, before: Option<&Row<CELLS>>, begin: Stand) -> Link {
        let begins = self.begins(index, &self.steps[index].links, before);
        let paid = self.without_place(index, &begins, begin);
        self.link_into(index, &self.steps[index].links, before, begin, paid)
    }

    /// Where the bow stood before a begin reached by `link`, and the cost so far with the link.
    fn link_from(
        &self,
        links: &Links,
        before: &Row<CELLS>,
        direction: BowDirection,
        start: usize,
        link: Link,
    ) -> (Stand, i32) {
        let way = direction as usize;
        let stand = |direction: BowDirection, cell| Stand { direction, cell };
        let lifted = |lift: Lift, directions: &[BowDirection]| {
            let mut best = (stand(direction, start), NEVER, usize::MAX);
            for from in directions {
                for (cell, paid) in before[*from as usize].iter().enumerate() {
                    let distance = cell.abs_diff(start);
                    let cost = paid + lift.base + lift.per_cell * i32::try_from(distance).unwrap_or(0);
                    if (cost, distance) < (best.1, best.2) {
                        best = (stand(*from, cell), cost, distance);
                    }
                }
            }
            (best.0, best.1)
        };
        match link {
            Link::Change => {
                (stand(direction.other(), start), (before[1 - way][start] + links.change).min(NEVER))
            }
            Link::Hooked => (stand(direction, start), (before[way][start] + links.hooked).min(NEVER)),
            Link::Retake => lifted(links.retake, &[direction]),
            Link::Reset => lifted(links.reset, &DIRECTIONS),
        }
    }

    /// Where the bow stood before a choice.
    pub(crate) fn stood(
        &self,
        index: usize,
        approach: Option<&Approach>,
        before: &Row<CELLS>,
        choice: Choice,
    ) -> Stand {
        let links =
            approach.map_or(self.steps[index].links, |approach| Self::links(&self.costs, Some(approach)));
        self.link_from(&links, before, choice.direction, choice.start, choice.link).0
    }

    /// Cost of beginning stroke `index` at `begin` from each stand, over `approach`: the price of a turn.
    /// What the stroke is allowed binds the printed way in, not the turn.
    pub(crate) fn turn(&self, approach: &Approach, begin: Stand) -> Row<CELLS> {
        let links = Self::links(&self.costs, Some(approach));
        let way = begin.direction as usize;
        let lifted = |lift: Lift, distance: i32| {
            if lift.base == NEVER { NEVER } else { (lift.base + lift.per_cell * distance).min(NEVER) }
        };
        std::array::from_fn(|from| {
            std::array::from_fn(|cell| {
                let distance = i32::try_from(cell.abs_diff(begin.cell)).unwrap_or(0);
                let on_the_string = match (distance, from == way) {
                    (0, true) => links.hooked,
                    (0, false) => links.change,
                    _ => NEVER,
                };
                let retake = if from == way { lifted(links.retake, distance) } else { NEVER };
                on_the_string.min(retake).min(lifted(links.reset, distance))
            })
        })
    }

    /// A row in which only plans whose stroke `index` begins at `begin` go on.
    pub(crate) fn forward_from(&self, index: usize, before: Option<&Row<CELLS>>, begin: Stand) -> Row<CELLS> {
        let all = self.begins(index, &self.steps[index].links, before);
        let mut one = [[NEVER; CELLS]; 2];
        one[begin.direction as usize][begin.cell] = all[begin.direction as usize][begin.cell];
        self.travel(index, &one)
    }

    /// Backward step: the least cost of stroke `index` and all that follows, by the stand before it.
    pub(crate) fn backward(&self, index: usize, after: &Row<CELLS>) -> Row<CELLS> {
        let step = &self.steps[index];
        let table = &self.travels[step.travel];
        let places = &self.places[step.places];
        let mut begins = [[NEVER; CELLS]; 2];
        for (way, row) in begins.iter_mut().enumerate() {
            for (start, begin) in row.iter_mut().enumerate() {
                for (used, cost) in table.iter().enumerate() {
                    let end = if way == 0 { start + used } else { start.wrapping_sub(used) };
                    if end >= CELLS {
                        break;
                    }
                    *begin = (*begin).min(cost + places.end[end] + after[way][end]);
                }
                *begin = begin.saturating_add(places.begin[start] + step.direction[way]).min(NEVER);
            }
        }
        let links = step.links;
        let allowed = self.allowed[index];
        std::array::from_fn(|from| {
            std::array::from_fn(|cell| {
                let mut least = NEVER;
                for (way, direction) in DIRECTIONS.into_iter().enumerate() {
                    let (link, cost) =
                        if from == way { (Link::Hooked, links.hooked) } else { (Link::Change, links.change) };
                    if cost < NEVER && allowed.permits(direction, link) {
                        least = least.min(cost + begins[way][cell]);
                    }
                    for (link, lift) in [(Link::Retake, links.retake), (Link::Reset, links.reset)] {
                        if lift.base == NEVER
                            || (link == Link::Retake && from != way)
                            || !allowed.permits(direction, link)
                        {
                            continue;
                        }
                        for (start, begin) in begins[way].iter().enumerate() {
                            let distance = i32::try_from(cell.abs_diff(start)).unwrap_or(0);
                            least = least.min(lift.base + lift.per_cell * distance + begin);
                        }
                    }
                }
                least
            })
        })
    }
}

/// Lower each cell to what the other row offers at a price.
fn lower<const CELLS: usize>(begin: &mut [i32; CELLS], offered: &[i32; CELLS], price: i32) {
    for (cell, offer) in begin.iter_mut().zip(offered) {
        *cell = (*cell).min(offer + price);
    }
}

/// The least of each cell and its neighbours plus the price of the way: two passes.
fn carry<const CELLS: usize>(row: &mut [i32; CELLS], per_cell: i32) {
    let lower = |nearest: &mut i32, cell: &mut i32| {
        *cell = (*cell).min(nearest.saturating_add(per_cell));
        *nearest = *cell;
    };
    let mut nearest = NEVER;
    row.iter_mut().for_each(|cell| lower(&mut nearest, cell));
    nearest = NEVER;
    row.iter_mut().rev().for_each(|cell| lower(&mut nearest, cell));
}

/// Take the least value off a row; it goes into the running base, so that rows never overflow.
pub(crate) fn settle<const CELLS: usize>(row: &mut Row<CELLS>) -> i64 {
    let least = row.iter().flatten().copied().min().unwrap_or(0);
    if least < NEVER {
        for cell in row.iter_mut().flatten() {
            *cell = if *cell >= NEVER { NEVER } else { *cell - least };
        }
    }
    i64::from(least)
}

/// The cheapest stand of a row: ties go to the end nearest the frog, down before up.
pub(crate) fn cheapest<const CELLS: usize>(row: &Row<CELLS>) -> Stand {
    let mut best = (NEVER, Stand { direction: BowDirection::Down, cell: 0 });
    for (cell, (down, up)) in row[0].iter().zip(&row[1]).enumerate() {
        for (direction, cost) in [(BowDirection::Down, *down), (BowDirection::Up, *up)] {
            if cost < best.0 {
                best = (cost, Stand { direction, cell });
            }
        }
    }
    best.1
}
