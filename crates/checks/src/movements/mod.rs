//! A movement in a file of several is bowed and reviewed as if it were alone in its file.
//!
//! Source of the works: the corpus of music21 (PyPI); what holds of them is *common practice*: nothing leads from one
//! movement into the next.

mod cut;
mod join;

use std::path::{Path, PathBuf};

use arcata_bow::plan::Leads;
use arcata_bow::{Join, Line, Link, Plan, Profile};
use arcata_review::{Finding, ReviewSettings};
use arcata_score::{Jump, RepeatSign, Score};
use rayon::prelude::*;

use crate::alarms;
use crate::outcome::{CheckOutcome, Result};
use crate::reviewing::PlannedScore;
use crate::scores;
use crate::setting::{CheckSetting, write};

/// What was counted in some works.
#[derive(Default)]
struct WorkCounts {
    works: usize,
    movements: usize,
    /// Movements that come out otherwise when they are cut out, and how.
    unlike: Vec<String>,
    openings: usize,
    /// First strokes that hang on the movement before.
    hanging: Vec<String>,
    repeats: usize,
    /// Repeated stretches of which no sign stands near.
    without_sign: Vec<String>,
}

/// Works of the corpus in several movements. The corpus keeps most movements in files of their own: these are joined to
/// one file by their text, and cut out again.
pub(crate) fn check(setting: &CheckSetting, outcome: &mut CheckOutcome) -> Result<()> {
    let works = alarms::works(setting)?;
    let folder = setting.scratch("movements")?;
    let mut paths = works.clone();
    for (number, movements) in join::works(&works).into_iter().enumerate() {
        if let Some(joined) = join::joined(&movements)? {
            let path = folder.join(format!("{number}.musicxml"));
            write(&path, joined.as_bytes())?;
            paths.push(path);
        }
    }
    let counts = count(&paths)?;
    let _ = std::fs::remove_dir_all(&folder);
    println!("{}", counts.told());
    outcome.check(counts.movements >= 8, "the corpus holds works in several movements");
    for (left, what) in [
        (&counts.unlike, "a movement cut out is bowed and reviewed as in the whole file"),
        (&counts.hanging, "no first stroke of a movement hangs on the movement before"),
        (&counts.without_sign, "every repeated stretch has its sign"),
    ] {
        left.iter().for_each(|one| println!("{one}"));
        outcome.check(left.is_empty(), what);
    }
    Ok(())
}

/// The same for files that the user names: a report.
pub(crate) fn run(arguments: &[String]) -> Result<()> {
    let paths: Vec<PathBuf> = arguments.iter().map(PathBuf::from).collect();
    let counts = count(&paths)?;
    for one in counts.unlike.iter().chain(&counts.hanging).chain(&counts.without_sign) {
        println!("{one}");
    }
    println!("{}", counts.told());
    Ok(())
}

impl WorkCounts {
    fn told(&self) -> String {
        format!(
            "{} works, {} movements: {} unlike when cut out; {} openings, {} hang on the movement before; {} repeated stretches, {} without a sign",
            self.works,
            self.movements,
            self.unlike.len(),
            self.openings,
            self.hanging.len(),
            self.repeats,
            self.without_sign.len()
        )
    }

    fn take(&mut self, mut other: Self) {
        self.works += other.works;
        self.movements += other.movements;
        self.openings += other.openings;
        self.repeats += other.repeats;
        self.unlike.append(&mut other.unlike);
        self.hanging.append(&mut other.hanging);
        self.without_sign.append(&mut other.without_sign);
    }
}

fn count(paths: &[PathBuf]) -> Result<WorkCounts> {
    let each: Vec<Result<WorkCounts>> = paths.par_iter().map(|path| of_work(path)).collect();
    let mut counts = WorkCounts::default();
    for one in each {
        counts.take(one?);
    }
    Ok(counts)
}

fn of_work(path: &Path) -> Result<WorkCounts> {
    let profile = Profile::default();
    let whole = PlannedScore::new(scores::document(path)?, &profile)?;
    let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
    let mut counts = WorkCounts { works: 1, ..WorkCounts::default() };
    for (line, plan) in whole.planned_lines() {
        without_sign(whole.score(), (line, plan), &name, &mut counts);
    }
    if whole.score().movements.len() < 2 {
        return Ok(counts);
    }
    let findings = whole.findings(&ReviewSettings::default());
    for (index, movement) in whole.score().movements.iter().enumerate() {
        let said = format!("{name}, {}", movement.name());
        for (line, plan) in whole.planned_lines().filter(|(line, _)| line.movement == index) {
            counts.openings += 1;
            let first = line.strokes.first().zip(plan.strokes.first());
            let hangs = first
                .is_some_and(|(stroke, planned)| stroke.join != Join::Entry || planned.link != Link::Reset);
            if hangs {
                counts.hanging.push(format!("{said}: {} hangs on what is before", line.name));
            }
        }
        let alone = PlannedScore::new(cut::cut(whole.document(), &movement.bars)?, &profile)?;
        counts.movements += 1;
        let inside = |finding: &&Finding| movement.bars.contains(&finding.place.bar);
        let here: Vec<String> = findings.iter().filter(inside).map(told).collect();
        let cut: Vec<String> = alone.findings(&ReviewSettings::default()).iter().map(told).collect();
        if let Some(unlike) = read_unlike(&whole, &alone, index) {
            counts.unlike.push(format!("{said}: {unlike}"));
            continue;
        }
        let pairs = [(strokes(&whole, index), strokes(&alone, 0)), (here, cut)];
        for (one, other) in pairs {
            if one == other {
                continue;
            }
            let at = one.iter().zip(&other).take_while(|(one, other)| one == other).count();
            let shown = |list: &[String]| list.get(at).cloned().unwrap_or_else(|| "nothing".to_owned());
            counts.unlike.push(format!(
                "{said}: {} rows against {}; in the whole \"{}\", cut out \"{}\"",
                one.len(),
                other.len(),
                shown(&one),
                shown(&other)
            ));
        }
    }
    Ok(counts)
}

/// The first stroke that is read otherwise.
fn read_unlike(whole: &PlannedScore, alone: &PlannedScore, movement: usize) -> Option<String> {
    let (_, beginning) = whole.score().movement_alone(movement)?;
    let lines = whole.lines().iter().filter(|line| line.movement == movement);
    for (one, other) in lines.map(|line| line.alone(&beginning)).zip(alone.lines()) {
        let unlike = one.strokes.iter().zip(&other.strokes).find(|(one, other)| one != other);
        if let Some((one, other)) = unlike {
            let bar = alone.score().bar_label(other.bar);
            return Some(format!("bar {bar} is read as {one:?}, cut out as {other:?}"));
        }
        if (&one.repeats, one.strokes.len()) != (&other.repeats, other.strokes.len()) {
            return Some(format!("{} has other repeats or strokes when cut out", other.name));
        }
    }
    None
}

/// Every stroke of a movement in words.
fn strokes(desk: &PlannedScore, movement: usize) -> Vec<String> {
    let lines = desk.planned_lines().filter(|(line, _)| line.movement == movement);
    lines
        .flat_map(|(line, plan)| {
            line.strokes.iter().zip(&plan.strokes).map(|(stroke, planned)| {
                format!(
                    "{} {}+{} {:?} {:?} {}-{} {}",
                    line.name,
                    desk.score().bar_label(stroke.bar),
                    stroke.offset,
                    planned.direction,
                    planned.link,
                    planned.start,
                    planned.end,
                    planned.cost.total()
                )
            })
        })
        .collect()
}

fn told(finding: &Finding) -> String {
    let place = &finding.place;
    format!(
        "{} {} {} {} {}: {} ({})",
        finding.severity,
        finding.rule,
        place.section,
        place.bar_label,
        place.beat,
        arcata_languages::Wording::default().say(&finding.sentence),
        finding.count
    )
}

/// Counts the second passes that a plan tells of, and those where no sign sends the player back.
fn without_sign(score: &Score, (line, plan): (&Line, &Plan), name: &str, counts: &mut WorkCounts) {
    for turn in plan.turns.iter().filter(|turn| turn.leads == Leads::Back) {
        counts.repeats += 1;
        let from = line.strokes[turn.to].bar;
        let last = line.strokes[turn.from].bar;
        // A rest may lie between the last stroke and the sign: the next stroke, or the movement's end, bounds it.
        let next = line.strokes.get(turn.from + 1).map_or_else(
            || score.movements.get(line.movement).map_or(last, |movement| *movement.bars.end()),
            |stroke| stroke.bar,
        );
        let sends = |bar: u32| {
            score.bars.get(bar as usize).is_some_and(|bar| {
                matches!(bar.right.repeat, Some(RepeatSign::End { .. }))
                    || bar.jumps.iter().any(|jump| matches!(jump, Jump::DaCapo | Jump::DalSegno))
            })
        };
        if !(last..=next).any(sends) {
            counts.without_sign.push(format!(
                "{name}: {} repeats {} to {} without a sign",
                line.name,
                score.bar_said("bar", from),
                score.bar_said("bar", last)
            ));
        }
    }
}
