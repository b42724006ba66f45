//! Why there is no answer.

use arcata_languages::{Language, Wording, retold};
use serde::Serialize;
use utoipa::ToSchema;

use crate::session::SessionError;

/// Why a request was not answered.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct Failed {
    #[serde(skip)]
    status: u16,
    /// In words, for people.
    why: String,
}

impl Failed {
    /// Nothing is at the address.
    pub const MISSING: u16 = 404;
    /// The address is not asked in this way.
    pub const NOT_SO: u16 = 405;
    /// Something else was done in between.
    pub const LATE: u16 = 409;
    /// The request holds too much.
    pub const TOO_LARGE: u16 = 413;
    /// The request is no JSON.
    pub const NOT_JSON: u16 = 415;
    /// What is asked cannot be done.
    pub const IMPOSSIBLE: u16 = 422;
    /// The request cannot be read.
    pub const UNREADABLE: u16 = 400;
    /// Something went wrong that is nobody's request.
    pub const BROKEN: u16 = 500;

    /// With the status of HTTP that says it shortest.
    pub fn new(status: u16, why: impl Into<String>) -> Self {
        Self { status, why: why.into() }
    }

    /// There is no such thing.
    #[must_use]
    pub fn missing(why: &str) -> Self {
        Self::new(Self::MISSING, why)
    }

    /// It cannot be done.
    pub fn impossible(why: impl Into<String>) -> Self {
        Self::new(Self::IMPOSSIBLE, why)
    }

    /// The same in the language that is asked for.
    #[must_use]
    pub fn said_in(self, language: Language) -> Self {
        let why = told(self.why, language);
        Self { why, ..self }
    }

    /// The status of HTTP.
    #[must_use]
    pub const fn status(&self) -> u16 {
        self.status
    }
}

/// What is said in English below, in the language that is asked for.
pub(crate) fn told(english: String, language: Language) -> String {
    match language {
        Language::English => english,
        _ => Wording { language, ..Wording::default() }.say(&retold(&english)),
    }
}

impl From<SessionError> for Failed {
    fn from(error: SessionError) -> Self {
        let status = match &error {
            SessionError::Late => Self::LATE,
            SessionError::Act(_) => Self::IMPOSSIBLE,
            SessionError::Score(_) | SessionError::Journal(_) => Self::BROKEN,
        };
        Self::new(status, error.to_string())
    }
}
