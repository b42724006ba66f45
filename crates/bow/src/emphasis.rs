//! How strong an onset is: its place in the bar, and what is written on it.

use arcata_score::{
    Articulation, Bar, BarKind, DynamicKind, Length, Level, Meter, MeterSymbol, Moment, Part, Score,
};

use crate::lines::{Event, TieInto};
use crate::loudness::LoudnessCurve;
use crate::{BarCount, BarEnd, Emphasis, Loudness, MetricPlace, Stroke};

/// Strengths by place, hundredths of a downbeat (rule of thumb; only their order and rough spacing
/// matter, as the planner weighs places and not strengths).
const DOWNBEAT: u16 = 100;
/// The middle of an even bar (rule of thumb).
const MID_BAR: u16 = 50;
/// Another beat (rule of thumb).
const BEAT: u16 = 30;
/// The division of a beat (rule of thumb).
const DIVISION: u16 = 10;
/// What is finer (rule of thumb).
const FINER: u16 = 3;
/// The strongest that signs make an onset (rule of thumb).
const STRONGEST: u16 = 300;

/// The beats of a time signature.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct MetricGrid {
    /// Length of a full bar; zero when no bars are counted.
    pub bar_length: Length,
    /// Beats in order: where they begin, their place, and how many parts they fall into (2 or 3).
    pub beats: Vec<(Length, MetricPlace, u16)>,
    /// How the bar counts.
    pub count: BarCount,
}

impl MetricGrid {
    /// The beats of a signature: 6/8, 9/8, 12/8 (and the like in quarters) beat in threes, cut time in
    /// halves; an even number of beats has a middle; each further group of an additive signature begins
    /// with the strength of a middle.
    #[must_use]
    pub fn new(meter: &Meter) -> Self {
        if meter.symbol == MeterSymbol::SenzaMisura {
            return Self { bar_length: Length::ZERO, beats: Vec::new(), count: BarCount::Even };
        }
        let mut beats = Vec::new();
        let mut start = Length::ZERO;
        let additive = meter.groups.len() > 1;
        for (index, group) in meter.groups.iter().enumerate() {
            let unit = Length::new(1, i64::from(group.unit.max(1)));
            let count = group.count.min(256);
            let (beat, units, parts) = if count > 3 && count % 3 == 0 && group.unit >= 4 {
                (unit * 3, count / 3, 3)
            } else if meter.symbol == MeterSymbol::Cut && group.unit == 4 && count % 2 == 0 {
                (unit * 2, count / 2, 2)
            } else {
                (unit, count, 2)
            };
            for number in 0..units {
                let place = match number {
                    0 if index == 0 => MetricPlace::Downbeat,
                    0 => MetricPlace::MidBar,
                    // Inside the groups of 3+2+2/8 the eighths are no beats.
                    _ if additive && group.unit >= 8 => MetricPlace::Offbeat,
                    _ if !additive && units % 2 == 0 && number == units / 2 => MetricPlace::MidBar,
                    _ => MetricPlace::Beat,
                };
                beats.push((start + beat * i64::from(number), place, parts));
            }
            start += unit * i64::from(group.count);
        }
        let count = match beats.as_slice() {
            _ if additive => BarCount::Even,
            beats if beats.len() > 1 && beats.iter().all(|(_, _, parts)| *parts == 3) => BarCount::Compound,
            [_, _, _] => BarCount::Triple,
            _ => BarCount::Even,
        };
        Self { bar_length: start, beats, count }
    }

    /// How many hundredths of a full bar a length is.
    fn hundredths(&self, length: Length) -> u16 {
        let share = length.scaled(100, 1).in_units_of(self.bar_length);
        share.map_or(0, |share| {
            u16::try_from(share.numerator() / share.denominator().max(1)).unwrap_or(u16::MAX)
        })
    }

    fn end_of(&self, until: Length) -> BarEnd {
        match until.cmp(&self.bar_length) {
            _ if self.beats.is_empty() => BarEnd::Within,
            std::cmp::Ordering::Less => BarEnd::Within,
            std::cmp::Ordering::Equal => BarEnd::With,
            std::cmp::Ordering::Greater => BarEnd::Beyond,
        }
    }

    /// Place and strength of a position in a full bar.
    #[must_use]
    pub fn at(&self, position: Length) -> (MetricPlace, u16) {
        let after = self.beats.partition_point(|(start, _, _)| *start <= position);
        let Some((start, place, parts)) = after.checked_sub(1).map(|index| self.beats[index]) else {
            return (MetricPlace::Offbeat, 0);
        };
        if start == position {
            return (place, strength(place));
        }
        let next = self.beats.get(after).map_or(self.bar_length, |(next, _, _)| *next);
        let division = (position - start)
            .scaled(i64::from(parts), 1)
            .in_units_of(next - start)
            .is_some_and(|part| part.denominator() == 1);
        (MetricPlace::Offbeat, if division { DIVISION } else { FINER })
    }

    /// The greatest strength of a beat strictly between two positions.
    fn strongest_between(&self, from: Length, to: Length) -> u16 {
        let first = self.beats.partition_point(|(start, _, _)| *start <= from);
        let within = self.beats[first..].iter().take_while(|(start, _, _)| *start < to);
        let inside = within.map(|(_, place, _)| strength(*place)).max().unwrap_or(0);
        if to > self.bar_length && self.bar_length.is_positive() { DOWNBEAT } else { inside }
    }
}

fn strength(place: MetricPlace) -> u16 {
    match place {
        MetricPlace::Downbeat => DOWNBEAT,
        MetricPlace::MidBar => MID_BAR,
        MetricPlace::Beat => BEAT,
        MetricPlace::Offbeat => DIVISION,
    }
}

/// How much of a full bar is missing at the left of a bar: a pickup, or the second half of a bar that a
/// repeat sign splits, ends where a full bar ends.
fn missing_at_left(bars: &[Bar], index: usize, full: Length) -> Length {
    let Some(bar) = bars.get(index) else { return Length::ZERO };
    let uncounted = |bar: &Bar| bar.kind == BarKind::NotCounted;
    let first_half =
        bars.get(index + 1).is_some_and(|next| uncounted(next) && bar.length + next.length == full);
    let second_half = index > 0 && bars[index - 1].length + bar.length == full;
    let pickup = index == 0 || uncounted(bar) && (second_half || !first_half);
    if bar.length < full && pickup { full - bar.length } else { Length::ZERO }
}

/// The emphasis of strokes.
pub(crate) struct Emphases<'a> {
    score: &'a Score,
    events: &'a [Event],
    curve: &'a LoudnessCurve,
    grids: Vec<(u32, MetricGrid)>,
}

impl<'a> Emphases<'a> {
    pub(crate) fn new(
        score: &'a Score,
        part: &'a Part,
        events: &'a [Event],
        curve: &'a LoudnessCurve,
    ) -> Self {
        let mut grids: Vec<_> =
            part.meters.iter().map(|(bar, meter)| (*bar, MetricGrid::new(meter))).collect();
        if grids.first().is_none_or(|(bar, _)| *bar > 0) {
            grids.insert(0, (0, MetricGrid::new(&Meter::common())));
        }
        Self { score, events, curve, grids }
    }

    /// The emphasis of a stroke that begins with event `first`; `level_before` is the loudness reached
    /// at the end of the stroke before.
    pub(crate) fn of(&self, first: usize, stroke: &Stroke, level_before: Option<Loudness>) -> Emphasis {
        let event = &self.events[first];
        let grid = self.grid(stroke.bar);
        let missing = missing_at_left(&self.score.bars, stroke.bar as usize, grid.bar_length);
        let position = stroke.offset + missing;
        let (metric, base) = grid.at(position);
        let mut strength = base;
        // A note held over a stronger beat takes the weight from that beat, but is itself off it.
        let until = position + event.length();
        if grid.strongest_between(position, until) > base {
            strength = strength.saturating_sub(DIVISION);
        }
        if missing.is_positive() {
            strength /= 2;
        }
        let accent = self.accent(event);
        let rise = level_before.is_some_and(|before| stroke.level_start.0 - before.0 >= 200);
        strength += accent / 2;
        strength += if rise { 20 } else { 0 };
        strength += if self.is_agogic(first) { 15 } else { 0 };
        strength += if stroke.offset.is_zero() && self.has_rehearsal(stroke.bar) { 20 } else { 0 };
        Emphasis {
            metric,
            strength: strength.min(STRONGEST),
            accent,
            count: grid.count,
            bars: grid.hundredths(stroke.length),
            bar_end: grid.end_of(position + stroke.length),
        }
    }

    fn grid(&self, bar: u32) -> &MetricGrid {
        let after = self.grids.partition_point(|(from, _)| *from <= bar);
        &self.grids[after.saturating_sub(1)].1
    }

    fn has_rehearsal(&self, bar: u32) -> bool {
        self.score.bars.get(bar as usize).is_some_and(|bar| bar.rehearsal.is_some())
    }

    /// How much weight is asked for: the strongest single reason.
    fn accent(&self, event: &Event) -> u16 {
        const MARKS: [(Articulation, u16); 4] = [
            (Articulation::StrongAccent, 90),
            (Articulation::Accent, 70),
            (Articulation::Stress, 40),
            (Articulation::SoftAccent, 30),
        ];
        let marks =
            MARKS.iter().filter(|(mark, _)| event.articulations.has(*mark)).map(|(_, weight)| *weight);
        let chord = if event.stopped >= 3 { 50 } else { 0 };
        let attack = self.curve.attack(event.onset).map_or(0, |attack| match attack.kind {
            DynamicKind::Accented(level) if level >= Level::Ff => 100,
            DynamicKind::Accented(_) => 90,
            DynamicKind::Shape(..) => 70,
            DynamicKind::Level(_) => 0,
        });
        marks.chain([chord, attack]).max().unwrap_or(0)
    }

    /// A long note after short ones, without a rest between.
    fn is_agogic(&self, index: usize) -> bool {
        let Some(before) = index.checked_sub(1).map(|before| &self.events[before]) else { return false };
        let event = &self.events[index];
        event.tie == TieInto::Not
            && before.end == event.onset
            && before.length().is_positive()
            && self.held_length(index) >= before.length() * 2
    }

    /// The length of an event with what is tied to it.
    fn held_length(&self, index: usize) -> Length {
        let held = self.events[index + 1..].iter().take_while(|event| event.tie == TieInto::Held);
        let end: Moment = held.last().unwrap_or(&self.events[index]).end;
        end - self.events[index].onset
    }
}

#[cfg(test)]
mod tests;
