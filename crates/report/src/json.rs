//! JSON and its published schemas.

use schemars::{Schema, schema_for};

use crate::{LibraryView, MarksView, PlanView, ReviewView};

/// The review as indented JSON with a newline at the end.
#[must_use]
pub fn review_json(view: &ReviewView) -> String {
    pretty(view)
}

/// The plans as indented JSON: an array, one entry a file.
#[must_use]
pub fn plan_json(views: &[PlanView]) -> String {
    pretty(&views)
}

/// A folder's works and layers as indented JSON.
#[must_use]
pub fn library_json(view: &LibraryView) -> String {
    pretty(view)
}

/// The schema of [`library_json`].
#[must_use]
pub fn library_schema() -> Schema {
    schema_for!(LibraryView)
}

/// The schema of [`review_json`].
#[must_use]
pub fn review_schema() -> Schema {
    schema_for!(ReviewView)
}

/// The schema of [`plan_json`].
#[must_use]
pub fn plan_schema() -> Schema {
    schema_for!(Vec<PlanView>)
}

/// The audits as indented JSON: an array, one entry a file.
#[must_use]
pub fn marks_json(views: &[MarksView]) -> String {
    pretty(&views)
}

/// The schema of [`marks_json`].
#[must_use]
pub fn marks_schema() -> Schema {
    schema_for!(Vec<MarksView>)
}

/// Views hold strings, numbers and string-keyed maps only, which JSON can always carry.
fn pretty<T: serde::Serialize>(view: &T) -> String {
    let mut text = serde_json::to_string_pretty(view).unwrap_or_default();
    text.push('\n');
    text
}
