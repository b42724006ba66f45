//! How fast strokes and attacks follow each other, in hundreds a second like the rates of the profile.

use std::ops::Range;

use arcata_bow::{Join, Line, Stroke, StrokeKind};
use arcata_languages::Argument;

/// Attacks of a stroke in 100 s, by the time that it takes; `None` for a stroke that takes none.
pub(crate) fn rate_of(stroke: &Stroke) -> Option<i64> {
    rate(i64::from(stroke.note_count), stroke.duration.micros)
}

/// So many attacks in so many microseconds, as attacks in 100 s, rounded.
pub(crate) fn rate(attacks: i64, micros: i64) -> Option<i64> {
    (micros > 0).then(|| (attacks.saturating_mul(100_000_000) + micros / 2) / micros)
}

/// A rate as it is said, a second with one place: `7.2`.
pub(crate) fn said_rate(rate: i64) -> Argument {
    Argument::Thousandths((rate + 5) / 10 * 100)
}

/// Single strokes of one length that follow straight on, with how fast they come.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct EvenRun {
    /// Indices of the strokes.
    pub(crate) strokes: Range<usize>,
    /// Strokes in 100 s.
    pub(crate) rate: i64,
}

/// The runs of even single strokes of a line, each at least so many strokes long.
pub(crate) fn even_runs(line: &Line, least: usize) -> Vec<EvenRun> {
    let single = |stroke: &Stroke| {
        matches!(stroke.kind, StrokeKind::Single | StrokeKind::Short) && stroke.note_count == 1
    };
    let mut runs: Vec<Range<usize>> = Vec::new();
    for (index, stroke) in line.strokes.iter().enumerate().filter(|(_, stroke)| single(stroke)) {
        let follows = |run: &Range<usize>| {
            let before = &line.strokes[run.end - 1];
            run.end == index && stroke.join == Join::Continues && before.length == stroke.length
        };
        match runs.last_mut() {
            Some(run) if follows(run) => run.end = index + 1,
            _ => runs.push(index..index + 1),
        }
    }
    let long = runs.into_iter().filter(|run| run.len() >= least);
    long.filter_map(|strokes| {
        let micros = line.strokes[strokes.clone()].iter().map(|stroke| stroke.duration.micros).sum();
        let rate = rate(i64::try_from(strokes.len()).ok()?, micros)?;
        Some(EvenRun { strokes, rate })
    })
    .collect()
}
