//! The skeleton of a rule: every file that the gate asks for, with its place held. What is still to be said is marked, and the
//! gate stays red until the last mark is gone.

use std::fs;
use std::path::Path;
use std::process::ExitCode;

use crate::places::Folders;

/// What stands where somebody has something to say. Tests refuse a rule or a translation that still has it.
const TO_SAY: &str = "[to be said]";

const NEXT: &str = "\
Now say what is marked with [to be said], and what the rule asks (CONTRIBUTING.md, Adding a rule):

  ARCATA_RENEW=1 cargo test -p arcata-review --test suite   writes what the rule says into its document
  cargo xtask docs                                          writes its page, example and English explanation
  cargo test -p arcata-review -p arcata-languages           the meta-tests
  cargo xtask outside plants worse alarms                   planted in real music; nothing worse; silent on the classics
";

/// A rule that there is none of yet.
struct New<'n> {
    family: &'n str,
    /// `slur-looks-odd`.
    id: &'n str,
}

/// `new-rule FAMILY/NAME`.
pub(crate) fn run(places: &Folders, arguments: &[String]) -> Result<ExitCode, String> {
    let [asked] = arguments else {
        return Err("name one rule with its chapter, such as slurs/slur-looks-odd".to_owned());
    };
    let rule = New::read(asked, &places.root)?;
    let root = places.root.as_path();
    // Everything is made before anything is written: a chapter or a count that is not as expected leaves no half a rule.
    let written = [
        (format!("crates/review/src/rules/{}/{}.rs", rule.family, rule.file()), rule.source()),
        (format!("tests/suite/{}/{}.md", rule.family, rule.id), rule.document()),
        changed(root, "crates/review/src/rules/mod.rs", |text| rule.registered(text))?,
        changed(root, "crates/checks/src/plants/faults.rs", |text| rule.planted(text))?,
        changed(root, "crates/languages/texts/rules.it.ftl", |text| Ok(rule.explained(text)))?,
        changed(root, "crates/languages/texts/rules.fr.ftl", |text| Ok(rule.explained(text)))?,
        changed(root, "crates/languages/texts/rules.de.ftl", |text| Ok(rule.explained(text)))?,
        changed(root, "README.md", counted)?,
    ];
    for (path, text) in &written {
        fs::write(root.join(path), text).map_err(|problem| format!("{path}: {problem}"))?;
        println!("{path}");
    }
    print!("\n{NEXT}");
    Ok(ExitCode::SUCCESS)
}

fn changed(
    root: &Path,
    path: &str,
    change: impl FnOnce(&str) -> Result<String, String>,
) -> Result<(String, String), String> {
    let text = fs::read_to_string(root.join(path)).map_err(|problem| format!("{path}: {problem}"))?;
    change(&text).map(|text| (path.to_owned(), text)).map_err(|problem| format!("{path}: {problem}"))
}

impl<'n> New<'n> {
    fn read(asked: &'n str, root: &Path) -> Result<Self, String> {
        let wrong = || {
            format!(
                "\"{asked}\" is no chapter and name, such as slurs/slur-looks-odd: lower-case words and hyphens"
            )
        };
        let (family, id) = asked.split_once('/').ok_or_else(wrong)?;
        let words: Vec<&str> = id.split('-').collect();
        let is_word =
            |word: &&str| !word.is_empty() && word.chars().all(|letter| letter.is_ascii_lowercase());
        if words.len() < 2 || !words.iter().all(is_word) || !is_word(&family) {
            return Err(wrong());
        }
        let rule = Self { family, id };
        let chapter = root.join("crates/review/src/rules").join(family);
        if !chapter.is_dir() {
            return Err(format!("there is no chapter \"{family}\" in crates/review/src/rules"));
        }
        if chapter.join(format!("{}.rs", rule.file())).exists() {
            return Err(format!("there is a rule {id} already"));
        }
        Ok(rule)
    }

    fn file(&self) -> String {
        self.id.replace('-', "_")
    }

    /// `SlurLooksOdd`.
    fn name(&self) -> String {
        self.id.split('-').map(capital).collect()
    }

    /// `Slur looks odd`.
    fn title(&self) -> String {
        capital(&self.id.replace('-', " "))
    }

    fn source(&self) -> String {
        let (name, title, family) = (self.name(), self.title(), capital(self.family));
        let id = self.id;
        format!(
            r#"//! # {title}
//!
//! ## What it finds
//! {TO_SAY}: what stands on the page, at which weight (C).
//!
//! ## Why it matters
//! {TO_SAY}: what it costs players.
//!
//! ## Example
//! ```music
//! quarter=80
//! violin: mf 1/4 C5 D5!// E5 F5 | 1/1 G5 |||
//! ```
//!
//! ## What it proposes
//! {TO_SAY}: a change and its grade, or nothing.
//!
//! ## What it cannot know
//! {TO_SAY}
//!
//! ## Sources
//! {TO_SAY}: a treatise, counted music, or "common practice".

use arcata_score::{{Articulation, Note, NoteId}};

use crate::{{Card, Family, Findings, Piece, Reads, Rule, Severity}};

/// See the module's page.
#[derive(Debug)]
pub struct {name};

impl Rule for {name} {{
    const CARD: Card = Card {{
        id: "{id}",
        family: Family::{family},
        gravest: Severity::C,
        lightest: Severity::C,
        reads: &[Reads::Marks],
        since: "0.1",
        title: "{title}",
    }};

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {{
        for (part_index, part) in piece.score.parts.iter().enumerate() {{
            if !part.instrument.is_bowed() {{
                continue;
            }}
            for (note, index) in part.notes.iter().zip(0..) {{
                if is_meant(note) {{
                    let draft = found.at_notes(Severity::C, part_index, &[NoteId(index)]);
                    let sentence = format!("At {{}}: {TO_SAY}.", piece.where_is(draft.place()));
                    found.report(draft.say(sentence).cause("{id}"));
                }}
            }}
        }}
    }}
}}

/// What the rule asks of a note: {TO_SAY}.
fn is_meant(note: &Note) -> bool {{
    note.articulations.has(Articulation::Caesura)
}}
"#
        )
    }

    fn document(&self) -> String {
        format!(
            "# {}\n\n## It speaks\n```music\nquarter=80\nviolin: mf 1/4 C5 D5!// E5 F5 | 1/1 G5 |||\n```\n```findings\n```\n\n\
             ## It is silent\n```music\nquarter=80\nviolin: mf 1/4 C5 D5 E5 F5 | 1/1 G5 |||\n```\n```findings\n```\n",
            self.id
        )
    }

    /// The register with the rule as the last of its chapter.
    fn registered(&self, text: &str) -> Result<String, String> {
        let opening = format!("\n    {} {{\n", self.family);
        let begins = text.find(&opening).ok_or("the chapter is not in the register")? + opening.len();
        let ends = begins + text[begins..].find("    }\n").ok_or("the chapter has no end")?;
        let line = format!("        {}: {},\n", self.file(), self.name());
        Ok(format!("{}{line}{}", &text[..ends], &text[ends..]))
    }

    /// The faults with one for the rule.
    fn planted(&self, text: &str) -> Result<String, String> {
        let rest = text.strip_suffix("];\n").ok_or("it does not end with the list of faults")?;
        Ok(format!("{rest}    fault(\"{}\", Any, 96, \"0/4 1/4!// 2/4 3/4\"),\n];\n", self.id))
    }

    /// A language's explanations with the rule's to come.
    fn explained(&self, text: &str) -> String {
        let joint = if text.ends_with('\n') { "" } else { "\n" };
        format!(
            "{text}{joint}\n{} = {}\n    .finds =\n        {{\"{TO_SAY}\"}} (C)\n    .why =\n        {{\"{TO_SAY}\"}}\n",
            self.id,
            self.title()
        )
    }
}

fn capital(word: &str) -> String {
    let mut letters = word.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

const ONES: [&str; 9] = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];
const TENS: [&str; 8] = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

/// The number after one of twenty to ninety-eight, in words.
fn one_more(said: &str) -> Option<String> {
    let lower = said.to_lowercase();
    let (tens, ones) = lower.split_once('-').unwrap_or((&lower, ""));
    let tens = TENS.iter().position(|word| *word == tens)?;
    let ones = if ones.is_empty() { 0 } else { ONES.iter().position(|word| *word == ones)? + 1 };
    let next = match ones {
        9 => (*TENS.get(tens + 1)?).to_owned(),
        ones => format!("{}-{}", TENS[tens], ONES[ones]),
    };
    Some(capital(&next))
}

/// The readme with one rule more.
fn counted(text: &str) -> Result<String, String> {
    const BEHIND: &str = " rules, each with a page";
    let at = text.find(BEHIND).ok_or("it does not count the rules")?;
    let begins = text[..at].rfind(' ').ok_or("it does not count the rules")? + 1;
    let next = one_more(&text[begins..at])
        .ok_or_else(|| format!("\"{}\" is no number of rules", &text[begins..at]))?;
    Ok(format!("{}{next}{}", &text[..begins], &text[at..]))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn rule() -> New<'static> {
        New { family: "slurs", id: "slur-looks-odd" }
    }

    #[test]
    fn a_rule_goes_to_the_end_of_its_chapter() {
        let register = "register! {\n    length {\n        bow_drift: BowDrift,\n    }\n    slurs {\n        nested_slurs: NestedSlurs,\n    }\n    beat {\n    }\n}\n";
        let with = rule().registered(register).unwrap();
        assert!(
            with.contains(
                "        nested_slurs: NestedSlurs,\n        slur_looks_odd: SlurLooksOdd,\n    }\n    beat {"
            ),
            "{with}"
        );
        assert!(New { family: "none", id: "a-b" }.registered(register).is_err());
    }

    #[test]
    fn the_readme_counts_on() {
        assert_eq!(
            counted("- Fifty-nine rules, each with a page").unwrap(),
            "- Sixty rules, each with a page"
        );
        assert_eq!(
            counted("- Sixty rules, each with a page").unwrap(),
            "- Sixty-one rules, each with a page"
        );
        assert!(counted("- Many rules, each with a page").is_err());
    }

    #[test]
    fn names_are_words_with_hyphens_in_a_chapter_that_there_is() {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap();
        for wrong in [
            "slur-looks-odd",
            "slurs/odd",
            "slurs/Slur-odd",
            "none/slur-looks-odd",
            "slurs/nested-slurs",
            "../slurs/a-b",
        ] {
            assert!(New::read(wrong, root).is_err(), "{wrong}");
        }
        assert_eq!(New::read("slurs/slur-looks-odd", root).unwrap().name(), "SlurLooksOdd");
    }

    #[test]
    fn every_file_that_is_changed_is_as_expected() {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap();
        changed(root, "crates/review/src/rules/mod.rs", |text| rule().registered(text)).unwrap();
        changed(root, "crates/checks/src/plants/faults.rs", |text| rule().planted(text)).unwrap();
        changed(root, "README.md", counted).unwrap();
    }
}
