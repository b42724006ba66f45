//! Which strokes of a line hang together: what one of them does can be felt at the others, and at no stroke besides.
//!
//! A line falls apart at its free joints. A repeated stretch holds what stands at its edges together, over the way back; what
//! lies between two free joints inside it hangs on nothing else.

use std::collections::BTreeSet;
use std::iter;
use std::ops::Range;

use super::Weighed;
use super::alternatives::{cut, independent};
use super::course::Course;
use crate::{Join, Line, RepeatedStretch};

/// Strokes that hang together.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct JoinedStrokes {
    /// Which strokes of the line, in their order; at least one.
    pub(crate) ranges: Vec<Range<usize>>,
    /// Which of the line's stretches lie in them.
    pub(crate) stretches: Vec<usize>,
}

/// All strokes of a line, each once.
pub(crate) fn joined_strokes(line: &Line) -> Vec<JoinedStrokes> {
    let mut all = Vec::new();
    let mut first = 0;
    while first < line.strokes.len() {
        let range = independent(line, &(first..first + 1));
        first = range.end.max(first + 1);
        all.extend(within(line, range));
    }
    all
}

/// What a range of strokes that hangs on nothing outside falls apart into.
fn within(line: &Line, range: Range<usize>) -> Vec<JoinedStrokes> {
    let whole = JoinedStrokes::new(line, vec![range.clone()]);
    // A stretch that crosses another is weighed by how long they are.
    if whole.stretches.is_empty() || crosses(&cut(line, &range)) {
        return vec![whole];
    }
    let stretches = whole.stretches.iter().map(|stretch| &line.repeats[*stretch]);
    let hinges: BTreeSet<usize> = stretches.flat_map(hinges).collect();
    let (mut alone, mut held): (Vec<JoinedStrokes>, Vec<Range<usize>>) = (Vec::new(), Vec::new());
    let mut from = range.start;
    while from < range.end {
        let joint = |at: &usize| line.strokes[*at].join == Join::Entry;
        let to = (from + 1..range.end).find(joint).unwrap_or(range.end);
        if hinges.range(from..to).next().is_none() {
            alone.push(JoinedStrokes { ranges: iter::once(from..to).collect(), stretches: Vec::new() });
        } else if let Some(last) = held.last_mut().filter(|last| last.end == from) {
            last.end = to;
        } else {
            held.push(from..to);
        }
        from = to;
    }
    alone.push(JoinedStrokes::new(line, held));
    alone
}

/// Whether a stretch of a line crosses another one.
fn crosses(line: &Line) -> bool {
    Course::new(line).returns.iter().any(|way| way.weight == Weighed::Afterwards)
}

/// The strokes from which and to which a stretch leads otherwise than from one to the next.
fn hinges(stretch: &RepeatedStretch) -> impl Iterator<Item = usize> + '_ {
    let later = stretch.later_endings.iter().scan(stretch.first_ending_end, |end, ending| {
        *end += ending.strokes;
        Some(*end)
    });
    let ends = [stretch.body_end, stretch.first_ending_end].into_iter().chain(later);
    iter::once(stretch.first).chain(ends.flat_map(|end| [end.saturating_sub(1), end]))
}

impl JoinedStrokes {
    fn new(line: &Line, ranges: Vec<Range<usize>>) -> Self {
        let (from, to) = (ranges[0].start, ranges[ranges.len() - 1].end);
        let within = |stretch: &RepeatedStretch| from <= stretch.first && stretch.end() <= to;
        let stretches = line.repeats.iter().enumerate().filter(|(_, stretch)| within(stretch));
        Self { stretches: stretches.map(|(index, _)| index).collect(), ranges }
    }

    /// The strokes as a line of their own, with their repeats.
    pub(crate) fn line(&self, whole: &Line) -> Line {
        let place = |stroke: usize| self.place(stroke);
        let repeats = self.stretches.iter().map(|stretch| {
            let stretch = &whole.repeats[*stretch];
            let later = stretch.later_endings.iter().scan(stretch.first_ending_end, |from, ending| {
                let strokes = place(*from + ending.strokes) - place(*from);
                *from += ending.strokes;
                Some(crate::LaterEnding { strokes, ..*ending })
            });
            RepeatedStretch {
                first: place(stretch.first),
                body_end: place(stretch.body_end),
                first_ending_end: place(stretch.first_ending_end),
                later_endings: later.collect(),
                ..*stretch
            }
        });
        let strokes = self.ranges.iter().flat_map(|range| &whole.strokes[range.clone()]);
        Line {
            strokes: strokes.cloned().collect(),
            repeats: repeats.collect(),
            voices: whole.voices.clone(),
            name: whole.name.clone(),
            ..*whole
        }
    }

    /// How many of the strokes stand before one of the line.
    fn place(&self, stroke: usize) -> usize {
        self.ranges.iter().map(|range| stroke.clamp(range.start, range.end) - range.start).sum()
    }

    /// How many they are.
    pub(crate) fn count(&self) -> usize {
        self.ranges.iter().map(ExactSizeIterator::len).sum()
    }

    /// The strokes of the line, one after the other.
    pub(crate) fn strokes(&self) -> impl Iterator<Item = usize> + '_ {
        self.ranges.iter().flat_map(Clone::clone)
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::plan::Grid;
    use crate::plan::tests::repeats::any_repeated_line;
    use crate::{PlanSettings, plan};

    proptest! {
        /// Each stroke stands in one place, and what the pieces cost by themselves is what the line costs: but for the turns of
        /// stretches that cross others, which are paid for what comes and not weighed.
        #[test]
        fn pieces_cost_what_the_line_costs(line in any_repeated_line(16, 3)) {
            let settings = PlanSettings { grid: Grid::Coarse, ..PlanSettings::default() };
            let pieces = joined_strokes(&line);
            let mut strokes: Vec<usize> = pieces.iter().flat_map(JoinedStrokes::strokes).collect();
            strokes.sort_unstable();
            prop_assert_eq!(strokes, (0..line.strokes.len()).collect::<Vec<_>>());
            let weighed = |line: &Line| {
                let planned = plan(line, &settings);
                let afterwards = planned.turns.iter().filter(|turn| turn.weighed == Weighed::Afterwards);
                planned.total.total() - afterwards.map(|turn| turn.cost.total()).sum::<i64>()
            };
            let apart: i64 = pieces.iter().map(|piece| weighed(&piece.line(&line))).sum();
            prop_assert_eq!(apart, weighed(&line));
        }
    }
}
