//! Reading, feature by feature.

use arcata_xml::{Document, Limits};

use crate::{Length, Score, read};

fn score_of(xml: &str) -> Score {
    read(&Document::parse(xml.as_bytes().to_vec(), &Limits::default()).expect("well-formed"))
}

#[test]
fn a_fixture_becomes_a_score() {
    let xml = arcata_testkit::musicxml("key D  quarter=96\nviolin: mf d'4 (e'8 f#') g'4 a'4 | b'1 |.");
    let score = score_of(&xml);
    assert_eq!(score.bars.len(), 2);
    assert_eq!(score.parts[0].notes.len(), 6);
    assert_eq!(score.parts[0].slurs.len(), 1);
    assert_eq!(score.bars[1].start.since_start(), Length::WHOLE);
    assert!(score.problems.is_empty(), "{:?}", score.problems);
}
