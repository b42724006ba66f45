//! A session: a score, the acts on it, and the desk that follows from them.

use std::fmt;
use std::sync::Arc;

use arcata_analysis::Source;
use arcata_habits::Habits;
use arcata_layer::{Addresses, AskedBreaks, carry, read_breaks, write_breaks};
use arcata_review::Aside;

use crate::act::{Act, NotePlace};
use crate::alike::StrokeAt;
use crate::desk::{Base, Desk, StrokesMoved};
use crate::history::{ActMoment, History, checksum};
use crate::journal::JournalLine;
use crate::layers;
use crate::shelf::Shelf;
use crate::state::{Given, SessionState};

/// Why something could not be done.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SessionError {
    /// The score cannot be read or planned.
    Score(String),
    /// The journal cannot be read or written: nothing was done.
    Journal(String),
    /// The act is not possible here.
    Act(String),
    /// Somebody else acted in between; see what is there now.
    Late,
}

impl fmt::Display for SessionError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Score(why) | Self::Journal(why) | Self::Act(why) => f.write_str(why),
            Self::Late => f.write_str("the score has changed meanwhile; look again"),
        }
    }
}

impl std::error::Error for SessionError {}

/// What an act has moved.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Moved {
    /// The version that it made.
    pub(crate) version: u64,
    /// Line, first and last bar (indices) whose bows are others now.
    pub(crate) bars: Vec<(usize, u32, u32)>,
    /// The score itself, its tempo or the player is another: draw everything anew.
    pub(crate) everything: bool,
    /// What became of the strokes.
    pub(crate) strokes: StrokesMoved,
}

/// What a session begins with.
#[derive(Debug)]
pub struct SessionStart {
    /// The name of the score's file.
    pub name: String,
    /// The bytes of the file.
    pub bytes: Vec<u8>,
    /// The same, read.
    pub source: Source,
    /// The steps of the journal.
    pub steps: Vec<JournalLine>,
    /// What became of a journal that could not be read to its end, in words.
    pub journal_told: Option<String>,
    /// What the file on findings set aside and on slurs says.
    pub aside: Aside,
    /// A leader's habits, to bow by.
    pub habits: Option<Habits>,
}

/// A score that is worked on.
#[derive(Debug)]
pub struct Session {
    name: String,
    bytes: Arc<Vec<u8>>,
    shelf: Box<dyn Shelf>,
    history: History,
    version: u64,
    /// Acts of the journal that fit the score no more, in words.
    lost: Vec<String>,
}

impl Session {
    /// Takes up a score and what was done on it.
    ///
    /// ```
    /// use arcata_analysis::Source;
    /// use arcata_desk::{MemoryShelf, Session, SessionStart};
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
    /// assert_eq!((session.version(), session.reach()), (0, (0, 0)));
    /// # Ok::<(), String>(())
    /// ```
    ///
    /// # Errors
    /// A score that cannot be planned.
    pub fn new(start: SessionStart, shelf: Box<dyn Shelf>) -> Result<Self, SessionError> {
        let given = Given { told: start.aside.slurs, habits: start.habits.map(Arc::new) };
        let bytes = Arc::new(start.bytes);
        let (acts, counting) = taken(start.steps);
        let (history, mut lost) =
            History::of((&bytes, start.source), acts, counting, given).map_err(SessionError::Score)?;
        lost.extend(start.journal_told);
        let mut session = Self { name: start.name, bytes, shelf, history, version: 0, lost };
        session.take_up_breaks()?;
        session.version = 0;
        Ok(session)
    }

    /// What the file beside the score says of breaks counts: whoever wrote it did so after this session, or on another machine.
    fn take_up_breaks(&mut self) -> Result<(), SessionError> {
        let now = &self.state().breaks;
        let Some(text) = self.shelf.breaks().map_err(SessionError::Score)? else {
            // The journal alone has them: the file was left behind.
            let text = write_breaks(now);
            let wanted = !now.is_empty();
            return if wanted {
                self.shelf.put_breaks("", &text).map_err(SessionError::Score)
            } else {
                Ok(())
            };
        };
        let named = |why: String| SessionError::Score(format!("{}: {why}", self.shelf.breaks_name()));
        if read_breaks(&text).map_err(named)? != *now {
            self.act(Act::Breaks { text }, None)?;
        }
        Ok(())
    }

    /// Does an act: writes it to the journal, then confirms it. `seen` is the version that the user looked at.
    ///
    /// # Errors
    /// Where it cannot be done or kept; nothing has changed then.
    pub(crate) fn act(&mut self, act: Act, seen: Option<u64>) -> Result<Moved, SessionError> {
        if seen.is_some_and(|seen| seen != self.version) {
            return Err(SessionError::Late);
        }
        if matches!(act, Act::Break { .. }) {
            self.take_up_breaks()?;
        }
        let act = match act {
            Act::Change { sentence, edits, .. } => {
                // The user looks at the score with its layers on it; what is kept is for the score's own bytes.
                let edits = self.now().desk.base.own_edits(&edits).map_err(SessionError::Act)?;
                Act::Change {
                    sentence,
                    edits,
                    of: Some(checksum(self.now().desk.base.file().document().bytes())),
                }
            }
            other => other,
        };
        let ActMoment { state: before, desk: looked_at } = self.now();
        let mut state = before.as_ref().clone();
        let addresses = Addresses::new(looked_at.base.score());
        if let Act::Layer { text: Some(text), .. } = &act {
            layers::belongs(text, &addresses).map_err(SessionError::Act)?;
        }
        state.act(&act, || &addresses).map_err(SessionError::Act)?;
        let base = match state.reads_as(before) {
            true => looked_at.base.clone(),
            false => {
                let base = Base::after(&self.bytes, &state, &looked_at.base);
                base.map(Arc::new).map_err(SessionError::Act)?
            }
        };
        if matches!(act, Act::Change { .. }) && base.doubles_slurs() && !looked_at.base.doubles_slurs() {
            return Err(SessionError::Act(
                "the score has this slur already, and a layer takes it away: take the change into the layer"
                    .to_owned(),
            ));
        }
        let desk = Desk::new(base, &state.layers.together(), Some(looked_at));
        self.did(act, ActMoment { state: Arc::new(state), desk })
    }

    /// Undoes the last act; nothing where there is none.
    ///
    /// # Errors
    /// Where it cannot be kept.
    pub(crate) fn undo(&mut self) -> Result<Option<Moved>, SessionError> {
        let (behind, _) = self.history.reach();
        if behind == 0 { Ok(None) } else { self.go(behind - 1, &JournalLine::Undid).map(Some) }
    }

    /// Does again what was undone; nothing where there is nothing.
    ///
    /// # Errors
    /// Where it cannot be kept.
    pub(crate) fn redo(&mut self) -> Result<Option<Moved>, SessionError> {
        let (behind, ahead) = self.history.reach();
        if ahead == 0 { Ok(None) } else { self.go(behind + 1, &JournalLine::Redid).map(Some) }
    }

    fn go(&mut self, counting: usize, step: &JournalLine) -> Result<Moved, SessionError> {
        let there = self.history.moment(&self.bytes, counting)?;
        self.keep(step, &there.state.breaks)?;
        let before = self.history.go(counting, there);
        Ok(self.show(&before))
    }

    /// Takes in the file as another program has written it. The layer is carried over; nothing where the file is the same.
    ///
    /// # Errors
    /// Where the new file is no score; the old one stays on the desk.
    pub(crate) fn reload(&mut self) -> Result<Option<(Moved, Vec<String>)>, SessionError> {
        let bytes = self.shelf.score().map_err(SessionError::Score)?;
        if bytes == *self.bytes {
            return Ok(None);
        }
        let gone = (!self.state().edits.is_empty())
            .then(|| "the changes to the score itself were for the old file, and are gone".to_owned());
        self.take_in(bytes, gone).map(Some)
    }

    /// Writes the changes of the score into its file; the file as it was is kept under another name, which is handed back.
    ///
    /// # Errors
    /// Where nothing is changed, the file is another by now, or it cannot be written.
    pub(crate) fn write_score(&mut self) -> Result<(Moved, Vec<String>, String), SessionError> {
        if self.state().edits.is_empty() {
            return Err(SessionError::Act("nothing in the score itself is changed".to_owned()));
        }
        let now = self.shelf.score().map_err(SessionError::Score)?;
        if now != *self.bytes {
            return Err(SessionError::Late);
        }
        let file = self.now().desk.base.file();
        let bytes =
            file.write(file.document().bytes()).map_err(|problem| SessionError::Act(problem.to_string()))?;
        let kept = self.shelf.write_score(&now, &bytes).map_err(SessionError::Act)?;
        let (moved, told) = self.take_in(bytes, None)?;
        Ok((moved, told, kept))
    }

    /// Goes on with other bytes of the score.
    fn take_in(
        &mut self,
        bytes: Vec<u8>,
        more: Option<String>,
    ) -> Result<(Moved, Vec<String>), SessionError> {
        let clean = SessionState { edits: Vec::new(), ..self.state().clone() };
        let old = self.now().desk.base.clone();
        let base = Base::after(&bytes, &clean, &old).map_err(SessionError::Score)?;
        let mut told = Vec::new();
        let mut layers = Vec::new();
        for one in self.state().layers.all() {
            let carried = carry(&one.layer, old.score(), (base.file().document(), base.score()));
            let of =
                if self.state().layers.all().len() > 1 { format!("{}: ", one.name) } else { String::new() };
            let count = carried.exactly;
            told.push(match count {
                1 => format!("{of}1 bowing is kept as it was"),
                _ => format!("{of}{count} bowings are kept as they were"),
            });
            told.extend(
                carried.doubtful.iter().map(|one| format!("{of}{} is now {}: have a look", one.from, one.to)),
            );
            told.extend(carried.orphaned.iter().map(|one| format!("{of}{}: {}", one.entry.place, one.why)));
            layers.push(arcata_layer::write(&carried.layer));
        }
        told.extend(more);
        let mut state = self.state().clone();
        let addresses = Addresses::new(base.score());
        let parts = (0..addresses.part_keys().len()).map(Some).chain([None]);
        told.extend(
            parts.flat_map(|part| state.breaks.told(&addresses, part)).map(|(said, _)| said.to_string()),
        );
        let breaks = (!state.breaks.is_empty()).then(|| write_breaks(&state.breaks.carried(&addresses)));
        let act = Act::Carried { layers, breaks, told: told.clone() };
        state.act(&act, || &addresses).map_err(SessionError::Act)?;
        let desk = Desk::new(Arc::new(base), &state.layers.together(), None);
        let moved = self.did(act, ActMoment { state: Arc::new(state), desk })?;
        self.bytes = Arc::new(bytes);
        // What was before it was for the file as it was.
        self.history.forget();
        Ok((moved, told))
    }

    /// Whether a layer of that name lies on the desk.
    #[must_use]
    pub fn has_layer(&self, name: &str) -> bool {
        self.state().layers.all().iter().any(|one| one.name == name)
    }

    /// Puts a layer on the desk; nothing is done where one of that name lies there.
    ///
    /// # Errors
    /// A text that is no layer, or belongs to other music.
    pub fn put_on_desk(&mut self, name: &str, text: String) -> Result<(), SessionError> {
        if self.has_layer(name) {
            return Ok(());
        }
        self.act(Act::Layer { name: name.to_owned(), text: Some(text) }, None).map(|_| ())
    }

    /// Puts a step into the journal, and the breaks that it leaves into their file. The file comes first: what it says counts when the
    /// session is opened again, and a program that ends between the two has lost nothing.
    fn keep(&mut self, step: &JournalLine, breaks: &AskedBreaks) -> Result<(), SessionError> {
        let (was, text) = (write_breaks(&self.state().breaks), write_breaks(breaks));
        let another = was != text;
        if another {
            self.shelf.put_breaks(&was, &text).map_err(SessionError::Journal)?;
        }
        let put = self.shelf.put(step).map_err(SessionError::Journal);
        if put.is_err() && another {
            // Nothing was done: the file says so again. Where that fails, too, the next opening takes up what it says.
            let _ = self.shelf.put_breaks(&text, &was);
        }
        put
    }

    /// Writes an act down and goes to what it has made.
    fn did(&mut self, act: Act, made: ActMoment) -> Result<Moved, SessionError> {
        self.keep(&JournalLine::Did(act.clone()), &made.state.breaks)?;
        let before = self.history.did(act, made);
        Ok(self.show(&before))
    }

    fn show(&mut self, before: &ActMoment) -> Moved {
        self.version += 1;
        let (desk, before) = (&self.now().desk, &before.desk);
        Moved {
            version: self.version,
            bars: desk.differences(before),
            everything: !Arc::ptr_eq(&desk.base, &before.base),
            strokes: desk.strokes_moved(before),
        }
    }

    fn now(&self) -> &ActMoment {
        self.history.now()
    }

    /// The name of the score's file.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    pub(crate) fn shelf(&self) -> &dyn Shelf {
        self.shelf.as_ref()
    }

    pub(crate) fn desk(&self) -> Desk {
        self.now().desk.clone()
    }

    pub(crate) fn state(&self) -> &SessionState {
        &self.now().state
    }

    /// Counts the acts since the session was opened.
    #[must_use]
    pub fn version(&self) -> u64 {
        self.version
    }

    /// How many acts can be undone, and how many done again.
    #[must_use]
    pub fn reach(&self) -> (usize, usize) {
        self.history.reach()
    }

    /// Acts of the journal that did not fit the score when it was opened, and what became of a journal that could not be read
    /// to its end, in words.
    #[must_use]
    pub fn lost(&self) -> &[String] {
        &self.lost
    }

    /// The layer that is written in, as it stands, in its file format.
    #[must_use]
    pub fn layer_text(&self) -> String {
        arcata_layer::write(&self.state().layers.written().layer)
    }

    /// The places of the notes that strokes begin with; strokes that there are not are passed over.
    #[must_use]
    pub(crate) fn places_of(&self, strokes: &[StrokeAt]) -> Vec<NotePlace> {
        let base = &self.now().desk.base;
        let addresses = Addresses::new(base.score());
        let place = |at: &StrokeAt| {
            let line = base.lines().get(at.line)?;
            let note = *line.strokes.get(at.stroke)?.notes.first()?;
            NotePlace::of(&addresses, arcata_layer::NamedNote { part: line.part, note })
        };
        strokes.iter().filter_map(place).collect()
    }
}

/// The acts that a journal leaves, and how many of them count.
fn taken(steps: Vec<JournalLine>) -> (Vec<Act>, usize) {
    let (mut acts, mut counting) = (Vec::new(), 0_usize);
    for step in steps {
        match step {
            JournalLine::Did(act) => {
                acts.truncate(counting);
                acts.push(act);
                counting += 1;
            }
            JournalLine::Undid => counting = counting.saturating_sub(1),
            JournalLine::Redid => counting = (counting + 1).min(acts.len()),
        }
    }
    (acts, counting)
}
