//! A class in an evening: a task, what the hand-ins to it show, and the pages that say so.
//!
//! A [`Task`] is read from a small file. Of each hand-in that is bowed and reviewed ([`arcata_analysis`]) a [`LookAtHandIn`] finds what
//! works and what does not, and chooses the few passages that a sheet shows; with their pictures that becomes a [`Record`], which
//! is kept. [`pages`] makes sheets and class pages from records and nothing else, so that a run that was stopped goes on where it
//! was, and a later task can tell what has gone and what is new.
//!
//! Nothing here opens a file, and nothing here grades: there is no number that stands for a person's work.

pub mod alike;
pub mod before;
mod choose;
mod class_view;
mod conceal;
mod given;
mod hand;
mod in_languages;
mod key;
mod lacks;
mod look;
mod measures;
pub mod pages;
mod pictures;
mod record;
mod runs;
mod said;
mod schema;
mod task;
mod works;

pub use choose::{chosen, usefulness};
pub use class_view::{ClassView, LEAST_GROUP, Outlier, RuleRow};
pub use conceal::Concealed;
pub use given::{GivenMaterial, Melody, ModelScore};
pub use hand::{HandAct, TeachersHand, Touch};
pub use in_languages::InLanguages;
pub use key::{Key, KeyError, Student, slug};
pub use look::{LookAtHandIn, blamed, generic_names};
pub use measures::{ClassMeasure, Measures};
pub use pictures::KeptPicture;
pub use record::{
    CandidatePassage, HandIn, HandInOutcome, Record, RecordedPassage, RememberedTask, Repair, RestLine,
    Shown, Work,
};
pub use said::{SaidOnSheet, Words};
pub use schema::{hand_act_schema, hand_schema, record_schema};
pub use task::{
    Criterion, Expected, Model, NameOf, Repairs, SheetSettings, StudentNaming, Task, TaskError, TaskGiven,
    TaskPlayer, nearest,
};
