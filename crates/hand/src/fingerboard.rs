//! Strings, and where notes lie on them.

use arcata_bow::Profile;
use arcata_score::Instrument;

/// Which strings an instrument has where it is built in several ways.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Strings {
    /// The usual four.
    #[default]
    Four,
    /// A bass with a fifth string, B below the E string.
    Five,
    /// A bass whose E string goes down to C with an extension.
    Extension,
}

/// The strings of one instrument and what a hand reaches on them.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fingerboard {
    /// The open strings, cents above C-1 (MIDI note 60 = 6000), lowest first.
    pub open: Vec<i32>,
    /// From nut to bridge, micrometres.
    pub length: i64,
    /// First finger to fourth without stretching, micrometres.
    pub close: i64,
    /// First finger to fourth, stretched, micrometres.
    pub stretched: i64,
    /// Thumb on the string to the farthest finger, micrometres; 0 for no thumb.
    pub thumb: i64,
    /// The lowest place of the thumb, cents above the open string.
    pub thumb_from: i32,
    /// The highest note on a string, cents above the open string.
    pub top: i32,
}

/// A millionth part of the string that is left after so many semitones: 2^(-k/12), rounded.
const LEFT: [i64; 13] = [
    1_000_000, 943_874, 890_899, 840_896, 793_701, 749_154, 707_107, 667_420, 629_961, 594_604, 561_231,
    529_732, 500_000,
];

impl Fingerboard {
    /// The strings of an instrument; `None` for what is not one of the four.
    #[must_use]
    pub fn new(instrument: Instrument, strings: Strings, profile: &Profile) -> Option<Self> {
        // Tuning in fifths, the bass in fourths: common practice; the fifth string of basses is B or C, here B.
        let open: Vec<i32> = match (instrument, strings) {
            (Instrument::Violin, _) => vec![5500, 6200, 6900, 7600],
            (Instrument::Viola, _) => vec![4800, 5500, 6200, 6900],
            (Instrument::Cello, _) => vec![3600, 4300, 5000, 5700],
            (Instrument::Bass, Strings::Four) => vec![2800, 3300, 3800, 4300],
            (Instrument::Bass, Strings::Five) => vec![2300, 2800, 3300, 3800, 4300],
            // The extension is a longer string: below E its notes are closed by machines or the hand.
            (Instrument::Bass, Strings::Extension) => vec![2400, 3300, 3800, 4300],
            (Instrument::OtherBowed | Instrument::NotBowed, _) => return None,
        };
        let micrometres = |of: &arcata_bow::profile::ByInstrument| of.of(instrument).value * 1000;
        let cents = |of: &arcata_bow::profile::ByInstrument| {
            i32::try_from(of.of(instrument).value).unwrap_or(0).saturating_mul(100)
        };
        Some(Self {
            open,
            length: micrometres(&profile.strings),
            close: micrometres(&profile.hand_close),
            stretched: micrometres(&profile.hand_stretched),
            thumb: micrometres(&profile.hand_thumb),
            thumb_from: cents(&profile.thumb_from),
            top: cents(&profile.fingerboard),
        })
    }

    /// The lowest note, cents.
    #[must_use]
    pub fn lowest(&self) -> i32 {
        self.open.first().copied().unwrap_or(0)
    }

    /// The highest note, cents.
    #[must_use]
    pub fn highest(&self) -> i32 {
        self.open.last().map_or(0, |open| open + self.top)
    }

    /// How far from the nut a note lies, micrometres, `above` cents over the open string. Between semitones the
    /// way is divided evenly.
    ///
    /// ```
    /// use arcata_hand::{Fingerboard, Strings};
    /// use arcata_score::Instrument;
    /// let violin =
    ///     Fingerboard::new(Instrument::Violin, Strings::Four, &arcata_bow::Profile::default()).unwrap();
    /// assert_eq!(violin.place(1200), 164_000, "the octave is half of 328 mm");
    /// ```
    #[must_use]
    pub fn place(&self, above: i32) -> i64 {
        let above = above.max(0);
        let octaves = above / 1200;
        let (semitone, cents) = ((above % 1200) / 100, i64::from(above % 100));
        let left = |index: i32| LEFT[usize::try_from(index).unwrap_or(0).min(12)];
        let (here, next) = (left(semitone), left(semitone + 1));
        let left = (here * (100 - cents) + next * cents) / 100;
        self.length - ((self.length * left / 1_000_000) >> octaves.min(40))
    }

    /// The strings on which a note lies: index of the string, and cents above the open one.
    pub fn places(&self, pitch: i32) -> impl Iterator<Item = (usize, i32)> + '_ {
        let on = move |(string, open): (usize, &i32)| {
            let above = pitch - open;
            (0..=self.top).contains(&above).then_some((string, above))
        };
        self.open.iter().enumerate().filter_map(on)
    }
}
