//! Anchors, their price and their conflicts, and ways to come out on a certain bow, as data.

use std::collections::BTreeMap;

use arcata_bow::plan::{Anchor, Anchored, Clash, DemandConflict, DemandedBy, WayThere, WaysThere};
use arcata_bow::{Line, points};
use arcata_review::{repair_words, words};
use arcata_score::{BowDirection, Score, places};
use schemars::JsonSchema;
use serde::Serialize;

use crate::plan_view::{PlanStrokeView, difference_words, link_name, stroke_place, terms};
use crate::term_words::gains_and_losses;

/// What the anchors of a line ask for, what they cost and which do not go together.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct AnchorsView {
    /// The anchors, in words.
    pub anchors: Vec<String>,
    /// What the best plan with them costs more than without, thousandths of a point.
    pub more: i64,
    /// The difference, term by term.
    pub cost_change: BTreeMap<&'static str, i64>,
    /// What is gained, in words.
    pub gains: Vec<String>,
    /// What is lost, in words.
    pub losses: Vec<String>,
    /// What the arm does otherwise.
    pub otherwise: Vec<String>,
    /// Pairs of demands that do not go together.
    pub conflicts: Vec<ConflictView>,
}

/// Two demands that do not go together.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ConflictView {
    /// One sentence for people.
    pub sentence: String,
    /// What both cost more than neither, thousandths of a point.
    pub more: i64,
    /// The difference, term by term.
    pub cost_change: BTreeMap<&'static str, i64>,
}

/// The ways to end a bar on a certain bow.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct EndingView {
    /// What is asked, in words.
    pub asked: String,
    /// What must be known to read the numbers; empty most of the time.
    pub assumptions: Vec<String>,
    /// The ways, the cheapest first.
    pub ways: Vec<PlanWayView>,
}

/// One way to bow some bars.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct PlanWayView {
    /// Its name in the trade's words.
    pub name: String,
    /// How many changes of the notation it needs.
    pub changes: usize,
    /// What it costs more than the best plan without the wish, thousandths of a point.
    pub more: i64,
    /// The difference, term by term.
    pub cost_change: BTreeMap<&'static str, i64>,
    /// What is gained, in words.
    pub gains: Vec<String>,
    /// What is lost, in words.
    pub losses: Vec<String>,
    /// The strokes of the bars looked at.
    pub strokes: Vec<PlanStrokeView>,
}

impl AnchorsView {
    /// The anchors of a line with what they come to.
    #[must_use]
    pub fn new(score: &Score, line: &Line, anchors: &[Anchor], found: &Anchored) -> Self {
        let (gains, losses) = gains_and_losses(&found.more);
        Self {
            anchors: anchors.iter().map(|anchor| wish(score, line, &DemandedBy::Anchor(*anchor))).collect(),
            more: found.more.total(),
            cost_change: terms(&found.more),
            gains,
            losses,
            otherwise: found.differences.iter().map(|other| difference_words(score, line, other)).collect(),
            conflicts: found.conflicts.iter().map(|conflict| told(score, line, conflict)).collect(),
        }
    }
}

/// A demand in words: `bar 60, beat 1 down`, `the printed up-bow at bar 59, beat 3`.
fn wish(score: &Score, line: &Line, wish: &DemandedBy) -> String {
    let at = line.strokes.get(wish.stroke()).map_or_else(String::new, |it| stroke_place(score, line, it));
    match wish {
        DemandedBy::Printed { direction, .. } => format!("the printed {} at {at}", words::bow(*direction)),
        DemandedBy::Anchor(anchor) => {
            let way = anchor.direction.map(way);
            let link = anchor.link.map(link_name);
            let asked: Vec<&str> = [way, link].into_iter().flatten().collect();
            format!("{at} {}", asked.join(" "))
        }
    }
}

const fn way(direction: BowDirection) -> &'static str {
    match direction {
        BowDirection::Down => "down",
        BowDirection::Up => "up",
    }
}

fn told(score: &Score, line: &Line, conflict: &DemandConflict) -> ConflictView {
    let (one, other) = (wish(score, line, &conflict.one), wish(score, line, &conflict.other));
    match &conflict.clash {
        Clash::SameStroke => ConflictView {
            sentence: format!(
                "{} and {other} ask one stroke to go both ways; the second is kept.",
                capital(&one)
            ),
            more: 0,
            cost_change: BTreeMap::new(),
        },
        Clash::Pays { more, differences } => {
            let how: Vec<String> =
                differences.iter().take(2).map(|other| difference_words(score, line, other)).collect();
            let how = if how.is_empty() { String::new() } else { format!(": {}", how.join(", ")) };
            ConflictView {
                sentence: format!(
                    "{} and {other} do not go together as it comes; keeping both raises the penalty by {}{how}.",
                    capital(&one),
                    points(more.total()),
                ),
                more: more.total(),
                cost_change: terms(more),
            }
        }
    }
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

impl EndingView {
    /// The ways to end a bar (an index) on a bow; strokes are shown from bar `first` on.
    #[must_use]
    pub fn new(
        score: &Score,
        line: &Line,
        (first, bar): (u32, u32),
        direction: BowDirection,
        found: &WaysThere,
    ) -> Self {
        let assumptions = if line.repeats.is_empty() {
            Vec::new()
        } else {
            vec!["repeated stretches are weighed as played once".to_owned()]
        };
        let shown = first..=bar;
        let ways = found.ways.iter().map(|way| PlanWayView::of(score, line, &shown, way)).collect();
        let bar = places::bar_said("bar", None, score.bar_label(bar));
        Self { asked: format!("end {bar} on {}", words::a_bow(direction)), assumptions, ways }
    }
}

impl PlanWayView {
    fn of(score: &Score, line: &Line, shown: &std::ops::RangeInclusive<u32>, way: &WayThere) -> Self {
        let done = way.changes.iter().map(|change| {
            let what = repair_words::what(score, line.part, change);
            let mut letters = what.chars();
            letters.next().map_or_else(String::new, |first| first.to_lowercase().chain(letters).collect())
        });
        let arm = way.differences.iter().map(|other| difference_words(score, line, other));
        let said: Vec<String> = done.chain(arm).collect();
        let name =
            if said.is_empty() { "as it is: the best way ends so".to_owned() } else { said.join(", ") };
        let (gains, losses) = gains_and_losses(&way.more);
        let strokes = way.line.strokes.iter().zip(&way.plan.strokes);
        Self {
            name,
            changes: way.changes.len(),
            more: way.more.total(),
            cost_change: terms(&way.more),
            gains,
            losses,
            strokes: strokes
                .filter(|(stroke, _)| shown.contains(&stroke.bar))
                .map(|(stroke, planned)| PlanStrokeView::of(score, &way.line, stroke, planned))
                .collect(),
        }
    }
}
