//! What the bow does: bowing lines, strokes, mechanics, cost terms and the exact planner.
//!
//! `Score` → [`Line`] (what one player reads) → [`Stroke`]s (one travel in one direction each) →
//! [`Plan`] (direction, place and link of every stroke, with the cost that says why). Pure: no files,
//! no clock, no printing; costs are integers, so that ties are ties on every machine.

pub mod audit;
pub mod cost;
pub mod emphasis;
pub mod lines;
pub mod logarithm;
pub mod loudness;
mod phrase;
pub mod plan;
pub mod profile;
pub mod stroke;
pub mod techniques;
pub mod timing;
pub mod together;
pub mod turns;

pub use cost::{Cost, Term};
pub use lines::{LineOptions, LineSource, MARKED_AROUND, Reading, all_lines, lines};
pub use plan::{Link, Plan, PlanSettings, PlannedStroke, Weights, plan};
pub use profile::{Profile, Setting, Style};
pub use stroke::*;
pub use timing::TempoChoice;
