//! The desk as a WebAssembly module: the page of the workbench without a server.
//!
//! A page hands over bytes and is handed bytes ([`pieces`]). [`WebDesk`] holds the session; its journal goes line by line to
//! whoever keeps it ([`JournalKeeper`]), and what is to be engraved comes out as orders ([`WebAnswer::Orders`]) that another
//! worker of the page fills, with the engraving library's own WebAssembly module. Then the same request is finished again.
//! The module's exported functions are a thin border around that, and the only place with pointers.

#[cfg(target_arch = "wasm32")]
mod border;
mod mailroom;
pub mod pieces;
mod web_desk;
mod web_shelf;

pub use mailroom::WrittenOrder;
pub use web_desk::{AsItIs, Opened, WebAnswer, WebDesk};
pub use web_shelf::JournalKeeper;
