//! `arcata habits`.

use std::path::PathBuf;

use clap::{Args, Subcommand};

use super::shared::StyleArguments;

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
    pub(crate) scores: Vec<PathBuf>,
    /// The file that gets the habits
    #[arg(long, value_name = "FILE")]
    pub(crate) out: PathBuf,
    /// Layers that are put on the score before it is learned from; for one score
    #[arg(long, value_name = "LAYER")]
    pub(crate) layer: Vec<PathBuf>,
    /// Only this part: its name, the beginning of it, or its number in the score
    #[arg(long, value_name = "PART")]
    pub(crate) part: Vec<String>,
    #[command(flatten)]
    pub(crate) style: StyleArguments,
}

#[derive(Debug, Args)]
pub(crate) struct ShowArguments {
    /// A file of habits
    #[arg(value_name = "FILE")]
    pub(crate) file: PathBuf,
}
