//! Everything that goes with the parts: one folder, and the same in one archive.
#![expect(clippy::disallowed_methods, reason = "the command line is where folders are read")]

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::io::{Cursor, Write as _};
use std::path::{Path, PathBuf};

use arcata_engrave::House;
use arcata_languages::Saying;
use arcata_report::handover::{HandoverFile, HandoverKind, HandoverPart, HandoverView, handover_pdf};
use arcata_report::paper::Paper;
use zip::write::{SimpleFileOptions, ZipWriter};

use crate::args::{PaperSize, PartsArguments, SheetArguments, SheetFormat};
use crate::bowed_score::BowedScore;
use crate::failure::Failure;
use crate::parts_command::{FOLDED, PartTarget, PartThere, ending};
use crate::parts_record::sum;
use crate::{files, layer_sheet};

/// The list of what is in the folder, before everything else in it.
const CONTENTS: &str = "00-contents.pdf";
/// The score with the bowings.
const SCORE: &str = "00-score.musicxml";
/// The sums of all other files.
const SUMS: &str = "sums.sha256";
/// From this width of the paper on, tenths of a millimetre, and below this height a sheet of the list is Letter: 8½ by 11 inches.
const LETTER: (i64, i64) = (2130, 2900);

/// What is written besides the parts; the archive, too.
pub(crate) fn files(arguments: &PartsArguments) -> Vec<PathBuf> {
    let own = [CONTENTS, SCORE, SUMS].map(str::to_owned);
    let layers = (0..arguments.layer.len())
        .flat_map(|layer| [layer_name(arguments, layer), sheet_name(arguments, layer)]);
    let mut files: Vec<PathBuf> =
        own.into_iter().chain(layers).map(|name| arguments.out().join(name)).collect();
    files.push(archive(arguments.out()));
    files
}

fn archive(folder: &Path) -> PathBuf {
    ending(folder, "zip")
}

/// What a layer is called in the folder.
fn layer_name(arguments: &PartsArguments, layer: usize) -> String {
    let name = arguments.layer[layer].file_name().unwrap_or_default().to_string_lossy();
    if arguments.layer.len() == 1 { format!("00-{name}") } else { format!("00-{}-{name}", layer + 1) }
}

fn sheet_name(arguments: &PartsArguments, layer: usize) -> String {
    if arguments.layer.len() == 1 {
        "00-changes.pdf".to_owned()
    } else {
        format!("00-changes-{}.pdf", layer + 1)
    }
}

/// Puts everything that goes with the parts beside them, and all of it into an archive; says where.
pub(crate) fn make(
    arguments: &PartsArguments,
    bowed: &BowedScore,
    house: &House,
    (targets, there): (&[PartTarget], &[PartThere]),
) -> Result<Saying, Failure> {
    let folder = arguments.out();
    let stands = layer_sheet::stands(&bowed.score, arguments.stands.as_deref())?;
    let paper = house.paper_size();
    let sheet = if paper.0 >= LETTER.0 && paper.1 < LETTER.1 { Paper::Letter } else { Paper::A4 };
    let mut listed = vec![HandoverFile { name: CONTENTS.to_owned(), kind: HandoverKind::Contents }];
    put(folder, SCORE, bowed.document.bytes())?;
    listed.push(HandoverFile { name: SCORE.to_owned(), kind: HandoverKind::Score });
    for (index, layer) in arguments.layer.iter().enumerate() {
        let name = layer_name(arguments, index);
        let failed = |why: String| Failure::Layer { path: layer.clone(), why };
        put(folder, &name, files::read_text(layer).map_err(failed)?.as_bytes())?;
        listed.push(HandoverFile { name, kind: HandoverKind::Layer });
        let name = sheet_name(arguments, index);
        change_sheet(arguments, (layer, sheet), &folder.join(&name))?;
        listed.push(HandoverFile { name, kind: HandoverKind::Changes });
    }
    let mut parts = Vec::new();
    let mut look_at = Vec::new();
    for (target, part) in targets.iter().zip(there) {
        let name = bowed.score.parts[target.part].name.trim().to_owned();
        if !part.record.complete {
            look_at.extend(part.record.told.iter().map(|line| format!("{name}: {}", line.trim())));
        }
        let copies = stands.get(&target.part).copied().unwrap_or(1);
        parts.push(HandoverPart { name, pages: part.record.pages, copies });
        listed.extend(
            part.record.files.keys().map(|name| HandoverFile { name: name.clone(), kind: kind(name) }),
        );
    }
    look_at.extend(bowed.left_out.iter().map(ToString::to_string));
    listed.push(HandoverFile { name: SUMS.to_owned(), kind: HandoverKind::Sums });
    let view = HandoverView {
        work: bowed.score.title.clone().unwrap_or_else(|| stem(arguments.score())),
        composer: bowed.score.composer.clone(),
        paper,
        parts,
        files: listed,
        look_at,
        wording: files::wording(),
    };
    let list = handover_pdf(&view, sheet).map_err(|error| Failure::Sheet { why: error.to_string() })?;
    put(folder, CONTENTS, &list)?;
    let archive = archive(folder);
    pack(folder, &view, &archive)?;
    let said = Saying::new("handover-made").quoting("folder", folder.display().to_string());
    Ok(said.quoting("archive", archive.display().to_string()))
}

fn stem(path: &Path) -> String {
    path.file_stem().unwrap_or_default().to_string_lossy().into_owned()
}

fn kind(name: &str) -> HandoverKind {
    if name.ends_with(FOLDED) {
        HandoverKind::Booklet
    } else if name.ends_with(".pdf") {
        HandoverKind::Part
    } else {
        HandoverKind::PartFile
    }
}

fn put(folder: &Path, name: &str, bytes: &[u8]) -> Result<(), Failure> {
    Ok(arcata_files::write_whole(&folder.join(name), bytes)?)
}

/// What a layer writes into parts that are on the stands already.
fn change_sheet(
    arguments: &PartsArguments,
    (layer, paper): (&Path, Paper),
    out: &Path,
) -> Result<(), Failure> {
    let sheet = SheetArguments {
        score: arguments.score().to_owned(),
        layer: layer.to_owned(),
        before: None,
        out: Some(out.to_owned()),
        format: Some(SheetFormat::Pdf),
        paper: match paper {
            Paper::A4 => PaperSize::A4,
            Paper::Letter => PaperSize::Letter,
        },
        stands: arguments.stands.clone(),
        seconds_a_mark: None,
        least: false,
        words_only: false,
    };
    layer_sheet::run(&sheet).map(|_| ())
}

/// Writes the sums, then packs the folder's files into one; what was packed is read from the disk, as it will be sent.
fn pack(folder: &Path, view: &HandoverView, archive: &Path) -> Result<(), Failure> {
    let failed = |why: String| Failure::Folder { path: archive.to_owned(), why };
    let mut packed: BTreeMap<&str, Vec<u8>> = BTreeMap::new();
    for file in view.files.iter().filter(|file| file.kind != HandoverKind::Sums) {
        let path = folder.join(&file.name);
        let bytes = std::fs::read(&path).map_err(|error| failed(format!("{}: {error}", path.display())))?;
        packed.insert(&file.name, bytes);
    }
    let mut sums = String::new();
    for (name, bytes) in &packed {
        // The form that the usual tools for sums read.
        let _ = writeln!(sums, "{}  {name}", sum(bytes));
    }
    put(folder, SUMS, sums.as_bytes())?;
    packed.insert(SUMS, sums.into_bytes());
    let inside = folder.file_name().map_or_else(|| "parts".into(), |name| name.to_string_lossy());
    let mut writer = ZipWriter::new(Cursor::new(Vec::new()));
    for (name, bytes) in &packed {
        // No time of day: the same parts make the same archive.
        let options = SimpleFileOptions::default().last_modified_time(zip::DateTime::default());
        let opened = writer.start_file(format!("{inside}/{name}"), options);
        opened.map_err(|error| failed(error.to_string()))?;
        writer.write_all(bytes).map_err(|error| failed(error.to_string()))?;
    }
    let bytes = writer.finish().map_err(|error| failed(error.to_string()))?.into_inner();
    Ok(arcata_files::write_whole(archive, &bytes)?)
}
