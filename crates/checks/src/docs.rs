//! Pages made from the code: the rules' manual, the player profiles, the constants beside the code, the stops of two notes, and the schemas of what is written as
//! JSON.

use std::collections::BTreeMap;
use std::fs;
use std::path::PathBuf;

use arcata_bow::Profile;
use arcata_examples::{Example, blocks, with_examples};
use arcata_languages::capital;
use arcata_report::Page;
use arcata_review::{Family, REGISTER};
use arcata_testkit::Fixture;

use crate::outcome::{CheckOutcome, Result};
use crate::setting::{CheckSetting, read_text, write};
use crate::{docs_constants, docs_stops};

/// Folders that hold nothing but made pages.
const FOLDERS: [&str; 3] = ["docs/rules", "docs/schema", EXAMPLES];

/// The music of the rules' examples, and the list of it.
const EXAMPLES: &str = "crates/examples/rules";
const EXAMPLES_LIST: &str = "crates/examples/src/table.rs";

/// Writes the pages, or with `--check` only compares them.
pub(crate) fn run(setting: &CheckSetting, arguments: &[String], outcome: &mut CheckOutcome) -> Result<()> {
    let pages = pages(setting)?;
    match arguments {
        [] => write_all(setting, &pages),
        [only] if only == "--check" => compare(setting, &pages, outcome),
        _ => Err("docs takes --check or nothing".to_owned()),
    }
}

/// Every page by its path in the checkout.
fn pages(setting: &CheckSetting) -> Result<BTreeMap<String, String>> {
    let mut pages = BTreeMap::new();
    let mut table = "//! Made by `cargo xtask docs`: the music of each rule's example.\n\n/// Rules with the MusicXML of their \
                     examples.\npub const MUSIC: &[(&str, &str)] = &[\n"
        .to_owned();
    for rule in REGISTER {
        let id = rule.card.id;
        let page = rule.page();
        let music = blocks(&page).concat();
        let fixture = Fixture::parse(&music).map_err(|problem| format!("the example of {id}: {problem}"))?;
        let music = fixture.musicxml();
        let example = Example::read(music.as_bytes())?;
        let file = format!("{id}.musicxml");
        let shown = with_examples(&page, |_| {
            let text = example.text(id, Page::default());
            format!("```text\n{}\n```\n[The example as MusicXML](../../{EXAMPLES}/{file})\n", text.trim_end())
        });
        pages.insert(format!("docs/rules/{id}.md"), shown);
        table.push_str(&format!("    (\"{id}\", include_str!(\"../rules/{file}\")),\n"));
        pages.insert(format!("{EXAMPLES}/{file}"), music);
    }
    pages.insert(EXAMPLES_LIST.to_owned(), format!("{table}];\n"));
    pages.insert("docs/rules/README.md".to_owned(), contents());
    let explained: Vec<(&str, String)> = REGISTER.iter().map(|rule| (rule.card.id, rule.page())).collect();
    let explained = explained.iter().map(|(id, page)| (*id, page.as_str()));
    pages.insert("crates/languages/texts/rules.en.ftl".to_owned(), arcata_languages::rules_file(explained));
    pages.insert("docs/profiles.md".to_owned(), Profile::manual());
    pages.insert("docs/constants.md".to_owned(), docs_constants::page(setting)?);
    pages.insert("docs/stops.md".to_owned(), docs_stops::page());
    let schemas = [
        ("review", arcata_report::review_schema()),
        ("plan", arcata_report::plan_schema()),
        ("marks", arcata_report::marks_schema()),
        ("library", arcata_report::library_schema()),
        ("layer", arcata_layer::schema()),
        ("parts", arcata_report::parts_made_schema()),
        ("class-record", arcata_class::record_schema()),
        ("class-hand", arcata_class::hand_schema()),
        ("class-hand-act", arcata_class::hand_act_schema()),
        ("breaks", arcata_layer::breaks_schema()),
    ];
    for (name, schema) in schemas {
        let text = serde_json::to_string_pretty(&schema).map_err(|problem| problem.to_string())?;
        pages.insert(format!("docs/schema/{name}.schema.json"), format!("{text}\n"));
    }
    Ok(pages)
}

/// The list of rules by chapter.
fn contents() -> String {
    let mut text =
        "# Rules of the review\n\nMade by `cargo xtask docs` from the rules' own files.\n".to_owned();
    for family in Family::ALL {
        let rules: Vec<_> = REGISTER.iter().filter(|rule| rule.card.family == family).collect();
        if rules.is_empty() {
            continue;
        }
        text.push_str(&format!("\n## {}\n\n", capital(family.name())));
        for rule in rules {
            text.push_str(&format!("- [{0}]({0}.md): {1}\n", rule.card.id, rule.card.title));
        }
    }
    text
}

fn write_all(setting: &CheckSetting, pages: &BTreeMap<String, String>) -> Result<()> {
    for folder in FOLDERS {
        let folder = setting.root.join(folder);
        fs::create_dir_all(&folder).map_err(|problem| format!("{}: {problem}", folder.display()))?;
    }
    for path in strangers(setting, pages) {
        println!("removing {}", path.display());
        fs::remove_file(&path).map_err(|problem| format!("{}: {problem}", path.display()))?;
    }
    for (path, text) in pages {
        write(&setting.root.join(path), text)?;
    }
    println!("{} pages written", pages.len());
    Ok(())
}

fn compare(
    setting: &CheckSetting,
    pages: &BTreeMap<String, String>,
    outcome: &mut CheckOutcome,
) -> Result<()> {
    for (path, text) in pages {
        let there = read_text(&setting.root.join(path));
        outcome.check(there.as_ref() == Ok(text), &format!("{path} is up to date; run cargo xtask docs"));
    }
    for path in strangers(setting, pages) {
        outcome.check(false, &format!("{} is made from nothing; run cargo xtask docs", path.display()));
    }
    Ok(())
}

/// Files in the made folders that nothing makes any more.
fn strangers(setting: &CheckSetting, pages: &BTreeMap<String, String>) -> Vec<PathBuf> {
    let mut strangers = Vec::new();
    for folder in FOLDERS {
        let Ok(entries) = fs::read_dir(setting.root.join(folder)) else { continue };
        for path in entries.filter_map(|entry| Some(entry.ok()?.path())) {
            let name = path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
            if !pages.contains_key(&format!("{folder}/{name}")) {
                strangers.push(path);
            }
        }
    }
    strangers.sort();
    strangers
}
