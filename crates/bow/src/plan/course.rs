//! The course of a line: which stroke follows which when the line is played with all its repeats.
//!
//! Stretches that lie inside one another or one after the other make a tree of [`Leg`]s, which the search
//! follows exactly. A stretch that crosses another (dal segno into the middle of a repeated one, say) has
//! no place in the tree: its ways are kept as [`Return`]s that are paid but not weighed.

use std::ops::Range;

use crate::{Line, Onward, RealTime, RepeatedStretch, Road};

/// A piece of the course.
#[derive(Debug)]
pub(crate) enum Leg {
    Stroke(usize),
    Cycle(Cycle),
}

/// A repeated stretch.
#[derive(Debug)]
pub(crate) struct Cycle {
    pub(crate) first: usize,
    /// One past its last stroke, endings included.
    pub(crate) end: usize,
    pub(crate) body: Vec<Leg>,
    /// The endings that lead back, at least one; one without legs where the body itself turns.
    pub(crate) endings: Vec<WalkEnding>,
}

#[derive(Debug)]
pub(crate) struct WalkEnding {
    pub(crate) legs: Vec<Leg>,
    /// Index into [`Course::returns`].
    pub(crate) turn: usize,
}

/// How a stroke is reached the first time.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct WayIn {
    /// The stroke played before; none at the beginning.
    pub(crate) before: Option<usize>,
    pub(crate) by: WalkBy,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum WalkBy {
    /// As printed, one after the other.
    Print,
    /// Over endings that are left out, with so much silence.
    Skip(RealTime),
    /// As if the piece began here.
    Anew,
}

/// Another way into a stroke, after its first.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Return {
    /// Index of the stretch in the line.
    pub(crate) stretch: usize,
    pub(crate) from: usize,
    pub(crate) to: usize,
    pub(crate) silence: RealTime,
    pub(crate) leads: Leads,
    pub(crate) weight: Weighed,
}

/// Where a turn leads.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Leads {
    /// Back to the beginning of a stretch.
    Back,
    /// On, over what the last pass leaves out.
    On,
}

/// Whether the search chose with the price of a turn in mind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Weighed {
    /// The optimum counts it.
    InSearch,
    /// The stretch crosses another one: the price is in the total, but the search did not look at it.
    /// The optimum cannot be cheaper than the total less these prices.
    Afterwards,
}

#[derive(Debug)]
pub(crate) struct Course {
    pub(crate) legs: Vec<Leg>,
    /// One for each stroke.
    pub(crate) into: Vec<WayIn>,
    /// In the order of the line's stretches, then of their endings.
    pub(crate) returns: Vec<Return>,
}

impl Course {
    pub(crate) fn new(line: &Line) -> Self {
        let count = line.strokes.len();
        let nested = nested(&line.repeats, count);
        let returns = returns(&line.repeats, count, &nested);
        let print = WayIn { before: None, by: WalkBy::Print };
        let mut course = Self { legs: Vec::new(), into: vec![print; count], returns };
        let mut legs = course.legs(line, 0..count, &nested);
        course.enter(line, &mut legs, print);
        course.legs = legs;
        for crossing in 0..course.returns.len() {
            let Return { to, leads, .. } = course.returns[crossing];
            if leads == Leads::On {
                course.into[to].by = WalkBy::Anew;
            }
        }
        course
    }

    /// The course of strokes that follow one another in no order of their own: each is reached as the
    /// search says.
    pub(crate) fn loose(count: usize) -> Self {
        let anywhere = WayIn { before: None, by: WalkBy::Print };
        Self { legs: Vec::new(), into: vec![anywhere; count], returns: Vec::new() }
    }

    /// The legs of a range of strokes; `inside` are the stretches in it, outer ones first.
    fn legs(&self, line: &Line, range: Range<usize>, inside: &[usize]) -> Vec<Leg> {
        let mut legs = Vec::new();
        let mut index = range.start;
        let mut left = inside;
        while index < range.end {
            let Some((outer, rest)) =
                left.split_first().filter(|(outer, _)| line.repeats[**outer].first == index)
            else {
                legs.push(Leg::Stroke(index));
                index += 1;
                continue;
            };
            let stretch = &line.repeats[*outer];
            let split = rest.partition_point(|inner| line.repeats[*inner].first < stretch.end());
            legs.push(Leg::Cycle(self.cycle(line, *outer, &rest[..split])));
            left = &rest[split..];
            index = stretch.end();
        }
        legs
    }

    fn cycle(&self, line: &Line, at: usize, inside: &[usize]) -> Cycle {
        let stretch = &line.repeats[at];
        let part = |range: Range<usize>| {
            let within: Vec<usize> =
                inside.iter().copied().filter(|inner| is_within(&line.repeats[*inner], &range)).collect();
            self.legs(line, range, &within)
        };
        let first_turn = self.returns.iter().position(|way| way.stretch == at).unwrap_or(0);
        let endings = parts(stretch).skip(1).enumerate();
        Cycle {
            first: stretch.first,
            end: stretch.end(),
            body: part(stretch.first..stretch.body_end),
            endings: endings
                .map(|(nth, range)| WalkEnding { legs: part(range), turn: first_turn + nth })
                .collect(),
        }
    }

    /// Writes down how each stroke of the legs is reached; returns the last stroke.
    fn enter(&mut self, line: &Line, legs: &mut [Leg], way: WayIn) -> Option<usize> {
        let mut way = way;
        for leg in legs {
            match leg {
                Leg::Stroke(index) => {
                    self.into[*index] = way;
                    way = WayIn { before: Some(*index), by: WalkBy::Print };
                }
                Leg::Cycle(cycle) => way = self.enter_cycle(line, cycle, way),
            }
        }
        way.before
    }

    /// The way on behind a cycle.
    fn enter_cycle(&mut self, line: &Line, cycle: &mut Cycle, way: WayIn) -> WayIn {
        let exit = self.enter(line, &mut cycle.body, way);
        let mut onward = WayIn { before: exit, by: WalkBy::Print };
        let Some(turn) = cycle.endings.first().map(|ending| ending.turn) else { return onward };
        let stretch = &line.repeats[self.returns[turn].stretch];
        let later = stretch.later_endings.iter().map(|ending| ending.silence_at_skip);
        let skips: Vec<RealTime> = std::iter::once(stretch.silence_at_skip).chain(later).collect();
        for (ending, silence) in cycle.endings.iter_mut().zip(skips) {
            let last = self.enter(line, &mut ending.legs, onward).or(exit);
            if let Some(last) = last {
                self.returns[ending.turn].from = last;
            }
            if stretch.end() > stretch.body_end {
                onward.by = WalkBy::Skip(silence);
            }
        }
        if stretch.onward == Onward::Anew {
            onward.by = WalkBy::Anew;
        }
        onward
    }
}

/// The body of a stretch, then its endings (one without strokes when there are none).
fn parts(stretch: &RepeatedStretch) -> impl Iterator<Item = Range<usize>> + '_ {
    let later = stretch.later_endings.iter().scan(stretch.first_ending_end, |begin, ending| {
        let range = *begin..*begin + ending.strokes;
        *begin = range.end;
        Some(range)
    });
    [stretch.first..stretch.body_end, stretch.body_end..stretch.first_ending_end].into_iter().chain(later)
}

fn is_within(inner: &RepeatedStretch, range: &Range<usize>) -> bool {
    range.start <= inner.first && inner.end() <= range.end
}

/// Whether one of two stretches lies in one part of the other, or behind it.
fn nests(one: &RepeatedStretch, other: &RepeatedStretch) -> bool {
    one.end() <= other.first
        || other.end() <= one.first
        || parts(one).any(|part| is_within(other, &part))
        || parts(other).any(|part| is_within(one, &part))
}

/// The stretches that make a tree, outer ones first. Of two that cross the one between repeat signs
/// stays, then the shorter.
fn nested(repeats: &[RepeatedStretch], count: usize) -> Vec<usize> {
    let mut order: Vec<usize> = (0..repeats.len()).filter(|at| repeats[*at].is_sound(count)).collect();
    let length = |at: usize| repeats[at].end() - repeats[at].first;
    order.sort_by_key(|at| (repeats[*at].road != Road::RepeatSign, length(*at), *at));
    let mut kept: Vec<usize> = Vec::new();
    for at in order {
        if kept.iter().all(|other| nests(&repeats[*other], &repeats[at])) {
            kept.push(at);
        }
    }
    // Of two as long as each other the one without endings of its own lies outside, then the higher road.
    kept.sort_by_key(|at| {
        let stretch = &repeats[*at];
        let undivided = stretch.body_end == stretch.end();
        (stretch.first, std::cmp::Reverse((stretch.end(), undivided, stretch.road, *at)))
    });
    kept
}

/// The ways back of every sound stretch, and the ways on of those that cross others.
fn returns(repeats: &[RepeatedStretch], count: usize, nested: &[usize]) -> Vec<Return> {
    let mut returns = Vec::new();
    for (at, stretch) in repeats.iter().enumerate().filter(|(_, stretch)| stretch.is_sound(count)) {
        let weight = if nested.contains(&at) { Weighed::InSearch } else { Weighed::Afterwards };
        let later = stretch.later_endings.iter().map(|ending| ending.silence_at_turn);
        let silences = std::iter::once(stretch.silence_at_turn).chain(later);
        for (part, silence) in parts(stretch).skip(1).zip(silences) {
            let from = if part.is_empty() { stretch.body_end - 1 } else { part.end - 1 };
            let (to, leads) = (stretch.first, Leads::Back);
            returns.push(Return { stretch: at, from, to, silence, leads, weight });
        }
        let end = stretch.end();
        if weight == Weighed::Afterwards && stretch.body_end < end && end < count {
            let silence =
                stretch.later_endings.last().map_or(stretch.silence_at_skip, |last| last.silence_at_skip);
            let (from, leads) = (stretch.body_end - 1, Leads::On);
            returns.push(Return { stretch: at, from, to: end, silence, leads, weight });
        }
    }
    returns
}
