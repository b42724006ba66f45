//! A base-2 logarithm in whole thousandths of an octave.
//!
//! Costs and decibels need ratios of speeds. Floating logarithms differ between machines in the last
//! digit; this one is integer arithmetic, so that equal means equal everywhere.

/// `1000 · log2(value)`, rounded down to about a thousandth of an octave; 0 for a value of 0 or 1.
///
/// The fraction is found by repeated squaring of the mantissa, eleven bits deep (error below 0.001
/// octaves, 0.003 dB).
///
/// ```
/// use arcata_bow::logarithm::milli_octaves;
/// assert_eq!(milli_octaves(1024), 10_000);
/// assert!((milli_octaves(3) - 1585).abs() <= 1);
/// ```
#[must_use]
pub fn milli_octaves(value: u64) -> i32 {
    if value <= 1 {
        return 0;
    }
    let whole = value.ilog2();
    // Mantissa in [1, 2) as a 31-bit fixed-point number.
    let mut mantissa = if whole >= 31 { value >> (whole - 31) } else { value << (31 - whole) };
    let mut fraction: u32 = 0;
    for _ in 0..11 {
        mantissa = (mantissa * mantissa) >> 31;
        fraction <<= 1;
        if mantissa >= 1 << 32 {
            mantissa >>= 1;
            fraction |= 1;
        }
    }
    let thousandths = (fraction * 1000 + 1024) >> 11;
    i32::try_from(whole * 1000 + thousandths).unwrap_or(i32::MAX)
}

/// Level difference in hundredths of a decibel for a ratio of bow speeds at one contact point.
///
/// Bridge-force amplitude is proportional to speed (Cremer; Euphonics 9.4.2): 6.02 dB an octave.
#[must_use]
pub fn centibels(faster: u64, slower: u64) -> i32 {
    (milli_octaves(faster) - milli_octaves(slower)) * 602 / 1000
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn grows_with_its_argument_and_matches_known_values() {
        // Values from any table of logarithms: log2(10) = 3.3219, log2(1e6) = 19.9316.
        assert!((milli_octaves(10) - 3322).abs() <= 1);
        assert!((milli_octaves(1_000_000) - 19_932).abs() <= 1);
        let mut before = 0;
        for value in 1..5000 {
            assert!(milli_octaves(value) >= before);
            before = milli_octaves(value);
        }
        assert!(milli_octaves(u64::MAX) >= 63_990);
    }

    #[test]
    fn doubling_the_speed_is_six_decibels() {
        assert!((centibels(40, 20) - 602).abs() <= 1);
    }
}
