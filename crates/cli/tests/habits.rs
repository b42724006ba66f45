//! A leader's habits as a user learns and uses them.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

use std::path::{Path, PathBuf};

use assert_cmd::Command;

fn demo(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../demo").join(name)
}

/// Exit code, what is printed, what is complained of.
fn arcata(arguments: &[&str], paths: &[(&str, &Path)]) -> (Option<i32>, String, String) {
    let mut command = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    command.args(arguments);
    for (option, path) in paths {
        if !option.is_empty() {
            command.arg(option);
        }
        command.arg(path);
    }
    let done = command.output().expect("runs");
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).expect("UTF-8");
    (done.status.code(), text(done.stdout), text(done.stderr))
}

#[test]
fn what_is_marked_is_learned_said_and_bowed() {
    let folder = tempfile::tempdir().expect("a folder");
    let (bowed, file) = (folder.path().join("bowed.musicxml"), folder.path().join("leader.habits.toml"));
    let score = demo("weather-ledger.musicxml");
    // A leader who bows by the rule of the down-bow, every stroke marked.
    let marked = arcata(&["plan", "--style", "early", "--marks", "all"], &[("", &score), ("--out", &bowed)]);
    assert_eq!(marked.0, Some(0), "{}", marked.2);
    let (code, text, complaint) = arcata(&["habits", "learn"], &[("", &bowed), ("--out", &file)]);
    assert_eq!(code, Some(0), "{complaint}");
    assert!(text.contains("An up-bow on a downbeat, one note, counts"), "{text}");
    assert!(text.lines().all(|line| line.chars().count() <= 80), "{text}");
    let (code, shown, _) = arcata(&["habits", "show"], &[("", &file)]);
    assert_eq!(code, Some(0));
    assert!(text.starts_with(shown.trim_end()), "{shown}");

    let plan = |habits: Option<&Path>| {
        let paths: Vec<(&str, &Path)> =
            [("", score.as_path())].into_iter().chain(habits.map(|habits| ("--habits", habits))).collect();
        let (code, text, complaint) = arcata(&["plan", "--format", "csv"], &paths);
        assert_eq!(code, Some(0), "{complaint}");
        text
    };
    assert_ne!(plan(None), plan(Some(&file)));
    let (_, text, _) = arcata(&["plan"], &[("", &score), ("--habits", &file)]);
    assert!(text.contains("a leader's habits, learned from"), "{text}");
    let (code, _, complaint) = arcata(&["review", "--style", "dance"], &[("", &score), ("--habits", &file)]);
    assert_eq!(code, Some(2));
    assert!(complaint.replace('\n', " ").contains("learned in the style concert"), "{complaint}");
}

#[test]
fn nothing_is_written_where_nothing_was_learned() {
    let folder = tempfile::tempdir().expect("a folder");
    let file = folder.path().join("leader.habits.toml");
    for (name, why) in [
        ("slipway-strings.musicxml", "stand far apart"),
        ("tide-table-exercise.musicxml", "more strokes would tell"),
        ("rope-walk.musicxml", "no bow mark to learn from"),
    ] {
        let (code, text, complaint) = arcata(&["habits", "learn"], &[("", &demo(name)), ("--out", &file)]);
        let complaint = complaint.replace('\n', " ");
        assert_eq!((code, text.as_str()), (Some(2), ""), "{name}: {complaint}");
        assert!(complaint.contains(why) && complaint.contains("nothing written"), "{name}: {complaint}");
        assert!(!file.exists(), "{name}");
    }
    std::fs::write(&file, "format = \"arcata-habits\"\nversion = 9\n").expect("written");
    let score = demo("lantern-study.musicxml");
    let (code, _, complaint) = arcata(&["plan"], &[("", &score), ("--habits", &file)]);
    assert_eq!(code, Some(2));
    assert!(complaint.replace('\n', " ").contains("line 2: version 9 is not known"), "{complaint}");
}

#[test]
fn a_layer_teaches_what_its_marks_in_the_score_do_and_no_other_score() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = |name: &str| folder.path().join(name);
    let (bowed, clean, layer) = (path("bowed.musicxml"), path("clean.musicxml"), path("bows.json"));
    let done = |(code, _, complaint): (Option<i32>, String, String)| assert_eq!(code, Some(0), "{complaint}");
    let score = demo("weather-ledger.musicxml");
    done(arcata(&["plan", "--style", "early", "--marks", "all"], &[("", &score), ("--out", &bowed)]));
    done(arcata(&["layer", "lift"], &[("", &bowed), ("--layer", &layer), ("--out", &clean)]));
    let (marked, layered) = (path("marked.toml"), path("layered.toml"));
    done(arcata(&["habits", "learn"], &[("", &bowed), ("--out", &marked)]));
    done(arcata(&["habits", "learn"], &[("", &clean), ("--layer", &layer), ("--out", &layered)]));
    let read = |path: &Path| std::fs::read_to_string(path).expect("the habits");
    assert_eq!(read(&marked), read(&layered));

    let other = [("", demo("lantern-study.musicxml")), ("--layer", layer), ("--out", path("none.toml"))];
    let other: Vec<(&str, &Path)> = other.iter().map(|(option, path)| (*option, path.as_path())).collect();
    let (code, _, complaint) = arcata(&["habits", "learn"], &other);
    assert_eq!(code, Some(2));
    assert!(complaint.replace('\n', " ").contains("was made for \"Weather Ledger\""), "{complaint}");
    assert!(!path("none.toml").exists());
}
