//! The command line and the workbench say the same of one score: strokes, findings, what is taken for given.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests read what they made")]

use std::net::SocketAddr;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use arcata_desk::Shared;
use arcata_workbench::{AccessKey, open_session, router};
use assert_cmd::Command;
use axum::Router;
use axum::body::Body;
use axum::http::{Request, header};
use http_body_util::BodyExt as _;
use serde_json::{Value, json};
use tower::ServiceExt as _;

const PORT: u16 = 4242;

/// How a score is asked about: what the command line is told, and the acts on the workbench.
struct Asked {
    arguments: &'static [&'static str],
    acts: Vec<Value>,
}

fn ways_to_ask() -> Vec<Asked> {
    vec![
        Asked { arguments: &[], acts: Vec::new() },
        Asked {
            arguments: &["--louder", "2", "--tempo", "84"],
            acts: vec![json!({"act": "louder", "steps": 2}), json!({"act": "tempo", "quarters": 84})],
        },
        Asked {
            arguments: &["--profile", "student", "--style", "early"],
            acts: vec![
                json!({"act": "player", "profile": "student"}),
                json!({"act": "style", "style": "early"}),
            ],
        },
    ]
}

fn demos() -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../demo");
    let mut found: Vec<PathBuf> = std::fs::read_dir(folder)
        .expect("the demos")
        .filter_map(|entry| Some(entry.ok()?.path()))
        .filter(|path| path.extension().is_some_and(|ending| ending == "musicxml"))
        .collect();
    found.sort();
    found
}

/// What a command prints as JSON.
fn told(command: &str, score: &Path, arguments: &[&str]) -> Value {
    let mut run = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    let output =
        run.arg(command).arg(score).args(["--format", "json"]).args(arguments).output().expect("runs");
    serde_json::from_slice(&output.stdout).expect("JSON")
}

async fn answer(router: &Router, request: Request<Body>) -> Value {
    let response = router.clone().oneshot(request).await.expect("answers");
    let bytes = response.into_body().collect().await.expect("a body").to_bytes();
    serde_json::from_slice(&bytes).expect("JSON")
}

fn request(method: &str, path: &str) -> axum::http::request::Builder {
    let builder = Request::builder().method(method).uri(path);
    let builder = builder.header(header::HOST, format!("127.0.0.1:{PORT}"));
    builder.header(header::COOKIE, format!("arcata-{PORT}=right"))
}

async fn get(router: &Router, path: &str) -> Value {
    answer(router, request("GET", path).body(Body::empty()).expect("a request")).await
}

async fn act(router: &Router, act: &Value, version: usize) {
    let request = request("POST", "/api/acts")
        .header(header::ORIGIN, format!("http://127.0.0.1:{PORT}"))
        .header(header::CONTENT_TYPE, "application/json");
    let body = Body::from(json!({"act": act, "version": version}).to_string());
    let done = answer(router, request.body(body).expect("a request")).await;
    assert_eq!(done["version"], json!(version + 1), "{act}: {done}");
}

/// A stroke without what only one of the two says.
fn bare(stroke: &Value) -> Value {
    let link = match stroke["link"].as_str() {
        Some("hook") => "hooked",
        Some(other) => other,
        None => "",
    };
    let bow = if stroke["bow"].is_null() { &stroke["direction"] } else { &stroke["bow"] };
    json!([bow, link, stroke["start"], stroke["end"], stroke["printed"]])
}

fn list(value: &Value) -> &[Value] {
    value.as_array().map_or(&[], Vec::as_slice)
}

async fn assert_same(score: &Path, asked: &Asked) {
    let name = format!("{} {:?}", score.display(), asked.arguments);
    let folder = tempfile::tempdir().expect("a folder");
    let copy = folder.path().join("study.musicxml");
    std::fs::copy(score, &copy).expect("a copy");
    let session = open_session(&copy, None).expect("opens");
    let address = SocketAddr::from(([127, 0, 0, 1], PORT));
    let router = router(Shared::new(session, Arc::default()), AccessKey::of("right"), address);
    for (version, one) in asked.acts.iter().enumerate() {
        act(&router, one, version).await;
    }

    let plan = &told("plan", score, asked.arguments)[0];
    let desk = get(&router, "/api/score").await;
    assert_eq!(plan["assumptions"], desk["assumptions"], "{name}");
    assert_eq!(list(&plan["lines"]).len(), list(&desk["lines"]).len(), "{name}");
    for (index, line) in list(&plan["lines"]).iter().enumerate() {
        let strokes = get(&router, &format!("/api/strokes?line={index}")).await;
        let (one, other): (Vec<Value>, Vec<Value>) =
            (list(&line["strokes"]).iter().map(bare).collect(), list(&strokes).iter().map(bare).collect());
        assert_eq!(one, other, "{name}, line {index}");
        assert!(!one.is_empty(), "{name}: a line has strokes");
    }

    let review = told("review", score, asked.arguments);
    let found = get(&router, "/api/findings").await;
    let on_the_desk: Vec<&Value> = list(&found["findings"]).iter().map(|found| &found["finding"]).collect();
    let told: Vec<&Value> = list(&review["files"][0]["findings"]).iter().collect();
    assert_eq!(told, on_the_desk, "{name}");
    assert_eq!(review["files"][0]["assumptions"], desk["assumptions"], "{name}");
}

#[tokio::test]
async fn the_command_line_and_the_workbench_say_the_same_of_every_demo() {
    let demos = demos();
    assert!(demos.len() >= 8, "{demos:?}");
    for score in &demos {
        for asked in ways_to_ask() {
            assert_same(score, &asked).await;
        }
    }
}
