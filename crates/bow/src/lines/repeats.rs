//! Repeated stretches of strokes, from the sections of the score that are played again.

use arcata_score::{Moment, Score};

use super::road::{Section, sections};
use crate::timing::TempoMap;
use crate::{LaterEnding, RealTime, RepeatedStretch, Stroke};

/// The repeated stretches of a line: those between repeat signs in the order in which they end, then those
/// that da capo and dal segno send back over. A section in which the line has nothing to bow makes none.
pub(super) fn stretches(score: &Score, tempo: &TempoMap, strokes: &[Stroke]) -> Vec<RepeatedStretch> {
    let measure = Measure { tempo, strokes };
    let sections = sections(score);
    let stretches = sections.iter().filter_map(|section| measure.stretch(section));
    stretches.filter(|stretch| stretch.is_sound(strokes.len())).collect()
}

struct Measure<'a> {
    tempo: &'a TempoMap,
    strokes: &'a [Stroke],
}

impl Measure<'_> {
    fn stretch(&self, section: &Section) -> Option<RepeatedStretch> {
        let (first, body_end) = (self.from(section.begin), self.from(section.body_end));
        let beginning = self.strokes.get(first)?;
        let lead_in = self.tempo.between(section.begin, beginning.onset.max(section.begin)).micros;
        let last_of_body = body_end.checked_sub(1)?;
        let body_rest = self.rest(last_of_body, section.body_end);
        let mut left = section.body_end;
        let mut endings = Vec::with_capacity(section.turns.len());
        for end in &section.turns {
            let strokes = self.from(*end) - self.from(left);
            let last = self.from(*end).checked_sub(1)?;
            let rest = if strokes == 0 {
                body_rest + self.tempo.between(left, *end).micros
            } else {
                self.rest(last, *end)
            };
            let behind = self.strokes.get(self.from(*end));
            let entry = behind.map_or(0, |stroke| self.tempo.between(*end, stroke.onset).micros);
            endings.push(LaterEnding {
                strokes,
                silence_at_turn: RealTime::from_micros(rest + lead_in),
                silence_at_skip: RealTime::from_micros(body_rest + entry),
            });
            left = *end;
        }
        let ending = endings.first().copied()?;
        Some(RepeatedStretch {
            first,
            body_end,
            first_ending_end: body_end + ending.strokes,
            silence_at_turn: ending.silence_at_turn,
            silence_at_skip: ending.silence_at_skip,
            later_endings: endings.split_off(1),
            road: section.road,
            onward: section.onward,
        })
    }

    /// The first stroke that begins at a moment or after it.
    fn from(&self, moment: Moment) -> usize {
        self.strokes.partition_point(|stroke| stroke.onset < moment)
    }

    /// Silence between the end of a stroke and a moment, microseconds.
    fn rest(&self, stroke: usize, moment: Moment) -> i64 {
        let end = self.strokes.get(stroke).map_or(moment, |stroke| stroke.onset + stroke.length);
        self.tempo.between(end.min(moment), moment).micros
    }
}
