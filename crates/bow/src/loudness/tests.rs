use super::*;
use crate::lines::tests::{line, score};

/// Loudness at the beginning and end of each stroke.
fn levels(fixture: &str) -> Vec<(i32, i32)> {
    line(fixture).strokes.iter().map(|stroke| (stroke.level_start.0, stroke.level_end.0)).collect()
}

#[test]
fn mf_is_assumed_until_a_dynamic_is_written() {
    assert_eq!(levels("violin: d'2 p e'2"), [(500, 500), (300, 300)]);
    let score = score("violin: d'2 p e'2");
    let curve = LoudnessCurve::new(&score, &score.parts[0], 1, &[0], &Profile::default());
    assert_eq!(curve.written(Moment::START), Written::Assumed);
    assert_eq!(curve.written(Moment(Length::new(1, 2))), Written::InScore);
}

#[test]
fn a_hairpin_leads_in_a_straight_line_to_its_dynamic() {
    assert_eq!(
        levels("violin: p <= d'4 e' f' g' == | f a'1"),
        [(300, 375), (375, 450), (450, 525), (525, 600), (600, 600)]
    );
}

#[test]
fn a_hairpin_without_a_goal_goes_one_step() {
    assert_eq!(levels("violin: p <= d'2 == >= e'2 == | f'1"), [(300, 400), (400, 300), (300, 300)]);
}

#[test]
fn a_second_hairpin_does_not_pass_the_dynamic_that_the_first_was_taken_to_reach() {
    assert_eq!(
        levels("violin: mf <= d'2 == e'2 | <= f'1 == | f g'1"),
        [(500, 600), (600, 600), (600, 600), (600, 600)]
    );
    // A written f that grows to the next f passes it.
    assert_eq!(levels("violin: f <= d'1 == | f e'1"), [(600, 700), (600, 600)]);
}

#[test]
fn a_hairpin_against_its_goal_goes_one_step_and_then_jumps() {
    // Growing, then suddenly soft.
    assert_eq!(levels("violin: mf <= d'1 == | pp e'1"), [(500, 600), (200, 200)]);
}

#[test]
fn cresc_in_words_ends_at_the_next_dynamic() {
    assert_eq!(levels("violin: p \"cresc.\" d'1 | e'1 | f f'1"), [(300, 450), (450, 600), (600, 600)]);
}

#[test]
fn an_fp_is_loud_only_at_its_beginning() {
    assert_eq!(levels("violin: mf d'2 fp e'2 | f'1"), [(500, 500), (600, 300), (300, 300)]);
}

#[test]
fn an_sf_leaves_the_level_alone() {
    let line = line("violin: p d'2 sf e'2 | f'1");
    assert_eq!(line.strokes[1].level_end, Loudness(300));
    assert!(line.strokes[1].level_start > Loudness(300));
    assert_eq!(line.strokes[2].level_start, Loudness(300));
    assert!(line.strokes[1].emphasis.accent >= 90);
}

#[test]
fn a_niente_hairpin_reaches_silence() {
    assert_eq!(levels("violin: p >= d'1 ==o"), [(300, 0)]);
    assert_eq!(levels("violin: p <=o d'1 == | mf e'1"), [(0, 500), (500, 500)]);
}

#[test]
fn everything_louder_or_softer_stays_between_ppp_and_fff_and_silence_is_silence() {
    let score = score("violin: p <= d'4 e' f' g' == | f a'2 >= b' ==o | ff sf c''1");
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
