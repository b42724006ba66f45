//! # A short note must win back a long bow
//!
//! ## What it finds
//! A short single note that, in the best plan there is, travels so much faster than its dynamic wants
//! that it sticks out by 6 dB or more, because the stroke before it is long; and in every plan that costs
//! hardly more.
//!
//! ## Why it matters
//! It is the unwanted accent of student scores: a soft upbeat note between two long slurs barks. No
//! player wants it, and no marking of the dynamic takes it away.
//!
//! ## Example
//! ```music
//! quarter=72
//! violin: ff (1/2 C5!down 7/16 D5) 1/16 E5!up | (1/2 F5!down 7/16 E5) 1/16 D5!up | 1/1 C5!down |||
//! ```
//!
//! ## What it proposes
//! To hook the short note to the stroke before it, with one mark on both (hook, player's choice); to split the long slur so that
//! the short note need not carry it all back (split, writer's choice).
//!
//! ## What it cannot know
//! How much the player takes back by moving away from the bridge. Travel that may only come from the
//! planner's grid of places is not held against the note. With a dot, in forte or louder, the note is thrown off the string
//! and meant to bark: it is left out.
//!
//! ## Sources
//! Broadley (1899), mixed bowings. Level is proportional to bow speed at one contact point: Cremer, *The
//! Physics of the Violin* (1984); Woodhouse, Euphonics 9.4.2. A modern teaching page (cellofun.eu): "as it
//! comes" drags the bow or makes huge accents.

use arcata_bow::logarithm::centibels;
use arcata_bow::{Join, Link, PlannedStroke, Stroke, StrokeKind};

use crate::change::Change;
use crate::mechanics::{dynamic_name, planned_travel, speed_over};
use crate::other_bow::marks;
use crate::split;
use crate::taste::Otherwise;
use crate::trial::brings_worse;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};
use arcata_languages::{Argument, Saying};

/// See the module's page.
#[derive(Debug)]
pub struct RushedReturn;

/// The planner knows places to a cell of its grid: so much travel, in thousandths of the hair, may be
/// the grid's and is not held against the player (one cell of 48) (by definition).
const GRID_TRAVEL: i64 = 21;

/// Forte, hundredths of a dynamic step (by definition).
const LOUD: i32 = arcata_bow::Loudness::F.0;

impl Rule for RushedReturn {
    const CARD: Card = Card {
        id: "rushed-return",
        family: Family::Length,
        gravest: Severity::C,
        lightest: Severity::C,
        reads: &[Reads::Strokes, Reads::Bows, Reads::BowMarks],
        since: "0.1",
        title: "A short note must win back a long bow",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (at, line) in piece.lines.iter().enumerate() {
            let mut turned = Turned::default();
            for (index, stroke) in line.strokes.iter().enumerate() {
                match rushed(piece, found, at, index, &mut turned) {
                    Some(draft) => found.report(draft),
                    None => turned.pass(stroke, piece.planned(at).get(index)),
                }
            }
        }
    }
}

/// Whether hooks proposed earlier in the line have turned the bows round that follow.
#[derive(Default)]
struct Turned(bool);

impl Turned {
    /// A printed mark or a free entry holds whatever came before.
    fn pass(&mut self, stroke: &Stroke, planned: Option<&PlannedStroke>) {
        if stroke.printed.is_some() || planned.is_some_and(|planned| planned.link == Link::Reset) {
            self.0 = false;
        }
    }
}

/// One mark on the short note and the stroke before it; nothing where they do not alternate now.
fn hooked(piece: &Piece<'_>, at: usize, index: usize, turned: &mut Turned) -> Vec<Change> {
    let planned = piece.planned(at);
    let Some(before) = index.checked_sub(1).and_then(|before| planned.get(before)) else { return Vec::new() };
    let stroke = &piece.lines[at].strokes[index];
    if planned[index].link != Link::Change || stroke.join != Join::Continues {
        return Vec::new();
    }
    let direction = if turned.0 { before.direction.other() } else { before.direction };
    // A printed mark that asks for the next stroke in the same direction makes the short note come back.
    if piece.lines[at].strokes.get(index + 1).is_some_and(|next| next.printed == Some(direction)) {
        return Vec::new();
    }
    let hooked = marks(piece, at, [index - 1, index].into_iter().map(|stroke| (stroke, direction)));
    if piece.document.is_none() || brings_worse(piece, &hooked, Severity::C) {
        return Vec::new();
    }
    turned.0 = !turned.0;
    hooked
}

fn rushed(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    at: usize,
    index: usize,
    turned: &mut Turned,
) -> Option<Draft> {
    let (line, thresholds) = (&piece.lines[at], piece.thresholds());
    let (stroke, planned) = (&line.strokes[index], piece.planned(at).get(index)?);
    let short = stroke.note_count == 1 && stroke.duration.micros <= thresholds.return_longest;
    let wants_weight = stroke.emphasis.accent > 0 || stroke.kind == StrokeKind::Tremolo;
    // With a dot, in forte, it is thrown off the string, and meant to bark.
    let thrown = stroke.kind == StrokeKind::Short && stroke.level_start.0 >= LOUD;
    if !short || wants_weight || thrown || !after_a_longer(piece, at, index) {
        return None;
    }
    let travel = (planned_travel(planned) - GRID_TRAVEL).max(0);
    let speed = speed_over(travel, stroke, piece.hair(at)).unsigned_abs();
    let level = centibels(speed.max(1), u64::from(stroke.speed.preferred.max(1)));
    if level < thresholds.return_level {
        return None;
    }
    if found.is_choice((at, index), Otherwise::Travels(quiet_travel(piece, at, stroke))) {
        return None;
    }
    let dynamic = dynamic_name(stroke.level_start);
    let draft = found.at_stroke(Severity::C, at, index);
    let sentence = Saying::new("say-rushed-return")
        .with("at", piece.where_is(draft.place()))
        .with("decibels", i64::from((level + 50) / 100))
        .quoting("dynamic", dynamic);
    let draft = draft
        .say(sentence)
        .evidence(
            "evidence-above-its-dynamic",
            Argument::Thousandths(i64::from(level + 5) / 10 * 100),
            "unit-decibels",
        )
        .evidence("evidence-bow-it-travels", Argument::Thousandths(planned_travel(planned)), "unit-bows")
        .seconds("evidence-note-lasts", stroke.duration.micros)
        .cause(format!("{}/{}", level / 100, stroke.length))
        .propose_change(
            Grade::PlayersChoice,
            ProposalKind::Hook,
            Saying::new("offer-hook-short-note"),
            hooked(piece, at, index, turned),
        )
        .propose(Grade::WritersChoice, ProposalKind::Split, Saying::new("offer-split-long-beside"))
        .sketched(long_slur_in_two(piece, at, index));
    Some(piece.with_tempo_assumption(draft, line))
}

/// How far the note may travel without sticking out, thousandths of the hair.
fn quiet_travel(piece: &Piece<'_>, at: usize, stroke: &Stroke) -> u16 {
    let (hair, least) = (piece.hair(at), piece.thresholds().return_level);
    let level = |travel: i64| {
        let speed = speed_over((travel - GRID_TRAVEL).max(0), stroke, hair).unsigned_abs();
        centibels(speed.max(1), u64::from(stroke.speed.preferred.max(1)))
    };
    (0..1000u16).take_while(|travel| level(i64::from(*travel)) < least).last().unwrap_or(0)
}

/// The longer of the strokes beside the short one, its slur in two.
fn long_slur_in_two(piece: &Piece<'_>, at: usize, index: usize) -> Vec<Change> {
    let line = &piece.lines[at];
    let beside = [index.checked_sub(1), Some(index + 1)].into_iter().flatten();
    let strokes = beside.filter_map(|beside| line.strokes.get(beside));
    let longest = strokes.max_by_key(|stroke| stroke.duration.micros);
    longest.map(|stroke| split::in_two(piece, line, stroke)).unwrap_or_default()
}

/// Whether the note goes straight on from a stroke at least twice as long.
fn after_a_longer(piece: &Piece<'_>, at: usize, index: usize) -> bool {
    let (strokes, planned) = (&piece.lines[at].strokes, piece.planned(at));
    let own = strokes[index].duration.micros;
    let longer = |other: usize, link: usize| {
        let changes = planned.get(link).is_some_and(|planned| planned.link == Link::Change);
        changes && strokes.get(other).is_some_and(|stroke| stroke.duration.micros >= 2 * own)
    };
    index.checked_sub(1).is_some_and(|before| longer(before, index))
}
