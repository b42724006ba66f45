//! `arcata habits`: what a leader's bowings come to, as prices of the plan.

use std::path::{Path, PathBuf};
use std::process::ExitCode;

use arcata_analysis::Config;
use arcata_bow::Profile;
use arcata_habits::{
    Foreseen, Habits, LEAST_STROKES, LearningOutcome, Marked, Refusal, account, learn, moved,
};
use arcata_languages::Saying;
use arcata_layer::{Addresses, Trust};
use arcata_xml::EditList;
use rayon::prelude::*;

use crate::args::{HabitsArguments, HabitsCommand, LearnArguments};
use crate::bars;
use crate::bowed_score::BowedScore;
use crate::failure::Failure;
use crate::layer_file::{list, not_over};
use crate::studio;
use crate::{files, habits_file, layer_words};

pub(crate) fn run(arguments: &HabitsArguments) -> Result<ExitCode, Failure> {
    match &arguments.command {
        HabitsCommand::Learn(arguments) => learned(arguments),
        HabitsCommand::Show(arguments) => {
            let habits = habits_file::read(&arguments.file)?;
            let profile = Profile::default().in_style(habits.style);
            files::show(&files::wrapped(&said(&habits, &profile)));
            Ok(ExitCode::SUCCESS)
        }
    }
}

fn learned(arguments: &LearnArguments) -> Result<ExitCode, Failure> {
    let profile = studio::styled(&arguments.style)?;
    let scores = files::scores(&arguments.scores)?;
    if !arguments.layer.is_empty() && scores.len() != 1 {
        return Err(Failure::OneScore { count: scores.len() });
    }
    let read: Vec<&Path> = scores.iter().chain(&arguments.layer).map(PathBuf::as_path).collect();
    not_over(&arguments.out, &read)?;
    let marked: Vec<Vec<Marked>> = scores
        .par_iter()
        .enumerate()
        .map(|(work, path)| marked(path, work, arguments, &profile))
        .collect::<Result<_, _>>()?;
    let marked = marked.concat();
    let outcome = learn(&marked, &profile).map_err(|why| Failure::NoHabits { why: files::told(&why) })?;
    match outcome {
        LearningOutcome::Refused(refusal) => Err(Failure::NoHabits { why: refused(&refusal) }),
        LearningOutcome::Learned(habits) => {
            arcata_files::write_whole(&arguments.out, habits.text().as_bytes())?;
            let mut text = said(&habits, &profile);
            let written = Saying::new("habits-written").quoting("file", arguments.out.display().to_string());
            text += &format!("{}\n", files::wording().say(&written));
            files::show(&files::wrapped(&text));
            Ok(ExitCode::SUCCESS)
        }
    }
}

/// The lines of a score that carry marks.
fn marked(
    path: &Path,
    work: usize,
    arguments: &LearnArguments,
    profile: &Profile,
) -> Result<Vec<Marked>, Failure> {
    let opened = studio::open_score(path)?;
    let mut bowed = BowedScore::new(opened.document(), &EditList::default())?;
    bowed.put_on(path, &arguments.layer, Trust::OwnScore)?;
    let addresses = Addresses::new(&bowed.score);
    let left_out = bowed.left_out.iter().map(|left| layer_words::left_out(left, &addresses));
    list(&files::wording().word("habits-not-learned-from"), left_out);
    let score = bowed.score;
    let chosen = bars::parts(&score, &arguments.part)?;
    let lines = arcata_analysis::lines(&score, &Config::of(profile.clone())).into_iter();
    let lines = lines.filter(|line| chosen.contains(&line.part));
    let known = lines.map(|line| {
        let known = line.strokes.iter().map(|stroke| stroke.printed).collect();
        Marked { line, known, work }
    });
    Ok(known.filter(|marked: &Marked| marked.known.iter().any(Option::is_some)).collect())
}

/// So many prices are said in words, those that moved farthest.
const SHOWN: usize = 12;

/// What was learned, in words.
fn said(habits: &Habits, profile: &Profile) -> String {
    let wording = files::wording();
    let mut text = wording.say(&account(habits));
    let moved = moved(habits, profile);
    if moved.is_empty() {
        text += &format!("\n{}", wording.word("habits-no-price-moved"));
    }
    for sentence in moved.iter().take(SHOWN) {
        text += &format!("\n  {}", wording.say(sentence));
    }
    let more = moved.len().saturating_sub(SHOWN);
    if more > 0 {
        text += &format!("\n  {}", wording.say(&Saying::new("habits-more-moved").with("count", more)));
    }
    text + "\n"
}

/// Why nothing was written, in words.
fn refused(refusal: &Refusal) -> String {
    let foreseen = |foreseen: Foreseen| {
        Saying::new("habits-foreseen")
            .with("strokes", foreseen.strokes)
            .quoting("after", foreseen.after.to_string())
            .quoting("before", foreseen.before.to_string())
    };
    files::wording().say(&match refusal {
        Refusal::NoMarks => Saying::new("habits-no-marks"),
        Refusal::TooFew { strokes, wanted, sparse: false } => {
            Saying::new("habits-too-few").with("strokes", *strokes).with("more", wanted - strokes)
        }
        Refusal::TooFew { strokes, wanted, sparse: true } => Saying::new("habits-sparse")
            .with("strokes", *strokes)
            .with("wanted", *wanted)
            .with("more", wanted - strokes)
            .quoting("least", LEAST_STROKES.to_string()),
        Refusal::NoGain { trial } => {
            Saying::new("habits-no-gain").with("foreseen", foreseen(trial.foreseen()))
        }
        Refusal::Unsure { trial, more } => {
            Saying::new("habits-unsure").with("foreseen", foreseen(trial.foreseen())).with("more", *more)
        }
    })
}
