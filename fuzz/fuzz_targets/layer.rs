//! Bytes are read as a layer, written, read again, put on a demo score and taken off it without a trace.
#![no_main]

use std::sync::LazyLock;

use arcata_layer::{Trust, apply, read, wipe, write};
use arcata_score::Score;
use arcata_xml::{Document, EditList, Limits};
use libfuzzer_sys::fuzz_target;

static DEMO: LazyLock<(Document, Score)> = LazyLock::new(|| {
    let text = include_str!("../../demo/tide-table-exercise.musicxml");
    let document = Document::parse(text.as_bytes().to_vec(), &Limits::default()).unwrap();
    let score = arcata_score::read(&document);
    (document, score)
});

fn edited(document: &Document, edits: &EditList) -> Document {
    Document::parse(document.apply(edits).unwrap(), &Limits::default())
        .expect("what was written is well-formed")
}

fuzz_target!(|bytes: &[u8]| {
    let layer = match read(bytes) {
        Ok(layer) => layer,
        Err(error) => {
            assert!(error.to_string().len() > 10, "an error says why: {error}");
            return;
        }
    };
    let written = write(&layer);
    let again = read(written.as_bytes()).unwrap_or_else(|problem| panic!("{problem}: {written}"));
    assert_eq!(write(&again), written);
    let (clean, score) = &*DEMO;
    let Ok(applied) = apply(clean, score, &layer, &[], Trust::AnyScore) else { return };
    let marked = edited(clean, &applied.edits);
    let kept = read(write(&applied.layer).as_bytes()).expect("a layer as written");
    // A layer that says of itself what is not so may not come off whole; what it puts on and takes off is never out of place.
    if let Ok(wiped) = wipe(&marked, &arcata_score::read(&marked), &kept, Trust::AnyScore) {
        edited(&marked, &wiped.edits);
    }
});
