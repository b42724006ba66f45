//! Pages and lines of a part that are asked for: acts like all others, kept in a file of their own beside the score.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

mod support;

use std::path::PathBuf;

use arcata_workbench::open_session;
use axum::http::StatusCode;
use serde_json::{Value, json};
use support::{Bench, bench, get, post};

fn file(bench: &Bench) -> PathBuf {
    bench.folder.path().join("study.breaks.json")
}

/// Bar and opening of each break in the file.
fn kept(bench: &Bench) -> Vec<(String, String)> {
    let text = std::fs::read_to_string(file(bench)).expect("the file");
    let read: Value = serde_json::from_str(&text).expect("JSON");
    let text = |value: &Value| value.as_str().expect("text").to_owned();
    let breaks = read["breaks"].as_array().expect("breaks");
    breaks.iter().map(|one| (text(&one["bar"]), text(&one["begins"]))).collect()
}

fn page(bar: &str) -> (String, String) {
    (bar.to_owned(), "page".to_owned())
}

async fn asked(bench: &Bench, bar: u32, begins: Value, version: u64) -> (StatusCode, Value) {
    post(bench, "/api/break", &json!({"part": 0, "bar": bar, "begins": begins, "version": version})).await
}

/// The page that each bar stands on.
async fn pages(bench: &Bench) -> (Vec<u64>, Value) {
    let (status, text) = get(bench, "/api/pages?part=0").await;
    assert_eq!(status, StatusCode::OK, "{text}");
    let pages: Value = serde_json::from_str(&text).expect("JSON");
    let bars = pages["bars"].as_array().expect("bars");
    (bars.iter().map(|bar| bar["page"].as_u64().expect("a page")).collect(), pages)
}

#[tokio::test]
async fn a_page_begins_where_somebody_asks_for_it_and_no_more_when_it_is_undone() {
    let bench = bench();
    let (on, made) = pages(&bench).await;
    assert_eq!(on, [0, 0, 0, 0]);
    assert!(made["pages"][0]["end"].is_null(), "nothing is turned after the last page");
    assert!(!file(&bench).exists(), "nothing was asked for");
    let (status, done) = asked(&bench, 2, json!("page"), 0).await;
    assert_eq!(
        (status, &done["breaks"]),
        (StatusCode::OK, &json!([{"part": 0, "bar": 2, "begins": "page"}]))
    );
    assert_eq!(kept(&bench), [page("3")]);
    let (on, made) = pages(&bench).await;
    assert_eq!(on[2] - on[1], 1, "{made}");
    let first = on[0] as usize;
    let end = &made["pages"][first]["end"];
    assert!(end["said"].as_str().is_some_and(|said| said.contains("ends before bar 3")), "{end}");
    let (_, undone) = post(&bench, "/api/undo", &json!({"by": "a test"})).await;
    assert_eq!(undone["breaks"], json!([]));
    assert!(kept(&bench).is_empty());
    assert_eq!(pages(&bench).await.0, [0, 0, 0, 0]);
    post(&bench, "/api/redo", &json!({"by": "a test"})).await;
    assert_eq!(kept(&bench), [page("3")]);
    // What cannot be: before the first bar, in no bar, in no part, of a version that was.
    for (bar, version) in [(0, 3), (9, 3)] {
        assert_eq!(asked(&bench, bar, json!("line"), version).await.0, StatusCode::UNPROCESSABLE_ENTITY);
    }
    let nobody = json!({"part": 7, "bar": 1, "begins": "page", "version": 3});
    assert_eq!(post(&bench, "/api/break", &nobody).await.0, StatusCode::UNPROCESSABLE_ENTITY);
    assert_eq!(asked(&bench, 1, json!("line"), 0).await.0, StatusCode::CONFLICT);
    assert_eq!(get(&bench, "/api/pages?part=7").await.0, StatusCode::UNPROCESSABLE_ENTITY);
    assert_eq!(kept(&bench), [page("3")]);
}

#[tokio::test]
async fn what_was_asked_for_outlives_the_program_its_journal_and_a_new_version_of_the_score() {
    let bench = bench();
    asked(&bench, 2, json!("page"), 0).await;
    // Opened again it is there, and can be undone.
    let session = open_session(&bench.score(), None);
    assert!(session.is_err(), "one program at a time");
    let folder = bench.folder.path().to_owned();
    let copy = |name: &str| {
        let there = folder.join(name);
        std::fs::create_dir(&there).expect("a folder");
        for file in ["study.musicxml", "study.breaks.json", "study.acts.jsonl"] {
            std::fs::copy(folder.join(file), there.join(file)).expect("copied");
        }
        there
    };
    let again = copy("again");
    assert_eq!(open_session(&again.join("study.musicxml"), None).expect("opens").reach(), (1, 0));
    // Without the journal the file alone says it: it is taken up, as an act.
    let alone = copy("alone");
    std::fs::remove_file(alone.join("study.acts.jsonl")).expect("removed");
    let session = open_session(&alone.join("study.musicxml"), None).expect("opens");
    assert_eq!((session.reach(), session.version()), ((1, 0), 0));
    // Without the file the journal has it: it is written again.
    let lost = copy("lost");
    std::fs::remove_file(lost.join("study.breaks.json")).expect("removed");
    open_session(&lost.join("study.musicxml"), None).expect("opens");
    assert_eq!(
        std::fs::read(lost.join("study.breaks.json")).expect("a file"),
        std::fs::read(file(&bench)).expect("a file")
    );
    // One that cannot be read is told by name, and left as it is.
    let broken = copy("broken");
    std::fs::write(broken.join("study.breaks.json"), "{\"format\": \"arcata-breaks\", \"ver")
        .expect("written");
    let why = open_session(&broken.join("study.musicxml"), None).expect_err("refused").to_string();
    assert!(why.contains("study.breaks.json"), "{why}");
    assert_eq!(std::fs::metadata(broken.join("study.breaks.json")).expect("a file").len(), 32);
}

#[tokio::test]
async fn what_another_program_wrote_into_the_file_counts_and_is_not_lost() {
    let bench = bench();
    asked(&bench, 2, json!("page"), 0).await;
    let text = std::fs::read_to_string(file(&bench)).expect("the file");
    std::fs::write(file(&bench), text.replace("\"page\"", "\"line\"")).expect("written");
    // The next wish is added to what stands there now.
    let (status, done) = asked(&bench, 3, json!("page"), 1).await;
    assert_eq!(status, StatusCode::OK);
    assert_eq!(
        done["breaks"],
        json!([{"part": 0, "bar": 2, "begins": "line"}, {"part": 0, "bar": 3, "begins": "page"}])
    );
    // Undoing over a file that somebody else has written keeps theirs under another name.
    std::fs::write(file(&bench), &text).expect("written");
    post(&bench, "/api/undo", &json!({"by": "a test"})).await;
    let there = std::fs::read_dir(bench.folder.path()).expect("a folder");
    let names: Vec<String> =
        there.map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned()).collect();
    let backup = names.iter().find(|name| name.starts_with("study.breaks.json.")).expect("a backup");
    assert_eq!(std::fs::read_to_string(bench.folder.path().join(backup)).expect("a file"), text);
    assert_eq!(kept(&bench), [("3".to_owned(), "line".to_owned())]);
}
