//! # Double stops under a slur that cannot be joined
//!
//! ## What it finds
//! Two double stops that follow each other under one slur, where no fingering that the hand reaches in time leaves
//! the bow on a string that both share (B).
//!
//! ## Why it matters
//! The bow would have to leave both strings and take two others: it can only be lifted, or swept over a
//! string that is not meant.
//!
//! ## Example
//! ```music
//! quarter=96
//! violin: mf (1/8 A3+D4 C5+G5) 1/4 rest 1/2 rest | 1/1 rest |||
//! ```
//!
//! ## What it proposes
//! To split the slur between the two (split, writer's choice).
//!
//! ## What it cannot know
//! Which fingering the player takes; it looks for one that joins them and finds none.
//!
//! ## Sources
//! P. Davies on writing for strings, as quoted: slurred double stops are joined over a common string. Reach as in
//! the player profile.

use arcata_hand::{Fingerboard, Stopping};

use crate::left_hand::{Chord, chords, fingerboard, time_of};
use crate::split::{self, Keep};
use crate::under_slur::{note, solid_slurs};
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};
use arcata_languages::Saying;

/// See the module's page.
#[derive(Debug)]
pub struct SlurredStops;

impl Rule for SlurredStops {
    const CARD: Card = Card {
        id: "slurred-stops",
        family: Family::Slurs,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::Slurs, Reads::Strokes],
        since: "0.1",
        title: "Double stops under a slur that cannot be joined",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for line in piece.lines {
            let Some(part) = piece.score.parts.get(line.part) else { continue };
            let Some(board) = fingerboard(piece, part) else { continue };
            for stroke in line.strokes.iter().filter(|stroke| stroke.note_count > 1) {
                let chords = chords(part, stroke);
                for pair in chords.windows(2) {
                    let lasts = time_of(stroke, &pair[0], &pair[1]);
                    let shift = lasts >= 2 * piece.thresholds().string_skip;
                    if is_apart(
                        &board,
                        &pair[0],
                        &pair[1],
                        if shift { PositionTime::Moves } else { PositionTime::Stays },
                    ) {
                        let draft = apart(piece, found, line.part, &pair[0], &pair[1]);
                        found.report(draft);
                    }
                }
            }
        }
    }
}

/// Whether there is time for another position.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum PositionTime {
    Stays,
    Moves,
}

fn is_apart(board: &Fingerboard, first: &Chord, second: &Chord, hand: PositionTime) -> bool {
    if first.pitches.len() != 2 || second.pitches.len() != 2 {
        return false;
    }
    let (one, other) = (board.stoppings(&first.pitches), board.stoppings(&second.pitches));
    let joins = |one: &Stopping, other: &Stopping| {
        let way = (board.place(one.position()) - board.place(other.position())).abs();
        let reached =
            hand == PositionTime::Moves || one.position() == 0 || other.position() == 0 || way <= board.close;
        reached && one.strings().0.abs_diff(other.strings().0) <= 1
    };
    // What cannot be stopped at all is another rule's.
    let joined = one.iter().any(|one| other.iter().any(|other| joins(one, other)));
    !one.is_empty() && !other.is_empty() && !joined
}

fn apart(piece: &Piece<'_>, found: &Findings<'_>, part_index: usize, first: &Chord, second: &Chord) -> Draft {
    let notes: Vec<_> = first.notes.iter().chain(&second.notes).copied().collect();
    let draft = found.at_notes(Severity::B, part_index, &notes);
    let sentence = Saying::new("say-slurred-stops").with("at", piece.where_is(draft.place()));
    let draft = draft.say(sentence).cause("apart");
    let Some(part) = piece.score.parts.get(part_index) else { return draft };
    let split = second.notes.first().and_then(|id| {
        let at = note(part, *id)?;
        let (slur, ..) = solid_slurs(part).find(|(_, start, end)| {
            start.voice == at.voice && start.onset < at.onset && at.onset <= end.onset
        })?;
        split::before_note(part_index, part, slur, *id, Keep::Both)
    });
    match split {
        None => draft,
        Some(split) => {
            let changes = split.changes(piece);
            draft.propose_change(
                Grade::WritersChoice,
                ProposalKind::Split,
                Saying::new("offer-split-between-the-two"),
                changes,
            )
        }
    }
}
