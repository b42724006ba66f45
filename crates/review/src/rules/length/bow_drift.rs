//! # A pattern carries the bow to one end
//!
//! ## What it finds
//! A pattern of strokes that comes at least three times in a row without a rest, and whose down-bows and
//! up-bows are so unequal that, bowed as it comes at the speeds its dynamic wants, it carries the bow
//! more than half its length towards one end.
//!
//! ## Why it matters
//! Slurs of three and a single note, over and over: each slur takes more bow than the single note gives
//! back. The arm ends up at an end of the bow where the passage does not sound, or every single note
//! sticks out because it rushes.
//!
//! ## Example
//! ```music
//! quarter=84
//! violin: f (1/8 C5 D5 E5 F5 G5 F5 E5) D5 | (C5 D5 E5 F5 G5 F5 E5) D5 | (C5 D5 E5 F5 G5 F5 E5) D5 | (C5 D5 E5 F5 G5 F5 E5) D5 | 1/1 C5 |||
//! ```
//!
//! ## What it proposes
//! To hook the single note to the slur, with a stop (hook, player's choice; in the file as one mark on both
//! where the pattern is two strokes); to split the slur so that both directions weigh alike (split, writer's
//! choice). A pattern whose printed marks hook two strokes is left alone.
//!
//! ## What it cannot know
//! Whether the player evens the strokes out by playing the slurs near the bridge with little bow.
//!
//! ## Sources
//! A. Broadley, *Chats to 'Cello Students* (1899), mixed bowings: after an odd number of single notes
//! between slurs the single note must win the bow back. A 19th-century American self-instructor, p. 17:
//! the single note after three or seven slurred ones must take as much bow as all of them.

use arcata_bow::logarithm::centibels;
use arcata_bow::{Join, Line, Stroke, StrokeKind};
use arcata_languages::{Argument, Saying};
use arcata_score::BowDirection;

use crate::change::Change;
use crate::mechanics::preferred_travel;
use crate::other_bow::marks;
use crate::split;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct BowDrift;

/// Patterns of up to so many strokes are looked for; with an odd number of strokes the directions turn
/// round each time and the drift with them (rule of thumb).
const PATTERN_LENGTHS: [usize; 3] = [2, 4, 6];

impl Rule for BowDrift {
    const CARD: Card = Card {
        id: "bow-drift",
        family: Family::Length,
        gravest: Severity::C,
        lightest: Severity::C,
        reads: &[Reads::Slurs, Reads::Strokes, Reads::Bows, Reads::BowMarks],
        since: "0.1",
        title: "A pattern carries the bow to one end",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (at, line) in piece.lines.iter().enumerate() {
            let mut index = 0;
            while index < line.strokes.len() {
                let Some(run) = PATTERN_LENGTHS.iter().find_map(|length| run_of(line, index, *length)) else {
                    index += 1;
                    continue;
                };
                if let Some(draft) = drifting(piece, found, at, &run) {
                    found.report(draft);
                }
                index = run.end();
            }
        }
    }
}

/// A pattern repeated in a row.
struct Run {
    first: usize,
    length: usize,
    times: usize,
}

impl Run {
    fn end(&self) -> usize {
        self.first + self.length * self.times
    }
}

/// The longest run of a pattern that begins here, when it comes more than once.
fn run_of(line: &Line, first: usize, length: usize) -> Option<Run> {
    let pattern = line.strokes.get(first..first + length)?;
    let joined = pattern[1..].iter().all(|stroke| stroke.join == Join::Continues);
    let plain = pattern.iter().all(|stroke| stroke.kind != StrokeKind::Tremolo);
    if !joined || !plain {
        return None;
    }
    let mut times = 1;
    let again = |times: usize| line.strokes.get(first + length * times..first + length * (times + 1));
    while again(times).is_some_and(|next| next.iter().zip(pattern).all(|(a, b)| alike(a, b))) {
        times += 1;
    }
    (times > 1).then_some(Run { first, length, times })
}

fn alike(again: &Stroke, first: &Stroke) -> bool {
    again.join == Join::Continues
        && again.length == first.length
        && again.kind == first.kind
        && again.speed.preferred == first.speed.preferred
}

fn drifting(piece: &Piece<'_>, found: &Findings<'_>, at: usize, run: &Run) -> Option<Draft> {
    let (line, thresholds) = (&piece.lines[at], piece.thresholds());
    if run.times < thresholds.drift_repetitions || is_hooked_in_print(line, run) {
        return None;
    }
    let (mut there, mut back) = (0i64, 0i64);
    for (place, stroke) in line.strokes[run.first..run.first + run.length].iter().enumerate() {
        let side = if place % 2 == 0 { &mut there } else { &mut back };
        *side += preferred_travel(stroke, piece.hair(at));
    }
    let net = (there - back) * i64::try_from(run.times).unwrap_or(1);
    let (more, less) = (there.max(back), there.min(back));
    let level = centibels(more.unsigned_abs(), less.unsigned_abs().max(1));
    if net.abs() < thresholds.drift_travel || level < thresholds.drift_level {
        return None;
    }
    let first = piece.planned(at).get(run.first).map_or(BowDirection::Down, |planned| planned.direction);
    let to_tip = (net > 0) == (first == BowDirection::Down);
    let (down, up) = if to_tip { (more, less) } else { (less, more) };

    let draft = found.at_stroke(Severity::C, at, run.first);
    let sentence = Saying::new("say-bow-drift")
        .with("at", piece.where_is(draft.place()))
        .with("times", run.times)
        .choosing("end", if to_tip { "tip" } else { "frog" })
        .with("decibels", i64::from((level + 50) / 100));
    let draft = draft
        .say(sentence)
        .evidence(
            "evidence-times-in-a-row",
            Argument::Whole(i64::try_from(run.times).unwrap_or(i64::MAX)),
            "",
        )
        .evidence("evidence-each-time-down", Argument::Thousandths(down), "unit-bows")
        .evidence("evidence-each-time-up", Argument::Thousandths(up), "unit-bows")
        .evidence(
            "evidence-difference-of-level",
            Argument::Whole(i64::from(level + 50) / 100),
            "unit-decibels",
        )
        .propose_change(
            Grade::PlayersChoice,
            ProposalKind::Hook,
            Saying::new("offer-hook-short-to-long"),
            hooked(piece, at, run),
        )
        .propose(Grade::WritersChoice, ProposalKind::Split, Saying::new("offer-split-long-weigh-alike"))
        .sketched(long_slurs_in_two(piece, at, run));
    Some(piece.with_tempo_assumption(draft, line))
}

/// Whether printed marks take two neighbours of the run in one direction, so that it is not bowed as it
/// comes.
fn is_hooked_in_print(line: &Line, run: &Run) -> bool {
    line.strokes[run.first..run.end()]
        .windows(2)
        .any(|pair| pair[0].printed.is_some() && pair[0].printed == pair[1].printed)
}

/// The longest stroke of the pattern, its slur in two every time.
fn long_slurs_in_two(piece: &Piece<'_>, at: usize, run: &Run) -> Vec<Change> {
    let line = &piece.lines[at];
    let pattern = &line.strokes[run.first..run.first + run.length];
    let longest = (0..run.length).max_by_key(|place| (pattern[*place].duration.micros, run.length - place));
    let every = longest.into_iter().flat_map(|place| (run.first + place..run.end()).step_by(run.length));
    every.flat_map(|index| split::in_two(piece, line, &line.strokes[index])).collect()
}

/// For a pattern of two strokes: one mark on each long stroke and the short one after it, and the other way
/// the next time.
fn hooked(piece: &Piece<'_>, at: usize, run: &Run) -> Vec<Change> {
    let strokes = &piece.lines[at].strokes;
    let Some(planned) = piece.planned(at).get(run.first).filter(|_| run.length == 2) else {
        return Vec::new();
    };
    let short_first = strokes[run.first].duration < strokes[run.first + 1].duration;
    let first_long = run.first + usize::from(short_first);
    let mut direction = if short_first { planned.direction.other() } else { planned.direction };
    let mut pairs = Vec::new();
    for long in (first_long..run.end() - 1).step_by(2) {
        pairs.extend([(long, direction), (long + 1, direction)]);
        direction = direction.other();
    }
    marks(piece, at, pairs.into_iter())
}
