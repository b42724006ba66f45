//! Bytes are read as a score, twice the same; the bow marks, words, lifts and slurs in it are lifted and put on again without a trace.
#![no_main]

use arcata_layer::{LiftChoice, LiftKind, Trust, apply, lift, read, write};
use arcata_xml::{Document, EditList, Limits};
use libfuzzer_sys::fuzz_target;

fn edited(document: &Document, edits: &EditList) -> Option<Document> {
    // What is written has the names that were there; only a document at a limit may pass it.
    Document::parse(document.apply(edits).unwrap(), &Limits::default()).ok()
}

fuzz_target!(|bytes: &[u8]| {
    let Ok(document) = Document::parse(bytes.to_vec(), &Limits::default()) else { return };
    let score = arcata_score::read(&document);
    assert_eq!(format!("{score:?}"), format!("{:?}", arcata_score::read(&document)), "twice the same");
    for kinds in [
        vec![LiftKind::Bows],
        vec![LiftKind::Bows, LiftKind::Words, LiftKind::Lifts],
        vec![LiftKind::Slurs],
    ] {
        let Ok(lifted) = lift(&document, &score, &LiftChoice { parts: None, kinds }) else { continue };
        let Some(clean) = edited(&document, &lifted.edits) else { continue };
        let layer = read(write(&lifted.layer).as_bytes()).expect("a layer as written");
        let clean_score = arcata_score::read(&clean);
        let applied = apply(&clean, &clean_score, &layer, &[], Trust::OwnScore).expect("its own score");
        let again = clean.apply(&applied.edits).unwrap();
        assert_eq!(String::from_utf8_lossy(&again), String::from_utf8_lossy(document.bytes()));
    }
});
