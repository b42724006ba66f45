//! Shorthand: bowings typed as a librarian copies a principal's pencil.
//!
//! [`read`] turns a text into its syntax ([`Text`]) and complaints; the syntax prints itself the one
//! canonical way. The grammar stands in `docs/manual/shorthand.md`.

mod complaint;
mod header;
mod lexer;
mod parser;
mod place;
mod print;
mod statement;
mod syntax;
#[cfg(test)]
mod tests;
mod words;

pub use complaint::{Complaint, Gravity, Trouble};
pub use parser::{LARGEST_TEXT, LONGEST_LINE, read};
pub use syntax::*;
