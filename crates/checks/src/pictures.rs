//! Slices and parts engraved from music21's corpus: no note is lost, none lies outside its system, what was
//! cut from a valid score is valid by the MusicXML 4.0 schema, and a slice is drawn in time.
//!
//! The engraving itself is done by the example `slices` of `arcata-engrave`, which `cargo xtask` builds and
//! names in `ARCATA_SLICES`: this program is built for speed, and the engraving library would be built twice.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use crate::laws;
use crate::outcome::{CheckOutcome, Result};
use crate::program;
use crate::reader;
use crate::setting::{CheckSetting, write};

/// A slice of four bars of a quartet is engraved in so many milliseconds, as half of them are at least.
const MEDIAN: f64 = 30.0;
/// A run on a busy or slow machine may take so many times as long before it counts as a failure: the figure
/// itself is printed.
const LEEWAY: f64 = 3.0;
/// Scores that are looked at, evenly spread over the corpus.
const SCORES: usize = 180;

/// One line of what the example prints.
struct PrintedLine {
    kind: String,
    millis: f64,
    notes: usize,
    lost: usize,
    outside: usize,
    score: PathBuf,
    written: PathBuf,
    remark: String,
}

/// Asks everything.
pub(crate) fn check(setting: &CheckSetting, outcome: &mut CheckOutcome) -> Result<()> {
    let program =
        std::env::var_os("ARCATA_SLICES").ok_or("ARCATA_SLICES is not set; call this through cargo xtask")?;
    let folder = setting.scratch("pictures")?;
    let rows = rows(Path::new(&program), &folder, &scores(setting)?)?;
    outcome.check(!rows.is_empty(), "slices were engraved");
    for row in &rows {
        let place = format!("{} ({})", row.score.display(), row.written.display());
        let well = row.lost == 0 && row.outside == 0;
        let sentence = format!(
            "every note of a {} is found where it belongs: {place}: {} of {} lost, {} outside; {}",
            row.kind, row.lost, row.notes, row.outside, row.remark
        );
        outcome.check(well, &sentence);
    }
    let notes: usize = rows.iter().map(|row| row.notes).sum();
    let parts = rows.iter().filter(|row| row.kind == "part").count();
    let mut millis: Vec<f64> = rows.iter().filter(|row| row.kind == "slice").map(|row| row.millis).collect();
    millis.sort_by(f64::total_cmp);
    let at = |share: usize| millis.get(millis.len() * share / 100).copied().unwrap_or_default();
    println!(
        "{} slices of four bars and {parts} parts, {notes} notes; a slice takes {:.1} ms (median; {:.1} ms at 95 of 100; \
         target {MEDIAN} ms)",
        millis.len(),
        at(50),
        at(95)
    );
    outcome.check(at(50) <= MEDIAN * LEEWAY, "half of the slices are drawn in time");
    let pairs: Vec<(PathBuf, PathBuf)> = rows.into_iter().map(|row| (row.score, row.written)).collect();
    let result = laws::validate(setting, &folder, &pairs, outcome);
    // What lies there is of use only when something failed.
    if !outcome.has_failed() {
        let _ = fs::remove_dir_all(&folder);
    }
    result
}

/// Scores with bowed strings, as many from each end of the corpus.
fn scores(setting: &CheckSetting) -> Result<Vec<PathBuf>> {
    let mut paths = BTreeSet::new();
    for entry in reader::dump(setting)? {
        paths.insert(PathBuf::from(entry["path"].as_str().ok_or("the dump has an entry without a path")?));
    }
    let paths: Vec<PathBuf> =
        paths.into_iter().filter(|path| !crate::scores::bowed_parts(path).is_empty()).collect();
    let step = paths.len().div_ceil(SCORES).max(1);
    Ok(paths.into_iter().step_by(step).collect())
}

fn rows(program: &Path, folder: &Path, scores: &[PathBuf]) -> Result<Vec<PrintedLine>> {
    let list: String = scores.iter().map(|path| format!("{}\n", path.display())).collect();
    write(&folder.join("scores.txt"), &list)?;
    program::said(program, folder, &list, row)
}

fn row(line: &str) -> Result<PrintedLine> {
    let fields: Vec<&str> = line.split('\t').collect();
    let [kind, micros, notes, lost, outside, score, written, remark] = fields[..] else {
        return Err(format!("the engraver's line is not understood: {line}"));
    };
    let number = |text: &str| text.parse::<usize>().map_err(|problem| format!("{text}: {problem}"));
    Ok(PrintedLine {
        kind: kind.to_owned(),
        millis: micros.parse::<f64>().map_err(|problem| format!("{micros}: {problem}"))? / 1000.0,
        notes: number(notes)?,
        lost: number(lost)?,
        outside: number(outside)?,
        score: score.into(),
        written: written.into(),
        remark: remark.to_owned(),
    })
}
