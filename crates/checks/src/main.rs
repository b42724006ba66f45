//! Arcata beside outside sources, its speed, and the pages made from its code. `cargo xtask` calls this
//! program and gives it its folders in the environment: `ARCATA_ROOT` (the checkout), `ARCATA_CACHE`,
//! `ARCATA_PYTHON`, and `ARCATA_COUNTS` (a file that gets the counts).
#![allow(
    clippy::disallowed_macros,
    clippy::disallowed_methods,
    reason = "an edge crate: it opens files, prints, times, and reads its arguments and the environment"
)]

mod alarms;
mod bench;
mod bench_list;
mod bench_repairs;
mod docs;
mod docs_constants;
mod docs_stops;
mod examples;
mod hidden_marks;
mod joints;
mod laws;
mod layers;
mod learn;
mod movements;
mod outcome;
mod paper;
mod parts;
mod pictures;
mod plants;
mod played;
mod program;
mod reader;
mod reviewing;
mod ryan;
mod schemas;
mod scores;
mod setting;
mod tables;
mod values;
mod worse;

use std::process::ExitCode;

use outcome::{CheckOutcome, Result};
use setting::CheckSetting;

/// A check against an outside source: its name and what it does.
type Check = (&'static str, fn(&CheckSetting, &mut CheckOutcome) -> Result<()>);

const OUTSIDE: [Check; 13] = [
    ("examples", examples::check),
    ("ryan", ryan::check),
    ("reader", reader::check),
    ("laws", laws::check),
    ("layers", layers::check),
    ("movements", movements::check),
    ("paper", paper::check),
    ("schemas", schemas::check),
    ("pictures", pictures::check),
    ("alarms", alarms::check),
    ("worse", worse::check),
    ("plants", plants::check),
    ("class", plants::check_class),
];

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let mut outcome = CheckOutcome::default();
    if let Err(problem) = run(&arguments, &mut outcome) {
        outcome.check(false, &problem);
    }
    if let Err(problem) = outcome.write_counts() {
        eprintln!("{problem}");
        return ExitCode::from(2);
    }
    if outcome.has_failed() { ExitCode::FAILURE } else { ExitCode::SUCCESS }
}

fn run(arguments: &[String], outcome: &mut CheckOutcome) -> Result<()> {
    let (command, rest) = arguments.split_first().ok_or("call this through cargo xtask")?;
    if command == "one-review" {
        return bench::one_review(rest);
    }
    match command.as_str() {
        "played" => return played::run(rest),
        "joints" => return joints::run(rest),
        _ => {}
    }
    let mut setting = CheckSetting::from_environment()?;
    match command.as_str() {
        "outside" => {
            // Scores are for the check that takes any.
            let (scores, names): (Vec<String>, Vec<String>) =
                rest.iter().cloned().partition(|name| std::path::Path::new(name).is_file());
            setting.given = scores.into_iter().map(Into::into).collect();
            outside(&setting, &names, outcome)
        }
        "docs" => docs::run(&setting, rest, outcome),
        "alarms" => alarms::run(&setting, rest),
        "movements" => movements::run(rest),
        "parts" => parts::run(&setting, rest, outcome),
        "worse" => worse::run(&setting, rest),
        "bench" => bench::run(&setting, rest),
        "hidden-marks" => hidden_marks::run(rest),
        "examples" => examples::run(&setting, rest),
        "learn" => learn::run(&setting, rest),
        "tune" => ryan::tune(&setting, rest),
        other => Err(format!("there is no command \"{other}\"")),
    }
}

/// Runs the named checks, or all; one that cannot run is a failure, and the rest are run.
fn outside(setting: &CheckSetting, names: &[String], outcome: &mut CheckOutcome) -> Result<()> {
    if let Some(unknown) = names.iter().find(|name| !OUTSIDE.iter().any(|(known, _)| known == name)) {
        let known = OUTSIDE.map(|(name, _)| name).join(", ");
        return Err(format!("there is no outside check \"{unknown}\"; there are {known}"));
    }
    for (name, check) in OUTSIDE {
        if !names.is_empty() && !names.iter().any(|wanted| wanted == name) {
            continue;
        }
        println!("\n# {name}");
        if let Err(problem) = check(setting, outcome) {
            outcome.check(false, &format!("{name}: {problem}"));
        }
    }
    Ok(())
}
