//! Programs of the checkout that are given a list of files and say a line of fields for each thing they made.

use std::io::Write as _;
use std::path::Path;
use std::process::{Command, Stdio};

use crate::outcome::Result;

/// What a program says of a list, line by line; what it makes goes into the folder.
pub(crate) fn said<T>(
    program: &Path,
    folder: &Path,
    list: &str,
    row: impl Fn(&str) -> Result<T>,
) -> Result<Vec<T>> {
    let cannot = |problem: std::io::Error| format!("{}: {problem}", program.display());
    let mut child = Command::new(program)
        .arg(folder)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .map_err(cannot)?;
    // The list is short enough for the pipe; the program reads it line by line all the same.
    if let Some(mut input) = child.stdin.take() {
        input.write_all(list.as_bytes()).map_err(cannot)?;
    }
    let output = child.wait_with_output().map_err(cannot)?;
    if !output.status.success() {
        return Err(format!("{} stopped: {}", program.display(), output.status));
    }
    String::from_utf8_lossy(&output.stdout).lines().map(row).collect()
}
