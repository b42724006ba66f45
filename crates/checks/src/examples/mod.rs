//! Worked examples of the books: what the planner does where a print shows, or a treatise says, which way
//! the bow goes.

mod fixture;

use std::collections::BTreeMap;

use arcata_bow::{Profile, Style, plan};
use arcata_score::BowDirection;
use arcata_xml::{Document, Limits};
use serde_json::Value;

use crate::outcome::{CheckOutcome, Result};
use crate::scores;
use crate::setting::{CheckSetting, read_array};
use crate::tables;

const EXAMPLES: &str = "outside/worked_examples.json";
/// Why an example is missed, one row each.
const MISSES: &str = "docs/example-misses.md";
/// In percent of the examples.
const WANTED: usize = 90;
/// Examples wholly right when the floor was set: fewer is a step back and fails.
const FLOORS: [(&str, usize); 2] = [("printed", 28), ("stated", 30)];

/// Letters and whole examples that agree, of one status.
#[derive(Default)]
struct Share {
    letters: usize,
    letters_right: usize,
    examples: usize,
    examples_right: usize,
}

/// What the planner did with one example.
struct Answer {
    /// The example's letters, and the planner's below.
    asked: String,
    given: String,
    letters: usize,
    right: usize,
}

/// Plans every example and compares the letters that are printed or stated.
pub(crate) fn check(setting: &CheckSetting, outcome: &mut CheckOutcome) -> Result<()> {
    let examples = read_array(&setting.root.join(EXAMPLES))?;
    let reasons = tables::by_first_column(&setting.root.join(MISSES))?;
    let mut shares: BTreeMap<String, Share> = BTreeMap::new();
    for example in &examples {
        let id = example["id"].as_str().ok_or("an example without an id")?;
        let status = example["status"].as_str().ok_or(format!("{id}: no status"))?;
        let profile = Profile::default().in_style(own_style(status));
        let answer = match answer(example, &profile) {
            Ok(answer) => answer,
            Err(problem) => {
                outcome.check(false, &format!("{id}: {problem}"));
                continue;
            }
        };
        let share = shares.entry(status.to_owned()).or_default();
        share.letters += answer.letters;
        share.letters_right += answer.right;
        share.examples += 1;
        share.examples_right += usize::from(answer.letters == answer.right);
        if answer.letters != answer.right {
            report_miss(
                id,
                status,
                &answer,
                reasons.get(id).and_then(|cells| cells.last()).map(String::as_str),
                outcome,
            );
        }
    }
    println!("\nstatus          examples right          letters right");
    for (status, share) in &shares {
        println!(
            "{status:12} {:4} of {:3} ({:5.1} %)   {:4} of {:4} ({:5.1} %)",
            share.examples_right,
            share.examples,
            percent(share.examples_right, share.examples),
            share.letters_right,
            share.letters,
            percent(share.letters_right, share.letters),
        );
    }
    in_every_style(&examples, &[])?;
    for status in ["printed", "stated"] {
        let share = shares.get(status).ok_or(format!("no example is {status}"))?;
        let floor = FLOORS.iter().find(|(floored, _)| *floored == status).map_or(0, |(_, floor)| *floor);
        outcome.check(
            share.examples_right >= floor,
            &format!("at least {floor} of the {status} examples are bowed as they stand"),
        );
        if share.examples_right * 100 < share.examples * WANTED {
            println!("short of the target: {WANTED} % of the {status} examples");
        }
    }
    Ok(())
}

/// The letters that are right in every style, with prices changed for this run: `NAME=VALUE`.
pub(crate) fn run(setting: &CheckSetting, prices: &[String]) -> Result<()> {
    in_every_style(&read_array(&setting.root.join(EXAMPLES))?, prices)
}

/// Treatises state rules of their time; prints and what players remember are later.
fn own_style(status: &str) -> Style {
    match status {
        "printed" => Style::Dance,
        _ => Style::Early,
    }
}

/// The same examples under every style, so that it shows what a style is.
fn in_every_style(examples: &[Value], prices: &[String]) -> Result<()> {
    println!("\nletters right, percent   {}", Style::ALL.map(Style::name).join("  "));
    let mut statuses: Vec<&str> = examples.iter().filter_map(|example| example["status"].as_str()).collect();
    statuses.sort_unstable();
    statuses.dedup();
    for status in statuses {
        print!("{status:22}");
        for style in Style::ALL {
            let profile = scores::priced(Profile::default().in_style(style), prices)?;
            let (mut right, mut letters) = (0, 0);
            for example in examples.iter().filter(|example| example["status"] == status) {
                let answer = answer(example, &profile)?;
                (right, letters) = (right + answer.right, letters + answer.letters);
            }
            print!(" {:8.1}", percent(right, letters));
        }
        println!();
    }
    Ok(())
}

/// What stands in no table is a failure; what is from memory is only shown, until somebody has looked
/// it up.
fn report_miss(id: &str, status: &str, answer: &Answer, reason: Option<&str>, outcome: &mut CheckOutcome) {
    println!("{id} ({status}): {} wanted, {} planned", answer.asked, answer.given);
    match reason {
        Some(reason) => println!("    {reason}"),
        None if status == "from memory" => {}
        None => outcome.check(false, &format!("{id} is bowed otherwise, and {MISSES} does not say why")),
    }
}

fn answer(example: &Value, profile: &Profile) -> Result<Answer> {
    let text = fixture::fixture(example)?;
    let fixture = arcata_testkit::Fixture::parse(&text).map_err(|problem| format!("{problem}\n{text}"))?;
    let document = Document::parse(fixture.musicxml().into_bytes(), &Limits::default())
        .map_err(|problem| problem.to_string())?;
    let score = arcata_score::read(&document);
    let lines = scores::lines(&score, profile);
    let [line] = lines.as_slice() else { return Err(format!("{} lines instead of one", lines.len())) };
    let asked = example["strokes"].as_str().ok_or("no strokes")?;
    let planned = plan(line, &scores::blind(line, profile)).strokes;
    if planned.len() != asked.len() {
        return Err(format!("{} strokes are read, {} are meant\n{text}", planned.len(), asked.len()));
    }
    // The viol's bow is held from below: the push is its strong stroke.
    let viol = example["instrument"] == "viol";
    let given: String = planned.iter().map(|stroke| letter(stroke.direction, viol)).collect();
    let claimed = asked.chars().zip(given.chars()).filter(|(asked, _)| asked.is_ascii_uppercase());
    let (mut letters, mut right) = (0, 0);
    for (asked, given) in claimed {
        letters += 1;
        right += usize::from(asked == given);
    }
    Ok(Answer { asked: asked.to_owned(), given, letters, right })
}

fn letter(direction: BowDirection, viol: bool) -> char {
    if (direction == BowDirection::Down) == viol { 'U' } else { 'D' }
}

fn percent(part: usize, of: usize) -> f64 {
    part as f64 * 100.0 / of.max(1) as f64
}
