//! What all requests share: the session, the engraver, the findings of now, and who is told.

use std::fmt;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use arcata_engrave::{Engraver, House};
use arcata_layer::Layer;
use arcata_review::Finding;

use crate::desk::Desk;
use crate::export::PrintShop;
use crate::failed::Failed;
use crate::happened::Happened;
use crate::kept_beside;
use crate::part_pages::MadeParts;
use crate::session::Session;
use crate::views::{self, DoneView};

/// What the review has found.
#[derive(Clone, Debug)]
pub(crate) struct ReviewFound {
    /// In this version.
    pub(crate) version: u64,
    /// In order of the score.
    pub(crate) findings: Arc<Vec<Finding>>,
    /// How many are set aside.
    pub(crate) aside: usize,
}

/// What all requests share.
#[derive(Clone, Debug)]
pub struct Shared {
    session: Arc<Mutex<Session>>,
    pub(crate) engraver: Arc<Engraver>,
    print_shop: Option<Arc<dyn PrintShop>>,
    pub(crate) house: Arc<House>,
    pub(crate) made_parts: MadeParts,
    listener: Option<Listener>,
    /// The findings of the newest version that was asked for.
    found: Arc<Mutex<Option<ReviewFound>>>,
}

/// Who is told what happened.
#[derive(Clone)]
struct Listener(Arc<dyn Fn(&Happened) + Send + Sync>);

impl fmt::Debug for Listener {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Listener")
    }
}

impl Shared {
    /// Around a session; the engraver draws its music.
    #[must_use]
    pub fn new(session: Session, engraver: Arc<Engraver>) -> Self {
        Self {
            session: Arc::new(Mutex::new(session)),
            engraver,
            print_shop: None,
            house: Arc::default(),
            made_parts: MadeParts::default(),
            listener: None,
            found: Arc::default(),
        }
    }

    /// The same with somebody who makes pages for paper.
    #[must_use]
    pub fn with_print_shop(self, shop: Arc<dyn PrintShop>) -> Self {
        Self { print_shop: Some(shop), ..self }
    }

    /// The same with a house that wants its parts in its own way.
    #[must_use]
    pub fn in_house(self, house: House) -> Self {
        Self { house: Arc::new(house), ..self }
    }

    /// The same with somebody who is told what happens; he must not wait.
    #[must_use]
    pub fn telling(self, listener: impl Fn(&Happened) + Send + Sync + 'static) -> Self {
        Self { listener: Some(Listener(Arc::new(listener))), ..self }
    }

    pub(crate) fn print_shop(&self) -> Option<&dyn PrintShop> {
        self.print_shop.as_deref()
    }

    pub(crate) fn tell(&self, happened: &Happened) {
        if let Some(Listener(listener)) = &self.listener {
            listener(happened);
        }
    }

    /// The session, for as long as the guard is held.
    pub fn session(&self) -> MutexGuard<'_, Session> {
        // A session is changed only after everything that can fail: a panic elsewhere leaves it whole.
        self.session.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// The desk, with its version.
    pub(crate) fn desk(&self) -> (Desk, u64) {
        let session = self.session();
        (session.desk(), session.version())
    }

    /// The findings of now.
    pub(crate) fn findings(&self) -> ReviewFound {
        let (desk, state, version, beside) = {
            let session = self.session();
            let shelf = session.shelf();
            let text = shelf.aside().unwrap_or_default();
            let beside = kept_beside::read_aside(&shelf.aside_name(), text.as_deref()).unwrap_or_default();
            (session.desk(), session.state().clone(), session.version(), beside)
        };
        let mut found = self.found.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some(known) = found.as_ref().filter(|known| known.version == version) {
            return known.clone();
        }
        let (findings, aside) = views::findings(&desk, &state, &beside);
        let now = ReviewFound { version, findings: Arc::new(findings), aside };
        *found = Some(now.clone());
        now
    }

    /// A layer on the desk.
    pub(crate) fn layer(&self, number: usize) -> Result<Layer, Failed> {
        let session = self.session();
        let layer = session.state().layers.all().get(number).map(|one| one.layer.clone());
        layer.ok_or_else(|| Failed::missing("there is no such layer on the desk"))
    }

    /// The findings of a version, where they were asked for and it is still the newest.
    pub(crate) fn found(&self, version: u64) -> Option<Arc<Vec<Finding>>> {
        let found = self.found.lock().unwrap_or_else(PoisonError::into_inner);
        found.as_ref().filter(|found| found.version == version).map(|found| found.findings.clone())
    }

    /// Reads the score anew after another program has written it, and tells who listens.
    pub fn reload(&self) {
        if let Some(happened) = self.taken_in() {
            self.tell(&happened);
        }
    }

    /// Reads the score anew; nothing where it is the same. Who listens is told nothing.
    pub fn taken_in(&self) -> Option<Happened> {
        let mut session = self.session();
        match session.reload() {
            Ok(None) => None,
            Ok(Some((moved, told))) => Some(Happened::Done {
                done: DoneView::new(&session, Some(moved), told),
                by: "the file".to_owned(),
            }),
            Err(why) => Some(Happened::Unreadable { why: why.to_string() }),
        }
    }
}
