//! Reading within limits.

use std::io::Read as _;
use std::path::Path;

use crate::FileError;

/// What went wrong with a file, for people: the usual cases in plain words with what to do.
fn said(error: &std::io::Error) -> String {
    match error.kind() {
        std::io::ErrorKind::NotFound => "no such file; check the name and the folder".into(),
        std::io::ErrorKind::PermissionDenied => "you may not read this file; check its permissions".into(),
        std::io::ErrorKind::IsADirectory => "this is a folder, not a file".into(),
        _ => error.to_string(),
    }
}

/// A file's bytes, not more than `most`.
///
/// # Errors
/// [`FileError::Read`] where there is no such file, it may not be read, or it is larger.
pub fn read(path: &Path, most: usize) -> Result<Vec<u8>, FileError> {
    let failed = |why: String| FileError::Read { path: path.to_owned(), why };
    let file = std::fs::File::open(path).map_err(|error| failed(said(&error)))?;
    let mut bytes = Vec::new();
    let most = u64::try_from(most).unwrap_or(u64::MAX);
    file.take(most.saturating_add(1)).read_to_end(&mut bytes).map_err(|error| failed(said(&error)))?;
    if bytes.len() as u64 > most {
        return Err(failed(format!("the file is larger than the limit of {most} bytes")));
    }
    Ok(bytes)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_cannot_be_read_says_why_and_what_to_do() {
        let folder = tempfile::tempdir().unwrap();
        let why = |path: &Path, most: usize| read(path, most).unwrap_err().to_string();
        let missing = why(&folder.path().join("study.musicxml"), 10);
        assert!(missing.contains("study.musicxml") && missing.contains("check the name"), "{missing}");
        assert!(why(folder.path(), 10).contains("this is a folder"));
        let file = folder.path().join("long.txt");
        std::fs::write(&file, "eleven byte").unwrap();
        assert_eq!(read(&file, 11).unwrap(), b"eleven byte");
        assert!(why(&file, 10).contains("larger than the limit of 10 bytes"));
    }
}
