//! # On the string or off it?
//!
//! ## What it finds
//! The first place of a piece where eight or more even single strokes with dots come so fast, and no louder than
//! forte, that they can be bounced or kept short on the string, when no word in any of the string parts says which
//! (C). Told once for the whole piece.
//!
//! ## Why it matters
//! It is the first question of the first rehearsal. The two sound different, lie in different parts of the bow,
//! and one section cannot do both.
//!
//! ## Example
//! ```music
//! quarter=120
//! violin: p 1/8 C5!. D5!. E5!. F5!. G5!. F5!. E5!. D5!. | 1/1 C5 |||
//! viola: p 1/2 C4 G3 | 1/1 E3 |||
//! ```
//!
//! ## What it proposes
//! To write spicc., or on the string, over the first such place, in every part that has it there (word,
//! writer's choice). The players follow it from there.
//!
//! ## What it cannot know
//! What goes without saying in a style, and what the leader will decide. A soloist decides alone and is not asked.
//! Once any word about it stands in the piece, the writer is taken to have thought of it.
//!
//! ## Sources
//! Dounis as told by Klopčič, JAVS Fall 2023 p. 52, for the speeds at which the bow bounces; the rest is common
//! practice, from memory.

use arcata_bow::{Line, StrokeKind};
use arcata_languages::{Argument, Saying};
use arcata_score::{Instruction, Meaning, Moment};

use crate::change::{Change, direction_before};
use crate::speed::{EvenRun, even_runs, said_rate};
use crate::under_slur::note;
use crate::{Card, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct OnOrOffString;

impl Rule for OnOrOffString {
    const CARD: Card = Card {
        id: "on-or-off-string",
        family: Family::Kinds,
        gravest: Severity::C,
        lightest: Severity::C,
        reads: &[Reads::Strokes, Reads::Words],
        since: "0.1",
        title: "On the string or off it?",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        if piece.lines.len() < 2 || is_said(piece) {
            return;
        }
        let firsts =
            piece.lines.iter().enumerate().filter_map(|(at, line)| Some((at, first_run(piece, line)?)));
        let firsts: Vec<(usize, EvenRun)> = firsts.collect();
        let onset = |(at, run): &(usize, EvenRun)| piece.lines[*at].strokes[run.strokes.start].onset;
        let Some((at, run)) = firsts.iter().min_by_key(|first| (onset(first), first.0)) else { return };
        let line = &piece.lines[*at];
        let from = line.strokes[run.strokes.start].onset;
        let with = firsts.iter().filter(|first| onset(first) == from);
        let places: Vec<(usize, usize)> = with.map(|(at, run)| (*at, run.strokes.start)).collect();
        let draft = found.at_stroke(Severity::C, *at, run.strokes.start);

        let sentence = Saying::new("say-on-or-off-string")
            .with("at", piece.where_is(draft.place()))
            .with("parts", places.len())
            .with("count", run.strokes.len())
            .with("rate", said_rate(run.rate));
        let draft = draft
            .say(sentence)
            .evidence("evidence-strokes-a-second", Argument::Thousandths(run.rate * 10), "")
            .propose_change(
                Grade::WritersChoice,
                ProposalKind::Word,
                Saying::new("offer-write-spicc"),
                words(piece, &places, "spicc."),
            )
            .propose_change(
                Grade::WritersChoice,
                ProposalKind::Word,
                Saying::new("offer-write-on-the-string"),
                words(piece, &places, "on the string"),
            );
        found.report(piece.with_tempo_assumption(draft, line));
    }
}

/// So many notes are a passage (rule of thumb).
const PASSAGE: usize = 8;
/// Above forte players stay on the string, or lift, as the weight wants it; hundredths of a dynamic step (rule of thumb).
const FORTE: i32 = arcata_bow::Loudness::F.0;

/// Whether any string part says how such notes are played.
fn is_said(piece: &Piece<'_>) -> bool {
    let tells = |said: &Instruction| {
        matches!(
            said.meaning,
            Meaning::Spiccato
                | Meaning::Sautille
                | Meaning::OnString
                | Meaning::OffString
                | Meaning::Martele
                | Meaning::Detache
                | Meaning::StaccatoWord
                | Meaning::AtFrog
                | Meaning::AtTip
                | Meaning::MiddleOfBow
        )
    };
    let bowed = piece.score.parts.iter().filter(|part| part.instrument.is_bowed());
    bowed.flat_map(|part| &part.instructions).any(tells)
}

/// The first passage of a line that could be played in both ways: of an even run the dotted part.
fn first_run(piece: &Piece<'_>, line: &Line) -> Option<EvenRun> {
    let (least, most) =
        (piece.profile.rate("either_string_least")?, piece.profile.rate("either_string_most")?);
    let either = |at: &usize| {
        let stroke = &line.strokes[*at];
        stroke.kind == StrokeKind::Short && stroke.level_start.0 <= FORTE
    };
    even_runs(line, PASSAGE).into_iter().filter(|run| (least..=most).contains(&run.rate)).find_map(|run| {
        let all: Vec<usize> = run.strokes.clone().collect();
        let dotted = all.chunk_by(|one, next| either(one) == either(next));
        let passage = dotted.into_iter().find(|part| part.len() >= PASSAGE && either(&part[0]))?;
        let strokes = passage[0]..passage[0] + passage.len();
        Some(EvenRun { strokes, rate: run.rate })
    })
}

/// A word over each of the first strokes.
fn words(piece: &Piece<'_>, places: &[(usize, usize)], word: &str) -> Vec<Change> {
    let mut seen: Vec<(usize, u8, Moment)> = Vec::new();
    let mut changes = Vec::new();
    for (at, index) in places {
        let line = &piece.lines[*at];
        let stroke = &line.strokes[*index];
        let Some(part) = piece.score.parts.get(line.part) else { continue };
        // Two voices of one staff read one word.
        let place = (line.part, line.staff, stroke.onset);
        if seen.contains(&place) {
            continue;
        }
        seen.push(place);
        if let Some(first) = stroke.notes.first().and_then(|id| note(part, *id)) {
            changes.push(direction_before(first, part.staves, "above", &format!("<words>{word}</words>")));
        }
    }
    changes
}
