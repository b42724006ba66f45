//! Which bars share a line.

use std::collections::BTreeSet;
use std::ops::RangeInclusive;

use arcata_score::{Moment, NoteKind, Score};

use super::{PictureContent, PictureStyle};

/// Staff heights that one moment of music takes across, with what a bar takes besides: the engraver's
/// natural spacing of quarters and eighths (measured on the demo scores).
const MOMENT: f64 = 0.5;
const BAR: f64 = 0.8;
/// Clef, key, metre and the names of the parts.
const FRONT: f64 = 5.0;

/// Lines of about equal fullness, each as full as can be read.
pub(super) fn systems(
    score: &Score,
    content: &PictureContent<'_>,
    style: &PictureStyle,
) -> Vec<RangeInclusive<u32>> {
    let room = ((style.width - 2.0 * style.side) / style.staff - FRONT).max(4.0);
    let parts: BTreeSet<usize> = content.lanes.iter().map(|lane| lane.line.part).collect();
    let last = u32::try_from(score.bars.len().saturating_sub(1)).unwrap_or(u32::MAX);
    let bars = *content.bars.start()..=(*content.bars.end()).min(last);
    // A movement begins on a line of its own.
    let movements = score
        .movements
        .iter()
        .map(|movement| *movement.bars.start().max(bars.start())..=*movement.bars.end().min(bars.end()));
    let stretches = movements.filter(|bars| !bars.is_empty());
    stretches.flat_map(|bars| lines_of(score, &parts, bars, room)).collect()
}

/// The lines of some bars of one movement.
fn lines_of(
    score: &Score,
    parts: &BTreeSet<usize>,
    bars: RangeInclusive<u32>,
    room: f64,
) -> Vec<RangeInclusive<u32>> {
    let widths: Vec<(u32, f64)> = bars.map(|bar| (bar, width(score, parts, bar))).collect();
    let whole: f64 = widths.iter().map(|(_, width)| width).sum();
    // As many lines as are needed, each about as full as the others: a bar goes where its middle falls.
    let line = whole / (whole / room).ceil().max(1.0);
    let mut systems: Vec<(f64, RangeInclusive<u32>)> = Vec::new();
    let mut passed = 0.0;
    for (bar, width) in widths {
        let number = ((passed + width / 2.0) / line).floor();
        passed += width;
        match systems.last_mut() {
            Some((last, system)) if number <= *last => *system = *system.start()..=bar,
            _ => systems.push((number, bar..=bar)),
        }
    }
    systems.into_iter().map(|(_, system)| system).collect()
}

/// Staff heights that a bar takes.
fn width(score: &Score, parts: &BTreeSet<usize>, bar: u32) -> f64 {
    let mut moments: BTreeSet<Moment> = BTreeSet::new();
    let mut small = 0_u32;
    for part in parts {
        let notes = score.parts.get(*part).map_or(&[][..], |part| &part.notes);
        let first = notes.partition_point(|note| note.bar < bar);
        for note in notes[first..].iter().take_while(|note| note.bar == bar) {
            moments.insert(note.onset);
            small += u32::from(note.kind != NoteKind::Ordinary);
        }
    }
    #[expect(clippy::cast_precision_loss, reason = "notes of one bar")]
    let moments = moments.len() as f64 + f64::from(small) * 0.6;
    BAR + MOMENT * moments
}
