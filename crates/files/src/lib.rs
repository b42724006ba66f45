//! Files read within limits, and written so that nothing is ever lost. The command line and the workbench open files through
//! this crate and no other way; those below them open none.
//!
//! ```
//! let folder = tempfile::tempdir()?;
//! let path = folder.path().join("tour.json");
//! arcata_files::write_whole(&path, b"one")?;
//! let read = arcata_files::read(&path, 1000)?;
//! arcata_files::rewrite(&path, &read, b"two")?;
//! assert_eq!(arcata_files::read(&path, 1000)?, b"two");
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```
#![expect(clippy::disallowed_methods, reason = "this is where files are opened and written")]

mod error;
mod read;
mod write;

pub use error::FileError;
pub use read::read;
pub use write::{back_up, is_at, is_held, rewrite, sync_folder_of, write_new, write_private, write_whole};
