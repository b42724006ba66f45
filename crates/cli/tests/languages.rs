//! What the program says of music is in the language asked for; what programs read stays as it is.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests read what the program made")]

use std::path::{Path, PathBuf};

use assert_cmd::Command;
use serde_json::Value;
use unicode_width::UnicodeWidthStr as _;

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

fn scores(folder: &str) -> Vec<PathBuf> {
    let mut found: Vec<PathBuf> = std::fs::read_dir(root().join(folder))
        .expect("the folder")
        .filter_map(|entry| Some(entry.ok()?.path()))
        .filter(|path| path.extension().is_some_and(|ending| ending == "musicxml"))
        .collect();
    found.sort();
    found
}

fn printed(arguments: &[&str], scores: &[PathBuf]) -> String {
    let mut run = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    let output =
        run.current_dir(root()).env("COLUMNS", "80").args(arguments).args(scores).output().expect("runs");
    assert!(output.status.code() != Some(2), "{arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).expect("UTF-8")
}

fn reviewed(language: &str, scores: &[PathBuf]) -> Value {
    let arguments = ["review", "--format", "json", "--language", language];
    serde_json::from_str(&printed(&arguments, scores)).expect("JSON")
}

/// Keys whose values are sentences or names for people.
const SAID: [&str; 3] = ["sentence", "assumptions", "message"];

/// What differs between two answers: the path, and both texts.
fn differing(path: &str, one: &Value, other: &Value, found: &mut Vec<(String, String, String)>) {
    match (one, other) {
        (Value::Object(one), Value::Object(other)) => {
            assert_eq!(
                one.keys().collect::<Vec<_>>(),
                other.keys().collect::<Vec<_>>(),
                "{path}: other keys"
            );
            for (key, value) in one {
                differing(&format!("{path}.{key}"), value, &other[key], found);
            }
        }
        (Value::Array(one), Value::Array(other)) => {
            assert_eq!(one.len(), other.len(), "{path}: other numbers of things");
            for (one, other) in one.iter().zip(other) {
                differing(path, one, other, found);
            }
        }
        (Value::String(one), Value::String(other)) => {
            if one != other {
                found.push((path.to_owned(), one.clone(), other.clone()));
            }
        }
        (one, other) => assert_eq!(one, other, "{path}"),
    }
}

/// All sentences of an answer.
fn sentences<'v>(value: &'v Value, found: &mut Vec<&'v str>) {
    match value {
        Value::Object(members) => {
            for (key, value) in members {
                if let (true, Some(text)) = (key == "sentence", value.as_str()) {
                    found.push(text);
                }
                sentences(value, found);
            }
        }
        Value::Array(items) => items.iter().for_each(|item| sentences(item, found)),
        _ => {}
    }
}

/// The demo scores and the example of every rule, in four languages: only what is said differs, and all of it does.
#[test]
fn every_finding_is_said_in_every_language_and_keys_ids_and_numbers_stay() {
    let mut scores = scores("demo");
    scores.extend(self::scores("crates/examples/rules"));
    let english = reviewed("en", &scores);
    let mut said = Vec::new();
    sentences(&english, &mut said);
    assert!(said.len() > 300, "{} sentences", said.len());
    for language in ["it", "fr", "de"] {
        let other = reviewed(language, &scores);
        let mut found = Vec::new();
        differing("", &english, &other, &mut found);
        for (path, one, other) in &found {
            let key = path.rsplit('.').next().unwrap_or_default();
            // The whole score has a name.
            let may = SAID.contains(&key) || key == "section";
            assert!(may, "{language}: {path} says {other} for {one}");
            assert!(!other.contains(['{', '}', '$']), "{language}: {other}");
        }
        let mut translated = Vec::new();
        sentences(&other, &mut translated);
        let english: Vec<_> = said.iter().zip(&translated).filter(|(one, other)| one == other).collect();
        assert!(english.is_empty(), "{language}: English was left: {english:#?}");
    }
}

/// Nothing is wider than a terminal of 80 columns.
#[test]
fn text_fits_the_terminal_in_every_language() {
    for language in ["en", "it", "fr", "de"] {
        let quartet = [root().join("demo/ferry-bell-quartet.musicxml")];
        let strings = [root().join("demo/slipway-strings.musicxml")];
        let asked: [(&[&str], &[PathBuf]); 5] = [
            (&["review"], &quartet),
            (&["review"], &strings),
            (&["plan", "--part", "Violin I", "--bars", "5-8", "--alternatives", "3"], &quartet),
            (&["plan", "--table", "downbeats"], &quartet),
            (&["marks"], &[root().join("demo/kite-signals.musicxml")]),
        ];
        for (arguments, scores) in asked {
            let text = printed(&[arguments, &["--language", language]].concat(), scores);
            for line in text.lines() {
                // What a file is called is not broken, nor a rule's name beside a place.
                let whole = line.contains(".musicxml") || line.split_whitespace().count() < 2;
                assert!(
                    whole || line.width() <= 80,
                    "{language} {arguments:?}: {} columns: {line}",
                    line.width()
                );
            }
        }
    }
}

/// `--terms` goes with what is said in English alone.
#[test]
fn the_words_of_the_trade_are_put_in_where_a_sentence_is_made() {
    let score = [root().join("demo/lantern-study.musicxml")];
    let american = printed(&["review", "--terms", "american"], &score);
    assert!(american.contains("measure ") && !american.contains("bar "), "{american}");
    let italian = printed(&["review", "--terms", "american", "--language", "it"], &score);
    assert_eq!(italian, printed(&["review", "--language", "it"], &score));
    assert!(italian.contains("battuta ") && !italian.contains("measure"), "{italian}");
}

/// What a command tells when it is done: both streams in one.
fn told(folder: &Path, language: &str, arguments: &[&str]) -> String {
    let mut run = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    let output =
        run.current_dir(folder).args(arguments).args(["--language", language]).output().expect("runs");
    assert!(output.status.code() != Some(2), "{arguments:?}: {}", String::from_utf8_lossy(&output.stderr));
    let both = [output.stdout, output.stderr].concat();
    String::from_utf8_lossy(&both).split_whitespace().collect::<Vec<_>>().join(" ")
}

/// The commands that set aside, learn habits and work on layers: their counts, headings, places and marks.
#[test]
fn commands_tell_in_the_language_what_they_have_done() {
    let folder = tempfile::tempdir().expect("a folder");
    let at = folder.path();
    for demo in ["lantern-study", "ferry-bell-quartet", "weather-ledger"] {
        let name = format!("{demo}.musicxml");
        std::fs::copy(root().join("demo").join(&name), at.join(name)).expect("a copy");
    }
    let prepare: [&[&str]; 4] = [
        &["plan", "weather-ledger.musicxml", "--style", "early", "--marks", "all", "--out", "bowed.musicxml"],
        &["habits", "learn", "bowed.musicxml", "--out", "leader.toml"],
        &["layer", "lift", "bowed.musicxml", "--out", "clean.musicxml", "--layer", "one.json"],
        &["layer", "wipe", "bowed.musicxml", "--layer", "one.json", "--out", "wiped.musicxml"],
    ];
    for arguments in prepare {
        told(at, "en", arguments);
    }
    let layer = std::fs::read(at.join("one.json")).expect("a layer");
    let mut layer = arcata_layer::read(&layer).expect("a layer");
    layer.entries.remove(0);
    std::fs::write(at.join("other.json"), arcata_layer::write(&layer)).expect("written");
    let asks: [(&[&str], [&str; 4]); 7] = [
        (
            &["aside", "lantern-study.musicxml", "--rule", "slur-outlasts-bow", "--reason", "x"],
            [
                "set aside from now on",
                "da parte d'ora in poi",
                "de côté désormais",
                "von nun an beiseitegelegt",
            ],
        ),
        (
            &["aside", "lantern-study.musicxml", "--slur", "phrase", "--bars", "20-25", "--reason", "x"],
            ["taken as", "D'ora in poi", "désormais", "von nun an"],
        ),
        (&["habits", "show", "leader.toml"], ["instead of", "invece di", "au lieu de", "statt"]),
        (
            &["layer", "lift", "bowed.musicxml", "--out", "clean.musicxml", "--layer", "again.json"],
            ["marks lifted into", "segni ripresi in", "signes relevés dans", "Zeichen sind in"],
        ),
        (
            &["layer", "apply", "clean.musicxml", "--layer", "one.json", "--out", "applied.musicxml"],
            ["applied,", "scritte,", "écrits,", "geschrieben,"],
        ),
        (
            &["layer", "compare", "one.json", "other.json", "--score", "clean.musicxml"],
            ["→ nothing", "→ niente", "→ rien", "→ nichts"],
        ),
        (
            &["layer", "wipe", "bowed.musicxml", "--layer", "one.json", "--out", "wiped.musicxml"],
            ["taken off;", "tolte;", "enlevés ;", "entfernt;"],
        ),
    ];
    for (arguments, expected) in asks {
        let said = ["en", "it", "fr", "de"].map(|language| {
            let _ = std::fs::remove_file(at.join("lantern-study.aside.toml"));
            told(at, language, arguments)
        });
        for (language, (said, expected)) in said.iter().zip(expected).enumerate() {
            assert!(said.contains(expected), "{arguments:?}: {said}");
            let english = language > 0 && (said.contains(" bar ") || said.contains(" the "));
            assert!(!english, "{arguments:?}: {said}");
        }
    }
}
