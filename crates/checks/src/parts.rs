//! String parts as players get them, of works that the user names: pages against ten lines a page, turns without time,
//! signs that touch, notes, slurs and bow marks read back from the part's file and counted in its pages, PDFs opened,
//! time.
//!
//! Ten lines a page are what houses ask for (Metropole Orkest, rules for parts: 9 to 10 on the first page, 10 to 11 on
//! the others). The pages are made by the example `booklets` of `arcata-engrave`, which `cargo xtask` builds and names
//! in `ARCATA_BOOKLETS`; what touches is measured in the finished pages, letters by their outlines.

use std::path::{Path, PathBuf};

use arcata_xml::{Document, Element, Tag};

use crate::outcome::{CheckOutcome, Result};
use crate::program;
use crate::scores;
use crate::setting::{CheckSetting, read_text};

/// Lines of music on a page, and by how much the count of pages may differ, percent.
const LINES: usize = 10;
const LEEWAY: usize = 15;
/// Of so many turns one may be too quick.
const TURNS: usize = 10;
/// A quartet and the strings of an orchestral movement are made in so many milliseconds, on two cores that are free.
const QUARTET: u128 = 20_000;
const ORCHESTRAL: u128 = 30_000;
/// Works with more parts than this are orchestral.
const SMALL: usize = 4;
/// Areas that share less than this, mm, do not touch.
const HAIR: f64 = 0.25;

/// Words and signs that may not lie over others.
const WORDS: [&str; 8] = ["dir", "tempo", "reh", "dynam", "bar-number", "heading", "turn-word", "head"];
/// What words may lie over: the white inside a frame, the lines that a hairpin leads between.
const UNDER: [&str; 3] = ["system", "music", "measure"];

/// One part.
#[derive(Debug, Default)]
struct PartFigures {
    work: String,
    name: String,
    folder: PathBuf,
    systems: Vec<usize>,
    turned: usize,
    rushed: usize,
    /// Of these, in every layout that the house allows; and what would mend them.
    unavoidable: usize,
    mends: String,
    millis: u128,
    touching: Vec<String>,
    notes: PartCount,
    slurs: PartCount,
    bows: PartCount,
    pdf_pages: usize,
}

/// What the part's file has, and what its pages show.
#[derive(Clone, Copy, Debug, Default)]
struct PartCount {
    written: usize,
    drawn: usize,
    /// Of what is not counted as written: hidden notes, slurs with one end. They may be drawn.
    more: usize,
}

impl PartCount {
    fn is_whole(self) -> bool {
        (self.written..=self.written + self.more).contains(&self.drawn)
    }
}

impl PartFigures {
    fn lines(&self) -> usize {
        self.systems.iter().sum()
    }
}

/// The command: `parts FILES`.
pub(crate) fn run(setting: &CheckSetting, files: &[String], outcome: &mut CheckOutcome) -> Result<()> {
    if files.is_empty() {
        return Err("parts FILES: the works whose parts are looked at are wanted".to_owned());
    }
    let program = std::env::var_os("ARCATA_BOOKLETS")
        .ok_or("ARCATA_BOOKLETS is not set; call this through cargo xtask")?;
    let folder = setting.scratch("parts")?;
    let mut rows = Vec::new();
    for (number, file) in files.iter().enumerate() {
        let made = made(Path::new(&program), &folder.join(number.to_string()), file)?;
        for mut row in made {
            look(&mut row)?;
            rows.push(row);
        }
    }
    table(&rows);
    for work in works(&rows) {
        judge(work, outcome);
    }
    sums(&rows, outcome);
    if !outcome.has_failed() {
        let _ = std::fs::remove_dir_all(&folder);
    }
    Ok(())
}

fn made(program: &Path, folder: &Path, file: &str) -> Result<Vec<PartFigures>> {
    program::said(program, folder, &format!("{file}\n"), row).map_err(|why| format!("{file}: {why}"))
}

fn row(line: &str) -> Result<PartFigures> {
    let fields: Vec<&str> = line.split('\t').collect();
    let [work, name, folder, systems, turned, rushed, mends, millis] = fields[..] else {
        return Err(format!("the line of a part is not understood: {line}"));
    };
    let number = |text: &str| text.parse::<usize>().map_err(|problem| format!("{text}: {problem}"));
    let work = Path::new(work).file_stem().unwrap_or_default().to_string_lossy().into_owned();
    Ok(PartFigures {
        work,
        name: name.to_owned(),
        folder: folder.into(),
        systems: systems.split_whitespace().map(number).collect::<Result<_>>()?,
        turned: number(turned)?,
        rushed: number(rushed)?,
        unavoidable: number(mends.split(';').next().unwrap_or_default())?,
        mends: mends.split_once("; ").map_or_else(String::new, |(_, mends)| mends.to_owned()),
        millis: millis.parse().map_err(|problem| format!("{millis}: {problem}"))?,
        ..PartFigures::default()
    })
}

/// Looks at the files of a part.
fn look(row: &mut PartFigures) -> Result<()> {
    for page in 1..=row.systems.len() {
        let svg = read_text(&row.folder.join(format!("{page:03}.svg")))?;
        row.notes.drawn += svg.matches(r#" class="note""#).count();
        // Of a slur over several lines the first piece bears the plain name.
        row.slurs.drawn += svg.matches(r#" class="slur""#).count();
        // A note that is slurred into a rest rings on.
        row.slurs.drawn += svg.matches(r#" class="lv""#).count();
        row.bows.drawn += ["E610", "E611", "E612", "E613"]
            .iter()
            .map(|glyph| svg.matches(&format!("href=\"#glyph-{glyph}\"")).count())
            .sum::<usize>();
        let text = read_text(&row.folder.join(format!("{page:03}.marks")))?;
        let marks = marks(&text)?;
        row.touching.extend(touching(&marks).into_iter().map(|what| format!("page {page}: {what}")));
    }
    let document = scores::document(&row.folder.join("part.musicxml"))?;
    let score = arcata_score::read(&document);
    let part = score.parts.first().ok_or("the part's file has no part")?;
    row.notes.more = hidden(&document);
    row.slurs.more = part.open_slurs.len();
    let shown = part.notes.iter().filter(|note| note.on_page && !note.pitch.is_rest());
    row.notes.written = shown.clone().count();
    row.slurs.written = part.slurs.len();
    row.bows.written =
        shown.map(|note| usize::from(note.bow_mark.is_some()) + note.more_bow_marks.len()).sum();
    let pdf = row.folder.join("part.pdf");
    let opened = lopdf::Document::load(&pdf).map_err(|problem| format!("{}: {problem}", pdf.display()))?;
    row.pdf_pages = opened.get_pages().len();
    Ok(())
}

/// Notes that the file hides; the reader takes them for rests, the engraver keeps a place for them.
fn hidden(document: &Document) -> usize {
    let notes = document.root().descendants().filter(|element| element.tag() == Tag::NOTE);
    let is_none =
        |note: &Element<'_>, part| note.child(part).is_some_and(|child| child.text().trim() == "none");
    let is_hidden = |note: &Element<'_>| {
        let printed = note.attribute("print-object").is_none_or(|print| print != "no");
        (!printed || is_none(note, Tag::NOTEHEAD) && is_none(note, Tag::STEM))
            && note.child(Tag::REST).is_none()
    };
    notes.filter(is_hidden).count()
}

/// A mark on a page, mm.
struct PageMark<'a> {
    sign: usize,
    kind: &'a str,
    area: [f64; 4],
}

fn marks(text: &str) -> Result<Vec<PageMark<'_>>> {
    let mark = |line| -> Option<PageMark<'_>> {
        let mut fields = str::split(line, '\t');
        let (sign, kind) = (fields.next()?.parse().ok()?, fields.next()?);
        let mut number = || fields.next()?.parse().ok();
        Some(PageMark { sign, kind, area: [number()?, number()?, number()?, number()?] })
    };
    text.lines().map(|line| mark(line).ok_or(format!("a mark is not understood: {line}"))).collect()
}

/// Pairs of signs, of which one at least is a word, that lie over each other: one sentence for each pair.
fn touching(marks: &[PageMark<'_>]) -> Vec<String> {
    let mut found: Vec<(usize, usize, String)> = Vec::new();
    for word in marks.iter().filter(|mark| WORDS.contains(&mark.kind)) {
        for other in marks {
            let twice = WORDS.contains(&other.kind) && other.sign <= word.sign;
            if other.sign == word.sign
                || twice
                || UNDER.contains(&other.kind)
                || !touch(word.area, other.area)
            {
                continue;
            }
            if !found.iter().any(|(one, two, _)| (*one, *two) == (word.sign, other.sign)) {
                let [left, top, ..] = word.area;
                found.push((
                    word.sign,
                    other.sign,
                    format!("{} over {} at {left:.0}, {top:.0} mm", word.kind, other.kind),
                ));
            }
        }
    }
    found.into_iter().map(|(_, _, what)| what).collect()
}

fn touch(one: [f64; 4], other: [f64; 4]) -> bool {
    let over = |low: usize, high: usize| one[high].min(other[high]) - one[low].max(other[low]);
    over(0, 2) > HAIR && over(1, 3) > HAIR
}

fn works(rows: &[PartFigures]) -> impl Iterator<Item = &[PartFigures]> {
    rows.chunk_by(|one, other| one.work == other.work)
}

fn table(rows: &[PartFigures]) {
    println!(
        "| work | part | pages ({LINES} lines each: ± {LEEWAY} %) | lines | turns too quick (<= 1 in {TURNS}) | touching (0) | \
         notes | slurs | bow marks | time |"
    );
    println!("|---|---|---|---|---|---|---|---|---|---|");
    for row in rows {
        let count = |count: PartCount| {
            if count.is_whole() {
                format!("{}", count.drawn)
            } else {
                format!("{} of {}", count.drawn, count.written)
            }
        };
        let time = if row.millis == 0 {
            String::new()
        } else {
            format!("{}.{} s", row.millis / 1000, row.millis % 1000 / 100)
        };
        println!(
            "| {} | {} | {} ({}) | {} | {} of {} | {} | {} | {} | {} | {time} |",
            row.work,
            row.name,
            row.systems.len(),
            row.lines().div_ceil(LINES),
            row.lines(),
            row.rushed,
            row.rushed + row.turned,
            row.touching.len(),
            count(row.notes),
            count(row.slurs),
            count(row.bows),
        );
    }
}

/// What holds for a work and its parts.
fn judge(work: &[PartFigures], outcome: &mut CheckOutcome) {
    for row in work {
        let place = format!("{}, {}", row.work, row.name);
        let first: Vec<&str> = row.touching.iter().take(5).map(String::as_str).collect();
        outcome.check(row.touching.is_empty(), &format!("nothing touches: {place}: {}", first.join("; ")));
        for (what, count) in [("note", row.notes), ("slur", row.slurs), ("bow mark", row.bows)] {
            outcome.check(
                count.is_whole(),
                &format!(
                    "every {what} of the file is on the pages: {place}: {} of {}",
                    count.drawn, count.written
                ),
            );
        }
        outcome.check(row.pdf_pages == row.systems.len(), &format!("the PDF has the pages: {place}"));
    }
    let Some(first) = work.first() else { return };
    let most = if work.len() > SMALL { ORCHESTRAL } else { QUARTET };
    outcome.check(
        first.millis <= most,
        &format!("the parts are made in time: {}: {} ms, {most} at most", first.work, first.millis),
    );
}

/// What holds for all parts together.
fn sums(rows: &[PartFigures], outcome: &mut CheckOutcome) {
    let sum = |count: fn(&PartFigures) -> usize| rows.iter().map(count).sum::<usize>();
    let (pages, wanted) = (sum(|row| row.systems.len()), sum(|row| row.lines().div_ceil(LINES)));
    let (turns, rushed) = (sum(|row| row.turned + row.rushed), sum(|row| row.rushed));
    println!("\n| over all parts | measured | target |");
    println!("|---|---|---|");
    println!("| pages | {pages} | {wanted} ± {LEEWAY} % |");
    println!("| turns too quick | {rushed} of {turns} | {} |", turns / TURNS);
    println!("| of these in every layout that the house allows | {} | |", sum(|row| row.unavoidable));
    println!("| signs that touch | {} | 0 |", sum(|row| row.touching.len()));
    for row in rows.iter().filter(|row| row.rushed > 0) {
        let mends = if row.mends.is_empty() {
            "a stand partner who turns, or a cue page"
        } else {
            row.mends.as_str()
        };
        println!(
            "{}, {}: {} too quick, {} of them in every layout of the house; would mend: {mends}",
            row.work, row.name, row.rushed, row.unavoidable
        );
    }
    outcome.check(
        pages.abs_diff(wanted) * 100 <= wanted * LEEWAY,
        &format!("there are as many pages as ten lines each make, ± {LEEWAY} %: {pages}, not {wanted}"),
    );
    outcome
        .check(rushed * TURNS <= turns, &format!("of {TURNS} turns one is too quick: {rushed} of {turns}"));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_over_signs_are_found_and_neighbours_are_not() {
        let marks = marks("1\ttempo\t10\t10\t30\t14\n2\tnote\t29\t12\t33\t15\n3\tdir\t31\t10\t40\t14\n2\tnote\t33\t16\t34\t30\n").unwrap();
        let found = touching(&marks);
        assert_eq!(found.len(), 2, "{found:?}");
        assert!(
            found[0].starts_with("tempo over note") && found[1].starts_with("dir over note"),
            "{found:?}"
        );
    }
}
