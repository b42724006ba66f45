//! Text is read as a place, printed, read again, and looked up in a demo score.
#![no_main]

use std::sync::LazyLock;

use arcata_score::Score;
use arcata_score::places::{Within, bars_said, bars_typed, beat, beat_exact, beat_said, leading, passage, place_said};
use arcata_xml::{Document, Limits};
use libfuzzer_sys::fuzz_target;

static SCORE: LazyLock<Score> = LazyLock::new(|| {
    let text = include_str!("../../demo/ferry-bell-quartet.musicxml");
    let document = Document::parse(text.as_bytes().to_vec(), &Limits::default()).unwrap();
    arcata_score::read(&document)
});

fuzz_target!(|bytes: &[u8]| {
    let Ok(typed) = std::str::from_utf8(bytes) else { return };
    if let Ok((_, rest)) = leading(typed) {
        assert!(typed.trim_end().ends_with(rest));
    }
    if let Ok(read) = beat(typed) {
        assert_eq!(beat(&beat_exact(read)), Ok(read), "{typed:?}");
        assert_eq!(beat(&beat_said(read)), Ok(read), "{typed:?}");
    }
    let read = match passage(typed) {
        Ok(read) => read,
        Err(misread) => {
            let said = misread.to_string();
            assert!(said.starts_with("expected ") && said.contains(", found "), "{typed:?}: {said}");
            return;
        }
    };
    // What was understood prints in ways that are understood the same.
    let point = passage(&read.from.to_string()).unwrap_or_else(|misread| panic!("{typed:?}: {misread}"));
    assert_eq!(point.from, read.from, "{typed:?}");
    let (first, last) = read.bars();
    if first.nth.is_none() && last.nth.is_none() {
        let labels = (first.label.as_str(), last.label.as_str());
        for printed in [bars_said("bar", None, labels), bars_said("measure", Some("II"), labels), bars_typed(labels)] {
            let again = passage(&printed).unwrap_or_else(|misread| panic!("{printed:?}: {misread}"));
            assert_eq!(again.bars(), (first.clone(), last.clone()), "{printed:?}");
        }
        if let Within::Beat(beat) = read.from.within {
            let printed = place_said("bar", Some("2"), &first.label, beat);
            let again = passage(&printed).unwrap_or_else(|misread| panic!("{printed:?}: {misread}"));
            assert_eq!(again.from, read.from, "{printed:?}");
        }
    }
    // Whether the score has it is told, too.
    if let Ok(bars) = SCORE.bars_of(&read, None) {
        let _ = SCORE.offset_of(0, *bars.start(), read.from.within);
    }
    let _ = SCORE.passage(typed);
});
