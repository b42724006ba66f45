//! A change of the slurs, as the file must be changed for it.

use arcata_bow::plan::{ChangeKind, NotationChange};
use arcata_score::{ChordRole, NoteId, NoteKind, Part, Slur};

use crate::change::Change;
use crate::under_slur::{note, point, tied_from_before};

/// Slur numbers that MusicXML has.
const NUMBERS: std::ops::RangeInclusive<u8> = 1..=16;

/// The changes to the elements; `None` where it takes more than one slur of a voice on each side (double
/// stops in two voices), where a tie stands in the way, or where it has no sign of its own: a hook, a
/// change of bow on a held note.
pub(crate) fn changes(part: &Part, change: &NotationChange) -> Option<Vec<Change>> {
    let here = change.note;
    let before = note_before(part, here)?;
    let (over, ends, begins) = (over(part, before, here)?, ending(part, before)?, beginning(part, here)?);
    let slur = || over.or(ends).or(begins);
    match change.kind {
        ChangeKind::Split => {
            let slur = over?;
            let first = (slur.start != before).then(|| edge(part, &slur, before, "stop"));
            let second = (slur.end != here).then(|| edge(part, &slur, here, "start"));
            let gone_start = (slur.start == before).then_some(Change::Remove(slur.start_node));
            let gone_end = (slur.end == here).then_some(Change::Remove(slur.end_node));
            let edges = [first, second].into_iter().flatten().collect::<Option<Vec<_>>>()?;
            Some(gone_start.into_iter().chain(gone_end).chain(edges).collect())
        }
        ChangeKind::EndEarlier => end_at(part, &over.filter(|slur| slur.end == here)?, before),
        ChangeKind::BeginLater => begin_at(part, &over.filter(|slur| slur.start == before)?, here),
        ChangeKind::EndLater => end_at(part, &ends?, here),
        ChangeKind::BeginEarlier => begin_at(part, &begins?, before),
        ChangeKind::JoinNotes if slur().is_none() => {
            let number = free_number(part, before, here)?;
            let fresh = |id: NoteId, edge: &str| slur_edge(part, id, number, edge);
            Some(vec![fresh(before, "start")?, fresh(here, "stop")?])
        }
        ChangeKind::JoinSlurs => {
            let (first, second) = (ends?, begins?);
            let mut joined = vec![Change::Remove(first.end_node), Change::Remove(second.start_node)];
            if first.number != second.number {
                joined.push(Change::Remove(second.end_node));
                joined.push(edge(part, &first, second.end, "stop")?);
            }
            Some(joined)
        }
        ChangeKind::HandOverLater => {
            let second = over.filter(|slur| slur.start == before)?;
            let first = ending(part, note_before(part, before)?)??;
            let mut both = end_at(part, &first, before)?;
            both.extend(begin_at(part, &second, here)?);
            Some(both)
        }
        ChangeKind::HandOverEarlier => {
            let next = note_after(part, here)?;
            let (first, second) = (over.filter(|slur| slur.end == here)?, beginning(part, next)??);
            let mut both = end_at(part, &first, before)?;
            both.extend(begin_at(part, &second, here)?);
            Some(both)
        }
        ChangeKind::JoinNotes | ChangeKind::SplitTie | ChangeKind::Hook => None,
    }
}

/// A slur that ends on another note.
fn end_at(part: &Part, slur: &Slur, last: NoteId) -> Option<Vec<Change>> {
    if slur.start == last {
        return Some(vec![Change::Remove(slur.start_node), Change::Remove(slur.end_node)]);
    }
    Some(vec![Change::Remove(slur.end_node), edge(part, slur, last, "stop")?])
}

/// A slur that begins on another note.
fn begin_at(part: &Part, slur: &Slur, first: NoteId) -> Option<Vec<Change>> {
    if slur.end == first {
        return Some(vec![Change::Remove(slur.start_node), Change::Remove(slur.end_node)]);
    }
    Some(vec![Change::Remove(slur.start_node), edge(part, slur, first, "start")?])
}

fn edge(part: &Part, slur: &Slur, id: NoteId, edge: &str) -> Option<Change> {
    slur_edge(part, id, slur.number, edge)
}

fn slur_edge(part: &Part, id: NoteId, number: u8, edge: &str) -> Option<Change> {
    let xml = format!("<slur number=\"{number}\" type=\"{edge}\"/>");
    note(part, id).map(|note| Change::Notation { note: note.node, xml })
}

/// The one solid slur that holds both notes; an inner `None` where there is none, an outer one where
/// there are several.
fn over(part: &Part, before: NoteId, here: NoteId) -> Option<Option<Slur>> {
    let voice = note(part, here)?.voice;
    only(part, |slur| {
        let ends = note(part, slur.start).zip(note(part, slur.end));
        let (Some((start, end)), Some(left), Some(right)) = (ends, note(part, before), note(part, here))
        else {
            return false;
        };
        start.voice == voice && point(start) <= point(left) && point(end) >= point(right)
    })
}

/// The one solid slur that ends on a note, told as in [`over`].
fn ending(part: &Part, id: NoteId) -> Option<Option<Slur>> {
    only(part, |slur| slur.end == id)
}

/// The one solid slur that begins on a note, told as in [`over`].
fn beginning(part: &Part, id: NoteId) -> Option<Option<Slur>> {
    only(part, |slur| slur.start == id)
}

/// The slur of a grace note to the note that it stands before is none of these: it says nothing of the bow.
fn only(part: &Part, fits: impl Fn(&Slur) -> bool) -> Option<Option<Slur>> {
    let moves = |slur: &Slur| {
        let ends = note(part, slur.start).zip(note(part, slur.end));
        ends.is_some_and(|(start, end)| start.onset != end.onset)
    };
    let mut found = part.slurs.iter().filter(|slur| slur.is_bow() && moves(slur) && fits(slur));
    let first = found.next().copied();
    found.next().is_none().then_some(first)
}

/// The note of the same voice before one, without ties between.
fn note_before(part: &Part, id: NoteId) -> Option<NoteId> {
    let here = note(part, id)?;
    let earlier = part.notes.get(..id.0 as usize)?;
    let at = earlier.iter().rposition(|note| stands_alone(note, here.voice))?;
    let before = NoteId(u32::try_from(at).ok()?);
    (!tied_from_before(here) && !note(part, before)?.pitch.is_rest()).then_some(before)
}

/// The note of the same voice after one, without ties between.
fn note_after(part: &Part, id: NoteId) -> Option<NoteId> {
    let voice = note(part, id)?.voice;
    let at = id.0 as usize + 1;
    let later = part.notes.get(at..)?;
    let next = at + later.iter().position(|note| stands_alone(note, voice))?;
    let after = note(part, NoteId(u32::try_from(next).ok()?))?;
    (!tied_from_before(after) && !after.pitch.is_rest()).then_some(NoteId(u32::try_from(next).ok()?))
}

fn stands_alone(note: &arcata_score::Note, voice: u16) -> bool {
    note.voice == voice && note.chord == ChordRole::Main && note.kind != NoteKind::Cue
}

/// The smallest number that no slur of the part bears in the bars of two notes and the ones between.
fn free_number(part: &Part, from: NoteId, to: NoteId) -> Option<u8> {
    let (first, last) = (note(part, from)?.bar, note(part, to)?.bar);
    let touches = |slur: &Slur| {
        let ends = note(part, slur.start).zip(note(part, slur.end));
        ends.is_none_or(|(start, end)| start.bar <= last && end.bar >= first)
    };
    let open = |number: u8| part.open_slurs.iter().any(|slur| slur.number == number);
    NUMBERS.into_iter().find(|number| {
        !open(*number) && !part.slurs.iter().any(|slur| slur.number == *number && touches(slur))
    })
}
