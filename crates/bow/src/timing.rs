//! From exact score time to seconds.
//!
//! Within a rit. or accel. the length of a beat changes linearly in score time. Seconds are then a
//! polynomial, so that they come from whole-number arithmetic and no logarithm is needed; against a
//! speed that changes linearly the difference is under 2 % of the ramp for the factors of the profile.

use arcata_score::{Length, Moment, Score, Tempo, TempoBack, TempoKind};

use crate::profile::Profile;
use crate::{RealTime, Written};

/// The tempo that a user asks for in place of the score's.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum TempoChoice {
    /// As written.
    #[default]
    Written,
    /// This many quarters a minute throughout, whatever is written.
    Throughout(Length),
    /// The score opens at this many quarters a minute; later tempos keep their proportion to it.
    Opening(Length),
    /// Everything at this percentage of what is written.
    Percent(u16),
}

impl TempoChoice {
    /// What is asked of one movement of several: an opening tempo is asked of one of them alone.
    pub(crate) fn within(self, opens: bool) -> Self {
        match self {
            Self::Opening(_) if !opens => Self::Written,
            other => other,
        }
    }
}

impl From<Option<u32>> for TempoChoice {
    /// Whole quarters a minute throughout, if any are given.
    fn from(quarters: Option<u32>) -> Self {
        quarters.map_or(Self::Written, |quarters| Self::Throughout(Length::new(i64::from(quarters), 1)))
    }
}

/// Seconds for every moment of a score.
#[derive(Clone, Debug)]
pub struct TempoMap {
    segments: Vec<Segment>,
    /// Since when the tempo is not an assumption; `None` if it never is.
    written_from: Option<Moment>,
    assumed: Length,
}

/// Time in which the tempo is steady or changes evenly.
#[derive(Clone, Copy, Debug)]
struct Segment {
    start: Moment,
    /// Real time at `start`, nanoseconds.
    nanos: i128,
    /// Picoseconds a whole note at the start.
    pace: i128,
    /// For a ramp: where it ends, and the pace there.
    ramp: Option<(Length, i128)>,
}

/// Picoseconds of a whole note at one quarter a minute (by definition).
const WHOLE_AT_ONE: i128 = 240_000_000_000_000;
/// Tempos outside these bounds are slips of the file, quarters a minute (a limit).
const SLOWEST: Length = Length::WHOLE;
/// See [`SLOWEST`], quarters a minute (a limit).
const FASTEST: i64 = 2000;

fn pace(quarters: Length) -> i128 {
    let bounded = quarters.clamp(SLOWEST, Length::new(FASTEST, 1));
    WHOLE_AT_ONE * i128::from(bounded.denominator()) / i128::from(bounded.numerator().max(1))
}

fn quarters_at(pace: i128) -> Length {
    let thousandths = WHOLE_AT_ONE * 1000 / pace.max(1);
    Length::new(i64::try_from(thousandths).unwrap_or(i64::MAX), 1000)
}

impl Segment {
    /// Nanoseconds from its start.
    fn nanos_after(&self, length: Length) -> i128 {
        let (span, pace) = match self.ramp {
            Some((whole, end)) if length < whole => {
                // Mean pace up to here: the start's, plus half of what has changed.
                let part = length.in_units_of(whole).unwrap_or(Length::ZERO);
                let change =
                    (end - self.pace) * i128::from(part.numerator()) / (2 * i128::from(part.denominator()));
                (length, self.pace + change)
            }
            Some((whole, end)) => {
                let ramp = spent(whole, i128::midpoint(self.pace, end));
                return ramp + spent(length - whole, end);
            }
            None => (length, self.pace),
        };
        spent(span, pace)
    }

    fn pace_after(&self, length: Length) -> i128 {
        match self.ramp {
            Some((whole, end)) if length < whole => {
                let part = length.in_units_of(whole).unwrap_or(Length::ZERO);
                self.pace + (end - self.pace) * i128::from(part.numerator()) / i128::from(part.denominator())
            }
            Some((_, end)) => end,
            None => self.pace,
        }
    }
}

/// Nanoseconds that a length takes at a steady pace.
fn spent(length: Length, pace: i128) -> i128 {
    i128::from(length.numerator()) * pace / (i128::from(length.denominator()) * 1000)
}

impl TempoMap {
    /// The tempo of a score, as written or as a user wants it.
    #[must_use]
    pub fn new(score: &Score, profile: &Profile, choice: TempoChoice) -> Self {
        if let TempoChoice::Throughout(quarters) = choice {
            return Self::steady(quarters);
        }
        let mut map = TempoBuilder::new(score, profile).build();
        match choice {
            TempoChoice::Written | TempoChoice::Throughout(_) => {}
            TempoChoice::Percent(percent) => map.scale(Length::new(i64::from(percent.max(1)), 100)),
            TempoChoice::Opening(wanted) => map.open_at(wanted, Moment::START),
        }
        map
    }

    /// Makes everything as much quicker or slower as it takes for one moment to have a wanted tempo, quarters a minute.
    fn open_at(&mut self, wanted: Length, opening: Moment) {
        self.scale(wanted.in_units_of(self.quarters_a_minute(opening)).unwrap_or(Length::WHOLE));
        self.written_from = Some(Moment::START);
    }

    /// The seconds of movements that follow one another, each beginning at its own moment with its own tempo.
    pub(crate) fn joined<'a>(movements: impl Iterator<Item = (Moment, &'a Self)>) -> Self {
        let mut joined: Option<Self> = None;
        for (begins, movement) in movements {
            let Some(whole) = &mut joined else {
                joined = Some(movement.clone());
                continue;
            };
            let last = *whole.segment_at(begins);
            let nanos = last.nanos + last.nanos_after(begins - last.start);
            whole.segments.retain(|segment| segment.start < begins);
            whole.segments.extend(movement.segments.iter().map(|segment| Segment {
                start: begins + segment.start.since_start(),
                nanos: nanos + segment.nanos,
                ..*segment
            }));
            whole.written_from = whole.written_from.filter(|_| movement.written_from.is_some());
        }
        joined.unwrap_or_else(|| Self::steady(Length::new(100, 1)))
    }

    /// The seconds from a moment on, counted from it.
    pub(crate) fn from(&self, moment: Moment) -> Self {
        let index = self.segments.partition_point(|segment| segment.start <= moment).saturating_sub(1);
        let first = self.segments[index];
        let passed = moment - first.start;
        let ramp = first.ramp.filter(|(whole, _)| passed < *whole);
        let opening = Segment {
            start: Moment::START,
            nanos: 0,
            pace: first.pace_after(passed),
            ramp: ramp.map(|(whole, end)| (whole - passed, end)),
        };
        let nanos = first.nanos + first.nanos_after(passed);
        let later = self.segments[index + 1..].iter().map(|segment| Segment {
            start: Moment(segment.start - moment),
            nanos: segment.nanos - nanos,
            ..*segment
        });
        Self {
            segments: std::iter::once(opening).chain(later).collect(),
            written_from: self.written_from.map(|from| Moment(from.max(moment) - moment)),
            assumed: self.assumed,
        }
    }

    fn steady(quarters: Length) -> Self {
        let segment = Segment { start: Moment::START, nanos: 0, pace: pace(quarters), ramp: None };
        Self { segments: vec![segment], written_from: Some(Moment::START), assumed: quarters }
    }

    pub(crate) fn scale(&mut self, factor: Length) {
        let (up, down) = (i128::from(factor.numerator().max(1)), i128::from(factor.denominator()));
        for segment in &mut self.segments {
            segment.nanos = segment.nanos * down / up;
            segment.pace = (segment.pace * down / up).max(1);
            if let Some((_, end)) = &mut segment.ramp {
                *end = (*end * down / up).max(1);
            }
        }
        self.assumed = self.assumed.scaled(factor.numerator(), factor.denominator());
    }

    fn segment_at(&self, moment: Moment) -> &Segment {
        let after = self.segments.partition_point(|segment| segment.start <= moment);
        &self.segments[after.saturating_sub(1)]
    }

    /// Real time from the beginning of the score, bars as printed.
    #[must_use]
    pub fn at(&self, moment: Moment) -> RealTime {
        let segment = self.segment_at(moment);
        let nanos = segment.nanos + segment.nanos_after(moment - segment.start);
        RealTime::from_micros(i64::try_from((nanos.max(0) + 500) / 1000).unwrap_or(i64::MAX))
    }

    /// Real time between two moments.
    #[must_use]
    pub fn between(&self, from: Moment, to: Moment) -> RealTime {
        RealTime::from_micros(self.at(to).micros - self.at(from).micros)
    }

    /// The tempo at a moment, quarters a minute, to a thousandth.
    #[must_use]
    pub fn quarters_a_minute(&self, moment: Moment) -> Length {
        let segment = self.segment_at(moment);
        quarters_at(segment.pace_after(moment - segment.start))
    }

    /// Whether the tempo at a moment stands in the score (or was given by the user) or is assumed.
    #[must_use]
    pub fn written(&self, moment: Moment) -> Written {
        match self.written_from {
            Some(from) if from <= moment => Written::InScore,
            _ => Written::Assumed,
        }
    }

    /// The tempo that is assumed where none is written, quarters a minute.
    #[must_use]
    pub fn assumed(&self) -> Length {
        self.assumed
    }
}

/// Walks over the tempo events.
struct TempoBuilder<'a> {
    score: &'a Score,
    profile: &'a Profile,
    segments: Vec<Segment>,
    /// First tempo of the score.
    first: Option<i128>,
    /// What "a tempo" takes up again: the pace before the last departure from it.
    before: Option<i128>,
    written_from: Option<Moment>,
}

impl<'a> TempoBuilder<'a> {
    fn new(score: &'a Score, profile: &'a Profile) -> Self {
        Self { score, profile, segments: Vec::new(), first: None, before: None, written_from: None }
    }

    fn build(mut self) -> TempoMap {
        let assumed = Length::new(self.profile.assumed.quarters_a_minute.value, 1);
        self.segments.push(Segment { start: Moment::START, nanos: 0, pace: pace(assumed), ramp: None });
        let events = &self.score.tempos;
        for (index, event) in events.iter().enumerate() {
            self.take(event, &events[index + 1..]);
        }
        TempoMap { segments: self.segments, written_from: self.written_from, assumed }
    }

    fn take(&mut self, event: &Tempo, later: &[Tempo]) {
        let at = event.place.at;
        let last = self.segments[self.segments.len() - 1];
        let passed = at - last.start;
        let now = last.pace_after(passed);
        let was_ramp = last.ramp.is_some();
        let (pace, ramp) = match &event.kind {
            TempoKind::Marked(quarters) | TempoKind::Word(quarters) => {
                // A word and a mark at one moment are one tempo: the exact one holds.
                if self.word_yields(event, later) {
                    return;
                }
                self.before = None;
                self.written_from.get_or_insert(at);
                let marked = pace(*quarters);
                self.first.get_or_insert(marked);
                (marked, None)
            }
            TempoKind::Modulation(old, new) => {
                self.before = None;
                let (up, down) = (new.numerator(), new.denominator());
                // The new value now takes what the old one took: quarters grow by new / old.
                let ratio = Length::new(up, down).in_units_of(*old).filter(|ratio| ratio.is_positive());
                let ratio = ratio.unwrap_or(Length::WHOLE);
                (now * i128::from(ratio.denominator()) / i128::from(ratio.numerator()), None)
            }
            TempoKind::Scaled(fraction) => {
                self.leave(now, was_ramp);
                let fraction = if fraction.is_positive() { *fraction } else { Length::WHOLE };
                (now * i128::from(fraction.denominator()) / i128::from(fraction.numerator()), None)
            }
            TempoKind::Back(TempoBack::Previous) => (self.before.take().unwrap_or(now), None),
            TempoKind::Back(TempoBack::First) => {
                self.before = None;
                (self.first.unwrap_or(now), None)
            }
            TempoKind::Slowing | TempoKind::Quickening => {
                self.leave(now, was_ramp);
                (now, Some(self.ramp(event, now, later)))
            }
        };
        let nanos = last.nanos + last.nanos_after(passed);
        let pace = pace.clamp(WHOLE_AT_ONE / i128::from(FASTEST), WHOLE_AT_ONE);
        let segment = Segment { start: at, nanos, pace, ramp };
        if last.start == at {
            self.segments.pop();
        }
        self.segments.push(segment);
    }

    /// Whether a tempo word stands at the same moment as a metronome mark.
    fn word_yields(&self, event: &Tempo, later: &[Tempo]) -> bool {
        matches!(event.kind, TempoKind::Word(_))
            && (later
                .iter()
                .take_while(|other| other.place.at == event.place.at)
                .any(|other| matches!(other.kind, TempoKind::Marked(_)))
                || self.written_from.is_some()
                    && self.segments.last().is_some_and(|last| last.start == event.place.at))
    }

    /// Remembers the tempo that is left, so that "a tempo" finds it; a rit. after a rit. leaves nothing.
    fn leave(&mut self, now: i128, was_ramp: bool) {
        if self.before.is_none() || !was_ramp {
            self.before = Some(now);
        }
    }

    /// How long a rit. or accel. lasts and where it arrives.
    fn ramp(&self, event: &Tempo, now: i128, later: &[Tempo]) -> (Length, i128) {
        let assumed = &self.profile.assumed;
        let slowing = event.kind == TempoKind::Slowing;
        let last_bar = event.place.bar.saturating_add(u32::try_from(assumed.ramp_bars.value).unwrap_or(4));
        let bound = self.score.bars.get(last_bar as usize).map_or_else(|| self.score.end(), |bar| bar.start);
        let next = later.iter().find(|other| other.place.at > event.place.at);
        let end = next.map_or(bound, |next| next.place.at.min(bound)).max(event.place.at);
        let percent = if slowing { assumed.slowing.value } else { assumed.quickening.value };
        let by_default = now * 100 / i128::from(percent.max(1));
        let goal = match next.map(|next| &next.kind) {
            Some(TempoKind::Marked(quarters) | TempoKind::Word(quarters)) => Some(pace(*quarters)),
            _ => None,
        };
        let goal = goal.filter(|goal| if slowing { *goal > now } else { *goal < now });
        // Beyond half or double the tempo a ramp is no longer even: the next tempo is a jump.
        let target = goal.map_or(by_default, |goal| goal.clamp(now / 2, now * 2));
        let length = end - event.place.at;
        (if length.is_positive() { length } else { Length::new(1, 1024) }, target)
    }
}

#[cfg(test)]
mod tests;
