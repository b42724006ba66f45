//! No key is missing in any language, none is left over, and every file is sound Fluent.
#![allow(clippy::disallowed_methods, reason = "the tests read the files of the texts")]

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::PathBuf;

use arcata_languages::{Language, Texts};
use arcata_review::{Family, REGISTER};
use fluent_syntax::ast::Entry;
use fluent_syntax::parser;

fn read(file: &str, language: Language) -> String {
    let path: PathBuf =
        [env!("CARGO_MANIFEST_DIR"), "texts", &format!("{file}.{language}.ftl")].iter().collect();
    fs::read_to_string(&path).unwrap_or_else(|problem| panic!("{}: {problem}", path.display()))
}

/// Each message of a file with its attributes; panics where the file is not sound.
fn keys(file: &str, language: Language) -> BTreeMap<String, BTreeSet<String>> {
    let text = read(file, language);
    let resource = parser::parse(text.as_str())
        .unwrap_or_else(|(_, errors)| panic!("{file}.{language}.ftl is not sound Fluent: {errors:?}"));
    let mut keys = BTreeMap::new();
    for entry in resource.body {
        let Entry::Message(message) = entry else { continue };
        assert!(message.value.is_some(), "{file}.{language}.ftl: {} has no text", message.id.name);
        let attributes = message.attributes.iter().map(|attribute| attribute.id.name.to_owned()).collect();
        let twice = keys.insert(message.id.name.to_owned(), attributes);
        assert!(twice.is_none(), "{file}.{language}.ftl: {} stands twice", message.id.name);
    }
    keys
}

#[test]
fn no_language_lacks_a_key_or_has_one_too_many() {
    for file in [
        "words",
        "rules",
        "class",
        "findings",
        "proposals",
        "pages",
        "commands",
        "reasons",
        "failures",
        "parts",
        "told",
    ] {
        let english = keys(file, Language::English);
        for language in Language::ALL {
            assert_eq!(keys(file, language), english, "{file}.{language}.ftl");
        }
    }
}

#[test]
fn every_rule_and_every_chapter_has_its_texts() {
    let rules: BTreeSet<String> = REGISTER.iter().map(|rule| rule.card.id.to_owned()).collect();
    let explained: BTreeSet<String> = keys("rules", Language::English).into_keys().collect();
    assert_eq!(explained, rules);
    let texts = Texts::new(Language::English);
    for rule in REGISTER {
        let text = texts.rule(rule.card.id).unwrap();
        assert_eq!(text.title, rule.card.title);
    }
    for family in Family::ALL {
        assert_eq!(texts.word(&format!("family-{}", family.name())), family.title());
    }
}

/// A translation says something else than English does, keeps its numbers and the names of rules in it.
#[test]
fn translations_keep_severities_and_names_of_rules() {
    let english = Texts::new(Language::English);
    for language in [Language::Italian, Language::French, Language::German] {
        let texts = Texts::new(language);
        for rule in REGISTER {
            let (from, to) = (english.rule(rule.card.id).unwrap(), texts.rule(rule.card.id).unwrap());
            let unsaid = [&to.title, &to.finds, &to.why, &to.proposes, &to.limits]
                .iter()
                .any(|text| text.contains("[to be said]"));
            assert!(!unsaid, "{} in {language}: something is still to be said", rule.card.id);
            assert_ne!(
                (&from.finds, &from.why),
                (&to.finds, &to.why),
                "{} in {language} is English",
                rule.card.id
            );
            assert!(from.proposes != to.proposes && from.limits != to.limits, "{}: {language}", rule.card.id);
            let sections = [
                (&from.finds, &to.finds),
                (&from.why, &to.why),
                (&from.proposes, &to.proposes),
                (&from.limits, &to.limits),
            ];
            for (from, to) in sections {
                assert_eq!(fixed(from), fixed(to), "{} in {language}: {to}", rule.card.id);
            }
        }
    }
}

/// What a translation must keep: words in backticks and severities in brackets, in any order.
fn fixed(text: &str) -> Vec<String> {
    let ticked = text.split('`').skip(1).step_by(2).map(str::to_owned);
    let weights = ["(A)", "(B)", "(C)", "(D)"];
    let graded = weights.iter().flat_map(|weight| text.matches(weight).map(str::to_owned));
    let mut kept: Vec<String> = ticked.chain(graded).collect();
    kept.sort();
    kept
}

#[test]
fn what_no_file_has_is_said_by_its_key() {
    let texts = Texts::new(Language::French);
    assert_eq!(texts.word("no-such-key"), "no-such-key");
    assert!(texts.rule("no-such-rule").is_none());
    assert!("pt".parse::<Language>().unwrap_err().contains("en, it, fr, de"));
    assert_eq!("it-CH".parse::<Language>(), Ok(Language::Italian));
}
