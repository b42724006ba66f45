//! Two layers on the desk held against each other: where they differ, and the music under each.

use arcata_engrave::{Cutter, Engraver, LanePlan, Painter, PictureStyle, Surroundings};
use arcata_layer::{Addresses, Layer, compare};
use serde::Serialize;
use utoipa::ToSchema;

use crate::desk::Desk;
use crate::drawing::{PictureView, content};
use crate::views::mark_words;

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
pub(crate) fn passages(desk: &Desk, one: &Layer, other: &Layer) -> Vec<PassageView> {
    let addresses = Addresses::new(&desk.base.score);
    let mut passages: Vec<PassageView> = Vec::new();
    for difference in compare(one, other) {
        let found = addresses.find(&difference.place).ok();
        let bar = found.map(|found| {
            let moment = desk.base.score.parts[found.part].notes[found.note.0 as usize].onset;
            desk.base.score.bar_at(moment).unwrap_or(0)
        });
        let line = found.and_then(|found| {
            let at = desk.base.stroke_of(found.part, found.note).map(|(line, _)| line);
            at.or_else(|| desk.base.lines.iter().position(|line| line.part == found.part))
        });
        let said = |entries: &[arcata_layer::Entry]| entries.first().map(|entry| mark_words(&entry.mark));
        let view = DifferenceView {
            place: difference.place.to_string(),
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

/// Some bars of a line as they are bowed under one layer alone.
///
/// # Errors
/// Where there are no such bars, or they cannot be engraved; in words.
pub(crate) fn picture(
    desk: &Desk,
    layer: &Layer,
    (line, first, last): (usize, u32, u32),
    (engraver, version): (&Engraver, u64),
) -> Result<PictureView, String> {
    let base = &desk.base;
    if first > last || last as usize >= base.score.bars.len() || last - first >= 2 * MOST_BARS {
        return Err("there are no such bars".to_owned());
    }
    let plan = desk.alone(line, layer).ok_or("there is no such line")?;
    let style = PictureStyle {
        width: 96.0,
        side: 1.0,
        head: 0.5,
        staff: 5.5,
        frog: base.profile.words.frog.value.clone(),
        tip: base.profile.words.tip.value.clone(),
        surroundings: Surroundings::Bare,
        ..PictureStyle::paper()
    };
    let lanes = [LanePlan {
        line: &base.lines[line],
        first: 0,
        planned: &plan.strokes,
        hair: base.settings(line, &[]).reach.hair,
        name: String::new(),
    }];
    let cutter = Cutter::new(base.file.document(), &base.score);
    let drawn = Painter::new(&cutter, engraver, &style)
        .draw(&content(first..=last, &lanes))
        .map_err(|problem| problem.to_string())?;
    let picture = drawn.into_iter().next().ok_or("there is nothing to draw")?;
    Ok(PictureView { version, svg: picture.content, width: picture.width, height: picture.height })
}
