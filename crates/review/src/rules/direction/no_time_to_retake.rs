//! # No time to lift
//!
//! ## What it finds
//! Strokes printed in one direction with a lift between them, where the silence and what the note before can
//! lend are shorter than the lift. In a row of three or more each note gives up half its length; a pair counts
//! only where the best plan lifts and the two cannot be hooked: they take more than one bow at the speeds their
//! dynamic wants, and the second is not a single note half as long as the first. The lift is taken as short as it can
//! be, from a stroke that used no more bow than its dynamic must have.
//!
//! ## Why it matters
//! To play two down-bows running the bow must leave the string, travel back and be set down. Where there
//! is no time for it, the first note is cut short, or the second comes late, or the section slides back
//! on the string and scratches.
//!
//! ## Example
//! ```music
//! time 2/4  quarter=132
//! violin: ff 1/16 C5!down D5!down E5!down F5!down 1/4 C5!down | 1/2 C5 |||
//! ```
//!
//! ## What it proposes
//! To hook the two (hook, player's choice): nothing to write, since two like marks ask for a hook as well as
//! for a lift. To alternate (unmark, player's choice, where a row is printed).
//!
//! ## What it cannot know
//! How quickly this player lifts: 0.15 s on the spot and 0.3 s more for a whole bow are assumed. A lift that
//! nothing printed asks for is not reported, even where the best plan takes one: in nine quartets of the
//! nineteenth and twentieth centuries there were 18 such places in 100 bars, and a player finds another way.
//! Nor are accents in a row taken for down-bows in a row: players alternate them unless marks say otherwise.
//!
//! ## Sources
//! Lift times: from memory; a printed fiddle collection (Ryan 1883) repeats a direction over rests as
//! short as a sixteenth note in a reel. Rows of accents alternated: common practice.

use arcata_bow::{Link, Stroke};

use crate::change::Change;
use crate::player::LiftSeconds;
use crate::under_slur::note;
use crate::words::bow;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};
use arcata_languages::{Argument, Saying};

/// See the module's page.
#[derive(Debug)]
pub struct NoTimeToRetake;

impl Rule for NoTimeToRetake {
    const CARD: Card = Card {
        id: "no-time-to-retake",
        family: Family::Direction,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::Strokes, Reads::Bows, Reads::BowMarks],
        since: "0.1",
        title: "No time to lift",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (at, line) in piece.lines.iter().enumerate() {
            for index in 1..line.strokes.len() {
                let row = printed_row(&line.strokes, index);
                let draft = match row {
                    None => None,
                    Some((_, 2)) => planned_lift(piece, found, at, index),
                    Some((first, _)) => printed_lift(piece, found, at, index, first),
                };
                if let Some(draft) = draft {
                    found.report(draft);
                }
            }
        }
    }
}

/// Two marks in one direction, between which the best plan lifts; where it hooks them there is no lift.
fn planned_lift(piece: &Piece<'_>, found: &Findings<'_>, at: usize, index: usize) -> Option<Draft> {
    let planned = piece.planned(at);
    let (before, after) = (planned.get(index - 1)?, planned.get(index)?);
    let lifts = matches!(after.link, Link::Retake | Link::Reset) && before.direction == after.direction;
    let stroke = &piece.lines[at].strokes[index - 1];
    if !lifts || piece.is_free_after(stroke) || piece.can_be_hooked(at, index) {
        return None;
    }
    late(piece, found, at, index, piece.lift_after(at, index - 1))
}

/// A printed row of one direction, whose marks ask the players to shorten every note.
fn printed_lift(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    at: usize,
    index: usize,
    first: usize,
) -> Option<Draft> {
    let line = &piece.lines[at];
    let direction = line.strokes[index].printed?;
    let draft = late(piece, found, at, index, piece.lift_in_row(at, index - 1))?;
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
        Saying::new("offer-row-out").choosing("bow", bow(direction)),
        marks,
    ))
}

/// The first stroke and the length of the printed row in one direction that reaches a stroke from the
/// one before it.
fn printed_row(strokes: &[Stroke], index: usize) -> Option<(usize, usize)> {
    let direction = strokes[index].printed?;
    let same = |stroke: &&Stroke| stroke.printed == Some(direction);
    let before = strokes[..index].iter().rev().take_while(same).count();
    let after = strokes[index..].iter().take_while(same).count();
    (before > 0).then_some((index - before, before + after))
}

fn late(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    at: usize,
    index: usize,
    lift: LiftSeconds,
) -> Option<Draft> {
    let line = &piece.lines[at];
    let direction = piece.planned(at).get(index)?.direction;
    if lift.lacks() < piece.thresholds().retake_lack {
        return None;
    }
    let draft = found.at_stroke(Severity::B, at, index);
    let sentence = Saying::new("say-no-time-to-retake")
        .choosing("bow", bow(direction))
        .with("at", piece.where_is(draft.place()))
        .with("needed", Argument::Thousandths(lift.needed / 1000))
        .with("there", Argument::Thousandths(lift.available() / 1000));
    let draft = draft
        .say(sentence)
        .seconds("evidence-silence-before-it", lift.silence)
        .seconds("evidence-the-note-before-can-give-up", lift.lent)
        .seconds("evidence-the-lift-takes", lift.needed)
        .cause(format!("{}/{}", line.strokes[index - 1].length, bow(direction)))
        .propose(Grade::PlayersChoice, ProposalKind::Hook, Saying::new("offer-hook-instead-of-lifting"));
    Some(piece.with_tempo_assumption(draft, line))
}
