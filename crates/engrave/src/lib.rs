//! Engraved slices of music and bow lanes: the only crate that knows the engraving library.
//!
//! What the library is given is an [`EngravingOrder`], and what comes back is text; who fills orders is a [`Press`]. With the
//! feature `native` (on unless it is switched off) the library works in this process, and pictures become PNG and PDF. Without it
//! the crate compiles for browsers, where the library is a module of its own.

mod booklet;
mod cleaning;
mod drawing;
mod engraver;
mod excerpt;
mod fonts;
mod lane;
#[cfg(feature = "native")]
mod marks;
mod picture;
mod press;
mod sheet;
mod slice;
#[cfg(feature = "native")]
mod stage;

pub use booklet::{
    Advice, AskedStart, AskedStarts, BarOnPage, Booklet, BookletRemark, BookletRequest, FoldedSheets, House,
    HouseConflict, HouseError, Mend, Mending, PageEnd, PageEndKind, PageName, ShownChanges, SystemWide,
    advice_said, house_conflict_said, page_end_said, remark_said, sheet_sides,
};
pub use drawing::{Area, Drawing, NotDrawn};
pub use engraver::{EngraveError, Engraver, SystemSpread, Width};
pub use excerpt::{ExcerptStyle, excerpts};
#[cfg(not(feature = "native"))]
pub use fonts::give_music_style_sheet;
pub use fonts::music_style_sheet;
pub use lane::{LanePace, LaneSign, LaneStroke};
#[cfg(feature = "native")]
pub use marks::DrawnMark;
pub use picture::{Caption, DrawError, LanePlan, Painter, PictureContent, PictureStyle, Surroundings};
#[cfg(feature = "native")]
pub use press::InProcess;
pub use press::{EngravingOrder, Press, PressError};
pub use sheet::{Picture, PictureError};
#[cfg(feature = "native")]
pub use sheet::{PrintForm, pdf, print_pdf};
pub use slice::{Cutter, Opening, Slice, note_name};
