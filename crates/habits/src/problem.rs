//! The problem that is solved: under which weights are these bowings likeliest?

use std::f64::consts::LN_2;

use arcata_bow::plan::Inverse;
use arcata_bow::{Line, PlanSettings};
use arcata_score::BowDirection;
use argmin::core::{CostFunction, Error, Executor, Gradient, State};
use argmin::solver::linesearch::MoreThuenteLineSearch;
use argmin::solver::quasinewton::LBFGS;
use rayon::prelude::*;

use crate::LEARNED;
use crate::arithmetic::{exponential, logarithm};

/// The search ends after so many rounds at the latest (rule of thumb).
const ROUNDS: u64 = 60;

/// A line of which some directions are known.
pub struct Sample {
    inverse: Inverse,
    known: Vec<Option<BowDirection>>,
}

impl Sample {
    /// A line under the settings that everything but [`LEARNED`] is priced by; what is known of each of its strokes.
    #[must_use]
    pub fn new(line: &Line, settings: &PlanSettings, known: Vec<Option<BowDirection>>) -> Self {
        Self { inverse: Inverse::new(line, settings, &LEARNED), known }
    }

    /// How unlikely the known strokes are that are kept, and how often each weight is paid more under them than freely.
    fn loss(&self, weights: &[f64], keeps: &(dyn Fn(usize) -> bool + Sync)) -> (f64, Vec<f64>) {
        let known: Vec<Option<BowDirection>> =
            self.known.iter().enumerate().map(|(stroke, known)| known.filter(|_| keeps(stroke))).collect();
        let nothing: [Option<BowDirection>; 0] = [];
        let (free, held) = (self.inverse.chances(weights, &nothing), self.inverse.chances(weights, &known));
        let of = |(sum, exponent): (f64, i64)| logarithm(sum) + exponent as f64 * LN_2;
        let paid = held.paid.iter().zip(&free.paid).map(|(held, free)| held - free).collect();
        (of(free.sum) - of(held.sum), paid)
    }
}

/// Find the weights under which the known strokes are likeliest. A weight is its starting value times e to the power of a
/// number with a square penalty: so no price changes its sign, and a price of nothing stays nothing.
pub struct LearningProblem<'a> {
    /// The lines.
    pub samples: &'a [Sample],
    /// Which known strokes count: the number of the line, and of the stroke in it.
    pub keeps: &'a (dyn Fn(usize, usize) -> bool + Sync),
    /// The weights to begin from, thousandths of a point, in the order of [`LEARNED`].
    pub start: &'a [f64],
    /// How far the logarithm of a weight may well move.
    pub spread: f64,
    /// What is not learned from these samples.
    pub held: &'a [&'a str],
}

impl LearningProblem<'_> {
    /// The weights found, whole thousandths, in the order of [`LEARNED`]. Deterministic.
    ///
    /// # Errors
    /// What the search says where it finds nothing.
    pub fn solve(self) -> Result<Vec<f64>, String> {
        let begin = vec![0.0; self.start.len()];
        let start = self.start.to_vec();
        let solver = LBFGS::new(MoreThuenteLineSearch::new(), 7)
            .with_tolerance_grad(1e-5)
            .and_then(|solver| solver.with_tolerance_cost(1e-7))
            .map_err(|problem| problem.to_string())?;
        let found = Executor::new(self, solver).configure(|state| state.param(begin).max_iters(ROUNDS)).run();
        let found = found.map_err(|problem| problem.to_string())?;
        let exponents = found.state().get_best_param().ok_or("the search found nothing")?;
        Ok(start
            .iter()
            .zip(exponents)
            .map(|(weight, exponent)| (weight * exponential(*exponent)).round())
            .collect())
    }

    /// What is to be small, and how it grows with each exponent.
    fn look(&self, exponents: &[f64]) -> (f64, Vec<f64>) {
        let weights: Vec<f64> = self
            .start
            .iter()
            .zip(exponents)
            .map(|(weight, exponent)| weight * exponential(*exponent))
            .collect();
        let each: Vec<(f64, Vec<f64>)> = self
            .samples
            .par_iter()
            .enumerate()
            .map(|(line, sample)| sample.loss(&weights, &|stroke| (self.keeps)(line, stroke)))
            .collect();
        let mut loss = 0.0;
        let mut slope = vec![0.0; exponents.len()];
        for (share, paid) in each {
            loss += share;
            slope.iter_mut().zip(paid).for_each(|(sum, paid)| *sum += paid);
        }
        let precision = 1.0 / (self.spread * self.spread);
        for (nth, exponent) in exponents.iter().enumerate() {
            loss += exponent * exponent * precision / 2.0;
            let held = self.held.contains(&LEARNED[nth]);
            slope[nth] = if held { 0.0 } else { slope[nth] * weights[nth] / 1000.0 + exponent * precision };
        }
        // By the known stroke, so that the first step of the search is a short one.
        let known = |(line, sample): (usize, &Sample)| {
            sample
                .known
                .iter()
                .enumerate()
                .filter(|(stroke, known)| known.is_some() && (self.keeps)(line, *stroke))
                .count()
        };
        let known: usize = self.samples.iter().enumerate().map(known).sum();
        let each = 1.0 / known.max(1) as f64;
        (loss * each, slope.into_iter().map(|slope| slope * each).collect())
    }
}

impl CostFunction for LearningProblem<'_> {
    type Param = Vec<f64>;
    type Output = f64;

    fn cost(&self, exponents: &Vec<f64>) -> Result<f64, Error> {
        Ok(self.look(exponents).0)
    }
}

impl Gradient for LearningProblem<'_> {
    type Param = Vec<f64>;
    type Gradient = Vec<f64>;

    fn gradient(&self, exponents: &Vec<f64>) -> Result<Vec<f64>, Error> {
        Ok(self.look(exponents).1)
    }
}
