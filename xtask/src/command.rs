//! Running other programs: their output is shown as it comes and kept for counting.

use std::io::{BufRead, BufReader, Read};
use std::process::{Command, Stdio};
use std::sync::Mutex;
use std::thread;

use crate::places::Folders;

/// What a program did.
pub(crate) struct Ran {
    /// Whether it ended with exit code 0.
    pub(crate) well: bool,
    /// Its lines, of both outputs.
    pub(crate) lines: Vec<String>,
}

/// A cargo command in the checkout, with the shared target folder.
pub(crate) fn cargo(places: &Folders, arguments: &[&str]) -> Command {
    let mut command = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    command.args(locked(arguments)).current_dir(&places.root).env("CARGO_TARGET_DIR", &places.target);
    command
}

/// What builds goes by the lockfile, or says that it is not as the manifests want it.
fn locked<'a>(arguments: &[&'a str]) -> Vec<&'a str> {
    let mut arguments = arguments.to_vec();
    match arguments.as_slice() {
        ["nextest", "run", ..] => arguments.insert(2, "--locked"),
        ["build" | "check" | "clippy" | "test" | "run", ..] => arguments.insert(1, "--locked"),
        _ => {}
    }
    arguments
}

/// Runs a program, showing its lines with `prefix` before each.
pub(crate) fn run(command: &mut Command, prefix: &str) -> Result<Ran, String> {
    run_showing(command, prefix, |_| true)
}

/// Runs a program, showing those of its lines that `shown` picks, with `prefix` before each.
pub(crate) fn run_showing(
    command: &mut Command,
    prefix: &str,
    shown: fn(&str) -> bool,
) -> Result<Ran, String> {
    let name = command.get_program().to_string_lossy().into_owned();
    let mut child = command
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .map_err(|problem| format!("cannot start {name}: {problem}"))?;
    let lines = Mutex::new(Vec::new());
    let (out, complaints) = (child.stdout.take(), child.stderr.take());
    thread::scope(|scope| {
        scope.spawn(|| follow(out, prefix, shown, &lines));
        follow(complaints, prefix, shown, &lines);
    });
    let status = child.wait().map_err(|problem| format!("{name}: {problem}"))?;
    let lines = lines.into_inner().unwrap_or_default();
    Ok(Ran { well: status.success(), lines })
}

fn follow(source: Option<impl Read>, prefix: &str, shown: fn(&str) -> bool, lines: &Mutex<Vec<String>>) {
    let Some(source) = source else { return };
    let mut source = BufReader::new(source);
    let mut bytes = Vec::new();
    while source.read_until(b'\n', &mut bytes).is_ok_and(|count| count > 0) {
        let line = String::from_utf8_lossy(&bytes).trim_end().to_owned();
        if shown(&line) {
            println!("{prefix}{line}");
        }
        if let Ok(mut lines) = lines.lock() {
            lines.push(line);
        }
        bytes.clear();
    }
}

/// Runs a program silently and gives its standard output, or nothing where it is missing or fails.
pub(crate) fn answer(command: &mut Command) -> Option<String> {
    let output = command.stdin(Stdio::null()).stderr(Stdio::null()).output().ok()?;
    output.status.success().then(|| String::from_utf8_lossy(&output.stdout).into_owned())
}
