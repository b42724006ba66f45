use std::collections::BTreeSet;

use arcata_score::Score;
use proptest::collection::vec;
use proptest::prelude::*;

use super::*;
use crate::format::{read_breaks, write_breaks};

fn read(text: &str) -> Score {
    let text = arcata_testkit::musicxml(text).into_bytes();
    let document = arcata_xml::Document::parse(text, &Default::default()).unwrap();
    arcata_score::read(&document)
}

/// A part of bars of four quarters each, by their pitches.
fn part(name: &str, bars: &[[u8; 4]]) -> String {
    let note = |step: &u8| format!("{}{}", char::from(b'A' + step % 7), 4 + step / 7 % 2);
    let bar = |bar: &[u8; 4]| bar.iter().map(note).collect::<Vec<_>>().join(" ");
    let bars: Vec<String> = bars.iter().map(bar).collect();
    format!("{name}: 1/4 {}", bars.join(" | "))
}

fn of_part(pages: &[u32], lines: &[u32]) -> PartBreaks {
    PartBreaks { pages: pages.iter().copied().collect(), lines: lines.iter().copied().collect() }
}

fn asked_at(score: &Score, bar: u32, begins: BreakOpening) -> AskedBreaks {
    let mut asked = AskedBreaks::default();
    asked.ask(&Addresses::new(score), (0, bar), Some(begins)).unwrap();
    asked
}

/// Bars of which no two are alike: where all are, a break before one is as good as before another.
fn bars() -> impl Strategy<Value = Vec<[u8; 4]>> {
    let all_differ = |bars: &Vec<[u8; 4]>| bars.iter().collect::<BTreeSet<_>>().len() == bars.len();
    vec(prop::array::uniform4(0_u8..14), 20..46).prop_filter("two bars are alike", all_differ)
}

proptest! {
    #[test]
    fn a_break_stays_with_its_music_in_a_new_version_of_the_score(
        all in bars(), at in any::<prop::sample::Index>(), more in 0_usize..6, put in any::<prop::sample::Index>(),
        corrected in any::<prop::sample::Index>(),
    ) {
        let (more, bars) = all.split_at(more);
        let bars = bars.to_vec();
        let bar = 1 + at.index(bars.len() - 1);
        let asked = asked_at(&read(&part("viola", &bars)), u32::try_from(bar).unwrap(), BreakOpening::Page);
        let mut later = bars.clone();
        // Some bars more and a correction somewhere, though not both right there: that could be read in two ways.
        let put = put.index(bars.len());
        if put != bar {
            later[corrected.index(bars.len())][2] ^= 1;
        }
        later.splice(put..put, more.iter().copied());
        let there = if put <= bar { bar + more.len() } else { bar };
        let score = read(&part("viola", &later));
        let addresses = Addresses::new(&score);
        let there = u32::try_from(there).unwrap();
        prop_assert_eq!(asked.in_part(&addresses, 0), of_part(&[there], &[]));
        let carried = asked.carried(&addresses);
        prop_assert_eq!(carried.places(&addresses)[0].1, BreakPlace::Here(there));
        prop_assert!(carried.told(&addresses, Some(0)).is_empty());
    }

    #[test]
    fn what_was_asked_for_is_read_as_it_was_written(
        asked in vec((any::<String>(), any::<String>(), any::<u32>(), any::<bool>(), vec("[0-9a-f.-]{0,13}", 0..9)), 0..8),
    ) {
        let one = |(part, bar, bar_ordinal, page, around)| AskedBreak {
            part, bar, bar_ordinal, begins: if page { BreakOpening::Page } else { BreakOpening::Line }, around,
        };
        let mut asked = AskedBreaks { breaks: asked.into_iter().map(one).collect() };
        asked.put_in_order();
        prop_assert_eq!(read_breaks(&write_breaks(&asked)), Ok(asked));
    }

    #[test]
    fn no_text_stops_the_reader(text in ".{0,80}", cut in any::<prop::sample::Index>()) {
        let _ = read_breaks(&text);
        let whole = write_breaks(&asked_at(&read("viola: 1/1 C4 | D4 | E4"), 1, BreakOpening::Line));
        let cut = cut.index(whole.len() - 2);
        prop_assert!(read_breaks(whole.get(..cut).unwrap_or_default()).is_err());
    }
}

#[test]
fn other_music_is_told_and_what_was_asked_for_stays() {
    let asked = asked_at(&read("viola: 1/4 C4 D4 E4 F4 | G4 A4 B4 C5 | D5 E5 F5 G5"), 2, BreakOpening::Line);
    let other = read("viola: 1/8 C4 D4 E4 F4 G4 A4 B4 C5 | D5 E5 F5 G5 A4 B4 C5 C5 | 1/2 D5 C5");
    let addresses = Addresses::new(&other);
    assert_eq!(asked.places(&addresses)[0].1, BreakPlace::OtherMusic);
    assert_eq!(asked.in_part(&addresses, 0), PartBreaks::default());
    let told: Vec<String> =
        asked.told(&addresses, Some(0)).iter().map(|(said, _)| said.to_string()).collect();
    assert_eq!(told.len(), 1);
    assert!(told[0].contains("bar 3") && told[0].contains("is kept"), "{told:?}");
    assert_eq!(asked.carried(&addresses), asked);
    // Another instrument's score: the part is not there.
    let other = read("cello: 1/4 C3 D3 E3 F3 | G3 A3 B3 C3");
    let told = asked.told(&Addresses::new(&other), None);
    assert!(told[0].0.to_string().contains("viola") && told[0].1, "{told:?}");
}

#[test]
fn a_transposed_part_keeps_its_breaks() {
    let asked = asked_at(
        &read("viola: 1/4 C4 D4 1/2 E4 | 1/1 F4 | 1/4 G4 A4 B4 C5 | 1/2 D5 E5"),
        2,
        BreakOpening::Page,
    );
    let up = read("viola: 1/4 D4 E4 1/2 F#4 | 1/1 G4 | 1/4 A4 B4 C#5 D5 | 1/2 E5 F#5");
    assert_eq!(asked.in_part(&Addresses::new(&up), 0), of_part(&[2], &[]));
}

#[test]
fn asked_again_it_is_the_last_wish_that_counts() {
    let score = read("viola: 1/1 C4 | D4 | E4 | F4");
    let addresses = Addresses::new(&score);
    let mut asked = asked_at(&score, 2, BreakOpening::Line);
    asked.ask(&addresses, (0, 2), Some(BreakOpening::Page)).unwrap();
    assert_eq!(asked.in_part(&addresses, 0), of_part(&[2], &[]));
    asked.ask(&addresses, (0, 2), None).unwrap();
    assert!(asked.is_empty());
    for wrong in [(0, 0), (0, 9), (4, 1)] {
        assert!(asked.ask(&addresses, wrong, Some(BreakOpening::Page)).is_err(), "{wrong:?}");
    }
    assert!(asked.ask(&addresses, (0, 1), None).is_err());
}
