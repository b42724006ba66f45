//! What could not be done is said in the language that the page asks for.
#![allow(clippy::unwrap_used, reason = "tests")]

use std::sync::Arc;

use arcata_analysis::Source;
use arcata_desk::{MemoryShelf, PageRequest, Session, SessionStart, Shared};
use arcata_engrave::Engraver;
use serde_json::Value;

fn shared() -> Shared {
    let bytes = arcata_testkit::musicxml("viola: 1/4 C4 D4 (E4 F4) | 1/1 G4").into_bytes();
    let start = SessionStart {
        name: "study.musicxml".to_owned(),
        source: Source::open(bytes.clone()).unwrap(),
        bytes: bytes.clone(),
        steps: Vec::new(),
        journal_told: None,
        aside: arcata_review::Aside::default(),
        habits: None,
    };
    let session = Session::new(start, Box::new(MemoryShelf::new(bytes))).unwrap();
    Shared::new(session, Arc::new(Engraver::new()))
}

fn said(shared: &Shared, mut request: PageRequest, language: &str) -> String {
    language.clone_into(&mut request.languages);
    let answer = shared.answer(request);
    assert!(answer.status >= 400, "{}", String::from_utf8_lossy(&answer.bytes));
    let answer: Value = serde_json::from_slice(&answer.bytes).unwrap();
    answer["why"].as_str().unwrap().to_owned()
}

#[test]
fn what_could_not_be_done_is_said_in_the_language_asked_for() {
    let shared = shared();
    let act = |act: &str| PageRequest::post("acts", &format!(r#"{{"act":{act},"version":0}}"#));
    let late = PageRequest::post("acts", r#"{"act":{"act":"tempo","quarters":72},"version":7}"#);
    let asked = [
        act(r#"{"act":"tempo","quarters":5}"#),
        act(r#"{"act":"player","profile":"virtuoso"}"#),
        act(r#"{"act":"louder","steps":30}"#),
        act(r#"{"act":"break","part":"viola","bar":"99","bar_ordinal":1,"begins":"page"}"#),
        act(r#"{"act":"change","sentence":"nothing","edits":[]}"#),
        late,
        PageRequest::get("strokes", "line=9"),
        PageRequest::get("system", "width=190&first=7&last=9"),
        PageRequest::get("layers/picture", "layer=4&line=0&first=0&last=1"),
        PageRequest::get("export/pdf", ""),
        PageRequest::get("export/parts", ""),
        PageRequest::get("pages", "part=9"),
        PageRequest::post("write", r#"{"by":"a page"}"#),
        PageRequest::get("place", "text=bar+77"),
    ];
    for request in asked {
        let english = said(&shared, request.clone(), "en");
        let others = ["it", "fr", "de"].map(|language| said(&shared, request.clone(), language));
        for (at, other) in others.iter().enumerate() {
            assert_ne!(*other, english, "{request:?}");
            assert!(!others[at + 1..].contains(other), "two languages say the same: {other}");
        }
    }
}
