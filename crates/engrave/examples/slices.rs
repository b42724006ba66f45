//! Cuts and engraves slices of scores, and writes them for others to look at: `slices FOLDER < LIST`, a path a
//! line. For the outside check of pictures; it prints a line of tab-separated values for each slice and part.
#![allow(
    clippy::disallowed_macros,
    clippy::disallowed_methods,
    reason = "an edge program: it opens files, prints, times, and reads its arguments"
)]

use std::fs;
use std::io;
use std::path::{Path, PathBuf};
use std::time::Instant;

use arcata_bow::Profile;
use arcata_bow::timing::{TempoChoice, TempoMap};
use arcata_engrave::{
    AskedStarts, Booklet, BookletRequest, Cutter, Engraver, House, Opening, ShownChanges, Slice,
    SystemSpread, SystemWide,
};
use arcata_score::Score;
use arcata_xml::{Document, Limits, Tag, open_score};

/// Parts of one slice at most: a quartet.
const PARTS: usize = 4;
/// Bars of one slice.
const BARS: u32 = 4;
/// Slices of one score at most, evenly spread over it.
const SLICES: u32 = 4;
/// From every so many scores, one part is set as a booklet.
const BOOKLET_EVERY: usize = 2;

fn main() -> Result<(), String> {
    let folder = std::env::args().nth(1).map(PathBuf::from).ok_or("slices FOLDER < LIST")?;
    let engraver = Engraver::new();
    for (number, path) in io::stdin().lines().enumerate() {
        let path = PathBuf::from(path.map_err(|problem| problem.to_string())?);
        let bytes = fs::read(&path).map_err(|problem| format!("{}: {problem}", path.display()))?;
        let Ok(file) = open_score(bytes, &Limits::default()) else { continue };
        let score = arcata_score::read(file.document());
        let parts: Vec<usize> =
            (0..score.parts.len()).filter(|part| score.parts[*part].instrument.is_bowed()).collect();
        let Some(first) = parts.first() else { continue };
        let target = folder.join(format!("{number}"));
        slices(&path, &target, (file.document(), &score), &parts[..parts.len().min(PARTS)], &engraver)?;
        if number % BOOKLET_EVERY == 0 {
            booklet(&path, &target, (file.document(), &score), *first, &engraver)?;
        }
    }
    Ok(())
}

/// What became of a slice or a part.
struct Row<'a> {
    kind: &'a str,
    micros: u128,
    notes: usize,
    lost: usize,
    outside: usize,
    score: &'a Path,
    written: &'a Path,
    remark: String,
}

impl Row<'_> {
    fn print(&self) {
        println!(
            "{}\t{}\t{}\t{}\t{}\t{}\t{}\t{}",
            self.kind,
            self.micros,
            self.notes,
            self.lost,
            self.outside,
            self.score.display(),
            self.written.display(),
            self.remark.replace(['\t', '\n'], " ")
        );
    }
}

fn slices(
    path: &Path,
    target: &Path,
    (document, score): (&Document, &Score),
    parts: &[usize],
    engraver: &Engraver,
) -> Result<(), String> {
    let cutter = Cutter::new(document, score);
    let windows = u32::try_from(score.bars.len()).unwrap_or(u32::MAX) / BARS;
    let step = windows.div_ceil(SLICES).max(1);
    for window in (0..windows.max(1)).step_by(step as usize) {
        let begun = Instant::now();
        let slice = cutter.cut(parts, window * BARS..=window * BARS + BARS - 1, Opening::Excerpt);
        let drawing = engraver.engrave(&slice, SystemSpread::default());
        let micros = begun.elapsed().as_micros();
        let written = target.with_extension(format!("{window}.musicxml"));
        write(&written, slice.musicxml())?;
        let notes = heard(document, &slice);
        let mut row = Row {
            kind: "slice",
            micros,
            notes: notes.len(),
            lost: notes.len(),
            outside: 0,
            score: path,
            written: &written,
            remark: String::new(),
        };
        match drawing {
            Ok(drawing) => {
                let boxes: Vec<_> = notes.iter().filter_map(|note| drawing.notes.get(note)).collect();
                row.lost = notes.len() - boxes.len();
                row.outside = boxes.iter().filter(|area| !drawing.system.holds(***area)).count();
                row.remark = drawing.remarks.iter().map(|remark| format!("{remark:?}")).collect();
            }
            Err(problem) => row.remark = problem.to_string(),
        }
        row.print();
    }
    Ok(())
}

/// The notes of a slice that are printed: no rests, nothing that the file hides.
fn heard(document: &Document, slice: &Slice) -> Vec<arcata_xml::NodeId> {
    let shown = |note: &arcata_xml::NodeId| {
        document.element(*note).is_some_and(|note| {
            note.child(Tag::REST).is_none()
                && note.attribute("print-object").is_none_or(|print| print != "no")
        })
    };
    slice.notes().iter().copied().filter(shown).collect()
}

fn booklet(
    path: &Path,
    target: &Path,
    (document, score): (&Document, &Score),
    part: usize,
    engraver: &Engraver,
) -> Result<(), String> {
    let begun = Instant::now();
    let request = BookletRequest {
        document,
        score,
        wide: &SystemWide::new(document, score),
        tempo: &TempoMap::new(score, &Profile::default(), TempoChoice::Written),
        house: &House::default(),
        turn: House::default().turn(),
        part,
        shown: &ShownChanges::default(),
        asked: &AskedStarts::default(),
        wording: &arcata_languages::Wording::default(),
    };
    let made = Booklet::make(&request, engraver);
    let written = target.with_extension("part.musicxml");
    let notes = score.parts[part].notes.iter().filter(|note| !note.pitch.is_rest()).count();
    let mut row = Row {
        kind: "part",
        micros: begun.elapsed().as_micros(),
        notes,
        lost: notes,
        outside: 0,
        score: path,
        written: &written,
        remark: String::new(),
    };
    match made {
        Ok(made) => {
            write(&written, &made.musicxml)?;
            row.lost = notes.saturating_sub(sounding(&made.musicxml));
            row.remark = made.remarks.iter().map(|remark| format!("{remark:?}; ")).collect();
        }
        Err(problem) => row.remark = problem.to_string(),
    }
    row.print();
    Ok(())
}

/// Notes in a part as our reader finds them in what was written.
fn sounding(musicxml: &str) -> usize {
    let file = open_score(musicxml.as_bytes().to_vec(), &Limits::default()).ok();
    let score = file.map(|file| arcata_score::read(file.document()));
    let notes = score.iter().flat_map(|score| &score.parts).flat_map(|part| &part.notes);
    notes.filter(|note| !note.pitch.is_rest()).count()
}

fn write(path: &Path, text: &str) -> Result<(), String> {
    fs::write(path, text).map_err(|problem| format!("{}: {problem}", path.display()))
}
