use arcata_score::{Bar, BarKind, Barline, Place};
use arcata_xml::NodeId;

use super::*;

fn score(bars: u32, tempos: &[(i64, TempoKind)]) -> Score {
    let bar = |index: u32| Bar {
        label: (index + 1).to_string(),
        start: Moment(Length::new(i64::from(index), 1)),
        length: Length::WHOLE,
        kind: BarKind::Counted,
        left: Barline::default(),
        right: Barline::default(),
        rehearsal: None,
        jumps: Vec::new(),
    };
    let tempo = |(quarter, kind): &(i64, TempoKind)| Tempo {
        place: Place {
            at: Moment(Length::new(*quarter, 4)),
            bar: u32::try_from(quarter / 4).unwrap(),
            staff: 0,
            voice: None,
            node: NodeId(0),
        },
        kind: kind.clone(),
        text: String::new(),
    };
    Score {
        bars: (0..bars).map(bar).collect(),
        tempos: tempos.iter().map(tempo).collect(),
        ..Score::default()
    }
}

fn map(bars: u32, tempos: &[(i64, TempoKind)]) -> TempoMap {
    TempoMap::new(&score(bars, tempos), &Profile::default(), TempoChoice::Written)
}

fn quarter(number: i64) -> Moment {
    Moment(Length::new(number, 4))
}

fn marked(quarters: i64) -> TempoKind {
    TempoKind::Marked(Length::new(quarters, 1))
}

#[test]
fn a_metronome_mark_gives_exact_seconds() {
    let map = map(4, &[(0, marked(90))]);
    assert_eq!(map.between(quarter(0), quarter(3)), RealTime::from_micros(2_000_000));
    assert_eq!(map.at(Moment(Length::new(1, 12))), RealTime::from_micros(222_222));
    assert_eq!(map.written(quarter(0)), Written::InScore);
}

#[test]
fn without_any_tempo_a_hundred_quarters_are_assumed() {
    let map = map(4, &[]);
    assert_eq!(map.at(quarter(10)), RealTime::from_micros(6_000_000));
    assert_eq!(map.written(quarter(10)), Written::Assumed);
    assert_eq!(map.assumed(), Length::new(100, 1));
}

#[test]
fn time_before_the_first_mark_is_assumed_and_after_it_is_not() {
    let map = map(4, &[(4, marked(60))]);
    assert_eq!(map.at(quarter(5)), RealTime::from_micros(4 * 600_000 + 1_000_000));
    assert_eq!((map.written(quarter(3)), map.written(quarter(4))), (Written::Assumed, Written::InScore));
}

#[test]
fn a_word_beside_a_mark_yields_to_it() {
    let word = TempoKind::Word(Length::new(132, 1));
    for tempos in [[(0, word.clone()), (0, marked(60))], [(0, marked(60)), (0, word)]] {
        assert_eq!(map(2, &tempos).at(quarter(4)), RealTime::from_micros(4_000_000));
    }
}

#[test]
fn a_modulation_keeps_the_old_value() {
    // Quarter = dotted quarter at 60: the dotted quarter now takes a second, so a quarter 2/3 s.
    let modulation = TempoKind::Modulation(Length::QUARTER, Length::new(3, 8));
    let map = map(4, &[(0, marked(60)), (4, modulation)]);
    assert_eq!(map.between(quarter(4), quarter(7)), RealTime::from_micros(2_000_000));
}

#[test]
fn a_rit_arrives_at_the_profile_s_share_and_a_tempo_takes_up_what_was() {
    let map = map(8, &[(0, marked(60)), (4, TempoKind::Slowing), (8, TempoKind::Back(TempoBack::Previous))]);
    // The mean of 1 s and 1/0.7 s a quarter, over four quarters.
    let bar = map.between(quarter(4), quarter(8)).micros;
    assert!((bar - 4_857_142).abs() <= 2, "{bar}");
    assert_eq!(map.between(quarter(8), quarter(9)), RealTime::from_micros(1_000_000));
}

#[test]
fn an_accel_leads_to_the_faster_tempo_that_follows() {
    let map = map(8, &[(0, marked(60)), (4, TempoKind::Quickening), (8, marked(90))]);
    let bar = map.between(quarter(4), quarter(8)).micros;
    // The mean of 1 s and 2/3 s a quarter.
    assert!((bar - 3_333_333).abs() <= 2, "{bar}");
    let steps: Vec<Length> = (4..9).map(|number| map.quarters_a_minute(quarter(number))).collect();
    assert!(steps.is_sorted(), "{steps:?}");
}

#[test]
fn a_rit_without_an_end_is_over_after_the_profile_s_bars() {
    let map = map(20, &[(0, marked(60)), (4, TempoKind::Slowing)]);
    let far = map.between(quarter(40), quarter(41)).micros;
    assert!((far - 1_428_571).abs() <= 2, "{far}");
}

#[test]
fn time_never_runs_backwards() {
    let tempos = [
        (0, TempoKind::Word(Length::new(120, 1))),
        (3, TempoKind::Slowing),
        (5, TempoKind::Slowing),
        (6, TempoKind::Scaled(Length::new(4, 5))),
        (9, TempoKind::Quickening),
        (11, TempoKind::Back(TempoBack::First)),
        (12, TempoKind::Marked(Length::new(1, 1_000_000))),
        (13, TempoKind::Marked(Length::new(1_000_000, 1))),
        (14, TempoKind::Modulation(Length::ZERO, Length::ZERO)),
        (15, TempoKind::Scaled(Length::ZERO)),
    ];
    let map = map(8, &tempos);
    let mut before = RealTime::default();
    for step in 1..200 {
        let now = map.at(Moment(Length::new(step, 32)));
        assert!(now > before, "at {step}/32: {now:?} after {before:?}");
        before = now;
    }
}

#[test]
fn a_user_s_tempo_replaces_the_opening_or_everything() {
    let score = score(4, &[(0, marked(60)), (4, marked(120))]);
    let at = |choice| TempoMap::new(&score, &Profile::default(), choice).at(quarter(8)).micros;
    assert_eq!(at(TempoChoice::Written), 6_000_000);
    assert_eq!(at(TempoChoice::Opening(Length::new(120, 1))), 3_000_000);
    assert_eq!(at(TempoChoice::from(Some(60))), 8_000_000);
    assert_eq!(at(TempoChoice::Percent(50)), 12_000_000);
}
