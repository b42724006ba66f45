//! The addresses of the server: the page, what it asks of the desk, and what it is told.
#![allow(unused_qualifications, reason = "the descriptions that utoipa makes name types in full")]

use std::collections::BTreeMap;
use std::net::SocketAddr;
use std::sync::Arc;

use arcata_desk::{AskedBy, Failed, LARGEST_ACT, PDF_TYPE, PageAnswer, PageRequest, Shared, asked_by};
use arcata_engrave::music_style_sheet;
use axum::body::{Body, Bytes};
use axum::extract::{DefaultBodyLimit, Path, State};
use axum::http::{HeaderMap, Method, StatusCode, Uri, header};
use axum::response::{IntoResponse, Response};
use axum::routing::{any, get};
use axum::{Router, middleware};
use tokio::sync::broadcast;
use utoipa::OpenApi;

use crate::events;
use crate::guard::{AccessKey, Guard, guard};
use crate::in_time::in_time;
use crate::page;
use crate::presence::Presence;
use crate::print_shop::PdfShop;
use crate::refusal::{HttpRefusal, work};

/// A limit: so many events wait for a page that is slow to hear them.
const WAITING: usize = 64;

/// What all addresses share.
#[derive(Clone)]
struct Served {
    shared: Shared,
    happened: broadcast::Sender<arcata_desk::Happened>,
    presence: Presence,
}

/// Everything behind the guard, and the desk as it answers there.
pub fn router(shared: Shared, key: AccessKey, address: SocketAddr) -> Router {
    serving(shared, key, address, Presence::default()).0
}

pub(crate) fn serving(
    shared: Shared,
    key: AccessKey,
    address: SocketAddr,
    presence: Presence,
) -> (Router, Shared) {
    let (happened, _) = broadcast::channel(WAITING);
    let telling = happened.clone();
    let shared = shared.with_print_shop(Arc::new(PdfShop)).telling(move |event| {
        // Nobody listening is no trouble.
        let _ = telling.send(event.clone());
    });
    let style = || async { ([(header::CONTENT_TYPE, "text/css; charset=utf-8")], music_style_sheet()) };
    let routes = Router::new()
        .route("/", get(|| async { page::index() }))
        .route("/fonts.css", get(style))
        .route("/page/{file}", get(|Path(file): Path<String>| async move { page::file(&file) }))
        .route("/api/events", get(listen))
        .route("/api/openapi.json", get(openapi))
        .route("/api/{*path}", any(asked))
        .layer(DefaultBodyLimit::max(LARGEST_ACT))
        .layer(middleware::from_fn(in_time))
        .layer(middleware::from_fn_with_state(Guard { key, address }, guard))
        .with_state(Served { shared: shared.clone(), happened, presence });
    (routes, shared)
}

/// What the page asks of the desk.
async fn asked(
    State(Served { shared, .. }): State<Served>,
    (method, uri): (Method, Uri),
    headers: HeaderMap,
    body: Bytes,
) -> Result<Response, HttpRefusal> {
    let path = uri.path().trim_start_matches("/api/").to_owned();
    let known = asked_by(&path).ok_or_else(|| Failed::missing("there is nothing at this address"))?;
    let by = match method {
        Method::GET | Method::HEAD => Some(AskedBy::Get),
        Method::POST => Some(AskedBy::Post),
        _ => None,
    };
    if by != Some(known) {
        let refused = HttpRefusal::from(Failed::new(Failed::NOT_SO, "this address is asked in another way"));
        let allowed = if known == AskedBy::Get { "GET,HEAD" } else { "POST" };
        return Ok(([(header::ALLOW, allowed)], refused).into_response());
    }
    let said = |name| headers.get(name).and_then(|value| value.to_str().ok()).unwrap_or_default();
    if known == AskedBy::Post && !said(header::CONTENT_TYPE).starts_with("application/json") {
        return Err(Failed::new(Failed::NOT_JSON, "what is sent to this address is JSON").into());
    }
    let request = PageRequest {
        by: known,
        path,
        query: uri.query().unwrap_or_default().to_owned(),
        languages: said(header::ACCEPT_LANGUAGE).to_owned(),
        body: body.to_vec(),
    };
    sent(work(move || Ok(shared.answer(request))).await?)
}

/// An answer as HTTP has it.
fn sent(answer: PageAnswer) -> Result<Response, HttpRefusal> {
    let mut response = Response::builder().status(answer.status).header(header::CONTENT_TYPE, answer.kind);
    if let Some(name) = answer.file {
        let plain = |letter: &char| letter.is_ascii_graphic() && !"\"\\;".contains(*letter);
        let name: String = name.chars().filter(plain).collect();
        // What browsers show by themselves they show: from there it is printed.
        let how = if answer.kind == PDF_TYPE { "inline" } else { "attachment" };
        response = response.header(header::CONTENT_DISPOSITION, format!("{how}; filename=\"{name}\""));
    }
    response
        .body(Body::from(answer.bytes))
        .map_err(|_| Failed::new(Failed::BROKEN, "the answer cannot be sent").into())
}

/// What happens, as server-sent events.
#[utoipa::path(get, path = "/api/events", responses((status = 200, description = "a stream of events", content_type = "text/event-stream")))]
async fn listen(State(Served { happened, presence, .. }): State<Served>) -> impl IntoResponse {
    events::stream(happened.subscribe(), presence.enter())
}

/// What the server has beside the desk, described.
#[derive(OpenApi)]
#[openapi(paths(listen))]
struct EventsDescription;

async fn openapi() -> Result<axum::Json<BTreeMap<String, serde_json::Value>>, StatusCode> {
    let described = arcata_desk::Description::openapi().merge_from(EventsDescription::openapi());
    let text = described.to_json().map_err(|_| StatusCode::INTERNAL_SERVER_ERROR)?;
    let described = serde_json::from_str(&text).map_err(|_| StatusCode::INTERNAL_SERVER_ERROR)?;
    Ok(axum::Json(described))
}
