//! What pages are told without asking: that something was done, in this tab or another, or that the file has changed.

use axum::response::sse::{Event, KeepAlive, Sse};
use futures_util::Stream;
use serde::Serialize;
use tokio::sync::broadcast;
use tokio_stream::StreamExt as _;
use tokio_stream::wrappers::BroadcastStream;
use utoipa::ToSchema;

use crate::views::DoneView;

/// Something happened.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[serde(tag = "event", rename_all = "kebab-case")]
pub(crate) enum Happened {
    /// Something was done or undone.
    Done {
        /// What it came to.
        done: DoneView,
        /// The page that did it, by the name it gave itself.
        by: String,
    },
    /// The file on the disk is another now, and cannot be read.
    Unreadable {
        /// In words.
        why: String,
    },
}

/// The events as a page hears them. One that was too slow is told to look again.
pub(crate) fn stream(
    happened: broadcast::Receiver<Happened>,
) -> Sse<impl Stream<Item = Result<Event, std::convert::Infallible>>> {
    let events = BroadcastStream::new(happened).map(|happened| {
        let event = match happened {
            Ok(happened) => Event::default().json_data(&happened).unwrap_or_default(),
            Err(_) => Event::default().event("missed").data("look again"),
        };
        Ok(event)
    });
    Sse::new(events).keep_alive(KeepAlive::default())
}
