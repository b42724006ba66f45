//! Engraved slices of music and bow lanes: the only crate that knows the engraving library.

mod cleaning;
mod drawing;
mod engraver;
mod fonts;
mod sheet;
mod slice;

pub use drawing::{Area, Drawing, Remark};
pub use engraver::{EngraveError, Engraver, Spread, Width};
pub use sheet::{Picture, PictureError, pdf};
pub use slice::{Cutter, Slice, note_name};
