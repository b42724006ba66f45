//! How far a line of music reaches over and under its staves, place by place.
//!
//! Two lines may stand as near as their signs allow side by side: the highest note of the one is seldom under the
//! lowest of the other.

use super::engraving::SystemDrawing;

/// Width of a place, drawing units: about a notehead and a half.
const PLACE: f64 = 360.0;

/// Over the first line of the first staff and under the last line of the last, for each place from the left, drawing
/// units.
#[derive(Clone, Debug, Default)]
pub(super) struct StaffOutline {
    staves: f64,
    over: Vec<f64>,
    under: Vec<f64>,
}

impl StaffOutline {
    pub(super) fn new(system: &SystemDrawing) -> Self {
        let mut outline = Self { staves: system.staves.bottom - system.staves.top, ..Self::default() };
        for area in &system.areas {
            let (over, under) = (system.staves.top - area.top, area.bottom - system.staves.bottom);
            let (first, last) = (place(area.left), place(area.right));
            if outline.over.len() <= last {
                outline.over.resize(last + 1, 0.0);
                outline.under.resize(last + 1, 0.0);
            }
            for place in first..=last {
                outline.over[place] = outline.over[place].max(over);
                outline.under[place] = outline.under[place].max(under);
            }
        }
        outline
    }

    /// The most over all places.
    pub(super) fn above(&self) -> f64 {
        self.over.iter().copied().fold(0.0, f64::max)
    }

    /// See `above`.
    pub(super) fn below(&self) -> f64 {
        self.under.iter().copied().fold(0.0, f64::max)
    }

    /// With its staves.
    pub(super) fn height(&self) -> f64 {
        self.above() + self.staves + self.below()
    }

    /// From the last line of this to the first line of what stands under it, where both touch.
    pub(super) fn distance(&self, lower: &Self) -> f64 {
        self.under.iter().zip(&lower.over).map(|(under, over)| under + over).fold(0.0, f64::max)
    }
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "not less than nothing, and at most a page"
)]
fn place(x: f64) -> usize {
    (x.clamp(0.0, 100_000.0) / PLACE) as usize
}
