//! Marks that belong together and mean something together: rows of down-bows, up-bows into a strong
//! down-bow, figures that are marked when they come first.

use std::collections::BTreeMap;
use std::ops::Range;

use arcata_score::{BowDirection, Length};

use crate::{Join, Line, MetricPlace, Plan, Profile, RealTime, Stroke, StrokeKind};

/// What a stroke is part of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Effect {
    /// A row of loud down-bows.
    Row,
    /// Up-bows into a strong down-bow.
    Ups,
    /// One of the first instances of a figure.
    Figure,
    /// A later instance.
    LaterFigure,
}

/// The longest figure that is looked for, strokes (rule of thumb).
const LONGEST_FIGURE: usize = 24;

/// The strokes that are part of an effect; `against` tells which go against alternation, `unmarked` is the best plan
/// without any mark: rows that players would take unasked are no effect, such as the last two notes of a bar of three.
pub(super) fn effects(
    line: &Line,
    (plan, unmarked): (&Plan, &Plan),
    against: &[bool],
    profile: &Profile,
) -> BTreeMap<usize, Effect> {
    let mut effects = BTreeMap::new();
    let comes = |run: &Range<usize>| {
        let both = plan.strokes[run.clone()].iter().zip(&unmarked.strokes[run.clone()]);
        both.into_iter().all(|(marked, unmarked)| marked.direction == unmarked.direction)
    };
    let instances = usize::try_from(profile.thresholds.effect_instances.value).unwrap_or(1).max(1);
    for figure in figures(line, against).into_iter().filter(|figure| !comes(&figure.strokes)) {
        for (nth, at) in figure.strokes.clone().enumerate() {
            let early = nth / figure.period < instances;
            effects.insert(at, if early { Effect::Figure } else { Effect::LaterFigure });
        }
    }
    let loud = i32::try_from(profile.thresholds.effect_loud.value).unwrap_or(i32::MAX);
    for run in runs(line, plan).into_iter().filter(|run| !comes(run)) {
        let is_down = plan.strokes[run.start].direction == BowDirection::Down;
        if is_down {
            for row in weighty(line, run, loud).filter(|row| row.len() > 1) {
                effects.extend(row.map(|at| (at, Effect::Row)));
            }
        } else if run.len() > 1 && leads_into_strong_down(line, plan, run.end) {
            effects.extend(run.map(|at| (at, Effect::Ups)));
        }
    }
    effects
}

/// Runs of strokes in one direction, cut where the bow is free.
fn runs(line: &Line, plan: &Plan) -> Vec<Range<usize>> {
    let mut runs: Vec<Range<usize>> = Vec::new();
    for (index, stroke) in line.strokes.iter().enumerate() {
        match runs.last_mut() {
            Some(run)
                if stroke.join != Join::Entry
                    && plan.strokes[run.start].direction == plan.strokes[index].direction =>
            {
                run.end = index + 1;
            }
            _ => runs.push(index..index + 1),
        }
    }
    runs
}

/// The pieces of a run in which every stroke is loud, accented or a chord.
fn weighty(line: &Line, run: Range<usize>, loud: i32) -> impl Iterator<Item = Range<usize>> {
    let has_weight = |stroke: &Stroke| {
        stroke.level_start.0 >= loud || stroke.emphasis.accent > 0 || stroke.kind == StrokeKind::BrokenChord
    };
    let mut pieces: Vec<Range<usize>> = Vec::new();
    for index in run.filter(|index| has_weight(&line.strokes[*index])) {
        match pieces.last_mut() {
            Some(piece) if piece.end == index => piece.end = index + 1,
            _ => pieces.push(index..index + 1),
        }
    }
    pieces.into_iter()
}

fn leads_into_strong_down(line: &Line, plan: &Plan, next: usize) -> bool {
    let Some(stroke) = line.strokes.get(next) else { return false };
    let strong = matches!(stroke.emphasis.metric, MetricPlace::Downbeat | MetricPlace::MidBar)
        || stroke.emphasis.accent > 0;
    strong && stroke.join != Join::Entry && plan.strokes[next].direction == BowDirection::Down
}

/// A figure that comes several times in a row with the same marks.
struct MarkedFigure {
    strokes: Range<usize>,
    period: usize,
}

/// What makes two strokes alike in a figure.
#[derive(PartialEq, Eq)]
struct EffectToken {
    length: Length,
    kind: StrokeKind,
    notes: u16,
    silence_after: RealTime,
    printed: Option<BowDirection>,
}

/// Figures of two strokes and more that come at least twice, one right after the other, with at least one
/// mark against alternation, the shortest first; each stroke belongs to one figure at most.
fn figures(line: &Line, against: &[bool]) -> Vec<MarkedFigure> {
    let tokens: Vec<EffectToken> = line
        .strokes
        .iter()
        .map(|stroke| EffectToken {
            length: stroke.length,
            kind: stroke.kind,
            notes: stroke.note_count,
            silence_after: stroke.silence_after,
            printed: stroke.printed,
        })
        .collect();
    let mut taken = vec![false; tokens.len()];
    let mut figures = Vec::new();
    for period in 2..=LONGEST_FIGURE.min(tokens.len() / 2) {
        let mut at = 0;
        while at + 2 * period <= tokens.len() {
            let alike = (at + period..tokens.len())
                .take_while(|index| {
                    !taken[*index] && !taken[index - period] && tokens[*index] == tokens[index - period]
                })
                .count();
            if alike < period {
                at += 1;
                continue;
            }
            let whole = at..at + period + alike;
            let strokes = from_a_beat(line, &whole, period);
            let marked = strokes.clone().any(|index| against[index] && tokens[index].printed.is_some());
            let changes = tokens[at..at + period].windows(2).any(|pair| pair[0] != pair[1]);
            if marked && changes {
                taken[whole.clone()].fill(true);
                figures.push(MarkedFigure { strokes, period });
            }
            at = whole.end;
        }
    }
    figures
}

/// The run of a figure from the strongest beat of its first instance on, if two instances are left.
fn from_a_beat(line: &Line, whole: &Range<usize>, period: usize) -> Range<usize> {
    let latest = (whole.end - 2 * period).min(whole.start + period - 1);
    let begin = (whole.start..=latest).min_by_key(|index| (line.strokes[*index].emphasis.metric, *index));
    begin.unwrap_or(whole.start)..whole.end
}
