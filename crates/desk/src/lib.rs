//! The desk: what the page of the workbench asks, answered.
//!
//! What somebody does is a list of [`Act`]s. A [`Session`] folds them into bowing layers and a few settings, has each put on a
//! [`Shelf`] before it is confirmed, and holds the plan that follows. [`Shared::answer`] answers a [`PageRequest`] with the bytes
//! of a [`PageAnswer`]. Nothing here opens a file, listens on a network or knows the engraving library: the same code answers
//! behind the workbench's server and inside a browser.

mod act;
mod addresses;
mod alike;
mod answers;
mod comparison;
mod desk;
mod drawing;
mod export;
mod failed;
mod happened;
mod history;
mod journal;
mod kept_beside;
mod layers;
mod part_pages;
mod place;
mod request_language;
mod requests;
mod review_page;
mod session;
mod shared;
mod shelf;
mod sound;
mod state;
mod views;
mod ways;
mod with_marks;

pub use act::{Act, Ask, Asked, Begins, ByteEdit, NotePlace, SlurIs};
pub use addresses::{Description, asked_by};
pub use answers::{AskedBy, Begun, LARGEST_ACT, PageAnswer, PageRequest};
pub use desk::Desk;
pub use export::{ExportedFile, ExportedFiles, PDF_TYPE, PrintKind, PrintOrder, PrintShop, SCORE_TYPE};
pub use failed::Failed;
pub use happened::Happened;
pub use journal::{HEADING, JournalContent, JournalEnd, JournalLine, journal_check, journal_line};
pub use kept_beside::read_aside;
pub use requests::KeptView;
pub use session::{Session, SessionError, SessionStart};
pub use shared::Shared;
pub use shelf::{MemoryShelf, Shelf};
pub use views::DoneView;
