//! What works is never where something was found, whatever the music is.
#![allow(clippy::expect_used, reason = "tests")]

use std::collections::BTreeSet;
use std::sync::Arc;

use arcata_analysis::{Config, Ground, Snapshot, Source};
use arcata_class::{Concealed, GivenMaterial, LookAtHandIn, Shown, Task, Touch, chosen, generic_names};
use arcata_testkit::{Detail, ScoreShape, random_score};

fn task(more: &str) -> Task {
    let text = format!("format = \"arcata-task\"\nversion = 1\ntitle = \"a task\"\n{more}");
    Task::read(&text).expect("a task")
}

fn snapshot(music: String) -> Snapshot {
    let mut source = Source::open(music.into_bytes()).expect("a score");
    generic_names(&mut source.score);
    Snapshot::new(Arc::new(Ground::new(source, Config::usual())))
}

fn shown(snapshot: &Snapshot, task: &Task) -> (Shown, BTreeSet<(usize, u32)>) {
    let look = LookAtHandIn::new(snapshot, task);
    let touch = Touch::default();
    let chosen = look.chosen(&touch);
    let shown = look.shown((&chosen, &touch), Vec::new(), &GivenMaterial::default(), &Concealed::default());
    (shown, look.blamed)
}

#[test]
fn nothing_is_praised_where_anything_was_found() {
    let tasks =
        [task(""), task("[rules]\nonly = [\"bow-drift\"]\n"), task("[trains]\nexpects = [\"slurs\"]\n")];
    let mut praised = 0;
    for seed in 0..60 {
        let shape = ScoreShape {
            parts: 2,
            bars: 16,
            detail: if seed % 2 == 0 { Detail::Slurs } else { Detail::All },
        };
        let snapshot = snapshot(random_score(seed, shape));
        for task in &tasks {
            let (shown, blamed) = shown(&snapshot, task);
            for work in &shown.works {
                praised += 1;
                let blamed = work.bars.iter().find(|bar| blamed.contains(&(work.part, **bar)));
                assert_eq!(blamed, None, "seed {seed}: {work:?}");
            }
            assert!(shown.passages.len() <= task.sheet.passages);
        }
    }
    assert!(praised > 20, "only {praised} things were praised");
}

#[test]
fn passages_are_of_different_kinds_and_the_gravest_comes_first() {
    let task = task("");
    for seed in 100..140 {
        let shape = ScoreShape { parts: 3, bars: 16, detail: Detail::All };
        let snapshot = snapshot(random_score(seed, shape));
        let look = LookAtHandIn::new(&snapshot, &task);
        let taken = chosen(&look.findings, &task);
        let rules: BTreeSet<&str> = taken.iter().map(|finding| finding.rule).collect();
        assert_eq!(rules.len(), taken.len(), "each rule once");
        let gravest = look.findings.iter().map(|finding| finding.severity).min();
        assert_eq!(taken.first().map(|finding| finding.severity), gravest);
    }
}

#[test]
fn an_empty_page_lacks_what_the_task_trains() {
    let bars = ["1/4 C5 D5 E5 F5"; 12].join(" | ");
    let bare = snapshot(arcata_testkit::musicxml(&format!("violin: {bars} |||")));
    let expects = task("[trains]\nexpects = [\"slurs\", \"dynamics\", \"tempo\", \"bow-marks\"]\n");
    let (found, _) = shown(&bare, &expects);
    for id in ["lacks-slurs", "lacks-dynamics", "lacks-tempo", "lacks-bow-marks"] {
        assert!(found.met.contains_key(id), "{id}: {:?}", found.met);
    }
    assert!(
        found.works.iter().all(|work| !work.said.key.starts_with("works-comes-out")),
        "{:?}",
        found.works
    );
    let slurred = ["(1/4 C5 D5) (E5 F5)"; 12].join(" | ");
    let full = snapshot(arcata_testkit::musicxml(&format!("quarter=80\nviolin: mf {slurred} |||")));
    let (found, _) = shown(&full, &expects);
    assert!(
        !found.met.contains_key("lacks-slurs") && !found.met.contains_key("lacks-tempo"),
        "{:?}",
        found.met
    );
    // Some slurs at the beginning do not hide that the rest has none.
    let half = format!("quarter=80\nviolin: mf (1/4 C5 D5) (E5 F5) | {bars} |||");
    let (found, _) = shown(&snapshot(arcata_testkit::musicxml(&half)), &expects);
    assert!(found.met.contains_key("lacks-slurs"), "{:?}", found.met);
}

#[test]
fn what_becomes_of_repairs_is_the_tasks_choice() {
    let music = "quarter=50\nviolin: f (1/4 C5 D5 E5 F5 | G5 F5 E5 D5) | 1/1 C5 |||";
    let snapshot = snapshot(arcata_testkit::musicxml(music));
    let of = |repairs: &str| shown(&snapshot, &task(&format!("[sheet]\nrepairs = \"{repairs}\"\n"))).0;
    let first = |shown: &Shown| shown.passages.first().expect("a passage").repair.clone();
    assert!(!first(&of("shown")).expect("a repair").sentence.is_empty());
    let hinted = first(&of("hinted")).expect("its kind");
    assert!(hinted.sentence.is_empty() && hinted.picture.is_none() && !hinted.kind.is_empty());
    assert_eq!(first(&of("withheld")), None);
}
