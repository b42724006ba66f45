//! What the program prints as JSON of the files of music21's corpus is what the published schemas say, closed: what they do not
//! name may not be there. Every eighth file, so that all manners of writing come and the check stays short.

use std::path::{Path, PathBuf};
use std::process::Command;

use arcata_testkit::Published;
use rayon::prelude::*;

use crate::laws;
use crate::outcome::{CheckOutcome, Result};
use crate::setting::{CheckSetting, read_text};

/// The commands, with what they are asked besides.
const COMMANDS: [(&str, &[&str]); 3] = [("review", &[]), ("plan", &["--sure"]), ("marks", &[])];

pub(crate) fn check(setting: &CheckSetting, outcome: &mut CheckOutcome) -> Result<()> {
    let program = std::env::var_os("ARCATA_PROGRAM")
        .map(PathBuf::from)
        .ok_or("ARCATA_PROGRAM is not set; call this through cargo xtask")?;
    let files: Vec<PathBuf> = laws::files(setting)?.into_iter().step_by(8).collect();
    for (command, more) in COMMANDS {
        let path = setting.root.join(format!("docs/schema/{command}.schema.json"));
        let schema = Published::new(&read_text(&path)?)?;
        let wrong: Vec<String> =
            files.par_iter().filter_map(|file| wrong(&program, (command, more), file, &schema)).collect();
        for sentence in &wrong {
            outcome.check(false, sentence);
        }
        outcome.check(!files.is_empty(), "the corpus holds files");
        println!("{command}: {} files, {} of them not as the schema says", files.len(), wrong.len());
    }
    Ok(())
}

/// What is wrong with the JSON of a file; nothing where it is as it should be.
fn wrong(
    program: &Path,
    (command, more): (&str, &[&str]),
    file: &Path,
    schema: &Published,
) -> Option<String> {
    let done = Command::new(program).arg(command).arg(file).args(["--format", "json"]).args(more).output();
    let named = |why: String| Some(format!("{command} {}: {why}", file.display()));
    let done = match done {
        Ok(done) => done,
        Err(problem) => return named(problem.to_string()),
    };
    match serde_json::from_slice(&done.stdout) {
        Ok(value) => schema.complaints(&value).into_iter().next().and_then(named),
        Err(problem) => named(problem.to_string()),
    }
}
