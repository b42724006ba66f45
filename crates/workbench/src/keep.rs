//! Writing files whole.

use std::io::Write as _;
use std::path::Path;

/// Writes a file beside its place and renames it over; what was there stays until the new one is read back.
///
/// # Errors
/// In words, where the file cannot be written or does not read back.
#[expect(clippy::disallowed_methods, reason = "the workbench is where files are written")]
pub(crate) fn write_whole(path: &Path, bytes: &[u8]) -> Result<(), String> {
    let said = |problem: std::io::Error| format!("{}: {problem}", path.display());
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
    let mut beside = tempfile::NamedTempFile::new_in(folder).map_err(said)?;
    beside.write_all(bytes).map_err(said)?;
    beside.as_file().sync_all().map_err(said)?;
    if std::fs::read(beside.path()).map_err(said)? != bytes {
        return Err(format!("{}: what was written could not be read back", path.display()));
    }
    beside.persist(path).map_err(|problem| said(problem.error))?;
    Ok(())
}

/// Makes a folder where there is none.
///
/// # Errors
/// In words, where it cannot be made.
pub(crate) fn folder(path: &Path) -> Result<(), String> {
    if path.as_os_str().is_empty() || path.is_dir() {
        return Ok(());
    }
    std::fs::create_dir(path).map_err(|problem| format!("{}: {problem}", path.display()))
}

/// Keeps a file as it is under a name that is free, and says which.
///
/// # Errors
/// In words, where it cannot be copied.
#[expect(clippy::disallowed_methods, reason = "the workbench is where files are written")]
pub(crate) fn back_up(path: &Path) -> Result<String, String> {
    for number in 1..=1000 {
        let mut name = path.file_name().unwrap_or_default().to_owned();
        name.push(if number == 1 { ".backup".to_owned() } else { format!(".backup-{number}") });
        let backup = path.with_file_name(&name);
        if backup.exists() {
            continue;
        }
        let bytes = std::fs::read(path).map_err(|problem| format!("{}: {problem}", path.display()))?;
        write_whole(&backup, &bytes)?;
        return Ok(name.to_string_lossy().into_owned());
    }
    Err(format!("{}: a thousand backups lie beside it; look through them and remove them", path.display()))
}

/// The bytes of a file, at most so many.
///
/// # Errors
/// In words, where it cannot be read or is larger.
#[expect(clippy::disallowed_methods, reason = "the workbench opens the file that it was given")]
pub(crate) fn read(path: &Path, most: usize) -> Result<Vec<u8>, String> {
    let said = |problem: std::io::Error| format!("{}: {problem}", path.display());
    let length = std::fs::metadata(path).map_err(said)?.len();
    if length > most as u64 {
        return Err(format!("{}: {length} bytes are more than the {most} that are read", path.display()));
    }
    std::fs::read(path).map_err(said)
}
