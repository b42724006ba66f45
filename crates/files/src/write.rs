//! Files written so that nothing is ever lost.
//!
//! A file is written whole beside the old one and renamed over it; the old one is kept under another name
//! until the new one has been read back and found right. While that goes on a lock keeps other writers
//! waiting. A file that was read first is only written if nobody else has written it since. Whatever fails on the way,
//! the old file is there or the new one, never half of one, and it is told.

use std::ffi::OsString;
use std::fs::{File, OpenOptions, TryLockError};
use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::time::Duration;

use crate::FileError;

/// How long to wait for another writer, in steps.
const PATIENCE: (u32, Duration) = (200, Duration::from_millis(50));

/// Writes a file whole. A link is followed, and stays a link; what is no file (a device, a pipe) is written into.
///
/// # Errors
/// [`FileError::Write`] and [`FileError::Locked`]; what was there before is still there.
pub fn write_whole(path: &Path, bytes: &[u8]) -> Result<(), FileError> {
    write_with(path, MustStand::Whatever, bytes, &NoFault)
}

/// Writes a file that was read before, unless somebody else has changed it meanwhile.
///
/// # Errors
/// As for [`write_whole`], and [`FileError::Changed`].
pub fn rewrite(path: &Path, read: &[u8], bytes: &[u8]) -> Result<(), FileError> {
    write_with(path, MustStand::This(read), bytes, &NoFault)
}

/// Writes a file that was not there, unless somebody else has made it meanwhile.
///
/// # Errors
/// As for [`rewrite`].
pub fn write_new(path: &Path, bytes: &[u8]) -> Result<(), FileError> {
    write_with(path, MustStand::Nothing, bytes, &NoFault)
}

/// Writes a file whole that only its owner may read, whoever could read it before (on systems that know permissions of files).
///
/// # Errors
/// As for [`write_whole`].
pub fn write_private(path: &Path, bytes: &[u8]) -> Result<(), FileError> {
    #[cfg(unix)]
    {
        use std::os::unix::fs::{OpenOptionsExt as _, PermissionsExt as _};
        let failed = |error: std::io::Error| FileError::Write { path: path.to_owned(), why: said(&error) };
        // The file is private before anything stands in it: what replaces it gets its permissions.
        let made = OpenOptions::new().write(true).create_new(true).mode(0o600).open(path);
        match made {
            Err(error) if error.kind() == std::io::ErrorKind::AlreadyExists => {
                std::fs::set_permissions(path, std::fs::Permissions::from_mode(0o600)).map_err(failed)?;
            }
            made => drop(made.map_err(failed)?),
        }
    }
    write_whole(path, bytes)
}

/// What must stand there for a file to be written.
#[derive(Clone, Copy, Debug)]
enum MustStand<'b> {
    Whatever,
    Nothing,
    This(&'b [u8]),
}

impl MustStand<'_> {
    fn is_there(self, path: &Path) -> bool {
        match self {
            Self::Whatever => true,
            Self::Nothing => !path.exists(),
            Self::This(bytes) => std::fs::read(path).is_ok_and(|now| now == bytes),
        }
    }
}

fn write_with(
    path: &Path,
    before: MustStand<'_>,
    bytes: &[u8],
    fault: &dyn WriteFault,
) -> Result<(), FileError> {
    let failed = |why: String| FileError::Write { path: path.to_owned(), why };
    let target = behind_links(path).map_err(|error| failed(said(&error)))?;
    match std::fs::metadata(&target) {
        Ok(there) if there.is_dir() => return Err(failed("this is a folder, not a file".to_owned())),
        // Nothing can be renamed over these, and nothing is in them that could be lost.
        Ok(there) if !there.is_file() => {
            return write_into(&target, bytes).map_err(|error| failed(said(&error)));
        }
        _ => {}
    }
    let lock = Lock::take(path, &target)?;
    let written = before.is_there(&target).then(|| write_locked(&target, bytes, fault));
    lock.release();
    match written {
        Some(written) => written.map_err(failed),
        None => Err(FileError::Changed { path: path.to_owned() }),
    }
}

/// What happens while a file is written; each step can fail on its own.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum WriteStep {
    /// The new file is begun beside the old one.
    Begin,
    /// Its first half is written.
    FirstHalf,
    /// Its second half is written.
    SecondHalf,
    /// It is put on the disk.
    Sync,
    /// The old file gets a second name.
    Keep,
    /// The new file is renamed over the old one.
    Rename,
    /// The folder is put on the disk.
    SyncFolder,
    /// The new file is read back.
    ReadBack,
    /// The old file is brought back, where the new one could not be read.
    BringBack,
    /// The old file's second name goes.
    Forget,
}

/// Something that goes wrong at a step: nothing, outside tests.
trait WriteFault {
    fn at(&self, step: WriteStep) -> std::io::Result<()>;
}

struct NoFault;

impl WriteFault for NoFault {
    fn at(&self, _step: WriteStep) -> std::io::Result<()> {
        Ok(())
    }
}

/// What went wrong with writing, for people.
fn said(error: &std::io::Error) -> String {
    match error.kind() {
        std::io::ErrorKind::StorageFull | std::io::ErrorKind::QuotaExceeded => {
            "the disk is full; make room and do it again".to_owned()
        }
        // Windows: a file that another program has open, or a stretch of it that is locked.
        _ if cfg!(windows) && matches!(error.raw_os_error(), Some(32 | 33)) => {
            "another program has the file open; close it there and do it again".to_owned()
        }
        std::io::ErrorKind::PermissionDenied if cfg!(windows) => {
            "you may not write there, or another program has the file open; close it there, or name another place"
                .to_owned()
        }
        std::io::ErrorKind::PermissionDenied => {
            "you may not write in this folder; check its permissions, or name another place".to_owned()
        }
        std::io::ErrorKind::ReadOnlyFilesystem => "the disk can only be read; name another place".to_owned(),
        std::io::ErrorKind::NotFound => "there is no such folder; make it, or name another".to_owned(),
        _ => error.to_string(),
    }
}

/// The path of the file itself, whatever links lead to it; the last one may lead to a file that is not there yet.
fn behind_links(path: &Path) -> std::io::Result<PathBuf> {
    // As many as the system follows.
    const MOST: usize = 40;
    let mut at = path.to_owned();
    for _ in 0..MOST {
        match std::fs::read_link(&at) {
            Ok(leads) => at = folder_of(&at).join(leads),
            Err(_) => return Ok(at),
        }
    }
    Err(std::io::Error::other("it is a link that leads in a circle; name the file itself"))
}

fn write_into(path: &Path, bytes: &[u8]) -> std::io::Result<()> {
    let mut open = OpenOptions::new().write(true).open(path)?;
    open.write_all(bytes)?;
    open.flush()
}

fn write_locked(path: &Path, bytes: &[u8], fault: &dyn WriteFault) -> Result<(), String> {
    let told = |error: std::io::Error| said(&error);
    fault.at(WriteStep::Begin).map_err(told)?;
    let mut beside = tempfile::NamedTempFile::new_in(folder_of(path)).map_err(told)?;
    let (first, second) = bytes.split_at(bytes.len() / 2);
    for (step, half) in [(WriteStep::FirstHalf, first), (WriteStep::SecondHalf, second)] {
        fault.at(step).and_then(|()| beside.write_all(half)).map_err(told)?;
    }
    fault.at(WriteStep::Sync).and_then(|()| beside.as_file().sync_all()).map_err(told)?;
    open_to_readers(beside.as_file(), path);
    let backup = fault.at(WriteStep::Keep).and_then(|()| keep(path)).map_err(told)?;
    let renamed =
        fault.at(WriteStep::Rename).and_then(|()| beside.persist(path).map_err(|error| error.error));
    if let Err(error) = renamed {
        // The old file was never away: its second name is too many.
        forget(backup);
        return Err(said(&error));
    }
    // Where a folder cannot be put on the disk the file is whole all the same, only later.
    if fault.at(WriteStep::SyncFolder).is_ok() {
        sync_folder_of(path);
    }
    let back = fault.at(WriteStep::ReadBack).and_then(|()| std::fs::read(path));
    if back.is_ok_and(|read| read == bytes) {
        if fault.at(WriteStep::Forget).is_ok() {
            forget(backup);
        }
        return Ok(());
    }
    let unread = "what was written could not be read back";
    let Some(backup) = backup else { return Err(format!("{unread}, and nothing was there before")) };
    match fault.at(WriteStep::BringBack).and_then(|()| std::fs::rename(&backup, path)) {
        Ok(()) => Err(unread.to_owned()),
        Err(error) => {
            Err(format!("{unread}; what was there before is kept as {} ({})", backup.display(), said(&error)))
        }
    }
}

/// Takes a second name away. A backup too many harms nobody.
fn forget(backup: Option<PathBuf>) {
    if let Some(backup) = backup {
        let _ = std::fs::remove_file(backup);
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
            Err(_) if !backup.exists() => {
                let copied = std::fs::copy(path, &backup).map(|_| Some(backup.clone()));
                if copied.is_err() {
                    // Half a copy is no backup.
                    forget(Some(backup));
                }
                return copied;
            }
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
    let backup = behind_links(path).and_then(|target| keep(&target)).map_err(|error| failed(said(&error)))?;
    backup.ok_or_else(|| failed("there is no file to keep".to_owned()))
}

/// Puts the names in a file's folder on the disk, so that a new file is found there after a power cut. Where a folder cannot be put
/// on the disk, as on some systems, nothing is done: the names get there later.
pub fn sync_folder_of(path: &Path) {
    if let Ok(folder) = File::open(folder_of(path)) {
        let _ = folder.sync_all();
    }
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
    /// The lock of a file, `named` as the user names it.
    fn take(named: &Path, target: &Path) -> Result<Self, FileError> {
        let path = beside(target, ".", ".lock");
        let failed = |error: std::io::Error| FileError::Write { path: named.to_owned(), why: said(&error) };
        let (steps, pause) = PATIENCE;
        for _ in 0..steps {
            let file = match OpenOptions::new().create(true).truncate(false).write(true).open(&path) {
                // Windows: whoever held it has removed it, and has not closed it yet.
                Err(error) if cfg!(windows) && error.kind() == std::io::ErrorKind::PermissionDenied => {
                    std::thread::sleep(pause);
                    continue;
                }
                file => file.map_err(failed)?,
            };
            match file.try_lock() {
                // Whoever held it may have removed the file: then the lock is on nothing.
                Ok(()) if is_at(&file, &path) => return Ok(Self { file, path }),
                Ok(()) => {}
                Err(TryLockError::WouldBlock) => std::thread::sleep(pause),
                Err(TryLockError::Error(error)) => return Err(failed(error)),
            }
        }
        Err(FileError::Locked { path: named.to_owned() })
    }

    fn release(self) {
        // Removed while still held, so that nobody can lock what is about to go.
        let _ = std::fs::remove_file(&self.path);
        drop(self.file);
    }
}

/// Whether another program holds a file for as long as it is open, as a workbench does its journal.
#[must_use]
pub fn is_held(path: &Path) -> bool {
    File::open(path).is_ok_and(|file| matches!(file.try_lock(), Err(TryLockError::WouldBlock)))
}

/// Whether an open file is the one that a path leads to: another may have been renamed over it.
#[must_use]
pub fn is_at(file: &File, path: &Path) -> bool {
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
        let refused = write_new(&path, b"new").unwrap_err();
        assert_eq!(refused, FileError::Changed { path: path.clone() });
        assert_eq!(std::fs::read(&path).unwrap(), b"mine");
        std::fs::remove_file(&path).unwrap();
        write_new(&path, b"new").unwrap();
        assert_eq!(std::fs::read(&path).unwrap(), b"new");
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

    /// Goes wrong at some steps.
    struct At(Vec<WriteStep>);

    impl WriteFault for At {
        fn at(&self, step: WriteStep) -> std::io::Result<()> {
            let full = || std::io::Error::from(std::io::ErrorKind::StorageFull);
            if self.0.contains(&step) { Err(full()) } else { Ok(()) }
        }
    }

    const STEPS: [WriteStep; 10] = [
        WriteStep::Begin,
        WriteStep::FirstHalf,
        WriteStep::SecondHalf,
        WriteStep::Sync,
        WriteStep::Keep,
        WriteStep::Rename,
        WriteStep::SyncFolder,
        WriteStep::ReadBack,
        WriteStep::BringBack,
        WriteStep::Forget,
    ];

    /// Every set of steps that can go wrong together: the old file or the new one is there, whole, and what is not done is told.
    #[test]
    fn whatever_step_fails_the_old_file_is_there_or_the_new_one() {
        for wrong in 0..1_usize << STEPS.len() {
            let wrong: Vec<WriteStep> =
                (0..STEPS.len()).filter(|bit| wrong >> bit & 1 == 1).map(|bit| STEPS[bit]).collect();
            let folder = tempfile::tempdir().unwrap();
            let path = folder.path().join("tour.json");
            std::fs::write(&path, "old").unwrap();
            let done = write_with(&path, MustStand::Whatever, b"a new one", &At(wrong.clone()));
            let there = std::fs::read(&path).unwrap();
            let beside = names(folder.path());
            match &done {
                Ok(()) => assert_eq!(there, b"a new one", "{wrong:?}"),
                // Two things at once: the new file cannot be read back, nor the old one brought back. Its name is told.
                Err(error) if there != b"old" => {
                    assert!(
                        wrong.contains(&WriteStep::ReadBack) && wrong.contains(&WriteStep::BringBack),
                        "{wrong:?}"
                    );
                    assert!(error.to_string().contains("tour.json.backup"), "{error}");
                    assert_eq!(std::fs::read(folder.path().join("tour.json.backup")).unwrap(), b"old");
                }
                Err(error) => {
                    assert!(error.to_string().contains("What was there before is still there"), "{error}");
                    assert_eq!(beside, ["tour.json"], "{wrong:?} leaves nothing behind");
                }
            }
            assert!(
                done.is_err()
                    || !wrong.iter().any(|step| !matches!(
                        step,
                        WriteStep::SyncFolder | WriteStep::BringBack | WriteStep::Forget
                    ))
            );
        }
    }

    /// Ends the program at a step, as a kill does: nothing is tidied up.
    struct KilledAt(WriteStep);

    impl WriteFault for KilledAt {
        fn at(&self, step: WriteStep) -> std::io::Result<()> {
            if step == self.0 {
                // Half of a half is on its way already.
                std::process::abort();
            }
            Ok(())
        }
    }

    /// The step at which the child process of the next test ends, by its place in [`STEPS`], and the folder that it writes in.
    const KILLED: [&str; 2] = ["ARCATA_KILLED_AT", "ARCATA_KILLED_IN"];

    #[test]
    fn killed_at_any_step_the_old_file_is_there_or_the_new_one_and_the_next_write_goes_on() {
        let asked: Vec<String> = KILLED.iter().filter_map(|name| std::env::var(name).ok()).collect();
        if let [step, folder] = &asked[..] {
            let step: usize = step.parse().unwrap();
            let path = Path::new(folder).join("tour.json");
            write_with(&path, MustStand::Whatever, b"a new one", &KilledAt(STEPS[step])).unwrap();
            return;
        }
        for before in [None, Some("old")] {
            for (index, step) in STEPS.iter().enumerate() {
                let folder = tempfile::tempdir().unwrap();
                let path = folder.path().join("tour.json");
                if let Some(text) = before {
                    std::fs::write(&path, text).unwrap();
                }
                let ended = std::process::Command::new(std::env::current_exe().unwrap())
                    .args(["--exact", "--test-threads", "1"])
                    .arg("write::tests::killed_at_any_step_the_old_file_is_there_or_the_new_one_and_the_next_write_goes_on")
                    .env(KILLED[0], index.to_string())
                    .env(KILLED[1], folder.path())
                    .output()
                    .unwrap();
                // A file that was written without a trouble is never brought back, and a new one has nothing to forget.
                let never = *step == WriteStep::BringBack;
                assert_eq!(ended.status.success(), never, "{step:?}: {ended:?}");
                let there = std::fs::read_to_string(&path).ok();
                let renamed = matches!(
                    step,
                    WriteStep::SyncFolder | WriteStep::ReadBack | WriteStep::BringBack | WriteStep::Forget
                );
                let expected = if renamed { Some("a new one") } else { before };
                assert_eq!(there.as_deref(), expected, "{step:?}");
                // The lock of the dead holds nobody up, and what it left behind is not taken for anything.
                let start = std::time::Instant::now();
                rewrite(&path, there.unwrap_or_default().as_bytes(), b"the next one")
                    .ok()
                    .or_else(|| write_new(&path, b"the next one").ok())
                    .unwrap();
                assert!(start.elapsed() < Duration::from_secs(1), "{step:?}: {:?}", start.elapsed());
                assert_eq!(std::fs::read(&path).unwrap(), b"the next one");
                assert!(!names(folder.path()).iter().any(|name| name.ends_with(".lock")), "{step:?}");
            }
        }
    }

    #[test]
    fn a_file_that_was_not_there_is_whole_or_not_there() {
        for wrong in STEPS {
            let folder = tempfile::tempdir().unwrap();
            let path = folder.path().join("tour.json");
            let done = write_with(&path, MustStand::Whatever, b"a new one", &At(vec![wrong]));
            match std::fs::read(&path) {
                Ok(there) => assert_eq!(there, b"a new one", "{wrong:?}"),
                Err(_) => assert!(done.is_err() && names(folder.path()).is_empty(), "{wrong:?}"),
            }
        }
    }

    #[test]
    #[cfg(unix)]
    fn a_link_is_followed_and_stays_a_link() {
        use std::os::unix::fs::symlink;
        let folder = tempfile::tempdir().unwrap();
        let (near, far) = (folder.path().join("near"), folder.path().join("far"));
        std::fs::create_dir(&near).unwrap();
        std::fs::create_dir(&far).unwrap();
        let file = far.join("tour.json");
        symlink("../far/tour.json", near.join("one.json")).unwrap();
        symlink("one.json", near.join("two.json")).unwrap();
        // Once to a file that is not there yet.
        for text in [b"one", b"two"] {
            write_whole(&near.join("two.json"), text).unwrap();
            assert_eq!(std::fs::read(&file).unwrap(), text);
        }
        rewrite(&near.join("one.json"), b"two", b"three").unwrap();
        assert_eq!(std::fs::read(&file).unwrap(), b"three");
        assert!(near.join("one.json").is_symlink() && near.join("two.json").is_symlink());
        assert_eq!(
            (names(&near), names(&far)),
            (vec!["one.json".into(), "two.json".into()], vec!["tour.json".into()])
        );
        symlink("round.json", near.join("round.json")).unwrap();
        let refused = write_whole(&near.join("round.json"), b"one").unwrap_err().to_string();
        assert!(refused.contains("leads in a circle"), "{refused}");
    }

    #[test]
    #[cfg(target_os = "linux")]
    fn devices_stay_what_they_are_and_a_full_one_is_told() {
        write_whole(Path::new("/dev/null"), b"one").unwrap();
        let full = write_whole(Path::new("/dev/full"), b"one").unwrap_err().to_string();
        assert!(full.contains("the disk is full"), "{full}");
        for device in ["/dev/null", "/dev/full"] {
            use std::os::unix::fs::FileTypeExt as _;
            assert!(std::fs::metadata(device).unwrap().file_type().is_char_device(), "{device}");
        }
        let folder = tempfile::tempdir().unwrap();
        assert!(write_whole(folder.path(), b"one").unwrap_err().to_string().contains("this is a folder"));
        let nowhere = write_whole(&folder.path().join("no/tour.json"), b"one").unwrap_err().to_string();
        assert!(nowhere.contains("there is no such folder"), "{nowhere}");
        // The kernel's own folder can be written by nobody.
        let refused = write_whole(Path::new("/proc/tour.json"), b"one").unwrap_err().to_string();
        assert!(refused.contains("could not be written"), "{refused}");
    }

    /// A file by its own name or through a link.
    fn named(path: &Path, writer: usize) -> PathBuf {
        let link = path.with_file_name(format!("{writer}-tour.json"));
        #[cfg(unix)]
        if writer % 2 == 1 {
            std::os::unix::fs::symlink(path, &link).unwrap();
            return link;
        }
        path.to_owned()
    }

    #[test]
    fn many_writers_at_once_lose_nothing() {
        // Each adds its line to what it read, again and again until nobody was in between.
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("tour.json");
        write_whole(&path, b"").unwrap();
        let links: Vec<PathBuf> = (0..4).map(|writer| named(&path, writer)).collect();
        std::thread::scope(|scope| {
            for (writer, path) in links.iter().enumerate() {
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
        assert!(
            names(folder.path()).iter().all(|name| name.ends_with("tour.json")),
            "{:?}",
            names(folder.path())
        );
    }

    #[cfg(unix)]
    #[test]
    fn what_is_private_is_private_from_the_first_byte_on() {
        use std::os::unix::fs::PermissionsExt as _;
        let folder = tempfile::tempdir().expect("a folder");
        let path = folder.path().join("key.toml");
        let mode = || std::fs::metadata(&path).expect("there").permissions().mode() & 0o777;
        write_private(&path, b"one").expect("written");
        assert_eq!(mode(), 0o600);
        std::fs::set_permissions(&path, std::fs::Permissions::from_mode(0o644)).expect("opened up");
        write_private(&path, b"two").expect("written");
        assert_eq!((mode(), std::fs::read(&path).expect("read")), (0o600, b"two".to_vec()));
    }
}
