//! Hand-ins are looked at in processes of their own, which are this program, too: one that takes too long, takes too much memory
//! or makes the program fail costs its own sheet and nobody else's.
#![expect(
    clippy::disallowed_methods,
    reason = "an edge: it starts processes, speaks through pipes and waits by the clock"
)]

use std::ffi::OsString;
use std::io::{self, BufReader, Read, Write};
use std::process::{Child, ChildStdin, Command, Stdio};
use std::sync::mpsc::{Receiver, RecvTimeoutError, channel};
use std::time::{Duration, Instant};

use crate::class_hand_ins::HandedIn;

/// The argument that makes the program a worker; the others are those of the run that it works for.
const WORKER: &str = "class-worker";
/// A limit: nothing longer goes through the pipes.
const LONGEST: usize = 1 << 20;
/// Rule of thumb: how often it is looked how much memory a worker has.
const LOOK_EVERY: Duration = Duration::from_millis(100);
/// A limit, bytes: what one hand-in may take. The largest that are read (32 MiB) take less; see the manual.
const MOST_MEMORY: u64 = 3 << 30;

/// The arguments of the run that this process works for, where it is a worker; what no person types stands in no help.
pub(crate) fn works_for() -> Option<Vec<OsString>> {
    let mut all = std::env::args_os();
    let program = all.next()?;
    (all.next()? == WORKER).then(|| std::iter::once(program).chain(all).collect())
}

fn write_frame(out: &mut impl Write, text: &str) -> io::Result<()> {
    let length = u32::try_from(text.len()).map_err(|_| io::Error::from(io::ErrorKind::InvalidInput))?;
    out.write_all(&length.to_le_bytes())?;
    out.write_all(text.as_bytes())?;
    out.flush()
}

/// A text; none where the pipe ends before one.
fn read_frame(input: &mut impl Read) -> Option<String> {
    let mut length = [0; 4];
    input.read_exact(&mut length).ok()?;
    let length = usize::try_from(u32::from_le_bytes(length)).ok().filter(|length| *length <= LONGEST)?;
    let mut bytes = vec![0; length];
    input.read_exact(&mut bytes).ok()?;
    String::from_utf8(bytes).ok()
}

/// Makes one sheet after another as it is told, until the pipe ends. `make` says what went wrong with writing.
pub(crate) fn serve(mut make: impl FnMut(&HandedIn) -> Result<(), String>) -> Result<(), String> {
    let (mut input, mut output) = (io::stdin().lock(), io::stdout().lock());
    while let Some(told) = read_frame(&mut input) {
        let hand_in = HandedIn::from_told(&told).ok_or("an order that is none")?;
        let failed = make(&hand_in).err().unwrap_or_default();
        write_frame(&mut output, &failed).map_err(|error| error.to_string())?;
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

/// A process that makes sheets.
struct ClassWorker {
    child: Child,
    orders: ChildStdin,
    replies: Receiver<String>,
}

impl ClassWorker {
    fn start() -> io::Result<Self> {
        let mut arguments = std::env::args_os();
        let _program = arguments.next();
        let mut command = Command::new(std::env::current_exe()?);
        command.arg(WORKER).args(arguments);
        command.stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::null());
        let mut child = command.spawn()?;
        let (Some(orders), Some(output)) = (child.stdin.take(), child.stdout.take()) else {
            return Err(io::ErrorKind::BrokenPipe.into());
        };
        let (send, replies) = channel();
        std::thread::spawn(move || {
            let mut output = BufReader::new(output);
            while let Some(reply) = read_frame(&mut output) {
                if send.send(reply).is_err() {
                    return;
                }
            }
        });
        Ok(Self { child, orders, replies })
    }

    fn make(&mut self, told: &str, limit: Duration) -> Result<(), NotMade> {
        let ended = || NotMade::HandIn("the program failed over this file; please report it".to_owned());
        write_frame(&mut self.orders, told).map_err(|_| ended())?;
        let begun = Instant::now();
        loop {
            match self.replies.recv_timeout(LOOK_EVERY.min(limit)) {
                Ok(failed) if failed.is_empty() => return Ok(()),
                Ok(failed) => return Err(NotMade::Writing(failed)),
                Err(RecvTimeoutError::Disconnected) => return Err(ended()),
                Err(RecvTimeoutError::Timeout) if begun.elapsed() >= limit => {
                    return Err(NotMade::HandIn(format!(
                        "it took longer than {} seconds; a longer time is given by --limit",
                        limit.as_secs()
                    )));
                }
                Err(RecvTimeoutError::Timeout) => {}
            }
            if memory(self.child.id()).is_some_and(|bytes| bytes > MOST_MEMORY) {
                return Err(NotMade::HandIn(format!("it took more than {} GB of memory", MOST_MEMORY >> 30)));
            }
        }
    }
}

impl Drop for ClassWorker {
    fn drop(&mut self) {
        // What it was at is told, and its files are written whole or not at all.
        let _ = self.child.kill();
        let _ = self.child.wait();
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
    limit: Duration,
    worker: Option<ClassWorker>,
}

impl ClassSheetMaker {
    pub(crate) const fn new(limit: Duration) -> Self {
        Self { limit, worker: None }
    }

    /// Has the sheet of a hand-in made.
    pub(crate) fn make(&mut self, hand_in: &HandedIn) -> Result<(), NotMade> {
        let told = hand_in.told().filter(|told| told.len() <= LONGEST).ok_or(NotMade::NoWorker)?;
        let mut worker = match self.worker.take() {
            Some(worker) => worker,
            None => ClassWorker::start().map_err(|_| NotMade::NoWorker)?,
        };
        let made = worker.make(&told, self.limit);
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
    fn texts_come_through_a_pipe_as_they_were_and_pieces_of_them_do_not() {
        let mut pipe = Vec::new();
        write_frame(&mut pipe, "").expect("written");
        write_frame(&mut pipe, "Ødile\n\0").expect("written");
        let mut read = pipe.as_slice();
        assert_eq!(read_frame(&mut read).as_deref(), Some(""));
        assert_eq!(read_frame(&mut read).as_deref(), Some("Ødile\n\0"));
        assert_eq!(read_frame(&mut read), None);
        for cut in 4..pipe.len() {
            assert_eq!(read_frame(&mut &pipe[4..cut]), None, "{cut}");
        }
        assert_eq!(read_frame(&mut [255; 9].as_slice()), None);
    }

    #[test]
    #[cfg(target_os = "linux")]
    fn a_process_says_how_much_memory_it_has() {
        assert!(memory(std::process::id()).expect("this one does") > 1 << 20);
    }
}
