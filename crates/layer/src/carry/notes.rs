//! Which note of the new bar is which of the old one.

use std::collections::BTreeMap;

use arcata_score::{Length, Note, NoteId, NoteKind, Part, Score};

use super::align::BarPair;
use crate::address::NamedNote;

/// How well a note was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Fit {
    /// Same offset, length and (transposed) pitch.
    Same,
    /// Another pitch at its offset.
    OtherPitch,
    /// Its pitch at its offset, longer or shorter.
    OtherLength,
    /// Its pitch elsewhere in the bar, once in both.
    Moved,
    /// The same, but what begins together with it is not what it was, so that another note may have come
    /// to look like it.
    OtherChord,
}

/// The notes of both scores by bar.
pub(super) struct NoteFinder<'s> {
    old: &'s Score,
    new: &'s Score,
    /// For each old part: its new part, and how far it was transposed, in cents.
    parts: BTreeMap<usize, (usize, i32)>,
    old_bars: BTreeMap<(usize, u32), Vec<NoteId>>,
    new_bars: BTreeMap<(usize, u32), Vec<NoteId>>,
}

impl<'s> NoteFinder<'s> {
    pub(super) fn new(
        old: &'s Score,
        new: &'s Score,
        parts: &[(usize, usize)],
        pairs: &[Option<BarPair>],
    ) -> Self {
        let (old_bars, new_bars) = (by_bar(old), by_bar(new));
        let mut finder = Self { old, new, parts: BTreeMap::new(), old_bars, new_bars };
        for (part, other) in parts {
            let shift = finder.transposition(*part, *other, pairs);
            finder.parts.insert(*part, (*other, shift));
        }
        finder
    }

    /// How far most notes of a part moved, in cents.
    fn transposition(&self, part: usize, other: usize, pairs: &[Option<BarPair>]) -> i32 {
        let mut counts: BTreeMap<i32, usize> = BTreeMap::new();
        for (bar, pair) in pairs.iter().enumerate() {
            let Some(pair) = pair else { continue };
            let (old_notes, new_notes) = (self.old_notes(part, bar), self.new_notes(other, pair.new));
            for (one, two) in old_notes.iter().zip(new_notes) {
                let (one, two) = (self.old.parts[part].note(*one), self.new.parts[other].note(*two));
                if one.length == two.length
                    && let (Some(from), Some(to)) = (one.pitch.cents(), two.pitch.cents())
                {
                    *counts.entry(to - from).or_default() += 1;
                }
            }
        }
        // Of two shifts as frequent, the smaller.
        counts.into_iter().max_by_key(|(shift, count)| (*count, -shift.abs())).map_or(0, |(shift, _)| shift)
    }

    /// How far each part was transposed, in cents.
    pub(super) fn shifts(&self, parts: &[(usize, usize)]) -> Vec<i32> {
        parts.iter().map(|(part, _)| self.parts.get(part).map_or(0, |(_, shift)| *shift)).collect()
    }

    fn old_notes(&self, part: usize, bar: usize) -> &[NoteId] {
        notes_of(&self.old_bars, part, bar)
    }

    fn new_notes(&self, part: usize, bar: usize) -> &[NoteId] {
        notes_of(&self.new_bars, part, bar)
    }

    /// The note that an old one has become in a new bar.
    pub(super) fn find(&self, old: NamedNote, new_bar: usize) -> Option<(NamedNote, Fit)> {
        let (part, shift) = *self.parts.get(&old.part)?;
        let old_part = &self.old.parts[old.part];
        let note = old_part.note(old.note);
        let old_bar = self.old_notes(old.part, note.bar as usize);
        let candidates = self.new_notes(part, new_bar);
        let described = Described { score: self.old, part: old_part, bar: old_bar };
        let wanted = described.of(old.note)?;
        let new_part = &self.new.parts[part];
        let there = Described { score: self.new, part: new_part, bar: candidates };
        let all: Vec<(NoteId, What<'_>)> =
            candidates.iter().filter_map(|id| Some((*id, there.of(*id)?))).collect();
        let pitch = wanted.cents.map(|cents| cents + shift);
        let at_once = |what: &What<'_>| what.offset == wanted.offset && what.grace == wanted.grace;
        for fit in [Fit::Same, Fit::OtherLength, Fit::OtherPitch] {
            let test = |what: &What<'_>| {
                at_once(what)
                    && (fit == Fit::OtherLength || what.length == wanted.length)
                    && (fit == Fit::OtherPitch || what.cents == pitch)
            };
            let fitting: Vec<&(NoteId, What<'_>)> = all.iter().filter(|(_, what)| test(what)).collect();
            if let Some(note) = nearest(&wanted, &fitting) {
                let same_voice = there.of(note).is_some_and(|what| what.voice == wanted.voice);
                let sure = same_voice && described.together(old.note, 0) == there.together(note, shift);
                let fit = if fit == Fit::Same && !sure { Fit::OtherChord } else { fit };
                return Some((NamedNote { part, note }, fit));
            }
        }
        let moved: Vec<_> =
            all.iter().filter(|(_, what)| what.cents == pitch && what.grace == wanted.grace).collect();
        let once_before = old_bar.iter().filter_map(|id| described.of(*id));
        let once =
            once_before.filter(|what| what.cents == wanted.cents && what.grace == wanted.grace).count() == 1;
        match moved.as_slice() {
            [(note, _)] if once => Some((NamedNote { part, note: *note }, Fit::Moved)),
            _ => None,
        }
    }
}

/// Of several notes that fit, the one in the same voice, with the same count among its doubles.
fn nearest(wanted: &What<'_>, fitting: &[&(NoteId, What<'_>)]) -> Option<NoteId> {
    let same_voice = fitting.iter().filter(|(_, what)| what.voice == wanted.voice);
    let with_copy = same_voice
        .clone()
        .find(|(_, what)| what.copy == wanted.copy && what.cents_below == wanted.cents_below);
    let with_voice = with_copy.or_else(|| same_voice.clone().find(|(_, what)| what.copy == wanted.copy));
    with_voice.or(same_voice.clone().next()).or(fitting.first()).map(|(note, _)| *note)
}

/// What tells a note in its bar.
struct What<'p> {
    offset: Length,
    length: Length,
    cents: Option<i32>,
    voice: &'p str,
    /// Which of the grace notes there.
    grace: Option<usize>,
    /// Which of several that agree in all this.
    copy: usize,
    /// How many notes of its chord lie below it.
    cents_below: usize,
}

struct Described<'s> {
    score: &'s Score,
    part: &'s Part,
    bar: &'s [NoteId],
}

impl<'s> Described<'s> {
    /// The pitches that begin together with a note, whatever voice they are in, taken back by a shift.
    fn together(&self, id: NoteId, shift: i32) -> Vec<(Option<i32>, Length)> {
        let onset = self.part.note(id).onset;
        let notes = self.bar.iter().map(|other| self.part.note(*other)).filter(|other| other.onset == onset);
        let mut pitches: Vec<_> =
            notes.map(|note| (note.pitch.cents().map(|cents| cents - shift), note.length)).collect();
        pitches.sort_unstable();
        pitches
    }

    fn of(&self, id: NoteId) -> Option<What<'s>> {
        let note = self.part.note(id);
        let together = || {
            let same = |other: &&NoteId| {
                let other = self.part.note(**other);
                other.onset == note.onset && other.voice == note.voice
            };
            self.bar.iter().filter(same)
        };
        let grace = is_grace(note)
            .then(|| together().filter(|other| **other <= id && is_grace(self.part.note(**other))).count());
        let alike = |other: &&NoteId| {
            let other = self.part.note(**other);
            other.pitch == note.pitch && is_grace(other) == is_grace(note)
        };
        Some(What {
            offset: self.score.offset_in_bar(note.onset, note.bar),
            length: note.length,
            cents: note.pitch.cents(),
            voice: self.part.voices.get(usize::from(note.voice)).map_or("1", String::as_str),
            grace,
            copy: together().filter(alike).take_while(|other| **other != id).count(),
            cents_below: together()
                .filter(|other| self.part.note(**other).pitch.cents() < note.pitch.cents())
                .count(),
        })
    }
}

fn is_grace(note: &Note) -> bool {
    matches!(note.kind, NoteKind::Grace | NoteKind::SlashedGrace)
}

fn notes_of(bars: &BTreeMap<(usize, u32), Vec<NoteId>>, part: usize, bar: usize) -> &[NoteId] {
    u32::try_from(bar).ok().and_then(|bar| bars.get(&(part, bar))).map_or(&[], Vec::as_slice)
}

/// Sounding notes by part and bar, by onset.
fn by_bar(score: &Score) -> BTreeMap<(usize, u32), Vec<NoteId>> {
    let mut bars: BTreeMap<(usize, u32), Vec<NoteId>> = BTreeMap::new();
    for (index, part) in score.parts.iter().enumerate() {
        for (note, id) in part.notes.iter().zip(0..) {
            if !note.pitch.is_rest() {
                bars.entry((index, note.bar)).or_default().push(NoteId(id));
            }
        }
        for notes in bars.range_mut((index, 0)..=(index, u32::MAX)).map(|(_, notes)| notes) {
            notes.sort_by_key(|id| (part.note(*id).onset, part.note(*id).voice, *id));
        }
    }
    bars
}
