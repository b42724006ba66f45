//! Movements in files of their own joined to one file.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use arcata_xml::Element;

use crate::outcome::Result;
use crate::scores;

/// Files named `movement1`, `movement2` and so on, by the folder of their work; works of one file are left out.
pub(super) fn works(paths: &[PathBuf]) -> Vec<Vec<PathBuf>> {
    let mut works: BTreeMap<&Path, Vec<PathBuf>> = BTreeMap::new();
    for path in paths {
        let name = path.file_stem().unwrap_or_default().to_string_lossy();
        if let (true, Some(folder)) = (name.starts_with("movement"), path.parent()) {
            works.entry(folder).or_default().push(path.clone());
        }
    }
    works.into_values().filter(|movements| movements.len() > 1).collect()
}

/// The movements as one score; `None` where they have not the same number of parts.
pub(super) fn joined(movements: &[PathBuf]) -> Result<Option<String>> {
    let documents = movements.iter().map(|path| scores::document(path)).collect::<Result<Vec<_>>>()?;
    let parts: Vec<Vec<Element<'_>>> = documents
        .iter()
        .map(|document| document.root().children().filter(|child| child.name() == "part").collect())
        .collect();
    let (Some(first), Some(document)) = (parts.first(), documents.first()) else { return Ok(None) };
    if first.is_empty() || parts.iter().any(|others| others.len() != first.len()) {
        return Ok(None);
    }
    let mut text = document.slice(0..first[0].range().start).to_owned();
    for (index, part) in first.iter().enumerate() {
        text.push_str(document.slice(part.start_tag_range()));
        for (document, parts) in documents.iter().zip(&parts) {
            text.push_str(document.slice(parts[index].content_range()));
        }
        text.push_str("</part>");
    }
    text.push_str("</score-partwise>");
    Ok(Some(text))
}
