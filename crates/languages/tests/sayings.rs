//! Every message renders in every language, whatever is put into it, and none is English by accident.
#![allow(
    clippy::disallowed_methods,
    clippy::expect_used,
    reason = "the tests read the files of the texts and the sources"
)]

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use arcata_languages::{Argument, Language, SaidPlace, Saying, Texts, TradeWords};
use arcata_score::Length;
use fluent_syntax::ast::{
    Entry, Expression, InlineExpression, Message, Pattern, PatternElement, Resource, VariantKey,
};
use fluent_syntax::parser;

/// The files of sentences; `rules` and `class` are held to by `keys.rs`.
const FILES: [&str; 8] =
    ["findings", "proposals", "pages", "commands", "reasons", "failures", "parts", "told"];

/// Messages that say the same in English and in another language, and why they may.
const ALIKE: [(&str, &str); 7] = [
    ("handover-pages", "pages is a French word"),
    ("number-", "six is a French word"),
    ("unit-", "a unit has one sign in all languages"),
    ("sign-", "accents and points are French words"),
    ("row-", "a row of a table holds numbers and words that are told apart above"),
    ("told-line", "a name and what follows it"),
    ("calculated-", "amateurs and style are words of two languages"),
];

/// Messages in which nothing but marks and arguments stands, or a word that two languages share.
const SHARED: [&str; 22] = [
    "library-date",
    "library-file",
    "failure-in",
    "failure-of",
    "failure-of-ended",
    "failure-typed",
    "told-place-typed",
    "told-why-of",
    "as-it-is",
    "check-mark",
    "doubtful-said",
    "label",
    "weighed",
    "share",
    "way-best-does",
    "way-does",
    "way-standing",
    "who-does",
    "offer-repair",
    "offer-repair-and-gain",
    "file",
    "in-total",
];

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

fn read(file: &str, language: Language) -> Resource<String> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("texts/{file}.{language}.ftl"));
    let text = fs::read_to_string(&path).unwrap_or_else(|problem| panic!("{}: {problem}", path.display()));
    parser::parse(text).unwrap_or_else(|(_, errors)| panic!("{file}.{language}.ftl: {errors:?}"))
}

/// All messages of the files of sentences in a language.
fn messages(language: Language) -> BTreeMap<String, Message<String>> {
    let all = FILES.into_iter().flat_map(|file| read(file, language).body);
    let messages = all.filter_map(|entry| match entry {
        Entry::Message(message) => Some((message.id.name.clone(), message)),
        _ => None,
    });
    messages.collect()
}

/// What a message does with its arguments.
#[derive(Debug, Default)]
struct Wants {
    /// Names that are printed.
    printed: BTreeSet<String>,
    /// Names that are chosen by, with the cases.
    cases: BTreeMap<String, BTreeSet<String>>,
    /// Names whose last case stands for whatever comes.
    open: BTreeSet<String>,
    /// Messages that it refers to.
    messages: BTreeSet<String>,
}

impl Wants {
    fn of(messages: &BTreeMap<String, Message<String>>, key: &str) -> Self {
        let mut wants = Self::default();
        let (mut left, mut seen) = (vec![key.to_owned()], BTreeSet::new());
        while let Some(key) = left.pop() {
            if !seen.insert(key.clone()) {
                continue;
            }
            let message = messages.get(&key).unwrap_or_else(|| panic!("there is no message {key}"));
            wants.pattern(message.value.as_ref().unwrap_or_else(|| panic!("{key} has no text")));
            left.extend(std::mem::take(&mut wants.messages));
        }
        wants
    }

    fn pattern(&mut self, pattern: &Pattern<String>) {
        for element in &pattern.elements {
            if let PatternElement::Placeable { expression } = element {
                self.expression(expression);
            }
        }
    }

    fn expression(&mut self, expression: &Expression<String>) {
        match expression {
            Expression::Inline(inline) => self.inline(inline, true),
            Expression::Select { selector, variants } => {
                self.inline(selector, false);
                let InlineExpression::VariableReference { id } = selector else { return };
                let cases = self.cases.entry(id.name.clone()).or_default();
                for variant in variants {
                    let (VariantKey::Identifier { name } | VariantKey::NumberLiteral { value: name }) =
                        &variant.key;
                    cases.insert(name.clone());
                    if variant.default && name == "other" {
                        self.open.insert(id.name.clone());
                    }
                }
                for variant in variants {
                    self.pattern(&variant.value);
                }
            }
        }
    }

    fn inline(&mut self, inline: &InlineExpression<String>, printed: bool) {
        match inline {
            InlineExpression::VariableReference { id } if printed => {
                self.printed.insert(id.name.clone());
            }
            InlineExpression::MessageReference { id, .. } => {
                self.messages.insert(id.name.clone());
            }
            InlineExpression::Placeable { expression } => self.expression(expression),
            _ => {}
        }
    }
}

const PLURALS: [&str; 6] = ["zero", "one", "two", "few", "many", "other"];

fn is_number(cases: &BTreeSet<String>) -> bool {
    cases.iter().all(|case| PLURALS.contains(&case.as_str()) || case.parse::<i64>().is_ok())
}

/// The trade's words are there without being put in.
fn is_trade(name: &str) -> bool {
    ["bar-word", "stand-word", "frog-word", "tip-word"].contains(&name)
}

/// Arguments for a message, several times over: small and large, none and many, each case.
fn arguments(all: &[Wants]) -> Vec<Vec<(String, Argument)>> {
    let printed: BTreeSet<&String> = all.iter().flat_map(|wants| &wants.printed).collect();
    let cases = |name: &str| -> BTreeSet<String> {
        all.iter().filter_map(|wants| wants.cases.get(name)).flatten().cloned().collect()
    };
    let names: BTreeSet<String> =
        all.iter().flat_map(|wants| wants.printed.iter().chain(wants.cases.keys())).cloned().collect();
    const FORMS: [&str; 4] = ["-in", "-the", "-word", "-first"];
    let bases: BTreeSet<String> = names
        .iter()
        .filter(|name| !is_trade(name))
        .map(|name| FORMS.iter().find_map(|form| name.strip_suffix(form)).unwrap_or(name).to_owned())
        .collect();
    let has = |base: &str, form: &str| printed.contains(&format!("{base}{form}"));
    let rounds = 12;
    let round = |round: usize| {
        let argument = |base: &String| {
            let cases = cases(base);
            let argument = if has(base, "-in") || has(base, "-the") {
                place(round)
            } else if has(base, "-word") || has(base, "-first") || !cases.is_empty() && is_number(&cases) {
                const NUMBERS: [i64; 12] = [1, 0, 2, 3, 4, 5, 11, 12, 13, 21, 100, 1_000_000];
                Argument::Whole(NUMBERS[round % NUMBERS.len()])
            } else if cases.is_empty() {
                const TEXTS: [&str; 4] =
                    ["mf", "{ $x } \"«„“»\"", "Violoncello II, voice 1 (divisi a 3)", "−12.34"];
                Argument::Text(TEXTS[round % TEXTS.len()].to_owned())
            } else {
                let cases: Vec<String> = cases.into_iter().collect();
                Argument::Choice(String::leak(cases[round % cases.len()].clone()))
            };
            (base.clone(), argument)
        };
        bases.iter().map(argument).collect()
    };
    (0..rounds).map(round).collect()
}

fn place(round: usize) -> Argument {
    let plain = SaidPlace::bar("5").on_beat(Length::new(1, 1));
    match round % 4 {
        0 => plain.into(),
        1 => SaidPlace::bar("12-13a").of_movement(Some("IV")).on_beat(Length::new(37, 16)).into(),
        2 => Argument::Beat(Length::new(7, 2)),
        _ => SaidPlace::bar("1234").into(),
    }
}

fn saying(key: &str, arguments: &[(String, Argument)]) -> Saying {
    let empty = Saying::new(String::leak(key.to_owned()));
    arguments
        .iter()
        .fold(empty, |saying, (name, argument)| saying.with(String::leak(name.clone()), argument.clone()))
}

#[test]
fn every_message_renders_in_every_language_whatever_is_put_into_it() {
    let by_language = Language::ALL.map(messages);
    let words = TradeWords::default();
    let mut rendered = 0;
    for key in by_language[0].keys() {
        let wants: Vec<Wants> = by_language.iter().map(|messages| Wants::of(messages, key)).collect();
        for arguments in arguments(&wants) {
            let saying = saying(key, &arguments);
            for language in Language::ALL {
                let said = Texts::of(language).say(&saying, &words);
                assert!(said != *key || !key.contains('-'), "{key} in {language}: {arguments:?}");
                let leaks = said.replace("{ $x }", "");
                assert!(!leaks.contains(['{', '}', '$']), "{key} in {language}: {said}");
                // What is put behind a word begins with a blank.
                let joined = key == "and-more-places";
                assert!(joined || said.trim() == said, "{key} in {language}: a blank at an end");
                // One blank stands in one text that is put in.
                assert!(!said.contains("  "), "{key} in {language}: two blanks in {said:?}");
                rendered += 1;
            }
        }
    }
    assert!(rendered > 10_000, "{rendered} sentences were made");
}

/// What is told apart in a translation is told apart in English, where the sources name the cases.
#[test]
fn translations_know_no_case_that_english_does_not() {
    let english = messages(Language::English);
    let mut strangers = Vec::new();
    for language in [Language::Italian, Language::French, Language::German] {
        let translated = messages(language);
        for key in english.keys() {
            let (from, to) = (Wants::of(&english, key), Wants::of(&translated, key));
            for (name, cases) in &to.cases {
                if is_number(cases) || from.open.contains(name) {
                    continue;
                }
                let known = from.cases.get(name);
                let known = known.or_else(|| (name == "bow").then_some(cases));
                let strange = known.is_none_or(|known| cases.difference(known).next().is_some());
                if strange {
                    strangers.push(format!("{key} in {language}: ${name}"));
                }
            }
        }
    }
    assert!(strangers.is_empty(), "these have other cases than in English: {strangers:#?}");
}

/// A message that is the same in two languages has a reason.
#[test]
fn no_english_is_left() {
    let by_language = Language::ALL.map(messages);
    let words = TradeWords::default();
    let mut unused: BTreeSet<&str> = SHARED.into_iter().collect();
    let mut idle: BTreeSet<&str> = ALIKE.into_iter().map(|(begins, _)| begins).collect();
    let mut english = Vec::new();
    for key in by_language[0].keys() {
        let wants: Vec<Wants> = by_language.iter().map(|messages| Wants::of(messages, key)).collect();
        let arguments = arguments(&wants);
        for language in [Language::Italian, Language::French, Language::German] {
            let alike = arguments.iter().all(|arguments| {
                let saying = saying(key, arguments);
                let said = |language| Texts::of(language).say(&saying, &words);
                said(language) == said(Language::English)
            });
            if !alike {
                continue;
            }
            idle.retain(|begins| !key.starts_with(begins));
            let shared = unused.remove(key.as_str()) || SHARED.contains(&key.as_str());
            let reason = ALIKE.iter().any(|(begins, _)| key.starts_with(begins));
            if !shared && !reason {
                english.push(format!("{key} in {language}"));
            }
        }
    }
    assert!(english.is_empty(), "these are English: {english:#?}");
    assert!(unused.is_empty(), "these are told apart by now: {unused:?}");
    assert!(idle.is_empty(), "no message that begins so is alike: {idle:?}");
}

/// Every key that the sources ask for is there, and every message is asked for.
#[test]
fn no_key_is_missing_and_none_is_left_over() {
    let english = messages(Language::English);
    let mut sources = String::new();
    for folder in [
        "review",
        "report",
        "analysis",
        "languages",
        "cli",
        "class",
        "desk",
        "workbench",
        "examples",
        "prepare",
        "layer",
        "bow",
        "habits",
        "engrave",
    ] {
        gather(&root().join("crates").join(folder).join("src"), &mut sources);
    }
    let texts = Texts::of(Language::English);
    for begins in ["Saying::new(\"", ".word(\""] {
        for rest in sources.split(begins).skip(1) {
            let key = rest.split('"').next().unwrap_or_default();
            let known = english.contains_key(key) || texts.word(key) != key;
            // Words that are their own key, and keys of other files.
            let own = ["part", "file", "and", "before", "after", "also", "worse", "better"].contains(&key);
            assert!(known || own || key.contains(['{', ' ']), "no message is called {key}");
        }
    }
    let asked: BTreeSet<&str> = sources.split('"').collect();
    let referred: BTreeSet<String> = FILES
        .into_iter()
        .flat_map(|file| read(file, Language::English).body)
        .filter_map(|entry| if let Entry::Message(message) = entry { message.value } else { None })
        .flat_map(|pattern| {
            let mut wants = Wants::default();
            wants.pattern(&pattern);
            wants.messages
        })
        .collect();
    for key in english.keys() {
        // `told.rs` looks after what the crates below say.
        let counted = ["number-", "pitch-", "told-"].iter().any(|begins| key.starts_with(begins));
        assert!(counted || asked.contains(key.as_str()) || referred.contains(key), "nobody says {key}");
    }
}

fn gather(folder: &Path, sources: &mut String) {
    for entry in fs::read_dir(folder).unwrap_or_else(|problem| panic!("{}: {problem}", folder.display())) {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            gather(&path, sources);
        } else if path.extension().is_some_and(|kind| kind == "rs") {
            sources.push_str(&fs::read_to_string(&path).expect("a source"));
        }
    }
}

/// Numbers, seconds, pitches and places as each language has them.
#[test]
fn numbers_places_and_pitches_are_the_languages_own() {
    let words = TradeWords::default();
    let said = |language: Language, argument: Argument| {
        let label = Saying::new("way-does").with("does", argument);
        Texts::of(language).say(&label, &words)
    };
    let [en, it, fr, de] = Language::ALL;
    assert_eq!([en, it].map(|language| said(language, Argument::Seconds(6_240_000))), ["6.2 s", "6,2 s"]);
    assert_eq!([en, de].map(|language| said(language, Argument::Thousandths(1_250))), ["1.25", "1,25"]);
    assert_eq!([en, fr].map(|language| said(language, Argument::Points(-336))), ["-0.34", "-0,34"]);
    // The open G string of a violin, G3 where middle C is C4: sol2 in Italy and France, the small octave in Germany
    // (octave names: Helmholtz, On the Sensations of Tone; the Italian and French count: middle C is do3).
    let strings = Argument::List([5_500, 6_200, 6_900, 7_600].map(Argument::Pitch).to_vec());
    assert_eq!(said(en, strings.clone()), "G3, D4, A4 and E5");
    assert_eq!(said(it, strings.clone()), "sol2, re3, la3 e mi4");
    assert_eq!(said(fr, strings.clone()), "sol2, ré3, la3 et mi4");
    assert_eq!(said(de, strings), "kleines g, eingestrichenes d, eingestrichenes a und zweigestrichenes e");
    assert_eq!(said(de, Argument::Pitch(2_800)), "Kontra-E");
    let there = SaidPlace::bar("12").of_movement(Some("2")).on_beat(Length::new(7, 2));
    let places = Language::ALL.map(|language| said(language, there.clone().into()));
    assert_eq!(
        places,
        [
            "II, bar 12, beat 3½",
            "II, battuta 12, tempo 3½",
            "II, mesure 12, temps 3½",
            "II, Takt 12, Schlag 3½"
        ]
    );
    // What is printed as a place can be typed.
    for place in places {
        let read =
            arcata_score::places::passage(&place).unwrap_or_else(|problem| panic!("{place}: {problem}"));
        assert_eq!((read.movement.as_deref(), read.bars().0.label.as_str()), (Some("II"), "12"), "{place}");
    }
}

/// The sentences that a native speaker would stumble over first: one, none and many; elided articles; capitals.
#[test]
fn plurals_and_cases_follow_the_language() {
    let words = TradeWords::default();
    let said = |language: Language, saying: &Saying| Texts::of(language).say(saying, &words);
    let bars = |count: usize| Saying::new("say-bars-without-number").with("count", count);
    assert_eq!(said(Language::English, &bars(1)), "One bar has no number.");
    assert_eq!(said(Language::Italian, &bars(1)), "Una battuta non ha numero.");
    assert_eq!(said(Language::French, &bars(2)), "Deux mesures n'ont pas de numéro.");
    assert_eq!(said(Language::German, &bars(13)), "13 Takte haben keine Zahl.");
    let mark = Saying::new("say-mark-not-needed")
        .choosing("bow", "up")
        .with("at", SaidPlace::bar("7").on_beat(Length::new(1, 1)));
    assert_eq!(
        said(Language::Italian, &mark),
        "Il segno d'arco in su a battuta 7, tempo 1 non serve: senza il segno l'arcata è la stessa."
    );
    assert_eq!(
        said(Language::French, &mark),
        "Le signe de poussé à la mesure 7, temps 1 n'est pas nécessaire : sans lui, le coup d'archet est le même."
    );
    assert_eq!(
        said(Language::German, &mark),
        "Das Zeichen für einen Aufstrich in Takt 7, Schlag 1 ist nicht nötig: ohne das Zeichen ist der Strich derselbe."
    );
}
