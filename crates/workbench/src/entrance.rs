//! What is shown while no score is open: those opened last, the folders of this machine, the demos. What is chosen takes the
//! place of the entrance, on the same address.

use std::path::{Path, PathBuf};
use std::sync::{Arc, PoisonError, RwLock};

use arcata_desk::Failed;
use arcata_engrave::music_style_sheet;
use axum::extract::{DefaultBodyLimit, Path as InAddress, Query, Request, State};
use axum::http::header;
use axum::response::{Html, IntoResponse, Response};
use axum::routing::{get, post};
use axum::{Json, Router, middleware};
use serde::{Deserialize, Serialize};
use tower::ServiceExt as _;

use crate::events;
use crate::guard::{Guard, guard};
use crate::last_scores;
use crate::opener::{OpenedScore, Opener};
use crate::page;
use crate::refusal::{HttpRefusal, work};
use crate::running::AGAIN;

/// A limit: what is chosen is said in less, bytes.
const LARGEST_CHOICE: usize = 1 << 16;
/// A limit: so many folders and so many scores of one folder are shown.
const MOST_SHOWN: usize = 2_000;
/// How a score's name ends (MusicXML 4.0; `.xml` is common practice).
const ENDINGS: [&str; 3] = ["musicxml", "mxl", "xml"];

/// A score that the program brings.
#[derive(Clone, Copy, Debug)]
pub struct DemoScore {
    /// The name of its file, without its ending.
    pub name: &'static str,
    /// The file.
    pub music: &'static str,
}

/// What answers now: the entrance, or a score once it is chosen.
#[derive(Clone)]
pub(crate) struct FrontDoor {
    now: Arc<RwLock<Router>>,
    opener: Arc<Opener>,
}

impl FrontDoor {
    /// The entrance.
    pub(crate) fn at_the_entrance(opener: Opener) -> Self {
        let front = Self { now: Arc::default(), opener: Arc::new(opener) };
        front.show(entrance(&front));
        front
    }

    /// A score that is open already.
    pub(crate) fn with_score(opener: Opener, score: Router) -> Self {
        Self { now: Arc::new(RwLock::new(score)), opener: Arc::new(opener) }
    }

    fn show(&self, router: Router) {
        *self.now.write().unwrap_or_else(PoisonError::into_inner) = router;
    }

    /// Everything that the server answers.
    pub(crate) fn router(self) -> Router {
        let guarded = Guard { key: self.opener.key.clone(), address: self.opener.address };
        Router::new()
            .route(AGAIN, post(again))
            .route_layer(middleware::from_fn_with_state(guarded, guard))
            .fallback(pass_on)
            .with_state(self)
    }
}

async fn pass_on(State(front): State<FrontDoor>, request: Request) -> Response {
    let now = front.now.read().unwrap_or_else(PoisonError::into_inner).clone();
    now.oneshot(request).await.unwrap_or_else(|never| match never {})
}

/// A ticket for a second start with the same score.
async fn again(State(front): State<FrontDoor>) -> Result<String, HttpRefusal> {
    front.opener.key.fresh_ticket().map_err(|why| Failed::new(Failed::BROKEN, why).into())
}

fn entrance(front: &FrontDoor) -> Router {
    let guarded = Guard { key: front.opener.key.clone(), address: front.opener.address };
    let style = || async { ([(header::CONTENT_TYPE, "text/css; charset=utf-8")], music_style_sheet()) };
    Router::new()
        .route("/", get(|| async { Html(include_str!("../page/entrance.html")) }))
        .route("/fonts.css", get(style))
        .route("/page/{file}", get(|InAddress(file): InAddress<String>| async move { page::file(&file) }))
        .route("/entrance/offer", get(offer))
        .route("/entrance/folder", get(folder))
        .route("/entrance/open", post(open))
        .route("/entrance/forget", post(forget))
        .route("/entrance/here", get(here))
        .layer(DefaultBodyLimit::max(LARGEST_CHOICE))
        .layer(middleware::from_fn_with_state(guarded, guard))
        .with_state(front.clone())
}

/// A score as it is offered.
#[derive(Debug, Serialize)]
struct OfferedScore {
    path: String,
    name: String,
    folder: String,
}

#[derive(Debug, Serialize)]
struct EntranceOffer {
    last: Vec<OfferedScore>,
    demos: Vec<&'static str>,
    /// Where looking begins.
    folder: String,
    /// Whether what was opened is remembered.
    remembers: bool,
}

fn text(path: &Path) -> String {
    path.to_string_lossy().into_owned()
}

fn name(path: &Path) -> String {
    path.file_name().unwrap_or_default().to_string_lossy().into_owned()
}

async fn offer(State(front): State<FrontDoor>) -> Result<Json<EntranceOffer>, HttpRefusal> {
    work(move || {
        let own = front.opener.own_folder.as_deref();
        let last = own.map(last_scores::read).unwrap_or_default();
        let offered = |path: PathBuf| OfferedScore {
            name: name(&path),
            folder: path.parent().map(text).unwrap_or_default(),
            path: text(&path),
        };
        Ok(Json(EntranceOffer {
            last: last.into_iter().map(offered).collect(),
            demos: front.opener.demos.iter().map(|demo| demo.name).collect(),
            folder: text(&front.opener.looks_in),
            remembers: own.is_some(),
        }))
    })
    .await
}

#[derive(Debug, Deserialize)]
struct LookedAt {
    at: PathBuf,
}

/// What is in a folder, in order of names; what is hidden is left out.
#[derive(Debug, Serialize)]
struct FolderView {
    folder: String,
    parent: Option<String>,
    folders: Vec<OfferedScore>,
    scores: Vec<OfferedScore>,
    /// More than is shown.
    more: bool,
}

async fn folder(Query(LookedAt { at }): Query<LookedAt>) -> Result<Json<FolderView>, HttpRefusal> {
    work(move || look(&at).map(Json)).await
}

fn look(at: &Path) -> Result<FolderView, Failed> {
    let said = |problem: std::io::Error| Failed::impossible(format!("{}: {problem}", at.display()));
    let at = std::path::absolute(at).map_err(said)?;
    let (mut folders, mut scores) = (Vec::new(), Vec::new());
    for entry in std::fs::read_dir(&at).map_err(said)?.flatten() {
        let path = entry.path();
        let called = name(&path);
        if called.starts_with('.') {
            continue;
        }
        let ending = path.extension().and_then(|ending| ending.to_str()).map(str::to_ascii_lowercase);
        let offered = OfferedScore { path: text(&path), name: called, folder: text(&at) };
        if path.is_dir() {
            folders.push(offered);
        } else if ending.is_some_and(|ending| ENDINGS.contains(&ending.as_str())) {
            scores.push(offered);
        }
    }
    let more = folders.len() > MOST_SHOWN || scores.len() > MOST_SHOWN;
    for list in [&mut folders, &mut scores] {
        list.sort_by_cached_key(|one| (one.name.to_lowercase(), one.name.clone()));
        list.truncate(MOST_SHOWN);
    }
    Ok(FolderView { folder: text(&at), parent: at.parent().map(text), folders, scores, more })
}

/// What was chosen: a file, or a demo by its name.
#[derive(Debug, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
enum EntranceChoice {
    Score(PathBuf),
    Demo(String),
}

/// Where the page goes on.
#[derive(Debug, Serialize)]
struct GoTo {
    /// The address; nothing where it is this one.
    address: Option<String>,
}

async fn open(
    State(front): State<FrontDoor>,
    Json(choice): Json<EntranceChoice>,
) -> Result<Json<GoTo>, HttpRefusal> {
    let score = match choice {
        EntranceChoice::Score(score) => score,
        EntranceChoice::Demo(name) => {
            let opener = front.opener.clone();
            work(move || opener.demo(&name)).await?
        }
    };
    let opened = front.opener.open(score).await?;
    Ok(Json(match opened {
        OpenedScore::Here(router) => {
            front.show(router);
            GoTo { address: None }
        }
        OpenedScore::Elsewhere(address) => GoTo { address: Some(address) },
    }))
}

async fn forget(State(front): State<FrontDoor>) -> Result<(), HttpRefusal> {
    work(move || {
        if let Some(own) = &front.opener.own_folder {
            last_scores::forget(own);
        }
        Ok(())
    })
    .await
}

/// Says that the page is open, and nothing else.
async fn here(State(front): State<FrontDoor>) -> impl IntoResponse {
    events::silent(front.opener.presence.enter())
}
