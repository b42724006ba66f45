//! One small fixture for every reason.

use std::collections::BTreeSet;

use super::*;
use crate::lines::tests::score;
use crate::plan::{least_marks, plan};
use crate::{LineOptions, all_lines};

fn audited(fixture: &str) -> (Vec<Line>, Vec<Plan>, Vec<AuditedMark>) {
    let (score, profile) = (score(fixture), Profile::default());
    let lines = all_lines(&score, &profile, &LineOptions::default());
    let plans: Vec<Plan> =
        lines.iter().map(|line| plan(line, &profile.plan_settings(line.instrument))).collect();
    let marks = audit(&score, &[0], &lines, &plans, &profile);
    (lines, plans, marks)
}

/// The strokes whose mark comes anyway.
fn obvious(line: &Line, plan: &Plan, profile: &Profile) -> BTreeSet<usize> {
    let reasons = line_reasons(line, plan, &BTreeSet::new(), profile).into_iter();
    reasons.filter(|(_, reason)| *reason == ComesAnyway).map(|(stroke, _)| stroke).collect()
}

#[track_caller]
fn check(fixture: &str, expected: &[MarkReason]) {
    let told: Vec<_> = audited(fixture).2.iter().map(|mark| mark.reason).collect();
    assert_eq!(told, expected, "{fixture}");
}

use MarkReason::*;

#[test]
fn what_comes_anyway_is_obvious() {
    check(
        "quarter=96\nviolin: mf 1/4 C5!down D5!up E5!down F5!up | 1/1 G5!down |||",
        &[FreeBow, ComesAnyway, ComesAnyway, ComesAnyway, ComesAnyway],
    );
}

#[test]
fn a_mark_that_keeps_the_last_two_from_being_hooked_holds_the_plan() {
    check("time 3/4  quarter=120\nviolin: f 1/4 C5 D5 E5!down | F5 rest rest |||", &[HoldsPlan]);
}

#[test]
fn a_row_that_players_take_unasked_is_no_effect() {
    check(
        "time 3/4  quarter=120\nviolin: f 1/4 C5!down D5!up E5!up | 3/4 F5!down |||",
        &[FreeBow, BesideRow, Alternation, ComesAnyway],
    );
}

#[test]
fn what_goes_against_alternation_is_needed() {
    check("quarter=96\nviolin: p 1/4 C5 D5!down E5!down F5 | 1/1 G5 |||", &[BesideRow, Alternation]);
    check(
        "quarter=96\nviolin: p 1/4 C5 D5!up E5!up F5!down | 1/1 G5 |||",
        &[BesideRow, Alternation, ComesAnyway],
    );
}

#[test]
fn loud_rows_of_downs_are_an_effect() {
    check("quarter=96\nviolin: f 1/4 C5!down D5!down E5!down F5!down | 1/1 G5!down |||", &[RowOfDowns; 5]);
    let soft = audited("quarter=96\nviolin: p 1/4 C5!down D5!down E5!down F5!down | 1/1 G5!down |||").2;
    assert!(soft.iter().all(|mark| mark.reason.class() == MarkClass::Needed));
}

#[test]
fn ups_into_a_strong_down_are_an_effect() {
    check(
        "quarter=96\nviolin: mf 1/4 C5 D5 E5!up F5!up | 1/1 G5!down |||",
        &[UpsIntoDown, UpsIntoDown, ComesAnyway],
    );
}

#[test]
fn a_figure_is_marked_twice_and_then_known() {
    let bar = "1/4 C5!down (1/8 D5 E5) 1/4 F5!up G5!up";
    check(
        &format!("quarter=96\nviolin: mf {bar} | {bar} | {bar} | 1/1 C5 |||"),
        &[
            FirstInstances,
            UpsIntoDown,
            UpsIntoDown,
            FirstInstances,
            UpsIntoDown,
            UpsIntoDown,
            ComesAnyway,
            UpsIntoDown,
            UpsIntoDown,
        ],
    );
}

#[test]
fn a_portato_spelt_out_keeps_its_first_mark() {
    check("quarter=96\nviolin: mf 1/4 C5 (D5!up!. E5!up!.) F5 | 1/1 G5 |||", &[SpeltOut, SpeltOut]);
}

#[test]
fn marks_that_cannot_be() {
    check("quarter=96\nviolin: mf (1/4 C5 D5!up E5 F5) | 1/1 G5 |||", &[InsideSlur]);
    check("quarter=96\nviolin: mf 1/2 C5 D5_ | 1/4 D5!up E5 1/2 F5 |||", &[TiedFromBefore]);
    check("quarter=96\nviolin: mf 1/2 E5 \"pizz.\" 1/4 C5 D5!up |||", &[Plucked]);
    check("quarter=96\nviolin: mf 1/4 C5 rest!up E5 F5 | 1/1 G5 |||", &[OnRest]);
    check("quarter=96\nviolin: mf 1/4 C5!down!up D5 E5 F5 | 1/1 G5 |||", &[BothBows, BothBows]);
    // Long enough for both it is a change of bow.
    check("quarter=96\nviolin: mf 1/1 C5!down!up!fermata | G5 |||", &[FreeBow, Unusual]);
}

/// Taking the obvious marks out changes neither what comes nor the plan; made-up scores with many marks.
#[test]
fn without_the_obvious_marks_nothing_changes() {
    use arcata_testkit::{Detail, ScoreShape, random_score};
    use arcata_xml::{Document, Limits};
    let profile = Profile::default();
    let mut taken = 0;
    for seed in 0..40 {
        let xml = random_score(seed, ScoreShape { parts: 2, bars: 16, detail: Detail::All });
        let document = Document::parse(xml.into_bytes(), &Limits::default()).unwrap();
        let score = arcata_score::read(&document);
        for mut line in all_lines(&score, &profile, &LineOptions::default()) {
            let settings = profile.plan_settings(line.instrument);
            // The generator draws few marks: here the plan's own are printed on two strokes of three.
            let free = plan(&line, &settings);
            for (index, planned) in free.strokes.iter().enumerate().filter(|(index, _)| index % 3 != 0) {
                line.strokes[index].printed = Some(planned.direction);
            }
            let before = plan(&line, &settings);
            let surplus = obvious(&line, &before, &profile);
            taken += surplus.len();
            let mut bare = line.clone();
            surplus.iter().for_each(|index| bare.strokes[*index].printed = None);
            let after = plan(&bare, &settings);
            let acts = |plan: &Plan| -> Vec<_> {
                plan.strokes.iter().map(|stroke| (stroke.direction, stroke.link)).collect()
            };
            assert_eq!(acts(&before), acts(&after), "seed {seed}");
            let least = least_marks(&line, &before, settings.reach);
            assert!(least.iter().all(|mark| !surplus.contains(&mark.stroke)), "seed {seed}");
        }
    }
    assert!(taken > 300, "{taken}");
}
