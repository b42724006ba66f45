//! The even half as samples to learn from.

use arcata_bow::{PlanSettings, Profile, plan};
use rayon::prelude::*;

use super::agreement_of;
use super::tunes::{self, Half, Tune};
use crate::outcome::Result;
use crate::scores;
use crate::setting::CheckSetting;
use arcata_habits::Sample;

/// Tells how both halves agree when settings are changed.
type MeasuredHalves = Box<dyn FnMut(&(dyn Fn(&PlanSettings) -> PlanSettings + Sync)) -> String>;

/// Lines of the even half that carry marks, and a way to measure weights on both halves. Repeats are left
/// out, as in the search for weights.
pub(crate) fn samples(setting: &CheckSetting, profile: &Profile) -> Result<(Vec<Sample>, MeasuredHalves)> {
    let mut collection = tunes::load(setting, profile)?;
    collection.without_repeats();
    let marked = |tune: &&Tune| tune.half == Half::Tuning && !tune.marks.is_empty();
    let tuning: Vec<&Tune> = collection.tunes.iter().filter(marked).collect();
    let samples = tuning
        .par_iter()
        .flat_map_iter(|tune| {
            tune.lines.iter().map(move |line| {
                let known = line.strokes.iter().map(|stroke| stroke.printed).collect();
                Sample::new(line, &scores::blind(line, profile), known)
            })
        })
        .collect();
    let profile = profile.clone();
    let measured = move |change: &(dyn Fn(&PlanSettings) -> PlanSettings + Sync)| {
        let halves = [Half::Tuning, Half::Reporting].map(|half| {
            let tunes: Vec<&Tune> = collection.tunes.iter().filter(|tune| tune.half == half).collect();
            let agreement = agreement_of(&tunes, |tune| {
                let planned = |line| plan(line, &change(&scores::blind(line, &profile)));
                let plans: Vec<_> = tune.lines.iter().map(planned).collect();
                tune.marks.iter().map(|mark| plans[mark.line].strokes[mark.stroke].direction).collect()
            });
            format!("{half:8} {agreement}")
        });
        halves.join("\n")
    };
    Ok((samples, Box::new(measured)))
}
