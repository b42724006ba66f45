//! A score whose printed bow marks are nearly continuous: all but the first between two rests are hidden, and
//! the planner is asked for the rest. A report on a score that the user names; nothing here passes or fails.

use std::path::Path;

use arcata_bow::together::{agreements, plan_together};
use arcata_bow::{Join, Line, MARKED_AROUND, PlanSettings, Profile, StrokeKind, Style, plan};
use arcata_score::{BowDirection, Length};

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
type Kind = (&'static str, fn(&Line, &Hidden) -> bool);

const KINDS: [Kind; 8] = [
    ("all", |_, _| true),
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

/// Prints the agreement of seven ways of bowing with the hidden marks.
pub(crate) fn run(arguments: &[String]) -> Result<()> {
    let [path] = arguments else { return Err("one score is wanted".to_owned()) };
    let opened = scores::open(Path::new(path))?;
    let score = arcata_score::read(opened.document());
    let profile = Profile::default();
    let printed = scores::lines(&score, &profile);
    let (lines, hidden) = hide(&printed);
    let settings: Vec<PlanSettings> =
        lines.iter().map(|line| profile.plan_settings(line.instrument)).collect();
    let weights = settings.first().map(|settings| settings.weights.clone()).unwrap_or_default();
    let apart: Vec<Vec<BowDirection>> = lines
        .iter()
        .zip(&settings)
        .map(|(line, settings)| plan(line, settings).strokes.iter().map(|stroke| stroke.direction).collect())
        .collect();
    let together = plan_together(&lines, &settings, &agreements(&score, &lines, &weights));
    let together: Vec<Vec<BowDirection>> = together
        .plans
        .iter()
        .map(|plan| plan.strokes.iter().map(|stroke| stroke.direction).collect())
        .collect();
    let dear: Vec<PlanSettings> = settings.iter().map(as_it_comes).collect();
    let dear = plan_together(&lines, &dear, &agreements(&score, &lines, &weights));
    let dear: Vec<Vec<BowDirection>> =
        dear.plans.iter().map(|plan| plan.strokes.iter().map(|stroke| stroke.direction).collect()).collect();
    let styled = |style: Style| {
        let profile = Profile::default().in_style(style);
        let planned = |line: &Line| plan(line, &profile.plan_settings(line.instrument)).strokes;
        let directions: Vec<Vec<BowDirection>> =
            lines.iter().map(|line| planned(line).iter().map(|stroke| stroke.direction).collect()).collect();
        at(&directions, &hidden)
    };
    let ways: [(&str, Vec<BowDirection>); 7] = [
        ("each line for itself, dance", styled(Style::Dance)),
        ("each line for itself, early", styled(Style::Early)),
        ("planner, as it comes preferred", at(&dear, &hidden)),
        ("planner, each line for itself", at(&apart, &hidden)),
        ("planner, with unity and likeness", at(&together, &hidden)),
        ("alternating from the first marks", alternating(&lines, &hidden)),
        ("alternating from the last mark", corrected(&printed, &hidden)),
    ];
    println!("{}: {} marks on first notes of strokes, {} hidden", path, marks(&printed), hidden.len());
    println!("\nagreement with the hidden marks, percent (marks)");
    print!("{:32}", "");
    for (name, _) in KINDS {
        print!(" {name:>32}");
    }
    println!();
    for (name, directions) in ways {
        print!("{name:32}");
        for (_, is) in KINDS {
            let chosen = hidden.iter().zip(&directions).filter(|(mark, _)| is(&printed[mark.line], mark));
            let (mut agreed, mut of) = (0_u32, 0_u32);
            for (mark, direction) in chosen {
                of += 1;
                agreed += u32::from(mark.printed == *direction);
            }
            let points = agreed * 1000 / of.max(1);
            print!(" {:>32}", format!("{}.{} ({agreed}/{of})", points / 10, points % 10));
        }
        println!();
    }
    Ok(())
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

/// The lines with only the first mark between two rests, and what was hidden.
fn hide(printed: &[Line]) -> (Vec<Line>, Vec<Hidden>) {
    let mut lines = printed.to_vec();
    let mut hidden = Vec::new();
    for (index, line) in lines.iter_mut().enumerate() {
        let mut told = false;
        for (stroke, found) in line.strokes.iter_mut().enumerate() {
            told &= found.join == Join::Continues;
            if let Some(direction) = found.printed {
                if told {
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
