//! Where a session is kept: beside its score on a disk, or in a browser's own storage.

use std::fmt;

use crate::export::ExportedFiles;
use crate::journal::JournalLine;
use crate::requests::KeptView;

/// Keeps what a session must not lose.
pub trait Shelf: fmt::Debug + Send {
    /// Puts a step where it stays; it is there when this returns.
    ///
    /// # Errors
    /// Where there is no room, in words. Nothing of the step may be there then.
    fn put(&mut self, step: &JournalLine) -> Result<(), String>;

    /// The bytes of the score as they are now.
    ///
    /// # Errors
    /// Where they cannot be read, in words.
    fn score(&self) -> Result<Vec<u8>, String>;

    /// Writes the score anew and keeps the one that was there under another name, which is handed back.
    ///
    /// # Errors
    /// Where it cannot be written, in words.
    fn write_score(&mut self, was: &[u8], bytes: &[u8]) -> Result<String, String>;

    /// What the file on findings set aside and on slurs is called, for what is wrong with it.
    fn aside_name(&self) -> String;

    /// What that file says; nothing where there is none.
    ///
    /// # Errors
    /// Where it cannot be read, in words.
    fn aside(&self) -> Result<Option<String>, String>;

    /// What the file on pages and lines of parts that are to begin somewhere is called, for what is wrong with it.
    fn breaks_name(&self) -> String;

    /// What that file says; nothing where there is none.
    ///
    /// # Errors
    /// Where it cannot be read, in words.
    fn breaks(&self) -> Result<Option<String>, String>;

    /// Writes that file whole; one that holds something else than `was` is kept under another name.
    ///
    /// # Errors
    /// Where it cannot be written, in words; it is as it was then.
    fn put_breaks(&mut self, was: &str, text: &str) -> Result<(), String>;

    /// Puts files beside the score; what somebody else wrote there is kept.
    ///
    /// # Errors
    /// Where there is no such place, or a file cannot be written; in words.
    fn keep(&self, parcel: ExportedFiles) -> Result<KeptView, String>;
}

/// A shelf that forgets: for scores that are only looked at, and for tests.
///
/// ```
/// use arcata_desk::{JournalLine, MemoryShelf, Shelf};
///
/// let mut shelf = MemoryShelf::new(b"<score-partwise/>".to_vec());
/// shelf.put(&JournalLine::Undid)?;
/// assert_eq!(shelf.steps(), [JournalLine::Undid]);
/// # Ok::<(), String>(())
/// ```
#[derive(Clone, Debug)]
pub struct MemoryShelf {
    score: Vec<u8>,
    steps: Vec<JournalLine>,
    breaks: Option<String>,
}

impl MemoryShelf {
    /// With a score on it.
    #[must_use]
    pub const fn new(score: Vec<u8>) -> Self {
        Self { score, steps: Vec::new(), breaks: None }
    }

    /// The steps that were put there.
    #[must_use]
    pub fn steps(&self) -> &[JournalLine] {
        &self.steps
    }
}

impl Shelf for MemoryShelf {
    fn put(&mut self, step: &JournalLine) -> Result<(), String> {
        self.steps.push(step.clone());
        Ok(())
    }

    fn score(&self) -> Result<Vec<u8>, String> {
        Ok(self.score.clone())
    }

    fn write_score(&mut self, _: &[u8], _: &[u8]) -> Result<String, String> {
        Err("the score lies on no disk".to_owned())
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

    fn breaks(&self) -> Result<Option<String>, String> {
        Ok(self.breaks.clone())
    }

    fn put_breaks(&mut self, _: &str, text: &str) -> Result<(), String> {
        self.breaks = Some(text.to_owned());
        Ok(())
    }

    fn keep(&self, _: ExportedFiles) -> Result<KeptView, String> {
        Err("the score lies in no folder".to_owned())
    }
}
