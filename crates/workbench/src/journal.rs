//! The journal: every act in a file before it is confirmed, so that nothing is lost when the program is killed.
//!
//! One line of JSON a step, with a number and a checksum. A line that a kill has torn is dropped when the journal is read
//! again; what was confirmed stands before it.

use std::fmt;
use std::fs::{File, OpenOptions};
use std::io::{Seek as _, SeekFrom, Write as _};
use std::path::{Path, PathBuf};

use serde::{Deserialize, Serialize};
use sha2::{Digest as _, Sha256};

use crate::act::Act;

/// A journal is read up to this size.
const LARGEST: usize = 256 << 20;

/// One step.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum JournalLine {
    /// An act; what was undone before it is gone.
    Did(Act),
    /// The last act that counts is undone.
    Undid,
    /// The first act that was undone counts again.
    Redid,
}

#[derive(Serialize, Deserialize)]
struct Written {
    number: u64,
    step: JournalLine,
    check: String,
}

/// Why a journal cannot be used.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct JournalError {
    /// The file.
    pub path: PathBuf,
    /// In words.
    pub why: String,
}

impl fmt::Display for JournalError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "the journal {}: {}", self.path.display(), self.why)
    }
}

impl std::error::Error for JournalError {}

/// A journal that is open.
#[derive(Debug)]
pub struct Journal {
    path: PathBuf,
    file: File,
    number: u64,
}

impl Journal {
    /// Where the journal of a score is: `study.acts.jsonl` beside `study.musicxml`.
    #[must_use]
    pub fn beside(score: &Path) -> PathBuf {
        let mut name = score.file_stem().unwrap_or_default().to_owned();
        name.push(".acts.jsonl");
        score.with_file_name(name)
    }

    /// Opens a journal, or begins one; hands back the steps in it. A torn last line is cut off.
    ///
    /// # Errors
    /// A file that cannot be read, is no journal, or has a broken line before its last.
    pub fn open(path: &Path) -> Result<(Self, Vec<JournalLine>), JournalError> {
        let failed = |why: String| JournalError { path: path.to_owned(), why };
        let said = |problem: std::io::Error| failed(problem.to_string());
        let bytes = if path.exists() {
            arcata_files::read(path, LARGEST).map_err(|problem| failed(problem.why()))?
        } else {
            Vec::new()
        };
        let (steps, good) = read(&bytes).map_err(failed)?;
        let mut file =
            OpenOptions::new().create(true).truncate(false).write(true).open(path).map_err(said)?;
        file.try_lock().map_err(|_| failed("another workbench has this score open".to_owned()))?;
        file.set_len(good as u64).map_err(said)?;
        file.seek(SeekFrom::End(0)).map_err(said)?;
        let number = steps.len() as u64;
        Ok((Self { path: path.to_owned(), file, number }, steps))
    }

    /// Writes a step; it is on the disk when this returns.
    ///
    /// # Errors
    /// The disk is full, or gone.
    pub fn put(&mut self, step: &JournalLine) -> Result<(), JournalError> {
        let failed = |why: String| JournalError { path: self.path.clone(), why };
        let line = line(self.number, step).map_err(failed)?;
        let before = self.file.stream_position().map_err(|problem| failed(problem.to_string()))?;
        let written = self.file.write_all(line.as_bytes()).and_then(|()| self.file.sync_data());
        if let Err(problem) = written {
            // Half a line would be taken for a torn one only as long as nothing follows it.
            let _ = self.file.set_len(before);
            let _ = self.file.seek(SeekFrom::Start(before));
            return Err(failed(problem.to_string()));
        }
        self.number += 1;
        Ok(())
    }

    /// Where it is.
    #[must_use]
    pub fn path(&self) -> &Path {
        &self.path
    }
}

fn line(number: u64, step: &JournalLine) -> Result<String, String> {
    let check = check(number, step)?;
    let text = serde_json::to_string(&Written { number, step: step.clone(), check });
    text.map(|text| text + "\n").map_err(|problem| problem.to_string())
}

/// Eight hexadecimal digits over number and step.
fn check(number: u64, step: &JournalLine) -> Result<String, String> {
    let text = serde_json::to_string(step).map_err(|problem| problem.to_string())?;
    let digest = Sha256::digest(format!("{number} {text}").as_bytes());
    Ok(digest.iter().take(4).map(|byte| format!("{byte:02x}")).collect())
}

/// The steps, and how many bytes of them are whole.
fn read(bytes: &[u8]) -> Result<(Vec<JournalLine>, usize), String> {
    let mut steps = Vec::new();
    let mut good = 0;
    for (index, line) in bytes.split_inclusive(|byte| *byte == b'\n').enumerate() {
        let whole = line.ends_with(b"\n").then(|| serde_json::from_slice::<Written>(line).ok()).flatten();
        let sound = whole.filter(|written| {
            written.number == index as u64
                && check(written.number, &written.step).as_ref() == Ok(&written.check)
        });
        match sound {
            Some(written) => {
                steps.push(written.step);
                good += line.len();
            }
            None if good + line.len() == bytes.len() && (index > 0 || !line.ends_with(b"\n")) => break,
            None => {
                return Err(format!(
                    "line {} is broken, and more follows; move the file away to begin anew",
                    index + 1
                ));
            }
        }
    }
    Ok((steps, good))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn tempo(quarters: u32) -> JournalLine {
        JournalLine::Did(Act::Tempo { quarters: Some(quarters) })
    }

    #[test]
    fn what_was_put_is_read_again_wherever_the_file_is_cut() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("a.acts.jsonl");
        let steps = [tempo(60), tempo(72), JournalLine::Undid, JournalLine::Redid, tempo(80)];
        let (mut journal, before) = Journal::open(&path).unwrap();
        assert!(before.is_empty());
        let mut ends = vec![0];
        for step in &steps {
            journal.put(step).unwrap();
            ends.push(arcata_files::read(&path, LARGEST).unwrap().len());
        }
        drop(journal);
        let whole = arcata_files::read(&path, LARGEST).unwrap();
        for cut in 0..=whole.len() {
            arcata_files::write_whole(&path, &whole[..cut]).unwrap();
            let (mut journal, read) = Journal::open(&path).unwrap();
            let kept = ends.iter().rposition(|end| *end <= cut).unwrap();
            assert_eq!(read, steps[..kept], "cut at {cut}");
            journal.put(&tempo(99)).unwrap();
            drop(journal);
            assert_eq!(Journal::open(&path).unwrap().1.len(), kept + 1, "cut at {cut}");
        }
    }

    #[test]
    fn a_changed_line_in_the_middle_is_told_and_two_workbenches_do_not_share() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("a.acts.jsonl");
        let (mut journal, _) = Journal::open(&path).unwrap();
        journal.put(&tempo(60)).unwrap();
        journal.put(&tempo(61)).unwrap();
        assert!(Journal::open(&path).unwrap_err().to_string().contains("another workbench"));
        drop(journal);
        let text = String::from_utf8(arcata_files::read(&path, LARGEST).unwrap()).unwrap();
        arcata_files::write_whole(&path, text.replacen("60", "66", 1).as_bytes()).unwrap();
        assert!(Journal::open(&path).unwrap_err().to_string().contains("line 1 is broken"));
        arcata_files::write_whole(&path, b"something else\n").unwrap();
        assert!(Journal::open(&path).is_err(), "a file that is no journal is not written over");
    }
}
