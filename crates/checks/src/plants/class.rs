//! A class of a hundred: each hand-in is thirty bars of a real quartet with one fault planted in it. The sheet's three passages
//! must hold the fault where it is the gravest, nothing may be praised where anything was found, and every sheet must be one page
//! of PDF with text and tags.
//!
//! The music is that of music21's corpus, as for the other plants; which fault is where is known because it was planted.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::Arc;

use arcata_analysis::{Config, Ground, Snapshot, Source};
use arcata_class::{Concealed, GivenMaterial, LookAtHandIn, Task, Touch, Words, generic_names};
use arcata_languages::Language;
use arcata_review::{AtOnePlace, Finding, ReviewSettings};
use arcata_testkit::{Fixture, Random};
use rayon::prelude::*;
use serde_json::Value;

use super::alike;
use super::faults::{FAULTS, FigurePlace, PlantedFault};
use super::passage::{PlantPassage, stretch};
use super::{Planted, plant};
use crate::outcome::{CheckOutcome, Result};
use crate::setting::{CheckSetting, read, write};
use crate::{alarms, scores};

/// Hand-ins, bars of each, and works whose bars are used at least.
const CLASS: usize = 100;
const BARS: usize = 30;
const WORKS: usize = 8;
/// Places that are tried for a hand-in.
const TRIED: usize = 12;
/// Of a hundred hand-ins whose planted fault is the gravest, those whose passages hold it.
const HELD: usize = 90;

/// The task, and the languages in which each has a sheet.
const TASK: &str = "format = \"arcata-task\"\nversion = 1\ntitle = \"Planted\"\n";
const LANGUAGES: [Language; 2] = [Language::English, Language::German];

/// A hand-in and what is wrong with it.
struct PlantedHandIn {
    rule: &'static str,
    planted: Planted,
    musicxml: String,
}

/// What its sheet shows.
struct CheckedSheet {
    rule: &'static str,
    /// Whether the planted fault was found at all, is as grave as anything, and is among the passages.
    found: bool,
    gravest: bool,
    held: bool,
    /// Bars that are praised though something was found there.
    wrongly: Vec<(usize, u32)>,
    praised: usize,
}

/// Plants, looks, counts; then has the program make the sheets.
pub(crate) fn check(setting: &CheckSetting, outcome: &mut CheckOutcome) -> Result<()> {
    let mut works: Vec<PlantPassage> = Vec::new();
    for path in alarms::works(setting)? {
        works.extend(stretch(&arcata_score::read(&scores::document(&path)?), BARS));
    }
    println!("{} works with {BARS} bars that can be written", works.len());
    outcome.check(works.len() >= WORKS, &format!("there are {WORKS} works to cut hand-ins from"));
    if works.is_empty() {
        return Ok(());
    }
    let hand_ins = hand_ins(&works);
    outcome.check(hand_ins.len() == CLASS, &format!("{CLASS} hand-ins are made, not {}", hand_ins.len()));
    let task = Task::read(TASK).map_err(|error| error.to_string())?;
    let sheets: Vec<CheckedSheet> =
        hand_ins.par_iter().map(|hand_in| sheet(hand_in, &task)).collect::<Result<_>>()?;
    let found = sheets.iter().filter(|sheet| sheet.found).count();
    let gravest: Vec<&CheckedSheet> = sheets.iter().filter(|sheet| sheet.gravest).collect();
    let held = gravest.iter().filter(|sheet| sheet.held).count();
    let all_held = sheets.iter().filter(|sheet| sheet.held).count();
    let praised: usize = sheets.iter().map(|sheet| sheet.praised).sum();
    println!(
        "{} hand-ins, {found} of the faults found; of {} that are the gravest {held} are among the passages, of all {all_held}",
        sheets.len(),
        gravest.len()
    );
    for sheet in gravest.iter().filter(|sheet| !sheet.held) {
        println!("  not among the passages: {}", sheet.rule);
    }
    println!("{praised} things praised");
    outcome.check(
        gravest.len() >= CLASS / 4,
        "a quarter of the faults or more are the gravest of their hand-in",
    );
    outcome.check(
        held * 100 >= gravest.len() * HELD,
        &format!("{HELD} % of the gravest faults are among the passages"),
    );
    for sheet in &sheets {
        outcome.check(sheet.wrongly.is_empty(), &format!("{}: praised {:?}", sheet.rule, sheet.wrongly));
    }
    outcome.check(praised >= CLASS / 4, "something is praised in this class");
    alike::check(setting, outcome)?;
    pages(setting, &hand_ins, outcome)
}

/// The faults one after the other, each in a work drawn by chance.
fn hand_ins(works: &[PlantPassage]) -> Vec<PlantedHandIn> {
    let mut random = Random::new(30);
    // A part alone is no quartet, and what lies beside a score is in no hand-in.
    let faults: Vec<&PlantedFault> =
        FAULTS.iter().filter(|fault| fault.place != FigurePlace::Alone).collect();
    let mut all = Vec::new();
    for number in 0..CLASS {
        let fault = faults[number % faults.len()];
        for _ in 0..TRIED {
            let Some(planted) = plant(fault, random.pick(works), &mut random) else { continue };
            let Ok(fixture) = Fixture::parse(&planted.faulty.text()) else { continue };
            all.push(PlantedHandIn { rule: fault.rule, musicxml: fixture.musicxml(), planted });
            break;
        }
    }
    all
}

fn sheet(hand_in: &PlantedHandIn, task: &Task) -> Result<CheckedSheet> {
    let mut source = Source::open(hand_in.musicxml.clone().into_bytes())?;
    generic_names(&mut source.score);
    let snapshot = Snapshot::new(Arc::new(Ground::new(source, Config::usual())));
    let look = LookAtHandIn::new(&snapshot, task);
    let touch = Touch::default();
    let chosen = look.chosen(&touch);
    let is_it = |finding: &&Finding| {
        finding.rules().any(|rule| rule == hand_in.rule) && hand_in.planted.holds(finding)
    };
    let own = look.findings.iter().filter(is_it).map(|finding| finding.severity).min();
    let gravest = look.findings.iter().map(|finding| finding.severity).min();
    let shown = look.shown((&chosen, &touch), Vec::new(), &GivenMaterial::default(), &Concealed::default());
    // Each rule by itself, counted anew: not by what the sheet was made from.
    let apart = ReviewSettings { places: AtOnePlace::Apart, ..ReviewSettings::default() };
    let mut bad: BTreeSet<(usize, u32)> = BTreeSet::new();
    for finding in snapshot.review(&[], &apart).findings {
        for place in std::iter::once(&finding.place).chain(&finding.further) {
            let parts = place.part.map_or(0..snapshot.score().parts.len(), |part| part..part + 1);
            bad.extend(parts.map(|part| (part, place.bar)));
        }
    }
    let praised = shown.works.iter().flat_map(|work| work.bars.iter().map(|bar| (work.part, *bar)));
    Ok(CheckedSheet {
        rule: hand_in.rule,
        found: own.is_some(),
        gravest: own.is_some() && own == gravest,
        held: chosen.iter().any(|finding| is_it(&finding)),
        wrongly: praised.filter(|place| bad.contains(place)).collect(),
        praised: shown.works.len(),
    })
}

/// The sheets as the program makes them: one page each, with text and tags.
fn pages(setting: &CheckSetting, hand_ins: &[PlantedHandIn], outcome: &mut CheckOutcome) -> Result<()> {
    let program = std::env::var_os("ARCATA_PROGRAM")
        .map(PathBuf::from)
        .ok_or("ARCATA_PROGRAM is not set; call this through cargo xtask")?;
    let folder = setting.scratch("class")?;
    let given = folder.join("hand-ins");
    std::fs::create_dir_all(&given).map_err(|problem| problem.to_string())?;
    for (number, hand_in) in hand_ins.iter().enumerate() {
        write(&given.join(format!("student {number:03}.musicxml")), &hand_in.musicxml)?;
    }
    let languages: Vec<String> = LANGUAGES.iter().map(|language| format!("\"{language}\"")).collect();
    let task = format!("{TASK}languages = [{}]\n", languages.join(", "));
    write(&folder.join("task.toml"), &task)?;
    let mut command = Command::new(&program);
    command.arg("class").arg(&given).arg("--task").arg(folder.join("task.toml"));
    command.arg("--out").arg(folder.join("pages")).arg("--key").arg(folder.join("key.toml"));
    let done = command.output().map_err(|problem| format!("{}: {problem}", program.display()))?;
    outcome.check(
        done.status.success(),
        &format!("the class is made: {}", String::from_utf8_lossy(&done.stderr)),
    );
    let mut sheets = Vec::new();
    let listed = std::fs::read_dir(folder.join("pages/sheets")).map_err(|problem| problem.to_string())?;
    for path in listed.filter_map(|entry| Some(entry.ok()?.path())) {
        if path.extension().is_some_and(|ending| ending == "pdf") {
            page(&path, outcome)?;
            sheets.push(path);
        }
    }
    println!("{} sheets as PDF", sheets.len());
    let wanted = hand_ins.len() * LANGUAGES.len();
    outcome.check(sheets.len() == wanted, "every hand-in has its sheets");
    sheets.sort();
    sheets.extend(["class.pdf", "class-to-show.pdf"].map(|name| folder.join("pages").join(name)));
    read_aloud(setting, &sheets, outcome)?;
    nothing_overlaps(setting, &sheets, outcome)?;
    std::fs::remove_dir_all(&folder).map_err(|problem| problem.to_string())
}

/// What a script says of each PDF, as another library reads it. What it must see in one that is spoilt is asked, too.
fn told_of(
    setting: &CheckSetting,
    (script, pages): (&str, &[PathBuf]),
    outcome: &mut CheckOutcome,
) -> Result<Vec<Value>> {
    let paths: Vec<&Path> = pages.iter().map(PathBuf::as_path).collect();
    let mut told = Vec::new();
    for line in setting.script(script, &paths)?.lines() {
        let line: Value = serde_json::from_str(line).map_err(|problem| problem.to_string())?;
        match line["spoilt"].as_str() {
            Some(spoilt) => {
                outcome.check(line["seen"] == true, &format!("it is seen where a PDF is spoilt: {spoilt}"))
            }
            None => told.push(line),
        }
    }
    outcome.check(told.len() == pages.len(), &format!("every PDF is looked at by {script}"));
    Ok(told)
}

/// What a screen reader is given: everything on the page stands in the tree of tags, once and in order, pictures have words, the
/// language and the title are told.
fn read_aloud(setting: &CheckSetting, pages: &[PathBuf], outcome: &mut CheckOutcome) -> Result<()> {
    let told = told_of(setting, ("tagged_pdf.py", pages), outcome)?;
    for page in &told {
        let amiss = page["amiss"].as_array().ok_or("tagged_pdf.py says nothing of what is amiss")?;
        outcome.check(amiss.is_empty(), &format!("{}: {amiss:?}", page["file"]));
        outcome.check(page["pieces"].as_u64() > Some(4), &format!("{}: it has pieces to read", page["file"]));
    }
    println!("{} PDFs walked by their tags", told.len());
    Ok(())
}

/// Nothing stands over another thing, and nothing beyond the paper.
fn nothing_overlaps(setting: &CheckSetting, pages: &[PathBuf], outcome: &mut CheckOutcome) -> Result<()> {
    let told = told_of(setting, ("page_overlap.py", pages), outcome)?;
    let sum = |what: &str| told.iter().filter_map(|page| page[what].as_u64()).sum::<u64>();
    println!("{} letters and {} shapes on {} PDFs", sum("letters"), sum("shapes"), told.len());
    for page in &told {
        for what in ["letters_over_letters", "letters_over_shapes"] {
            let found = page[what].as_array().ok_or("page_overlap.py says nothing of overlaps")?;
            let first: Vec<&Value> = found.iter().take(5).collect();
            outcome.check(found.is_empty(), &format!("{}: {what}: {first:?}", page["file"]));
        }
        outcome.check(page["outside"] == 0, &format!("{}: nothing lies beyond the paper", page["file"]));
        outcome.check(page["letters"].as_u64() > Some(200), &format!("{}: it has letters", page["file"]));
    }
    Ok(())
}

fn page(path: &Path, outcome: &mut CheckOutcome) -> Result<()> {
    let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
    let document = lopdf::Document::load_mem(&read(path)?).map_err(|problem| format!("{name}: {problem}"))?;
    outcome.check(document.get_pages().len() == 1, &format!("{name} is one page"));
    let tagged = document.catalog().is_ok_and(|catalog| catalog.has(b"StructTreeRoot"));
    outcome.check(tagged, &format!("{name} has tags"));
    let text = document.extract_text(&[1]).unwrap_or_default();
    // The name ends in the language: `maple-cove.de.pdf`.
    let language = LANGUAGES.into_iter().find(|language| name.contains(&format!(".{language}.")));
    let words = Words::of(language.unwrap_or_default());
    let squeezed = |text: &str| text.split_whitespace().collect::<String>();
    let has = |key: &str| squeezed(&text).contains(&squeezed(&words.word(key)));
    outcome.check(has("sheet-works") && has("sheet-advice"), &format!("{name} can be searched, to its foot"));
    Ok(())
}
