//! Whether one hand can stop several notes at once, and how.

use crate::Fingerboard;

/// How hard a stop is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Ease {
    /// Within the hand, or with open strings only.
    Close,
    /// With the hand stretched.
    Stretched,
    /// With the thumb set on the string.
    Thumb,
}

/// What holds a string down.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Finger {
    /// Nothing: the string is open.
    Open,
    /// The thumb, set on the string.
    Thumb,
    /// Fingers 1 to 4.
    Finger(u8),
}

/// One note of a stop.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stop {
    /// The string, 0 the lowest.
    pub string: usize,
    /// Cents above the open string.
    pub above: i32,
    /// What holds it.
    pub finger: Finger,
}

/// A way to stop notes, in the order in which they were given.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stopping {
    /// One entry a note.
    pub stops: Vec<Stop>,
    /// How hard it is.
    pub ease: Ease,
}

impl Stopping {
    /// The lowest and the highest string it takes.
    #[must_use]
    pub fn strings(&self) -> (usize, usize) {
        let strings = || self.stops.iter().map(|stop| stop.string);
        (strings().min().unwrap_or(0), strings().max().unwrap_or(0))
    }

    /// How far from the nut the hand stands: cents above the open string of its lowest stopped note, 0 with open
    /// strings only.
    #[must_use]
    pub fn position(&self) -> i32 {
        self.stops.iter().map(|stop| stop.above).filter(|above| *above > 0).min().unwrap_or(0)
    }
}

impl Fingerboard {
    /// All ways to sound notes (cents) together on neighbouring strings with one hand, the easiest first: by
    /// ease, then by position, then by string. Empty where there is none.
    ///
    /// ```
    /// use arcata_hand::{Ease, Fingerboard, Strings};
    /// use arcata_score::Instrument;
    /// let violin =
    ///     Fingerboard::new(Instrument::Violin, Strings::Four, &arcata_bow::Profile::default()).unwrap();
    /// let third = violin.stoppings(&[6400, 6800]);
    /// assert_eq!(third[0].ease, Ease::Close);
    /// assert!(violin.stoppings(&[5500, 5600]).is_empty(), "both lie on the lowest string alone");
    /// ```
    #[must_use]
    pub fn stoppings(&self, notes: &[i32]) -> Vec<Stopping> {
        let mut found = Vec::new();
        if notes.is_empty() || notes.len() > self.open.len() {
            return found;
        }
        for lowest in 0..=self.open.len() - notes.len() {
            self.assign(notes, lowest, &mut Vec::new(), &mut found);
        }
        found.sort_by_key(|stopping| (stopping.ease, stopping.position(), stopping.strings()));
        found
    }

    /// Gives the next note every string that is still free among the neighbouring ones.
    fn assign(&self, notes: &[i32], lowest: usize, taken: &mut Vec<(usize, i32)>, found: &mut Vec<Stopping>) {
        let Some(note) = notes.get(taken.len()) else {
            found.extend(self.held(taken));
            return;
        };
        for string in lowest..lowest + notes.len() {
            let above = note - self.open[string];
            let free = taken.iter().all(|(other, _)| *other != string);
            if free && (0..=self.top).contains(&above) {
                taken.push((string, above));
                self.assign(notes, lowest, taken, found);
                taken.pop();
            }
        }
    }

    /// Fingers for notes on strings, where a hand reaches them. Notes at one place on neighbouring strings
    /// take one finger; every further place along the string takes the next.
    fn held(&self, placed: &[(usize, i32)]) -> Option<Stopping> {
        let mut places: Vec<i32> =
            placed.iter().map(|(_, above)| *above).filter(|above| *above > 0).collect();
        places.sort_unstable();
        places.dedup();
        let ease = self.ease(&places)?;
        let fingers = self.fingers(&places, ease);
        let finger = |above: i32| {
            let place = places.iter().position(|place| *place == above);
            place.map_or(Finger::Open, |place| fingers[place])
        };
        let stops = placed
            .iter()
            .map(|(string, above)| Stop { string: *string, above: *above, finger: finger(*above) })
            .collect();
        Some(Stopping { stops, ease })
    }

    fn ease(&self, places: &[i32]) -> Option<Ease> {
        let (Some(first), Some(last)) = (places.first(), places.last()) else { return Some(Ease::Close) };
        let span = self.place(*last) - self.place(*first);
        if span <= self.close {
            Some(Ease::Close)
        } else if span <= self.stretched {
            Some(Ease::Stretched)
        } else if span <= self.thumb && *first >= self.thumb_from {
            Some(Ease::Thumb)
        } else {
            None
        }
    }

    /// A finger for each place along the string: the one that lies there when the hand is closed, no finger
    /// twice.
    fn fingers(&self, places: &[i32], ease: Ease) -> Vec<Finger> {
        let number = |count: usize| u8::try_from(count).unwrap_or(4);
        if ease == Ease::Thumb {
            let rest = (1..places.len()).map(|place| Finger::Finger(number(place)));
            return std::iter::once(Finger::Thumb).chain(rest).collect();
        }
        let third = (self.close / 3).max(1);
        let mut last = 0;
        let mut fingers = Vec::new();
        for (index, place) in places.iter().enumerate() {
            let way = self.place(*place) - self.place(places[0]);
            let by_way = 1 + u8::try_from((way + third / 2) / third).unwrap_or(3);
            let most = 4_u8.saturating_sub(number(places.len() - 1 - index));
            last = by_way.min(most).max(last + 1);
            fingers.push(Finger::Finger(last));
        }
        fingers
    }
}

#[cfg(test)]
mod tests {
    use arcata_bow::Profile;
    use arcata_score::Instrument;
    use proptest::prelude::*;

    use super::*;
    use crate::Strings;

    fn board(instrument: Instrument) -> Fingerboard {
        Fingerboard::new(instrument, Strings::Four, &Profile::default()).unwrap()
    }

    /// The easiest way to sound two notes, lower one first.
    fn easiest(board: &Fingerboard, low: i32, interval: i32) -> Option<Ease> {
        board.stoppings(&[low, low + interval * 100]).first().map(|stopping| stopping.ease)
    }

    /// C. Forsyth, Orchestration, pp. 316-317: any pair of neighbouring open strings is easy.
    #[test]
    fn pairs_of_open_strings_are_easy() {
        for instrument in [Instrument::Violin, Instrument::Viola, Instrument::Cello, Instrument::Bass] {
            let board = board(instrument);
            for pair in board.open.windows(2) {
                let best = &board.stoppings(pair)[0];
                assert_eq!(best.ease, Ease::Close);
                assert!(best.stops.iter().all(|stop| stop.finger == Finger::Open));
            }
        }
    }

    /// C. Forsyth, the same pages: thirds and sixths are easy on the violin, fourths playable.
    #[test]
    fn thirds_and_sixths_are_easy_on_the_violin_and_fourths_playable() {
        let violin = board(Instrument::Violin);
        // As soon as the upper note leaves the lowest string, up to fifth position.
        for low in (5700..=7800).step_by(100) {
            for interval in [3, 4, 8, 9, 5, 6].into_iter().filter(|interval| low + interval * 100 >= 6200) {
                let ease = easiest(&violin, low, interval);
                let wanted =
                    if interval == 5 || interval == 6 { ease.is_some() } else { ease == Some(Ease::Close) };
                assert!(wanted, "{low} + {interval}: {ease:?}");
            }
        }
    }

    /// Limits of two stopped notes, from memory: violin a tenth, viola an octave, cello a sixth without thumb and an
    /// octave with it, bass only with an open string (or the thumb).
    #[test]
    fn limits_of_two_stopped_notes() {
        let violin = board(Instrument::Violin);
        assert_eq!(easiest(&violin, 5700, 12), Some(Ease::Close));
        assert_eq!(easiest(&violin, 5600, 16), Some(Ease::Stretched));
        assert_eq!(easiest(&violin, 5600, 19), None);
        let viola = board(Instrument::Viola);
        assert_eq!(easiest(&viola, 4900, 12), Some(Ease::Stretched));
        assert_eq!(easiest(&viola, 4900, 16), None);
        let cello = board(Instrument::Cello);
        assert_eq!(easiest(&cello, 3700, 9), Some(Ease::Close));
        assert_eq!(easiest(&cello, 3900, 12), Some(Ease::Thumb));
        assert_eq!(easiest(&cello, 3900, 16), None);
        let bass = board(Instrument::Bass);
        assert_eq!(easiest(&bass, 3000, 9), None);
        assert_eq!(easiest(&bass, 2800, 9), Some(Ease::Close), "with the open E");
    }

    #[test]
    fn four_notes_take_four_strings() {
        // G minor over all four strings of the violin, the opening of countless chords: common practice.
        let violin = board(Instrument::Violin);
        let best = &violin.stoppings(&[5500, 6200, 7000, 7900])[0];
        assert_eq!(best.ease, Ease::Close);
        let strings: Vec<usize> = best.stops.iter().map(|stop| stop.string).collect();
        assert_eq!(strings, [0, 1, 2, 3]);
        assert!(violin.stoppings(&[5500, 6200, 6900, 7600, 8000]).is_empty(), "five notes on four strings");
    }

    proptest! {
        /// Whatever the search hands out can be checked by looking: pitches, strings, reach.
        #[test]
        fn every_way_sounds_the_notes_within_the_hand(
            notes in proptest::collection::vec(48_i32..96, 1..=4),
        ) {
            let violin = board(Instrument::Violin);
            let cents: Vec<i32> = notes.iter().map(|note| note * 100).collect();
            for way in violin.stoppings(&cents) {
                for (stop, pitch) in way.stops.iter().zip(&cents) {
                    prop_assert_eq!(violin.open[stop.string] + stop.above, *pitch);
                    prop_assert_eq!(stop.above == 0, stop.finger == Finger::Open);
                }
                let (low, high) = way.strings();
                prop_assert_eq!(high - low + 1, cents.len(), "neighbouring strings, one each");
                let stopped = || way.stops.iter().filter(|stop| stop.above > 0);
                let places: Vec<i64> = stopped().map(|stop| violin.place(stop.above)).collect();
                let span = places.iter().max().unwrap_or(&0) - places.iter().min().unwrap_or(&0);
                prop_assert!(span <= violin.stretched);
                // Farther along the string is a higher finger, never the same or a lower one.
                for one in stopped() {
                    for other in stopped().filter(|other| other.above > one.above) {
                        prop_assert!(other.finger > one.finger, "{:?}", way);
                    }
                }
            }
        }

        /// Brute force over two notes: some pair of neighbouring strings holds both within the stretched hand.
        #[test]
        fn two_notes_can_be_stopped_where_a_look_at_all_strings_says_so(low in 55_i32..80, high in 55_i32..96) {
            let violin = board(Instrument::Violin);
            let (low, high) = (low * 100, high * 100);
            let mut possible = false;
            for (string, above) in violin.places(low) {
                for (other, over) in violin.places(high) {
                    let span = (violin.place(above) - violin.place(over)).abs();
                    let fits = above == 0 || over == 0 || span <= violin.stretched;
                    possible |= string.abs_diff(other) == 1 && fits;
                }
            }
            prop_assert_eq!(!violin.stoppings(&[low, high]).is_empty(), possible);
        }
    }
}
