use arcata_score::BeatGroup;

use super::*;
use crate::lines::tests::line;

fn places(meter: &Meter, unit: i64) -> String {
    let grid = MetricGrid::new(meter);
    let bar = grid.bar_length.in_units_of(Length::new(1, unit)).unwrap().floor();
    (0..bar)
        .map(|position| match grid.at(Length::new(position, unit)).0 {
            MetricPlace::Downbeat => 'D',
            MetricPlace::MidBar => 'M',
            MetricPlace::Beat => 'b',
            MetricPlace::Offbeat => '.',
        })
        .collect()
}

#[test]
fn simple_compound_cut_and_additive_bars_have_their_beats() {
    assert_eq!(places(&Meter::simple(4, 4), 8), "D.b.M.b.");
    assert_eq!(places(&Meter::simple(3, 4), 8), "D.b.b.");
    assert_eq!(places(&Meter::simple(2, 4), 8), "D.M.");
    assert_eq!(places(&Meter::simple(6, 8), 8), "D..M..");
    assert_eq!(places(&Meter::simple(9, 8), 8), "D..b..b..");
    assert_eq!(places(&Meter::simple(12, 8), 8), "D..b..M..b..");
    assert_eq!(places(&Meter::simple(3, 8), 8), "Dbb");
    let cut = Meter { symbol: MeterSymbol::Cut, ..Meter::simple(2, 2) };
    assert_eq!(places(&cut, 4), "D.M.");
    let group = |count, unit| BeatGroup { count, unit };
    let additive =
        Meter { groups: vec![group(3, 8), group(2, 8), group(2, 8)], symbol: MeterSymbol::Numbers };
    assert_eq!(places(&additive, 8), "D..M.M.");
    let quarters = Meter { groups: vec![group(3, 4), group(2, 4)], symbol: MeterSymbol::Numbers };
    assert_eq!(places(&quarters, 4), "DbbMb");
}

#[test]
fn parts_of_a_beat_are_stronger_than_what_lies_between_them() {
    let grid = MetricGrid::new(&Meter::simple(6, 8));
    assert_eq!(grid.at(Length::new(1, 8)).1, DIVISION);
    assert_eq!(grid.at(Length::new(1, 16)).1, FINER);
    assert_eq!(MetricGrid::new(&Meter::simple(4, 4)).at(Length::new(1, 8)).1, DIVISION);
}

/// Place and strength of each stroke.
fn told(fixture: &str) -> Vec<(MetricPlace, u16)> {
    line(fixture).strokes.iter().map(|stroke| (stroke.emphasis.metric, stroke.emphasis.strength)).collect()
}

#[test]
fn a_pickup_is_counted_from_the_end_of_its_bar_and_is_weak() {
    let told = told("time 3/4\npickup\nviolin: 1/4 D4 | 3/4 E4");
    assert_eq!(told[0], (MetricPlace::Beat, BEAT / 2));
    assert_eq!(told[1].0, MetricPlace::Downbeat);
}

#[test]
fn a_syncopation_is_weaker_than_its_place() {
    let told = told("violin: 1/4 D4 1/2 E4 1/4 F4");
    assert_eq!(told[0], (MetricPlace::Downbeat, DOWNBEAT));
    // Beat 2 held over the middle of the bar; twice as long as the note before.
    assert_eq!(told[1], (MetricPlace::Beat, BEAT - DIVISION + 15));
    assert_eq!(told[2], (MetricPlace::Beat, BEAT));
}

#[test]
fn accents_chords_and_sudden_loudness_raise_a_beat() {
    let plain = told("violin: p 1/2 D4 E4")[1].1;
    for stronger in [
        "violin: p 1/2 D4 E4!>",
        "violin: p 1/2 D4 G3+D4+B4",
        "violin: p 1/2 D4 f E4",
        "violin: p 1/2 D4 sf E4",
    ] {
        assert!(told(stronger)[1].1 > plain, "{stronger}");
    }
}

#[test]
fn a_rehearsal_mark_raises_its_downbeat() {
    assert_eq!(told("violin: 1/1 D4 | [A] E4")[1].1, DOWNBEAT + 20);
}
