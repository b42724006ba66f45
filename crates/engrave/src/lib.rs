//! Engraved slices of music and bow lanes: the only crate that knows the engraving library.

mod booklet;
mod cleaning;
mod drawing;
mod engraver;
mod excerpt;
mod fonts;
mod lane;
mod marks;
mod picture;
mod press;
mod sheet;
mod slice;
mod stage;

pub use booklet::{
    Advice, Booklet, BookletRemark, BookletRequest, FoldedSheets, House, HouseError, Mend, Mending, PageEnd,
    PageEndKind, PageName, SystemWide, sheet_sides,
};
pub use drawing::{Area, Drawing, NotDrawn};
pub use engraver::{EngraveError, Engraver, SystemSpread, Width};
pub use excerpt::{ExcerptStyle, excerpts};
pub use fonts::music_style_sheet;
pub use lane::{LanePace, LaneSign, LaneStroke};
pub use marks::DrawnMark;
pub use picture::{Caption, DrawError, LanePlan, Painter, PictureContent, PictureStyle, Surroundings};
pub use press::{EngravingOrder, InProcess, Press, PressError};
pub use sheet::{Picture, PictureError, pdf};
pub use slice::{Cutter, Opening, Slice, note_name};
