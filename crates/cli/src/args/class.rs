//! What `arcata class` is asked.

use std::path::PathBuf;

use clap::Args;

#[derive(Debug, Args)]
pub(crate) struct ClassArguments {
    /// The folder with the hand-ins, or a .zip archive of them
    #[arg(value_name = "FOLDER")]
    pub(crate) folder: PathBuf,
    /// The task: what it trains, what was given, how its sheets are to be
    #[arg(long, value_name = "FILE")]
    pub(crate) task: PathBuf,
    /// The folder that the pages go to; made where there is none
    #[arg(long, value_name = "PAGES")]
    pub(crate) out: PathBuf,
    /// Who goes by which pseudonym, the same in every task; made where there is none, readable by you alone. Usually
    /// class-key.toml beside the task
    #[arg(long, value_name = "FILE")]
    pub(crate) key: Option<PathBuf>,
    /// Say the names instead of pseudonyms: pages for yourself
    #[arg(long)]
    pub(crate) named: bool,
    /// The pages of the task before: every sheet says what has gone since, what is new and what is back again
    #[arg(long, value_name = "PAGES")]
    pub(crate) before: Option<PathBuf>,
    /// The list of the class, a name a line: the page of the class says from whom nothing came
    #[arg(long, value_name = "FILE")]
    pub(crate) students: Option<PathBuf>,
    /// What you have done to the sheets, as the page hand.html gave it: passages shown and struck, your sentences, criteria
    /// ticked. Without it, what --go-through keeps beside the task, if anything
    #[arg(long, value_name = "FILE")]
    pub(crate) hand: Option<PathBuf>,
    /// Then open the page on which you go through the class; every act is kept at once in a file beside the task
    #[arg(long, conflicts_with = "hand")]
    pub(crate) go_through: bool,
    /// Print the address of that page and open no browser
    #[arg(long, requires = "go_through")]
    pub(crate) no_browser: bool,
    /// Seconds that one hand-in may take; then it is told, and the others go on
    #[arg(long, value_name = "SECONDS", default_value_t = 300, value_parser = clap::value_parser!(u64).range(1..=86_400))]
    pub(crate) limit: u64,
    /// Megabytes of memory that one hand-in may take; then it is told, and the others go on. Linux alone says how many it takes
    #[arg(long, value_name = "MEGABYTES", default_value_t = 3072, value_parser = clap::value_parser!(u64).range(64..=1_048_576))]
    pub(crate) memory: u64,
    /// Make every sheet anew, those of a run before too
    #[arg(long)]
    pub(crate) anew: bool,
}
