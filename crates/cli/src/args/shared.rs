//! What several commands ask.

use std::path::PathBuf;

use arcata_bow::Style;
use clap::{Args, ValueEnum};

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

/// A style by its name.
fn style(name: &str) -> Result<Style, String> {
    Style::named(name).ok_or_else(|| format!("there are {}", Style::ALL.map(Style::name).join(", ")))
}
