//! A session in a browser: opened, asked, and given what it wants drawn.

use std::collections::BTreeMap;
use std::sync::Arc;

use arcata_analysis::Source;
use arcata_desk::{Begun, Happened, PageAnswer, PageRequest, Session, SessionStart, Shared};
use arcata_engrave::{Engraver, PressError};

use crate::mailroom::{Mailroom, WrittenOrder};
use crate::web_shelf::{JournalKeeper, ScoreNow, TakenUp, WebShelf};

/// A score, and what is kept of the work on it.
#[derive(Debug)]
pub struct Opened<'a> {
    /// The name of its file.
    pub name: &'a str,
    /// Its bytes.
    pub score: &'a [u8],
    /// The journal as it was kept; empty at first.
    pub journal: &'a [u8],
}

/// What finishing a request comes to.
#[derive(Debug)]
pub enum WebAnswer {
    /// An answer.
    Answer(PageAnswer),
    /// Drawings are wanting: hand them in and finish the request again.
    Orders(Vec<WrittenOrder>),
}

/// A session in a browser.
#[derive(Debug)]
pub struct WebDesk {
    shared: Shared,
    score: ScoreNow,
    mailroom: Mailroom,
    begun: BTreeMap<u32, Begun>,
    next: u32,
}

impl WebDesk {
    /// Opens a score and takes up its journal.
    ///
    /// # Errors
    /// A score that cannot be read, a journal that cannot be kept; in words.
    pub fn open(opened: &Opened<'_>, keeper: Box<dyn JournalKeeper>) -> Result<Self, String> {
        let bytes = opened.score.to_vec();
        let named = |why: String| format!("{}: {why}", opened.name);
        // The score first: for one that is none no journal is begun.
        let source = Source::open(bytes.clone()).map_err(named)?;
        let TakenUp { shelf, steps, told } = WebShelf::take_up(keeper, bytes.clone(), opened.journal)?;
        let score = shelf.score_now();
        let start = SessionStart {
            name: opened.name.to_owned(),
            bytes,
            source,
            steps,
            journal_told: told,
            aside: Default::default(),
            habits: None,
        };
        let session = Session::new(start, Box::new(shelf)).map_err(|why| named(why.to_string()))?;
        let mailroom = Mailroom::default();
        let engraver = Arc::new(Engraver::with(Box::new(mailroom.clone())).keeping_parts());
        let shared = Shared::new(session, engraver);
        Ok(Self { shared, score, mailroom, begun: BTreeMap::new(), next: 0 })
    }

    /// Carries the bowings over to a newer version of the score: what became of them, as an event of the page; nothing where it is
    /// the same file. The journal gets the step, as the workbench's does when another program writes the file.
    pub fn carry_to(&mut self, score: Vec<u8>) -> Option<Happened> {
        let before = self.score.bytes();
        self.score.put(score);
        let happened = self.shared.taken_in();
        if matches!(happened, Some(Happened::Unreadable { .. })) {
            self.score.put(before);
        }
        happened
    }

    /// Does what a request changes; hands back the number that it is finished by.
    pub fn begin(&mut self, request: PageRequest) -> u32 {
        let number = self.next;
        self.next = self.next.wrapping_add(1);
        self.begun.insert(number, self.shared.begin(request));
        number
    }

    /// Answers a request that was begun, or says what has to be drawn for it first. With `as_it_is` it is answered without what
    /// is wanting.
    pub fn finish(&mut self, number: u32, as_it_is: AsItIs) -> Option<WebAnswer> {
        let begun = self.begun.get(&number)?;
        let answer = self.shared.finish(begun);
        let orders = self.mailroom.wanted();
        if orders.is_empty() || as_it_is == AsItIs::Yes {
            self.begun.remove(&number);
            return Some(WebAnswer::Answer(answer));
        }
        Some(WebAnswer::Orders(orders))
    }

    /// Hands in a drawing, the engraving library's own SVG; nothing where it did not take the music.
    pub fn hand_in(&self, key: &str, drawing: Option<String>) {
        self.mailroom.hand_in(key, drawing.ok_or(PressError::Refused));
    }
}

/// Whether an answer is wanted whatever is wanting for it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum AsItIs {
    /// Drawings are ordered first.
    No,
    /// It is answered without them.
    Yes,
}
