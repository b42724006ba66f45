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
pub(super) struct Seen {
    /// Within the folder, with `/`.
    pub(super) file: String,
    pub(super) kind: Kind,
    pub(super) size: i64,
    /// Nanoseconds since 1970.
    pub(super) changed: i64,
}

/// What a file's name lets expect.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Kind {
    Score,
    Layer,
}

/// What was found.
#[derive(Debug, Default)]
pub(super) struct Found {
    /// In order of name.
    pub(super) files: Vec<Seen>,
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

/// Looks through a folder. A link inside it is refused: it could lead out of the folder, or in a circle.
pub(super) fn scan(root: &Path) -> Result<Found, String> {
    let mut found = Found::default();
    let mut open = vec![(root.to_owned(), String::new(), 0)];
    while let Some((path, inside, depth)) = open.pop() {
        let entries = match fs::read_dir(&path) {
            Ok(entries) => entries,
            // The folder itself must be readable; one inside it is a trouble of its own.
            Err(error) if inside.is_empty() => return Err(error.to_string()),
            Err(error) => {
                found.refused.push((inside, error.to_string()));
                continue;
            }
        };
        for entry in entries.filter_map(Result::ok) {
            look_at(&entry, &inside, depth, &mut found, &mut open);
            if found.files.len() > MOST_FILES {
                return Err(format!(
                    "more than {MOST_FILES} scores and layers; list the folders inside one by one"
                ));
            }
        }
    }
    // Sizes and times are most of the work: side by side. What vanishes meanwhile is not listed.
    let files = std::mem::take(&mut found.files);
    found.files = files.into_par_iter().with_min_len(256).filter_map(|seen| measured(root, seen)).collect();
    found.files.sort_unstable();
    found.refused.sort();
    Ok(found)
}

/// With its size and time of change; nothing for what is no longer a file.
fn measured(root: &Path, seen: Seen) -> Option<Seen> {
    let about = fs::symlink_metadata(root.join(&seen.file)).ok().filter(fs::Metadata::is_file)?;
    let size = i64::try_from(about.len()).unwrap_or(i64::MAX);
    Some(Seen { size, changed: about.modified().map_or(0, nanoseconds), ..seen })
}

fn look_at(
    entry: &DirEntry,
    inside: &str,
    depth: usize,
    found: &mut Found,
    open: &mut Vec<(PathBuf, String, usize)>,
) {
    let name = entry.file_name();
    let Some(plain) = name.to_str() else {
        let shown = format!("{inside}{}", name.to_string_lossy());
        found.refused.push((shown, "its name is not UTF-8; rename it".into()));
        return;
    };
    if plain.starts_with('.') {
        return;
    }
    let file = format!("{inside}{plain}");
    let Ok(kind_of_file) = entry.file_type() else { return };
    if kind_of_file.is_symlink() {
        let interesting = kind(plain).is_some() || entry.path().is_dir();
        if interesting {
            let why = "a link, not followed: it may lead out of the folder; put the file itself here";
            found.refused.push((file, why.into()));
        }
        return;
    }
    if kind_of_file.is_dir() {
        if depth >= DEEPEST {
            found.refused.push((file, format!("more than {DEEPEST} folders deep; list it by itself")));
        } else {
            open.push((entry.path(), format!("{file}/"), depth + 1));
        }
        return;
    }
    let Some(kind) = kind(plain).filter(|_| kind_of_file.is_file()) else { return };
    found.files.push(Seen { file, kind, size: 0, changed: 0 });
}

fn kind(name: &str) -> Option<Kind> {
    let ending = Path::new(name).extension().and_then(OsStr::to_str)?;
    if ending.eq_ignore_ascii_case("json") {
        Some(Kind::Layer)
    } else {
        let score = ["musicxml", "mxl", "xml"].iter().any(|known| ending.eq_ignore_ascii_case(known));
        score.then_some(Kind::Score)
    }
}
