//! Which voices of a staff one player reads together.

use arcata_score::{ChordRole, Length, Moment, Note, NoteId, NoteKind, Part, Pitch, Score};

use crate::Force;
use crate::techniques::{Division, Techniques};

/// The notes of one line, by onset, graces before the notes they belong to.
#[derive(Clone, Debug, Default)]
pub(super) struct VoiceGroup {
    pub(super) voices: Vec<u16>,
    pub(super) notes: Vec<NoteId>,
}

impl VoiceGroup {
    fn take(&mut self, voice: u16, notes: &[NoteId]) {
        if !self.voices.contains(&voice) {
            self.voices.push(voice);
        }
        self.notes.extend_from_slice(notes);
    }
}

fn sounds(note: &Note) -> bool {
    note.kind != NoteKind::Cue && matches!(note.pitch, Pitch::Pitched { .. } | Pitch::Unpitched)
}

/// The lines of a staff. Every sounding note goes to exactly one of them.
pub(super) fn groups(
    score: &Score,
    part: &Part,
    staff: u8,
    force: Force,
    techniques: &Techniques,
) -> Vec<VoiceGroup> {
    let ids: Vec<NoteId> = (0u32..)
        .zip(&part.notes)
        .filter(|(_, note)| sounds(note) && (note.staff == staff || part.staves <= 1))
        .map(|(index, _)| NoteId(index))
        .collect();
    let mut ranks: Vec<u16> = Vec::new();
    for id in &ids {
        let voice = part.note(*id).voice;
        if !ranks.contains(&voice) {
            ranks.push(voice);
        }
    }
    // By name: the order in which voices appear in a file depends on what stands before this movement.
    let name = |voice: u16| part.voices.get(usize::from(voice)).map_or("", String::as_str);
    ranks.sort_by_key(|voice| (name(*voice).parse::<u32>().unwrap_or(u32::MAX), name(*voice), *voice));
    if ranks.len() < 2 {
        let group = VoiceGroup { voices: ranks, notes: ids };
        return if group.notes.is_empty() { Vec::new() } else { vec![group] };
    }
    let mut groups = vec![VoiceGroup::default(); ranks.len()];
    for bar in ids.chunk_by(|a, b| part.note(*a).bar == part.note(*b).bar) {
        let division = division(score, part, techniques, bar);
        share_out(part, (force, division), &ranks, bar, &mut groups);
    }
    for group in &mut groups {
        group.notes.sort_by_key(|id| (part.note(*id).onset, *id));
        group.voices.sort_unstable();
    }
    groups.retain(|group| !group.notes.is_empty());
    groups
}

/// Whether the part is divided at its first note in a bar.
fn division(score: &Score, part: &Part, techniques: &Techniques, bar: &[NoteId]) -> Division {
    bar.first().map_or(Division::Together, |id| {
        let note = part.note(*id);
        let from = score.bars.get(note.bar as usize).map_or(note.onset, |bar| bar.start);
        techniques.at(from.max(note.onset)).division
    })
}

fn share_out(
    part: &Part,
    (force, division): (Force, Division),
    ranks: &[u16],
    bar: &[NoteId],
    groups: &mut [VoiceGroup],
) {
    let mut leader: Option<Vec<(Moment, Length)>> = None;
    for (rank, voice) in ranks.iter().enumerate() {
        let notes: Vec<NoteId> = bar.iter().copied().filter(|id| part.note(*id).voice == *voice).collect();
        if notes.is_empty() {
            continue;
        }
        let rhythm = rhythm(part, &notes);
        let owner = match (&leader, division, force) {
            (_, Division::Divided, _) => rank,
            // Alone, a player has but one bow for all voices.
            (None, _, _) | (_, _, Force::Solo) => 0,
            (Some(leading), _, Force::Section) if *leading == rhythm => 0,
            (Some(_), _, Force::Section) => rank,
        };
        leader.get_or_insert(rhythm);
        groups[owner].take(*voice, &notes);
    }
}

fn rhythm(part: &Part, notes: &[NoteId]) -> Vec<(Moment, Length)> {
    notes
        .iter()
        .map(|id| part.note(*id))
        .filter(|note| note.kind == NoteKind::Ordinary && note.chord == ChordRole::Main)
        .map(|note| (note.onset, note.length))
        .collect()
}
