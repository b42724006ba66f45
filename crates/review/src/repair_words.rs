//! Repairs in a player's words: what is changed, and what it is good for.

use arcata_bow::plan::{ChangeKind, NotationChange};
use arcata_bow::{Line, Link, MetricPlace, Plan, StrokeKind, Term};
use arcata_score::{BowDirection, Length, Moment, Score, places};

use crate::words::seconds;

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
pub fn place(score: &Score, part: usize, bar: u32, offset: Length) -> String {
    places::place_said("bar", None, score.bar_label(bar), score.beat_at(part, bar, offset))
}

/// What a writer does, with its place.
#[must_use]
pub fn what(score: &Score, part: usize, change: &NotationChange) -> String {
    let at = place(score, part, change.bar, change.offset);
    match change.kind {
        ChangeKind::Split => format!("Split the slur at {at}"),
        ChangeKind::SplitTie => format!("Change the bow on the tied note at {at}"),
        ChangeKind::EndEarlier => format!("End the slur one note earlier, before {at}"),
        ChangeKind::BeginLater => format!("Begin the slur one note later, at {at}"),
        ChangeKind::JoinNotes => format!("Slur the note at {at} to the one before it"),
        ChangeKind::JoinSlurs => format!("Join the slurs that meet at {at}"),
        ChangeKind::EndLater => format!("End the slur one note later, at {at}"),
        ChangeKind::BeginEarlier => format!("Begin the slur of {at} one note earlier"),
        ChangeKind::HandOverLater => format!("Let the slur end one note later and the next begin at {at}"),
        ChangeKind::HandOverEarlier => {
            format!("Let the slur end one note earlier and the next begin at {at}")
        }
        ChangeKind::Hook => format!("Hook the note at {at} to the one before it"),
    }
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
) -> String {
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
        Some(good) => format!("{what}: {good}."),
        None => format!("{what}."),
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

/// "bar 9 then begins down", "bars 9, 11 and 12 then begin down".
fn begin_down(score: &Score, bars: &[u32]) -> String {
    let label = |bar: &u32| places::label_said("bar", score.bar_label(*bar));
    let labels: Vec<String> = bars.iter().map(label).collect();
    match labels.as_slice() {
        [] => String::new(),
        [one] => format!("bar {one} then begins down"),
        [one, other] => format!("bars {one} and {other} then begin down"),
        [one, other, third] => format!("bars {one}, {other} and {third} then begin down"),
        [first, .., last] => {
            format!("{} bars from {first} to {last} then begin down", labels.len())
        }
    }
}

/// Where a bow that had too little time is divided, and at least so much is gained by it (thousandths of
/// a point).
fn more_time(
    before: PlannedLine<'_>,
    after: PlannedLine<'_>,
    change: &NotationChange,
    least: i64,
) -> Option<String> {
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
    let lasting = |bowed: PlannedLine<'_>, strokes: &std::ops::Range<usize>| -> Vec<String> {
        let strokes = bowed.line.strokes.get(strokes.clone()).unwrap_or_default();
        strokes.iter().map(|stroke| seconds(stroke.duration.micros)).collect()
    };
    let (long, short) = (lasting(before, &change.before), lasting(after, &change.after));
    Some(format!("bows of {} instead of {}", short.join(" and "), long.join(" and ")))
}

/// The first hook or retake that is no longer needed.
fn spared(
    score: &Score,
    before: PlannedLine<'_>,
    after: PlannedLine<'_>,
    within: impl Fn(u32, Length) -> bool,
) -> Option<String> {
    let link_after = |onset: Moment| {
        let at = after.line.strokes.binary_search_by_key(&onset, |stroke| stroke.onset).ok()?;
        after.plan.strokes.get(at).map(|planned| planned.link)
    };
    before.line.strokes.iter().zip(&before.plan.strokes).find_map(|(stroke, planned)| {
        let what = match planned.link {
            Link::Hooked => "no hook is needed",
            Link::Retake => "no retake is needed",
            Link::Change | Link::Reset => return None,
        };
        if !within(stroke.bar, stroke.offset) {
            return None;
        }
        let gone = link_after(stroke.onset).is_none_or(|link| link == Link::Change);
        gone.then(|| format!("{what} at {}", place(score, before.line.part, stroke.bar, stroke.offset)))
    })
}

/// A stroke in a few words: `up-bow from bar 8, beat 1, 2.4 s, 61 % of the bow`.
#[must_use]
pub fn stroke(score: &Score, bowed: PlannedLine<'_>, index: usize) -> String {
    let (Some(stroke), Some(planned)) = (bowed.line.strokes.get(index), bowed.plan.strokes.get(index)) else {
        return String::new();
    };
    let way = match planned.direction {
        BowDirection::Down => "down",
        BowDirection::Up => "up",
    };
    let hooked = if stroke.kind == StrokeKind::HookedPair { " hooked" } else { "" };
    let used = planned.start.abs_diff(planned.end) / 10;
    format!(
        "{}{hooked} {way}, {}, {used} % of the bow",
        place(score, bowed.line.part, stroke.bar, stroke.offset),
        seconds(stroke.duration.micros)
    )
}
