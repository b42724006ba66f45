//! The key of a class: read, added to, written so that only its owner reads it.

use std::path::{Path, PathBuf};

use arcata_class::Key;

use crate::args::ClassArguments;
use crate::failure::Failure;
use crate::files;

/// Where the key is.
pub(crate) fn path(arguments: &ClassArguments) -> PathBuf {
    arguments.key.clone().unwrap_or_else(|| arguments.task.with_file_name("class-key.toml"))
}

/// The key as it stands.
pub(crate) fn read(path: &Path) -> Result<Key, Failure> {
    let failed = |why: String| Failure::Key { path: path.to_owned(), why: files::told(&why) };
    Key::read(&files::read_text(path).map_err(failed)?).map_err(|error| failed(error.to_string()))
}

/// The key with everybody in it; written where somebody was new.
pub(crate) fn with(path: &Path, names: &[&str]) -> Result<Key, Failure> {
    let failed = |why: String| Failure::Key { path: path.to_owned(), why: files::told(&why) };
    let mut key = if path.exists() { read(path)? } else { Key::default() };
    let known = key.students.len();
    let mut no_chance = None;
    key.admit(names.iter().copied(), |count| {
        let mut bytes = [0; 8];
        if let Err(error) = getrandom::fill(&mut bytes) {
            no_chance = Some(error.to_string());
        }
        usize::try_from(u64::from_le_bytes(bytes) % (count.max(1) as u64)).unwrap_or_default()
    });
    if let Some(why) = no_chance {
        return Err(failed(format!("the system gives no random numbers: {why}")));
    }
    if key.students.len() > known {
        arcata_files::write_private(path, key.text().as_bytes())?;
    }
    Ok(key)
}
