//! The teacher's hand: the file of it, and the page on which the class is gone through.

use std::path::{Path, PathBuf};

use arcata_class::{HandAct, TeachersHand, pages};
use arcata_languages::Saying;
use arcata_workbench::{HandServeSettings, serve_hand};

use crate::args::ClassArguments;
use crate::failure::Failure;
use crate::files;

/// A limit: a journal is read up to this size.
const LARGEST: usize = 256 << 20;

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
    if arguments.hand.is_none() {
        return TeachersHand::replayed(&sound(&path)?).map_err(failed);
    }
    let text = files::read_text(&path).map_err(failed)?;
    let read = if TeachersHand::is_journal(&text) { TeachersHand::replayed } else { TeachersHand::read };
    read(&text).map_err(failed)
}

/// The journal, sound: what cannot be understood to its end is kept whole under another name, which is told, and the work goes on
/// from what stands before.
fn sound(path: &Path) -> Result<String, Failure> {
    let failed = |why: String| Failure::Task { path: path.to_owned(), why };
    let bytes = files::read(path, LARGEST).map_err(failed)?;
    let text = String::from_utf8_lossy(&bytes).into_owned();
    // Bytes that are no text make the line that they stand in one that is not understood.
    let marked =
        if text.as_bytes() == bytes { text } else { text.replace(char::REPLACEMENT_CHARACTER, "\0") };
    let Some((good, line)) = TeachersHand::understood(&marked) else { return Ok(begun(marked)) };
    if arcata_files::is_held(path) {
        return Err(failed(files::told("another program goes through this class")));
    }
    let written = |error: arcata_files::FileError| failed(files::told(&error.why()));
    let kept = arcata_files::back_up(path).map_err(written)?;
    arcata_files::rewrite(path, &bytes, good.as_bytes()).map_err(written)?;
    let told = Saying::new("class-hand-set-beside")
        .quoting("journal", path.display().to_string())
        .quoting("line", line.to_string())
        .quoting("kept", kept.display().to_string());
    files::complain(&files::wording().say(&told));
    Ok(good)
}

/// A journal that was not begun to its end has the heading and nothing else.
fn begun(journal: String) -> String {
    let head = TeachersHand::journal_head();
    if journal.starts_with(&head) { journal } else { head }
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
