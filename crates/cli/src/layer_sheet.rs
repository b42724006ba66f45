//! `arcata layer sheet`.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use std::process::ExitCode;

use arcata_analysis::{Config, Source};
use arcata_languages::Saying;
use arcata_layer::identity::{self, Kinship};
use arcata_layer::{Addresses, Layer, Trust, shorthand, wipe};
use arcata_report::sheet::{
    CopyingSettings, Paper, SYMPHONY_STANDS, SheetEnd, SheetInput, SheetView, marks_that_come_anyway,
    sheet_html, sheet_pdf, sheet_text,
};
use arcata_score::{Instrument, NoteId, Score};

use crate::args::{PaperSize, SheetArguments, SheetFormat};
use crate::failure::Failure;
use crate::layer_file::open_layer;
use crate::layer_words::{say, word};
use crate::{engraving, files, studio};

pub(crate) fn run(arguments: &SheetArguments) -> Result<ExitCode, Failure> {
    let format = format(arguments)?;
    let mut opened = studio::open_score(&arguments.score)?;
    let after = open_layer(&arguments.layer)?.layer;
    let before = arguments.before.as_deref().map(open_layer).transpose()?.map(|opened| opened.layer);
    for layer in [Some(&after), before.as_ref()].into_iter().flatten() {
        opened = without(opened, layer)?;
    }
    let addresses = Addresses::new(&opened.score);
    let spared = if arguments.least { spared(&addresses, &after) } else { BTreeSet::new() };
    // Hooks and retakes as they shall stand in the parts.
    let clean = (opened.file().document(), &opened.score);
    let told = studio::told(&arguments.score, clean, &after)?;
    let after = told.spelt_out(&after, &addresses);
    let before = match before {
        Some(before) => Some(studio::told(&arguments.score, clean, &before)?.spelt_out(&before, &addresses)),
        None => None,
    };
    let stands = stands(&opened.score, arguments.stands.as_deref())?;
    let settings = CopyingSettings::default();
    let settings = match arguments.seconds_a_mark {
        Some(seconds) => settings.with_seconds_a_mark(seconds),
        None => settings,
    };
    let mut view = SheetView::new(&SheetInput {
        addresses: &addresses,
        before: before.as_ref(),
        after: &after,
        stands,
        settings,
        spared: spared.clone(),
        wording: files::wording(),
    });
    name_states(&mut view, arguments);
    let layer = arcata_prepare::written(&addresses, (before.as_ref(), &after), &spared);
    let (document, score) = arcata_prepare::marked(&mut view, clean, (&layer, &told))
        .map_err(|why| Failure::Sheet { why: files::told(&why) })?;
    if format != SheetFormat::Text && !arguments.words_only {
        let told = arcata_prepare::engrave_bars(&mut view, (&document, &score), &engraving::engraver());
        told.iter().for_each(|sentence| files::complain(&files::told(sentence)));
    }
    let bytes = match format {
        SheetFormat::Html => files::bar_word().said(&sheet_html(&view)).into_owned().into_bytes(),
        SheetFormat::Pdf => {
            let paper = match arguments.paper {
                PaperSize::A4 => Paper::A4,
                PaperSize::Letter => Paper::Letter,
            };
            sheet_pdf(&view, paper)
                .map_err(|error| Failure::Sheet { why: files::told(&error.to_string()) })?
        }
        SheetFormat::Text => {
            let (page, end) = match &arguments.out {
                Some(_) => (files::plain_page(), SheetEnd::FormFeed),
                None => (files::page(), SheetEnd::EmptyLine),
            };
            files::bar_word().said(&sheet_text(&view, page, end)).into_owned().into_bytes()
        }
    };
    match &arguments.out {
        Some(out) => {
            let inputs = [Some(&arguments.score), Some(&arguments.layer), arguments.before.as_ref()];
            if inputs.into_iter().flatten().any(|input| files::same(input, out)) {
                return Err(Failure::SameFile { path: out.clone() });
            }
            arcata_files::write_whole(out, &bytes)?;
        }
        None if format == SheetFormat::Text => files::show_set(&String::from_utf8_lossy(&bytes)),
        None => files::hand_out(&String::from_utf8_lossy(&bytes)),
    }
    Ok(ExitCode::SUCCESS)
}

/// Two states of one layer bear one title: their files tell them apart.
fn name_states(view: &mut SheetView, arguments: &SheetArguments) {
    let Some((before, path)) = view.before.as_mut().zip(arguments.before.as_ref()) else { return };
    if *before == view.after {
        for (side, path) in [(before, path), (&mut view.after, &arguments.layer)] {
            let name = path.file_name().unwrap_or(path.as_os_str()).to_string_lossy();
            side.about = if side.about.is_empty() { name.into() } else { format!("{}, {name}", side.about) };
        }
    }
}

/// The score without a layer that is on it.
fn without(opened: Source, layer: &Layer) -> Result<Source, Failure> {
    let document = opened.file().document();
    match identity::kinship(layer, document, &opened.score) {
        Kinship::Unbound | Kinship::Clean => return Ok(opened),
        Kinship::OtherMusic => {
            files::complain(&say(&Saying::new("sheet-of-other-music").quoting("title", &layer.title)));
            return Ok(opened);
        }
        Kinship::SameMusic => {}
    }
    // The very music with other bytes: the layer may be on it, or another one.
    let failed = |why: String| Failure::Sheet { why };
    let wiped = wipe(document, &opened.score, layer, Trust::OwnScore)
        .map_err(|error| failed(files::told(&error.to_string())))?;
    if wiped.edits.edits().is_empty() {
        return Ok(opened);
    }
    let bytes = document.apply(&wiped.edits).map_err(|error| failed(files::told(&error.to_string())))?;
    let bytes = opened.file().write(&bytes).map_err(|error| failed(files::told(&error.to_string())))?;
    Source::open(bytes).map_err(|why| failed(files::told(&why)))
}

fn format(arguments: &SheetArguments) -> Result<SheetFormat, Failure> {
    let ending = |out: &Path| out.extension().map(|ending| ending.to_string_lossy().to_lowercase());
    let by_name = match arguments.out.as_deref().and_then(ending).as_deref() {
        Some("html" | "htm") => SheetFormat::Html,
        Some("pdf") => SheetFormat::Pdf,
        _ => SheetFormat::Text,
    };
    let format = arguments.format.unwrap_or(by_name);
    if format == SheetFormat::Pdf && arguments.out.is_none() {
        return Err(Failure::Sheet { why: word("sheet-pdf-on-terminal") });
    }
    Ok(format)
}

/// Stands by part.
pub(crate) fn stands(score: &Score, text: Option<&str>) -> Result<BTreeMap<usize, u32>, Failure> {
    const MOST: u32 = 1000;
    let Some(text) = text else { return Ok(BTreeMap::new()) };
    if text.trim().eq_ignore_ascii_case("symphony") {
        return Ok(symphony(score));
    }
    let mut found = BTreeMap::new();
    for piece in text.split(',').filter(|piece| !piece.trim().is_empty()) {
        let failed = |why: String| Failure::Stands { text: piece.trim().to_owned(), why };
        let (name, count) = piece.split_once('=').ok_or_else(|| failed(word("stands-no-equals")))?;
        let count: u32 = count
            .trim()
            .parse()
            .ok()
            .filter(|count| *count <= MOST)
            .ok_or_else(|| failed(say(&Saying::new("stands-number").with("limit", MOST))))?;
        let parts = shorthand::parts_named(score, name.trim())
            .map_err(|why| failed(files::told(&why.to_string())))?;
        found.extend(parts.into_iter().map(|part| (part, count)));
    }
    Ok(found)
}

/// First violins, second violins, violas, cellos, basses, as far as the score has them.
fn symphony(score: &Score) -> BTreeMap<usize, u32> {
    let of = |instrument: Instrument| {
        (0..score.parts.len()).filter(move |part| score.parts[*part].instrument == instrument)
    };
    let [first, second, violas, cellos, basses] = SYMPHONY_STANDS;
    let violins = of(Instrument::Violin).enumerate();
    let mut stands: BTreeMap<usize, u32> =
        violins.map(|(index, part)| (part, if index == 0 { first } else { second })).collect();
    stands.extend(of(Instrument::Viola).map(|part| (part, violas)));
    stands.extend(of(Instrument::Cello).map(|part| (part, cellos)));
    stands.extend(of(Instrument::Bass).map(|part| (part, basses)));
    stands
}

/// Marks of the layer that come anyway.
fn spared(addresses: &Addresses<'_>, layer: &Layer) -> BTreeSet<(usize, NoteId)> {
    let lines = arcata_analysis::lines(addresses.score(), &Config::usual());
    marks_that_come_anyway(addresses, &lines, layer)
}
