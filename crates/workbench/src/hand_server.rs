//! A class gone through in the browser: the page, the sheets, and a journal beside the task, behind the same guard as a score.

use std::net::SocketAddr;
use std::path::{Path as FilePath, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};

use arcata_desk::Failed;
use axum::extract::{DefaultBodyLimit, Path, State};
use axum::http::{StatusCode, header};
use axum::response::{Html, IntoResponse, Response};
use axum::routing::get;
use axum::{Router, middleware};

use crate::guard::{AccessKey, Guard, guard};
use crate::hand_journal::HandJournal;
use crate::in_time::in_time;
use crate::journal::JournalError;
use crate::refusal::{HttpRefusal, work};
use crate::server::{ServeError, WorkbenchAddress, listen};

/// A limit: a line of the journal, the state of one sheet with the teacher's sentences.
const LARGEST_LINE: usize = 1 << 20;
/// A limit: a sheet with its pictures.
const LARGEST_SHEET: usize = 64 << 20;

/// What the page of a teacher's hand is served with.
#[derive(Clone, Debug)]
pub struct HandServeSettings {
    /// The page.
    pub page: String,
    /// Its script.
    pub script: &'static str,
    /// The folder with the sheets.
    pub sheets: PathBuf,
    /// The journal.
    pub journal: PathBuf,
    /// Its first line.
    pub head: String,
    /// A line of it, with its end, from what the page sends; nothing where that is no act.
    pub line: fn(&str) -> Option<String>,
    /// The port; 0 for any that is free.
    pub port: u16,
}

#[derive(Clone)]
struct HandShared {
    settings: Arc<HandServeSettings>,
    journal: Arc<Mutex<HandJournal>>,
}

/// Serves the page until it is asked to stop; `ready` gets the address that opens it, and one that opens it once.
///
/// # Errors
/// A journal that cannot be opened, a port that is taken.
pub fn serve_hand(
    settings: HandServeSettings,
    ready: impl FnOnce(&WorkbenchAddress) + Send,
) -> Result<(), ServeError> {
    let said = |problem: JournalError| ServeError::Other(problem.to_string());
    let journal = HandJournal::open(&settings.journal, &settings.head).map_err(said)?;
    let port = settings.port;
    let shared = HandShared { settings: Arc::new(settings), journal: Arc::new(Mutex::new(journal)) };
    listen(port, None, |key, address| hand_router(shared, key, address), ready)
}

fn hand_router(shared: HandShared, key: AccessKey, address: SocketAddr) -> Router {
    Router::new()
        .route("/", get(|State(shared): State<HandShared>| async move { Html(shared.settings.page.clone()) }))
        .route("/hand.js", get(script))
        .route("/sheets/{file}", get(sheet))
        .route("/journal", get(read).post(put))
        .layer(DefaultBodyLimit::max(LARGEST_LINE))
        .layer(middleware::from_fn(in_time))
        .layer(middleware::from_fn_with_state(Guard { key, address }, guard))
        .with_state(shared)
}

async fn script(State(shared): State<HandShared>) -> Response {
    ([(header::CONTENT_TYPE, "text/javascript; charset=utf-8")], shared.settings.script).into_response()
}

async fn sheet(State(shared): State<HandShared>, Path(file): Path<String>) -> Result<Response, HttpRefusal> {
    let missing = || Failed::missing("there is no such sheet");
    let kind = match FilePath::new(&file).extension().and_then(|ending| ending.to_str()) {
        Some("html") => "text/html; charset=utf-8",
        Some("pdf") => "application/pdf",
        _ => return Err(missing().into()),
    };
    // A name alone: nothing but what lies in the folder.
    if FilePath::new(&file).file_name().and_then(|name| name.to_str()) != Some(file.as_str()) {
        return Err(missing().into());
    }
    let path = shared.settings.sheets.join(&file);
    let bytes = work(move || arcata_files::read(&path, LARGEST_SHEET).map_err(|_| missing())).await?;
    Ok(([(header::CONTENT_TYPE, kind)], bytes).into_response())
}

fn failed(problem: &JournalError) -> Failed {
    Failed::new(Failed::BROKEN, problem.to_string())
}

async fn read(State(shared): State<HandShared>) -> Result<String, HttpRefusal> {
    work(move || {
        let journal = shared.journal.lock().unwrap_or_else(PoisonError::into_inner);
        journal.text().map_err(|problem| failed(&problem))
    })
    .await
}

async fn put(State(shared): State<HandShared>, line: String) -> Result<StatusCode, HttpRefusal> {
    let line = (shared.settings.line)(&line).ok_or_else(|| Failed::impossible("this is no act"))?;
    work(move || {
        let mut journal = shared.journal.lock().unwrap_or_else(PoisonError::into_inner);
        journal.put(&line).map_err(|problem| failed(&problem))
    })
    .await?;
    Ok(StatusCode::NO_CONTENT)
}
