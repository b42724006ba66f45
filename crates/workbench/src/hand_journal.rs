//! The journal of a teacher's hand: lines that the page sends, in a file before they are confirmed.

use std::fs::{File, OpenOptions};
use std::io::{Read as _, Seek as _, SeekFrom, Write as _};
use std::path::{Path, PathBuf};

use crate::journal::JournalError;

/// A limit: a journal is read up to this size.
const LARGEST: usize = 256 << 20;

/// A journal of lines that is open; what they say is somebody else's.
#[derive(Debug)]
pub(crate) struct HandJournal {
    path: PathBuf,
    file: File,
}

impl HandJournal {
    /// Opens a journal, or begins one with its first line. A torn last line is cut off: it was never confirmed. What is no journal
    /// is refused: the command line has set it beside before this.
    pub(crate) fn open(path: &Path, head: &str) -> Result<Self, JournalError> {
        let failed = |why: String| JournalError { path: path.to_owned(), why };
        let said = |problem: std::io::Error| failed(problem.to_string());
        let mut open = OpenOptions::new();
        let file = open.create(true).truncate(false).read(true).write(true).open(path).map_err(said)?;
        file.try_lock().map_err(|_| failed("another program goes through this class".to_owned()))?;
        let mut journal = Self { path: path.to_owned(), file };
        let text = journal.text()?;
        let whole = text.rfind('\n').map_or(0, |end| end + 1);
        journal
            .file
            .set_len(whole as u64)
            .and_then(|()| journal.file.seek(SeekFrom::End(0)).map(|_| ()))
            .map_err(said)?;
        if whole == 0 {
            journal.put(head)?;
            // A new name is on the disk only when its folder is: without it a power cut takes the file with all that was confirmed.
            arcata_files::sync_folder_of(path);
        } else if !text.starts_with(head) {
            return Err(failed("line 1: this is no journal of a class's sheets".to_owned()));
        }
        Ok(journal)
    }

    /// Writes a line, which has its end; it is on the disk when this returns.
    pub(crate) fn put(&mut self, line: &str) -> Result<(), JournalError> {
        let failed =
            |problem: std::io::Error| JournalError { path: self.path.clone(), why: problem.to_string() };
        let before = self.file.stream_position().map_err(failed)?;
        let written = self.file.write_all(line.as_bytes()).and_then(|()| self.file.sync_data());
        written.map_err(|problem| {
            // Half a line would be taken for a torn one only as long as nothing follows it.
            let _ = self.file.set_len(before);
            let _ = self.file.seek(SeekFrom::Start(before));
            failed(problem)
        })
    }

    /// All lines.
    pub(crate) fn text(&self) -> Result<String, JournalError> {
        let failed = |why: String| JournalError { path: self.path.clone(), why };
        let said = |problem: std::io::Error| failed(problem.to_string());
        // Through the file that is held: some systems let nobody read by another way what is locked.
        let (mut held, mut bytes) = (&self.file, Vec::new());
        held.rewind().map_err(said)?;
        held.take(LARGEST as u64 + 1).read_to_end(&mut bytes).map_err(said)?;
        held.seek(SeekFrom::End(0)).map_err(said)?;
        if bytes.len() > LARGEST {
            return Err(failed("it is larger than any journal".to_owned()));
        }
        String::from_utf8(bytes).map_err(|_| failed("it is not UTF-8 text".to_owned()))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_put_is_there_wherever_the_file_is_cut() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("a.jsonl");
        let lines = ["head\n", "one\n", "two\n"];
        let mut journal = HandJournal::open(&path, lines[0]).unwrap();
        assert!(HandJournal::open(&path, lines[0]).unwrap_err().to_string().contains("another program"));
        journal.put(lines[1]).unwrap();
        journal.put(lines[2]).unwrap();
        drop(journal);
        let whole = arcata_files::read(&path, LARGEST).unwrap();
        for cut in 0..=whole.len() {
            arcata_files::write_whole(&path, &whole[..cut]).unwrap();
            let mut journal = HandJournal::open(&path, lines[0]).unwrap();
            journal.put("three\n").unwrap();
            let kept: String = String::from_utf8(whole[..cut].to_vec()).unwrap();
            let kept = kept.rfind('\n').map_or("head\n", |end| &kept[..=end]).to_owned();
            assert_eq!(journal.text().unwrap(), kept + "three\n", "cut at {cut}");
        }
        arcata_files::write_whole(&path, b"other\n").unwrap();
        assert!(HandJournal::open(&path, lines[0]).is_err());
        assert_eq!(arcata_files::read(&path, LARGEST).unwrap(), b"other\n");
    }
}
