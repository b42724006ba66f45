//! One name, one thing: no two files of the house give one name to two types.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the test reads the sources")]

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

/// Rust files under a folder, without tests, benches and examples.
fn sources(folder: &Path, all: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).expect("the house can be read") {
        let path = entry.expect("the house can be read").path();
        let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
        if path.is_dir() && !["tests", "benches", "examples", "target", "fuzz"].contains(&name.as_str()) {
            sources(&path, all);
        } else if name.ends_with(".rs") && name != "tests.rs" {
            all.push(path);
        }
    }
}

/// The name of a type that a line declares, outside blocks of code: types inside a trait or a function are their own.
fn declared(line: &str) -> Option<&str> {
    let line = match line.strip_prefix("pub") {
        Some(rest) => rest.trim_start_matches(|c: char| c != ' ').trim_start(),
        None => line,
    };
    let kinds = ["struct ", "enum ", "trait ", "type ", "union "];
    let rest = kinds.iter().find_map(|kind| line.strip_prefix(kind))?;
    rest.split(|c: char| !c.is_alphanumeric() && c != '_').next()
}

#[test]
fn no_two_types_bear_one_name() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let mut files = Vec::new();
    sources(&root.join("crates"), &mut files);
    sources(&root.join("xtask"), &mut files);
    let mut named: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    for path in &files {
        let text = fs::read_to_string(path).expect("sources are text");
        let own = text.lines().take_while(|line| !line.starts_with("#[cfg(test)]"));
        for name in own.filter_map(declared) {
            let shown = path.strip_prefix(&root).unwrap_or(path).display().to_string();
            named.entry(name.to_owned()).or_default().insert(shown);
        }
    }
    assert!(named.len() > 700, "only {} types were found", named.len());
    let twice: Vec<String> = named
        .iter()
        .filter(|(_, files)| files.len() > 1)
        .map(|(name, files)| format!("{name}: {}", files.iter().cloned().collect::<Vec<_>>().join(", ")))
        .collect();
    assert!(twice.is_empty(), "one name stands for two things:\n{}", twice.join("\n"));
}
