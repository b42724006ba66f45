//! Bowing layers: a bowing is decided once, lives apart from the score, reaches every part it belongs to,
//! survives a revision, and comes off without a trace.
//!
//! A [`Layer`] is a list of [`Entry`] values, each a [`Mark`] at a [`Address`]. [`read`] and [`write()`] give
//! it as JSON, one entry a line. [`Addresses`] turns places into notes of a [`Score`](arcata_score::Score)
//! and back.
//!
//! ```
//! use arcata_layer::{Addresses, Entry, Layer, Mark};
//! # let text = arcata_testkit::musicxml("violin: 1/4 C5 D5 E5 F5");
//! # let document = arcata_xml::Document::parse(text.into_bytes(), &Default::default()).unwrap();
//! let score = arcata_score::read(&document);
//! let addresses = Addresses::new(&score);
//! let mut layer = Layer { owner: "leader".into(), ..Layer::default() };
//! layer.parts = addresses.part_keys().to_vec();
//! let place = addresses.place(0, arcata_score::NoteId(1)).unwrap();
//! layer.entries.push(Entry::new(place, Mark::Up));
//! layer.put_in_order();
//! let text = arcata_layer::write(&layer);
//! assert!(text.contains(r#"{"part":"violin","bar":"1","bar_ordinal":1,"offset":"1/4","pitch":"D5","mark":"up"}"#));
//! assert_eq!(arcata_layer::read(text.as_bytes()).unwrap(), layer);
//! ```

mod address;
mod apply;
mod breaks;
mod carry;
mod check;
mod compare;
mod contradictions;
mod format;
mod hook_slur;
pub mod identity;
mod lift;
mod marks;
mod markup;
mod merge;
mod model;
mod put_bows;
mod session;
pub mod shorthand;
mod slurs;
mod spread;
mod told;
mod wipe;

pub use address::{Addresses, NamedNote, NotFound};
pub use apply::{Applied, LayerError, LeftOut, Trust, apply, apply_told};
pub use breaks::{AskedBreak, AskedBreaks, BreakOpening, BreakPlace, PartBreaks};
pub use carry::{Carried, Doubt, Doubtful, Orphan, carry};
pub use check::{LayerRemark, LayerRemarkKind, check};
pub use compare::{LayerDifference, compare};
pub use format::{ReadError, ReadErrorKind, breaks_schema, read, read_breaks, schema, write, write_breaks};
pub use lift::{LiftChoice, LiftKind, Lifted, Staying, lift};
pub use marks::{BowAddition, add_marks, remove_marks};
pub use merge::{MergeRule, Merged, merge, settle};
pub use model::{
    Address, BowPlace, Conflict, Entry, EntryForce, EntryState, Exact, HookSign, HookSlur, Layer, Mark,
    MarkBefore, NotReached, PitchName, Question, ScoreIdentity, Spot, Taken, TakenKind, VERSION,
};
pub use spread::{
    GoingTogether, LowStrings, Match, NotSpread, Proposed, Spread, SpreadChoice, SpreadReach, spread,
};
pub use told::{ToldBow, ToldBows};
pub use wipe::{Wiped, wipe};
