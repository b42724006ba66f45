//! Several programs write one file, by its name and through links; disks that take no more: each says what became of its own,
//! and what it says is so.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]
#![cfg(unix)]

use std::os::unix::fs::symlink;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Output, Stdio};

fn demo(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../demo").join(name)
}

fn begin(arguments: &[&str], folder: &Path) -> Child {
    Command::new(assert_cmd::cargo::cargo_bin!("arcata"))
        .args(arguments)
        .current_dir(folder)
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("starts")
}

fn ended(child: Child) -> (Output, String) {
    let done = child.wait_with_output().expect("ends");
    let said = String::from_utf8_lossy(&done.stderr).split_whitespace().collect::<Vec<_>>().join(" ");
    (done, said)
}

fn bench() -> tempfile::TempDir {
    let folder = tempfile::tempdir().expect("a folder");
    std::fs::copy(demo("tide-table-exercise.musicxml"), folder.path().join("study.musicxml"))
        .expect("copied");
    folder
}

fn text(path: &Path) -> String {
    std::fs::read_to_string(path).unwrap_or_else(|problem| panic!("{}: {problem}", path.display()))
}

/// What was said to be written is in the file, what was refused is not, and nothing else lies about.
fn all_is_told(done: Vec<(String, Child)>, file: &Path, folder: &Path, more: &[&str]) {
    let mut written = 0;
    for (mine, child) in done {
        let (output, said) = ended(child);
        let there = text(file).contains(&mine);
        match output.status.code() {
            Some(0) => assert!(there, "{mine} was confirmed and is gone: {said}"),
            _ => assert!(!there && said.contains("Nothing was written"), "{mine}: {said}"),
        }
        written += usize::from(there);
    }
    assert!(written > 0, "somebody comes first");
    let names = std::fs::read_dir(folder).expect("the folder");
    let names: Vec<String> =
        names.map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned()).collect();
    let known = |name: &String| {
        more.contains(&name.as_str()) || *name == file.file_name().expect("a name").to_string_lossy()
    };
    assert!(names.iter().all(known), "{names:?}");
}

#[test]
fn many_set_something_aside_in_one_file() {
    let folder = bench();
    // One of them goes by another name of the file, which is not there yet.
    symlink("study.aside.toml", folder.path().join("link.toml")).expect("a link");
    let file = folder.path().join("study.aside.toml");
    for round in 0..2 {
        let started: Vec<(String, Child)> = (0..6)
            .map(|number| {
                let reason = format!("round {round}, reader {number}");
                let aside = if number % 2 == 0 { "study.aside.toml" } else { "link.toml" };
                let asked =
                    ["aside", "study.musicxml", "--bars", "1-9", "--reason", &reason, "--aside", aside];
                (reason.clone(), begin(&asked, folder.path()))
            })
            .collect();
        all_is_told(started, &file, folder.path(), &["study.musicxml", "link.toml"]);
        assert!(folder.path().join("link.toml").is_symlink());
    }
    let (done, said) = ended(begin(&["review", "study.musicxml"], folder.path()));
    assert_ne!(done.status.code(), Some(2), "the file is sound: {said}");
}

#[test]
fn many_enter_bowings_into_one_layer() {
    let folder = bench();
    let file = folder.path().join("tour.json");
    let notes = (1..=6)
        .map(|bar| (format!("\"bar\":\"{bar}\""), format!("{bar}.txt"), format!("all {bar}/1 down\n")));
    let notes: Vec<(String, String, String)> = notes.collect();
    for (_, name, line) in &notes {
        std::fs::write(folder.path().join(name), line).expect("written");
    }
    let started: Vec<(String, Child)> = notes
        .iter()
        .map(|(mine, name, _)| {
            let asked = ["layer", "enter", "study.musicxml", "--notes", name, "--layer", "tour.json"];
            (mine.clone(), begin(&asked, folder.path()))
        })
        .collect();
    let names: Vec<&str> = notes.iter().map(|(_, name, _)| name.as_str()).chain(["study.musicxml"]).collect();
    all_is_told(started, &file, folder.path(), &names);
    arcata_layer::read(text(&file).as_bytes()).expect("a layer");
}

#[test]
fn a_full_disk_is_told_and_a_device_stays_a_device() {
    let folder = bench();
    for asked in [
        &["review", "study.musicxml", "--out", "/dev/full"][..],
        &["plan", "study.musicxml", "--format", "json", "--out", "/dev/full"],
        &["marks", "study.musicxml", "--out", "/dev/full"],
    ] {
        let (done, said) = ended(begin(asked, folder.path()));
        assert_eq!(done.status.code(), Some(2), "{asked:?}: {said}");
        assert!(said.contains("/dev/full could not be written: the disk is full"), "{asked:?}: {said}");
    }
    let (done, said) = ended(begin(&["review", "study.musicxml", "--out", "/dev/null"], folder.path()));
    assert_ne!(done.status.code(), Some(2), "{said}");
    use std::os::unix::fs::FileTypeExt as _;
    assert!(std::fs::metadata("/dev/null").expect("there").file_type().is_char_device());
}

/// The system lets a program write no more than a few bytes, and ends it there: what was there before is there.
#[test]
fn a_write_that_the_system_breaks_off_leaves_the_old_file() {
    let folder = bench();
    let program = assert_cmd::cargo::cargo_bin!("arcata");
    let out = folder.path().join("review.txt");
    let review = |limit: &str| {
        let line = format!("ulimit -f {limit}; exec \"$0\" review study.musicxml --out review.txt");
        Command::new("sh").args(["-c", &line]).arg(program).current_dir(folder.path()).output().expect("ends")
    };
    review("unlimited");
    let before = text(&out);
    assert!(before.len() > 1024, "more than the limit: {before}");
    std::fs::copy(demo("lantern-study.musicxml"), folder.path().join("study.musicxml")).expect("copied");
    let done = review("1");
    assert!(!matches!(done.status.code(), Some(0 | 1)), "{done:?}");
    assert_eq!(text(&out), before);
    review("unlimited");
    assert_ne!(text(&out), before, "and afterwards it is written");
}
