//! Printed bow marks are hidden, all of them or all but the first between two rests, and the planner is asked for them. A report
//! on scores that the user names; nothing here passes or fails.

use std::path::Path;
use std::sync::Arc;

use arcata_bow::together::{agreements, plan_together};
use arcata_bow::{Join, Line, MARKED_AROUND, Plan, PlanSettings, Profile, StrokeKind, Style, plan};
use arcata_score::{BowDirection, Length, Score};

use crate::outcome::Result;
use crate::scores;

/// How much dearer than by default whatever is not alternation is to who bows as it comes; chosen on this
/// very report, to show what the planner loses by.
const AS_IT_COMES: i64 = 30;

/// A hidden mark.
struct Hidden {
    line: usize,
    stroke: usize,
    printed: BowDirection,
}

/// What a marked stroke is; it may be several of these.
type HiddenKind = (&'static str, fn(&Line, &Hidden) -> bool);

const KINDS: [HiddenKind; 9] = [
    ("all", |_, _| true),
    // Repeated bows, hooks and lifts are marked because nobody would guess them.
    ("no effect", |line, mark| {
        let next = line.strokes.get(mark.stroke + 1).filter(|next| next.join == Join::Continues);
        let joined = line.strokes[mark.stroke].join == Join::Continues;
        let like_before = joined && before(line, mark) == Some(mark.printed);
        !like_before && next.is_none_or(|next| next.printed != Some(mark.printed))
    }),
    ("downbeats", |line, mark| line.strokes[mark.stroke].offset == Length::ZERO),
    ("before downbeats", |line, mark| {
        line.strokes.get(mark.stroke + 1).is_some_and(|next| next.offset == Length::ZERO)
    }),
    ("elsewhere", |line, mark| {
        let at = |stroke: usize| line.strokes.get(stroke).is_some_and(|found| found.offset == Length::ZERO);
        !at(mark.stroke) && !at(mark.stroke + 1)
    }),
    ("slurred strokes", |line, mark| line.strokes[mark.stroke].kind == StrokeKind::Slurred),
    ("last before a rest", |line, mark| {
        line.strokes.get(mark.stroke + 1).is_none_or(|next| next.join != Join::Continues)
    }),
    ("same bow as the mark before", |line, mark| before(line, mark) == Some(mark.printed)),
    ("other bow than the mark before", |line, mark| before(line, mark) == Some(mark.printed.other())),
];

/// The mark printed on the stroke right before.
fn before(line: &Line, mark: &Hidden) -> Option<BowDirection> {
    mark.stroke.checked_sub(1).and_then(|before| line.strokes[before].printed)
}

/// What is shown of the marks.
#[derive(Clone, Copy, PartialEq, Eq)]
enum ShownMarks {
    Nothing,
    /// The first between two rests.
    First,
}

/// Strokes that were foreseen, and all, for each way and kind.
type ForeseenCounts = Vec<[(u32, u32); KINDS.len()]>;

const WAYS: [&str; 7] = [
    "each line for itself, dance",
    "each line for itself, early",
    "planner, as it comes preferred",
    "planner, each line for itself",
    "planner, with unity and likeness",
    "alternating from the first marks",
    "alternating from the last mark",
];

/// Prints the agreement of seven ways of bowing with the hidden marks; `NAME=VALUE` sets a price.
pub(crate) fn run(arguments: &[String]) -> Result<()> {
    let (prices, paths): (Vec<String>, Vec<String>) =
        arguments.iter().cloned().partition(|argument| argument.contains('='));
    if paths.is_empty() {
        return Err("hidden-marks wants scores".to_owned());
    }
    let profile = scores::priced(Profile::default(), &prices)?;
    let read: Vec<(String, Vec<Line>, Score)> = paths
        .iter()
        .map(|path| {
            let opened = scores::open(Path::new(path))?;
            let score = arcata_score::read(opened.document());
            Ok((path.clone(), scores::lines(&score, &profile), score))
        })
        .collect::<Result<_>>()?;
    for (path, printed, _) in &read {
        println!("{path}: {} marks on first notes of strokes", marks(printed));
    }
    for (shown, told) in
        [(ShownMarks::Nothing, "no mark shown"), (ShownMarks::First, "the first mark after each rest shown")]
    {
        let mut sums: ForeseenCounts = vec![[(0, 0); KINDS.len()]; WAYS.len()];
        for (_, printed, score) in &read {
            for (sums, counts) in sums.iter_mut().zip(measured(printed, score, &profile, shown)) {
                for (sum, count) in sums.iter_mut().zip(counts) {
                    *sum = (sum.0 + count.0, sum.1 + count.1);
                }
            }
        }
        println!("\n{told}: agreement with the hidden marks, percent (marks)");
        print!("{:32}", "");
        KINDS.iter().for_each(|(name, _)| print!(" {name:>30}"));
        println!();
        for (way, counts) in WAYS.iter().zip(&sums) {
            print!("{way:32}");
            for (agreed, of) in counts {
                let points = agreed * 1000 / of.max(&1);
                print!(" {:>30}", format!("{}.{} ({agreed}/{of})", points / 10, points % 10));
            }
            println!();
        }
    }
    Ok(())
}

/// A score's counts.
fn measured(printed: &[Line], score: &Score, profile: &Profile, shown: ShownMarks) -> ForeseenCounts {
    let (lines, hidden) = hide(printed, shown);
    if hidden.is_empty() {
        return vec![[(0, 0); KINDS.len()]; WAYS.len()];
    }
    let settings: Vec<PlanSettings> =
        lines.iter().map(|line| profile.plan_settings(line.instrument)).collect();
    let weights = settings.first().map(|settings| settings.weights.clone()).unwrap_or_default();
    let bows = |plans: Vec<Arc<Plan>>| -> Vec<Vec<BowDirection>> {
        plans.iter().map(|plan| plan.strokes.iter().map(|stroke| stroke.direction).collect()).collect()
    };
    let each = |settings: &[PlanSettings]| {
        bows(lines.iter().zip(settings).map(|(line, settings)| Arc::new(plan(line, settings))).collect())
    };
    let agreements = agreements(score, &lines, &weights);
    let together = bows(plan_together(&lines, &settings, &agreements).plans);
    let dear: Vec<PlanSettings> = settings.iter().map(as_it_comes).collect();
    let dear = bows(plan_together(&lines, &dear, &agreements).plans);
    let styled = |style: Style| {
        let profile = Profile::default().in_style(style);
        each(&lines.iter().map(|line| profile.plan_settings(line.instrument)).collect::<Vec<_>>())
    };
    // In the order of WAYS.
    let ways: [Vec<BowDirection>; WAYS.len()] = [
        at(&styled(Style::Dance), &hidden),
        at(&styled(Style::Early), &hidden),
        at(&dear, &hidden),
        at(&each(&settings), &hidden),
        at(&together, &hidden),
        alternating(&lines, &hidden),
        corrected(printed, &hidden),
    ];
    let count = |directions: &Vec<BowDirection>| {
        KINDS.map(|(_, is)| {
            let chosen = hidden.iter().zip(directions).filter(|(mark, _)| is(&printed[mark.line], mark));
            chosen.fold((0, 0), |(agreed, of), (mark, direction)| {
                (agreed + u32::from(mark.printed == *direction), of + 1)
            })
        })
    };
    ways.iter().map(count).collect()
}

/// Settings of a player who hooks, retakes and lifts only when it cannot be helped.
fn as_it_comes(settings: &PlanSettings) -> PlanSettings {
    let mut settings = settings.clone();
    let weights = &mut settings.weights;
    for weight in [&mut weights.hook, &mut weights.retake, &mut weights.reset] {
        *weight *= AS_IT_COMES;
    }
    settings
}

fn marks(lines: &[Line]) -> usize {
    lines.iter().flat_map(|line| &line.strokes).filter(|stroke| stroke.printed.is_some()).count()
}

/// The lines with no mark, or with only the first between two rests, and what was hidden.
fn hide(printed: &[Line], shown: ShownMarks) -> (Vec<Line>, Vec<Hidden>) {
    let mut lines = printed.to_vec();
    let mut hidden = Vec::new();
    for (index, line) in lines.iter_mut().enumerate() {
        let mut told = false;
        for (stroke, found) in line.strokes.iter_mut().enumerate() {
            told &= found.join == Join::Continues;
            if let Some(direction) = found.printed {
                if told || shown == ShownMarks::Nothing {
                    hidden.push(Hidden { line: index, stroke, printed: direction });
                    found.printed = None;
                }
                told = true;
            }
        }
    }
    // What is hidden tells nobody that bows were marked there.
    for line in &mut lines {
        let shown: Vec<usize> =
            (0..line.strokes.len()).filter(|stroke| line.strokes[*stroke].printed.is_some()).collect();
        for (stroke, found) in line.strokes.iter_mut().enumerate() {
            found.phrase.marked = shown.iter().any(|shown| shown.abs_diff(stroke) <= MARKED_AROUND);
        }
    }
    (lines, hidden)
}

fn at(directions: &[Vec<BowDirection>], hidden: &[Hidden]) -> Vec<BowDirection> {
    hidden.iter().map(|mark| directions[mark.line][mark.stroke]).collect()
}

/// Strokes that alternate from the nearest mark before, of those that `lines` show.
fn alternating(lines: &[Line], hidden: &[Hidden]) -> Vec<BowDirection> {
    hidden.iter().map(|mark| from_the_last(&lines[mark.line], mark.stroke)).collect()
}

/// The same, by a player who also sees every mark as it is passed.
fn corrected(printed: &[Line], hidden: &[Hidden]) -> Vec<BowDirection> {
    alternating(printed, hidden)
}

fn from_the_last(line: &Line, stroke: usize) -> BowDirection {
    let last = (0..stroke).rev().find_map(|at| Some((at, line.strokes[at].printed?)));
    match last {
        Some((at, direction)) if (stroke - at).is_multiple_of(2) => direction,
        Some((_, direction)) => direction.other(),
        None => BowDirection::Down,
    }
}
