//! Where the bow may be changed in a bar.

use std::collections::BTreeMap;

use arcata_score::{ChordRole, Length, NoteId, NoteKind, Part, Score, TieEnd};

/// A stroke's beginning in a bar, as the bow sees it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Onset {
    pub(super) note: NoteId,
    pub(super) offset: Length,
    pub(super) length: Length,
    pub(super) cents: Option<i32>,
    /// Whether a slur or a tie leads into it.
    pub(super) led_into: Led,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Led {
    No,
    BySlur,
    ByTie,
}

/// The onsets of every bar of a part's first sounding voice there, chords once, grace notes aside.
pub(super) fn onsets(score: &Score, part: &Part) -> Vec<Vec<Onset>> {
    let mut bars: Vec<BTreeMap<(Length, NoteId), Onset>> = vec![BTreeMap::new(); score.bars.len()];
    let mut voices: Vec<Option<u16>> = vec![None; score.bars.len()];
    let slurred = slurred_into(part);
    for (index, (note, id)) in part.notes.iter().zip(0..).enumerate() {
        let plain = note.kind == NoteKind::Ordinary && note.chord == ChordRole::Main && !note.pitch.is_rest();
        let Some(bar) = bars.get_mut(note.bar as usize).filter(|_| plain) else { continue };
        if *voices[note.bar as usize].get_or_insert(note.voice) != note.voice {
            continue;
        }
        let offset = score.offset_in_bar(note.onset, note.bar);
        let led_into = match (note.tie.from_before, slurred[index]) {
            (TieEnd::Joined(_), _) => Led::ByTie,
            (_, true) => Led::BySlur,
            _ => Led::No,
        };
        let cents = note.pitch.cents().map(|cents| cents + part.transpose_cents);
        let onset = Onset { note: NoteId(id), offset, length: note.length, cents, led_into };
        bar.insert((offset, NoteId(id)), onset);
    }
    bars.into_iter().map(|bar| bar.into_values().collect()).collect()
}

/// For each note whether a slur leads into it.
fn slurred_into(part: &Part) -> Vec<bool> {
    let mut led = vec![false; part.notes.len()];
    let mut by_onset: Vec<usize> = (0..part.notes.len()).collect();
    by_onset.sort_by_key(|index| (part.notes[*index].onset, *index));
    for slur in &part.slurs {
        let (start, end) = (part.note(slur.start), part.note(slur.end));
        let from = by_onset.partition_point(|index| part.notes[*index].onset <= start.onset);
        let under = by_onset[from..].iter().take_while(|index| part.notes[**index].onset <= end.onset);
        for index in under.filter(|index| part.notes[**index].voice == start.voice) {
            led[*index] = true;
        }
    }
    led
}
