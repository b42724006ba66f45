//! # No time to lift
//!
//! ## What it finds
//! Two strokes in one direction with a lift between them, printed or in the best plan there is, where the
//! silence and what the first note can lend are shorter than the lift.
//!
//! ## Why it matters
//! To play two down-bows running the bow must leave the string, travel back and be set down. Where there
//! is no time for it, the first note is cut short, or the second comes late, or the section slides back
//! on the string and scratches.
//!
//! ## Example
//! ```music
//! time 2/4  quarter=132
//! violin: ff c''16!down d''!down e''!down f''!down c''4!down | c''2 |.
//! ```
//!
//! ## What it proposes
//! To hook the two (hook, player's choice); to alternate (unmark, player's choice, where the marks are
//! printed).
//!
//! ## What it cannot know
//! How quickly this player lifts: 0.15 s on the spot and 0.3 s more for a whole bow are assumed.
//!
//! ## Sources
//! Lift times: from memory; a printed fiddle collection (Ryan 1883) repeats a direction over rests as
//! short as a sixteenth note in a reel.

use arcata_bow::{Link, Stroke};
use arcata_score::BowDirection;

use crate::change::Change;
use crate::under_slur::note;
use crate::words::{a_bow, bow};
use crate::{Card, Draft, Family, Figure, Findings, Grade, Piece, ProposalKind, Rule, Severity, Thresholds};

/// See the module's page.
#[derive(Debug)]
pub struct NoTimeToRetake;

/// A printed row of strokes in one direction asks for lifts from so many on; two may be a hook.
const PRINTED_ROW: usize = 3;

impl Rule for NoTimeToRetake {
    const CARD: Card = Card {
        id: "no-time-to-retake",
        family: Family::Direction,
        gravest: Severity::B,
        lightest: Severity::B,
        since: "0.1",
        title: "No time to lift",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (at, line) in piece.lines.iter().enumerate() {
            for index in 1..line.strokes.len() {
                let row = printed_row(&line.strokes, index);
                let draft = planned_lift(piece, found, at, index)
                    .or_else(|| row.and_then(|first| printed_lift(piece, found, at, index, first)));
                if let Some(draft) = draft {
                    found.report(draft);
                }
            }
        }
    }
}

/// The planner itself must lift, from where the bow is to where it is needed.
fn planned_lift(piece: &Piece<'_>, found: &Findings<'_>, at: usize, index: usize) -> Option<Draft> {
    let planned = piece.planned(at);
    let (before, after) = (planned.get(index - 1)?, planned.get(index)?);
    let lifts = matches!(after.link, Link::Retake | Link::Reset) && before.direction == after.direction;
    let stroke = &piece.lines[at].strokes[index - 1];
    let needed = piece.lift_time(before.end, after.start);
    if !lifts || piece.is_free_after(stroke) {
        return None;
    }
    late(piece, found, at, index, needed, after.direction)
}

/// A printed row of one direction: it must at least be lifted on the spot.
fn printed_lift(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    at: usize,
    index: usize,
    first: usize,
) -> Option<Draft> {
    let line = &piece.lines[at];
    let direction = line.strokes[index].printed?;
    let draft = late(piece, found, at, index, piece.lift_time(0, 0), direction)?;
    let part = piece.score.parts.get(line.part)?;
    let marks = line.strokes[first + 1..]
        .iter()
        .take_while(|stroke| stroke.printed == Some(direction))
        .filter_map(|stroke| note(part, *stroke.notes.first()?)?.bow_mark)
        .map(|mark| Change::Remove(mark.node))
        .collect();
    Some(draft.propose_change(
        Grade::PlayersChoice,
        ProposalKind::Unmark,
        format!("Take the row's {}s out after the first and alternate.", bow(direction)),
        marks,
    ))
}

/// The first stroke of the printed row in one direction that reaches this stroke, when it is long enough.
fn printed_row(strokes: &[Stroke], index: usize) -> Option<usize> {
    let direction = strokes[index].printed?;
    let same = |stroke: &&Stroke| stroke.printed == Some(direction);
    let before = strokes[..index].iter().rev().take_while(same).count();
    let after = strokes[index..].iter().take_while(same).count();
    (before > 0 && before + after >= PRINTED_ROW).then_some(index - before)
}

fn late(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    at: usize,
    index: usize,
    needed: i64,
    direction: BowDirection,
) -> Option<Draft> {
    let line = &piece.lines[at];
    let before = &line.strokes[index - 1];
    let available = before.silence_after.micros + before.lendable.micros;
    if needed - available < Thresholds::RETAKE_LACK {
        return None;
    }
    let draft = found.at_stroke(Severity::B, at, index);
    let sentence = format!(
        "A retake for {} at {} takes about {} s and has {} s.",
        a_bow(direction),
        piece.where_is(draft.place()),
        Figure::Thousandths(needed / 1000),
        Figure::Thousandths(available / 1000),
    );
    let draft = draft
        .say(sentence)
        .seconds("silence before it", before.silence_after.micros)
        .seconds("the note before can lend", before.lendable.micros)
        .seconds("the lift takes", needed)
        .cause(format!("{}/{}", before.length, bow(direction)))
        .propose(
            Grade::PlayersChoice,
            ProposalKind::Hook,
            "Hook the two strokes on the string, with a stop, instead of lifting.",
        );
    Some(piece.with_tempo_assumption(draft, line))
}
