//! What lies in the folder: names, sizes and times of change, nothing read.
#![expect(clippy::disallowed_methods, reason = "the command line is where files are listed")]

use std::ffi::OsStr;
use std::fs::{self, DirEntry};
use std::path::{Path, PathBuf};
use std::time::{SystemTime, UNIX_EPOCH};

use rayon::prelude::*;

/// The deepest that folders are looked into, and the most files that are listed.
const DEEPEST: usize = 32;
const MOST_FILES: usize = 200_000;

/// A file that may be a work or a layer.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct SeenFile {
    /// Within the folder, with `/`.
    pub(super) file: String,
    pub(super) kind: FileKind,
    pub(super) size: i64,
    /// Nanoseconds since 1970.
    pub(super) changed: i64,
}

/// What a file's name lets expect.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum FileKind {
    Score,
    Layer,
}

/// What was found.
#[derive(Debug, Default)]
pub(super) struct FoundFiles {
    /// In order of name.
    pub(super) files: Vec<SeenFile>,
    /// Files that are not looked at, and why.
    pub(super) refused: Vec<(String, String)>,
}

/// Nanoseconds since 1970.
pub(super) fn now() -> i64 {
    nanoseconds(SystemTime::now())
}

fn nanoseconds(time: SystemTime) -> i64 {
    let since = time.duration_since(UNIX_EPOCH);
    since.map_or(0, |since| i64::try_from(since.as_nanos()).unwrap_or(i64::MAX))
}

/// The folder itself, links in its own path resolved.
pub(super) fn root(folder: &Path) -> Result<PathBuf, String> {
    let root = folder.canonicalize().map_err(|error| match error.kind() {
        std::io::ErrorKind::NotFound => "there is no such folder; check the name".to_owned(),
        _ => error.to_string(),
    })?;
    if root.is_dir() {
        Ok(root)
    } else {
        Err("this is a file, not a folder; name the folder that holds it".into())
    }
}

/// A folder that is to be looked through.
struct Folder {
    path: PathBuf,
    /// Its name within the root, with a `/` behind it; empty for the root.
    inside: String,
    depth: usize,
}

/// What one folder holds.
#[derive(Default)]
struct ListedFolder {
    found: FoundFiles,
    folders: Vec<Folder>,
}

/// Looks through a folder. A link inside it is refused: it could lead out of the folder, or in a circle.
pub(super) fn scan(root: &Path) -> Result<FoundFiles, String> {
    let mut found = FoundFiles::default();
    let mut open = vec![Folder { path: root.to_owned(), inside: String::new(), depth: 0 }];
    while !open.is_empty() {
        // All folders of one depth side by side.
        let listed: Vec<ListedFolder> = open.into_par_iter().map(list).collect::<Result<_, _>>()?;
        open = Vec::new();
        for folder in listed {
            found.files.extend(folder.found.files);
            found.refused.extend(folder.found.refused);
            open.extend(folder.folders);
        }
        if found.files.len() > MOST_FILES {
            return Err(format!(
                "more than {MOST_FILES} scores and layers; list the folders inside one by one"
            ));
        }
    }
    found.files.sort_unstable();
    found.refused.sort();
    Ok(found)
}

fn list(folder: Folder) -> Result<ListedFolder, String> {
    let mut listed = ListedFolder::default();
    let entries = match fs::read_dir(&folder.path) {
        Ok(entries) => entries,
        // The folder itself must be readable; one inside it is a trouble of its own.
        Err(error) if folder.inside.is_empty() => return Err(error.to_string()),
        Err(error) => {
            listed.found.refused.push((folder.inside, error.to_string()));
            return Ok(listed);
        }
    };
    let mut files: Vec<(DirEntry, FileKind)> = Vec::new();
    for entry in entries.filter_map(Result::ok) {
        match look_at(&entry, &folder, &mut listed) {
            Some(kind) if files.len() <= MOST_FILES => files.push((entry, kind)),
            _ => {}
        }
    }
    // Sizes and times are most of the work. They are asked for by name within the open folder, which spares
    // the system the way there.
    let files = files.into_par_iter().with_min_len(256);
    listed.found.files = files.filter_map(|(entry, kind)| measured(&folder, &entry, kind)).collect();
    Ok(listed)
}

/// With its size and time of change; nothing for what is no longer a file.
fn measured(folder: &Folder, entry: &DirEntry, kind: FileKind) -> Option<SeenFile> {
    let about = entry.metadata().ok().filter(fs::Metadata::is_file)?;
    let size = i64::try_from(about.len()).unwrap_or(i64::MAX);
    let file = format!("{}{}", folder.inside, entry.file_name().to_str()?);
    Some(SeenFile { file, kind, size, changed: about.modified().map_or(0, nanoseconds) })
}

/// What a file's name lets expect; nothing for what is no file to be read.
fn look_at(entry: &DirEntry, folder: &Folder, listed: &mut ListedFolder) -> Option<FileKind> {
    let name = entry.file_name();
    let Some(plain) = name.to_str() else {
        let shown = format!("{}{}", folder.inside, name.to_string_lossy());
        listed.found.refused.push((shown, "its name is not UTF-8; rename it".into()));
        return None;
    };
    if plain.starts_with('.') {
        return None;
    }
    let file = || format!("{}{plain}", folder.inside);
    let kind_of_file = entry.file_type().ok()?;
    if kind_of_file.is_symlink() {
        if kind(plain).is_some() || entry.path().is_dir() {
            let why = "a link, not followed: it may lead out of the folder; put the file itself here";
            listed.found.refused.push((file(), why.into()));
        }
        return None;
    }
    if kind_of_file.is_dir() {
        let depth = folder.depth + 1;
        if depth > DEEPEST {
            let why = format!("more than {DEEPEST} folders deep; list it by itself");
            listed.found.refused.push((file(), why));
        } else {
            listed.folders.push(Folder { path: entry.path(), inside: file() + "/", depth });
        }
        return None;
    }
    kind(plain).filter(|_| kind_of_file.is_file())
}

fn kind(name: &str) -> Option<FileKind> {
    let ending = Path::new(name).extension().and_then(OsStr::to_str)?;
    if ending.eq_ignore_ascii_case("json") {
        Some(FileKind::Layer)
    } else {
        let score = ["musicxml", "mxl", "xml"].iter().any(|known| ending.eq_ignore_ascii_case(known));
        score.then_some(FileKind::Score)
    }
}
