//! The power cut in the middle of a command: from the calls that it made, every state in which the disk may be found. A file's bytes are
//! there once the file was put on the disk; names are there once their folder was, and before that any of them may be.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use crate::trust_faults::FolderContent;

/// A change of names that is not on the disk yet.
#[derive(Clone, Debug, PartialEq, Eq)]
enum NameChange {
    Named(PathBuf, usize),
    Moved(PathBuf, PathBuf, usize),
    Gone(PathBuf),
}

/// What is known of a disk while a command runs.
#[derive(Default)]
struct Disk {
    /// Of each file, whether its bytes are on the disk.
    whole: Vec<bool>,
    /// Names as the program sees them.
    seen: BTreeMap<PathBuf, usize>,
    /// Names as they are on the disk.
    kept: BTreeMap<PathBuf, usize>,
    pending: Vec<NameChange>,
}

/// How many states there are, and what is lost in which. `watched` are the files that the command writes, and whether they were there.
pub(crate) fn cuts(
    log: &str,
    folder: &Path,
    before: &FolderContent,
    watched: &[(&Path, bool)],
) -> (u32, Vec<String>) {
    let mut disk = Disk::default();
    for path in before.keys() {
        let file = disk.file(true);
        disk.seen.insert(path.clone(), file);
        disk.kept.insert(path.clone(), file);
    }
    let old = disk.whole.len();
    let (mut states, mut lost) = (0, Vec::new());
    for line in log.lines().filter(|line| line.contains(&*folder.to_string_lossy())) {
        if !disk.take(line, folder) {
            continue;
        }
        for names in disk.states() {
            states += 1;
            for (path, was) in watched {
                let there = names.get(*path);
                if there.map_or(*was, |file| !disk.whole[*file]) {
                    lost.push(format!("power cut after {line}: {} is lost", path.display()));
                }
            }
        }
    }
    // The command has said that it is done: what it wrote is what is found.
    for names in disk.states() {
        states += 1;
        for (path, _) in watched {
            if names.get(*path).is_none_or(|file| *file < old) {
                lost.push(format!("power cut at the end: {} is not the new one", path.display()));
            }
        }
    }
    (states, lost)
}

impl Disk {
    fn file(&mut self, whole: bool) -> usize {
        self.whole.push(whole);
        self.whole.len() - 1
    }

    /// Takes a line of the log; whether it changed something.
    fn take(&mut self, line: &str, folder: &Path) -> bool {
        // "123 rename("a", "b") = 0": the number of the thread stands before.
        let Some((call, rest)) =
            line.trim_start_matches(|c: char| c.is_ascii_digit() || c == ' ').split_once('(')
        else {
            return false;
        };
        if rest.contains(" = -1 ") {
            return false;
        }
        let named: Vec<PathBuf> = rest.split('"').skip(1).step_by(2).map(PathBuf::from).collect();
        let opened = || rest.split_once('<')?.1.split_once('>').map(|(path, _)| PathBuf::from(path));
        match (call, &named[..]) {
            ("openat", [path]) if rest.contains("O_CREAT") && !self.seen.contains_key(path) => {
                // Nothing is in it, and nothing of it is missing.
                let file = self.file(true);
                self.seen.insert(path.clone(), file);
                self.pending.push(NameChange::Named(path.clone(), file));
            }
            ("write" | "ftruncate", _) => {
                let Some(file) = opened().and_then(|path| self.seen.get(&path).copied()) else {
                    return false;
                };
                self.whole[file] = false;
            }
            ("fsync" | "fdatasync", _) => match opened() {
                Some(path) if path == folder => {
                    for change in std::mem::take(&mut self.pending) {
                        make(&mut self.kept, &change);
                    }
                }
                Some(path) => {
                    let Some(file) = self.seen.get(&path).copied() else { return false };
                    self.whole[file] = true;
                }
                None => return false,
            },
            ("link" | "linkat", [from, to]) => {
                let Some(file) = self.seen.get(from).copied() else { return false };
                self.seen.insert(to.clone(), file);
                self.pending.push(NameChange::Named(to.clone(), file));
            }
            ("rename" | "renameat" | "renameat2", [from, to]) => {
                let Some(file) = self.seen.remove(from) else { return false };
                self.seen.insert(to.clone(), file);
                self.pending.push(NameChange::Moved(from.clone(), to.clone(), file));
            }
            ("unlink" | "unlinkat", [path]) => {
                if self.seen.remove(path).is_none() {
                    return false;
                }
                self.pending.push(NameChange::Gone(path.clone()));
            }
            _ => return false,
        }
        true
    }

    /// Every way in which names may be found: any of the changes may be on the disk already.
    fn states(&self) -> Vec<BTreeMap<PathBuf, usize>> {
        // A limit: more changes than this are never between two moments at which the folder is put on the disk.
        const MOST: usize = 12;
        let from = self.pending.len().saturating_sub(MOST);
        let mut sure = self.kept.clone();
        for change in &self.pending[..from] {
            make(&mut sure, change);
        }
        let late = &self.pending[from..];
        let chosen = |bits: u32| {
            let mut names = sure.clone();
            for (at, change) in late.iter().enumerate() {
                if bits >> at & 1 == 1 {
                    make(&mut names, change);
                }
            }
            names
        };
        (0..1_u32 << late.len()).map(chosen).collect()
    }
}

fn make(names: &mut BTreeMap<PathBuf, usize>, change: &NameChange) {
    match change {
        NameChange::Named(path, file) => {
            names.insert(path.clone(), *file);
        }
        NameChange::Moved(from, to, file) => {
            names.remove(from);
            names.insert(to.clone(), *file);
        }
        NameChange::Gone(path) => {
            names.remove(path);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const WELL: &str = r#"7 openat(AT_FDCWD</>, "/f/.tmp1", O_RDWR|O_CREAT|O_EXCL, 0600) = 4</f/.tmp1>
7 write(4</f/.tmp1>, ""..., 30) = 30
7 fsync(4</f/.tmp1>) = 0
7 linkat(AT_FDCWD</>, "/f/a", AT_FDCWD</>, "/f/a.backup", 0) = 0
7 rename("/f/.tmp1", "/f/a") = 0
7 openat(AT_FDCWD</>, "/f", O_RDONLY|O_CLOEXEC) = 5</f>
7 fsync(5</f>) = 0
7 unlink("/f/a.backup") = 0
"#;

    fn lost(log: &str) -> Vec<String> {
        let before = FolderContent::from([(PathBuf::from("/f/a"), b"old".to_vec())]);
        let (states, lost) = cuts(log, Path::new("/f"), &before, &[(Path::new("/f/a"), true)]);
        assert!(states > 10, "{states}");
        lost
    }

    #[test]
    fn a_file_written_as_it_should_be_is_never_lost() {
        assert_eq!(lost(WELL), Vec::<String>::new());
    }

    #[test]
    fn what_is_not_put_on_the_disk_first_is_found_out() {
        let unsynced = WELL.replace("7 fsync(4</f/.tmp1>) = 0\n", "");
        assert!(lost(&unsynced).iter().any(|said| said.contains("rename")));
        let nameless = WELL.replace("7 fsync(5</f>) = 0\n", "");
        assert!(lost(&nameless).iter().any(|said| said.contains("at the end")));
        let in_place = WELL.replace("/f/.tmp1", "/f/a");
        assert!(!lost(&in_place).is_empty());
    }
}
