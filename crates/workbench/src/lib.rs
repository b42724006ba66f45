//! The workbench: a score, its bows and other ways to bow it in the browser, on this machine and nowhere else.
//!
//! What the page asks is answered by `arcata-desk`. Here a session is kept beside its score ([`open_session`]), put behind a
//! loopback server ([`router`]) and run ([`serve`]); without a
//! score the server offers some first. [`serve_hand`] serves the page on which a teacher goes through a class,
//! behind the same guard.

mod disk_shelf;
mod entrance;
mod events;
mod guard;
mod hand_journal;
mod hand_server;
mod in_time;
mod journal;
mod last_scores;
mod opener;
mod page;
mod presence;
mod print_shop;
mod refusal;
mod routes;
mod running;
mod server;
mod watch;

pub use disk_shelf::{open_session, put_layer_on_desk};
pub use entrance::DemoScore;
pub use guard::AccessKey;
pub use hand_server::{HandServeSettings, serve_hand};
pub use journal::{Journal, JournalError};
pub use routes::router;
pub use server::{ServeError, ServeSettings, WorkbenchAddress, serve};
