//! The steps of `cargo xtask test`, in order.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, ExitCode};
use std::time::Instant;

use crate::api;
use crate::command::{answer, cargo, run};
use crate::fuzz;
use crate::places::Folders;
use crate::site::{self, BROWSER};
use crate::tally::{CheckTally, of_cargo_test, of_file, of_nextest, of_node};
use crate::tools;

/// A step: its name and what it does.
type GateStep = (&'static str, fn(&Folders) -> Result<CheckTally, String>);

const STEPS: [GateStep; 10] = [
    ("format", format),
    ("lints", lints),
    ("wasm", wasm),
    ("tests", tests),
    ("doc-tests", doc_tests),
    ("pages", pages),
    ("browser", browser),
    ("api", api::api),
    ("outside", outside),
    ("fuzz", fuzz::fuzz),
];

/// Runs the steps, or those that `--only` names, all of them whatever fails on the way.
pub(crate) fn test(places: &Folders, arguments: &[String]) -> Result<ExitCode, String> {
    let chosen = chosen(arguments)?;
    let mut sum = CheckTally::default();
    let mut table = Vec::new();
    for (name, step) in chosen {
        println!("== {name}");
        let started = Instant::now();
        let tally = step(places).unwrap_or_else(|problem| {
            println!("{name}: {problem}");
            CheckTally { failed: 1, ..CheckTally::default() }
        });
        let seconds = started.elapsed().as_secs_f64();
        let said = if tally.failed > 0 { "FAILED" } else { "good" };
        println!("-- {name}: {said} after {seconds:.1} s");
        table.push(format!(
            "{name:10} {seconds:7.1} s {:6} good {:4} bad {:4} left out",
            tally.passed, tally.failed, tally.skipped
        ));
        sum += tally;
    }
    println!("\n{}\n", table.join("\n"));
    println!("{}", sum.line());
    Ok(if sum.failed == 0 { ExitCode::SUCCESS } else { ExitCode::FAILURE })
}

fn chosen(arguments: &[String]) -> Result<Vec<GateStep>, String> {
    let mut names = Vec::new();
    let mut left = arguments.iter();
    while let Some(argument) = left.next() {
        let name = match (argument.as_str(), argument.strip_prefix("--only=")) {
            ("--only", _) => left.next().ok_or("--only wants the name of a step")?.as_str(),
            (_, Some(name)) => name,
            (other, None) => return Err(format!("test does not know \"{other}\"; it takes --only STEP")),
        };
        if !STEPS.iter().any(|(known, _)| *known == name) {
            let known = STEPS.map(|(name, _)| name).join(", ");
            return Err(format!("there is no step \"{name}\"; the steps are {known}"));
        }
        names.push(name);
    }
    Ok(STEPS.into_iter().filter(|(name, _)| names.is_empty() || names.contains(name)).collect())
}

/// A step without counts of its own adds only its failure.
fn plain(places: &Folders, arguments: &[&str]) -> Result<CheckTally, String> {
    Ok(CheckTally::default().of_run(run(&mut cargo(places, arguments), "  ")?.well))
}

/// Where the files are that a macro names: `cargo fmt` does not find them.
const NAMED_BY_A_MACRO: &str = "crates/review/src/rules";

fn format(places: &Folders) -> Result<CheckTally, String> {
    let found = plain(places, &["fmt", "--all", "--check"])?;
    let mut files = Vec::new();
    for family in tools::list(&places.root.join(NAMED_BY_A_MACRO))?.into_iter().filter(|path| path.is_dir()) {
        files.extend(
            tools::list(&family)?.into_iter().filter(|path| path.extension().is_some_and(|end| end == "rs")),
        );
    }
    if files.is_empty() {
        return Err(format!("no rule is in {NAMED_BY_A_MACRO}"));
    }
    let mut rustfmt = Command::new("rustfmt");
    rustfmt.args(["--check", "--edition", "2024"]).args(files).current_dir(&places.root);
    let rules = CheckTally::default().of_run(run(&mut rustfmt, "  ")?.well);
    Ok(CheckTally { failed: found.failed + rules.failed, ..found })
}

fn lints(places: &Folders) -> Result<CheckTally, String> {
    plain(places, &["clippy", "--quiet", "--workspace", "--all-targets", "--", "-D", "warnings"])
}

/// The crates that compute and nothing else, with all that they use: they compile where there are no files, clocks or threads.
const PURE: [&str; 7] = [
    "arcata-analysis",
    "arcata-review",
    "arcata-layer",
    "arcata-report",
    "arcata-languages",
    "arcata-export",
    "arcata-desk",
];

/// Whether the pure crates compile for a browser. Left out, and told, where the standard library for it cannot be had.
fn wasm(places: &Folders) -> Result<CheckTally, String> {
    if !site::can_build() {
        println!(
            "  left out: this toolchain has no standard library for {BROWSER}, and rustup could not get it"
        );
        return Ok(CheckTally { skipped: 1, ..CheckTally::default() });
    }
    let packages = PURE.iter().flat_map(|package| ["--package", package]);
    let arguments: Vec<&str> =
        ["check", "--quiet", "--target", BROWSER].into_iter().chain(packages).collect();
    let well = run(&mut cargo(places, &arguments), "  ")?.well;
    Ok(CheckTally { passed: u64::from(well), ..CheckTally::default() }.of_run(well))
}

fn tests(places: &Folders) -> Result<CheckTally, String> {
    if answer(&mut cargo(places, &["nextest", "--version"])).is_some() {
        let arguments = ["nextest", "run", "--workspace", "--no-fail-fast", "--status-level", "fail"];
        let ran = run(&mut cargo(places, &arguments), "  ")?;
        return Ok(of_nextest(&ran.lines).of_run(ran.well));
    }
    let arguments = ["test", "--quiet", "--workspace", "--all-targets", "--no-fail-fast"];
    let ran = run(&mut cargo(places, &arguments), "  ")?;
    Ok(of_cargo_test(&ran.lines).of_run(ran.well))
}

fn doc_tests(places: &Folders) -> Result<CheckTally, String> {
    let ran = run(&mut cargo(places, &["test", "--quiet", "--workspace", "--doc", "--no-fail-fast"]), "  ")?;
    Ok(of_cargo_test(&ran.lines).of_run(ran.well))
}

/// The made pages are up to date, and the manual can be made from them: every example engraved, no link into nothing.
fn pages(places: &Folders) -> Result<CheckTally, String> {
    let mut tally = counted_checks(places, "docs", &["--check".to_owned()])?;
    tally += if book(places, None)? {
        CheckTally { passed: 1, ..CheckTally::default() }
    } else {
        CheckTally { failed: 1, ..CheckTally::default() }
    };
    Ok(tally)
}

/// Makes the manual as a book, beside the built programs; with the page that needs no server in it, where one is given.
fn book(places: &Folders, site: Option<&Path>) -> Result<bool, String> {
    let mut make = cargo(places, &["run", "--quiet", "--package", "arcata-manual", "--"]);
    make.arg(places.target.join("manual")).args(site).env("ARCATA_ROOT", &places.root);
    Ok(run(&mut make, "  ")?.well)
}

/// Writes the made pages and the manual, or says what is out of date; `--try` puts the page that needs no server into the manual.
pub(crate) fn docs(places: &Folders, arguments: &[String]) -> Result<ExitCode, String> {
    let is_tried = arguments == ["--try"];
    let made = call_checks(places, "docs", if is_tried { &[] } else { arguments })?;
    if made != ExitCode::SUCCESS || !(is_tried || arguments.is_empty()) {
        return Ok(made);
    }
    let site = is_tried.then(|| places.target.join(site::OUT));
    if let Some(site) = &site {
        site::make(places, site)?;
    }
    Ok(if book(places, site.as_deref())? { ExitCode::SUCCESS } else { ExitCode::FAILURE })
}

/// The pages that the program makes, opened in a browser.
fn browser(places: &Folders) -> Result<CheckTally, String> {
    let browser = tools::Browser::find(places)?;
    let program = program(places)?;
    let site_folder = places.target.join(site::OUT);
    site::make(places, &site_folder)?;
    // Node.js looks for packages beside the tests: they are run where the packages are.
    let tests = browser.home.join("checkout").join("browser");
    let _ = fs::remove_dir_all(browser.home.join("checkout"));
    fs::create_dir_all(&tests).map_err(|problem| format!("{}: {problem}", tests.display()))?;
    let source = places.root.join("browser");
    let entries = fs::read_dir(&source).map_err(|problem| format!("{}: {problem}", source.display()))?;
    for entry in entries.flatten().filter(|entry| entry.path().extension().is_some_and(|end| end == "mjs")) {
        tools::copy(&entry.path(), &tests.join(entry.file_name()))?;
    }
    let mut node = Command::new("node");
    // One file after another: some of them take times.
    node.args(["--test", "--test-concurrency", "1", "--test-reporter", "spec"])
        .current_dir(&tests)
        .env("ARCATA_PROGRAM", program)
        .env("ARCATA_CHECKOUT", &places.root)
        .env("ARCATA_SITE", &site_folder)
        .env("ARCATA_BROWSER", &browser.program)
        .env("ARCATA_FIREFOX", &browser.firefox);
    let ran = run(&mut node, "  ")?;
    Ok(of_node(&ran.lines).of_run(ran.well))
}

fn outside(places: &Folders) -> Result<CheckTally, String> {
    counted_checks(places, "outside", &[])
}

/// Calls `arcata-checks` and reads its counts.
fn counted_checks(places: &Folders, command: &str, arguments: &[String]) -> Result<CheckTally, String> {
    let counts = places.cache.join(format!("counts-{command}-{}", std::process::id()));
    let mut checks = checks(places, command, arguments)?;
    checks.env("ARCATA_COUNTS", &counts);
    let ran = run(&mut checks, "  ");
    let text = fs::read_to_string(&counts).unwrap_or_default();
    // Only a leftover of this run; that it cannot be removed does not matter.
    let _ = fs::remove_file(&counts);
    Ok(of_file(&text).unwrap_or_default().of_run(ran?.well))
}

/// Calls `arcata-checks` for a person.
pub(crate) fn call_checks(places: &Folders, command: &str, arguments: &[String]) -> Result<ExitCode, String> {
    if command == "bench" {
        // It times the program as a user starts it.
        let program = ["build", "--quiet", "--release", "--package", "arcata"];
        if !run(&mut cargo(places, &program), "")?.well {
            return Err("the program to be timed cannot be built".to_owned());
        }
    }
    let status = checks(places, command, arguments)?
        .status()
        .map_err(|problem| format!("cannot start cargo: {problem}"))?;
    Ok(if status.success() { ExitCode::SUCCESS } else { ExitCode::FAILURE })
}

/// The program itself, built as the tests are.
pub(crate) fn program(places: &Folders) -> Result<PathBuf, String> {
    if !run(&mut cargo(places, &["build", "--quiet", "--package", "arcata"]), "  ")?.well {
        return Err("the program does not build; see above".to_owned());
    }
    Ok(places.target.join("debug").join("arcata"))
}

/// A program that engraves, built as the tests are: the engraving library is built once.
fn engraving_example(places: &Folders, name: &str) -> Result<PathBuf, String> {
    let build = ["build", "--quiet", "--package", "arcata-engrave", "--example", name];
    if !run(&mut cargo(places, &build), "  ")?.well {
        return Err(format!("the example \"{name}\" that engraves does not build; see above"));
    }
    Ok(places.target.join("debug").join("examples").join(name))
}

fn checks(places: &Folders, command: &str, arguments: &[String]) -> Result<Command, String> {
    let mut checks =
        cargo(places, &["run", "--quiet", "--release", "--package", "arcata-checks", "--", command]);
    checks.args(arguments).env("ARCATA_ROOT", &places.root).env("ARCATA_CACHE", &places.cache);
    if command != "docs" {
        checks.env("ARCATA_PYTHON", tools::python(places)?);
    }
    if command == "outside" && (arguments.is_empty() || arguments.iter().any(|name| name == "pictures")) {
        checks.env("ARCATA_SLICES", engraving_example(places, "slices")?);
    }
    if command == "parts" {
        checks.env("ARCATA_BOOKLETS", engraving_example(places, "booklets")?);
    }
    let asks_program = arguments.is_empty()
        || arguments.iter().any(|name| ["paper", "schemas", "class"].contains(&name.as_str()));
    if command == "outside" && asks_program {
        checks.env("ARCATA_PROGRAM", program(places)?);
    }
    Ok(checks)
}
