//! Bar numbers: over the staff at the left end of the bar, as low as nothing is in the way.

use std::fmt::Write as _;

use arcata_xml::escape;

use super::engraving::SystemDrawing;
use crate::drawing::Area;
use crate::fonts::WORDS;

/// Height of the letters, of a digit, and its width, drawing units (720 to a staff height).
const SIZE: f64 = 270.0;
const DIGIT: f64 = 0.68 * SIZE;
const WIDTH: f64 = 0.5 * SIZE;
/// White around it.
const WHITE: f64 = 45.0;

/// Puts a number over the staff at `left`.
pub(super) fn put(system: &mut SystemDrawing, left: f64, label: &str) {
    #[expect(clippy::cast_precision_loss, reason = "a few digits")]
    let width = label.chars().count() as f64 * WIDTH;
    let mut bottom = system.staves.top - WHITE;
    let place = |bottom: f64| Area { left, right: left + width, top: bottom - DIGIT, bottom };
    // As high as it must be: each round leaves something behind.
    for _ in 0..system.areas.len() {
        let here = place(bottom);
        let in_the_way = system.areas.iter().filter(|other| {
            other.left < here.right + WHITE
                && here.left - WHITE < other.right
                && other.top < here.bottom
                && here.top - WHITE < other.bottom
        });
        match in_the_way.map(|other| other.top - WHITE).reduce(f64::min) {
            Some(next) if next < bottom => bottom = next,
            _ => break,
        }
    }
    let area = place(bottom);
    let _ = write!(
        system.content,
        r#"<g class="bar-number"><text x="{left:.0}" y="{bottom:.0}" font-family="{WORDS}" font-size="{SIZE}" font-style="italic" fill="currentColor">{}</text></g>"#,
        escape(label)
    );
    system.areas.push(area);
    system.all = system.all.with(area);
}
