//! MusicXML read into exact musical time.
//!
//! `Document` (bytes and ranges) goes in, [`Score`] (music, problems, back-references to the
//! document's elements) comes out. Reading never fails on well-formed MusicXML: what cannot be
//! understood is kept as a [`Problem`].
//!
//! Score time is exact: [`Length`] and [`Moment`] count whole notes as reduced fractions. Seconds do
//! not exist in this crate.

pub mod beats;
pub mod instrument;
pub mod model;
pub mod places;
mod read;
mod stops;
pub mod tempo_words;
pub mod time;
pub mod words;

pub use model::*;
pub use read::read;
pub use time::{Length, Moment};
