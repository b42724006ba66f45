//! Tables in Markdown pages that explain what a check finds.

use std::collections::BTreeMap;
use std::path::Path;

use crate::outcome::Result;
use crate::setting::read_text;

/// The rows of all tables of a page: their first cell, without the marks of code, and the other cells.
pub(crate) fn by_first_column(path: &Path) -> Result<BTreeMap<String, Vec<String>>> {
    let text = read_text(path)?;
    let rows = text.lines().filter_map(|line| line.trim().strip_prefix('|')?.strip_suffix('|'));
    let cells = rows.filter_map(|row| {
        let mut cells = row.split('|').map(|cell| cell.trim().to_owned());
        let first = cells.next()?.trim_matches('`').to_owned();
        Some((first, cells.collect()))
    });
    Ok(cells.filter(|(first, _)| !first.starts_with("--") && !first.is_empty()).collect())
}
