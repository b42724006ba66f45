//! Links of the book that lead nowhere.

use std::fs;
use std::path::{Path, PathBuf};

/// Each link or picture of a page whose file is not in the book.
pub(crate) fn broken(book: &Path) -> Result<Vec<String>, String> {
    let mut broken = Vec::new();
    for page in html(book)? {
        let text = fs::read_to_string(&page).map_err(|problem| format!("{}: {problem}", page.display()))?;
        let folder = page.parent().unwrap_or(book);
        for target in targets(&text) {
            let file = target.split(['#', '?']).next().unwrap_or_default();
            if !file.is_empty() && !folder.join(file).exists() {
                broken.push(format!("{}: {target} is not in the book", page.display()));
            }
        }
    }
    Ok(broken)
}

/// The relative targets of a page's links and pictures.
fn targets(page: &str) -> Vec<&str> {
    let mut found = Vec::new();
    for attribute in ["href=\"", "src=\""] {
        for rest in page.split(attribute).skip(1) {
            let target = rest.split('"').next().unwrap_or_default();
            let elsewhere = target.contains("://")
                || ["mailto:", "data:", "/"].iter().any(|start| target.starts_with(start));
            if !elsewhere {
                found.push(target);
            }
        }
    }
    found
}

fn html(folder: &Path) -> Result<Vec<PathBuf>, String> {
    let mut pages = Vec::new();
    let mut folders = vec![folder.to_owned()];
    while let Some(folder) = folders.pop() {
        let entries = fs::read_dir(&folder).map_err(|problem| format!("{}: {problem}", folder.display()))?;
        for path in entries.filter_map(|entry| Some(entry.ok()?.path())) {
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|ending| ending == "html") && !path.ends_with("404.html") {
                pages.push(path);
            }
        }
    }
    pages.sort();
    Ok(pages)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_what_should_be_in_the_book_is_looked_for() {
        let page = r##"<a href="a.html#x"><img src="b.svg"><a href="https://w3.org/"><a href="#here"><a href="mailto:x">"##;
        assert_eq!(targets(page), ["a.html#x", "#here", "b.svg"]);
    }
}
