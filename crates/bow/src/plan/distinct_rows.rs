//! Walks side by side: many rows of which many are the same.

use rustc_hash::FxHashMap;

use super::search::{Row, SettledRow};
use super::step_prices::NEVER;

/// Rows of several walks through the same strokes, each different row kept once.
pub(super) struct DistinctRows<const CELLS: usize> {
    rows: Vec<Row<CELLS>>,
    /// For each walk its row, and what was taken off it.
    walks: Vec<(usize, i64)>,
}

/// Rows as they are found, equal ones as one. Looked up only, so that hashing decides no order.
struct Gathering<const CELLS: usize> {
    rows: Vec<Row<CELLS>>,
    known: FxHashMap<Row<CELLS>, usize>,
}

impl<const CELLS: usize> Gathering<CELLS> {
    fn new() -> Self {
        Self { rows: Vec::new(), known: FxHashMap::default() }
    }

    fn place(&mut self, row: Row<CELLS>) -> usize {
        *self.known.entry(row).or_insert_with(|| {
            self.rows.push(row);
            self.rows.len() - 1
        })
    }
}

impl<const CELLS: usize> DistinctRows<CELLS> {
    /// The walks that have come to these rows.
    pub(super) fn gather(settled: impl Iterator<Item = SettledRow<CELLS>>) -> Self {
        let mut gathering = Gathering::new();
        let walks = settled.map(|settled| (gathering.place(settled.row), settled.base)).collect();
        Self { rows: gathering.rows, walks }
    }

    /// The different rows.
    pub(super) fn rows(&self) -> &[Row<CELLS>] {
        &self.rows
    }

    /// One walk's row and what was taken off it.
    pub(super) fn walk(&self, walk: usize) -> (&Row<CELLS>, i64) {
        let (row, base) = self.walks[walk];
        (&self.rows[row], base)
    }

    /// All walks one step on: each different row is led once (it is given with its index).
    pub(super) fn led(&self, mut step: impl FnMut(usize, &Row<CELLS>) -> SettledRow<CELLS>) -> Self {
        let mut gathering = Gathering::new();
        let led: Vec<(usize, i64)> = self
            .rows
            .iter()
            .enumerate()
            .map(|(at, row)| {
                let settled = step(at, row);
                (gathering.place(settled.row), settled.base)
            })
            .collect();
        let on = |(row, base): &(usize, i64)| (led[*row].0, (base + led[*row].1).min(i64::from(NEVER)));
        Self { walks: self.walks.iter().map(on).collect(), rows: gathering.rows }
    }

    /// All walks one step on, each by itself.
    pub(super) fn apart(&self, mut step: impl FnMut(usize, &Row<CELLS>, i64) -> SettledRow<CELLS>) -> Self {
        Self::gather((0..self.walks.len()).map(|walk| {
            let (row, base) = self.walk(walk);
            step(walk, row, base)
        }))
    }

    /// What a walk comes to when `prices` is known for each different row.
    pub(super) fn come_to(&self, walk: usize, prices: &[i64]) -> i32 {
        let (row, base) = self.walks[walk];
        i32::try_from(base + prices[row]).unwrap_or(NEVER).min(NEVER)
    }
}
