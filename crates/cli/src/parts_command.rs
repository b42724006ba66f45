//! `arcata parts`.
#![expect(clippy::disallowed_methods, reason = "the command line is where folders are made and time is told")]

use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::time::Instant;

use arcata_bow::RealTime;
use arcata_bow::timing::{TempoChoice, TempoMap};
use arcata_engrave::{Booklet, BookletRequest, House, PageEndKind, Picture, SystemWide, pdf};
use arcata_files::FileError;
use arcata_prepare::{PartPaper, advice_words, page_end_words, part_file_name, part_paper, remark_words};
use arcata_score::Length;
use rayon::prelude::*;

use crate::args::PartsArguments;
use crate::bowed_score::BowedScore;
use crate::failure::Failure;
use crate::parts_bowings;
use crate::{bars, engraving, files, studio};

/// A part with its two files, not written yet.
struct Made {
    paper: PartPaper,
    pdf: PathBuf,
    musicxml: PathBuf,
    /// Sheets to be folded, where they are asked for.
    sheets: Option<StitchedSheets>,
    /// What a page turn needs.
    needed: RealTime,
    seconds: f64,
}

/// The sheets of a part that is to be folded and stitched.
struct StitchedSheets {
    path: PathBuf,
    pdf: Vec<u8>,
    /// How many sheets, and their width and height, mm.
    count: usize,
    size: (f64, f64),
    /// The pages that fold out, behind the sheets.
    folding_out: Vec<String>,
}

pub(crate) fn run(arguments: &PartsArguments) -> Result<ExitCode, Failure> {
    let house = house(arguments)?;
    let bowed = parts_bowings::open(arguments)?;
    let parts = bars::parts(&bowed.score, &arguments.part)?;
    let targets: Vec<PathBuf> =
        parts.iter().map(|part| arguments.out.join(part_file_name(&bowed.score, *part))).collect();
    check_targets(arguments, &targets)?;
    let made = make(arguments, &bowed, &house, &parts, &targets)?;
    std::fs::create_dir_all(&arguments.out)
        .map_err(|error| FileError::Write { path: arguments.out.clone(), why: error.to_string() })?;
    for part in &made {
        arcata_files::write_whole(&part.pdf, &part.paper.pdf)?;
        arcata_files::write_whole(&part.musicxml, part.paper.booklet.musicxml.as_bytes())?;
        if let Some(sheets) = &part.sheets {
            arcata_files::write_whole(&sheets.path, &sheets.pdf)?;
        }
    }
    let mut complete = bowed.left_out.is_empty();
    let mut report = String::new();
    for part in &made {
        complete &= tell(part, &mut report);
    }
    for entry in &bowed.left_out {
        let _ = writeln!(report, "Not in any part: {entry}");
    }
    files::show(&report);
    Ok(if complete { ExitCode::SUCCESS } else { ExitCode::from(1) })
}

fn house(arguments: &PartsArguments) -> Result<House, Failure> {
    let Some(path) = &arguments.house else { return Ok(House::default()) };
    let failed = |why: String| Failure::House { name: path.display().to_string(), why };
    let text = files::read_text(path).map_err(failed)?;
    House::parse(&text).map_err(|error| failed(error.to_string()))
}

/// Nothing is written over: neither the score nor, unless asked, parts made before.
fn check_targets(arguments: &PartsArguments, targets: &[PathBuf]) -> Result<(), Failure> {
    let endings: &[&str] =
        if arguments.booklet { &["pdf", "musicxml", FOLDED] } else { &["pdf", "musicxml"] };
    let files: Vec<PathBuf> =
        targets.iter().flat_map(|target| endings.iter().map(|end| ending(target, end))).collect();
    let inputs = arguments.layer.iter().chain([&arguments.score]).chain(&arguments.house);
    for input in inputs {
        if let Some(path) = files.iter().find(|file| files::same(file, input)) {
            return Err(Failure::SameFile { path: path.clone() });
        }
    }
    let there: Vec<PathBuf> = files.into_iter().filter(|file| file.exists()).collect();
    if there.is_empty() || arguments.replace { Ok(()) } else { Err(Failure::Exists { paths: there }) }
}

/// A name with an ending behind it, whatever points the name has.
fn ending(target: &Path, ending: &str) -> PathBuf {
    let mut name = target.as_os_str().to_owned();
    name.push(".");
    name.push(ending);
    PathBuf::from(name)
}

fn make(
    arguments: &PartsArguments,
    bowed: &BowedScore,
    house: &House,
    parts: &[usize],
    targets: &[PathBuf],
) -> Result<Vec<Made>, Failure> {
    let profile = studio::profile(&arguments.player.style.profile)?;
    let tempo = arguments
        .tempo
        .map_or(TempoChoice::Written, |quarters| TempoChoice::Opening(Length::new(i64::from(quarters), 1)));
    let tempo = TempoMap::new(&bowed.score, &profile, tempo);
    let wide = SystemWide::new(&bowed.document, &bowed.score);
    let turn = RealTime::from_micros(profile.times.page_turn.value * 1000);
    let engraver = engraving::engraver();
    let one = |(part, target): (&usize, &PathBuf)| {
        let started = Instant::now();
        let name = bowed.score.parts[*part].name.clone();
        let failed = |why: String| Failure::PartNotMade { part: name.clone(), why };
        let request = BookletRequest {
            document: &bowed.document,
            score: &bowed.score,
            wide: &wide,
            tempo: &tempo,
            house,
            turn,
            part: *part,
        };
        let paper = part_paper(&request, &engraver).map_err(failed)?;
        let seconds = started.elapsed().as_secs_f64();
        let (pdf, musicxml) = (ending(target, "pdf"), ending(target, "musicxml"));
        let sheets = arguments.booklet.then(|| sheets(&paper.booklet, ending(target, FOLDED)));
        let sheets = sheets.transpose().map_err(failed)?;
        Ok(Made { paper, pdf, musicxml, sheets, needed: request.turn_needed(), seconds })
    };
    parts.par_iter().zip(targets).map(one).collect()
}

/// The ending of the file with sheets to be folded.
const FOLDED: &str = "booklet.pdf";

/// Two pages side by side on each side of a sheet, pages that fold out behind them.
fn sheets(booklet: &Booklet, path: PathBuf) -> Result<StitchedSheets, String> {
    let folded = booklet.folded_sheets();
    let size = folded.sides.first().map_or((0.0, 0.0), |side| (side.width, side.height));
    let count = folded.sides.len() / 2;
    let folding_out = folded.folding_out.iter().map(|(name, _)| name.to_string()).collect();
    let pages: Vec<Picture> =
        folded.sides.into_iter().chain(folded.folding_out.into_iter().map(|(_, page)| page)).collect();
    let pdf = pdf(&pages).map_err(|problem| problem.to_string())?;
    Ok(StitchedSheets { path, pdf, count, size, folding_out })
}

/// Says what a part has become; whether it is as it should be.
fn tell(part: &Made, report: &mut String) -> bool {
    let booklet = &part.paper.booklet;
    let count = |number: usize, what: &str| format!("{number} {what}{}", if number == 1 { "" } else { "s" });
    let _ = writeln!(
        report,
        "{}: {}, {} ({:.1} s)\n  {} and .musicxml",
        part.paper.name,
        count(booklet.pages.len(), "page"),
        count(booklet.systems.iter().sum(), "line"),
        part.seconds,
        part.pdf.display()
    );
    if let Some(sheets) = &part.sheets {
        let (width, height) = sheets.size;
        let _ = writeln!(
            report,
            "  {}\n    {}, {width:.0} x {height:.0} mm, both sides, turned on the short edge: fold, stitch",
            sheets.path.display(),
            count(sheets.count, "sheet")
        );
        if !sheets.folding_out.is_empty() {
            let _ = writeln!(report, "    behind them, to be glued in: {}", sheets.folding_out.join(", "));
        }
    }
    let mut complete = true;
    for turn in &booklet.turns {
        complete &= turn.kind != PageEndKind::Rushed;
        let _ = writeln!(report, "  {}", page_end_words(turn, part.needed));
    }
    for line in booklet.advice.iter().flat_map(advice_words) {
        let _ = writeln!(report, "  {line}");
    }
    if booklet.entered > 0 {
        let _ = writeln!(report, "  {} added", count(booklet.entered, "tempo or rehearsal mark"));
    }
    if booklet.cues > 0 {
        let _ = writeln!(report, "  {} added", count(booklet.cues, "cue"));
    }
    for remark in &booklet.remarks {
        let (text, is_trouble) = remark_words(remark);
        complete &= !is_trouble;
        let _ = writeln!(report, "  {text}");
    }
    complete
}
