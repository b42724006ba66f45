//! What leaves as pages: the review of a score, with the pictures of each place and of what is proposed there.
//!
//! Command line, workbench and the page in a browser make the same page here, of the same snapshot. Nothing is written: pages are
//! handed out as text.

mod page;
mod pictures;
mod waves;

pub use page::{ExampleOfRule, ReviewExport};
pub use pictures::{Scenes, drawn_with_words};
