//! Marks that come anyway.

use std::collections::BTreeSet;

use arcata_score::BowDirection;

use crate::plan::as_it_comes::{Arrival, arrivals};
use crate::plan::{JoinedStrokes, joined_strokes, plan};
use crate::{Join, Line, Link, Plan, PlanSettings, PlannedStroke, Stroke, Term};

/// The marks of a line that could all go together without a stroke changing: alternation gives them, they
/// follow straight on, no row in one direction begins or ends there, they vouch for no unusual bow, and
/// planned without them the line is bowed the same.
///
/// `ending_joint`: the joint from which a note ends a phrase, hundredths. Whatever part of these marks is
/// taken out, the plan stays: it is the best within fewer bounds already.
#[must_use]
pub fn surplus(line: &Line, plan: &Plan, settings: &PlanSettings, ending_joint: u16) -> BTreeSet<usize> {
    let planned = &plan.strokes;
    if planned.len() != line.strokes.len() {
        return BTreeSet::new();
    }
    let ways = arrivals(line, settings.reach);
    let surplus = (1..planned.len())
        .filter(|index| comes_anyway(line, planned, &ways[*index], *index))
        .filter(|index| !vouches_for(&line.strokes[*index], &planned[*index], ending_joint))
        .collect();
    settled(line, plan, settings, surplus)
}

/// Without the marks the planner may find something better elsewhere: marks that hold it back stay.
fn settled(
    line: &Line,
    plan_with: &Plan,
    settings: &PlanSettings,
    mut surplus: BTreeSet<usize>,
) -> BTreeSet<usize> {
    let mut pieces: Vec<BarePiece> = joined_strokes(line).into_iter().map(BarePiece::new).collect();
    for round in 0..ROUNDS {
        if surplus.is_empty() {
            return surplus;
        }
        let mut changed: Vec<usize> = Vec::new();
        for piece in &mut pieces {
            changed.extend(piece.changed(line, plan_with, settings, &surplus));
        }
        changed.sort_unstable();
        if changed.is_empty() {
            return surplus;
        }
        let width = 1usize << round.saturating_sub(NARROW_ROUNDS);
        for changed in changed {
            for needed in nearest(&surplus, changed, width) {
                surplus.remove(&needed);
            }
        }
    }
    BTreeSet::new()
}

/// Strokes that hang together, and how they are bowed without some of their marks.
struct BarePiece {
    strokes: JoinedStrokes,
    /// What was taken out when they were planned last, and which strokes changed by it.
    known: Option<(BTreeSet<usize>, Vec<usize>)>,
}

impl BarePiece {
    fn new(strokes: JoinedStrokes) -> Self {
        Self { strokes, known: None }
    }

    /// The strokes that change without the marks in `surplus`.
    fn changed(
        &mut self,
        line: &Line,
        plan_with: &Plan,
        settings: &PlanSettings,
        surplus: &BTreeSet<usize>,
    ) -> &[usize] {
        let strokes: Vec<usize> = self.strokes.strokes().collect();
        let out: BTreeSet<usize> =
            strokes.iter().copied().filter(|stroke| surplus.contains(stroke)).collect();
        if self.known.as_ref().is_none_or(|(known, _)| *known != out) {
            let mut bare = self.strokes.line(line);
            for (stroke, _) in bare.strokes.iter_mut().zip(&strokes).filter(|(_, at)| out.contains(at)) {
                stroke.printed = None;
            }
            let without = plan(&bare, settings).strokes;
            let changed = |(at, now): &(usize, PlannedStroke)| {
                let with = &plan_with.strokes[*at];
                (now.direction, now.link) != (with.direction, with.link)
            };
            let changed = strokes.into_iter().zip(without).filter(changed).map(|(at, _)| at).collect();
            self.known = Some((out, changed));
        }
        self.known.as_ref().map_or(&[], |(_, changed)| changed)
    }
}

/// So many times only the mark nearest to each changed stroke stays; then each round keeps twice as many
/// around it, so that the last one leaves few to try. If strokes change even then, all marks stay (rule of thumb).
const NARROW_ROUNDS: u32 = 16;
/// See [`NARROW_ROUNDS`] (rule of thumb).
const ROUNDS: u32 = NARROW_ROUNDS + 8;

/// The marks that held a changed stroke back: the nearest ones, up to so many on either side.
fn nearest(surplus: &BTreeSet<usize>, changed: usize, width: usize) -> Vec<usize> {
    let before = surplus.range(..=changed).rev().take(width);
    let after = surplus.range(changed + 1..).take(width);
    if width > 1 {
        return before.chain(after).copied().collect();
    }
    before.chain(after).copied().min_by_key(|index| (index.abs_diff(changed), *index)).into_iter().collect()
}

/// Whether the mark says that an unusual bow is meant: on an accent, a swell or a phrase's end.
pub(super) fn vouches_for(stroke: &Stroke, planned: &PlannedStroke, ending_joint: u16) -> bool {
    let against = [Term::Accent, Term::Swell].into_iter().any(|term| planned.cost.term(term) > 0);
    against || planned.direction == BowDirection::Up && stroke.phrase.joint_after >= ending_joint
}

fn comes_anyway(line: &Line, planned: &[PlannedStroke], ways: &[Arrival], index: usize) -> bool {
    let stroke = &line.strokes[index];
    let Some(printed) = stroke.printed else { return false };
    let in_a_row = |other: Option<usize>| {
        other.and_then(|other| line.strokes.get(other)).is_some_and(|other| other.printed == Some(printed))
    };
    // Where the bow is free on a later pass, who has no mark counts back from the next downbeat instead.
    let alternates = |way: &Arrival| {
        way.join != Join::Entry
            && way.before.is_some_and(|before| planned[before].direction == printed.other())
    };
    ways.first().is_some_and(|way| way.join == Join::Continues)
        && planned[index].link == Link::Change
        && ways.iter().all(alternates)
        && !in_a_row(index.checked_sub(1))
        && !in_a_row(Some(index + 1))
}
