//! `arcata open`.

use std::path::PathBuf;

use clap::Args;

#[derive(Debug, Args)]
pub(crate) struct OpenArguments {
    /// The score, a MusicXML file; without one the page offers those opened last, your folders, and demos
    #[arg(value_name = "SCORE")]
    pub(crate) score: Option<PathBuf>,
    /// Layers to lay on the desk with it; they are read, and written only when you keep them
    #[arg(long, value_name = "LAYER", num_args = 1.., requires = "score")]
    pub(crate) layer: Vec<PathBuf>,
    /// Bow as a leader does whose habits stand in this file (arcata habits learn)
    #[arg(long, value_name = "FILE")]
    pub(crate) habits: Option<PathBuf>,
    /// How the house wants its parts, for their pages; a file of what differs from the shipped profile
    #[arg(long, value_name = "FILE")]
    pub(crate) house: Option<PathBuf>,
    /// The port on this machine's own address; 0 for any that is free
    #[arg(long, value_name = "PORT", default_value_t = 0)]
    pub(crate) port: u16,
    /// Only print the address, and leave the browser alone
    #[arg(long)]
    pub(crate) no_browser: bool,
    /// Stop when the last page has been closed; where it is opened from a desktop no key can stop it
    #[arg(long)]
    pub(crate) until_closed: bool,
}
