//! The project's own commands. Standard library only, so that the first one starts within seconds; what
//! links the workspace's crates is in `arcata-checks`, which this program builds and calls.
#![allow(
    clippy::disallowed_macros,
    clippy::disallowed_methods,
    reason = "an edge crate: it prints, times, reads its arguments and the environment"
)]

mod api;
mod command;
mod fuzz;
mod new_rule;
mod notice;
mod package;
mod places;
mod site;
mod steps;
mod tally;
mod tools;
mod trust;
mod trust_coverage;
mod trust_faults;
mod trust_power;
mod trust_soak;

use std::process::ExitCode;

use places::Folders;

const HELP: &str = "\
cargo xtask COMMAND

  test [--only STEP]...   all that must hold; ends with a line of counts
                          STEP: format, lints, wasm, tests, doc-tests, pages, browser, api, outside, fuzz
  outside [CHECK]...      the outside checks
                          CHECK: examples, ryan, reader, laws, layers, movements, paper, schemas, pictures,
                          alarms, worse, plants, class (all of them without a name); paper takes scores, too
  tune [ARGUMENT]...      looks for better planner weights on one half of Ryan's collection
  bench [FILE]            speed and memory, with a report
  alarms [FILE]...        how often the review speaks, by rule; --show RULE, --draw COUNT, --seed NUMBER for reading by hand
  worse FILE...           every proposal made where the review offers it, and what comes of it
  movements FILE...       movements cut out of their files against the whole files, openings, repeats
  played FOLDER           bow directions as players took them (scores and strokes.json) against every style
  joints FOLDER           lifts, hooks, equal bars bowed otherwise and bars of three in the plans of a folder of scores
  parts FILES             parts as players get them: pages, turns, signs that touch, what is drawn, time
  learn ARGUMENT...       prices learned from what was played (played FOLDER) or printed (ryan), pieces left out
  hidden-marks FILE       the planner against the bow marks of a score that has many, most of them hidden
  site [--out FOLDER]     the workbench's page as a folder of files that compute in the browser, $CARGO_TARGET_DIR/arcata-site
  package [--try]         packages for people without a compiler: an archive, a Debian package, a Python wheel,
                          $CARGO_TARGET_DIR/arcata-packages; --out FOLDER, --only KIND (windows, too: tried in Wine); --try
                          installs and removes them
  trust [faults|soak|supply|coverage|fuzz SECONDS]
                          long runs that try to break it, and the figures in docs/trust.md
  new-rule CHAPTER/NAME   the skeleton of a rule, such as slurs/slur-looks-odd: every file that the gate asks for
  docs [--check | --try]  writes docs/rules, docs/profiles.md, docs/schema and the English explanations, and the manual
                          as a book to $CARGO_TARGET_DIR/manual; or only says what is out of date; --try puts the page
                          that computes in the browser into the book, to be tried from its front page

Kept outside the checkout: built files in $CARGO_TARGET_DIR, the rest in $XDG_CACHE_HOME/arcata
(~/.cache/arcata).
";

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    match run(&arguments) {
        Ok(code) => code,
        Err(problem) => {
            eprintln!("xtask: {problem}");
            ExitCode::from(2)
        }
    }
}

fn run(arguments: &[String]) -> Result<ExitCode, String> {
    let (command, rest) = match arguments.split_first() {
        Some((command, rest)) => (command.as_str(), rest),
        None => ("help", arguments),
    };
    if matches!(command, "help" | "--help" | "-h") {
        print!("{HELP}");
        return Ok(ExitCode::SUCCESS);
    }
    let places = Folders::find()?;
    match command {
        "test" => steps::test(&places, rest),
        "docs" => steps::docs(&places, rest),
        "package" => package::package(&places, rest),
        "trust" => trust::trust(&places, rest),
        "site" => site::site(&places, rest),
        "new-rule" => new_rule::run(&places, rest),
        "outside" | "movements" | "tune" | "bench" | "hidden-marks" | "alarms" | "worse" | "played"
        | "joints" | "learn" | "parts" => steps::call_checks(&places, command, rest),
        other => Err(format!("there is no command \"{other}\"\n\n{HELP}")),
    }
}
