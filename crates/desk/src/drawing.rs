//! Systems of engraved music with the bow under the staves, as the page shows them.

use std::ops::RangeInclusive;

use arcata_bow::plan::open_strokes;
use arcata_engrave::{
    Cutter, Engraver, LanePlan, Opening, Painter, Picture, PictureContent, PictureStyle, Surroundings,
};
use arcata_languages::Wording;
use arcata_score::Score;
use arcata_xml::Document;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::desk::Desk;

/// A line of music.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize, Serialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct SystemView {
    /// First bar, index.
    #[schema(value_type = u64)]
    pub(crate) first: u32,
    /// Last bar.
    #[schema(value_type = u64)]
    pub(crate) last: u32,
}

/// A picture.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub(crate) struct PictureView {
    /// The version it shows.
    pub(crate) version: u64,
    /// What goes into an `<svg>` of the size given, in millimetres.
    pub(crate) svg: String,
    /// Width, mm.
    pub(crate) width: f64,
    /// Height, mm.
    pub(crate) height: f64,
}

/// The lanes of a line of music whose notes are where they were.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub(crate) struct LanesView {
    /// First bar of the line of music.
    pub(crate) first: u32,
    /// Width of its picture, mm.
    pub(crate) width: f64,
    /// Height.
    pub(crate) height: f64,
    /// The lanes, in the order in which they stand in the picture.
    pub(crate) lanes: Vec<String>,
}

/// What is to be drawn, and how wide.
#[derive(Clone, Debug)]
pub(crate) struct Wanted {
    /// Parts by index; all that are bowed where there are none.
    pub(crate) parts: Vec<usize>,
    /// Width, mm.
    pub(crate) width: u16,
    /// Whether strokes for which two ways are nearly equal are hollow.
    pub(crate) sure: bool,
    /// In whose words it is labelled.
    pub(crate) wording: Wording,
}

/// Narrower and wider than this nothing is drawn, mm.
pub(crate) const WIDTHS: RangeInclusive<u16> = 70..=420;

impl Wanted {
    fn lines(&self, desk: &Desk) -> Vec<usize> {
        let lines = desk.base.lines().iter().enumerate();
        let chosen = lines.filter(|(_, line)| self.parts.is_empty() || self.parts.contains(&line.part));
        chosen.map(|(index, _)| index).collect()
    }

    fn style(&self) -> PictureStyle {
        let style = PictureStyle {
            width: f64::from(self.width.clamp(*WIDTHS.start(), *WIDTHS.end())),
            side: 5.0,
            head: 1.0,
            staff: 6.5,
            surroundings: Surroundings::Bare,
            ..PictureStyle::paper()
        };
        style.in_words(&self.wording)
    }

    fn lanes<'d>(&self, lines: &[usize], desk: &'d Desk) -> Vec<LanePlan<'d>> {
        let lane = |index: &usize| LanePlan {
            line: &desk.base.lines()[*index],
            first: 0,
            planned: &desk.plans()[*index].strokes,
            hair: desk.base.reach(*index).hair,
            name: String::new(),
            open: if self.sure { open_strokes(desk.snapshot.sureness(*index)) } else { Vec::new() },
        };
        lines.iter().map(lane).collect()
    }
}

/// A small picture of some bars of one line.
///
/// # Errors
/// Bars that there are not, and music that cannot be engraved; in words.
pub(crate) fn small(
    (document, score, wording): (&Document, &Score, &Wording),
    lane: LanePlan<'_>,
    bars: RangeInclusive<u32>,
    (engraver, version): (&Engraver, u64),
) -> Result<PictureView, String> {
    let (first, last) = (*bars.start(), *bars.end());
    if first > last || last as usize >= score.bars.len() || last - first >= MOST_SMALL {
        return Err("there are no such bars, or too many for a small picture".to_owned());
    }
    let style = PictureStyle {
        width: 96.0,
        side: 1.0,
        head: 0.5,
        staff: 5.5,
        surroundings: Surroundings::Bare,
        ..PictureStyle::paper()
    };
    let style = style.in_words(wording);
    let cutter = Cutter::new(document, score);
    let drawn = Painter::new(&cutter, engraver, &style)
        .draw(&content(bars, &[lane]))
        .map_err(|problem| problem.to_string())?;
    let picture = drawn.into_iter().next().ok_or("there is nothing to draw")?;
    Ok(PictureView { version, svg: picture.content, width: picture.width, height: picture.height })
}

/// Bars of a small picture at most.
pub(crate) const MOST_SMALL: u32 = 8;

/// Which bars share a line.
pub(crate) fn systems(desk: &Desk, wanted: &Wanted, engraver: &Engraver) -> Vec<SystemView> {
    let (lines, style) = (wanted.lines(desk), wanted.style());
    let lanes = wanted.lanes(&lines, desk);
    let last = u32::try_from(desk.base.score().bars.len().saturating_sub(1)).unwrap_or(u32::MAX);
    let cutter = Cutter::new(desk.base.document(), desk.base.score());
    let painter = Painter::new(&cutter, engraver, &style);
    let content = content(0..=last, &lanes);
    painter
        .systems(&content)
        .into_iter()
        .map(|bars| SystemView { first: *bars.start(), last: *bars.end() })
        .collect()
}

/// Draws one line of music.
///
/// # Errors
/// Bars or parts that there are not, and music that cannot be engraved; in words.
pub(crate) fn system(
    desk: &Desk,
    wanted: &Wanted,
    bars: RangeInclusive<u32>,
    (engraver, version): (&Engraver, u64),
) -> Result<PictureView, String> {
    // On the page the lines follow each other: what holds is said where a movement begins, and where it changes.
    let score = desk.base.score();
    let begins = score.movements.iter().any(|movement| movement.bars.start() == bars.start());
    let opening = if begins || *bars.start() == 0 { Opening::Excerpt } else { Opening::NextLine };
    let picture = system_picture(desk, wanted, (bars, opening), engraver)?;
    Ok(PictureView {
        version,
        svg: named(&picture.content, &wanted.lines(desk)),
        width: picture.width,
        height: picture.height,
    })
}

/// One line of music as a picture; `opening` says whether it stands alone.
///
/// # Errors
/// As for [`system`].
pub(crate) fn system_picture(
    desk: &Desk,
    wanted: &Wanted,
    (bars, opening): (RangeInclusive<u32>, Opening),
    engraver: &Engraver,
) -> Result<Picture, String> {
    if bars.is_empty() || *bars.end() as usize >= desk.base.score().bars.len() {
        return Err("there are no such bars".to_owned());
    }
    let (lines, style) = (wanted.lines(desk), wanted.style());
    if lines.is_empty() {
        return Err("no bow moves in these parts".to_owned());
    }
    let lanes = wanted.lanes(&lines, desk);
    let cutter = Cutter::new(desk.base.document(), desk.base.score());
    let painter = Painter::new(&cutter, engraver, &style);
    let pictures =
        painter.draw_system(&content(bars, &lanes), opening).map_err(|problem| problem.to_string())?;
    Ok(pictures.into_iter().next().ok_or("there is nothing to draw")?)
}

/// The lanes of those lines of music whose bows have moved; what cannot be drawn is left out, and the page asks for it.
pub(crate) fn moved_lanes(
    desk: &Desk,
    (wanted, systems): (&Wanted, &[SystemView]),
    moved: &[(usize, u32, u32)],
    drawing: (&Engraver, u64),
) -> Vec<LanesView> {
    let touched = |system: &&SystemView| {
        moved.iter().any(|(_, first, last)| *first <= system.last && *last >= system.first)
    };
    let drawn = systems.iter().filter(touched).take(MOST_SYSTEMS).filter_map(|one| {
        let picture = system(desk, wanted, one.first..=one.last, drawing).ok()?;
        Some(LanesView {
            first: one.first,
            width: picture.width,
            height: picture.height,
            lanes: lanes_of(&picture.svg),
        })
    });
    drawn.collect()
}

/// So many lines of music are drawn with one answer.
const MOST_SYSTEMS: usize = 8;

/// The groups of the lanes in a picture.
fn lanes_of(svg: &str) -> Vec<String> {
    let mut lanes = Vec::new();
    let mut rest = svg;
    while let Some(start) = rest.find(LANE) {
        let lane = &rest[start..];
        let (mut depth, mut at) = (0_usize, 0_usize);
        let end = loop {
            let Some(next) = lane[at..].find("<g").into_iter().chain(lane[at..].find("</g>")).min() else {
                break lane.len();
            };
            at += next;
            if lane[at..].starts_with("</g>") {
                depth = depth.saturating_sub(1);
                at += 4;
                if depth == 0 {
                    break at;
                }
            } else {
                depth += 1;
                at += 2;
            }
        };
        lanes.push(lane[..end].to_owned());
        rest = &lane[end..];
    }
    lanes
}

/// How the group of a lane begins.
const LANE: &str = r#"<g class="lane""#;

pub(crate) fn content<'a>(bars: RangeInclusive<u32>, lanes: &'a [LanePlan<'a>]) -> PictureContent<'a> {
    PictureContent { title: String::new(), subtitle: String::new(), bars, lanes, captions: Vec::new() }
}

/// Lanes stand in the picture in the order of the lines: each gets the number of its line.
pub(crate) fn named(svg: &str, lines: &[usize]) -> String {
    let mut out = String::with_capacity(svg.len() + 64 * lines.len());
    for (index, piece) in svg.split(LANE).enumerate() {
        if let Some(before) = index.checked_sub(1) {
            out.push_str(LANE);
            if let Some(line) = lines.get(before) {
                out.push_str(&format!(r#" data-line="{line}""#));
            }
        }
        out.push_str(piece);
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lanes_are_named_in_order() {
        let svg = r#"<g><g class="lane" data-frog="1"></g><g class="lane"></g></g>"#;
        let said =
            r#"<g><g class="lane" data-line="3" data-frog="1"></g><g class="lane" data-line="5"></g></g>"#;
        assert_eq!(named(svg, &[3, 5]), said);
        let nested =
            r#"<g><g class="lane" data-line="3"><g class="stroke"><path/></g></g><g class="lane"></g></g>"#;
        let lanes =
            [r#"<g class="lane" data-line="3"><g class="stroke"><path/></g></g>"#, r#"<g class="lane"></g>"#];
        assert_eq!(lanes_of(nested), lanes);
    }
}
