//! Leanings that give way to what somebody asks for.
//!
//! A line leans towards the lines of the same rhythm and towards its own figures elsewhere. Where a leader asks for a bow that
//! the plan would not take, the bows around it have to turn too; and a leader who has turned a phrase round means the phrase.
//! With the leanings in force the plan would turn one bow alone and pay for a hook before it and a lift after it, in order to
//! be with the others again as soon as it can: nobody plays so. So the stretch that turns round by itself is left to itself, as
//! far as the phrase goes; what lies beyond it leans as before.

use std::collections::BTreeSet;
use std::ops::Range;

use super::alternatives::{cut, independent, within};
use super::{Anchor, Plan, PlanSettings, PlannedStroke, Wished, settled};
use crate::phrase::CLEAR;
use crate::{Cost, Line};

/// The settings with the leanings taken out that would pull a line back around what is asked of it. `free` is the plan of the
/// whole line under the same settings without anchors.
///
/// Asked for is what the anchors name and the free plan does not do. Around it the line is planned without leanings to a
/// direction, from the free joint before to the free joint after; as far as it goes another way there than the free plan (at
/// most a bar may lie between two strokes that do) and within the phrase, such leanings are taken out. Leanings to change or not to change stay: they
/// hold in either direction.
///
/// ```
/// use arcata_bow::plan::{Anchor, giving_way, plan};
/// use arcata_bow::{Line, PlanSettings};
///
/// fn asked(line: &Line, settings: &PlanSettings, anchors: Vec<Anchor>) -> PlanSettings {
///     let free = plan(line, settings);
///     giving_way(line, &free, &PlanSettings { anchors, ..settings.clone() })
/// }
/// ```
#[must_use]
pub fn giving_way(line: &Line, free: &Plan, settings: &PlanSettings) -> PlanSettings {
    let asked: BTreeSet<usize> =
        settings.anchors.iter().filter(|anchor| is_new(free, anchor)).map(stroke).collect();
    let leans = settings.leanings.iter().any(is_to_a_direction);
    if !leans || asked.is_empty() {
        return settings.clone();
    }
    let mut turned: BTreeSet<usize> = BTreeSet::new();
    for around in blocks(line, &asked) {
        let mut alone = within(settings, &around);
        alone.leanings.retain(|leaning| !is_to_a_direction(leaning));
        let found = settled(&cut(line, &around), &alone).plan;
        let departs = |stroke: &usize| {
            let there = found.strokes.get(*stroke - around.start).map(way);
            there != free.strokes.get(*stroke).map(way)
        };
        let departing: Vec<usize> = around.clone().filter(departs).collect();
        for stretch in departing.chunk_by(|one, other| line.strokes[*other].bar - line.strokes[*one].bar <= 1)
        {
            let stretch = stretch[0]..stretch[stretch.len() - 1] + 1;
            for asked in asked.range(touched(line, &stretch)) {
                let phrase = phrase(line, *asked);
                turned.extend(stretch.start.max(phrase.start)..stretch.end.min(phrase.end));
            }
        }
    }
    let mut settings = settings.clone();
    settings.leanings.retain(|leaning| !is_to_a_direction(leaning) || !turned.contains(&leaning.stroke));
    settings
}

/// What a plan costs on top under leanings that it was not made with.
pub(super) fn given_up(all: &PlanSettings, kept: &PlanSettings, planned: &[PlannedStroke]) -> Cost {
    let mut cost = Cost::default();
    for leaning in all.leanings.iter().filter(|leaning| !kept.leanings.contains(leaning)) {
        if planned.get(leaning.stroke).is_some_and(|planned| !leaning.wished.is_met(planned)) {
            cost += Cost::of(leaning.term, leaning.thousandths);
        }
    }
    cost
}

fn is_new(free: &Plan, anchor: &Anchor) -> bool {
    free.strokes.get(anchor.stroke).is_some_and(|planned| {
        anchor.direction.is_some_and(|direction| direction != planned.direction)
            || anchor.link.is_some_and(|link| link != planned.link)
    })
}

const fn stroke(anchor: &Anchor) -> usize {
    anchor.stroke
}

const fn way(planned: &PlannedStroke) -> arcata_score::BowDirection {
    planned.direction
}

const fn is_to_a_direction(leaning: &super::Leaning) -> bool {
    matches!(leaning.wished, Wished::Goes(_))
}

/// The stretches between free joints in which something is asked for.
fn blocks(line: &Line, asked: &BTreeSet<usize>) -> Vec<Range<usize>> {
    let mut found: Vec<Range<usize>> = Vec::new();
    for stroke in asked {
        if found.last().is_none_or(|last| !last.contains(stroke)) {
            found.push(independent(line, &(*stroke..*stroke + 1)));
        }
    }
    found
}

/// Where nothing parts the phrases so many bars are looked at on either side: a period (rule of thumb).
const PERIOD: u32 = 8;

/// The strokes of the phrase that a stroke stands in.
fn phrase(line: &Line, stroke: usize) -> Range<usize> {
    let bar = line.strokes[stroke].bar;
    let near = |other: &usize| line.strokes[*other].bar.abs_diff(bar) < PERIOD;
    let begins = |other: &usize| line.strokes[*other].phrase.joint_before >= CLEAR;
    let ends = |other: &usize| line.strokes[*other].phrase.joint_after >= CLEAR;
    let first = (0..=stroke).rev().take_while(near).find(begins);
    let last = (stroke..line.strokes.len()).take_while(near).find(ends);
    let from = first.or_else(|| (0..=stroke).rev().take_while(near).last()).unwrap_or(stroke);
    let to = last.or_else(|| (stroke..line.strokes.len()).take_while(near).last()).unwrap_or(stroke);
    from..to + 1
}

/// The strokes of a stretch, and of the bars next to it: a hook asked for turns the strokes after it.
fn touched(line: &Line, stretch: &Range<usize>) -> Range<usize> {
    let (first, last) = (line.strokes[stretch.start].bar, line.strokes[stretch.end - 1].bar);
    let from = line.strokes.partition_point(|stroke| stroke.bar + 1 < first);
    from..line.strokes.partition_point(|stroke| stroke.bar <= last.saturating_add(1))
}

#[cfg(test)]
mod tests;
