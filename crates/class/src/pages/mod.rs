//! Sheets and class pages, made from records.

mod alike_html;
mod class_csv;
mod class_html;
mod class_pdf;
mod class_pdf_table;
mod course;
mod frame;
mod hand_html;
mod sheet_fit;
mod sheet_html;
mod sheet_pdf;
mod sheet_view;

pub use alike_html::{AlikePair, alike_html};
pub use class_csv::class_csv;
pub use class_html::{ClassPage, ClassPageFor, class_html};
pub use class_pdf::class_pdf;
pub use hand_html::{HandPageBy, hand_html, hand_script};
pub use sheet_html::sheet_html;
pub use sheet_pdf::sheet_pdf;
pub use sheet_view::StudentSheetView;
