//! `arcata plan`.

use std::path::PathBuf;

use clap::{Args, ValueEnum};

use super::marks::MarksArgument;
use super::shared::{SharedArguments, Table};

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
