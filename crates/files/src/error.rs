//! What went wrong with a file, for people.

use std::fmt;
use std::path::PathBuf;

/// Why a file was not read or not written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum FileError {
    /// It cannot be read.
    Read {
        /// Which.
        path: PathBuf,
        /// In words.
        why: String,
    },
    /// It cannot be written; what was there before is still there.
    Write {
        /// Which.
        path: PathBuf,
        /// In words.
        why: String,
    },
    /// Somebody else has written it since it was read.
    Changed {
        /// Which.
        path: PathBuf,
    },
    /// Somebody else is writing it.
    Locked {
        /// Which.
        path: PathBuf,
    },
}

impl FileError {
    /// What went wrong, without the name of the file.
    #[must_use]
    pub fn why(&self) -> String {
        match self {
            Self::Read { why, .. } | Self::Write { why, .. } => why.clone(),
            Self::Changed { .. } => "it was changed by somebody else since it was read".to_owned(),
            Self::Locked { .. } => "it is being written by another program".to_owned(),
        }
    }
}

impl fmt::Display for FileError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Read { path, why } => write!(f, "{}: {why}", path.display()),
            Self::Write { path, why } => {
                write!(f, "{} could not be written: {why}.", path.display())?;
                if path.exists() { f.write_str(" What was there before is still there.") } else { Ok(()) }
            }
            Self::Changed { path } => write!(
                f,
                "{} was changed by somebody else since it was read. Nothing was written over; do it again.",
                path.display()
            ),
            Self::Locked { path } => write!(
                f,
                "{} is being written by another program, for ten seconds now. Nothing was written; try again.",
                path.display()
            ),
        }
    }
}

impl std::error::Error for FileError {}
