//! What the workbench answers beside what it says of itself.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::{Arc, Mutex, PoisonError};

use arcata_testkit::Published;
use axum::body::Body;
use axum::http::{Method, StatusCode};
use http_body_util::BodyExt as _;
use serde_json::{Value, json};
use tokio::sync::OnceCell;
use tower::ServiceExt as _;

use super::{Bench, request};

static DESCRIPTION: OnceCell<Value> = OnceCell::const_new();
static SCHEMAS: Mutex<BTreeMap<String, Arc<Published>>> = Mutex::new(BTreeMap::new());
/// The operations that were answered well so far, such as `get /api/score`.
pub(crate) static ANSWERED: Mutex<BTreeSet<String>> = Mutex::new(BTreeSet::new());

/// The description of all addresses (OpenAPI).
pub(crate) async fn description(bench: &Bench) -> &'static Value {
    DESCRIPTION
        .get_or_init(async || {
            let asked = request(Method::GET, "/api/openapi.json").body(Body::empty()).expect("a request");
            let response = bench.router.clone().oneshot(asked).await.expect("answers");
            let bytes = response.into_body().collect().await.expect("a body").to_bytes();
            serde_json::from_slice(&bytes).expect("JSON")
        })
        .await
}

/// The address in the description that a path is one of.
fn template<'d>(description: &'d Value, path: &str) -> Option<&'d str> {
    let is_it = |template: &&String| {
        let (named, asked): (Vec<&str>, Vec<&str>) =
            (template.split('/').collect(), path.split('/').collect());
        named.len() == asked.len()
            && named.iter().zip(&asked).all(|(one, other)| one.starts_with('{') || one == other)
    };
    description["paths"].as_object().expect("addresses").keys().find(is_it).map(String::as_str)
}

/// An answer is what the description says: its status is named there, and its body is of that schema.
pub(crate) async fn hold(bench: &Bench, (method, path): &(Method, String), status: StatusCode, body: &[u8]) {
    let description = description(bench).await;
    let method = method.as_str().to_ascii_lowercase();
    // What the guard refuses, and what is at no address, is no operation.
    let refused = [StatusCode::UNAUTHORIZED, StatusCode::FORBIDDEN, StatusCode::MISDIRECTED_REQUEST];
    let Some(template) = template(description, path) else { return };
    let Some(operation) = description["paths"][template].get(&method) else { return };
    if refused.contains(&status) || status == StatusCode::PAYLOAD_TOO_LARGE {
        return;
    }
    let name = format!("{method} {template}");
    let answer = &operation["responses"][status.as_str()];
    assert!(
        answer.is_object(),
        "{name} answers {status}, which is not described: {}",
        String::from_utf8_lossy(body)
    );
    if status == StatusCode::OK {
        ANSWERED.lock().unwrap_or_else(PoisonError::into_inner).insert(name.clone());
    }
    let Some(schema) = answer.pointer("/content/application~1json/schema") else {
        // A file for the browser: a layer is JSON, too, of a schema of its own.
        assert!(template.starts_with("/api/export"), "{name} answers JSON, which is not described");
        return;
    };
    let key = format!("{name} {status}");
    let published = SCHEMAS.lock().unwrap_or_else(PoisonError::into_inner).get(&key).cloned();
    let published = published.unwrap_or_else(|| {
        let made = Published::body(schema, &description["components"]);
        let made = Arc::new(made.unwrap_or_else(|problem| panic!("{key}: {problem}")));
        SCHEMAS.lock().unwrap_or_else(PoisonError::into_inner).insert(key.clone(), made.clone());
        made
    });
    holds(&published, body, &key);
}

pub(crate) fn holds(published: &Published, body: &[u8], what: &str) {
    let value: Value = serde_json::from_slice(body).unwrap_or_else(|problem| panic!("{what}: {problem}"));
    let complaints = published.complaints(&value);
    assert!(complaints.is_empty(), "{what} is not as described: {complaints:#?}");
}

/// The schema of one of the description's components.
pub(crate) async fn component(bench: &Bench, name: &str) -> Published {
    let reference = json!({"$ref": format!("#/components/schemas/{name}")});
    Published::body(&reference, &description(bench).await["components"]).expect("a schema")
}
