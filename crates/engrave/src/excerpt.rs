//! A bar or two in a list: music without lanes, chosen notes on a grey ground.

use std::fmt::Write as _;

use arcata_xml::NodeId;

use crate::sheet::rounded;
use crate::{Drawing, EngraveError, Engraver, Picture, Slice, SystemSpread};

/// Sizes, mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ExcerptStyle {
    /// From the first line of a staff to the fifth; less where the music is wider than the room.
    pub staff: f64,
    /// The room across.
    pub width: f64,
}

/// White above, below and beside the music, mm: lines are as wide as they are.
const EDGE: f64 = 0.3;
/// What the ground of a note reaches beyond it, in units of a drawing: a third of a notehead.
const GROUND: f64 = 60.0;
/// A grey that a copier keeps light.
const GREY: &str = "#dcdcdc";

/// Draws slices as pictures of their own, in the order in which they are given, each with its chosen notes on a
/// grey ground.
#[must_use]
pub fn excerpts(
    engraver: &Engraver,
    slices: &[(Slice, Vec<NodeId>)],
    style: ExcerptStyle,
) -> Vec<Result<Picture, EngraveError>> {
    let asked: Vec<(Slice, SystemSpread)> =
        slices.iter().map(|(slice, _)| (slice.clone(), SystemSpread::default())).collect();
    let drawn = engraver.engrave_all(&asked).into_iter().zip(slices);
    drawn.map(|(drawing, (_, chosen))| Ok(picture(&*drawing?, chosen, style))).collect()
}

fn picture(drawing: &Drawing, chosen: &[NodeId], style: ExcerptStyle) -> Picture {
    let system = drawing.system;
    let wide = (system.right - system.left).max(1.0);
    let scale = (style.staff / drawing.staff_height()).min((style.width - 2.0 * EDGE) / wide);
    let mut content = format!(
        r#"<g transform="translate({} {}) scale({scale:.6})">"#,
        rounded(EDGE - system.left * scale),
        rounded(EDGE - system.top * scale)
    );
    for note in chosen.iter().filter_map(|note| drawing.notes.get(note)) {
        let _ = write!(
            content,
            r#"<rect x="{}" y="{}" width="{}" height="{}" fill="{GREY}"/>"#,
            rounded(note.left - GROUND),
            rounded(system.top),
            rounded(note.right - note.left + 2.0 * GROUND),
            rounded(system.bottom - system.top)
        );
    }
    content.push_str(&drawing.content);
    content.push_str("</g>");
    Picture {
        title: String::new(),
        content,
        width: wide * scale + 2.0 * EDGE,
        height: (system.bottom - system.top) * scale + 2.0 * EDGE,
    }
}

#[cfg(test)]
mod tests {
    use arcata_xml::{Limits, open_score};

    use super::*;
    use crate::{Cutter, Opening};

    #[test]
    fn a_chosen_note_stands_on_grey_and_a_wide_bar_gets_smaller() {
        let bar = "1/16 C5 D5 E5 F5 ".repeat(4);
        let xml = arcata_testkit::musicxml(&format!("violin: 1/4 C5!down D5 E5 F5 | {bar}"));
        let file = open_score(xml.into_bytes(), &Limits::default()).expect("a score");
        let score = arcata_score::read(file.document());
        let cutter = Cutter::new(file.document(), &score);
        let slices: Vec<(Slice, Vec<NodeId>)> = (0..2)
            .map(|bar| {
                let slice = cutter.cut(&[0], bar..=bar, Opening::NextLine).unnamed();
                let first = slice.notes()[..1].to_vec();
                (slice, first)
            })
            .collect();
        let style = ExcerptStyle { staff: 5.0, width: 40.0 };
        let drawn = excerpts(&Engraver::new(), &slices, style);
        let pictures: Vec<Picture> = drawn.into_iter().collect::<Result<_, _>>().expect("engraved");
        assert!(
            pictures.iter().all(|picture| !picture.content.contains("violin")),
            "the page names the part"
        );
        assert!(pictures.iter().all(|picture| picture.content.matches(GREY).count() == 1));
        assert!(pictures[0].width < 40.0 && (pictures[1].width - 40.0).abs() < 1e-6);
        let outlines = pictures[0].outlines().expect("outlines");
        assert!(outlines.starts_with("<svg") && !outlines.contains("<text") && !outlines.contains("font"));
    }
}
