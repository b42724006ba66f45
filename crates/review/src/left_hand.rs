//! Questions about the left hand that several rules ask.

use arcata_bow::{Line, Stroke};
use arcata_hand::{Fingerboard, Strings};
use arcata_score::{Arpeggio, Harmonic, Instrument, Moment, Note, NoteId, NoteKind, Notehead, Part};

use crate::Piece;
use crate::under_slur::{note, tied_from_before};

/// Notes that one hand sounds together.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Chord {
    /// When.
    pub(crate) at: Moment,
    /// The notes that begin there.
    pub(crate) notes: Vec<NoteId>,
    /// Their sounding pitches, cents, lowest first, none twice.
    pub(crate) pitches: Vec<i32>,
    /// Whether it is written to be rolled or broken.
    pub(crate) broken: bool,
}

/// The strings of a part: a bass that is asked for less than E has an extension or a fifth string.
pub(crate) fn fingerboard(piece: &Piece<'_>, part: &Part) -> Option<Fingerboard> {
    let four = Fingerboard::new(part.instrument, Strings::Four, piece.profile)?;
    let low = part.instrument == Instrument::Bass
        && part.notes.iter().any(|note| sounding(part, note).is_some_and(|pitch| pitch < four.lowest()));
    if low { Fingerboard::new(part.instrument, Strings::Five, piece.profile) } else { Some(four) }
}

/// What a note sounds, cents; nothing for what no finger stops where it stands: harmonics, cross heads.
pub(crate) fn sounding(part: &Part, note: &Note) -> Option<i32> {
    let stopped = note.kind != NoteKind::Cue
        && note.technical.harmonic == Harmonic::None
        && note.notehead == Notehead::Ordinary;
    note.pitch.cents().filter(|_| stopped).map(|cents| cents + part.transpose_cents)
}

/// The chords and single notes of a stroke in order; empty where one of its notes is a harmonic or the like, since
/// the hand then does something that is not known here.
pub(crate) fn chords(part: &Part, stroke: &Stroke) -> Vec<Chord> {
    let mut chords: Vec<Chord> = Vec::new();
    for id in &stroke.notes {
        let Some(one) = note(part, *id) else { continue };
        if matches!(one.kind, NoteKind::Grace | NoteKind::SlashedGrace) || one.pitch.is_rest() {
            continue;
        }
        let Some(pitch) = sounding(part, one) else { return Vec::new() };
        if tied_from_before(one) && chords.last().is_none_or(|chord| chord.at != one.onset) {
            continue;
        }
        match chords.last_mut() {
            Some(chord) if chord.at == one.onset => {
                chord.notes.push(*id);
                chord.pitches.push(pitch);
                chord.broken |= one.arpeggio != Arpeggio::None;
            }
            _ => chords.push(Chord {
                at: one.onset,
                notes: vec![*id],
                pitches: vec![pitch],
                broken: one.arpeggio != Arpeggio::None,
            }),
        }
    }
    for chord in &mut chords {
        chord.pitches.sort_unstable();
        chord.pitches.dedup();
    }
    chords
}

/// How long one chord of a stroke lasts until the next begins, microseconds: its share of the stroke's time.
pub(crate) fn time_of(stroke: &Stroke, chord: &Chord, next: &Chord) -> i64 {
    let way = next.at.since_start() - chord.at.since_start();
    let share = way.to_f64() / stroke.length.to_f64().max(1e-9);
    #[expect(clippy::cast_possible_truncation, clippy::cast_precision_loss, reason = "seconds of one stroke")]
    let micros = (stroke.duration.micros as f64 * share) as i64;
    micros
}

/// The case of a message: `violin`.
pub(crate) fn instrument_word(line: &Line) -> &'static str {
    match line.instrument {
        Instrument::Violin => "violin",
        Instrument::Viola => "viola",
        Instrument::Cello => "cello",
        Instrument::Bass => "bass",
        Instrument::OtherBowed | Instrument::NotBowed => "instrument",
    }
}
