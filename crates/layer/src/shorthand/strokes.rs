//! Where strokes begin in a part, for marks that are typed.

use std::collections::{BTreeMap, BTreeSet};

use arcata_score::{ChordRole, Length, Note, NoteId, NoteKind, Part, Score, TieEnd};

/// The notes of a part that a bow mark can stand on.
pub(super) struct Strokes {
    /// Every sounding note in its own time, chords once, by bar and offset.
    notes: Vec<StrokeBeginning>,
    /// Where in that list a note of the part stands.
    index: BTreeMap<NoteId, usize>,
}

/// A note and how its stroke begins.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct StrokeBeginning {
    pub(super) note: NoteId,
    pub(super) bar: u32,
    pub(super) offset: Length,
    pub(super) voice: u16,
    /// The note under whose slur or tie it lies, if it does.
    pub(super) inside: Option<NoteId>,
}

/// Slurs that the text takes off, puts on or moves: start and end.
#[derive(Clone, Debug, Default)]
pub(super) struct SlurChanges {
    pub(super) gone: BTreeSet<(NoteId, NoteId)>,
    pub(super) new: Vec<(NoteId, NoteId)>,
}

impl Strokes {
    /// Looks through a part, its slurs changed as the text wants.
    pub(super) fn new(score: &Score, part: &Part, changes: &SlurChanges) -> Self {
        let mut inside: BTreeMap<NoteId, NoteId> = BTreeMap::new();
        for voice in 0..part.voices.len().max(1) {
            let voice = u16::try_from(voice).unwrap_or(u16::MAX);
            under_slurs(part, voice, changes, &mut inside);
        }
        let played = |note: &Note| is_played(note) && note.chord == ChordRole::Main;
        let notes = part.notes.iter().zip(0..).filter(|(note, _)| played(note)).map(|(note, index)| {
            let id = NoteId(index);
            let tied = match note.tie.from_before {
                TieEnd::Joined(before) => Some(before),
                TieEnd::None | TieEnd::Open => None,
            };
            StrokeBeginning {
                note: id,
                bar: note.bar,
                offset: score.offset_in_bar(note.onset, note.bar),
                voice: note.voice,
                inside: inside.get(&id).copied().or(tied),
            }
        });
        let mut notes: Vec<StrokeBeginning> = notes.collect();
        notes.sort_by_key(|note| (note.bar, note.offset, note.voice, note.note));
        let index = notes.iter().enumerate().map(|(at, note)| (note.note, at)).collect();
        Self { notes, index }
    }

    /// The notes of a bar in the voice that was named, or in the first that sounds there.
    pub(super) fn in_bar(&self, bar: u32, voice: Option<u16>) -> Vec<StrokeBeginning> {
        let from = self.notes.partition_point(|note| note.bar < bar);
        let to = self.notes.partition_point(|note| note.bar <= bar);
        let here = &self.notes[from..to];
        let voice = voice.or_else(|| here.iter().map(|note| note.voice).min());
        here.iter().filter(|note| Some(note.voice) == voice).copied().collect()
    }

    /// Strokes that begin from one place to another, both counted; the last place may be open.
    pub(super) fn between(
        &self,
        from: (u32, Length),
        to: (u32, Option<Length>),
        voice: Option<u16>,
    ) -> Vec<StrokeBeginning> {
        let within = |note: &StrokeBeginning| {
            (note.bar, note.offset) >= from
                && (note.bar < to.0 || to.1.is_none_or(|offset| note.offset <= offset))
        };
        let begins = |note: &StrokeBeginning| note.inside.is_none() && within(note);
        (from.0..=to.0).flat_map(|bar| self.in_bar(bar, voice)).filter(begins).collect()
    }

    /// A note's stroke and those after it, as many as asked for, as far as the part goes.
    pub(super) fn after(
        &self,
        first: StrokeBeginning,
        count: usize,
        voice: Option<u16>,
    ) -> Vec<StrokeBeginning> {
        let last = self.notes.last().map_or(0, |note| note.bar);
        let here = (first.bar, first.offset);
        let later = (first.bar..=last)
            .flat_map(|bar| {
                let kept = if bar == first.bar { Some(first.voice) } else { voice };
                self.in_bar(bar, kept)
            })
            .filter(|note| note.inside.is_none() && (note.bar, note.offset) > here);
        std::iter::once(first).chain(later).take(count).collect()
    }

    /// The entry for a note.
    pub(super) fn of(&self, note: NoteId) -> Option<StrokeBeginning> {
        self.index.get(&note).map(|at| self.notes[*at])
    }
}

/// Whether a note sounds in its own time.
pub(super) fn is_played(note: &Note) -> bool {
    note.kind == NoteKind::Ordinary && !note.pitch.is_rest()
}

/// Notes of a voice that lie under a slur behind its first note. A slur that holds another one whole is a
/// phrase mark: the inner ones are bows.
fn under_slurs(part: &Part, voice: u16, changes: &SlurChanges, inside: &mut BTreeMap<NoteId, NoteId>) {
    let of_voice = |note: NoteId| part.notes.get(note.0 as usize).is_some_and(|note| note.voice == voice);
    let printed = part.slurs.iter().map(|slur| (slur.start, slur.end));
    let mut slurs: Vec<(NoteId, NoteId)> = printed
        .filter(|slur| !changes.gone.contains(slur))
        .chain(changes.new.iter().copied())
        .filter(|(start, _)| of_voice(*start))
        .collect();
    slurs.sort_by_key(|(start, end)| (*start, std::cmp::Reverse(*end)));
    slurs.dedup();
    let mut least_end = None;
    let mut bows = Vec::new();
    for (start, end) in slurs.into_iter().rev() {
        if least_end.is_none_or(|least| end < least) {
            bows.push((start, end));
            least_end = Some(end);
        }
    }
    let mut bows = bows.into_iter().rev().peekable();
    let mut cover: Option<(NoteId, NoteId)> = None;
    for (note, id) in part.notes.iter().zip(0..).map(|(note, index)| (note, NoteId(index))) {
        if note.voice != voice {
            continue;
        }
        if let Some((start, end)) = cover
            && id > start
            && id <= end
            && is_played(note)
        {
            inside.insert(id, start);
        }
        while let Some(bow) = bows.next_if(|(start, _)| *start <= id) {
            if cover.is_none_or(|(_, end)| bow.1 > end) {
                cover = Some(bow);
            }
        }
    }
}
