//! The collection, read once, with the marks that a plan can be compared at.

use std::fmt;
use std::path::Path;

use arcata_bow::together::{Agreement, agreements};
use arcata_bow::{Line, Profile, RepeatedStretch};
use arcata_score::{BarKind, BowDirection, Length, Score};
use rayon::prelude::*;
use serde_json::Value;

use crate::outcome::{CheckOutcome, Result};
use crate::scores;
use crate::setting::{CheckSetting, read_array};

/// Which half of the collection a tune is in: file names sorted, places counted from 1.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Half {
    /// Even places: weights may be looked at here.
    Tuning,
    /// Odd places: results are reported from here.
    Reporting,
}

impl fmt::Display for Half {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.pad(match self {
            Self::Tuning => "even",
            Self::Reporting => "odd",
        })
    }
}

/// Where a mark stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum TuneMarkPlace {
    /// Its stroke begins with a bar.
    Downbeat,
    /// The stroke after its own begins with a bar.
    BeforeDownbeat,
    /// Anywhere else.
    Elsewhere,
}

/// A printed mark on the first note of a stroke.
#[derive(Clone, Copy, Debug)]
pub(super) struct TuneMark {
    pub(super) line: usize,
    pub(super) stroke: usize,
    pub(super) direction: BowDirection,
    pub(super) place: TuneMarkPlace,
}

/// A tune with its lines and marks.
pub(super) struct Tune {
    pub(super) file: String,
    pub(super) half: Half,
    pub(super) lines: Vec<Line>,
    /// Figures that come back, which had better be bowed alike.
    pub(super) alike: Vec<Agreement>,
    /// For each line, whether each stroke begins with a bar.
    pub(super) on_downbeat: Vec<Vec<bool>>,
    pub(super) marks: Vec<TuneMark>,
    /// Marks of the index, those on grace notes too.
    printed: usize,
    /// Marks that our reader found on notes.
    read: usize,
    /// Marks found on notes that do not begin a stroke, or in no line.
    within_strokes: usize,
    same_as_another: bool,
}

/// All tunes, those that repeat another one left out.
pub(super) struct Collection {
    pub(super) tunes: Vec<Tune>,
    files: usize,
    lost: Vec<String>,
}

/// Reads the collection, written by `outside/ryan.py` on the first call.
pub(super) fn load(setting: &CheckSetting, profile: &Profile) -> Result<Collection> {
    let folder = setting.made_once("ryan", |folder| setting.script("ryan.py", &[folder]).map(|_| ()))?;
    let index = read_array(&folder.join("index.json"))?;
    let tunes: Result<Vec<Tune>> = index
        .par_iter()
        .enumerate()
        .map(|(place, entry)| {
            let half = if place % 2 == 0 { Half::Reporting } else { Half::Tuning };
            read_tune(&folder, entry, half, profile)
        })
        .collect();
    let mut tunes = tunes?;
    let files = tunes.len();
    let lost = tunes
        .iter()
        .filter(|tune| tune.read != tune.printed)
        .map(|tune| format!("{}: {} marks printed, {} read", tune.file, tune.printed, tune.read))
        .collect();
    tunes.retain(|tune| !tune.same_as_another);
    Ok(Collection { tunes, files, lost })
}

fn read_tune(folder: &Path, entry: &Value, half: Half, profile: &Profile) -> Result<Tune> {
    let count = |name: &str| entry[name].as_u64().and_then(|count| usize::try_from(count).ok()).unwrap_or(0);
    let file = entry["file"].as_str().ok_or("index.json: an entry without a file")?.to_owned();
    let opened = scores::open(&folder.join(&file))?;
    let score = arcata_score::read(opened.document());
    let lines = scores::lines(&score, profile);
    let on_downbeat: Vec<Vec<bool>> = lines.iter().map(|line| begins_bar(&score, line)).collect();
    let marks = marks(&lines, &on_downbeat);
    let weights = lines.first().map(|line| scores::blind(line, profile).weights).unwrap_or_default();
    let alike = agreements(&score, &lines, &weights);
    let notes = score.parts.iter().flat_map(|part| &part.notes);
    let read = notes.map(|note| usize::from(note.bow_mark.is_some()) + note.more_bow_marks.len()).sum();
    Ok(Tune {
        within_strokes: read - marks.len().min(read),
        file,
        half,
        lines,
        alike,
        on_downbeat,
        marks,
        printed: count("up") + count("down"),
        read,
        same_as_another: !entry["same_as"].is_null(),
    })
}

/// Whether each stroke begins with a whole bar; a pickup begins none. Read off the bars, not off the
/// emphasis of the stroke, which is part of what is checked.
fn begins_bar(score: &Score, line: &Line) -> Vec<bool> {
    let whole = |bar: u32| score.bars.get(bar as usize).is_some_and(|bar| bar.kind == BarKind::Counted);
    line.strokes.iter().map(|stroke| stroke.offset == Length::ZERO && whole(stroke.bar)).collect()
}

fn marks(lines: &[Line], on_downbeat: &[Vec<bool>]) -> Vec<TuneMark> {
    let mut marks = Vec::new();
    for (index, (line, on_downbeat)) in lines.iter().zip(on_downbeat).enumerate() {
        for (number, stroke) in line.strokes.iter().enumerate() {
            let Some(direction) = stroke.printed else { continue };
            let place = if on_downbeat[number] {
                TuneMarkPlace::Downbeat
            } else if on_downbeat.get(number + 1).is_some_and(|next| *next) {
                TuneMarkPlace::BeforeDownbeat
            } else {
                TuneMarkPlace::Elsewhere
            };
            marks.push(TuneMark { line: index, stroke: number, direction, place });
        }
    }
    marks
}

impl Collection {
    /// Takes the repeats off all lines, and gives them in the order of the lines.
    pub(super) fn without_repeats(&mut self) -> Vec<Vec<RepeatedStretch>> {
        let lines = self.tunes.iter_mut().flat_map(|tune| &mut tune.lines);
        lines.map(|line| std::mem::take(&mut line.repeats)).collect()
    }

    /// Puts back what [`Self::without_repeats`] took.
    pub(super) fn with_repeats(&mut self, repeats: Vec<Vec<RepeatedStretch>>) {
        let lines = self.tunes.iter_mut().flat_map(|tune| &mut tune.lines);
        for (line, repeats) in lines.zip(repeats) {
            line.repeats = repeats;
        }
    }

    /// Says what was read, and whether no printed mark was lost on the way.
    pub(super) fn report(&self, outcome: &mut CheckOutcome) {
        let sum = |count: fn(&Tune) -> usize| self.tunes.iter().map(count).sum::<usize>();
        let strokes = sum(|tune| tune.lines.iter().map(|line| line.strokes.len()).sum());
        println!(
            "{} files, {} tunes without those that repeat another; {strokes} strokes, {} marks printed, \
             {} of them on the first note of a stroke, {} elsewhere",
            self.files,
            self.tunes.len(),
            sum(|tune| tune.printed),
            sum(|tune| tune.marks.len()),
            sum(|tune| tune.within_strokes),
        );
        for lost in &self.lost {
            println!("{lost}");
        }
        outcome.check(self.lost.is_empty(), "every bow mark of the collection is read");
    }
}
