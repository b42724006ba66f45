//! Costs: integers, in named terms, so that every sentence about a bowing has its reason.

use std::fmt;
use std::ops::{Add, AddAssign};

/// What a share of the cost is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u8)]
pub enum Term {
    /// A strong beat on an up-bow, or a weak one on a down-bow.
    Beat,
    /// The last stroke before a downbeat taken down.
    Upbeat,
    /// An entry on the bow that does not lead to the next downbeat.
    Entry,
    /// A swell against the bow.
    Swell,
    /// An accent or chord on the light side of the bow.
    Accent,
    /// A phrase's last note on an up-bow.
    Ending,
    /// Two strokes hooked in one direction.
    Hook,
    /// A lift and setting down in the same direction.
    Retake,
    /// A lift in a rest.
    Reset,
    /// A lift that has not the time it takes.
    RetakeTime,
    /// A speed other than the dynamic prefers.
    Speed,
    /// A speed outside what the dynamic allows.
    SpeedLimit,
    /// A place of the bow where this stroke does not live.
    Place,
    /// A printed mark or an anchor that is not kept (only where marks are advice, not law).
    Mark,
    /// The second pass of a repeat begins on the other bow.
    Repeat,
    /// Going against the players who bow the same rhythm.
    Unity,
    /// A figure bowed otherwise than where it stood elsewhere.
    Likeness,
    /// A change to what the composer wrote: a slur split, drawn or moved.
    Notation,
}

impl Term {
    /// All terms, in the order they are reported.
    pub const ALL: [Self; 18] = [
        Self::Beat,
        Self::Upbeat,
        Self::Entry,
        Self::Swell,
        Self::Accent,
        Self::Ending,
        Self::Hook,
        Self::Retake,
        Self::Reset,
        Self::RetakeTime,
        Self::Speed,
        Self::SpeedLimit,
        Self::Place,
        Self::Mark,
        Self::Repeat,
        Self::Unity,
        Self::Likeness,
        Self::Notation,
    ];

    /// The term's name in messages, JSON and the player profile.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Beat => "beat",
            Self::Upbeat => "upbeat",
            Self::Entry => "entry",
            Self::Swell => "swell",
            Self::Accent => "accent",
            Self::Ending => "ending",
            Self::Hook => "hook",
            Self::Retake => "retake",
            Self::Reset => "reset",
            Self::RetakeTime => "retake time",
            Self::Speed => "speed",
            Self::SpeedLimit => "speed limit",
            Self::Place => "place",
            Self::Mark => "mark",
            Self::Repeat => "repeat",
            Self::Unity => "unity",
            Self::Likeness => "likeness",
            Self::Notation => "notation",
        }
    }
}

/// A cost by terms, in thousandths of a point.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub struct Cost {
    terms: [i64; Term::ALL.len()],
}

impl Cost {
    /// A cost of one term.
    #[must_use]
    pub fn of(term: Term, thousandths: i64) -> Self {
        let mut cost = Self::default();
        cost.terms[term as usize] = thousandths;
        cost
    }

    /// The share of one term.
    #[must_use]
    pub fn term(&self, term: Term) -> i64 {
        self.terms[term as usize]
    }

    /// The whole.
    #[must_use]
    pub fn total(&self) -> i64 {
        self.terms.iter().sum()
    }

    /// The terms that are not nought, in the order of [`Term::ALL`].
    pub fn parts(&self) -> impl Iterator<Item = (Term, i64)> + '_ {
        Term::ALL.into_iter().map(|term| (term, self.term(term))).filter(|(_, share)| *share != 0)
    }

    /// Term by term, this less the other.
    #[must_use]
    pub fn less(&self, other: &Self) -> Self {
        let mut terms = self.terms;
        for (share, taken) in terms.iter_mut().zip(other.terms) {
            *share -= taken;
        }
        Self { terms }
    }
}

impl Add for Cost {
    type Output = Self;
    fn add(mut self, other: Self) -> Self {
        self += other;
        self
    }
}

impl AddAssign for Cost {
    fn add_assign(&mut self, other: Self) {
        for (share, more) in self.terms.iter_mut().zip(other.terms) {
            *share += more;
        }
    }
}

impl fmt::Display for Cost {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut first = true;
        for (term, share) in self.parts() {
            let sign = if share < 0 { "−" } else { "" };
            let gap = if first { "" } else { ", " };
            let (points, rest) = (share.abs() / 1000, share.abs() % 1000 / 10);
            write!(f, "{gap}{} {sign}{points}.{rest:02}", term.name())?;
            first = false;
        }
        if first { write!(f, "nothing") } else { Ok(()) }
    }
}
