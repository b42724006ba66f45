//! The two products that the search spends its time in, on whole rows of cells.
//!
//! Plain loops over fixed blocks, which the compiler turns into vector instructions; `pulp` chooses at
//! run time the widest that the machine has. Integers: every width gives the same numbers.

use std::ops::RangeInclusive;

use super::step_prices::NEVER;

/// Cells worked on together (by definition).
const LANES: usize = 8;

/// A cost by distance, with room before and behind so that blocks may reach over its ends.
pub(super) struct Distances {
    padded: Vec<i32>,
}

impl Distances {
    pub(super) fn new(by_cell: &[i32]) -> Self {
        let mut padded = vec![NEVER; LANES];
        padded.extend_from_slice(by_cell);
        padded.resize(LANES + by_cell.len().next_multiple_of(LANES), NEVER);
        Self { padded }
    }

    /// The cost of each distance that a row of `cells` holds.
    pub(super) fn by_cell(&self, cells: usize) -> &[i32] {
        &self.padded[LANES..LANES + cells]
    }
}

/// For every end, the least over all starts not behind it of `begins[start] + distances[end - start]`.
#[inline(always)]
pub(super) fn reach<const CELLS: usize>(begins: &[i32; CELLS], distances: &Distances) -> [i32; CELLS] {
    let mut ends = [NEVER; CELLS];
    for (block, out) in ends.chunks_mut(LANES).enumerate() {
        let first = block * LANES;
        let mut least = [NEVER; LANES];
        for (start, from) in begins.iter().take(first + LANES).enumerate() {
            let costs = &distances.padded[LANES + first - start..][..LANES];
            for (best, cost) in least.iter_mut().zip(costs) {
                *best = (*best).min(from + cost);
            }
        }
        out.copy_from_slice(&least[..out.len()]);
    }
    ends
}

/// A way along the bow.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Towards {
    Frog,
    Tip,
}

/// For every cell the least of all others from which it lies so many cells towards the frog or the tip, plus
/// the price of the way: shifts by 1, 2, 4 … cells add up to every distance, and the last one to the longest.
#[inline(always)]
pub(super) fn carried<const CELLS: usize>(
    row: &[i32; CELLS],
    ways: RangeInclusive<usize>,
    per_cell: i32,
    towards: Towards,
) -> [i32; CELLS] {
    let (least, most) = (*ways.start(), (*ways.end()).min(CELLS - 1));
    let mut carried = [NEVER; CELLS];
    if least > most {
        return carried;
    }
    shift(&mut carried, row, least, per_cell, towards);
    let (mut covered, mut step) = (0, 1);
    while covered < most - least {
        step = step.min(most - least - covered);
        let before = carried;
        shift(&mut carried, &before, step, per_cell, towards);
        covered += step;
        step *= 2;
    }
    carried
}

/// Lower each cell to what the one so many cells away offers, with the way.
#[inline(always)]
fn shift<const CELLS: usize>(
    row: &mut [i32; CELLS],
    offered: &[i32; CELLS],
    way: usize,
    per_cell: i32,
    towards: Towards,
) {
    let price = per_cell * way as i32;
    match towards {
        Towards::Frog => lower_each(&mut row[..CELLS - way], &offered[way..], price),
        Towards::Tip => lower_each(&mut row[way..], &offered[..CELLS - way], price),
    }
}

#[inline(always)]
fn lower_each(row: &mut [i32], offered: &[i32], price: i32) {
    for (cell, offer) in row.iter_mut().zip(offered) {
        *cell = (*cell).min(offer + price);
    }
}

/// Lower each cell to what the other row offers.
#[inline(always)]
pub(super) fn lower_all<const CELLS: usize>(row: &mut [i32; CELLS], offered: &[i32; CELLS]) {
    lower(row, offered, 0);
}

/// Lower each cell to what the other row offers at a price.
#[inline(always)]
pub(super) fn lower<const CELLS: usize>(row: &mut [i32; CELLS], offered: &[i32; CELLS], price: i32) {
    for (cell, offer) in row.iter_mut().zip(offered) {
        *cell = (*cell).min(offer + price);
    }
}

/// The least of a row.
#[inline(always)]
pub(super) fn least<const CELLS: usize>(row: &[i32; CELLS]) -> i32 {
    row.iter().fold(NEVER, |least, cell| least.min(*cell))
}

/// Add a cost to each cell, nothing beyond [`NEVER`].
#[inline(always)]
pub(super) fn pay<const CELLS: usize>(row: &mut [i32; CELLS], costs: &[i32; CELLS], price: i32) {
    for (cell, cost) in row.iter_mut().zip(costs) {
        *cell = (*cell + cost + price).min(NEVER);
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    proptest! {
        #[test]
        fn blocks_reach_what_cell_by_cell_reaches(
            begins in proptest::array::uniform20(0i32..100_000),
            by_cell in proptest::array::uniform20(0i32..100_000),
        ) {
            let reached = reach(&begins, &Distances::new(&by_cell));
            for end in 0..20 {
                let least = (0..=end).map(|start| begins[start] + by_cell[end - start]).min();
                prop_assert_eq!(Some(reached[end]), least);
            }
        }

        #[test]
        fn shifts_carry_as_far_as_every_way(
            row in proptest::array::uniform20(0i32..100_000),
            per_cell in 0i32..9_000,
            least in 0usize..22,
            more in 0usize..22,
        ) {
            for towards in [Towards::Frog, Towards::Tip] {
                let carried = carried(&row, least..=least + more, per_cell, towards);
                for (cell, found) in carried.into_iter().enumerate() {
                    let ways = row.iter().enumerate().filter_map(|(from, cost)| {
                        let way = match towards {
                            Towards::Frog => from.checked_sub(cell),
                            Towards::Tip => cell.checked_sub(from),
                        }?;
                        let reaches = (least..=least + more).contains(&way);
                        reaches.then(|| cost + per_cell * i32::try_from(way).unwrap())
                    });
                    prop_assert_eq!(found.min(NEVER), ways.min().unwrap_or(NEVER));
                }
            }
        }
    }
}
