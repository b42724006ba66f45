//! The two bow signs as outlines, for pages and paper alike.
//!
//! Source: the signs as they are written over notes, common practice; drawn for this project.

use arcata_languages::{Saying, Wording};

use super::view::SheetSign;

/// Corners of one closed outline on a square of ten by ten, from the top left.
pub(super) type SignOutline = &'static [(f32, f32)];

/// A bracket open to the bottom, heavy on top.
const DOWN: SignOutline =
    &[(0.8, 1.0), (9.2, 1.0), (9.2, 9.4), (8.0, 9.4), (8.0, 4.0), (2.0, 4.0), (2.0, 9.4), (0.8, 9.4)];
/// A narrow wedge.
const UP: SignOutline = &[(1.8, 0.6), (3.2, 0.6), (5.0, 7.0), (6.8, 0.6), (8.2, 0.6), (5.6, 9.6), (4.4, 9.6)];

pub(super) const fn outline(sign: SheetSign) -> SignOutline {
    match sign {
        SheetSign::Down => DOWN,
        SheetSign::Up => UP,
    }
}

impl SheetSign {
    /// The case of a message.
    pub(super) const fn case(self) -> &'static str {
        match self {
            Self::Down => "down",
            Self::Up => "up",
        }
    }
}

/// What a screen reader says.
pub(super) fn name(sign: SheetSign, wording: &Wording) -> String {
    wording.say(&Saying::new("mark-bow").choosing("bow", sign.case()))
}
