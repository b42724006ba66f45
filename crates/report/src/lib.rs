//! What people and programs see of a review or a plan: terminal text, JSON, CSV.
//!
//! View models ([`ReviewView`], [`PlanView`], [`MarksView`]) are made from scores, plans and findings; every output
//! is made from view models. Their JSON carries a format name and a version, and its schema is
//! published ([`schema`]). Pure: strings in, strings out.

mod csv;
mod json;
mod marks_text;
pub mod marks_view;
pub mod plan_view;
pub mod review_view;
mod style;
pub mod summary;
mod text;

pub use csv::{findings_csv, marks_csv, strokes_csv, summary_csv};
pub use json::{marks_json, marks_schema, plan_json, plan_schema, review_json, review_schema};
pub use marks_text::marks_text;
pub use marks_view::MarksView;
pub use plan_view::{AlternativeView, PlanView};
pub use review_view::{FileView, ReviewView};
pub use style::{Colour, Page};
pub use summary::{Outcome, SummaryRow};
pub use text::{plan_text, review_text, summary_text};
