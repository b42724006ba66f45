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
