//! Files that are not what they should be: whatever a command is asked, it ends, says on standard error what is wrong and with
//! which file, and leaves every file as it was.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

use std::collections::BTreeMap;
use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::process::Output;

use assert_cmd::Command;

fn demo(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../demo").join(name)
}

fn arcata(arguments: &[&str], folder: &Path) -> Output {
    let mut arcata = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    arcata
        .args(arguments)
        .current_dir(folder)
        .timeout(std::time::Duration::from_secs(60))
        .output()
        .expect("ends")
}

fn package(member: &str, bytes: &[u8]) -> Vec<u8> {
    let mut package = zip::ZipWriter::new(std::io::Cursor::new(Vec::new()));
    package.start_file(member, zip::write::SimpleFileOptions::default()).expect("a member");
    package.write_all(bytes).expect("written");
    package.finish().expect("a package").into_inner()
}

/// Files that are no scores, each with its name.
fn no_scores() -> Vec<(&'static str, Vec<u8>)> {
    let deep = format!("<score-partwise>{}", "<a>".repeat(100_000));
    let wide = std::iter::once(0xFEFF_u16).chain("<score-partwise><part>".encode_utf16());
    vec![
        ("empty.musicxml", Vec::new()),
        ("blank.musicxml", b"\n \n".to_vec()),
        ("nul.musicxml", vec![0; 5000]),
        ("noise.musicxml", (0..5000_u32).map(|n| (n.wrapping_mul(2_654_435_761) >> 24) as u8).collect()),
        ("cut.musicxml", b"<?xml version=\"1.0\"?>\n<score-partwise><part-list><score-part id=".to_vec()),
        ("open.musicxml", b"<score-partwise><part>".to_vec()),
        ("crossed.musicxml", b"<score-partwise><part></score-partwise></part>".to_vec()),
        (
            "control.musicxml",
            b"<score-partwise><work><work-title>\x1b[31m</work-title></work></score-partwise>".to_vec(),
        ),
        (
            "latin.musicxml",
            b"<score-partwise><work><work-title>\xe9t\xfcde</work-title></work></score-partwise>".to_vec(),
        ),
        ("utf16.musicxml", wide.flat_map(u16::to_be_bytes).collect()),
        ("deep.musicxml", deep.into_bytes()),
        (
            "laughs.musicxml",
            b"<!DOCTYPE s [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;\">]><score-partwise>&b;</score-partwise"
                .to_vec(),
        ),
        ("page.musicxml", b"<!DOCTYPE html><html><body><p>Not here<br></body></html>".to_vec()),
        ("data.musicxml", b"{\"format\": \"arcata-layer\", \"version\": 1}".to_vec()),
        ("torn.mxl", b"PK\x03\x04torn".to_vec()),
        ("hollow.mxl", package("readme.txt", b"nothing here")),
        ("bomb.mxl", package("score.musicxml", &vec![b' '; 1 << 29])),
        (
            "outside.mxl",
            package(
                "META-INF/container.xml",
                b"<container><rootfiles><rootfile full-path=\"../../etc/passwd\"/></rootfiles></container>",
            ),
        ),
    ]
}

/// Every file of a folder with its bytes.
fn all_files(folder: &Path) -> BTreeMap<PathBuf, Vec<u8>> {
    let mut files = BTreeMap::new();
    for entry in std::fs::read_dir(folder).expect("the folder") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            files.extend(all_files(&path));
        } else {
            let bytes = std::fs::read(&path).expect("the file");
            files.insert(path, bytes);
        }
    }
    files
}

/// The command fails, names the file on standard error, and changes nothing; a hostile file is never the program's fault.
fn refused(arguments: &[&str], named: &str, folder: &Path) {
    let before = all_files(folder);
    let done = arcata(arguments, folder);
    let said = String::from_utf8(done.stderr).expect("UTF-8");
    assert_eq!(done.status.code(), Some(2), "{arguments:?}: {said}");
    let flat = said.split_whitespace().collect::<String>();
    assert!(flat.contains(named), "{arguments:?} does not name {named}: {said}");
    assert!(said.len() > named.len() + 20, "{arguments:?} says why: {said}");
    assert!(!said.contains("panicked") && !said.contains("RUST_BACKTRACE"), "{arguments:?}: {said}");
    assert!(!said.contains('\u{1b}'), "{arguments:?}: {said}");
    let after = all_files(folder);
    let unlike: Vec<_> =
        after.iter().filter(|(path, bytes)| before.get(*path) != Some(bytes)).map(|(path, _)| path).collect();
    assert!(unlike.is_empty() && before.len() == after.len(), "{arguments:?} wrote {unlike:?}");
}

/// What reads a score, with `SCORE` where it is named.
const READ_A_SCORE: &[&[&str]] = &[
    &["review", "SCORE"],
    &["review", "SCORE", "--format", "json"],
    &["review", "SCORE", "--format", "csv"],
    &["review", "SCORE", "--format", "html", "--out", "out.html"],
    &["review", "good.musicxml", "--beside", "SCORE"],
    &["plan", "SCORE"],
    &["plan", "SCORE", "--format", "json"],
    &["plan", "SCORE", "--format", "csv"],
    &["plan", "SCORE", "--format", "svg", "--out", "out.svg"],
    &["plan", "SCORE", "--format", "pdf", "--out", "out.pdf"],
    &["plan", "SCORE", "--marks", "all", "--out", "out.musicxml"],
    &["marks", "SCORE"],
    &["marks", "SCORE", "--format", "json"],
    &["marks", "SCORE", "--format", "csv"],
    &["marks", "SCORE", "--write", "out.musicxml"],
    &["parts", "SCORE", "--out", "parts"],
    &["aside", "SCORE", "--rule", "bow-drift", "--reason", "a trial"],
    &["habits", "learn", "SCORE", "--out", "out.toml"],
    &["layer", "lift", "SCORE", "--layer", "out.json", "--out", "out.musicxml"],
    &["layer", "apply", "SCORE", "--layer", "good.json", "--out", "out.musicxml"],
    &["layer", "wipe", "SCORE", "--layer", "good.json", "--out", "out.musicxml"],
    &["layer", "check", "SCORE", "--layer", "good.json"],
    &["layer", "spread", "SCORE", "--layer", "good.json", "--from", "1"],
    &["layer", "carry", "SCORE", "--from", "good.musicxml", "--layer", "good.json", "--out", "out.json"],
    &["layer", "carry", "good.musicxml", "--from", "SCORE", "--layer", "good.json", "--out", "out.json"],
    &["layer", "enter", "SCORE", "--notes", "good.txt", "--out", "out.json"],
    &["layer", "sheet", "SCORE", "--layer", "good.json"],
    &["open", "SCORE", "--no-browser"],
];

fn bench() -> tempfile::TempDir {
    let folder = tempfile::tempdir().expect("a folder");
    std::fs::copy(demo("tide-table-exercise.musicxml"), folder.path().join("good.musicxml")).expect("copied");
    std::fs::write(folder.path().join("good.txt"), "all 1/1 down\n").expect("written");
    let entered = ["layer", "enter", "good.musicxml", "--notes", "good.txt", "--out", "good.json"];
    let done = arcata(&entered, folder.path());
    assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
    folder
}

#[test]
fn no_command_takes_what_is_no_score_and_each_says_so_on_standard_error() {
    let folder = bench();
    for (number, (name, bytes)) in no_scores().into_iter().enumerate() {
        let path = folder.path().join(name);
        std::fs::write(&path, bytes).expect("written");
        for (index, command) in READ_A_SCORE.iter().enumerate() {
            // Every command takes some of the files, every file goes to the commands that print in several forms.
            if index < 4 || index % 6 == number % 6 || name == "cut.musicxml" {
                let asked: Vec<&str> =
                    command.iter().map(|word| if *word == "SCORE" { name } else { *word }).collect();
                refused(&asked, name, folder.path());
            }
        }
        std::fs::remove_file(path).expect("removed");
    }
}

#[test]
fn what_is_not_there_or_a_folder_is_told_too() {
    let folder = bench();
    std::fs::create_dir(folder.path().join("hollow")).expect("a folder");
    for command in READ_A_SCORE {
        let asked: Vec<&str> =
            command.iter().map(|word| if *word == "SCORE" { "none.musicxml" } else { *word }).collect();
        refused(&asked, "none.musicxml", folder.path());
    }
    for command in ["review", "plan", "marks"] {
        refused(&[command, "hollow"], "hollow", folder.path());
    }
}

#[test]
fn of_a_folder_the_bad_files_are_told_and_the_good_ones_done() {
    let folder = bench();
    std::fs::write(folder.path().join("cut.musicxml"), "<score-partwise><part>").expect("written");
    for format in ["text", "json", "csv"] {
        let done = arcata(&["review", ".", "--format", format], folder.path());
        let said = String::from_utf8_lossy(&done.stderr).into_owned();
        assert_eq!(done.status.code(), Some(1), "{format}: {said}");
        assert!(said.contains("cut.musicxml") && !said.contains("good.musicxml"), "{format}: {said}");
        assert!(!done.stdout.is_empty(), "{format}");
    }
    for command in [&["plan", "."][..], &["marks", "."]] {
        let done = arcata(command, folder.path());
        assert!(String::from_utf8_lossy(&done.stderr).contains("cut.musicxml"), "{command:?}");
    }
    std::fs::write(
        folder.path().join("cut.json"),
        "{\"format\": \"arcata-layer\", \"version\": 1, \"entries\": [",
    )
    .expect("written");
    for format in ["text", "json", "csv"] {
        let done = arcata(&["layer", "list", ".", "--format", format], folder.path());
        let said = String::from_utf8_lossy(&done.stderr).into_owned();
        assert_eq!(done.status.code(), Some(1), "{format}: {said}");
        assert!(said.contains("cut.json") && said.contains("cut.musicxml"), "{format}: {said}");
    }
}

#[test]
fn other_files_that_are_not_what_they_should_be_are_told_by_name() {
    let folder = bench();
    let wrong: [(&str, &[u8]); 6] = [
        ("none", b""),
        ("empty", b""),
        ("noise", b"\xff\xfe\x00\x01"),
        ("cut", b"{\"format\": \"arcata-layer\", \"version\": 1, \"entries\": ["),
        ("later", b"{\"format\": \"arcata-layer\", \"version\": 7}"),
        ("toml", b"format = \"arcata-other\"\nversion = 9\n"),
    ];
    let commands: &[&[&str]] = &[
        &["layer", "apply", "good.musicxml", "--layer", "FILE", "--out", "out.musicxml"],
        &["layer", "wipe", "good.musicxml", "--layer", "FILE", "--out", "out.musicxml"],
        &["layer", "check", "good.musicxml", "--layer", "FILE"],
        &["layer", "compare", "good.json", "FILE"],
        &["layer", "merge", "FILE", "good.json", "--out", "out.json"],
        &["layer", "spread", "good.musicxml", "--layer", "FILE", "--from", "1"],
        &[
            "layer",
            "carry",
            "good.musicxml",
            "--from",
            "good.musicxml",
            "--layer",
            "FILE",
            "--out",
            "out.json",
        ],
        &["layer", "sheet", "good.musicxml", "--layer", "FILE"],
        &["parts", "good.musicxml", "--layer", "FILE", "--out", "parts"],
        &["habits", "show", "FILE"],
        &["plan", "good.musicxml", "--habits", "FILE"],
        &["plan", "good.musicxml", "--profile", "./FILE"],
        &["parts", "good.musicxml", "--house", "FILE", "--out", "parts"],
        &["open", "good.musicxml", "--habits", "FILE", "--no-browser"],
    ];
    for (name, bytes) in wrong {
        let path = folder.path().join(name);
        if name != "none" {
            std::fs::write(&path, bytes).expect("written");
        }
        for command in commands {
            // A house or a player who says nothing is the shipped one.
            if name == "empty" && (command.contains(&"--house") || command.contains(&"--profile")) {
                continue;
            }
            let asked: Vec<String> = command.iter().map(|word| word.replace("FILE", name)).collect();
            let asked: Vec<&str> = asked.iter().map(String::as_str).collect();
            refused(&asked, name, folder.path());
        }
    }
    std::fs::write(folder.path().join("good.aside.toml"), "format = \"arcata-aside\"\nversion = 9\n")
        .expect("written");
    refused(&["review", "good.musicxml"], "good.aside.toml", folder.path());
}
