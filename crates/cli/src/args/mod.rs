//! The command line.

mod aside;
mod class;
mod habits;
mod help_pages;
mod layer;
mod marks;
mod open;
mod parts;
mod plan;
mod review;
mod rules;
mod shared;

use arcata_languages::Language;
use clap::{Parser, Subcommand, ValueEnum};

pub(crate) use aside::{AsideArguments, SlurIsArgument};
pub(crate) use class::ClassArguments;
pub(crate) use habits::{HabitsArguments, HabitsCommand, LearnArguments};
pub(crate) use help_pages::HelpPagesArguments;
pub(crate) use layer::{
    ApplyArguments, CarryArguments, CheckArguments, CompareArguments, EnterArguments, KindArgument,
    LayerArguments, LayerCommand, LiftArguments, ListArguments, MergeArguments, PaperSize, SheetArguments,
    SheetFormat, SpreadArguments,
};
pub(crate) use marks::{MarksArgument, MarksArguments, Surplus};
pub(crate) use open::OpenArguments;
pub(crate) use parts::{Bowings, PartsArguments};
pub(crate) use plan::{PlanArguments, PlanFormat};
pub(crate) use review::{ReviewArguments, ReviewFormat, Weight};
pub(crate) use rules::RulesArguments;
pub(crate) use shared::{Format, PlayerArguments, SharedArguments, StyleArguments, Table};

/// What a score makes the players' bows do.
#[derive(Debug, Parser)]
#[command(
    name = "arcata",
    version,
    about = "What a score makes the players' bows do: down or up, where in the bow, and what will not work",
    after_help = "The tool advises; players decide. Nothing leaves this machine. Commands write\nto the file you name with --out or --write; the score itself is written by one button of the\nworkbench alone (arcata open), which keeps the file as it was beside it."
)]
pub(crate) struct Arguments {
    #[command(subcommand)]
    pub(crate) command: Command,
    /// Whose English: british says bar, desk, heel, point, leader; american says measure, stand, frog, tip, concertmaster.
    /// Otherwise as the profile says, and none of them mixed
    #[arg(long, global = true, value_enum)]
    pub(crate) terms: Option<Terms>,
    /// The language of what is printed: en, it, fr or de. What is not translated yet is English
    #[arg(long, global = true, value_name = "LANGUAGE")]
    pub(crate) language: Option<Language>,
}

/// Whose English is spoken.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Terms {
    American,
    British,
}

impl Terms {
    /// Bar, stand, frog, tip, leader.
    pub(crate) const fn words(self) -> [&'static str; 5] {
        match self {
            Self::American => ["measure", "stand", "frog", "tip", "concertmaster"],
            Self::British => ["bar", "desk", "heel", "point", "leader"],
        }
    }
}

#[derive(Debug, Subcommand)]
pub(crate) enum Command {
    /// Say what will not work in a score, or in folders of scores, and why
    #[command(
        after_help = "Exit codes: 0 nothing found at the chosen severity, 1 something found or a file not read,\n2 could not run."
    )]
    Review(ReviewArguments),
    /// Work out the bow of every string part: direction, link, place, seconds, penalty
    Plan(PlanArguments),
    /// Keep bowings apart from the score: lift, apply, wipe, compare, merge, spread, carry, check
    #[command(after_help = "Exit codes: 0 everything done, 1 done but for what is listed, 2 could not run.")]
    Layer(LayerArguments),
    /// Say what every printed bow mark is for: needed, an effect, not needed, contradictory; write the score
    /// without the surplus ones
    Marks(MarksArguments),
    /// Make the parts for the stands: a PDF and a MusicXML file for each string part
    #[command(
        after_help = "Exit codes: 0 all parts as they should be, 1 made but for what is listed, 2 could not run."
    )]
    Parts(PartsArguments),
    /// Go through a class's hand-ins to one task: a sheet for each, and a page of the class; nothing is graded
    #[command(
        after_help = "Exit codes: 0 a sheet for every hand-in, 1 made but for what is listed, 2 could not run.\nThe sheets name nobody. Who is who stands in the key alone, which stays with you."
    )]
    Class(ClassArguments),
    /// Set a finding, a rule or a passage of a score aside, with a reason, in a small file beside the score
    Aside(AsideArguments),
    /// Learn how a leader bows from marked scores, into a small file of prices for --habits
    Habits(HabitsArguments),
    /// List the rules of the review, or show the page of one
    Rules(RulesArguments),
    /// Open the workbench: the score with its bows in the browser, on this machine only
    Open(OpenArguments),
    /// Write the man pages, and what shells complete the command by
    #[command(hide = true)]
    HelpPages(HelpPagesArguments),
}
