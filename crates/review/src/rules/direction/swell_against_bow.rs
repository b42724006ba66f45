//! # A swell against the bow
//!
//! ## What it finds
//! One long stroke, over most of the bow, that grows on a down-bow, or fades on an up-bow, by a dynamic
//! step or more, in the best plan there is, and in all that cost hardly more. The swell belongs to the stroke: one that
//! begins before it or goes on after it is made by several bows, of which every second goes against it, and one that is
//! answered by its reverse under the same bow is made by the hand.
//!
//! ## Why it matters
//! The weight of the bow on the string falls from frog to tip: left alone, a down-bow fades and an up-bow
//! grows. Against that the hand must press, and a long swell runs out of bow or of tone.
//!
//! ## Example
//! ```music
//! quarter=40
//! violin: p <= 1/2 C5 == f D5 | 1/1 C5!down |||
//! ```
//!
//! ## What it proposes
//! To take the stroke on the other bow by a start, hook or retake (player's choice), with what that costs,
//! in the file as bow marks; to change bow inside the swell (split, writer's choice); or the one change of
//! the slurs before it that brings the other bow of itself for less (writer's choice).
//!
//! ## What it cannot know
//! Contact point and pressure: good players make any swell on any bow, up to a point. Short swells are
//! left out for that reason.
//!
//! ## Sources
//! C. Schroeder, *Handbook of Violin Playing* (soft beginnings that grow start up-bow); Freund & Cutler
//! 2024; weight of the bow along its length: statics of a lever, about 1.0 N near the hand to 0.16 N at
//! the tip.

use arcata_bow::Stroke;
use arcata_languages::{Argument, Saying};
use arcata_score::{BowDirection, Swell};

use crate::mechanics::{dynamic_name, planned_travel, share_of_longest};
use crate::other_bow::with_bow;
use crate::other_notation::WishedNote;
use crate::split;
use crate::taste::Otherwise;
use crate::words::bow;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// Travel from which the weight of the bow changes enough to be fought, thousandths of the hair: it falls
/// about six to one over the whole length (statics of a lever; the share from memory).
const MOST_OF_THE_BOW: i64 = 600;

/// See the module's page.
#[derive(Debug)]
pub struct SwellAgainstBow;

impl Rule for SwellAgainstBow {
    const CARD: Card = Card {
        id: "swell-against-bow",
        family: Family::Direction,
        gravest: Severity::C,
        lightest: Severity::C,
        reads: &[Reads::Strokes, Reads::Bows, Reads::BowMarks],
        since: "0.1",
        title: "A swell against the bow",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let thresholds = piece.thresholds();
        let against: Vec<_> = piece
            .planned_strokes()
            .filter(|(.., stroke, planned)| {
                let rise = stroke.level_end.0 - stroke.level_start.0;
                let against = if planned.direction == BowDirection::Down { rise } else { -rise };
                against >= thresholds.swell_steps
                    && stroke.duration.micros >= thresholds.swell_shortest
                    && planned_travel(planned) >= MOST_OF_THE_BOW
                    && stroke.printed.is_none()
            })
            // A stroke longer than the slowest bow is changed on the way.
            .filter(|(line, _, stroke, _)| share_of_longest(stroke, piece.hair(*line)) <= 1000)
            .filter(|(line, _, stroke, _)| fills(piece, *line, stroke))
            .filter(|(line, index, _, planned)| {
                let other_bow = Otherwise::Goes(planned.direction.other());
                let less_bow = Otherwise::Travels(MOST_OF_THE_BOW as u16 - 1);
                ![other_bow, less_bow]
                    .into_iter()
                    .any(|otherwise| found.is_choice((*line, *index), otherwise))
            })
            .map(|(line, index, ..)| (line, index))
            .collect();
        for (line, index) in against {
            let draft = swelling(piece, found, line, index);
            found.report(draft);
        }
    }
}

/// Whether a swell takes up half of a stroke or more, and is the stroke's own; one at its end alone leaves the bow time.
fn fills(piece: &Piece<'_>, line: usize, stroke: &Stroke) -> bool {
    let Some(line) = piece.lines.get(line) else { return false };
    let Some(part) = piece.score.parts.get(line.part) else { return false };
    let (begins, ends) = (stroke.onset, stroke.onset + stroke.length);
    let here = |swell: &&Swell| swell.place.at < ends && swell.end.is_none_or(|end| end > begins);
    // Words without an end go on; what no swell draws comes from a dynamic within the stroke.
    let swells: Vec<&Swell> = part.swells.iter().filter(here).collect();
    let own = |swell: &&Swell| swell.place.at >= begins && swell.end.is_none_or(|end| end <= ends);
    let long = |swell: &&Swell| {
        let from = swell.place.at.max(begins);
        let to = swell.end.unwrap_or(ends).min(ends);
        (to - from).scaled(2, 1) >= stroke.length
    };
    swells.is_empty() || swells.iter().all(own) && swells.iter().any(long) && !answered(&swells)
}

/// Whether growing and fading both stand in one stroke.
fn answered(swells: &[&Swell]) -> bool {
    swells.iter().any(|swell| swell.kind != swells[0].kind)
}

fn swelling(piece: &Piece<'_>, found: &Findings<'_>, at: usize, index: usize) -> Draft {
    let line = &piece.lines[at];
    let (stroke, planned) = (&line.strokes[index], &piece.planned(at)[index]);
    let grows = planned.direction == BowDirection::Down;
    let (from, to) = (dynamic_name(stroke.level_start), dynamic_name(stroke.level_end));
    let draft = found.at_stroke(Severity::C, at, index);
    let sentence = Saying::new("say-swell-against-bow")
        .choosing("swell", if grows { "crescendo" } else { "diminuendo" })
        .quoting("from", from)
        .quoting("to", to)
        .with("at", piece.where_is(draft.place()))
        .choosing("bow", bow(planned.direction));
    let steps = i64::from(stroke.level_end.0 - stroke.level_start.0) * 10;
    let draft = draft
        .say(sentence)
        .evidence("evidence-change-of-level", Argument::Thousandths(steps), "unit-dynamic-steps")
        .seconds("evidence-stroke-lasts", stroke.duration.micros)
        .cause(format!("{}/{}/{steps}", stroke.length, bow(planned.direction)));
    let draft = with_bow(piece, draft, (at, index), planned.direction.other(), ("swell", WishedNote::Begins));
    let draft =
        draft.propose(Grade::WritersChoice, ProposalKind::Split, Saying::new("offer-change-inside-swell"));
    let draft = draft.sketched(split::in_two(piece, line, stroke));
    piece.with_tempo_assumption(draft, line)
}
