//! The command line.

use std::path::PathBuf;

use arcata_bow::Style;
use arcata_languages::Language;
use clap::{Args, Parser, Subcommand, ValueEnum};

use crate::aside_command::AsideArguments;
use crate::class_args::ClassArguments;
use crate::habits_command::HabitsArguments;
use crate::layer_args::LayerArguments;
use crate::open_command::OpenArguments;
use crate::parts_args::PartsArguments;
use crate::rules_command::RulesArguments;

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
}

/// What all commands ask.
#[derive(Debug, Args)]
pub(crate) struct SharedArguments {
    /// MusicXML files (.musicxml, .xml, .mxl), or folders of them
    #[arg(required = true, value_name = "SCORE")]
    pub(crate) scores: Vec<PathBuf>,
    /// Only this part: its name, the beginning of it, or its number in the score
    #[arg(long, value_name = "PART")]
    pub(crate) part: Vec<String>,
    /// Only these bars: 12, 5-8, "II, bar 12"
    #[arg(long, value_name = "BARS")]
    pub(crate) bars: Option<String>,
    /// Only this movement, by its number or heading as printed or its place in the file: II or 2; without it --bars
    /// means the first movement that has them
    #[arg(long, value_name = "MOVEMENT")]
    pub(crate) movement: Option<String>,
    #[command(flatten)]
    pub(crate) player: PlayerArguments,
    /// Quarter notes a minute at the opening (of the movement asked for), instead of what the score says; all other
    /// tempos keep their proportion to it
    #[arg(long, value_name = "QUARTERS", value_parser = clap::value_parser!(u32).range(10..=400))]
    pub(crate) tempo: Option<u32>,
    /// Play everything so many steps of the dynamics louder than written (p to mp is one); softer: -1, -2
    #[arg(long, value_name = "STEPS", default_value_t = 0, allow_hyphen_values = true,
        value_parser = clap::value_parser!(i8).range(-3..=3))]
    pub(crate) louder: i8,
    /// Plan each part for itself. Otherwise parts that play one rhythm, figures that come back and entries
    /// that imitate are bowed alike, unless going their own way saves more
    #[arg(long)]
    pub(crate) apart: bool,
}

/// Who plays, and how.
#[derive(Clone, Debug, Args)]
pub(crate) struct PlayerArguments {
    #[command(flatten)]
    pub(crate) style: StyleArguments,
    /// Bow like the leader whose habits are in this file (arcata habits learn), in the style they were learned in
    #[arg(long, value_name = "FILE")]
    pub(crate) habits: Option<PathBuf>,
}

/// Who plays, and in which style.
#[derive(Clone, Debug, Args)]
pub(crate) struct StyleArguments {
    /// The player: professional, amateur, student, or a profile file
    #[arg(long, value_name = "PROFILE", default_value = "professional")]
    pub(crate) profile: String,
    /// How the music is bowed: concert, dance (reels and marches as printed in 1883) or early (the rule of the
    /// down-bow); without it as the profile says, which is concert unless it names another
    #[arg(long, value_name = "STYLE", value_parser = style)]
    pub(crate) style: Option<Style>,
}

/// A style by its name.
fn style(name: &str) -> Result<Style, String> {
    Style::named(name).ok_or_else(|| format!("there are {}", Style::ALL.map(Style::name).join(", ")))
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Table {
    /// Every stroke of the parts
    Strokes,
    /// Who begins a stroke on the downbeat of each bar
    Downbeats,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Format {
    Text,
    Json,
    Csv,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum ReviewFormat {
    Text,
    Html,
    Json,
    Csv,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum PlanFormat {
    Text,
    Json,
    Csv,
    Svg,
    Png,
    Pdf,
}

#[derive(Debug, Args)]
pub(crate) struct ReviewArguments {
    #[command(flatten)]
    pub(crate) shared: SharedArguments,
    /// Text for people; html for a page with engraved music, which goes to --out; json or csv for programs
    #[arg(long, value_enum, default_value_t = ReviewFormat::Text)]
    pub(crate) format: ReviewFormat,
    /// The lightest severity to report: A cannot be played, B costs rehearsal time, C probably not
    /// meant, D clutter
    #[arg(long, value_enum, default_value_t = Weight::D)]
    pub(crate) severity: Weight,
    /// Leave a rule out
    #[arg(long, value_name = "RULE")]
    pub(crate) without: Vec<String>,
    /// Ask only this rule
    #[arg(long, value_name = "RULE")]
    pub(crate) only: Vec<String>,
    /// Write the report here instead of the terminal. With html: the page, or for several scores the folder
    /// of their pages; SCORE-review.html or the folder reviews where nothing is said
    #[arg(long, value_name = "FILE")]
    pub(crate) out: Option<PathBuf>,
    /// Read what is set aside from this file instead of SCORE.aside.toml beside each score
    #[arg(long, value_name = "FILE", conflicts_with = "tell_all")]
    pub(crate) aside: Option<PathBuf>,
    /// Parts of this score, each in a file of its own: where they differ from the score is reported
    #[arg(long, value_name = "PART", num_args = 1.., value_delimiter = None)]
    pub(crate) beside: Vec<PathBuf>,
    /// Report what is set aside, too
    #[arg(long)]
    pub(crate) tell_all: bool,
    /// Explain the rules in this language on the page of --format html: en, it, fr or de
    #[arg(long, value_name = "LANGUAGE", default_value_t = Language::English)]
    pub(crate) language: Language,
    /// Write a table (CSV) with one row a file here
    #[arg(long, value_name = "FILE")]
    pub(crate) summary: Option<PathBuf>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Weight {
    #[value(name = "A", alias = "a")]
    A,
    #[value(name = "B", alias = "b")]
    B,
    #[value(name = "C", alias = "c")]
    C,
    #[value(name = "D", alias = "d")]
    D,
}

#[derive(Debug, Args)]
pub(crate) struct PlanArguments {
    #[command(flatten)]
    pub(crate) shared: SharedArguments,
    /// Text for people, json or csv for programs; svg, png or pdf for a picture of the music with the bow
    /// under it, which goes to --out
    #[arg(long, value_enum, default_value_t = PlanFormat::Text)]
    pub(crate) format: PlanFormat,
    /// Width of the picture or page, millimetres: 210 for paper, about 100 for a phone
    #[arg(long, value_name = "MILLIMETRES", default_value_t = 210, value_parser = clap::value_parser!(u16).range(80..=600))]
    pub(crate) width: u16,
    /// Also show this many other ways to bow the bars of --bars, each with a drawing of the bow; with
    /// --end, how many ways to show
    #[arg(long, value_name = "COUNT", default_value_t = 0, value_parser = clap::value_parser!(u8).range(0..=20))]
    pub(crate) alternatives: u8,
    /// Say for every stroke how many players in a hundred would take that bow; in pictures strokes for which two ways are
    /// nearly equal are hollow
    #[arg(long)]
    pub(crate) sure: bool,
    /// Fix the stroke at a bar and beat: "60/1 down", "Viola, bar 12, beat 2½ up", "30/1 down retake"; may be given
    /// several times. Says its penalty, and which anchors do not go together
    #[arg(long, value_name = "ANCHOR")]
    pub(crate) anchor: Vec<String>,
    /// Ways to end a bar on a certain bow, the best first: "8 down"
    #[arg(long, value_name = "BAR BOW")]
    pub(crate) end: Option<String>,
    /// Which changes to the slurs would help most, up to this many
    #[arg(long, value_name = "CHANGES", default_value_t = 0, value_parser = clap::value_parser!(u8).range(0..=8))]
    pub(crate) repairs: u8,
    /// Write the score itself to --out, with the plan's down- and up-bows added: on every stroke, or
    /// only where players bowing as it comes would go wrong
    #[arg(long, value_enum, requires = "out")]
    pub(crate) marks: Option<MarksArgument>,
    /// What text and csv show; json holds both
    #[arg(long, value_enum, default_value_t = Table::Strokes)]
    pub(crate) table: Table,
    /// Plan as if no bow marks were printed
    #[arg(long)]
    pub(crate) hide_printed: bool,
    /// Write here instead of the terminal
    #[arg(long, value_name = "FILE")]
    pub(crate) out: Option<PathBuf>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum MarksArgument {
    All,
    Least,
}

#[derive(Debug, Args)]
pub(crate) struct MarksArguments {
    #[command(flatten)]
    pub(crate) shared: SharedArguments,
    /// Text for people, json or csv for programs
    #[arg(long, value_enum, default_value_t = Format::Text)]
    pub(crate) format: Format,
    /// Write the report here instead of the terminal
    #[arg(long, value_name = "FILE")]
    pub(crate) out: Option<PathBuf>,
    /// Write the score itself here, without the marks of --take; every other byte as it was
    #[arg(long, value_name = "SCORE2")]
    pub(crate) write: Option<PathBuf>,
    /// The marks that --write takes out
    #[arg(long, value_enum, value_delimiter = ',', default_values_t = [Surplus::Obvious], requires = "write")]
    pub(crate) take: Vec<Surplus>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Surplus {
    /// Those that would come anyway
    Obvious,
    /// Those that contradict what they stand on; where both bows stand on one stroke you must choose
    Contradictory,
}
