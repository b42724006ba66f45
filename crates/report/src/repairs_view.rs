//! Repairs as data: what each further change of the notation buys.

use std::collections::BTreeMap;

use arcata_bow::plan::{Frontier, NotationChange, Passes, Repaired, same_bows};
use arcata_bow::{Line, Plan};
use arcata_languages::Wording;
use arcata_review::repair_words::{self, PlannedLine};
use arcata_score::Score;
use schemars::JsonSchema;
use serde::Serialize;

use crate::plan_view::{PlanStrokeView, terms};

/// What a writer could change in a line's slurs, and how much each further change buys.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct RepairsView {
    /// What must be known to read the numbers; empty most of the time.
    pub assumptions: Vec<String>,
    /// What the notation as printed costs, thousandths of a point, term by term.
    pub printed: BTreeMap<&'static str, i64>,
    /// The best plan with one change, with two …, each only if it costs less than all before it.
    pub steps: Vec<RepairView>,
}

/// The best plan with some changes of the notation.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct RepairView {
    /// The changes, in order.
    pub changes: Vec<NotationChangeView>,
    /// What it costs less than the notation as printed, thousandths of a point, the changes paid.
    pub gain: i64,
    /// The difference, term by term: what is gained is negative.
    pub cost_change: BTreeMap<&'static str, i64>,
    /// What is gained, in words.
    pub gains: Vec<String>,
    /// What is lost, in words.
    pub losses: Vec<String>,
}

/// One change of the notation.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct NotationChangeView {
    /// One sentence for people.
    pub sentence: String,
    /// Where, in words.
    pub place: String,
    /// The strokes that are printed there, in words.
    pub before: Vec<String>,
    /// The strokes that come of them, in words.
    pub after: Vec<String>,
    /// The printed strokes with their best plan.
    pub strokes_before: Vec<PlanStrokeView>,
    /// The new strokes with theirs.
    pub strokes_after: Vec<PlanStrokeView>,
}

impl RepairsView {
    /// The frontier of a line.
    #[must_use]
    pub fn new(score: &Score, frontier: &Frontier, wording: &Wording) -> Self {
        let assumptions = match frontier.passes {
            Passes::NoRepeats => Vec::new(),
            Passes::PlayedOnce => vec![wording.word("assume-played-once")],
        };
        let Some((printed, steps)) = frontier.steps.split_first() else {
            return Self { assumptions, printed: BTreeMap::new(), steps: Vec::new() };
        };
        // A step in which no arm does anything else is nothing to propose.
        let moves = |step: &&Repaired| !same_bows((&printed.line, &printed.plan), (&step.line, &step.plan));
        let steps =
            steps.iter().filter(moves).map(|step| RepairView::of(score, printed, step, wording)).collect();
        Self { assumptions, printed: terms(&printed.cost), steps }
    }
}

impl RepairView {
    fn of(score: &Score, printed: &Repaired, step: &Repaired, wording: &Wording) -> Self {
        let before = PlannedLine { line: &printed.line, plan: &printed.plan };
        let after = PlannedLine { line: &step.line, plan: &step.plan };
        let changes = (0..step.changes.len())
            .map(|index| NotationChangeView::of(score, (before, after), &step.changes, index, wording));
        let (gains, losses) = crate::term_words::gains_and_losses(&step.change, wording);
        Self {
            changes: changes.collect(),
            gain: -step.change.total(),
            cost_change: terms(&step.change),
            gains,
            losses,
        }
    }
}

impl NotationChangeView {
    fn of(
        score: &Score,
        (before, after): (PlannedLine<'_>, PlannedLine<'_>),
        changes: &[NotationChange],
        index: usize,
        wording: &Wording,
    ) -> Self {
        let change = &changes[index];
        let said = |bowed: PlannedLine<'_>, strokes: &std::ops::Range<usize>| {
            let said = strokes.clone().filter_map(|index| repair_words::stroke(score, bowed, index));
            said.map(|stroke| wording.say(&stroke)).collect()
        };
        Self {
            sentence: wording.say(&repair_words::sentence(score, (before, after), changes, index)),
            place: wording
                .argument(&repair_words::place(score, after.line.part, change.bar, change.offset).into()),
            before: said(before, &change.before),
            after: said(after, &change.after),
            strokes_before: strokes(score, before.line, before.plan, &change.before),
            strokes_after: strokes(score, after.line, after.plan, &change.after),
        }
    }
}

fn strokes(score: &Score, line: &Line, plan: &Plan, range: &std::ops::Range<usize>) -> Vec<PlanStrokeView> {
    range
        .clone()
        .filter_map(|index| {
            Some(PlanStrokeView::of(score, line, line.strokes.get(index)?, plan.strokes.get(index)?))
        })
        .collect()
}
