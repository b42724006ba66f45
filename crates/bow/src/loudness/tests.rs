use super::*;
use crate::lines::tests::{line, score};

/// Loudness at the beginning and end of each stroke.
fn levels(fixture: &str) -> Vec<(i32, i32)> {
    line(fixture).strokes.iter().map(|stroke| (stroke.level_start.0, stroke.level_end.0)).collect()
}

#[test]
fn mf_is_assumed_until_a_dynamic_is_written() {
    assert_eq!(levels("violin: 1/2 D4 p E4"), [(500, 500), (300, 300)]);
    let score = score("violin: 1/2 D4 p E4");
    let curve = LoudnessCurve::new(&score, &score.parts[0], 1, &[0], &Profile::default());
    assert_eq!(curve.written(Moment::START), Written::Assumed);
    assert_eq!(curve.written(Moment(Length::new(1, 2))), Written::InScore);
}

#[test]
fn a_hairpin_leads_in_a_straight_line_to_its_dynamic() {
    assert_eq!(
        levels("violin: p <= 1/4 D4 E4 F4 G4 == | f 1/1 A4"),
        [(300, 375), (375, 450), (450, 525), (525, 600), (600, 600)]
    );
}

#[test]
fn a_hairpin_without_a_goal_goes_one_step() {
    assert_eq!(levels("violin: p <= 1/2 D4 == >= E4 == | 1/1 F4"), [(300, 400), (400, 300), (300, 300)]);
}

#[test]
fn a_second_hairpin_does_not_pass_the_dynamic_that_the_first_was_taken_to_reach() {
    assert_eq!(
        levels("violin: mf <= 1/2 D4 == E4 | <= 1/1 F4 == | f G4"),
        [(500, 600), (600, 600), (600, 600), (600, 600)]
    );
    // A written f that grows to the next f passes it.
    assert_eq!(levels("violin: f <= 1/1 D4 == | f E4"), [(600, 700), (600, 600)]);
}

#[test]
fn a_hairpin_against_its_goal_goes_one_step_and_then_jumps() {
    // Growing, then suddenly soft.
    assert_eq!(levels("violin: mf <= 1/1 D4 == | pp E4"), [(500, 600), (200, 200)]);
}

#[test]
fn cresc_in_words_ends_at_the_next_dynamic() {
    assert_eq!(levels("violin: p \"cresc.\" 1/1 D4 | E4 | f F4"), [(300, 450), (450, 600), (600, 600)]);
}

#[test]
fn an_fp_is_loud_only_at_its_beginning() {
    assert_eq!(levels("violin: mf 1/2 D4 fp E4 | 1/1 F4"), [(500, 500), (600, 300), (300, 300)]);
}

#[test]
fn an_sf_leaves_the_level_alone() {
    let line = line("violin: p 1/2 D4 sf E4 | 1/1 F4");
    assert_eq!(line.strokes[1].level_end, Loudness(300));
    assert!(line.strokes[1].level_start > Loudness(300));
    assert_eq!(line.strokes[2].level_start, Loudness(300));
    assert!(line.strokes[1].emphasis.accent >= 90);
}

#[test]
fn a_niente_hairpin_reaches_silence() {
    assert_eq!(levels("violin: p >= 1/1 D4 ==o"), [(300, 0)]);
    assert_eq!(levels("violin: p <=o 1/1 D4 == | mf E4"), [(0, 500), (500, 500)]);
}

#[test]
fn everything_louder_or_softer_stays_between_ppp_and_fff_and_silence_is_silence() {
    let score = score("violin: p <= 1/4 D4 E4 F4 G4 == | f 1/2 A4 >= B4 ==o | ff sf 1/1 C5");
    let written = LoudnessCurve::new(&score, &score.parts[0], 1, &[0], &Profile::default());
    let at = |curve: &LoudnessCurve, quarters| curve.begun(Moment(Length::new(quarters, 4))).0;
    let [soft, loud] = [-2, 2].map(|steps| written.clone().louder(steps));
    assert_eq!([0, 2, 4].map(|quarters| at(&written, quarters)), [300, 450, 600]);
    assert_eq!([0, 2, 4].map(|quarters| at(&loud, quarters)), [500, 650, 800]);
    assert_eq!([0, 2, 4].map(|quarters| at(&soft, quarters)), [100, 250, 400]);
    let end = Moment(Length::new(2, 1));
    assert_eq!([&written, &soft, &loud].map(|curve| curve.reached(end).0), [0, 0, 0]);
    assert_eq!(loud.attack(end).map(|attack| attack.loudness.0), Some(800));
    assert_eq!(at(&written.clone().louder(0), 2), at(&written, 2));
}
