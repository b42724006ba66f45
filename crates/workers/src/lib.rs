//! The engraving library in processes of its own.
//!
//! The library's C++ holds thousands of assertions, and legal music can break one; then its process ends. [`Workers`] lets it
//! work in a few processes beside the program: each order goes there and the drawing comes back through pipes
//! ([`protocol`]). A worker that ends, or takes too long, costs the one drawing; the next order gets a new one. A worker is the
//! program itself, started with an argument that makes it call [`serve`]; it is given nothing but its pipes and an empty folder
//! for the library's fonts. Whoever has other work for a process of its own takes [`PipedProcess`].
#![allow(
    clippy::disallowed_methods,
    reason = "an edge crate: it starts processes, speaks through pipes and waits by the clock"
)]

mod frame;
mod piped;
pub mod protocol;
mod worker;

use std::ffi::OsString;
use std::io::{self, Read, Write};
use std::path::PathBuf;
use std::sync::{Condvar, Mutex, MutexGuard, PoisonError};

use arcata_engrave::{EngravingOrder, InProcess, Press, PressError};

use protocol::{read_order, write_reply};
use worker::Worker;

pub use frame::{frame_text, read_frame, write_frame};
pub use piped::{NoReply, PipedProcess};

/// Fills orders as a worker: one after another from `input`, until it ends.
///
/// # Errors
/// A pipe that breaks, and orders that are none.
pub fn serve(input: &mut impl Read, output: &mut impl Write) -> io::Result<()> {
    let press = InProcess::default();
    press.prepare();
    while let Some(order) = read_order(input)? {
        write_reply(output, &press.fill(&order))?;
    }
    Ok(())
}

/// A few processes in which the library works.
#[derive(Debug)]
pub struct Workers {
    program: PathBuf,
    arguments: Vec<OsString>,
    most: usize,
    state: Mutex<PoolState>,
    /// A worker has become idle, or another may be started.
    freed: Condvar,
}

#[derive(Debug, Default)]
struct PoolState {
    idle: Vec<Worker>,
    /// Those that work, too.
    alive: usize,
}

impl Workers {
    /// At most as many workers as there are cores; each is started when it is first needed, as `program` with
    /// `arguments`.
    #[must_use]
    pub fn new(program: PathBuf, arguments: Vec<OsString>) -> Self {
        let most = std::thread::available_parallelism().map_or(1, usize::from);
        Self { program, arguments, most, state: Mutex::default(), freed: Condvar::new() }
    }

    fn state(&self) -> MutexGuard<'_, PoolState> {
        self.state.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// An idle worker, a new one, or the first that becomes idle.
    fn hire(&self) -> Result<Worker, PressError> {
        let mut state = self.state();
        loop {
            if let Some(worker) = state.idle.pop() {
                return Ok(worker);
            }
            if state.alive < self.most {
                state.alive += 1;
                drop(state);
                return Worker::start(&self.program, &self.arguments).map_err(|_| {
                    self.gone();
                    PressError::NotStarted
                });
            }
            state = self.freed.wait(state).unwrap_or_else(PoisonError::into_inner);
        }
    }

    fn gone(&self) {
        self.state().alive -= 1;
        self.freed.notify_one();
    }

    fn idle(&self, worker: Worker) {
        self.state().idle.push(worker);
        self.freed.notify_one();
    }
}

impl Press for Workers {
    fn prepare(&self) {
        if let Ok(worker) = self.hire() {
            self.idle(worker);
        }
    }

    fn fill(&self, order: &EngravingOrder) -> Result<String, PressError> {
        loop {
            let mut worker = self.hire()?;
            let has_worked = worker.has_worked;
            match worker.fill(order) {
                Ok(reply) => {
                    self.idle(worker);
                    return reply;
                }
                Err(why) => {
                    drop(worker);
                    self.gone();
                    match why {
                        NoReply::TooLong => return Err(PressError::TooLong { seconds: order.seconds }),
                        // Somebody may have ended it between two orders: only a new worker's end is the music's fault.
                        NoReply::Ended if has_worked => {}
                        NoReply::Ended => return Err(PressError::Refused),
                    }
                }
            }
        }
    }
}
