//! Lines that go together: sections that play one rhythm, figures that come back, entries that imitate.
//!
//! What belongs together is a list of [`Agreement`]s: strokes that had better go the same way, each with
//! the price of not doing so. [`plan_together`] looks for the bowing of all lines at once that costs
//! least with these prices counted. A stroke goes its own way where that saves more than its price: this
//! is the stated bound on what agreeing may cost.

mod blocks;
mod differences;
mod downbeats;
mod figures;
mod groups;
mod movements;
mod solve;

pub use differences::{Departure, DepartureReason, departures};
pub use downbeats::{Downbeat, Speaking, downbeats};
pub use groups::{Group, Relation, groups};
pub use movements::{PlannedBefore, plan_together, plan_together_after};
pub use solve::Together;

use arcata_score::{BowDirection, Score};

use crate::plan::{BowAndLink, Wished};
use crate::{Line, Link, PlannedStroke, Term, Weights};

/// A stroke of a line.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Member {
    /// Index of the line.
    pub line: usize,
    /// Index of its stroke.
    pub stroke: usize,
    /// What doing otherwise than the rest costs it, thousandths of a point.
    pub thousandths: i64,
}

/// Strokes that had better do the same.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Agreement {
    /// The strokes, at least two, by line and stroke.
    pub members: Vec<Member>,
    /// [`Term::Unity`] for strokes at one moment, [`Term::Likeness`] for a figure's strokes.
    pub term: Term,
    /// What they agree on.
    pub about: About,
}

/// What strokes agree on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum About {
    /// The way they go.
    Direction,
    /// Whether each changes from the stroke before it.
    Change,
}

impl About {
    /// What a planned stroke does in this respect.
    #[must_use]
    pub fn done(self, planned: &PlannedStroke) -> Wished {
        self.done_by(planned.into())
    }

    fn done_by(self, done: BowAndLink) -> Wished {
        match self {
            Self::Direction => Wished::Goes(done.direction),
            Self::Change => Wished::Changes(done.link == Link::Change),
        }
    }

    /// The side that is taken where nothing speaks for either.
    const fn plain(self) -> Wished {
        match self {
            Self::Direction => Wished::Goes(BowDirection::Down),
            Self::Change => Wished::Changes(true),
        }
    }
}

/// All agreements of a score's lines: unity within each group, likeness of figures within lines and
/// between them, and of neighbouring bars.
///
/// # Examples
///
/// ```
/// use arcata_bow::{LineOptions, Profile, all_lines, together};
///
/// let xml = arcata_testkit::musicxml("violin: 1/4 C5 D5 E5 F5\nviola: 1/4 C4 D4 E4 F4");
/// let document = arcata_xml::Document::parse(xml.into_bytes(), &arcata_xml::Limits::default()).unwrap();
/// let score = arcata_score::read(&document);
/// let profile = Profile::default();
/// let lines = all_lines(&score, &profile, &LineOptions::default());
/// let weights = profile.plan_settings(lines[0].instrument).weights;
/// // Four moments, and the figure that both play: forwards from its first stroke, back from the others.
/// let found = together::agreements(&score, &lines, &weights);
/// assert_eq!(found.iter().filter(|found| found.term == arcata_bow::Term::Unity).count(), 4);
/// ```
#[must_use]
pub fn agreements(score: &Score, lines: &[Line], weights: &Weights) -> Vec<Agreement> {
    let mut found = groups::agreements(lines, weights);
    found.extend(figures::agreements(score, lines, weights));
    found.extend(figures::bars(lines, weights));
    found
}

#[cfg(test)]
mod tests;
