//! Answers, and why there is none.

use axum::extract::rejection::{JsonRejection, QueryRejection};
use axum::extract::{FromRequest, FromRequestParts};
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use serde::Serialize;
use utoipa::ToSchema;

use crate::session::SessionError;

/// Why a request was not answered.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub(crate) struct Failed {
    #[serde(skip)]
    status: u16,
    /// In words, for people.
    why: String,
}

impl Failed {
    pub(crate) fn new(status: StatusCode, why: impl Into<String>) -> Self {
        Self { status: status.as_u16(), why: why.into() }
    }

    pub(crate) fn missing(why: &str) -> Self {
        Self::new(StatusCode::NOT_FOUND, why)
    }

    pub(crate) fn impossible(why: impl Into<String>) -> Self {
        Self::new(StatusCode::UNPROCESSABLE_ENTITY, why)
    }
}

impl IntoResponse for Failed {
    fn into_response(self) -> Response {
        let status = StatusCode::from_u16(self.status).unwrap_or(StatusCode::INTERNAL_SERVER_ERROR);
        (status, axum::Json(self)).into_response()
    }
}

impl From<SessionError> for Failed {
    fn from(error: SessionError) -> Self {
        let status = match &error {
            SessionError::Late => StatusCode::CONFLICT,
            SessionError::Act(_) => StatusCode::UNPROCESSABLE_ENTITY,
            SessionError::Score(_) | SessionError::Journal(_) => StatusCode::INTERNAL_SERVER_ERROR,
        };
        Self::new(status, error.to_string())
    }
}

impl From<JsonRejection> for Failed {
    fn from(rejection: JsonRejection) -> Self {
        Self::new(rejection.status(), rejection.body_text())
    }
}

impl From<QueryRejection> for Failed {
    fn from(rejection: QueryRejection) -> Self {
        Self::new(rejection.status(), rejection.body_text())
    }
}

/// A body of JSON whose faults are told as everything else is.
#[derive(FromRequest)]
#[from_request(via(axum::Json), rejection(Failed))]
pub(crate) struct Json<T>(pub(crate) T);

/// What stands behind the question mark.
#[derive(FromRequestParts)]
#[from_request(via(axum::extract::Query), rejection(Failed))]
pub(crate) struct Query<T>(pub(crate) T);

pub(crate) type Answer<T> = Result<axum::Json<T>, Failed>;

/// Works away from the threads that answer.
pub(crate) async fn work<T: Send + 'static>(
    job: impl FnOnce() -> Result<T, Failed> + Send + 'static,
) -> Result<T, Failed> {
    let done = tokio::task::spawn_blocking(job).await;
    done.unwrap_or_else(|_| {
        Err(Failed::new(StatusCode::INTERNAL_SERVER_ERROR, "this could not be worked out"))
    })
}
