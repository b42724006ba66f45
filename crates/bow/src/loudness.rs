//! How loud a line is at every moment.
//!
//! Dynamics are steps of 100 (ppp = 100 … f = 600 … fff = 800, silence = 0). Between them hairpins
//! and cresc./dim. are straight lines: to the dynamic they lead to, or by one step where none follows.

use arcata_score::{
    Dynamic, DynamicKind, Length, Level, Meaning, Moment, Niente, Part, Place, Score, Swell, SwellKind,
    SwellWriting,
};

use crate::profile::Profile;
use crate::{Loudness, Written};

impl From<Level> for Loudness {
    fn from(level: Level) -> Self {
        Self(level as i32 * 100)
    }
}

/// An attack louder than what follows it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Attack {
    /// When.
    pub at: Moment,
    /// How loud it begins.
    pub loudness: Loudness,
    /// What is written.
    pub kind: DynamicKind,
}

/// The loudness of one line.
#[derive(Clone, Debug)]
pub struct LoudnessCurve {
    points: Vec<CurveCorner>,
    /// Attacks (sf, fp and the like) in order of time.
    pub attacks: Vec<Attack>,
    written_from: Option<Moment>,
}

/// A corner of the curve: the loudness that leads there, and the one that starts there.
#[derive(Clone, Copy, Debug)]
struct CurveCorner {
    at: Moment,
    before: i32,
    after: i32,
}

/// How far after the end of a swell its dynamic may stand: engravers put it under the next note (common practice).
const GOAL_WITHIN: Length = Length::QUARTER;
/// The loudest and softest that a swell without a goal reaches (rule of thumb).
const SOFTEST_GOAL: i32 = Loudness::PPP.0;
/// See [`SOFTEST_GOAL`] (rule of thumb).
const LOUDEST_GOAL: i32 = Loudness::FFF.0;

impl LoudnessCurve {
    /// The loudness of the voices of one staff.
    ///
    /// Marks of other staves do not count. Marks written for one voice count for all voices of the
    /// staff, unless the line has a voice with marks of its own.
    #[must_use]
    pub fn new(score: &Score, part: &Part, staff: u8, voices: &[u16], profile: &Profile) -> Self {
        let own_marks = part
            .dynamics
            .iter()
            .any(|dynamic| dynamic.place.voice.is_some_and(|voice| voices.contains(&voice)));
        let counts = |place: &Place| {
            let staff_fits = part.staves <= 1 || place.staff == 0 || place.staff == staff;
            staff_fits && (!own_marks || place.voice.is_none_or(|voice| voices.contains(&voice)))
        };
        let mut events: Vec<(Moment, DynamicKind)> = part
            .dynamics
            .iter()
            .filter(|dynamic| counts(&dynamic.place))
            .map(|Dynamic { place, kind }| (place.at, *kind))
            .collect();
        events.extend(part.instructions.iter().filter(|word| counts(&word.place)).filter_map(|word| {
            match word.meaning {
                Meaning::LevelWord(level) => Some((word.place.at, DynamicKind::Level(level))),
                _ => None,
            }
        }));
        events.sort_by_key(|(at, _)| *at);
        let swells: Vec<&Swell> = part.swells.iter().filter(|swell| counts(&swell.place)).collect();
        CurveDrawing::new(score, profile).draw(&events, &swells)
    }

    /// The curve so many steps of the dynamics higher, from ppp to fff at most; silence stays silence.
    #[must_use]
    pub fn louder(mut self, steps: i8) -> Self {
        let shifted = |loudness: i32| match loudness {
            0 => 0,
            some => (some + i32::from(steps) * 100).clamp(SOFTEST_GOAL.min(some), LOUDEST_GOAL.max(some)),
        };
        for point in &mut self.points {
            (point.before, point.after) = (shifted(point.before), shifted(point.after));
        }
        for attack in &mut self.attacks {
            attack.loudness = Loudness(shifted(attack.loudness.0));
        }
        self
    }

    /// The loudness that is reached at a moment, before any new dynamic there.
    #[must_use]
    pub fn reached(&self, moment: Moment) -> Loudness {
        let next = self.points.partition_point(|point| point.at < moment);
        self.on_the_way(next, moment)
    }

    /// The loudness with which something begins at a moment.
    #[must_use]
    pub fn begun(&self, moment: Moment) -> Loudness {
        let next = self.points.partition_point(|point| point.at <= moment);
        self.on_the_way(next, moment)
    }

    fn on_the_way(&self, next: usize, moment: Moment) -> Loudness {
        let Some(from) = next.checked_sub(1).and_then(|index| self.points.get(index)) else {
            return Loudness(self.points.first().map_or(0, |point| point.before));
        };
        let Some(to) = self.points.get(next).filter(|to| to.before != from.after) else {
            return Loudness(from.after);
        };
        let part = (moment - from.at).in_units_of(to.at - from.at).unwrap_or(Length::ZERO);
        let change = i128::from(to.before - from.after) * i128::from(part.numerator())
            / i128::from(part.denominator());
        Loudness(from.after + i32::try_from(change).unwrap_or(0))
    }

    /// The attack written at a moment, if any.
    #[must_use]
    pub fn attack(&self, moment: Moment) -> Option<&Attack> {
        let after = self.attacks.partition_point(|attack| attack.at <= moment);
        self.attacks[..after].last().filter(|attack| attack.at == moment)
    }

    /// Whether a dynamic is written at or before a moment, or the level is assumed.
    #[must_use]
    pub fn written(&self, moment: Moment) -> Written {
        match self.written_from {
            Some(from) if from <= moment => Written::InScore,
            _ => Written::Assumed,
        }
    }
}

/// Draws the curve from left to right.
struct CurveDrawing<'a> {
    score: &'a Score,
    profile: &'a Profile,
    curve: LoudnessCurve,
    level: i32,
    /// Whether the level was only taken to be reached by a swell that leads to no dynamic.
    taken: bool,
}

impl<'a> CurveDrawing<'a> {
    fn new(score: &'a Score, profile: &'a Profile) -> Self {
        let level = i32::try_from(profile.assumed.level.value).unwrap_or(500);
        let curve = LoudnessCurve {
            points: vec![CurveCorner { at: Moment::START, before: level, after: level }],
            attacks: Vec::new(),
            written_from: None,
        };
        Self { score, profile, curve, level, taken: false }
    }

    fn draw(mut self, events: &[(Moment, DynamicKind)], swells: &[&Swell]) -> LoudnessCurve {
        let mut next_event = 0;
        for (index, swell) in swells.iter().enumerate() {
            while next_event < events.len() && events[next_event].0 <= swell.place.at {
                self.mark(events[next_event]);
                next_event += 1;
            }
            let next_swell = swells[index + 1..].iter().map(|other| other.place.at);
            let next_swell = next_swell.into_iter().find(|at| *at > swell.place.at);
            self.swell(swell, &events[next_event..], next_swell);
        }
        for event in &events[next_event..] {
            self.mark(*event);
        }
        self.curve
    }

    fn mark(&mut self, (at, kind): (Moment, DynamicKind)) {
        self.taken &= matches!(kind, DynamicKind::Accented(_));
        match kind {
            DynamicKind::Level(level) => {
                self.curve.written_from.get_or_insert(at);
                self.set(at, Loudness::from(level).0);
            }
            DynamicKind::Accented(level) => {
                let loudness = Loudness::from(level).0.max(self.level + 100).min(LOUDEST_GOAL);
                self.curve.attacks.push(Attack { at, loudness: Loudness(loudness), kind });
            }
            DynamicKind::Shape(attack, after) => {
                self.curve.written_from.get_or_insert(at);
                self.curve.attacks.push(Attack { at, loudness: attack.into(), kind });
                self.set(at, Loudness::from(after).0);
            }
        }
    }

    /// A new level from here on.
    fn set(&mut self, at: Moment, level: i32) {
        // A dynamic in the course of a swell ends it: the swell was drawn up to this dynamic.
        match self.curve.points.last_mut() {
            Some(last) if last.at >= at => last.after = level,
            _ => self.curve.points.push(CurveCorner { at, before: self.level, after: level }),
        }
        self.level = level;
    }

    fn swell(&mut self, swell: &Swell, later: &[(Moment, DynamicKind)], next_swell: Option<Moment>) {
        let start = swell.place.at;
        // Two swells drawn over each other (a hairpin for each voice): the first one holds.
        if self.curve.points.last().is_some_and(|last| last.at > start) {
            return;
        }
        if swell.niente == Niente::Circle && swell.kind == SwellKind::Growing {
            self.set(start, 0);
        }
        let goal = later.iter().find_map(|(at, kind)| match kind {
            DynamicKind::Level(level) => Some((*at, Loudness::from(*level).0)),
            DynamicKind::Shape(attack, _) => Some((*at, Loudness::from(*attack).0)),
            DynamicKind::Accented(_) => None,
        });
        let mut end = swell.end.filter(|end| *end > start).unwrap_or_else(|| self.open_end(swell, goal));
        if let Some((at, _)) = goal {
            end = end.min(at);
        }
        if let Some(next) = next_swell {
            end = end.min(next);
        }
        let step = i32::try_from(self.profile.assumed.hairpin_step.value).unwrap_or(100);
        let (sign, circle) = match swell.kind {
            SwellKind::Growing => (1, false),
            SwellKind::Fading => (-1, swell.niente == Niente::Circle),
        };
        let reached = goal
            .filter(|(at, _)| *at - end <= GOAL_WITHIN)
            .map(|(_, level)| level)
            // One swell after another that ends at a dynamic which the first was taken to reach: it does not pass it.
            .filter(|level| (level - self.level) * sign > 0 || *level == self.level && self.taken);
        let target = match reached {
            Some(level) => level,
            None if circle => 0,
            None => (self.level + sign * step).clamp(SOFTEST_GOAL.min(self.level), LOUDEST_GOAL),
        };
        // A corner at the beginning, so that the line starts from here.
        self.set(start, self.level);
        self.curve.points.push(CurveCorner { at: end, before: target, after: target });
        self.level = target;
        self.taken = reached.is_none();
    }

    /// Where a swell without a written end is over: at its dynamic, if one comes soon.
    fn open_end(&self, swell: &Swell, goal: Option<(Moment, i32)>) -> Moment {
        let bars = u32::try_from(self.profile.assumed.word_bars.value).unwrap_or(4);
        // A dynamic that comes a little late still ends the words; a hairpin ends where it is drawn.
        let patience = match swell.written {
            SwellWriting::Word => 2,
            SwellWriting::Hairpin => 1,
        };
        let bar_start = |bars: u32| {
            let bar = swell.place.bar.saturating_add(bars) as usize;
            self.score.bars.get(bar).map_or_else(|| self.score.end(), |bar| bar.start)
        };
        let latest = bar_start(bars.saturating_mul(patience));
        let end = match goal {
            Some((at, _)) if at <= latest => at,
            _ => bar_start(bars),
        };
        end.max(swell.place.at + Length::new(1, 1024))
    }
}

#[cfg(test)]
mod tests;
