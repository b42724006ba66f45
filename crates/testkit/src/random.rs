//! Numbers that look random and are the same on every machine.

/// A generator of 64-bit numbers: `splitmix64` (Steele, Lea and Flood, "Fast splittable pseudorandom number
/// generators", 2014; constants from memory).
///
/// # Examples
/// ```
/// let mut one = arcata_testkit::Random::new(7);
/// let mut other = arcata_testkit::Random::new(7);
/// assert_eq!(one.below(1000), other.below(1000));
/// ```
#[derive(Debug, Clone)]
pub struct Random {
    state: u64,
}

impl Random {
    /// A generator that always gives the same numbers for the same seed.
    #[must_use]
    pub fn new(seed: u64) -> Self {
        Self { state: seed }
    }

    /// The next number.
    pub fn number(&mut self) -> u64 {
        self.state = self.state.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut mixed = self.state;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        mixed ^ (mixed >> 31)
    }

    /// A number from 0 up to, and without, `end`; 0 where `end` is 0.
    pub fn below(&mut self, end: usize) -> usize {
        let end = u64::try_from(end).unwrap_or(u64::MAX).max(1);
        // The remainder favours small numbers by less than one in 2^40 for the sizes used here.
        usize::try_from(self.number() % end).unwrap_or_default()
    }

    /// True in so many cases of a hundred.
    pub fn chance(&mut self, percent: usize) -> bool {
        self.below(100) < percent
    }

    /// One of the choices.
    ///
    /// # Panics
    /// If there is none.
    pub fn pick<'a, T>(&mut self, choices: &'a [T]) -> &'a T {
        &choices[self.below(choices.len())]
    }
}

#[cfg(test)]
mod tests {
    use super::Random;

    #[test]
    fn the_numbers_are_those_of_splitmix64() {
        // First outputs for the seed 1234567, as printed with the reference code at
        // https://rosettacode.org/wiki/Pseudo-random_numbers/Splitmix64 (from memory).
        let mut random = Random::new(1_234_567);
        assert_eq!(random.number(), 6_457_827_717_110_365_317);
        assert_eq!(random.number(), 3_203_168_211_198_807_973);
    }
}
