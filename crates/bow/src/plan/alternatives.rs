//! The k best plans that differ in what a player does.

use std::ops::Range;

use arcata_score::BowDirection;

use super::{Allowed, Link, Plan, PlanSettings, PlannedStroke, Standing, anchors, plan_allowed};
use crate::{Cost, Join, Line, StrokeKind};

/// Another way to bow a passage.
#[derive(Clone, Debug)]
pub struct Alternative {
    /// The whole plan of the line's stretch (see `strokes`).
    pub plan: Plan,
    /// Which strokes of the line the plan covers.
    pub strokes: Range<usize>,
    /// What the arm does otherwise than in the best plan; empty for the best itself.
    pub differences: Vec<Difference>,
    /// Its cost less the best plan's, term by term.
    pub more: Cost,
    /// The ways that players always ask for, where this is one of them.
    pub standing: Vec<Standing>,
}

/// One thing that a player does otherwise.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Difference {
    /// Index of the stroke in the line.
    pub stroke: usize,
    /// What.
    pub kind: DifferenceKind,
}

/// What a player does otherwise.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DifferenceKind {
    /// Starts (after a silence, or the piece) on this bow.
    Start(BowDirection),
    /// Hooks this stroke to the one before, in this direction.
    Hook(BowDirection),
    /// Retakes before this stroke, in this direction.
    Retake(BowDirection),
    /// Goes on alternating where the best plan hooks or retakes.
    AsItComes(BowDirection),
}

/// The cheapest plans of the strokes in `window` that differ to a player's ear or arm somewhere inside it, cheapest first;
/// the first is the best plan. Among them are always the ways that players ask for first (see [`Standing`]), as far as the
/// printed marks and anchors leave them; besides these and the best so many cheapest that there are `count` in all.
///
/// Two plans are one to a player when every stroke goes the same way and follows the one before it in the same manner;
/// after a rest the way alone counts, and in a tremolo nothing.
///
/// Exact: the space of plans is split by the first stroke at which a plan departs from one already found (Lawler's
/// method). The line is planned from the free joint before the window to the free joint after it: beyond those nothing
/// changes.
#[must_use]
pub fn alternatives(
    line: &Line,
    settings: &PlanSettings,
    window: Range<usize>,
    count: usize,
) -> Vec<Alternative> {
    let around = independent(line, &window);
    let stretch = cut(line, &around);
    let local = window.start.max(around.start) - around.start..window.end.min(around.end) - around.start;
    let settings = &within(settings, &around);
    let plans = k_best(&stretch, settings, &local, count);
    let Some(best) = plans.first().cloned() else { return Vec::new() };
    let mut found: Vec<(Plan, Vec<Standing>)> = plans.into_iter().map(|plan| (plan, Vec::new())).collect();
    if count > 1 {
        for standing in Standing::ALL {
            let Some(plan) = standing.plan(&stretch, settings, &local, &best) else { continue };
            match found.iter_mut().find(|(known, _)| same_to_a_player(&stretch, &local, known, &plan)) {
                Some((_, known)) => known.push(standing),
                None => found.push((plan, vec![standing])),
            }
        }
        found.sort_by_key(|(plan, _)| plan.total.total());
        while found.len() > count
            && let Some(least) = found.iter().skip(1).rposition(|(_, standing)| standing.is_empty())
        {
            found.remove(least + 1);
        }
    }
    found
        .into_iter()
        .map(|(plan, standing)| Alternative {
            differences: differences(&best, &plan, around.start),
            more: plan.total.less(&best.total),
            strokes: around.clone(),
            plan,
            standing,
        })
        .collect()
}

/// The settings for a stretch by itself.
pub(super) fn within(settings: &PlanSettings, around: &Range<usize>) -> PlanSettings {
    let mut settings = settings.clone();
    settings.anchors.retain(|anchor| around.contains(&anchor.stroke));
    for anchor in &mut settings.anchors {
        anchor.stroke -= around.start;
    }
    settings.leanings.retain(|leaning| around.contains(&leaning.stroke));
    for leaning in &mut settings.leanings {
        leaning.stroke -= around.start;
    }
    settings
}

/// The cheapest plans that differ to a player in the window, cheapest first.
pub(super) fn k_best(
    stretch: &Line,
    settings: &PlanSettings,
    window: &Range<usize>,
    count: usize,
) -> Vec<Plan> {
    let allowed = anchors::allowed(stretch, settings);
    let mut open: Vec<Branch> = Branch::of(stretch, settings, allowed, window.start).into_iter().collect();
    let mut found: Vec<Plan> = Vec::new();
    while found.len() < count {
        let Some(next) = cheapest(&open) else { break };
        let branch = open.swap_remove(next);
        open.extend(branch.split(stretch, settings, window));
        found.push(branch.plan);
    }
    found
}

/// All that is the same to a player as a stroke in this direction, linked like this.
fn same_stroke(line: &Line, index: usize, planned: &PlannedStroke) -> Allowed {
    let stroke = &line.strokes[index];
    match stroke.join {
        _ if stroke.kind == StrokeKind::Tremolo => Allowed::ANY,
        Join::Continues if index > 0 => Allowed::only(planned.direction, planned.link),
        // Out of a silence nobody hears whether the bow was set down anew.
        Join::Entry | Join::AfterRest | Join::Continues => Allowed::ANY.only_direction(planned.direction),
    }
}

/// Whether two plans are one to a player.
pub(super) fn same_to_a_player(line: &Line, window: &Range<usize>, one: &Plan, other: &Plan) -> bool {
    window.clone().all(|index| {
        let there = other.strokes[index];
        same_stroke(line, index, &one.strokes[index]).permits(there.direction, there.link)
    })
}

/// A part of the space of plans, with its cheapest plan.
struct Branch {
    allowed: Vec<Allowed>,
    /// Strokes before this one are fixed.
    fixed: usize,
    plan: Plan,
}

impl Branch {
    fn of(line: &Line, settings: &PlanSettings, allowed: Vec<Allowed>, fixed: usize) -> Option<Self> {
        let plan = plan_allowed(line, settings, &allowed)?;
        Some(Self { allowed, fixed, plan })
    }

    /// The branch without its own plan and all that is the same to a player, as disjoint branches.
    fn split(&self, line: &Line, settings: &PlanSettings, window: &Range<usize>) -> Vec<Self> {
        let mut branches = Vec::new();
        let mut allowed = self.allowed.clone();
        for index in self.fixed..window.end {
            let same = same_stroke(line, index, &self.plan.strokes[index]);
            let mut other = allowed.clone();
            other[index] = other[index].but(same);
            if !other[index].is_empty() {
                branches.extend(Self::of(line, settings, other, index));
            }
            allowed[index] = allowed[index].both(same);
        }
        branches
    }
}

fn cheapest(open: &[Branch]) -> Option<usize> {
    (0..open.len()).min_by_key(|at| (open[*at].plan.total.total(), open[*at].fixed))
}

/// The strokes around a window that hang together with it: from a free joint to a free joint, no
/// repeated stretch cut through.
pub(crate) fn independent(line: &Line, window: &Range<usize>) -> Range<usize> {
    let count = line.strokes.len();
    let (mut start, mut end) = (window.start.min(count.saturating_sub(1)), window.end.min(count));
    loop {
        while start > 0 && line.strokes[start].join != Join::Entry {
            start -= 1;
        }
        while end < count && line.strokes[end].join != Join::Entry {
            end += 1;
        }
        let before = (start, end);
        for stretch in line.repeats.iter().filter(|stretch| stretch.is_sound(count)) {
            // The stroke after a skipped ending hangs on the body too.
            let (first, last) = (stretch.first, (stretch.end() + 1).min(count));
            if first < end && start < last {
                start = start.min(first);
                end = end.max(last);
            }
        }
        if before == (start, end) {
            return start..end;
        }
    }
}

/// The line reduced to a range of strokes.
pub(crate) fn cut(line: &Line, range: &Range<usize>) -> Line {
    let repeats = line
        .repeats
        .iter()
        .filter(|stretch| range.start <= stretch.first && stretch.end() <= range.end)
        .map(|stretch| crate::RepeatedStretch {
            first: stretch.first - range.start,
            body_end: stretch.body_end - range.start,
            first_ending_end: stretch.first_ending_end - range.start,
            ..stretch.clone()
        })
        .collect();
    Line {
        strokes: line.strokes[range.clone()].to_vec(),
        repeats,
        voices: line.voices.clone(),
        name: line.name.clone(),
        ..*line
    }
}

/// What the arm does otherwise: links that differ, and starts on the other bow.
pub(super) fn differences(best: &Plan, other: &Plan, offset: usize) -> Vec<Difference> {
    let differs = |kind, index| Difference { stroke: offset + index, kind };
    best.strokes
        .iter()
        .zip(&other.strokes)
        .enumerate()
        .filter_map(|(index, (best, other))| match (best.link, other.link) {
            (before, Link::Reset) if before != Link::Reset || best.direction != other.direction => {
                Some(differs(DifferenceKind::Start(other.direction), index))
            }
            (Link::Reset | Link::Hooked | Link::Retake, Link::Change) => {
                Some(differs(DifferenceKind::AsItComes(other.direction), index))
            }
            (before, Link::Hooked) if before != Link::Hooked => {
                Some(differs(DifferenceKind::Hook(other.direction), index))
            }
            (before, Link::Retake) if before != Link::Retake => {
                Some(differs(DifferenceKind::Retake(other.direction), index))
            }
            _ => None,
        })
        .collect()
}
