//! How the plan joins its strokes in scores that the user names: lifts without a rest, hooks, bars that are
//! alike and bowed otherwise, bars of three equal strokes. A report; nothing here passes or fails.

use std::collections::BTreeMap;
use std::fs;
use std::ops::Range;
use std::path::{Path, PathBuf};

use arcata_analysis::{Bowed, Config};
use arcata_bow::plan::{BowReach, lift_time};
use arcata_bow::{Join, Line, Link, Plan, PlannedStroke, Profile, Stroke, StrokeKind, Style};
use arcata_score::{BowDirection, Score};
use rayon::prelude::*;

use crate::outcome::Result;
use crate::scores;

/// What is counted, over all lines of the scores.
#[derive(Default)]
struct Joints {
    bars: usize,
    strokes: usize,
    /// Lifts without a rest: all, and those that no printed mark asks for.
    lifts: usize,
    unasked: usize,
    /// Of the latter: without the time for it, and without moving the bow.
    rushed: usize,
    still: usize,
    hooks: usize,
    hooks_unasked: usize,
    /// Neighbouring bars of one rhythm with the same slurs: all, and those bowed otherwise.
    alike: usize,
    otherwise: usize,
    /// Bars of three equal strokes by what the bow does.
    threes: BTreeMap<String, usize>,
    /// The same where any of them is a slur.
    threes_slurred: BTreeMap<String, usize>,
    /// The places of unasked lifts and of bars bowed otherwise, for reading in the music.
    lift_places: Vec<String>,
    otherwise_places: Vec<String>,
}

impl Joints {
    fn plus(mut self, other: Self) -> Self {
        self.bars += other.bars;
        self.strokes += other.strokes;
        self.lifts += other.lifts;
        self.unasked += other.unasked;
        self.rushed += other.rushed;
        self.still += other.still;
        self.hooks += other.hooks;
        self.hooks_unasked += other.hooks_unasked;
        self.alike += other.alike;
        self.otherwise += other.otherwise;
        for (pattern, count) in other.threes {
            *self.threes.entry(pattern).or_default() += count;
        }
        for (pattern, count) in other.threes_slurred {
            *self.threes_slurred.entry(pattern).or_default() += count;
        }
        self.lift_places.extend(other.lift_places);
        self.otherwise_places.extend(other.otherwise_places);
        self
    }

    fn in_100_bars(&self, count: usize) -> f64 {
        count as f64 * 100.0 / self.bars.max(1) as f64
    }

    fn report(&self, name: &str) {
        println!(
            "{name:32} {:6} {:8.2} {:8.2} {:8.2} {:8.2} {:8.2} {:8.2} {:>18} {:>18}",
            self.bars,
            self.in_100_bars(self.lifts),
            self.in_100_bars(self.unasked),
            self.in_100_bars(self.rushed),
            self.in_100_bars(self.still),
            self.in_100_bars(self.hooks),
            self.in_100_bars(self.hooks_unasked),
            share(self.otherwise, self.alike),
            self.threes_told(),
        );
    }

    /// Bars of three equal strokes that go down, up, down or down, up-up.
    fn threes_told(&self) -> String {
        let all: usize = self.threes.values().sum();
        let wanted = ["d u d", "d u hu"].iter().filter_map(|pattern| self.threes.get(*pattern)).sum();
        share(wanted, all)
    }
}

fn share(part: usize, of: usize) -> String {
    format!("{:.1} % ({part}/{of})", part as f64 * 100.0 / of.max(1) as f64)
}

/// Prints the counts for every score of a folder; `--style NAME`, `--show lifts|otherwise COUNT`.
pub(crate) fn run(arguments: &[String]) -> Result<()> {
    let (mut folder, mut style, mut show) = (None, Style::default(), None);
    let mut prices = Vec::new();
    let mut left = arguments.iter();
    while let Some(argument) = left.next() {
        match argument.as_str() {
            "--style" => {
                style = left.next().and_then(|name| Style::named(name)).ok_or("--style wants a style")?
            }
            "--show" => {
                let what = left.next().ok_or("--show wants lifts or otherwise, and how many")?;
                let count: usize =
                    left.next().and_then(|count| count.parse().ok()).ok_or("--show wants how many")?;
                show = Some((what.clone(), count));
            }
            price if price.contains('=') => prices.push(price.to_owned()),
            path => folder = Some(PathBuf::from(path)),
        }
    }
    let folder = folder.ok_or("joints wants a folder of scores")?;
    let profile = scores::priced(Profile::default().in_style(style), &prices)?;
    println!(
        "{:32} {:>6} {:>8} {:>8} {:>8} {:>8} {:>8} {:>8} {:>18} {:>18}",
        "in 100 bars",
        "bars",
        "lifts",
        "unasked",
        "rushed",
        "still",
        "hooks",
        "unasked",
        "alike, otherwise",
        "threes d u d|u"
    );
    let found: Result<Vec<(String, Joints)>> =
        scores_of(&folder)?.par_iter().map(|path| Ok((name_of(path), of_score(path, &profile)?))).collect();
    let mut all = Joints::default();
    for (name, joints) in found? {
        joints.report(name.get(..30).unwrap_or(&name));
        all = all.plus(joints);
    }
    all.report("all");
    println!("{} strokes; bars of three equal strokes, single notes:", all.strokes);
    show_threes(&all.threes);
    println!("with a slur among them:");
    show_threes(&all.threes_slurred);
    if let Some((what, count)) = show {
        let places = if what == "lifts" { &all.lift_places } else { &all.otherwise_places };
        let step = (places.len() / count.max(1)).max(1);
        for place in places.iter().step_by(step).take(count) {
            println!("{place}");
        }
    }
    Ok(())
}

fn show_threes(threes: &BTreeMap<String, usize>) {
    let mut sorted: Vec<(&String, &usize)> = threes.iter().collect();
    sorted.sort_by_key(|(pattern, count)| (std::cmp::Reverse(**count), *pattern));
    for (pattern, count) in sorted {
        println!("  {pattern:12} {count}");
    }
}

fn name_of(path: &Path) -> String {
    path.file_stem().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default()
}

fn scores_of(folder: &Path) -> Result<Vec<PathBuf>> {
    let listed = fs::read_dir(folder).map_err(|problem| format!("{}: {problem}", folder.display()))?;
    let mut paths: Vec<PathBuf> = listed.filter_map(|entry| Some(entry.ok()?.path())).collect();
    paths.retain(|path| path.extension().is_some_and(|ending| ending == "mxl" || ending == "musicxml"));
    paths.sort();
    Ok(paths)
}

fn of_score(path: &Path, profile: &Profile) -> Result<Joints> {
    let opened = scores::open(path)?;
    let score = arcata_score::read(opened.document());
    let Bowed { lines, plans, .. } = Bowed::new(&score, &Config::of(profile.clone()));
    let mut joints = Joints { bars: score.bars.len(), ..Joints::default() };
    for (line, plan) in lines.iter().zip(&plans) {
        let reach = profile.plan_settings(line.instrument).reach;
        joints.strokes += line.strokes.len();
        let place = |stroke: &Stroke| {
            let label = score.bars.get(stroke.bar as usize).map(|bar| bar.label.clone()).unwrap_or_default();
            format!("{} {} bar index {} ({label})", name_of(path), line.name, stroke.bar)
        };
        links(&mut joints, line, plan, reach, place);
        bars(&mut joints, &score, line, plan, place);
    }
    Ok(joints)
}

fn links(joints: &mut Joints, line: &Line, plan: &Plan, reach: BowReach, place: impl Fn(&Stroke) -> String) {
    for index in 1..line.strokes.len() {
        let stroke = &line.strokes[index];
        let (from, planned) = (plan.strokes[index - 1], plan.strokes[index]);
        if stroke.join != Join::Continues {
            continue;
        }
        let asked = stroke.printed.is_some();
        if planned.link == Link::Hooked {
            joints.hooks += 1;
            joints.hooks_unasked += usize::from(!asked);
        }
        if planned.link == Link::Retake {
            joints.lifts += 1;
            if asked {
                continue;
            }
            joints.unasked += 1;
            let distance = i64::from(from.end.abs_diff(planned.start));
            let time = lift_time(line, plan, index, reach);
            joints.rushed += usize::from(time.is_some_and(|time| time.is_rushed()));
            joints.still += usize::from(distance <= 10);
            joints.lift_places.push(format!("{}: {}", place(stroke), shown(line, plan, index)));
        }
    }
}

/// Some strokes around one, for reading.
fn shown(line: &Line, plan: &Plan, index: usize) -> String {
    let around = index.saturating_sub(4)..(index + 5).min(line.strokes.len());
    let strokes = around.map(|at| {
        let (stroke, planned) = (&line.strokes[at], plan.strokes[at]);
        let bar = if stroke.offset.is_zero() { "|" } else { "" };
        let here = if at == index { "*" } else { "" };
        format!("{bar}{here}{}{:?}{}", acts(stroke, planned), stroke.kind, stroke.length)
    });
    strokes.collect::<Vec<_>>().join(" ")
}

/// The bow, and a letter before it where it does not simply change.
fn acts(stroke: &Stroke, planned: PlannedStroke) -> String {
    let way = if planned.direction == BowDirection::Down { 'd' } else { 'u' };
    match planned.link {
        Link::Hooked => format!("h{way}"),
        Link::Retake => format!("R{way}"),
        Link::Reset if stroke.join != Join::Entry => format!("r{way}"),
        Link::Reset | Link::Change => way.to_string(),
    }
}

fn bars(joints: &mut Joints, score: &Score, line: &Line, plan: &Plan, place: impl Fn(&Stroke) -> String) {
    let mut before: Option<Range<usize>> = None;
    let mut first = 0;
    for strokes in line.strokes.chunk_by(|a, b| a.bar == b.bar) {
        let bar = first..first + strokes.len();
        first = bar.end;
        if strokes.iter().any(|stroke| stroke.printed.is_some()) {
            before = None;
            continue;
        }
        if let Some(before) = before.take().filter(|before| are_alike(line, before, &bar)) {
            joints.alike += 1;
            if !goes_alike(line, plan, &before, &bar) {
                joints.otherwise += 1;
                joints.otherwise_places.push(format!(
                    "{}: {}",
                    place(&strokes[0]),
                    shown(line, plan, bar.start)
                ));
            }
        }
        if is_three(score, strokes) {
            let acts: Vec<String> = bar
                .clone()
                .enumerate()
                .map(|(nth, at)| match nth {
                    0 if plan.strokes[at].direction == BowDirection::Down => "d".to_owned(),
                    0 => "u".to_owned(),
                    _ => acts(&line.strokes[at], plan.strokes[at]),
                })
                .collect();
            let slurred = strokes.iter().any(|stroke| stroke.note_count > 1);
            let threes = if slurred { &mut joints.threes_slurred } else { &mut joints.threes };
            *threes.entry(acts.join(" ")).or_default() += 1;
        }
        before = Some(bar);
    }
}

/// Neighbouring bars of at least two strokes, of one rhythm with the same slurs and kinds of stroke.
fn are_alike(line: &Line, one: &Range<usize>, other: &Range<usize>) -> bool {
    let (one, other) = (&line.strokes[one.clone()], &line.strokes[other.clone()]);
    let shape = |stroke: &Stroke| (stroke.offset, stroke.length, stroke.kind, stroke.note_count);
    one.len() >= 2
        && one.len() == other.len()
        && one[0].bar + 1 == other[0].bar
        && one.iter().zip(other).all(|(one, other)| shape(one) == shape(other))
}

/// Bowed alike; or the mirror image, which plain alternation brings to bars of an odd number of strokes. On which bow a
/// tremolo begins is nothing to a player.
fn goes_alike(line: &Line, plan: &Plan, one: &Range<usize>, other: &Range<usize>) -> bool {
    let bowed = |at: &usize| line.strokes[*at].kind != StrokeKind::Tremolo;
    let pairs = || {
        let places = one.clone().zip(other.clone()).filter(|(at, _)| bowed(at));
        places.map(|(one, other)| (&plan.strokes[one], &plan.strokes[other]))
    };
    let same = pairs().all(|(one, other)| one.direction == other.direction);
    let mirrored = one.len() % 2 == 1
        && pairs().all(|(one, other)| one.direction != other.direction)
        && plan.strokes[one.start + 1..other.end].iter().all(|stroke| stroke.link != Link::Hooked);
    same || mirrored
}

fn is_three(score: &Score, strokes: &[Stroke]) -> bool {
    let [first, second, third] = strokes else { return false };
    let Some(bar) = score.bars.get(first.bar as usize) else { return false };
    first.offset.is_zero()
        && first.length == second.length
        && second.length == third.length
        && first.length * 3 == bar.length
        && second.join == Join::Continues
        && third.join == Join::Continues
}
