//! A process that is told things through a pipe and replies through another.

use std::io::{self, BufReader, BufWriter, Write};
use std::process::{Child, ChildStdin, ChildStdout, Command, Stdio};
use std::sync::mpsc::{Receiver, RecvTimeoutError, channel};
use std::time::Duration;

/// Why there was no reply.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoReply {
    /// The process has ended, or said something that is no reply.
    Ended,
    /// It took longer than was given.
    TooLong,
}

/// A process with a pipe each way, and nothing else to say or be told; it is ended when this is dropped.
#[derive(Debug)]
pub struct PipedProcess<Reply> {
    child: Child,
    orders: BufWriter<ChildStdin>,
    replies: Receiver<Reply>,
}

impl<Reply: Send + 'static> PipedProcess<Reply> {
    /// Starts a program; `read` takes one reply after another from what it says, until it cannot.
    ///
    /// ```no_run
    /// use std::process::Command;
    /// use std::time::Duration;
    ///
    /// use arcata_workers::{NoReply, PipedProcess, read_frame, write_frame};
    ///
    /// let mut echo = PipedProcess::start(&mut Command::new("cat"), |said| read_frame(said))?;
    /// write_frame(echo.orders(), b"bow")?;
    /// echo.send()?;
    /// assert_eq!(echo.reply_within(Duration::from_secs(20)), Ok(b"bow".to_vec()));
    /// assert_eq!(echo.reply_within(Duration::from_millis(10)), Err(NoReply::TooLong));
    /// # Ok::<(), std::io::Error>(())
    /// ```
    ///
    /// # Errors
    /// A program that cannot be started.
    pub fn start(
        command: &mut Command,
        read: fn(&mut BufReader<ChildStdout>) -> io::Result<Reply>,
    ) -> io::Result<Self> {
        command.stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::null());
        let mut child = command.spawn()?;
        let (Some(orders), Some(output)) = (child.stdin.take(), child.stdout.take()) else {
            return Err(io::ErrorKind::BrokenPipe.into());
        };
        let (send, replies) = channel();
        std::thread::spawn(move || {
            let mut output = BufReader::new(output);
            while let Ok(reply) = read(&mut output) {
                if send.send(reply).is_err() {
                    return;
                }
            }
        });
        Ok(Self { child, orders: BufWriter::new(orders), replies })
    }

    /// Where orders are written; they go off with [`Self::send`].
    pub fn orders(&mut self) -> &mut impl Write {
        &mut self.orders
    }

    /// Sends off what was written.
    ///
    /// # Errors
    /// A pipe that is broken.
    pub fn send(&mut self) -> io::Result<()> {
        self.orders.flush()
    }

    /// Waits so long for a reply.
    ///
    /// # Errors
    /// Why there is none.
    pub fn reply_within(&self, limit: Duration) -> Result<Reply, NoReply> {
        self.replies.recv_timeout(limit).map_err(|why| match why {
            RecvTimeoutError::Timeout => NoReply::TooLong,
            RecvTimeoutError::Disconnected => NoReply::Ended,
        })
    }

    /// The number that the system knows it by.
    #[must_use]
    pub fn id(&self) -> u32 {
        self.child.id()
    }
}

impl<Reply> Drop for PipedProcess<Reply> {
    fn drop(&mut self) {
        // What it was at is told by whoever waited for it.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}
