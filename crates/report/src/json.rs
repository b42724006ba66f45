//! JSON and its published schemas.

use arcata_xml::seen_json;
use schemars::generate::SchemaSettings;
use schemars::{JsonSchema, Schema};

use crate::{LibraryView, MarksView, PartsMade, PlanView, ReviewView};

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
    written::<LibraryView>()
}

/// The schema of [`review_json`].
#[must_use]
pub fn review_schema() -> Schema {
    written::<ReviewView>()
}

/// The schema of [`plan_json`].
#[must_use]
pub fn plan_schema() -> Schema {
    written::<Vec<PlanView>>()
}

/// The audits as indented JSON: an array, one entry a file.
#[must_use]
pub fn marks_json(views: &[MarksView]) -> String {
    pretty(&views)
}

/// The schema of [`marks_json`].
#[must_use]
pub fn marks_schema() -> Schema {
    written::<Vec<MarksView>>()
}

/// What the parts in a folder were made from, as indented JSON.
#[must_use]
pub fn parts_made_json(made: &PartsMade) -> String {
    pretty(made)
}

/// The schema of [`parts_made_json`].
#[must_use]
pub fn parts_made_schema() -> Schema {
    written::<PartsMade>()
}

/// The schema of what is written: what is left out where there is nothing of it is not required.
fn written<T: JsonSchema>() -> Schema {
    SchemaSettings::draft2020_12().for_serialize().into_generator().into_root_schema_for::<T>()
}

/// Views hold strings, numbers and string-keyed maps only, which JSON can always carry.
fn pretty<T: serde::Serialize>(view: &T) -> String {
    let mut text = serde_json::to_string_pretty(view).unwrap_or_default();
    text.push('\n');
    seen_json(text)
}
