//! Engraving: the library works in processes of its own, which are this program, too.

use std::ffi::OsString;
use std::process::ExitCode;

use arcata_engrave::Engraver;
use arcata_workers::Workers;

/// The argument that makes the program a worker.
const WORKER: &str = "engraving-worker";

/// Fills orders, where the program was started for that; what no person types stands in no help.
pub(crate) fn work() -> Option<ExitCode> {
    if std::env::args_os().nth(1).is_none_or(|first| first != WORKER) {
        return None;
    }
    let (mut input, mut output) = (std::io::stdin().lock(), std::io::stdout().lock());
    // Nobody is there who could be told; the program sees the pipe end.
    let done = arcata_workers::serve(&mut input, &mut output);
    Some(if done.is_ok() { ExitCode::SUCCESS } else { ExitCode::from(2) })
}

/// An engraver that no music can end the program with. Where the program does not know its own file the library works in it.
pub(crate) fn engraver() -> Engraver {
    match std::env::current_exe() {
        Ok(program) => Engraver::with(Box::new(Workers::new(program, vec![OsString::from(WORKER)]))),
        Err(_) => Engraver::new(),
    }
}
