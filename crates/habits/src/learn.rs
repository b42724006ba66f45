//! A leader's habits from marked lines, with what they foresee of bars that they were not learned from.

use std::collections::{BTreeMap, BTreeSet};

use arcata_bow::plan::MarkReading;
use arcata_bow::{Line, PlanSettings, Profile, plan};
use arcata_score::BowDirection;
use rayon::prelude::*;

use crate::file::measure;
use crate::problem::{LearningProblem, Sample};
use crate::{Habits, LEARNED, Trial};

/// A line with the bows that are marked in it.
#[derive(Clone, Debug)]
pub struct Marked {
    /// The line.
    pub line: Line,
    /// The bow marked on each of its strokes.
    pub known: Vec<Option<BowDirection>>,
    /// The number of the work that it is from: lines of one file have one.
    pub work: usize,
}

/// Below this many marked strokes nothing is learned: with fewer the trial itself says little (rule of thumb).
pub const LEAST_STROKES: usize = 50;

/// The same where marks are sparse: each stands where a leader departs from what comes anyway, and says little of the strokes
/// between (rule of thumb).
pub const LEAST_SPARSE: usize = 300;
/// What sparse marks cannot tell: hooks and retakes are marked where they are made, and never where they are not.
const EXCEPTIONS: [&str; 7] =
    ["hook", "hook_last_two", "hook_by_slur", "hook_slurs", "retake", "retake_apart", "retake_up"];

/// From so many tenths of the strokes soon after marked ones on, marks are taken as complete (rule of thumb).
const DENSE: usize = 6;
/// So many strokes after a marked one are looked at (rule of thumb).
const AFTER: usize = 8;

/// Whether many strokes soon after marked ones have no mark.
fn are_sparse(marked: &[Marked]) -> bool {
    let (mut all, mut also) = (0, 0);
    for Marked { known, .. } in marked {
        for stroke in (0..known.len()).filter(|stroke| known[*stroke].is_some()) {
            let after = &known[stroke + 1..known.len().min(stroke + 1 + AFTER)];
            all += after.len();
            also += after.iter().flatten().count();
        }
    }
    also * 10 < all * DENSE
}

/// What came of learning.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LearningOutcome {
    /// Prices that foresee what they were not learned from better than the style's, by more than the error of that.
    Learned(Habits),
    /// Nothing that would be honest to write.
    Refused(Refusal),
}

/// Why nothing was learned.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// No stroke carries a mark.
    NoMarks,
    /// Too few marked strokes.
    TooFew {
        /// How many there are.
        strokes: usize,
        /// How many are wanted.
        wanted: usize,
        /// Whether they stand apart, so that each is an exception to what comes anyway.
        sparse: bool,
    },
    /// The style's own prices foresee the bars that were left out as well, or better.
    NoGain {
        /// What was tried.
        trial: Trial,
    },
    /// There is a gain, and it may be chance.
    Unsure {
        /// What was tried.
        trial: Trial,
        /// How many marked strokes more would tell, were the gain to stay.
        more: usize,
    },
}

/// So many bars in a row are left out together: neighbouring strokes hang together (rule of thumb).
const BLOCK: u32 = 8;
/// Every fifth block is left out at a time (rule of thumb).
const FOLDS: usize = 5;
/// A leader's price may well be twice the style's or half of it: the spread of its logarithm (rule of thumb).
pub const SPREAD: f64 = 0.7;
/// A price of nothing begins here, thousandths of a point, so that it can be learned (rule of thumb).
const LEAST: f64 = 40.0;

/// Learns what a leader prices otherwise than a profile's style does.
///
/// Marks are foreseen by each line's own plan with all marks hidden. Works are left out in turn where there are three or more,
/// otherwise every fifth block of eight bars through all parts.
///
/// # Errors
/// What the search says where it finds nothing.
pub fn learn(marked: &[Marked], profile: &Profile) -> Result<LearningOutcome, String> {
    let strokes = marked.iter().map(|marked| marked.known.iter().flatten().count()).sum();
    if strokes == 0 {
        return Ok(LearningOutcome::Refused(Refusal::NoMarks));
    }
    let sparse = are_sparse(marked);
    let too_few = |wanted: usize, sparse: bool| {
        Ok(LearningOutcome::Refused(Refusal::TooFew { strokes, wanted, sparse }))
    };
    if strokes < LEAST_STROKES {
        return too_few(LEAST_STROKES, false);
    }
    if sparse && strokes < LEAST_SPARSE {
        return too_few(LEAST_SPARSE, true);
    }
    let leader = Leader::new(marked, profile, if sparse { &EXCEPTIONS } else { &[] });
    let trial = leader.trial()?;
    let (gain, error) = trial.gain();
    if gain <= 0 {
        return Ok(LearningOutcome::Refused(Refusal::NoGain { trial }));
    }
    if gain <= error {
        return Ok(LearningOutcome::Refused(Refusal::Unsure { more: more(strokes, gain, error), trial }));
    }
    let weights = leader.weights(&|_, _| true)?;
    let learned = LEARNED.iter().zip(weights).filter_map(|(name, weight)| {
        #[expect(clippy::cast_possible_truncation, reason = "a whole number of thousandths")]
        let weight = weight as i64;
        let by_style = profile.weight(name)?;
        let measure = measure(by_style);
        let weight = weight.clamp(*measure.start(), *measure.end());
        // What began at nothing and did not move is nothing.
        let still = by_style == 0 && weight <= LEAST as i64;
        (!still && by_style != weight).then(|| ((*name).to_owned(), weight))
    });
    let prices: BTreeMap<String, i64> = learned.collect();
    Ok(LearningOutcome::Learned(Habits { style: profile.style, strokes, foreseen: trial.foreseen(), prices }))
}

/// How many strokes more would tell: the error falls with the root of their number.
fn more(strokes: usize, gain: i64, error: i64) -> usize {
    let (gain, error) = (gain.max(1) as f64, error.min(100_000) as f64);
    let wanted = strokes as f64 * (error / gain) * (error / gain);
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a count, and not a large one"
    )]
    let more = (wanted - strokes as f64).clamp(1.0, 1e6) as usize;
    more.next_multiple_of(50)
}

/// The marked lines, ready to be learned from.
struct Leader<'a> {
    marked: &'a [Marked],
    settings: Vec<PlanSettings>,
    samples: Vec<Sample>,
    start: Vec<f64>,
    /// What is not learned.
    held: &'static [&'static str],
    /// What of each stroke is left out together: the number of a work or of a block of bars.
    by_works: bool,
}

impl<'a> Leader<'a> {
    fn new(marked: &'a [Marked], profile: &Profile, held: &'static [&'static str]) -> Self {
        let blind = |marked: &Marked| PlanSettings {
            marks: MarkReading::Hidden,
            ..profile.plan_settings(marked.line.instrument)
        };
        let settings: Vec<PlanSettings> = marked.iter().map(blind).collect();
        let samples = marked
            .par_iter()
            .zip(&settings)
            .map(|(marked, settings)| Sample::new(&marked.line, settings, marked.known.clone()))
            .collect();
        let start =
            LEARNED.iter().map(|name| (profile.weight(name).unwrap_or(0) as f64).max(LEAST)).collect();
        let works: BTreeSet<usize> = marked.iter().map(|marked| marked.work).collect();
        Self { marked, settings, samples, start, held, by_works: works.len() >= 3 }
    }

    /// The block that a stroke is left out with.
    fn block(&self, line: usize, stroke: usize) -> usize {
        let marked = &self.marked[line];
        if self.by_works { marked.work } else { (marked.line.strokes[stroke].bar / BLOCK) as usize }
    }

    fn weights(&self, keeps: &(dyn Fn(usize, usize) -> bool + Sync)) -> Result<Vec<f64>, String> {
        LearningProblem { samples: &self.samples, keeps, start: &self.start, spread: SPREAD, held: self.held }
            .solve()
    }

    /// The directions of each line under weights, or as the style bows.
    fn plans(&self, weights: Option<&[f64]>) -> Vec<Vec<BowDirection>> {
        let planned = |(marked, settings): (&Marked, &PlanSettings)| {
            let settings =
                weights.map_or_else(|| settings.clone(), |weights| with_weights(settings, weights));
            plan(&marked.line, &settings).strokes.iter().map(|stroke| stroke.direction).collect()
        };
        self.marked.par_iter().zip(&self.settings).map(planned).collect()
    }

    fn trial(&self) -> Result<Trial, String> {
        let by_style = self.plans(None);
        let mut blocks: BTreeMap<usize, [usize; 3]> = BTreeMap::new();
        let all: BTreeSet<usize> = self.strokes().map(|(line, stroke)| self.block(line, stroke)).collect();
        let folds = if self.by_works { all.len() } else { FOLDS };
        for fold in 0..folds {
            let of: BTreeSet<usize> = all.iter().copied().skip(fold).step_by(folds).collect();
            if of.is_empty() {
                continue;
            }
            let weights = self.weights(&|line, stroke| !of.contains(&self.block(line, stroke)))?;
            let learned = self.plans(Some(&weights));
            for (line, stroke) in self.strokes() {
                let block = self.block(line, stroke);
                let Some(known) = self.marked[line].known[stroke].filter(|_| of.contains(&block)) else {
                    continue;
                };
                let [strokes, old, new] = blocks.entry(block).or_default();
                *strokes += 1;
                *old += usize::from(by_style[line][stroke] == known);
                *new += usize::from(learned[line][stroke] == known);
            }
        }
        Ok(Trial { blocks: blocks.into_values().collect() })
    }

    /// All marked strokes: line and stroke.
    fn strokes(&self) -> impl Iterator<Item = (usize, usize)> + '_ {
        self.marked.iter().enumerate().flat_map(|(line, marked)| {
            let known = marked.known.iter().enumerate().filter(|(_, known)| known.is_some());
            known.map(move |(stroke, _)| (line, stroke))
        })
    }
}

/// The settings with other values of what is learned, in the order of [`LEARNED`].
#[must_use]
pub fn with_weights(settings: &PlanSettings, weights: &[f64]) -> PlanSettings {
    let mut settings = settings.clone();
    let values: BTreeMap<&str, f64> = LEARNED.iter().copied().zip(weights.iter().copied()).collect();
    for (name, weight) in settings.weights.named() {
        if let Some(value) = values.get(name) {
            #[expect(clippy::cast_possible_truncation, reason = "a whole number of thousandths")]
            let value = *value as i64;
            *weight = value;
        }
    }
    settings
}
