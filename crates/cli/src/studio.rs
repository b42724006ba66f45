//! A score on the desk: read, its lines found, its bows planned.

use std::path::Path;

use arcata_bow::plan::MarkReading;
use arcata_bow::profile::Shipped;
use arcata_bow::timing::TempoChoice;
use arcata_bow::{Line, LineOptions, Plan, PlanSettings, Profile, Reading, plan};
use arcata_score::{Length, Score};
use arcata_xml::{Limits, ScoreFile};
use rayon::prelude::*;

use crate::args::Shared;
use crate::bars;
use crate::failure::Failure;
use crate::files;

/// A score with the plans of its lines.
pub(crate) struct Desk {
    pub(crate) file: ScoreFile,
    pub(crate) score: Score,
    pub(crate) lines: Vec<Line>,
    pub(crate) plans: Vec<Plan>,
    pub(crate) assumptions: Vec<String>,
}

/// The profile that was named: shipped, or a file.
pub(crate) fn profile(name: &str) -> Result<Profile, Failure> {
    let failed = |why: String| Failure::Profile { name: name.to_owned(), why };
    if let Some(shipped) = Shipped::ALL.into_iter().find(|shipped| shipped.name() == name) {
        return Ok(Profile::shipped(shipped));
    }
    let text = files::read_text(Path::new(name)).map_err(failed)?;
    Profile::parse(&text).map_err(|error| failed(error.to_string()))
}

/// Settings of the planner for one line.
pub(crate) fn settings(line: &Line, profile: &Profile, marks: MarkReading) -> PlanSettings {
    PlanSettings { marks, ..profile.plan_settings(line.instrument) }
}

/// A score that was read.
pub(crate) struct Opened {
    pub(crate) file: ScoreFile,
    pub(crate) score: Score,
}

/// Reads a score.
pub(crate) fn open_score(path: &Path) -> Result<Opened, Failure> {
    let failed = |why: String| Failure::Read { path: path.to_owned(), why };
    let bytes = files::read(path, Limits::default().max_bytes).map_err(failed)?;
    open_bytes(bytes).map_err(failed)
}

/// Reads the bytes of a score.
pub(crate) fn open_bytes(bytes: Vec<u8>) -> Result<Opened, String> {
    let file = arcata_xml::open_score(bytes, &Limits::default()).map_err(|error| error.to_string())?;
    let score = arcata_score::read(file.document());
    let not_a_score =
        score.problems.iter().find(|problem| problem.kind == arcata_score::ProblemKind::NotAScore);
    match not_a_score {
        Some(problem) => Err(problem.message.clone()),
        None => Ok(Opened { file, score }),
    }
}

/// Reads a score and plans its lines.
pub(crate) fn open(
    path: &Path,
    shared: &Shared,
    profile: &Profile,
    marks: MarkReading,
) -> Result<Desk, Failure> {
    let Opened { file, score } = open_score(path)?;
    let chosen = bars::parts(&score, &shared.part)?;
    let options = line_options(shared);
    let reading = Reading::new(&score, profile, &options);
    let lines: Vec<Line> = chosen.par_iter().flat_map(|part| reading.lines(*part)).collect();
    let plans = lines.par_iter().map(|line| plan(line, &settings(line, profile, marks))).collect();
    let assumptions = assumptions(&lines, reading.tempo.assumed(), shared);
    Ok(Desk { file, score, lines, plans, assumptions })
}

/// How lines are read.
pub(crate) fn line_options(shared: &Shared) -> LineOptions {
    let tempo = shared
        .tempo
        .map_or(TempoChoice::Written, |quarters| TempoChoice::Opening(Length::new(i64::from(quarters), 1)));
    LineOptions { tempo, ..LineOptions::default() }
}

fn assumptions(lines: &[Line], assumed: Length, shared: &Shared) -> Vec<String> {
    let mut said = Vec::new();
    if let Some(tempo) = shared.tempo {
        said.push(format!("{tempo} quarter notes a minute at the opening, as asked for with --tempo"));
    } else if lines.iter().any(|line| line.tempo_written == arcata_bow::Written::Assumed) {
        said.push(format!(
            "{assumed} quarter notes a minute where the score gives no tempo; seconds there rest on it"
        ));
    }
    said
}
