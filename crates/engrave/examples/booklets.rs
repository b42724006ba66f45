//! Makes the string parts of scores as pages and files: `booklets FOLDER [HOUSE] < LIST`, a path a line. For the outside
//! check of parts; it prints a line of tab-separated values for each part.
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
    Advice, Area, AskedStarts, Booklet, BookletRequest, DrawnMark, Engraver, House, PageEndKind, Picture,
    ShownChanges, SystemWide, pdf,
};
use arcata_xml::{Limits, open_score};
use rayon::prelude::*;

struct Made {
    part: usize,
    booklet: Booklet,
    pdf: Vec<u8>,
}

fn main() -> Result<(), String> {
    let folder = std::env::args().nth(1).map(PathBuf::from).ok_or("booklets FOLDER [HOUSE] < LIST")?;
    let house = match std::env::args().nth(2) {
        Some(path) => {
            let text = fs::read_to_string(&path).map_err(|problem| format!("{path}: {problem}"))?;
            House::parse(&text).map_err(|problem| format!("{path}: {problem}"))?
        }
        None => House::default(),
    };
    let engraver = Engraver::new();
    for (number, path) in io::stdin().lines().enumerate() {
        let path = PathBuf::from(path.map_err(|problem| problem.to_string())?);
        work(&path, &folder.join(number.to_string()), &house, &engraver)?;
    }
    Ok(())
}

fn work(path: &Path, folder: &Path, house: &House, engraver: &Engraver) -> Result<(), String> {
    let begun = Instant::now();
    let bytes = fs::read(path).map_err(|problem| format!("{}: {problem}", path.display()))?;
    let file =
        open_score(bytes, &Limits::default()).map_err(|problem| format!("{}: {problem}", path.display()))?;
    let (document, score) = (file.document(), arcata_score::read(file.document()));
    let wide = SystemWide::new(document, &score);
    let tempo = TempoMap::new(&score, &Profile::default(), TempoChoice::Written);
    let parts: Vec<usize> =
        (0..score.parts.len()).filter(|part| score.parts[*part].instrument.is_bowed()).collect();
    let made: Vec<Result<Made, String>> = parts
        .par_iter()
        .map(|part| {
            let request = BookletRequest {
                document,
                score: &score,
                wide: &wide,
                tempo: &tempo,
                house,
                turn: house.turn(),
                part: *part,
                shown: &ShownChanges::default(),
                asked: &AskedStarts::default(),
                wording: &arcata_languages::Wording::default(),
            };
            let named =
                |problem: String| format!("{}, {}: {problem}", path.display(), score.parts[*part].name);
            let booklet = Booklet::make(&request, engraver).map_err(|problem| named(problem.to_string()))?;
            let pdf = pdf(&booklet.pages).map_err(|problem| named(problem.to_string()))?;
            Ok(Made { part: *part, booklet, pdf })
        })
        .collect();
    let millis = begun.elapsed().as_millis();
    for (index, made) in made.into_iter().enumerate() {
        // What the work took is told once.
        let millis = if index == 0 { millis } else { 0 };
        let Made { part, booklet, pdf } = made?;
        let folder = folder.join(part.to_string());
        fs::create_dir_all(&folder).map_err(|problem| format!("{}: {problem}", folder.display()))?;
        for (page, picture) in booklet.pages.iter().enumerate() {
            let name = format!("{:03}", page + 1);
            write(&folder.join(format!("{name}.svg")), picture.svg().as_bytes())?;
            write(&folder.join(format!("{name}.marks")), marks(picture)?.as_bytes())?;
        }
        write(&folder.join("part.musicxml"), booklet.musicxml.as_bytes())?;
        write(&folder.join("part.pdf"), &pdf)?;
        let count = |kind: PageEndKind| booklet.turns.iter().filter(|turn| turn.kind == kind).count();
        let systems: Vec<String> = booklet.systems.iter().map(usize::to_string).collect();
        println!(
            "{}\t{}\t{}\t{}\t{}\t{}\t{}\t{millis}",
            path.display(),
            score.parts[part].name.replace(['\t', '\n'], " "),
            folder.display(),
            systems.join(" "),
            count(PageEndKind::Turned),
            count(PageEndKind::Rushed),
            booklet.advice.as_ref().map_or_else(|| "0".to_owned(), quick),
        );
    }
    Ok(())
}

/// How many of the quick turns no layout of the house avoids, and what else would.
fn quick(advice: &Advice) -> String {
    let mends = advice
        .mends
        .iter()
        .map(|mend| format!("; {:?}: {} on {} pages", mend.mending, mend.rushed, mend.pages));
    format!("{}{}", advice.unavoidable, mends.collect::<String>())
}

/// The marks of a page, a line each: sign, kind, left, top, right, bottom (mm).
fn marks(picture: &Picture) -> Result<String, String> {
    let marks = picture.marks().map_err(|problem| problem.to_string())?;
    let line = |mark: &DrawnMark| {
        let Area { left, top, right, bottom } = mark.area;
        format!("{}\t{}\t{left:.2}\t{top:.2}\t{right:.2}\t{bottom:.2}\n", mark.sign, mark.kind)
    };
    Ok(marks.iter().map(line).collect())
}

fn write(path: &Path, bytes: &[u8]) -> Result<(), String> {
    fs::write(path, bytes).map_err(|problem| format!("{}: {problem}", path.display()))
}
