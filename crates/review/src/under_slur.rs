//! Questions about notes, slurs and states that several rules ask.

use arcata_score::{ChordRole, Meaning, Moment, Note, NoteId, NoteKind, Part, Score, Slur, TieEnd};

use crate::Piece;

/// A point in a voice: grace notes stand before the note that they share a moment with.
pub(crate) type VoicePoint = (Moment, u8);

/// Where a note stands in its voice.
pub(crate) fn point(note: &Note) -> VoicePoint {
    let after_grace = u8::from(!matches!(note.kind, NoteKind::Grace | NoteKind::SlashedGrace));
    (note.onset, after_grace)
}

/// The note with this id, when the part has it.
pub(crate) fn note(part: &Part, id: NoteId) -> Option<&Note> {
    part.notes.get(id.0 as usize)
}

/// A slur's two ends, when both notes exist.
pub(crate) fn ends<'a>(part: &'a Part, slur: &Slur) -> Option<(&'a Note, &'a Note)> {
    Some((note(part, slur.start)?, note(part, slur.end)?))
}

/// Solid slurs, with their ends: broken lines are an editor's or phrase marks.
pub(crate) fn solid_slurs(part: &Part) -> impl Iterator<Item = (&Slur, &Note, &Note)> {
    part.slurs
        .iter()
        .filter(|slur| slur.is_bow())
        .filter_map(move |slur| ends(part, slur).map(|(start, end)| (slur, start, end)))
}

/// Whether a note goes on from the one before by a tie.
pub(crate) fn tied_from_before(note: &Note) -> bool {
    matches!(note.tie.from_before, TieEnd::Joined(_))
}

/// Whether a note is played and stands on its own stem: no chord member, no cue, no grace note.
pub(crate) fn is_main(note: &Note) -> bool {
    note.chord == ChordRole::Main && note.kind == NoteKind::Ordinary
}

/// Whether a note is in the file for playback only (the second note of a trill, say) and not printed.
pub(crate) fn is_hidden(piece: &Piece<'_>, part: &Part, id: NoteId) -> bool {
    let element = piece.document.zip(note(part, id)).and_then(|(document, note)| document.element(note.node));
    element.and_then(|element| element.attribute("print-object")).is_some_and(|print| print == "no")
}

/// The notes that stand on their own stem in one voice, in order: no chord members, no cues.
pub(crate) fn main_notes(part: &Part, voice: u16) -> impl Iterator<Item = (NoteId, &Note)> {
    (0u32..).map(NoteId).zip(&part.notes).filter(move |(_, note)| {
        note.voice == voice && note.chord == ChordRole::Main && note.kind != NoteKind::Cue
    })
}

/// How the string is sounded.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum SoundedBy {
    /// With the bow.
    Bowed,
    /// Plucked, said at this moment.
    Plucked(Moment),
}

/// Changes between bow and finger on one staff of a part, in order of time; every movement begins with the bow.
pub(crate) fn sounding_changes(score: &Score, part: &Part, staff: u8) -> Vec<(Moment, SoundedBy)> {
    let on_staff = part.instructions.iter().filter(|said| said.place.staff == 0 || said.place.staff == staff);
    let said = on_staff.filter_map(|said| match said.meaning {
        Meaning::Pizzicato => Some((said.place.at, SoundedBy::Plucked(said.place.at))),
        Meaning::Arco | Meaning::ColLegno | Meaning::ColLegnoBattuto => {
            Some((said.place.at, SoundedBy::Bowed))
        }
        _ => None,
    });
    let starts = score.movements.iter().skip(1);
    let starts = starts.filter_map(|movement| score.bars.get(*movement.bars.start() as usize));
    let mut changes: Vec<(Moment, SoundedBy)> =
        starts.map(|bar| (bar.start, SoundedBy::Bowed)).chain(said).collect();
    // What is said at the start of a movement comes after the start itself.
    changes.sort_by_key(|(at, _)| *at);
    changes
}

/// How the string is sounded at a moment, after the changes given.
pub(crate) fn sounding_at(changes: &[(Moment, SoundedBy)], at: Moment) -> SoundedBy {
    let after = changes.partition_point(|(from, _)| *from <= at);
    after.checked_sub(1).map_or(SoundedBy::Bowed, |index| changes[index].1)
}

/// Whether the players were told to change bow as they like at this moment of the part.
pub(crate) fn free_bowing(part: &Part, at: Moment) -> bool {
    let mut said = part.instructions.iter().filter(|said| said.place.at <= at);
    let last = said.rfind(|said| matches!(said.meaning, Meaning::FreeBowing | Meaning::AsItComes));
    last.is_some_and(|said| said.meaning == Meaning::FreeBowing)
}
