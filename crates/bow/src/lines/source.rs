//! A line together with what it was made from.

use arcata_score::Length;

use super::bows::Going;
use super::events::{Event, Sounding, TieInto};
use super::repeats;
use super::strokes::{Binding, Extent, Maker, Material};
use super::voices::Group;
use crate::{Force, Line, Stroke, Written};

/// A line and the notes it was made from, so that other strokes can be tried on the same notes by the
/// code that made the line.
pub struct LineSource<'a> {
    material: Material<'a>,
    extents: Vec<Extent>,
    line: Line,
}

impl<'a> LineSource<'a> {
    pub(super) fn new(
        material: Material<'a>,
        (part, staff): (usize, u8),
        force: Force,
        group: &Group,
    ) -> Self {
        let Material { reading, part: written, .. } = material;
        let extents = material.extents();
        let (_, strokes) = Maker::new(&material, &extents);
        let first = strokes.first();
        let line = Line {
            part,
            staff,
            voices: group.voices.clone(),
            name: written.name.clone(),
            instrument: written.instrument,
            force,
            repeats: repeats::stretches(reading.score, &reading.tempo, &strokes),
            tempo_written: first.map_or(Written::Assumed, |stroke| reading.tempo.written(stroke.onset)),
            strokes,
        };
        Self { material, extents, line }
    }

    /// The line as printed.
    #[must_use]
    pub fn line(&self) -> &Line {
        &self.line
    }

    /// The line as printed, without what it was made from.
    #[must_use]
    pub fn into_line(self) -> Line {
        self.line
    }

    pub(super) fn line_mut(&mut self) -> &mut Line {
        &mut self.line
    }

    /// For every stroke of the line its events.
    pub(crate) fn extents(&self) -> &[Extent] {
        &self.extents
    }

    /// All events, bowed or not.
    pub(crate) fn events(&self) -> &[Event] {
        &self.material.events.list
    }

    /// Where an event stands in its bar.
    pub(crate) fn offset(&self, event: usize) -> Length {
        let event = &self.events()[event];
        self.material.reading.score.offset_in_bar(event.onset, event.bar)
    }

    /// How an event goes on from the one before it, as printed.
    pub(crate) fn going(&self, event: usize) -> Going {
        self.material.goings[event]
    }

    /// What makes strokes from the notes of this line.
    pub(crate) fn maker(&self) -> Maker<'_> {
        Maker::new(&self.material, &self.extents).0
    }

    /// The line with other strokes on the same notes, in order.
    pub(crate) fn rebuilt(&self, maker: &Maker<'_>, pieces: &[(Extent, Binding)]) -> Line {
        let strokes: Vec<Stroke> = maker.strokes(pieces);
        let reading = self.material.reading;
        let repeats = repeats::stretches(reading.score, &reading.tempo, &strokes);
        Line { strokes, repeats, voices: self.line.voices.clone(), name: self.line.name.clone(), ..self.line }
    }

    /// Whether two neighbouring events are bowed and follow each other without a rest.
    pub(crate) fn is_continuous(&self, event: usize) -> bool {
        let Some([before, after]) = event.checked_sub(1).and_then(|at| self.events().get(at..at + 2)) else {
            return false;
        };
        [before, after].iter().all(|event| event.stroke == Sounding::Bowed) && before.end == after.onset
    }

    /// Whether an event is held over by a tie from the one before it.
    pub(crate) fn is_tied(&self, event: usize) -> bool {
        self.events()[event].tie == TieInto::Held
    }

    /// Whether two neighbouring events sound the same pitches, so that a slur would read as a tie.
    pub(crate) fn repeats_pitch(&self, event: usize) -> bool {
        let part = self.material.part;
        let pitches = |event: &Event| -> Vec<_> {
            let ordinary = event.notes.iter().map(|id| part.note(*id)).filter(|note| !note.length.is_zero());
            ordinary.map(|note| note.pitch).collect()
        };
        let (before, after) = (pitches(&self.events()[event - 1]), pitches(&self.events()[event]));
        before.iter().all(|pitch| after.contains(pitch)) || after.iter().all(|pitch| before.contains(pitch))
    }
}
