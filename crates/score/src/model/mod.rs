//! The score: parts, bars, notes and what is written about them.
//!
//! Plain values with public fields; every object that an edit or a message may refer to carries the
//! [`NodeId`](arcata_xml::NodeId) of its element.

mod directions;
mod meter;
mod movement;
mod note;
mod part;
mod problem;

pub use directions::*;
pub use meter::*;
pub use movement::*;
pub use note::*;
pub use part::*;
pub use problem::*;
