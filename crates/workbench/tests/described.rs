//! Every address answers, and answers what the description of the addresses says: on a study, on a demo score with several
//! parts and movements, with what a page may ask. (Every other test's answers are held against it, too: `support/described.rs`.)
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

mod support;

use std::collections::BTreeSet;

use arcata_testkit::Published;
use axum::body::Body;
use axum::http::{Method, StatusCode};
use http_body_util::BodyExt as _;
use serde_json::{Value, json};
use support::described::{ANSWERED, component, description, holds};
use support::{Bench, bench_of, get, post, request};
use tower::ServiceExt as _;

fn demo(name: &str) -> String {
    let path = format!("{}/../../demo/{name}.musicxml", env!("CARGO_MANIFEST_DIR"));
    std::fs::read_to_string(path).expect("a demo")
}

async fn well(bench: &Bench, path: &str) -> Value {
    let (status, text) = get(bench, path).await;
    assert_eq!(status, StatusCode::OK, "{path}: {text}");
    serde_json::from_str(&text).unwrap_or(Value::Null)
}

/// Posts something, and gives the version after it.
async fn done(bench: &Bench, path: &str, body: Value) -> u64 {
    let (status, done) = post(bench, path, &body).await;
    assert_eq!(status, StatusCode::OK, "{path} {body}: {done}");
    let version = done["version"].as_u64().or(done["done"]["version"].as_u64());
    version.unwrap_or_default()
}

async fn act(bench: &Bench, version: u64, act: Value) -> u64 {
    done(bench, "/api/acts", json!({"act": act, "version": version, "by": "a test"})).await
}

/// What only looks.
async fn looks(bench: &Bench) {
    let score = well(bench, "/api/score").await;
    let lines = score["lines"].as_array().expect("lines").len();
    for path in [
        "/api/systems",
        "/api/systems?width=100&parts=0",
        "/api/findings",
        "/api/sound",
        "/api/layer/shorthand",
    ] {
        well(bench, path).await;
    }
    for line in 0..lines.min(3) {
        for path in ["strokes", "ways"] {
            well(bench, &format!("/api/{path}?line={line}&first=0&last=3")).await;
        }
        for stroke in [0, 2, 4] {
            well(bench, &format!("/api/slurs?line={line}&stroke={stroke}")).await;
            get(bench, &format!("/api/alike?line={line}&stroke={stroke}")).await;
        }
    }
    for query in ["first=0&last=1", "first=0&last=1&sure=true&width=120&parts=0"] {
        well(bench, &format!("/api/system?{query}")).await;
    }
    // The table of the plan as the command line gives it.
    let plan: Value =
        serde_json::from_str(include_str!("../../../docs/schema/plan.schema.json")).expect("JSON");
    let table = json!({"$ref": "#/$defs/DownbeatsView", "$defs": plan["$defs"]});
    let (status, text) = get(bench, "/api/place?text=bar%202").await;
    assert!(status.is_success(), "{text}");
    let (_, downbeats) = get(bench, "/api/downbeats").await;
    holds(&Published::new(&table.to_string()).expect("a schema"), downbeats.as_bytes(), "downbeats");
    // The findings as the command line gives them.
    let review: Value =
        serde_json::from_str(include_str!("../../../docs/schema/review.schema.json")).expect("JSON");
    let finding = json!({"$ref": "#/$defs/FindingView", "$defs": review["$defs"]});
    let finding = Published::new(&finding.to_string()).expect("a schema");
    for found in well(bench, "/api/findings").await["findings"].as_array().expect("findings") {
        holds(&finding, found["finding"].to_string().as_bytes(), "a finding");
    }
    let layer: &str = include_str!("../../../docs/schema/layer.schema.json");
    let (_, text) = get(bench, "/api/export/layer").await;
    holds(&Published::new(layer).expect("a schema"), text.as_bytes(), "the layer");
}

/// What does something, one after another, as a page would.
async fn acts(bench: &Bench) {
    let shown =
        json!({"parts": [], "width": 190, "sure": true, "systems": well(bench, "/api/systems").await});
    let bow = json!({"line": 0, "asks": [{"stroke": 1, "ask": "up"}, {"stroke": 2, "ask": "hook-dots"}], "goes": "here", "version": 0, "shown": shown});
    let mut version = done(bench, "/api/bow", bow).await;
    done(bench, "/api/undo", json!({"by": "a test", "shown": shown})).await;
    version += 1;
    version = version.max(done(bench, "/api/redo", json!({"by": "a test"})).await);
    for what in [
        json!({"act": "enter", "text": "all 1/1 up"}),
        json!({"act": "layer", "name": "guest"}),
        json!({"act": "enter", "text": "all 1/1 down"}),
        json!({"act": "show", "name": "bowings", "shown": false}),
        json!({"act": "choose", "name": "bowings"}),
        json!({"act": "take-up", "name": "guest"}),
        json!({"act": "tempo", "quarters": 90}),
        json!({"act": "louder", "steps": 1}),
        json!({"act": "style", "style": "early"}),
        json!({"act": "style", "style": "concert"}),
        json!({"act": "player", "profile": "student"}),
    ] {
        version = act(bench, version, what).await;
    }
    well(bench, "/api/layers/differences?one=0&other=1").await;
    well(bench, "/api/layers/picture?layer=1&line=0&first=0&last=1").await;
    version = act(bench, version, json!({"act": "take-away", "name": "guest"})).await;
    let (_, text) = get(bench, "/api/export/layer").await;
    version = act(bench, version, json!({"act": "take-up-text", "text": text})).await;
    well(bench, "/api/pages?part=0").await;
    let asked = json!({"part": 0, "bar": 1, "begins": "page", "version": version});
    version = done(bench, "/api/break", asked).await;
    for text in ["all 1/1 up", "all 1/1 sideways", ""] {
        done(bench, "/api/shorthand", json!({"text": text})).await;
    }
    let late = json!({"act": {"act": "tempo"}, "version": 0});
    assert_eq!(post(bench, "/api/acts", &late).await.0, StatusCode::CONFLICT);
    for what in ["layer", "picture?first=0&last=1", "aside", "parts", "sheet", "pdf?first=0&last=1"] {
        let (status, kept) = post(bench, &format!("/api/keep/{what}"), &json!({"by": "a test"})).await;
        assert!(matches!(status, StatusCode::OK | StatusCode::UNPROCESSABLE_ENTITY), "{what}: {kept}");
        let (status, _) = get(bench, &format!("/api/export/{what}")).await;
        assert!(matches!(status, StatusCode::OK | StatusCode::UNPROCESSABLE_ENTITY), "{what}");
    }
    for language in ["en", "it", "fr", "de"] {
        well(bench, &format!("/api/rules/bow-drift?language={language}")).await;
    }
    for wrong in [
        "/api/rules/none",
        "/api/rules/bow-drift?language=xx",
        "/api/strokes?line=99",
        "/api/strokes",
        "/api/system?width=1",
        "/api/export/none",
    ] {
        let (status, text) = get(bench, wrong).await;
        assert!(status.is_client_error(), "{wrong}: {text}");
    }
    change_the_score(bench, version).await;
}

/// What changes slurs: in the layer, in the score, and the proposals of the review.
async fn change_the_score(bench: &Bench, mut version: u64) {
    for stroke in 0..40 {
        let asked = json!({"line": 0, "stroke": stroke, "is": "bow", "version": version});
        let (status, done) = post(bench, "/api/slur", &asked).await;
        if status == StatusCode::OK {
            version = done["version"].as_u64().expect("a version");
            break;
        }
    }
    let mut offers = Value::Null;
    for stroke in 0..40 {
        offers = well(bench, &format!("/api/slurs?line=0&stroke={stroke}")).await;
        if offers.as_array().is_some_and(|offers| !offers.is_empty()) {
            break;
        }
    }
    let offer = offers[0].clone();
    let (first, last) = (offer["first"].clone(), offer["last"].clone());
    done(
        bench,
        "/api/look",
        json!({"edits": offer["edits"], "line": 0, "first": first, "last": last, "version": version}),
    )
    .await;
    version = done(bench, "/api/slurs/layer", json!({"edits": offer["edits"], "version": version})).await;
    done(bench, "/api/undo", json!({"by": "a test"})).await;
    version += 1;
    let findings = well(bench, "/api/findings").await;
    let all = findings["findings"].as_array().expect("findings");
    let place = all.iter().enumerate().find_map(|(number, finding)| {
        let writable = finding["writable"].as_array()?;
        Some((number, writable.iter().position(|writable| *writable == true)?))
    });
    let mut changed = false;
    if let Some((finding, proposal)) = place {
        let asked = json!({"finding": finding, "proposal": proposal, "version": version});
        let (status, done) = post(bench, "/api/proposal", &asked).await;
        if status == StatusCode::OK {
            version = done["version"].as_u64().expect("a version");
            changed = true;
        }
    }
    if !changed {
        let change = json!({"act": "change", "sentence": "A slur", "edits": offer["edits"]});
        act(bench, version, change).await;
    }
    done(bench, "/api/write", json!({"by": "a test"})).await;
}

#[tokio::test(flavor = "multi_thread")]
async fn every_address_answers_as_it_is_described() {
    let study = "quarter=60\nviolin: mf 1/4 C5 D5 E5 F5 | (G5 F5) 1/2 E5 | 1/4 C5 D5 E5 F5 | (1/1 G5 | 1/1 A5 | 1/1 B5) |||";
    for score in [arcata_testkit::musicxml(study), demo("lantern-study"), demo("ferry-bell-quartet")] {
        let bench = bench_of(&score);
        looks(&bench).await;
        acts(&bench).await;
        looks(&bench).await;
        hears(&bench).await;
    }
    let description = description(&bench_of(&arcata_testkit::musicxml(study))).await;
    let answered = ANSWERED.lock().expect("no panic").clone();
    let mut missing = BTreeSet::new();
    for (path, operations) in description["paths"].as_object().expect("addresses") {
        for method in operations.as_object().expect("operations").keys() {
            let name = format!("{method} {path}");
            // A stream, and files, which are no JSON.
            if !answered.contains(&name)
                && !["get /api/events", "get /api/export/{what}"].contains(&name.as_str())
            {
                missing.insert(name);
            }
        }
    }
    assert!(missing.is_empty(), "never answered well: {missing:?}");
}

/// What pages are told without asking.
async fn hears(bench: &Bench) {
    let asked = request(Method::GET, "/api/events").body(Body::empty()).expect("a request");
    let mut events = bench.router.clone().oneshot(asked).await.expect("answers").into_body();
    done(bench, "/api/undo", json!({"by": "a test"})).await;
    let frame = events.frame().await.expect("an event").expect("a frame").into_data().expect("data");
    let text = String::from_utf8(frame.to_vec()).expect("UTF-8");
    let data = text.lines().find_map(|line| line.strip_prefix("data: ")).expect("data").to_owned();
    holds(&component(bench, "Happened").await, data.as_bytes(), "an event");
}
