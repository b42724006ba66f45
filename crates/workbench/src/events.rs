//! What pages are told without asking, as server-sent events.

use arcata_desk::Happened;
use axum::response::sse::{Event, KeepAlive, Sse};
use futures_util::Stream;
use tokio::sync::broadcast;
use tokio_stream::StreamExt as _;
use tokio_stream::wrappers::BroadcastStream;

use crate::presence::Present;

/// The events as a page hears them. One that was too slow is told to look again.
pub(crate) fn stream(
    happened: broadcast::Receiver<Happened>,
    page: Present,
) -> Sse<impl Stream<Item = Result<Event, std::convert::Infallible>>> {
    let events = BroadcastStream::new(happened).map(move |happened| {
        // The page is there for as long as it listens.
        let _present = &page;
        let event = match happened {
            Ok(happened) => Event::default().json_data(&happened).unwrap_or_default(),
            Err(_) => Event::default().event("missed").data("look again"),
        };
        Ok(event)
    });
    Sse::new(events).keep_alive(KeepAlive::default())
}

/// A stream in which nothing happens: it tells that the page is there.
pub(crate) fn silent(page: Present) -> Sse<impl Stream<Item = Result<Event, std::convert::Infallible>>> {
    let nothing = tokio_stream::pending().map(move |event| {
        let _present = &page;
        event
    });
    Sse::new(nothing).keep_alive(KeepAlive::default())
}
