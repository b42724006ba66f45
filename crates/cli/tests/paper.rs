//! What is asked for reaches paper: hooks and retakes as signs that players know, on the score, in the parts and on the sheet.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

use std::path::{Path, PathBuf};
use std::process::Output;

use arcata_score::{BowDirection, Score};
use arcata_xml::Limits;
use assert_cmd::Command;

fn run(folder: &Path, arguments: &[&str], typed: &str) -> Output {
    let mut command = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    command.current_dir(folder).args(arguments).write_stdin(typed).output().expect("runs")
}

fn said(output: &Output) -> String {
    let text = [output.stdout.as_slice(), output.stderr.as_slice()].concat();
    String::from_utf8_lossy(&text).split_whitespace().collect::<Vec<_>>().join(" ")
}

fn read(path: &Path) -> Score {
    let bytes = std::fs::read(path).expect("written");
    let file = arcata_xml::open_score(bytes, &Limits::default()).expect("a score");
    arcata_score::read(file.document())
}

/// The signs of a part, note by note; rests left out.
fn signs(score: &Score, part: usize) -> Vec<Option<BowDirection>> {
    let notes = score.parts[part].notes.iter().filter(|note| !note.pitch.is_rest());
    notes.map(|note| note.bow_mark.map(|mark| mark.direction)).collect()
}

fn study(folder: &Path, music: &str) -> PathBuf {
    let path = folder.join("study.musicxml");
    std::fs::write(&path, arcata_testkit::musicxml(music)).expect("written");
    path
}

const MUSIC: &str = "quarter=80\nviolin: mf 1/4 C5 (1/8 D5 E5) 1/4 F5 G5 | A5 G5 F5 E5 | 1/2 D5 C5!fermata | (1/8 C5 D5) 1/4 E5 1/2 F5 |||";

#[test]
fn a_hook_and_a_retake_without_a_direction_stand_on_both_strokes() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path();
    study(path, MUSIC);
    let typed = "violin 1/3 hook, 2/2 retake, 3/3 down and up, 4/2 hook up";
    assert!(run(path, &["layer", "enter", "study.musicxml", "--out", "asked.json"], typed).status.success());
    let clean = std::fs::read(path.join("study.musicxml")).expect("the score");
    let layer = ["--layer", "asked.json"];
    let done = run(
        path,
        &[&["layer", "apply", "study.musicxml"][..], &layer, &["--out", "bowed.musicxml"]].concat(),
        "",
    );
    assert!(done.status.success() && said(&done).contains("4 applied"), "{}", said(&done));
    let bowed = signs(&read(&path.join("bowed.musicxml")), 0);
    // Under a slur the stroke before begins with the slur's first note.
    assert!(bowed[1].is_some() && bowed[1] == bowed[3] && bowed[2].is_none(), "{bowed:?}");
    assert!(bowed[5].is_some() && bowed[5] == bowed[6], "{bowed:?}");
    assert_eq!(bowed[11..14], [Some(BowDirection::Up), None, Some(BowDirection::Up)], "{bowed:?}");
    // The part says the same.
    let done = run(path, &[&["parts", "study.musicxml"][..], &layer, &["--out", "parts"]].concat(), "");
    assert!(!said(&done).contains("Not in any part"), "{}", said(&done));
    let part = read(&path.join("parts/01-violin.musicxml"));
    assert_eq!(signs(&part, 0), bowed);
    assert_eq!(part.parts[0].notes.iter().filter(|note| note.both_bows().is_some()).count(), 1);
    // So does the change sheet, with both strokes of each.
    let done = run(path, &[&["layer", "sheet", "study.musicxml"][..], &layer].concat(), "");
    let sheet = said(&done);
    assert!(sheet.contains("hooked (") && sheet.contains("retake (") && sheet.contains("7 marks"), "{sheet}");
    assert!(sheet.contains("down-bow and up-bow on one note"), "{sheet}");
    // And all of it comes off.
    let done = run(
        path,
        &[&["layer", "wipe", "bowed.musicxml"][..], &layer, &["--out", "wiped.musicxml"]].concat(),
        "",
    );
    assert!(done.status.success(), "{}", said(&done));
    assert_eq!(std::fs::read(path.join("wiped.musicxml")).expect("wiped"), clean);
}

#[test]
fn what_cannot_be_written_is_told_with_the_reason() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path();
    study(path, MUSIC);
    let typed = "violin 1/2+1/2 hook, 2/1 down, 2/2 hook up";
    run(path, &["layer", "enter", "study.musicxml", "--out", "asked.json"], typed);
    let done = run(
        path,
        &["layer", "apply", "study.musicxml", "--layer", "asked.json", "--out", "bowed.musicxml"],
        "",
    );
    let told = said(&done);
    assert_eq!(done.status.code(), Some(1), "{told}");
    assert!(
        told.contains("no stroke begins on this note") && told.contains("cannot go on in both"),
        "{told}"
    );
}

/// The signs that a plan writes are those of its strokes, and a hook or a retake has one on the stroke before, too.
#[test]
fn a_plan_writes_its_hooks_and_retakes_on_both_strokes() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path();
    study(path, MUSIC);
    for (kind, anchor) in
        [("all", "1/3 hook"), ("least", "1/3 hook"), ("least", "2/2 retake"), ("all", "2/2 retake")]
    {
        let done = run(
            path,
            &["plan", "study.musicxml", "--anchor", anchor, "--marks", kind, "--out", "planned.musicxml"],
            "",
        );
        assert!(done.status.success(), "{}", said(&done));
        let planned = signs(&read(&path.join("planned.musicxml")), 0);
        let (before, on) = if anchor.starts_with('1') { (1, 3) } else { (5, 6) };
        assert!(planned[on].is_some() && planned[before] == planned[on], "{kind} {anchor}: {planned:?}");
        if kind == "all" {
            assert_eq!(
                planned.iter().filter(|sign| sign.is_none()).count(),
                2,
                "but under the slurs: {planned:?}"
            );
        }
    }
}

/// An anchor is stronger than what is printed: the printed sign turns.
#[test]
fn a_plan_that_departs_from_a_printed_sign_turns_it() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path();
    study(path, "violin: mf 1/4 C5 D5!down E5 F5 | 1/1 G5");
    let done = run(
        path,
        &["plan", "study.musicxml", "--anchor", "1/2 up", "--marks", "least", "--out", "planned.musicxml"],
        "",
    );
    assert!(done.status.success(), "{}", said(&done));
    assert_eq!(signs(&read(&path.join("planned.musicxml")), 0)[1], Some(BowDirection::Up));
}
