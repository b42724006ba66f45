//! The way through a line: leg after leg of its course, with repeated stretches as cycles.
//!
//! A cycle's price depends on where it begins, so it is walked once for every stand in which its first
//! stroke can begin. These walks go side by side in a [`DistinctRows`]: walks whose rows have become the same
//! (but for a constant) are the same from there on and are walked as one. What lies around a cycle does not
//! matter for the walks inside it, so a cycle within a cycle is walked as often as one that stands alone.

use std::cell::RefCell;
use std::ops::Range;
use std::sync::Arc;

use arcata_score::BowDirection;

use super::Leaning;
use super::course::{Cycle, Leg, WalkEnding};
use super::distinct_rows::DistinctRows;
use super::read_back::{Passed, read_back};
use super::search::{Choice, DirectionAndCell, LineSearch, Row, SettledRow};
use super::step_prices::{LinkPrices, NEVER};

/// The cheapest choices for all strokes; `None` where what is allowed leaves no way through.
pub(super) fn best<const CELLS: usize>(search: &LineSearch<'_, CELLS>) -> Option<Vec<Choice>> {
    let passed = walk(search, &search.costs.course.legs, None);
    let last = passed.last()?;
    // Settled rows hold a nought wherever anything is within reach.
    if !last.row.iter().any(|way| way.contains(&0)) {
        return None;
    }
    Some(read_back(search, &passed))
}

/// One walk through the legs, remembered.
pub(super) fn walk<'c, const CELLS: usize>(
    search: &LineSearch<'_, CELLS>,
    legs: &'c [Leg],
    before: Option<&Row<CELLS>>,
) -> Vec<Passed<'c, CELLS>> {
    let mut passed: Vec<Passed<'c, CELLS>> = Vec::with_capacity(legs.len());
    for leg in legs {
        let before = passed.last().map(|leg| &leg.row).or(before);
        let next = match leg {
            Leg::Stroke(index) => Passed { leg, row: search.forward(*index, before).row, begins: Vec::new() },
            Leg::Cycle(cycle) => {
                let begins = search.begins_at(cycle.first, before);
                let rounds = rounds(search, cycle, &possible(&[begins]));
                let (settled, begins) = entered(&begins, &rounds);
                Passed { leg, row: settled.row, begins }
            }
        };
        passed.push(next);
    }
    passed
}

/// A walk through the legs whose first stroke begins at `begin`.
pub(super) fn walk_from<'c, const CELLS: usize>(
    search: &LineSearch<'_, CELLS>,
    legs: &'c [Leg],
    begin: DirectionAndCell,
) -> Vec<Passed<'c, CELLS>> {
    let Some((first, rest)) = legs.split_first() else { return Vec::new() };
    let distinct = from_begins(search, first, &[begin]);
    let passed = Passed { leg: first, row: *distinct.walk(0).0, begins: vec![begin; 2 * CELLS] };
    let mut all = walk(search, rest, Some(&passed.row));
    all.insert(0, passed);
    all
}

/// The stands at which any of the rows of begins has a way.
fn possible<const CELLS: usize>(rows: &[Row<CELLS>]) -> Vec<DirectionAndCell> {
    let stands = [BowDirection::Down, BowDirection::Up]
        .into_iter()
        .flat_map(|direction| (0..CELLS).map(move |cell| DirectionAndCell { direction, cell }));
    stands.filter(|stand| rows.iter().any(|row| row[stand.direction as usize][stand.cell] < NEVER)).collect()
}

/// A cycle walked round from each of some begins.
struct Rounds<const CELLS: usize> {
    begins: Vec<DirectionAndCell>,
    distinct: DistinctRows<CELLS>,
}

fn rounds<const CELLS: usize>(
    search: &LineSearch<'_, CELLS>,
    cycle: &Cycle,
    begins: &[DirectionAndCell],
) -> Arc<Rounds<CELLS>> {
    let walked = || Arc::new(Rounds { begins: begins.to_vec(), distinct: round(search, cycle, begins) });
    search.rounds.map_or_else(walked, |memory| memory.known(search, cycle, begins, walked))
}

/// Rounds that were walked before: while only leanings change, those of a cycle whose strokes lean as they did are the same.
pub(crate) struct RoundMemory<const CELLS: usize>(RefCell<Vec<KnownRounds<CELLS>>>);

struct KnownRounds<const CELLS: usize> {
    cycle: Range<usize>,
    leanings: Vec<Leaning>,
    rounds: Arc<Rounds<CELLS>>,
}

/// So many rounds are remembered of one cycle (rule of thumb).
const REMEMBERED: usize = 3;

impl<const CELLS: usize> Default for RoundMemory<CELLS> {
    fn default() -> Self {
        Self(RefCell::default())
    }
}

impl<const CELLS: usize> RoundMemory<CELLS> {
    fn known(
        &self,
        search: &LineSearch<'_, CELLS>,
        cycle: &Cycle,
        begins: &[DirectionAndCell],
        walked: impl FnOnce() -> Arc<Rounds<CELLS>>,
    ) -> Arc<Rounds<CELLS>> {
        let strokes = cycle.first..cycle.end;
        let leanings = search.costs.leanings_of(strokes.clone());
        let same = |known: &&KnownRounds<CELLS>| {
            known.cycle == strokes && known.rounds.begins == begins && known.leanings == leanings
        };
        // Cycles inside this one ask as well: nothing is held while it is walked.
        if let Some(known) = self.0.borrow().iter().find(same) {
            return known.rounds.clone();
        }
        let rounds = walked();
        let mut known = self.0.borrow_mut();
        let of_cycle = |known: &KnownRounds<CELLS>| known.cycle == strokes;
        if known.iter().filter(|known| of_cycle(known)).count() == REMEMBERED
            && let Some(oldest) = known.iter().position(of_cycle)
        {
            known.remove(oldest);
        }
        known.push(KnownRounds { cycle: strokes, leanings: leanings.to_vec(), rounds: rounds.clone() });
        rounds
    }
}

/// For each begin, the row behind a leg whose first stroke begins there, the begin itself not counted.
fn from_begins<const CELLS: usize>(
    search: &LineSearch<'_, CELLS>,
    leg: &Leg,
    begins: &[DirectionAndCell],
) -> DistinctRows<CELLS> {
    match leg {
        Leg::Stroke(index) => {
            DistinctRows::gather(begins.iter().map(|begin| search.forward_from(*index, *begin)))
        }
        Leg::Cycle(cycle) => round(search, cycle, begins),
    }
}

/// Distinct rows led through a leg.
fn through<const CELLS: usize>(
    search: &LineSearch<'_, CELLS>,
    leg: &Leg,
    distinct: &DistinctRows<CELLS>,
) -> DistinctRows<CELLS> {
    match leg {
        Leg::Stroke(index) => distinct.led(|_, row| search.forward(*index, Some(row))),
        Leg::Cycle(cycle) => {
            let entries: Vec<Row<CELLS>> =
                distinct.rows().iter().map(|row| search.begins_at(cycle.first, Some(row))).collect();
            let rounds = rounds(search, cycle, &possible(&entries));
            distinct.led(|at, _| entered(&entries[at], &rounds).0)
        }
    }
}

/// For each begin, the row at the end of the cycle's body, all ways back to that begin paid.
fn round<const CELLS: usize>(
    search: &LineSearch<'_, CELLS>,
    cycle: &Cycle,
    begins: &[DirectionAndCell],
) -> DistinctRows<CELLS> {
    let Some((first, rest)) = cycle.body.split_first() else {
        return DistinctRows::gather(std::iter::empty());
    };
    let mut distinct = from_begins(search, first, begins);
    for leg in rest {
        distinct = through(search, leg, &distinct);
    }
    let endings: Vec<EndingWalks<CELLS>> =
        cycle.endings.iter().map(|ending| EndingWalks::new(search, ending)).collect();
    distinct.apart(|walk, row, base| {
        let begin = begins[walk];
        let mut row = *row;
        for ending in &endings {
            ending.pay(search, begin, &mut row);
        }
        SettledRow::on_top(row, base)
    })
}

/// The walks through an ending, from every stand in which the body can end.
struct EndingWalks<const CELLS: usize> {
    /// What the links of the turn behind it cost.
    turn: LinkPrices,
    /// Empty for an ending without strokes.
    distinct: Option<DistinctRows<CELLS>>,
}

impl<const CELLS: usize> EndingWalks<CELLS> {
    fn new(search: &LineSearch<'_, CELLS>, ending: &WalkEnding) -> Self {
        let distinct = ending.legs.split_first().map(|(first, rest)| {
            let one_by_one = possible(&[[[0; CELLS]; 2]]).into_iter().map(SettledRow::one);
            let mut distinct = through(search, first, &DistinctRows::gather(one_by_one));
            for leg in rest {
                distinct = through(search, leg, &distinct);
            }
            distinct
        });
        Self { turn: search.turn_links(&search.costs.course.returns[ending.turn]), distinct }
    }

    /// Adds to each stand at the body's end what the ending and the turn to `begin` cost from there.
    fn pay(&self, search: &LineSearch<'_, CELLS>, begin: DirectionAndCell, row: &mut Row<CELLS>) {
        let turn = search.turn(&self.turn, begin);
        let prices = match &self.distinct {
            None => turn,
            Some(distinct) => {
                let least: Vec<i64> = distinct.rows().iter().map(|row| least_sum(row, &turn)).collect();
                let price = |stand: usize| distinct.come_to(stand, &least);
                std::array::from_fn(|way| std::array::from_fn(|cell| price(way * CELLS + cell)))
            }
        };
        for (way, prices) in row.iter_mut().zip(&prices) {
            for (cost, price) in way.iter_mut().zip(prices) {
                *cost = (*cost + price).min(NEVER);
            }
        }
    }
}

/// The least sum of two rows, stand by stand.
fn least_sum<const CELLS: usize>(one: &Row<CELLS>, other: &Row<CELLS>) -> i64 {
    let pairs = one.iter().flatten().zip(other.iter().flatten());
    i64::from(pairs.fold(NEVER, |least, (one, other)| least.min(one + other)))
}

/// The row behind a cycle that is entered at these costs, and for each stand the begin that makes it
/// cheapest: among equals the first, down before up, from the frog.
fn entered<const CELLS: usize>(
    begins: &Row<CELLS>,
    rounds: &Rounds<CELLS>,
) -> (SettledRow<CELLS>, Vec<DirectionAndCell>) {
    let nowhere = DirectionAndCell { direction: BowDirection::Down, cell: 0 };
    let mut best = vec![(i64::MAX, nowhere); 2 * CELLS];
    for (walk, begin) in rounds.begins.iter().enumerate() {
        let paid = begins[begin.direction as usize][begin.cell];
        if paid >= NEVER {
            continue;
        }
        let (row, base) = rounds.distinct.walk(walk);
        for (best, cost) in best.iter_mut().zip(row.iter().flatten()) {
            let whole = i64::from(paid) + base + i64::from(*cost);
            if *cost < NEVER && whole < best.0 {
                *best = (whole, *begin);
            }
        }
    }
    let least = best.iter().map(|(cost, _)| *cost).min().unwrap_or(i64::MAX);
    // A stand that nothing reaches stays out of reach, also where nothing reaches any.
    let value = |cost: i64| match cost {
        i64::MAX => NEVER,
        cost => i32::try_from(cost - least).unwrap_or(NEVER).min(NEVER),
    };
    let row = std::array::from_fn(|way| std::array::from_fn(|at| value(best[way * CELLS + at].0)));
    let base = if least == i64::MAX { i64::from(NEVER) } else { least };
    (SettledRow { row, base }, best.into_iter().map(|(_, begin)| begin).collect())
}
