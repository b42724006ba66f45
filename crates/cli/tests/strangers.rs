//! A score comes from a stranger: what stands in its text, and in the names of files, reaches no terminal as a command, no
//! page as markup, no table as a formula. One attacker's string in every field of a score, in turn and in all of them at once,
//! over all ways out.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

use std::collections::BTreeSet;
use std::path::Path;
use std::process::Output;

use arcata_xml::{acts_unseen, seen};
use assert_cmd::Command;
use lopdf::Object;

/// What XML lets through of a terminal's commands (C1), turned text, markup, a formula.
const EVIL: &str = "1+1 \u{9b}31m\u{9d}0;owned\u{9c}\u{7f}\u{85}\u{202e}\u{2066}\u{2028}<script>alert(1)</script>\" onload=\"x\" '&#27;]]>";
/// The same in a file's name, where everything but a stroke may stand.
const EVIL_NAME: &str = "=\u{1b}]0;owned\u{7}\u{1b}[2J\u{202e}<img src=x onerror=alert(1)>\".musicxml";
/// What begins a formula, one for each field in turn.
const FORMULAS: [&str; 6] = ["=", "+", "-", "@", " =", "\t="];

/// Every field of text that is read, or that goes on into pictures and parts.
const SCORE: &str = r#"<score-partwise version="4.0">
 <work><work-number>12</work-number><work-title>Study</work-title></work>
 <movement-number>1</movement-number><movement-title>Harbour</movement-title>
 <identification><creator type="composer">Somebody</creator><rights>Free</rights><encoding><software>Hand</software></encoding>
  <source>A desk</source></identification>
 <credit page="1"><credit-type>title</credit-type><credit-words>Study</credit-words></credit>
 <part-list>
  <part-group number="1" type="start"><group-name>Strings</group-name><group-abbreviation>Str.</group-abbreviation></part-group>
  <score-part id="P1"><part-name>Violin</part-name><part-abbreviation>Vn.</part-abbreviation>
   <score-instrument id="P1-I1"><instrument-name>Violin</instrument-name><instrument-sound>strings.violin</instrument-sound></score-instrument>
  </score-part>
  <score-part id="P2"><part-name>Viola</part-name><part-name-display><display-text>Viola</display-text></part-name-display></score-part>
 </part-list>
 PARTS
</score-partwise>
"#;

const BARS: &str = r#"<part id="ID">
  <measure number="1" width="200">
   <attributes><divisions>2</divisions><key><fifths>0</fifths><mode>major</mode></key><time><beats>4</beats><beat-type>4</beat-type></time><clef><sign>CLEF</sign><line>LINE</line></clef></attributes>
   <direction placement="above"><direction-type><rehearsal>A</rehearsal></direction-type></direction>
   <direction placement="above"><direction-type><words>Allegro</words></direction-type><sound tempo="60"/></direction>
   <direction><direction-type><metronome><beat-unit>quarter</beat-unit><per-minute>60</per-minute></metronome></direction-type></direction>
   <direction><direction-type><dynamics><other-dynamics>f</other-dynamics></dynamics></direction-type><staff>1</staff></direction>
   <note><pitch><step>A</step><alter>0</alter><octave>4</octave></pitch><duration>8</duration><voice>1</voice><type>whole</type><notations><technical><down-bow placement="above"/><fingering>1</fingering></technical><slur type="start" number="1"/></notations><lyric number="1"><syllabic>single</syllabic><text>la</text></lyric></note>
  </measure>
  <measure number="2">
   <direction placement="above"><direction-type><words>at the frog</words></direction-type></direction>
   <note><pitch><step>B</step><octave>4</octave></pitch><duration>8</duration><voice>1</voice><type>whole</type><notations><articulations><other-articulation>x</other-articulation></articulations></notations></note>
  </measure>
  <measure number="3">
   <note><pitch><step>C</step><octave>5</octave></pitch><duration>8</duration><voice>1</voice><type>whole</type><notations><slur type="stop" number="1"/></notations></note>
  </measure>
  <measure number="4">
   <note><pitch><step>A</step><octave>4</octave></pitch><duration>4</duration><voice>1</voice><type>half</type><notations><technical><up-bow/></technical></notations></note>
   <note><rest/><duration>4</duration><voice>1</voice><type>half</type></note>
  </measure>
 </part>"#;

fn score() -> String {
    let parts = [("P1", "G", "2"), ("P2", "C", "3")];
    let parts =
        parts.map(|(id, clef, line)| BARS.replace("ID", id).replace("CLEF", clef).replace("LINE", line));
    SCORE.replace("PARTS", &parts.concat())
}

/// Fields by what holds them: `<words>`, or `type=` of an attribute.
fn fields(score: &str) -> BTreeSet<String> {
    let mut fields = BTreeSet::new();
    for tag in score.split('<').skip(1).filter(|tag| !tag.starts_with('/')) {
        let (markup, text) = tag.split_once('>').expect("a tag ends");
        let mut words = markup.trim_end_matches('/').split_whitespace();
        let name = words.next().unwrap_or_default().to_owned();
        if !text.trim().is_empty() {
            fields.insert(format!("<{name}>"));
        }
        fields
            .extend(words.filter_map(|word| {
                word.split_once('=').map(|(attribute, _)| format!("{name} {attribute}="))
            }));
    }
    fields
}

/// Fields in which words stand that mean nothing to the bow, so that the score stays what it was.
fn is_free(field: &str) -> bool {
    [
        "<work-number>",
        "<work-title>",
        "<movement-number>",
        "<movement-title>",
        "<creator>",
        "<rights>",
        "<software>",
        "<source>",
        "<credit-words>",
        "<group-name>",
        "<group-abbreviation>",
        "<part-abbreviation>",
        "<instrument-name>",
        "<display-text>",
        "<rehearsal>",
        "<words>",
        "<text>",
        "<fingering>",
        "<other-articulation>",
        "<other-dynamics>",
        "<part-name>",
        "measure number=",
        "<mode>",
        "<per-minute>",
    ]
    .contains(&field)
}

/// The score with another text in some fields.
fn with(score: &str, said: &str, chosen: impl Fn(&str) -> bool) -> String {
    let said = said.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;");
    let mut out = String::new();
    let mut rest = score;
    while let Some(at) = rest.find('<') {
        let end = at + rest[at..].find('>').expect("a tag ends") + 1;
        out.push_str(&rest[..at]);
        let tag = &rest[at..end];
        let name: String =
            tag[1..].chars().take_while(|letter| letter.is_alphanumeric() || *letter == '-').collect();
        let mut written = tag.to_owned();
        for word in tag.trim_end_matches(['>', '/']).split_whitespace().skip(1) {
            let Some((attribute, value)) = word.split_once('=') else { continue };
            if chosen(&format!("{name} {attribute}=")) {
                // The two ids of a part stay two and stay the same.
                let value = value.trim_matches('"');
                written = written.replacen(word, &format!("{attribute}=\"{said}{value}\""), 1);
            }
        }
        out.push_str(&written);
        rest = &rest[end..];
        let text = &rest[..rest.find('<').unwrap_or(rest.len())];
        if !text.trim().is_empty() && !tag.starts_with("</") && chosen(&format!("<{name}>")) {
            out.push_str(&said);
            if name == "part-name" {
                out.push_str(text);
            }
            rest = &rest[text.len()..];
        }
    }
    out + rest
}

fn arcata(arguments: &[&str], folder: &Path) -> Output {
    let mut arcata = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    arcata
        .args(arguments)
        .current_dir(folder)
        .timeout(std::time::Duration::from_secs(120))
        .output()
        .expect("ends")
}

/// Text that may go to a terminal, and all that is made of it.
fn harmless<'t>(bytes: &'t [u8], what: &str) -> &'t str {
    let text = std::str::from_utf8(bytes).unwrap_or_else(|_| panic!("{what} is not UTF-8"));
    if let Some(at) = text.find(acts_unseen) {
        let around: String =
            text[..at].chars().rev().take(60).collect::<Vec<_>>().into_iter().rev().collect();
        panic!("{what}: {:?} stands behind {around:?}", text[at..].chars().next());
    }
    text
}

fn no_formula(bytes: &[u8], what: &str) {
    let text = harmless(bytes, what);
    for record in csv::Reader::from_reader(text.as_bytes()).records() {
        for cell in &record.unwrap_or_else(|problem| panic!("{what}: {problem}")) {
            assert!(
                !cell.trim_start().starts_with(['=', '+', '-', '@']),
                "{what}: a spreadsheet would act on {cell:?}"
            );
        }
    }
}

fn sound_json(bytes: &[u8], what: &str) {
    let text = harmless(bytes, what);
    serde_json::from_str::<serde_json::Value>(text).unwrap_or_else(|problem| panic!("{what}: {problem}"));
}

/// The names of elements and of their attributes, as a browser would find them.
fn markup(bytes: &[u8], what: &str) -> BTreeSet<String> {
    let text = harmless(bytes, what);
    let mut names = BTreeSet::new();
    let mut rest = text;
    while let Some(at) = rest.find('<') {
        rest = &rest[at + 1..];
        if !rest.starts_with(|letter: char| letter.is_ascii_alphabetic()) {
            continue;
        }
        let end = rest
            .find(|letter: char| letter.is_whitespace() || matches!(letter, '>' | '/'))
            .unwrap_or(rest.len());
        let element = rest[..end].to_ascii_lowercase();
        rest = &rest[end..];
        names.insert(element.clone());
        loop {
            rest = rest.trim_start_matches(|letter: char| letter.is_whitespace() || letter == '/');
            let end = rest
                .find(|letter: char| letter.is_whitespace() || matches!(letter, '>' | '/' | '='))
                .unwrap_or(rest.len());
            let attribute = &rest[..end];
            rest = &rest[end..];
            if attribute.is_empty() {
                break;
            }
            names.insert(format!("{element} {attribute}"));
            if let Some(value) = rest.strip_prefix('=') {
                let quote = value.chars().next().filter(|quote| matches!(quote, '"' | '\''));
                let quote =
                    quote.unwrap_or_else(|| panic!("{what}: an attribute without quotes, {attribute}"));
                rest = value[1..]
                    .split_once(quote)
                    .unwrap_or_else(|| panic!("{what}: {attribute} does not end"))
                    .1;
            }
        }
        // What stands in these is no markup.
        if matches!(element.as_str(), "script" | "style") {
            let end = format!("</{element}");
            rest = rest.split_once(end.as_str()).map_or("", |(_, rest)| rest);
        }
    }
    names
}

/// A document that does nothing by itself and leads nowhere.
fn idle_pdf(bytes: &[u8], what: &str) {
    let document = lopdf::Document::load_mem(bytes).unwrap_or_else(|problem| panic!("{what}: {problem}"));
    let acting = [
        "JS",
        "JavaScript",
        "OpenAction",
        "AA",
        "A",
        "URI",
        "Launch",
        "EmbeddedFile",
        "EmbeddedFiles",
        "SubmitForm",
        "GoToR",
    ];
    for object in document.objects.values() {
        let dictionary = match object {
            Object::Dictionary(dictionary) => dictionary,
            Object::Stream(stream) => &stream.dict,
            _ => continue,
        };
        for (key, value) in dictionary {
            let key = String::from_utf8_lossy(key);
            let is_action = value
                .as_name()
                .is_ok_and(|name| acting.contains(&String::from_utf8_lossy(name).as_ref()) && name.len() > 1);
            assert!(!acting.contains(&key.as_ref()) && !is_action, "{what}: {key} {value:?}");
        }
    }
}

/// What every variant is asked.
const ASKED: &[&[&str]] = &[
    &["review"],
    &["review", "--format", "json"],
    &["review", "--format", "csv", "--summary", "summary.csv"],
    &["plan"],
    &["plan", "--format", "json"],
    &["plan", "--format", "csv"],
    &["marks"],
    &["marks", "--format", "csv"],
];

#[test]
fn one_string_in_every_field_in_turn() {
    let score = score();
    let fields: Vec<String> = fields(&score).into_iter().collect();
    assert!(fields.len() > 50, "{fields:?}");
    let shares: Vec<Vec<(usize, &String)>> = (0..4)
        .map(|share| fields.iter().enumerate().filter(|(index, _)| index % 4 == share).collect())
        .collect();
    std::thread::scope(|scope| {
        for share in shares {
            let score = &score;
            scope.spawn(move || {
                let folder = tempfile::tempdir().expect("a folder");
                for (index, field) in share {
                    let evil = format!("{}{EVIL}", FORMULAS[index % FORMULAS.len()]);
                    let file = folder.path().join(EVIL_NAME);
                    std::fs::write(&file, with(score, &evil, |name| name == field)).expect("written");
                    for asked in ASKED {
                        let mut arguments = asked.to_vec();
                        arguments.insert(1, EVIL_NAME);
                        let done = arcata(&arguments, folder.path());
                        let what = format!("{field} in {asked:?}");
                        harmless(&done.stderr, &format!("{what}, standard error"));
                        assert!(matches!(done.status.code(), Some(0..=2)), "{what}");
                        match asked.iter().find(|word| matches!(**word, "json" | "csv")) {
                            Some(&"json") => sound_json(&done.stdout, &what),
                            Some(_) => no_formula(&done.stdout, &what),
                            None => _ = harmless(&done.stdout, &what),
                        }
                        if asked.contains(&"--summary") {
                            no_formula(
                                &std::fs::read(folder.path().join("summary.csv")).expect("a summary"),
                                &what,
                            );
                        }
                    }
                }
            });
        }
    });
}

/// The score under a harmless name with some text in all free fields, and what is made of it.
fn made(said: &str, folder: &Path) {
    std::fs::write(folder.join("study.musicxml"), with(&score(), said, is_free)).expect("written");
    let owner = format!("\u{1b}[31m{said}");
    let reason = format!("\u{1b}[31m{}", said.replace('\t', " "));
    let commands: &[&[&str]] = &[
        &[
            "layer",
            "lift",
            "study.musicxml",
            "--kind",
            "bows",
            "--kind",
            "words",
            "--kind",
            "slurs",
            "--layer",
            "tour.json",
            "--out",
            "clean.musicxml",
            "--owner",
            &owner,
            "--title",
            said,
            "--ensemble",
            said,
            "--date",
            said,
        ],
        &["layer", "check", "clean.musicxml", "--layer", "tour.json"],
        &["layer", "apply", "clean.musicxml", "--layer", "tour.json", "--out", "again.musicxml"],
        &["layer", "sheet", "clean.musicxml", "--layer", "tour.json"],
        &["layer", "sheet", "clean.musicxml", "--layer", "tour.json", "--out", "sheet.html"],
        &["layer", "sheet", "clean.musicxml", "--layer", "tour.json", "--out", "sheet.pdf"],
        &["layer", "merge", "tour.json", "tour.json", "--out", "merged.json"],
        &["layer", "enter", "clean.musicxml", "--layer", "tour.json", "--print"],
        &["layer", "list", "."],
        &["layer", "list", ".", "--format", "csv"],
        &["layer", "list", ".", "--format", "json"],
        &["aside", "study.musicxml", "--rule", "slur-outlasts-bow", "--reason", &reason],
        &["review", "study.musicxml"],
        &["review", "study.musicxml", "--format", "csv"],
        &["review", "study.musicxml", "--format", "html", "--out", "review.html", "--tell-all"],
        &["review", "study.musicxml", "clean.musicxml", "--format", "html", "--out", "pages"],
        &["plan", "study.musicxml", "--table", "downbeats", "--format", "csv"],
        &["plan", "study.musicxml", "--bars", said],
        &["plan", "study.musicxml", "--part", said],
        &["plan", "study.musicxml", "--anchor", said],
        &["plan", "study.musicxml", "--format", "svg", "--out", "plan.svg"],
        &["plan", "study.musicxml", "--format", "pdf", "--out", "plan.pdf"],
        &["parts", "study.musicxml", "--out", "parts"],
        &["layer", &owner],
        &[&owner],
    ];
    for command in commands {
        let done = arcata(command, folder);
        let what = format!("{command:?}");
        let errors = harmless(&done.stderr, &what);
        assert!(!errors.contains("panicked"), "{what}: {errors}");
        if command.contains(&"csv") {
            no_formula(&done.stdout, &what);
        } else if command.contains(&"json") {
            sound_json(&done.stdout, &what);
        } else if command.contains(&"--print") {
            // Shorthand is typed in again: in a pipe it is what it is, and a terminal gets it as for people.
            assert!(!done.stdout.is_empty(), "{what}");
        } else {
            harmless(&done.stdout, &what);
        }
    }
}

#[test]
fn one_string_in_all_free_fields_over_all_ways_out() {
    let (evil, plain) = (tempfile::tempdir().expect("a folder"), tempfile::tempdir().expect("a folder"));
    made(&format!("={EVIL}"), evil.path());
    // As long and of the same words, so that music and lines are set alike.
    let letter = |letter: char| if letter.is_alphanumeric() || letter == ' ' { letter } else { 'x' };
    let as_long: String = seen(&format!("={EVIL}")).chars().map(letter).collect();
    made(&as_long, plain.path());
    let read = |folder: &Path, name: &str| {
        std::fs::read(folder.join(name)).unwrap_or_else(|problem| panic!("{name}: {problem}"))
    };
    let mut marked_up = vec!["review.html".to_owned(), "sheet.html".to_owned(), "plan.svg".to_owned()];
    for entry in std::fs::read_dir(evil.path().join("pages")).expect("the pages") {
        marked_up
            .push(format!("pages/{}", entry.expect("an entry").file_name().into_string().expect("text")));
    }
    assert!(marked_up.len() > 5, "{marked_up:?}");
    for name in &marked_up {
        let (evil, plain) = (markup(&read(evil.path(), name), name), markup(&read(plain.path(), name), name));
        let new: Vec<&String> = evil.difference(&plain).collect();
        assert!(new.is_empty(), "{name} has what no harmless score has: {new:?}");
    }
    for name in ["plan.pdf", "sheet.pdf"] {
        idle_pdf(&read(evil.path(), name), name);
    }
    sound_json(&read(evil.path(), "tour.json"), "the layer");
    let aside = String::from_utf8(read(evil.path(), "study.aside.toml")).expect("text");
    harmless(aside.as_bytes(), "the file of what is set aside");
    let parts: Vec<String> = std::fs::read_dir(evil.path().join("parts"))
        .expect("the parts")
        .map(|entry| entry.expect("an entry").file_name().into_string().expect("text"))
        .collect();
    assert_eq!(parts.len(), 5, "two parts in two forms, and what they were made from: {parts:?}");
    for name in parts {
        assert!(name.chars().all(|letter| letter.is_alphanumeric() || "-.".contains(letter)), "{name}");
        let bytes = read(&evil.path().join("parts"), &name);
        if name == "parts.json" {
            sound_json(&bytes, &name);
        } else if name.ends_with(".pdf") {
            idle_pdf(&bytes, &name);
        } else {
            arcata_xml::open_score(bytes, &arcata_xml::Limits::default()).expect("a part is a score");
        }
    }
}
