//! Exact score time: fractions of a whole note.

use std::fmt;
use std::iter::Sum;
use std::ops::{Add, AddAssign, Mul, Neg, Sub};

use num_rational::Ratio;

/// A span of score time in whole notes: a quarter note is 1/4, a triplet eighth 1/12.
///
/// Arithmetic saturates instead of overflowing: a hostile file may write any duration, and a
/// saturated length is reported as a contradiction of its bar, never a panic.
///
/// ```
/// use arcata_score::Length;
/// let triplet_eighth = Length::new(1, 12);
/// assert_eq!(triplet_eighth * 3, Length::new(1, 4));
/// ```
#[derive(Clone, Copy, PartialEq, Eq, Hash, Default)]
pub struct Length(Ratio<i64>);

/// A point of score time: the length from the beginning of the score, bars laid end to end as printed.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Moment(pub Length);

/// Denominators beyond this are not musical; results are rounded to it (saturation, see [`Length`]) (a limit).
const LARGEST_DENOMINATOR: i64 = 1 << 31;

impl Length {
    /// No time at all.
    pub const ZERO: Self = Self(Ratio::new_raw(0, 1));
    /// One whole note.
    pub const WHOLE: Self = Self(Ratio::new_raw(1, 1));
    /// One quarter note.
    pub const QUARTER: Self = Self(Ratio::new_raw(1, 4));

    /// `numerator / denominator` of a whole note, reduced. A denominator of zero gives zero.
    #[must_use]
    pub fn new(numerator: i64, denominator: i64) -> Self {
        if denominator == 0 {
            Self::ZERO
        } else {
            Self::tamed(i128::from(numerator), i128::from(denominator))
        }
    }

    /// Numerator of the reduced fraction of a whole note.
    #[must_use]
    pub fn numerator(self) -> i64 {
        *self.0.numer()
    }

    /// Denominator of the reduced fraction of a whole note; positive.
    #[must_use]
    pub fn denominator(self) -> i64 {
        *self.0.denom()
    }

    /// Whether this is no time at all.
    #[must_use]
    pub fn is_zero(self) -> bool {
        self.numerator() == 0
    }

    /// Whether this is more than no time.
    #[must_use]
    pub fn is_positive(self) -> bool {
        self.numerator() > 0
    }

    /// This length times `numerator / denominator`, exact.
    #[must_use]
    pub fn scaled(self, numerator: i64, denominator: i64) -> Self {
        if denominator == 0 {
            return Self::ZERO;
        }
        Self::tamed(
            i128::from(self.numerator()).saturating_mul(i128::from(numerator)),
            i128::from(self.denominator()).saturating_mul(i128::from(denominator)),
        )
    }

    /// This length as a ratio to another (for example beats in a bar); `None` when `unit` is zero.
    #[must_use]
    pub fn in_units_of(self, unit: Self) -> Option<Self> {
        (!unit.is_zero()).then(|| self.scaled(unit.denominator(), unit.numerator()))
    }

    /// The largest whole number not above this many whole notes.
    #[must_use]
    pub fn floor(self) -> i64 {
        self.0.floor().to_integer()
    }

    /// As a floating number of whole notes, for pictures and seconds only.
    #[must_use]
    #[expect(clippy::cast_precision_loss, reason = "for display and seconds; exact time stays rational")]
    pub fn to_f64(self) -> f64 {
        self.numerator() as f64 / self.denominator() as f64
    }

    fn tamed(numerator: i128, denominator: i128) -> Self {
        // Music fits into the machine's own integers, which divide several times faster.
        if let (Ok(small_numerator), Ok(small_denominator @ 1..=LARGEST_DENOMINATOR)) =
            (i64::try_from(numerator), i64::try_from(denominator))
            && small_numerator.unsigned_abs() <= i64::MAX as u64 / 4
        {
            let divisor = num_integer::gcd(small_numerator, small_denominator).max(1);
            return Self(Ratio::new_raw(small_numerator / divisor, small_denominator / divisor));
        }
        Self::tamed_slowly(numerator, denominator)
    }

    fn tamed_slowly(numerator: i128, denominator: i128) -> Self {
        let divisor = num_integer::gcd(numerator, denominator).max(1);
        let sign = if denominator < 0 { -1 } else { 1 };
        let (mut numerator, mut denominator) = (sign * numerator / divisor, sign * denominator / divisor);
        if denominator > i128::from(LARGEST_DENOMINATOR) {
            numerator = numerator * i128::from(LARGEST_DENOMINATOR) / denominator;
            denominator = i128::from(LARGEST_DENOMINATOR);
            let divisor = num_integer::gcd(numerator, denominator).max(1);
            (numerator, denominator) = (numerator / divisor, denominator / divisor);
        }
        let bound = i128::from(i64::MAX / 4);
        let numerator = i64::try_from(numerator.clamp(-bound, bound)).unwrap_or(0);
        Self(Ratio::new_raw(numerator, i64::try_from(denominator).unwrap_or(1).max(1)))
    }
}

impl Ord for Length {
    fn cmp(&self, other: &Self) -> std::cmp::Ordering {
        let (a, b) = (i128::from(self.numerator()), i128::from(self.denominator()));
        let (c, d) = (i128::from(other.numerator()), i128::from(other.denominator()));
        (a * d).cmp(&(c * b))
    }
}

impl PartialOrd for Length {
    fn partial_cmp(&self, other: &Self) -> Option<std::cmp::Ordering> {
        Some(self.cmp(other))
    }
}

impl Add for Length {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        let (a, b) = (i128::from(self.numerator()), i128::from(self.denominator()));
        let (c, d) = (i128::from(other.numerator()), i128::from(other.denominator()));
        if b == d { Self::tamed(a + c, b) } else { Self::tamed(a * d + c * b, b * d) }
    }
}

impl AddAssign for Length {
    fn add_assign(&mut self, other: Self) {
        *self = *self + other;
    }
}

impl Neg for Length {
    type Output = Self;
    fn neg(self) -> Self {
        Self(Ratio::new_raw(-self.numerator(), self.denominator()))
    }
}

impl Sub for Length {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        self + -other
    }
}

impl Mul<i64> for Length {
    type Output = Self;
    fn mul(self, times: i64) -> Self {
        self.scaled(times, 1)
    }
}

impl Sum for Length {
    fn sum<I: Iterator<Item = Self>>(items: I) -> Self {
        items.fold(Self::ZERO, Add::add)
    }
}

impl fmt::Display for Length {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.denominator() == 1 {
            write!(f, "{}", self.numerator())
        } else {
            write!(f, "{}/{}", self.numerator(), self.denominator())
        }
    }
}

impl fmt::Debug for Length {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self, f)
    }
}

impl Moment {
    /// The beginning of the score.
    pub const START: Self = Self(Length::ZERO);

    /// The length from the beginning of the score.
    #[must_use]
    pub fn since_start(self) -> Length {
        self.0
    }
}

impl Add<Length> for Moment {
    type Output = Self;
    fn add(self, length: Length) -> Self {
        Self(self.0 + length)
    }
}

impl Sub<Length> for Moment {
    type Output = Self;
    fn sub(self, length: Length) -> Self {
        Self(self.0 - length)
    }
}

impl Sub for Moment {
    type Output = Length;
    fn sub(self, other: Self) -> Length {
        self.0 - other.0
    }
}

impl fmt::Display for Moment {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(&self.0, f)
    }
}

impl fmt::Debug for Moment {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(&self.0, f)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lengths_stay_reduced_and_exact() {
        let seventh = Length::new(1, 28);
        assert_eq!((0..7).map(|_| seventh).sum::<Length>(), Length::QUARTER);
        assert_eq!(Length::new(6, -8), Length::new(-3, 4));
        assert_eq!(Length::new(3, 8).in_units_of(Length::new(1, 8)), Some(Length::new(3, 1)));
    }

    #[test]
    fn absurd_lengths_saturate_instead_of_panicking() {
        let huge = Length::new(i64::MAX, 1);
        assert!(huge + huge > Length::WHOLE);
        let fine = Length::new(1, i64::MAX);
        assert!(fine + fine + Length::new(1, 3) >= Length::new(1, 4));
    }

    #[test]
    fn the_quick_way_and_the_slow_way_agree() {
        let numbers = [-7_i64, -1, 0, 1, 2, 6, 35, 1 << 20, (1 << 31) - 1, 1 << 31];
        for numerator in numbers {
            for denominator in numbers.into_iter().filter(|number| *number > 0) {
                let (wide, wide_denominator) = (i128::from(numerator), i128::from(denominator));
                assert_eq!(
                    Length::new(numerator, denominator),
                    Length::tamed_slowly(wide, wide_denominator),
                    "{numerator}/{denominator}"
                );
            }
        }
    }

    #[test]
    fn lengths_are_ordered_as_fractions_are() {
        let ordered = [(-1, 2), (-1, 3), (0, 1), (1, 12), (1, 8), (1, 3), (3, 8), (1, 1), (i64::MAX / 4, 1)];
        let lengths = ordered.map(|(numerator, denominator)| Length::new(numerator, denominator));
        assert!(lengths.windows(2).all(|pair| pair[0] < pair[1]));
    }
}
