//! Prices learned from bowings: the weights under which what was done is likeliest, held near those that were
//! set by hand (maximum entropy over the planner's own lattice, [`arcata_bow::plan::Inverse`]).
//!
//! A weight is its hand-set value times e to the power of a number that is learned, with a square penalty: so no
//! price changes its sign, and a price of nothing stays nothing. Whole pieces are left out in turn; the old
//! weights stay unless the gain on pieces left out exceeds its standard error.

use std::collections::BTreeMap;
use std::path::Path;

use arcata_bow::plan::Inverse;
use arcata_bow::{Line, PlanSettings, Profile, Style};
use arcata_score::BowDirection;
use argmin::core::{CostFunction, Error, Executor, Gradient, State};
use argmin::solver::linesearch::MoreThuenteLineSearch;
use argmin::solver::quasinewton::LBFGS;
use rayon::prelude::*;

use crate::outcome::Result;
use crate::played::{self, Piece, Played};
use crate::ryan;
use crate::setting::{Setting, read_text};

/// Weights that the hand set before anything was learned: `STYLE NAME VALUE` a line.
const HAND_SET: &str = "outside/hand_set.weights";
/// What is learned: what depends on direction and link. Speeds and places are mechanics and stay.
const LEARNED: [&str; 29] = [
    "downbeat",
    "downbeat_slurred",
    "downbeat_bar",
    "downbeat_bars",
    "downbeat_even",
    "mid_bar",
    "mid_bar_slurred",
    "half_bar",
    "beat",
    "offbeat",
    "upbeat",
    "upbeat_slurred",
    "upbeat_long",
    "flow_slurred",
    "flow_long",
    "upbeat_mid_bar",
    "entry",
    "entry_elsewhere",
    "before_rest",
    "ending",
    "hook",
    "hook_last_two",
    "hook_by_slur",
    "hook_slurs",
    "retake",
    "retake_apart",
    "retake_up",
    "reset",
    "swell",
];
/// A weight may well come to be half as large again as the hand set it, or two thirds of that: the spread of its logarithm.
/// With twice or half the learned weights follow single long stretches of the data, and foresee a piece left out worse.
const SPREAD: f64 = 0.4;
const ROUNDS: u64 = 60;

/// A line of which some directions are known.
pub(crate) struct Sample {
    pub(crate) inverse: Inverse,
    pub(crate) known: Vec<Option<BowDirection>>,
    /// The piece that it is left out with.
    pub(crate) piece: usize,
}

/// The problem that is solved: find the exponents under which the samples are likeliest.
struct Problem<'a> {
    samples: Vec<&'a Sample>,
    hand_set: &'a [f64],
    spread: f64,
    /// What is not learned from these samples.
    held: &'static [&'static str],
}

impl Problem<'_> {
    fn weights(&self, exponents: &[f64]) -> Vec<f64> {
        self.hand_set.iter().zip(exponents).map(|(weight, exponent)| weight * exponent.exp()).collect()
    }

    /// What is to be small, and how it grows with each exponent.
    fn look(&self, exponents: &[f64]) -> (f64, Vec<f64>) {
        let weights = self.weights(exponents);
        let nothing: [Option<BowDirection>; 0] = [];
        let each: Vec<(f64, Vec<f64>)> = self
            .samples
            .par_iter()
            .map(|sample| {
                let (free, held) = (
                    sample.inverse.chances(&weights, &nothing),
                    sample.inverse.chances(&weights, &sample.known),
                );
                let logarithm =
                    |(sum, exponent): (f64, i64)| sum.ln() + exponent as f64 * std::f64::consts::LN_2;
                let paid = held.paid.iter().zip(&free.paid).map(|(held, free)| held - free).collect();
                (logarithm(free.sum) - logarithm(held.sum), paid)
            })
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
        let known: usize = self.samples.iter().map(|sample| sample.known.iter().flatten().count()).sum();
        let each = 1.0 / known.max(1) as f64;
        (loss * each, slope.into_iter().map(|slope| slope * each).collect())
    }

    fn solve(self) -> Result<Vec<f64>> {
        let start = vec![0.0; self.hand_set.len()];
        let hand_set = self.hand_set.to_vec();
        let solver = LBFGS::new(MoreThuenteLineSearch::new(), 7)
            .with_tolerance_grad(1e-5)
            .and_then(|solver| solver.with_tolerance_cost(1e-7))
            .map_err(|problem| problem.to_string())?;
        let found = Executor::new(self, solver).configure(|state| state.param(start).max_iters(ROUNDS)).run();
        let found = found.map_err(|problem| problem.to_string())?;
        let exponents = found.state().get_best_param().ok_or("the search found nothing")?;
        let weights =
            hand_set.iter().zip(exponents).map(|(weight, exponent)| (weight * exponent.exp()).round());
        Ok(weights.collect())
    }
}

impl CostFunction for Problem<'_> {
    type Param = Vec<f64>;
    type Output = f64;

    fn cost(&self, exponents: &Vec<f64>) -> std::result::Result<f64, Error> {
        Ok(self.look(exponents).0)
    }
}

impl Gradient for Problem<'_> {
    type Param = Vec<f64>;
    type Gradient = Vec<f64>;

    fn gradient(&self, exponents: &Vec<f64>) -> std::result::Result<Vec<f64>, Error> {
        Ok(self.look(exponents).1)
    }
}

/// What is made best.
#[derive(Clone, Copy, PartialEq, Eq)]
enum By {
    /// How likely the bowings are.
    Likelihood,
    /// On how many strokes the plan agrees with them: one weight at a time, by the planner itself.
    Agreement,
}

/// What each weight is tried at, percent of what it is.
const TRIALS: [i64; 6] = [33, 50, 75, 150, 200, 300];
/// What a change must win, in hundredths of a point, over strokes and pieces by halves: less is chance.
const LEAST_GAIN: f64 = 5.0;

/// A search for weights one by one.
struct Agreeing<'a> {
    pieces: &'a [Piece],
    settings: &'a [PlanSettings],
}

impl Agreeing<'_> {
    /// The mean of both shares, hundredths of a point, one piece left out.
    fn worth(&self, weights: &[f64], without: Option<usize>) -> f64 {
        let each: Vec<Played> = self
            .pieces
            .par_iter()
            .zip(self.settings)
            .enumerate()
            .filter(|(nth, _)| Some(*nth) != without)
            .map(|(_, (piece, settings))| reached(piece, &with(settings, weights)))
            .collect();
        let (strokes, pieces) = each.into_iter().fold(Played::default(), Played::plus).shares();
        (strokes + pieces) * 50.0
    }

    fn solve(&self, hand_set: &[f64], without: Option<usize>) -> Vec<f64> {
        let mut weights = hand_set.to_vec();
        let mut best = self.worth(&weights, without);
        for _ in 0..2 {
            for nth in (0..weights.len()).filter(|nth| !HELD.contains(&LEARNED[*nth])) {
                for percent in TRIALS {
                    let mut tried = weights.clone();
                    // As far from the hand-set value as three times or a third, and no farther.
                    let (least, most) = (hand_set[nth] / 3.1, hand_set[nth] * 3.1);
                    tried[nth] =
                        (weights[nth] * percent as f64 / 100.0).round().clamp(least.floor(), most.ceil());
                    let worth = self.worth(&tried, without);
                    if worth > best + LEAST_GAIN {
                        (best, weights) = (worth, tried);
                    }
                }
            }
        }
        weights
    }
}

/// What the plan under some settings comes to.
fn reached(piece: &Piece, settings: &PlanSettings) -> Played {
    let plan = arcata_bow::plan(&piece.line, settings);
    Played::of(piece, &plan.strokes.iter().map(|stroke| stroke.direction).collect::<Vec<_>>())
}

/// What a table of one bow a stroke cannot tell: hooks and lifts are slurs there, and no dynamic is known.
const HELD: [&str; 8] =
    ["hook", "hook_last_two", "hook_by_slur", "hook_slurs", "retake", "retake_apart", "retake_up", "swell"];

/// `learn played FOLDER` or `learn ryan`; `--spread HUNDREDTHS`; `NAME=VALUE` sets a weight by hand.
pub(crate) fn run(setting: &Setting, arguments: &[String]) -> Result<()> {
    let (mut words, mut spread, mut set, mut by) = (Vec::new(), SPREAD, Vec::new(), By::Likelihood);
    let mut left = arguments.iter();
    while let Some(argument) = left.next() {
        if argument == "--spread" {
            let hundredths: u32 =
                left.next().and_then(|value| value.parse().ok()).ok_or("--spread wants hundredths")?;
            spread = f64::from(hundredths) / 100.0;
        } else if argument == "--agreement" {
            by = By::Agreement;
        } else if argument.contains('=') {
            set.push(argument.clone());
        } else {
            words.push(argument.as_str());
        }
    }
    match words.as_slice() {
        ["played", folder] => from_played(setting, Path::new(folder), by, spread, &set),
        ["ryan"] => from_ryan(setting, spread, &set),
        _ => Err("learn wants: played FOLDER, or ryan".to_owned()),
    }
}

/// A profile with the weights that the hand set for a style.
fn by_hand(setting: &Setting, style: Style, set: &[String]) -> Result<Profile> {
    let text = read_text(&setting.root.join(HAND_SET))?;
    let lines = text.lines().map(|line| line.split('#').next().unwrap_or_default());
    let rows = lines.map(|line| line.split_whitespace().collect::<Vec<&str>>());
    let prices: Vec<String> = rows
        .filter(|words| words.len() == 3 && words[0] == style.name())
        .map(|words| format!("{}={}", words[1], words[2]))
        .chain(set.iter().cloned())
        .collect();
    crate::scores::priced(Profile::default().in_style(style), &prices)
}

fn hand_set(profile: &Profile) -> Vec<f64> {
    LEARNED.iter().map(|name| profile.weight(name).unwrap_or(0) as f64).collect()
}

/// The settings with other values of what is learned.
fn with(settings: &PlanSettings, weights: &[f64]) -> PlanSettings {
    let mut settings = settings.clone();
    let values: BTreeMap<&str, i64> =
        LEARNED.iter().copied().zip(weights.iter().map(|weight| *weight as i64)).collect();
    for (name, weight) in settings.weights.named() {
        if let Some(value) = values.get(name) {
            *weight = *value;
        }
    }
    settings
}

pub(crate) fn sample(
    line: &Line,
    settings: &PlanSettings,
    known: Vec<Option<BowDirection>>,
    piece: usize,
) -> Sample {
    Sample { inverse: Inverse::new(line, settings, &LEARNED), known, piece }
}

fn from_played(setting: &Setting, folder: &Path, by: By, spread: f64, set: &[String]) -> Result<()> {
    let profile = by_hand(setting, Style::Concert, set)?;
    let pieces = played::load(folder, &profile)?;
    let hand_set = hand_set(&profile);
    let settings: Vec<PlanSettings> =
        pieces.iter().map(|piece| crate::scores::blind(&piece.line, &profile)).collect();
    let samples: Vec<Sample> = pieces
        .par_iter()
        .zip(&settings)
        .enumerate()
        .map(|(nth, (piece, settings))| sample(&piece.line, settings, piece.known(), nth))
        .collect();
    let search = Agreeing { pieces: &pieces, settings: &settings };
    let (mut old, mut new, mut gains) = (Played::default(), Played::default(), Vec::new());
    for (nth, piece) in pieces.iter().enumerate() {
        let weights = match by {
            By::Likelihood => {
                let others = samples.iter().filter(|sample| sample.piece != nth).collect();
                Problem { samples: others, hand_set: &hand_set, spread, held: &HELD }.solve()?
            }
            By::Agreement => search.solve(&hand_set, Some(nth)),
        };
        let by_hand = reached(piece, &settings[nth]);
        let learned = reached(piece, &with(&settings[nth], &weights));
        println!(
            "{:24} by hand {:6.2}  learned without it {:6.2}",
            piece.file,
            by_hand.shares().0,
            learned.shares().0
        );
        gains.push(learned.shares().0 - by_hand.shares().0);
        (old, new) = (old.plus(by_hand), new.plus(learned));
    }
    println!("\n{:24} {old}\n{:24} {new}", "by hand", "learned, piece left out");
    verdict(&gains);
    let weights = match by {
        By::Likelihood => {
            Problem { samples: samples.iter().collect(), hand_set: &hand_set, spread, held: &HELD }.solve()?
        }
        By::Agreement => search.solve(&hand_set, None),
    };
    let all = pieces.iter().zip(&settings).map(|(piece, settings)| reached(piece, &with(settings, &weights)));
    println!("{:24} {}", "learned from all", all.fold(Played::default(), Played::plus));
    show(&hand_set, &weights);
    Ok(())
}

fn from_ryan(setting: &Setting, spread: f64, set: &[String]) -> Result<()> {
    let profile = by_hand(setting, Style::Dance, set)?;
    let hand_set = hand_set(&profile);
    let (samples, mut measured) = ryan::samples(setting, &profile)?;
    let before = measured(&|settings| settings.clone());
    let weights =
        Problem { samples: samples.iter().collect(), hand_set: &hand_set, spread, held: &[] }.solve()?;
    let after = measured(&|settings| with(settings, &weights));
    println!("by hand\n{before}\nlearned from the even half\n{after}");
    show(&hand_set, &weights);
    Ok(())
}

/// Mean and standard error of the gains over pieces, and what follows.
fn verdict(gains: &[f64]) {
    let count = gains.len() as f64;
    let mean = gains.iter().sum::<f64>() / count;
    let spread = gains.iter().map(|gain| (gain - mean) * (gain - mean)).sum::<f64>() / (count - 1.0).max(1.0);
    let error = (spread / count).sqrt();
    let told = if mean > error { "the learned weights are taken" } else { "the weights set by hand stay" };
    println!("gain over pieces {mean:+.2} points, standard error {error:.2}: {told}");
}

fn show(hand_set: &[f64], weights: &[f64]) {
    println!("\n{:20} {:>8} {:>8}", "", "by hand", "learned");
    for ((name, by_hand), learned) in LEARNED.iter().zip(hand_set).zip(weights) {
        println!("{name:20} {by_hand:8.0} {learned:8.0}");
    }
    let told: Vec<String> =
        LEARNED.iter().zip(weights).map(|(name, weight)| format!("{name}={weight:.0}")).collect();
    println!("{}", told.join(" "));
}
