//! Which bar of the old score is which of the new one.
//!
//! The best common sequence of bars by likeness: a pair of bars counts what they are alike beyond a
//! threshold, each run of bars that one score has and the other has not costs a little, so that cuts and
//! insertions stay in one piece. Forward and backward sums tell for every pair what the best alignment
//! through it counts; where another pair comes near, the match is doubtful.

use std::ops::Range;

use super::features::{Features, Likeness};

/// Bars less alike than this (thousandths) are no revisions of each other. Bars that share nothing but their
/// rhythm reach 200, a transposed bar 600 (see `features`) (rule of thumb).
const ALIKE: i32 = 350;

/// What a run of bars without a partner costs: as much as three quarters of a well matched bar gains (rule of thumb).
const RUN: i32 = 450;

/// Another pair that counts within this much of the best is a rival: a bar more or less that differs in one
/// note of five (rule of thumb).
const RIVAL: i32 = 200;

/// More cells than this are never laid out at once; a movement of 4,000 bars against itself fits (a limit).
const MOST_CELLS: usize = 16_000_000;

/// Worse than any sum (by definition).
const NEVER: i32 = i32::MIN / 4;

/// A pair of bars.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct BarPair {
    pub(super) new: usize,
    /// Thousandths.
    pub(super) likeness: i32,
    /// Other bars of the new score that could be meant as well, and whether other bars of the old score
    /// could mean this one.
    pub(super) rivals: Vec<usize>,
    pub(super) claimed: bool,
    /// The two were paired only because they stand between paired ones.
    pub(super) by_place: bool,
}

/// For each old bar its new one.
pub(super) fn align(old: &Features, new: &Features) -> Vec<Option<BarPair>> {
    let mut pairs = vec![None; old.bars.len()];
    fill(old, new, 0..old.bars.len(), 0..new.bars.len(), &mut pairs);
    pair_by_place(&mut pairs, new.bars.len());
    pairs
}

fn fill(
    old: &Features,
    new: &Features,
    rows: Range<usize>,
    columns: Range<usize>,
    pairs: &mut [Option<BarPair>],
) {
    if rows.is_empty() || columns.is_empty() {
        return;
    }
    if rows.len().saturating_mul(columns.len()) <= MOST_CELLS {
        let likeness = Likeness::of((old, rows.clone()), (new, columns.clone()));
        for (row, pair) in best(&likeness).into_iter().enumerate() {
            pairs[rows.start + row] = pair.map(|pair| BarPair {
                new: pair.new + columns.start,
                rivals: pair.rivals.iter().map(|rival| rival + columns.start).collect(),
                ..pair
            });
        }
        return;
    }
    // Too large for one table: cut it at a bar that each score has exactly once.
    let Some((row, column)) = landmark(old, new, &rows, &columns) else { return };
    pairs[row] =
        Some(BarPair { new: column, likeness: 1000, rivals: Vec::new(), claimed: false, by_place: false });
    fill(old, new, rows.start..row, columns.start..column, pairs);
    fill(old, new, row + 1..rows.end, column + 1..columns.end, pairs);
}

/// The bar nearest to the middle whose content each stretch has exactly once.
fn landmark(
    old: &Features,
    new: &Features,
    rows: &Range<usize>,
    columns: &Range<usize>,
) -> Option<(usize, usize)> {
    let alone = |features: &Features, range: &Range<usize>| {
        let mut found: Vec<(u64, usize)> = range.clone().map(|bar| (features.whole[bar], bar)).collect();
        found.sort_unstable();
        let neighbours = |index: usize| {
            let same = |other: Option<usize>| {
                other.and_then(|other| found.get(other)).is_some_and(|(key, _)| *key == found[index].0)
            };
            same(index.checked_sub(1)) || same(Some(index + 1))
        };
        let indices = (0..found.len()).filter(|index| !neighbours(*index));
        indices.map(|index| found[index]).collect::<Vec<_>>()
    };
    let (ours, theirs) = (alone(old, rows), alone(new, columns));
    let middle = rows.start + rows.len() / 2;
    let both = ours.into_iter().filter_map(|(key, row)| {
        let at = theirs.binary_search_by_key(&key, |(key, _)| *key).ok()?;
        (!old.bars[row].is_empty()).then_some((row, theirs[at].1))
    });
    both.min_by_key(|(row, _)| row.abs_diff(middle))
}

/// The sums of the best alignments that end with a pair.
struct Sums {
    columns: usize,
    /// Ending in the pair itself.
    pair: Vec<i32>,
}

/// Walks a table from its first corner to its last.
fn sums(rows: usize, columns: usize, gain: impl Fn(usize, usize) -> i32) -> (Sums, i32) {
    let mut pair = vec![NEVER; rows * columns];
    // Best of everything before a corner, ending in a pair, in a run of old bars, in a run of new ones.
    let start = [0, -RUN, -RUN];
    let mut above: Vec<[i32; 3]> = (0..=columns)
        .map(|column| if column == 0 { [0, NEVER, NEVER] } else { [NEVER, NEVER, start[2]] })
        .collect();
    for row in 0..rows {
        let mut here: Vec<[i32; 3]> = Vec::with_capacity(columns + 1);
        here.push([NEVER, start[1], NEVER]);
        for column in 0..columns {
            let [a, b, c] = above[column];
            let matched = a.max(b).max(c).saturating_add(gain(row, column));
            let [up, up_run, up_other] = above[column + 1];
            let [left, left_other, left_run] = here[column];
            let old_run = up_run.max(up.max(up_other).saturating_sub(RUN));
            let new_run = left_run.max(left.max(left_other).saturating_sub(RUN));
            pair[row * columns + column] = matched;
            here.push([matched, old_run.max(NEVER), new_run.max(NEVER)]);
        }
        above = here;
    }
    let best = above.last().map_or(0, |last| last.iter().copied().max().unwrap_or(0));
    (Sums { columns, pair }, best)
}

impl Sums {
    fn at(&self, row: usize, column: usize) -> i32 {
        self.pair[row * self.columns + column]
    }
}

/// The pairs of the best alignment.
fn best(likeness: &Likeness) -> Vec<Option<BarPair>> {
    let (rows, columns) = (likeness.rows, likeness.columns);
    let gain = |row: usize, column: usize| likeness.at(row, column) - ALIKE;
    let (forward, best) = sums(rows, columns, gain);
    let (backward, _) = sums(rows, columns, |row, column| gain(rows - 1 - row, columns - 1 - column));
    let through = |row: usize, column: usize| {
        forward.at(row, column) + backward.at(rows - 1 - row, columns - 1 - column) - gain(row, column)
    };
    // A chain of pairs that all lie on best alignments, each behind the one before.
    let mut pairs: Vec<Option<BarPair>> = vec![None; rows];
    let mut claims = vec![0_u32; columns];
    let mut next = 0;
    let mut rivals: Vec<Vec<usize>> = vec![Vec::new(); rows];
    for (row, rivals) in rivals.iter_mut().enumerate() {
        for (column, claims) in claims.iter_mut().enumerate() {
            if through(row, column) + RIVAL >= best && gain(row, column) > 0 {
                rivals.push(column);
                *claims += 1;
            }
        }
    }
    let mut sum_so_far = None;
    for (row, rivals) in rivals.iter().enumerate() {
        // Every pair of one best alignment, those too that count against it but save two runs: without them
        // the sums that follow would not add up.
        let Some(column) = (next..columns).find(|column| {
            through(row, *column) == best && follows(sum_so_far, (row, *column), &forward, &gain)
        }) else {
            continue;
        };
        next = column + 1;
        sum_so_far = Some((row, column));
        let others = rivals.iter().copied().filter(|other| *other != column).collect();
        pairs[row] = Some(BarPair {
            new: column,
            likeness: likeness.at(row, column),
            rivals: others,
            claimed: claims[column] > 1,
            by_place: false,
        });
    }
    pairs
}

/// Whether a pair can be the next one after another in one and the same best alignment.
fn follows(
    before: Option<(usize, usize)>,
    pair: (usize, usize),
    forward: &Sums,
    gain: &impl Fn(usize, usize) -> i32,
) -> bool {
    let (skipped_old, skipped_new, sum) = match before {
        Some((row, column)) => (pair.0 - row - 1, pair.1 - column - 1, forward.at(row, column)),
        None => (pair.0, pair.1, 0),
    };
    let runs = i32::from(skipped_old > 0) + i32::from(skipped_new > 0);
    sum - RUN * runs + gain(pair.0, pair.1) == forward.at(pair.0, pair.1)
}

/// Bars that have been rewritten past recognition stand where they stood: where as many old as new bars lie
/// between two pairs, they are paired in their order.
fn pair_by_place(pairs: &mut [Option<BarPair>], columns: usize) {
    let mut row = 0;
    while row < pairs.len() {
        if pairs[row].is_some() {
            row += 1;
            continue;
        }
        let end = (row..pairs.len()).find(|row| pairs[*row].is_some()).unwrap_or(pairs.len());
        let first =
            row.checked_sub(1).and_then(|before| pairs[before].as_ref()).map_or(0, |pair| pair.new + 1);
        let last = pairs.get(end).and_then(Option::as_ref).map_or(columns, |pair| pair.new);
        if last.checked_sub(first) == Some(end - row) {
            for (index, new) in (row..end).zip(first..last) {
                pairs[index] =
                    Some(BarPair { new, likeness: 0, rivals: Vec::new(), claimed: false, by_place: true });
            }
        }
        row = end;
    }
}
