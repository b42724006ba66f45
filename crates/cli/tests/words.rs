//! One thing has one name: `docs/words.md` against messages, manual and dictionaries.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the test reads the sources")]

use std::path::{Path, PathBuf};

/// Crates whose texts people read.
const CRATES: [&str; 12] = [
    "class",
    "cli",
    "desk",
    "engrave",
    "files",
    "habits",
    "layer",
    "prepare",
    "report",
    "review",
    "web",
    "workbench",
];

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

fn read(path: &Path) -> String {
    std::fs::read_to_string(path).unwrap_or_else(|why| panic!("{}: {why}", path.display()))
}

/// All files of some endings below a folder, in order.
fn below(folder: &Path, endings: &[&str], found: &mut Vec<PathBuf>) {
    let entries = std::fs::read_dir(folder).expect("a folder");
    let mut paths: Vec<PathBuf> = entries.map(|entry| entry.expect("an entry").path()).collect();
    paths.sort();
    for path in paths {
        let is_wanted = path.extension().is_some_and(|own| endings.iter().any(|ending| own == *ending));
        if path.is_dir() {
            below(&path, endings, found);
        } else if is_wanted {
            found.push(path);
        }
    }
}

/// The rows of the table below a heading, cell by cell.
fn table(page: &str, heading: &str) -> Vec<Vec<String>> {
    let after = page.split(&format!("## {heading}\n")).nth(1).expect("the heading");
    let section = after.split("\n## ").next().unwrap_or_default();
    let rows = section.lines().filter(|line| line.starts_with('|')).skip(2);
    let cells = |line: &str| line.trim_matches('|').split('|').map(|cell| cell.trim().to_owned()).collect();
    let rows: Vec<Vec<String>> = rows.map(cells).collect();
    assert!(rows.len() > 20, "the table \"{heading}\" holds {} rows", rows.len());
    rows
}

/// What a Rust file says: its strings, without comments and tests; the help texts of the command line are comments.
fn said_by_source(path: &Path) -> String {
    let source = read(path);
    let source = source.split("#[cfg(test)]").next().unwrap_or_default();
    let is_help = path.file_name().is_some_and(|name| name.to_string_lossy().contains("args"));
    let mut said = String::new();
    let mut code = String::new();
    for line in source.lines() {
        match line.trim_start() {
            line if is_help && line.starts_with("///") => said.push_str(&format!("{}\n", &line[3..])),
            line if line.starts_with("//") => {}
            line => code.push_str(&format!("{line}\n")),
        }
    }
    let mut letters = code.chars();
    while letters.by_ref().any(|letter| letter == '"') {
        let mut is_escaped = false;
        for letter in letters.by_ref() {
            match letter {
                '"' if !is_escaped => break,
                '\n' if is_escaped => {}
                letter => said.push(letter),
            }
            is_escaped = letter == '\\' && !is_escaped;
        }
        said.push('\n');
    }
    said.replace("\\\n", "")
}

/// What a page says: what stands in backquotes, and links, are names of files, keys and ids.
fn said_by_page(path: &Path) -> String {
    let mut said = String::new();
    for (index, piece) in read(path).split('`').enumerate() {
        said.push_str(if index % 2 == 0 { piece } else { "…" });
    }
    let mut out = String::new();
    let mut rest = said.as_str();
    while let Some((before, after)) = rest.split_once("](") {
        out.push_str(before);
        rest = after.split_once(')').map_or("", |(_, after)| after);
    }
    out + rest
}

/// Lower case, one blank between words.
fn plain(text: &str) -> String {
    text.to_lowercase().split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Whether a phrase stands in a text as whole words.
fn holds(text: &str, phrase: &str) -> bool {
    let inside = |letter: char| letter.is_alphanumeric() || matches!(letter, '-' | '_');
    text.match_indices(phrase).any(|(at, _)| {
        !text[..at].ends_with(inside)
            && (phrase.ends_with(':') || !text[at + phrase.len()..].starts_with(inside))
    })
}

#[test]
fn no_text_says_what_was_replaced() {
    let strangers = table(&read(&root().join("docs/words.md")), "Replaced");
    assert!(strangers.len() > 30, "only {} rows", strangers.len());
    let mut texts: Vec<(PathBuf, String)> = Vec::new();
    for name in CRATES {
        let mut sources = Vec::new();
        below(&root().join("crates").join(name).join("src"), &["rs"], &mut sources);
        sources.retain(|path| !path.to_string_lossy().contains("tests"));
        texts.extend(sources.into_iter().map(|path| (path.clone(), said_by_source(&path))));
    }
    let mut pages = Vec::new();
    below(&root().join("docs"), &["md"], &mut pages);
    pages.extend(["README.md", "UNSUPPORTED.md", "demo/README.md"].map(|name| root().join(name)));
    pages.retain(|path| !path.ends_with("docs/words.md"));
    texts.extend(pages.into_iter().map(|path| (path.clone(), said_by_page(&path))));
    let mut dictionaries = vec![root().join("crates/workbench/page/words.mjs")];
    below(&root().join("crates/languages/texts"), &["ftl"], &mut dictionaries);
    texts.extend(dictionaries.into_iter().map(|path| (path.clone(), read(&path))));
    assert!(texts.len() > 300, "only {} texts", texts.len());
    let mut found = Vec::new();
    for (path, text) in &texts {
        let text = plain(text);
        for row in &strangers {
            if holds(&text, &plain(&row[0])) {
                found.push(format!("{} says \"{}\": say \"{}\"", path.display(), row[0], row[1]));
            }
        }
    }
    assert!(found.is_empty(), "{} strangers:\n{}", found.len(), found.join("\n"));
}

/// What a command prints, and what it says beside; never a failure.
fn printed(arguments: &[&str]) -> String {
    let mut arcata = assert_cmd::Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    let done = arcata.current_dir(root()).args(arguments).output().expect("runs");
    assert!(done.status.code().is_some_and(|code| code < 2), "{arguments:?}");
    String::from_utf8(done.stdout).expect("UTF-8") + &String::from_utf8_lossy(&done.stderr)
}

#[test]
fn one_word_for_bar_holds_in_every_sentence() {
    let quartet = "demo/ferry-bell-quartet.musicxml";
    let asked: [&[&str]; 6] = [
        &["review", "demo"],
        &["plan", quartet, "--bars", "13-16", "--alternatives", "2"],
        &[
            "plan",
            quartet,
            "--part",
            "Violin I",
            "--bars",
            "13-16",
            "--anchor",
            "14/1 down",
            "--repairs",
            "1",
        ],
        &["plan", quartet, "--part", "Viola", "--end", "8 up"],
        &["plan", quartet, "--table", "downbeats"],
        &["marks", "demo/kite-signals.musicxml"],
    ];
    for arguments in asked {
        let british = plain(&printed(&[&["--terms", "british"], arguments].concat()));
        let american = plain(&printed(&[&["--terms", "american"], arguments].concat()));
        assert!(holds(&british, "bar") || holds(&british, "bars"), "{arguments:?}");
        assert!(!holds(&british, "measure") && !holds(&british, "measures"), "{arguments:?}");
        for word in ["bar", "bars"] {
            let at = american.find(&format!(" {word} ")).unwrap_or_default();
            let near: String = american.chars().skip(at.saturating_sub(60)).take(140).collect();
            assert!(!holds(&american, word), "{arguments:?} says {word}: {near}");
        }
    }
}

#[test]
fn strangers_are_found_in_strings_and_on_pages_and_not_in_ids() {
    assert!(holds("the layer is not carried: because", "not carried:"));
    assert!(holds("two decisions here", "decisions") && !holds("undecided", "decided"));
    assert!(!holds("landmarks-too-far", "landmarks"));
    let said = said_by_source(&root().join("crates/cli/src/layer_enter.rs"));
    assert!(said.contains("is not UTF-8 text") && !said.contains("pub(crate)"), "{said}");
}

#[test]
fn the_dictionaries_of_the_page_say_the_terms_as_the_table_does() {
    let terms = table(&read(&root().join("docs/words.md")), "Terms");
    let dictionaries = read(&root().join("crates/workbench/page/words.mjs"));
    let of = |name: &str| {
        let start = dictionaries.split(&format!("const {name} = {{")).nth(1).expect("the dictionary");
        start.split("\n};").next().unwrap_or_default().replace('’', "'")
    };
    let languages = ["ENGLISH", "ITALIAN", "FRENCH", "GERMAN"].map(of);
    let mut held = 0;
    for row in &terms {
        assert!(row.iter().take(4).all(|cell| !cell.is_empty()), "{row:?}: a language says nothing");
        assert!(!row[5].is_empty(), "{row:?}: no meaning");
        let key = row[4].trim_matches('`');
        if key.is_empty() {
            continue;
        }
        for (dictionary, term) in languages.iter().zip(row) {
            let term = term.split(", measure").next().unwrap_or_default();
            let entry = format!("{key}: \"{term}\"");
            assert!(
                dictionary.contains(&format!(" {entry}")),
                "the page does not say {entry}: make the table and crates/workbench/page/words.mjs agree"
            );
            held += 1;
        }
    }
    assert!(held >= 60, "only {held} terms were compared");
}
