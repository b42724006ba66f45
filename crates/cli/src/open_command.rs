//! `arcata open`: the workbench in the browser.

use std::process::ExitCode;

use arcata_workbench::{ServeSettings, serve};

use crate::args::OpenArguments;
use crate::failure::Failure;
use crate::{engraving, files, habits_file, house_file};

/// Serves the score until the interrupt key is pressed.
pub(crate) fn run(arguments: &OpenArguments) -> Result<ExitCode, Failure> {
    let settings = ServeSettings {
        score: arguments.score.clone(),
        layers: arguments.layer.clone(),
        habits: arguments.habits.as_deref().map(habits_file::read).transpose()?,
        house: house_file::of(arguments.house.as_deref())?,
        port: arguments.port,
    };
    let told = serve(&settings, engraving::engraver(), |address, once| {
        files::show(&format!("{address}\n"));
        if !arguments.no_browser && open::that_detached(once).is_err() {
            files::complain(&files::wording().word("failure-no-browser"));
        }
        files::say(&format!("{}\n", files::wording().word("open-is-kept")));
    });
    told.map(|()| ExitCode::SUCCESS)
        .map_err(|problem| Failure::Workbench { why: files::told(&problem.to_string()) })
}
