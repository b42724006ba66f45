//! `arcata layer list`.

use std::path::PathBuf;
use std::process::ExitCode;

use arcata_report::{library_csv, library_json, library_text};
use clap::Args;

use crate::args::Format;
use crate::failure::Failure;
use crate::files;
use crate::library::{self, LibraryQuery};

#[derive(Debug, Args)]
pub(crate) struct ListArguments {
    /// The folder of works and layers; folders inside it are looked through, links are not followed
    #[arg(value_name = "FOLDER")]
    folder: PathBuf,
    /// Only works whose title holds this
    #[arg(long, value_name = "TEXT")]
    work: Option<String>,
    /// Only layers whose owner's name holds this
    #[arg(long, value_name = "TEXT")]
    owner: Option<String>,
    /// Only layers for an orchestra or ensemble whose name holds this
    #[arg(long, value_name = "TEXT")]
    ensemble: Option<String>,
    /// Text for people, json or csv for programs
    #[arg(long, value_enum, default_value_t = Format::Text)]
    format: Format,
    /// Read every file again, whatever the index remembers
    #[arg(long)]
    rebuild: bool,
}

pub(crate) fn run(arguments: &ListArguments) -> Result<ExitCode, Failure> {
    let asked = LibraryQuery {
        work: arguments.work.clone(),
        owner: arguments.owner.clone(),
        ensemble: arguments.ensemble.clone(),
    };
    let memory = if arguments.rebuild { library::Memory::Forgotten } else { library::Memory::Kept };
    let view = library::list(&arguments.folder, &asked, memory)?;
    match arguments.format {
        Format::Text => files::show_set(&library_text(&view, files::page())),
        Format::Json => files::hand_out(&library_json(&view)),
        Format::Csv => files::hand_out(&library_csv(&view)),
    }
    for trouble in &view.troubles {
        files::complain(&format!("{}: {}", trouble.file, trouble.why));
    }
    Ok(if view.troubles.is_empty() { ExitCode::SUCCESS } else { ExitCode::from(1) })
}
