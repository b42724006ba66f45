//! # No tempo
//!
//! ## What it finds
//! A score whose first note has no tempo: neither a metronome mark nor a tempo word stands at or before it
//! (B). Where only the playback has a tempo that nobody can read, C.
//!
//! ## Why it matters
//! How long a bow lasts, whether a note bounces, whether a lift fits into a rest: everything the bow does
//! depends on the tempo. Every number of this review that depends on it is then an assumption.
//!
//! ## Example
//! ```music
//! violin: mf 1/1 C5 | D5 |||
//! ```
//!
//! ## What it proposes
//! To write a tempo (state, writer's choice); only the writer knows which.
//!
//! ## What it cannot know
//! The tempo. Where none is written, an assumed one is named beside every number that rests on it.
//!
//! ## Sources
//! Common practice in preparing parts.

use arcata_languages::Saying;
use arcata_score::{Moment, NoteKind, Score, TempoKind};

use crate::{Card, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct NoTempo;

impl Rule for NoTempo {
    const CARD: Card = Card {
        id: "no-tempo",
        family: Family::Parts,
        gravest: Severity::B,
        lightest: Severity::C,
        reads: &[Reads::Words],
        since: "0.1",
        title: "No tempo",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let Some(first) = first_sound(piece.score) else { return };
        let heard = |kind: &TempoKind| matches!(kind, TempoKind::Marked(_) | TempoKind::Word(_));
        let mut opening =
            piece.score.tempos.iter().filter(|tempo| tempo.place.at <= first && heard(&tempo.kind));
        let printed = opening.clone().any(|tempo| !tempo.text.is_empty());
        if printed {
            return;
        }
        let (severity, sentence) = match opening.next() {
            None => (Severity::B, Saying::new("say-no-tempo")),
            Some(_) => (Severity::C, Saying::new("say-tempo-for-playback-alone")),
        };
        let bar = piece.score.bar_at(first).unwrap_or(0);
        let draft = found.at(severity, None, bar, first).say(sentence).propose(
            Grade::WritersChoice,
            ProposalKind::State,
            Saying::new("offer-write-tempo"),
        );
        found.report(draft);
    }
}

fn first_sound(score: &Score) -> Option<Moment> {
    let bowed = score.parts.iter().filter(|part| part.instrument.is_bowed());
    let sounding = bowed.flat_map(|part| &part.notes);
    sounding
        .filter(|note| !note.pitch.is_rest() && note.kind == NoteKind::Ordinary)
        .map(|note| note.onset)
        .min()
}
