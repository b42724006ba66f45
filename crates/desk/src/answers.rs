//! Requests and answers as they go over a wire or between a page and its worker.
//!
//! A request is answered in two steps. [`Shared::begin`] does what it changes, once. [`Shared::finish`] makes the answer, and
//! changes nothing: where an engraver has to wait for drawings (in a browser they come from another worker) the answer is
//! thrown away and asked for again, as often as it takes. [`Shared::answer`] is both, one after the other.

use serde::Serialize;
use serde::de::DeserializeOwned;

use crate::addresses::{Deed, Handling, LookMaker, handling};
use crate::drawing::{self, Wanted};
use crate::failed::{Failed, told};
use crate::request_language::RequestLanguage;
use crate::shared::Shared;

/// A limit: a request holds no more bytes than this, shorthand for a whole symphony.
const LARGEST: usize = 1 << 20;
/// A limit: an act holds no more bytes than this, a layer for a whole symphony or changes of a score.
pub const LARGEST_ACT: usize = 16 << 20;

/// How an address is asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum AskedBy {
    /// It is only looked at.
    Get,
    /// Something is sent along.
    Post,
}

/// What a page asks.
#[derive(Clone, Debug)]
pub struct PageRequest {
    /// How.
    pub by: AskedBy,
    /// The address below `/api/`: `strokes`.
    pub path: String,
    /// What stands behind the question mark: `line=0`.
    pub query: String,
    /// The languages that are wanted, as in a header of HTTP: `de, en;q=0.8`.
    pub languages: String,
    /// What is sent along, JSON.
    pub body: Vec<u8>,
}

impl PageRequest {
    /// Looks at an address.
    #[must_use]
    pub fn get(path: &str, query: &str) -> Self {
        let (path, query) = (path.to_owned(), query.to_owned());
        Self { by: AskedBy::Get, path, query, languages: String::new(), body: Vec::new() }
    }

    /// Sends JSON to an address.
    #[must_use]
    pub fn post(path: &str, body: &str) -> Self {
        Self { by: AskedBy::Post, body: body.as_bytes().to_vec(), ..Self::get(path, "") }
    }

    pub(crate) fn spoken(&self) -> RequestLanguage {
        RequestLanguage::of(&self.languages)
    }

    /// What stands behind the question mark.
    pub(crate) fn query<T: DeserializeOwned>(&self) -> Result<T, Failed> {
        serde_urlencoded::from_str(&self.query).map_err(|problem| {
            Failed::new(Failed::UNREADABLE, format!("the address cannot be read: {problem}"))
        })
    }

    /// What was sent along.
    pub(crate) fn json<T: DeserializeOwned>(&self) -> Result<T, Failed> {
        serde_json::from_slice(&self.body).map_err(|problem| {
            let status = if problem.is_data() { Failed::IMPOSSIBLE } else { Failed::UNREADABLE };
            Failed::new(status, format!("the request cannot be read: {problem}"))
        })
    }

    /// More than this nobody reads.
    fn largest(&self) -> usize {
        if self.path == "acts" { LARGEST_ACT } else { LARGEST }
    }
}

/// What is answered.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PageAnswer {
    /// The status of HTTP that says it shortest.
    pub status: u16,
    /// The media type.
    pub kind: &'static str,
    /// The name of a file that leaves.
    pub file: Option<String>,
    /// The answer itself.
    pub bytes: Vec<u8>,
}

/// The media type of most answers.
const JSON: &str = "application/json";

impl PageAnswer {
    /// A value as JSON.
    pub(crate) fn json(value: &impl Serialize) -> Result<Self, Failed> {
        let bytes = serde_json::to_vec(value);
        let bytes = bytes.map_err(|problem| Failed::new(Failed::BROKEN, problem.to_string()))?;
        Ok(Self { status: 200, kind: JSON, file: None, bytes })
    }
}

impl From<Failed> for PageAnswer {
    fn from(failed: Failed) -> Self {
        let bytes = serde_json::to_vec(&failed).unwrap_or_default();
        Self { status: failed.status(), kind: JSON, file: None, bytes }
    }
}

/// A request of which what it changes is done.
#[derive(Debug)]
pub struct Begun(AnswerStep);

#[derive(Debug)]
enum AnswerStep {
    /// Nothing is left but to say it.
    Answered(PageAnswer),
    /// It only looks.
    Looks { look: LookMaker, request: PageRequest, rest: String },
    /// Something was done; the lanes that a page shows are to be drawn.
    Done(Box<Deed>),
}

impl Shared {
    /// Does what a request changes.
    #[must_use]
    pub fn begin(&self, request: PageRequest) -> Begun {
        let language = request.spoken().0;
        let step = self.step(request);
        Begun(step.unwrap_or_else(|failed| AnswerStep::Answered(failed.said_in(language).into())))
    }

    fn step(&self, request: PageRequest) -> Result<AnswerStep, Failed> {
        if request.body.len() > request.largest() {
            return Err(Failed::new(Failed::TOO_LARGE, "the request holds more than any page sends"));
        }
        let (handling, rest) = handling(request.by, &request.path)?;
        let rest = rest.to_owned();
        Ok(match handling {
            Handling::Looks(look) => AnswerStep::Looks { look, request, rest },
            Handling::Does(deed) => AnswerStep::Done(Box::new(deed(self, &request, &rest)?)),
        })
    }

    /// Answers a request; asked again it answers again.
    #[must_use]
    pub fn finish(&self, begun: &Begun) -> PageAnswer {
        let answer = match &begun.0 {
            AnswerStep::Answered(answer) => return answer.clone(),
            AnswerStep::Looks { look, request, rest } => {
                look(self, request, rest).map_err(|failed| failed.said_in(request.spoken().0))
            }
            AnswerStep::Done(deed) => self.said(deed),
        };
        answer.unwrap_or_else(PageAnswer::from)
    }

    /// Answers a request.
    ///
    /// ```
    /// use std::sync::Arc;
    ///
    /// use arcata_analysis::Source;
    /// use arcata_desk::{MemoryShelf, PageRequest, Session, SessionStart, Shared};
    /// use arcata_engrave::Engraver;
    ///
    /// let bytes = arcata_testkit::musicxml("viola: 1/4 C4 D4 E4 F4").into_bytes();
    /// let start = SessionStart {
    ///     name: "study.musicxml".to_owned(),
    ///     source: Source::open(bytes.clone())?,
    ///     bytes: bytes.clone(),
    ///     steps: Vec::new(),
    ///     journal_told: None,
    ///     aside: Default::default(),
    ///     habits: None,
    /// };
    /// let session = Session::new(start, Box::new(MemoryShelf::new(bytes))).map_err(|why| why.to_string())?;
    /// let shared = Shared::new(session, Arc::new(Engraver::new()));
    /// let done = shared.answer(PageRequest::post("acts", r#"{"act":{"act":"tempo","quarters":72},"version":0}"#));
    /// assert_eq!(done.status, 200);
    /// let late = shared.answer(PageRequest::post("acts", r#"{"act":{"act":"tempo"},"version":0}"#));
    /// assert_eq!(late.status, 409);
    /// # Ok::<(), String>(())
    /// ```
    #[must_use]
    pub fn answer(&self, request: PageRequest) -> PageAnswer {
        self.finish(&self.begin(request))
    }

    /// What a deed came to, with the lanes that the page shows.
    fn said(&self, deed: &Deed) -> Result<PageAnswer, Failed> {
        let (done, desk, shown, spoken) = match deed {
            Deed::Written(written) => return PageAnswer::json(written),
            Deed::Kept(kept) => return PageAnswer::json(kept),
            Deed::Done { done, desk, shown, spoken } => (done, desk, shown, *spoken),
        };
        let mut done = done.clone();
        done.told = done.told.into_iter().map(|one| told(one, spoken.0)).collect();
        let Some(shown) = shown.as_ref().filter(|_| !done.everything) else {
            return PageAnswer::json(&done);
        };
        let wording = spoken.wording(desk);
        let wanted = Wanted { parts: shown.parts.clone(), width: shown.width, sure: shown.sure, wording };
        let moved: Vec<_> = done.moved.iter().map(|moved| (moved.line, moved.first, moved.last)).collect();
        let drawing = (self.engraver.as_ref(), done.version);
        done.drawn = drawing::moved_lanes(desk, (&wanted, &shown.systems), &moved, drawing);
        PageAnswer::json(&done)
    }
}
