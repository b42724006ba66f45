//! What is asked for reaches paper: a thousand bows asked for at random in ten works, saved as layers, put on the score and into
//! engraved parts by the program as a user runs it, and read back from both.
//!
//! Common practice of what players read: a down- or up-bow as its sign; a hook and a retake as two equal signs, on the stroke
//! before and on the stroke itself. A stroke counts as read back when the reader of the written file finds the sign at its
//! beginning, and a plan that keeps to the signs bows it so.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use arcata_bow::plan::{Plan, strokes_before};
use arcata_bow::{Line, Profile, plan};
use arcata_layer::{Addresses, Entry, HookSign, Layer, Mark, Spot};
use arcata_score::{BowDirection, NoteId, Score};
use arcata_testkit::Random;
use rayon::prelude::*;

use crate::laws;
use crate::outcome::{CheckOutcome, Result};
use crate::scores;
use crate::setting::{CheckSetting, write};

/// Asks in all, and the works they are shared among.
const ASKS: usize = 1000;
const WORKS: usize = 10;
/// Works with fewer strokes have no room for so many asks; larger ones take their time to be engraved.
const STROKES: std::ops::RangeInclusive<usize> = 800..=9000;

/// A bow that is asked for.
struct PaperAsk {
    part: usize,
    /// The first note of the stroke, and of the one before it.
    spot: Spot,
    before: Option<Spot>,
    mark: Mark,
}

/// What a file was found to say.
#[derive(Default)]
struct ReadBack {
    name: String,
    asked: usize,
    on_score: usize,
    in_parts: usize,
    broken: Vec<String>,
}

/// Asks, writes and reads back.
pub(crate) fn check(setting: &CheckSetting, outcome: &mut CheckOutcome) -> Result<()> {
    let program = std::env::var_os("ARCATA_PROGRAM")
        .map(PathBuf::from)
        .ok_or("ARCATA_PROGRAM is not set; call this through cargo xtask")?;
    let folder = setting.scratch("paper")?;
    let works = if setting.given.is_empty() { corpus(setting)? } else { setting.given.clone() };
    outcome.check(!works.is_empty(), "there are works to ask for bows in");
    let each = ASKS.div_ceil(works.len().max(1));
    let found: Vec<ReadBack> = works
        .par_iter()
        .enumerate()
        .map(|(number, work)| {
            let mut back = ReadBack { name: work.display().to_string(), ..ReadBack::default() };
            let place = folder.join(number.to_string());
            if let Err(problem) = circle(work, (&program, &place), (number, each), &mut back) {
                back.broken.push(problem);
            }
            back
        })
        .collect();
    for back in &found {
        println!(
            "{}: {} asked, {} read back from the score, {} from the parts",
            back.name, back.asked, back.on_score, back.in_parts
        );
        let first: Vec<&str> = back.broken.iter().take(5).map(String::as_str).collect();
        let whole = back.broken.is_empty() && back.on_score == back.asked && back.in_parts == back.asked;
        outcome.check(whole, &format!("{}: {} amiss: {}", back.name, back.broken.len(), first.join("; ")));
    }
    let sum = |count: fn(&ReadBack) -> usize| found.iter().map(count).sum::<usize>();
    let asked = sum(|back| back.asked);
    println!(
        "{asked} bows asked for in {} works: {} on the score, {} in the parts",
        found.len(),
        sum(|back| back.on_score),
        sum(|back| back.in_parts)
    );
    // Works that were named may be too short for as many.
    let enough = asked >= ASKS || !setting.given.is_empty();
    outcome.check(enough, &format!("{ASKS} bows are asked for, not {asked}"));
    if !outcome.has_failed() {
        let _ = std::fs::remove_dir_all(&folder);
    }
    Ok(())
}

/// Ten works for strings, spread over the corpus.
fn corpus(setting: &CheckSetting) -> Result<Vec<PathBuf>> {
    let profile = Profile::default();
    let mut fit: Vec<PathBuf> = laws::files(setting)?
        .into_par_iter()
        .filter(|path| {
            let Ok(file) = scores::open(path) else { return false };
            let score = arcata_score::read(file.document());
            let bowed = score.parts.iter().filter(|part| part.instrument.is_bowed()).count();
            let strokes = || scores::lines(&score, &profile).iter().map(|line| line.strokes.len()).sum();
            bowed >= 3 && STROKES.contains(&strokes())
        })
        .collect();
    fit.sort();
    let step = fit.len().div_ceil(WORKS).max(1);
    Ok(fit.into_iter().step_by(step).take(WORKS).collect())
}

fn circle(
    work: &Path,
    (program, folder): (&Path, &Path),
    (seed, count): (usize, usize),
    back: &mut ReadBack,
) -> Result<()> {
    std::fs::create_dir_all(folder).map_err(|problem| format!("{}: {problem}", folder.display()))?;
    let score = arcata_score::read(&scores::document(work)?);
    let asks = asks(&score, seed as u64, count);
    back.asked = asks.len();
    let addresses = Addresses::new(&score);
    let entry = |ask: &PaperAsk| {
        let part = addresses.part_keys()[ask.part].clone();
        Entry::new(arcata_layer::Address { part, spot: ask.spot.clone() }, ask.mark.clone())
    };
    let mut layer = Layer {
        parts: addresses.part_keys().to_vec(),
        entries: asks.iter().map(entry).collect(),
        ..Layer::default()
    };
    layer.put_in_order();
    let (saved, bowed, parts) =
        (folder.join("asked.json"), folder.join("bowed.musicxml"), folder.join("parts"));
    write(&saved, arcata_layer::write(&layer))?;
    let made = run(
        program,
        &[
            "parts".as_ref(),
            work.as_os_str(),
            "--layer".as_ref(),
            saved.as_ref(),
            "--replace".as_ref(),
            "--out".as_ref(),
            parts.as_ref(),
        ],
    )?;
    told(&made, back);
    let applied = run(
        program,
        &[
            "layer".as_ref(),
            "apply".as_ref(),
            work.as_os_str(),
            "--layer".as_ref(),
            saved.as_ref(),
            "--out".as_ref(),
            bowed.as_ref(),
        ],
    )?;
    told(&applied, back);
    back.on_score = read_back(&bowed, &asks, |part| part, back)?;
    let by_part: BTreeSet<usize> = asks.iter().map(|ask| ask.part).collect();
    for part in by_part {
        let file = part_file(&parts, part)?;
        let own: Vec<&PaperAsk> = asks.iter().filter(|ask| ask.part == part).collect();
        let found = read_back(&file, own, |_| 0, back)?;
        back.in_parts += found;
    }
    Ok(())
}

fn run(program: &Path, arguments: &[&std::ffi::OsStr]) -> Result<Output> {
    Command::new(program)
        .args(arguments)
        .output()
        .map_err(|problem| format!("{}: {problem}", program.display()))
}

/// Keeps what a command says was not done.
fn told(output: &Output, back: &mut ReadBack) {
    let said = String::from_utf8_lossy(&output.stdout);
    let amiss = said.lines().skip_while(|line| !line.starts_with("Not ")).take(5);
    back.broken.extend(amiss.map(str::to_owned));
    if output.status.code().is_none_or(|code| code > 1) {
        back.broken.push(String::from_utf8_lossy(&output.stderr).trim().to_owned());
    }
}

fn part_file(folder: &Path, part: usize) -> Result<PathBuf> {
    let number = format!("{:02}", part + 1);
    let listed = std::fs::read_dir(folder).map_err(|problem| format!("{}: {problem}", folder.display()))?;
    let mut files: Vec<PathBuf> = listed.filter_map(|entry| Some(entry.ok()?.path())).collect();
    files.sort();
    let is_it = |path: &PathBuf| {
        let name = path.file_name().unwrap_or_default().to_string_lossy();
        name.starts_with(&number) && name.ends_with(".musicxml")
    };
    files.into_iter().find(is_it).ok_or(format!("no part {number} in {}", folder.display()))
}

/// Asks on strokes that do not touch each other, so that no two contradict; one in three asks is a row of two hooks.
fn asks(score: &Score, seed: u64, count: usize) -> Vec<PaperAsk> {
    let profile = Profile::default();
    let addresses = Addresses::new(score);
    let mut random = Random::new(seed.wrapping_add(0x0b0e));
    let lines = scores::lines(score, &profile);
    let mut places: Vec<(usize, usize)> = lines
        .iter()
        .enumerate()
        .flat_map(|(line, strokes)| (0..strokes.strokes.len()).map(move |stroke| (line, stroke)))
        .collect();
    let before: Vec<Vec<Option<usize>>> =
        lines.iter().map(|line| strokes_before(line, profile.plan_settings(line.instrument).reach)).collect();
    let mut taken: BTreeSet<(usize, usize)> = BTreeSet::new();
    let mut asks = Vec::new();
    while asks.len() < count && !places.is_empty() {
        let (line, stroke) = places.swap_remove(random.below(places.len()));
        let of = &lines[line];
        let row = if random.chance(33) { 2 } else { 1 };
        let strokes = stroke..(stroke + row).min(of.strokes.len());
        let touched: Vec<(usize, usize)> = strokes
            .clone()
            .flat_map(|stroke| [before[line][stroke].unwrap_or(stroke), stroke, stroke + 1])
            .map(|stroke| (line, stroke))
            .collect();
        if touched.iter().any(|place| taken.contains(place)) {
            continue;
        }
        let way = *random.pick(&[None, None, Some(BowDirection::Down), Some(BowDirection::Up)]);
        let mut made = Vec::new();
        for stroke in strokes {
            let spot = |stroke: usize| addresses.spot(of.part, *of.strokes[stroke].notes.first()?);
            let Some(place) = spot(stroke) else { continue };
            // A note that no address tells from another cannot be asked about by anybody.
            let first = of.strokes[stroke].notes.first().copied();
            if addresses.find_in(of.part, &place).ok().map(|found| found.note) != first {
                continue;
            }
            let head = before[line][stroke];
            let mark = match (random.below(if head.is_none() || row == 2 { 2 } else { 4 }), head) {
                (_, None) => Mark::of(way.unwrap_or(BowDirection::Up)),
                (0, _) => Mark::Hook { bow: way, sign: HookSign::Marks },
                (1, _) => Mark::Retake { bow: way },
                (_, _) => Mark::of(way.unwrap_or(BowDirection::Down)),
            };
            let before = head.filter(|_| mark.follows()).and_then(spot);
            made.push(PaperAsk { part: of.part, spot: place, before, mark });
        }
        taken.extend(touched);
        asks.extend(made);
    }
    asks.truncate(count);
    asks
}

/// How many of the asks a written file bears out.
fn read_back<'a>(
    path: &Path,
    asks: impl IntoIterator<Item = &'a PaperAsk>,
    part_of: impl Fn(usize) -> usize,
    back: &mut ReadBack,
) -> Result<usize> {
    let score = arcata_score::read(&scores::document(path)?);
    let profile = Profile::default();
    let lines = scores::lines(&score, &profile);
    let mut plans: BTreeMap<usize, Plan> = BTreeMap::new();
    let addresses = Addresses::new(&score);
    let mut held = 0;
    for ask in asks {
        let part = part_of(ask.part);
        let mut read = |spot: &Spot| -> Result<BowDirection> {
            let note = addresses.find_in(part, spot).map_err(|why| format!("{spot}: {why}"))?.note;
            let (line, stroke) =
                stroke_of(&score, &lines, part, note).ok_or(format!("{spot}: no stroke begins there"))?;
            let printed =
                lines[line].strokes[stroke].printed.ok_or(format!("{spot}: no sign stands there"))?;
            let of = &lines[line];
            let planned =
                plans.entry(line).or_insert_with(|| plan(of, &profile.plan_settings(of.instrument)));
            let bowed = planned.strokes.get(stroke).map(|planned| planned.direction);
            if bowed == Some(printed) { Ok(printed) } else { Err(format!("{spot}: the sign is not kept")) }
        };
        let found = read(&ask.spot).and_then(|way| {
            let named = match &ask.mark {
                Mark::Down => Some(BowDirection::Down),
                Mark::Up => Some(BowDirection::Up),
                Mark::Hook { bow, .. } | Mark::Retake { bow } => *bow,
                _ => None,
            };
            if named.is_some_and(|named| named != way) {
                return Err(format!("{}: {} was asked for", ask.spot, ask.mark.words()));
            }
            match &ask.before {
                Some(before) if read(before)? != way => {
                    Err(format!("{}: the stroke before goes the other way", ask.spot))
                }
                _ => Ok(()),
            }
        });
        match found {
            Ok(()) => held += 1,
            Err(why) => back.broken.push(format!("{}: {why}", path.display())),
        }
    }
    Ok(held)
}

/// The line and stroke that begins with a note.
fn stroke_of(score: &Score, lines: &[Line], part: usize, note: NoteId) -> Option<(usize, usize)> {
    let moment = score.parts[part].note(note).onset;
    let of_part = lines.iter().enumerate().filter(|(_, line)| line.part == part);
    of_part.into_iter().find_map(|(index, line)| {
        let at =
            line.strokes.iter().position(|stroke| stroke.onset == moment && stroke.notes.contains(&note));
        Some((index, at?))
    })
}
