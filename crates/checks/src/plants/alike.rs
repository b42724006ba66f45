//! How often works that have nothing to do with each other are told as alike: each hand-in is sixty bars of a work for strings of
//! music21's corpus, and two movements of one work are not compared.
//!
//! That they are unrelated is known because nobody copied one from the other; what they share is the language of their time.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use arcata_class::alike::{Trace, pairs, traces};
use rayon::prelude::*;

use crate::outcome::{CheckOutcome, Result};
use crate::setting::CheckSetting;
use crate::{alarms, scores};

/// Bars of each hand-in.
const BARS: u32 = 60;
/// Pairs that are compared at least.
const LEAST_PAIRS: usize = 1000;
/// Of ten thousand pairs, those that may be told as alike.
const ALARMS: usize = 5;

/// Cuts, compares each with each as the only two of a class, and counts.
pub(super) fn check(setting: &CheckSetting, outcome: &mut CheckOutcome) -> Result<()> {
    let works = alarms::works(setting)?;
    let cuts: Vec<Vec<Vec<Trace>>> = works.par_iter().map(|path| cuts(path)).collect::<Result<_>>()?;
    let all: Vec<(&PathBuf, &Vec<Trace>)> =
        works.iter().zip(&cuts).flat_map(|(path, cuts)| cuts.iter().map(move |cut| (path, cut))).collect();
    let told: Vec<(usize, Vec<String>)> = all
        .par_iter()
        .enumerate()
        .map(|(index, (path, one))| {
            let mut compared = 0;
            let mut told = Vec::new();
            for (other_path, other) in all.iter().skip(index + 1) {
                if work(path) == work(other_path) {
                    continue;
                }
                compared += 1;
                for pair in pairs(&[one, other]) {
                    let (one, other) = (path.display(), other_path.display());
                    told.push(format!("{one} and {other}: {} traces, {} %", pair.shared, pair.share));
                }
            }
            (compared, told)
        })
        .collect();
    let compared: usize = told.iter().map(|(compared, _)| compared).sum();
    let alarms: Vec<&String> = told.iter().flat_map(|(_, told)| told).collect();
    println!(
        "{} stretches of {BARS} bars of {} works, {compared} unrelated pairs, {} told as alike",
        all.len(),
        works.iter().map(|path| work(path)).collect::<BTreeSet<_>>().len(),
        alarms.len()
    );
    for alarm in &alarms {
        println!("  {alarm}");
    }
    outcome.check(compared >= LEAST_PAIRS, &format!("{LEAST_PAIRS} unrelated pairs are compared"));
    outcome.check(
        alarms.len() * 10_000 <= compared * ALARMS,
        &format!("at most {ALARMS} of 10,000 unrelated pairs are told as alike"),
    );
    // A comparison that tells nothing of anybody would pass: a stretch and itself are alike.
    let same = all.iter().filter(|(_, cut)| !pairs(&[cut, cut]).is_empty()).count();
    println!("{same} of {} stretches are told as alike with themselves", all.len());
    outcome.check(same * 10 >= all.len() * 9, "nine of ten stretches are alike with themselves");
    Ok(())
}

/// A work is the folder of its movements.
fn work(path: &Path) -> Option<&Path> {
    path.parent()
}

/// The stretches of a score, one after the other; what is left over is none.
fn cuts(path: &Path) -> Result<Vec<Vec<Trace>>> {
    let score = arcata_score::read(&scores::document(path)?);
    let bars = u32::try_from(score.bars.len()).unwrap_or(u32::MAX);
    let cut = |number: u32| {
        let mut cut = score.clone();
        for part in &mut cut.parts {
            part.notes.retain(|note| note.bar / BARS == number);
        }
        traces(&cut, &BTreeSet::new())
    };
    Ok((0..bars / BARS).map(cut).collect())
}
