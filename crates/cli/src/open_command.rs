//! `arcata open`: the workbench in the browser.

use std::path::PathBuf;
use std::process::ExitCode;

use arcata_workbench::{ServeSettings, serve};
use clap::Args;

use crate::failure::Failure;
use crate::habits_command;
use crate::{engraving, files};

#[derive(Debug, Args)]
pub(crate) struct OpenArguments {
    /// The score, a MusicXML file
    #[arg(value_name = "SCORE")]
    pub(crate) score: PathBuf,
    /// Layers to lay on the desk with it; they are read, and written only when you keep them
    #[arg(long, value_name = "LAYER", num_args = 1..)]
    pub(crate) layer: Vec<PathBuf>,
    /// Bow as a leader does whose habits stand in this file (arcata habits learn)
    #[arg(long, value_name = "FILE")]
    pub(crate) habits: Option<PathBuf>,
    /// The port on this machine's own address; 0 for any that is free
    #[arg(long, value_name = "PORT", default_value_t = 0)]
    pub(crate) port: u16,
    /// Only print the address, and leave the browser alone
    #[arg(long)]
    pub(crate) no_browser: bool,
}

/// Serves the score until the interrupt key is pressed.
pub(crate) fn run(arguments: &OpenArguments) -> Result<ExitCode, Failure> {
    let settings = ServeSettings {
        score: arguments.score.clone(),
        layers: arguments.layer.clone(),
        habits: arguments.habits.as_deref().map(habits_command::read).transpose()?,
        port: arguments.port,
    };
    let told = serve(&settings, engraving::engraver(), |address, once| {
        files::show(&format!("{address}\n"));
        if !arguments.no_browser && open::that_detached(once).is_err() {
            files::complain("no browser could be opened; open the address above in one on this machine");
        }
        files::say("What you do is kept beside the score as you do it. Stop with Ctrl+C.\n");
    });
    told.map(|()| ExitCode::SUCCESS).map_err(|problem| Failure::Workbench { why: problem.to_string() })
}
