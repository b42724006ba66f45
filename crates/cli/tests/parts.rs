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
    assert!(told.contains("once for all players"), "{told}");
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
    // The same parts again are there already; others are not written over.
    assert!(text(&make(&[]).stdout).contains("as it was made before"));
    let again = make(&["--bowings", "plan"]);
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
    let other = [&arguments[..], &["--bowings", "plan"]].concat();
    let again = parts(&demo("ferry-bell-quartet.musicxml"), &out, &other);
    assert!(
        !again.status.success() && text(&again.stderr).contains("and 2 more are there"),
        "{}",
        text(&again.stderr)
    );
}

/// What was made and has not changed stays as it is, byte for byte; a part that changed, or whose file somebody touched, is made again.
#[test]
fn only_parts_that_changed_are_made_again() {
    let folder = tempfile::tempdir().expect("a folder");
    let (score, out) = (folder.path().join("score.musicxml"), folder.path().join("parts"));
    std::fs::copy(demo("ferry-bell-quartet.musicxml"), &score).expect("copied");
    let made_again = |more: &[&str]| -> Vec<String> {
        let said = text(&parts(&score, &out, more).stdout);
        let made = said.lines().filter(|line| line.ends_with("s)") && !line.starts_with(' '));
        made.map(|line| line.split(':').next().unwrap_or_default().to_owned()).collect()
    };
    assert_eq!(made_again(&[]), ["Violin I", "Violin II", "Viola", "Violoncello"]);
    let files = || -> Vec<(PathBuf, Vec<u8>, std::time::SystemTime)> {
        let listed = std::fs::read_dir(&out).expect("a folder").map(|entry| entry.expect("an entry").path());
        let mut listed: Vec<_> = listed
            .map(|path| {
                let written = path.metadata().and_then(|about| about.modified()).expect("a time");
                (path.clone(), std::fs::read(&path).expect("a file"), written)
            })
            .collect();
        listed.sort();
        listed
    };
    let before = files();
    assert!(made_again(&[]).is_empty());
    assert_eq!(files(), before, "nothing was written");
    // Stopped on the way: what is missing is made, and nothing has to be written over.
    std::fs::remove_file(out.join("03-Viola.pdf")).expect("removed");
    std::fs::remove_file(out.join("03-Viola.musicxml")).expect("removed");
    assert_eq!(made_again(&[]), ["Viola"]);
    // A file that somebody touched is no longer the one that was made.
    std::fs::write(out.join("02-Violin-II.musicxml"), "mine").expect("written");
    assert_eq!(parts(&score, &out, &[]).status.code(), Some(2));
    assert_eq!(std::fs::read_to_string(out.join("02-Violin-II.musicxml")).expect("a file"), "mine");
    assert_eq!(made_again(&["--replace"]), ["Violin II"]);
    // One note of one part is another.
    let music = std::fs::read_to_string(&score).expect("a score");
    let cello = music.rfind("<part id").expect("the last part");
    let (above, below) = music.split_at(cello);
    let changed = below.replacen("<octave>3</octave>", "<octave>2</octave>", 1);
    assert_ne!(changed, below);
    std::fs::write(&score, format!("{above}{changed}")).expect("written");
    assert_eq!(made_again(&["--replace"]), ["Violoncello"]);
}

/// The file beside the score says where a page begins; what it asks for in vain is told, and the file stays.
#[test]
fn pages_and_lines_begin_where_the_file_beside_the_score_asks_for_it() {
    let folder = tempfile::tempdir().expect("a folder");
    let (score, out) = (folder.path().join("score.musicxml"), folder.path().join("parts"));
    std::fs::copy(demo("ferry-bell-quartet.musicxml"), &score).expect("copied");
    let music = std::fs::read(&score).expect("a score");
    let document = arcata_xml::Document::parse(music, &arcata_xml::Limits::default()).expect("well-formed");
    let read = arcata_score::read(&document);
    let addresses = arcata_layer::Addresses::new(&read);
    let mut asked = arcata_layer::AskedBreaks::default();
    asked.ask(&addresses, (2, 16), Some(arcata_layer::BreakOpening::Page)).expect("asked");
    asked.ask(&addresses, (2, 5), Some(arcata_layer::BreakOpening::Line)).expect("asked");
    let file = folder.path().join("score.breaks.json");
    let wanted = arcata_layer::write_breaks(&asked);
    std::fs::write(&file, &wanted).expect("written");
    let said = text(&parts(&score, &out, &[]).stdout);
    assert_eq!(
        said.matches("2 pages or lines begin where score.breaks.json asks for it").count(),
        1,
        "{said}"
    );
    let viola = std::fs::read_to_string(out.join("03-Viola.musicxml")).expect("a part");
    let opened = |bar: u32| {
        let (_, bar) = viola.split_once(&format!("<measure number=\"{bar}\"")).expect("the bar");
        bar.split("</measure>").next().unwrap_or_default().to_owned()
    };
    assert!(opened(17).contains("new-page=\"yes\""), "{}", opened(17));
    assert!(opened(6).contains("new-system=\"yes\""), "{}", opened(6));
    // The score says when it was written: archives can take its parts (PDF/A-2b, ISO 19005-2, 6.6.4 and 6.2.3).
    let pdf = std::fs::read(out.join("03-Viola.pdf")).expect("a PDF");
    let says = |what: &str| pdf.windows(what.len()).any(|bytes| bytes == what.as_bytes());
    assert!(says("<pdfaid:part>2</pdfaid:part>") && says("<pdfaid:conformance>B</pdfaid:conformance>"));
    let catalog = Document::load_mem(&pdf).expect("a PDF");
    let intents = catalog.catalog().and_then(|catalog| catalog.get(b"OutputIntents"));
    assert!(intents.is_ok(), "it says which colours it means");
    // Of the parts only the one that is asked for otherwise is made again; a part that is not there is told.
    let other = wanted.replace("\"page\"", "\"line\"");
    let gone = other.replacen("{\"part\":\"Viola\"", "{\"part\":\"Viola da caccia\"", 1);
    std::fs::write(&file, &gone).expect("written");
    let again = parts(&score, &out, &["--replace"]);
    let said = text(&again.stdout);
    assert_eq!(said.matches("as it was made before").count(), 3, "{said}");
    assert!(said.contains("no part is called") && said.contains("Viola da caccia"), "{said}");
    assert_eq!(again.status.code(), Some(1));
    assert_eq!(std::fs::read_to_string(&file).expect("the file"), gone, "nothing is lost");
    // Another file can be named; one that is none is told.
    std::fs::write(folder.path().join("none.json"), "[]").expect("written");
    let named = folder.path().join("none.json");
    let wrong = parts(&score, &out, &["--breaks", named.to_str().expect("a name"), "--replace"]);
    assert_eq!(wrong.status.code(), Some(2));
    assert!(text(&wrong.stderr).contains("none.json"), "{}", text(&wrong.stderr));
}

/// A line in which a bar changed bears an upright line in the outer margin, and the bars are named.
#[test]
fn what_changed_since_it_was_printed_is_marked_in_the_margin() {
    let folder = tempfile::tempdir().expect("a folder");
    let (score, out) = (folder.path().join("score.musicxml"), folder.path().join("parts"));
    std::fs::copy(demo("ferry-bell-quartet.musicxml"), &score).expect("copied");
    parts(&score, &out, &[]);
    let since = out.to_str().expect("a path");
    let said = |more: &[&str]| text(&parts(&score, &out, more).stdout);
    let same = said(&["--since", since, "--replace"]);
    assert_eq!(same.matches("nothing changed since").count(), 4, "{same}");
    let music = std::fs::read_to_string(&score).expect("a score");
    let at = music.find("<measure number=\"3\"").expect("a third bar");
    let (above, below) = music.split_at(at);
    let changed = below.replacen("<step>B</step>", "<step>A</step>", 1);
    std::fs::write(&score, format!("{above}{changed}")).expect("written");
    let second = folder.path().join("second");
    let told = text(&parts(&score, &second, &["--since", since]).stdout);
    assert!(told.contains("1 bar changed since, marked in the margin: 3"), "{told}");
    assert_eq!(told.matches("nothing changed since").count(), 3, "{told}");
    // Where there was nothing before, nothing is marked.
    let third = folder.path().join("third");
    let told = text(&parts(&score, &third, &["--since", folder.path().to_str().expect("a path")]).stdout);
    assert_eq!(told.matches("not there before").count(), 4, "{told}");
}

/// Everything for the stands, read back from the archive: the sums are those of the files, the list names and counts them.
#[test]
fn a_handover_is_whole_and_its_list_is_true() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = |name: &str| folder.path().join(name);
    let run = |arguments: &[&std::ffi::OsStr]| {
        Command::new(assert_cmd::cargo::cargo_bin!("arcata")).args(arguments).output().expect("runs")
    };
    let (clean, layer) = (path("clean.musicxml"), path("leader.json"));
    let score = demo("ferry-bell-quartet.musicxml");
    let lifted = run(&[
        "layer".as_ref(),
        "lift".as_ref(),
        score.as_os_str(),
        "--layer".as_ref(),
        layer.as_os_str(),
        "--out".as_ref(),
        clean.as_os_str(),
    ]);
    assert!(lifted.status.success(), "{}", text(&lifted.stderr));
    let out = path("stands");
    let layer = layer.to_str().expect("a path");
    let arguments = ["--handover", "--pencil", "--stands", "symphony", "--layer", layer];
    let done = parts(&clean, &out, &arguments);
    assert!(matches!(done.status.code(), Some(0 | 1)), "{}", text(&done.stderr));
    let archive = std::fs::File::open(path("stands.zip")).expect("an archive");
    let mut archive = zip::ZipArchive::new(archive).expect("an archive");
    let members = archive.len();
    let mut sums = String::new();
    let member = "stands/sums.sha256";
    std::io::Read::read_to_string(&mut archive.by_name(member).expect("sums"), &mut sums).expect("text");
    assert_eq!(members, sums.lines().count() + 1, "{sums}");
    let list = Document::load(out.join("00-contents.pdf")).expect("a PDF");
    let pages: Vec<u32> = list.get_pages().into_keys().collect();
    let list: String =
        list.extract_text(&pages).expect("text").split_whitespace().collect::<Vec<_>>().join(" ");
    for line in sums.lines() {
        let (sum, name) = line.split_once("  ").expect("a sum and a name");
        let mut bytes = Vec::new();
        let mut packed = archive.by_name(&format!("stands/{name}")).expect("a member");
        std::io::Read::read_to_end(&mut packed, &mut bytes).expect("bytes");
        let own = <sha2::Sha256 as sha2::Digest>::digest(&bytes);
        let own: String = own.iter().map(|byte| format!("{byte:02x}")).collect();
        assert_eq!(own, sum, "{name}");
        assert_eq!(std::fs::read(out.join(name)).expect("a file"), bytes, "{name}");
        assert!(list.contains(name), "{name}: {list}");
    }
    // The seven stands of a symphony's first violins (MOLA's usual counts are the house's; ours are said by `--stands`).
    assert!(list.contains("Violin I 1 7 7"), "{list}");
    // The layer is printed lighter: a grey that nothing else on the page has.
    let pdf = Document::load(out.join("01-Violin-I.pdf")).expect("a PDF");
    let page = *pdf.get_pages().get(&1).expect("a page");
    let content = pdf.get_page_content(page);
    let drawn = Content::decode(&content).expect("operators");
    let forms = pdf.objects.values().filter_map(|object| object.as_stream().ok());
    let inner = forms.filter_map(|stream| {
        stream.decompressed_content().ok().and_then(|content| Content::decode(&content).ok())
    });
    let is_grey = |operation: &lopdf::content::Operation| {
        let shades: Vec<f64> = operation
            .operands
            .iter()
            .filter(|_| matches!(operation.operator.as_str(), "rg" | "g" | "sc" | "scn"))
            .map(number)
            .collect();
        !shades.is_empty() && shades.iter().all(|shade| (shade - 112.0 / 255.0).abs() < 0.01)
    };
    assert!(inner.chain([drawn]).any(|content| content.operations.iter().any(is_grey)), "no sign is lighter");
    // Once more: nothing is written over unless asked.
    assert_eq!(parts(&clean, &out, &arguments).status.code(), Some(2));
}

/// The three profiles that come along can be had, and make parts; what cannot be had together is told, in numbers.
#[test]
fn house_profiles_are_checked_and_the_examples_are_good() {
    let folder = tempfile::tempdir().expect("a folder");
    let check = |profile: &Path| {
        let mut command = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
        command.args(["parts", "--check", "--house"]).arg(profile).output().expect("runs")
    };
    for (name, file) in [
        ("orchestra", "The-Ferry-Bell-01-Violin-I.pdf"),
        ("chamber-letter", "01-Violin-I.pdf"),
        ("large-print", "01-Violin-I.pdf"),
    ] {
        let profile = demo("houses").join(format!("{name}.toml"));
        let said = check(&profile);
        assert!(said.status.success(), "{name}: {}{}", text(&said.stdout), text(&said.stderr));
        let out = folder.path().join(name);
        let profile = profile.to_str().expect("a path");
        let made =
            parts(&demo("ferry-bell-quartet.musicxml"), &out, &["--house", profile, "--part", "Violin I"]);
        assert!(matches!(made.status.code(), Some(0 | 1)), "{name}: {}", text(&made.stderr));
        assert!(out.join(file).exists(), "{name}: {}", text(&made.stdout));
    }
    let wrong = folder.path().join("wrong.toml");
    let wishes = "[paper]\nsides = 30\n[staff]\nheight = 110\napart = 130\nsmallest = 120\n[rests]\ncue = 4\ncue_bars = 6\n";
    std::fs::write(&wrong, wishes).expect("written");
    let said = check(&wrong);
    assert_eq!(said.status.code(), Some(1));
    let told = text(&said.stdout);
    // A4 is 297 mm high; margins of 20 mm and a head of 9 mm leave 268 mm: eleven staves of 11 mm and ten times 13 mm take 251 mm.
    for wanted in [
        "12 lines are asked for on a page",
        "between them 11 fit",
        "smallest staff is higher",
        "cue of 6 bars",
        "margin of 3.0 mm",
    ] {
        assert!(told.contains(wanted), "{wanted}: {told}");
    }
}
