//! The file format: JSON, one entry a line, with a published schema.
//!
//! This module and its children are the crate's only edge: nothing else serialises.

mod breaks;
mod document;
mod read;
mod write;

pub use breaks::{breaks_schema, read_breaks, write_breaks};
pub use read::{ReadError, ReadErrorKind, read};
pub use write::write;

/// The JSON Schema of a layer file.
#[must_use]
pub fn schema() -> schemars::Schema {
    schemars::schema_for!(document::LayerDocument)
}

#[cfg(test)]
mod tests;
