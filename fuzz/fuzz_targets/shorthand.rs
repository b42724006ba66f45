//! Text is read as shorthand, printed, read again, and entered against a demo score.
#![no_main]

use std::sync::LazyLock;

use arcata_layer::shorthand::{Gravity, enter, of_layer, put, read};
use arcata_layer::{Addresses, Layer};
use arcata_score::Score;
use arcata_xml::{Document, Limits};
use libfuzzer_sys::fuzz_target;

static SCORE: LazyLock<Score> = LazyLock::new(|| {
    let text = include_str!("../../demo/ferry-bell-quartet.musicxml");
    let document = Document::parse(text.as_bytes().to_vec(), &Limits::default()).unwrap();
    arcata_score::read(&document)
});

fuzz_target!(|bytes: &[u8]| {
    let Ok(typed) = std::str::from_utf8(bytes) else { return };
    let (text, complaints) = read(typed);
    let lines = typed.lines().count();
    for complaint in &complaints {
        assert!((1..=lines.max(1)).contains(&(complaint.at.line as usize)), "{complaint}");
        assert!(complaint.shown(typed).starts_with(&complaint.to_string()));
    }
    // What was understood prints in a way that is understood the same.
    let printed = text.to_string();
    let (again, complaints) = read(&printed);
    assert!(complaints.is_empty(), "{printed:?}: {complaints:?}");
    assert_eq!(again, text, "{printed:?}");
    assert_eq!(again.to_string(), printed);
    // What is entered can be printed and entered again without a trouble.
    let addresses = Addresses::new(&SCORE);
    let entered = enter(&text, &addresses);
    let mut layer = Layer { parts: addresses.part_keys().to_vec(), ..Layer::default() };
    put(&mut layer, &entered);
    let printed = of_layer(&layer, &addresses).to_string();
    let (text, complaints) = read(&printed);
    assert!(complaints.is_empty(), "{printed:?}: {complaints:?}");
    let back = enter(&text, &addresses);
    assert!(back.complaints.iter().all(|complaint| complaint.gravity == Gravity::Remark), "{printed:?}");
    assert_eq!(back.entries.len(), layer.entries.len(), "{printed:?}");
});
