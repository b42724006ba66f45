//! The sums over all ways beside every way counted by itself, and the gradient beside small steps.

use proptest::prelude::*;

use super::*;
use crate::plan::MarkReading;
use crate::plan::tests::any_line;

const NAMES: [&str; 6] = ["downbeat", "upbeat", "entry", "hook", "retake", "reset"];

fn settings() -> PlanSettings {
    PlanSettings { marks: MarkReading::Hidden, ..PlanSettings::default() }
}

fn values(settings: &PlanSettings) -> Vec<f64> {
    let mut weights = settings.weights.clone();
    let named: Vec<(&str, i64)> = weights.named().into_iter().map(|(name, value)| (name, *value)).collect();
    let value =
        |name: &&str| named.iter().find(|(known, _)| known == name).map_or(0.0, |(_, value)| *value as f64);
    NAMES.iter().map(value).collect()
}

/// Every direction, place and link of a line of at most two strokes: what all of it counts for, and what of it
/// begins down.
fn every_way(line: &Line, settings: &PlanSettings) -> (f64, f64) {
    let costs = Costs::new(line, settings, CELLS);
    let alone = |index: usize, direction: BowDirection, start: usize, end: usize| {
        let mut sum = 0i64;
        costs.direction(index, direction, &mut sum);
        costs.begin_at(index, start, &mut sum);
        costs.travel(&costs.pace(&line.strokes[index]), start.abs_diff(end), &mut sum);
        costs.end_at(index, end, &mut sum);
        sum
    };
    let ways = |index: usize| {
        let mut ways = Vec::new();
        for direction in DIRECTIONS {
            for start in 0..CELLS {
                let ends = if direction == BowDirection::Down { start..CELLS } else { 0..start + 1 };
                ways.extend(ends.map(|end| (direction, start, end, alone(index, direction, start, end))));
            }
        }
        ways
    };
    let (mut sum, mut down) = (0.0, 0.0);
    for (direction, _, end, paid) in ways(0) {
        let onward = if line.strokes.len() == 1 { 1.0 } else { onward(&costs, (direction, end), &ways(1)) };
        let counted = counts(paid as f64) * onward;
        sum += counted;
        down += if direction == BowDirection::Down { counted } else { 0.0 };
    }
    (sum, down)
}

fn onward(
    costs: &Costs<'_>,
    (direction, cell): (BowDirection, usize),
    ways: &[(BowDirection, usize, usize, i64)],
) -> f64 {
    let approach = costs.approach(1);
    let from = DirectionAndCell { direction, cell };
    let mut sum = 0.0;
    for (direction, start, _, paid) in ways {
        for link in [Link::Change, Link::Hooked, Link::Retake, Link::Reset] {
            let mut price = *paid;
            if costs.link(
                approach.as_ref(),
                link,
                (from, DirectionAndCell { direction: *direction, cell: *start }),
                &mut price,
            ) {
                sum += counts(price as f64);
            }
        }
    }
    sum
}

fn near(one: f64, other: f64) -> bool {
    (one - other).abs() <= 2e-3 * one.abs().max(other.abs()).max(1e-3)
}

/// The quotient of two sums, each with its power of two.
fn quotient(one: (f64, i64), other: (f64, i64)) -> f64 {
    one.0 / other.0 * power_of_two(one.1 - other.1)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(12))]

    #[test]
    fn all_ways_are_counted_once(line in any_line(2)) {
        let settings = settings();
        let found = Inverse::new(&line, &settings, &NAMES).chances(&values(&settings), &[]);
        let (sum, down) = every_way(&line, &settings);
        prop_assert!(near(quotient(found.sum, (sum, 0)), 1.0), "{:?} {}", found.sum, sum);
        prop_assert!(near(found.down[0], down / sum), "{} {}", found.down[0], down / sum);
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    #[test]
    fn a_small_step_costs_what_is_paid(line in any_line(12), nth in 0..NAMES.len()) {
        let settings = settings();
        let inverse = Inverse::new(&line, &settings, &NAMES);
        let mut weights = values(&settings);
        let before = inverse.chances(&weights, &[]);
        weights[nth] += 2.0;
        let after = inverse.chances(&weights, &[]);
        let lost = 1.0 - quotient(after.sum, before.sum);
        prop_assert!((lost - before.paid[nth] * 0.002).abs() < 1e-4, "{} {}", lost, before.paid[nth]);
    }

    #[test]
    fn known_directions_hold(line in any_line(12), down in any::<bool>()) {
        let settings = settings();
        let inverse = Inverse::new(&line, &settings, &NAMES);
        let direction = if down { BowDirection::Down } else { BowDirection::Up };
        let free = inverse.chances(&values(&settings), &[]);
        let held = inverse.chances(&values(&settings), &[Some(direction)]);
        let sure = if down { 1.0 } else { 0.0 };
        prop_assert!(near(held.down[0], sure));
        let share = if down { free.down[0] } else { 1.0 - free.down[0] };
        prop_assert!((quotient(held.sum, free.sum) - share).abs() < 1e-6);
    }
}
