//! Parts for the stands, as a user makes them: what is in the PDF is measured in the PDF.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

use std::path::{Path, PathBuf};
use std::process::Output;

use assert_cmd::Command;
use lopdf::content::Content;
use lopdf::{Document, Object};

fn demo(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../demo").join(name)
}

fn parts(score: &Path, out: &Path, more: &[&str]) -> Output {
    let mut command = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    command.arg("parts").arg(score).arg("--out").arg(out).args(more).output().expect("runs")
}

fn text(bytes: &[u8]) -> String {
    String::from_utf8(bytes.to_vec()).expect("UTF-8")
}

/// An affine map as PDF writes it.
type Map = [f64; 6];

fn then(inner: Map, outer: Map) -> Map {
    let [a, b, c, d, e, f] = inner;
    let [p, q, r, s, t, u] = outer;
    [a * p + b * r, a * q + b * s, c * p + d * r, c * q + d * s, e * p + f * r + t, e * q + f * s + u]
}

fn number(operand: &Object) -> f64 {
    f64::from(operand.as_float().expect("a number"))
}

/// Heights (points from the foot) of level lines at least as long as the width given, on one page.
fn level_lines(pdf: &Document, page: lopdf::ObjectId, at_least: f64) -> Vec<f64> {
    let content = Content::decode(&pdf.get_page_content(page)).expect("operations");
    let mut map: Map = [1.0, 0.0, 0.0, 1.0, 0.0, 0.0];
    let mut kept = Vec::new();
    let mut from = (0.0, 0.0);
    let mut found = Vec::new();
    for operation in &content.operations {
        let numbers = || operation.operands.iter().map(number).collect::<Vec<f64>>();
        let on_paper = |x: f64, y: f64| (x * map[0] + y * map[2] + map[4], x * map[1] + y * map[3] + map[5]);
        match operation.operator.as_str() {
            "q" => kept.push(map),
            "Q" => map = kept.pop().expect("a state"),
            "cm" => map = then(numbers().try_into().expect("six numbers"), map),
            "m" => from = on_paper(numbers()[0], numbers()[1]),
            "l" => {
                let to = on_paper(numbers()[0], numbers()[1]);
                if (to.1 - from.1).abs() < 0.01 && (to.0 - from.0).abs() >= at_least {
                    found.push(to.1);
                }
                from = to;
            }
            _ => {}
        }
    }
    found.sort_by(|one, other| other.total_cmp(one));
    found.dedup_by(|one, other| (*one - *other).abs() < 0.01);
    found
}

/// From the first line of a staff to the fifth, millimetres, for every staff of a page: five level lines at one
/// distance. A bar's staff lines are drawn by themselves, so short lines count.
fn staff_heights(pdf: &Document, page: lopdf::ObjectId) -> Vec<f64> {
    const POINTS_A_MILLIMETRE: f64 = 72.0 / 25.4;
    let lines = level_lines(pdf, page, 10.0 * POINTS_A_MILLIMETRE);
    let is_there = |y: f64| lines.iter().any(|line| (line - y).abs() < 0.05);
    let mut heights = Vec::new();
    let mut under = f64::INFINITY;
    for (index, top) in lines.iter().enumerate().filter(|(_, top)| **top > 0.0) {
        // Other level lines, of tuplets and hairpins, may lie between.
        let spaces = lines[index + 1..].iter().take(4).map(|next| top - next);
        let staff = spaces.into_iter().find(|space| {
            *space > POINTS_A_MILLIMETRE && (2..5).all(|line| is_there(top - f64::from(line) * space))
        });
        if let Some(space) = staff.filter(|_| *top < under) {
            heights.push(4.0 * space / POINTS_A_MILLIMETRE);
            under = top - 4.5 * space;
        }
    }
    heights
}

/// What the pages of a part say, measured in its file: lines of music and their height, and the words.
fn measured(path: &Path) -> Vec<(Vec<f64>, String)> {
    let pdf = Document::load(path).expect("a PDF");
    let pages = pdf.get_pages();
    pages
        .iter()
        .map(|(number, page)| {
            // The library that reads it puts every letter on a line of its own.
            let words = pdf.extract_text(&[*number]).expect("text").split_whitespace().collect::<String>();
            (staff_heights(&pdf, *page), words)
        })
        .collect()
}

#[test]
fn every_string_player_gets_pages_with_a_staff_of_the_height_that_the_house_wants() {
    let folder = tempfile::tempdir().expect("a folder");
    for (house, height) in [("", 7.5), ("[staff]\nheight = 80\n", 8.0)] {
        let out = folder.path().join(format!("{height}"));
        let file = folder.path().join("house.toml");
        std::fs::write(&file, house).expect("written");
        let more = ["--house", file.to_str().expect("a name"), "--bowings", "least"];
        let done = parts(&demo("ferry-bell-quartet.musicxml"), &out, &more);
        assert!(matches!(done.status.code(), Some(0 | 1)), "{}", text(&done.stderr));
        let told = text(&done.stdout);
        for name in ["Violin I", "Violin II", "Viola", "Violoncello"] {
            let file = std::fs::read_dir(&out).expect("the folder").filter_map(Result::ok).find(|entry| {
                let found = entry.file_name().to_string_lossy().into_owned();
                found.get(3..) == Some(&format!("{}.pdf", name.replace(' ', "-")))
            });
            let pages = measured(&file.expect("a file for each").path());
            let lines: usize = pages.iter().map(|(staves, _)| staves.len()).sum();
            let page_word = if pages.len() == 1 { "page" } else { "pages" };
            assert!(
                told.contains(&format!("{name}: {} {page_word}, {lines} line", pages.len())),
                "{lines}: {told}"
            );
            for (staves, words) in &pages {
                assert!(!staves.is_empty() && staves.iter().all(|measured| (measured - height).abs() < 0.1));
                assert!(words.contains(&name.replace(' ', "")), "{name} stands on every page: {words}");
            }
        }
    }
}

#[test]
fn a_part_as_a_file_has_the_notes_of_the_score_and_the_marks_that_were_asked_for() {
    let folder = tempfile::tempdir().expect("a folder");
    let read = |path: &Path| {
        let bytes = std::fs::read(path).expect("a file");
        let document =
            arcata_xml::Document::parse(bytes, &arcata_xml::Limits::default()).expect("well-formed");
        arcata_score::read(&document)
    };
    let score = read(&demo("slipway-strings.musicxml"));
    let violin = |which: &str| {
        let out = folder.path().join(which);
        let more = ["--bowings", which, "--part", "Violin I"];
        let done = parts(&demo("slipway-strings.musicxml"), &out, &more);
        assert!(matches!(done.status.code(), Some(0 | 1)), "{}", text(&done.stderr));
        read(&out.join("01-Violin-I.musicxml"))
    };
    let notes = |part: &arcata_score::Part| {
        part.notes.iter().map(|note| (note.onset, note.length, note.pitch)).collect::<Vec<_>>()
    };
    let marks = |score: &arcata_score::Score| {
        score.parts[0].notes.iter().filter(|note| note.bow_mark.is_some()).count()
    };
    let (none, printed, least, plan) = (violin("none"), violin("score"), violin("least"), violin("plan"));
    for part in [&none, &printed, &least, &plan] {
        assert_eq!(part.parts.len(), 1);
        assert_eq!(notes(&part.parts[0]), notes(&score.parts[0]));
    }
    assert_eq!((marks(&none), marks(&printed)), (0, marks(&score)));
    assert!(marks(&printed) < marks(&least) && marks(&least) < marks(&plan));
}

#[test]
fn what_all_players_need_stands_in_every_part() {
    let folder = tempfile::tempdir().expect("a folder");
    let done = parts(&demo("slipway-strings.musicxml"), folder.path(), &["--part", "Double Bass"]);
    let told = text(&done.stdout);
    assert!(told.contains("tempo or rehearsal mark"), "{told}");
    let words: String =
        measured(&folder.path().join("05-Double-Bass.pdf")).into_iter().map(|(_, words)| words).collect();
    for mark in ["Adagio", "Allegro", "Largamente", "A", "B", "C", "D"] {
        assert!(words.contains(mark), "{mark}: {words}");
    }
}

#[test]
fn parts_made_before_are_not_written_over_unless_asked_and_slips_are_told() {
    let folder = tempfile::tempdir().expect("a folder");
    let make = |more: &[&str]| parts(&demo("lantern-study.musicxml"), &folder.path().join("out"), more);
    assert!(matches!(make(&[]).status.code(), Some(0 | 1)));
    let told = |done: &Output| text(&done.stderr).split_whitespace().collect::<Vec<_>>().join(" ");
    let again = make(&[]);
    assert_eq!(again.status.code(), Some(2));
    assert!(told(&again).contains("Nothing was written"), "{}", told(&again));
    assert!(matches!(make(&["--replace"]).status.code(), Some(0 | 1)));
    let house = folder.path().join("house.toml");
    std::fs::write(&house, "[staff]\nheight = 8\n").expect("written");
    let wrong = make(&["--replace", "--house", house.to_str().expect("a name")]);
    assert_eq!(wrong.status.code(), Some(2));
    assert!(told(&wrong).contains("staff.height: a whole number from 40 to 120"), "{}", told(&wrong));
}

#[test]
fn bars_bear_the_numbers_of_the_score_or_none() {
    let folder = tempfile::tempdir().expect("a folder");
    let score = std::fs::read_to_string(demo("slipway-strings.musicxml")).expect("a score");
    // A second movement that begins anew: bars 13 to 45 become 101 to 133.
    let renumbered = (13..=45).fold(score, |score, bar| {
        score.replace(&format!("<measure number=\"{bar}\""), &format!("<measure number=\"{}\"", bar + 88))
    });
    let file = folder.path().join("two.musicxml");
    std::fs::write(&file, renumbered).expect("written");
    let words = |house: &str| {
        let path = folder.path().join("house.toml");
        std::fs::write(&path, house).expect("written");
        let house = ["--house", path.to_str().expect("a name"), "--part", "Violin I", "--replace"];
        let done = parts(&file, &folder.path().join("out"), &house);
        assert!(matches!(done.status.code(), Some(0 | 1)), "{}", text(&done.stderr));
        let pages = measured(&folder.path().join("out/01-Violin-I.pdf"));
        pages.into_iter().map(|(_, words)| words).collect::<String>()
    };
    let every = words("[bars]\nnumbers = \"bars\"\n");
    assert!(["11", "12", "102", "133"].iter().all(|number| every.contains(number)), "{every}");
    assert!(!every.contains("44"), "{every}");
    let systems = words("");
    let file = std::fs::read_to_string(folder.path().join("out/01-Violin-I.musicxml")).expect("the part");
    // The bars that open a line by the part's own file: they bear their numbers, the bars behind them none.
    let opened: Vec<u32> = file
        .split("<measure ")
        .filter(|bar| bar.contains("new-system=") || bar.contains("new-page="))
        .filter_map(|bar| bar.split("number=\"").nth(1)?.split('"').next()?.parse().ok())
        .collect();
    assert!(
        opened.len() > 3 && opened.iter().all(|bar| systems.contains(&bar.to_string())),
        "{opened:?} {systems}"
    );
    let behind = opened.iter().map(|bar| bar + 1).filter(|bar| *bar > 100 && !opened.contains(bar));
    behind.for_each(|bar| assert!(!systems.contains(&bar.to_string()), "{bar}: {systems}"));
    let none = words("[bars]\nnumbers = \"none\"\n");
    assert!(["12", "10", "11"].iter().all(|number| !none.contains(number)), "{none}");
}

/// A booklet is read back: each side of a sheet has the text of the two pages that belong there, on paper twice as wide.
#[test]
fn a_booklet_has_on_each_side_the_text_of_its_two_pages() {
    let folder = tempfile::tempdir().expect("a folder");
    let house = folder.path().join("large.toml");
    // A line a page, so that a short score fills several.
    let wishes = "[staff]\nheight = 110\n[pages]\nsystems = 1\nsystems_first = 1\nfirst = \"right\"\nfold_outs = \"never\"\nblank = \"never\"\n";
    std::fs::write(&house, wishes).expect("a file");
    let out = folder.path().join("parts");
    let house = house.to_str().expect("a path");
    let arguments = ["--part", "Violin I", "--booklet", "--house", house];
    let said = parts(&demo("ferry-bell-quartet.musicxml"), &out, &arguments);
    let report = text(&said.stdout);
    assert!(report.contains("sheets, 420 x 297 mm"), "{report}{}", text(&said.stderr));
    let open = |name: &str| Document::load(out.join(name)).expect("a PDF");
    let words = |pdf: &Document, page: u32| -> Vec<String> {
        let text = pdf.extract_text(&[page]).expect("text");
        let mut words: Vec<String> = text.split_whitespace().map(str::to_owned).collect();
        words.sort();
        words
    };
    let (pages, booklet) = (open("01-Violin-I.pdf"), open("01-Violin-I.booklet.pdf"));
    let count = u32::try_from(pages.get_pages().len()).expect("a few");
    assert!((5..=8).contains(&count), "eight pages on two sheets: {count}");
    // The order of eight pages on two sheets, as every printer's handbook has it.
    let sides = [(8, 1), (2, 7), (6, 3), (4, 5)];
    assert_eq!(booklet.get_pages().len(), sides.len());
    for (side, (left, right)) in (1..).zip(sides) {
        let mut wanted: Vec<String> = Vec::new();
        for page in [left, right].into_iter().filter(|page| *page <= count) {
            wanted.extend(words(&pages, page));
        }
        wanted.sort();
        assert_eq!(words(&booklet, side), wanted, "side {side}");
    }
    // Nothing is written over unless asked.
    let again = parts(&demo("ferry-bell-quartet.musicxml"), &out, &arguments);
    assert!(
        !again.status.success() && text(&again.stderr).contains("and 2 more are there"),
        "{}",
        text(&again.stderr)
    );
}
