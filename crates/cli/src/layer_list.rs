//! `arcata layer list`.

use std::process::ExitCode;

use arcata_languages::{Saying, retold};
use arcata_report::{library_csv, library_json, library_text};

use crate::args::{Format, ListArguments};
use crate::failure::Failure;
use crate::files;
use crate::library::{self, LibraryQuery};

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
        let why = retold(&trouble.why);
        let not_listed = Saying::new("failure-of").quoting("of", &trouble.file).with("why", why);
        files::complain(&files::wording().say(&not_listed));
    }
    Ok(if view.troubles.is_empty() { ExitCode::SUCCESS } else { ExitCode::from(1) })
}
