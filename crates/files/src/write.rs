//! Files written so that nothing is ever lost.
//!
//! A file is written whole beside the old one and renamed over it; the old one is kept under another name
//! until the new one has been read back and found right. While that goes on a lock keeps other writers
//! waiting. A file that was read first is only written if nobody else has written it since.

use std::ffi::OsString;
use std::fs::{File, OpenOptions, TryLockError};
use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::time::Duration;

use crate::FileError;

/// How long to wait for another writer, in steps.
const PATIENCE: (u32, Duration) = (200, Duration::from_millis(50));

/// Writes a file whole.
///
/// # Errors
/// [`FileError::Write`] and [`FileError::Locked`]; what was there before is still there.
pub fn write_whole(path: &Path, bytes: &[u8]) -> Result<(), FileError> {
    let lock = Lock::take(path)?;
    let written = write_locked(path, bytes);
    lock.release();
    written
}

/// Writes a file that was read before, unless somebody else has changed it meanwhile.
///
/// # Errors
/// As for [`write_whole`], and [`FileError::Changed`].
pub fn rewrite(path: &Path, read: &[u8], bytes: &[u8]) -> Result<(), FileError> {
    let lock = Lock::take(path)?;
    let written = match std::fs::read(path) {
        Ok(now) if now == read => write_locked(path, bytes),
        _ => Err(FileError::Changed { path: path.to_owned() }),
    };
    lock.release();
    written
}

fn write_locked(path: &Path, bytes: &[u8]) -> Result<(), FileError> {
    let failed = |why: String| FileError::Write { path: path.to_owned(), why };
    let said = |error: std::io::Error| failed(error.to_string());
    let mut beside = tempfile::NamedTempFile::new_in(folder_of(path)).map_err(said)?;
    beside.write_all(bytes).map_err(said)?;
    beside.as_file().sync_all().map_err(said)?;
    open_to_readers(beside.as_file(), path);
    let backup = keep(path).map_err(said)?;
    beside.persist(path).map_err(|error| said(error.error))?;
    if std::fs::read(path).is_ok_and(|read| read == bytes) {
        if let Some(backup) = backup {
            // A backup too many harms nobody.
            let _ = std::fs::remove_file(backup);
        }
        return Ok(());
    }
    match backup {
        Some(backup) => {
            std::fs::rename(&backup, path).map_err(said)?;
            Err(failed("what was written could not be read back".to_owned()))
        }
        None => {
            Err(failed("what was written could not be read back, and nothing was there before".to_owned()))
        }
    }
}

/// Keeps what a file holds under another name; nothing where there is no file. A backup that an earlier
/// write left behind is left alone.
fn keep(path: &Path) -> std::io::Result<Option<PathBuf>> {
    if !path.exists() {
        return Ok(None);
    }
    let free = (1..).map(|number| {
        let ending = if number == 1 { ".backup".to_owned() } else { format!(".backup-{number}") };
        beside(path, "", &ending)
    });
    for backup in free.take(1000) {
        match std::fs::hard_link(path, &backup) {
            Ok(()) => return Ok(Some(backup)),
            Err(error) if error.kind() == std::io::ErrorKind::AlreadyExists => {}
            // A file system without links.
            Err(_) if !backup.exists() => return std::fs::copy(path, &backup).map(|_| Some(backup)),
            Err(_) => {}
        }
    }
    Err(std::io::Error::other("a thousand backups lie beside it; look through them and remove them"))
}

/// Keeps what a file holds under a name that is free, for good, and says which.
///
/// # Errors
/// [`FileError::Write`] where it cannot be copied, or there is no such file.
pub fn back_up(path: &Path) -> Result<PathBuf, FileError> {
    let failed = |why: String| FileError::Write { path: path.to_owned(), why };
    let backup = keep(path).map_err(|error| failed(error.to_string()))?;
    backup.ok_or_else(|| failed("there is no file to keep".to_owned()))
}

fn folder_of(path: &Path) -> &Path {
    path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."))
}

/// A path beside another, its name with something before and behind.
fn beside(path: &Path, before: &str, behind: &str) -> PathBuf {
    let mut name = OsString::from(before);
    name.push(path.file_name().unwrap_or_default());
    name.push(behind);
    folder_of(path).join(name)
}

/// Temporary files are private; the result gets the permissions of the file it replaces, or the usual
/// ones. Where that fails the file is still whole, only private.
fn open_to_readers(file: &File, path: &Path) {
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt as _;
        let permissions = std::fs::metadata(path)
            .map_or_else(|_| std::fs::Permissions::from_mode(0o644), |metadata| metadata.permissions());
        let _ = file.set_permissions(permissions);
    }
    #[cfg(not(unix))]
    let _ = (file, path);
}

/// The right to write a file, held until released; the system releases it when the program ends.
struct Lock {
    file: File,
    path: PathBuf,
}

impl Lock {
    fn take(target: &Path) -> Result<Self, FileError> {
        let path = beside(target, ".", ".lock");
        let failed =
            |error: std::io::Error| FileError::Write { path: target.to_owned(), why: error.to_string() };
        let (steps, pause) = PATIENCE;
        for _ in 0..steps {
            let file =
                OpenOptions::new().create(true).truncate(false).write(true).open(&path).map_err(failed)?;
            match file.try_lock() {
                // Whoever held it may have removed the file: then the lock is on nothing.
                Ok(()) if is_at(&file, &path) => return Ok(Self { file, path }),
                Ok(()) => {}
                Err(TryLockError::WouldBlock) => std::thread::sleep(pause),
                Err(TryLockError::Error(error)) => return Err(failed(error)),
            }
        }
        Err(FileError::Locked { path: target.to_owned() })
    }

    fn release(self) {
        // Removed while still held, so that nobody can lock what is about to go.
        let _ = std::fs::remove_file(&self.path);
        drop(self.file);
    }
}

/// Whether an open file is the one that a path leads to.
fn is_at(file: &File, path: &Path) -> bool {
    #[cfg(unix)]
    {
        use std::os::unix::fs::MetadataExt as _;
        let number = |metadata: std::fs::Metadata| (metadata.dev(), metadata.ino());
        match (file.metadata(), std::fs::metadata(path)) {
            (Ok(open), Ok(there)) => number(open) == number(there),
            _ => false,
        }
    }
    #[cfg(not(unix))]
    {
        let _ = file;
        path.exists()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn names(folder: &Path) -> Vec<String> {
        let entries = std::fs::read_dir(folder).unwrap();
        let mut names: Vec<String> =
            entries.map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
        names.sort();
        names
    }

    #[test]
    fn nothing_but_the_file_is_left() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("tour.json");
        write_whole(&path, b"one").unwrap();
        write_whole(&path, b"two").unwrap();
        assert_eq!(std::fs::read(&path).unwrap(), b"two");
        assert_eq!(names(folder.path()), ["tour.json"]);
    }

    #[test]
    fn what_somebody_else_wrote_meanwhile_is_not_written_over() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("tour.json");
        write_whole(&path, b"read").unwrap();
        write_whole(&path, b"theirs").unwrap();
        let refused = rewrite(&path, b"read", b"mine").unwrap_err().to_string();
        assert!(refused.contains("was changed by somebody else"), "{refused}");
        assert_eq!(std::fs::read(&path).unwrap(), b"theirs");
        rewrite(&path, b"theirs", b"mine").unwrap();
        assert_eq!(std::fs::read(&path).unwrap(), b"mine");
    }

    #[test]
    fn a_backup_stays_as_it_is_whatever_is_written_afterwards() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("tour.json");
        assert!(back_up(&path).is_err(), "there is nothing to keep");
        write_whole(&path, b"one").unwrap();
        let first = back_up(&path).unwrap();
        write_whole(&path, b"two").unwrap();
        let second = back_up(&path).unwrap();
        rewrite(&path, b"two", b"three").unwrap();
        assert_eq!(std::fs::read(first).unwrap(), b"one");
        assert_eq!(std::fs::read(second).unwrap(), b"two");
        assert_eq!(names(folder.path()), ["tour.json", "tour.json.backup", "tour.json.backup-2"]);
    }

    #[test]
    #[cfg(unix)]
    fn others_may_read_what_they_could_read_before() {
        use std::os::unix::fs::PermissionsExt as _;
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("tour.json");
        let mode = || std::fs::metadata(&path).unwrap().permissions().mode() & 0o777;
        write_whole(&path, b"one").unwrap();
        assert_eq!(mode(), 0o644);
        std::fs::set_permissions(&path, std::fs::Permissions::from_mode(0o640)).unwrap();
        write_whole(&path, b"two").unwrap();
        assert_eq!(mode(), 0o640);
    }

    #[test]
    fn a_backup_left_behind_is_left_alone() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("tour.json");
        std::fs::write(folder.path().join("tour.json.backup"), "from a crash").unwrap();
        write_whole(&path, b"one").unwrap();
        write_whole(&path, b"two").unwrap();
        let kept = std::fs::read_to_string(folder.path().join("tour.json.backup")).unwrap();
        assert_eq!(kept, "from a crash");
        assert_eq!(names(folder.path()), ["tour.json", "tour.json.backup"]);
    }

    #[test]
    fn many_writers_at_once_lose_nothing() {
        // Each adds its line to what it read, again and again until nobody was in between.
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("tour.json");
        write_whole(&path, b"").unwrap();
        std::thread::scope(|scope| {
            for writer in 0..4 {
                let path = &path;
                scope.spawn(move || {
                    for line in 0..10 {
                        loop {
                            let read = std::fs::read(path).unwrap();
                            let mut bytes = read.clone();
                            bytes.extend_from_slice(format!("{writer} {line}\n").as_bytes());
                            match rewrite(path, &read, &bytes) {
                                Ok(()) => break,
                                Err(FileError::Changed { .. }) => {}
                                Err(other) => panic!("{other}"),
                            }
                        }
                    }
                });
            }
        });
        assert_eq!(std::fs::read_to_string(&path).unwrap().lines().count(), 40);
        assert_eq!(names(folder.path()), ["tour.json"]);
    }
}
