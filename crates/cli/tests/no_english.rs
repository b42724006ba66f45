//! What a command says when something is wrong or passed over is in the language asked for, down to the last clause: commands are
//! walked in English and in the three other languages, and no four words of the English run stand in another.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

use std::path::{Path, PathBuf};

use arcata_layer::{Address, Addresses, Entry, HookSign, Layer, Mark, Spot};
use arcata_score::{BowDirection, Length, NoteId};
use arcata_testkit::musicxml;
use arcata_xml::Document;

/// So many words in a row are English that was left, and no name.
const IN_A_ROW: usize = 4;

/// What is typed in every language, as it is listed in messages, names of parts, a word of three languages, and what stands in scores.
const TYPED: [&str; 12] =
    ["down", "up", "hook", "retake", "violin", "iv", "in", "con", "sordino", "sul", "ponticello", "tasto"];

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// Both streams of a run; `input` is typed in.
fn run(folder: &Path, language: &str, (arguments, input): (&[&str], &str)) -> String {
    let mut arcata = assert_cmd::Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    arcata.current_dir(folder).env("COLUMNS", "120").args(arguments).args(["--language", language]);
    let output = arcata.write_stdin(input).output().expect("runs");
    let both = [output.stdout, output.stderr].concat();
    String::from_utf8_lossy(&both).into_owned()
}

/// The words of a text; what is no word parts them.
fn words(text: &str) -> Vec<String> {
    let plain =
        text.split_whitespace().map(|word| word.trim_matches(|letter: char| !letter.is_alphanumeric()));
    plain.map(str::to_lowercase).collect()
}

/// The rows of words of an English text that stand in another.
fn left(english: &str, other: &str) -> Vec<String> {
    let is_word = |word: &String| {
        !word.is_empty() && word.chars().all(|letter| letter.is_alphabetic() || letter == '\'')
    };
    let other = format!(" {} ", words(other).join(" "));
    let english = words(english);
    let rows = english.windows(IN_A_ROW).filter(|row| row.iter().all(is_word));
    // The heads of a table of severities, and what is typed as it stands.
    let rows = rows.filter(|row| row.iter().any(|word| word.len() > 1 && !TYPED.contains(&word.as_str())));
    rows.map(|row| row.join(" ")).filter(|row| other.contains(&format!(" {row} "))).collect()
}

fn walk(folder: &Path, asks: &[(&[&str], &str)]) {
    let mut found = Vec::new();
    for ask in asks {
        let english = run(folder, "en", *ask);
        assert!(words(&english).len() > IN_A_ROW, "{:?} says nothing: {english}", ask.0);
        for language in ["it", "fr", "de"] {
            let other = run(folder, language, *ask);
            let typed = format!(" {} ", words(ask.1).join(" "));
            for row in left(&english, &other).into_iter().filter(|row| !typed.contains(&format!(" {row} "))) {
                found.push(format!("{language} {:?}: {row}", ask.0));
            }
            assert!(!other.contains(['{', '}', '$']), "{language} {:?}: {other}", ask.0);
            // French sets one blank before a colon, and no sentence holds two.
            assert!(!other.replace("\n  ", "\n").contains(" : : "), "{language} {:?}: {other}", ask.0);
        }
    }
    assert!(found.is_empty(), "{} rows of English are left: {found:#?}", found.len());
}

fn put(folder: &Path, name: &str, bytes: impl AsRef<[u8]>) {
    std::fs::write(folder.join(name), bytes).expect("written");
}

const QUARTET: &str = "violin: 1/4 (C5 D5) E5 F5 | G5 rest A5 B5 | 1/2 C6_ C6 | 1/4 C5 D5 E5 F5\n\
                       viola: 1/4 (C4 D4) E4 F4 | G4 rest A4 B4 | 1/4 C5 B4 A4 G4 | 1/8 C4 D4 1/4 E4 1/2 F4";

/// A score and notes of it by place.
struct Music {
    document: Document,
}

impl Music {
    fn new(text: &str) -> Self {
        Self { document: Document::parse(musicxml(text).into_bytes(), &Default::default()).expect("a score") }
    }

    /// A layer of the owner with marks on notes of the first part.
    fn layer(&self, owner: &str, marks: &[(u32, Mark)]) -> Layer {
        let score = arcata_score::read(&self.document);
        let addresses = Addresses::new(&score);
        let place = |note| addresses.place(0, NoteId(note)).expect("an address");
        Layer {
            owner: owner.into(),
            parts: addresses.part_keys().to_vec(),
            score: arcata_layer::identity::of(&self.document, &score),
            entries: marks.iter().map(|(note, mark)| Entry::new(place(*note), mark.clone())).collect(),
            ..Layer::default()
        }
    }

    fn spot(&self, note: u32) -> Spot {
        let score = arcata_score::read(&self.document);
        Addresses::new(&score).spot(0, NoteId(note)).expect("a spot")
    }
}

/// Reading English stops the test: it finds what was left in another language.
#[test]
fn english_that_was_left_is_found() {
    let english = "Nothing was written; name another folder with --out.";
    assert!(left(english, "Non è stato scritto nulla; indicare un'altra cartella con --out.").is_empty());
    assert_eq!(left(english, "Niente: name another folder with"), ["name another folder with"]);
}

#[test]
fn files_and_what_is_typed() {
    let folder = tempfile::tempdir().expect("a folder");
    let at = folder.path();
    put(at, "score.musicxml", musicxml(QUARTET));
    put(at, "empty.musicxml", "");
    put(at, "plain.musicxml", "no score at all");
    put(at, "other.musicxml", "<?xml version='1.0'?><svg/>");
    put(at, "cut.musicxml", "<score-partwise>\n  <part-list>\n");
    put(at, "crossed.musicxml", "<score-partwise><part></measure></part></score-partwise>");
    put(at, "twice.musicxml", "<score-partwise a='1' a='2'/>");
    put(at, "latin.musicxml", b"<?xml version='1.0' encoding='UTF-8'?><a>\xE9</a>");
    put(at, "package.mxl", b"PK\x03\x04 and nothing more");
    put(at, "wrong.toml", "extends = \"nobody\"\n");
    put(at, "setting.toml", "[hair]\nviolin = \"long\"\n[speeds]\n");
    put(at, "number.toml", "[hair]\nviolin = 9\n");
    let cases: Vec<Vec<&str>> = vec![
        vec!["review", "nothing.musicxml"],
        vec!["review", "empty.musicxml", "plain.musicxml", "other.musicxml", "cut.musicxml"],
        vec!["review", "crossed.musicxml", "twice.musicxml", "latin.musicxml", "package.mxl"],
        vec!["review", "score.musicxml", "--profile", "wrong.toml"],
        vec!["review", "score.musicxml", "--profile", "setting.toml"],
        vec!["review", "score.musicxml", "--profile", "number.toml"],
        vec!["review", "score.musicxml", "--profile", "nobody"],
        vec!["review", "score.musicxml", "--part", "Tuba"],
        vec!["review", "score.musicxml", "--only", "no-such-rule"],
        vec!["review", "score.musicxml", "--movement", "IV"],
        vec!["review", "score.musicxml", "--bars", "99"],
        vec!["review", "score.musicxml", "--bars", "3-1"],
        vec!["review", "score.musicxml", "--bars", "1/x"],
        vec!["review", "score.musicxml", "--bars", "viola: 1-2"],
        vec!["plan", "score.musicxml", "--part", "violin", "--anchor", "1 down"],
        vec!["plan", "score.musicxml", "--part", "violin", "--anchor", "1/1 sideways"],
        vec!["plan", "score.musicxml", "--part", "violin", "--anchor", "1/1"],
        vec!["plan", "score.musicxml", "--part", "violin", "--anchor", "1/2 down"],
        vec!["plan", "score.musicxml", "--part", "violin", "--anchor", "9/2 down"],
        vec!["plan", "score.musicxml", "--part", "violin", "--anchor", "1-2 down"],
        vec!["plan", "score.musicxml", "--part", "violin", "--anchor", "1/n2 down"],
        vec!["plan", "score.musicxml", "--anchor", "1/1 down"],
        vec!["plan", "score.musicxml", "--anchor", "tuba 1/1 down"],
        vec!["plan", "score.musicxml", "--part", "violin", "--end", "8"],
        vec!["plan", "score.musicxml", "--part", "violin", "--end", "1-2 down"],
        vec!["plan", "score.musicxml", "--part", "violin", "--end", "1 sideways"],
        vec!["plan", "score.musicxml", "--part", "violin", "--end", "99 down"],
        vec!["plan", "score.musicxml", "--format", "png"],
        vec!["plan", "score.musicxml", "--marks", "all", "--out", "out.txt"],
        vec!["plan", "score.musicxml", "--marks", "all", "--out", "score.musicxml"],
        vec!["plan", "score.musicxml", "--marks", "all", "--out", "bowed.musicxml"],
        vec!["plan", "score.musicxml", "--marks", "all", "--out", "bowed.mxl"],
        vec!["marks", "bowed.musicxml", "--write", "taken.musicxml"],
        vec!["plan", "score.musicxml", "--marks", "all", "--out", "no/such/folder.musicxml"],
        vec!["rules", "no-such-rule"],
    ];
    let asks: Vec<(&[&str], &str)> = cases.iter().map(|case| (case.as_slice(), "")).collect();
    walk(at, &asks);
}

#[test]
fn a_score_that_contradicts_itself() {
    let folder = tempfile::tempdir().expect("a folder");
    let at = folder.path();
    let score = musicxml("violin: 1/4 C5 D5 E5 F5 | G5 A5 B5 C6");
    let broken = score
        .replacen("<duration>", "<duration>x", 1)
        .replacen(
            "</note>",
            "<notations><slur type=\"start\" number=\"3\"/><tied type=\"start\"/></notations></note>",
            1,
        )
        .replacen("<divisions>", "<divisions>-", 1);
    put(at, "broken.musicxml", &broken);
    let stop = score.replacen(
        "</note>",
        "<notations><slur type=\"stop\" number=\"2\"/><tied type=\"stop\"/></notations></note>",
        1,
    );
    put(
        at,
        "stop.musicxml",
        stop.replacen("<beats>4", "<beats>5", 1).replacen("id=\"P1\">\n", "id=\"P9\">\n", 1),
    );
    walk(at, &[(&["review", "broken.musicxml"], ""), (&["review", "stop.musicxml"], "")]);
    let text = run(at, "it", (&["review", "broken.musicxml"], ""));
    assert!(text.contains("comincia una legatura che non finisce"), "{text}");
}

#[test]
fn layers_and_what_they_pass_over() {
    let folder = tempfile::tempdir().expect("a folder");
    let at = folder.path();
    let music = Music::new(QUARTET);
    put(at, "score.musicxml", musicxml(QUARTET));
    let mut wrong =
        music.layer("one", &[(0, Mark::Up), (0, Mark::Down), (1, Mark::Up), (6, Mark::Retake { bow: None })]);
    let slur = Mark::SlurAdded { to: music.spot(2) };
    wrong.entries.extend(
        music.layer("one", &[(2, slur), (0, Mark::Hook { bow: None, sign: HookSign::Dots })]).entries,
    );
    wrong.entries.extend(
        music
            .layer("one", &[(1, Mark::SlurRemoved { to: music.spot(3) }), (8, Mark::Up), (8, Mark::Up)])
            .entries,
    );
    for (part, bar, beat) in [("tuba", "1", 0), ("violin", "77", 0), ("violin", "2", 1), ("violin", "1", 7)] {
        let spot = Spot::new(bar, Length::new(beat, 4));
        wrong.entries.push(Entry::new(Address { part: part.into(), spot }, Mark::Down));
    }
    wrong.put_in_order();
    put(at, "wrong.json", arcata_layer::write(&wrong));
    let upper = music.layer("two", &[(0, Mark::SlurRemoved { to: music.spot(1) }), (3, Mark::Down)]);
    let lower = music.layer("one", &[(3, Mark::Up)]);
    put(at, "upper.json", arcata_layer::write(&upper));
    put(at, "lower.json", arcata_layer::write(&lower));
    put(at, "broken.json", "{\"format\": \"arcata-layer\", \"version\": 1,\n\"entries\": [\n");
    put(at, "text.json", "no layer");
    put(at, "later.json", "{\"format\": \"arcata-layer\", \"version\": 99}");
    let revised =
        QUARTET.replace("E5 F5 | G5", "E5 G5 | G5").replace("1/2 C6_ C6", "1/8 C6 D6 C6 D6 1/4 E6 F6");
    put(at, "revised.musicxml", musicxml(&revised));
    put(at, "foreign.musicxml", musicxml("violin: 1/4 A4 B4 A4 B4 | C5 B4 A4 G4"));
    let slurs = musicxml(QUARTET)
        .replacen("</note>", "<notations><slur type=\"start\" number=\"5\"/></notations></note>", 1)
        .replacen("type=\"stop\"", "type=\"continue\"", 1);
    put(at, "slurs.musicxml", slurs);
    let cases: Vec<Vec<&str>> = vec![
        vec!["layer", "apply", "score.musicxml", "--layer", "wrong.json", "--out", "a.musicxml"],
        vec!["layer", "check", "score.musicxml", "--layer", "wrong.json"],
        vec!["layer", "check", "foreign.musicxml", "--layer", "wrong.json"],
        vec![
            "layer",
            "apply",
            "score.musicxml",
            "--layer",
            "lower.json",
            "--layer",
            "upper.json",
            "--out",
            "b.musicxml",
        ],
        vec![
            "layer",
            "wipe",
            "score.musicxml",
            "--layer",
            "wrong.json",
            "--any-score",
            "--out",
            "c.musicxml",
        ],
        vec!["layer", "apply", "foreign.musicxml", "--layer", "lower.json", "--out", "d.musicxml"],
        vec![
            "layer",
            "lift",
            "slurs.musicxml",
            "--kind",
            "slurs",
            "--out",
            "e.musicxml",
            "--layer",
            "e.json",
        ],
        vec!["layer", "compare", "lower.json", "upper.json", "--score", "score.musicxml"],
        vec!["layer", "compare", "lower.json", "upper.json"],
        vec![
            "layer",
            "merge",
            "lower.json",
            "upper.json",
            "--out",
            "merged.json",
            "--score",
            "score.musicxml",
        ],
        vec!["layer", "check", "score.musicxml", "--layer", "merged.json"],
        vec!["layer", "spread", "score.musicxml", "--layer", "wrong.json", "--from", "violin"],
        vec![
            "layer",
            "carry",
            "revised.musicxml",
            "--from",
            "score.musicxml",
            "--layer",
            "wrong.json",
            "--out",
            "carried.json",
        ],
        vec!["layer", "check", "score.musicxml", "--layer", "broken.json"],
        vec!["layer", "check", "score.musicxml", "--layer", "text.json"],
        vec!["layer", "check", "score.musicxml", "--layer", "later.json"],
        vec!["layer", "list", "."],
        vec!["layer", "list", "score.musicxml"],
        vec!["layer", "list", "nowhere"],
        vec!["layer", "sheet", "score.musicxml", "--layer", "wrong.json"],
        vec!["layer", "sheet", "foreign.musicxml", "--layer", "wrong.json"],
        vec!["layer", "sheet", "score.musicxml", "--layer", "lower.json", "--format", "pdf"],
        vec!["layer", "sheet", "score.musicxml", "--layer", "lower.json", "--stands", "violin"],
        vec!["layer", "sheet", "score.musicxml", "--layer", "lower.json", "--stands", "violin=many"],
        vec!["layer", "sheet", "score.musicxml", "--layer", "lower.json", "--stands", "tuba=2"],
    ];
    let asks: Vec<(&[&str], &str)> = cases.iter().map(|case| (case.as_slice(), "")).collect();
    walk(at, &asks);
    assert_eq!(Mark::of(BowDirection::Up), Mark::Up);
}

/// Every complaint about shorthand.
#[test]
fn bowings_that_are_typed() {
    let folder = tempfile::tempdir().expect("a folder");
    let at = folder.path();
    put(at, "score.musicxml", musicxml(QUARTET));
    put(at, "latin.txt", b"violin 1/1 down\nviolin \xE9 up\n");
    let typed = "violin 1/1 dwon\n1/1 down\nVoila 1/1 up\nviolin 9 up\nviolin 1/9 up\nviolin 2/2 up\nviolin 1/1½ up\n\
                 violin /3 down\nviolin 3-2 hook\nviolin 1/3-2 hook\nviolin 1-2 hook 12\nviolin 2/3-2/4 no slur\n\
                 violin 1/1-1/2 no slur, 1/2 up\nviolin 1/2 up\nviola 1/1 up, 1/1 down\nviolin 1/1 hook retake\n\
                 violin 1/1 dots\nviolin 1/1 hook dots dashes\nviolin 1/1 slur\nviolin anchor 1/1 lift\n\
                 violin 1/1 down up down retake\nviolin 1/1 as it comes down\nviolin 1/1 up voice\nviolin 1/1 voice 7 up\n\
                 violin 1/x up\nviolin 1( up\nviolin 1/1 \"open\nIV: violin 1/1 up\nviolin 1/1 pitch 5 up\n";
    let enter: &[&str] = &["layer", "enter", "score.musicxml", "--check"];
    let latin: &[&str] = &["layer", "enter", "score.musicxml", "--notes", "latin.txt", "--check"];
    let missing: &[&str] = &["layer", "enter", "score.musicxml", "--notes", "no.txt", "--check"];
    walk(at, &[(enter, typed), (latin, ""), (missing, "")]);
    // What was typed stands below each complaint as it was, with the mark under the place.
    let german = run(at, "de", (enter, "violin 1/1 dwon\n"));
    assert!(german.contains("  violin 1/1 dwon\n             ^^^^"), "{german}");
}

/// All of a rule's page but its sources, of every fourth rule.
#[test]
fn what_rules_say() {
    let folder = tempfile::tempdir().expect("a folder");
    let some = arcata_review::REGISTER.iter().step_by(4).map(|rule| vec!["rules", rule.card.id]);
    let cases: Vec<Vec<&str>> = some.collect();
    let asks: Vec<(&[&str], &str)> = cases.iter().map(|case| (case.as_slice(), "")).collect();
    walk(folder.path(), &asks);
}

#[test]
fn what_is_set_aside_learned_and_handed_in() {
    let folder = tempfile::tempdir().expect("a folder");
    let at = folder.path();
    put(at, "score.musicxml", musicxml(QUARTET));
    put(at, "few.musicxml", musicxml("violin: 1/4 C5!down D5 E5!up F5"));
    put(
        at,
        "broken.aside.toml",
        "format = \"arcata-aside\"\nversion = 1\n[[aside]]\nrule = \"no\"\nreason = \"x\"\n",
    );
    put(at, "empty.aside.toml", "format = \"arcata-aside\"\nversion = 1\n[[aside]]\nreason = \"x\"\n");
    put(
        at,
        "habits.toml",
        "format = \"other\"\nversion = 1\nstyle = \"x\"\nstrokes = 1\n[prices]\n[foreseen]\nstrokes = 1\nbefore = 1\nafter = 1\nerror = 1\n",
    );
    let task = std::fs::read_to_string(root().join("demo/class/task.toml")).expect("a task");
    put(at, "task.toml", &task);
    put(at, "format.toml", task.replace("arcata-task", "arcata-other"));
    put(
        at,
        "titleless.toml",
        task.lines()
            .map(|line| if line.starts_with("title") { "title = \"\"" } else { line })
            .collect::<Vec<_>>()
            .join("\n"),
    );
    put(at, "key.toml", "format = \"other\"\nversion = 1\n[names]\n");
    std::fs::create_dir(at.join("hand-ins")).expect("a folder");
    std::fs::create_dir(at.join("none")).expect("a folder");
    put(&at.join("hand-ins"), "one.musicxml", "<score-partwise><part>");
    put(&at.join("hand-ins"), "two.musicxml", musicxml(QUARTET));
    let aside = |rest: &[&'static str]| [&["aside", "score.musicxml"], rest].concat();
    let cases: Vec<Vec<&str>> = vec![
        aside(&["--rule", "no-such-rule", "--reason", "x"]),
        aside(&["--rule", "slur-outlasts-bow", "--reason", " "]),
        aside(&["--reason", "x"]),
        aside(&["--rule", "slur-outlasts-bow", "--reason", "x"]),
        aside(&["--slur", "phrase", "--bars", "4", "--reason", "x"]),
        aside(&["--bars", "1/1-2/1", "--reason", "x"]),
        aside(&["--bars", "1/n2", "--reason", "x"]),
        aside(&["--bars", "1/1", "--beat", "3", "--reason", "x"]),
        aside(&["--bars", "1(2)", "--reason", "x"]),
        vec!["review", "score.musicxml", "--aside", "broken.aside.toml"],
        vec!["review", "score.musicxml", "--aside", "empty.aside.toml"],
        vec!["review", "score.musicxml", "--aside", "missing.toml"],
        vec!["habits", "learn", "score.musicxml", "--out", "h.toml"],
        vec!["habits", "learn", "few.musicxml", "--out", "h.toml"],
        vec!["habits", "show", "habits.toml"],
        vec!["class", "hand-ins", "--task", "format.toml", "--out", "pages", "--key", "k.toml"],
        vec!["class", "hand-ins", "--task", "titleless.toml", "--out", "pages", "--key", "k.toml"],
        vec!["class", "hand-ins", "--task", "missing.toml", "--out", "pages", "--key", "k.toml"],
        vec!["class", "hand-ins", "--task", "task.toml", "--out", "pages", "--key", "key.toml"],
        vec!["class", "none", "--task", "task.toml", "--out", "pages", "--key", "k.toml"],
        vec!["class", "hand-ins", "--task", "task.toml", "--out", "pages", "--key", "k.toml"],
    ];
    let asks: Vec<(&[&str], &str)> = cases.iter().map(|case| (case.as_slice(), "")).collect();
    walk(at, &asks);
}
