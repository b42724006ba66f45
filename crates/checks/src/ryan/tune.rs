//! A search for better planner weights, on the tuning half alone.

use arcata_bow::plan::Grid;
use arcata_bow::{Join, MetricPlace, PlanSettings, Profile, Style, Weights, plan};
use arcata_score::BowDirection;

use super::agreement::TuneAgreement;
use super::tunes::{self, Half, Tune};
use super::{WITHOUT_PLANNER, agreement_of};
use crate::outcome::{CheckOutcome, Result};
use crate::scores;
use crate::setting::CheckSetting;

/// What a weight is tried at: multiplied by so many percent.
const STEPS: [i64; 8] = [50, 75, 90, 110, 125, 150, 200, 300];
/// What a weight of nothing is tried at, thousandths of a point.
const FROM_NOTHING: [i64; 3] = [100, 300, 1000];

/// Settings of the search.
struct TuneSearch {
    /// At most so many passes over all weights.
    rounds: u32,
    /// A change must win so many marks to be taken: fewer are chance.
    least_gain: u32,
    /// Weights to look at; all when empty.
    names: Vec<String>,
    grid: Grid,
    /// Print every mark of the tuning half that the plan does not agree with.
    misses: Misses,
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Misses {
    Hidden,
    Shown,
}

/// Looks for weights that agree with more marks of the tuning half, one weight at a time, and prints
/// what it takes.
///
/// `NAME=VALUE` sets a weight to begin with; `NAME` alone restricts the search to the names given;
/// `--rounds N`, `--least-gain N`, `--coarse` (24 cells: twice as fast),
/// `--misses` (print the marks that the plan does not agree with). The search plans repeats as if
/// they were played once, which is a hundred times faster; what it ends with is measured with them.
pub(crate) fn tune(setting: &CheckSetting, arguments: &[String]) -> Result<()> {
    let profile = Profile::default().in_style(Style::Dance);
    let mut collection = tunes::load(setting, &profile)?;
    collection.report(&mut CheckOutcome::default());
    let repeats = collection.without_repeats();
    let (tuning, reporting): (Vec<&Tune>, Vec<&Tune>) =
        collection.tunes.iter().partition(|tune| tune.half == Half::Tuning);
    let first = tuning.iter().flat_map(|tune| &tune.lines).next().ok_or("no line in the tuning half")?;
    let mut settings = scores::blind(first, &profile);
    let search = read_arguments(arguments, &mut settings.weights)?;
    settings.grid = search.grid;

    for (name, bowing) in WITHOUT_PLANNER {
        println!("{name:24} {}", agreement_of(&tuning, bowing));
    }
    let mut reached = measured(&tuning, &settings);
    println!("{:24} {reached}", "weights to begin with");
    for round in 1..=search.rounds {
        let before = reached;
        improve(&tuning, &mut settings, &search, &mut reached);
        println!("{:24} {reached}", format!("after round {round}"));
        if reached == before {
            break;
        }
    }
    println!("{:24} {}", "reporting half", measured(&reporting, &settings));
    if search.misses == Misses::Shown {
        show_misses(&tuning, &settings);
    }
    collection.with_repeats(repeats);
    for half in [Half::Tuning, Half::Reporting] {
        let tunes: Vec<&Tune> = collection.tunes.iter().filter(|tune| tune.half == half).collect();
        println!("{:24} {}", format!("{half} half with repeats"), measured(&tunes, &settings));
    }
    println!("\n[weights]");
    for (name, value) in settings.weights.named() {
        println!("{name} = {value}");
    }
    Ok(())
}

fn measured(tunes: &[&Tune], settings: &PlanSettings) -> TuneAgreement {
    agreement_of(tunes, |tune| {
        let plans: Vec<_> = tune.lines.iter().map(|line| plan(line, settings)).collect();
        tune.marks.iter().map(|mark| plans[mark.line].strokes[mark.stroke].direction).collect()
    })
}

/// The marks that the plan does not agree with, a line each: where, what is printed, what surrounds it.
fn show_misses(tunes: &[&Tune], settings: &PlanSettings) {
    for tune in tunes {
        let plans: Vec<_> = tune.lines.iter().map(|line| plan(line, settings)).collect();
        for mark in &tune.marks {
            let planned = &plans[mark.line].strokes;
            if planned[mark.stroke].direction == mark.direction {
                continue;
            }
            let strokes = &tune.lines[mark.line].strokes;
            let stroke = &strokes[mark.stroke];
            let around = mark.stroke.saturating_sub(4)..(mark.stroke + 5).min(strokes.len());
            let shown: Vec<String> = around
                .map(|index| {
                    let here = if index == mark.stroke { "*" } else { "" };
                    let first =
                        if strokes[index].emphasis.metric == MetricPlace::Downbeat { "|" } else { "" };
                    let rest = if strokes[index].join == Join::Continues { "" } else { "r" };
                    let way = if planned[index].direction == BowDirection::Down { 'D' } else { 'U' };
                    format!("{first}{rest}{here}{way}{:?}{}", strokes[index].kind, strokes[index].length)
                })
                .collect();
            println!(
                "{} bar {} {:?} printed {:?}: {}",
                tune.file,
                stroke.bar + 1,
                mark.place,
                mark.direction,
                shown.join(" ")
            );
        }
    }
}

/// One pass over the weights.
fn improve(tunes: &[&Tune], settings: &mut PlanSettings, search: &TuneSearch, reached: &mut TuneAgreement) {
    let names: Vec<&'static str> = settings.weights.named().into_iter().map(|(name, _)| name).collect();
    for name in names {
        if !search.names.is_empty() && !search.names.iter().any(|wanted| wanted == name) {
            continue;
        }
        let old = weight(&mut settings.weights, name);
        let mut best = (*reached, old);
        for value in trials(old) {
            set_weight(&mut settings.weights, name, value);
            let found = measured(tunes, settings);
            if found.all.agreed > best.0.all.agreed {
                best = (found, value);
            }
        }
        let gain = best.0.all.agreed - reached.all.agreed;
        if gain < search.least_gain.max(1) {
            set_weight(&mut settings.weights, name, old);
            continue;
        }
        set_weight(&mut settings.weights, name, best.1);
        println!("{name:20} {old:6} -> {:6}  {gain:+} marks  {}", best.1, best.0);
        *reached = best.0;
    }
}

fn trials(value: i64) -> Vec<i64> {
    if value == 0 {
        return FROM_NOTHING.to_vec();
    }
    let mut trials: Vec<i64> = STEPS.iter().map(|percent| value * percent / 100).chain([0]).collect();
    trials.sort_unstable();
    trials.dedup();
    trials.retain(|trial| *trial != value);
    trials
}

fn weight(weights: &mut Weights, wanted: &str) -> i64 {
    weights.named().into_iter().find(|(name, _)| *name == wanted).map_or(0, |(_, value)| *value)
}

fn set_weight(weights: &mut Weights, wanted: &str, value: i64) {
    for (_, place) in weights.named().into_iter().filter(|(name, _)| *name == wanted) {
        *place = value;
    }
}

fn read_arguments(arguments: &[String], weights: &mut Weights) -> Result<TuneSearch> {
    let mut search =
        TuneSearch { rounds: 4, least_gain: 2, names: Vec::new(), grid: Grid::Fine, misses: Misses::Hidden };
    let known = |weights: &mut Weights, name: &str| weights.named().iter().any(|(known, _)| *known == name);
    let mut left = arguments.iter();
    while let Some(argument) = left.next() {
        let mut number = || {
            let value = left.next().and_then(|value| value.parse().ok());
            value.ok_or(format!("{argument} wants a whole number"))
        };
        match argument.as_str() {
            "--rounds" => search.rounds = number()?,
            "--least-gain" => search.least_gain = number()?,
            "--coarse" => search.grid = Grid::Coarse,
            "--misses" => search.misses = Misses::Shown,
            other => {
                let (name, value) =
                    other.split_once('=').map_or((other, None), |(name, value)| (name, Some(value)));
                if !known(weights, name) {
                    let names: Vec<&str> = weights.named().into_iter().map(|(name, _)| name).collect();
                    return Err(format!("there is no weight \"{name}\"; there are {}", names.join(", ")));
                }
                match value {
                    None => search.names.push(name.to_owned()),
                    Some(value) => {
                        let value = value.parse().map_err(|_| format!("\"{other}\" wants a whole number"))?;
                        set_weight(weights, name, value);
                    }
                }
            }
        }
    }
    Ok(search)
}
