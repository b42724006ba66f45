//! What players get: a score with a layer on it, parts in files of their own, change sheets with the bars that change engraved.

mod changed_bars;
mod fresh;
mod part;
mod planned_marks;
mod sheet;

pub use changed_bars::changed_bars;
pub use fresh::fresh_signs;
pub use part::{PartPaper, part_file_name, part_paper};
pub use planned_marks::{PlannedMarks, planned_marks};
pub use sheet::{engrave_bars, marked, written};
