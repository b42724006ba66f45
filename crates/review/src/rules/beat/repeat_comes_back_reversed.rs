//! # A repeat comes back on the other bow
//!
//! ## What it finds
//! A repeated section, or one that da capo or dal segno sends back to, whose end leaves the player, as it
//! comes, on the other bow than the one it began with, and gives no time to lift before the beginning (30 ms
//! too little or more). Every ending that leads back is looked at by itself; one whose last note has a fermata or a breath mark gives
//! all the time there is.
//!
//! ## Why it matters
//! The same printing must serve both passes. The player either plays the whole second pass with the bow
//! reversed, against every mark in the part, or makes up a bow at the seam, every stand in its own way.
//!
//! ## Example
//! ```music
//! time 2/4  quarter=152
//! violin: |: mf 1/8 C5!down D5!up E5!down F5!up | (G5!down E5 D5 C5) :|
//! ```
//!
//! ## What it proposes
//! To hook the last note before the repeat sign to the one before it, with one mark on both (hook, player's
//! choice), or to mark the first stroke of the section so that everyone restarts alike (start, player's
//! choice). The second is left to the pencil: it tells the players what to do, and the time is still missing.
//!
//! ## What it cannot know
//! Whether the repeat will be taken.
//!
//! ## Sources
//! Common practice; one bowing for all passes follows from parts being printed once.

use arcata_bow::plan::{Comes, Leads, Turn, second_pass};
use arcata_bow::{Join, Line, Link, Road, Stroke};
use arcata_score::Fermata;

use crate::change::Change;
use crate::other_bow::marks;
use crate::under_slur::note;
use crate::words::bow;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};
use arcata_languages::{Argument, Saying};

/// See the module's page.
#[derive(Debug)]
pub struct RepeatComesBackReversed;

impl Rule for RepeatComesBackReversed {
    const CARD: Card = Card {
        id: "repeat-comes-back-reversed",
        family: Family::Beat,
        gravest: Severity::C,
        lightest: Severity::C,
        reads: &[Reads::Strokes, Reads::Bows, Reads::Marks],
        since: "0.1",
        title: "A repeat comes back on the other bow",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (at, line) in piece.lines.iter().enumerate() {
            let turns = piece.plans.get(at).map_or(&[][..], |plan| &plan.turns);
            for turn in turns.iter().filter(|turn| turn.leads == Leads::Back && turn.from > turn.to) {
                if let Some(draft) = reversed(piece, found, at, line, turn) {
                    found.report(draft);
                }
            }
        }
    }
}

fn reversed(piece: &Piece<'_>, found: &Findings<'_>, at: usize, line: &Line, turn: &Turn) -> Option<Draft> {
    let planned = piece.planned(at);
    let plan = piece.plans.get(at).filter(|_| !planned.is_empty())?;
    let pass = second_pass(line, plan, turn, piece.plan_settings(at).reach)?;
    let lacking = pass.needed.micros - pass.available.micros;
    if pass.comes != Comes::Reversed
        || lacking < piece.thresholds().retake_lack
        || is_held(piece, line, line.strokes.get(turn.from)?)
    {
        return None;
    }
    let (first, last) = (planned.get(turn.to)?, planned.get(turn.from)?);
    let draft = found.at_stroke(Severity::C, at, turn.to);
    let end = piece.stroke_is_at(at, line.strokes.get(turn.from)?);
    let beginning = piece.where_is(draft.place());
    let sentence = Saying::new("say-repeat-comes-back-reversed")
        .choosing(
            "road",
            match line.repeats.get(turn.stretch)?.road {
                Road::RepeatSign => "repeat",
                Road::DaCapo => "da-capo",
                Road::DalSegno => "dal-segno",
            },
        )
        .with("beginning", beginning)
        .choosing("bow", bow(last.direction))
        .with("end", end.clone())
        .with("there", Argument::Thousandths(pass.available.micros / 1000))
        .with("needed", Argument::Thousandths(pass.needed.micros / 1000));
    let draft = draft
        .say(sentence)
        .seconds("evidence-time-to-lift", pass.available.micros)
        .seconds("evidence-a-lift-takes", pass.needed.micros)
        .propose_change(
            Grade::PlayersChoice,
            ProposalKind::Hook,
            Saying::new("offer-hook-so-section-comes-back").with("at", end),
            hooked(piece, at, line, turn.from),
        )
        .propose(
            Grade::PlayersChoice,
            ProposalKind::Start,
            Saying::new("offer-mark-first-note-every-pass").choosing("bow", bow(first.direction)),
        );
    Some(piece.with_tempo_assumption(draft, line))
}

/// Whether a fermata or a breath mark stands on the last note of a stroke: the players go on when they like.
fn is_held(piece: &Piece<'_>, line: &Line, stroke: &Stroke) -> bool {
    let part = piece.score.parts.get(line.part);
    let last = part.zip(stroke.notes.last()).and_then(|(part, last)| note(part, *last));
    last.is_some_and(|last| last.fermata == Fermata::Held || last.articulations.breathes())
}

/// One bow mark on the last two strokes: the way the last but one goes. Nothing where the plan does not
/// alternate between them, since then a hook turns nothing round, nor where the two ask for a lift that
/// lacks time.
fn hooked(piece: &Piece<'_>, at: usize, line: &Line, last: usize) -> Vec<Change> {
    let planned = piece.planned(at);
    let continues = line.strokes.get(last).is_some_and(|stroke| stroke.join == Join::Continues);
    let alternates = planned.get(last).is_some_and(|planned| planned.link == Link::Change);
    match last.checked_sub(1).and_then(|before| planned.get(before)) {
        Some(before)
            if continues
                && alternates
                && (piece.can_be_hooked(at, last) || piece.lift_after(at, last - 1).lacks() <= 0) =>
        {
            marks(piece, at, [last - 1, last].into_iter().map(|stroke| (stroke, before.direction)))
        }
        _ => Vec::new(),
    }
}
