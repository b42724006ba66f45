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
use index::Index;
use scan::Seen;

/// What is looked for; all that is given must fit.
#[derive(Clone, Debug, Default)]
pub(crate) struct Asked {
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
pub(crate) fn list(folder: &Path, asked: &Asked, memory: Memory) -> Result<LibraryView, Failure> {
    let failed = |why: String| Failure::Folder { path: folder.to_owned(), why };
    let found = scan::scan(folder).map_err(failed)?;
    let mut index = Index::open(&found.root, memory).map_err(|error| failed(index::said(&error)))?;
    let known = index.known().map_err(|error| failed(index::said(&error)))?;
    let now = scan::now();
    let stale: Vec<&Seen> = found.files.iter().filter(|seen| !known.is_fresh(seen)).collect();
    let read: Vec<(&Seen, look::Looked)> =
        stale.par_iter().map(|seen| (*seen, look::look(&found.root, seen, known.hash(&seen.file)))).collect();
    let gone = known.gone(&found.files);
    if !(read.is_empty() && gone.is_empty()) {
        index.update(&read, &gone, now).map_err(|error| failed(index::said(&error)))?;
    }
    let mut view = LibraryView::new(&folder.display().to_string());
    index.fill(asked, &mut view).map_err(|error| failed(index::said(&error)))?;
    // One trouble a file, in order of name.
    let mut troubles: BTreeMap<String, String> = found.refused.into_iter().collect();
    troubles.extend(view.troubles.drain(..).map(|trouble| (trouble.file, trouble.why)));
    view.troubles = troubles.into_iter().map(|(file, why)| LibraryTrouble { file, why }).collect();
    Ok(view)
}
