//! Beats as they are counted.

use crate::{Length, Meter, MeterSymbol};

/// How long one counted beat is: the dotted value in compound metres, half notes in cut time, the
/// signature's own unit otherwise.
#[must_use]
pub fn beat_length(meter: &Meter) -> Length {
    if meter.symbol == MeterSymbol::Cut {
        return Length::new(1, 2);
    }
    let [group] = meter.groups.as_slice() else {
        return meter.groups.iter().map(|group| unit(group.unit)).min().unwrap_or(Length::QUARTER);
    };
    let compound = group.unit >= 8 && group.count > 3 && group.count % 3 == 0;
    if compound { unit(group.unit) * 3 } else { unit(group.unit) }
}

fn unit(denominator: u16) -> Length {
    Length::new(1, i64::from(denominator.max(1)))
}

/// The beat at an offset in a bar, counted from 1, exact.
#[must_use]
pub fn beat_in_bar(meter: &Meter, offset: Length) -> Length {
    let one = Length::new(1, 1);
    offset.in_units_of(beat_length(meter)).map_or(one, |beats| beats + one)
}

/// How far into its bar a beat lies, counted from 1: [`beat_in_bar`] turned round.
///
/// ```
/// use arcata_score::beats::{beat_in_bar, offset_of_beat};
/// use arcata_score::{Length, Meter};
/// let offset = offset_of_beat(&Meter::simple(6, 8), Length::new(5, 2));
/// assert_eq!(offset, Length::new(9, 16));
/// assert_eq!(beat_in_bar(&Meter::simple(6, 8), offset), Length::new(5, 2));
/// ```
#[must_use]
pub fn offset_of_beat(meter: &Meter, beat: Length) -> Length {
    let beats = beat - Length::new(1, 1);
    beat_length(meter).scaled(beats.numerator(), beats.denominator())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn beats_are_counted_as_players_count_them() {
        // Second half of the bar: beat 3 of 4/4, beat 2 of cut time and of 6/8.
        assert_eq!(beat_in_bar(&Meter::common(), Length::new(1, 2)), Length::new(3, 1));
        let cut = Meter { symbol: MeterSymbol::Cut, ..Meter::simple(2, 2) };
        assert_eq!(beat_in_bar(&cut, Length::new(1, 2)), Length::new(2, 1));
        assert_eq!(beat_in_bar(&Meter::simple(6, 8), Length::new(3, 8)), Length::new(2, 1));
        assert_eq!(beat_in_bar(&Meter::simple(3, 8), Length::new(1, 8)), Length::new(2, 1));
    }
}
