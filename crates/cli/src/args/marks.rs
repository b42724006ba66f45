//! `arcata marks`.

use std::path::PathBuf;

use clap::{Args, ValueEnum};

use super::shared::{Format, SharedArguments};

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
