#![allow(dead_code, reason = "each test file uses a part of it")]
//! A run of `arcata class`, and what it leaves.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::process::Output;

use assert_cmd::Command;

pub(crate) fn demo() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../demo/class")
}

pub(crate) fn class(hand_ins: &Path, task: &Path, folder: &Path, out: &str, more: &[&str]) -> Output {
    let mut arcata = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    arcata.arg("class").arg(hand_ins).arg("--task").arg(task);
    arcata.arg("--out").arg(folder.join(out)).arg("--key").arg(folder.join("key.toml"));
    arcata.args(more).output().expect("runs")
}

pub(crate) fn demo_class(folder: &Path, out: &str, more: &[&str]) -> Output {
    class(&demo().join("hand-ins"), &demo().join("task.toml"), folder, out, more)
}

pub(crate) fn text(bytes: &[u8]) -> String {
    String::from_utf8_lossy(bytes).split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Every file below a folder, by its path in it.
pub(crate) fn files(folder: &Path) -> BTreeMap<PathBuf, Vec<u8>> {
    let mut all = BTreeMap::new();
    let mut open = vec![folder.to_owned()];
    while let Some(next) = open.pop() {
        for entry in std::fs::read_dir(&next).expect("a folder") {
            let path = entry.expect("an entry").path();
            if path.is_dir() {
                open.push(path);
            } else {
                let bytes = std::fs::read(&path).expect("a file");
                all.insert(path.strip_prefix(folder).expect("within").to_owned(), bytes);
            }
        }
    }
    all
}

/// The hand-in of a student of the demo.
pub(crate) fn hand_in(name: &str) -> String {
    let path = demo().join(format!("hand-ins/{name} - harbour melody.musicxml"));
    std::fs::read_to_string(path).expect("read")
}

/// A folder of hand-ins: names of files, and what is in them.
pub(crate) fn folder_of(folder: &Path, hand_ins: &[(&str, &str)]) -> PathBuf {
    let path = folder.join("hand-ins");
    std::fs::create_dir_all(&path).expect("made");
    for (name, content) in hand_ins {
        std::fs::write(path.join(name), content).expect("written");
    }
    path
}
