//! What works, measured: never where anything was found.

use std::collections::{BTreeMap, BTreeSet};

use arcata_analysis::Snapshot;
use arcata_bow::audit::{MarkClass, audit};
use arcata_bow::stroke::MetricPlace;
use arcata_bow::{Line, Link, PlannedStroke, Stroke};
use arcata_score::{BowDirection, Score};

use crate::runs::listed;
use crate::{Expected, SaidOnSheet, Work};

/// Fewer bars in a row are no stretch.
const STRETCH: usize = 4;
/// Fewer strokes in them say nothing.
const STROKES: usize = 8;
/// A swell in one stroke from here on is heard, hundredths of a dynamic step.
const SWELL: i32 = 60;
/// A slur of less than this is no feat, microseconds.
const LONG_SLUR: i64 = 1_500_000;
/// A slur that fills at most this share of the slowest bow fits well, hundredths.
const FITS: i64 = 80;
/// Stretches told at most.
const STRETCHES: usize = 2;
/// Things told at most.
const MOST: usize = 4;
/// Pieces of lists of bars.
const LISTED: usize = 8;

type Blamed = BTreeSet<(usize, u32)>;

/// Bars of a line with their strokes.
type WorkingBars<'a> = BTreeMap<u32, Vec<(&'a Stroke, &'a PlannedStroke)>>;

/// What works, the most telling first.
pub(crate) fn works(snapshot: &Snapshot, blamed: &Blamed, expects: &[Expected]) -> Vec<Work> {
    let lines: Vec<(&Line, WorkingBars<'_>)> =
        snapshot.lines().iter().enumerate().map(|(index, line)| (line, bars(snapshot, index))).collect();
    let mut stretches: Vec<Work> = lines
        .iter()
        .filter_map(|(line, bars)| stretch(snapshot.score(), line, bars, blamed, expects))
        .collect();
    stretches.sort_by_key(|work| (std::cmp::Reverse(work.bars.len()), work.part));
    stretches.truncate(STRETCHES);
    let single = [
        lines.iter().find_map(|(line, bars)| swell(snapshot.score(), line, bars, blamed)),
        long_slur(snapshot, &lines, blamed),
        marks(snapshot, blamed),
    ];
    let mut works = stretches;
    works.extend(single.into_iter().flatten());
    works.truncate(MOST);
    works
}

fn bars(snapshot: &Snapshot, line: usize) -> WorkingBars<'_> {
    let mut bars = WorkingBars::new();
    for (stroke, planned) in snapshot.lines()[line].strokes.iter().zip(&snapshot.plan(line).strokes) {
        bars.entry(stroke.bar).or_default().push((stroke, planned));
    }
    bars
}

fn label(score: &Score, bar: u32) -> String {
    score.bars.get(bar as usize).map_or_else(String::new, |bar| bar.label.clone())
}

fn is_downbeat(stroke: &Stroke) -> bool {
    stroke.emphasis.metric == MetricPlace::Downbeat
}

/// The longest run of bars in which the bow comes out by itself.
fn stretch(
    score: &Score,
    line: &Line,
    bars: &WorkingBars<'_>,
    blamed: &Blamed,
    expects: &[Expected],
) -> Option<Work> {
    let comes_out = |bar: &u32, strokes: &[(&Stroke, &PlannedStroke)]| {
        !blamed.contains(&(line.part, *bar))
            && strokes.iter().all(|(stroke, planned)| {
                (!is_downbeat(stroke) || planned.direction == BowDirection::Down)
                    && !matches!(planned.link, Link::Hooked | Link::Retake)
            })
    };
    let mut runs: Vec<Vec<u32>> = Vec::new();
    for (bar, strokes) in bars.iter().filter(|(bar, strokes)| comes_out(bar, strokes)) {
        let _ = strokes;
        match runs.last_mut() {
            Some(run) if run.last().is_some_and(|last| last + 1 == *bar) => run.push(*bar),
            _ => runs.push(vec![*bar]),
        }
    }
    let of = |run: &[u32]| -> Vec<&Stroke> {
        run.iter().flat_map(|bar| &bars[bar]).map(|(stroke, _)| *stroke).collect()
    };
    // A run ends before a stroke that goes on into a bar where something was found.
    let whole = |run: &Vec<u32>| {
        let reaches = |stroke: &&Stroke| {
            let last = stroke.notes.last().and_then(|note| score.parts[line.part].notes.get(note.0 as usize));
            last.is_none_or(|note| note.bar <= run[run.len() - 1])
        };
        let strokes = of(run);
        let slurred = strokes.iter().any(|stroke| stroke.note_count > 1);
        run.len() >= STRETCH
            && strokes.len() >= STROKES
            && strokes.iter().all(reaches)
            && (slurred || !expects.contains(&Expected::Slurs))
    };
    let run = runs.into_iter().filter(whole).max_by_key(|run| (run.len(), std::cmp::Reverse(run[0])))?;
    let downbeats = of(&run).into_iter().filter(|stroke| is_downbeat(stroke)).count();
    let key = if downbeats > 1 { "works-comes-out" } else { "works-comes-out-plain" };
    let said = SaidOnSheet::new(key)
        .with("part", &line.name)
        .with("from", label(score, run[0]))
        .with("to", label(score, run[run.len() - 1]))
        .with("strokes", of(&run).len())
        .with("downbeats", downbeats);
    Some(Work { said, part: line.part, bars: run })
}

/// The bars that a stroke touches, where nothing was found in any of them.
fn clean(score: &Score, line: &Line, stroke: &Stroke, blamed: &Blamed) -> Option<Vec<u32>> {
    let notes = stroke.notes.iter().filter_map(|note| score.parts[line.part].notes.get(note.0 as usize));
    let bars: BTreeSet<u32> = notes.map(|note| note.bar).chain([stroke.bar]).collect();
    let free = bars.iter().all(|bar| !blamed.contains(&(line.part, *bar)));
    free.then(|| bars.into_iter().collect())
}

/// A swell that goes the way the bow goes by itself.
fn swell(score: &Score, line: &Line, bars: &WorkingBars<'_>, blamed: &Blamed) -> Option<Work> {
    bars.values().flatten().find_map(|(stroke, planned)| {
        let by = stroke.level_end.0 - stroke.level_start.0;
        let key = match planned.direction {
            BowDirection::Up if by >= SWELL => "works-swell-up",
            BowDirection::Down if by <= -SWELL => "works-swell-down",
            _ => return None,
        };
        let bars = clean(score, line, stroke, blamed)?;
        let said = SaidOnSheet::new(key).with("part", &line.name).with("bar", label(score, stroke.bar));
        Some(Work { said, part: line.part, bars })
    })
}

/// The longest slur that fits well into one bow.
fn long_slur(snapshot: &Snapshot, lines: &[(&Line, WorkingBars<'_>)], blamed: &Blamed) -> Option<Work> {
    let score = snapshot.score();
    let profile = &snapshot.ground().config.player.profile;
    let fitting = lines.iter().flat_map(|(line, bars)| {
        let hair = profile.hair_micrometres(line.instrument);
        bars.values().flatten().filter_map(move |(stroke, _)| {
            let longest = hair * 1_000_000 / i64::from(stroke.speed.slowest.max(1));
            let fits = stroke.duration.micros * 100 <= longest * FITS;
            (stroke.note_count > 2 && stroke.duration.micros >= LONG_SLUR && fits).then_some((
                stroke.duration.micros,
                longest,
                *line,
                *stroke,
            ))
        })
    });
    let mut fitting: Vec<_> = fitting.collect();
    fitting.sort_by_key(|(lasts, _, line, stroke)| (std::cmp::Reverse(*lasts), line.part, stroke.onset));
    fitting.into_iter().find_map(|(lasts, longest, line, stroke)| {
        let bars = clean(score, line, stroke, blamed)?;
        let tenths = |micros: i64| {
            let tenths = (micros + 50_000) / 100_000;
            format!("{}.{}", tenths / 10, tenths % 10)
        };
        let said = SaidOnSheet::new("works-long-slur")
            .with("part", &line.name)
            .with("bar", label(score, stroke.bar))
            .with("notes", stroke.note_count)
            .with("lasts", tenths(lasts))
            .with("longest", tenths(longest));
        Some(Work { said, part: line.part, bars })
    })
}

/// Printed bow marks of a part that all say something.
fn marks(snapshot: &Snapshot, blamed: &Blamed) -> Option<Work> {
    let score = snapshot.score();
    let mut parts: Vec<usize> = snapshot.lines().iter().map(|line| line.part).collect();
    parts.dedup();
    let marks =
        audit(score, &parts, snapshot.lines(), snapshot.plans(), &snapshot.ground().config.player.profile);
    parts.into_iter().find_map(|part| {
        let own: Vec<_> = marks.iter().filter(|mark| mark.part == part).collect();
        let telling =
            own.iter().all(|mark| matches!(mark.reason.class(), MarkClass::Needed | MarkClass::Effect));
        let bars: BTreeSet<u32> = own.iter().map(|mark| score.parts[part].note(mark.note).bar).collect();
        let free = bars.iter().all(|bar| !blamed.contains(&(part, *bar)));
        if own.is_empty() || !telling || !free {
            return None;
        }
        let bars: Vec<u32> = bars.into_iter().collect();
        let said = SaidOnSheet::new(if own.len() == 1 { "works-mark" } else { "works-marks" })
            .with("part", &score.parts[part].name)
            .with("count", own.len())
            .with("bars", listed(&bars, |bar| label(score, bar), LISTED));
        Some(Work { said, part, bars })
    })
}
