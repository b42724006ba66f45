//! A line together with what it was made from.

use arcata_score::{Beginning, Length, Moment, NoteId, NoteKind};

use super::bows::Going;
use super::events::{Event, Sounding, TieInto};
use super::repeats;
use super::strokes::{Binding, Extent, Material, StrokeMaker};
use super::voices::VoiceGroup;
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
        group: &VoiceGroup,
    ) -> Self {
        let Material { reading, part: written, .. } = material;
        let extents = material.extents();
        let (_, strokes) = StrokeMaker::new(&material, &extents);
        let first = strokes.first();
        let mut line = Line {
            movement: reading.index,
            part,
            staff,
            voices: group.voices.clone(),
            name: written.name.clone(),
            instrument: written.instrument,
            force,
            repeats: repeats::stretches(&reading.score, &reading.tempo, &strokes),
            tempo_written: first.map_or(Written::Assumed, |stroke| reading.tempo.written(stroke.onset)),
            strokes,
        };
        line.strokes.iter_mut().for_each(|stroke| in_whole(stroke, part, &reading.beginning));
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

    /// All events, bowed or not, in the bars, moments and notes of the movement alone.
    pub(crate) fn events(&self) -> &[Event] {
        &self.material.events.list
    }

    /// When an event begins, in the whole score.
    pub(crate) fn onset(&self, event: usize) -> Moment {
        self.material.reading.beginning.moment(self.events()[event].onset)
    }

    /// An event's bar in the whole score, where it stands in it, and its first note.
    pub(crate) fn place(&self, event: usize) -> (u32, Length, NoteId) {
        let event = &self.events()[event];
        let reading = self.material.reading;
        let note = reading.beginning.note(self.line.part, event.notes[0]);
        (event.bar + reading.beginning.bar, reading.score.offset_in_bar(event.onset, event.bar), note)
    }

    /// How an event goes on from the one before it, as printed.
    pub(crate) fn going(&self, event: usize) -> Going {
        self.material.goings[event]
    }

    /// What makes strokes from the notes of this line.
    pub(crate) fn maker(&self) -> StrokeMaker<'_> {
        StrokeMaker::new(&self.material, &self.extents).0
    }

    /// The line with other strokes on the same notes, in order.
    pub(crate) fn rebuilt(&self, maker: &StrokeMaker<'_>, pieces: &[(Extent, Binding)]) -> Line {
        let mut strokes: Vec<Stroke> = maker.strokes(pieces);
        let reading = self.material.reading;
        let repeats = repeats::stretches(&reading.score, &reading.tempo, &strokes);
        strokes.iter_mut().for_each(|stroke| in_whole(stroke, self.line.part, &reading.beginning));
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

    /// Whether grace notes stand between an event and the one before it.
    pub(crate) fn graces_between(&self, event: usize) -> bool {
        let part = self.material.part;
        let is_grace = |id: Option<&NoteId>| id.is_some_and(|id| part.note(*id).kind != NoteKind::Ordinary);
        let before = event.checked_sub(1).and_then(|before| self.events().get(before));
        is_grace(self.events()[event].notes.first())
            || is_grace(before.and_then(|before| before.notes.last()))
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

impl Line {
    /// Whether two lines are read by the same player: one movement, part, staff and voices.
    #[must_use]
    pub fn is_of(&self, other: &Self) -> bool {
        (self.movement, self.part, self.staff, &self.voices)
            == (other.movement, other.part, other.staff, &other.voices)
    }

    /// The line of a movement as if the movement were alone in its file: its strokes in the bars, moments and notes
    /// that are counted from where it begins.
    #[must_use]
    pub fn alone(&self, beginning: &Beginning) -> Self {
        let mut alone = Self { movement: 0, ..self.clone() };
        for stroke in &mut alone.strokes {
            stroke.bar = stroke.bar.saturating_sub(beginning.bar);
            stroke.onset = beginning.moment_alone(stroke.onset);
            for note in &mut stroke.notes {
                *note = beginning.note_alone(self.part, *note);
            }
        }
        alone
    }
}

/// Says a stroke of a movement in the bars, moments and notes of the whole score.
fn in_whole(stroke: &mut Stroke, part: usize, beginning: &Beginning) {
    stroke.bar += beginning.bar;
    stroke.onset = beginning.moment(stroke.onset);
    for note in &mut stroke.notes {
        *note = beginning.note(part, *note);
    }
}
