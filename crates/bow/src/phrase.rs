//! Joints of the phrase, in hundredths: 100 for a long rest or the end of a movement.

use arcata_score::{Articulation, BarlineStyle, Fermata, Length, Score};

use crate::lines::{Event, Extent};
use crate::{Stroke, StrokeKind};

/// What is certainly a joint (by definition).
const FULL: u16 = 100;
/// From here on a joint begins a new count of bars (rule of thumb).
pub(crate) const CLEAR: u16 = 50;

/// The joints of a line.
///
/// Reasons at one place do not add up beyond the strongest, but a weak one may add to another: rests by
/// their length, breath marks, fermatas, double bars and repeat signs, the long last note of a slur,
/// bars that open as the phrase opened, and, as the weakest, every second bar of a phrase.
pub(crate) struct Phrases<'a> {
    score: &'a Score,
    events: &'a [Event],
    openings: Openings,
    /// For each event the bar from which its phrase counts, by the strokes as printed.
    counted_from: Vec<u32>,
}

impl<'a> Phrases<'a> {
    pub(crate) fn new(score: &'a Score, events: &'a [Event]) -> Self {
        let openings = Openings::new(events, score.bars.len());
        Self { score, events, openings, counted_from: vec![0; events.len()] }
    }

    /// Counts the phrases of the printed strokes and fills in their joints. Strokes that are only tried
    /// keep this count: where phrases begin lies in the music.
    pub(crate) fn count(&mut self, extents: &[Extent], strokes: &mut [Stroke]) {
        let mut from = strokes.first().map_or(0, |stroke| stroke.bar);
        for (index, (extent, stroke)) in extents.iter().zip(strokes.iter_mut()).enumerate() {
            let next = extents.get(index + 1).map(|next| next.first);
            self.counted_from[extent.first..next.unwrap_or(self.events.len())].fill(from);
            stroke.phrase.joint_after = self.joint_after(stroke, *extent, next);
            if let Some(next) = next.filter(|_| stroke.phrase.joint_after >= CLEAR) {
                from = self.events[next].bar;
            }
        }
        Self::chain(strokes);
    }

    /// Gives every stroke the joint after the stroke before it.
    pub(crate) fn chain(strokes: &mut [Stroke]) {
        let mut before = FULL;
        for stroke in strokes {
            stroke.phrase.joint_before = before;
            before = stroke.phrase.joint_after;
        }
    }

    /// The joint after a stroke, before the one that begins with the event `next`.
    pub(crate) fn joint_after(&self, stroke: &Stroke, extent: Extent, next: Option<usize>) -> u16 {
        let Some(next) = next.map(|next| &self.events[next]) else { return FULL };
        let last = &self.events[extent.end - 1];
        let mut joint = certain(self.score, stroke, next, last);
        let from = self.counted_from[extent.end - 1];
        if self.score.offset_in_bar(next.onset, next.bar).is_zero() && next.bar > from {
            joint += regular(&self.openings, (from, next.bar));
        }
        joint += after_long_note(stroke, last, next);
        joint.min(FULL)
    }
}

/// The strongest written joint between two strokes.
fn certain(score: &Score, stroke: &Stroke, next: &Event, last: &Event) -> u16 {
    let rest = next.onset - last.end;
    let by_rest = if rest >= Length::WHOLE || stroke.silence_after.micros >= 1_500_000 {
        FULL
    } else if rest >= Length::QUARTER {
        50
    } else if rest >= Length::new(1, 8) {
        30
    } else if rest.is_positive() {
        15
    } else {
        0
    };
    let has = |mark| last.articulations.has(mark);
    let by_mark = match () {
        () if has(Articulation::Caesura) => 90,
        () if last.fermata == Fermata::Held => 80,
        () if has(Articulation::Breath) => 70,
        () => 0,
    };
    by_rest.max(by_mark).max(by_barline(score, stroke, next))
}

/// Double bars and repeat signs that lie between the beginnings of two strokes.
fn by_barline(score: &Score, stroke: &Stroke, next: &Event) -> u16 {
    (stroke.bar..next.bar)
        .filter_map(|bar| {
            let (left_of, right_of) = (score.bars.get(bar as usize)?, score.bars.get(bar as usize + 1)?);
            let repeat = left_of.right.repeat.is_some() || right_of.left.repeat.is_some();
            Some(match left_of.right.style {
                BarlineStyle::Final => FULL,
                BarlineStyle::Double => 90,
                BarlineStyle::Single if repeat => 90,
                BarlineStyle::Single if right_of.rehearsal.is_some() => 40,
                BarlineStyle::Single => 0,
            })
        })
        .max()
        .unwrap_or(0)
}

/// Bars that open like the phrase, and every second bar.
fn regular(openings: &Openings, (phrase_bar, bar): (u32, u32)) -> u16 {
    let passed = bar - phrase_bar;
    let again = passed >= 2 && openings.alike(phrase_bar, bar) && !openings.alike(bar - 1, bar);
    let second = if passed.is_multiple_of(2) { 10 } else { 0 };
    second + if again { 20 } else { 0 }
}

/// A slur's long last note, before something shorter, closes a thought.
fn after_long_note(stroke: &Stroke, last: &Event, next: &Event) -> u16 {
    let (last, following) = (last.length(), next.length());
    let long = last >= Length::QUARTER && last >= following * 2;
    match stroke.kind {
        _ if !long => 0,
        StrokeKind::Slurred | StrokeKind::Pulsed => 25,
        _ => 10,
    }
}

/// How each bar of a line opens: a digest of its rhythm.
struct Openings {
    digests: Vec<u64>,
}

impl Openings {
    fn new(events: &[Event], bars: usize) -> Self {
        let mut digests = vec![0_u64; bars];
        for bar in events.chunk_by(|a, b| a.bar == b.bar) {
            // Any mixing of the lengths will do: equal rhythms give equal digests.
            let digest = bar.iter().fold(0xcbf2_9ce4_8422_2325_u64, |digest, event| {
                let length = event.length();
                let word = length.numerator().cast_unsigned() << 32 ^ length.denominator().cast_unsigned();
                (digest ^ word).wrapping_mul(0x0000_0100_0000_01b3).rotate_left(17)
            });
            if let Some(slot) = bar.first().and_then(|event| digests.get_mut(event.bar as usize)) {
                *slot = digest;
            }
        }
        Self { digests }
    }

    fn alike(&self, one: u32, other: u32) -> bool {
        let digest = |bar: u32| self.digests.get(bar as usize).copied().unwrap_or(0);
        digest(one) != 0 && digest(one) == digest(other)
    }
}

#[cfg(test)]
mod tests {
    use crate::lines::tests::line;

    fn joints(fixture: &str) -> Vec<u16> {
        line(fixture).strokes.iter().map(|stroke| stroke.phrase.joint_after).collect()
    }

    #[test]
    fn the_ends_of_a_line_and_long_rests_are_full_joints() {
        let line = line("violin: 1/1 D4 | bar-rest | E4");
        assert_eq!(line.strokes[0].phrase.joint_before, 100);
        assert_eq!(joints("violin: 1/1 D4 | bar-rest | E4"), [100, 100]);
    }

    #[test]
    fn shorter_rests_are_weaker_joints() {
        let joints = joints("violin: 1/4 D4 rest E4 1/8 rest F4 | G4 1/16 rest A4 3/4 B4");
        assert!(joints[0] > joints[1] && joints[1] > joints[3] && joints[3] > joints[2], "{joints:?}");
    }

    #[test]
    fn breath_fermata_and_double_bar_are_joints() {
        for fixture in [
            "violin: 1/2 D4!, E4",
            "violin: 1/2 D4!fermata E4",
            "violin: 1/1 D4 || E4",
            "violin: 1/1 D4 :| E4",
        ] {
            assert!(joints(fixture)[0] >= 70, "{fixture}: {:?}", joints(fixture));
        }
    }

    #[test]
    fn the_long_last_note_of_a_slur_closes_a_little() {
        let joints = joints("violin: (1/8 D4 E4 1/2 F4) 1/8 G4 A4");
        assert!(joints[0] >= 25 && joints[1] == 0, "{joints:?}");
    }

    #[test]
    fn a_bar_that_opens_like_the_phrase_begins_a_new_one() {
        let joints = joints("violin: 1/4 D4 3/4 E4 | 1/1 F4 | 1/4 D4 3/4 E4 | 1/1 F4");
        // After the second bar more than after the first and third.
        assert!(joints[2] > joints[1] && joints[2] > joints[4], "{joints:?}");
    }
}
