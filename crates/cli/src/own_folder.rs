//! The user's own folders, as the system names them.

use std::path::PathBuf;

/// What the workbench remembers: `$XDG_STATE_HOME/arcata` (XDG Base Directory Specification), on Windows
/// `%LOCALAPPDATA%\\arcata`, otherwise `~/.local/state/arcata`. Nothing where no home is known.
pub(crate) fn state() -> Option<PathBuf> {
    named("XDG_STATE_HOME")
        .or_else(|| named("LOCALAPPDATA"))
        .or_else(|| home().map(|home| home.join(".local").join("state")))
        .map(|folder| folder.join("arcata"))
}

/// What can be made again: `$XDG_CACHE_HOME/arcata`, on Windows `%LOCALAPPDATA%\\arcata`, otherwise `~/.cache/arcata`.
pub(crate) fn cache() -> Option<PathBuf> {
    named("XDG_CACHE_HOME")
        .or_else(|| named("LOCALAPPDATA"))
        .or_else(|| home().map(|home| home.join(".cache")))
        .map(|folder| folder.join("arcata"))
}

/// The user's home.
pub(crate) fn home() -> Option<PathBuf> {
    named("HOME").or_else(|| named("USERPROFILE"))
}

/// A folder of the environment; one that is empty or not from the root counts as none, as the specification has it.
fn named(variable: &str) -> Option<PathBuf> {
    std::env::var_os(variable).map(PathBuf::from).filter(|path| path.is_absolute())
}
