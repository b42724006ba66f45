//! # A bar that comes out odd
//!
//! ## What it finds
//! The same bar, rhythm and slurs alike, four times or more in a row with an odd number of bows: as it comes it begins on
//! the other bow each time, and in the best bowing there is it does so too, or is hooked or lifted every time. What has no
//! shape that the bow would have to show is left to go on as it comes: five or more equal strokes, three equal slurs, a
//! note repeated through each bar; and what does not want its weight on the first stroke: a syncopation over the middle of
//! the bar, an accent that stands elsewhere. So are bars shorter than a second, where nobody has the time to set anything
//! right.
//!
//! ## Why it matters
//! The pattern sounds one way from the down-bow and another from the up-bow; what is written as the same comes out in two
//! kinds by turns.
//!
//! ## Example
//! ```music
//! quarter=160  time 3/4
//! violin: mf 1/4 C5 E5 G5 | C5 E5 G5 | C5 E5 G5 | C5 E5 G5 | C5 E5 G5 | 3/4 C5 |||
//! ```
//!
//! ## What it proposes
//! To hook the last two bows of each bar (hook, player's choice); to join two notes, or take one apart (join, writer's
//! choice).
//!
//! ## What it cannot know
//! Whether turning about is wanted, as in a fast waltz or a run. Marks that fix the bows are taken as meant.
//!
//! ## Sources
//! Lenton 1693 (bars of three in minuets are bowed so that each begins down); Montéclair 1711.

use std::ops::Range;

use arcata_bow::{Join, Line, Link, Stroke, StrokeKind};
use arcata_languages::{Argument, Saying};
use arcata_score::BowDirection;

use crate::change::Change;
use crate::other_bow::marks;
use crate::under_slur::note;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct BarComesOutOdd;

/// So many equal strokes in a bar are a row (rule of thumb).
const MANY: usize = 5;
/// Fewer turns are soon over (rule of thumb).
const TIMES: usize = 4;
/// In a shorter bar players go on as it comes, microseconds (common practice in scherzos; the figure is a rule of thumb).
const QUICK: i64 = 1_000_000;

impl Rule for BarComesOutOdd {
    const CARD: Card = Card {
        id: "bar-comes-out-odd",
        family: Family::Beat,
        gravest: Severity::C,
        lightest: Severity::C,
        reads: &[Reads::Slurs, Reads::Strokes, Reads::Bows, Reads::BowMarks],
        since: "0.1",
        title: "A bar that comes out odd",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (at, line) in piece.lines.iter().enumerate() {
            let bars = bars(line);
            let mut first = 0;
            while first < bars.len() {
                let run = run(line, &bars[first..]);
                let same = &bars[first..first + run];
                if run >= TIMES
                    && wants_its_downbeat(piece, line, same)
                    && let Some(bowed) = bowed(piece, at, same)
                {
                    let draft = odd(piece, found, at, same, bowed);
                    found.report(draft);
                }
                first += run.max(1);
            }
        }
    }
}

/// The strokes of each bar that begins with one.
fn bars(line: &Line) -> Vec<Range<usize>> {
    let mut bars: Vec<Range<usize>> = Vec::new();
    for (index, stroke) in line.strokes.iter().enumerate() {
        match bars.last_mut() {
            Some(last) if line.strokes[last.start].bar == stroke.bar => last.end = index + 1,
            _ => bars.push(index..index + 1),
        }
    }
    bars
}

/// How many bars in a row are alike, straight on, with an odd number of bows.
fn run(line: &Line, bars: &[Range<usize>]) -> usize {
    let Some(first) = bars.first() else { return 0 };
    let pattern = &line.strokes[first.clone()];
    let full = pattern[0].offset.is_zero() && pattern.len() % 2 == 1 && pattern.len() > 1;
    let plain = pattern.iter().all(|stroke| stroke.kind != StrokeKind::Tremolo);
    // Many equal strokes have no shape that a bow would have to show: they go on as they come.
    let even = pattern.len() >= MANY
        && pattern.iter().all(|stroke| stroke.length == pattern[0].length && stroke.kind == pattern[0].kind);
    let lasts: i64 = pattern.iter().map(|stroke| stroke.duration.micros + stroke.silence_after.micros).sum();
    if !full || !plain || even || lasts < QUICK {
        return 1;
    }
    let again = |bar: &Range<usize>, number: usize| {
        let strokes = &line.strokes[bar.clone()];
        let follows = line.strokes[first.start].bar as usize + number == strokes[0].bar as usize;
        let alike = |(one, other): (&Stroke, &Stroke)| {
            one.offset == other.offset && one.length == other.length && one.kind == other.kind
        };
        let straight = strokes
            .iter()
            .enumerate()
            .all(|(place, stroke)| stroke.join == Join::Continues || (place == 0 && number == 0));
        follows && straight && strokes.len() == pattern.len() && pattern.iter().zip(strokes).all(alike)
    };
    bars.iter().enumerate().take_while(|(number, bar)| again(bar, *number)).count().max(1)
}

/// Whether it matters to the bars on which bow they begin.
fn wants_its_downbeat(piece: &Piece<'_>, line: &Line, bars: &[Range<usize>]) -> bool {
    let Some(pattern) = bars.first().map(|bar| &line.strokes[bar.clone()]) else { return false };
    let heavier = pattern.iter().skip(1).any(|stroke| stroke.emphasis.accent > pattern[0].emphasis.accent);
    let equal = pattern.iter().all(|stroke| stroke.length == pattern[0].length);
    let slurs = equal && pattern.iter().all(|stroke| stroke.note_count > 1);
    let pitch = |stroke: &Stroke| {
        let first = piece.score.parts.get(line.part).and_then(|part| note(part, *stroke.notes.first()?));
        first.map(|note| note.pitch)
    };
    let repeated = equal
        && bars
            .iter()
            .all(|bar| line.strokes[bar.clone()].windows(2).all(|pair| pitch(&pair[0]) == pitch(&pair[1])));
    !heavier && !slurs && !repeated && !is_syncopated(piece, pattern)
}

/// Whether a note that begins within the first half of the bar is held over the middle, in a metre that has one.
fn is_syncopated(piece: &Piece<'_>, pattern: &[Stroke]) -> bool {
    let Some(bar) = pattern.first().and_then(|first| piece.score.bars.get(first.bar as usize)) else {
        return false;
    };
    let middle = bar.length.scaled(1, 2);
    let even = bar.length.numerator().count_ones() == 1;
    let over = |stroke: &Stroke| {
        stroke.note_count == 1
            && !stroke.offset.is_zero()
            && stroke.offset < middle
            && stroke.offset + stroke.length > middle
    };
    even && pattern.iter().any(over)
}

/// What the best bowing does about it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum OddBarBowed {
    /// The bars begin on the other bow each time.
    Turning,
    /// Every bar that does not turn is hooked, or lifted.
    Evened,
}

/// How the bars are bowed; `None` where they begin alike by themselves, or printed marks say how.
fn bowed(piece: &Piece<'_>, at: usize, bars: &[Range<usize>]) -> Option<OddBarBowed> {
    let (planned, strokes) = (piece.planned(at), &piece.lines[at].strokes);
    let all = bars.first()?.start..bars.last()?.end;
    if planned.is_empty() || strokes[all].iter().any(|stroke| stroke.printed.is_some()) {
        return None;
    }
    let held = |bar: &Range<usize>| {
        let links = &planned[bar.start + 1..bar.end];
        links.iter().any(|stroke| matches!(stroke.link, Link::Hooked | Link::Retake))
    };
    let turns = |pair: &[Range<usize>]| planned[pair[0].start].direction != planned[pair[1].start].direction;
    if bars.windows(2).all(turns) {
        Some(OddBarBowed::Turning)
    } else if bars.windows(2).all(|pair| turns(pair) || held(&pair[0])) {
        Some(OddBarBowed::Evened)
    } else {
        None
    }
}

fn odd(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    at: usize,
    bars: &[Range<usize>],
    bowed: OddBarBowed,
) -> Draft {
    let draft = found.at_stroke(Severity::C, at, bars[0].start);
    let sentence = Saying::new("say-bar-comes-out-odd")
        .with("at", piece.where_is(draft.place()))
        .with("times", bars.len())
        .with("bows", bars[0].len())
        .choosing(
            "bowed",
            match bowed {
                OddBarBowed::Turning => "turning",
                OddBarBowed::Evened => "evened",
            },
        );
    let number = |count: usize| Argument::Whole(i64::try_from(count).unwrap_or(i64::MAX));
    draft
        .say(sentence)
        .evidence("evidence-times-in-a-row", number(bars.len()), "")
        .evidence("evidence-bows", number(bars[0].len()), "")
        .cause(format!("{}", bars[0].len()))
        .propose_change(
            Grade::PlayersChoice,
            ProposalKind::Hook,
            Saying::new("offer-hook-last-two-bows"),
            hooked(piece, at, bars),
        )
        .propose(Grade::WritersChoice, ProposalKind::Join, Saying::new("offer-slur-two-notes"))
}

/// Down from the first on, the last two bows of each bar in one direction: three marks a bar say it.
fn hooked(piece: &Piece<'_>, at: usize, bars: &[Range<usize>]) -> Vec<Change> {
    let direction =
        |place: usize| if place.is_multiple_of(2) { BowDirection::Down } else { BowDirection::Up };
    let every = bars.iter().flat_map(|bar| {
        let last = bar.len() - 1;
        // With an odd number the last would be down: it stays up, with the one before it.
        let held = direction(last - 1);
        [(bar.start, BowDirection::Down), (bar.start + last - 1, held), (bar.start + last, held)]
    });
    marks(piece, at, every)
}
