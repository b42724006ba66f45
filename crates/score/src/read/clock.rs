//! `<divisions>`: from the file's ticks to exact lengths.

use crate::Length;

/// Ticks up to this many are looked up instead of computed again: nearly all notes of a score have one of
/// a handful of durations (a limit).
const REMEMBERED: usize = 64;

/// The file's unit of time in one part.
#[derive(Debug)]
pub(super) struct Clock {
    /// Ticks in a quarter note.
    divisions: Length,
    /// Whether the file has given any.
    given: DivisionsGiven,
    known: [(i64, Length); REMEMBERED],
}

/// Whether `<divisions>` was seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum DivisionsGiven {
    /// Not yet: one tick is taken as a quarter note.
    No,
    /// Not yet, and that has been said.
    Reported,
    /// Yes.
    Yes,
}

impl Clock {
    pub(super) fn new() -> Self {
        Self { divisions: Length::WHOLE, given: DivisionsGiven::No, known: [(0, Length::ZERO); REMEMBERED] }
    }

    /// Takes up a new unit; must be positive.
    pub(super) fn set(&mut self, divisions: Length) {
        if divisions != self.divisions {
            self.known = [(0, Length::ZERO); REMEMBERED];
        }
        self.divisions = divisions;
        self.given = DivisionsGiven::Yes;
    }

    pub(super) fn given(&mut self) -> &mut DivisionsGiven {
        &mut self.given
    }

    /// One tick.
    pub(super) fn tick(&self) -> Length {
        self.span(Length::WHOLE)
    }

    /// A number of ticks as a length.
    pub(super) fn span(&self, ticks: Length) -> Length {
        let per_whole = self.divisions.numerator().saturating_mul(4);
        ticks.scaled(self.divisions.denominator(), per_whole)
    }

    /// A whole number of ticks as a length.
    #[inline]
    pub(super) fn whole_span(&mut self, ticks: i64) -> Length {
        let slot = (ticks as usize) % REMEMBERED;
        let (known, length) = self.known[slot];
        if known == ticks {
            return length;
        }
        let length = self.span(Length::new(ticks, 1));
        self.known[slot] = (ticks, length);
        length
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ticks_become_exact_lengths() {
        let mut clock = Clock::new();
        assert_eq!(clock.whole_span(3), Length::new(3, 4));
        clock.set(Length::new(12, 1));
        assert_eq!(clock.whole_span(3), Length::new(1, 16));
        assert_eq!(clock.whole_span(3 + REMEMBERED as i64), Length::new(67, 48));
        assert_eq!(clock.whole_span(0), Length::ZERO);
        clock.set(Length::new(5, 2));
        assert_eq!(clock.whole_span(3), Length::new(3, 10));
        assert_eq!(clock.whole_span(-3), Length::new(-3, 10));
    }
}
