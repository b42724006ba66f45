//! The teacher's hand: the file of it, and the page on which the class is gone through.

use std::path::PathBuf;

use arcata_class::{HandAct, TeachersHand, pages};
use arcata_languages::Saying;
use arcata_workbench::{HandServeSettings, serve_hand};

use crate::args::ClassArguments;
use crate::failure::Failure;
use crate::files;

/// The journal beside the task: `week-2.hand.jsonl` beside `week-2.toml`.
fn journal(arguments: &ClassArguments) -> PathBuf {
    let mut name = arguments.task.file_stem().unwrap_or_default().to_owned();
    name.push(".hand.jsonl");
    arguments.task.with_file_name(name)
}

/// What the teacher has done to the sheets: of the file that is named, else of the journal beside the task.
pub(crate) fn read(arguments: &ClassArguments) -> Result<TeachersHand, Failure> {
    let path = match &arguments.hand {
        Some(path) => path.clone(),
        None => journal(arguments),
    };
    if arguments.hand.is_none() && !path.exists() {
        return Ok(TeachersHand::default());
    }
    let failed = |why: String| Failure::Task { path: path.clone(), why: files::told(&why) };
    let text = files::read_text(&path).map_err(failed)?;
    let read = if TeachersHand::is_journal(&text) { TeachersHand::replayed } else { TeachersHand::read };
    read(&text).map_err(failed)
}

/// Serves the page until the interrupt key is pressed.
pub(crate) fn go_through(arguments: &ClassArguments, page: String) -> Result<(), Failure> {
    let journal = journal(arguments);
    let settings = HandServeSettings {
        page,
        script: pages::hand_script(),
        sheets: arguments.out.join("sheets"),
        journal: journal.clone(),
        head: TeachersHand::journal_head(),
        line: |text| HandAct::read(text).map(|act| act.line()),
        port: 0,
    };
    let told = serve_hand(settings, |begun| {
        files::show(&format!("{}\n", begun.address));
        if !arguments.no_browser && open::that_detached(&begun.once).is_err() {
            files::complain(&files::wording().word("failure-no-browser"));
        }
        let kept = Saying::new("open-is-kept-in").quoting("path", journal.display().to_string());
        files::say(&format!("{}\n", files::wording().say(&kept)));
    });
    told.map_err(|problem| Failure::GoThrough { why: files::told(&problem.to_string()) })
}
