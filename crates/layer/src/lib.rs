//! Bow marks added to and taken off a score, byte for byte.
//!
//! Marks go onto notes as edits of the lossless document: nothing outside the inserted ranges changes,
//! and taking the same marks off gives the bytes back that were there before.

mod marks;

pub use marks::{BowAddition, add_marks, remove_marks};
