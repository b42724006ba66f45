//! `arcata review`.

use std::path::PathBuf;

use clap::{Args, ValueEnum};

use super::shared::SharedArguments;

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum ReviewFormat {
    Text,
    Html,
    Json,
    Csv,
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
