//! The page's own files, inside the program.

use axum::http::{StatusCode, header};
use axum::response::{Html, IntoResponse, Response};

/// A file of the page: its path, its kind, its text.
type PageFile = (&'static str, &'static str, &'static str);

const SCRIPT: &str = "text/javascript; charset=utf-8";

const FILES: [PageFile; 22] = [
    ("style.css", "text/css; charset=utf-8", include_str!("../page/style.css")),
    ("start.css", "text/css; charset=utf-8", include_str!("../page/start.css")),
    ("entrance.mjs", SCRIPT, include_str!("../page/entrance.mjs")),
    ("main.mjs", SCRIPT, include_str!("../page/main.mjs")),
    ("piece.mjs", SCRIPT, include_str!("../page/piece.mjs")),
    ("server.mjs", SCRIPT, include_str!("../page/server.mjs")),
    ("transport.mjs", SCRIPT, include_str!("../page/transport.mjs")),
    ("score.mjs", SCRIPT, include_str!("../page/score.mjs")),
    ("strokes.mjs", SCRIPT, include_str!("../page/strokes.mjs")),
    ("findings.mjs", SCRIPT, include_str!("../page/findings.mjs")),
    ("ways.mjs", SCRIPT, include_str!("../page/ways.mjs")),
    ("layers.mjs", SCRIPT, include_str!("../page/layers.mjs")),
    ("files.mjs", SCRIPT, include_str!("../page/files.mjs")),
    ("keys.mjs", SCRIPT, include_str!("../page/keys.mjs")),
    ("pages.mjs", SCRIPT, include_str!("../page/pages.mjs")),
    ("pencil.mjs", SCRIPT, include_str!("../page/pencil.mjs")),
    ("overview.mjs", SCRIPT, include_str!("../page/overview.mjs")),
    ("downbeats.mjs", SCRIPT, include_str!("../page/downbeats.mjs")),
    ("sound.mjs", SCRIPT, include_str!("../page/sound.mjs")),
    ("words.mjs", SCRIPT, include_str!("../page/words.mjs")),
    ("elements.mjs", SCRIPT, include_str!("../page/elements.mjs")),
    ("icon.svg", "image/svg+xml", include_str!("../page/icon.svg")),
];

/// The page.
pub(crate) fn index() -> Html<&'static str> {
    Html(include_str!("../page/index.html"))
}

/// A file of the page.
pub(crate) fn file(name: &str) -> Response {
    match FILES.iter().find(|(known, ..)| *known == name) {
        Some((_, kind, text)) => ([(header::CONTENT_TYPE, *kind)], *text).into_response(),
        None => StatusCode::NOT_FOUND.into_response(),
    }
}

/// What somebody sees who comes without the key.
pub(crate) fn locked() -> (StatusCode, Html<&'static str>) {
    (StatusCode::UNAUTHORIZED, Html(include_str!("../page/locked.html")))
}
