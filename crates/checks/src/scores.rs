//! Scores opened and their lines found, as the command line does it.

use std::path::Path;

use arcata_analysis::Config;
use arcata_bow::plan::MarkReading;
use arcata_bow::{Line, PlanSettings, Profile};
use arcata_score::Score;
use arcata_xml::{Document, Limits, ScoreFile, open_score};

use crate::outcome::Result;
use crate::setting::read;

/// Opens a score file of either kind.
pub(crate) fn open(path: &Path) -> Result<ScoreFile> {
    open_score(read(path)?, &Limits::default()).map_err(|problem| format!("{}: {problem}", path.display()))
}

/// The document in a score file of either kind.
pub(crate) fn document(path: &Path) -> Result<Document> {
    let bytes = open(path)?.document().bytes().to_vec();
    Document::parse(bytes, &Limits::default()).map_err(|problem| format!("{}: {problem}", path.display()))
}

/// The bowing lines of all bowed parts.
pub(crate) fn lines(score: &Score, profile: &Profile) -> Vec<Line> {
    arcata_analysis::lines(score, &Config::of(profile.clone()))
}

/// The bowed parts of a score file; none where it cannot be read.
pub(crate) fn bowed_parts(path: &Path) -> Vec<usize> {
    let Ok(file) = open(path) else { return Vec::new() };
    let score = arcata_score::read(file.document());
    (0..score.parts.len()).filter(|part| score.parts[*part].instrument.is_bowed()).collect()
}

/// Settings of the planner that does not see printed marks.
pub(crate) fn blind(line: &Line, profile: &Profile) -> PlanSettings {
    PlanSettings { marks: MarkReading::Hidden, ..profile.plan_settings(line.instrument) }
}

/// A profile with prices of its own for this run: `NAME=VALUE`.
pub(crate) fn priced(mut profile: Profile, prices: &[String]) -> Result<Profile> {
    for price in prices {
        let (name, value) = price.split_once('=').ok_or(format!("\"{price}\": NAME=VALUE is wanted"))?;
        let value = value.parse().map_err(|_| format!("\"{price}\" wants a whole number"))?;
        let weight = profile.weights.get_mut(name).ok_or(format!("there is no weight \"{name}\""))?;
        weight.value = value;
    }
    Ok(profile)
}
