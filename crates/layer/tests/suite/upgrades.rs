//! Layers as earlier programs wrote them: each is read, says the same, and comes off the score that it was put on. The forms
//! are those that the history of the format shows; all call themselves version 1.

use arcata_layer::{Addresses, Entry, EntryState, Layer, Mark, Trust, apply, read, wipe, write};
use arcata_score::{BowDirection, NoteId};
use arcata_testkit::musicxml;

use crate::support::{document, edited};

/// The first form: `already_printed`, no other state.
const FIRST: &str = r#"{
"format": "arcata-layer",
"version": 1,
"title": "Tour",
"owner": "leader",
"ensemble": "",
"date": "2026-03-01",
"score": {"title":"Study"},
"parts": ["violin"],
"entries": [
{"part":"violin","bar":"1","bar_ordinal":1,"offset":"0","pitch":"C5","mark":"down","already_printed":true},
{"part":"violin","bar":"1","bar_ordinal":1,"offset":"1/4","pitch":"D5","mark":"up","anchor":true,"took_off":[{"mark":"down","exact":{"into":"notations 1/technical 1","text":"<down-bow/>"}}]},
{"part":"violin","bar":"1","bar_ordinal":1,"offset":"1/2","pitch":"E5","mark":"slur added","to":{"bar":"1","bar_ordinal":1,"offset":"3/4","pitch":"F5"},"exact":[{"text":"<slur number=\"1\" type=\"start\"/>"},{"text":"<slur number=\"1\" type=\"stop\"/>"}],"seen_by":"Ines"}
]
}
"#;

/// The second: states, and which bow a hook was written as.
const WITH_STATES: &str = r#"{"format":"arcata-layer","version":1,"parts":["violin"],"entries":[
{"part":"violin","bar":"1","offset":"0","mark":"down","state":"printed"},
{"part":"violin","bar":"1","offset":"1/4","mark":"hook","written":"down"},
{"part":"violin","bar":"1","offset":"1/2","mark":"retake","bow":"up","state":"left out"}],
"orphans":[{"part":"violin","bar":"9","offset":"0","mark":"up"}]}"#;

/// The third: doubts, what spreading did not reach, both bows on one note, the mark before a hook.
const WITH_MARKS_BEFORE: &str = r#"{"format":"arcata-layer","version":1,"parts":["violin","viola"],"not_reached":[
{"from":"violin","not_to":"viola","bar":"1","bar_ordinal":1,"marks":2,"why":"it rests"}],"entries":[
{"part":"violin","bar":"1","offset":"0","mark":"down up","doubt":"the pitch was another"},
{"part":"violin","bar":"1","offset":"1/4","mark":"hook","bow":"up","written":"up","before":{"at":{"bar":"1","offset":"0"},"bow":"up","took_off":[{"mark":"up","exact":{"text":"<up-bow/>"}}]}}]}"#;

/// The fourth: hooks as slurs with dots.
const WITH_HOOK_SLURS: &str = r#"{"format":"arcata-layer","version":1,"parts":["violin"],"entries":[
{"part":"violin","bar":"1","offset":"1/4","mark":"hook","sign":"dots","hook_slur":{"from":{"bar":"1","offset":"0"},"to":{"bar":"1","offset":"1/4"},"sign":"dots","hooked":[{"bar":"1","offset":"1/4"}],"signs":[{"bar":"1","offset":"0"}]}}]}"#;

#[test]
fn every_form_is_read_and_loses_nothing() {
    for (form, entries) in [(FIRST, 3), (WITH_STATES, 3), (WITH_MARKS_BEFORE, 2), (WITH_HOOK_SLURS, 1)] {
        let layer = read(form.as_bytes()).unwrap_or_else(|problem| panic!("{problem}: {form}"));
        assert_eq!(layer.entries.len(), entries);
        let anew = read(write(&layer).as_bytes()).expect("a layer as written");
        assert_eq!(anew, layer);
    }
    let first = read(FIRST.as_bytes()).expect("the first form");
    assert_eq!(first.entries[0].state, EntryState::Printed, "neither written nor wiped");
    assert!(first.entries[0].other.is_empty(), "what was understood is not kept as a stranger's field");
    assert_eq!(first.entries[1].taken_off().len(), 1);
    assert_eq!(first.entries[2].other["seen_by"], "Ines", "what somebody else added is kept");
    let states = read(WITH_STATES.as_bytes()).expect("the second form");
    let state: Vec<EntryState> = states.entries.iter().map(|entry| entry.state).collect();
    assert_eq!(state, [EntryState::Printed, EntryState::Own, EntryState::LeftOut]);
    assert_eq!((states.entries[1].written, states.orphans.len()), (Some(BowDirection::Down), 1));
    let before = read(WITH_MARKS_BEFORE.as_bytes()).expect("the third form");
    assert_eq!(before.entries[0].mark, Mark::Double { first: BowDirection::Down });
    assert_eq!(before.entries[1].before.as_ref().map(|before| before.took_off.len()), Some(1));
    assert_eq!(before.not_reached.len(), 1);
}

/// A layer that an earlier program has put on a score comes off without a trace with this one.
#[test]
fn what_an_earlier_program_put_on_comes_off() {
    let clean = document(&musicxml("violin: 1/4 C5!up D5!down E5 F5 | G5 A5 B5 C6"));
    let score = arcata_score::read(&clean);
    let addresses = Addresses::new(&score);
    let on = |note: u32, mark: Mark| Entry::new(addresses.place(0, NoteId(note)).expect("a note"), mark);
    let entries = vec![on(0, Mark::Down), on(1, Mark::Up), on(2, Mark::Up), on(4, Mark::Down)];
    let layer = Layer { entries, ..Layer::default() };
    let applied = apply(&clean, &score, &layer, &[], Trust::OwnScore).expect("applies");
    let marked = edited(&clean, &applied.edits);
    let now = write(&applied.layer);
    for (form, old) in [
        ("before empty lists were written", now.replace(",\"took_off\":[]", "")),
        (
            "before states",
            now.replace(",\"took_off\":[]", "").replace("\"state\":\"printed\"", "\"already_printed\":true"),
        ),
    ] {
        let old = read(old.as_bytes()).unwrap_or_else(|problem| panic!("{form}: {problem}"));
        let wiped = wipe(&marked, &arcata_score::read(&marked), &old, Trust::OwnScore).expect("wipes");
        assert_eq!(edited(&marked, &wiped.edits).text(), clean.text(), "{form}");
        let again =
            apply(&marked, &arcata_score::read(&marked), &old, &[], Trust::OwnScore).expect("applies");
        assert!(again.edits.is_empty(), "{form}: {:?}", again.edits);
    }
}
