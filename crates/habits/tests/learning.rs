//! Habits learned from bowings whose prices are known: a plan under other prices is a leader whose habits we know.
#![allow(
    clippy::disallowed_methods,
    clippy::expect_used,
    reason = "tests say what they expect, and are the twin of what they try"
)]

use arcata_bow::plan::{Inverse, MarkReading};
use arcata_bow::{Line, LineOptions, PlanSettings, Profile, Style, all_lines, plan};
use arcata_habits::{
    Habits, LEARNED, LEAST_STROKES, LearningOutcome, LearningProblem, Marked, Refusal, Sample, learn,
};
use arcata_score::BowDirection;
use arcata_xml::{Document, Limits};
use proptest::prelude::*;

fn line(text: &str) -> Line {
    let music = arcata_testkit::musicxml(text).into_bytes();
    let document = Document::parse(music, &Limits::default()).expect("well-formed");
    let lines = all_lines(&arcata_score::read(&document), &Profile::default(), &LineOptions::default());
    lines.into_iter().next().expect("a line")
}

/// A line of many bars of uneven rhythm: what the bow does in them depends on the prices.
fn long(bars: usize, seed: usize) -> Line {
    const BARS: [&str; 6] = [
        "1/4 C5 D5 E5",
        "(1/4 C5 D5) E5",
        "3/8 C5 1/8 D5 1/4 E5",
        "1/8 C5 D5 (E5 F5) 1/4 G5",
        "1/4 rest 1/8 C5 D5 1/4 E5",
        "(1/8 C5 D5 E5) F5 1/4 G5",
    ];
    let bars: Vec<&str> = (0..bars).map(|bar| BARS[(bar * 7 + bar / 5 + seed) % BARS.len()]).collect();
    line(&format!("time 3/4  quarter=100\nviolin: mf {} |||", bars.join(" | ")))
}

fn blind(line: &Line, profile: &Profile) -> PlanSettings {
    PlanSettings { marks: MarkReading::Hidden, ..profile.plan_settings(line.instrument) }
}

fn bowed(line: &Line, profile: &Profile) -> Vec<Option<BowDirection>> {
    plan(line, &blind(line, profile)).strokes.iter().map(|stroke| Some(stroke.direction)).collect()
}

#[test]
fn a_leader_of_another_style_is_learned_and_followed() {
    let early = Profile::default().in_style(Style::Early);
    let line = long(160, 0);
    let known = bowed(&line, &early);
    let outcome = learn(&[Marked { line, known, work: 0 }], &Profile::default()).expect("learned");
    let LearningOutcome::Learned(habits) = outcome else { panic!("{outcome:?}") };
    assert_eq!(habits.style, Style::Concert);
    let (gain, error) = (habits.foreseen.gain(), habits.foreseen.error);
    assert!(gain > 2 * error && gain > 500, "{gain} {error}");
    // And on music of the same kind that was never seen.
    let other = long(120, 3);
    let wanted = bowed(&other, &early);
    let with = habits.put_into(Profile::default()).expect("the same style");
    let agree = |profile: &Profile| {
        bowed(&other, profile).iter().zip(&wanted).filter(|(one, other)| one == other).count()
    };
    assert!(agree(&with) > agree(&Profile::default()), "{} {}", agree(&with), agree(&Profile::default()));
}

#[test]
fn a_leader_who_bows_as_the_style_does_has_no_habits() {
    let line = long(100, 1);
    let known = bowed(&line, &Profile::default());
    let outcome = learn(&[Marked { line, known, work: 0 }], &Profile::default()).expect("tried");
    assert!(matches!(outcome, LearningOutcome::Refused(Refusal::NoGain { .. })), "{outcome:?}");
}

#[test]
fn marks_that_contradict_one_another_teach_nothing() {
    let line = long(100, 2);
    // Like bars are marked down and up by turns, whatever stands in them.
    let known = line.strokes.iter().map(|stroke| {
        let down = (u64::from(stroke.bar) * 2_654_435_761 / 128).is_multiple_of(2);
        Some(if down { BowDirection::Down } else { BowDirection::Up })
    });
    let known = known.collect();
    let outcome = learn(&[Marked { line, known, work: 0 }], &Profile::default()).expect("tried");
    assert!(matches!(outcome, LearningOutcome::Refused(_)), "{outcome:?}");
}

#[test]
fn few_marks_and_none_are_refused() {
    let line = long(40, 0);
    let nothing = vec![None; line.strokes.len()];
    let none = learn(&[Marked { line: line.clone(), known: nothing.clone(), work: 0 }], &Profile::default());
    assert_eq!(none, Ok(LearningOutcome::Refused(Refusal::NoMarks)));
    let mut few = nothing.clone();
    few[..20].fill(Some(BowDirection::Down));
    let few = learn(&[Marked { line: line.clone(), known: few, work: 0 }], &Profile::default());
    let refused = Refusal::TooFew { strokes: 20, wanted: LEAST_STROKES, sparse: false };
    assert_eq!(few, Ok(LearningOutcome::Refused(refused)));
    // Every fourth stroke: each stands where something is to be otherwise.
    let sparse =
        (0..line.strokes.len()).map(|stroke| (stroke % 4 == 0).then_some(BowDirection::Up)).collect();
    let lines = vec![Marked { line, known: sparse, work: 0 }; 3];
    let outcome = learn(&lines, &Profile::default()).expect("tried");
    assert!(matches!(outcome, LearningOutcome::Refused(Refusal::TooFew { sparse: true, .. })), "{outcome:?}");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(12))]

    /// The likelihood grows along the way that the gradient says: what is found is likelier than what it began from, and no
    /// small step from it is likelier still (a brute-force twin of the search).
    #[test]
    fn what_is_found_is_the_likeliest_near(seed in 0_usize..1000, moved in 0_usize..LEARNED.len()) {
        let profile = Profile::default();
        let line = long(12, seed);
        let known: Vec<Option<BowDirection>> =
            bowed(&line, &profile.clone().in_style(Style::Early)).into_iter().enumerate()
                .map(|(stroke, bow)| bow.filter(|_| (stroke + seed) % 3 != 0)).collect();
        let settings = blind(&line, &profile);
        let start: Vec<f64> = LEARNED.iter().map(|name| profile.weight(name).unwrap_or(0).max(40) as f64).collect();
        let spread = 0.4;
        let samples = [Sample::new(&line, &settings, known.clone())];
        let problem = |start| LearningProblem { samples: &samples, keeps: &|_, _| true, start, spread, held: &[] };
        let found = problem(&start).solve().expect("found");
        let inverse = Inverse::new(&line, &settings, &LEARNED);
        let loss = |weights: &[f64]| {
            let logarithm = |known: &[Option<BowDirection>]| {
                let (sum, exponent) = inverse.chances(weights, known).sum;
                sum.ln() + exponent as f64 * std::f64::consts::LN_2
            };
            let moved: f64 = weights.iter().zip(&start).map(|(weight, start)| (weight / start).ln().powi(2)).sum();
            logarithm(&[]) - logarithm(&known) + moved / (2.0 * spread * spread)
        };
        let best = loss(&found);
        prop_assert!(best <= loss(&start) + 1e-9);
        for step in [0.9, 1.1] {
            let mut tried = found.clone();
            tried[moved] *= step;
            prop_assert!(loss(&tried) > best - 1e-3, "{} by {step}: {} {best}", LEARNED[moved], loss(&tried));
        }
    }
}

#[test]
fn a_file_that_is_none_or_out_of_measure_is_refused_with_its_line() {
    let good = "format = \"arcata-habits\"\nversion = 1\nstyle = \"concert\"\nstrokes = 80\n[foreseen]\nstrokes = 80\n\
                before = 50\nafter = 60\nerror = 300\n[prices]\ndownbeat = 1400\n";
    assert!(Habits::read(good).is_ok());
    for (from, to, line, why) in [
        ("arcata-habits", "something", 1, "format"),
        ("version = 1", "version = 2", 2, "version 2 is not known"),
        ("\"concert\"", "\"waltz\"", 3, "no style"),
        ("downbeat = 1400", "downbeet = 1400", 11, "no price"),
        ("downbeat = 1400", "place = 540", 11, "no price"),
        ("downbeat = 1400", "downbeat = -3", 11, "out of all measure"),
        ("downbeat = 1400", "downbeat = 9000000", 11, "out of all measure"),
        ("downbeat = 1400", "downbeat = \"much\"", 11, "invalid type"),
        ("before = 50", "before = -50", 7, "invalid value"),
        ("strokes = 80\n[", "[", 1, "missing field"),
    ] {
        let error = Habits::read(&good.replacen(from, to, 1)).expect_err(to);
        assert_eq!((error.line, error.why.contains(why)), (line, true), "{to}: {error}");
    }
}
