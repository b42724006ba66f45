//! Passages bowed as a leader would bow them: the documents of `tests/suite/plan`.
//!
//! A line of the bowing is a part, bar by bar: `d` down, `u` up; before it `h` where the bow goes on in one
//! direction from where it was, `R` where it is lifted and carried back without a rest, `r` where it is set down
//! elsewhere after one. `ARCATA_RENEW=1 cargo test -p arcata-bow --test bowings` writes what is planned now.
#![allow(
    clippy::disallowed_methods,
    clippy::expect_used,
    reason = "tests read and renew their documents, and say what a document lacks"
)]

use std::fmt::Write as _;
use std::path::PathBuf;

use arcata_bow::together::{agreements, plan_together};
use arcata_bow::{Join, Line, LineOptions, Link, Plan, Profile, all_lines};
use arcata_score::BowDirection;
use arcata_testkit::suite::{self, Case};
use arcata_xml::{Document, Limits};

fn folder() -> PathBuf {
    PathBuf::from(concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/suite/plan"))
}

fn bowing(case: &Case) -> String {
    let fixture = case.fixture().unwrap_or_else(|error| panic!("{}: {error}", case.heading));
    let document = Document::parse(fixture.musicxml().into_bytes(), &Limits::default()).expect("well-formed");
    let score = arcata_score::read(&document);
    let profile = match &case.profile {
        None => Profile::default(),
        Some(block) => Profile::parse(&block.text).expect("a case's profile is sound"),
    };
    let lines = all_lines(&score, &profile, &LineOptions::default());
    let settings: Vec<_> = lines.iter().map(|line| profile.plan_settings(line.instrument)).collect();
    let weights = settings.first().map(|settings| settings.weights.clone()).unwrap_or_default();
    let together = plan_together(&lines, &settings, &agreements(&score, &lines, &weights));
    lines.iter().zip(&together.plans).map(|(line, plan)| told(line, plan)).collect()
}

fn told(line: &Line, plan: &Plan) -> String {
    let mut text = format!("{}:", line.name.to_lowercase());
    let mut bar = None;
    for (stroke, planned) in line.strokes.iter().zip(&plan.strokes) {
        if bar.is_some_and(|bar| bar != stroke.bar) {
            text.push_str(" |");
        }
        bar = Some(stroke.bar);
        let link = match planned.link {
            Link::Hooked => "h",
            Link::Retake => "R",
            Link::Reset if stroke.join == Join::AfterRest => "r",
            Link::Change | Link::Reset => "",
        };
        let way = if planned.direction == BowDirection::Down { 'd' } else { 'u' };
        let _ = write!(text, " {link}{way}");
    }
    text.push('\n');
    text
}

#[test]
fn passages_are_bowed_as_a_leader_would() {
    let renew = std::env::var_os("ARCATA_RENEW").is_some();
    let mut wrong = String::new();
    let entries = std::fs::read_dir(folder()).expect("the folder of documents");
    let mut paths: Vec<PathBuf> = entries.map(|entry| entry.expect("an entry").path()).collect();
    paths.sort();
    assert!(!paths.is_empty(), "no documents");
    for path in paths {
        let markdown = std::fs::read_to_string(&path).expect("a document");
        let cases = suite::parse(&markdown).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
        let found: Vec<String> = cases.iter().map(bowing).collect();
        if renew {
            let renewed = suite::renew(&markdown, &found).expect("one text a case");
            std::fs::write(&path, renewed).expect("the document can be written");
            continue;
        }
        for (case, found) in cases.iter().zip(&found).filter(|(case, found)| !case.expects(found)) {
            let _ = write!(wrong, "\n{}:\n{found}", case.heading);
        }
    }
    assert!(wrong.is_empty(), "the plan is another now:{wrong}");
}
