//! `arcata parts`.
#![expect(clippy::disallowed_methods, reason = "the command line is where folders are made and time is told")]

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::sync::{Mutex, PoisonError};
use std::time::Instant;

use arcata_bow::RealTime;
use arcata_bow::timing::{TempoChoice, TempoMap};
use arcata_engrave::{
    AskedStarts, Booklet, BookletRequest, Engraver, House, Picture, PrintForm, ShownChanges, SystemWide,
    house_conflict_said, print_pdf,
};
use arcata_files::FileError;
use arcata_languages::{Argument, Saying, Wording};
use arcata_layer::{Addresses, AskedBreaks};
use arcata_prepare::{changed_bars, part_file_name, part_paper};
use arcata_score::Length;
use indicatif::{ParallelProgressIterator as _, ProgressBar, ProgressFinish, ProgressStyle};
use rayon::prelude::*;

use crate::args::PartsArguments;
use crate::bowed_score::BowedScore;
use crate::failure::Failure;
use crate::layer_words::say;
use crate::parts_bowings::{self, PartsScore};
use crate::parts_record::{PartRecord, PartsRecord, sum};
use crate::parts_words::{PartTold, changed_said};
use crate::{bars, breaks_file, engraving, files, house_file, parts_handover, studio};

/// The sheets of a part that is to be folded and stitched.
pub(crate) struct StitchedSheets {
    pub(crate) path: PathBuf,
    pdf: Vec<u8>,
    /// How many sheets, and their width and height, mm.
    pub(crate) count: usize,
    pub(crate) size: (f64, f64),
    /// The pages that fold out, behind the sheets.
    pub(crate) folding_out: Vec<String>,
}

/// A part that is to lie in the folder.
pub(crate) struct PartTarget {
    /// Its index in the score.
    pub(crate) part: usize,
    /// The name of its files without their endings.
    pub(crate) stem: String,
    /// What it is made from, as a sum.
    made_from: String,
    shown: ShownChanges,
    /// Where somebody wants pages and lines to begin.
    asked: AskedStarts,
    /// What is to be told of that, and whether it wants a look.
    asked_told: Vec<(Saying, bool)>,
    /// What has changed since it was printed; nothing where that is not asked.
    changed: Option<Saying>,
}

/// A part that lies in the folder now.
pub(crate) struct PartThere {
    pub(crate) record: PartRecord,
    /// How long it took and how many lines it has; nothing where it was kept.
    made: Option<(f64, usize)>,
}

/// All that parts are made with.
struct Workshop<'a> {
    arguments: &'a PartsArguments,
    bowed: &'a BowedScore,
    house: &'a House,
    /// Breaks that somebody has asked for, and the file that says so.
    breaks: Option<(PathBuf, AskedBreaks)>,
    tempo: TempoMap,
    wording: Wording,
    wide: SystemWide,
    turn: RealTime,
    engraver: Engraver,
}

pub(crate) fn run(arguments: &PartsArguments) -> Result<ExitCode, Failure> {
    let house = house_file::of(arguments.house.as_deref())?;
    if arguments.check {
        return Ok(checked(&house));
    }
    let PartsScore { bowed, fresh } = parts_bowings::open(arguments)?;
    let parts = bars::parts(&bowed.score, &arguments.part)?;
    let workshop = Workshop::new(arguments, &bowed, &house)?;
    let lighter = if arguments.pencil { fresh } else { BTreeSet::new() };
    let targets: Vec<PartTarget> =
        parts.par_iter().map(|part| workshop.target(*part, &lighter)).collect::<Result<_, _>>()?;
    let record = PartsRecord::of(arguments.out());
    check_targets(&workshop, &targets, &record)?;
    std::fs::create_dir_all(arguments.out())
        .map_err(|error| FileError::Write { path: arguments.out().to_owned(), why: error.to_string() })?;
    let there = workshop.make(&targets, record)?;
    let mut complete = bowed.left_out.is_empty();
    let mut report = String::new();
    for (target, part) in targets.iter().zip(&there) {
        complete &= part.record.complete && target.asked_told.iter().all(|(_, is_lost)| !is_lost);
        tell(&workshop, target, part, &mut report);
    }
    for (saying, _) in workshop.breaks_of_no_part() {
        complete = false;
        let _ = writeln!(report, "{}", filled(&say(&saying)));
    }
    for entry in &bowed.left_out {
        let what = entry.to_string();
        let _ = writeln!(report, "{}", say(&Saying::new("part-not-in-any").quoting("what", what)));
    }
    if arguments.handover {
        let made = parts_handover::make(arguments, &bowed, &house, (&targets, &there))?;
        let _ = writeln!(report, "{}", say(&made));
    }
    files::show(&report);
    Ok(if complete { ExitCode::SUCCESS } else { ExitCode::from(1) })
}

/// Says what a house profile asks for that cannot be had together.
fn checked(house: &House) -> ExitCode {
    let conflicts = house.conflicts();
    for conflict in &conflicts {
        files::show(&format!("{}\n", say(&house_conflict_said(conflict))));
    }
    if conflicts.is_empty() {
        files::show(&format!("{}\n", say(&Saying::new("house-good").quoting("name", house.name()))));
        return ExitCode::SUCCESS;
    }
    ExitCode::from(1)
}

/// Nothing is written over: neither the score nor, unless asked, parts made before. Parts that stay as they are are not in the way.
fn check_targets(
    workshop: &Workshop<'_>,
    targets: &[PartTarget],
    record: &PartsRecord,
) -> Result<(), Failure> {
    let arguments = workshop.arguments;
    let folder = arguments.out();
    let mut written: Vec<PathBuf> = vec![PartsRecord::path(folder)];
    let mut there: Vec<PathBuf> = Vec::new();
    for target in targets {
        let own = target.files(arguments.booklet).map(|name| folder.join(name));
        let own: Vec<PathBuf> = own.collect();
        if record.kept(folder, &target.stem, &target.made_from).is_none() {
            there.extend(own.iter().filter(|file| file.exists()).cloned());
        }
        written.extend(own);
    }
    if arguments.handover {
        let more = parts_handover::files(arguments);
        there.extend(more.iter().filter(|file| file.exists()).cloned());
        written.extend(more);
    }
    let inputs = arguments
        .layer
        .iter()
        .map(PathBuf::as_path)
        .chain([arguments.score()])
        .chain(arguments.house.as_deref())
        .chain(workshop.breaks.as_ref().map(|(path, _)| path.as_path()));
    for input in inputs {
        if let Some(path) = written.iter().find(|file| files::same(file, input)) {
            return Err(Failure::SameFile { path: path.clone() });
        }
    }
    if there.is_empty() || arguments.replace { Ok(()) } else { Err(Failure::Exists { paths: there }) }
}

/// A name with an ending behind it, whatever points the name has.
pub(crate) fn ending(target: &Path, ending: &str) -> PathBuf {
    let mut name = target.as_os_str().to_owned();
    name.push(".");
    name.push(ending);
    PathBuf::from(name)
}

/// The ending of the file with sheets to be folded.
pub(crate) const FOLDED: &str = "booklet.pdf";

impl PartTarget {
    /// The names of its files.
    fn files(&self, booklet: bool) -> impl Iterator<Item = String> {
        let endings = if booklet { &["pdf", "musicxml", FOLDED][..] } else { &["pdf", "musicxml"] };
        endings.iter().map(|ending| format!("{}.{ending}", self.stem))
    }
}

impl<'a> Workshop<'a> {
    fn new(arguments: &'a PartsArguments, bowed: &'a BowedScore, house: &'a House) -> Result<Self, Failure> {
        let profile = studio::profile(&arguments.player.style.profile)?;
        let tempo = arguments.tempo.map_or(TempoChoice::Written, |quarters| {
            TempoChoice::Opening(Length::new(i64::from(quarters), 1))
        });
        Ok(Self {
            arguments,
            bowed,
            house,
            breaks: breaks_file::of(arguments.score(), arguments.breaks.as_deref())?,
            tempo: TempoMap::new(&bowed.score, &profile, tempo),
            wide: SystemWide::new(&bowed.document, &bowed.score),
            turn: RealTime::from_micros(profile.times.page_turn.value * 1000),
            wording: files::wording(),
            engraver: engraving::engraver(),
        })
    }

    /// What is to be told of breaks in parts that the score does not have.
    fn breaks_of_no_part(&self) -> Vec<(Saying, bool)> {
        let addresses = Addresses::new(&self.bowed.score);
        self.breaks.as_ref().map_or_else(Vec::new, |(_, asked)| asked.told(&addresses, None))
    }

    /// Where somebody wants pages and lines of a part to begin, and what is to be told of that.
    fn asked(&self, part: usize) -> (AskedStarts, Vec<(Saying, bool)>) {
        let Some((path, asked)) = &self.breaks else { return Default::default() };
        let addresses = Addresses::new(&self.bowed.score);
        let found = asked.in_part(&addresses, part);
        let mut told = asked.told(&addresses, Some(part));
        if found.count() > 0 {
            let name = path.file_name().unwrap_or_default().to_string_lossy();
            let said = Saying::new("part-breaks").with("count", found.count()).quoting("file", name);
            told.insert(0, (said, false));
        }
        (AskedStarts { pages: found.pages, lines: found.lines }, told)
    }

    fn request<'r>(
        &'r self,
        part: usize,
        (shown, asked): (&'r ShownChanges, &'r AskedStarts),
    ) -> BookletRequest<'r> {
        BookletRequest {
            document: &self.bowed.document,
            score: &self.bowed.score,
            wide: &self.wide,
            tempo: &self.tempo,
            house: self.house,
            turn: self.turn,
            part,
            shown,
            asked,
            wording: &self.wording,
        }
    }

    /// What a part is to become, before anything is engraved.
    fn target(&self, part: usize, lighter: &BTreeSet<arcata_xml::NodeId>) -> Result<PartTarget, Failure> {
        let stem = part_file_name(&self.bowed.score, part, self.house);
        let mut shown = ShownChanges { lighter: lighter.clone(), bars: BTreeSet::new() };
        let mut changed = None;
        if let Some(folder) = &self.arguments.since {
            let bars = self.changed(&folder.join(format!("{stem}.musicxml")), part)?;
            let label = |bar: &u32| self.bowed.score.bar_label(*bar).to_owned();
            changed = Some(changed_said(bars.as_ref().map(|bars| bars.iter().map(label).collect())));
            shown.bars = bars.unwrap_or_default();
        }
        let (asked, asked_told) = self.asked(part);
        let key = Booklet::content_key(&self.request(part, (&shown, &asked)), &self.engraver);
        // What is told is kept with the part, so its language counts, too.
        let made_from = sum(format!("{key} {} {:?}", self.arguments.booklet, files::wording()).as_bytes());
        Ok(PartTarget { part, stem, made_from, shown, asked, asked_told, changed })
    }

    /// The bars that are not as in an earlier file of the part; nothing where there is none.
    fn changed(&self, before: &Path, part: usize) -> Result<Option<BTreeSet<u32>>, Failure> {
        let (none, free) = (ShownChanges::default(), AskedStarts::default());
        let now = Booklet::unpaged(&self.request(part, (&none, &free)), &self.engraver);
        if !before.exists() {
            return Ok(None);
        }
        let failed = |why: String| Failure::Read { path: before.to_owned(), why };
        let text = files::read_text(before).map_err(failed)?;
        changed_bars(text.into_bytes(), now.into_bytes()).map(Some).map_err(failed)
    }

    /// Makes the parts that are not there as they should be. Each is written as soon as it is made, so that who stops has what was done
    /// and goes on from there.
    fn make(&self, targets: &[PartTarget], record: PartsRecord) -> Result<Vec<PartThere>, Failure> {
        let folder = self.arguments.out();
        let keeping = Mutex::new(record);
        let locked = || keeping.lock().unwrap_or_else(PoisonError::into_inner);
        let one = |target: &PartTarget| {
            let kept = locked().kept(folder, &target.stem, &target.made_from).cloned();
            if let Some(record) = kept {
                return Ok(PartThere { record, made: None });
            }
            let made = self.made(target)?;
            locked().keep(folder, &target.stem, made.record.clone())?;
            Ok(made)
        };
        // To a terminal's error stream only: what is printed stays what it is.
        let style = ProgressStyle::with_template("{bar:30} {pos}/{len}");
        let bar = ProgressBar::new(targets.len() as u64)
            .with_style(style.unwrap_or_else(|_| ProgressStyle::default_bar()))
            .with_finish(ProgressFinish::AndClear);
        targets.par_iter().progress_with(bar).map(one).collect()
    }

    fn made(&self, target: &PartTarget) -> Result<PartThere, Failure> {
        let started = Instant::now();
        let name = self.bowed.score.parts[target.part].name.clone();
        let failed = |why: String| Failure::PartNotMade { part: name.clone(), why };
        let request = self.request(target.part, (&target.shown, &target.asked));
        let paper = part_paper(&request, &self.engraver).map_err(failed)?;
        let path = self.arguments.out().join(&target.stem);
        let sheets =
            self.arguments.booklet.then(|| sheets(&paper.booklet, self.house.bleed(), ending(&path, FOLDED)));
        let sheets = sheets.transpose().map_err(failed)?;
        let told = PartTold::of(&paper, sheets.as_ref(), request.turn_needed());
        let file = paper.booklet.musicxml.as_bytes();
        let mut written: Vec<(&str, &[u8])> = vec![("pdf", &paper.pdf), ("musicxml", file)];
        written.extend(sheets.as_ref().map(|sheets| (FOLDED, sheets.pdf.as_slice())));
        let mut sums = BTreeMap::new();
        for (end, bytes) in written {
            arcata_files::write_whole(&ending(&path, end), bytes)?;
            sums.insert(format!("{}.{end}", target.stem), sum(bytes));
        }
        let record = PartRecord {
            made_from: target.made_from.clone(),
            files: sums,
            pages: paper.booklet.pages.len(),
            told: told.lines,
            complete: told.complete,
        };
        Ok(PartThere {
            record,
            made: Some((started.elapsed().as_secs_f64(), paper.booklet.systems.iter().sum())),
        })
    }
}

/// Two pages side by side on each side of a sheet, pages that fold out behind them.
fn sheets(booklet: &Booklet, bleed: f64, path: PathBuf) -> Result<StitchedSheets, String> {
    let folded = booklet.folded_sheets();
    let size = folded.sides.first().map_or((0.0, 0.0), |side| (side.width, side.height));
    let count = folded.sides.len() / 2;
    let folding_out = folded.folding_out.iter().map(|(name, _)| name.to_string()).collect();
    let pages: Vec<Picture> =
        folded.sides.into_iter().chain(folded.folding_out.into_iter().map(|(_, page)| page)).collect();
    let pdf =
        print_pdf(&pages, PrintForm { archived: None, bleed }).map_err(|problem| problem.to_string())?;
    Ok(StitchedSheets { path, pdf, count, size, folding_out })
}

/// Says what a part has become.
fn tell(workshop: &Workshop<'_>, target: &PartTarget, part: &PartThere, report: &mut String) {
    let name = workshop.bowed.score.parts[target.part].name.clone();
    let said = match part.made {
        Some((seconds, lines)) => {
            #[expect(clippy::cast_possible_truncation, reason = "seconds of one run")]
            let tenths = (seconds * 10.0).round() as i64;
            Saying::new("part-made").with("lines", lines).with("seconds", Argument::Tenths(tenths))
        }
        None => Saying::new("part-kept"),
    };
    let _ = writeln!(report, "{}", say(&said.quoting("name", name).with("pages", part.record.pages)));
    let pdf = ending(&workshop.arguments.out().join(&target.stem), "pdf").display().to_string();
    let _ = writeln!(report, "  {}", say(&Saying::new("part-files").quoting("pdf", pdf)));
    if let Some(changed) = &target.changed {
        let _ = writeln!(report, "{}", filled(&format!("  {}", say(changed))));
    }
    for (saying, _) in &target.asked_told {
        let _ = writeln!(report, "{}", filled(&format!("  {}", say(saying))));
    }
    for line in &part.record.told {
        let _ = writeln!(report, "{}", filled(line));
    }
}

/// A line filled to the page's width, what goes on standing further in; the path of a file stays whole.
fn filled(line: &str) -> String {
    if line.ends_with(FOLDED) {
        return line.to_owned();
    }
    let text = line.trim_start();
    let indent = " ".repeat(line.len() - text.len());
    files::page().fill(text, &indent, &format!("{indent}  "))
}
