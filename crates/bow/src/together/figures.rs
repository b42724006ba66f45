//! Figures that come back: the same strokes with the same intervals at the same place of the bar.

use std::collections::BTreeMap;
use std::ops::Range;

use arcata_score::{Length, NoteKind, Score};
use rustc_hash::FxHashMap;

use super::groups::first_pitch;
use super::{About, Agreement, Member};
use crate::{BarEnd, Join, Line, Stroke, StrokeKind, Term, Weights};

/// So many strokes in a row make a figure: fewer are found everywhere (rule of thumb).
const FIGURE: usize = 4;

/// What makes two strokes alike, wherever they stand in pitch.
#[derive(Clone, PartialEq, Eq, Hash)]
struct FigureToken {
    offset: Length,
    length: Length,
    kind: StrokeKind,
    /// The notes inside: where they begin after the first, and how far from it, in cents.
    inside: Vec<(Length, i32)>,
}

/// A number for each token, and the interval to the next stroke; equal numbers are equal tokens.
struct FigureSpelling {
    tokens: Vec<u32>,
    /// From each stroke's first note to the next stroke's, cents.
    steps: Vec<i32>,
}

fn spell(score: &Score, line: &Line, known: &mut FxHashMap<FigureToken, u32>) -> FigureSpelling {
    let pitches: Vec<i32> =
        line.strokes.iter().map(|stroke| first_pitch(score, line, stroke).unwrap_or(0)).collect();
    let tokens = line
        .strokes
        .iter()
        .map(|stroke| {
            let next = u32::try_from(known.len()).unwrap_or(u32::MAX);
            *known.entry(token(score, line, stroke)).or_insert(next)
        })
        .collect();
    let steps = pitches.windows(2).map(|pair| pair[1] - pair[0]).chain([0]).collect();
    FigureSpelling { tokens, steps }
}

fn token(score: &Score, line: &Line, stroke: &Stroke) -> FigureToken {
    let part = &score.parts[line.part];
    let notes = stroke.notes.iter().map(|id| part.note(*id)).filter(|note| note.kind == NoteKind::Ordinary);
    let mut sounding = notes.filter_map(|note| note.pitch.cents().map(|cents| (note.onset, cents)));
    let first = sounding.next();
    let inside = first.map_or_else(Vec::new, |(onset, cents)| {
        sounding
            .filter(|(later, _)| *later > onset)
            .map(|(later, other)| (later - onset, other - cents))
            .collect()
    });
    FigureToken { offset: stroke.offset, length: stroke.length, kind: stroke.kind, inside }
}

/// Likeness: strokes that stand in the same figure at the same place of it. A stroke goes by the figure
/// that begins with it, or else by the one that ends with it.
pub(super) fn agreements(score: &Score, lines: &[Line], weights: &Weights) -> Vec<Agreement> {
    let mut known = FxHashMap::default();
    let spellings: Vec<FigureSpelling> = lines.iter().map(|line| spell(score, line, &mut known)).collect();
    let ahead = windows(lines, &spellings, 0);
    let behind = windows(lines, &spellings, FIGURE - 1);
    let mut taken: Vec<Vec<bool>> = lines.iter().map(|line| vec![false; line.strokes.len()]).collect();
    let mut found = Vec::new();
    for class in ahead.into_iter().chain(behind) {
        let agrees = |(line, stroke): &(usize, usize)| {
            !taken[*line][*stroke] && lines[*line].strokes[*stroke].kind != StrokeKind::Tremolo
        };
        let class: Vec<(usize, usize)> = class.into_iter().filter(agrees).collect();
        if class.len() < 2 {
            continue;
        }
        for (line, stroke) in &class {
            taken[*line][*stroke] = true;
        }
        found.push(agreement(&class, weights));
    }
    found
}

/// The places of every figure that stands more than once in a movement, in order of the first; `at` is which of its
/// strokes is told.
fn windows(lines: &[Line], spellings: &[FigureSpelling], at: usize) -> Vec<Vec<(usize, usize)>> {
    let mut order: Vec<Vec<(usize, usize)>> = Vec::new();
    let mut places: FxHashMap<(usize, &[u32], &[i32]), usize> = FxHashMap::default();
    for (index, (line, spelling)) in lines.iter().zip(spellings).enumerate() {
        for first in 0..(line.strokes.len() + 1).saturating_sub(FIGURE) {
            let tokens = &spelling.tokens[first..first + FIGURE];
            let key = (line.movement, tokens, &spelling.steps[first..first + FIGURE - 1]);
            let class = *places.entry(key).or_insert_with(|| {
                order.push(Vec::new());
                order.len() - 1
            });
            order[class].push((index, first + at));
        }
    }
    order.retain(|class| class.len() > 1);
    order
}

/// Neighbouring bars of one line with the same strokes, whatever their pitches: each stroke had better go as the one at
/// its place in the bar before. Bars of an odd number of strokes come out mirrored by plain alternation, which is an
/// ordinary thing: where no hook of the last two mends it, they need not go the same way. All agree on where the bow does
/// not change, so that bars of an odd number are all mirrored, or all begin alike.
pub(super) fn bars(lines: &[Line], weights: &Weights) -> Vec<Agreement> {
    let mut found = Vec::new();
    for (index, line) in lines.iter().enumerate() {
        let mut bars: Vec<Range<usize>> = Vec::new();
        for strokes in line.strokes.chunk_by(|a, b| a.bar == b.bar) {
            let first = bars.last().map_or(0, |bar| bar.end);
            bars.push(first..first + strokes.len());
        }
        for run in bars.chunk_by(|one, other| are_alike(line, one, other)) {
            let count = run[0].len();
            if run.len() < 2 || count < 2 {
                continue;
            }
            let agreement = |place: usize, thousandths: i64, about: About| Agreement {
                members: run
                    .iter()
                    .map(|bar| Member { line: index, stroke: bar.start + place, thousandths })
                    .collect(),
                term: Term::Likeness,
                about,
            };
            if count.is_multiple_of(2) || ends_in_two(&line.strokes[run[0].clone()]) {
                let bowed = |place: &usize| line.strokes[run[0].start + place].kind != StrokeKind::Tremolo;
                let places = (0..count).filter(bowed);
                found.extend(places.map(|place| agreement(place, weights.likeness_bars, About::Direction)));
            }
            // One change more or less turns all that follows about.
            let whole = weights.likeness_bars * i64::try_from(count).unwrap_or(1);
            let goes_on = |place: &usize| line.strokes[run[0].start + place].join == Join::Continues;
            found.extend((1..count).filter(goes_on).map(|place| agreement(place, whole, About::Change)));
        }
    }
    found
}

/// Whether a bar ends with two notes of one length, each a stroke.
fn ends_in_two(bar: &[Stroke]) -> bool {
    let one_note = |stroke: &Stroke| matches!(stroke.kind, StrokeKind::Single | StrokeKind::Short);
    let [.., before, last] = bar else { return false };
    one_note(before)
        && one_note(last)
        && before.length == last.length
        && last.emphasis.bar_end == BarEnd::With
}

fn are_alike(line: &Line, one: &Range<usize>, other: &Range<usize>) -> bool {
    let (one, other) = (&line.strokes[one.clone()], &line.strokes[other.clone()]);
    let shape = |stroke: &Stroke| (stroke.offset, stroke.length, stroke.kind, stroke.note_count);
    one.len() == other.len()
        && one.iter().zip(other).all(|(one, other)| shape(one) == shape(other))
        && one.iter().zip(other).all(|(one, other)| one.bar + 1 == other.bar)
}

/// Within a line the price is the line's own; a figure that stands once in each of several lines is an
/// imitation.
fn agreement(class: &[(usize, usize)], weights: &Weights) -> Agreement {
    let mut in_line: BTreeMap<usize, usize> = BTreeMap::new();
    for (line, _) in class {
        *in_line.entry(*line).or_default() += 1;
    }
    let price = |line| if in_line[&line] > 1 { weights.likeness } else { weights.imitation };
    let members = class
        .iter()
        .map(|(line, stroke)| Member { line: *line, stroke: *stroke, thousandths: price(*line) })
        .collect();
    Agreement { members, term: Term::Likeness, about: About::Direction }
}
