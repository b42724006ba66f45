#![allow(dead_code, reason = "each test file uses a part of it")]
//! A workbench without a network, asked as the page asks. Whatever JSON it answers is held against its own description.

pub(crate) mod described;

use std::net::SocketAddr;
use std::path::PathBuf;
use std::sync::Arc;

use arcata_desk::Shared;
use arcata_workbench::{AccessKey, open_session, router};
use axum::Router;
use axum::body::Body;
use axum::http::{Method, Request, StatusCode, header};
use http_body_util::BodyExt as _;
use serde_json::Value;
use tower::ServiceExt as _;

pub(crate) const PORT: u16 = 4242;
pub(crate) const MUSIC: &str =
    "quarter=60\nviolin: mf 1/4 C5 D5 E5 F5 | (G5 F5) 1/2 E5 | 1/4 C5 D5 E5 F5 | 1/1 G5 |||";

pub(crate) struct Bench {
    pub(crate) folder: tempfile::TempDir,
    pub(crate) router: Router,
}

impl Bench {
    pub(crate) fn score(&self) -> PathBuf {
        self.folder.path().join("study.musicxml")
    }
}

pub(crate) fn bench() -> Bench {
    bench_of(&arcata_testkit::musicxml(MUSIC))
}

pub(crate) fn bench_of(xml: &str) -> Bench {
    bench_for(xml, AccessKey::of("right"))
}

pub(crate) fn bench_with(key: AccessKey) -> Bench {
    bench_for(&arcata_testkit::musicxml(MUSIC), key)
}

fn bench_for(xml: &str, key: AccessKey) -> Bench {
    let folder = tempfile::tempdir().expect("a folder");
    let score = folder.path().join("study.musicxml");
    std::fs::write(&score, xml).expect("a score");
    std::fs::write(folder.path().join("secret.txt"), "not to be served").expect("a file");
    let session = open_session(&score, None).expect("opens");
    let address = SocketAddr::from(([127, 0, 0, 1], PORT));
    Bench { folder, router: router(Shared::new(session, Arc::default()), key, address) }
}

/// A request as the page makes it; each test spoils one thing.
pub(crate) fn request(method: Method, path: &str) -> axum::http::request::Builder {
    let builder = Request::builder()
        .method(method.clone())
        .uri(path)
        .header(header::HOST, format!("127.0.0.1:{PORT}"))
        .header(header::COOKIE, format!("arcata-{PORT}=right"));
    if method == Method::GET {
        builder
    } else {
        builder
            .header(header::ORIGIN, format!("http://127.0.0.1:{PORT}"))
            .header(header::CONTENT_TYPE, "application/json")
    }
}

pub(crate) async fn answer(bench: &Bench, request: Request<Body>) -> (StatusCode, String) {
    let asked = (request.method().clone(), request.uri().path().to_owned());
    let response = bench.router.clone().oneshot(request).await.expect("answers");
    let policy = response.headers().get("content-security-policy").and_then(|policy| policy.to_str().ok());
    assert!(policy.is_some_and(|policy| policy.contains("script-src 'self';")), "no script of anybody else");
    let status = response.status();
    let kind =
        response.headers().get(header::CONTENT_TYPE).and_then(|kind| kind.to_str().ok()).unwrap_or_default();
    let is_json = kind.starts_with("application/json");
    let bytes = response.into_body().collect().await.expect("a body").to_bytes();
    if is_json {
        described::hold(bench, &asked, status, &bytes).await;
    }
    (status, String::from_utf8_lossy(&bytes).into_owned())
}

pub(crate) async fn get(bench: &Bench, path: &str) -> (StatusCode, String) {
    answer(bench, request(Method::GET, path).body(Body::empty()).expect("a request")).await
}

pub(crate) async fn post(bench: &Bench, path: &str, body: &Value) -> (StatusCode, Value) {
    let request = request(Method::POST, path).body(Body::from(body.to_string())).expect("a request");
    let (status, text) = answer(bench, request).await;
    (status, serde_json::from_str(&text).unwrap_or(Value::String(text)))
}
