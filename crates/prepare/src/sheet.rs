//! A change sheet's layer on its score: what cannot be put on, and every bar that changes engraved as it shall look.

use std::collections::BTreeSet;

use arcata_engrave::{Cutter, Engraver, ExcerptStyle, Opening, Slice, excerpts};
use arcata_layer::{Addresses, Layer, Mark, ToldBows};
use arcata_report::sheet::{EXCERPT_WIDTH, Excerpt, SheetView};
use arcata_score::{NoteId, Score};
use arcata_xml::{Document, NodeId};

use arcata_analysis::{WithLayer, with_layer};

/// From the first line of a staff to the fifth, mm: small, but as readable as a pocket score.
const STAFF: f64 = 5.0;
/// Bars that are engraved at most: past this a sheet would be a score.
const MOST: usize = 3000;

/// The layer as it is written into the parts: without bows that come anyway and stand nowhere yet.
#[must_use]
pub fn written(
    addresses: &Addresses<'_>,
    (before, after): (Option<&Layer>, &Layer),
    spared: &BTreeSet<(usize, NoteId)>,
) -> Layer {
    let mut layer = after.clone();
    layer.entries.retain(|entry| {
        let is_bow = matches!(entry.mark, Mark::Down | Mark::Up);
        let found = addresses.find(&entry.place).ok();
        let is_spared = is_bow && found.is_some_and(|found| spared.contains(&(found.part, found.note)));
        let stands = |before: &Layer| {
            before.entries.iter().any(|other| other.place == entry.place && other.mark == entry.mark)
        };
        !is_spared || before.is_some_and(stands)
    });
    layer
}

/// The score with the layer on it, in memory; the page lists what cannot be put on.
///
/// # Errors
/// A layer that cannot be put on this score at all, in words.
pub fn marked(
    view: &mut SheetView,
    clean: (&Document, &Score),
    (layer, told): (&Layer, &ToldBows),
) -> Result<(Document, Score), String> {
    let WithLayer { document, left_out, .. } = with_layer(clean, layer, told)?;
    view.leave_out(&left_out, &Addresses::new(clean.1));
    let score = arcata_score::read(&document);
    Ok((document, score))
}

/// Engraves the bars that change. What cannot be engraved stays in words; that is handed back in sentences.
pub fn engrave_bars(
    view: &mut SheetView,
    (document, score): (&Document, &Score),
    engraver: &Engraver,
) -> Vec<String> {
    let bars = view.sections.iter().map(|section| section.bars.len()).sum::<usize>();
    if bars > MOST {
        return vec![format!("{bars} bars change: more than {MOST}, so the sheet has words only.")];
    }
    let cutter = Cutter::new(document, score);
    let mut slices: Vec<(Slice, Vec<NodeId>)> = Vec::new();
    for section in &view.sections {
        let notes = &score.parts[section.part].notes;
        for bar in &section.bars {
            let slice = cutter.cut(&[section.part], bar.index..=bar.index, Opening::NextLine);
            // A layer puts marks on notes, never notes: the marked score counts them as the clean one does.
            let node = |note: NoteId| notes.get(note.0 as usize).map(|note| note.node);
            slices
                .push((slice.unnamed(), bar.changes.iter().filter_map(|change| node(change.note)).collect()));
        }
    }
    let style = ExcerptStyle { staff: STAFF, width: f64::from(EXCERPT_WIDTH) };
    let mut drawn = excerpts(engraver, &slices, style).into_iter();
    let mut in_words = Vec::new();
    for section in &mut view.sections {
        for bar in &mut section.bars {
            let picture = drawn.next().and_then(Result::ok);
            bar.music = picture.and_then(|picture| {
                #[expect(clippy::cast_possible_truncation, reason = "millimetres of a page")]
                let (width, height) = (picture.width as f32, picture.height as f32);
                Some(Excerpt { svg: picture.outlines().ok()?, width, height })
            });
            if bar.music.is_none() {
                in_words.push(format!("{} {}", section.name, bar.bar));
            }
        }
    }
    if in_words.is_empty() {
        return Vec::new();
    }
    let some = in_words.iter().take(20).cloned().collect::<Vec<_>>().join(", ");
    vec![format!("could not be engraved and stand in words only: {some}")]
}
