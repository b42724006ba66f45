//! Hooks that are a slur with dots or dashes: asked for, kept in a file, written, read back as one stroke, and gone
//! without a trace.

use arcata_bow::{LineOptions, Profile, StrokeKind};
use arcata_languages::Saying;
use arcata_layer::{
    Addresses, Applied, Entry, EntryState, HookSign, Layer, LayerRemarkKind, LiftChoice, LiftKind, Mark,
    NamedNote, ToldBow, ToldBows, Trust, apply, apply_told, check, lift, shorthand, wipe,
};
use arcata_score::{BowDirection, NoteId, Score};
use arcata_testkit::musicxml;
use arcata_xml::Document;

use crate::support::{document, edited};

fn scored(text: &str) -> (Document, Score) {
    let document = document(&musicxml(text));
    let score = arcata_score::read(&document);
    (document, score)
}

/// A layer as it comes out of a file after it was typed.
fn typed(score: &Score, text: &str) -> Layer {
    let addresses = Addresses::new(score);
    let (read, complaints) = shorthand::read(text);
    let entered = shorthand::enter(&read, &addresses);
    assert!(complaints.is_empty() && entered.complaints.is_empty(), "{text}: {:?}", entered.complaints);
    let mut layer = Layer { parts: addresses.part_keys().to_vec(), ..Layer::default() };
    shorthand::put(&mut layer, &entered);
    saved(&layer)
}

fn saved(layer: &Layer) -> Layer {
    arcata_layer::read(arcata_layer::write(layer).as_bytes()).expect("what is written is read")
}

/// Put on: once, through the file, once more, and off again without a trace.
fn put_on(document: &Document, score: &Score, layer: &Layer) -> (Document, Applied) {
    let applied = apply(document, score, layer, &[], Trust::OwnScore).expect("the layer is of this score");
    let marked = edited(document, &applied.edits);
    let read = arcata_score::read(&marked);
    let kept = saved(&applied.layer);
    assert_eq!(kept, applied.layer);
    let again = apply(&marked, &read, &kept, &[], Trust::OwnScore).expect("the layer is of this score");
    assert!(again.edits.is_empty(), "{:?}", again.edits);
    assert_eq!(again.layer, kept);
    let wiped = wipe(&marked, &read, &kept, Trust::OwnScore).expect("the layer is of this score");
    assert_eq!(edited(&marked, &wiped.edits).text(), document.text());
    (marked, applied)
}

/// Kind, count of notes and printed bow of each stroke.
fn strokes(document: &Document) -> Vec<(StrokeKind, u16, Option<BowDirection>)> {
    let score = arcata_score::read(document);
    let lines = arcata_bow::lines(&score, 0, &Profile::default(), &LineOptions::default());
    let [line] = lines.as_slice() else { panic!("{} lines", lines.len()) };
    line.strokes.iter().map(|stroke| (stroke.kind, stroke.note_count, stroke.printed)).collect()
}

fn count(document: &Document, text: &str) -> usize {
    document.text().matches(text).count()
}

#[test]
fn a_hook_with_dots_or_dashes_is_one_stroke_on_paper() {
    let (document, score) = scored("violin: 1/4 C5 D5 E5 F5");
    for (text, sign) in [("violin 1/3 hook dots", "<staccato/>"), ("violin 1/3 hook dashes", "<tenuto/>")] {
        let layer = typed(&score, text);
        let printed = shorthand::of_layer(&layer, &Addresses::new(&score)).to_string();
        assert_eq!(printed, format!("violin:\n{}\n", text.trim_start_matches("violin ")));
        let (marked, applied) = put_on(&document, &score, &layer);
        assert_eq!((applied.written, applied.left_out.len()), (1, 0));
        assert_eq!((count(&marked, "<slur "), count(&marked, sign), count(&marked, "-bow")), (2, 2, 0));
        let kinds: Vec<_> = strokes(&marked).into_iter().map(|(kind, notes, _)| (kind, notes)).collect();
        assert_eq!(kinds, [(StrokeKind::Single, 1), (StrokeKind::Pulsed, 2), (StrokeKind::Single, 1)]);
        assert!(check(&applied.layer, &marked, &arcata_score::read(&marked)).is_empty());
    }
}

/// One slur over all that go on from each other: slurs that meet on a note would be two bows.
#[test]
fn hooks_in_a_row_share_one_slur() {
    let (document, score) = scored("violin: 1/4 C5 D5 E5 F5 | 1/1 G5");
    let layer = typed(&score, "violin 1/2 hook 3 dashes up");
    let (marked, applied) = put_on(&document, &score, &layer);
    assert_eq!((applied.written, applied.left_out.len()), (3, 0));
    assert_eq!((count(&marked, "<slur "), count(&marked, "<tenuto/>"), count(&marked, "-bow")), (2, 3, 1));
    let up = Some(BowDirection::Up);
    let told = strokes(&marked);
    assert_eq!(told[1], (StrokeKind::Pulsed, 3, up));
    assert_eq!(told.len(), 3);
}

/// The direction stands on the first of the two, once; what was printed there gives way and comes back.
#[test]
fn a_direction_stands_where_the_slur_begins() {
    for (music, ups) in [
        ("violin: 1/4 C5 D5 E5 F5", 1),
        ("violin: 1/4 C5 D5!up E5 F5", 1),
        ("violin: 1/4 C5 D5!down E5!up F5", 1),
        ("violin: 1/4 C5 D5!down E5 F5!up", 2),
    ] {
        let (document, score) = scored(music);
        let (marked, applied) = put_on(&document, &score, &typed(&score, "violin 1/3 hook dots up"));
        assert_eq!(applied.left_out.len(), 0, "{music}");
        assert_eq!((count(&marked, "<up-bow/>"), count(&marked, "<down-bow/>")), (ups, 0), "{music}");
        assert_eq!(strokes(&marked)[1], (StrokeKind::Pulsed, 2, Some(BowDirection::Up)), "{music}");
    }
    // Without a direction the printed one of the first note holds, and that of the hooked note goes.
    let (document, score) = scored("violin: 1/4 C5 D5!down E5!up F5");
    let (marked, _) = put_on(&document, &score, &typed(&score, "violin 1/3 hook dots"));
    assert_eq!(strokes(&marked)[1], (StrokeKind::Pulsed, 2, Some(BowDirection::Down)));
}

#[test]
fn what_carries_a_dot_already_gets_no_second_one_and_ties_are_one_note() {
    let (document, score) = scored("violin: 1/4 C5 D5!. E5 F5");
    let (marked, _) = put_on(&document, &score, &typed(&score, "violin 1/3 hook dots"));
    assert_eq!(count(&marked, "<staccato/>"), 2);
    let (document, score) = scored("violin: 1/2 C5_ 1/4 C5 D5_ | D5 3/4 E5");
    let (marked, applied) = put_on(&document, &score, &typed(&score, "violin 1/4 hook dashes"));
    assert!(applied.left_out.is_empty(), "{:?}", applied.left_out);
    let read = arcata_score::read(&marked);
    let slurs: Vec<_> = read.parts[0].slurs.iter().map(|slur| (slur.start.0, slur.end.0)).collect();
    assert_eq!(slurs, [(0, 3)]);
    assert_eq!(strokes(&marked)[0].0, StrokeKind::Pulsed);
    // All of it printed: nothing is written, and a wipe leaves it.
    let (document, score) = scored("violin: 1/4 C5 (D5!. E5!.) F5");
    let hook = Mark::Hook { bow: None, sign: HookSign::Dots };
    let place = Addresses::new(&score).place(0, NoteId(2)).unwrap();
    let layer = Layer { entries: vec![Entry::new(place, hook)], ..Layer::default() };
    let (_, applied) = put_on(&document, &score, &layer);
    assert_eq!((applied.standing, applied.layer.entries[0].state), (1, EntryState::Printed));
}

#[test]
fn a_hook_under_a_slur_that_cannot_be_says_why_and_what_to_do() {
    for (music, text, why) in [
        (
            "violin: (1/4 C5 D5) E5 F5",
            "violin 1/3 hook dots",
            "the slur from bar 1, beat 1, C5 to bar 1, beat 2, D5",
        ),
        (
            "violin: 1/4 C5 D5 (E5 F5)",
            "violin 1/3 hook dots",
            "covers or touches its notes; take that slur off",
        ),
        ("violin: 1/4 C5 rest E5 F5", "violin 1/3 hook dots", "write the hook as marks"),
        ("violin: 1/4 C5 D5 E5 F5", "violin 1/1 hook dots", "no note comes before it"),
        ("violin: 1/4 C5 D5 E5 F5", "violin 1/2 down, 1/3 hook dots up", "asked to go the other way"),
        ("violin: 1/4 C5 D5 E5 F5", "violin 1/2 as it comes, 1/3 hook dots up", "take one of the two out"),
        ("violin: 1/4 C5 D5 E5 F5", "violin 1/2 hook dots, 1/3 hook dashes", "hooked with the other sign"),
        ("violin: 1/4 C5 D5 E5 F5", "violin 1/3 hook dots up, 1/4 hook dots down", "goes the other way"),
        ("violin: 1/4 C5 (D5 E5) F5", "violin 1/2-/3 no slur, 1/3 hook dots", "would draw it again"),
        ("violin: 1/4 C5 D5 E5 F5", "violin 1/3-/4 slur, 1/3 hook dots", "the slur from bar 1, beat 3"),
    ] {
        let (document, score) = scored(music);
        let addresses = Addresses::new(&score);
        let entered = shorthand::enter(&shorthand::read(text).0, &addresses);
        let mut layer = Layer { parts: addresses.part_keys().to_vec(), ..Layer::default() };
        shorthand::put(&mut layer, &entered);
        let (_, applied) = put_on(&document, &score, &layer);
        let [left] = applied.left_out.as_slice() else { panic!("{text}: {:?}", applied.left_out) };
        assert!(left.why.to_string().contains(why), "{text}: {left}");
        let remarks = check(&layer, &document, &score);
        assert!(remarks.iter().any(|remark| remark.kind == LayerRemarkKind::HookSlur), "{text}: {remarks:?}");
    }
    // A plan knows strokes that are not in the notes.
    let (document, score) = scored("violin: 1/4 C5 D5 E5 F5");
    let layer = typed(&score, "violin 1/3 hook dots");
    let mut told = ToldBows::default();
    told.refuse(NamedNote { part: 0, note: NoteId(2) }, Saying::as_it_is("no stroke begins there"));
    let applied = apply_told(&document, &score, &layer, (&[], &told), Trust::OwnScore).unwrap();
    assert_eq!(applied.left_out[0].why.to_string(), "no stroke begins there");
}

/// A hook by marks behind one by a slur: its stroke before begins where the slur begins.
#[test]
fn a_mark_behind_the_slur_of_a_hook_stands_where_the_slur_begins() {
    let (document, score) = scored("violin: 1/4 C5 D5 E5 F5");
    let layer = typed(&score, "violin 1/2 hook dots, 1/3 hook");
    let mut told = ToldBows::default();
    let bow = ToldBow { direction: BowDirection::Up, before: Some(NoteId(1)) };
    told.tell(NamedNote { part: 0, note: NoteId(2) }, bow);
    let applied = apply_told(&document, &score, &layer, (&[], &told), Trust::OwnScore).unwrap();
    assert!(applied.left_out.is_empty(), "{:?}", applied.left_out);
    let marked = edited(&document, &applied.edits);
    let up = Some(BowDirection::Up);
    let told: Vec<_> = strokes(&marked).into_iter().map(|(_, notes, printed)| (notes, printed)).collect();
    assert_eq!(told, [(2, up), (1, up), (1, None)]);
    let wiped = wipe(&marked, &arcata_score::read(&marked), &applied.layer, Trust::OwnScore).unwrap();
    assert_eq!(edited(&marked, &wiped.edits).text(), document.text());
}

/// What the layer no longer asks for goes, though the layer stays on the score.
#[test]
fn a_hook_that_changes_its_sign_on_the_score_is_written_anew() {
    let (document, score) = scored("violin: 1/4 C5 D5 E5 F5");
    let (marked, applied) = put_on(&document, &score, &typed(&score, "violin 1/2 hook 3 dots"));
    let read = arcata_score::read(&marked);
    for (text, slurs, dots, dashes) in [
        ("violin 1/3 hook dashes, 1/4 hook dashes", 2, 0, 3),
        ("violin 1/4 up", 2, 2, 0),
        ("violin 1/3 down", 2, 2, 0),
    ] {
        let mut layer = applied.layer.clone();
        let entered = shorthand::enter(&shorthand::read(text).0, &Addresses::new(&read));
        shorthand::put(&mut layer, &entered);
        let again = apply(&marked, &read, &layer, &[], Trust::OwnScore).unwrap();
        let changed = edited(&marked, &again.edits);
        let counts =
            (count(&changed, "<slur "), count(&changed, "<staccato/>"), count(&changed, "<tenuto/>"));
        assert_eq!(counts, (slurs, dots, dashes), "{text}");
        let wiped = wipe(&changed, &arcata_score::read(&changed), &again.layer, Trust::OwnScore).unwrap();
        assert_eq!(edited(&changed, &wiped.edits).text(), document.text(), "{text}");
    }
}

/// Lifted again the slur is a slur and the dots are notation: put on they give the same file.
#[test]
fn a_bowed_score_with_such_a_hook_is_lifted_like_any_other() {
    let (document, score) = scored("violin: 1/4 C5 D5 E5 F5");
    let (marked, _) = put_on(&document, &score, &typed(&score, "violin 1/3 hook dots up"));
    let choice = LiftChoice { parts: None, kinds: vec![LiftKind::Bows, LiftKind::Slurs] };
    let lifted = lift(&marked, &arcata_score::read(&marked), &choice).unwrap();
    assert!(lifted.staying.is_empty());
    let clean = edited(&marked, &lifted.edits);
    let (again, _) = put_on(&clean, &arcata_score::read(&clean), &lifted.layer);
    assert_eq!(again.text(), marked.text());
}
