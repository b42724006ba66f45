//! The workbench: a score, its bows and other ways to bow it in the browser, on this machine and nowhere else.
//!
//! What the page asks is answered by `arcata-desk`. Here a session is kept beside its score ([`open_session`]), put behind a
//! loopback server ([`router`]) and run ([`serve`]). [`serve_hand`] serves the page on which a teacher goes through a class,
//! behind the same guard.

mod disk_shelf;
mod events;
mod guard;
mod hand_journal;
mod hand_server;
mod in_time;
mod journal;
mod page;
mod print_shop;
mod refusal;
mod routes;
mod server;
mod watch;

pub use disk_shelf::{open_session, put_layer_on_desk};
pub use guard::AccessKey;
pub use hand_server::{HandServeSettings, serve_hand};
pub use journal::{Journal, JournalError};
pub use routes::router;
pub use server::{ServeError, ServeSettings, serve};
