//! Other ways to bow some bars of a line, each with a small picture.

use arcata_bow::plan::alternatives;
use arcata_engrave::{Engraver, LanePlan};
use arcata_languages::{Argument, Wording};
use arcata_report::{alternative_name, gains_and_losses};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::act::Ask;
use crate::desk::Desk;
use crate::drawing::{MOST_SMALL, PictureView, small};

/// So many ways are shown at most, the plan among them.
const MOST: usize = 6;

/// One way to bow the bars.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub(crate) struct WayView {
    /// In a player's words.
    pub(crate) name: String,
    /// What it costs more than the plan, thousandths of a point.
    pub(crate) more: i64,
    /// The same as it is said, in points.
    pub(crate) penalty: String,
    /// What is gained, in words.
    pub(crate) gains: Vec<String>,
    /// What is lost.
    pub(crate) losses: Vec<String>,
    /// What to ask for to get it: strokes of the line, by index.
    pub(crate) asks: Vec<AskView>,
    /// The bars, bowed so.
    pub(crate) picture: Option<PictureView>,
}

/// A bow to be asked for.
#[derive(Clone, Debug, Deserialize, Serialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct AskView {
    /// The stroke.
    pub(crate) stroke: usize,
    /// What.
    pub(crate) ask: Ask,
}

/// Ways to bow the bars, the cheapest first.
///
/// # Errors
/// Where there is no such line, or no stroke in the bars.
pub(crate) fn ways(
    desk: &Desk,
    line: usize,
    (first, last): (u32, u32),
    (engraver, version): (&Engraver, u64),
    wording: &Wording,
) -> Result<Vec<WayView>, String> {
    let base = &desk.base;
    let of = base.lines().get(line).ok_or("there is no such line")?;
    let last = last
        .min(first.saturating_add(MOST_SMALL - 1))
        .min(u32::try_from(base.score().bars.len()).unwrap_or(u32::MAX).saturating_sub(1));
    let before = |bar: u32| of.strokes.partition_point(|stroke| stroke.bar < bar);
    let window = before(first)..before(last.saturating_add(1));
    if window.is_empty() {
        return Err("no bow moves in these bars".to_owned());
    }
    let settings = desk.snapshot.settings(line);
    let found = alternatives(of, settings, window.clone(), MOST);
    let planned = &desk.plans()[line].strokes;
    let views = found.iter().map(|way| {
        let (gains, losses) = gains_and_losses(&way.more, wording);
        let lane = LanePlan {
            line: of,
            first: way.strokes.start,
            planned: &way.plan.strokes,
            hair: settings.reach.hair,
            name: String::new(),
            open: Vec::new(),
        };
        let about = (base.document(), base.score(), wording);
        let picture = small(about, lane, first..=last, (engraver, version)).ok();
        // What differs from the plan in the bars is what has to be asked for.
        let asks = window.clone().filter_map(|stroke| {
            let here = way.plan.strokes.get(stroke.checked_sub(way.strokes.start)?)?;
            let now = planned.get(stroke)?;
            let same = here.direction == now.direction && here.link == now.link;
            (!same).then(|| AskView { stroke, ask: asked(here) })
        });
        WayView {
            name: alternative_name(base.score(), of, way, wording),
            more: way.more.total(),
            penalty: wording.argument(&Argument::Points(way.more.total())),
            gains,
            losses,
            asks: asks.collect(),
            picture,
        }
    });
    Ok(views.collect())
}

fn asked(planned: &arcata_bow::PlannedStroke) -> Ask {
    match (planned.link, planned.direction) {
        (arcata_bow::Link::Hooked, _) => Ask::Hook,
        (arcata_bow::Link::Retake, _) => Ask::Retake,
        (_, arcata_score::BowDirection::Down) => Ask::Down,
        (_, arcata_score::BowDirection::Up) => Ask::Up,
    }
}
