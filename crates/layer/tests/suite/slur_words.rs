//! What layers say of one slur: contradictions within a layer are told, of two layers the upper one holds.

use arcata_layer::{
    Addresses, Entry, EntryState, Layer, LayerRemarkKind, Mark, Spot, Trust, apply, check, wipe,
};
use arcata_score::{NoteId, Score};
use arcata_testkit::musicxml;
use arcata_xml::Document;

use crate::support::{document, edited};

fn scored(text: &str) -> (Document, Score) {
    let document = document(&musicxml(text));
    let score = arcata_score::read(&document);
    (document, score)
}

fn spot(score: &Score, note: u32) -> Spot {
    Addresses::new(score).spot(0, NoteId(note)).expect("a note stands there")
}

/// As somebody writes it by hand, who leaves out what needs no saying.
fn by_hand(score: &Score, note: u32) -> Spot {
    let full = spot(score, note);
    Spot::new(&full.bar, full.offset)
}

fn on(score: &Score, note: u32, mark: Mark) -> Entry {
    Entry::new(Addresses::new(score).place(0, NoteId(note)).expect("a note stands there"), mark)
}

fn added(score: &Score, from: u32, to: u32) -> Entry {
    on(score, from, Mark::SlurAdded { to: spot(score, to) })
}

fn removed(score: &Score, from: u32, to: u32) -> Entry {
    on(score, from, Mark::SlurRemoved { to: spot(score, to) })
}

fn moved(score: &Score, (from, to): (u32, u32), end: u32) -> Entry {
    let mark = Mark::SlurMoved { to: spot(score, to), new_from: None, new_to: Some(spot(score, end)) };
    on(score, from, mark)
}

fn layer(entries: Vec<Entry>) -> Layer {
    Layer { entries, ..Layer::default() }
}

fn slurs(document: &Document) -> Vec<(u32, u32)> {
    let score = arcata_score::read(document);
    score.parts[0].slurs.iter().map(|slur| (slur.start.0, slur.end.0)).collect()
}

const SLURRED: &str = "violin: (1/4 C5 D5 E5) F5 | (G5 A5) B5 C6";

/// Whatever the order, and however the notes are named: neither is applied, both are told.
#[test]
fn a_layer_that_says_two_things_of_one_slur_is_told_both() {
    let (document, score) = scored(SLURRED);
    let hand = |mark: &dyn Fn(Spot) -> Mark, note: u32| on(&score, 0, mark(by_hand(&score, note)));
    for pair in [
        vec![removed(&score, 0, 2), added(&score, 0, 2)],
        vec![removed(&score, 0, 2), hand(&|to| Mark::SlurAdded { to }, 2)],
        vec![removed(&score, 0, 2), moved(&score, (0, 2), 3)],
        vec![hand(&|to| Mark::SlurRemoved { to }, 2), moved(&score, (0, 2), 3)],
        vec![added(&score, 0, 3), moved(&score, (0, 2), 3)],
        vec![
            removed(&score, 4, 5),
            on(&score, 0, {
                let (to, new_to) = (spot(&score, 2), Some(spot(&score, 5)));
                Mark::SlurMoved { to, new_from: Some(spot(&score, 4)), new_to }
            }),
        ],
    ] {
        let turned: Vec<Entry> = pair.iter().rev().cloned().collect();
        for entries in [pair, turned] {
            let said = layer(entries);
            let applied = apply(&document, &score, &said, &[], Trust::OwnScore).unwrap();
            assert!(applied.edits.is_empty(), "{:?}", said.entries);
            assert_eq!(applied.left_out.len(), 2, "{:?}", said.entries);
            assert!(
                applied.left_out.iter().all(|left| left.why.to_string().contains("keep one")),
                "{:?}",
                applied.left_out
            );
            let kinds: Vec<_> = check(&said, &document, &score).iter().map(|remark| remark.kind).collect();
            assert_eq!(kinds, [LayerRemarkKind::Contradiction, LayerRemarkKind::Contradiction]);
        }
    }
}

#[test]
fn a_slur_asked_for_twice_is_drawn_once() {
    let (document, score) = scored(SLURRED);
    let twice = layer(vec![added(&score, 4, 6), on(&score, 4, Mark::SlurAdded { to: by_hand(&score, 6) })]);
    let applied = apply(&document, &score, &twice, &[], Trust::OwnScore).unwrap();
    assert_eq!((applied.written, applied.standing, applied.left_out.len()), (1, 1, 0));
    let marked = edited(&document, &applied.edits);
    assert_eq!(slurs(&marked).iter().filter(|slur| **slur == (4, 6)).count(), 1);
    let read = arcata_score::read(&marked);
    assert!(apply(&marked, &read, &applied.layer, &[], Trust::OwnScore).unwrap().edits.is_empty());
    let wiped = wipe(&marked, &read, &applied.layer, Trust::OwnScore).unwrap();
    assert_eq!(edited(&marked, &wiped.edits).text(), document.text());
}

/// Puts layers on one over the other, twice over, and takes them off: what stands then, what of it was overruled.
fn one_over_the_other(clean: &Document, layers: &[Layer]) -> (Vec<(u32, u32)>, Vec<String>, Vec<Layer>) {
    let mut layers = layers.to_vec();
    let mut document = edited(clean, &arcata_xml::EditList::default());
    let mut known: Option<(String, Vec<String>)> = None;
    for _ in 0..3 {
        let mut told = Vec::new();
        for index in 0..layers.len() {
            let score = arcata_score::read(&document);
            let (below, above) = layers.split_at(index);
            let applied = apply(&document, &score, &above[0], below, Trust::OwnScore)
                .expect("the layer is of this score");
            assert!(applied.left_out.is_empty(), "{:?}", applied.left_out);
            told.extend(applied.overruled.iter().map(ToString::to_string));
            document = edited(&document, &applied.edits);
            layers[index] = applied.layer;
        }
        let now = (document.text().to_owned(), told);
        assert!(known.as_ref().is_none_or(|known| *known == now), "{known:?} {now:?}");
        known = Some(now);
    }
    let (found, kept) = (slurs(&document), layers.clone());
    for layer in layers.iter().rev() {
        let score = arcata_score::read(&document);
        document = edited(
            &document,
            &wipe(&document, &score, layer, Trust::OwnScore).expect("the layer is of this score").edits,
        );
    }
    assert_eq!(document.text(), clean.text());
    (found, known.map(|(_, told)| told).unwrap_or_default(), kept)
}

#[test]
fn of_two_layers_the_upper_one_holds_and_says_so() {
    let text = musicxml(SLURRED).replacen("<slur ", "<slur color=\"#FF0000\" ", 1);
    let clean = document(&text);
    let score = arcata_score::read(&clean);
    let both = |one: Entry, other: Entry| one_over_the_other(&clean, &[layer(vec![one]), layer(vec![other])]);
    // Taken off below, drawn above.
    let (found, told, _) = both(removed(&score, 0, 2), added(&score, 0, 2));
    assert_eq!(found, [(0, 2), (4, 5)]);
    assert_eq!(told.len(), 1);
    assert!(told[0].contains("a layer above draws a slur between these notes"), "{told:?}");
    // Drawn below, taken off above.
    let (found, told, _) = both(added(&score, 4, 7), removed(&score, 4, 7));
    assert_eq!(found, [(0, 2), (4, 5)]);
    assert!(told[0].contains("a layer above takes this slur off"), "{told:?}");
    // Moved below, drawn again above where it was.
    let (mut found, told, _) = both(moved(&score, (0, 2), 3), added(&score, 0, 2));
    found.sort_unstable();
    assert_eq!(found, [(0, 2), (0, 3), (4, 5)]);
    assert_eq!(told.len(), 1);
    // The same said by both: once on paper, the lower layer's.
    let (found, told, kept) = both(added(&score, 4, 7), added(&score, 4, 7));
    assert_eq!((found.len(), told.len(), kept[1].entries[0].state), (3, 0, EntryState::Printed));
    let (found, told, kept) = both(removed(&score, 0, 2), removed(&score, 0, 2));
    assert_eq!(
        (found.as_slice(), told.len(), kept[1].entries[0].state),
        ([(4, 5)].as_slice(), 0, EntryState::Printed)
    );
    let (found, _, kept) = both(moved(&score, (0, 2), 3), added(&score, 0, 3));
    assert_eq!((found.len(), kept[1].entries[0].state), (2, EntryState::Printed));
}

#[test]
fn a_bow_that_an_upper_layer_asks_otherwise_is_told() {
    let (clean, score) = scored(SLURRED);
    let put = |upper: Mark| {
        let lower =
            apply(&clean, &score, &layer(vec![on(&score, 0, Mark::Up)]), &[], Trust::OwnScore).unwrap();
        let marked = edited(&clean, &lower.edits);
        let read = arcata_score::read(&marked);
        let upper = layer(vec![on(&score, 0, upper)]);
        let upper =
            apply(&marked, &read, &upper, std::slice::from_ref(&lower.layer), Trust::OwnScore).unwrap();
        let both = edited(&marked, &upper.edits);
        let wiped = wipe(&both, &arcata_score::read(&both), &upper.layer, Trust::OwnScore).unwrap();
        assert_eq!(edited(&both, &wiped.edits).text(), marked.text());
        upper.overruled.iter().map(ToString::to_string).collect::<Vec<String>>()
    };
    let told = put(Mark::Down);
    assert!(told.len() == 1 && told[0].contains("asks for another bow here"), "{told:?}");
    assert!(put(Mark::Up).is_empty());
}
