//! `arcata help-pages`.

use std::path::PathBuf;

use clap::Args;

#[derive(Debug, Args)]
pub(crate) struct HelpPagesArguments {
    /// Where they go: man/ with a page for each command, completions/ with a file for each shell
    #[arg(value_name = "FOLDER")]
    pub(crate) folder: PathBuf,
}
