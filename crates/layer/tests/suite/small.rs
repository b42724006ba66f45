//! Small scores: what cannot be applied says why; spreading and carrying do what a librarian expects.

use arcata_layer::{
    Address, Addresses, BowPlace, Doubt, Entry, Exact, GoingTogether, HookSign, Layer, LayerRemarkKind,
    LowStrings, Mark, SpreadChoice, SpreadReach, Trust, apply, carry, check, spread,
};
use arcata_score::{NoteId, Score};
use arcata_testkit::musicxml;
use arcata_xml::Document;

use crate::support::document;

fn scored(text: &str) -> (Document, Score) {
    let document = document(&musicxml(text));
    let score = arcata_score::read(&document);
    (document, score)
}

fn on(score: &Score, part: usize, note: u32, mark: Mark) -> Entry {
    Entry::new(place(score, part, note), mark)
}

fn place(score: &Score, part: usize, note: u32) -> Address {
    Addresses::new(score).place(part, NoteId(note)).expect("a note stands there")
}

fn layer(entries: Vec<Entry>) -> Layer {
    Layer { entries, ..Layer::default() }
}

fn kinds(layer: &Layer, document: &Document, score: &Score) -> Vec<LayerRemarkKind> {
    check(layer, document, score).into_iter().map(|remark| remark.kind).collect()
}

const QUARTERS: &str = "violin: 1/4 C5 D5 E5 F5 | G5 rest A5 B5";

#[test]
fn an_entry_on_a_rest_is_left_out_and_told() {
    let (document, score) = scored(QUARTERS);
    let mut entry = on(&score, 0, 4, Mark::Up);
    entry.place.spot.offset = arcata_score::Length::QUARTER;
    entry.place.spot.pitch = None;
    let layer = layer(vec![entry]);
    let applied = apply(&document, &score, &layer, &[], Trust::OwnScore).unwrap();
    assert!(applied.edits.is_empty());
    assert!(
        applied.left_out[0].to_string().ends_with("up-bow: a rest stands there"),
        "{}",
        applied.left_out[0]
    );
    assert_eq!(kinds(&layer, &document, &score), [LayerRemarkKind::OnRest]);
}

/// A layer comes by mail: what it remembers of a mark's markup goes into somebody's score.
#[test]
fn what_a_layer_remembers_is_written_only_where_it_is_the_markup_of_a_mark() {
    let (document, score) = scored(QUARTERS);
    for (into, text) in [
        ("", "<pitch><step>A</step><octave>9</octave></pitch>"),
        ("", "<notations><technical><down-bow/><fingering>9</fingering></technical></notations>"),
        ("", "<notations><technical><down-bow/></technical></notations></note><note>"),
        ("", "<notations><technical><down-bow/></technical>words</notations>"),
        (
            "",
            "<!DOCTYPE a [<!ENTITY b SYSTEM \"file:///etc/passwd\">]><notations><technical><down-bow/></technical></notations>",
        ),
        ("before", "<direction><direction-type><words>down</words></direction-type></direction>"),
        ("before", "<sound tempo=\"999\"/>"),
    ] {
        let mut entry = on(&score, 0, 0, Mark::Down);
        entry.exact = vec![Exact { into: into.to_owned(), after: 0, skip: 0, text: text.to_owned() }];
        let applied = apply(&document, &score, &layer(vec![entry]), &[], Trust::OwnScore).unwrap();
        let plainly =
            apply(&document, &score, &layer(vec![on(&score, 0, 0, Mark::Down)]), &[], Trust::OwnScore)
                .unwrap();
        assert_eq!(
            document.apply(&applied.edits).unwrap(),
            document.apply(&plainly.edits).unwrap(),
            "{text}"
        );
    }
}

#[test]
fn an_entry_that_names_no_note_says_what_there_is() {
    let (document, score) = scored(QUARTERS);
    let said = |change: &dyn Fn(&mut Address)| {
        let mut entry = on(&score, 0, 1, Mark::Up);
        change(&mut entry.place);
        let applied = apply(&document, &score, &layer(vec![entry]), &[], Trust::OwnScore).unwrap();
        applied.left_out[0].why.to_string()
    };
    assert_eq!(said(&|place| place.part = "tuba".into()), "the score has no such part; it has violin");
    assert_eq!(said(&|place| place.spot.bar_ordinal = Some(9)), "the score has no such bar");
    let other = "the bar at this position is bar 1 now; carry the layer over to the revised score";
    assert_eq!(said(&|place| place.spot.bar = "7".into()), other);
    let elsewhere = arcata_score::Length::new(1, 7);
    assert_eq!(said(&|place| place.spot.offset = elsewhere), "no note begins there");
    let voice = "not this note begins there, but D5";
    assert_eq!(said(&|place| place.spot.voice = "2".into()), voice);
}

#[test]
fn contradictions_and_doubles_are_told_and_not_applied() {
    let (document, score) = scored(QUARTERS);
    let quarrel = layer(vec![on(&score, 0, 0, Mark::Up), on(&score, 0, 0, Mark::Down)]);
    let applied = apply(&document, &score, &quarrel, &[], Trust::OwnScore).unwrap();
    assert!(applied.edits.is_empty());
    assert_eq!(applied.left_out.len(), 2);
    assert_eq!(
        kinds(&quarrel, &document, &score),
        [LayerRemarkKind::Contradiction, LayerRemarkKind::Contradiction]
    );
    let double = layer(vec![on(&score, 0, 0, Mark::Up), on(&score, 0, 0, Mark::Up)]);
    let applied = apply(&document, &score, &double, &[], Trust::OwnScore).unwrap();
    assert_eq!((applied.written, applied.standing), (1, 1));
    assert_eq!(kinds(&double, &document, &score), [LayerRemarkKind::Double]);
}

#[test]
fn a_bow_mark_inside_a_slur_is_told() {
    let (document, score) = scored("violin: (1/4 C5 D5 E5) F5");
    let inside = layer(vec![on(&score, 0, 1, Mark::Up)]);
    assert_eq!(kinds(&inside, &document, &score), [LayerRemarkKind::InsideSlur]);
    let to = place(&score, 0, 2).spot;
    let without = layer(vec![on(&score, 0, 0, Mark::SlurRemoved { to }), on(&score, 0, 1, Mark::Up)]);
    assert!(kinds(&without, &document, &score).is_empty());
}

#[test]
fn a_layer_for_another_score_is_refused_by_name() {
    let (document, score) = scored(QUARTERS);
    let (other, other_score) = scored("violin: 1/4 A4 B4 C5 D5");
    let applied = apply(&document, &score, &layer(vec![on(&score, 0, 0, Mark::Up)]), &[], Trust::OwnScore);
    let bound = applied.unwrap().layer;
    let refused = apply(&other, &other_score, &bound, &[], Trust::OwnScore).unwrap_err().to_string();
    assert!(
        refused.contains("their notes are not the same") && refused.contains("carry the layer over first")
    );
    assert!(apply(&other, &other_score, &bound, &[], Trust::AnyScore).is_ok());
    assert!(kinds(&bound, &other, &other_score).contains(&LayerRemarkKind::OtherScore));
}

#[test]
fn a_hook_takes_the_bow_of_the_note_before() {
    let (document, score) = scored(QUARTERS);
    let hooked = layer(vec![
        on(&score, 0, 0, Mark::Up),
        on(&score, 0, 1, Mark::Hook { bow: None, sign: HookSign::Marks }),
    ]);
    let applied = apply(&document, &score, &hooked, &[], Trust::OwnScore).unwrap();
    let bytes = document.apply(&applied.edits).unwrap();
    assert_eq!(String::from_utf8(bytes).unwrap().matches("<up-bow/>").count(), 2);
    let alone = layer(vec![on(&score, 0, 1, Mark::Hook { bow: None, sign: HookSign::Marks })]);
    assert_eq!(kinds(&alone, &document, &score), []);
    let first = layer(vec![on(&score, 0, 0, Mark::Hook { bow: None, sign: HookSign::Marks })]);
    assert_eq!(kinds(&first, &document, &score), [LayerRemarkKind::NothingBefore]);
}

#[test]
fn a_printed_mark_gives_way_and_its_like_stays_when_wiped() {
    let (document, score) = scored("violin: 1/4 C5!down D5!up E5 F5");
    let entries = vec![on(&score, 0, 0, Mark::Up), on(&score, 0, 1, Mark::Up)];
    let applied = apply(&document, &score, &layer(entries), &[], Trust::OwnScore).unwrap();
    assert_eq!((applied.written, applied.standing), (1, 1));
    assert_eq!(applied.layer.entries[0].taken_off().len(), 1);
    assert_eq!(applied.layer.entries[1].state, arcata_layer::EntryState::Printed);
}

fn choice(from: usize) -> SpreadChoice {
    SpreadChoice { from, ..SpreadChoice::default() }
}

const DOUBLED: &str = "violin: 1/4 C5 (D5 E5) F5 | G5 G5 G5 G5
cello: 1/4 C3 (D3 E3) F3 | 1/2 G3 G3";

#[test]
fn a_bowing_reaches_the_part_that_doubles_it_and_says_where_it_does_not() {
    let (_, score) = scored(DOUBLED);
    let layer = layer(vec![on(&score, 0, 0, Mark::Down), on(&score, 0, 4, Mark::Up)]);
    let spread_out = spread(&layer, &score, &choice(0));
    let proposed: Vec<String> = spread_out.proposed.iter().map(ToString::to_string).collect();
    assert_eq!(proposed, ["cello, bar 1, beat 1, C3: down-bow (as violin, bar 1, beat 1, C5, octave)"]);
    let not: Vec<String> = spread_out.not_spread.iter().map(ToString::to_string).collect();
    assert_eq!(not, ["violin, bar 2, beat 1, G5, up-bow: not to cello, different rhythm"]);
    let mut with_it = layer.clone();
    spread_out.put_into(&mut with_it, &score);
    assert_eq!(with_it.entries.len(), 3);
    let left: Vec<(&str, &str, u32)> =
        with_it.not_reached.iter().map(|left| (left.part.as_str(), left.bar.as_str(), left.marks)).collect();
    assert_eq!(left, [("cello", "2", 1)]);
    // Spread once more, nothing is new, and what was remembered is not remembered twice.
    let again = spread(&with_it, &score, &choice(0));
    again.put_into(&mut with_it, &score);
    assert_eq!((with_it.entries.len(), with_it.not_reached.len()), (3, 1));
    let mirrored = SpreadChoice { low_strings: LowStrings::Mirrored, ..choice(0) };
    assert_eq!(spread(&layer, &score, &mirrored).proposed[0].entry.mark, Mark::Up);
}

#[test]
fn parts_that_go_together_but_for_an_ornament_are_reached_where_their_strokes_are_the_same() {
    let (_, score) = scored("violin: 1/4 C5 D5 E5 F5\nviola: 1/4 C4 D4 1/8 E4 E4 1/4 F4");
    let layer = layer(vec![on(&score, 0, 0, Mark::Down), on(&score, 0, 3, Mark::Up)]);
    assert!(spread(&layer, &score, &choice(0)).proposed.is_empty());
    let together = vec![GoingTogether { parts: vec![0, 1], bars: 0..1 }];
    let proposed = spread(&layer, &score, &SpreadChoice { together, ..choice(0) }).proposed;
    let said: Vec<String> = proposed.iter().map(ToString::to_string).collect();
    let by = "same rhythm and slurs but for some notes";
    let of =
        |place: &str, from: &str, mark: &str| format!("viola, {place}: {mark} (as violin, {from}, {by})");
    assert_eq!(
        said,
        [
            of("bar 1, beat 1, C4", "bar 1, beat 1, C5", "down-bow"),
            of("bar 1 after 3/4, F4", "bar 1 after 3/4, F5", "up-bow")
        ]
    );
}

#[test]
fn a_bowing_reaches_the_passage_that_comes_again() {
    let (_, score) = scored("violin: 1/4 C5 D5 E5 F5 | 1/2 G5 E5 | 1/1 rest | 1/4 D5 E5 F#5 G5 | 1/2 A5 F#5");
    let layer = layer(vec![on(&score, 0, 1, Mark::Up)]);
    let everywhere = SpreadChoice { reach: SpreadReach::EveryPassage, ..choice(0) };
    let proposed = spread(&layer, &score, &everywhere).proposed;
    assert_eq!(proposed.len(), 1);
    assert_eq!(proposed[0].entry.place.to_string(), "violin, bar 4 after 1/4, E5");
    assert!(spread(&layer, &score, &choice(0)).proposed.is_empty());
}

const OLD: &str = "violin: 1/4 C5 D5 E5 F5 | G5 A5 B5 A5 | 1/2 G5 E5 | 1/4 D5 F5 E5 D5 | 1/1 C5";

#[test]
fn carried_past_a_cut_a_changed_note_and_a_note_that_is_gone() {
    let (_, old) = scored(OLD);
    let (new_document, new) = scored("violin: 1/4 C5 D5 E5 F5 | 1/2 G5 E5 | 1/4 D5 F5 Eb5 D5 | 1/1 C5");
    let layer = layer(vec![
        on(&old, 0, 1, Mark::Up),
        on(&old, 0, 5, Mark::Down),
        on(&old, 0, 8, Mark::Down),
        on(&old, 0, 12, Mark::Up),
    ]);
    let carried = carry(&layer, &old, (&new_document, &new));
    assert_eq!(carried.exactly, 2);
    assert_eq!(carried.doubtful.len(), 1);
    assert_eq!(carried.doubtful[0].why, Doubt::OtherPitch);
    let doubts: Vec<&str> = carried.layer.entries.iter().filter_map(|entry| entry.doubt.as_deref()).collect();
    assert_eq!(doubts, ["was violin, bar 4, beat 3, E5: the note has another pitch"]);
    assert!(kinds(&carried.layer, &new_document, &new).contains(&LayerRemarkKind::Doubt));
    assert_eq!(carried.orphaned.len(), 1);
    assert_eq!(
        carried.orphaned[0].to_string(),
        "violin, bar 2 after 1/4, A5, down-bow: its bar is not in the new score"
    );
    assert_eq!(carried.layer.orphans.len(), 1);
    let bars: Vec<&str> = carried.layer.entries.iter().map(|entry| entry.place.spot.bar.as_str()).collect();
    assert_eq!(bars, ["1", "2", "3"]);
}

#[test]
fn carried_into_both_passes_of_a_repeat_written_out() {
    let (_, old) = scored("violin: |: 1/4 C5 D5 E5 F5 | 1/2 G5 E5 :| 1/1 C5");
    let (new_document, new) =
        scored("violin: 1/4 C5 D5 E5 F5 | 1/2 G5 E5 | 1/4 C5 D5 E5 F5 | 1/2 G5 E5 | 1/1 C5");
    let layer = layer(vec![on(&old, 0, 1, Mark::Up)]);
    let carried = carry(&layer, &old, (&new_document, &new));
    assert_eq!(carried.exactly, 1);
    assert_eq!(carried.doubtful.len(), 1);
    assert_eq!(carried.doubtful[0].why, Doubt::WrittenOut);
    let bars: Vec<&str> = carried.layer.entries.iter().map(|entry| entry.place.spot.bar.as_str()).collect();
    assert_eq!(bars, ["1", "3"]);
}

#[test]
fn bars_that_are_all_alike_are_carried_with_doubt() {
    let (_, old) =
        scored("violin: 1/1 C5 | 1/4 G4 A4 G4 A4 | G4 A4 G4 A4 | G4 A4 G4 A4 | G4 A4 G4 A4 | 1/1 D5");
    let (new_document, new) = scored("violin: 1/1 C5 | 1/4 G4 A4 G4 A4 | G4 A4 G4 A4 | 1/1 D5");
    let layer = layer(vec![on(&old, 0, 6, Mark::Up)]);
    let carried = carry(&layer, &old, (&new_document, &new));
    assert_eq!(carried.exactly, 0);
    assert!(carried.doubtful.len() + carried.orphaned.len() == 1);
}

#[test]
fn the_words_for_places_in_the_bow_are_read_back_as_what_they_mean() {
    use arcata_score::Meaning::{AtFrog, AtTip, MiddleOfBow, WholeBow};
    use arcata_score::words::{WordMeaning, meanings};
    let places = [
        (BowPlace::Frog, AtFrog),
        (BowPlace::Middle, MiddleOfBow),
        (BowPlace::Tip, AtTip),
        (BowPlace::Whole, WholeBow),
    ];
    for (place, meaning) in places {
        assert_eq!(meanings(place.words()), [WordMeaning::Instruction(meaning)]);
    }
}

#[test]
fn words_and_lifts_stand_where_a_part_has_them() {
    let (document, score) = scored(QUARTERS);
    let layer =
        layer(vec![on(&score, 0, 0, Mark::InBow { place: BowPlace::Frog }), on(&score, 0, 3, Mark::Lift)]);
    let applied = apply(&document, &score, &layer, &[], Trust::OwnScore).unwrap();
    let marked = crate::support::edited(&document, &applied.edits);
    let score = arcata_score::read(&marked);
    assert!(score.parts[0].notes[3].articulations.has(arcata_score::Articulation::Breath));
    let words = &score.parts[0].instructions[0];
    assert_eq!((words.text.as_str(), words.place.at), ("at the frog", arcata_score::Moment::START));
}
