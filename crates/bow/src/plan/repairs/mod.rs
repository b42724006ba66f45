//! Repairs: what a writer could change in the slurs, and how much each change buys.
//!
//! The search of [`plan`](super::plan) over a lattice: every run of notes that a few changes could put on
//! one bow is a stroke that may be taken, made by the code that makes the printed strokes. A slur may be
//! split between any two of its notes (inside a tie only by the change that says so), two neighbouring
//! strokes joined under one slur, two notes hooked and written so, or a slur's beginning or end moved by
//! one note. Each costs what the player profile says. Nothing crosses a rest, a breath, a clear joint of
//! the phrase, pizzicato or a tremolo, and nothing takes away a printed mark that holds, or an anchor.
//!
//! Exact on the planner's grid for every number of changes: dynamic programming over (where a stroke
//! ends, direction, cell, changes made); a brute-force twin in the tests finds nothing cheaper. Where
//! phrases begin is taken from the printed page: a slur drawn otherwise does not make another phrase.
//! Repeated stretches are weighed as if played once (see [`Passes`]).

mod forward;
mod lattice;
mod moves;
mod notation;
mod search;
mod singly;
#[cfg(test)]
mod tests;

use std::ops::Range;

use arcata_score::{BowDirection, Length, Moment, NoteId};

pub(crate) use forward::passages;
pub use moves::same_bows;
pub use singly::singly;

use super::{Plan, PlanSettings};
use crate::{Cost, Line, LineSource};

/// What is asked of the search for repairs.
#[derive(Clone, Debug)]
pub struct RepairRequest<'a> {
    /// Weights, marks, anchors (by printed stroke).
    pub settings: &'a PlanSettings,
    /// The printed strokes between which changes may be made.
    pub window: Range<usize>,
    /// The most changes.
    pub most: usize,
    /// The bow on which a note must sound, whatever is changed.
    pub ending: Option<WishedEnding>,
}

/// That a note sounds on a certain bow: the last note of a printed stroke that begins before a moment,
/// such as the end of a bar.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct WishedEnding {
    /// Index of the printed stroke.
    pub stroke: usize,
    /// The moment.
    pub until: Moment,
    /// The bow.
    pub direction: BowDirection,
}

/// Whether repeated stretches were weighed in every pass or as played once.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Passes {
    /// The line has no repeats.
    NoRepeats,
    /// As if every stretch were played once.
    PlayedOnce,
}

/// How much each further change buys.
#[derive(Clone, Debug)]
pub struct Frontier {
    /// The printed notation first, then the best plan for each number of changes that is cheaper than
    /// all with fewer.
    pub steps: Vec<Repaired>,
    /// How repeats were weighed.
    pub passes: Passes,
}

/// A plan with some changes to the notation.
#[derive(Clone, Debug)]
pub struct Repaired {
    /// The changes, in order.
    pub changes: Vec<NotationChange>,
    /// The line as it would be (without its repeats), from stroke `first` of the printed line on.
    pub line: Line,
    /// Its best plan.
    pub plan: Plan,
    /// What the plan and the changes cost.
    pub cost: Cost,
    /// Less what the printed notation costs, term by term: what is gained is negative.
    pub change: Cost,
}

/// One change of the notation.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NotationChange {
    /// What.
    pub kind: ChangeKind,
    /// The first note of the place: see [`ChangeKind`].
    pub note: NoteId,
    /// Its bar, an index.
    pub bar: u32,
    /// Where it stands in its bar.
    pub offset: Length,
    /// The printed strokes that it touches.
    pub before: Range<usize>,
    /// The strokes that come of them.
    pub after: Range<usize>,
}

/// What is changed in the notation, and which note its place is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ChangeKind {
    /// A slur is split before this note.
    Split,
    /// A tied note is split here: the bow changes on the held note.
    SplitTie,
    /// A slur leaves out its last note, this one.
    EndEarlier,
    /// A slur leaves out its first note and begins with this one.
    BeginLater,
    /// Two notes, this one and the one before it, get a slur.
    JoinNotes,
    /// Two slurs become one; this is the first note of the second.
    JoinSlurs,
    /// The slur before this note takes it in.
    EndLater,
    /// The slur that begins with this note takes in the one before it.
    BeginEarlier,
    /// Of two neighbouring slurs the second gives its first note to the first and begins with this one.
    HandOverLater,
    /// Of two neighbouring slurs the first gives its last note, this one, to the second.
    HandOverEarlier,
    /// This note is taken on the bow of the note before it, stopped, and written so.
    Hook,
}

/// The frontier of a line: its best plan with no change, one change, two …, as long as it pays, up to
/// the most asked for.
///
/// The line is looked at alone: leanings towards other lines belong to the strokes as printed and do not
/// count.
///
/// Time grows with the strokes that the window can make (for slurs with the square of their notes), the
/// cells and the changes; memory with strokes that can be made × changes × 392 bytes at 48 cells, for
/// one passage (from a free joint to a free joint) at a time.
///
/// ```
/// # use arcata_testkit::musicxml;
/// # use arcata_xml::{Document, Limits};
/// use arcata_bow::plan::{RepairRequest, repairs};
/// use arcata_bow::{LineOptions, Profile, Reading};
///
/// # let xml = musicxml("violin: f (1/8 C5 D5 E5 F5) 1/4 G5 A5 | (1/8 C5 D5 E5 F5) 1/4 G5 A5 | 1/1 C5 |||");
/// # let score = arcata_score::read(&Document::parse(xml.into_bytes(), &Limits::default()).unwrap());
/// let (profile, options) = (Profile::default(), LineOptions::default());
/// let reading = Reading::new(&score, &profile, &options);
/// let source = &reading.sources(0)[0];
/// let settings = profile.plan_settings(source.line().instrument);
/// let window = 0..source.line().strokes.len();
/// let request = RepairRequest { settings: &settings, window, most: 2, ending: None };
/// let frontier = repairs(source, &request);
/// assert!(frontier.steps[0].changes.is_empty());
/// assert!(frontier.steps.is_sorted_by(|one, next| one.cost.total() > next.cost.total()));
/// ```
#[must_use]
pub fn repairs(source: &LineSource<'_>, request: &RepairRequest<'_>) -> Frontier {
    let settings = request.settings.alone();
    let request = &RepairRequest { settings: &settings, ..request.clone() };
    let passes = if source.line().repeats.is_empty() { Passes::NoRepeats } else { Passes::PlayedOnce };
    Frontier { steps: forward::steps(source, request), passes }
}
