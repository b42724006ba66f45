//! What players get: a score with a layer on it, parts in files of their own, change sheets with the bars that change engraved.

mod part;
mod planned_marks;
mod sheet;

pub use part::{PartPaper, advice_words, page_end_words, part_file_name, part_paper, remark_words};
pub use planned_marks::{PlannedMarks, planned_marks};
pub use sheet::{engrave_bars, marked, written};
