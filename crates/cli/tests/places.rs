//! Whatever is printed as a place is typed again, and means the same bar and beat.
//!
//! The program's own printing is not trusted here: bars and beats are cut out of its output and reckoned as fractions by
//! a few lines of this file, and compared with where notes stand in the score.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

use arcata_score::beats::beat_in_bar;
use arcata_score::{Length, Score};
use assert_cmd::Command;
use serde_json::Value;

const SCORES: [&str; 2] = ["ferry-bell-quartet.musicxml", "lantern-study.musicxml"];

fn demo(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../demo").join(name)
}

fn score(path: &Path) -> Score {
    let bytes = std::fs::read(path).expect("the score");
    let file = arcata_xml::open_score(bytes, &arcata_xml::Limits::default()).expect("a score");
    arcata_score::read(file.document())
}

/// What a command prints; lines that were broken at the edge of the page are whole again.
fn printed(arguments: &[&str]) -> String {
    let done = Command::new(assert_cmd::cargo::cargo_bin!("arcata")).args(arguments).output().expect("runs");
    let told = String::from_utf8(done.stderr).expect("UTF-8");
    assert!(done.status.code() != Some(2), "{arguments:?}: {told}");
    String::from_utf8(done.stdout).expect("UTF-8")
}

/// A bar's number and a beat.
type Place = (String, Length);

/// `3`, `7/2`, `3½`, `3 1/2`, `2+5/16`, by hand.
fn fraction(text: &str) -> Option<Length> {
    let signs = [
        ("½", 1, 2),
        ("⅓", 1, 3),
        ("⅔", 2, 3),
        ("¼", 1, 4),
        ("¾", 3, 4),
        ("⅙", 1, 6),
        ("⅚", 5, 6),
        ("⅛", 1, 8),
    ];
    let whole = |text: &str| text.parse::<i64>().ok();
    if let Some((above, below)) = text.split_once('/') {
        if let Some((count, above)) = above.split_once([' ', '+']) {
            return Some(Length::new(whole(count)?, 1) + Length::new(whole(above)?, whole(below)?));
        }
        return Some(Length::new(whole(above)?, whole(below)?));
    }
    match signs.iter().find(|(sign, ..)| text.ends_with(sign)) {
        Some((sign, above, below)) => {
            Some(Length::new(whole(text.strip_suffix(sign)?)?, 1) + Length::new(*above, *below))
        }
        None => whole(text).map(|whole| Length::new(whole, 1)),
    }
}

/// Every `bar N, beat B` of a text, as printed and as it is meant.
fn places_in(text: &str) -> BTreeMap<String, Place> {
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
    let mut found = BTreeMap::new();
    for (at, _) in text.match_indices("bar ") {
        let rest = &text[at + 4..];
        let Some((label, rest)) = rest.split_once(", beat ") else { continue };
        if label.is_empty() || label.contains(' ') {
            continue;
        }
        let is_beat = |letter: &char| letter.is_ascii_digit() || "+/½⅓⅔¼¾⅙⅚⅛⅜⅝⅞".contains(*letter);
        let beat: String = rest.chars().take_while(is_beat).collect();
        let fraction_behind = rest[beat.len()..]
            .strip_prefix(' ')
            .and_then(|rest| rest.split([' ', ',', '.', ';', ':']).next());
        let split = fraction_behind.filter(|word| {
            word.contains('/') && word.bytes().all(|letter| letter.is_ascii_digit() || letter == b'/')
        });
        let beat = split.map_or_else(|| beat.clone(), |word| format!("{beat} {word}"));
        let meant = fraction(&beat).unwrap_or_else(|| panic!("{beat:?} in {rest:.30?}"));
        found.insert(format!("bar {label}, beat {beat}"), (label.to_owned(), meant));
    }
    found
}

/// Columns of a CSV file by name, quoted cells included.
fn cells(csv: &str, names: &[&str]) -> Vec<Vec<String>> {
    let mut rows = csv::Reader::from_reader(csv.as_bytes());
    let head = rows.headers().expect("a head").clone();
    let at: Vec<usize> =
        names.iter().map(|name| head.iter().position(|cell| cell == *name).expect("a column")).collect();
    rows.records()
        .map(|row| row.expect("a row"))
        .map(|row| at.iter().map(|at| row[*at].to_owned()).collect())
        .collect()
}

/// Every object with a bar and a beat in a JSON document, with its section or line where it says one.
fn objects(value: &Value, found: &mut BTreeSet<(String, String)>) {
    match value {
        Value::Array(all) => all.iter().for_each(|one| objects(one, found)),
        Value::Object(map) => {
            if let (Some(bar), Some(beat)) =
                (map.get("bar").and_then(Value::as_str), map.get("beat").and_then(Value::as_str))
            {
                found.insert((bar.to_owned(), beat.to_owned()));
            }
            map.values().for_each(|one| objects(one, found));
        }
        _ => {}
    }
}

/// Types marks at places of a part into a layer, many at once, and tells where they landed.
fn entered(path: &Path, part: &str, typed: &[String]) -> Vec<Place> {
    let folder = tempfile::tempdir().expect("a folder");
    let layer = folder.path().join("typed.json");
    let lines: Vec<String> = typed.iter().map(|place| format!("{part}: {place} \"{place}\"")).collect();
    let mut command = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    let command = command.args(["layer", "enter"]).arg(path).arg("--out").arg(&layer);
    let done = command.write_stdin(lines.join("\n")).output().expect("runs");
    assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
    let layer = arcata_layer::read(&std::fs::read(&layer).expect("the layer")).expect("a layer");
    let score = score(path);
    let landed: BTreeMap<String, Place> = layer
        .entries
        .iter()
        .map(|entry| {
            let bar = entry.place.spot.bar_ordinal.expect("an ordinal") - 1;
            let part = score.parts.iter().find(|one| one.name == entry.place.part).expect("the part");
            let beat = beat_in_bar(part.meter_at(bar).expect("a metre"), entry.place.spot.offset);
            let arcata_layer::Mark::Text { text } = &entry.mark else { panic!("words were typed") };
            (text.clone(), (entry.place.spot.bar.clone(), beat))
        })
        .collect();
    typed.iter().map(|place| landed.get(place).unwrap_or_else(|| panic!("{place} landed")).clone()).collect()
}

/// The strokes that `plan` tells, as its table, CSV and JSON have them, typed into shorthand.
#[test]
fn strokes_of_a_plan_are_typed_as_they_are_printed() {
    for name in SCORES {
        let path = demo(name);
        let file = path.to_string_lossy().into_owned();
        let csv = printed(&["plan", &file, "--apart", "--format", "csv"]);
        let rows = cells(&csv, &["line", "bar", "beat"]);
        let score = score(&path);
        for part in score.parts.iter().filter(|part| part.instrument.is_bowed()) {
            let of_part: BTreeSet<(String, String)> = rows
                .iter()
                .filter(|row| row[0] == part.name)
                .map(|row| (row[1].clone(), row[2].clone()))
                .collect();
            let mut typed = Vec::new();
            let mut meant = Vec::new();
            for (bar, beat) in &of_part {
                let exact = fraction(beat).expect("a fraction");
                typed.push(format!("{bar}/{beat}"));
                typed.push(format!("bar {bar}, beat {beat}"));
                meant.extend([(bar.clone(), exact), (bar.clone(), exact)]);
            }
            assert_eq!(entered(&path, &part.name, &typed), meant, "{name}, {}", part.name);
            // The table at a terminal.
            let table = printed(&["plan", &file, "--apart", "--part", &part.name]);
            let cells = cells_of_table(&table);
            let typed: Vec<String> = cells.keys().cloned().collect();
            let meant: Vec<Place> = cells.into_values().collect();
            assert_eq!(meant.len(), of_part.len(), "{name}, {}: every stroke is in the table", part.name);
            assert_eq!(entered(&path, &part.name, &typed), meant, "{name}, {}", part.name);
        }
        let json: Value =
            serde_json::from_str(&printed(&["plan", &file, "--apart", "--format", "json"])).expect("JSON");
        let mut found = BTreeSet::new();
        objects(&json, &mut found);
        let of_csv: BTreeSet<(String, String)> =
            rows.into_iter().map(|row| (row[1].clone(), row[2].clone())).collect();
        assert!(of_csv.is_subset(&found), "{name}: JSON and CSV print one form");
    }
}

/// Rows of the table of a plan or change sheet: the bar where it is told, the beat behind it.
fn cells_of_table(table: &str) -> BTreeMap<String, Place> {
    let mut found = BTreeMap::new();
    let mut bar = String::new();
    for line in
        table.lines().filter(|line| line.len() > 14 && line.is_char_boundary(6) && line.is_char_boundary(13))
    {
        let (label, rest) = line.split_at(6);
        let beat = rest.get(..8).unwrap_or_default().trim();
        let is_row = line.starts_with("  ") && beat.starts_with(|letter: char| letter.is_ascii_digit());
        let Some(meant) = fraction(beat).filter(|_| is_row) else { continue };
        if !label.trim().is_empty() {
            bar = label.trim().to_owned();
        }
        found.insert(format!("{bar}/{beat}"), (bar.clone(), meant));
    }
    found
}

/// Places of findings and marks, in text, CSV and JSON, given to `--bars`: the rows are of that bar.
#[test]
fn places_of_a_review_and_of_marks_are_given_to_bars() {
    for name in SCORES {
        let path = demo(name);
        let file = path.to_string_lossy().into_owned();
        let mut typed: BTreeMap<String, Place> = BTreeMap::new();
        for command in ["review", "marks"] {
            typed.extend(places_in(&printed(&[command, &file])));
            let json: Value =
                serde_json::from_str(&printed(&[command, &file, "--format", "json"])).expect("JSON");
            let mut found = BTreeSet::new();
            objects(&json, &mut found);
            let rows = cells(&printed(&[command, &file, "--format", "csv"]), &["bar", "beat"]);
            found.extend(rows.into_iter().map(|row| (row[0].clone(), row[1].clone())));
            found.retain(|(bar, _)| !bar.is_empty());
            for (bar, beat) in found {
                let meant = (bar.clone(), fraction(&beat).expect("a fraction"));
                typed.insert(format!("{bar}/{beat}"), meant);
            }
        }
        assert!(typed.len() > 10, "{name}: {typed:?}");
        // Each bar once as people and once as programs have it: a run for each place would take an hour.
        let mut tried = BTreeSet::new();
        for (place, (bar, _)) in typed {
            if !tried.insert((bar.clone(), place.starts_with("bar"))) {
                continue;
            }
            let csv = printed(&["plan", &file, "--apart", "--bars", &place, "--format", "csv"]);
            let bars: BTreeSet<String> =
                cells(&csv, &["bar"]).into_iter().map(|row| row[0].clone()).collect();
            assert!(bars.iter().all(|told| *told == bar), "{name}, {place}: {bars:?}");
        }
    }
}

/// Strokes are fixed at places as text, CSV and other languages have them, and told back as the same.
#[test]
fn strokes_are_fixed_at_printed_places() {
    let file = demo("lantern-study.musicxml").to_string_lossy().into_owned();
    let csv = printed(&["plan", &file, "--format", "csv", "--bars", "19-21"]);
    let mut rows = cells(&csv, &["bar", "beat", "direction"]);
    rows.sort_by_key(|row| !row[1].contains('/'));
    let two = &rows[..2];
    assert!(two.iter().all(|row| row[1].contains('/')), "{rows:?}");
    let meant: BTreeSet<Place> =
        two.iter().map(|row| (row[0].clone(), fraction(&row[1]).expect("a fraction"))).collect();
    type Form = fn(&str, &str) -> String;
    let forms: [Form; 8] = [
        |bar, beat| format!("{bar}/{beat}"),
        |bar, beat| format!("bar {bar}, beat {beat}"),
        |bar, beat| format!("Violin, bar {bar}, beat {beat}"),
        |bar, beat| format!("bar {bar}, beat {beat}  Violin"),
        |bar, beat| format!("Vn {bar}/{beat}"),
        |bar, beat| format!("Takt {bar}, Schlag {beat}"),
        |bar, beat| format!("batt. {bar}, tempo {beat}"),
        |bar, beat| format!("mes. {bar}, temps {beat}"),
    ];
    for form in forms {
        let anchors: Vec<String> =
            two.iter().map(|row| format!("{} {}", form(&row[0], &row[1]), row[2])).collect();
        let told =
            printed(&["plan", &file, "--bars", "19-21", "--anchor", &anchors[0], "--anchor", &anchors[1]]);
        let line = told.lines().find_map(|line| line.trim().strip_prefix("anchors: ")).expect("the anchors");
        let told: BTreeSet<Place> = places_in(line).into_values().collect();
        assert_eq!(told, meant, "{anchors:?}: {line}");
    }
}

/// Two layers compared, without and with the score, and the change sheet: every place is typed again as it stands.
#[test]
fn places_between_layers_and_on_change_sheets_are_typed_as_they_stand() {
    let path = demo("ferry-bell-quartet.musicxml");
    let file = path.to_string_lossy().into_owned();
    let folder = tempfile::tempdir().expect("a folder");
    let at = |name: &str| folder.path().join(name).to_string_lossy().into_owned();
    let (empty, full) = (at("empty.json"), at("full.json"));
    let enter = |typed: &str, out: &str| {
        let mut command = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
        let command = command.args(["layer", "enter", &file, "--out", out]);
        let done = command.write_stdin(typed).output().expect("runs");
        assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
        arcata_layer::read(&std::fs::read(out).expect("the layer")).expect("a layer")
    };
    enter("# nothing\n", &empty);
    let strokes = cells(&printed(&["plan", &file, "--apart", "--format", "csv"]), &["line", "bar", "beat"]);
    let all: Vec<String> =
        strokes.iter().map(|row| format!("{}: {}/{} \"here\" lift", row[0], row[1], row[2])).collect();
    let layer = enter(&all.join("\n"), &full);
    assert!(layer.entries.len() > 200, "{}", layer.entries.len());
    for more in [[].as_slice(), &["--score", &file]] {
        let told = printed(&[&["layer", "compare", &empty, &full], more].concat());
        assert!(!told.contains(" + "), "no place is a sum");
        let typed: Vec<String> = told
            .lines()
            .map(|line| line.split_once(": nothing →").expect("a place").0)
            .map(|place| format!("{place} \"here\" lift"))
            .collect();
        assert!(typed.iter().all(|place| place.contains(", beat ") || more.is_empty()), "{typed:?}");
        let again = enter(&typed.join("\n"), &at("again.json"));
        let places = |layer: &arcata_layer::Layer| -> Vec<arcata_layer::Address> {
            layer.entries.iter().map(|entry| entry.place.clone()).collect()
        };
        assert_eq!(places(&again), places(&layer), "{more:?}");
    }
    // The sheet: a page a section, its bars and beats in columns.
    let sheet = printed(&["layer", "sheet", &file, "--layer", &full, "--before", &empty]);
    let score = score(&path);
    let pages: Vec<&str> = sheet.split("   bar  beat").collect();
    assert_eq!(pages.len(), 1 + score.parts.len(), "a page a part");
    let mut count = 0;
    for (part, page) in score.parts.iter().zip(&pages[1..]) {
        let cells = cells_of_table(page);
        let typed: Vec<String> = cells.keys().cloned().collect();
        let meant: Vec<Place> = cells.into_values().collect();
        assert_eq!(entered(&path, &part.name, &typed), meant, "{}", part.name);
        count += meant.len();
    }
    assert!(count > 100, "{count}");
}

/// A finding is set aside at the place that heads it, and the file tells the same bar and beat.
#[test]
fn a_finding_is_set_aside_at_the_place_that_heads_it() {
    let folder = tempfile::tempdir().expect("a folder");
    let file = folder.path().join("study.musicxml");
    std::fs::copy(demo("lantern-study.musicxml"), &file).expect("copied");
    let file = file.to_string_lossy().into_owned();
    let json: Value = serde_json::from_str(&printed(&["review", &file, "--format", "json"])).expect("JSON");
    let text = printed(&["review", &file]);
    let findings = json["files"][0]["findings"].as_array().expect("findings").clone();
    let mut count = 0;
    for finding in findings.iter().take(8) {
        let rule = finding["rule"].as_str().expect("a rule");
        let (bar, beat) = (
            finding["place"]["bar"].as_str().expect("a bar"),
            finding["place"]["beat"].as_str().expect("a beat"),
        );
        let Some(head) =
            text.lines().find_map(|line| line.trim_end().strip_suffix(rule)).filter(|_| !bar.is_empty())
        else {
            continue;
        };
        let place = head.trim_end_matches([' ', 'A', 'B', 'C', 'D']).to_owned();
        let Some((label, meant)) = places_in(&place).into_values().next() else { continue };
        let out = folder.path().join(format!("{count}.toml")).to_string_lossy().into_owned();
        printed(&[
            "aside",
            &file,
            "--rule",
            rule,
            "--bars",
            &place,
            "--aside",
            &out,
            "--reason",
            "It is meant.",
        ]);
        let written = std::fs::read_to_string(&out).expect("the file");
        assert!(written.contains(&format!("bars = \"{label}\"")), "{place}: {written}");
        assert!(written.contains(&format!("beat = \"{meant}\"")), "{place}: {written}");
        count += usize::from((label.as_str(), Some(meant)) == (bar, fraction(beat)));
    }
    assert!(count > 3, "{count} of {}", findings.len());
}

/// Absurd places get the one message, wherever they are typed, and nothing breaks.
#[test]
fn absurd_places_get_the_one_message() {
    let file = demo("tide-table-exercise.musicxml").to_string_lossy().into_owned();
    let refused = |arguments: &[&str]| {
        let done =
            Command::new(assert_cmd::cargo::cargo_bin!("arcata")).args(arguments).output().expect("runs");
        assert_eq!(done.status.code(), Some(2), "{arguments:?}");
        String::from_utf8(done.stderr).expect("UTF-8").split_whitespace().collect::<Vec<_>>().join(" ")
    };
    let one_message = |arguments: &[&str]| {
        let told = refused(arguments);
        assert!(told.contains("expected ") && told.contains(", found "), "{arguments:?}: {told}");
        assert!(told.contains("Places are written 12, 12/3½"), "{arguments:?}: {told}");
    };
    for absurd in
        ["", "😀", "٣", "12/0", "12/1/0", "12/99999999999999999999", "1(99999999999)", "12-", "12/½"]
    {
        one_message(&["plan", &file, "--bars", absurd]);
        one_message(&["plan", &file, "--anchor", &format!("{absurd} down")]);
    }
    for absurd in ["", "٣", "12/0"] {
        one_message(&["review", &file, "--bars", absurd]);
        one_message(&["marks", &file, "--bars", absurd]);
        one_message(&["plan", &file, "--end", &format!("{absurd} down")]);
        one_message(&["aside", &file, "--bars", absurd, "--reason", "x"]);
    }
    let told = refused(&["plan", &file, "--bars", "12.3"]);
    assert!(told.contains("Did you mean \"12/3\"?"), "{told}");
    let told = refused(&["aside", &file, "--bars", "3", "--beat", "3/0", "--reason", "x"]);
    assert!(told.contains("expected a beat such as 3, 3½"), "{told}");
}
