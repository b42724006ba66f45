//! The addresses of the workbench, put to the test by requests that schemathesis makes from their description.

use std::fs;
use std::io::{BufRead as _, BufReader};
use std::path::Path;
use std::process::{Child, Command, Stdio};

use crate::command::run;
use crate::places::Folders;
use crate::steps;
use crate::tally::CheckTally;
use crate::tools;

/// Requests for each address; the seed makes them the same on every run.
const EXAMPLES: &str = "40";
const SEED: &str = "11";

/// A program that ends with this value.
struct Running(Child);

impl Drop for Running {
    fn drop(&mut self) {
        // It may have ended by itself.
        let _ = self.0.kill();
        let _ = self.0.wait();
    }
}

/// Starts the workbench on a copy of a demo score and asks it everything.
pub(crate) fn api(places: &Folders) -> Result<CheckTally, String> {
    let python = tools::python_with(places, "requirements-api.txt")?;
    let program = steps::program(places)?;
    let folder = places.cache.join(format!("api-{}", std::process::id()));
    fs::create_dir_all(&folder).map_err(|problem| format!("{}: {problem}", folder.display()))?;
    let asked = ask(places, &program, &python, &folder);
    // Only a leftover of this run.
    let _ = fs::remove_dir_all(&folder);
    asked
}

fn ask(places: &Folders, program: &Path, python: &Path, folder: &Path) -> Result<CheckTally, String> {
    let score = folder.join("lantern-study.musicxml");
    tools::copy(&places.root.join("demo").join("lantern-study.musicxml"), &score)?;
    let mut started = Command::new(program)
        .arg("open")
        .arg(&score)
        .arg("--no-browser")
        .env("XDG_STATE_HOME", folder)
        .stdout(Stdio::piped())
        .spawn()
        .map_err(|problem| format!("{}: {problem}", program.display()))?;
    let out = started.stdout.take().ok_or("the workbench says nothing")?;
    let _running = Running(started);
    let mut line = String::new();
    BufReader::new(out).read_line(&mut line).map_err(|problem| problem.to_string())?;
    let (home, key) = line.trim().split_once("/?key=").ok_or("the workbench prints no address")?;
    let port = home.rsplit(':').next().unwrap_or_default();
    let mut asks = Command::new(python.with_file_name("schemathesis"));
    asks.arg("run")
        .arg(format!("{home}/api/openapi.json"))
        .args(["--header", &format!("Cookie: arcata-{port}={key}"), "--header", &format!("Origin: {home}")])
        // The stream of events has no end; a line that the score has not is refused although it is a number.
        .args(["--exclude-path", "/api/events", "--exclude-checks", "positive_data_acceptance"])
        .args(["--max-examples", EXAMPLES, "--seed", SEED, "--request-timeout", "10"])
        .current_dir(folder);
    let ran = run(&mut asks, "  ")?;
    let passed = ran.lines.iter().find_map(|line| {
        let (_, rest) = line.split_once(" generated, ")?;
        rest.split_whitespace().next()?.parse().ok()
    });
    let tally = if ran.well {
        CheckTally { passed: passed.unwrap_or(1), ..CheckTally::default() }
    } else {
        CheckTally::default()
    };
    Ok(tally.of_run(ran.well))
}
