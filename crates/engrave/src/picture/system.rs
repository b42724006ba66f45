//! One line of music with its lanes.

use std::fmt::Write as _;
use std::ops::RangeInclusive;
use std::sync::Arc;

use super::{LanePlan, Painter, PictureContent};
use crate::engraver::EngraveError;
use crate::lane::{Axis, FOOT, LaneFrame, LaneStroke, SIGNS, draw};
use crate::sheet::rounded;
use crate::{Drawing, Opening, SystemSpread, Width};

/// Something that stands on the page as a whole, mm.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct PageBlock {
    pub(super) content: String,
    pub(super) height: f64,
}

/// Between a staff with its signs and the lane, mm.
const CLEAR: f64 = 1.4;
/// The engraver's own limit, eighths of a staff height.
const WIDEST: u8 = 48;

/// The lanes of one staff.
struct StaffLanes<'a, 'p> {
    part: usize,
    staff: u8,
    plans: Vec<&'a LanePlan<'p>>,
}

/// A line of music: all parts on one system where its lanes find room between the staves, else a system
/// for each part.
pub(super) fn blocks(
    painter: &Painter<'_>,
    content: &PictureContent<'_>,
    bars: &RangeInclusive<u32>,
    opening: Opening,
) -> Result<Vec<PageBlock>, EngraveError> {
    let movement = painter.score.movement_of(*bars.start());
    let staves = staff_lanes(content, movement);
    let mut parts: Vec<usize> = staves.iter().map(|staff| staff.part).collect();
    parts.dedup();
    if let Some(block) = together(painter, bars, &parts, &staves, opening)? {
        return Ok(vec![block]);
    }
    let mut blocks = Vec::new();
    for part in parts {
        let own: Vec<StaffLanes<'_, '_>> =
            staff_lanes(content, movement).into_iter().filter(|staff| staff.part == part).collect();
        blocks.extend(together(painter, bars, &[part], &own, opening)?);
    }
    Ok(blocks)
}

/// The lanes of one movement, by staff.
fn staff_lanes<'a, 'p>(content: &'a PictureContent<'p>, movement: usize) -> Vec<StaffLanes<'a, 'p>> {
    let mut staves: Vec<StaffLanes<'a, 'p>> = Vec::new();
    for plan in content.lanes.iter().filter(|plan| plan.line.movement == movement) {
        let (part, staff) = (plan.line.part, plan.line.staff);
        match staves.iter_mut().find(|known| known.part == part && known.staff == staff) {
            Some(known) => known.plans.push(plan),
            None => staves.push(StaffLanes { part, staff, plans: vec![plan] }),
        }
    }
    staves.sort_by_key(|staff| (staff.part, staff.staff));
    staves
}

/// All parts on one system; `None` where the lanes do not fit between its staves.
fn together(
    painter: &Painter<'_>,
    bars: &RangeInclusive<u32>,
    parts: &[usize],
    lanes: &[StaffLanes<'_, '_>],
    opening: Opening,
) -> Result<Option<PageBlock>, EngraveError> {
    let style = painter.style;
    let scale = style.staff / 720.0;
    let slice = painter.cutter.cut(parts, bars.clone(), opening);
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a page in staff heights")]
    let width = Width::Hundredths(((style.width - 2.0 * style.side) / style.staff * 100.0) as u32);
    let room = |count: usize| count as f64 * lane_height(painter);
    let staff_count = staff_index(painter, parts, usize::MAX, 0);
    let wanted: Vec<f64> = (0..staff_count)
        .map(|staff| {
            let here = lanes.iter().find(|lane| staff_index(painter, parts, lane.part, lane.staff) == staff);
            here.map_or(0.0, |lane| room(lane.plans.len()))
        })
        .collect();
    let mut between = first_guess(&wanted, style.staff, staff_count);
    loop {
        let drawing = painter.engraver.engrave(&slice, SystemSpread { width, between_staves: between })?;
        let lacking = lacking(&drawing, &wanted, scale);
        if lacking <= 0.0 {
            return Ok(Some(compose(painter, &drawing, parts, lanes, bars, scale)));
        }
        if between >= WIDEST {
            return Ok(None);
        }
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a few eighths")]
        let more = (lacking / style.staff * 8.0).ceil().clamp(1.0, 48.0) as u8;
        between = between.saturating_add(more).min(WIDEST);
    }
}

/// A lane with its signs, mm.
fn lane_height(painter: &Painter<'_>) -> f64 {
    SIGNS + painter.style.lane + FOOT
}

/// Eighths of a staff height between staves that usually do: the lanes, and a staff height for what hangs
/// over.
fn first_guess(wanted: &[f64], staff: f64, staves: usize) -> u8 {
    let most = wanted.iter().take(staves.saturating_sub(1)).copied().fold(0.0, f64::max);
    if most <= 0.0 {
        return SystemSpread::default().between_staves;
    }
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "clamped")]
    let eighths = ((most / staff + 0.9) * 8.0).clamp(12.0, f64::from(WIDEST)) as u8;
    eighths
}

/// How much room is lacking between two staves, mm, at the worst place.
fn lacking(drawing: &Drawing, wanted: &[f64], scale: f64) -> f64 {
    let pairs = drawing.around.windows(2).zip(wanted);
    pairs
        .filter(|(_, wanted)| **wanted > 0.0)
        .map(|(pair, wanted)| wanted + 2.0 * CLEAR - (pair[1].top - pair[0].bottom) * scale)
        .fold(0.0, f64::max)
}

/// The place of a staff in a system of parts; past all of them for a part that is not there.
fn staff_index(painter: &Painter<'_>, parts: &[usize], part: usize, staff: u8) -> usize {
    let staves =
        |part: &usize| painter.score.parts.get(*part).map_or(1, |part| usize::from(part.staves.max(1)));
    let above: usize = parts.iter().take_while(|one| **one != part).map(staves).sum();
    if parts.contains(&part) { above + usize::from(staff.max(1)) - 1 } else { above }
}

fn compose(
    painter: &Painter<'_>,
    drawing: &Arc<Drawing>,
    parts: &[usize],
    lanes: &[StaffLanes<'_, '_>],
    bars: &RangeInclusive<u32>,
    scale: f64,
) -> PageBlock {
    let style = painter.style;
    // The block begins where the drawing does: neither white above it nor a slur cut off.
    let above = -drawing.system.top * scale;
    let mut content = format!(
        r#"<g class="system" transform="translate(0 {})"><g transform="scale({:.6})">{}</g></g>"#,
        rounded(above),
        scale,
        drawing.content
    );
    let mut bottom = drawing.system.bottom * scale + above;
    let barlines: Vec<f64> = drawing.barlines.iter().map(|barline| barline * scale).collect();
    for staff in lanes {
        let index = staff_index(painter, parts, staff.part, staff.staff);
        let Some(around) = drawing.around.get(index) else { continue };
        let axis = Axis::new(drawing, painter.score, staff.part, parts, bars, scale);
        let wanted = staff.plans.len() as f64 * lane_height(painter);
        let next = drawing.around.get(index + 1).map(|next| next.top * scale);
        let start = around.bottom * scale + CLEAR;
        // In the middle of the room that there is, but near its own staff.
        let spare = next.map_or(0.0, |next| (next - CLEAR - start - wanted).max(0.0) / 3.0);
        for (number, plan) in staff.plans.iter().enumerate() {
            let top = above + start + spare + number as f64 * lane_height(painter);
            let frame = LaneFrame {
                top,
                height: style.lane,
                frog: &style.frog,
                tip: &style.tip,
                name: &plan.name,
                barlines: &barlines,
            };
            let mut strokes = LaneStroke::of_plan(
                &painter.score.parts[staff.part],
                plan.line,
                plan.first,
                plan.planned,
                plan.hair,
                bars,
            );
            for stroke in &mut strokes {
                stroke.open = plan.open.binary_search(&stroke.index).is_ok();
            }
            let _ = write!(
                content,
                r#"<g data-line="{}">"#,
                arcata_xml::escape(&arcata_xml::seen(&plan.line.name))
            );
            content.push_str(&draw(&frame, &axis, &strokes));
            content.push_str("</g>");
            bottom = bottom.max(top + lane_height(painter));
        }
    }
    PageBlock { content, height: bottom }
}
