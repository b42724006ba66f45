//! # A phrase ends on an up-bow
//!
//! ## What it finds
//! A phrase's last note or chord on a beat, struck by itself, in forte or louder and not too short, neither growing nor
//! dying away, that ends on an up-bow in the best plan there is, and in all that cost hardly more. A phrase ends before a
//! long rest, at a double bar with a new tempo that does not begin down at once, and at the end; not where a breath mark before the
//! note frees the bow.
//!
//! ## Why it matters
//! A down-bow closes: it can ring off and fade. An up-bow ends at the frog, where the tone stops dead or
//! swells.
//!
//! ## Example
//! ```music
//! quarter=80
//! violin: f 1/4 C5 D5 E5 D5 | 1/2 C5 D5 |||
//! ```
//!
//! ## What it proposes
//! What a player would do otherwise to end down, with what it costs: start on the other bow, hook or
//! retake (player's choice). In the file it is bow marks, as for an accent on an up-bow. Or the one change of
//! the slurs before it that brings the down-bow of itself for less (writer's choice).
//!
//! ## What it cannot know
//! Whether the ending is meant as a question. A last note that grows is left out: an up-bow suits it. So is one after a dotted
//! upbeat, which is hooked, one softer than forte, or that fades under morendo, a hairpin or dim.: there the bow leaves the
//! string either way. A last slur is left out, too: it is heard as a line, not by how its bow began; and so is what a repeat
//! sign sends back, as the music goes on.
//!
//! ## Sources
//! Counted: in 30 solo pieces as really played the last note is down in 24. The rule itself from memory.

use arcata_bow::{MetricPlace, Stroke, StrokeKind};
use arcata_languages::{Argument, Saying};
use arcata_score::{BarlineStyle, BowDirection};

use crate::mechanics::dynamic_name;
use crate::other_bow::with_bow;
use crate::other_notation::WishedNote;
use crate::taste::Otherwise;
use crate::under_slur::note;
use crate::{Card, Draft, Family, Findings, Piece, Reads, Rule, Severity, Thresholds};

/// See the module's page.
#[derive(Debug)]
pub struct EndingOnUpBow;

impl Rule for EndingOnUpBow {
    const CARD: Card = Card {
        id: "ending-on-up-bow",
        family: Family::Direction,
        gravest: Severity::C,
        lightest: Severity::C,
        reads: &[Reads::Strokes, Reads::Bows, Reads::BowMarks, Reads::Marks],
        since: "0.1",
        title: "A phrase ends on an up-bow",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let thresholds = piece.thresholds();
        let ending: Vec<_> = piece
            .planned_strokes()
            .filter(|(.., stroke, planned)| {
                planned.direction == BowDirection::Up
                    && stroke.printed.is_none()
                    && closes(stroke, &thresholds)
                    && !dies_away(stroke)
            })
            .filter(|(line, index, ..)| is_let_ring(piece, *line, *index))
            .filter(|(line, index, ..)| !piece.follows_dotted_upbeat(*line, *index))
            .filter(|(line, index, ..)| {
                !found.is_choice((*line, *index), Otherwise::Goes(BowDirection::Down))
            })
            .map(|(line, index, ..)| (line, index))
            .collect();
        for (line, index) in ending {
            let draft = ended(piece, found, line, index);
            found.report(draft);
        }
    }
}

/// Whether a stroke fades.
fn dies_away(stroke: &Stroke) -> bool {
    stroke.level_end < stroke.level_start
}

/// Whether a stroke has a breath mark at its end: there the bow is taken again as one likes.
fn breathes(piece: &Piece<'_>, line: usize, stroke: &Stroke) -> bool {
    let part = piece.lines.get(line).and_then(|line| piece.score.parts.get(line.part));
    let last = part.zip(stroke.notes.last()).and_then(|(part, last)| note(part, *last));
    last.is_some_and(|last| last.articulations.breathes())
}

/// Whether the bow is free after a stroke, and was bound before it: by a rest, the end, a new tempo, or a barline that closes. A double bar under which
/// the music runs on, for a new key or metre, closes nothing, and a repeat sign sends on.
fn is_let_ring(piece: &Piece<'_>, line: usize, index: usize) -> bool {
    let strokes = &piece.lines[line].strokes;
    let end = strokes[index].onset + strokes[index].length;
    if index.checked_sub(1).is_some_and(|before| breathes(piece, line, &strokes[before])) {
        return false;
    }
    let Some(next) = strokes.get(index + 1) else { return true };
    let last = piece.score.bars.get(strokes[index].bar as usize..next.bar as usize);
    if last.into_iter().flatten().any(|bar| bar.right.repeat.is_some()) {
        return false;
    }
    let new_tempo = piece.score.tempos.iter().any(|tempo| tempo.place.at == end && tempo.begins_at_once());
    // Up into a new tempo that begins down is how a bow leads on.
    let leads_on =
        piece.planned(line).get(index + 1).is_some_and(|next| next.direction == BowDirection::Down);
    let before = next.bar.checked_sub(1).and_then(|bar| piece.score.bars.get(bar as usize));
    next.onset > end
        || (new_tempo && !leads_on)
        || before.is_some_and(|bar| bar.right.style == BarlineStyle::Final)
}

fn closes(stroke: &Stroke, thresholds: &Thresholds) -> bool {
    let sustained = stroke.duration.micros * 2 >= thresholds.ending_long;
    let loud = stroke.level_end.0 >= thresholds.ending_loud;
    let grows = stroke.level_end > stroke.level_start;
    stroke.phrase.joint_after >= thresholds.ending_joint
        && stroke.kind != StrokeKind::Tremolo
        && stroke.note_count == 1
        && loud
        && sustained
        && stroke.emphasis.metric != MetricPlace::Offbeat
        && !grows
}

fn ended(piece: &Piece<'_>, found: &Findings<'_>, at: usize, index: usize) -> Draft {
    let line = &piece.lines[at];
    let stroke = &line.strokes[index];
    let dynamic = dynamic_name(stroke.level_end);
    let draft = found.at_stroke(Severity::C, at, index);
    let sentence = Saying::new("say-ending-on-up-bow")
        .with("at", piece.where_is(draft.place()))
        .quoting("dynamic", dynamic);
    let draft = draft
        .say(sentence)
        .seconds("evidence-last-note-lasts", stroke.duration.micros)
        .evidence("evidence-dynamic", Argument::Text(dynamic.to_owned()), "")
        .cause(format!("{}/{}", stroke.length, stroke.offset));
    with_bow(piece, draft, (at, index), BowDirection::Down, ("ending", WishedNote::Ends))
}
