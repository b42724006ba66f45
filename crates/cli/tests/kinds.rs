//! A score is written as the name of its file says, by every command that writes one.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

use std::io::{Cursor, Read as _, Write as _};
use std::path::{Path, PathBuf};
use std::process::Output;

use arcata_xml::{Input, Limits, Package};
use assert_cmd::Command;

const PICTURE: &[u8] = b"\x89PNG\r\n\x1A\n not really";

/// A demo score, plain and as a package with a picture in it.
fn scores(folder: &Path) -> (PathBuf, PathBuf) {
    let demo = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../demo/ferry-bell-quartet.musicxml");
    let text = std::fs::read(demo).expect("the demo");
    let (plain, packed) = (folder.join("in.musicxml"), folder.join("in.mxl"));
    std::fs::write(&plain, &text).expect("written");
    let mut writer =
        zip::ZipWriter::new_append(Cursor::new(Package::around("in.musicxml", &text).expect("a package")))
            .expect("a package");
    writer.start_file("cover.png", zip::write::SimpleFileOptions::default()).expect("a member");
    writer.write_all(PICTURE).expect("written");
    std::fs::write(&packed, writer.finish().expect("packed").into_inner()).expect("written");
    (plain, packed)
}

fn run(folder: &Path, arguments: &[&str]) -> Output {
    let mut command = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    command.current_dir(folder).args(arguments).output().expect("runs")
}

/// What a command is asked, between its first word and the file it writes to.
fn commands(score: &str) -> Vec<Vec<&str>> {
    vec![
        vec!["plan", score, "--marks", "all", "--out"],
        vec!["plan", score, "--marks", "least", "--out"],
        vec!["marks", score, "--write"],
        vec!["layer", "lift", score, "--layer", "lifted.json", "--out"],
        vec!["layer", "apply", score, "--layer", "asked.json", "--out"],
        vec!["layer", "wipe", score, "--layer", "asked.json", "--out"],
    ]
}

#[test]
fn the_ending_decides_and_a_package_keeps_its_other_members() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path();
    let (plain, packed) = scores(path);
    let mut enter = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    enter.args(["layer", "enter", "in.musicxml", "--out", "asked.json"]).current_dir(path);
    assert!(enter.write_stdin("Vn1 2/1 up").output().expect("runs").status.success());
    for (score, from) in [(&plain, Input::Document), (&packed, Input::Package)] {
        let before = std::fs::read(score).expect("the score");
        let score = score.file_name().and_then(|name| name.to_str()).expect("a name");
        for asked in commands(score) {
            let mut written = Vec::new();
            for (out, kind) in
                [("out.musicxml", Input::Document), ("out.xml", Input::Document), ("out.MXL", Input::Package)]
            {
                let done = run(path, &[asked.as_slice(), &[out]].concat());
                let told =
                    String::from_utf8_lossy(&done.stderr).split_whitespace().collect::<Vec<_>>().join(" ");
                assert!(done.status.success(), "{asked:?} {out}: {told}");
                let bytes = std::fs::read(path.join(out)).expect("written");
                assert_eq!(Input::detect(&bytes), kind, "{asked:?} {out}");
                let file = arcata_xml::open_score(bytes.clone(), &Limits::default()).expect("a score");
                written.push(file.document().bytes().to_vec());
                match (from, kind) {
                    (Input::Package, Input::Document) => {
                        assert!(told.contains("not copied (cover.png)"), "{told}");
                    }
                    (Input::Document, Input::Package) => {
                        assert!(told.contains("is a new package"), "{told}");
                        assert_eq!(file.member_name(), Some("out.musicxml"));
                    }
                    (Input::Package, Input::Package) => {
                        let mut archive = zip::ZipArchive::new(Cursor::new(&bytes)).expect("an archive");
                        let mut picture = Vec::new();
                        archive.by_name("cover.png").expect("kept").read_to_end(&mut picture).expect("read");
                        assert_eq!(picture, PICTURE);
                    }
                    (Input::Document, Input::Document) => {
                        assert!(!told.contains("package"), "{told}");
                    }
                }
                std::fs::remove_file(path.join(out)).expect("removed");
            }
            assert!(written.windows(2).all(|pair| pair[0] == pair[1]), "{asked:?}: one score in every kind");
        }
        assert_eq!(std::fs::read(path.join(score)).expect("the score"), before, "what was read stays");
    }
}

#[test]
fn a_name_that_says_no_kind_is_told_and_nothing_is_written() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path();
    scores(path);
    std::fs::write(path.join("asked.json"), "{\"format\":\"arcata-layer\",\"version\":1}").expect("written");
    for asked in commands("in.mxl") {
        for out in ["out.txt", "out", "out.musicxml.zip"] {
            let done = run(path, &[asked.as_slice(), &[out]].concat());
            let told = String::from_utf8_lossy(&done.stderr).split_whitespace().collect::<Vec<_>>().join(" ");
            assert_eq!(done.status.code(), Some(2), "{asked:?} {told}");
            assert!(told.contains("End it in .musicxml or .xml"), "{told}");
            assert!(!path.join(out).exists() && !path.join("lifted.json").exists());
        }
    }
}
