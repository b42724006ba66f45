//! How a hand goes through the notes of a slur: which string each takes, where strings are skipped.
//!
//! The search weighs what a player weighs, one thing far above the next: no shift that there is no time for,
//! no string skipped, few shifts, few crossings, low positions. It is exact for these weights (a chain of
//! choices, each step between two notes).

use crate::Fingerboard;

/// A note of a passage.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PassageNote {
    /// Cents above C-1.
    pub pitch: i32,
    /// Until the next note begins, microseconds.
    pub lasts: i64,
}

/// What happens between two notes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Crossing {
    /// The string of the first note, 0 the lowest.
    pub from: usize,
    /// The string of the second.
    pub to: usize,
    /// Whether the hand moves to another position for which there is no time.
    pub hurried: bool,
}

impl Crossing {
    /// Strings that lie between the two and are passed over.
    #[must_use]
    pub fn skipped(self) -> usize {
        self.from.abs_diff(self.to).saturating_sub(1)
    }
}

/// A note on a string with the hand at a place.
#[derive(Clone, Copy, Debug)]
struct HandState {
    string: usize,
    /// Of the first finger, micrometres from the nut.
    hand: i64,
}

/// A position that there is no time for weighs more than all that follows (by definition).
const HURRIED: i64 = 100_000_000;
/// A string jumped over weighs more than shifts (by definition).
const SKIPPED: i64 = 1_000_000;
/// A shift weighs more than crossings (by definition).
const SHIFTED: i64 = 1_000;
/// A string crossed (by definition).
const CROSSED: i64 = 100;

/// The best way through the notes: an entry between each two; empty where a note lies on no string.
/// `shift` is how long a change of position takes, microseconds.
///
/// ```
/// use arcata_hand::{Fingerboard, PassageNote, Strings, crossings};
/// use arcata_score::Instrument;
/// let violin =
///     Fingerboard::new(Instrument::Violin, Strings::Four, &arcata_bow::Profile::default()).unwrap();
/// // A on the lowest string to B on the highest and back: two strings are passed over each time.
/// let notes = [5700, 8300, 5700].map(|pitch| PassageNote { pitch, lasts: 100_000 });
/// assert_eq!(crossings(&violin, &notes, 200_000).iter().map(|c| c.skipped()).sum::<usize>(), 4);
/// ```
#[must_use]
pub fn crossings(board: &Fingerboard, notes: &[PassageNote], shift: i64) -> Vec<Crossing> {
    let places = hand_places(board, notes);
    let all: Vec<Vec<HandState>> = notes.iter().map(|note| states(board, *note, &places)).collect();
    if all.iter().any(Vec::is_empty) || notes.len() < 2 {
        return Vec::new();
    }
    // For each state the cost of the best way to it and the state before.
    let mut best: Vec<Vec<(i64, usize)>> = vec![all[0].iter().map(|state| (state.hand / 1000, 0)).collect()];
    for index in 1..notes.len() {
        let before = &best[index - 1];
        let here = all[index].iter().map(|state| {
            let ways = all[index - 1].iter().enumerate().map(|(from, previous)| {
                (before[from].0 + cost(*previous, *state, notes[index - 1].lasts, shift), from)
            });
            ways.min().unwrap_or((i64::MAX, 0))
        });
        let here = here.collect();
        best.push(here);
    }
    let last = best[notes.len() - 1].iter().enumerate().min_by_key(|(_, (cost, _))| *cost);
    let mut at = last.map_or(0, |(index, _)| index);
    let mut found = Vec::new();
    for index in (1..notes.len()).rev() {
        let from = best[index][at].1;
        let (previous, state) = (all[index - 1][from], all[index][at]);
        found.push(Crossing {
            from: previous.string,
            to: state.string,
            hurried: shifts(previous, state) && notes[index - 1].lasts < shift,
        });
        at = from;
    }
    found.reverse();
    found
}

fn cost(from: HandState, to: HandState, lasts: i64, shift: i64) -> i64 {
    let skipped = from.string.abs_diff(to.string).saturating_sub(1) as i64;
    let crossed = i64::from(from.string != to.string);
    let shifted = i64::from(shifts(from, to));
    let hurried = i64::from(shifts(from, to) && lasts < shift);
    HURRIED * hurried + SKIPPED * skipped + SHIFTED * shifted + CROSSED * crossed + to.hand / 1000
}

/// While an open string sounds the hand may be anywhere: it is where the notes around want it, or on its way.
fn shifts(from: HandState, to: HandState) -> bool {
    from.hand != to.hand
}

/// Where the first finger may stand: on any note of the passage, or so that the fourth reaches it.
fn hand_places(board: &Fingerboard, notes: &[PassageNote]) -> Vec<i64> {
    let mut places: Vec<i64> = vec![board.place(100)];
    for note in notes {
        for (_, above) in board.places(note.pitch).filter(|(_, above)| *above > 0) {
            let place = board.place(above);
            places.push(place);
            places.push((place - board.close).max(board.place(100)));
        }
    }
    places.sort_unstable();
    places.dedup();
    places
}

fn states(board: &Fingerboard, note: PassageNote, places: &[i64]) -> Vec<HandState> {
    let mut states = Vec::new();
    for (string, above) in board.places(note.pitch) {
        let place = board.place(above);
        for hand in places {
            let reach = hand_reach(board, *hand);
            if above == 0 || (*hand..=hand + reach).contains(&place) {
                states.push(HandState { string, hand: *hand });
            }
        }
    }
    states
}

/// The stretched hand, or the thumb's where the instrument has it there.
fn hand_reach(board: &Fingerboard, hand: i64) -> i64 {
    let thumb = board.thumb > 0 && hand >= board.place(board.thumb_from);
    if thumb { board.thumb.max(board.stretched) } else { board.stretched }
}

#[cfg(test)]
mod tests {
    use arcata_bow::Profile;
    use arcata_score::Instrument;
    use proptest::prelude::*;

    use super::*;
    use crate::Strings;

    fn violin() -> Fingerboard {
        Fingerboard::new(Instrument::Violin, Strings::Four, &Profile::default()).unwrap()
    }

    fn steps(pitches: &[i32], lasts: i64) -> Vec<PassageNote> {
        pitches.iter().map(|pitch| PassageNote { pitch: pitch * 100, lasts }).collect()
    }

    fn skipped(pitches: &[i32], lasts: i64) -> usize {
        crossings(&violin(), &steps(pitches, lasts), 200_000).iter().map(|crossing| crossing.skipped()).sum()
    }

    #[test]
    fn a_scale_and_an_arpeggio_over_the_strings_skip_none() {
        // G major over two octaves, and the open strings in order: common practice.
        assert_eq!(skipped(&[55, 57, 59, 60, 62, 64, 66, 67, 69, 71, 72, 74, 76, 78, 79], 100_000), 0);
        assert_eq!(skipped(&[55, 62, 69, 76, 69, 62, 55], 100_000), 0);
    }

    #[test]
    fn a_leap_that_can_be_shifted_in_time_is_no_skip() {
        // B on the E string lies on the D string, too, far up: with time the hand goes there.
        assert!(skipped(&[57, 83, 57], 80_000) > 0);
        assert_eq!(skipped(&[57, 74, 57], 2_000_000), 0);
    }

    /// All ways, one by one.
    fn brute(board: &Fingerboard, notes: &[PassageNote], shift: i64) -> i64 {
        let places = hand_places(board, notes);
        let all: Vec<Vec<HandState>> = notes.iter().map(|note| states(board, *note, &places)).collect();
        fn rest(
            all: &[Vec<HandState>],
            notes: &[PassageNote],
            index: usize,
            from: HandState,
            shift: i64,
        ) -> i64 {
            if index == all.len() {
                return 0;
            }
            let ways = all[index].iter().map(|to| {
                cost(from, *to, notes[index - 1].lasts, shift) + rest(all, notes, index + 1, *to, shift)
            });
            ways.min().unwrap_or(i64::MAX / 4)
        }
        all[0].iter().map(|first| first.hand / 1000 + rest(&all, notes, 1, *first, shift)).min().unwrap_or(0)
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(48))]
        #[test]
        fn the_best_way_is_the_best_of_all(
            pitches in proptest::collection::vec(55_i32..92, 2..=3),
            lasts in 50_000_i64..400_000,
        ) {
            let board = violin();
            let notes = steps(&pitches, lasts);
            let found = crossings(&board, &notes, 200_000);
            let wanted = brute(&board, &notes, 200_000);
            let weight = |crossing: &Crossing| {
                HURRIED * i64::from(crossing.hurried) + SKIPPED * crossing.skipped() as i64
            };
            let heavy: i64 = found.iter().map(weight).sum();
            prop_assert_eq!(heavy / SKIPPED, wanted / SKIPPED);
        }
    }
}
