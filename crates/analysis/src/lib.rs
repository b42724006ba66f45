//! One analysis of a score behind every view.
//!
//! Bytes become a [`Source`]: the file, the music in it, what somebody has said of its slurs, the marks of layers that change
//! what is read. With a [`Config`] (who plays, how fast, how loud) it becomes a [`Ground`]: the bowing lines of all parts and
//! how they are bowed where nothing is asked for. On that stands a [`Snapshot`]: what is asked of single strokes, and the plans
//! that come of it. A snapshot is never changed; the next one shares with it what is the same, so that going back is taking up
//! the snapshot before. The command line, the workbench, the checks and the tests ask here and nowhere else, so that they
//! cannot say different things of one score.
//!
//! Nothing here opens a file or knows of arguments.

mod asked;
mod assumed;
mod bowed;
mod config;
mod ground;
mod overlay;
mod snapshot;
mod source;

pub use asked::{BowedLine, Planner, asks, first_note, stroke_of, told};
pub use assumed::assumptions;
pub use bowed::{Agreed, Bowed, lines};
pub use config::{Config, Planning, Player};
pub use ground::Ground;
pub use overlay::{WithLayer, read_entries, with_layer, with_read_marks};
pub use snapshot::Snapshot;
pub use source::Source;
