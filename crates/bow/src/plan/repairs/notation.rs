//! What may be changed in the notation, between which notes, and what each change costs.

use std::ops::Range;

use arcata_score::Fermata;

use super::ChangeKind;
use crate::lines::{Extent, Going, LineSource};
use crate::phrase::CLEAR;
use crate::plan::{MarkReading, PlanSettings, Weights};
use crate::{Stroke, StrokeKind};

/// What may happen between an event and the one before it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Border {
    /// A new stroke is printed here; the ways in which it may go.
    Between {
        /// Under a slur with the stroke before.
        slur: Option<ChangeKind>,
        /// On the same bow as the note before, stopped.
        hook: Option<ChangeKind>,
        /// Between two slurs: the first takes this note, so that the second begins one later.
        later: Option<ChangeKind>,
        /// Between two slurs: the second takes the note before, so that the first ends one earlier.
        earlier: Option<ChangeKind>,
    },
    /// One stroke is printed over this place; the change that cuts it.
    Inside(Option<ChangeKind>),
}

impl Border {
    pub(super) fn is_printed(self) -> bool {
        matches!(self, Self::Between { .. })
    }

    pub(super) fn cut(self) -> Option<ChangeKind> {
        match self {
            Self::Inside(cut) => cut,
            Self::Between { .. } => None,
        }
    }

    pub(super) fn slur(self) -> Option<ChangeKind> {
        match self {
            Self::Between { slur, .. } => slur,
            Self::Inside(_) => None,
        }
    }

    pub(super) fn hook(self) -> Option<ChangeKind> {
        match self {
            Self::Between { hook, .. } => hook,
            Self::Inside(_) => None,
        }
    }

    pub(super) fn later(self) -> Option<ChangeKind> {
        match self {
            Self::Between { later, .. } => later,
            Self::Inside(_) => None,
        }
    }

    pub(super) fn earlier(self) -> Option<ChangeKind> {
        match self {
            Self::Between { earlier, .. } => earlier,
            Self::Inside(_) => None,
        }
    }
}

/// What a change costs.
pub(super) fn price(weights: &Weights, kind: ChangeKind) -> i64 {
    match kind {
        ChangeKind::Split => weights.split_slur,
        ChangeKind::SplitTie => weights.split_tie,
        ChangeKind::JoinNotes | ChangeKind::JoinSlurs => weights.join_strokes,
        ChangeKind::Hook => weights.write_hook,
        ChangeKind::EndEarlier
        | ChangeKind::EndLater
        | ChangeKind::BeginEarlier
        | ChangeKind::BeginLater
        | ChangeKind::HandOverEarlier
        | ChangeKind::HandOverLater => weights.move_slur_end,
    }
}

/// The borders of the events of some strokes, by the number of the event less the first one.
pub(super) struct Borders {
    first: usize,
    list: Vec<Border>,
}

impl Borders {
    /// The borders of the strokes in `strokes`; changes only inside `window`, which counts strokes too.
    pub(super) fn new(
        source: &LineSource<'_>,
        settings: &PlanSettings,
        strokes: &Range<usize>,
        window: &Range<usize>,
    ) -> Self {
        let look = Look { source, settings, window };
        let mut list = Vec::new();
        for index in strokes.clone() {
            let extent = source.extents()[index];
            list.push(if index > strokes.start { look.between(index) } else { FIXED });
            list.extend((extent.first + 1..extent.end).map(|event| look.inside(index, event)));
        }
        let first = source.extents()[strokes.start].first;
        Self { first, list }
    }

    /// The border before an event; the events must belong to the strokes asked for.
    pub(super) fn at(&self, event: usize) -> Border {
        self.list.get(event - self.first).copied().unwrap_or(FIXED)
    }

    /// The events.
    pub(super) fn events(&self) -> Range<usize> {
        self.first..self.first + self.list.len()
    }
}

const FIXED: Border = Border::Between { slur: None, hook: None, later: None, earlier: None };

struct Look<'a> {
    source: &'a LineSource<'a>,
    settings: &'a PlanSettings,
    window: &'a Range<usize>,
}

impl Look<'_> {
    fn stroke(&self, index: usize) -> (&Stroke, Extent) {
        (&self.source.line().strokes[index], self.source.extents()[index])
    }

    /// Before the first note of a printed stroke.
    fn between(&self, index: usize) -> Border {
        let ((before, left), (stroke, right)) = (self.stroke(index - 1), self.stroke(index));
        let event = right.first;
        if !self.may_go(index) {
            return FIXED;
        }
        let single = |extent: Extent| extent.end - extent.first == 1;
        let detached = |stroke: &Stroke| matches!(stroke.kind, StrokeKind::Single | StrokeKind::Short);
        let hook = (detached(before) && detached(stroke) && single(left) && single(right))
            .then_some(ChangeKind::Hook);
        let legato = |stroke: &Stroke| matches!(stroke.kind, StrokeKind::Single | StrokeKind::Slurred);
        // The slur of a grace note is no bow that could be joined: it only ties the ornament to its note.
        let ornamented = self.source.graces_between(event);
        if !legato(before) || !legato(stroke) || ornamented || self.source.repeats_pitch(event) {
            return Border::Between { slur: None, hook, later: None, earlier: None };
        }
        let slur = Some(match (single(left), single(right)) {
            (true, true) => ChangeKind::JoinNotes,
            (false, true) => ChangeKind::EndLater,
            (true, false) => ChangeKind::BeginEarlier,
            (false, false) => ChangeKind::JoinSlurs,
        });
        let slurs = !single(left) && !single(right);
        let later = (slurs && !self.source.is_tied(event + 1)).then_some(ChangeKind::HandOverLater);
        let earlier = (slurs && event - 1 > left.first && !self.source.is_tied(event - 1))
            .then_some(ChangeKind::HandOverEarlier);
        Border::Between { slur, hook, later, earlier }
    }

    /// Whether the beginning of a printed stroke may go: no rest, breath, joint of the phrase, printed
    /// mark that holds or anchor stands there.
    fn may_go(&self, index: usize) -> bool {
        let ((before, left), (stroke, right)) = (self.stroke(index - 1), self.stroke(index));
        let last = &self.source.events()[left.end - 1];
        let marked = stroke.printed.is_some() && self.settings.marks == MarkReading::Law;
        let anchored = self.settings.anchors.iter().any(|anchor| anchor.stroke == index);
        self.window.contains(&index)
            && index > self.window.start
            && self.source.is_continuous(right.first)
            && before.phrase.joint_after < CLEAR
            && last.fermata == Fermata::None
            && !last.articulations.breathes()
            && !marked
            && !anchored
    }

    /// Before a later note of a printed stroke.
    fn inside(&self, index: usize, event: usize) -> Border {
        let (stroke, extent) = self.stroke(index);
        let slurred =
            matches!(stroke.kind, StrokeKind::Slurred | StrokeKind::Pulsed | StrokeKind::HookedPair);
        if !slurred || !self.window.contains(&index) {
            return Border::Inside(None);
        }
        let tied = self.source.is_tied(event);
        Border::Inside(match self.source.going(event) {
            Going::Anew | Going::Alternating => None,
            Going::Slurred | Going::Tied if tied => Some(ChangeKind::SplitTie),
            Going::Tied => Some(ChangeKind::SplitTie),
            Going::Slurred if stroke.kind != StrokeKind::Slurred || extent.end - extent.first == 2 => {
                Some(ChangeKind::Split)
            }
            Going::Slurred if event + 1 == extent.end => Some(ChangeKind::EndEarlier),
            Going::Slurred if event == extent.first + 1 => Some(ChangeKind::BeginLater),
            Going::Slurred => Some(ChangeKind::Split),
        })
    }
}
