//! The commands as a user runs them, on the demo scores.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

use std::path::PathBuf;

use assert_cmd::Command;

fn demo(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../demo").join(name)
}

fn arcata() -> Command {
    Command::new(assert_cmd::cargo::cargo_bin!("arcata"))
}

#[test]
fn a_review_finds_something_and_says_so_in_its_exit_code() {
    let done = arcata().arg("review").arg(demo("lantern-study.musicxml")).output().expect("runs");
    let text = String::from_utf8(done.stdout).expect("UTF-8");
    assert_eq!(done.status.code(), Some(1), "{text}");
    assert!(text.contains("slur-outlasts-bow"), "{text}");
    assert!(text.lines().all(|line| line.chars().count() <= 80), "{text}");
    assert!(!text.contains('\u{1b}'), "no colour outside a terminal");
}

#[test]
fn a_file_that_cannot_be_read_gets_its_row_and_the_rest_is_done() {
    let folder = tempfile::tempdir().expect("a folder");
    std::fs::write(folder.path().join("broken.musicxml"), "<score-partwise><part>").expect("written");
    std::fs::copy(demo("tide-table-exercise.musicxml"), folder.path().join("good.musicxml")).expect("copied");
    let table = folder.path().join("table.csv");
    let done = arcata().arg("review").arg(folder.path()).arg("--summary").arg(&table).output().expect("runs");
    assert_eq!(done.status.code(), Some(1));
    let table = std::fs::read_to_string(&table).expect("the table");
    assert_eq!(table.lines().count(), 3, "{table}");
    assert!(
        table.lines().nth(1).is_some_and(|row| row.contains("broken.musicxml") && row.contains("line 1")),
        "{table}"
    );

    let alone = arcata().arg("review").arg(folder.path().join("broken.musicxml")).output().expect("runs");
    assert_eq!(alone.status.code(), Some(2));
}

#[test]
fn marks_are_added_and_no_other_byte_changes() {
    let folder = tempfile::tempdir().expect("a folder");
    let out = folder.path().join("marked.musicxml");
    let score = demo("ferry-bell-quartet.musicxml");
    let before = std::fs::read_to_string(&score).expect("the demo");
    for kind in ["all", "least"] {
        let mut plan = arcata();
        plan.arg("plan").arg(&score).args(["--marks", kind]).arg("--out").arg(&out).assert().success();
        let after = std::fs::read_to_string(&out).expect("the marked score");
        assert!(after.len() > before.len());
        let mut left = after.lines();
        for line in before.lines() {
            assert!(left.any(|marked| marked == line), "the line is still there, in order: {line}");
        }
    }
}

#[test]
fn the_score_itself_is_never_written_over() {
    let folder = tempfile::tempdir().expect("a folder");
    let score = folder.path().join("score.musicxml");
    std::fs::copy(demo("tide-table-exercise.musicxml"), &score).expect("copied");
    let before = std::fs::read(&score).expect("read");
    let mut plan = arcata();
    plan.arg("plan").arg(&score).args(["--marks", "all"]).arg("--out").arg(&score).assert().code(2);
    arcata().arg("review").arg(&score).arg("--out").arg(&score).assert().code(2);
    assert_eq!(std::fs::read(&score).expect("read"), before);
}

#[test]
fn a_wrong_part_or_bar_is_told_with_what_there_is() {
    let score = demo("ferry-bell-quartet.musicxml");
    let wrong_part = arcata().arg("plan").arg(&score).args(["--part", "trombone"]).output().expect("runs");
    assert_eq!(wrong_part.status.code(), Some(2));
    assert!(String::from_utf8_lossy(&wrong_part.stderr).contains("Viola"));
    let wrong_bar = arcata().arg("plan").arg(&score).args(["--bars", "900"]).output().expect("runs");
    assert_eq!(wrong_bar.status.code(), Some(2));
    assert!(String::from_utf8_lossy(&wrong_bar.stderr).contains("no bar 900"));
}

#[test]
fn a_missing_file_is_told_in_plain_words() {
    let done = arcata().args(["review", "no-such-score.musicxml"]).output().expect("runs");
    assert_eq!(done.status.code(), Some(2));
    let text = String::from_utf8_lossy(&done.stdout).into_owned();
    assert!(text.contains("no such file") && !text.contains("os error"), "{text}");
}

fn read(path: &std::path::Path) -> Vec<u8> {
    std::fs::read(path).expect("the file is there")
}

#[test]
fn a_layer_comes_off_a_score_goes_on_and_comes_off_without_a_trace() {
    let folder = tempfile::tempdir().expect("a folder");
    let at = |name: &str| folder.path().join(name);
    let score = demo("ferry-bell-quartet.musicxml");
    arcata()
        .arg("plan")
        .arg(&score)
        .args(["--marks", "least", "--out"])
        .arg(at("marked.musicxml"))
        .assert()
        .success();
    let lift = |out: &str| {
        let mut lift = arcata();
        lift.args(["layer", "lift"]).arg(at("marked.musicxml")).arg("--layer").arg(at("tour.json"));
        lift.args(["--owner", "leader", "--out"]).arg(at(out)).assert().success();
    };
    lift("clean.musicxml");
    let on = |command: &str, from: &str, out: &str| {
        let mut on = arcata();
        on.args(["layer", command])
            .arg(at(from))
            .arg("--layer")
            .arg(at("tour.json"))
            .arg("--out")
            .arg(at(out));
        on.assert().success();
    };
    on("apply", "clean.musicxml", "stand.musicxml");
    assert!(read(&at("stand.musicxml")) == read(&at("marked.musicxml")));
    on("wipe", "stand.musicxml", "returned.musicxml");
    assert!(read(&at("returned.musicxml")) == read(&at("clean.musicxml")));
    let mut check = arcata();
    check.args(["layer", "check"]).arg(at("clean.musicxml")).arg("--layer").arg(at("tour.json"));
    // A mark that the plan has put inside a slur is told, and told by 1.
    assert!(check.output().expect("runs").status.code().is_some_and(|code| code < 2));
    let mut carry = arcata();
    carry.args(["layer", "carry"]).arg(at("clean.musicxml")).arg("--from").arg(at("marked.musicxml"));
    carry.arg("--layer").arg(at("tour.json")).arg("--out").arg(at("carried.json"));
    // Bars that are alike are carried with doubt, which is told by 1.
    assert!(carry.output().expect("runs").status.code().is_some_and(|code| code < 2));
    let mut compare = arcata();
    compare.args(["layer", "compare"]).arg(at("tour.json")).arg(at("carried.json")).assert().success();
    let left: Vec<_> = std::fs::read_dir(folder.path()).expect("listed").flatten().collect();
    assert_eq!(left.len(), 6, "no lock, backup or half-written file is left: {left:?}");
}

#[test]
fn a_layer_that_cannot_be_read_changes_nothing() {
    let folder = tempfile::tempdir().expect("a folder");
    let layer = folder.path().join("tour.json");
    let out = folder.path().join("out.musicxml");
    for (text, said) in [
        ("{\"format\": \"arcata-layer\", \"version\": 2}", "version 2 of the format"),
        ("{\"format\": \"arcata-layer\", \"version\": 1, \"entr", "the file ends in the middle"),
        ("<score-partwise/>", "this is not a bowing layer"),
    ] {
        std::fs::write(&layer, text).expect("written");
        let mut apply = arcata();
        apply.args(["layer", "apply"]).arg(demo("ferry-bell-quartet.musicxml")).arg("--layer").arg(&layer);
        let done = apply.arg("--out").arg(&out).output().expect("runs");
        assert_eq!(done.status.code(), Some(2));
        // Messages are filled to the width of the terminal.
        let stderr = String::from_utf8_lossy(&done.stderr);
        let told = stderr.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(told.contains(said), "{done:?}");
        assert!(!out.exists() && read(&layer) == text.as_bytes());
    }
}

#[test]
fn a_layer_for_another_score_and_a_score_as_its_own_target_are_refused() {
    let folder = tempfile::tempdir().expect("a folder");
    let (layer, out) = (folder.path().join("tour.json"), folder.path().join("out.musicxml"));
    let mut lift = arcata();
    lift.args(["layer", "lift"]).arg(demo("ferry-bell-quartet.musicxml")).arg("--layer").arg(&layer);
    lift.arg("--out").arg(&out).assert().success();
    let mut apply = arcata();
    apply.args(["layer", "apply"]).arg(demo("lantern-study.musicxml")).arg("--layer").arg(&layer);
    let done = apply.arg("--out").arg(folder.path().join("other.musicxml")).output().expect("runs");
    assert_eq!(done.status.code(), Some(2));
    assert!(String::from_utf8_lossy(&done.stderr).contains("their notes are not the same"), "{done:?}");
    let mut apply = arcata();
    apply
        .args(["layer", "apply"])
        .arg(&out)
        .arg("--layer")
        .arg(&layer)
        .arg("--out")
        .arg(&out)
        .assert()
        .code(2);
}

fn planned(score: &str, arguments: &[&str]) -> (Option<i32>, String, String) {
    let done = arcata().arg("plan").arg(demo(score)).args(arguments).output().expect("runs");
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).expect("UTF-8");
    // Messages are filled to the width of the terminal.
    let problem = text(done.stderr).split_whitespace().collect::<Vec<_>>().join(" ");
    (done.status.code(), text(done.stdout), problem)
}

#[test]
fn anchors_hold_and_what_does_not_go_together_is_told() {
    let first_violin = ["--part", "Violin I", "--bars", "13-16"];
    let anchors = ["--anchor", "14/1 down", "--anchor", "Violin I 14/4 down"];
    let (code, text, _) = planned("ferry-bell-quartet.musicxml", &[first_violin, anchors].concat());
    assert_eq!(code, Some(0));
    assert!(text.contains("! Bar 14, beat 1 down and bar 14, beat 4 down do not go together"), "{text}");
    assert!(text.lines().all(|line| line.chars().count() <= 80), "{text}");
}

#[test]
fn an_anchor_that_no_stroke_begins_at_is_told_with_those_that_do() {
    let said = |arguments: &[&str]| planned("ferry-bell-quartet.musicxml", arguments);
    let (code, _, problem) = said(&["--part", "Violin I", "--anchor", "14/2 down"]);
    assert_eq!(code, Some(2));
    assert!(problem.contains("no stroke begins at bar 14, beat 2; strokes begin there at beat"), "{problem}");
    let (code, _, problem) = said(&["--anchor", "14/1 down"]);
    assert_eq!(code, Some(2));
    assert!(problem.contains("several parts are shown; name one"), "{problem}");
    let (code, _, problem) = said(&["--end", "99 down"]);
    assert_eq!(code, Some(2));
    assert!(problem.contains("the score has no bar 99; the last one is 32"), "{problem}");
}

#[test]
fn ways_and_repairs_are_plain_ascii_outside_a_terminal_and_json_holds_the_same() {
    let asked = ["--bars", "17-22", "--alternatives", "3", "--end", "22 down", "--repairs", "2"];
    let (code, text, _) = planned("lantern-study.musicxml", &asked);
    assert_eq!(code, Some(0));
    let new = text.split_once("ways to end bar 22 on a down-bow").expect("the ways").1;
    assert!(new.is_ascii() && new.contains("repairs: ") && new.contains("frog"), "{new}");
    assert!(text.lines().all(|line| line.chars().count() <= 80), "{text}");
    let (_, json, _) = planned("lantern-study.musicxml", &[&asked[..], &["--format", "json"]].concat());
    for key in ["\"ending\"", "\"ways\"", "\"repairs\"", "\"strokes_after\"", "\"gains\""] {
        assert!(json.contains(key), "{key}");
    }
}

#[test]
fn one_thread_and_eight_say_the_same() {
    for score in ["ferry-bell-quartet.musicxml", "slipway-strings.musicxml"] {
        for command in ["plan", "review", "marks"] {
            let with = |threads: &str| {
                let mut arcata = arcata();
                arcata.arg(command).arg(demo(score)).args(["--format", "json"]);
                arcata.env("RAYON_NUM_THREADS", threads).output().expect("runs").stdout
            };
            let one = with("1");
            assert!(!one.is_empty() && one == with("8"), "{command} {score}");
        }
    }
}

#[test]
fn a_plan_is_drawn_as_svg_png_and_pdf_and_the_score_is_left_alone() {
    let folder = tempfile::tempdir().expect("a folder");
    let score = demo("lantern-study.musicxml");
    let before = std::fs::read(&score).expect("reads");
    for (format, begins) in [("svg", &b"<svg "[..]), ("png", b"\x89PNG\r\n"), ("pdf", b"%PDF-")] {
        let out = folder.path().join(format!("picture.{format}"));
        let done = arcata()
            .arg("plan")
            .arg(&score)
            .args(["--bars", "1-4", "--alternatives", "2", "--format", format, "--out"])
            .arg(&out)
            .output()
            .expect("runs");
        assert_eq!(done.status.code(), Some(0), "{}", String::from_utf8_lossy(&done.stderr));
        assert!(done.stdout.is_empty() && done.stderr.is_empty(), "the engraver's log stays away");
        let picture = std::fs::read(&out).expect("reads");
        assert!(picture.starts_with(begins), "{format}");
        if format == "svg" {
            let svg = String::from_utf8(picture).expect("UTF-8");
            assert_eq!(svg.matches(r#"class="lane""#).count(), 3, "the plan and two other ways");
        }
    }
    assert_eq!(std::fs::read(&score).expect("reads"), before);
}

#[test]
fn a_picture_without_a_place_to_go_or_without_a_bow_is_refused_in_plain_words() {
    let score = demo("lantern-study.musicxml");
    let done = arcata().arg("plan").arg(&score).args(["--format", "svg"]).output().expect("runs");
    assert_eq!(done.status.code(), Some(2));
    assert!(String::from_utf8_lossy(&done.stderr).contains("--out FILE"));
}

#[test]
fn a_page_is_written_over_a_page_and_over_nothing_else() {
    let folder = tempfile::tempdir().expect("a folder");
    let review = |out: &str| {
        let mut review = arcata();
        review.current_dir(folder.path()).arg("review").arg(demo("tide-table-exercise.musicxml"));
        review.args(["--format", "html", "--out", out]).output().expect("runs")
    };
    let page = folder.path().join("tide.html");
    for _ in 0..2 {
        assert_eq!(review("tide.html").status.code(), Some(1));
        assert!(std::fs::read_to_string(&page).expect("the page").starts_with("<!DOCTYPE html>"));
    }
    std::fs::write(folder.path().join("notes.html"), "mine").expect("written");
    let refused = review("notes.html");
    assert_eq!(refused.status.code(), Some(2));
    assert!(String::from_utf8_lossy(&refused.stderr).contains("name another with --out"));
    assert_eq!(std::fs::read_to_string(folder.path().join("notes.html")).expect("the notes"), "mine");
}
