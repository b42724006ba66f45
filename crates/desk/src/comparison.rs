//! What might be, held against what is: two layers on the desk, where they differ and the music under each; the music with one
//! change more.

use std::ops::RangeInclusive;

use arcata_engrave::{Engraver, LanePlan};
use arcata_languages::Wording;
use arcata_layer::{Addresses, Layer, compare};
use arcata_report::sheet::{mark_said, place_said};
use serde::Serialize;
use utoipa::ToSchema;

use crate::act::ByteEdit;
use crate::desk::{ChangedLine, Desk};
use crate::drawing::{self, PictureView};
use crate::state::SessionState;

/// A passage holds no more bars than this.
const MOST_BARS: u32 = 4;

/// Some bars of a line in which two layers differ.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub(crate) struct PassageView {
    /// The line; none where the note is not in the score, or not bowed.
    pub(crate) line: Option<usize>,
    /// The part by name.
    pub(crate) name: String,
    /// First bar, index.
    pub(crate) first: u32,
    /// Last bar.
    pub(crate) last: u32,
    /// What they say.
    pub(crate) differences: Vec<DifferenceView>,
}

/// Where two layers differ.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub(crate) struct DifferenceView {
    /// Where, in words.
    pub(crate) place: String,
    /// What the one says, in words; nothing where it is silent.
    pub(crate) one: Option<String>,
    /// What the other says.
    pub(crate) other: Option<String>,
}

/// Where two layers differ, passage by passage.
pub(crate) fn passages(desk: &Desk, (one, other): (&Layer, &Layer), wording: &Wording) -> Vec<PassageView> {
    let addresses = Addresses::new(desk.base.score());
    let mut passages: Vec<PassageView> = Vec::new();
    for difference in compare(one, other) {
        let found = addresses.find(&difference.place).ok();
        let bar = found.map(|found| {
            let moment = desk.base.score().parts[found.part].notes[found.note.0 as usize].onset;
            desk.base.score().bar_at(moment).unwrap_or(0)
        });
        let line = found.and_then(|found| {
            let at = desk.base.stroke_of(found.part, found.note).map(|(line, _)| line);
            let movement = bar.map(|bar| desk.base.score().movement_of(bar));
            let of_part =
                |line: &arcata_bow::Line| line.part == found.part && Some(line.movement) == movement;
            at.or_else(|| desk.base.lines().iter().position(of_part))
        });
        let said = |entries: &[arcata_layer::Entry]| {
            let entry = entries.first()?;
            Some(mark_said(&entry.mark, &difference.place.part, Some(&addresses), wording))
        };
        let view = DifferenceView {
            place: place_said(&difference.place, Some(&addresses), wording),
            one: said(&difference.before),
            other: said(&difference.after),
        };
        let bar = bar.unwrap_or(0);
        match passages.last_mut() {
            Some(last)
                if last.line == line
                    && last.name == difference.place.part
                    && bar >= last.first
                    && bar <= last.last + 1
                    && bar - last.first < MOST_BARS =>
            {
                last.last = last.last.max(bar);
                last.differences.push(view);
            }
            _ => passages.push(PassageView {
                line,
                name: difference.place.part,
                first: bar,
                last: bar,
                differences: vec![view],
            }),
        }
    }
    passages
}

/// Who draws, which version, and in whose words.
type DrawnWith<'a> = (&'a Engraver, u64, &'a Wording);

/// Some bars of a line as they are bowed under one layer alone.
///
/// # Errors
/// Where there are no such bars, or they cannot be engraved; in words.
pub(crate) fn picture(
    desk: &Desk,
    (state, layer): (&SessionState, &Layer),
    (line, first, last): (usize, u32, u32),
    drawing: DrawnWith<'_>,
) -> Result<PictureView, String> {
    let alone = desk.alone(state, layer, line)?;
    drawn(desk, (&alone, line), first..=last, drawing)
}

/// Some bars of a line as they would be with one change more in the score.
///
/// # Errors
/// As for [`picture`], and edits that do not fit.
pub(crate) fn changed_picture(
    desk: &Desk,
    (state, edits): (&SessionState, &[ByteEdit]),
    (line, first, last): (usize, u32, u32),
    drawing: DrawnWith<'_>,
) -> Result<PictureView, String> {
    let changed = desk.changed_line(state, edits, line)?;
    drawn(desk, (&changed, line), first..=last, drawing)
}

fn drawn(
    desk: &Desk,
    (changed, line): (&ChangedLine, usize),
    bars: RangeInclusive<u32>,
    (engraver, version, wording): DrawnWith<'_>,
) -> Result<PictureView, String> {
    let lane = LanePlan {
        line: &changed.line,
        first: 0,
        planned: &changed.plan.strokes,
        hair: desk.base.reach(line).hair,
        name: String::new(),
        open: Vec::new(),
    };
    drawing::small((&changed.document, &changed.score, wording), lane, bars, (engraver, version))
}
