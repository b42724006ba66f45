//! What the crates below say in English has a message in the file `told`, and every message there is said by one of them.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests read the sources")]

use std::path::{Path, PathBuf};

/// Sources whose sentences people read and whose crates know no language.
const SOURCES: [&str; 26] = [
    "files/src",
    "xml/src/attributes.rs",
    "xml/src/container.rs",
    "xml/src/container_error.rs",
    "xml/src/document.rs",
    "xml/src/encoding.rs",
    "xml/src/error.rs",
    "xml/src/open.rs",
    "xml/src/place.rs",
    "xml/src/reading.rs",
    "score/src/read",
    "score/src/places",
    "score/src/model/movement.rs",
    "bow/src/profile/read.rs",
    "layer/src/shorthand",
    "layer/src/format/read.rs",
    "habits/src/file.rs",
    "review/src/aside/read.rs",
    "class/src/key.rs",
    "class/src/hand.rs",
    "class/src/task",
    "engrave/src/engraver.rs",
    "engrave/src/sheet.rs",
    "cli/src/library",
    "desk/src",
    "web/src",
];

/// What else the messages are made of.
const MORE: [&str; 8] = [
    "analysis/src",
    "class/src",
    "cli/src",
    "engrave/src",
    "habits/src",
    "prepare/src/sheet.rs",
    "report/src/paper",
    "workbench/src",
];

/// Literals that are no sentences: names, units, lists of words, SQL, what files hold, and what nobody but a programmer reads.
const NO_SENTENCES: [&str; 31] = [
    "UPDATE",
    "this is where files are opened",
    "the command line is where",
    "a text that is XML begins",
    "middle of the bow",
    "% of the slowest bow",
    "|",
    "SELECT",
    "INSERT",
    "CREATE",
    "DELETE",
    "PRAGMA",
    "format = ",
    "quarters a minute",
    "mm of string",
    "mm along the string",
    "of the hair",
    "your profile",
    // What only a program that asks wrongly is told, and what describes addresses to programmers.
    "utoipa",
    "asks of its server",
    "nothing at this address",
    "asked in another way",
    "address cannot be read",
    "request cannot be read",
    "more than any page sends",
    "numbers with commas between",
    "what leaves is score",
    "cannot be sent",
    "border of a WebAssembly",
    // Names of files, and of who said that a slur is a bow.
    "said at the workbench",
    "what is asked for in the parts",
];

fn below(path: &Path, found: &mut Vec<PathBuf>) {
    if path.is_dir() {
        let entries = std::fs::read_dir(path).unwrap_or_else(|why| panic!("{}: {why}", path.display()));
        let mut paths: Vec<PathBuf> = entries.map(|entry| entry.expect("an entry").path()).collect();
        paths.sort();
        paths.iter().for_each(|path| below(path, found));
    } else if path.extension().is_some_and(|kind| kind == "rs") {
        found.push(path.to_owned());
    }
}

/// The literals of some sources, tests and comments aside, what is written over several lines put together.
fn literals(folders: &[&str]) -> Vec<String> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    let mut paths = Vec::new();
    folders.iter().for_each(|folder| below(&root.join(folder), &mut paths));
    paths.retain(|path| !path.to_string_lossy().contains("tests"));
    let mut found = Vec::new();
    for path in paths {
        let source = std::fs::read_to_string(&path).expect("a source");
        let source = source.split("#[cfg(test)]\nmod tests {").next().unwrap_or_default();
        let code: Vec<&str> = source
            .lines()
            .filter(|line| !line.trim_start().starts_with("//") && !line.trim_start().starts_with("#["))
            .collect();
        let code = code.join("\n").replace("'\"'", "' '");
        let mut letters = code.chars().peekable();
        while letters.by_ref().any(|letter| letter == '"') {
            let mut literal = String::new();
            while let Some(letter) = letters.next() {
                match letter {
                    '"' => break,
                    '\\' => match letters.next() {
                        Some('n') => literal.push('\n'),
                        Some('\n') => while letters.next_if(|letter| letter.is_whitespace()).is_some() {},
                        Some(other) => literal.push(other),
                        None => {}
                    },
                    other => literal.push(other),
                }
            }
            found.push(literal);
        }
    }
    found
}

/// The longest stretch of a text that holds nothing put in; sentences and their remedies are made apart.
fn stretch(text: &str) -> &str {
    let mut longest = "";
    for piece in text.split(['{', '}']).step_by(2).flat_map(|piece| piece.split(['\n'])) {
        for clause in piece.split("; ") {
            let clause = clause.trim_matches([' ', ';', '.', '"']);
            if clause.len() > longest.len() {
                longest = clause;
            }
        }
    }
    longest
}

fn told() -> Vec<String> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("texts/told.en.ftl");
    let text = std::fs::read_to_string(path).expect("the file");
    let messages = text.lines().filter_map(|line| Some(line.split_once(" = ")?.1.replace("{ \"[\" }", "[")));
    messages.collect()
}

#[test]
fn what_crates_below_say_has_a_message() {
    let messages = told().join("\n");
    let mut checked = 0;
    let mut strangers = Vec::new();
    for literal in literals(&SOURCES) {
        let sentence = stretch(literal.strip_prefix("line 1: ").unwrap_or(&literal));
        let words = sentence.split(' ').filter(|word| word.chars().all(char::is_alphabetic)).count();
        if words < 4 || NO_SENTENCES.iter().any(|no| literal.contains(no)) {
            continue;
        }
        checked += 1;
        if !messages.contains(sentence) {
            strangers.push(literal);
        }
    }
    assert!(checked > 150, "only {checked} sentences were looked at");
    assert!(
        strangers.is_empty(),
        "{} sentences have no message in told.*.ftl: {strangers:#?}",
        strangers.len()
    );
}

#[test]
fn every_message_is_said_by_a_crate() {
    let sources = literals(&[&SOURCES[..], &MORE[..]].concat()).join("\n");
    // Some sentences are put together of a few literals: most neighbours in them stand side by side all the same.
    let is_said = |message: &str| {
        let words: Vec<&str> = stretch(message).split(' ').collect();
        let pairs = words.windows(2).filter(|pair| sources.contains(&pair.join(" "))).count();
        sources.contains(stretch(message)) || pairs + 3 >= words.len() && pairs > 0
    };
    // The readers of archives and of TOML say the first three; places are put together of a word or two.
    let own = [
        "invalid Zip",
        "missing field",
        "unknown field",
        "1 beat",
        "bar { $label }, after",
        "bar { $label }, note",
    ];
    let idle: Vec<String> = told()
        .into_iter()
        .filter(|message| !is_said(message) && !own.iter().any(|own| message.contains(own)))
        .collect();
    assert!(idle.is_empty(), "nobody says these: {idle:#?}");
}
