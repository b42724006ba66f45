//! What people and programs see of a review or a plan: terminal text, JSON, CSV.
//!
//! View models ([`ReviewView`], [`PlanView`]) are made from scores, plans and findings; every output
//! is made from view models. Their JSON carries a format name and a version, and its schema is
//! published ([`schema`]). Pure: strings in, strings out.

mod csv;
mod json;
mod lane;
pub mod plan_view;
mod repairs_view;
pub mod review_view;
mod style;
pub mod summary;
mod term_words;
mod text;
mod text_ways;
mod ways_view;

pub use csv::{findings_csv, strokes_csv, summary_csv};
pub use json::{plan_json, plan_schema, review_json, review_schema};
pub use plan_view::{AlternativeView, PlanView};
pub use repairs_view::{ChangeView, RepairView, RepairsView};
pub use review_view::{FileView, ReviewView};
pub use style::{Characters, Colour, Page};
pub use summary::{Outcome, SummaryRow};
pub use text::{plan_text, review_text, summary_text};
pub use ways_view::{AnchorsView, ConflictView, EndingView, WayView};
