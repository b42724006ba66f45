//! Hooks and retakes that a plan has settled, and both bows on one note.

use arcata_languages::Saying;
use arcata_layer::{
    Addresses, Entry, HookSign, Layer, LiftChoice, Mark, NamedNote, ToldBow, ToldBows, Trust, apply,
    apply_told, lift, shorthand, wipe,
};
use arcata_score::{BowDirection, NoteId, Score};
use arcata_testkit::musicxml;
use arcata_xml::Document;

use crate::support::{document, edited};

const QUARTERS: &str = "violin: 1/4 C5 D5 E5 F5";

fn scored(text: &str) -> (Document, Score) {
    let document = document(&musicxml(text));
    let score = arcata_score::read(&document);
    (document, score)
}

fn on(score: &Score, note: u32, mark: Mark) -> Entry {
    Entry::new(Addresses::new(score).place(0, NoteId(note)).expect("a note stands there"), mark)
}

fn layer(entries: Vec<Entry>) -> Layer {
    Layer { entries, ..Layer::default() }
}

/// A plan knows which way a hook goes and which note the stroke before begins with: both get the mark.
#[test]
fn a_hook_that_a_plan_has_settled_stands_on_both_strokes() {
    let (document, score) = scored("violin: (1/4 C5 D5) E5!down F5");
    let found = |note: u32| NamedNote { part: 0, note: NoteId(note) };
    for mark in [
        Mark::Hook { bow: None, sign: HookSign::Marks },
        Mark::Retake { bow: None },
        Mark::Hook { bow: Some(BowDirection::Up), sign: HookSign::Marks },
    ] {
        let hooked = layer(vec![on(&score, 2, mark)]);
        let mut told = ToldBows::default();
        told.tell(found(2), ToldBow { direction: BowDirection::Up, before: Some(NoteId(0)) });
        let applied = apply_told(&document, &score, &hooked, (&[], &told), Trust::OwnScore).unwrap();
        assert_eq!((applied.written, applied.left_out.len()), (1, 0));
        let marked = edited(&document, &applied.edits);
        let read = arcata_score::read(&marked);
        let bows: Vec<_> =
            read.parts[0].notes.iter().map(|note| note.bow_mark.map(|mark| mark.direction)).collect();
        assert_eq!(bows, [Some(BowDirection::Up), None, Some(BowDirection::Up), None]);
        // Through the file, once more onto the marked score, and off again.
        let kept = arcata_layer::read(arcata_layer::write(&applied.layer).as_bytes()).unwrap();
        assert_eq!(kept, applied.layer);
        assert!(apply(&marked, &read, &kept, &[], Trust::OwnScore).unwrap().edits.is_empty());
        let wiped = wipe(&marked, &read, &kept, Trust::OwnScore).unwrap();
        assert_eq!(edited(&marked, &wiped.edits).text(), document.text());
        // What was a hook and is a plain mark now gives the stroke before back.
        let mut plain = kept.clone();
        plain.entries[0].mark = Mark::Up;
        let again = apply(&marked, &read, &plain, &[], Trust::OwnScore).unwrap();
        let text = edited(&marked, &again.edits).text().to_owned();
        assert_eq!((text.matches("<up-bow/>").count(), again.layer.entries[0].before.is_none()), (1, true));
    }
}

#[test]
fn a_hook_that_cannot_be_says_why() {
    let (document, score) = scored(QUARTERS);
    let asked = vec![
        on(&score, 0, Mark::Down),
        on(&score, 1, Mark::Hook { bow: Some(BowDirection::Up), sign: HookSign::Marks }),
    ];
    let at = NamedNote { part: 0, note: NoteId(1) };
    let mut told = ToldBows::default();
    told.tell(at, ToldBow { direction: BowDirection::Up, before: Some(NoteId(0)) });
    let applied =
        apply_told(&document, &score, &layer(asked.clone()), (&[], &told), Trust::OwnScore).unwrap();
    assert!(
        applied.left_out[0].why.to_string().contains("asked to go the other way"),
        "{:?}",
        applied.left_out
    );
    told.refuse(at, Saying::as_it_is("no stroke begins there"));
    let applied = apply_told(&document, &score, &layer(asked), (&[], &told), Trust::OwnScore).unwrap();
    assert_eq!(applied.left_out[0].why.to_string(), "no stroke begins there");
}

/// Both bows on one note are one bowing; after the lift none is left.
#[test]
fn both_bows_on_a_note_are_lifted_applied_and_wiped_as_one() {
    for music in
        ["violin: 1/2 C5!fermata!down!up D5", "violin: 1/2 C5!up!down D5", "violin: 1/2 C5!down!>!up D5"]
    {
        let (document, score) = scored(music);
        let lifted = lift(&document, &score, &LiftChoice::default()).unwrap();
        assert!(lifted.staying.is_empty(), "{:?}", lifted.staying);
        let [entry] = lifted.layer.entries.as_slice() else { panic!("{:?}", lifted.layer.entries) };
        let first = score.parts[0].notes[0].bow_mark.unwrap().direction;
        assert_eq!(entry.mark, Mark::Double { first });
        let clean = edited(&document, &lifted.edits);
        assert!(!clean.text().contains("-bow"), "{}", clean.text());
        let kept = arcata_layer::read(arcata_layer::write(&lifted.layer).as_bytes()).unwrap();
        assert_eq!(kept, lifted.layer);
        let applied = apply(&clean, &arcata_score::read(&clean), &kept, &[], Trust::OwnScore).unwrap();
        let marked = edited(&clean, &applied.edits);
        assert_eq!(marked.text(), document.text());
        let wiped = wipe(&marked, &arcata_score::read(&marked), &applied.layer, Trust::OwnScore).unwrap();
        assert_eq!(edited(&marked, &wiped.edits).text(), clean.text());
    }
    // One bow printed gives way to both, and comes back.
    let (document, score) = scored("violin: 1/2 C5!up D5");
    let both = layer(vec![on(&score, 0, Mark::Double { first: BowDirection::Down })]);
    let applied = apply(&document, &score, &both, &[], Trust::OwnScore).unwrap();
    let marked = edited(&document, &applied.edits);
    let read = arcata_score::read(&marked);
    let note = &read.parts[0].notes[0];
    assert_eq!(note.bow_mark.unwrap().direction, BowDirection::Down);
    assert_eq!(note.more_bow_marks.len(), 1);
    let wiped = wipe(&marked, &read, &applied.layer, Trust::OwnScore).unwrap();
    assert_eq!(edited(&marked, &wiped.edits).text(), document.text());
}

#[test]
fn both_bows_are_typed_in_four_languages_and_print_back() {
    let (_, score) = scored("violin: 1/2 C5!fermata D5 | 1/1 E5");
    let addresses = Addresses::new(&score);
    for (typed, first) in [
        ("violin 1/1 down and up", BowDirection::Down),
        ("violin 1/1 giù e su", BowDirection::Down),
        ("violin 1/1 poussé et tiré", BowDirection::Up),
        ("violin 1/1 Auf und Ab", BowDirection::Up),
    ] {
        let (read, complaints) = shorthand::read(typed);
        let entered = shorthand::enter(&read, &addresses);
        assert!(complaints.is_empty() && entered.complaints.is_empty(), "{typed}: {:?}", entered.complaints);
        let [entry] = entered.entries.as_slice() else { panic!("{typed}: {:?}", entered.entries) };
        assert_eq!(entry.mark, Mark::Double { first }, "{typed}");
        let printed = shorthand::of_layer(&layer(entered.entries.clone()), &addresses).to_string();
        let way = if first == BowDirection::Down { "down and up" } else { "up and down" };
        assert_eq!(printed, format!("violin:\n1/1 {way}\n"));
    }
    // Two strokes in a row are another thing.
    let entered = shorthand::enter(&shorthand::read("violin 1/1 down up").0, &addresses);
    assert_eq!(entered.entries.len(), 2);
}
