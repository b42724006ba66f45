//! A session kept in a browser's own storage.

use std::fmt;
use std::sync::{Arc, Mutex, PoisonError};

use arcata_desk::{
    ExportedFiles, HEADING, JournalContent, JournalEnd, JournalLine, KeptView, Shelf, journal_line,
};

/// Keeps the journal of a session. A step is confirmed only after it is kept.
pub trait JournalKeeper: fmt::Debug + Send {
    /// Puts text at the end of the journal; it stays when this returns.
    ///
    /// # Errors
    /// Where the browser has no room for it, in words.
    fn append(&mut self, text: &str) -> Result<(), String>;

    /// Cuts the journal after so many bytes.
    ///
    /// # Errors
    /// Where the browser refuses, in words.
    fn cut(&mut self, after: usize) -> Result<(), String>;

    /// Keeps the journal as it is under another name and begins an empty one; hands back the name.
    ///
    /// # Errors
    /// Where the browser has no room for both, in words.
    fn keep_broken(&mut self) -> Result<String, String>;
}

/// The score as it is now: as it was opened, or a newer version that was handed in.
#[derive(Clone, Debug)]
pub(crate) struct ScoreNow(Arc<Mutex<Vec<u8>>>);

impl ScoreNow {
    fn new(bytes: Vec<u8>) -> Self {
        Self(Arc::new(Mutex::new(bytes)))
    }

    /// What it is.
    pub(crate) fn bytes(&self) -> Vec<u8> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner).clone()
    }

    /// Puts other bytes there.
    pub(crate) fn put(&self, bytes: Vec<u8>) {
        *self.0.lock().unwrap_or_else(PoisonError::into_inner) = bytes;
    }
}

/// The journal, and the score.
#[derive(Debug)]
pub(crate) struct WebShelf {
    keeper: Box<dyn JournalKeeper>,
    score: ScoreNow,
    number: u64,
}

/// What a journal held when it was opened.
#[derive(Debug)]
pub(crate) struct TakenUp {
    pub(crate) shelf: WebShelf,
    pub(crate) steps: Vec<JournalLine>,
    /// What became of one that could not be read to its end, in words.
    pub(crate) told: Option<String>,
}

impl WebShelf {
    /// Takes up a journal, or begins one. A torn last line is cut off; one that cannot be understood to its end is kept under
    /// another name.
    pub(crate) fn take_up(
        mut keeper: Box<dyn JournalKeeper>,
        score: Vec<u8>,
        journal: &[u8],
    ) -> Result<TakenUp, String> {
        let JournalContent { steps, headed, good, end } = JournalContent::read(journal);
        let mut told = None;
        if let JournalEnd::Broken { why } = &end {
            let kept = keeper.keep_broken()?;
            let count = steps.len();
            let counted = if count == 1 { "1 step".to_owned() } else { format!("{count} steps") };
            told = Some(format!(
                "the journal could not be read to its end ({why}): {counted} of it count, and all of it is kept as {kept}"
            ));
        } else if good < journal.len() {
            keeper.cut(good)?;
        }
        if !headed || told.is_some() {
            let lines = steps.iter().zip(0..).map(|(step, number)| journal_line(number, step));
            let lines = lines.collect::<Result<String, String>>()?;
            keeper.append(&format!("{HEADING}\n{lines}"))?;
        }
        let (number, score) = (steps.len() as u64, ScoreNow::new(score));
        Ok(TakenUp { shelf: Self { keeper, score, number }, steps, told })
    }

    /// The score as it is now, which another may be put in the place of.
    pub(crate) fn score_now(&self) -> ScoreNow {
        self.score.clone()
    }
}

impl Shelf for WebShelf {
    fn put(&mut self, step: &JournalLine) -> Result<(), String> {
        self.keeper.append(&journal_line(self.number, step)?)?;
        self.number += 1;
        Ok(())
    }

    fn score(&self) -> Result<Vec<u8>, String> {
        Ok(self.score.bytes())
    }

    fn write_score(&mut self, _: &[u8], _: &[u8]) -> Result<String, String> {
        Err("a page cannot write the score's own file: save the score with the bowings as a new one"
            .to_owned())
    }

    fn aside_name(&self) -> String {
        "what is set aside".to_owned()
    }

    fn aside(&self) -> Result<Option<String>, String> {
        Ok(None)
    }

    fn breaks_name(&self) -> String {
        "what is asked for in the parts".to_owned()
    }

    /// The journal keeps what is asked for; a page has no folder for a file of it.
    fn breaks(&self) -> Result<Option<String>, String> {
        Ok(None)
    }

    fn put_breaks(&mut self, _: &str, _: &str) -> Result<(), String> {
        Ok(())
    }

    fn keep(&self, _: ExportedFiles) -> Result<KeptView, String> {
        Err("a page has no folder to write into: save the file".to_owned())
    }
}
