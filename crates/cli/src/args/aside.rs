//! `arcata aside`.

use std::path::PathBuf;

use clap::{Args, ValueEnum};

use super::shared::PlayerArguments;

#[derive(Debug, Args)]
pub(crate) struct AsideArguments {
    /// The score, a MusicXML file
    #[arg(value_name = "SCORE")]
    pub(crate) score: PathBuf,
    /// Why: it is kept with the entry
    #[arg(long, value_name = "TEXT")]
    pub(crate) reason: String,
    /// The rule; any rule where it is left out
    #[arg(long, value_name = "RULE")]
    pub(crate) rule: Option<String>,
    /// Say what the slurs are that begin there, instead of setting findings aside: phrase marks, which leave the
    /// bow free, or bows
    #[arg(long, value_enum, value_name = "WHAT", conflicts_with = "rule", requires = "bars")]
    pub(crate) slur: Option<SlurIsArgument>,
    /// The part or section, by its full name or abbreviation
    #[arg(long, value_name = "PART")]
    pub(crate) part: Option<String>,
    /// The bars: 12, 5-8, "II, bar 12"; with a beat where it is one place: "bar 12, beat 3½"
    #[arg(long, value_name = "BARS")]
    pub(crate) bars: Option<String>,
    /// The beat: 3, 3½, 3.5 or 7/2
    #[arg(long, value_name = "BEAT", requires = "bars")]
    pub(crate) beat: Option<String>,
    /// The movement, by its number or heading as printed or its place in the file: II or 2
    #[arg(long, value_name = "MOVEMENT")]
    pub(crate) movement: Option<String>,
    /// The file that gets the entry, instead of SCORE.aside.toml beside the score
    #[arg(long, value_name = "FILE")]
    pub(crate) aside: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) player: PlayerArguments,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum SlurIsArgument {
    Phrase,
    Bow,
}
