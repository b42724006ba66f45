//! What a librarian is told of a layer before it goes onto a score, and hooks and retakes in the words of a plan.

use arcata_languages::Saying;
use arcata_layer::{
    Address, Addresses, Entry, HookSign, Layer, LayerRemarkKind, Mark, NamedNote, ToldBow, ToldBows, check,
    identity,
};
use arcata_score::{BowDirection, NoteId, Score};
use arcata_testkit::musicxml;
use arcata_xml::Document;

use crate::support::document;

const MUSIC: &str = "violin: 1/4 C5 (D5 E5) F5 | 1/4 G5_ G5 A5 B5";

fn scored() -> (Document, Score) {
    let document = document(&musicxml(MUSIC));
    let score = arcata_score::read(&document);
    (document, score)
}

fn at(score: &Score, note: u32) -> Address {
    Addresses::new(score).place(0, NoteId(note)).expect("a note stands there")
}

/// Kinds and sentences of what is remarked of some entries.
fn remarked(entries: impl Fn(&Score) -> Vec<Entry>) -> (Vec<LayerRemarkKind>, String) {
    let (document, score) = scored();
    let layer = Layer { entries: entries(&score), ..Layer::default() };
    let remarks = check(&layer, &document, &score);
    let addresses = Addresses::new(&score);
    let said: Vec<String> = remarks.iter().map(|remark| remark.said(&addresses)).collect();
    for (remark, said) in remarks.iter().zip(&said) {
        let plain = remark.to_string();
        assert!(plain.ends_with(&remark.message.to_string()) && said.ends_with(&remark.message.to_string()));
    }
    (remarks.iter().map(|remark| remark.kind).collect(), said.join("\n"))
}

fn one(note: u32, mark: Mark) -> impl Fn(&Score) -> Vec<Entry> {
    move |score| vec![Entry::new(at(score, note), mark.clone())]
}

#[test]
fn what_makes_sense_is_not_remarked() {
    for (note, mark) in [(0, Mark::Down), (1, Mark::Up), (3, Mark::Retake { bow: None }), (6, Mark::Lift)] {
        assert_eq!(remarked(one(note, mark)).0, [] as [LayerRemarkKind; 0]);
    }
}

#[test]
fn what_cannot_be_or_says_two_things_is_told_with_its_place() {
    let hook = Mark::Hook { bow: None, sign: HookSign::Marks };
    for (note, mark, kind, place) in [
        (2, Mark::Up, LayerRemarkKind::InsideSlur, "bar 1, beat 3"),
        (5, Mark::Down, LayerRemarkKind::TiedOver, "bar 2, beat 2"),
        (0, hook, LayerRemarkKind::NothingBefore, "bar 1, beat 1"),
    ] {
        let (kinds, said) = remarked(one(note, mark));
        assert_eq!(kinds, [kind], "{said}");
        assert!(said.contains(place), "{said}");
    }
    let (kinds, said) = remarked(|score| vec![Entry::new(at(score, 3), Mark::Up); 2]);
    assert_eq!(kinds, [LayerRemarkKind::Double], "{said}");
    let (kinds, said) =
        remarked(|score| vec![Entry::new(at(score, 3), Mark::Up), Entry::new(at(score, 3), Mark::Down)]);
    assert!(kinds.contains(&LayerRemarkKind::Contradiction), "{said}");
    let (kinds, said) = remarked(|score| {
        let mut gone = at(score, 3);
        gone.spot.bar = "9".to_owned();
        vec![Entry::new(gone, Mark::Up)]
    });
    assert_eq!(kinds, [LayerRemarkKind::NoNote], "{said}");
    let (kinds, said) = remarked(|score| {
        let mut to = at(score, 7).spot;
        to.bar = "9".to_owned();
        vec![Entry::new(at(score, 6), Mark::SlurAdded { to })]
    });
    assert_eq!(kinds, [LayerRemarkKind::SlurEnd], "{said}");
}

#[test]
fn a_layer_of_other_music_is_told() {
    let (document, score) = scored();
    let other = crate::support::document(&musicxml("cello: 1/1 C3 | 1/1 D3 | 1/1 E3 | 1/1 F3"));
    let layer = Layer { score: identity::of(&other, &arcata_score::read(&other)), ..Layer::default() };
    let kinds: Vec<_> = check(&layer, &document, &score).into_iter().map(|remark| remark.kind).collect();
    assert_eq!(kinds, [LayerRemarkKind::OtherScore]);
}

#[test]
fn hooks_and_retakes_are_spelt_out_as_a_plan_has_settled_them() {
    let (_, score) = scored();
    let addresses = Addresses::new(&score);
    let named = |note: u32| NamedNote { part: 0, note: NoteId(note) };
    let hook = Mark::Hook { bow: None, sign: HookSign::Marks };
    let retake = Mark::Retake { bow: None };
    let entries = vec![
        Entry::new(at(&score, 3), hook.clone()),
        Entry::new(at(&score, 6), retake),
        Entry::new(at(&score, 7), hook),
    ];
    let layer = Layer { entries, ..Layer::default() };
    let mut told = ToldBows::default();
    let up = ToldBow { direction: BowDirection::Up, before: Some(NoteId(1)) };
    told.tell(named(3), up);
    told.tell(named(6), ToldBow { direction: BowDirection::Down, before: None });
    told.refuse(named(7), Saying::new("doubt-moved"));
    assert_eq!(told.of(named(3)), Some(Ok(up)));
    assert!(matches!(told.of(named(7)), Some(Err(_))) && told.of(named(0)).is_none());
    let marks: Vec<(String, Mark)> = told
        .spelt_out(&layer, &addresses)
        .entries
        .into_iter()
        .map(|entry| (addresses.said(&entry.place), entry.mark))
        .collect();
    // The note under which the stroke before begins gets its mark; what was refused stays as it was.
    let up = Some(BowDirection::Up);
    let wanted = [
        Mark::Up,
        Mark::Hook { bow: up, sign: HookSign::Marks },
        Mark::Retake { bow: Some(BowDirection::Down) },
        Mark::Hook { bow: None, sign: HookSign::Marks },
    ];
    assert_eq!(marks.iter().map(|(_, mark)| mark.clone()).collect::<Vec<_>>(), wanted, "{marks:?}");
    assert!(marks[0].0.contains("bar 1, beat 2"), "{marks:?}");
}
