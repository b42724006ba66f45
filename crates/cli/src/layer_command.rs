//! `arcata layer …`: the commands about bowing layers.

use std::process::ExitCode;

use clap::{Args, Subcommand};

use crate::failure::Failure;
use crate::{layer_enter, layer_list, layer_sheet};

#[derive(Debug, Args)]
pub(crate) struct LayerArguments {
    #[command(subcommand)]
    command: LayerCommand,
}

#[derive(Debug, Subcommand)]
enum LayerCommand {
    /// Put typed-in bowings (shorthand) into a layer
    #[command(
        after_help = "The text comes from --notes or from standard input, one line an entry or several:\n\n  Vn1 37/3 down\n  41-42 hook 2\n  45 as it comes\n  anchor 60/1 down\n\nThe whole grammar: docs/manual/shorthand.md. Exit codes: 0 entered, 1 the text has troubles and\nnothing was written, 2 could not run."
    )]
    Enter(layer_enter::EnterArguments),
    /// Print what a copyist changes in the parts: a page a section, and one for the librarian
    Sheet(layer_sheet::SheetArguments),
    /// List the works and bowing layers of a folder
    #[command(after_help = "Exit codes: 0 listed, 1 listed, but a file could not be read, 2 could not run.")]
    List(layer_list::ListArguments),
}

pub(crate) fn run(arguments: &LayerArguments) -> Result<ExitCode, Failure> {
    match &arguments.command {
        LayerCommand::Enter(enter) => layer_enter::run(enter),
        LayerCommand::Sheet(sheet) => layer_sheet::run(sheet),
        LayerCommand::List(list) => layer_list::run(list),
    }
}
