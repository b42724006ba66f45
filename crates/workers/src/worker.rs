//! One worker, seen from the program.

use std::ffi::OsString;
use std::io::{self, BufReader, BufWriter};
use std::path::Path;
use std::process::{Child, ChildStdin, Command, Stdio};
use std::sync::mpsc::{Receiver, RecvTimeoutError, channel};
use std::time::Duration;

use arcata_engrave::{EngravingOrder, PressError};
use tempfile::TempDir;

use crate::protocol::{read_reply, write_order};

/// Why a worker gave no reply.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Lost {
    Ended,
    TooLong,
}

/// A process in which the library works.
#[derive(Debug)]
pub(crate) struct Worker {
    child: Child,
    orders: BufWriter<ChildStdin>,
    replies: Receiver<Result<String, PressError>>,
    /// Whether it has filled an order.
    pub(crate) has_worked: bool,
    /// Where the library lays out its fonts; it goes with the worker.
    _folder: TempDir,
}

impl Worker {
    pub(crate) fn start(program: &Path, arguments: &[OsString]) -> io::Result<Self> {
        let folder = tempfile::tempdir()?;
        let mut command = Command::new(program);
        command.args(arguments).env_clear().current_dir(folder.path());
        // The names that systems give the folder for temporary files.
        for name in ["TMPDIR", "TMP", "TEMP"] {
            command.env(name, folder.path());
        }
        // Without it no program starts on Windows.
        if let Some(root) = std::env::var_os("SystemRoot") {
            command.env("SystemRoot", root);
        }
        command.stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::null());
        let mut child = command.spawn()?;
        let (Some(orders), Some(output)) = (child.stdin.take(), child.stdout.take()) else {
            return Err(io::ErrorKind::BrokenPipe.into());
        };
        let (send, replies) = channel();
        std::thread::spawn(move || {
            let mut output = BufReader::new(output);
            while let Ok(reply) = read_reply(&mut output) {
                if send.send(reply).is_err() {
                    return;
                }
            }
        });
        Ok(Self { child, orders: BufWriter::new(orders), replies, has_worked: false, _folder: folder })
    }

    pub(crate) fn fill(&mut self, order: &EngravingOrder) -> Result<Result<String, PressError>, Lost> {
        write_order(&mut self.orders, order).map_err(|_| Lost::Ended)?;
        let reply =
            self.replies.recv_timeout(Duration::from_secs(order.seconds)).map_err(|why| match why {
                RecvTimeoutError::Timeout => Lost::TooLong,
                RecvTimeoutError::Disconnected => Lost::Ended,
            })?;
        self.has_worked = true;
        Ok(reply)
    }
}

impl Drop for Worker {
    fn drop(&mut self) {
        // It holds nothing that is not elsewhere, and its folder goes with it.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}
