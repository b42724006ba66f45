//! # A note outside the instrument
//!
//! ## What it finds
//! Notes below the lowest string (A); below the E string of a bass, where a fifth string or an extension is
//! needed (C); above the end of the fingerboard (B).
//!
//! ## Why it matters
//! It cannot be played, or only by some of the section, and somebody will be asked what to play instead.
//!
//! ## Example
//! ```music
//! quarter=96
//! violin: mf 1/4 D4 B3 A3 F#3 | 1/1 G3 |||
//! ```
//!
//! ## What it proposes
//! Nothing: another note or another instrument is the writer's to choose.
//!
//! ## What it cannot know
//! A string tuned down for the piece, and how high a soloist goes. Harmonics are left out.
//!
//! ## Sources
//! Common practice for the tunings; the upper ends are settings of the player profile.

use std::collections::BTreeMap;

use arcata_hand::{Fingerboard, Strings};
use arcata_languages::{Argument, Saying};
use arcata_score::{Instrument, Moment, NoteId, Part};

use crate::left_hand::sounding;
use crate::{Card, Draft, Family, Findings, Piece, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct OutOfRange;

impl Rule for OutOfRange {
    const CARD: Card = Card {
        id: "out-of-range",
        family: Family::Hand,
        gravest: Severity::A,
        lightest: Severity::C,
        reads: &[],
        since: "0.1",
        title: "A note outside the instrument",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (index, part) in piece.score.parts.iter().enumerate() {
            let Some(board) = Fingerboard::new(part.instrument, Strings::Four, piece.profile) else {
                continue;
            };
            let fifth = Fingerboard::new(part.instrument, Strings::Five, piece.profile);
            let fifth = fifth.filter(|_| part.instrument == Instrument::Bass);
            for (id, pitch) in outside(part, &board) {
                let draft = told(piece, found, (index, id), pitch, (&board, fifth.as_ref()));
                found.report(draft);
            }
        }
    }
}

/// One note a moment: of a chord the first.
fn outside(part: &Part, board: &Fingerboard) -> Vec<(NoteId, i32)> {
    let mut first: BTreeMap<Moment, (NoteId, i32)> = BTreeMap::new();
    for (id, note) in (0_u32..).map(NoteId).zip(&part.notes) {
        let Some(pitch) = sounding(part, note) else { continue };
        if !(board.lowest()..=board.highest()).contains(&pitch) {
            first.entry(note.onset).or_insert((id, pitch));
        }
    }
    first.into_values().collect()
}

fn told(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    (part, id): (usize, NoteId),
    pitch: i32,
    (board, fifth): (&Fingerboard, Option<&Fingerboard>),
) -> Draft {
    let deep = fifth.is_some_and(|fifth| (fifth.lowest()..board.lowest()).contains(&pitch));
    let (severity, what) = if deep {
        (Severity::C, Saying::new("say-below-e-string").with("pitch", Argument::Pitch(pitch)))
    } else if pitch < board.lowest() {
        (
            Severity::A,
            Saying::new("say-below-lowest-string")
                .with("pitch", Argument::Pitch(pitch))
                .with("limit", Argument::Pitch(board.lowest())),
        )
    } else {
        (
            Severity::B,
            Saying::new("say-above-fingerboard")
                .with("pitch", Argument::Pitch(pitch))
                .with("limit", Argument::Pitch(board.highest())),
        )
    };
    let draft = found.at_notes(severity, part, &[id]);
    let sentence = what.with("at", piece.where_is(draft.place()));
    draft.say(sentence).cause("range")
}
