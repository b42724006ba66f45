//! What leaves the workbench as files: the score with the bowings on it, layers, parts, a change sheet, pictures.

use std::collections::{BTreeMap, BTreeSet};

use arcata_analysis::{WithLayer, with_layer};
use arcata_bow::RealTime;
use arcata_bow::timing::TempoMap;
use arcata_engrave::{
    BookletRequest, Cutter, Engraver, House, LanePlan, Opening, Painter, PictureContent, PictureStyle,
    SystemWide, pdf,
};
use arcata_languages::Wording;
use arcata_layer::{Addresses, Layer};
use arcata_prepare::{advice_words, page_end_words, part_file_name, part_paper, remark_words};
use arcata_report::sheet::{CopyingSettings, Paper, SheetInput, SheetView, sheet_pdf};
use arcata_xml::Input;
use rayon::prelude::*;

use crate::desk::Desk;
use crate::failed::Failed;
use crate::request_language::RequestLanguage;
use crate::requests::{PartQuery, PictureQuery};
use crate::shared::Shared;
use crate::state::SessionState;
use crate::{drawing, kept_beside, layers};

/// A file that leaves: its name, its kind, its bytes.
#[derive(Debug)]
pub(crate) struct ExportedFile {
    pub(crate) name: String,
    pub(crate) kind: &'static str,
    pub(crate) bytes: Vec<u8>,
}

/// Files that leave together, and what is to be told of them.
#[derive(Debug)]
pub(crate) struct ExportedFiles {
    /// The folder for them beside the score; none where they lie beside it themselves.
    pub(crate) folder: Option<String>,
    pub(crate) files: Vec<ExportedFile>,
    pub(crate) told: Vec<String>,
}

const SCORE: &str = "application/vnd.recordare.musicxml+xml";
const PACKAGE: &str = "application/vnd.recordare.musicxml";
const PDF: &str = "application/pdf";

pub(crate) fn leaving(
    (shared, spoken): (&Shared, RequestLanguage),
    what: &str,
    (query, part): (&PictureQuery, &PartQuery),
) -> Result<ExportedFiles, Failed> {
    let (desk, state, path) = {
        let session = shared.session();
        (session.desk(), session.state().clone(), session.path().to_owned())
    };
    let stem = path.file_stem().unwrap_or_default().to_string_lossy().into_owned();
    let wrong = |why: String| Failed::impossible(why);
    let mut told = Vec::new();
    let (name, kind, bytes) = match what {
        "score" => {
            let bowed = bowed(&desk, &state).map_err(wrong)?;
            told.extend(bowed.left_out.iter().map(ToString::to_string));
            let file = desk.base.file();
            let bytes = file.write(bowed.document.bytes()).map_err(|problem| wrong(problem.to_string()))?;
            match file.kind() {
                Input::Document => (format!("{stem}-bowed.musicxml"), SCORE, bytes),
                // What else the package holds goes along.
                Input::Package => (format!("{stem}-bowed.mxl"), PACKAGE, bytes),
            }
        }
        "layer" => {
            let one = state.layers.written();
            let name = if one.name == layers::FIRST { stem } else { format!("{stem}.{}", plain(&one.name)) };
            let bytes = arcata_layer::write(&one.layer).into_bytes();
            (format!("{name}.bowings.json"), "application/json", bytes)
        }
        "pdf" => {
            let title = desk.base.score().title.clone().unwrap_or_else(|| stem.clone());
            let bytes = pages((&desk, &title), &shared.engraver, &spoken.wording(&desk)).map_err(wrong)?;
            (format!("{stem}-bows.pdf"), PDF, bytes)
        }
        "picture" => {
            let bars = query.first.unwrap_or(0)..=query.last.or(query.first).unwrap_or(0);
            let wanted = query.wanted()?;
            let picture =
                drawing::system_picture(&desk, &wanted, (bars.clone(), Opening::Excerpt), &shared.engraver);
            let picture = picture.map_err(wrong)?;
            let label = |bar: u32| {
                desk.base.score().bars.get(bar as usize).map_or_else(String::new, |bar| plain(&bar.label))
            };
            let name = format!("{stem}-bars-{}-{}.svg", label(*bars.start()), label(*bars.end()));
            (name, "image/svg+xml", picture.svg().into_bytes())
        }
        "sheet" => {
            let (bytes, more) =
                sheet((&desk, &state.layers.together()), &shared.engraver, &spoken.wording(&desk))
                    .map_err(wrong)?;
            told.extend(more);
            (format!("{stem}-changes.pdf"), PDF, bytes)
        }
        "parts" => return parts(&desk, &state, (&stem, part.part), &shared.engraver).map_err(wrong),
        "aside" => {
            let text = kept_beside::with(&path, desk.base.score(), &state).map_err(wrong)?;
            (format!("{stem}.aside.toml"), "application/toml", text.into_bytes())
        }
        _ => {
            return Err(Failed::missing("what leaves is score, layer, pdf, picture, sheet, parts or aside"));
        }
    };
    Ok(ExportedFiles { folder: None, files: vec![ExportedFile { name, kind, bytes }], told })
}

/// A name as part of the name of a file.
fn plain(name: &str) -> String {
    let letters = |letter: char| if letter.is_alphanumeric() || letter == '-' { letter } else { '_' };
    name.chars().map(letters).collect()
}

/// The score with the shown layers on it.
fn bowed(desk: &Desk, state: &SessionState) -> Result<WithLayer, String> {
    let document = desk.base.file().document();
    let layer = state.layers.together();
    with_layer((document, &arcata_score::read(document)), &layer, &desk.snapshot.told(&layer))
}

/// What is to be written into printed parts so that they say what the layers say.
fn sheet(
    (desk, layer): (&Desk, &Layer),
    engraver: &Engraver,
    wording: &Wording,
) -> Result<(Vec<u8>, Vec<String>), String> {
    if layer.entries.is_empty() {
        return Err(
            "nothing is to be written into the parts: no layer that is shown holds a bowing".to_owned()
        );
    }
    let document = desk.base.file().document();
    let score = &arcata_score::read(document);
    let addresses = Addresses::new(score);
    let told = desk.snapshot.told(layer);
    let spelt_out = told.spelt_out(layer, &addresses);
    let mut view = SheetView::new(&SheetInput {
        addresses: &addresses,
        before: None,
        after: &spelt_out,
        stands: BTreeMap::new(),
        settings: CopyingSettings::default(),
        spared: BTreeSet::new(),
        wording: wording.clone(),
    });
    let (marked, marked_score) = arcata_prepare::marked(&mut view, (document, score), (&spelt_out, &told))?;
    let told = arcata_prepare::engrave_bars(&mut view, (&marked, &marked_score), engraver);
    let bytes = sheet_pdf(&view, Paper::A4).map_err(|problem| problem.to_string())?;
    Ok((bytes, told))
}

/// Parts with the bowings on them, a PDF and a MusicXML file each; of one part the PDF alone.
fn parts(
    desk: &Desk,
    state: &SessionState,
    (stem, only): (&str, Option<usize>),
    engraver: &Engraver,
) -> Result<ExportedFiles, String> {
    let WithLayer { document, left_out, .. } = bowed(desk, state)?;
    let score = arcata_score::read(&document);
    let tempo = TempoMap::new(&score, desk.base.profile(), desk.base.ground.options.tempo);
    let wide = SystemWide::new(&document, &score);
    let house = House::default();
    let chosen: Vec<usize> = (0..score.parts.len())
        .filter(|part| only.map_or(score.parts[*part].instrument.is_bowed(), |only| *part == only))
        .collect();
    if chosen.is_empty() {
        return Err("there is no such part".to_owned());
    }
    let made: Result<Vec<_>, String> = chosen
        .par_iter()
        .map(|part| {
            let (document, score, wide) = (&document, &score, &wide);
            let turn = RealTime::from_micros(desk.base.profile().times.page_turn.value * 1000);
            let request =
                BookletRequest { document, score, wide, tempo: &tempo, house: &house, turn, part: *part };
            part_paper(&request, engraver)
                .map(|paper| (part_file_name(score, *part), paper))
                .map_err(|why| format!("{}: {why}", score.parts[*part].name))
        })
        .collect();
    let mut files = Vec::new();
    let mut told: Vec<String> = left_out.iter().map(ToString::to_string).collect();
    for (name, paper) in made? {
        let needed =
            house.turn().max(RealTime::from_micros(desk.base.profile().times.page_turn.value * 1000));
        let turns = paper.booklet.turns.iter().map(|turn| page_end_words(turn, needed));
        let advice = paper.booklet.advice.iter().flat_map(advice_words);
        let remarks = paper.booklet.remarks.iter().map(|remark| remark_words(remark).0);
        told.extend(turns.chain(advice).chain(remarks).map(|words| format!("{}: {words}", paper.name)));
        files.push(ExportedFile { name: format!("{name}.pdf"), kind: PDF, bytes: paper.pdf });
        if only.is_none() {
            let bytes = paper.booklet.musicxml.into_bytes();
            files.push(ExportedFile { name: format!("{name}.musicxml"), kind: SCORE, bytes });
        }
    }
    Ok(ExportedFiles { folder: Some(format!("{stem}-parts")), files, told })
}

/// The whole plan on pages of A4.
///
/// # Errors
/// Where nothing can be drawn, in words.
fn pages((desk, title): (&Desk, &str), engraver: &Engraver, wording: &Wording) -> Result<Vec<u8>, String> {
    let base = &desk.base;
    let lanes: Vec<LanePlan<'_>> = base
        .lines()
        .iter()
        .enumerate()
        .map(|(index, line)| LanePlan {
            line,
            first: 0,
            planned: &desk.plans()[index].strokes,
            hair: base.reach(index).hair,
            name: String::new(),
            open: Vec::new(),
        })
        .collect();
    let last = u32::try_from(base.score().bars.len().saturating_sub(1)).unwrap_or(u32::MAX);
    let content = PictureContent {
        title: title.to_owned(),
        subtitle: base.assumptions(wording).join(". "),
        bars: 0..=last,
        lanes: &lanes,
        captions: Vec::new(),
    };
    let style = PictureStyle { page_height: Some(297.0), ..PictureStyle::paper() }.in_words(wording);
    let cutter = Cutter::new(base.document(), base.score());
    let pictures =
        Painter::new(&cutter, engraver, &style).draw(&content).map_err(|problem| problem.to_string())?;
    pdf(&pictures).map_err(|problem| problem.to_string())
}
