//! Where moments of the music stand in a drawing.

use std::collections::BTreeMap;
use std::ops::RangeInclusive;

use arcata_score::{Moment, NoteKind, Score};

use crate::{Area, Drawing};

/// Moments and their places, from the first note of a system to its last barline.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Axis {
    /// Places in millimetres from the left, both strictly growing in time and never going back in place.
    places: Vec<(Moment, f64)>,
    /// End of the system.
    end: (Moment, f64),
}

impl Axis {
    /// The axis of a drawing for the strokes of one part: its own notes say where a moment is, other parts
    /// fill in the moments between. `scale` is millimetres a unit.
    pub(crate) fn new(
        drawing: &Drawing,
        score: &Score,
        own: usize,
        parts: &[usize],
        bars: &RangeInclusive<u32>,
        scale: f64,
    ) -> Self {
        let mut known: BTreeMap<Moment, f64> = BTreeMap::new();
        let others = parts.iter().copied().filter(|part| *part != own);
        for part in std::iter::once(own).chain(others) {
            let mut here: BTreeMap<Moment, f64> = BTreeMap::new();
            for note in score.parts.get(part).map_or(&[][..], |part| &part.notes) {
                let bar = score.bars.get(note.bar as usize).filter(|_| bars.contains(&note.bar));
                // A rest over a whole bar stands in its middle.
                let whole = bar.is_some_and(|bar| note.pitch.is_rest() && note.length >= bar.length);
                if bar.is_none() || note.kind != NoteKind::Ordinary || whole {
                    continue;
                }
                if let Some(Area { left, .. }) = drawing.notes.get(&note.node) {
                    let place = here.entry(note.onset).or_insert(*left);
                    *place = place.min(*left);
                }
            }
            for (moment, place) in here {
                known.entry(moment).or_insert(place);
            }
        }
        // A bar without a note of its own begins at the barline before it.
        for (bar, end) in
            bars.clone().zip(&drawing.barlines).skip(1).map(|(bar, _)| bar).zip(&drawing.barlines)
        {
            if let Some(bar) = score.bars.get(bar as usize) {
                known.entry(bar.start).or_insert(*end);
            }
        }
        let mut far = 0.0_f64;
        let places: Vec<(Moment, f64)> = known
            .into_iter()
            .map(|(moment, place)| {
                far = far.max(place * scale);
                (moment, far)
            })
            .collect();
        let last = score.bars.get(*bars.end() as usize);
        let moment = last.map_or(Moment::START, |bar| bar.start + bar.length);
        let end = drawing.barlines.last().map_or(far, |end| end * scale).max(far);
        Self { places, end: (moment, end) }
    }

    /// The left end: the first note.
    pub(crate) fn left(&self) -> f64 {
        self.places.first().map_or(self.end.1, |(_, place)| *place)
    }

    /// The first moment.
    pub(crate) fn begins(&self) -> Moment {
        self.places.first().map_or(self.end.0, |(moment, _)| *moment)
    }

    /// The right end: the last barline.
    pub(crate) fn right(&self) -> f64 {
        self.end.1
    }

    /// The last moment.
    pub(crate) fn ends(&self) -> Moment {
        self.end.0
    }

    /// The place of a moment; between two known ones in proportion.
    pub(crate) fn place(&self, moment: Moment) -> f64 {
        let after = self.places.partition_point(|(known, _)| *known <= moment);
        let Some((before, left)) = after.checked_sub(1).and_then(|index| self.places.get(index)).copied()
        else {
            return self.left();
        };
        let (next, right) = self.places.get(after).copied().unwrap_or(self.end);
        let whole = next.since_start() - before.since_start();
        if !whole.is_positive() {
            return left;
        }
        let share = (moment.since_start() - before.since_start()).to_f64() / whole.to_f64();
        left + (right - left) * share.clamp(0.0, 1.0)
    }
}
