//! The journal: every act in a file before it is confirmed, so that nothing is lost when the program is killed.
//!
//! A line that says what the file is and in which version, then one line of JSON a step, with a number and a checksum. A line
//! that a kill has torn is dropped when the journal is read again; what was confirmed stands before it. A journal of the first
//! form, which had no heading, is written anew in this one. What cannot be understood to its end is kept as it is under another
//! name, which is told, and the work goes on from what stands before.

use std::fmt;
use std::fs::{File, OpenOptions};
use std::io::{Read as _, Seek as _, SeekFrom, Write as _};
use std::path::{Path, PathBuf};

use arcata_desk::{HEADING, JournalContent, JournalEnd, JournalLine, journal_line};
use arcata_files::FileError;

/// A journal is read up to this size.
const LARGEST: usize = 256 << 20;

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
    told: Option<String>,
}

impl Journal {
    /// Where the journal of a score is: `study.acts.jsonl` beside `study.musicxml`.
    #[must_use]
    pub fn beside(score: &Path) -> PathBuf {
        let mut name = score.file_stem().unwrap_or_default().to_owned();
        name.push(".acts.jsonl");
        score.with_file_name(name)
    }

    /// Opens a journal, or begins one; hands back the steps in it. A torn last line is cut off; a journal of the first form is
    /// written anew; one that cannot be understood to its end is kept under another name, and [`Self::told`] says so.
    ///
    /// # Errors
    /// A file that cannot be read or written, or that another workbench has open.
    pub fn open(path: &Path) -> Result<(Self, Vec<JournalLine>), JournalError> {
        let failed = |why: String| JournalError { path: path.to_owned(), why };
        let said = |problem: std::io::Error| failed(problem.to_string());
        let file_said = |problem: FileError| failed(problem.why());
        // The lock first: what is read under it stays so.
        let mut file = locked(path).map_err(failed)?;
        let length = file.metadata().map_err(said)?.len();
        let lines = if length > LARGEST as u64 {
            JournalContent {
                end: JournalEnd::Broken { why: "it is larger than any journal".to_owned() },
                ..JournalContent::default()
            }
        } else {
            // Through the file that is held: some systems let nobody read by another way what is locked.
            let mut bytes = Vec::new();
            file.read_to_end(&mut bytes).map_err(said)?;
            JournalContent::read(&bytes)
        };
        let told = match &lines.end {
            JournalEnd::Whole | JournalEnd::Torn => None,
            JournalEnd::Broken { why } => {
                let kept = arcata_files::back_up(path).map_err(file_said)?;
                let kept = kept.file_name().unwrap_or_default().to_string_lossy().into_owned();
                let count = lines.steps.len();
                let steps = if count == 1 { "1 step".to_owned() } else { format!("{count} steps") };
                Some(format!(
                    "the journal could not be read to its end ({why}): {steps} of it count, and all of it is kept as {kept}"
                ))
            }
        };
        if lines.headed && told.is_none() {
            file.set_len(lines.good as u64).map_err(said)?;
        } else if lines.steps.is_empty() && told.is_none() {
            // Nothing is in it that could be lost: half a heading is none, and is written again.
            file.set_len(0).map_err(said)?;
            file.rewind().map_err(said)?;
            file.write_all(format!("{HEADING}\n").as_bytes())
                .and_then(|()| file.sync_data())
                .map_err(said)?;
            arcata_files::sync_folder_of(path);
        } else {
            // In one go, so that a kill leaves the old form or the new one. The old file stays locked until the new one is, where the
            // system lets a file be replaced that is open.
            #[cfg(windows)]
            drop(file);
            let text = lines.steps.iter().zip(0..).map(|(step, number)| journal_line(number, step));
            let text = text.collect::<Result<String, String>>().map_err(failed)?;
            arcata_files::write_whole(path, format!("{HEADING}\n{text}").as_bytes()).map_err(file_said)?;
            let anew = locked(path).map_err(failed)?;
            file = anew;
        }
        file.seek(SeekFrom::End(0)).map_err(said)?;
        let number = lines.steps.len() as u64;
        Ok((Self { path: path.to_owned(), file, number, told }, lines.steps))
    }

    /// What became of a journal that could not be read to its end, in words.
    #[must_use]
    pub fn told(&self) -> Option<&str> {
        self.told.as_deref()
    }

    /// Writes a step; it is on the disk when this returns.
    ///
    /// # Errors
    /// The disk is full, or gone.
    pub fn put(&mut self, step: &JournalLine) -> Result<(), JournalError> {
        let failed = |why: String| JournalError { path: self.path.clone(), why };
        let line = journal_line(self.number, step).map_err(failed)?;
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

/// The file of a journal, held against other workbenches for as long as it is open.
fn locked(path: &Path) -> Result<File, String> {
    // Whoever held it may have written it anew meanwhile: then the lock is on a file that nobody finds any more.
    const TRIES: u32 = 10;
    for _ in 0..TRIES {
        let file = OpenOptions::new().create(true).truncate(false).read(true).write(true).open(path);
        let file = file.map_err(|problem| problem.to_string())?;
        file.try_lock().map_err(|_| "another workbench has this score open".to_owned())?;
        if arcata_files::is_at(&file, path) {
            return Ok(file);
        }
    }
    Err("another workbench has this score open".to_owned())
}

#[cfg(test)]
mod tests {
    use arcata_desk::Act;

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
        let mut ends = vec![arcata_files::read(&path, LARGEST).unwrap().len()];
        for step in &steps {
            journal.put(step).unwrap();
            ends.push(arcata_files::read(&path, LARGEST).unwrap().len());
        }
        drop(journal);
        let whole = arcata_files::read(&path, LARGEST).unwrap();
        for cut in 0..=whole.len() {
            arcata_files::write_whole(&path, &whole[..cut]).unwrap();
            let (mut journal, read) = Journal::open(&path).unwrap();
            assert_eq!(journal.told(), None, "cut at {cut}");
            let kept = ends.iter().rposition(|end| *end <= cut).unwrap_or(0);
            assert_eq!(read, steps[..kept], "cut at {cut}");
            journal.put(&tempo(99)).unwrap();
            drop(journal);
            assert_eq!(Journal::open(&path).unwrap().1.len(), kept + 1, "cut at {cut}");
        }
    }

    fn names(folder: &Path) -> Vec<String> {
        let entries = std::fs::read_dir(folder).unwrap();
        let mut names: Vec<String> =
            entries.map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
        names.sort();
        names
    }

    #[test]
    fn two_workbenches_do_not_share() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("a.acts.jsonl");
        let (journal, _) = Journal::open(&path).unwrap();
        assert!(Journal::open(&path).unwrap_err().to_string().contains("another workbench"));
        drop(journal);
        Journal::open(&path).unwrap();
    }

    #[test]
    fn a_step_that_cannot_be_written_is_told_and_leaves_the_journal_sound() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("a.acts.jsonl");
        let (mut journal, _) = Journal::open(&path).unwrap();
        journal.put(&tempo(60)).unwrap();
        // A file that takes nothing more, as a full disk.
        let full = OpenOptions::new().read(true).open(&path).unwrap();
        let good = std::mem::replace(&mut journal.file, full);
        assert!(journal.put(&tempo(61)).is_err());
        journal.file = good;
        journal.put(&tempo(62)).unwrap();
        drop(journal);
        let (journal, steps) = Journal::open(&path).unwrap();
        assert_eq!((steps, journal.told()), (vec![tempo(60), tempo(62)], None));
    }

    #[test]
    fn what_cannot_be_understood_is_kept_whole_under_a_name_that_is_told() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("a.acts.jsonl");
        let (mut journal, _) = Journal::open(&path).unwrap();
        for quarters in [60, 61, 62] {
            journal.put(&tempo(quarters)).unwrap();
        }
        drop(journal);
        let text = String::from_utf8(arcata_files::read(&path, LARGEST).unwrap()).unwrap();
        let later = text.replacen("\"version\":2", "\"version\":3", 1);
        let cases = [
            (text.replacen("61", "66", 1), 1, "line 3 is broken"),
            (text.replacen("62", "66", 1), 2, "line 4 is broken"),
            (later, 0, "version 3"),
            ("something else\n".to_owned(), 0, "line 1 is broken"),
            ("{\"format\":\"arcata-layer\",\"version\":1}\n".to_owned(), 0, "no journal"),
        ];
        for (number, (broken, steps, why)) in cases.iter().enumerate() {
            arcata_files::write_whole(&path, broken.as_bytes()).unwrap();
            let (mut journal, read) = Journal::open(&path).unwrap();
            assert_eq!(read.len(), *steps, "{broken}");
            let told = journal.told().unwrap().to_owned();
            let kept = match number {
                0 => "a.acts.jsonl.backup".to_owned(),
                number => format!("a.acts.jsonl.backup-{}", number + 1),
            };
            assert!(told.contains(why) && told.ends_with(&format!("is kept as {kept}")), "{told}");
            journal.put(&tempo(99)).unwrap();
            drop(journal);
            assert_eq!(arcata_files::read(&folder.path().join(&kept), LARGEST).unwrap(), broken.as_bytes());
            let (journal, read) = Journal::open(&path).unwrap();
            assert_eq!((read.len(), journal.told()), (steps + 1, None), "{broken}");
        }
        assert_eq!(names(folder.path()).len(), 1 + cases.len());
    }

    /// As the first two forms of the program wrote it: without a heading, a layer without a name, one layer carried over.
    #[test]
    fn a_journal_of_the_first_form_is_written_anew() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("a.acts.jsonl");
        let layer = arcata_layer::write(&arcata_layer::Layer::default());
        let text = serde_json::to_string(&layer).unwrap();
        let old = [
            r#"{"did":{"act":"bow","asks":[{"place":{"part":"violin","bar":"1","bar_ordinal":1,"offset":"0","voice":"1"},"ask":"up"}]}}"#.to_owned(),
            format!(r#"{{"did":{{"act":"layer","text":{text}}}}}"#),
            r#""undid""#.to_owned(),
            r#""redid""#.to_owned(),
            format!(r#"{{"did":{{"act":"carried","layer":{text},"told":["1 bowing is kept as it was"]}}}}"#),
            r#"{"did":{"act":"player","profile":"student"}}"#.to_owned(),
        ];
        let lines = old.iter().enumerate().map(|(number, step)| {
            format!(
                "{{\"number\":{number},\"step\":{step},\"check\":\"{}\"}}\n",
                arcata_desk::journal_check(number as u64, step)
            )
        });
        arcata_files::write_whole(&path, lines.collect::<String>().as_bytes()).unwrap();
        for _ in 0..2 {
            let (journal, steps) = Journal::open(&path).unwrap();
            assert_eq!(journal.told(), None);
            assert_eq!(steps.len(), old.len());
            assert_eq!(steps[1], JournalLine::Did(Act::TakeUpText { text: layer.clone() }));
            let told = vec!["1 bowing is kept as it was".to_owned()];
            assert_eq!(
                steps[4],
                JournalLine::Did(Act::Carried { layers: vec![layer.clone()], breaks: None, told })
            );
        }
        let anew = arcata_files::read(&path, LARGEST).unwrap();
        assert!(anew.starts_with(HEADING.as_bytes()));
        assert_eq!(names(folder.path()), ["a.acts.jsonl"]);
    }
}
