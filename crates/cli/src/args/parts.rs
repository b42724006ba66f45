//! What `arcata parts` is asked.

use std::path::{Path, PathBuf};

use clap::{Args, ValueEnum};

use super::shared::PlayerArguments;

#[derive(Debug, Args)]
pub(crate) struct PartsArguments {
    /// The score (.musicxml, .xml, .mxl)
    #[arg(value_name = "SCORE", required_unless_present = "check")]
    score: Option<PathBuf>,
    /// The folder that the parts go to; made where there is none
    #[arg(long, value_name = "FOLDER", required_unless_present = "check")]
    out: Option<PathBuf>,
    /// Only this part: its name, the beginning of it, or its number in the score; all string parts unless said
    #[arg(long, value_name = "PART")]
    pub(crate) part: Vec<String>,
    /// The down- and up-bows in the parts; with --layer the layers' are added to the score's
    #[arg(long, value_enum, value_name = "WHICH", default_value_t = Bowings::Score)]
    pub(crate) bowings: Bowings,
    /// A bowing layer to put on; several in the order in which they lie over each other
    #[arg(long, value_name = "LAYER")]
    pub(crate) layer: Vec<PathBuf>,
    /// Where pages and lines are to begin, a file that the workbench writes; the one beside the score unless said
    #[arg(long, value_name = "FILE")]
    pub(crate) breaks: Option<PathBuf>,
    /// How the house wants its parts: staff, paper, margins, numbers, heads; a file of what differs from the
    /// shipped profile
    #[arg(long, value_name = "FILE")]
    pub(crate) house: Option<PathBuf>,
    /// Make nothing: say what the house profile asks for that cannot be had together
    #[arg(long, requires = "house")]
    pub(crate) check: bool,
    #[command(flatten)]
    pub(crate) player: PlayerArguments,
    /// Quarter notes a minute at the opening, instead of what the score says: for the plan and for the seconds
    /// of page turns
    #[arg(long, value_name = "QUARTERS", value_parser = clap::value_parser!(u32).range(10..=400))]
    pub(crate) tempo: Option<u32>,
    /// Also as a booklet: a PDF of sheets to be folded and stitched, two pages side by side
    #[arg(long)]
    pub(crate) booklet: bool,
    /// Print what layers and the plan put on (signs for bows, slurs) in a lighter tone, as if in pencil
    #[arg(long)]
    pub(crate) pencil: bool,
    /// A folder with the parts as they were printed last, the same one if you like: lines that have changed since get a mark in the
    /// margin
    #[arg(long, value_name = "FOLDER")]
    pub(crate) since: Option<PathBuf>,
    /// Also everything that goes with the parts: the score with these bowings, the layers, change sheets, a list of what is in the
    /// folder with pages and copies, sums of all files; and the folder once more as one archive
    #[arg(long)]
    pub(crate) handover: bool,
    /// Copies of each part for the list: stands by section, such as "Vn1=7, Vn2=6", or "symphony"; one each when not given
    #[arg(long, value_name = "STANDS", requires = "handover")]
    pub(crate) stands: Option<String>,
    /// Write over parts that lie in the folder already
    #[arg(long)]
    pub(crate) replace: bool,
}

impl PartsArguments {
    /// The score; nothing where a house profile alone is looked at.
    pub(crate) fn score(&self) -> &Path {
        self.score.as_deref().unwrap_or(Path::new(""))
    }

    /// The folder of the parts; nothing where a house profile alone is looked at.
    pub(crate) fn out(&self) -> &Path {
        self.out.as_deref().unwrap_or(Path::new(""))
    }
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Bowings {
    /// As the score has them
    Score,
    /// None at all
    None,
    /// The plan's, only where players bowing as it comes would go wrong; printed ones stay
    Least,
    /// The plan's, on every stroke; printed ones stay
    Plan,
}
