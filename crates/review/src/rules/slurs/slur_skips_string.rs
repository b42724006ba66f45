//! # A slur that jumps over a string
//!
//! ## What it finds
//! Two neighbouring notes under one slur that no fingering puts on the same string or on neighbouring ones, where
//! the first is too short to pass over a string unheard (B). The whole slur is fingered: positions, shifts
//! that there is time for, open strings.
//!
//! ## Why it matters
//! On the way the bow touches the string between, or has to be lifted in the middle of the slur.
//!
//! ## Example
//! ```music
//! quarter=120
//! violin: mf (1/16 A3 B5 A3 B5) 1/4 A3 1/2 rest | 1/1 rest |||
//! ```
//!
//! ## What it proposes
//! To split the slur between the two notes, where it happens once; else to slur only what lies on neighbouring
//! strings (split, writer's choice).
//!
//! ## What it cannot know
//! Which fingering the player takes. Such leaps are possible: of 490 in thirty played pieces a fifth were
//! bowed in one, so slow ones are left alone.
//!
//! ## Sources
//! Counted in an open set of thirty played pieces with strings and bows (YTVF); the time is from memory.

use arcata_bow::{Line, Stroke};
use arcata_hand::{Fingerboard, PassageNote, crossings};
use arcata_languages::{Argument, Saying};
use arcata_score::{NoteId, Part};

use crate::left_hand::{chords, fingerboard, time_of};
use crate::split::{self, Keep};
use crate::under_slur::{note, solid_slurs};
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct SlurSkipsString;

impl Rule for SlurSkipsString {
    const CARD: Card = Card {
        id: "slur-skips-string",
        family: Family::Slurs,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::Slurs, Reads::Strokes],
        since: "0.1",
        title: "A slur that jumps over a string",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (at, line) in piece.lines.iter().enumerate() {
            let Some(part) = piece.score.parts.get(line.part) else { continue };
            let Some(board) = fingerboard(piece, part) else { continue };
            for index in 0..line.strokes.len() {
                if let Some(draft) = skipping(piece, found, (at, index), &board) {
                    found.report(draft);
                }
            }
        }
    }
}

/// A note of a slur: its id, its pitch, how long it lasts.
struct Slurred {
    id: NoteId,
    step: PassageNote,
}

fn skipping(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    (at, index): (usize, usize),
    board: &Fingerboard,
) -> Option<Draft> {
    let line = &piece.lines[at];
    let part = piece.score.parts.get(line.part)?;
    let stroke = &line.strokes[index];
    let slurred = slurred(part, stroke)?;
    let limits = piece.thresholds();
    let leap = |pair: &[Slurred]| {
        pair[0].step.lasts < limits.string_skip
            && (pair[0].step.pitch - pair[1].step.pitch).abs() >= limits.string_reach
    };
    if !slurred.windows(2).any(leap) {
        return None;
    }
    let steps: Vec<PassageNote> = slurred.iter().map(|note| note.step).collect();
    let ways = crossings(board, &steps, limits.string_skip);
    let hurried = |before: usize| slurred[before].step.lasts < limits.string_skip;
    let mut skips = ways.iter().enumerate().filter(|(before, way)| way.skipped() > 0 && hurried(*before));
    let (before, way) = skips.next()?;
    let more = skips.count();
    let pair = [slurred[before].id, slurred[before + 1].id];
    let draft = found.at_notes(Severity::B, line.part, &pair);

    let sentence = Saying::new("say-slur-skips-string")
        .with("at", piece.where_is(draft.place()))
        .with("strings", way.skipped())
        .with("within", Argument::Seconds(slurred[before].step.lasts))
        .with("more", more);
    let draft = draft
        .say(sentence)
        .seconds("evidence-first-note-lasts", slurred[before].step.lasts)
        .seconds("evidence-time-to-pass-over-a-string", limits.string_skip)
        .cause("skip");
    let draft = match more {
        0 => offer_split(piece, draft, line, pair[1]),
        _ => draft.propose(
            Grade::WritersChoice,
            ProposalKind::Split,
            Saying::new("offer-slur-neighbouring-strings"),
        ),
    };
    Some(piece.with_tempo_assumption(draft, line))
}

/// The notes of a stroke one after the other, each sharing the stroke's time by its length; nothing where there
/// are chords or harmonics.
fn slurred(part: &Part, stroke: &Stroke) -> Option<Vec<Slurred>> {
    let chords = chords(part, stroke);
    if chords.len() < 2 || chords.iter().any(|chord| chord.pitches.len() != 1) {
        return None;
    }
    let pairs = chords.windows(2).map(|pair| (&pair[0], time_of(stroke, &pair[0], &pair[1])));
    let last = chords.last().map(|last| (last, stroke.duration.micros));
    let found = pairs
        .chain(last)
        .map(|(chord, lasts)| Slurred {
            id: chord.notes[0],
            step: PassageNote { pitch: chord.pitches[0], lasts },
        })
        .collect();
    Some(found)
}

fn offer_split(piece: &Piece<'_>, draft: Draft, line: &Line, second: NoteId) -> Draft {
    let Some(part) = piece.score.parts.get(line.part) else { return draft };
    let Some(at) = note(part, second) else { return draft };
    let over = solid_slurs(part)
        .find(|(_, start, end)| start.voice == at.voice && start.onset < at.onset && at.onset <= end.onset);
    let split = over.and_then(|(slur, ..)| split::before_note(line.part, part, slur, second, Keep::Both));
    match split {
        None => draft,
        Some(split) => {
            let changes = split.changes(piece);
            draft.propose_change(
                Grade::WritersChoice,
                ProposalKind::Split,
                Saying::new("offer-split-between-two-notes"),
                changes,
            )
        }
    }
}
