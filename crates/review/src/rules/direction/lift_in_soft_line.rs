//! # A lift that leaves a gap in a soft line
//!
//! ## What it finds
//! Two slurs, p or softer and without a rest between, of which the second has to take the direction of the first again by a
//! lift in the best plan there is: the marks before and after do not come out by alternation, or the slurs do not bring the
//! bow that the place asks for, and to do without it costs far more. One finding for each part.
//!
//! ## Why it matters
//! In a soft slurred line a lift is heard: the tone stops, and the next one begins anew. Most leaders rather play such a place
//! as it comes, or give one slur another end.
//!
//! ## Example
//! ```music
//! quarter=30
//! violin: p (1/4 C5!down D5 E5 F5) | (G5 F5 E5 D5) | (E5 F5 G5 A5) | (G5!down F5 E5 D5) | 1/1 C5 |||
//! ```
//!
//! ## What it proposes
//! What a player would do to go on without the lift, with what it costs, or to take out the mark that does not come out
//! (player's choice); and the one change of the slurs before it that brings the bow of itself for less (writer's choice).
//!
//! ## What it cannot know
//! Whether a breath is meant there. Two like marks side by side ask for one and are left out, as are joints between phrases.
//!
//! ## Sources
//! Read in plans of played works by a player; common practice.

use arcata_bow::{Join, Link, Stroke, StrokeKind};
use arcata_languages::{Argument, Saying};
use arcata_score::{BowDirection, Note};

use crate::change::take_out_mark;
use crate::mechanics::dynamic_name;
use crate::other_bow::with_bow;
use crate::other_notation::{BowWish, WishedNote};
use crate::under_slur::note;
use crate::words::bow;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct LiftInSoftLine;

/// Above this loudness a lift is covered (half-way from p = 300 to mp) (rule of thumb).
const SOFT: i32 = 350;

impl Rule for LiftInSoftLine {
    const CARD: Card = Card {
        id: "lift-in-soft-line",
        family: Family::Direction,
        gravest: Severity::C,
        lightest: Severity::C,
        reads: &[Reads::Slurs, Reads::Strokes, Reads::Bows, Reads::BowMarks, Reads::Marks, Reads::Words],
        since: "0.1",
        title: "A lift that leaves a gap in a soft line",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for at in 0..piece.lines.len() {
            for index in 1..piece.planned(at).len() {
                if let Some(draft) =
                    is_lifted(piece, at, index).then(|| lifted(piece, found, at, index)).flatten()
                {
                    found.report(draft);
                }
            }
        }
    }
}

/// Whether the bow is lifted within a soft line.
fn is_lifted(piece: &Piece<'_>, at: usize, index: usize) -> bool {
    let (strokes, planned) = (&piece.lines[at].strokes, piece.planned(at));
    let (before, after) = (&strokes[index - 1], &strokes[index]);
    let again =
        planned[index].link == Link::Retake && planned[index].direction == planned[index - 1].direction;
    let straight_on = after.join == Join::Continues && before.silence_after.micros == 0;
    let asked_for = after.printed.is_some() && before.printed == after.printed;
    again
        && straight_on
        && !asked_for
        && [before, after].into_iter().all(|stroke| is_sung(piece, at, stroke))
        && before.level_end.0 <= SOFT
        && after.level_start.0 <= SOFT
        && after.phrase.joint_before < piece.thresholds().ending_joint
        && !parts_anew(piece, after)
}

/// Whether all begin anew with a stroke: by a new tempo, or as another part breathes before it.
fn parts_anew(piece: &Piece<'_>, stroke: &Stroke) -> bool {
    let mut tempos = piece.score.tempos.iter();
    let new_tempo = tempos.any(|tempo| tempo.place.at == stroke.onset && tempo.begins_at_once());
    let breathes = |note: &Note| note.articulations.breathes() && note.onset + note.length == stroke.onset;
    new_tempo || piece.score.parts.iter().any(|part| part.notes.iter().any(breathes))
}

/// The printed mark after the lift that does not come out by alternation from the one before, with no rest between them.
fn forcing_mark(piece: &Piece<'_>, at: usize, index: usize) -> Option<usize> {
    let strokes = &piece.lines[at].strokes;
    let joined = |stroke: &Stroke| stroke.join == Join::Continues;
    let first =
        (0..index).rev().find(|before| strokes[*before].printed.is_some() || !joined(&strokes[*before]))?;
    let last = (index..strokes.len())
        .find(|after| strokes[*after].printed.is_some() || !joined(&strokes[*after]))?;
    let (before, after) = (strokes[first].printed?, strokes[last].printed?);
    let odd = (before == after) != (last - first).is_multiple_of(2);
    (odd && joined(&strokes[last])).then_some(last)
}

/// Offers to take the mark out.
fn without_mark(piece: &Piece<'_>, draft: Draft, at: usize, last: usize) -> Draft {
    let line = &piece.lines[at];
    let part = piece.score.parts.get(line.part);
    let marked = part.and_then(|part| note(part, *line.strokes[last].notes.first()?));
    draft.propose_change(
        Grade::PlayersChoice,
        ProposalKind::Unmark,
        Saying::new("offer-mark-out-and-alternate").with("at", piece.stroke_is_at(at, &line.strokes[last])),
        marked.map(take_out_mark).unwrap_or_default(),
    )
}

/// Whether a stroke is slurred and held to its end.
fn is_sung(piece: &Piece<'_>, at: usize, stroke: &Stroke) -> bool {
    let part = piece.lines.get(at).and_then(|line| piece.score.parts.get(line.part));
    let last = part.zip(stroke.notes.last()).and_then(|(part, id)| note(part, *id));
    let breathes = last.is_some_and(|note| note.articulations.breathes());
    stroke.kind == StrokeKind::Slurred && !breathes
}

fn lifted(piece: &Piece<'_>, found: &Findings<'_>, at: usize, index: usize) -> Option<Draft> {
    let stroke = &piece.lines[at].strokes[index];
    let direction = piece.planned(at)[index].direction;
    let lift = piece.lift_after(at, index - 1);
    let draft = found.at_stroke(Severity::C, at, index);
    let sentence = Saying::new("say-lift-in-soft-line")
        .choosing("bow", bow(direction))
        .with("at", piece.where_is(draft.place()))
        .quoting("dynamic", dynamic_name(stroke.level_start))
        .with("needed", Argument::Thousandths(lift.needed / 1000));
    let draft = draft
        .say(sentence)
        .seconds("evidence-a-lift-takes", lift.needed)
        .seconds("evidence-note-before", piece.lines[at].strokes[index - 1].duration.micros)
        .cause("lift");
    let other = match direction {
        BowDirection::Down => BowDirection::Up,
        BowDirection::Up => BowDirection::Down,
    };
    let what = "bar";
    let draft = match forcing_mark(piece, at, index) {
        Some(last) => without_mark(piece, draft, at, last),
        None => {
            let draft = with_bow(piece, draft, (at, index), other, (what, WishedNote::Begins));
            // What the plan chose for little is no fault of the page.
            draft.last_price().filter(|price| *price >= piece.thresholds().forced_lift)?;
            draft
        }
    };
    // From the writer another thing is wanted than from the arm: slurs that bring the bow which the lift brings.
    let draft =
        draft.wishing(BowWish { line: at, stroke: index, direction, what, sounding: WishedNote::Begins });
    Some(piece.with_tempo_assumption(draft, &piece.lines[at]))
}
