//! Commands that write files, killed at every system call that touches a file, with calls that fail, and with the power cut: by
//! `strace`, on the program as it is built.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

use crate::places::Folders;
use crate::steps;
use crate::tools::{self, copy};

use crate::trust_power::cuts;

/// Calls at which the program is killed.
const KILLED: &str = "openat,write,fsync,fdatasync,link,linkat,rename,renameat,renameat2,unlink,unlinkat,ftruncate,fchmod,flock";
/// Calls that fail, each with what it says.
const FAILING: [(&str, &str); 7] = [
    ("write", "ENOSPC"),
    ("write", "EIO"),
    ("fsync", "EIO"),
    ("link,linkat", "EMLINK"),
    ("rename,renameat,renameat2", "EIO"),
    ("fdatasync", "EIO"),
    ("flock", "EIO"),
];
/// A limit: no command makes more of these calls.
const MOST_CALLS: usize = 2000;

/// Commands with `IN/` before each of their files.
const COMMANDS: [(&str, &[&str]); 5] = [
    (
        "a layer entered",
        &["layer", "enter", "IN/score.musicxml", "--notes", "IN/notes.txt", "--out", "IN/new.json"],
    ),
    (
        "a layer put on a score",
        &["layer", "apply", "IN/score.musicxml", "--layer", "IN/layer.json", "--out", "IN/bowed.musicxml"],
    ),
    ("a finding set aside", &["aside", "IN/score.musicxml", "--rule", "bow-drift", "--reason", "Once more."]),
    ("marks written", &["plan", "IN/score.musicxml", "--marks", "all", "--out", "IN/marked.musicxml"]),
    (
        "marks lifted",
        &["layer", "lift", "IN/score.musicxml", "--layer", "IN/lifted.json", "--out", "IN/clean.musicxml"],
    ),
];

/// The files of a folder with their bytes.
pub(crate) type FolderContent = BTreeMap<PathBuf, Vec<u8>>;

/// A folder in which a command is tried again and again.
struct FaultTrial {
    program: PathBuf,
    folder: PathBuf,
    before: FolderContent,
}

#[derive(Default)]
struct FaultCounts {
    kills: u32,
    kill_losses: u32,
    errors: u32,
    error_losses: u32,
    untold: u32,
    cuts: u32,
    cut_losses: u32,
}

pub(crate) fn faults(places: &Folders) -> Result<Vec<(&'static str, f64)>, String> {
    tools::debian_programs(&[("strace", "strace")])?;
    let folder = places.cache.join(format!("faults-{}", std::process::id()));
    fs::create_dir_all(&folder).map_err(|problem| problem.to_string())?;
    let folder = folder.canonicalize().map_err(|problem| problem.to_string())?;
    let counts = tried(places, &folder);
    // Only a leftover of this run.
    let _ = fs::remove_dir_all(&folder);
    let counts = counts?;
    Ok([
        ("kill-points", counts.kills),
        ("kill-losses", counts.kill_losses),
        ("error-points", counts.errors),
        ("error-losses", counts.error_losses),
        ("error-untold", counts.untold),
        ("power-cuts", counts.cuts),
        ("power-losses", counts.cut_losses),
    ]
    .map(|(name, count)| (name, f64::from(count)))
    .to_vec())
}

fn tried(places: &Folders, folder: &Path) -> Result<FaultCounts, String> {
    let mut trial = FaultTrial {
        program: steps::program(places)?,
        folder: folder.to_owned(),
        before: FolderContent::new(),
    };
    trial.prepare(places)?;
    let mut counts = FaultCounts::default();
    for (what, command) in COMMANDS {
        trial.restore()?;
        let done = trial.run(&["-e", "trace=none"], command)?;
        // Code 1 says that something was found.
        if done.status.code().is_none_or(|code| code > 1) {
            return Err(format!("{what}: {}", String::from_utf8_lossy(&done.stderr)));
        }
        let after = trial.content()?;
        trial.kill(what, command, &after, &mut counts)?;
        trial.fail(what, command, &after, &mut counts)?;
        trial.cut(what, command, &after, &mut counts)?;
        println!(
            "  {what}: by now {} kills, {} failing calls, {} power cuts",
            counts.kills, counts.errors, counts.cuts
        );
    }
    Ok(counts)
}

impl FaultTrial {
    /// A score, a layer and a file of what is set aside, as they are before each command.
    fn prepare(&mut self, places: &Folders) -> Result<(), String> {
        let demo = places.root.join("demo").join("lantern-study.musicxml");
        copy(&demo, &self.folder.join("score.musicxml"))?;
        fs::write(self.folder.join("notes.txt"), "all 1/1 down\n2/1 up\n")
            .map_err(|problem| problem.to_string())?;
        let layer =
            ["layer", "enter", "IN/score.musicxml", "--notes", "IN/notes.txt", "--out", "IN/layer.json"];
        let aside = ["aside", "IN/score.musicxml", "--rule", "slur-outlasts-bow", "--reason", "A trial."];
        for command in [&layer[..], &aside[..]] {
            let done = self.run(&["-e", "trace=none"], command)?;
            if !done.status.success() {
                return Err(String::from_utf8_lossy(&done.stderr).into_owned());
            }
        }
        self.before = self.content()?;
        Ok(())
    }

    fn content(&self) -> Result<FolderContent, String> {
        let entries = fs::read_dir(&self.folder).map_err(|problem| problem.to_string())?;
        let paths = entries.filter_map(|entry| Some(entry.ok()?.path()));
        paths
            .map(|path| Ok((path.clone(), fs::read(&path).map_err(|problem| problem.to_string())?)))
            .collect()
    }

    /// The folder as it was before the command.
    fn restore(&self) -> Result<(), String> {
        for path in self.content()?.keys() {
            fs::remove_file(path).map_err(|problem| problem.to_string())?;
        }
        for (path, bytes) in &self.before {
            fs::write(path, bytes).map_err(|problem| problem.to_string())?;
        }
        Ok(())
    }

    /// Runs a command under strace.
    fn run(&self, options: &[&str], command: &[&str]) -> Result<Output, String> {
        let into = format!("{}/", self.folder.display());
        let words = command.iter().map(|word| word.replace("IN/", &into));
        let mut strace = Command::new("strace");
        strace
            .args(["-f", "-qq", "-y", "-s", "0", "-o"])
            .arg(self.log())
            .args(options)
            .arg(&self.program)
            .args(words);
        strace.stdin(Stdio::null()).output().map_err(|problem| format!("strace: {problem}"))
    }

    fn log(&self) -> PathBuf {
        self.folder.with_extension("strace")
    }

    /// Files that are neither what they were nor what they become.
    fn lost(&self, after: &FolderContent, whole: bool) -> Result<Vec<PathBuf>, String> {
        let now = self.content()?;
        let is_lost = |path: &&PathBuf| {
            let (there, was, will) = (now.get(*path), self.before.get(*path), after.get(*path));
            if whole { there != will } else { there != was && there != will }
        };
        Ok(self.before.keys().chain(after.keys()).filter(is_lost).cloned().collect())
    }

    fn kill(
        &self,
        what: &str,
        command: &[&str],
        after: &FolderContent,
        counts: &mut FaultCounts,
    ) -> Result<(), String> {
        for call in 1..MOST_CALLS {
            self.restore()?;
            let inject = format!("inject={KILLED}:signal=KILL:when={call}");
            let done = self.run(&["-e", &format!("trace={KILLED}"), "-e", &inject], command)?;
            let ended = done.status.code().is_some_and(|code| code < 2);
            let lost = self.lost(after, ended)?;
            for path in &lost {
                println!("  {what}, killed at call {call}: {} is lost", path.display());
            }
            counts.kill_losses += u32::from(!lost.is_empty());
            if ended {
                return Ok(());
            }
            counts.kills += 1;
        }
        Err(format!("{what}: more than {MOST_CALLS} calls"))
    }

    fn fail(
        &self,
        what: &str,
        command: &[&str],
        after: &FolderContent,
        counts: &mut FaultCounts,
    ) -> Result<(), String> {
        for (calls, error) in FAILING {
            for call in 1..MOST_CALLS {
                self.restore()?;
                let inject = format!("inject={calls}:error={error}:when={call}");
                let done = self.run(&["-e", &format!("trace={calls}"), "-e", &inject], command)?;
                let log = fs::read_to_string(self.log()).map_err(|problem| problem.to_string())?;
                let Some(failed) = log.lines().find(|line| line.contains("(INJECTED)")) else { break };
                // What is said to the terminal, or woken in another thread, is no file.
                if calls == "write" && !failed.contains(&*self.folder.to_string_lossy()) {
                    continue;
                }
                counts.errors += 1;
                let well = done.status.code().is_some_and(|code| code < 2);
                let lost = self.lost(after, well)?;
                for path in &lost {
                    println!("  {what}, {error} at {calls} {call}: {} is lost", path.display());
                }
                counts.error_losses += u32::from(!lost.is_empty());
                if !well && done.stderr.is_empty() {
                    println!("  {what}, {error} at {calls} {call}: nobody is told");
                    counts.untold += 1;
                }
            }
        }
        Ok(())
    }

    fn cut(
        &self,
        what: &str,
        command: &[&str],
        after: &FolderContent,
        counts: &mut FaultCounts,
    ) -> Result<(), String> {
        self.restore()?;
        self.run(&["-e", &format!("trace={KILLED},close")], command)?;
        let log = fs::read_to_string(self.log()).map_err(|problem| problem.to_string())?;
        let watched = after.keys().filter(|path| self.before.get(*path) != after.get(*path));
        let watched: Vec<(&Path, bool)> =
            watched.map(|path| (path.as_path(), self.before.contains_key(path))).collect();
        let (all, lost) = cuts(&log, &self.folder, &self.before, &watched);
        for sentence in &lost {
            println!("  {what}, {sentence}");
        }
        counts.cuts += all;
        counts.cut_losses += u32::try_from(lost.len()).unwrap_or(u32::MAX);
        Ok(())
    }
}
