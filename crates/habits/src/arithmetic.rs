//! Exponential and logarithm by sums and products alone: the library's may differ in the last digit from machine to machine,
//! and a file of habits must not (invariant 6).

use std::f64::consts::LN_2;

/// e to the power of a number, as far as a float goes; about fifteen digits.
///
/// Halvings are taken out, so that the series runs over at most 0.35.
pub(crate) fn exponential(power: f64) -> f64 {
    let power = power.clamp(-600.0, 600.0);
    let doublings = (power / LN_2).round();
    let left = power - doublings * LN_2;
    let series = (1..=14).rev().fold(1.0, |sum, term| 1.0 + sum * left / f64::from(term));
    #[expect(clippy::cast_possible_truncation, reason = "less than 900")]
    let doublings = doublings as i64;
    series * f64::from_bits(((doublings + 1023) as u64) << 52)
}

/// The natural logarithm of a positive normal number; about fifteen digits.
///
/// The number is brought near one by doublings; then twice the series of the inverse hyperbolic tangent.
pub(crate) fn logarithm(number: f64) -> f64 {
    let bits = number.to_bits();
    let mut doublings = (bits >> 52 & 0x7ff) as i64 - 1023;
    let mut near = f64::from_bits(bits & !(0x7ff << 52) | 1023 << 52);
    if near > std::f64::consts::SQRT_2 {
        near /= 2.0;
        doublings += 1;
    }
    let ratio = (near - 1.0) / (near + 1.0);
    // |ratio| < 0.172: eleven terms are more than a float holds.
    let series = (0..11).rev().fold(0.0, |sum, term| sum * ratio * ratio + 1.0 / f64::from(2 * term + 1));
    2.0 * ratio * series + doublings as f64 * LN_2
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::{exponential, logarithm};

    proptest! {
        #[test]
        #[expect(clippy::disallowed_methods, reason = "the twin")]
        fn they_are_what_the_library_says(power in -500.0_f64..500.0, number in 1e-300_f64..1e300) {
            prop_assert!((exponential(power) / power.exp() - 1.0).abs() < 1e-12);
            prop_assert!((logarithm(number) - number.ln()).abs() < 1e-12 * number.ln().abs().max(1.0));
            prop_assert!((logarithm(exponential(power)) - power).abs() < 1e-9);
        }
    }
}
