//! Files of habits, as commands open them.

use std::path::Path;

use arcata_habits::Habits;

use crate::failure::Failure;
use crate::files;

/// A file of habits.
pub(crate) fn read(path: &Path) -> Result<Habits, Failure> {
    let failed = |why: String| Failure::Habits { path: path.to_owned(), why };
    let text = files::read_text(path).map_err(failed)?;
    Habits::read(&text).map_err(|error| failed(files::told(&error.to_string())))
}
