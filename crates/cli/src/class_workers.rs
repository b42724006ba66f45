//! Hand-ins are looked at in processes of their own, which are this program, too: one that takes too long, takes too much memory
//! or makes the program fail costs its own sheet and nobody else's.
#![expect(
    clippy::disallowed_methods,
    reason = "an edge: it starts processes, speaks through pipes and waits by the clock"
)]

use std::ffi::OsString;
use std::io::{self, Write};
use std::process::Command;
use std::time::{Duration, Instant};

use arcata_workers::{NoReply, PipedProcess, frame_text, read_frame, write_frame};

use crate::class_hand_ins::HandedIn;

/// The argument that makes the program a worker; the others are those of the run that it works for.
const WORKER: &str = "class-worker";
/// Rule of thumb: how often it is looked how much memory a worker has.
const LOOK_EVERY: Duration = Duration::from_millis(100);

/// What one hand-in may take.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct HandInLimits {
    pub(crate) time: Duration,
    /// Megabytes (2^20 bytes). The largest hand-ins that are read (32 MiB) take less than is usual; see the manual.
    pub(crate) megabytes: u64,
}

/// The arguments of the run that this process works for, where it is a worker; what no person types stands in no help.
pub(crate) fn works_for() -> Option<Vec<OsString>> {
    let mut all = std::env::args_os();
    let program = all.next()?;
    (all.next()? == WORKER).then(|| std::iter::once(program).chain(all).collect())
}

/// Makes one sheet after another as it is told, until the pipe ends. `make` says what went wrong with writing.
pub(crate) fn serve(mut make: impl FnMut(&HandedIn) -> Result<(), String>) -> Result<(), String> {
    let (mut input, mut output) = (io::stdin().lock(), io::stdout().lock());
    while let Ok(told) = read_frame(&mut input).and_then(frame_text) {
        let hand_in = HandedIn::from_told(&told).ok_or("an order that is none")?;
        let failed = make(&hand_in).err().unwrap_or_default();
        write_frame(&mut output, failed.as_bytes())
            .and_then(|()| output.flush())
            .map_err(|error| error.to_string())?;
    }
    Ok(())
}

/// Why a worker made no sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum NotMade {
    /// The hand-in is at fault, or the program over it: in words.
    HandIn(String),
    /// Pages cannot be written: in words.
    Writing(String),
    /// No worker can be started, or be told of this hand-in.
    NoWorker,
}

/// A process that makes sheets; it says what went wrong with writing, or nothing.
struct ClassWorker(PipedProcess<String>);

impl ClassWorker {
    fn start() -> io::Result<Self> {
        let mut command = Command::new(std::env::current_exe()?);
        command.arg(WORKER).args(std::env::args_os().skip(1));
        PipedProcess::start(&mut command, |output| read_frame(output).and_then(frame_text)).map(Self)
    }

    fn make(&mut self, told: &str, limits: HandInLimits) -> Result<(), NotMade> {
        let ended = || NotMade::HandIn("the program failed over this file; please report it".to_owned());
        write_frame(self.0.orders(), told.as_bytes()).and_then(|()| self.0.send()).map_err(|_| ended())?;
        let begun = Instant::now();
        loop {
            match self.0.reply_within(LOOK_EVERY.min(limits.time)) {
                Ok(failed) if failed.is_empty() => return Ok(()),
                Ok(failed) => return Err(NotMade::Writing(failed)),
                Err(NoReply::Ended) => return Err(ended()),
                Err(NoReply::TooLong) if begun.elapsed() >= limits.time => {
                    return Err(NotMade::HandIn(format!(
                        "it took longer than {} seconds; a longer time is given by --limit",
                        limits.time.as_secs()
                    )));
                }
                Err(NoReply::TooLong) => {}
            }
            if memory(self.0.id()).is_some_and(|bytes| bytes >> 20 > limits.megabytes) {
                return Err(NotMade::HandIn(format!(
                    "it took more than {} MB of memory; more is given by --memory",
                    limits.megabytes
                )));
            }
        }
    }
}

/// Memory that a process has, bytes; none where the system does not say (only Linux is asked).
fn memory(process: u32) -> Option<u64> {
    let told = std::fs::read_to_string(format!("/proc/{process}/status")).ok()?;
    let line = told.lines().find_map(|line| line.strip_prefix("VmRSS:"))?;
    line.trim().strip_suffix("kB")?.trim().parse::<u64>().ok().map(|kilobytes| kilobytes << 10)
}

/// Has sheets made by one worker, a new one after each that was ended.
pub(crate) struct ClassSheetMaker {
    limits: HandInLimits,
    worker: Option<ClassWorker>,
}

impl ClassSheetMaker {
    pub(crate) const fn new(limits: HandInLimits) -> Self {
        Self { limits, worker: None }
    }

    /// Has the sheet of a hand-in made.
    pub(crate) fn make(&mut self, hand_in: &HandedIn) -> Result<(), NotMade> {
        let told = hand_in.told().ok_or(NotMade::NoWorker)?;
        let mut worker = match self.worker.take() {
            Some(worker) => worker,
            None => ClassWorker::start().map_err(|_| NotMade::NoWorker)?,
        };
        let made = worker.make(&told, self.limits);
        // What failed over one hand-in is not trusted with another.
        if !matches!(made, Err(NotMade::HandIn(_))) {
            self.worker = Some(worker);
        }
        made
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    #[cfg(target_os = "linux")]
    fn a_process_says_how_much_memory_it_has() {
        assert!(memory(std::process::id()).expect("this one does") > 1 << 20);
    }
}
