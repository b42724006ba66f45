//! Where the printed marks of a part stand.

use std::collections::BTreeMap;

use arcata_score::{BowDirection, Note, NoteId, Part, Score, TieEnd};

use super::{AuditedMark, MarkReason};
use crate::techniques::{Contact, Techniques};
use crate::{Line, StrokeKind};

/// A printed mark, before it is known what it is for.
pub(super) struct MarkPlace {
    pub(super) part: usize,
    pub(super) note: NoteId,
    pub(super) stroke: Option<(usize, usize)>,
    pub(super) direction: BowDirection,
    /// What the place alone says of it; none where it begins a stroke.
    pub(super) trouble: Option<MarkReason>,
}

impl MarkPlace {
    /// The mark, with why it is there.
    pub(super) const fn audited(&self, reason: MarkReason) -> AuditedMark {
        let Self { part, note, stroke, direction, .. } = *self;
        AuditedMark { part, note, stroke, direction, reason }
    }
}

/// Every mark of a part, in the order of its notes.
pub(super) fn places(score: &Score, part_index: usize, lines: &[Line]) -> Vec<MarkPlace> {
    let Some(part) = score.parts.get(part_index) else { return Vec::new() };
    let strokes = strokes_by_note(part_index, lines);
    let techniques: Vec<Techniques> =
        (1..=part.staves.max(1)).map(|staff| Techniques::new(score, part, staff)).collect();
    let mut places = Vec::new();
    for (id, note) in (0u32..).map(NoteId).zip(&part.notes) {
        let marks = note.bow_mark.iter().chain(&note.more_bow_marks);
        let stroke = strokes.get(&id).copied();
        let changes = note.both_bows().is_some();
        let both = !changes
            && note
                .more_bow_marks
                .iter()
                .any(|more| note.bow_mark.is_some_and(|mark| mark.direction != more.direction));
        let last = stroke;
        for (nth, mark) in marks.enumerate() {
            // A note on which the bow changes is in two strokes: the first sign is that of the first.
            let stroke =
                if changes && nth == 0 { last.and_then(|last| before(id, last, lines)) } else { last };
            let plucked = techniques
                .get(usize::from(note.staff.max(1)) - 1)
                .is_some_and(|states| states.at(note.onset).contact == Contact::Pizzicato);
            let trouble = if both {
                Some(MarkReason::BothBows)
            } else if note.pitch.is_rest() {
                Some(MarkReason::OnRest)
            } else {
                match stroke {
                    None if plucked => Some(MarkReason::Plucked),
                    None => Some(MarkReason::NotBowed),
                    Some((line, index)) => in_stroke(part, note, mark.direction, &lines[line], index),
                }
            };
            places.push(MarkPlace { part: part_index, note: id, stroke, direction: mark.direction, trouble });
        }
    }
    places
}

/// The stroke before, if it has the note, too.
fn before(id: NoteId, (line, index): (usize, usize), lines: &[Line]) -> Option<(usize, usize)> {
    let index = index.checked_sub(1)?;
    lines[line].strokes[index].notes.contains(&id).then_some((line, index))
}

/// What is wrong with a mark on a note of a stroke; nothing where it begins it.
fn in_stroke(
    part: &Part,
    marked: &Note,
    direction: BowDirection,
    line: &Line,
    index: usize,
) -> Option<MarkReason> {
    let stroke = &line.strokes[index];
    let first = stroke.notes.first().and_then(|id| part.notes.get(id.0 as usize))?;
    if marked.onset <= first.onset {
        let other = stroke.printed.is_some_and(|printed| printed != direction);
        return other.then_some(MarkReason::BothBows);
    }
    if stroke.kind == StrokeKind::Pulsed && stroke.printed == Some(direction) {
        Some(MarkReason::SpeltOut)
    } else if matches!(marked.tie.from_before, TieEnd::Joined(_)) {
        Some(MarkReason::TiedFromBefore)
    } else {
        Some(MarkReason::InsideSlur)
    }
}

/// The stroke each note belongs to, the last one where there are two: (line, stroke).
fn strokes_by_note(part: usize, lines: &[Line]) -> BTreeMap<NoteId, (usize, usize)> {
    let lines = lines.iter().enumerate().filter(|(_, line)| line.part == part);
    lines
        .flat_map(|(at, line)| {
            let strokes = line.strokes.iter().enumerate();
            strokes.flat_map(move |(index, stroke)| stroke.notes.iter().map(move |id| (*id, (at, index))))
        })
        .collect()
}
