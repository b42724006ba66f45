//! The demo scores show what demo/README.md says, and every rule has its place among them.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at the checkout")]

use std::collections::BTreeSet;
use std::path::PathBuf;

use arcata_review::REGISTER;
use assert_cmd::Command;
use serde_json::Value;

/// A row of a table in demo/README.md.
struct Row {
    /// First and last bar.
    bars: (i64, i64),
    section: String,
    rule: String,
}

fn demo() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../demo")
}

/// The findings about a demo score, by the program; further reasons as findings of their own.
fn findings(file: &str) -> Vec<Value> {
    let mut review = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    let done = review.arg("review").arg(demo().join(file)).args(["--format", "json"]).output().expect("runs");
    let view: Value = serde_json::from_slice(&done.stdout).expect("JSON");
    let findings = view["files"][0]["findings"].as_array().expect("findings");
    findings.iter().flat_map(|finding| std::iter::once(finding.clone()).chain(reasons(finding))).collect()
}

/// What further rules say at the place of a finding.
fn reasons(finding: &Value) -> Vec<Value> {
    let reasons = finding["reasons"].as_array().expect("reasons").clone();
    reasons
        .into_iter()
        .map(|mut reason| {
            reason["place"] = finding["place"].clone();
            reason
        })
        .collect()
}

/// The rows under each title, with the score's file name.
fn told() -> Vec<(String, Vec<Row>)> {
    let page = std::fs::read_to_string(demo().join("README.md")).expect("the page");
    let mut chapters: Vec<(String, Vec<Row>)> = Vec::new();
    for chapter in page.split("\n## ").skip(1) {
        let title = chapter.lines().next().unwrap_or_default();
        let rows: Vec<Row> = chapter.lines().filter_map(row).collect();
        if !rows.is_empty() {
            // The table of files names each piece in italics after its link.
            let of_title = page.lines().find(|line| line.contains(&format!("*{title}*"))).expect("its file");
            let file = of_title.split(['[', ']']).nth(1).expect("a link").to_owned();
            chapters.push((file, rows));
        }
    }
    chapters
}

/// "| 11 to 12, 1 | Violin | bow-drift | … |": bars before the comma.
fn row(line: &str) -> Option<Row> {
    let cells: Vec<&str> = line.split('|').map(str::trim).collect();
    let [_, place, section, rule, _, _] = cells.as_slice() else { return None };
    let bars: Vec<i64> =
        place.split(',').next()?.split(['-', '–']).map(str::parse).collect::<Result<_, _>>().ok()?;
    Some(Row {
        bars: (*bars.first()?, *bars.last()?),
        section: (*section).to_owned(),
        rule: (*rule).to_owned(),
    })
}

fn is_told(row: &Row, finding: &Value) -> bool {
    let section = finding["place"]["section"].as_str().unwrap_or_default();
    let bar = finding["place"]["bar"].as_str().and_then(|bar| bar.parse::<i64>().ok()).unwrap_or(-1);
    let section_fits = row.section == "all" || section.starts_with(&row.section) || section == "the score";
    finding["rule"] == row.rule.as_str() && section_fits && (row.bars.0..=row.bars.1).contains(&bar)
}

#[test]
fn every_rule_speaks_in_a_demo_score() {
    let mut silent: BTreeSet<&str> = REGISTER.iter().map(|rule| rule.card.id).collect();
    for (file, _) in told() {
        for finding in findings(&file) {
            silent.remove(finding["rule"].as_str().unwrap_or_default());
        }
    }
    // Read against its score, the part in demo/parts differs.
    let mut review = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    let score = demo().join("lantern-study.musicxml");
    let part = demo().join("parts/lantern-study-violin.musicxml");
    let done = review
        .arg("review")
        .arg(score)
        .args(["--format", "csv", "--beside"])
        .arg(part)
        .output()
        .expect("runs");
    let said = String::from_utf8_lossy(&done.stdout).into_owned();
    let differs = said.lines().filter(|line| line.contains("part-differs-from-score")).count();
    assert_eq!(differs, 2, "{said}");
    silent.remove("part-differs-from-score");
    assert!(silent.is_empty(), "no demo score shows {silent:?}");
}

#[test]
fn what_the_page_tells_is_found_and_what_is_found_is_told() {
    let chapters = told();
    let scores = std::fs::read_dir(demo()).expect("the folder");
    let scores =
        scores.filter_map(Result::ok).filter(|entry| entry.path().extension() == Some("musicxml".as_ref()));
    assert_eq!(chapters.len(), scores.count(), "a table for each score");
    for (file, rows) in chapters {
        let found = findings(&file);
        for row in &rows {
            let (from, to) = row.bars;
            assert!(
                found.iter().any(|finding| is_told(row, finding)),
                "{file}: {} is not found in bars {from} to {to}, {}",
                row.rule,
                row.section
            );
        }
        for finding in &found {
            let sentence = &finding["sentence"];
            assert!(rows.iter().any(|row| is_told(row, finding)), "{file} says nothing of: {sentence}");
        }
    }
}
