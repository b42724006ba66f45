//! What a bar sounds like, in pieces that can be compared: every note as heard, as a step from the note
//! before it, and as rhythm alone.

use std::hash::Hasher as _;

use arcata_score::{Length, Note, NoteKind, Part, Score};
use rustc_hash::FxHasher;

/// What a note counts where its sound, its step and its rhythm are there again. A transposed note keeps
/// step and rhythm, 3 of 5; a note of another pitch only its rhythm (rule of thumb).
const SOUND: u32 = 2;
/// See [`SOUND`] (rule of thumb).
const STEP: u32 = 2;
/// See [`SOUND`] (rule of thumb).
const RHYTHM: u32 = 1;

/// A piece of a bar's content.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Feature {
    /// What it is: equal numbers are equal pieces. (Two pieces of music share a number with a chance of
    /// one in 2^64.)
    pub(super) key: u64,
    pub(super) weight: u32,
}

/// A part that both scores have.
#[derive(Clone, Copy, Debug)]
pub(super) struct SharedPart {
    /// Its index in this score.
    pub(super) index: usize,
    /// The number that both scores give it.
    pub(super) number: usize,
    /// How far it was transposed, in cents.
    pub(super) shift: i32,
}

/// The pieces of every bar, of the parts that both scores have.
#[derive(Debug)]
pub(super) struct Features {
    pub(super) bars: Vec<Vec<Feature>>,
    /// A number for all that sounds in a bar, whatever comes before it.
    pub(super) whole: Vec<u64>,
}

impl Features {
    /// Of the parts listed, each taken back to where it was before it was transposed.
    pub(super) fn of(score: &Score, parts: &[SharedPart]) -> Self {
        let mut bars: Vec<Vec<Feature>> = vec![Vec::new(); score.bars.len()];
        let mut sounds: Vec<Vec<u64>> = vec![Vec::new(); score.bars.len()];
        for known in parts {
            if let Some(part) = score.parts.get(known.index) {
                add_part(score, part, *known, &mut bars, &mut sounds);
            }
        }
        for bar in &mut bars {
            bar.sort_unstable();
        }
        let whole = sounds.iter_mut().zip(&score.bars).map(|(sounds, bar)| {
            sounds.sort_unstable();
            let mut hash = FxHasher::default();
            write_length(&mut hash, bar.length);
            sounds.iter().for_each(|sound| hash.write_u64(*sound));
            hash.finish()
        });
        let whole = whole.collect();
        Self { bars, whole }
    }
}

/// Notes that are played, by onset.
pub(super) fn played(part: &Part) -> Vec<(usize, &Note)> {
    let mut notes: Vec<(usize, &Note)> = part
        .notes
        .iter()
        .enumerate()
        .filter(|(_, note)| !note.pitch.is_rest() && note.kind != NoteKind::Cue)
        .collect();
    notes.sort_by_key(|(index, note)| (note.onset, note.voice, *index));
    notes
}

fn add_part(
    score: &Score,
    part: &Part,
    known: SharedPart,
    bars: &mut [Vec<Feature>],
    sounds: &mut [Vec<u64>],
) {
    let mut last: Vec<Option<i32>> = vec![None; part.voices.len().max(1)];
    for (_, note) in played(part) {
        let Some(features) = bars.get_mut(note.bar as usize) else { continue };
        let offset = score.offset_in_bar(note.onset, note.bar);
        let cents = note.pitch.cents().map(|cents| cents - known.shift);
        let before = last.get_mut(usize::from(note.voice));
        let step = match (before, cents) {
            (Some(before), Some(cents)) => before.replace(cents).map(|before| cents - before),
            _ => None,
        };
        let key = |kind: u8, pitch: Option<i32>| {
            let mut hash = FxHasher::default();
            hash.write_u8(kind);
            hash.write_usize(known.number);
            write_length(&mut hash, offset);
            write_length(&mut hash, note.length);
            hash.write_i32(pitch.unwrap_or(i32::MIN));
            hash.finish()
        };
        sounds[note.bar as usize].push(key(0, cents));
        features.push(Feature { key: key(0, cents), weight: SOUND });
        features.push(Feature { key: key(1, step), weight: STEP });
        features.push(Feature { key: key(2, None), weight: RHYTHM });
    }
}

fn write_length(hash: &mut FxHasher, length: Length) {
    hash.write_i64(length.numerator());
    hash.write_i64(length.denominator());
}

/// How alike all bars of two scores are.
#[derive(Debug)]
pub(super) struct Likeness {
    pub(super) rows: usize,
    pub(super) columns: usize,
    /// Thousandths, row by row.
    cells: Vec<u16>,
}

/// Two bars in which nobody plays: alike, but nothing to hold on to (rule of thumb).
const BOTH_SILENT: u16 = 400;

impl Likeness {
    /// Of two stretches of bars.
    pub(super) fn of(
        old: (&Features, std::ops::Range<usize>),
        new: (&Features, std::ops::Range<usize>),
    ) -> Self {
        let (old_bars, new_bars) = (&old.0.bars[old.1.clone()], &new.0.bars[new.1.clone()]);
        let mut postings: Vec<(u64, u32)> = Vec::new();
        for (features, bar) in new_bars.iter().zip(0_u32..) {
            postings.extend(features.iter().map(|feature| (feature.key, bar)));
        }
        postings.sort_unstable();
        let total = |bar: &Vec<Feature>| bar.iter().map(|feature| feature.weight).sum::<u32>();
        let totals: Vec<u32> = new_bars.iter().map(total).collect();
        let columns = new_bars.len();
        let mut cells = Vec::with_capacity(old_bars.len() * columns);
        let mut shared = vec![0_u32; columns];
        for bar in old_bars {
            shared.fill(0);
            share(bar, &postings, &mut shared);
            let own = total(bar);
            cells.extend(shared.iter().zip(&totals).map(|(shared, other)| match own + other {
                0 => BOTH_SILENT,
                all => u16::try_from(2000 * shared / all).unwrap_or(1000).min(1000),
            }));
        }
        Self { rows: old_bars.len(), columns, cells }
    }

    pub(super) fn at(&self, row: usize, column: usize) -> i32 {
        i32::from(self.cells[row * self.columns + column])
    }
}

/// Adds up what a bar shares with each of the others; a piece that stands there twice counts twice.
fn share(bar: &[Feature], postings: &[(u64, u32)], shared: &mut [u32]) {
    let mut from = 0;
    while from < bar.len() {
        let feature = bar[from];
        let times = bar[from..].iter().take_while(|other| other.key == feature.key).count();
        from += times;
        let start = postings.partition_point(|(key, _)| *key < feature.key);
        let alike = postings[start..].iter().take_while(|(key, _)| *key == feature.key);
        let (mut bar_now, mut met) = (u32::MAX, 0);
        for (_, other) in alike {
            met = if *other == bar_now { met + 1 } else { 1 };
            bar_now = *other;
            if met <= times {
                shared[*other as usize] += feature.weight;
            }
        }
    }
}
