//! Task files: the examples are read, mistakes are told where they stand, and no bytes are too odd.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests read the examples")]

use std::path::PathBuf;

use arcata_class::{Expected, Key, Repairs, Task};
use arcata_review::Severity;
use proptest::prelude::*;

fn example(name: &str) -> String {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../demo/class").join(name);
    std::fs::read_to_string(&path).unwrap_or_else(|problem| panic!("{}: {problem}", path.display()))
}

const EXAMPLES: [&str; 4] = [
    "task.toml",
    "tasks/slurs-for-a-melody.toml",
    "tasks/piano-piece-for-quartet.toml",
    "tasks/page-for-string-orchestra.toml",
];

#[test]
fn the_examples_are_tasks() {
    for name in EXAMPLES {
        let task = Task::read(&example(name)).unwrap_or_else(|error| panic!("{name}: {error}"));
        task.profile().expect("a player");
    }
    let quartet = Task::read(&example("tasks/piano-piece-for-quartet.toml")).expect("a task");
    assert_eq!((quartet.languages.len(), quartet.tempo, quartet.lightest), (2, Some(84), Severity::C));
    assert_eq!(quartet.profile().expect("a player").thresholds.slur_too_long.value, 1000);
    assert_eq!(quartet.expects, [Expected::Slurs, Expected::Dynamics, Expected::Hairpins]);
    // A chapter stands for all its rules.
    assert!(quartet.trains.contains("broken-slur") && quartet.trains.contains("out-of-range"));
    let orchestra = Task::read(&example("tasks/page-for-string-orchestra.toml")).expect("a task");
    assert_eq!((orchestra.sheet.repairs, orchestra.sheet.passages), (Repairs::Withheld, 3));
}

#[test]
fn players_are_described_in_a_file_beside_the_task() {
    let head = "format = \"arcata-task\"\nversion = 1\ntitle = \"x\"\nplayer = \"ours.toml\"\n";
    let task = Task::read(&format!("{head}[thresholds]\nslur_too_long = 1000\n")).expect("a task");
    assert!(task.profile().is_err(), "its file has not been read");
    let own = "extends = \"student\"\n[hair]\nviolin = 560\n[thresholds]\nslur_too_long = 1200\n";
    let profile = task.clone().described_by(own).expect("a profile").profile().expect("a player");
    assert_eq!((profile.hair.violin.value, profile.thresholds.slur_too_long.value), (560, 1000));
    let wrong =
        task.described_by("extends = \"student\"\n[hair]\nviolon = 5\n").expect_err("no such setting");
    assert!(wrong.contains("player = \"ours.toml\": line 3"), "{wrong}");
}

#[test]
fn what_is_out_of_measure_is_told() {
    let head = "format = \"arcata-task\"\nversion = 1\ntitle = \"x\"\n";
    for (more, told) in [
        ("tempo = 4\n", "line 4, column 9: the tempo"),
        ("[sheet]\npassages = 9\n", "line 5, column 12: 9 passages do not fit"),
        ("[given]\npart = 0\n", "line 5, column 8: parts are counted from 1"),
        ("[trains]\nparts = [1, 0]\n", "line 5, column 13: parts are counted from 1"),
        ("[trains]\nexpects = [\"slur\"]\n", "is not known: write slurs, dynamics"),
        ("[words]\nlacks-slur = \"x\"\n", "perhaps \"lacks-slurs\" is meant"),
        ("languages = []\n", "line 4, column 13: no language is named"),
        ("player = \"virtuoso\"\n", "write professional, amateur, student"),
    ] {
        let error = Task::read(&format!("{head}{more}")).expect_err(more).to_string();
        assert!(error.contains(told), "{more}: {error}");
    }
}

proptest! {
    /// Whatever stands there, it is read or told, with a line that the file has.
    #[test]
    fn no_text_is_too_odd(
        which in 0..EXAMPLES.len(),
        cuts in prop::collection::vec((any::<prop::sample::Index>(), any::<prop::sample::Index>(), "\\PC{0,6}"), 0..6),
    ) {
        let mut text = example(EXAMPLES[which]);
        for (from, to, instead) in cuts {
            let starts: Vec<usize> = text.char_indices().map(|(at, _)| at).chain([text.len()]).collect();
            let (from, to) = (starts[from.index(starts.len())], starts[to.index(starts.len())]);
            // Short pieces: what is left looks like a task.
            let (from, to) = (from.min(to), from.max(to));
            let to = if to - from > 40 { from } else { to };
            text.replace_range(from..to, &instead);
        }
        if let Err(error) = Task::read(&text) {
            prop_assert!(error.line >= 1 && error.line <= text.matches('\n').count() + 1, "{error}");
            prop_assert!(error.column >= 1 && !error.why.is_empty());
        }
        let _ = Key::read(&text);
    }
}
