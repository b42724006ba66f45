//! What people and programs see of a review, a plan or a change of bowings: terminal text, HTML, JSON, CSV,
//! change sheets as text, HTML and PDF.
//!
//! View models ([`ReviewView`], [`PlanView`], [`MarksView`]) are made from scores, plans and findings; every output
//! is made from view models. Their JSON carries a format name and a version, and its schema is
//! published ([`schema`]). Pure: values in, text and bytes out.

mod aside_view;
mod csv;
pub mod handover;
pub mod html;
mod json;
mod lane;
pub mod library_view;
mod marks_text;
pub mod marks_view;
pub mod paper;
mod parts_made;
pub mod plan_view;
mod repairs_view;
pub mod review_view;
pub mod sheet;
mod style;
pub mod summary;
mod term_words;
mod terms;
mod text;
mod text_together;
mod text_ways;
mod together_view;
mod ways_view;

pub use aside_view::{AsideView, SetAsideView, UnusedView};
pub use csv::{downbeats_csv, findings_csv, marks_csv, strokes_csv, summary_csv};
pub use html::{
    DrawnPicture, FindingPictures, ReportPage, RuleExample, RuleExplanation, RulePage, Strip, folder_html,
    review_html,
};
pub use json::{
    library_json, library_schema, marks_json, marks_schema, parts_made_json, parts_made_schema, plan_json,
    plan_schema, review_json, review_schema,
};
pub use library_view::{LibraryView, library_csv, library_text};
pub use marks_text::marks_text;
pub use marks_view::MarksView;
pub use parts_made::{PartMade, PartsMade};
pub use plan_view::{AlternativeView, PlanView, alternative_name};
pub use repairs_view::{NotationChangeView, RepairView, RepairsView};
pub use review_view::{FileView, FindingView, ReviewView};
pub use style::{Characters, Colour, Page};
pub use summary::{Outcome, SummaryRow};
pub use term_words::{gains_and_losses, yardstick_words};
pub use terms::BarWord;
pub use text::{lanes_text, plan_text, review_text, summary_text};
pub use text_together::downbeats_text;
pub use together_view::{DepartureView, DownbeatView, DownbeatsView, GroupView, TogetherView};
pub use ways_view::{AnchorsView, ConflictView, EndingView, PlanWayView};
