//! Bow marks written into a score and taken off again (MusicXML 4.0: types `note`, `notations`, `technical`).

use arcata_layer::{BowAddition, add_marks, remove_marks};
use arcata_score::{BowDirection, NoteId, Score};
use arcata_testkit::musicxml;
use arcata_xml::Document;
use proptest::prelude::*;

use crate::support::{document, edited, score_text};

const DOWN: BowDirection = BowDirection::Down;
const UP: BowDirection = BowDirection::Up;

/// The score with one note more or less changed, and what a bow over a note (by its index) makes of it.
fn with_bow(change: impl Fn(String) -> String, note: u32, direction: BowDirection) -> String {
    let document = document(&change(musicxml("violin: 1/4 C5 D5 rest F5")));
    let score = arcata_score::read(&document);
    let addition = BowAddition { part: 0, note: NoteId(note), direction };
    let edits = add_marks(&document, &score, &[addition]).expect("a place for a mark");
    String::from_utf8(document.apply(&edits).expect("edits that fit")).expect("text")
}

fn plain(text: &str) -> String {
    text.split_whitespace().collect()
}

#[test]
fn a_mark_joins_what_the_note_has() {
    let first =
        |inner: &'static str| move |text: String| text.replacen("</note>", &format!("{inner}</note>"), 1);
    for (has, wanted) in [
        ("", "<notations><technical><down-bow/></technical></notations></note>"),
        (
            "<notations><fermata/></notations>",
            "<notations><fermata/><technical><down-bow/></technical></notations></note>",
        ),
        (
            "<notations><technical><fingering>1</fingering></technical></notations>",
            "<notations><technical><fingering>1</fingering><down-bow/></technical></notations></note>",
        ),
        // An empty shell stays empty: what is put on must come off without a trace.
        ("<notations/>", "<notations/><notations><technical><down-bow/></technical></notations></note>"),
        (
            "<lyric><text>la</text></lyric>",
            "<notations><technical><down-bow/></technical></notations><lyric><text>la</text></lyric></note>",
        ),
    ] {
        let found = plain(&with_bow(first(has), 0, DOWN));
        assert!(found.contains(&plain(wanted)), "{has}: {found}");
    }
}

#[test]
fn the_other_bow_is_turned_and_keeps_its_attributes() {
    let printed = |text: String| {
        text.replacen(
            "</note>",
            r#"<notations><technical><up-bow placement="above"/></technical></notations></note>"#,
            1,
        )
    };
    let found = with_bow(printed, 0, DOWN);
    assert!(found.contains(r#"<down-bow placement="above"/>"#) && !found.contains("up-bow"), "{found}");
    let same = with_bow(printed, 0, UP);
    assert!(same.contains(r#"<up-bow placement="above"/>"#) && !same.contains("down-bow"), "{same}");
    let back = printed(musicxml("violin: 1/4 C5 D5 rest F5")).replace("up-bow", "down-bow");
    let turned = with_bow(|_| back.clone(), 0, UP);
    assert!(turned.contains(r#"<up-bow placement="above"/>"#), "{turned}");
}

#[test]
fn rests_strangers_and_notes_with_both_bows_take_none() {
    let same = |text: String| text;
    for note in [2, 99] {
        assert!(!with_bow(same, note, DOWN).contains("-bow"), "note {note}");
    }
    let both = |text: String| {
        text.replacen(
            "</note>",
            "<notations><technical><down-bow/><up-bow/></technical></notations></note>",
            1,
        )
    };
    assert_eq!(with_bow(both, 0, UP).matches("-bow").count(), 2);
}

/// All notes and rests of a score: a mark on each.
fn everywhere(score: &Score) -> Vec<BowAddition> {
    let of = |part: usize| (0_u32..).zip(&score.parts[part].notes).map(move |(note, _)| (part, note));
    let all = (0..score.parts.len()).flat_map(of);
    all.map(|(part, note)| BowAddition {
        part,
        note: NoteId(note),
        direction: if note % 3 == 0 { UP } else { DOWN },
    })
    .collect()
}

fn bows(document: &Document) -> usize {
    document.root().descendants().filter(|element| matches!(element.name(), "up-bow" | "down-bow")).count()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    /// Whatever marks were there: taken off they leave nothing, and marks put on a score without any come off without a trace.
    #[test]
    fn marks_come_off_without_a_trace(seed in any::<u64>(), bars in 1_usize..6) {
        let before = document(&score_text(seed, bars));
        let score = arcata_score::read(&before);
        let bare = edited(&before, &remove_marks(&before, &score, |_, _| true).expect("edits"));
        prop_assert_eq!(bows(&bare), 0);
        let score = arcata_score::read(&bare);
        let marked = edited(&bare, &add_marks(&bare, &score, &everywhere(&score)).expect("edits"));
        let score = arcata_score::read(&marked);
        let has_bow = |part: usize, note: NoteId| score.parts[part].note(note).bow_mark.is_some();
        prop_assert_eq!(bows(&marked), everywhere(&score).iter().filter(|one| has_bow(one.part, one.note)).count());
        let again = edited(&marked, &remove_marks(&marked, &score, |_, _| true).expect("edits"));
        prop_assert_eq!(again.bytes(), bare.bytes());
        // Who takes nothing off changes nothing.
        prop_assert!(remove_marks(&marked, &score, |_, _| false).expect("edits").is_empty());
    }
}
