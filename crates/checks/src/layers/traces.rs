//! Lifted and applied, applied and wiped: the same bytes, plain or packed, and as valid as before.

use std::path::{Path, PathBuf};

use arcata_layer::{
    Addresses, BowPlace, Entry, HookSign, Layer, LiftChoice, LiftKind, Mark, Trust, apply, lift, read, wipe,
    write,
};
use arcata_score::{BowDirection, NoteId, Score};
use arcata_xml::{Document, Input, Limits, Package, ScoreFile, Tag, open_score};
use rayon::prelude::*;

use crate::laws;
use crate::outcome::{CheckOutcome, Result};
use crate::setting::{self, CheckSetting};

/// What one file shows.
#[derive(Default)]
struct TracesLeft {
    name: String,
    /// Why it cannot be opened; nothing else is asked then.
    unread: Option<String>,
    broken: Vec<String>,
    lifted: usize,
    staying: usize,
    applied: usize,
    packed: bool,
    /// The file read and the file with a layer on it.
    written: Option<(PathBuf, PathBuf)>,
}

pub(super) fn check(setting: &CheckSetting, files: &[PathBuf], outcome: &mut CheckOutcome) -> Result<()> {
    let folder = setting.scratch("layers")?;
    let held: Vec<TracesLeft> = files
        .par_iter()
        .enumerate()
        .map(|(number, path)| {
            let mut held = TracesLeft { name: path.display().to_string(), ..TracesLeft::default() };
            if let Err(problem) = ask(path, &folder, number, &mut held) {
                held.broken.push(problem);
            }
            held
        })
        .collect();
    let read: Vec<&TracesLeft> = held.iter().filter(|file| file.unread.is_none()).collect();
    for file in &read {
        outcome.check(file.broken.is_empty(), &format!("{}: {}", file.name, file.broken.join("; ")));
    }
    let sum = |count: fn(&TracesLeft) -> usize| read.iter().map(|file| count(file)).sum::<usize>();
    println!(
        "{} files, {} of them packed: {} marks lifted and applied ({} stayed), {} entries applied and wiped",
        read.len(),
        sum(|file| usize::from(file.packed)),
        sum(|file| file.lifted),
        sum(|file| file.staying),
        sum(|file| file.applied)
    );
    let written: Vec<(PathBuf, PathBuf)> = held.into_iter().filter_map(|file| file.written).collect();
    let result = laws::validate(setting, &folder, &written, outcome);
    if !outcome.has_failed() {
        let _ = std::fs::remove_dir_all(&folder);
    }
    result
}

fn ask(path: &Path, folder: &Path, number: usize, held: &mut TracesLeft) -> Result<()> {
    let bytes = setting::read(path)?;
    let file = match open_score(bytes.clone(), &Limits::default()) {
        Ok(file) => file,
        Err(problem) => {
            held.unread = Some(problem.to_string());
            return Ok(());
        }
    };
    held.packed = file.kind() == Input::Package;
    let score = arcata_score::read(file.document());
    for kinds in
        [vec![LiftKind::Bows], vec![LiftKind::Bows, LiftKind::Words, LiftKind::Lifts, LiftKind::Slurs]]
    {
        lift_and_apply(&file, &score, kinds, held)?;
    }
    let marked = apply_and_wipe(&file, &score, held)?;
    let whole = file.write(&marked).map_err(|problem| problem.to_string())?;
    if held.packed {
        compare_packages(&bytes, &whole, held)?;
    }
    let ending = if held.packed { "mxl" } else { "musicxml" };
    let target = folder.join(format!("{number:04}.{ending}"));
    setting::write(&target, whole)?;
    held.written = Some((path.to_owned(), target));
    Ok(())
}

fn said(problem: &dyn std::fmt::Display) -> String {
    problem.to_string()
}

fn parse(bytes: Vec<u8>) -> Result<Document> {
    Document::parse(bytes, &Limits::default()).map_err(|problem| said(&problem))
}

/// The layer as its file would give it back.
fn through_a_file(layer: &Layer) -> Result<Layer> {
    read(write(layer).as_bytes()).map_err(|problem| said(&problem))
}

fn lift_and_apply(
    file: &ScoreFile,
    score: &Score,
    kinds: Vec<LiftKind>,
    held: &mut TracesLeft,
) -> Result<()> {
    let document = file.document();
    let slurs = kinds.contains(&LiftKind::Slurs);
    let lifted =
        lift(document, score, &LiftChoice { parts: None, kinds }).map_err(|problem| said(&problem))?;
    let clean = parse(document.apply(&lifted.edits).map_err(|problem| said(&problem))?)?;
    let layer = through_a_file(&lifted.layer)?;
    let applied = apply(&clean, &arcata_score::read(&clean), &layer, &[], Trust::OwnScore)
        .map_err(|problem| said(&problem))?;
    if let Some(left) = applied.left_out.first() {
        held.broken
            .push(format!("{} lifted marks are not applied, the first: {left}", applied.left_out.len()));
    }
    if clean.apply(&applied.edits).map_err(|problem| said(&problem))? != document.bytes() {
        held.broken.push("lifted and applied, it is another file".to_owned());
    }
    let left = clean.elements().filter(|element| element.tag() == Tag::SLUR).count();
    // A whole slur that stays has two ends.
    let whole = ["ends on no note", "no note that can be addressed", "not that of a single mark"];
    let ends = |why: &str| {
        if whole.iter().any(|said| why.contains(said)) { 2 } else { usize::from(why.contains("slur")) }
    };
    let told: usize = lifted.staying.iter().map(|mark| ends(&mark.why.to_string())).sum();
    if slurs && left != told {
        held.broken.push(format!("{left} ends of slurs stay in the score, and {told} are told"));
    }
    held.lifted += layer.entries.len();
    held.staying += lifted.staying.len();
    Ok(())
}

/// Marks of every kind, one on every third note.
fn all_kinds(score: &Score) -> Layer {
    let addresses = Addresses::new(score);
    let mut layer = Layer { parts: addresses.part_keys().to_vec(), ..Layer::default() };
    for (part, notes) in score.parts.iter().enumerate() {
        for (note, number) in (0..notes.notes.len()).step_by(3).zip(0_usize..) {
            let place = |note: usize| addresses.place(part, NoteId(u32::try_from(note).ok()?));
            let Some(at) = place(note) else { continue };
            let later = place(note + 2).map(|place| place.spot);
            let mark = match (number % 9, later) {
                (0, _) => Mark::Down,
                (1, _) => Mark::Up,
                (2, _) => Mark::Hook { bow: Some(BowDirection::Up), sign: HookSign::ALL[number / 9 % 3] },
                (3, _) => Mark::Retake { bow: Some(BowDirection::Down) },
                (4, _) => Mark::AsItComes,
                (5, _) => Mark::Lift,
                (6, _) => Mark::InBow { place: BowPlace::ALL[number % 6] },
                (7, _) => Mark::Text { text: "tutti: <sul tasto> & dolce ♭".to_owned() },
                (_, Some(to)) => Mark::SlurAdded { to },
                (_, None) => Mark::Down,
            };
            layer.entries.push(Entry::new(at, mark));
        }
        for slur in notes.slurs.iter().step_by(5) {
            if let (Some(at), Some(to)) = (addresses.place(part, slur.start), addresses.spot(part, slur.end))
            {
                layer.entries.push(Entry::new(at, Mark::SlurRemoved { to }));
            }
        }
    }
    layer.put_in_order();
    layer
}

/// Applies a layer, wipes it, and gives the bytes with it on.
fn apply_and_wipe(file: &ScoreFile, score: &Score, held: &mut TracesLeft) -> Result<Vec<u8>> {
    let document = file.document();
    let applied =
        apply(document, score, &all_kinds(score), &[], Trust::OwnScore).map_err(|problem| said(&problem))?;
    let bytes = document.apply(&applied.edits).map_err(|problem| said(&problem))?;
    let marked = parse(bytes)?;
    let marked_score = arcata_score::read(&marked);
    let layer = through_a_file(&applied.layer)?;
    let again =
        apply(&marked, &marked_score, &layer, &[], Trust::OwnScore).map_err(|problem| said(&problem))?;
    if !again.edits.is_empty() {
        held.broken.push("applied twice is not applied once".to_owned());
    }
    let wiped = wipe(&marked, &marked_score, &layer, Trust::OwnScore).map_err(|problem| said(&problem))?;
    if marked.apply(&wiped.edits).map_err(|problem| said(&problem))? != document.bytes() {
        held.broken.push("applied and wiped, it is another file".to_owned());
    }
    held.applied += applied.written;
    Ok(marked.into_bytes())
}

/// Members keep their order, their names, and all but the score their size.
fn compare_packages(before: &[u8], after: &[u8], held: &mut TracesLeft) -> Result<()> {
    let open = |bytes: &[u8]| {
        Package::open(bytes.to_vec(), &Limits::default()).map_err(|problem| problem.to_string())
    };
    let (before, after) = (open(before)?, open(after)?);
    let names = |package: &Package| -> Vec<String> {
        package.members().iter().map(|member| member.name.clone()).collect()
    };
    if names(&before) != names(&after) {
        held.broken.push("the package has other members".to_owned());
    }
    let others = |package: &Package| -> Vec<(u64, u64)> {
        let score = package.score_name();
        let others = package.members().iter().filter(|member| member.name != score);
        others.map(|member| (member.packed, member.unpacked)).collect()
    };
    if others(&before) != others(&after) {
        held.broken.push("other members of the package have changed".to_owned());
    }
    Ok(())
}
