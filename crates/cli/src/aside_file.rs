//! The file beside a score that says what is set aside.

use std::path::{Path, PathBuf};

use arcata_review::Aside;

use crate::failure::Failure;
use crate::files;

/// Where the entries of a score are kept: `study.aside.toml` beside `study.musicxml`.
pub(crate) fn beside(score: &Path) -> PathBuf {
    let mut name = score.file_stem().unwrap_or_default().to_owned();
    name.push(".aside.toml");
    score.with_file_name(name)
}

/// Reads the entries in a file.
pub(crate) fn read(path: &Path) -> Result<Aside, Failure> {
    let failed = |why: String| Failure::Aside { path: path.to_owned(), why };
    let text = files::read_text(path).map_err(failed)?;
    Aside::read(&text).map_err(|error| failed(files::told(&error.to_string())))
}

/// The entries that hold for a score, with their file: of the file named, or of the one beside the score
/// where there is one.
pub(crate) fn of(score: &Path, named: Option<&Path>) -> Result<Option<(PathBuf, Aside)>, Failure> {
    let path = named.map_or_else(|| beside(score), Path::to_owned);
    if named.is_none() && !path.exists() {
        return Ok(None);
    }
    let aside = read(&path)?;
    Ok(Some((path, aside)))
}
