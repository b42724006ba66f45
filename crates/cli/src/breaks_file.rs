//! The file beside a score that says where pages and lines of its parts are to begin; the workbench writes it.

use std::path::{Path, PathBuf};

use arcata_layer::{AskedBreaks, read_breaks};

use crate::failure::Failure;
use crate::files;

/// Where the breaks of a score are kept: `study.breaks.json` beside `study.musicxml`.
fn beside(score: &Path) -> PathBuf {
    let mut name = score.file_stem().unwrap_or_default().to_owned();
    name.push(".breaks.json");
    score.with_file_name(name)
}

/// The breaks that are asked for in a file, or in the one beside the score where there is one, with where they stand.
pub(crate) fn of(score: &Path, named: Option<&Path>) -> Result<Option<(PathBuf, AskedBreaks)>, Failure> {
    let path = named.map_or_else(|| beside(score), Path::to_owned);
    if named.is_none() && !path.exists() {
        return Ok(None);
    }
    let failed = |why: String| Failure::Breaks { path: path.clone(), why };
    let text = files::read_text(&path).map_err(failed)?;
    let asked = read_breaks(&text).map_err(failed)?;
    Ok(Some((path, asked)))
}
