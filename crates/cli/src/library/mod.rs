//! A folder of works and layers, listed through an index that is never trusted beyond the files.
//!
//! The files are the truth. The index remembers what was read from a file of a certain size and time of
//! change; a file that changed is read again, one that is gone is forgotten, and an index that cannot be
//! used is made anew.

mod index;
mod look;
mod scan;

use std::collections::BTreeMap;
use std::path::Path;

use arcata_report::LibraryView;
use arcata_report::library_view::LibraryTrouble;
use rayon::prelude::*;

use crate::failure::Failure;
use crate::files;
use index::{Index, KnownFiles};
use scan::SeenFile;

/// What is looked for; all that is given must fit.
#[derive(Clone, Debug, Default)]
pub(crate) struct LibraryQuery {
    pub(crate) work: Option<String>,
    pub(crate) owner: Option<String>,
    pub(crate) ensemble: Option<String>,
}

/// Whether what the index remembers is used.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Memory {
    /// Where the files have not changed.
    Kept,
    /// No: all files are read again.
    Forgotten,
}

/// Lists a folder.
pub(crate) fn list(folder: &Path, asked: &LibraryQuery, memory: Memory) -> Result<LibraryView, Failure> {
    let failed = |why: String| Failure::Folder { path: folder.to_owned(), why: files::told(&why) };
    let root = scan::root(folder).map_err(failed)?;
    let now = scan::now();
    let unusable = |error: rusqlite::Error| failed(index::said(&error));
    // What the index remembers is looked up while the files are looked at: mostly nothing has changed.
    let (found, remembered) = rayon::join(|| scan::scan(&root), || remembered(&root, folder, asked, memory));
    let found = found.map_err(failed)?;
    let (mut index, known, mut view) = remembered.map_err(unusable)?;
    let (stale, gone) = known.against(&found.files);
    let stale: Vec<(&SeenFile, Option<String>)> = stale
        .into_iter()
        .map(|seen| Ok((seen, index.hash(&seen.file)?)))
        .collect::<rusqlite::Result<_>>()
        .map_err(unusable)?;
    let read: Vec<(&SeenFile, look::Looked)> =
        stale.par_iter().map(|(seen, hash)| (*seen, look::look(&root, seen, hash.as_deref()))).collect();
    if !(read.is_empty() && gone.is_empty()) {
        index.update(&read, &gone, now).map_err(unusable)?;
        view = LibraryView::new(&folder.display().to_string());
        index.fill(asked, &mut view).map_err(unusable)?;
    }
    // One trouble a file, in order of name.
    let mut troubles: BTreeMap<String, String> = found.refused.into_iter().collect();
    troubles.extend(view.troubles.drain(..).map(|trouble| (trouble.file, trouble.why)));
    view.troubles = troubles.into_iter().map(|(file, why)| LibraryTrouble { file, why }).collect();
    Ok(view)
}

/// The index, what it knows of the files, and what it would answer if none had changed.
fn remembered(
    root: &Path,
    folder: &Path,
    asked: &LibraryQuery,
    memory: Memory,
) -> rusqlite::Result<(Index, KnownFiles, LibraryView)> {
    let index = Index::open(root, memory)?;
    let mut view = LibraryView::new(&folder.display().to_string());
    let known = index.fill(asked, &mut view)?;
    Ok((index, known, view))
}
