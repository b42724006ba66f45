//! Every JSON that a command prints or writes is what the published schemas in `docs/schema` say, and has nothing that they do
//! not name: all demo scores, every option of the commands.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

use std::path::{Path, PathBuf};
use std::process::Output;

use arcata_testkit::Published;
use assert_cmd::Command;
use serde_json::Value;

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../..")
}

fn demos() -> Vec<PathBuf> {
    let entries = std::fs::read_dir(root().join("demo")).expect("the demo scores");
    let mut demos: Vec<PathBuf> = entries.map(|entry| entry.expect("an entry").path()).collect();
    demos.retain(|path| path.extension().is_some_and(|ending| ending == "musicxml"));
    demos.sort();
    assert!(demos.len() > 5, "{demos:?}");
    demos
}

fn demo(name: &str) -> PathBuf {
    root().join("demo").join(name)
}

fn arcata<'a>(arguments: impl IntoIterator<Item = &'a str>, folder: &Path) -> Output {
    let mut arcata = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    arcata.args(arguments).current_dir(folder).output().expect("runs")
}

fn schema(name: &str) -> Published {
    let path = root().join("docs/schema").join(format!("{name}.schema.json"));
    Published::new(&std::fs::read_to_string(path).expect("the schema")).expect("a schema")
}

fn holds(schema: &Published, bytes: &[u8], what: &str) -> Value {
    let value: Value = serde_json::from_slice(bytes)
        .unwrap_or_else(|problem| panic!("{what}: {problem}: {}", String::from_utf8_lossy(bytes)));
    let complaints = schema.complaints(&value);
    assert!(complaints.is_empty(), "{what}: {complaints:#?}");
    value
}

/// Runs a command that prints JSON.
fn printed(schema: &Published, command: &str, score: &Path, options: &[&str]) -> Value {
    let score = score.to_str().expect("text");
    let done =
        arcata([command, score, "--format", "json"].into_iter().chain(options.iter().copied()), &root());
    let what = format!("{command} {score} {options:?}: {}", String::from_utf8_lossy(&done.stderr));
    holds(schema, &done.stdout, &what)
}

/// The study twice in one file: two movements.
fn in_two_movements(folder: &Path) -> PathBuf {
    let one = std::fs::read_to_string(demo("lantern-study.musicxml")).expect("the demo");
    let (from, to) = (one.find("<measure").expect("a bar"), one.find("</part>").expect("the part's end"));
    let path = folder.join("two.musicxml");
    std::fs::write(&path, [&one[..to], &one[from..to], &one[to..]].concat()).expect("written");
    path
}

/// Whether a member of this name is anywhere in a value, so that a test cannot be satisfied by what it never saw.
fn has(value: &Value, name: &str) -> bool {
    match value {
        Value::Object(members) => {
            members.contains_key(name) || members.values().any(|inner| has(inner, name))
        }
        Value::Array(members) => members.iter().any(|inner| has(inner, name)),
        _ => false,
    }
}

#[test]
fn what_is_left_out_where_there_is_nothing_of_it_is_not_required() {
    let folder = tempfile::tempdir().expect("a folder");
    let score = folder.path().join("small.musicxml");
    let music = "quarter=60\nviolin: mf 1/4 (C5 D5 E5 F5 | G5 F5 E5 D5 | C5 D5 E5 F5 | 1/1 G5) |||";
    std::fs::write(&score, arcata_testkit::musicxml(music)).expect("written");
    printed(&schema("review"), "review", &score, &[]);
    printed(&schema("plan"), "plan", &score, &[]);
    printed(&schema("marks"), "marks", &score, &[]);
}

#[test]
fn reviews_with_every_option() {
    let schema = schema("review");
    let mut seen = Vec::new();
    for score in demos() {
        seen.push(printed(&schema, "review", &score, &[]));
    }
    let study = demo("lantern-study.musicxml");
    let parts: Vec<String> = std::fs::read_dir(root().join("demo/parts"))
        .expect("the parts")
        .map(|entry| entry.expect("an entry").path().display().to_string())
        .collect();
    let beside: Vec<&str> = std::iter::once("--beside").chain(parts.iter().map(String::as_str)).collect();
    seen.push(printed(&schema, "review", &demo("slipway-strings.musicxml"), &beside));
    let folder = tempfile::tempdir().expect("a folder");
    let aside = folder.path().join("study.aside.toml").display().to_string();
    let noted = [
        "aside",
        study.to_str().expect("text"),
        "--rule",
        "slur-outlasts-bow",
        "--reason",
        "a trial",
        "--aside",
    ];
    assert!(arcata(noted.into_iter().chain([aside.as_str()]), &root()).status.success());
    for options in [
        &["--aside", aside.as_str()][..],
        &["--tell-all"],
        &["--severity", "A"],
        &["--only", "bow-drift"],
        &["--without", "bow-drift", "--without", "slur-outlasts-bow"],
        &["--bars", "5-20", "--part", "Violin"],
        &["--tempo", "40", "--louder", "2", "--apart"],
        &["--style", "early", "--profile", "student"],
    ] {
        seen.push(printed(&schema, "review", &study, options));
    }
    seen.push(printed(&schema, "review", &in_two_movements(folder.path()), &["--movement", "2"]));
    // A folder, and a file that cannot be read.
    std::fs::write(folder.path().join("broken.musicxml"), "<score-partwise><part>").expect("written");
    std::fs::copy(&study, folder.path().join("study.musicxml")).expect("copied");
    seen.push(printed(&schema, "review", folder.path(), &[]));
    let out = folder.path().join("review.json");
    printed_to(&schema, "review", &study, &out);
    for name in ["error", "aside", "unused", "reasons", "cost_change", "proposals", "further", "problems"] {
        assert!(seen.iter().any(|view| has(view, name)), "{name} was never seen");
    }
}

/// Runs a command that writes JSON to a file.
fn printed_to(schema: &Published, command: &str, score: &Path, out: &Path) {
    let named = [score, out].map(|path| path.to_str().expect("text"));
    arcata([command, named[0], "--format", "json", "--out", named[1]], &root());
    holds(schema, &std::fs::read(out).expect("the file"), command);
}

#[test]
fn plans_with_every_option() {
    let schema = schema("plan");
    let mut seen = Vec::new();
    for score in demos() {
        seen.push(printed(&schema, "plan", &score, &[]));
    }
    let study = demo("lantern-study.musicxml");
    for options in [
        &["--bars", "5-8", "--alternatives", "3"][..],
        &["--bars", "5-8", "--repairs", "2"],
        &["--end", "8 down"],
        &["--end", "8 up", "--alternatives", "2"],
        &["--anchor", "5/1 up", "--anchor", "5/1 down", "--anchor", "6/1 down retake"],
        &["--table", "downbeats", "--hide-printed"],
        &["--tempo", "40", "--louder", "-2", "--apart", "--style", "dance"],
    ] {
        seen.push(printed(&schema, "plan", &study, options));
    }
    let folder = tempfile::tempdir().expect("a folder");
    printed_to(&schema, "plan", &study, &folder.path().join("plan.json"));
    let repeated = folder.path().join("repeated.musicxml");
    let music = "quarter=60\nviolin: mf |: 1/4 C5 D5 E5 F5 | (G5 F5) 1/2 E5 :| 1/4 C5 D5 E5 F5 | 1/1 G5 |||";
    std::fs::write(&repeated, arcata_testkit::musicxml(music)).expect("written");
    seen.push(printed(&schema, "plan", &repeated, &["--sure"]));
    seen.push(printed(&schema, "plan", &in_two_movements(folder.path()), &[]));
    for name in [
        "alternatives",
        "anchors",
        "conflicts",
        "ending",
        "ways",
        "repairs",
        "together",
        "downbeats",
        "turns",
        "sure",
        "printed",
        "movement",
    ] {
        assert!(seen.iter().any(|view| has(view, name)), "{name} was never seen");
    }
}

#[test]
fn audits_of_marks_with_every_option() {
    let schema = schema("marks");
    for score in demos() {
        printed(&schema, "marks", &score, &[]);
    }
    let study = demo("slipway-strings.musicxml");
    for options in [&["--bars", "29-34"][..], &["--apart", "--tempo", "90"], &["--style", "early"]] {
        printed(&schema, "marks", &study, options);
    }
    let folder = tempfile::tempdir().expect("a folder");
    printed_to(&schema, "marks", &study, &folder.path().join("marks.json"));
}

#[test]
fn layers_and_their_library() {
    let schema = schema("layer");
    let folder = tempfile::tempdir().expect("a folder");
    let here = folder.path();
    let run = |arguments: &[&str]| arcata(arguments.iter().copied(), here);
    let layer = |name: &str| {
        let bytes = std::fs::read(here.join(name)).unwrap_or_else(|problem| panic!("{name}: {problem}"));
        holds(&schema, &bytes, name)
    };
    for (number, score) in demos().iter().enumerate() {
        let score = score.to_str().expect("text");
        let (kept, out) = (format!("lifted-{number}.json"), format!("clean-{number}.musicxml"));
        let kinds = ["--kind", "bows", "--kind", "words", "--kind", "lifts", "--kind", "slurs"];
        run(&[&["layer", "lift", score, "--layer", &kept, "--out", &out, "--owner", "a leader"][..], &kinds]
            .concat());
        layer(&kept);
        run(&["layer", "apply", &out, "--layer", &kept, "--out", "again.musicxml"]);
        layer(&kept);
    }
    let quartet = demo("ferry-bell-quartet.musicxml");
    let quartet = quartet.to_str().expect("text");
    std::fs::write(here.join("notes.txt"), "all 1/1 down\n2/1 hook dots\n3/1 retake up\nanchor 4/1 down\n")
        .expect("written");
    std::fs::write(here.join("others.txt"), "all 1/1 up\n2/1 as it comes\n").expect("written");
    for (notes, owner, out) in [("notes.txt", "one", "one.json"), ("others.txt", "two", "two.json")] {
        let entered =
            ["layer", "enter", quartet, "--notes", notes, "--owner", owner, "--title", "Bows", "--out", out];
        let done = run(&entered);
        assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
        layer(out);
    }
    let typed = run(&["layer", "enter", quartet, "--notes", "notes.txt"]);
    holds(&schema, &typed.stdout, "layer enter to the terminal");
    run(&["layer", "merge", "one.json", "two.json", "--out", "merged.json"]);
    assert!(has(&layer("merged.json"), "conflicts"));
    run(&["layer", "spread", quartet, "--layer", "one.json", "--from", "1", "--out", "spread.json"]);
    layer("spread.json");
    run(&["layer", "carry", quartet, "--from", quartet, "--layer", "one.json", "--out", "carried.json"]);
    layer("carried.json");
    run(&["layer", "apply", quartet, "--layer", "one.json", "--out", "bowed.musicxml"]);
    assert!(has(&layer("one.json"), "took_off"));

    let library = self::schema("library");
    std::fs::write(here.join("broken.json"), r#"{"format": "arcata-layer", "version": 99}"#)
        .expect("written");
    for options in [&[][..], &["--owner", "one"], &["--rebuild", "--work", "a", "--ensemble", "b"]] {
        let listed = run(&[&["layer", "list", ".", "--format", "json"][..], options].concat());
        holds(&library, &listed.stdout, "layer list");
    }
}

#[test]
fn what_parts_were_made_from() {
    let folder = tempfile::tempdir().expect("a folder");
    let score = demo("lantern-study.musicxml");
    let made =
        ["parts", score.to_str().expect("text"), "--out", "parts", "--booklet", "--handover", "--pencil"];
    let done = arcata(made, folder.path());
    assert!(done.status.code().is_some_and(|code| code < 2), "{}", String::from_utf8_lossy(&done.stderr));
    let record = std::fs::read(folder.path().join("parts/parts.json")).expect("the record");
    let record = holds(&schema("parts"), &record, "parts.json");
    assert!(record["parts"].as_object().is_some_and(|parts| parts.len() == 1), "{record}");
}

#[test]
fn what_is_kept_of_a_class() {
    let folder = tempfile::tempdir().expect("a folder");
    let here = folder.path();
    let class = root().join("demo/class");
    // One that cannot be read, too.
    std::fs::create_dir(here.join("hand-ins")).expect("a folder");
    for entry in std::fs::read_dir(class.join("hand-ins")).expect("the hand-ins") {
        let path = entry.expect("an entry").path();
        std::fs::copy(&path, here.join("hand-ins").join(path.file_name().expect("a name"))).expect("copied");
    }
    std::fs::write(here.join("hand-ins/Ula Broken - harbour melody.musicxml"), "<score-partwise>")
        .expect("written");
    let task = class.join("task.toml").display().to_string();
    let records = || {
        let entries = std::fs::read_dir(here.join("pages/records")).expect("the records");
        let paths = entries.map(|entry| entry.expect("an entry").path());
        let record = |path: PathBuf| {
            holds(
                &schema("class-record"),
                &std::fs::read(&path).expect("a record"),
                &path.display().to_string(),
            )
        };
        paths.map(record).collect::<Vec<Value>>()
    };
    let run = |more: &[&str]| {
        let asked = ["class", "hand-ins", "--task", &task, "--out", "pages", "--key", "key.toml"];
        let done = arcata(asked.into_iter().chain(more.iter().copied()), here);
        assert_eq!(done.status.code(), Some(1), "{}", String::from_utf8_lossy(&done.stderr));
    };
    run(&[]);
    let before = records();
    assert!(before.iter().any(|record| has(record, "unreadable")));
    let read = before.iter().find(|record| has(record, "passages")).expect("one that was read");
    let pseudonym = read["pseudonym"].as_str().expect("a pseudonym");
    let hand = serde_json::json!({
        "format": "arcata-class-hand", "version": 1, "phrases": ["Good."],
        "hand_ins": { pseudonym: { "struck": [], "taken": [], "said": {}, "ticked": [0], "note": "Good.", "marks": "" } }
    });
    holds(&schema("class-hand"), hand.to_string().as_bytes(), "the hand that the test writes");
    std::fs::write(here.join("hand.json"), hand.to_string()).expect("written");
    run(&["--hand", "hand.json"]);
    assert!(records().iter().any(|record| record["touch"]["note"] == "Good."));
    // What the page sends is kept as the schema says, whatever stood in it.
    let sent = r#"{"hand_in":"Alder Bank","touch":{"note":"Good.\u202e"},"phrase":"Good."}"#;
    for line in [sent, "{\"undo\":true}"] {
        let kept = arcata_class::HandAct::read(line).expect("an act").line();
        holds(&schema("class-hand-act"), kept.as_bytes(), "a line of the hand's journal");
    }
}

#[test]
fn the_schemas_in_the_folder_are_the_programs() {
    let program = [
        ("review", arcata_report::review_schema()),
        ("plan", arcata_report::plan_schema()),
        ("marks", arcata_report::marks_schema()),
        ("library", arcata_report::library_schema()),
        ("layer", arcata_layer::schema()),
        ("parts", arcata_report::parts_made_schema()),
        ("class-record", arcata_class::record_schema()),
        ("class-hand", arcata_class::hand_schema()),
        ("class-hand-act", arcata_class::hand_act_schema()),
        ("breaks", arcata_layer::breaks_schema()),
    ];
    let published = std::fs::read_dir(root().join("docs/schema")).expect("the schemas").count();
    assert_eq!(published, program.len(), "every published schema is held against something here");
    for (name, schema) in program {
        let there = std::fs::read_to_string(root().join(format!("docs/schema/{name}.schema.json")))
            .expect("a schema");
        let there: Value = serde_json::from_str(&there).expect("JSON");
        assert_eq!(there, *schema.as_value(), "docs/schema/{name}.schema.json: run cargo xtask docs");
    }
}
