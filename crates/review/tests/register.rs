//! The register keeps its promises: one rule, one name, one file, one page, one test document.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the test looks at the rules' own files")]

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use arcata_review::{HEADINGS, REGISTER, Registered, rule};
use arcata_testkit::Fixture;

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

fn files_in(folder: &Path, ending: &str) -> BTreeSet<String> {
    let entries = std::fs::read_dir(folder).unwrap_or_else(|error| panic!("{}: {error}", folder.display()));
    entries
        .map(|entry| entry.expect("a readable folder").file_name().to_string_lossy().into_owned())
        .filter(|name| name.ends_with(ending))
        .collect()
}

/// The text under a heading of a page.
fn section<'a>(page: &'a str, heading: &str) -> Option<&'a str> {
    let from = page.find(&format!("## {heading}\n"))? + heading.len() + 4;
    let rest = &page[from..];
    Some(rest[..rest.find("\n## ").unwrap_or(rest.len())].trim())
}

fn music(page: &str) -> Option<&str> {
    let example = section(page, "Example")?;
    let from = example.find("```music\n")? + "```music\n".len();
    example[from..].split("```").next()
}

#[test]
fn every_page_has_all_headings_with_something_under_them() {
    for rule in REGISTER {
        let page = rule.page();
        assert!(page.starts_with(&format!("# {}\n", rule.card.title)), "{}: title", rule.card.id);
        for heading in HEADINGS {
            let text = section(&page, heading).unwrap_or_default();
            assert!(!text.is_empty(), "{}: nothing under \"{heading}\"", rule.card.id);
        }
        let found = page.lines().filter(|line| line.starts_with("## ")).count();
        assert_eq!(found, HEADINGS.len(), "{}: headings", rule.card.id);
        // What `cargo xtask new-rule` leaves to its writer.
        assert!(!page.contains("[to be said]"), "{}: something is still to be said", rule.card.id);
    }
}

#[test]
fn every_example_is_a_fixture_on_which_the_rule_speaks() {
    for rule in REGISTER {
        let page = rule.page();
        let music = music(&page).unwrap_or_else(|| panic!("{}: no example", rule.card.id));
        let fixture = Fixture::parse(music).unwrap_or_else(|error| panic!("{}: {error}", rule.card.id));
        let read = support::Read::new(fixture.musicxml().into_bytes(), &arcata_bow::Profile::default());
        let found = read.review(&support::only(rule.card.id));
        assert!(!found.is_empty(), "{}: its example shows nothing", rule.card.id);
    }
}

#[test]
fn names_are_legal_and_unique() {
    // A name says what is wrong, so it may not open like an order to the writer.
    let remedies = ["add", "split", "hook", "write", "mark-the", "remove", "use", "avoid", "no-more"];
    let mut seen = BTreeSet::new();
    for Registered { card, file, .. } in REGISTER {
        let words: Vec<&str> = card.id.split('-').collect();
        let lower = |word: &&str| !word.is_empty() && word.chars().all(|c| c.is_ascii_lowercase());
        assert!(words.len() >= 2 && words.iter().all(lower), "{}: lower-case words and hyphens", card.id);
        assert!(!remedies.iter().any(|remedy| card.id.starts_with(&format!("{remedy}-"))), "{}", card.id);
        assert_eq!(*file, format!("{}.rs", card.id.replace('-', "_")), "{}: file name", card.id);
        assert!(card.gravest <= card.lightest, "{}: severities", card.id);
        assert!(!card.title.ends_with('.'), "{}: title", card.id);
        assert!(seen.insert(card.id), "{}: twice", card.id);
        assert!(rule(card.id).is_some(), "{}", card.id);
    }
}

#[test]
fn nothing_is_unregistered_and_every_rule_has_its_document() {
    for family in arcata_review::Family::ALL {
        let of_family: Vec<&Registered> = REGISTER.iter().filter(|r| r.card.family == family).collect();
        let code = root().join("src/rules").join(family.name());
        let documents = root().join("../../tests/suite").join(family.name());
        if of_family.is_empty() {
            assert!(!code.exists() || files_in(&code, ".rs").is_empty(), "{}", family.name());
            continue;
        }
        let files: BTreeSet<String> = of_family.iter().map(|rule| rule.file.to_owned()).collect();
        assert_eq!(files_in(&code, ".rs"), files, "{}: rule files and register differ", family.name());
        let named: BTreeSet<String> = of_family.iter().map(|rule| format!("{}.md", rule.card.id)).collect();
        assert_eq!(files_in(&documents, ".md"), named, "{}: documents and register differ", family.name());
    }
}

/// A number below a hundred as a sentence begins with it.
fn in_words(number: usize) -> String {
    const SMALL: [&str; 20] = [
        "Zero",
        "One",
        "Two",
        "Three",
        "Four",
        "Five",
        "Six",
        "Seven",
        "Eight",
        "Nine",
        "Ten",
        "Eleven",
        "Twelve",
        "Thirteen",
        "Fourteen",
        "Fifteen",
        "Sixteen",
        "Seventeen",
        "Eighteen",
        "Nineteen",
    ];
    const TENS: [&str; 8] = ["Twenty", "Thirty", "Forty", "Fifty", "Sixty", "Seventy", "Eighty", "Ninety"];
    match (number / 10, number % 10) {
        (0 | 1, _) => SMALL[number].to_owned(),
        (tens, 0) => TENS[tens - 2].to_owned(),
        (tens, ones) => format!("{}-{}", TENS[tens - 2], SMALL[ones].to_lowercase()),
    }
}

#[test]
fn the_readme_counts_the_rules() {
    let readme = std::fs::read_to_string(root().join("../../README.md")).unwrap();
    let said = format!("- {} rules, each with a page", in_words(REGISTER.len()));
    assert!(readme.contains(&said), "README.md does not say \"{said}\"");
}

#[test]
fn findings_keep_to_their_card() {
    for rule in REGISTER {
        let page = rule.page();
        let Some(music) = music(&page) else { continue };
        let fixture = Fixture::parse(music).expect("see the test of the examples");
        let read = support::Read::new(fixture.musicxml().into_bytes(), &arcata_bow::Profile::default());
        for finding in read.review(&support::only(rule.card.id)) {
            let range = rule.card.gravest..=rule.card.lightest;
            assert!(range.contains(&finding.severity), "{}: {}", rule.card.id, finding.severity);
            assert_eq!(finding.count as usize, finding.further.len() + 1, "{}", rule.card.id);
            let sentence = arcata_languages::Wording::default().say(&finding.sentence);
            assert!(sentence.ends_with(['.', '?']), "{}: {sentence}", rule.card.id);
        }
    }
}

mod support;
