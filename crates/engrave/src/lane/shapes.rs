//! The shapes of the lane. Lengths in millimetres.

use std::fmt::Write as _;

use crate::sheet::rounded;

/// A place on paper.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct PaperPoint {
    pub(super) x: f64,
    pub(super) y: f64,
}

impl PaperPoint {
    /// On the way to another, 0 here, 1 there.
    pub(super) fn towards(self, other: Self, share: f64) -> Self {
        Self { x: self.x + (other.x - self.x) * share, y: self.y + (other.y - self.y) * share }
    }
}

/// A line from one point to another, as thick as given at its ends.
pub(super) fn tapered(from: PaperPoint, to: PaperPoint, thick_from: f64, thick_to: f64) -> String {
    let (dx, dy) = (to.x - from.x, to.y - from.y);
    let length = dx.hypot(dy).max(0.01);
    // At a right angle to the line.
    let (nx, ny) = (-dy / length / 2.0, dx / length / 2.0);
    let corner = |point: PaperPoint, thick: f64| {
        format!("{} {}", rounded(point.x + nx * thick), rounded(point.y + ny * thick))
    };
    format!(
        r#"<path d="M{} L{} L{} L{} Z"/>"#,
        corner(from, thick_from),
        corner(to, thick_to),
        corner(to, -thick_to),
        corner(from, -thick_from)
    )
}

/// A filled spot.
pub(super) fn spot(at: PaperPoint, radius: f64) -> String {
    format!(r#"<circle cx="{}" cy="{}" r="{}"/>"#, rounded(at.x), rounded(at.y), rounded(radius))
}

/// A line through points, not filled.
pub(super) fn thin(points: &[PaperPoint], width: f64, more: &str) -> String {
    let mut path = String::new();
    for (index, point) in points.iter().enumerate() {
        let letter = if index == 0 { 'M' } else { 'L' };
        let _ = write!(path, "{letter}{} {}", rounded(point.x), rounded(point.y));
    }
    format!(r#"<path d="{path}" fill="none" stroke="currentColor" stroke-width="{}"{more}/>"#, rounded(width))
}

/// An open arrowhead whose tip is at `at`, pointing along the way from one point to another.
pub(super) fn arrowhead(from: PaperPoint, to: PaperPoint, at: PaperPoint, size: f64, width: f64) -> String {
    let length = (to.x - from.x).hypot(to.y - from.y).max(0.01);
    let (dx, dy) = ((to.x - from.x) / length, (to.y - from.y) / length);
    let wing = |side: f64| PaperPoint {
        x: at.x - dx * size - dy * side * size * 0.7,
        y: at.y - dy * size + dx * side * size * 0.7,
    };
    thin(&[wing(1.0), at, wing(-1.0)], width, "")
}

/// The sign of a down-bow (SMuFL `stringsDownBow`, U+E610) in outline, standing on `at`, `high` millimetres.
/// A printed sign is solid: the outline tells one that was worked out from it.
pub(super) fn down_sign(at: PaperPoint, high: f64) -> String {
    let (half, bar, leg) = (high * 0.44, high * 0.42, high * 0.17);
    let (left, right, top) = (at.x - half, at.x + half, at.y - high);
    let points = [
        (left, at.y),
        (left, top),
        (right, top),
        (right, at.y),
        (right - leg, at.y),
        (right - leg, top + bar),
        (left + leg, top + bar),
        (left + leg, at.y),
        (left, at.y),
    ];
    thin(&points.map(|(x, y)| PaperPoint { x, y }), 0.16, r#" stroke-linejoin="miter""#)
}

/// The sign of an up-bow (SMuFL `stringsUpBow`, U+E612) in outline, standing on `at`.
pub(super) fn up_sign(at: PaperPoint, high: f64) -> String {
    let (half, wide, top) = (high * 0.4, high * 0.22, at.y - high);
    let points = [
        (at.x - half, top),
        (at.x, at.y),
        (at.x + half, top),
        (at.x + half - wide, top),
        (at.x, at.y - high * 0.5),
        (at.x - half + wide, top),
        (at.x - half, top),
    ];
    thin(&points.map(|(x, y)| PaperPoint { x, y }), 0.16, r#" stroke-linejoin="miter""#)
}
