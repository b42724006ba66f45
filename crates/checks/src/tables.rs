//! Tables in Markdown pages that explain what a check finds.

use std::collections::BTreeMap;
use std::path::Path;

use crate::outcome::Result;
use crate::setting::read_text;

/// The rows of all tables of a page: their first cell, without the marks of code, and the last.
pub(crate) fn by_first_column(path: &Path) -> Result<BTreeMap<String, String>> {
    let text = read_text(path)?;
    let rows = text.lines().filter_map(|line| line.trim().strip_prefix('|')?.strip_suffix('|'));
    let cells = rows.filter_map(|row| {
        let (first, _) = row.split_once('|')?;
        let (_, last) = row.rsplit_once('|')?;
        Some((first.trim().trim_matches('`').to_owned(), last.trim().to_owned()))
    });
    Ok(cells.filter(|(first, _)| !first.starts_with("--") && !first.is_empty()).collect())
}
