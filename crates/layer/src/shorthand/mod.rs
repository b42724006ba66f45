//! Shorthand: bowings typed as a librarian copies a principal's pencil.
//!
//! [`read`] turns a text into its syntax ([`Text`]) and complaints; the syntax prints itself the one
//! canonical way. [`enter`] puts the syntax against a score and gives entries of a layer. The grammar stands in
//! `docs/manual/shorthand.md`.

mod enter;
#[cfg(test)]
mod enter_tests;
mod from_layer;
mod header;
mod locate;
mod parser;
mod place;
mod print;
mod problem;
mod put;
mod sections;
mod slurs;
mod statement;
mod strokes;
mod syntax;
#[cfg(test)]
mod tests;
mod wish;
mod words;

pub use enter::{Entered, MOST_DECISIONS, enter};
pub use from_layer::of_layer;
pub use parser::{LARGEST_TEXT, LONGEST_LINE, read};
pub use problem::{Gravity, ShorthandProblem, ShorthandProblemKind};
pub use put::put;
pub use sections::parts_named;
pub use syntax::*;
