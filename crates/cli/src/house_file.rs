//! A house profile from a file.

use std::path::Path;

use arcata_engrave::House;

use crate::failure::Failure;
use crate::files;

/// The house's own profile, or the shipped one where no file is named.
pub(crate) fn of(path: Option<&Path>) -> Result<House, Failure> {
    let Some(path) = path else { return Ok(House::default()) };
    let failed = |why: String| Failure::House { name: path.display().to_string(), why };
    let text = files::read_text(path).map_err(failed)?;
    House::parse(&text).map_err(|error| failed(error.to_string()))
}
