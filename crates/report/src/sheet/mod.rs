//! The change sheet: what a copyist writes into the parts, a page a section, and one page for the
//! librarian.

mod changes;
mod html;
mod least;
mod make;
mod pdf;
mod settings;
mod signs;
mod text;
mod view;
mod words;

pub use crate::paper::{Paper, PdfError};
pub use html::sheet_html;
pub use least::marks_that_come_anyway;
pub use pdf::sheet_pdf;
pub use settings::{CopyingSettings, SYMPHONY_STANDS};
pub use text::{SheetEnd, sheet_text};
pub use view::{
    BarChanges, ChangeView, EXCERPT_WIDTH, Excerpt, LayerHeading, LibrarianView, NotCarried, NotSpreadView,
    SectionCopying, SectionSheet, SheetInput, SheetSign, SheetView,
};
pub use words::{mark_said, place_said};
