//! Changes of the slurs that are offered: written into the file and planned from it anew, each costs what the offer says.
#![allow(clippy::expect_used, reason = "a fixture that is wrong must stop its test")]

mod support;

use arcata_bow::{LineOptions, Profile, Reading, all_lines, plan};
use arcata_review::{Piece, slur_offers};
use arcata_xml::{Document, EditList, Limits};

const MUSIC: [&str; 5] = [
    "quarter=96\nviolin: f (1/8 C5 D5 E5) F5 1/4 G5 A5 | (1/8 C5 D5 E5 F5) 1/4 G5 A5 | 1/1 C5 |||",
    "quarter=60\nviolin: p (1/4 C5 D5) (E5 F5) | 1/2 G5 (1/4 A5 G5) | 1/1 F5 |||",
    "quarter=120\nviola: mf 1/8 C4 D4 E4 F4 (G4 A4 B4) C5 | (3/8 C5 1/8 B4) 1/4 A4 G4 | 1/1 C4 |||",
    "quarter=72\ncello: f (1/4 C3 D3 E3 F3 | G3 A3) B3 C4 | 1/1 D4 |||",
    "quarter=88\nviolin: mf 1/4 C5 (1/2 D5 1/4 E5 | F5) 1/2 E5 1/4 D5 | 1/1 C5 |||",
];

#[test]
fn each_offer_costs_in_the_file_what_it_says() {
    let profile = Profile::default();
    let options = LineOptions::default();
    let mut checked = 0;
    for music in MUSIC {
        let read = support::Read::new(arcata_testkit::musicxml(music).into_bytes(), &profile);
        let piece = read.piece();
        let reading = Reading::new(piece.score, &profile, &options);
        let piece = Piece { reading: Some(&reading), ..piece };
        let before = piece.plans[0].total.total();
        for stroke in 0..piece.lines[0].strokes.len() {
            let offers = slur_offers(&piece, 0, stroke);
            let costs: Vec<i64> = offers
                .iter()
                .map(|offer| offer.cost_change.as_ref().map_or(0, arcata_bow::Cost::total))
                .collect();
            assert!(costs.is_sorted(), "the cheapest first: {costs:?}");
            for (offer, cost) in offers.iter().zip(costs) {
                let sentence = arcata_languages::Wording::default().say(&offer.sentence);
                assert!(sentence.ends_with('.'), "{sentence}");
                let edits = EditList::new(offer.edits.clone()).expect("edits that go together");
                let bytes = read.document.apply(&edits).expect("edits of this document");
                let changed = Document::parse(bytes, &Limits::default()).expect("a sound file");
                let score = arcata_score::read(&changed);
                assert!(score.parts[0].open_slurs.is_empty(), "{sentence}: a slur with one end");
                let lines = all_lines(&score, &profile, &options);
                let after = plan(&lines[0], &profile.plan_settings(lines[0].instrument)).total.total();
                assert_eq!(after - before, cost, "{music}\n{:?}", offer.sentence);
                checked += 1;
            }
        }
    }
    assert!(checked >= 40, "{checked} offers show little");
}

#[test]
fn nothing_is_offered_where_nothing_can_be_written() {
    let profile = Profile::default();
    let read = support::Read::new(arcata_testkit::musicxml(MUSIC[0]).into_bytes(), &profile);
    assert!(slur_offers(&read.piece(), 0, 0).is_empty(), "without a reading");
    let reading_options = LineOptions::default();
    let reading = Reading::new(read.piece().score, &profile, &reading_options);
    let piece = Piece { reading: Some(&reading), ..read.piece() };
    assert!(slur_offers(&piece, 7, 0).is_empty() && slur_offers(&piece, 0, 999).is_empty());
}

/// The slur of a grace note to its note is no bow: it is neither joined to a bow before it nor moved.
#[test]
fn the_slur_of_a_grace_note_stays() {
    let profile = Profile::default();
    let options = LineOptions::default();
    let musics = [
        "quarter=88\nviolin: mf 1/4 C5 (*D5 E5) F5 G5 | (C5 D5) (*F5 E5) F5 | 1/1 C5 |||",
        "quarter=88\nviolin: mf (1/4 C5 D5) (*F5 (E5)2 F5)2 | (C5 D5 *E5 F5) G5 | 1/1 C5 |||",
    ];
    let mut offered = 0;
    for music in musics {
        let Ok(fixture) = arcata_testkit::Fixture::parse(music) else { continue };
        let read = support::Read::new(fixture.musicxml().into_bytes(), &profile);
        let piece = read.piece();
        let reading = Reading::new(piece.score, &profile, &options);
        let piece = Piece { reading: Some(&reading), ..piece };
        let graces = |score: &arcata_score::Score| {
            let part = &score.parts[0];
            let ends = part.slurs.iter().map(|slur| (part.note(slur.start), part.note(slur.end)));
            ends.filter(|(start, end)| start.onset == end.onset)
                .map(|(start, _)| start.onset)
                .collect::<Vec<_>>()
        };
        let before = graces(piece.score);
        assert!(!before.is_empty(), "{music}");
        for stroke in 0..piece.lines[0].strokes.len() {
            for offer in slur_offers(&piece, 0, stroke) {
                let edits = EditList::new(offer.edits.clone()).expect("edits that go together");
                let bytes = read.document.apply(&edits).expect("edits of this document");
                let changed = Document::parse(bytes, &Limits::default()).expect("a sound file");
                assert_eq!(graces(&arcata_score::read(&changed)), before, "{music}\n{:?}", offer.sentence);
                offered += 1;
            }
        }
    }
    assert!(offered >= 5, "{offered} offers show little");
}
