//! Ryan's Mammoth Collection (Boston 1883): the printed bow marks against the planner, which does not see
//! them, and against three ways of bowing without a planner.

mod agreement;
mod bare;
mod floors;
mod kinds;
mod learning;
mod tune;
mod tunes;

use arcata_bow::together::plan_together;
use arcata_bow::{Profile, Style, plan};
use arcata_score::BowDirection;
use rayon::prelude::*;

use crate::outcome::{CheckOutcome, Result};
use crate::scores;
use crate::setting::CheckSetting;
use agreement::TuneAgreement;
use kinds::{KINDS, by_kind};
pub(crate) use learning::samples;
pub(crate) use tune::tune;
use tunes::{Half, Tune};

/// A way of bowing a tune: a direction for each mark, in the order of the tune's marks.
type Bowing = (&'static str, fn(&Tune) -> Vec<BowDirection>);

const WITHOUT_PLANNER: [Bowing; 3] = [
    ("place in the bar", bare::place_in_the_bar),
    ("as it comes", bare::as_it_comes),
    ("corrected at each mark", bare::corrected),
];

/// Reports agreement by half and by place; holds the planner to what it has reached before.
pub(crate) fn check(setting: &CheckSetting, outcome: &mut CheckOutcome) -> Result<()> {
    let profile = Profile::default().in_style(Style::Dance);
    let collection = tunes::load(setting, &profile)?;
    collection.report(outcome);
    println!("\nagreement with the printed marks, percent (marks)");
    println!(
        "{:24} {:>8} {:>20} {:>20} {:>20} {:>20}",
        "", "half", "all", "downbeats", "before downbeats", "elsewhere"
    );
    for half in [Half::Reporting, Half::Tuning] {
        let chosen: Vec<&Tune> = collection.tunes.iter().filter(|tune| tune.half == half).collect();
        let hidden = agreement_of(&chosen, |tune| planned(tune, &profile));
        for (name, bowing) in WITHOUT_PLANNER {
            println!("{name:24} {half:>8} {}", agreement_of(&chosen, bowing));
        }
        for style in Style::ALL {
            let styled = Profile::default().in_style(style);
            let reached = agreement_of(&chosen, |tune| planned(tune, &styled));
            println!("{:24} {half:>8} {reached}", format!("marks hidden, {}", style.name()));
        }
        let alike = agreement_of(&chosen, |tune| planned_alike(tune, &profile));
        println!("{:24} {half:>8} {alike}", "dance, with likeness");
        floors::hold(setting, half, &hidden, outcome)?;
    }
    println!("{:24} {:>8} {:>20} {:>20} {:>20}", "wanted", "", "92.0", "93.0", "97.5");
    let reporting: Vec<&Tune> = collection.tunes.iter().filter(|tune| tune.half == Half::Reporting).collect();
    println!("\nby what the stroke is, reporting half");
    println!("{:24} {:>20} {:>20} {:>20}", "", "planner", "with likeness", "place in the bar");
    let alone = by_kind(&reporting, |tune| planned(tune, &profile));
    let alike = by_kind(&reporting, |tune| planned_alike(tune, &profile));
    let bare = by_kind(&reporting, bare::place_in_the_bar);
    for (index, kind) in KINDS.iter().enumerate() {
        println!("{:24} {:>20} {:>20} {:>20}", kind.name, alone[index], alike[index], bare[index]);
    }
    Ok(())
}

fn agreement_of(tunes: &[&Tune], bowing: impl Fn(&Tune) -> Vec<BowDirection> + Sync) -> TuneAgreement {
    let each = tunes.par_iter().map(|tune| TuneAgreement::of(tune, &bowing(tune)));
    each.reduce(TuneAgreement::default, TuneAgreement::plus)
}

/// What the planner does at the marks.
fn planned(tune: &Tune, profile: &Profile) -> Vec<BowDirection> {
    let plans: Vec<_> = tune.lines.iter().map(|line| plan(line, &scores::blind(line, profile))).collect();
    tune.marks.iter().map(|mark| plans[mark.line].strokes[mark.stroke].direction).collect()
}

/// The same with figures that come back bowed alike.
fn planned_alike(tune: &Tune, profile: &Profile) -> Vec<BowDirection> {
    let settings: Vec<_> = tune.lines.iter().map(|line| scores::blind(line, profile)).collect();
    let together = plan_together(&tune.lines, &settings, &tune.alike);
    tune.marks.iter().map(|mark| together.plans[mark.line].strokes[mark.stroke].direction).collect()
}
