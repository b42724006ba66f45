//! `docs/dependencies.md` names every package that the project uses directly, with a reason, and no other.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files of the checkout")]

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../..")
}

fn text(path: &str) -> String {
    std::fs::read_to_string(root().join(path)).unwrap_or_else(|problem| panic!("{path}: {problem}"))
}

/// The packages that a manifest names in its tables of dependencies; ours are left out.
fn named(manifest: &str) -> BTreeSet<String> {
    let mut names = BTreeSet::new();
    let mut inside = false;
    for line in manifest.lines() {
        if let Some(table) = line.strip_prefix('[') {
            inside = table.trim_end_matches(']').ends_with("dependencies");
        } else if let Some((name, _)) = line.split_once('=').filter(|_| inside && !line.starts_with('#')) {
            let name = name.trim().trim_end_matches(".workspace").to_owned();
            if !name.starts_with("arcata-") {
                names.insert(name);
            }
        }
    }
    names
}

fn manifests() -> Vec<String> {
    let crates = std::fs::read_dir(root().join("crates")).expect("the crates");
    let mut paths: Vec<String> = crates
        .map(|entry| format!("crates/{}/Cargo.toml", entry.expect("an entry").file_name().to_string_lossy()))
        .filter(|path| root().join(Path::new(path)).exists())
        .collect();
    paths.extend(["xtask/Cargo.toml", "fuzz/Cargo.toml"].map(str::to_owned));
    paths
}

/// The rows of the table behind a heading: package and reason.
fn explained(page: &str, heading: &str) -> Vec<(String, String)> {
    let chapter = page.split("\n## ").find(|chapter| chapter.starts_with(heading)).expect("the chapter");
    let rows = chapter.lines().filter_map(|line| line.strip_prefix("| `"));
    let rows = rows.map(|row| {
        let (name, rest) = row.split_once('`').expect("a name");
        let why = rest.trim_end_matches('|').rsplit('|').next().unwrap_or_default();
        (name.to_owned(), why.trim().to_owned())
    });
    rows.collect()
}

fn compare(heading: &str, used: &BTreeSet<String>) {
    let explained = explained(&text("docs/dependencies.md"), heading);
    for (name, why) in &explained {
        assert!(why.len() > 10, "{name} has no reason");
    }
    let names: Vec<&String> = explained.iter().map(|(name, _)| name).collect();
    assert!(names.is_sorted(), "{heading}: in the order of the alphabet, each once");
    let listed: BTreeSet<String> = explained.iter().map(|(name, _)| name.clone()).collect();
    let missing: Vec<&String> = used.difference(&listed).collect();
    let unused: Vec<&String> = listed.difference(used).collect();
    assert!(missing.is_empty(), "{heading}: without a reason in docs/dependencies.md: {missing:?}");
    assert!(unused.is_empty(), "{heading}: nothing uses {unused:?}");
}

#[test]
fn every_crate_that_is_used_has_its_reason() {
    let used: BTreeSet<String> = manifests().iter().flat_map(|path| named(&text(path))).collect();
    assert!(used.len() > 40, "{used:?}");
    compare("In the program", &used);
    let offered = named(&text("Cargo.toml"));
    let idle: Vec<&String> = offered.difference(&used).collect();
    assert!(idle.is_empty(), "Cargo.toml offers what no crate uses: {idle:?}");
}

#[test]
fn every_package_of_the_checks_has_its_reason() {
    let mut python = BTreeSet::new();
    for list in ["outside/requirements.txt", "outside/requirements-api.txt"] {
        let list = text(list);
        let lines = list.lines().filter(|line| !line.starts_with('#') && !line.trim().is_empty());
        python.extend(lines.map(|line| line.split("==").next().unwrap_or_default().trim().to_owned()));
    }
    compare("In the outside checks", &python);
    let makers = text("xtask/src/package/build.rs");
    let mut packaging: BTreeSet<String> =
        ["cargo-cyclonedx", "cargo-deb", "cargo-zigbuild"].map(str::to_owned).into();
    for constant in ["ZIGBUILD", "CARGO_DEB", "CYCLONEDX"] {
        assert!(makers.contains(&format!("const {constant}: &str")), "{constant}");
    }
    let list = text("outside/packaging.txt");
    packaging.extend(list.lines().map(|line| line.split("==").next().unwrap_or_default().to_owned()));
    compare("Where packages are made", &packaging);
    let browser: serde_json::Value = serde_json::from_str(&text("browser/package.json")).expect("JSON");
    let mut packages = BTreeSet::new();
    for table in ["dependencies", "devDependencies"] {
        packages.extend(browser[table].as_object().into_iter().flat_map(|table| table.keys().cloned()));
    }
    compare("In the browser tests", &packages);
}
