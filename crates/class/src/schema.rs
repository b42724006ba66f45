//! The published schemas of what is kept of a class as JSON.

use schemars::generate::SchemaSettings;
use schemars::{JsonSchema, Schema};

use crate::{HandAct, Record, TeachersHand};

/// The schema of a record ([`Record::text`]).
#[must_use]
pub fn record_schema() -> Schema {
    written::<Record>()
}

/// The schema of the file of a teacher's hand ([`TeachersHand::read`]).
#[must_use]
pub fn hand_schema() -> Schema {
    written::<TeachersHand>()
}

/// The schema of a line of the journal of a hand, behind its heading ([`HandAct::line`]).
#[must_use]
pub fn hand_act_schema() -> Schema {
    written::<HandAct>()
}

/// What is left out where there is nothing of it is not required.
fn written<T: JsonSchema>() -> Schema {
    SchemaSettings::draft2020_12().for_serialize().into_generator().into_root_schema_for::<T>()
}
