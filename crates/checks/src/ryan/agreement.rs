//! How many marks a bowing agrees with.

use std::fmt;

use arcata_score::BowDirection;

use super::tunes::{Tune, TuneMarkPlace};

/// Marks agreed with, of how many.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Share {
    pub(super) agreed: u32,
    pub(super) of: u32,
}

impl Share {
    pub(super) fn count(&mut self, agrees: bool) {
        self.agreed += u32::from(agrees);
        self.of += 1;
    }

    pub(super) fn plus(self, other: Self) -> Self {
        Self { agreed: self.agreed + other.agreed, of: self.of + other.of }
    }

    /// Hundredths of a percent, rounded down.
    pub(super) fn basis_points(self) -> u32 {
        (u64::from(self.agreed) * 10_000 / u64::from(self.of.max(1))) as u32
    }
}

impl fmt::Display for Share {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let points = self.basis_points();
        let shown = format!("{}.{:02} ({}/{})", points / 100, points % 100, self.agreed, self.of);
        out.pad(&shown)
    }
}

/// Agreement on all marks and by place.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct TuneAgreement {
    pub(super) all: Share,
    pub(super) downbeats: Share,
    pub(super) before: Share,
    pub(super) elsewhere: Share,
}

impl TuneAgreement {
    /// Of one tune, given a direction for each of its marks.
    pub(super) fn of(tune: &Tune, directions: &[BowDirection]) -> Self {
        let mut agreement = Self::default();
        for (mark, direction) in tune.marks.iter().zip(directions) {
            let agrees = mark.direction == *direction;
            agreement.all.count(agrees);
            match mark.place {
                TuneMarkPlace::Downbeat => agreement.downbeats.count(agrees),
                TuneMarkPlace::BeforeDownbeat => agreement.before.count(agrees),
                TuneMarkPlace::Elsewhere => agreement.elsewhere.count(agrees),
            }
        }
        agreement
    }

    pub(super) fn plus(self, other: Self) -> Self {
        Self {
            all: self.all.plus(other.all),
            downbeats: self.downbeats.plus(other.downbeats),
            before: self.before.plus(other.before),
            elsewhere: self.elsewhere.plus(other.elsewhere),
        }
    }
}

impl fmt::Display for TuneAgreement {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{:>20} {:>20} {:>20} {:>20}", self.all, self.downbeats, self.before, self.elsewhere)
    }
}
