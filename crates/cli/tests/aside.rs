//! Setting findings aside, and the list of rules, as a user does it.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

use std::path::{Path, PathBuf};
use std::process::Output;

use assert_cmd::Command;

fn arcata(arguments: &[&str], folder: &Path) -> Output {
    let mut command = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    command.args(arguments).current_dir(folder).output().expect("runs")
}

fn text(bytes: &[u8]) -> String {
    String::from_utf8(bytes.to_vec()).expect("UTF-8")
}

/// A folder with a copy of a demo score.
fn desk() -> (tempfile::TempDir, &'static str) {
    const NAME: &str = "lantern-study.musicxml";
    let folder = tempfile::tempdir().expect("a folder");
    let demo = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../demo").join(NAME);
    std::fs::copy(demo, folder.path().join(NAME)).expect("a copy");
    (folder, NAME)
}

const WHY: [&str; 2] = ["--reason", "The section breathes here."];

#[test]
fn what_is_set_aside_is_not_reported_and_the_rest_stays() {
    let (folder, score) = desk();
    let before = text(&arcata(&["review", score], folder.path()).stdout);
    assert!(before.contains("bar 23, beat 1"));
    let said = arcata(
        &["aside", score, "--rule", "slur-outlasts-bow", "--bars", "23", WHY[0], WHY[1]],
        folder.path(),
    );
    assert!(said.status.success(), "{}", text(&said.stderr));
    let kept = std::fs::read_to_string(folder.path().join("lantern-study.aside.toml")).expect("the file");
    assert!(kept.contains("bars = \"23\"\nreason = \"The section breathes here.\"\n"), "{kept}");
    let after = text(&arcata(&["review", score], folder.path()).stdout);
    let slurs = |report: &str| report.matches("slur-outlasts-bow").count();
    assert_eq!(slurs(&after) + 1, slurs(&before), "{after}");
    assert!(after.contains("set aside: 1 place in lantern-study.aside.toml"));
    let all = text(&arcata(&["review", score, "--tell-all"], folder.path()).stdout);
    assert_eq!(all, before);
}

#[test]
fn a_bar_that_several_movements_have_is_set_aside_in_the_one_that_is_named() {
    let (folder, score) = desk();
    let path = folder.path().join(score);
    let one = std::fs::read_to_string(&path).expect("the demo");
    let (from, to) = (one.find("<measure").expect("a bar"), one.find("</part>").expect("the part's end"));
    std::fs::write(&path, [&one[..to], &one[from..to], &one[to..]].concat()).expect("twice the same piece");
    let told = |report: &str| report.matches("slur-outlasts-bow").count();
    let before = told(&text(&arcata(&["review", score], folder.path()).stdout));
    let ask = ["aside", score, "--rule", "slur-outlasts-bow", "--bars", "23", WHY[0], WHY[1]];
    let refused = arcata(&ask, folder.path());
    let said = text(&refused.stderr);
    assert_eq!(refused.status.code(), Some(2), "{said}");
    assert!(said.contains("I and II have bar 23. Say which, such as"), "{said}");
    assert!(!folder.path().join("lantern-study.aside.toml").exists());
    let done = arcata(&[&ask[..], &["--movement", "2"]].concat(), folder.path());
    assert!(done.status.success(), "{}", text(&done.stderr));
    assert_eq!(told(&text(&arcata(&["review", score], folder.path()).stdout)) + 1, before);
}

#[test]
fn one_place_of_many_is_set_aside_and_its_proposals_leave_it_alone() {
    let (folder, score) = desk();
    let json = |more: &[&str]| -> serde_json::Value {
        let mut arguments = vec!["review", score, "--format", "json"];
        arguments.extend(more);
        serde_json::from_slice(&arcata(&arguments, folder.path()).stdout).expect("JSON")
    };
    let all = json(&[]);
    let findings = all["files"][0]["findings"].as_array().expect("findings").clone();
    let many = findings
        .iter()
        .find(|finding| finding["count"].as_u64() > Some(1))
        .expect("a finding of many places");
    let (rule, bar) = (many["rule"].as_str().expect("a rule"), many["place"]["bar"].as_str().expect("a bar"));
    let said = arcata(&["aside", score, "--rule", rule, "--bars", bar, WHY[0], WHY[1]], folder.path());
    assert!(said.status.success(), "{}", text(&said.stderr));
    let left = json(&[]);
    let aside = left["files"][0]["aside"]["findings"].as_array().expect("what is set aside");
    assert!(aside.iter().all(|held| held["place"]["bar"] == bar && held["reason"] == WHY[1]));
    let places = |value: &serde_json::Value| -> u64 {
        let findings = value["files"][0]["findings"].as_array().expect("findings");
        let of_rule = findings.iter().filter(|finding| finding["rule"] == rule);
        of_rule.map(|finding| finding["count"].as_u64().expect("a count")).sum()
    };
    assert_eq!(places(&all), places(&left) + aside.len() as u64);
}

#[test]
fn entries_that_hold_nothing_are_told() {
    let (folder, score) = desk();
    let path = folder.path().join("lantern-study.aside.toml");
    let head = "format = \"arcata-aside\"\nversion = 1\n";
    std::fs::write(&path, format!("{head}[[aside]]\nrule = \"broken-slur\"\nreason = \"Mended since.\"\n"))
        .expect("written");
    let told = text(&arcata(&["review", score], folder.path()).stdout);
    assert!(told.contains("set aside, but nothing is found: entry 1 of"), "{told}");
    let other = text(&arcata(&["review", score, "--only", "slur-outlasts-bow"], folder.path()).stdout);
    assert!(!other.contains("nothing is found"), "of a rule that was not asked nothing is known: {other}");
}

#[test]
fn nothing_is_written_where_nothing_is_found_or_the_file_cannot_be_read() {
    let (folder, score) = desk();
    let path = folder.path().join("lantern-study.aside.toml");
    let vain = arcata(&["aside", score, "--rule", "broken-slur", WHY[0], WHY[1]], folder.path());
    assert_eq!(vain.status.code(), Some(2));
    assert!(!path.exists());
    let all = arcata(&["aside", score, WHY[0], WHY[1]], folder.path());
    let said = text(&all.stderr).split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(said.contains("name a rule, a part, bars or a movement"), "{said}");
    std::fs::write(&path, "my own notes\n").expect("written");
    for arguments in
        [vec!["aside", score, "--rule", "slur-outlasts-bow", WHY[0], WHY[1]], vec!["review", score]]
    {
        let refused = arcata(&arguments, folder.path());
        assert_eq!(refused.status.code(), Some(2));
        assert!(text(&refused.stderr).contains("line 1"), "{}", text(&refused.stderr));
    }
    assert_eq!(std::fs::read_to_string(&path).expect("still there"), "my own notes\n");
}

#[test]
fn the_rules_are_listed_with_their_pages() {
    let folder = tempfile::tempdir().expect("a folder");
    let list = text(&arcata(&["rules"], folder.path()).stdout);
    for rule in arcata_review::REGISTER.iter() {
        assert!(list.contains(rule.card.id) && list.contains(rule.card.title), "{}", rule.card.id);
        let page = text(&arcata(&["rules", rule.card.id], folder.path()).stdout);
        let (before, _) = page.split_once("## Example\n").expect("the page has an example");
        assert!(rule.page().starts_with(before), "{page}");
        assert!(page.contains("frog … tip") || page.contains("## What it proposes"), "{page}");
    }
    assert!(list.lines().all(|line| line.chars().count() <= 100), "{list}");
    assert_eq!(arcata(&["rules", "no-such"], folder.path()).status.code(), Some(2));
}

#[test]
fn a_slur_that_is_called_a_phrase_mark_binds_the_bow_no_more() {
    let (folder, score) = desk();
    let strokes = || {
        let out = arcata(&["plan", score, "--part", "Violin", "--format", "csv"], folder.path());
        text(&out.stdout).lines().count()
    };
    let before = strokes();
    let told = ["aside", score, "--slur", "phrase", "--part", "Violin", "--bars", "20-25", WHY[0], WHY[1]];
    let said = arcata(&told, folder.path());
    assert!(said.status.success(), "{}", text(&said.stderr));
    assert!(text(&said.stderr).contains("taken as phrase marks from now on"), "{}", text(&said.stderr));
    assert!(strokes() > before, "{} strokes, {before} before", strokes());
    let none = arcata(&["aside", score, "--slur", "bow", "--bars", "999", WHY[0], WHY[1]], folder.path());
    assert_eq!(none.status.code(), Some(2));
    assert!(text(&none.stderr).contains("no slur begins there"), "{}", text(&none.stderr));
}

#[test]
fn rules_are_explained_in_other_languages() {
    let (folder, score) = desk();
    let said = |arguments: &[&str]| text(&arcata(arguments, folder.path()).stdout);
    let page = said(&["rules", "missing-arco", "--language", "de"]);
    assert!(page.starts_with("# Es fehlt arco\n\n## Was gefunden wird\n"), "{page}");
    assert!(said(&["rules", "--language", "fr"]).contains("\nSignes d'archet\n"));
    assert_eq!(said(&["rules", "--language", "en"]), said(&["rules"]));
    let wrong = arcata(&["rules", "--language", "pt"], folder.path());
    assert!(text(&wrong.stderr).contains("en, it, fr, de"), "{}", text(&wrong.stderr));
    arcata(
        &["review", score, "--only", "slur-outlasts-bow", "--format", "html", "--language", "it"],
        folder.path(),
    );
    let html = std::fs::read_to_string(folder.path().join("lantern-study-review.html")).expect("the page");
    assert!(html.contains("Una legatura più lunga di un'arcata") && html.contains(r#"<html lang="it">"#));
}

#[test]
fn parts_made_from_a_score_say_what_the_score_says() {
    let (folder, score) = desk();
    let made = arcata(&["parts", score, "--out", "parts"], folder.path());
    assert!(made.status.code() != Some(2), "{}", text(&made.stderr));
    let parts = std::fs::read_dir(folder.path().join("parts"))
        .expect("the folder")
        .flatten()
        .map(|entry| entry.path());
    let parts: Vec<PathBuf> =
        parts.filter(|path| path.extension().is_some_and(|end| end == "musicxml")).collect();
    assert!(!parts.is_empty());
    let beside = |path: &Path| {
        let path = path.to_str().expect("a name");
        let arguments = ["review", score, "--only", "part-differs-from-score", "--beside", path];
        arcata(&arguments, folder.path())
    };
    for part in &parts {
        let said = beside(part);
        assert_eq!(said.status.code(), Some(0), "{}", text(&said.stdout));
    }
    let xml = std::fs::read_to_string(&parts[0]).expect("a part");
    let changed = folder.path().join("changed.musicxml");
    std::fs::write(&changed, xml.replacen("<step>D</step>", "<step>E</step>", 1)).expect("written");
    let said = beside(&changed);
    assert!(
        text(&said.stdout).contains("changed.musicxml and the score have different notes at bar"),
        "{}",
        text(&said.stdout)
    );
}
