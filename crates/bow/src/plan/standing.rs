//! Ways to bow a passage that players ask for whatever the best plan is.

use std::ops::Range;

use arcata_score::BowDirection;

use super::as_it_comes::unmarked;
use super::{Allowed, Link, Plan, PlanSettings, anchors, plan_allowed};
use crate::{Join, Line, StrokeKind};

/// A way that is always among those offered, as far as the printed marks and the anchors leave it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Standing {
    /// Plain alternation: from the bow before the passage, or, where the bow is free, from the one that brings the next
    /// downbeat down. Printed marks and anchors hold.
    AsItComes,
    /// The best that begins the passage on the other bow than the best plan.
    OtherStart,
    /// The last two strokes hooked in every bar that comes out odd, and alternation besides.
    LastTwoHooked,
}

/// Fewer strokes of a bar leave nothing to alternate with (rule of thumb).
const ODD_BAR: usize = 3;

impl Standing {
    /// All of them, as they are asked for.
    pub const ALL: [Self; 3] = [Self::AsItComes, Self::OtherStart, Self::LastTwoHooked];

    /// The cheapest plan of a line that is this way inside the window; `None` where there is none.
    pub(super) fn plan(
        self,
        line: &Line,
        settings: &PlanSettings,
        window: &Range<usize>,
        best: &Plan,
    ) -> Option<Plan> {
        let mut allowed = anchors::allowed(line, settings);
        match self {
            Self::AsItComes => alternating(line, window, best, &mut allowed),
            Self::OtherStart => {
                let first = window.clone().find(|at| line.strokes[*at].kind != StrokeKind::Tremolo)?;
                allowed[first] = allowed[first].only_direction(best.strokes[first].direction.other());
            }
            Self::LastTwoHooked => {
                let hooked = odd_bars(line, window);
                if hooked.is_empty() {
                    return None;
                }
                for at in window.clone().filter(|at| *at > 0 && line.strokes[*at].join == Join::Continues) {
                    let link = if hooked.contains(&at) { Link::Hooked } else { Link::Change };
                    allowed[at] = allowed[at].only_link(link);
                }
            }
        }
        if allowed.iter().any(|set| set.is_empty()) { None } else { plan_allowed(line, settings, &allowed) }
    }
}

/// Leaves alternation alone in the window.
fn alternating(line: &Line, window: &Range<usize>, best: &Plan, allowed: &mut [Allowed]) {
    let before = window.start.checked_sub(1);
    let mut last: Option<BowDirection> = before.map(|before| best.strokes[before].direction);
    if let (Some(before), Some(direction)) = (before, last) {
        allowed[before] = allowed[before].only_direction(direction);
    }
    for index in window.clone() {
        let wanted = unmarked(line, index, last);
        // What is printed or asked for holds.
        let free = !allowed[index].only_direction(wanted).is_empty();
        let direction = if free { wanted } else { wanted.other() };
        let mut set = allowed[index].only_direction(direction);
        let joined = index > 0 && line.strokes[index].join == Join::Continues;
        if joined && last.is_some_and(|last| last != direction) && !set.only_link(Link::Change).is_empty() {
            set = set.only_link(Link::Change);
        }
        allowed[index] = set;
        last = Some(direction);
    }
}

/// The last strokes of the bars in a window that an odd number of strokes begins in, straight on into the next bar.
fn odd_bars(line: &Line, window: &Range<usize>) -> Vec<usize> {
    let strokes = &line.strokes;
    let mut found = Vec::new();
    let mut first = window.start;
    while first < window.end {
        let bar = strokes[first].bar;
        let end = first + strokes[first..].iter().take_while(|stroke| stroke.bar == bar).count();
        let whole = end <= window.end && first.checked_sub(1).is_none_or(|before| strokes[before].bar != bar);
        let goes_on = strokes.get(end).is_some_and(|next| next.join != Join::Entry);
        let count = end - first;
        let steady = strokes[first..end].iter().skip(1).all(|stroke| stroke.join == Join::Continues);
        let bowed = strokes[end - 2.min(count)..end].iter().all(|stroke| stroke.kind != StrokeKind::Tremolo);
        if whole && goes_on && steady && bowed && count >= ODD_BAR && !count.is_multiple_of(2) {
            found.push(end - 1);
        }
        first = end;
    }
    found
}
