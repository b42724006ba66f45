//! Speed and memory, on one core, in one run. A report; nothing here passes or fails.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::Arc;
use std::time::{Duration, Instant};

use arcata_analysis::{Bowed, Config, Ground, Snapshot, Source};
use arcata_bow::plan::{Anchor, alternatives, sureness};
use arcata_bow::{Line, Onward, Plan, PlanSettings, Profile, RepeatedStretch, Road, Stroke, plan};
use arcata_review::ReviewSettings;
use arcata_score::BowDirection;
use arcata_xml::{Document, Limits};
use quick_xml::events::Event;
use rayon::ThreadPoolBuilder;

use crate::outcome::Result;
use crate::setting::{CheckSetting, read};
use crate::{bench_list, bench_repairs, reader, scores};

/// Each time is the best of so many runs.
const RUNS: u32 = 5;
const STROKES: [usize; 4] = [1_000, 10_000, 100_000, 1_000_000];

/// Measures the given file, or the largest string work of music21's corpus.
pub(crate) fn run(setting: &CheckSetting, arguments: &[String]) -> Result<()> {
    let path = match arguments {
        [] => largest(setting)?,
        [path] => PathBuf::from(path),
        _ => return Err("bench takes one file or nothing".to_owned()),
    };
    let pool = ThreadPoolBuilder::new().num_threads(1).build().map_err(|problem| problem.to_string())?;
    let lines = pool.install(|| file(&path))?;
    pool.install(|| bench_repairs::run(&path))?;
    memory(&path)?;
    match setting.script("parse_time.py", &[&path]) {
        Ok(said) => println!("music21, the same file: {}", said.trim()),
        Err(problem) => println!("music21, the same file: {problem}"),
    }
    pool.install(|| planner(&lines))?;
    bench_list::run(setting)
}

/// Prints what a process that reviews the file once has needed at most. Called by [`run`] as a process of
/// its own.
pub(crate) fn one_review(arguments: &[String]) -> Result<()> {
    let [path] = arguments else { return Err("one file is wanted".to_owned()) };
    let lines = whole_review(read(Path::new(path))?)?.0;
    let status = fs::read_to_string("/proc/self/status").map_err(|problem| problem.to_string())?;
    let peak =
        status.lines().find_map(|line| line.strip_prefix("VmHWM:")?.split_whitespace().next()?.parse().ok());
    let peak: u64 = peak.ok_or("the system does not tell how much memory was used")?;
    println!("{} {}", peak * 1024, lines.len());
    Ok(())
}

fn largest(setting: &CheckSetting) -> Result<PathBuf> {
    let mut best = (0, None);
    for entry in reader::dump(setting)?.iter().filter(|entry| entry["group"] == "corpus") {
        let path = PathBuf::from(entry["path"].as_str().unwrap_or_default());
        let opened = scores::open(&path)?;
        let bytes = opened.document().bytes();
        let size = bytes.len();
        // The bare tokens that all is compared with are read from UTF-8 only.
        if size > best.0 && std::str::from_utf8(bytes).is_ok() {
            best = (size, Some(path));
        }
    }
    best.1.ok_or("the dump lists no file of the corpus".to_owned())
}

fn best_of(mut measured: impl FnMut() -> Result<Duration>) -> Result<Duration> {
    let mut best = Duration::MAX;
    for _ in 0..RUNS {
        best = best.min(measured()?);
    }
    Ok(best)
}

/// Times of the steps on one file; returns its lines.
fn file(path: &Path) -> Result<Vec<Line>> {
    let opened = scores::open(path)?;
    let bytes = opened.document().bytes().to_vec();
    let bare = best_of(|| tokens(&bytes))?;
    let document = best_of(|| {
        let copy = bytes.clone();
        let start = Instant::now();
        let parsed = Document::parse(copy, &Limits::default()).map_err(|problem| problem.to_string())?;
        Ok(taken(start, &parsed))
    })?;
    let reading = best_of(|| {
        let copy = bytes.clone();
        let start = Instant::now();
        let parsed = Document::parse(copy, &Limits::default()).map_err(|problem| problem.to_string())?;
        Ok(taken(start, &arcata_score::read(&parsed)))
    })?;
    let reviewing = best_of(|| {
        let copy = bytes.clone();
        let start = Instant::now();
        let reviewed = whole_review(copy)?;
        Ok(taken(start, &reviewed))
    })?;
    let (lines, findings) = whole_review(bytes.clone())?;
    let strokes: usize = lines.iter().map(|line| line.strokes.len()).sum();
    println!("{}: {:.1} MB unpacked", path.display(), bytes.len() as f64 / 1e6);
    println!("{} lines, {strokes} strokes, {findings} findings; one core, best of {RUNS}", lines.len());
    for (name, time, wanted) in [
        ("quick-xml tokens", bare, "1"),
        ("our document", document, ""),
        ("our reading", reading, "at most 4"),
        ("whole review", reviewing, "at most 8"),
    ] {
        let ratio = time.as_secs_f64() / bare.as_secs_f64();
        println!("{name:20} {:9.1} ms {ratio:8.2} times the tokens   {wanted}", time.as_secs_f64() * 1e3);
    }
    alike(&bytes)?;
    Ok(lines)
}

/// Time since `start`; the result is kept until the clock is read.
fn taken<T>(start: Instant, result: &T) -> Duration {
    std::hint::black_box(result);
    start.elapsed()
}

fn tokens(bytes: &[u8]) -> Result<Duration> {
    let start = Instant::now();
    let mut reader = quick_xml::Reader::from_reader(bytes);
    while !matches!(reader.read_event().map_err(|problem| problem.to_string())?, Event::Eof) {}
    Ok(start.elapsed())
}

/// From bytes to findings, of all parts.
fn whole_review(bytes: Vec<u8>) -> Result<(Vec<Line>, usize)> {
    let ground = Ground::new(Source::open(bytes)?, Config::usual());
    let snapshot = Snapshot::new(Arc::new(ground));
    let findings = snapshot.review(&[], &ReviewSettings::default()).findings.len();
    Ok((snapshot.lines().to_vec(), findings))
}

/// What bowing alike takes, beside planning each line for itself.
fn alike(bytes: &[u8]) -> Result<()> {
    let profile = Profile::default();
    let file =
        arcata_xml::open_score(bytes.to_vec(), &Limits::default()).map_err(|problem| problem.to_string())?;
    let score = arcata_score::read(file.document());
    let lines = scores::lines(&score, &profile);
    let strokes: usize = lines.iter().map(|line| line.strokes.len()).sum();
    let apart = best_of(|| {
        let start = Instant::now();
        let plans: Vec<Plan> =
            lines.iter().map(|line| plan(line, &profile.plan_settings(line.instrument))).collect();
        Ok(taken(start, &plans))
    })?;
    let together = best_of(|| {
        let start = Instant::now();
        Ok(taken(start, &Bowed::new(&score, &Config::usual())))
    })?;
    println!(
        "{} lines, {strokes} strokes: apart {:.1} ms, alike {:.1} ms, {:.1} times (at most 3000 ms a quartet)",
        lines.len(),
        apart.as_secs_f64() * 1e3,
        together.as_secs_f64() * 1e3,
        together.as_secs_f64() / apart.as_secs_f64()
    );
    Ok(())
}

fn memory(path: &Path) -> Result<()> {
    let program = std::env::current_exe().map_err(|problem| problem.to_string())?;
    let output = Command::new(program).arg("one-review").arg(path).env("RAYON_NUM_THREADS", "1").output();
    let output = output.map_err(|problem| problem.to_string())?;
    let said = String::from_utf8_lossy(&output.stdout).into_owned();
    let peak: u64 = said
        .split_whitespace()
        .next()
        .and_then(|word| word.parse().ok())
        .ok_or(format!("memory: {}", String::from_utf8_lossy(&output.stderr)))?;
    let size = scores::open(path)?.document().bytes().len() as f64;
    let ratio = peak as f64 / size;
    println!(
        "peak memory of a review {:9.1} MB {ratio:8.2} times the file      at most 10",
        peak as f64 / 1e6
    );
    Ok(())
}

/// Planning speed by length, and planning anew after one change.
fn planner(lines: &[Line]) -> Result<()> {
    let longest = lines.iter().max_by_key(|line| line.strokes.len()).filter(|line| !line.strokes.is_empty());
    let longest = longest.ok_or("the file has no strokes to plan")?;
    let settings = Profile::default().plan_settings(longest.instrument);
    for count in STROKES {
        let line = repeated(longest, count);
        let start = Instant::now();
        let planned = plan(&line, &settings);
        let time = taken(start, &planned);
        let rate = count as f64 / time.as_secs_f64() / 1e6;
        println!(
            "planner, 48 cells, {count:8} strokes {:9.1} ms {rate:6.2} million strokes/s",
            time.as_secs_f64() * 1e3
        );
    }
    how_sure(longest, &settings);
    with_repeats(longest, &settings);
    one_change(longest, &settings);
    Ok(())
}

/// What saying how sure each bow is takes beside planning.
fn how_sure(line: &Line, settings: &PlanSettings) {
    let line = repeated(line, 10_000);
    let start = Instant::now();
    let planned = plan(&line, settings);
    let planning = taken(start, &planned);
    let start = Instant::now();
    let sure = sureness(&line, settings, &planned);
    let time = taken(start, &sure);
    println!(
        "how sure, {} strokes {:9.1} ms, {:.1} times the plan   at most 3",
        sure.len(),
        time.as_secs_f64() * 1e3,
        time.as_secs_f64() / planning.as_secs_f64()
    );
}

/// A line of the same strokes over and over, without repeats.
fn repeated(line: &Line, count: usize) -> Line {
    let strokes: Vec<Stroke> = line.strokes.iter().cycle().take(count).cloned().collect();
    Line { strokes, repeats: Vec::new(), ..line.clone() }
}

/// What repeats cost: a line of 4,096 strokes plain, with every 64 of them repeated, with all of it once
/// more da capo, and with both.
fn with_repeats(line: &Line, settings: &PlanSettings) {
    const COUNT: usize = 4096;
    const STRETCH: usize = 64;
    let plain = repeated(line, COUNT);
    let end = |at: usize| plain.strokes[at].lendable;
    let stretches: Vec<RepeatedStretch> = (STRETCH..=COUNT)
        .step_by(STRETCH)
        .map(|stop| RepeatedStretch::between(stop - STRETCH, stop, end(stop - 1)))
        .collect();
    let da_capo = RepeatedStretch {
        road: Road::DaCapo,
        onward: Onward::Anew,
        ..RepeatedStretch::between(0, COUNT, end(COUNT - 1))
    };
    let both = stretches.iter().cloned().chain([da_capo.clone()]).collect();
    let cases =
        [("no repeats", Vec::new()), ("64 repeats", stretches), ("da capo", vec![da_capo]), ("both", both)];
    for (name, repeats) in cases {
        let line = Line { repeats, ..plain.clone() };
        let start = Instant::now();
        let planned = plan(&line, settings);
        let time = taken(start, &planned);
        println!("planner, {COUNT} strokes, {name:12} {:9.1} ms", time.as_secs_f64() * 1e3);
    }
}

fn one_change(line: &Line, settings: &PlanSettings) {
    let middle = line.strokes.len() / 2;
    let planned = plan(line, settings);
    let other = planned.strokes.get(middle).map_or(BowDirection::Up, |stroke| stroke.direction.other());
    let mut settings = settings.clone();
    settings.anchors.push(Anchor { stroke: middle, direction: Some(other), link: None });
    let start = Instant::now();
    let around = alternatives(line, &settings, middle..middle + 1, 1);
    let passage = taken(start, &around);
    let start = Instant::now();
    let whole = taken(start, &plan(line, &settings));
    println!(
        "planning anew after one stroke of {} was turned: {:.1} ms to the free joints around it, \
         {:.1} ms for the whole part      at most 16",
        line.strokes.len(),
        passage.as_secs_f64() * 1e3,
        whole.as_secs_f64() * 1e3
    );
}
