//! `arcata help-pages`: the help of all commands as pages for `man`, and what shells complete them by. Packages bring both.

use std::process::ExitCode;

use clap::CommandFactory as _;
use clap_complete::Shell;

use crate::args::{Arguments, HelpPagesArguments};
use crate::failure::Failure;
use crate::files;

/// The shells, and how their files are called in the folders where they look.
const SHELLS: [(Shell, &str); 4] = [
    (Shell::Bash, "arcata.bash"),
    (Shell::Zsh, "_arcata"),
    (Shell::Fish, "arcata.fish"),
    (Shell::PowerShell, "arcata.ps1"),
];

/// Writes them.
pub(crate) fn run(arguments: &HelpPagesArguments) -> Result<ExitCode, Failure> {
    let (pages, completions) = (arguments.folder.join("man"), arguments.folder.join("completions"));
    for folder in [&pages, &completions] {
        files::make_folder(folder)?;
    }
    clap_mangen::generate_to(Arguments::command(), &pages)
        .map_err(|problem| Failure::Folder { path: pages, why: files::told(&problem.to_string()) })?;
    for (shell, name) in SHELLS {
        let mut text = Vec::new();
        clap_complete::generate(shell, &mut Arguments::command(), "arcata", &mut text);
        arcata_files::write_whole(&completions.join(name), &text)?;
    }
    Ok(ExitCode::SUCCESS)
}
