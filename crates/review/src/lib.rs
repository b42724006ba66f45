//! The review: rules that read strokes and plans, findings with their numbers, proposals.
//!
//! A [`Piece`] goes in, [`Finding`]s come out, in one order on every machine. A rule is one file, one
//! name, one page of the manual and one literate test; [`REGISTER`] holds them all. Nothing is changed
//! here: proposals carry byte edits that somebody may apply.

mod aside;
mod attack_marks;
mod bow_starts;
pub mod change;
mod changed_music;
pub mod doublings;
mod finding;
mod findings;
mod left_hand;
pub mod mechanics;
mod one_place;
mod other_bow;
mod other_notation;
mod phrase_change;
pub mod phrase_verdict;
mod player;
mod register;
pub mod repair_words;
mod review;
mod rule;
pub mod rules;
mod slur_change;
mod slur_copy;
mod slur_offers;
mod speed;
mod split;
mod taste;
mod thresholds;
mod tie_change;
mod trial;
mod under_slur;
mod untie;
mod ways;
pub mod words;

pub use arcata_bow::Profile;
pub use arcata_score::beats;
pub use aside::{Aside, AsideEntry, AsideError, SetAside, SlurEntry, UnusedSlurEntry};
pub use finding::*;
pub use findings::{Draft, Findings};
pub use player::trade_words;
pub use register::{HEADINGS, Registered, rule};
pub use review::{AtOnePlace, ReviewSettings, Reviewed, review, reviewed};
pub use rule::{Beside, Card, Family, Piece, Reads, Rule, Sees};
pub use rules::REGISTER;
pub use slur_offers::slur_offers;
pub use thresholds::Thresholds;
