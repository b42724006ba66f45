//! Repairs in a player's words: what is changed, and what it is good for.

use arcata_bow::plan::{ChangeKind, NotationChange};
use arcata_bow::{Line, Link, MetricPlace, Plan, StrokeKind, Term};
use arcata_languages::{Argument, SaidPlace, Saying};
use arcata_score::{BowDirection, Length, Moment, Score};

use crate::words::bow;

/// A line with the bow planned for it.
#[derive(Clone, Copy, Debug)]
pub struct PlannedLine<'a> {
    /// The line.
    pub line: &'a Line,
    /// Its plan.
    pub plan: &'a Plan,
}

/// A place as it is said: `bar 8, beat 3`.
#[must_use]
pub fn place(score: &Score, part: usize, bar: u32, offset: Length) -> SaidPlace {
    SaidPlace::bar(score.bar_label(bar)).on_beat(score.beat_at(part, bar, offset))
}

/// What a writer does, with its place; no full stop.
#[must_use]
pub fn what(score: &Score, part: usize, change: &NotationChange) -> Saying {
    let key = match change.kind {
        ChangeKind::Split => "repair-split",
        ChangeKind::SplitTie => "repair-split-tie",
        ChangeKind::EndEarlier => "repair-end-earlier",
        ChangeKind::BeginLater => "repair-begin-later",
        ChangeKind::JoinNotes => "repair-join-notes",
        ChangeKind::JoinSlurs => "repair-join-slurs",
        ChangeKind::EndLater => "repair-end-later",
        ChangeKind::BeginEarlier => "repair-begin-earlier",
        ChangeKind::HandOverLater => "repair-hand-over-later",
        ChangeKind::HandOverEarlier => "repair-hand-over-earlier",
        ChangeKind::Hook => "repair-hook",
    };
    Saying::new(key).with("at", place(score, part, change.bar, change.offset))
}

/// What comes of a change is told up to so many bars away: further on it is not seen on the page (rule of thumb).
const NEAR: u32 = 8;

/// A whole sentence for one of the changes of a repair: what is done, and what comes of it up to the
/// next change.
#[must_use]
pub fn sentence(
    score: &Score,
    (before, after): (PlannedLine<'_>, PlannedLine<'_>),
    changes: &[NotationChange],
    index: usize,
) -> Saying {
    let change = &changes[index];
    let what = what(score, after.line.part, change);
    let next = changes.get(index + 1).map(|next| (next.bar, next.offset));
    let within = |bar: u32, offset: Length| next.is_none_or(|next| (bar, offset) < next);
    let from = (change.bar, change.offset);
    let near = |bar: u32| bar.abs_diff(change.bar) <= NEAR;
    let here = |bar: u32, offset: Length| (bar, offset) >= from && within(bar, offset) && near(bar);
    let down = |bars: Option<Vec<u32>>| bars.map(|bars| begin_down(score, &bars));
    // Bars before a change belong to it only where no other change lies between.
    let earlier = |bar: u32, offset: Length| index == 0 && (bar, offset) < from && near(bar);
    // What is plainest comes first: a bow that was far too long, then the bars that come out right.
    let good = more_time(before, after, change, 2000)
        .or_else(|| down(turned_downbeats(before, after, here)))
        .or_else(|| more_time(before, after, change, 500))
        .or_else(|| spared(score, before, after, here))
        .or_else(|| down(turned_downbeats(before, after, earlier)));
    match good {
        Some(good) => Saying::new("offer-repair-and-gain").with("repair", what).with("gain", good),
        None => Saying::new("offer-repair").with("repair", what),
    }
}

/// The bars that begin on a down-bow after, but not before.
fn turned_downbeats(
    before: PlannedLine<'_>,
    after: PlannedLine<'_>,
    within: impl Fn(u32, Length) -> bool,
) -> Option<Vec<u32>> {
    let bars: Vec<u32> = after
        .line
        .strokes
        .iter()
        .zip(&after.plan.strokes)
        .filter(|(stroke, planned)| {
            stroke.emphasis.metric == MetricPlace::Downbeat
                && planned.direction == BowDirection::Down
                && within(stroke.bar, stroke.offset)
                && bow_at(before, stroke.onset) != Some(BowDirection::Down)
        })
        .map(|(stroke, _)| stroke.bar)
        .collect();
    (!bars.is_empty()).then_some(bars)
}

/// The bow of the stroke that begins at a moment.
fn bow_at(bowed: PlannedLine<'_>, onset: Moment) -> Option<BowDirection> {
    let at = bowed.line.strokes.binary_search_by_key(&onset, |stroke| stroke.onset).ok()?;
    bowed.plan.strokes.get(at).map(|planned| planned.direction)
}

/// The most bars that are named one by one (rule of thumb).
const NAMED: usize = 3;

/// "bar 9 then begins down", "bars 9, 11 and 12 then begin down".
fn begin_down(score: &Score, bars: &[u32]) -> Saying {
    let label = |bar: &u32| Argument::BarNumber(score.bar_label(*bar).to_owned());
    match bars {
        [first, .., last] if bars.len() > NAMED => Saying::new("gain-stretch-begins-down")
            .with("count", bars.len())
            .with("first", label(first))
            .with("last", label(last)),
        _ => Saying::new("gain-bars-begin-down")
            .with("count", bars.len())
            .with("bars", Argument::List(bars.iter().map(label).collect())),
    }
}

/// Where a bow that had too little time is divided, and at least so much is gained by it (thousandths of
/// a point).
fn more_time(
    before: PlannedLine<'_>,
    after: PlannedLine<'_>,
    change: &NotationChange,
    least: i64,
) -> Option<Saying> {
    let limit = |bowed: PlannedLine<'_>, strokes: &std::ops::Range<usize>| -> i64 {
        let planned = bowed.plan.strokes.get(strokes.clone()).unwrap_or_default();
        planned
            .iter()
            .map(|planned| planned.cost.term(Term::SpeedLimit) + planned.cost.term(Term::Speed))
            .sum()
    };
    let cuts = matches!(
        change.kind,
        ChangeKind::Split | ChangeKind::SplitTie | ChangeKind::EndEarlier | ChangeKind::BeginLater
    );
    if !cuts || limit(before, &change.before) - limit(after, &change.after) < least {
        return None;
    }
    let lasting = |bowed: PlannedLine<'_>, strokes: &std::ops::Range<usize>| -> Argument {
        let strokes = bowed.line.strokes.get(strokes.clone()).unwrap_or_default();
        Argument::List(strokes.iter().map(|stroke| Argument::Seconds(stroke.duration.micros)).collect())
    };
    let (long, short) = (lasting(before, &change.before), lasting(after, &change.after));
    Some(Saying::new("gain-more-time").with("short", short).with("long", long))
}

/// The first hook or retake that is no longer needed.
fn spared(
    score: &Score,
    before: PlannedLine<'_>,
    after: PlannedLine<'_>,
    within: impl Fn(u32, Length) -> bool,
) -> Option<Saying> {
    let link_after = |onset: Moment| {
        let at = after.line.strokes.binary_search_by_key(&onset, |stroke| stroke.onset).ok()?;
        after.plan.strokes.get(at).map(|planned| planned.link)
    };
    before.line.strokes.iter().zip(&before.plan.strokes).find_map(|(stroke, planned)| {
        let what = match planned.link {
            Link::Hooked => "gain-no-hook",
            Link::Retake => "gain-no-retake",
            Link::Change | Link::Reset => return None,
        };
        if !within(stroke.bar, stroke.offset) {
            return None;
        }
        let gone = link_after(stroke.onset).is_none_or(|link| link == Link::Change);
        gone.then(|| Saying::new(what).with("at", place(score, before.line.part, stroke.bar, stroke.offset)))
    })
}

/// A stroke in a few words: `up-bow from bar 8, beat 1, 2.4 s, 61 % of the bow`.
#[must_use]
pub fn stroke(score: &Score, bowed: PlannedLine<'_>, index: usize) -> Option<Saying> {
    let (stroke, planned) = (bowed.line.strokes.get(index)?, bowed.plan.strokes.get(index)?);
    let hooked = if stroke.kind == StrokeKind::HookedPair { "hooked" } else { "plain" };
    Some(
        Saying::new("stroke-shown")
            .with("at", place(score, bowed.line.part, stroke.bar, stroke.offset))
            .choosing("hooked", hooked)
            .choosing("bow", bow(planned.direction))
            .with("lasts", Argument::Seconds(stroke.duration.micros))
            .with("used", i64::from(planned.start.abs_diff(planned.end) / 10)),
    )
}
