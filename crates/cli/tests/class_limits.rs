//! `arcata class` over hand-ins that take too long or too much, and a run that is killed.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

mod class_support;

use std::path::Path;

use class_support::{class, demo, demo_class, files, folder_of, hand_in, text};

/// A score of many bars of sixteenths, whatever they sound like.
fn long_score(bars: usize) -> String {
    let mut text = String::from(
        "<?xml version=\"1.0\"?><score-partwise version=\"4.0\"><part-list><score-part id=\"P1\"><part-name>Violin</part-name></score-part></part-list><part id=\"P1\">",
    );
    for bar in 0..bars {
        text.push_str(&format!("<measure number=\"{}\">", bar + 1));
        if bar == 0 {
            text.push_str("<attributes><divisions>4</divisions><time><beats>4</beats><beat-type>4</beat-type></time></attributes>");
        }
        for note in 0..16 {
            let step = ["C", "D", "E", "F", "G", "A", "B"][(note * 3 + bar * 5) % 7];
            text.push_str(&format!(
                "<note><pitch><step>{step}</step><octave>5</octave></pitch><duration>1</duration><voice>1</voice><type>16th</type></note>"
            ));
        }
        text.push_str("</measure>");
    }
    text + "</part></score-partwise>"
}

#[test]
fn one_that_takes_too_long_is_told_and_the_others_go_on() {
    let folder = tempfile::tempdir().expect("a folder");
    let (good, slow) = (hand_in("Lowen Castrell"), long_score(16_500));
    let hand_ins = folder_of(
        folder.path(),
        &[
            ("A - x.musicxml", &good),
            ("B - x.musicxml", &slow),
            ("C - x.musicxml", &good),
            ("D - x.musicxml", &good),
        ],
    );
    let task = demo().join("task.toml");
    let limit = ["--limit", "6"];
    let done = class(&hand_ins, &task, folder.path(), "pages", &limit);
    assert_eq!(done.status.code(), Some(1), "{}", text(&done.stderr));
    assert!(text(&done.stdout).contains("3 of 4 hand-ins have a sheet"), "{}", text(&done.stdout));
    assert!(text(&done.stdout).contains("it took longer than 6 seconds"), "{}", text(&done.stdout));
    let index = std::fs::read_to_string(folder.path().join("pages/index.html")).expect("the class");
    assert!(index.contains("it took longer than 6 seconds"));
    // Another run tries again what was given up, and nothing else.
    std::fs::write(hand_ins.join("B - x.musicxml"), &good).expect("written");
    let again = class(&hand_ins, &task, folder.path(), "pages", &limit);
    assert!(
        again.status.success() && text(&again.stdout).contains("3 were as they had been"),
        "{}",
        text(&again.stdout)
    );
}

#[test]
#[cfg(target_os = "linux")]
fn one_that_takes_too_much_memory_is_told_and_the_others_go_on() {
    let folder = tempfile::tempdir().expect("a folder");
    let (good, large) = (hand_in("Lowen Castrell"), long_score(16_500));
    let mut hand_ins: Vec<(&str, &str)> =
        ["A - x.musicxml", "C - x.musicxml", "D - x.musicxml"].map(|name| (name, good.as_str())).to_vec();
    let whole = folder_of(&folder.path().join("whole"), &hand_ins);
    hand_ins.push(("B - x.musicxml", &large));
    let hand_ins = folder_of(folder.path(), &hand_ins);
    let task = demo().join("task.toml");
    let done = class(&hand_ins, &task, folder.path(), "pages", &["--memory", "200"]);
    assert_eq!(done.status.code(), Some(1), "{}", text(&done.stderr));
    let why = "it took more than 200 MB of memory; more is given by --memory";
    assert!(text(&done.stdout).contains("3 of 4 hand-ins have a sheet"), "{}", text(&done.stdout));
    assert!(text(&done.stdout).contains(why), "{}", text(&done.stdout));
    let pages = files(&folder.path().join("pages"));
    let page = |name: &str| String::from_utf8_lossy(&pages[Path::new(name)]).into_owned();
    assert!(page("index.html").contains(why), "the page of the class says why");
    assert!(page("class.csv").contains(why), "{}", page("class.csv"));
    // The others have the sheets that they have without it: the key says the same pseudonyms.
    let without = class(&whole, &task, folder.path(), "without", &[]);
    assert!(without.status.success(), "{}", text(&without.stderr));
    let sheets = files(&folder.path().join("without/sheets"));
    assert_eq!(sheets.len(), 6, "HTML and PDF of three");
    for (path, bytes) in sheets {
        assert!(pages[&Path::new("sheets").join(&path)] == bytes, "{} differs", path.display());
    }
}

#[test]
fn a_run_that_is_killed_goes_on_to_the_same_pages() {
    let folder = tempfile::tempdir().expect("a folder");
    let whole = demo_class(folder.path(), "whole", &[]);
    assert_eq!(whole.status.code(), Some(1));
    let stopped = folder.path().join("stopped");
    let mut run = std::process::Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    run.arg("class").arg(demo().join("hand-ins")).arg("--task").arg(demo().join("task.toml"));
    run.arg("--out").arg(&stopped).arg("--key").arg(folder.path().join("key.toml"));
    run.stdout(std::process::Stdio::null()).stderr(std::process::Stdio::null());
    let mut run = run.spawn().expect("runs");
    let count = || std::fs::read_dir(stopped.join("records")).map_or(0, Iterator::count);
    while count() < 3 && run.try_wait().expect("it is there").is_none() {
        std::thread::sleep(std::time::Duration::from_millis(20));
    }
    run.kill().expect("killed");
    run.wait().expect("gone");
    assert!(!stopped.join("index.html").exists(), "it was stopped before its end");
    let on = demo_class(folder.path(), "stopped", &[]);
    assert!(text(&on.stdout).contains("were as they had been"), "{}", text(&on.stdout));
    assert!(files(&stopped) == files(&folder.path().join("whole")), "as if it had not been stopped");
}
