//! A small notation for fixtures, and helpers for checks.
mod bars;
mod changes;
mod cursor;
mod error;
mod expect;
mod facts;
mod fixture;
mod header;
mod marks;
mod model;
mod music;
mod notes;
mod settle;
mod write;
mod write_note;

pub use error::FixtureError;
pub use expect::{Expectation, Pointer};
pub use facts::{NoteKind, Tie, WrittenBar, WrittenNote, WrittenSlur};
pub use fixture::Fixture;
pub use model::{Fraction, Pitch};

/// The MusicXML of a fixture, for tests.
///
/// # Panics
/// If the fixture cannot be read, with the place and what was expected there.
#[must_use]
pub fn musicxml(text: &str) -> String {
    match Fixture::parse(text) {
        Ok(fixture) => fixture.musicxml(),
        Err(error) => panic!("the fixture cannot be read: {error}"),
    }
}
