#![doc = include_str!("../README.md")]

mod bars;
mod changes;
mod cursor;
mod error;
mod expect;
mod facts;
mod fixture;
mod generate;
mod header;
mod marks;
mod model;
mod music;
mod notes;
mod published;
mod random;
mod settle;
pub mod suite;
mod write;
mod write_note;

pub use error::FixtureError;
pub use expect::{Expectation, Pointer};
pub use facts::{NoteStands, TieFact, WrittenBar, WrittenNote, WrittenSlur};
pub use fixture::Fixture;
pub use generate::{Detail, ScoreShape, random_fixture, random_score};
pub use model::{Fraction, WrittenPitch};
pub use published::Published;
pub use random::Random;

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
