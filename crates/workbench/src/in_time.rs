//! A body comes within a time, or not at all: whoever sends a byte now and then holds nothing up for ever.

use std::time::Duration;

use axum::body::{Body, Bytes, to_bytes};
use axum::extract::Request;
use axum::http::StatusCode;
use axum::middleware::Next;
use axum::response::{IntoResponse as _, Response};

/// A limit: a page on the same machine sends its largest layer in less than a second.
const LONGEST: Duration = Duration::from_secs(30);
/// A limit: no address takes a larger body; each has its own, smaller limit.
const LARGEST: usize = 64 << 20;

/// Waits for a request's body, and passes it on whole.
pub(crate) async fn in_time(request: Request, next: Next) -> Response {
    let (head, body) = request.into_parts();
    match whole(body, LARGEST, LONGEST).await {
        Ok(bytes) => next.run(Request::from_parts(head, Body::from(bytes))).await,
        Err((status, why)) => (status, why).into_response(),
    }
}

async fn whole(body: Body, largest: usize, longest: Duration) -> Result<Bytes, (StatusCode, &'static str)> {
    match tokio::time::timeout(longest, to_bytes(body, largest)).await {
        Ok(Ok(bytes)) => Ok(bytes),
        Ok(Err(_)) => Err((StatusCode::PAYLOAD_TOO_LARGE, "this is too large, or broke off; send less")),
        Err(_) => Err((StatusCode::REQUEST_TIMEOUT, "this came too slowly; send it again in one go")),
    }
}

#[cfg(test)]
mod tests {
    use std::convert::Infallible;

    use futures_util::StreamExt as _;
    use futures_util::stream::{iter, pending};

    use super::*;

    #[tokio::test]
    async fn slow_and_oversized_bodies_come_to_an_end() {
        let short = Duration::from_millis(50);
        let piece = |text: &'static [u8]| Ok::<Bytes, Infallible>(Bytes::from_static(text));
        let slow = Body::from_stream(iter([piece(b"{")]).chain(pending()));
        let refused = whole(slow, 100, short).await.unwrap_err();
        assert_eq!(refused.0, StatusCode::REQUEST_TIMEOUT);
        let endless = Body::from_stream(futures_util::stream::repeat(()).map(move |()| piece(b"          ")));
        let refused = whole(endless, 100, Duration::from_secs(10)).await.unwrap_err();
        assert_eq!(refused.0, StatusCode::PAYLOAD_TOO_LARGE);
        let good = Body::from_stream(iter([piece(b"{"), piece(b"}")]));
        assert_eq!(whole(good, 100, short).await.unwrap(), Bytes::from_static(b"{}"));
    }
}
