//! A session kept on the disk: the journal and what is set aside beside the score, and the score itself.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};

use arcata_analysis::Source;
use arcata_desk::{
    ExportedFiles, JournalLine, KeptView, Session, SessionError, SessionStart, Shelf, read_aside,
};
use arcata_files::FileError;
use arcata_habits::Habits;
use arcata_xml::Limits;
use sha2::{Digest as _, Sha256};

use crate::journal::Journal;

/// A limit: the file on findings set aside is read up to this size.
const LARGEST_ASIDE: usize = 4 << 20;
/// A limit: the file on breaks in the parts is read up to this size.
const LARGEST_BREAKS: usize = 16 << 20;
/// A limit: a layer is read up to this size.
const LARGEST_LAYER: usize = 64 << 20;

/// Opens a score and takes up its journal.
///
/// ```no_run
/// use std::path::Path;
///
/// let session = arcata_workbench::open_session(Path::new("study.musicxml"), None)?;
/// println!("{} acts can be undone", session.reach().0);
/// # Ok::<(), arcata_desk::SessionError>(())
/// ```
///
/// # Errors
/// A score or a journal that cannot be read.
pub fn open_session(path: &Path, habits: Option<Habits>) -> Result<Session, SessionError> {
    let bytes = arcata_files::read(path, Limits::default().max_bytes).map_err(score)?;
    let named = |why: String| SessionError::Score(format!("{}: {why}", path.display()));
    // The score first: beside one that is none no journal is begun.
    let text = aside(path).map_err(SessionError::Score)?;
    let name = aside_path(path).display().to_string();
    let aside = read_aside(&name, text.as_deref()).map_err(SessionError::Score)?;
    let source = Source::open(bytes.clone()).map_err(named)?;
    let (journal, steps) = Journal::open(&Journal::beside(path))
        .map_err(|problem| SessionError::Journal(problem.to_string()))?;
    let start = SessionStart {
        name: path.file_name().unwrap_or_default().to_string_lossy().into_owned(),
        bytes,
        source,
        steps,
        journal_told: journal.told().map(str::to_owned),
        aside,
        habits,
    };
    let shelf = DiskShelf { path: path.to_owned(), journal, written: Mutex::default() };
    Session::new(start, Box::new(shelf))
}

/// Puts a layer from a file on the desk, under the name of the file; nothing is done where one of that name lies there.
///
/// # Errors
/// A file that cannot be read, or belongs to other music.
pub fn put_layer_on_desk(session: &mut Session, path: &Path) -> Result<(), SessionError> {
    let name = path.file_name().unwrap_or_default().to_string_lossy();
    let name = name.strip_suffix(".bowings.json").or_else(|| name.strip_suffix(".json")).unwrap_or(&name);
    if session.has_layer(name) {
        return Ok(());
    }
    let bytes =
        arcata_files::read(path, LARGEST_LAYER).map_err(|problem| SessionError::Act(problem.to_string()))?;
    let text = String::from_utf8(bytes)
        .map_err(|_| SessionError::Act(format!("{}: it is not UTF-8 text", path.display())))?;
    session.put_on_desk(name, text).map_err(|why| SessionError::Act(format!("{}: {why}", path.display())))
}

/// Keeps a session beside its score.
#[derive(Debug)]
struct DiskShelf {
    path: PathBuf,
    journal: Journal,
    /// The files that were written beside the score since the program began, and what was written, in short.
    written: Mutex<BTreeMap<PathBuf, [u8; 32]>>,
}

impl Shelf for DiskShelf {
    fn put(&mut self, step: &JournalLine) -> Result<(), String> {
        self.journal.put(step).map_err(|problem| problem.to_string())
    }

    fn score(&self) -> Result<Vec<u8>, String> {
        arcata_files::read(&self.path, Limits::default().max_bytes).map_err(words)
    }

    fn write_score(&mut self, was: &[u8], bytes: &[u8]) -> Result<String, String> {
        let kept = arcata_files::back_up(&self.path).map_err(words)?;
        arcata_files::rewrite(&self.path, was, bytes).map_err(words)?;
        Ok(kept.file_name().unwrap_or_default().to_string_lossy().into_owned())
    }

    fn aside_name(&self) -> String {
        aside_path(&self.path).display().to_string()
    }

    fn aside(&self) -> Result<Option<String>, String> {
        aside(&self.path)
    }

    fn breaks_name(&self) -> String {
        breaks_path(&self.path).display().to_string()
    }

    fn breaks(&self) -> Result<Option<String>, String> {
        text_of(&breaks_path(&self.path), LARGEST_BREAKS)
    }

    fn put_breaks(&mut self, was: &str, text: &str) -> Result<(), String> {
        let path = breaks_path(&self.path);
        if !path.exists() {
            return arcata_files::write_new(&path, text.as_bytes()).map_err(words);
        }
        let now = arcata_files::read(&path, usize::MAX).map_err(words)?;
        if now == text.as_bytes() {
            return Ok(());
        }
        if now != was.as_bytes() {
            arcata_files::back_up(&path).map_err(words)?;
        }
        arcata_files::rewrite(&path, &now, text.as_bytes()).map_err(words)
    }

    /// A file that is there and is not what this program as it runs wrote is kept under another name.
    fn keep(&self, parcel: ExportedFiles) -> Result<KeptView, String> {
        let folder = match &parcel.folder {
            Some(folder) => self.path.with_file_name(folder),
            None => self.path.parent().unwrap_or(Path::new("")).to_owned(),
        };
        if parcel.folder.is_some() && !folder.is_dir() {
            std::fs::create_dir(&folder).map_err(|problem| format!("{}: {problem}", folder.display()))?;
        }
        let mut told = parcel.told;
        let mut written = self.written.lock().unwrap_or_else(PoisonError::into_inner);
        for file in &parcel.files {
            let path = folder.join(&file.name);
            let now = match path.exists() {
                true => Some(arcata_files::read(&path, usize::MAX).map_err(words)?),
                false => None,
            };
            if now.as_ref().is_some_and(|now| written.get(&path) != Some(&digest(now))) {
                let kept = arcata_files::back_up(&path).map_err(words)?;
                let kept = kept.file_name().unwrap_or_default().to_string_lossy();
                told.push(format!("{} as it was is kept as {kept}", file.name));
            }
            match now {
                Some(now) => arcata_files::rewrite(&path, &now, &file.bytes).map_err(words)?,
                None => arcata_files::write_new(&path, &file.bytes).map_err(words)?,
            }
            written.insert(path, digest(&file.bytes));
        }
        let first = parcel.files.first().map(|file| file.name.clone()).unwrap_or_default();
        Ok(KeptView { file: parcel.folder.unwrap_or(first), files: parcel.files.len(), told })
    }
}

/// `study.aside.toml` beside `study.musicxml`; `arcata aside` writes it, too.
fn aside_path(score: &Path) -> PathBuf {
    let mut name = score.file_stem().unwrap_or_default().to_owned();
    name.push(".aside.toml");
    score.with_file_name(name)
}

/// `study.breaks.json` beside `study.musicxml`; `arcata parts` reads it, too.
fn breaks_path(score: &Path) -> PathBuf {
    let mut name = score.file_stem().unwrap_or_default().to_owned();
    name.push(".breaks.json");
    score.with_file_name(name)
}

/// What stands in the file on what is set aside; nothing where there is no such file.
fn aside(score: &Path) -> Result<Option<String>, String> {
    text_of(&aside_path(score), LARGEST_ASIDE)
}

/// The text of a file; nothing where there is none.
fn text_of(path: &Path, most: usize) -> Result<Option<String>, String> {
    if !path.exists() {
        return Ok(None);
    }
    let bytes = arcata_files::read(path, most).map_err(words)?;
    String::from_utf8(bytes).map(Some).map_err(|_| format!("{}: it is not UTF-8 text", path.display()))
}

fn digest(bytes: &[u8]) -> [u8; 32] {
    Sha256::digest(bytes).into()
}

#[expect(clippy::needless_pass_by_value, reason = "for map_err")]
fn words(problem: FileError) -> String {
    problem.to_string()
}

#[expect(clippy::needless_pass_by_value, reason = "for map_err")]
fn score(problem: FileError) -> SessionError {
    SessionError::Score(problem.to_string())
}
