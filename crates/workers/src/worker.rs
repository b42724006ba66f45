//! One worker, seen from the program.

use std::ffi::OsString;
use std::io;
use std::path::Path;
use std::process::Command;
use std::time::Duration;

use arcata_engrave::{EngravingOrder, PressError};
use tempfile::TempDir;

use crate::piped::{NoReply, PipedProcess};
use crate::protocol::{read_reply, write_order};

/// A process in which the library works.
#[derive(Debug)]
pub(crate) struct Worker {
    process: PipedProcess<Result<String, PressError>>,
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
        let process = PipedProcess::start(&mut command, read_reply)?;
        Ok(Self { process, has_worked: false, _folder: folder })
    }

    pub(crate) fn fill(&mut self, order: &EngravingOrder) -> Result<Result<String, PressError>, NoReply> {
        write_order(self.process.orders(), order).map_err(|_| NoReply::Ended)?;
        let reply = self.process.reply_within(Duration::from_secs(order.seconds))?;
        self.has_worked = true;
        Ok(reply)
    }
}
