//! Paper for players: parts in files of their own, and change sheets with the bars that change engraved.

mod part;
mod sheet;

pub use part::{PartPaper, page_end_words, part_file_name, part_paper, remark_words};
pub use sheet::{engrave_bars, marked, written};
