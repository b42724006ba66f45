//! Pages for paper: the whole plan, what is to be written into printed parts, the parts.

use std::collections::{BTreeMap, BTreeSet};

use arcata_analysis::WithLayer;
use arcata_bow::RealTime;
use arcata_bow::timing::TempoMap;
use arcata_desk::{
    Desk, ExportedFile, ExportedFiles, PDF_TYPE, PrintKind, PrintOrder, PrintShop, SCORE_TYPE,
};
use arcata_engrave::{
    AskedStarts, BookletRequest, Cutter, Engraver, LanePlan, Painter, PictureContent, PictureStyle,
    ShownChanges, SystemWide, advice_said, page_end_said, pdf, remark_said,
};
use arcata_languages::Wording;
use arcata_layer::{Addresses, Layer};
use arcata_prepare::{part_file_name, part_paper};
use arcata_report::sheet::{CopyingSettings, Paper, SheetInput, SheetView, sheet_pdf};
use rayon::prelude::*;

/// Makes PDF by the libraries of this program.
#[derive(Clone, Copy, Debug)]
pub(crate) struct PdfShop;

impl PrintShop for PdfShop {
    fn print(&self, order: &PrintOrder<'_>) -> Result<ExportedFiles, String> {
        let PrintOrder { kind, desk, layer, stem, engraver, wording, .. } = *order;
        let (name, bytes, told) = match kind {
            PrintKind::Pages => {
                let title = desk.snapshot().ground().source.score.title.as_deref().unwrap_or(stem);
                ("bows", pages((desk, title), engraver, wording)?, Vec::new())
            }
            PrintKind::Sheet => {
                let (bytes, told) = sheet((desk, layer), engraver, wording)?;
                ("changes", bytes, told)
            }
            PrintKind::Parts { only } => return parts(order, only),
        };
        let file = ExportedFile { name: format!("{stem}-{name}.pdf"), kind: PDF_TYPE, bytes };
        Ok(ExportedFiles { folder: None, files: vec![file], told })
    }
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
    let document = desk.snapshot().ground().source.file().document();
    let score = &arcata_score::read(document);
    let addresses = Addresses::new(score);
    let told = desk.snapshot().told(layer);
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
fn parts(order: &PrintOrder<'_>, only: Option<usize>) -> Result<ExportedFiles, String> {
    let PrintOrder { desk, layer, stem, engraver, wording, house, breaks, .. } = *order;
    let WithLayer { document, left_out, .. } = desk.bowed(layer)?;
    let ground = desk.snapshot().ground();
    let profile = &ground.config.player.profile;
    let score = arcata_score::read(&document);
    let tempo = TempoMap::new(&score, profile, ground.options.tempo);
    let wide = SystemWide::new(&document, &score);
    let addresses = Addresses::new(&score);
    let shown = &ShownChanges::default();
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
            let found = breaks.in_part(&addresses, *part);
            let asked = &AskedStarts { pages: found.pages, lines: found.lines };
            let turn = RealTime::from_micros(profile.times.page_turn.value * 1000);
            let request = BookletRequest {
                document,
                score,
                wide,
                tempo: &tempo,
                house,
                turn,
                part: *part,
                shown,
                asked,
                wording,
            };
            part_paper(&request, engraver)
                .map(|paper| (part_file_name(score, *part, house), *part, paper))
                .map_err(|why| format!("{}: {why}", score.parts[*part].name))
        })
        .collect();
    let mut files = Vec::new();
    let mut told: Vec<String> = left_out.iter().map(ToString::to_string).collect();
    let lost = breaks.told(&addresses, None).into_iter();
    told.extend(lost.map(|(saying, _)| wording.say(&saying)));
    for (name, part, paper) in made? {
        let needed = house.turn().max(RealTime::from_micros(profile.times.page_turn.value * 1000));
        let turns = paper.booklet.turns.iter().map(|turn| page_end_said(turn, needed));
        let advice = paper.booklet.advice.iter().flat_map(advice_said).map(|(_, said)| said);
        let remarks = paper.booklet.remarks.iter().map(|remark| remark_said(remark).0);
        let broken = breaks.told(&addresses, Some(part)).into_iter().map(|(saying, _)| saying);
        let said = turns.chain(broken).chain(advice).chain(remarks);
        told.extend(said.map(|saying| format!("{}: {}", paper.name, wording.say(&saying))));
        files.push(ExportedFile { name: format!("{name}.pdf"), kind: PDF_TYPE, bytes: paper.pdf });
        if only.is_none() {
            let bytes = paper.booklet.musicxml.into_bytes();
            files.push(ExportedFile { name: format!("{name}.musicxml"), kind: SCORE_TYPE, bytes });
        }
    }
    Ok(ExportedFiles { folder: Some(format!("{stem}-parts")), files, told })
}

/// The whole plan on pages of A4.
///
/// # Errors
/// Where nothing can be drawn, in words.
fn pages((desk, title): (&Desk, &str), engraver: &Engraver, wording: &Wording) -> Result<Vec<u8>, String> {
    let (snapshot, ground) = (desk.snapshot(), desk.snapshot().ground());
    let lanes: Vec<LanePlan<'_>> = snapshot
        .lines()
        .iter()
        .enumerate()
        .map(|(index, line)| LanePlan {
            line,
            first: 0,
            planned: &snapshot.plans()[index].strokes,
            hair: ground.reach(index).hair,
            name: String::new(),
            open: Vec::new(),
        })
        .collect();
    let last = u32::try_from(snapshot.score().bars.len().saturating_sub(1)).unwrap_or(u32::MAX);
    let content = PictureContent {
        title: title.to_owned(),
        subtitle: desk.assumptions(wording).join(". "),
        bars: 0..=last,
        lanes: &lanes,
        captions: Vec::new(),
    };
    let style = PictureStyle { page_height: Some(297.0), ..PictureStyle::paper() }.in_words(wording);
    let cutter = Cutter::new(ground.source.document(), snapshot.score());
    let pictures =
        Painter::new(&cutter, engraver, &style).draw(&content).map_err(|problem| problem.to_string())?;
    pdf(&pictures).map_err(|problem| problem.to_string())
}
