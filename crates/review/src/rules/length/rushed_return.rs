//! # A short note must win back a long bow
//!
//! ## What it finds
//! A short single note that, in the best plan there is, travels so much faster than its dynamic wants
//! that it sticks out by 8 dB or more, because the stroke before it or after it is long.
//!
//! ## Why it matters
//! It is the unwanted accent of student scores: a soft upbeat note between two long slurs barks. No
//! player wants it, and no marking of the dynamic takes it away.
//!
//! ## Example
//! ```music
//! quarter=50
//! violin: p (c''4 d'' e''8.) f''16 (g''4~ | g''2 f''4.. ) e''16 | (d''2. c''4) |.
//! ```
//!
//! ## What it proposes
//! To hook the short note to the stroke before it (hook, player's choice); to split the long slur so that
//! the short note need not carry it all back (split, writer's choice).
//!
//! ## What it cannot know
//! How much the player takes back by moving away from the bridge: about a doubling of speed (6 dB) is
//! allowed for.
//!
//! ## Sources
//! Broadley (1899), mixed bowings. Level is proportional to bow speed at one contact point: Cremer, *The
//! Physics of the Violin* (1984); Woodhouse, Euphonics 9.4.2. A modern teaching page (cellofun.eu): "as it
//! comes" drags the bow or makes huge accents.

use arcata_bow::logarithm::centibels;
use arcata_bow::{Link, StrokeKind};

use crate::mechanics::{dynamic_name, planned_travel, speed_over};
use crate::{Card, Draft, Family, Figure, Findings, Grade, Piece, ProposalKind, Rule, Severity, Thresholds};

/// See the module's page.
#[derive(Debug)]
pub struct RushedReturn;

/// The planner knows places to a cell of its grid: so much travel, in thousandths of the hair, may be
/// the grid's and is not held against the player (one cell of 48).
const GRID_TRAVEL: i64 = 21;

impl Rule for RushedReturn {
    const CARD: Card = Card {
        id: "rushed-return",
        family: Family::Length,
        gravest: Severity::C,
        lightest: Severity::C,
        since: "0.1",
        title: "A short note must win back a long bow",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (at, line) in piece.lines.iter().enumerate() {
            for index in 0..line.strokes.len() {
                if let Some(draft) = rushed(piece, found, at, index) {
                    found.report(draft);
                }
            }
        }
    }
}

fn rushed(piece: &Piece<'_>, found: &Findings<'_>, at: usize, index: usize) -> Option<Draft> {
    let (line, thresholds) = (&piece.lines[at], piece.thresholds());
    let (stroke, planned) = (&line.strokes[index], piece.planned(at).get(index)?);
    let short = stroke.note_count == 1 && stroke.duration.micros <= Thresholds::RETURN_LONGEST;
    let wants_weight = stroke.emphasis.accent > 0 || stroke.kind == StrokeKind::Tremolo;
    if !short || wants_weight || !between_longer(piece, at, index) {
        return None;
    }
    let travel = (planned_travel(planned) - GRID_TRAVEL).max(0);
    let speed = speed_over(travel, stroke, piece.hair(at)).unsigned_abs();
    let level = centibels(speed.max(1), u64::from(stroke.speed.preferred.max(1)));
    if level < thresholds.return_level {
        return None;
    }
    let dynamic = dynamic_name(stroke.level_start);
    let draft = found.at_stroke(Severity::C, at, index);
    let sentence = format!(
        "The short note at {} must bring back a long bow and will stick out by about {} dB at {dynamic}.",
        piece.where_is(draft.place()),
        level / 100,
    );
    let draft = draft
        .say(sentence)
        .evidence("above its dynamic", Figure::Thousandths(i64::from(level) * 10), "dB")
        .evidence("bow it travels", Figure::Thousandths(planned_travel(planned)), "bows")
        .seconds("note lasts", stroke.duration.micros)
        .cause(format!("{}/{}", level / 100, stroke.length))
        .propose(
            Grade::PlayersChoice,
            ProposalKind::Hook,
            "Hook the short note to the stroke before it, with a stop.",
        )
        .propose(
            Grade::WritersChoice,
            ProposalKind::Split,
            "Split the long slur beside it, so that less bow has to be won back.",
        );
    Some(piece.with_tempo_assumption(draft, line))
}

/// Whether the note goes straight on from, or into, a stroke at least twice as long.
fn between_longer(piece: &Piece<'_>, at: usize, index: usize) -> bool {
    let (strokes, planned) = (&piece.lines[at].strokes, piece.planned(at));
    let own = strokes[index].duration.micros;
    let longer = |other: usize, link: usize| {
        let changes = planned.get(link).is_some_and(|planned| planned.link == Link::Change);
        changes && strokes.get(other).is_some_and(|stroke| stroke.duration.micros >= 2 * own)
    };
    index.checked_sub(1).is_some_and(|before| longer(before, index)) || longer(index + 1, index + 1)
}
