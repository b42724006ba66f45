//! Every form of a file that Arcata keeps and reads again is read for ever: a fixture of each version of each format, as the
//! program of its day wrote it. Nothing is taken out of the folder `kept-forms`, and nothing in it is changed.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files of the checkout")]

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use arcata_class::{Key, Record, Task, TeachersHand};
use arcata_desk::{JournalContent, JournalEnd};
use arcata_habits::Habits;
use arcata_report::PartsMade;
use arcata_review::Aside;

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/kept-forms")
}

fn kept(name: &str) -> String {
    std::fs::read_to_string(folder().join(name)).unwrap_or_else(|problem| panic!("{name}: {problem}"))
}

#[test]
fn what_is_set_aside_is_read() {
    let aside = Aside::read(&kept("aside-1-beats-as-fractions.toml")).expect("a file of what is set aside");
    let entry = &aside.entries[0];
    assert_eq!(entry.rule.as_deref(), Some("bow-drift"));
    assert_eq!(entry.bars, Some(("20".to_owned(), "24".to_owned())));
    assert_eq!(entry.beat, Some(arcata_score::Length::new(7, 2)));
    assert_eq!(aside.slurs[0].beat, Some(arcata_score::Length::new(7, 2)));
}

#[test]
fn habits_are_read() {
    let habits = Habits::read(&kept("habits-1.toml")).expect("habits");
    assert_eq!((habits.strokes, habits.prices["downbeat"], habits.foreseen.after), (220, 1400, 170));
}

#[test]
fn layers_are_read() {
    let layer = arcata_layer::read(kept("layer-1-first.json").as_bytes()).expect("a layer");
    assert_eq!((layer.owner.as_str(), layer.entries.len()), ("leader", 2));
}

#[test]
fn journals_of_the_workbench_are_read() {
    for (name, headed) in [("acts-1.jsonl", false), ("acts-2.jsonl", true)] {
        let read = JournalContent::read(kept(name).as_bytes());
        assert!(matches!(read.end, JournalEnd::Whole), "{name}: {:?}", read.end);
        assert_eq!((read.steps.len(), read.headed), (5, headed), "{name}");
    }
}

#[test]
fn what_is_kept_of_a_class_is_read() {
    let task = Task::read(&kept("task-1.toml")).expect("a task");
    assert_eq!(task.title, "Harbour Melody: slurs");
    let key = Key::read(&kept("class-key-1.toml")).expect("a key");
    assert_eq!(Key::read(&key.text()).expect("a key"), key);
    let hand = TeachersHand::read(&kept("class-hand-1.json")).expect("a hand");
    assert_eq!(hand.of("Alder Bank").marks, "passed");
    let replayed = TeachersHand::replayed(&kept("class-hand-journal-1.jsonl")).expect("a journal");
    assert_eq!(replayed.of("Alder Bank").note, "Good.");
    for name in ["class-record-1-english-alone.json", "class-record-1.json"] {
        let record = Record::read(&kept(name)).unwrap_or_else(|| panic!("{name} is a record"));
        let shown = record.shown().unwrap_or_else(|| panic!("{name} shows something"));
        assert!(!shown.passages.is_empty(), "{name}");
    }
}

#[test]
fn records_of_parts_are_read() {
    let made: PartsMade = serde_json::from_str(&kept("parts-1.json")).expect("a record");
    assert!(made.is_of_today());
    assert_eq!(made.parts["lantern-study-violin"].pages, 2);
}

#[test]
fn breaks_that_were_asked_for_are_read() {
    let text = kept("breaks-1.json");
    let asked = arcata_layer::read_breaks(&text).expect("breaks");
    assert_eq!(asked.all().len(), 2);
    assert_eq!(arcata_layer::write_breaks(&asked), text);
}

/// Sources below a folder.
fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(folder).expect("a folder") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            sources(&path, found);
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            found.push(path);
        }
    }
}

/// What stands in a text between `from` and the next `to`, at each place.
fn between<'t>(text: &'t str, from: &'t str, to: char) -> impl Iterator<Item = &'t str> {
    text.split(from).skip(1).filter_map(move |rest| rest.split(to).next())
}

/// Formats whose names and versions stand in constants are those that are read again; those that are only printed have none.
#[test]
fn every_version_of_every_format_that_is_read_has_its_fixture() {
    let crates = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("..");
    let mut files = Vec::new();
    for entry in std::fs::read_dir(crates).expect("the crates") {
        let folder = entry.expect("an entry").path().join("src");
        if folder.is_dir() {
            sources(&folder, &mut files);
        }
    }
    // The layer's format stands in another file than its version.
    let mut wanted = BTreeSet::from([("layer".to_owned(), arcata_layer::VERSION.into())]);
    for file in files {
        let text = std::fs::read_to_string(&file).expect("a source");
        let versions: Vec<u64> = ["const VERSION: u32 = ", "const VERSION: u64 = "]
            .iter()
            .flat_map(|before| between(&text, before, ';'))
            .filter_map(|number| number.parse().ok())
            .collect();
        for name in ["const FORMAT: &str = \"arcata-", "const JOURNAL: &str = \"arcata-"] {
            for format in between(&text, name, '"') {
                let [latest] = versions[..] else { panic!("{}: one version", file.display()) };
                wanted.insert((format.to_owned(), latest));
            }
        }
    }
    assert!(wanted.len() >= 9, "{wanted:?}");
    let names: Vec<String> = std::fs::read_dir(folder())
        .expect("the fixtures")
        .map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned())
        .collect();
    for (format, latest) in wanted {
        for version in 1..=latest {
            let begins = format!("{format}-{version}");
            let there = names.iter().any(|name| {
                name.strip_prefix(&begins).is_some_and(|rest| rest.starts_with('.') || rest.starts_with('-'))
            });
            assert!(there, "no fixture in crates/cli/tests/kept-forms begins {begins}");
        }
    }
}
