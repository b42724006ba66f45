//! The planner asked backwards: how likely is a bowing, and which prices would make it likelier?
//!
//! Every way of bowing a line counts by e to the minus its cost in points (maximum entropy; a latent
//! conditional random field over the planner's own lattice). Sums over all ways, forward and backward, give
//! the soft minimum of the cost, the chance of each direction, and how often each weight is paid on average:
//! the latter less the same under known directions is the gradient by which weights are learned. Places and
//! links are summed over.
//!
//! A line is taken as played once, on the coarse grid of 24 places. Floating numbers, but only sums and
//! products of them: every machine finds the same.

use arcata_score::BowDirection;
use rustc_hash::FxHashMap;

use super::anchors::offered;
use super::costs::Costs;
use super::links::{Approach, Carry};
use super::search::DirectionAndCell;
use super::{Link, PlanSettings, Weights};
use crate::{BowInterval, Join, Line, SpeedWindow};

/// Places on the bow that chances are summed over: half of the plan's, as neighbours hardly differ (by definition).
const CELLS: usize = 24;
const DIRECTIONS: [BowDirection; 2] = [BowDirection::Down, BowDirection::Up];
/// What a weight is tried at to find how often it is paid: large, so that whole numbers round little (by definition).
const UNIT: i64 = 1_000_000;

/// Chances by direction and place.
type ChanceRow = [[f64; CELLS]; 2];

/// A line with all that its bowing can cost, by weight.
pub struct Inverse {
    steps: Vec<ChanceStep>,
    travels: Vec<[f64; CELLS]>,
    places: Vec<[[f64; CELLS]; 2]>,
    ways: Vec<WayCounts>,
    weights: usize,
}

/// What the ways between places count for: by the place before, then after; and by the place after, then before.
struct WayCounts {
    onward: [[f64; CELLS]; CELLS],
    back: [[f64; CELLS]; CELLS],
    /// Whether the bow stays where it is.
    stays: bool,
}

/// A price: what is fixed, thousandths, and how often each learned weight is paid.
#[derive(Default)]
struct Price {
    fixed: i64,
    paid: Vec<(usize, f64)>,
}

struct ChanceStep {
    direction: [Price; 2],
    acts: Vec<DirectedLink>,
    places: usize,
    travel: usize,
}

/// A link between two directions.
struct DirectedLink {
    from: BowDirection,
    to: BowDirection,
    price: Price,
    /// Which of the tables of ways between places is its.
    ways: usize,
}

/// All ways of bowing a line, summed up.
#[derive(Clone, Debug)]
pub struct Chances {
    /// The sum over all ways is the first times two to the power of the second.
    pub sum: (f64, i64),
    /// For each stroke, how likely it goes down, 0 to 1.
    pub down: Vec<f64>,
    /// For each learned weight, how often it is paid on average.
    pub paid: Vec<f64>,
}

impl Inverse {
    /// A line under settings, with what its strokes lean to; `names` are the weights to be learned, as a profile names
    /// them. Weights that are percentages cannot be.
    #[must_use]
    pub fn new(line: &Line, settings: &PlanSettings, names: &[&str]) -> Self {
        let line = Line {
            repeats: Vec::new(),
            voices: line.voices.clone(),
            name: line.name.clone(),
            strokes: line.strokes.clone(),
            ..*line
        };
        let with = |chosen: Option<&str>| PlanSettings {
            weights: only(&settings.weights, names, chosen),
            ..settings.alone()
        };
        let fixed_settings = PlanSettings { leanings: settings.leanings.clone(), ..with(None) };
        let fixed = Costs::new(&line, &fixed_settings, CELLS);
        let each: Vec<PlanSettings> = names.iter().map(|name| with(Some(name))).collect();
        let each: Vec<Costs<'_>> = each.iter().map(|settings| Costs::new(&line, settings, CELLS)).collect();
        let mut tables = Tables::default();
        let steps = (0..line.strokes.len()).map(|index| step(index, &fixed, &each, &mut tables)).collect();
        let Tables { travels, places, ways, .. } = tables;
        Self { steps, travels, places, ways, weights: names.len() }
    }

    /// All ways, the learned weights being these (thousandths, in the order of their names), where known
    /// directions hold.
    #[must_use]
    pub fn chances(&self, weights: &[f64], known: &[Option<BowDirection>]) -> Chances {
        let mut sum = (1.0, 0);
        let mut forward: Vec<(ChanceRow, ChanceRow)> = Vec::with_capacity(self.steps.len());
        for (index, step) in self.steps.iter().enumerate() {
            let before = forward.last().map(|(_, ends)| ends);
            let landing = self.landing(index, weights, known);
            let mut begins = self.links(step, weights, before);
            multiply(&mut begins, &landing);
            let mut ends = self.travelled(step, &begins);
            let scale = scale(&mut ends);
            sum.1 += scale;
            forward.push((begins, ends));
        }
        let mut chances = Chances { sum, down: vec![0.0; self.steps.len()], paid: vec![0.0; self.weights] };
        let Some((_, last)) = forward.last() else { return chances };
        chances.sum.0 = last.iter().flatten().sum();
        let mut after: ChanceRow = [[1.0; CELLS]; 2];
        for (index, step) in self.steps.iter().enumerate().rev() {
            let begins = &forward[index].0;
            let mut onward = self.travelled_back(step, &after);
            let by_direction: [f64; 2] = std::array::from_fn(|way| dot(&begins[way], &onward[way]));
            let whole: f64 = by_direction.iter().sum();
            chances.down[index] = by_direction[0] / whole;
            for (price, share) in step.direction.iter().zip(by_direction) {
                price.count(share / whole, &mut chances.paid);
            }
            multiply(&mut onward, &self.landing(index, weights, known));
            let before = index.checked_sub(1).map(|before| &forward[before].1);
            after = self.links_back(step, weights, before, &onward, &mut chances.paid);
            scale(&mut after);
        }
        chances
    }

    /// What beginning a stroke counts for, by direction and place, the link not counted.
    fn landing(&self, index: usize, weights: &[f64], known: &[Option<BowDirection>]) -> ChanceRow {
        let step = &self.steps[index];
        let held = known.get(index).copied().flatten();
        std::array::from_fn(|way| {
            let holds = held.is_none_or(|held| held == DIRECTIONS[way]);
            let price = if holds { counts(step.direction[way].at(weights)) } else { 0.0 };
            self.places[step.places][0].map(|place| place * price)
        })
    }

    fn links(&self, step: &ChanceStep, weights: &[f64], before: Option<&ChanceRow>) -> ChanceRow {
        let Some(before) = before else { return [[1.0; CELLS]; 2] };
        let mut begins = [[0.0; CELLS]; 2];
        for act in &step.acts {
            let price = counts(act.price.at(weights));
            let ways = &self.ways[act.ways];
            lead(&before[act.from as usize], &ways.onward, ways.stays, price, &mut begins[act.to as usize]);
        }
        begins
    }

    /// The chances behind a stroke's end seen from the end of the one before; counts what its links pay.
    fn links_back(
        &self,
        step: &ChanceStep,
        weights: &[f64],
        before: Option<&ChanceRow>,
        onward: &ChanceRow,
        paid: &mut [f64],
    ) -> ChanceRow {
        let mut back = [[0.0; CELLS]; 2];
        let Some(before) = before else { return back };
        let mut shares = Vec::with_capacity(step.acts.len());
        for act in &step.acts {
            let price = counts(act.price.at(weights));
            let ways = &self.ways[act.ways];
            let mut behind = [0.0; CELLS];
            lead(&onward[act.to as usize], &ways.back, ways.stays, price, &mut behind);
            shares.push(dot(&before[act.from as usize], &behind));
            for (sum, share) in back[act.from as usize].iter_mut().zip(behind) {
                *sum += share;
            }
        }
        let whole: f64 = shares.iter().sum();
        for (act, share) in step.acts.iter().zip(shares) {
            act.price.count(share / whole, paid);
        }
        back
    }

    fn travelled(&self, step: &ChanceStep, begins: &ChanceRow) -> ChanceRow {
        let (travel, place) = (&self.travels[step.travel], &self.places[step.places][1]);
        let mut ends = [[0.0; CELLS]; 2];
        for start in 0..CELLS {
            add(ends[0][start..].iter_mut(), travel, begins[0][start]);
            add(ends[1][..=start].iter_mut().rev(), travel, begins[1][start]);
        }
        for row in &mut ends {
            row.iter_mut().zip(place).for_each(|(chance, place)| *chance *= place);
        }
        ends
    }

    fn travelled_back(&self, step: &ChanceStep, after: &ChanceRow) -> ChanceRow {
        let (travel, place) = (&self.travels[step.travel], &self.places[step.places][1]);
        let after: ChanceRow =
            std::array::from_fn(|way| std::array::from_fn(|cell| after[way][cell] * place[cell]));
        let mut begins = [[0.0; CELLS]; 2];
        for end in 0..CELLS {
            add(begins[0][..=end].iter_mut().rev(), travel, after[0][end]);
            add(begins[1][end..].iter_mut(), travel, after[1][end]);
        }
        begins
    }
}

/// Adds the chances that lead from one row to another at a price.
fn lead(from: &[f64; CELLS], ways: &[[f64; CELLS]; CELLS], stays: bool, price: f64, to: &mut [f64; CELLS]) {
    if stays {
        return add(to.iter_mut(), from, price);
    }
    for (chance, ways) in from.iter().zip(ways) {
        add(to.iter_mut(), ways, chance * price);
    }
}

/// Adds so many times a row to cells, as far as both go.
fn add<'c>(cells: impl Iterator<Item = &'c mut f64>, row: &[f64; CELLS], times: f64) {
    cells.zip(row).for_each(|(cell, share)| *cell += share * times);
}

impl Price {
    /// From a cost under the fixed weights and under each learned one alone.
    fn of(fixed: i64, cost: impl Fn(&Costs<'_>) -> i64, each: &[Costs<'_>]) -> Self {
        let paid = each.iter().enumerate().filter_map(|(nth, costs)| {
            let paid = cost(costs);
            (paid != 0).then(|| (nth, paid as f64 / UNIT as f64))
        });
        Self { fixed, paid: paid.collect() }
    }

    fn at(&self, weights: &[f64]) -> f64 {
        self.fixed as f64 + self.paid.iter().map(|(nth, paid)| weights[*nth] * paid).sum::<f64>()
    }

    fn count(&self, share: f64, sums: &mut [f64]) {
        for (nth, paid) in &self.paid {
            sums[*nth] += paid * share;
        }
    }
}

/// The weights with those to be learned at nothing; or one of them alone, and no other.
fn only(weights: &Weights, names: &[&str], chosen: Option<&str>) -> Weights {
    let mut weights = weights.clone();
    for (name, value) in weights.named() {
        let percent = Weights::PERCENTAGES.contains(&name);
        match chosen {
            _ if percent => {}
            Some(chosen) => *value = if name == chosen { UNIT } else { 0 },
            None if names.contains(&name) => *value = 0,
            None => {}
        }
    }
    weights
}

/// What makes the ways of a link the same: join, link, the directions before and after, what the air costs.
type Linked = (Join, Link, BowDirection, BowDirection, Option<Carry>);

/// Tables that many strokes share.
#[derive(Default)]
struct Tables {
    travels: Vec<[f64; CELLS]>,
    known_travels: FxHashMap<(i64, SpeedWindow), usize>,
    places: Vec<[[f64; CELLS]; 2]>,
    known_places: FxHashMap<(BowInterval, u16, bool), usize>,
    ways: Vec<WayCounts>,
    /// Nothing for a link that joins no two places.
    known_ways: FxHashMap<Linked, Option<usize>>,
}

impl Tables {
    /// The ways between places by which a link joins two directions; `None` where it joins none.
    fn ways(
        &mut self,
        costs: &Costs<'_>,
        approach: &Approach,
        link: Link,
        [from, to]: [BowDirection; 2],
    ) -> Option<usize> {
        let lifted = matches!(link, Link::Retake | Link::Reset) && approach.join != Join::Entry;
        let carry = lifted.then(|| costs.carry(approach));
        let join = approach.join;
        *self.known_ways.entry((join, link, from, to, carry)).or_insert_with(|| {
            let stand = |direction, cell| DirectionAndCell { direction, cell };
            let through_the_air: [f64; CELLS] = std::array::from_fn(|way| match carry {
                Some(carry) => {
                    let rushed = if carry.in_time.is_none_or(|far| way > far) { carry.rushed } else { 0 };
                    counts((carry.per_cell * way as i64 + rushed) as f64)
                }
                None => 1.0,
            });
            let mut ways =
                WayCounts { onward: [[0.0; CELLS]; CELLS], back: [[0.0; CELLS]; CELLS], stays: true };
            let mut any = false;
            for one in 0..CELLS {
                for other in 0..CELLS {
                    if costs.is_link(join, link, stand(from, one), stand(to, other)) {
                        ways.onward[one][other] = through_the_air[one.abs_diff(other)];
                        ways.back[other][one] = ways.onward[one][other];
                        ways.stays &= one == other;
                        any = true;
                    }
                }
            }
            any.then(|| {
                self.ways.push(ways);
                self.ways.len() - 1
            })
        })
    }
}

fn step(index: usize, fixed: &Costs<'_>, each: &[Costs<'_>], tables: &mut Tables) -> ChanceStep {
    let stroke = &fixed.strokes[index];
    let row = |cost: &dyn Fn(usize, &mut i64)| {
        std::array::from_fn(|cell| {
            let mut sum = 0;
            cost(cell, &mut sum);
            counts(sum as f64)
        })
    };
    let travel = *tables.known_travels.entry((stroke.duration.micros, stroke.speed)).or_insert_with(|| {
        let pace = fixed.pace(stroke);
        tables.travels.push(row(&|cell, sum| fixed.travel(&pace, cell, sum)));
        tables.travels.len() - 1
    });
    let known = (stroke.home, stroke.emphasis.accent, Costs::enters_softly(stroke));
    let places = *tables.known_places.entry(known).or_insert_with(|| {
        let begin = row(&|cell, sum| fixed.begin_at(index, cell, sum));
        let end = row(&|cell, sum| fixed.end_at(index, cell, sum));
        tables.places.push([begin, end]);
        tables.places.len() - 1
    });
    let direction = DIRECTIONS.map(|direction| {
        let cost = |costs: &Costs<'_>| {
            let mut sum = 0;
            costs.direction(index, direction, &mut sum);
            sum
        };
        Price::of(cost(fixed), cost, each)
    });
    let approach = fixed.approach(index);
    let acts = approach.as_ref().map(|approach| acts(approach, fixed, each, tables)).unwrap_or_default();
    ChanceStep { direction, acts, places, travel }
}

fn acts(
    approach: &Approach,
    fixed: &Costs<'_>,
    each: &[Costs<'_>],
    tables: &mut Tables,
) -> Vec<DirectedLink> {
    let mut acts = Vec::new();
    for link in offered(approach.join) {
        for from in DIRECTIONS {
            for to in DIRECTIONS {
                let Some(ways) = tables.ways(fixed, approach, *link, [from, to]) else { continue };
                let cost = |costs: &Costs<'_>, approach: &Approach| {
                    let mut sum = 0;
                    costs.act(approach, *link, from, to, &mut sum);
                    sum
                };
                // What strokes lean to is no weight's: it is counted once.
                let alone = Approach { change_leaning: [0; 2], ..*approach };
                let price = Price::of(cost(fixed, approach), |costs| cost(costs, &alone), each);
                acts.push(DirectedLink { from, to, price, ways });
            }
        }
    }
    acts
}

fn multiply(row: &mut ChanceRow, by: &ChanceRow) {
    for (cell, by) in row.iter_mut().flatten().zip(by.iter().flatten()) {
        *cell *= by;
    }
}

fn dot(one: &[f64; CELLS], other: &[f64; CELLS]) -> f64 {
    one.iter().zip(other).map(|(one, other)| one * other).sum()
}

/// Brings a row near one by a power of two, which is exact, and tells which.
fn scale(row: &mut ChanceRow) -> i64 {
    let most = row.iter().flatten().fold(0.0_f64, |most, cell| most.max(*cell));
    if most <= 0.0 {
        return 0;
    }
    let exponent = (most.to_bits() >> 52 & 0x7ff) as i64 - 1023;
    let factor = power_of_two(-exponent);
    row.iter_mut().flatten().for_each(|cell| *cell *= factor);
    exponent
}

fn power_of_two(exponent: i64) -> f64 {
    f64::from_bits(((exponent.clamp(-1022, 1023) + 1023) as u64) << 52)
}

/// One over the number of each term of the series of e.
const SHARES: [f64; 14] = [
    1.0,
    1.0 / 2.0,
    1.0 / 3.0,
    1.0 / 4.0,
    1.0 / 5.0,
    1.0 / 6.0,
    1.0 / 7.0,
    1.0 / 8.0,
    1.0 / 9.0,
    1.0 / 10.0,
    1.0 / 11.0,
    1.0 / 12.0,
    1.0 / 13.0,
    1.0 / 14.0,
];

/// e to the minus a cost in thousandths of a point; nothing beyond 700 points.
fn counts(thousandths: f64) -> f64 {
    let points = thousandths / 1000.0;
    if points > 700.0 {
        return 0.0;
    }
    let halvings = (points / std::f64::consts::LN_2).round();
    let left = halvings * std::f64::consts::LN_2 - points;
    // |left| < 0.35: fourteen terms are more than a float holds.
    let sum = SHARES.iter().rev().fold(1.0, |sum, share| 1.0 + sum * left * share);
    sum * power_of_two(-(halvings as i64))
}

#[cfg(test)]
mod tests;
