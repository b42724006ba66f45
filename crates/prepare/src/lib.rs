//! What players get: a score with a layer on it, parts in files of their own, change sheets with the bars that change engraved.

mod part;
mod sheet;
mod with_layer;

pub use part::{PartPaper, page_end_words, part_file_name, part_paper, remark_words};
pub use sheet::{engrave_bars, marked, written};
pub use with_layer::{WithLayer, with_layer};
