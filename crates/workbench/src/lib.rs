//! The workbench: a score, its bows and other ways to bow it in the browser, on this machine and nowhere else.
//!
//! What somebody does is a list of [`Act`]s. A [`Session`] folds them into a bowing layer and a few settings, keeps them in
//! a journal beside the score before it confirms them, and holds the plan that follows. [`router`] puts a session behind a
//! loopback server; [`serve`] runs it. [`serve_hand`] serves the page on which a teacher goes through a class, behind the same guard.

mod act;
mod alike;
mod comparison;
mod desk;
mod drawing;
mod events;
mod export;
mod failed;
mod guard;
mod hand_journal;
mod hand_server;
mod history;
mod journal;
mod kept_beside;
mod layers;
mod page;
mod place;
mod request_language;
mod requests;
mod routes;
mod server;
mod session;
mod shared;
mod sound;
mod state;
mod views;
mod watch;
mod ways;
mod with_marks;

pub use act::{Act, Ask, Asked, NotePlace};
pub use guard::AccessKey;
pub use hand_server::{HandServeSettings, serve_hand};
pub use journal::{Journal, JournalError, JournalLine};
pub use routes::router;
pub use server::{ServeError, ServeSettings, serve};
pub use session::{Session, SessionError};
pub use shared::Shared;
