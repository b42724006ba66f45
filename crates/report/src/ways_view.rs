//! Anchors, their price and their conflicts, and ways to come out on a certain bow, as data.

use std::collections::BTreeMap;

use arcata_bow::Line;
use arcata_bow::plan::{Anchor, Anchored, Clash, DemandConflict, DemandedBy, WayThere, WaysThere};
use arcata_languages::{Argument, SaidPlace, Saying, Wording, capital};
use arcata_review::{repair_words, words};
use arcata_score::{BowDirection, Score};
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
    pub fn new(score: &Score, line: &Line, anchors: &[Anchor], found: &Anchored, wording: &Wording) -> Self {
        let (gains, losses) = gains_and_losses(&found.more, wording);
        Self {
            anchors: anchors
                .iter()
                .map(|anchor| wording.say(&wish(score, line, &DemandedBy::Anchor(*anchor))))
                .collect(),
            more: found.more.total(),
            cost_change: terms(&found.more),
            gains,
            losses,
            otherwise: found
                .differences
                .iter()
                .map(|other| wording.say(&difference_words(score, line, other)))
                .collect(),
            conflicts: found.conflicts.iter().map(|conflict| told(score, line, conflict, wording)).collect(),
        }
    }
}

/// A demand in words: `bar 60, beat 1 down`, `the printed up-bow at bar 59, beat 3`.
fn wish(score: &Score, line: &Line, wish: &DemandedBy) -> Saying {
    let at = line
        .strokes
        .get(wish.stroke())
        .map_or_else(|| SaidPlace::bar(""), |it| stroke_place(score, line, it));
    match wish {
        DemandedBy::Printed { direction, .. } => {
            Saying::new("demand-printed").choosing("bow", words::bow(*direction)).with("at", at)
        }
        DemandedBy::Anchor(anchor) => Saying::new("demand-anchor")
            .with("at", at)
            .choosing("bow", anchor.direction.map_or("any", words::bow))
            .choosing("link", anchor.link.map_or("any", link_name)),
    }
}

fn told(score: &Score, line: &Line, conflict: &DemandConflict, wording: &Wording) -> ConflictView {
    let (one, other) = (wish(score, line, &conflict.one), wish(score, line, &conflict.other));
    let said = |saying: Saying| capital(&wording.say(&saying.with("one", one).with("other", other)));
    match &conflict.clash {
        Clash::SameStroke => ConflictView {
            sentence: said(Saying::new("conflict-same-stroke")),
            more: 0,
            cost_change: BTreeMap::new(),
        },
        Clash::Pays { more, differences } => {
            let how: Vec<Argument> =
                differences.iter().take(2).map(|other| difference_words(score, line, other).into()).collect();
            let pays = Saying::new("conflict-pays")
                .with("points", Argument::Points(more.total()))
                .choosing("how-known", if how.is_empty() { "no" } else { "yes" })
                .with("how", Argument::Row(how));
            ConflictView { sentence: said(pays), more: more.total(), cost_change: terms(more) }
        }
    }
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
        wording: &Wording,
    ) -> Self {
        let assumptions =
            if line.repeats.is_empty() { Vec::new() } else { vec![wording.word("assume-played-once")] };
        let shown = first..=bar;
        let ways = found.ways.iter().map(|way| PlanWayView::of(score, line, &shown, way, wording)).collect();
        let asked = Saying::new("asked-ending")
            .with("at", SaidPlace::bar(score.bar_label(bar)))
            .choosing("bow", words::bow(direction));
        Self { asked: wording.say(&asked), assumptions, ways }
    }
}

impl PlanWayView {
    fn of(
        score: &Score,
        line: &Line,
        shown: &std::ops::RangeInclusive<u32>,
        way: &WayThere,
        wording: &Wording,
    ) -> Self {
        let done = way.changes.iter().map(|change| {
            let what = wording.say(&repair_words::what(score, line.part, change));
            let mut letters = what.chars();
            letters.next().map_or_else(String::new, |first| first.to_lowercase().chain(letters).collect())
        });
        let arm = way.differences.iter().map(|other| wording.say(&difference_words(score, line, other)));
        let said: Vec<String> = done.chain(arm).collect();
        let name = if said.is_empty() { wording.word("way-as-it-is") } else { said.join(", ") };
        let (gains, losses) = gains_and_losses(&way.more, wording);
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
