//! `arcata habits`: what a leader's bowings come to, as prices of the plan.

use std::path::{Path, PathBuf};
use std::process::ExitCode;

use arcata_analysis::Config;
use arcata_bow::Profile;
use arcata_habits::{
    Foreseen, Habits, LEAST_STROKES, LearningOutcome, Marked, Refusal, account, learn, moved,
};
use arcata_layer::Trust;
use arcata_xml::EditList;
use clap::{Args, Subcommand};
use rayon::prelude::*;

use crate::args::StyleArguments;
use crate::bars;
use crate::bowed_score::BowedScore;
use crate::failure::Failure;
use crate::files;
use crate::layer_command::{list, not_over};
use crate::studio;

#[derive(Debug, Args)]
pub(crate) struct HabitsArguments {
    #[command(subcommand)]
    pub(crate) command: HabitsCommand,
}

#[derive(Debug, Subcommand)]
pub(crate) enum HabitsCommand {
    /// Learn a leader's habits from marked scores; a few pages with every stroke marked do more than many with few
    Learn(LearnArguments),
    /// Say a file of habits in words
    Show(ShowArguments),
}

#[derive(Debug, Args)]
pub(crate) struct LearnArguments {
    /// Marked scores (.musicxml, .xml, .mxl), or folders of them, all bowed by one leader
    #[arg(required = true, value_name = "SCORE")]
    scores: Vec<PathBuf>,
    /// The file that gets the habits
    #[arg(long, value_name = "FILE")]
    out: PathBuf,
    /// Layers that are put on the score before it is learned from; for one score
    #[arg(long, value_name = "LAYER")]
    layer: Vec<PathBuf>,
    /// Only this part: its name, the beginning of it, or its number in the score
    #[arg(long, value_name = "PART")]
    part: Vec<String>,
    #[command(flatten)]
    style: StyleArguments,
}

#[derive(Debug, Args)]
pub(crate) struct ShowArguments {
    /// A file of habits
    #[arg(value_name = "FILE")]
    file: PathBuf,
}

pub(crate) fn run(arguments: &HabitsArguments) -> Result<ExitCode, Failure> {
    match &arguments.command {
        HabitsCommand::Learn(arguments) => learned(arguments),
        HabitsCommand::Show(arguments) => {
            let habits = read(&arguments.file)?;
            let profile = Profile::default().in_style(habits.style);
            files::show(&files::wrapped(&said(&habits, &profile)));
            Ok(ExitCode::SUCCESS)
        }
    }
}

/// A file of habits.
pub(crate) fn read(path: &Path) -> Result<Habits, Failure> {
    let failed = |why: String| Failure::Habits { path: path.to_owned(), why };
    let text = files::read_text(path).map_err(failed)?;
    Habits::read(&text).map_err(|error| failed(error.to_string()))
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
    let outcome = learn(&marked, &profile).map_err(|why| Failure::NoHabits { why })?;
    match outcome {
        LearningOutcome::Refused(refusal) => Err(Failure::NoHabits { why: refused(&refusal) }),
        LearningOutcome::Learned(habits) => {
            arcata_files::write_whole(&arguments.out, habits.text().as_bytes())?;
            let mut text = said(&habits, &profile);
            text += &format!("Written to {}. Bow with --habits.\n", arguments.out.display());
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
    list("Not learned from:", &bowed.left_out);
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
    let mut text = account(habits);
    let moved = moved(habits, profile);
    if moved.is_empty() {
        text += "\nNo price moved by a tenth.";
    }
    for sentence in moved.iter().take(SHOWN) {
        text += "\n  ";
        text += sentence;
    }
    match moved.len().saturating_sub(SHOWN) {
        0 => {}
        1 => text += "\n  One more price moved by less.",
        more => text += &format!("\n  {more} more prices moved by less."),
    }
    text + "\n"
}

/// Why nothing was written, in words.
fn refused(refusal: &Refusal) -> String {
    let foreseen = |foreseen: Foreseen| {
        format!(
            "of {} strokes in bars that were left out, prices learned from the other bars foresee {}, the style alone {}",
            foreseen.strokes, foreseen.after, foreseen.before
        )
    };
    match refusal {
        Refusal::NoMarks => "there is no bow mark to learn from".to_owned(),
        Refusal::TooFew { strokes, wanted, sparse: false } => format!(
            "{strokes} marked {} too few; {} more strokes would tell. A few lines with every stroke marked do most",
            if *strokes == 1 { "stroke is" } else { "strokes are" },
            wanted - strokes
        ),
        Refusal::TooFew { strokes, wanted, sparse: true } => format!(
            "the {strokes} marks stand far apart, each where the leader departs from what comes anyway; of such \
             marks {wanted} are wanted, {} more. Or mark every stroke of a few lines: {LEAST_STROKES} strokes do",
            wanted - strokes
        ),
        Refusal::NoGain { trial } => {
            format!("what is marked here is foreseen as well without: {}", foreseen(trial.foreseen()))
        }
        Refusal::Unsure { trial, more } => {
            format!("it may be chance: {}; {more} more strokes would tell", foreseen(trial.foreseen()))
        }
    }
}
