//! The left hand as far as the bow needs it: which strings a chord takes, whether a hand can stop it, and
//! how many strings a slur crosses.
//!
//! A stop is an assignment of notes to neighbouring strings, each string one note, such that one hand frame
//! holds the stopped ones. Lengths are micrometres along the string and follow from equal temperament; how
//! far a hand reaches comes from the player [`Profile`](arcata_bow::Profile), each figure with its reason and
//! source. Pure: values in, values out.

mod fingerboard;
mod passage;
mod stop;

pub use fingerboard::{Fingerboard, Strings};
pub use passage::{Crossing, PassageNote, crossings};
pub use stop::{Ease, Finger, Stop, Stopping};
