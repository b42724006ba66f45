//! The manual's examples, run: what a page shows is what the program prints.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the test reads the manual")]

use std::path::{Path, PathBuf};

use assert_cmd::Command;

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// Each example of a page: the words of its command, and what is shown below it. A line `…` stands for
/// any lines.
fn examples(page: &str) -> Vec<(Vec<String>, Vec<String>)> {
    let mut found: Vec<(Vec<String>, Vec<String>)> = Vec::new();
    let mut inside = None;
    for line in page.lines() {
        match (line, inside) {
            ("```console", None) => inside = Some(()),
            ("```", Some(())) => inside = None,
            (shown, Some(())) => match (shown.strip_prefix("$ arcata "), found.last_mut()) {
                (Some(command), _) => found.push((words(command), Vec::new())),
                (None, Some((_, lines))) => lines.push(shown.to_owned()),
                (None, None) => {}
            },
            _ => {}
        }
    }
    found
}

/// Words as a shell parts them: at blanks outside quotation marks.
fn words(command: &str) -> Vec<String> {
    let mut words = Vec::new();
    for (index, piece) in command.split('"').enumerate() {
        if index % 2 == 1 {
            words.push(piece.to_owned());
        } else {
            words.extend(piece.split_whitespace().map(str::to_owned));
        }
    }
    words
}

/// Whether what is shown is found in what is printed, in order and without gaps but at `…`.
fn shows(printed: &[&str], shown: &[String]) -> bool {
    let mut at = 0;
    for block in shown.split(|line| line.trim() == "…").filter(|block| !block.is_empty()) {
        let same = |window: &[&str]| window.iter().zip(block).all(|(one, other)| *one == other.as_str());
        let Some(found) = printed[at..].windows(block.len()).position(same) else { return false };
        at += found + block.len();
    }
    true
}

#[test]
fn the_manual_shows_what_the_program_prints() {
    let page = |name: &str| std::fs::read_to_string(root().join("docs/manual").join(name)).expect("the page");
    let examples: Vec<_> =
        ["plan.md", "together.md", "marks.md"].into_iter().flat_map(|name| examples(&page(name))).collect();
    assert!(examples.len() >= 7, "only {} examples", examples.len());
    for (command, shown) in examples {
        let mut arcata = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
        let done = arcata.current_dir(root()).args(&command).env_remove("COLUMNS").output().expect("runs");
        let text = String::from_utf8(done.stdout).expect("UTF-8");
        let printed: Vec<&str> = text.lines().collect();
        assert!(!shown.is_empty() && shows(&printed, &shown), "{command:?} prints:\n{text}");
        let said = String::from_utf8_lossy(&done.stderr);
        assert!(done.status.success(), "{command:?}: {said}");
    }
}
