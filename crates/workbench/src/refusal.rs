//! Why there is no answer, as HTTP says it.

use arcata_desk::Failed;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};

/// A request that was not answered.
#[derive(Debug)]
pub(crate) struct HttpRefusal(Failed);

impl From<Failed> for HttpRefusal {
    fn from(failed: Failed) -> Self {
        Self(failed)
    }
}

impl IntoResponse for HttpRefusal {
    fn into_response(self) -> Response {
        let status = StatusCode::from_u16(self.0.status()).unwrap_or(StatusCode::INTERNAL_SERVER_ERROR);
        (status, axum::Json(self.0)).into_response()
    }
}

/// Works away from the threads that answer.
pub(crate) async fn work<T: Send + 'static>(
    job: impl FnOnce() -> Result<T, Failed> + Send + 'static,
) -> Result<T, HttpRefusal> {
    let done = tokio::task::spawn_blocking(job).await;
    let done = done.unwrap_or_else(|_| Err(Failed::new(Failed::BROKEN, "this could not be worked out")));
    done.map_err(HttpRefusal)
}
