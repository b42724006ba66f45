//! `docs/trust.md` names tests that there are: what it says is stopped is shown somewhere.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files of the checkout")]

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// The names of test files, fuzz targets and modules with tests in them, and of test functions, below a folder.
fn tests(folder: &Path, names: &mut BTreeSet<String>) {
    for entry in std::fs::read_dir(folder).expect("a folder") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            let skipped = ["target", "node_modules", "fixtures"];
            if !skipped.iter().any(|name| path.ends_with(name)) {
                tests(&path, names);
            }
            continue;
        }
        let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
        if name.ends_with(".rs") {
            let text = std::fs::read_to_string(&path).expect("a source");
            let pieces: Vec<&str> = text.split("#[test]").chain(text.split("#[tokio::test")).collect();
            let functions = pieces.iter().filter_map(|piece| piece.split_once("fn ").map(|(_, rest)| rest));
            let functions =
                functions.filter_map(|rest| rest.split_once('(').map(|(name, _)| name.to_owned()));
            if text.contains("#[test]")
                || text.contains("#[tokio::test")
                || text.contains("fuzz_target!")
                || text.contains("proptest!")
            {
                names.insert(name.trim_end_matches(".rs").to_owned());
            }
            names.extend(functions);
        } else if let Some(name) = name.strip_suffix(".test.mjs") {
            names.insert(name.to_owned());
        }
    }
}

#[test]
fn every_row_names_a_test_that_there_is() {
    let mut names = BTreeSet::new();
    for folder in ["crates", "fuzz", "browser"] {
        tests(&root().join(folder), &mut names);
    }
    let page = std::fs::read_to_string(root().join("docs/trust.md")).expect("the page");
    // The figures are made; their runs are commands.
    let (page, _) = page.split_once("\n## Figures\n").expect("the figures stand last");
    let rows: Vec<&str> =
        page.lines().filter(|line| line.starts_with("| ") && line.ends_with(" |")).collect();
    let rows: Vec<&&str> = rows.iter().filter(|row| !row.ends_with("the test |")).collect();
    assert!(rows.len() > 15, "{rows:?}");
    for row in rows {
        let shown = row.trim_end_matches(" |").rsplit(" | ").next().unwrap_or_default();
        let named: Vec<&str> = shown.split('`').skip(1).step_by(2).collect();
        assert!(!named.is_empty(), "no test stands for: {row}");
        for name in named {
            assert!(names.contains(name), "docs/trust.md names a test {name}, which there is none of");
        }
    }
    assert_eq!(page.matches("What is *not* stopped").count(), 4, "every chapter says what is not stopped");
}
