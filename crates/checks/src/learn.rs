//! Prices learned from bowings: the weights under which what was done is likeliest, held near those that were
//! set by hand (maximum entropy over the planner's own lattice, [`arcata_bow::plan::Inverse`]).
//!
//! A weight is its hand-set value times e to the power of a number that is learned, with a square penalty: so no
//! price changes its sign, and a price of nothing stays nothing. Whole pieces are left out in turn; the old
//! weights stay unless the gain on pieces left out exceeds its standard error.

use std::path::Path;

use arcata_bow::{PlanSettings, Profile, Style};
use arcata_habits::{LEARNED, LearningProblem, Sample, with_weights as with};
use rayon::prelude::*;

use crate::outcome::Result;
use crate::played::{self, PlayedFigures, PlayedPiece};
use crate::ryan;
use crate::setting::{CheckSetting, read_text};

/// Weights that the hand set before anything was learned: `STYLE NAME VALUE` a line.
const HAND_SET: &str = "outside/hand_set.weights";
/// A weight may well come to be half as large again as the hand set it, or two thirds of that: the spread of its logarithm.
/// The hand had all pieces in view: what is learned so near foresees a piece left out better than it ought to. `--alike` begins
/// from prices that say nothing.
const SPREAD: f64 = 0.4;
/// The same where all prices begin alike: any may be twenty times the other.
const WIDE: f64 = 3.0;

/// What is made best.
#[derive(Clone, Copy, PartialEq, Eq)]
enum LearnBy {
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
    pieces: &'a [PlayedPiece],
    settings: &'a [PlanSettings],
}

impl Agreeing<'_> {
    /// The mean of both shares, hundredths of a point, one piece left out.
    fn worth(&self, weights: &[f64], without: Option<usize>) -> f64 {
        let each: Vec<PlayedFigures> = self
            .pieces
            .par_iter()
            .zip(self.settings)
            .enumerate()
            .filter(|(nth, _)| Some(*nth) != without)
            .map(|(_, (piece, settings))| reached(piece, &with(settings, weights)))
            .collect();
        let (strokes, pieces) = each.into_iter().fold(PlayedFigures::default(), PlayedFigures::plus).shares();
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
fn reached(piece: &PlayedPiece, settings: &PlanSettings) -> PlayedFigures {
    let plan = arcata_bow::plan(&piece.line, settings);
    PlayedFigures::of(piece, &plan.strokes.iter().map(|stroke| stroke.direction).collect::<Vec<_>>())
}

/// What a table of one bow a stroke cannot tell: hooks and lifts are slurs there, and no dynamic is known.
const HELD: [&str; 8] =
    ["hook", "hook_last_two", "hook_by_slur", "hook_slurs", "retake", "retake_apart", "retake_up", "swell"];

/// `learn played FOLDER` or `learn ryan`; `--spread HUNDREDTHS`; `--alike THOUSANDTHS` begins with one price for all that is
/// learned; `NAME=VALUE` sets a weight by hand.
pub(crate) fn run(setting: &CheckSetting, arguments: &[String]) -> Result<()> {
    let (mut words, mut spread, mut set, mut by) = (Vec::new(), None, Vec::new(), LearnBy::Likelihood);
    let mut alike = None;
    let mut left = arguments.iter();
    while let Some(argument) = left.next() {
        if argument == "--spread" {
            let hundredths: u32 =
                left.next().and_then(|value| value.parse().ok()).ok_or("--spread wants hundredths")?;
            spread = Some(f64::from(hundredths) / 100.0);
        } else if argument == "--alike" {
            let price: i64 =
                left.next().and_then(|value| value.parse().ok()).ok_or("--alike wants thousandths")?;
            set.extend(
                LEARNED.iter().filter(|name| !HELD.contains(name)).map(|name| format!("{name}={price}")),
            );
            alike = Some(WIDE);
        } else if argument == "--agreement" {
            by = LearnBy::Agreement;
        } else if argument.contains('=') {
            set.push(argument.clone());
        } else {
            words.push(argument.as_str());
        }
    }
    let spread = spread.or(alike).unwrap_or(SPREAD);
    match words.as_slice() {
        ["played", folder] => from_played(setting, Path::new(folder), by, spread, &set),
        ["ryan"] => from_ryan(setting, spread, &set),
        _ => Err("learn wants: played FOLDER, or ryan".to_owned()),
    }
}

/// A profile with the weights that the hand set for a style.
fn by_hand(setting: &CheckSetting, style: Style, set: &[String]) -> Result<Profile> {
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

fn from_played(
    setting: &CheckSetting,
    folder: &Path,
    by: LearnBy,
    spread: f64,
    set: &[String],
) -> Result<()> {
    let profile = by_hand(setting, Style::Concert, set)?;
    let pieces = played::load(folder, &profile)?;
    let hand_set = hand_set(&profile);
    let settings: Vec<PlanSettings> =
        pieces.iter().map(|piece| crate::scores::blind(&piece.line, &profile)).collect();
    let samples: Vec<Sample> = pieces
        .par_iter()
        .zip(&settings)
        .map(|(piece, settings)| Sample::new(&piece.line, settings, piece.known()))
        .collect();
    let likeliest = |without: Option<usize>| {
        let keeps = |line: usize, _: usize| Some(line) != without;
        LearningProblem { samples: &samples, keeps: &keeps, start: &hand_set, spread, held: &HELD }.solve()
    };
    let search = Agreeing { pieces: &pieces, settings: &settings };
    let (mut old, mut new, mut gains) = (PlayedFigures::default(), PlayedFigures::default(), Vec::new());
    for (nth, piece) in pieces.iter().enumerate() {
        let weights = match by {
            LearnBy::Likelihood => likeliest(Some(nth))?,
            LearnBy::Agreement => search.solve(&hand_set, Some(nth)),
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
        LearnBy::Likelihood => likeliest(None)?,
        LearnBy::Agreement => search.solve(&hand_set, None),
    };
    let all = pieces.iter().zip(&settings).map(|(piece, settings)| reached(piece, &with(settings, &weights)));
    println!("{:24} {}", "learned from all", all.fold(PlayedFigures::default(), PlayedFigures::plus));
    show(&hand_set, &weights);
    report_habits(&pieces, &settings, &hand_set, &samples)
}

/// What a player's habits are worth, learned from the first strokes of a piece and asked of its second half.
fn report_habits(
    pieces: &[PlayedPiece],
    settings: &[PlanSettings],
    hand_set: &[f64],
    samples: &[Sample],
) -> Result<()> {
    println!("\nhabits: learned from the first strokes of each piece, agreement on its second half");
    for first in [50, 100, 200, usize::MAX] {
        let (mut old, mut new, mut gains) = ((0, 0), (0, 0), Vec::new());
        for (nth, piece) in pieces.iter().enumerate() {
            let half = piece.strokes.len() / 2;
            let Some(last) = piece.strokes.get(first.min(half)) else { continue };
            let keeps = |line: usize, stroke: usize| line == nth && stroke < *last;
            let weights = LearningProblem {
                samples,
                keeps: &keeps,
                start: hand_set,
                spread: arcata_habits::SPREAD,
                held: &HELD,
            }
            .solve()?;
            let right = |settings: &PlanSettings| {
                let planned = arcata_bow::plan(&piece.line, settings).strokes;
                let told = piece.strokes.iter().zip(&piece.bows).skip(half);
                told.filter(|(stroke, bow)| planned[**stroke].direction == **bow).count()
            };
            let count = piece.strokes.len() - half;
            let (before, after) = (right(&settings[nth]), right(&with(&settings[nth], &weights)));
            old = (old.0 + before, old.1 + count);
            new = (new.0 + after, new.1 + count);
            gains.push((after as f64 - before as f64) * 100.0 / count as f64);
        }
        let share = |(right, all): (usize, usize)| right as f64 * 100.0 / all.max(1) as f64;
        let told = if first == usize::MAX { "half".to_owned() } else { first.to_string() };
        let (mean, error) = mean_and_error(&gains);
        println!(
            "{told:>5} strokes: {:6.2} % before, {:6.2} % after; over pieces {mean:+.2}, standard error {error:.2}",
            share(old),
            share(new)
        );
    }
    Ok(())
}

fn from_ryan(setting: &CheckSetting, spread: f64, set: &[String]) -> Result<()> {
    let profile = by_hand(setting, Style::Dance, set)?;
    let hand_set = hand_set(&profile);
    let (samples, mut measured) = ryan::samples(setting, &profile)?;
    let before = measured(&|settings| settings.clone());
    let weights =
        LearningProblem { samples: &samples, keeps: &|_, _| true, start: &hand_set, spread, held: &[] }
            .solve()?;
    let after = measured(&|settings| with(settings, &weights));
    println!("by hand\n{before}\nlearned from the even half\n{after}");
    show(&hand_set, &weights);
    Ok(())
}

/// Mean and standard error of the gains over pieces, and what follows.
fn verdict(gains: &[f64]) {
    let (mean, error) = mean_and_error(gains);
    let told = if mean > error { "the learned weights are taken" } else { "the weights set by hand stay" };
    println!("gain over pieces {mean:+.2} points, standard error {error:.2}: {told}");
}

fn mean_and_error(gains: &[f64]) -> (f64, f64) {
    let count = gains.len() as f64;
    let mean = gains.iter().sum::<f64>() / count;
    let spread = gains.iter().map(|gain| (gain - mean) * (gain - mean)).sum::<f64>() / (count - 1.0).max(1.0);
    (mean, (spread / count).sqrt())
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
