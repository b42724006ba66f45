//! `arcata plan --format svg|png|pdf`: the music with the bow under it.

use std::ops::RangeInclusive;
use std::path::Path;
use std::process::ExitCode;

use arcata_analysis::Player;
use arcata_bow::plan::{Alternative, MarkReading, alternatives};
use arcata_engrave::{
    Caption, Cutter, Engraver, LanePlan, Painter, Picture, PictureContent, PictureStyle, pdf,
};
use arcata_languages::{Argument, Saying, capital};
use arcata_report::{alternative_name, yardstick_words};

use crate::args::{PlanArguments, PlanFormat};
use crate::failure::Failure;
use crate::studio::StudioScore;
use crate::{engraving, files, studio, wishes};

/// Dots to the inch of a PNG: notes are sharp on paper and on a screen.
const DOTS: u16 = 200;
/// Height of a page of A4, mm.
const PAGE: f64 = 297.0;

pub(crate) fn run(
    path: &Path,
    arguments: &PlanArguments,
    player: &Player,
    marks: MarkReading,
) -> Result<ExitCode, Failure> {
    let failed = |why: String| Failure::Picture { why };
    let Some(out) = &arguments.out else {
        return Err(failed(files::wording().word("failure-picture-no-file")));
    };
    if files::same(path, out) {
        return Err(Failure::SameFile { path: out.clone() });
    }
    let mut desk = studio::open(path, &arguments.shared, player, marks)?;
    let bars = desk.bars.clone();
    let anchors = wishes::anchors(&desk, &arguments.anchor)?;
    if anchors.iter().any(|anchors| !anchors.is_empty()) {
        desk.fix(anchors);
    }
    let style = style(arguments);
    let engraver = engraving::engraver();
    let pictures = pictures(&desk, &bars, arguments, &style, &engraver)?;
    let bytes = match (arguments.format, pictures.as_slice()) {
        (PlanFormat::Pdf, _) => pdf(&pictures).map_err(|error| failed(files::told(&error.to_string())))?,
        (PlanFormat::Png, [picture, ..]) => {
            picture.png(DOTS).map_err(|error| failed(files::told(&error.to_string())))?
        }
        (_, [picture, ..]) => picture.svg().into_bytes(),
        (_, []) => return Err(failed(files::wording().word("failure-picture-nothing"))),
    };
    arcata_files::write_whole(out, &bytes)?;
    Ok(ExitCode::SUCCESS)
}

fn style(arguments: &PlanArguments) -> PictureStyle {
    let shape = if arguments.width < 150 { PictureStyle::phone() } else { PictureStyle::paper() };
    PictureStyle {
        width: f64::from(arguments.width),
        page_height: (arguments.format == PlanFormat::Pdf).then_some(PAGE),
        ..shape
    }
    .in_words(&files::wording())
}

fn pictures(
    desk: &StudioScore,
    bars: &RangeInclusive<u32>,
    arguments: &PlanArguments,
    style: &PictureStyle,
    engraver: &Engraver,
) -> Result<Vec<Picture>, Failure> {
    let mut others: Vec<(usize, Vec<Alternative>)> = Vec::new();
    for index in desk.shown.iter().copied() {
        let line = &desk.lines()[index];
        let before = |bar: u32| line.strokes.partition_point(|stroke| stroke.bar < bar);
        let window = before(*bars.start())..before(bars.end().saturating_add(1));
        if window.is_empty() {
            continue;
        }
        let count = usize::from(arguments.alternatives);
        let mut found = Vec::new();
        if count > 0 {
            found = alternatives(line, desk.settings(index), window, count + 1);
            found.drain(..1.min(found.len()));
        }
        others.push((index, found));
    }
    if others.is_empty() {
        return Err(Failure::Picture { why: files::wording().word("failure-picture-no-bow") });
    }
    let mut lanes = Vec::new();
    let mut captions = Vec::new();
    for (index, found) in &others {
        lanes.extend(lanes_of(desk, *index, found, arguments.sure, &mut captions));
    }
    let content = PictureContent {
        title: desk.score().title.clone().unwrap_or_else(|| files::wording().word("picture-bow-plan")),
        subtitle: subtitle(desk, bars),
        bars: bars.clone(),
        lanes: &lanes,
        captions,
    };
    let cutter = Cutter::new(desk.file().document(), desk.score());
    let painter = Painter::new(&cutter, engraver, style);
    painter.draw(&content).map_err(|error| Failure::Picture { why: files::told(&error.to_string()) })
}

/// The plan of a line and the other ways to bow it, each with a number and a sentence where there are some.
fn lanes_of<'a>(
    desk: &'a StudioScore,
    index: usize,
    found: &'a [Alternative],
    how_sure: bool,
    captions: &mut Vec<Caption>,
) -> Vec<LanePlan<'a>> {
    let (line, plan, hair) = (&desk.lines()[index], &desk.plans()[index], desk.settings(index).reach.hair);
    let numbered = |way: usize| if found.is_empty() { String::new() } else { format!("{}.", way + 1) };
    let open = if how_sure { desk.open_strokes(index) } else { Vec::new() };
    let mut lanes = vec![LanePlan { line, first: 0, planned: &plan.strokes, hair, name: numbered(0), open }];
    if found.is_empty() {
        return lanes;
    }
    let of = if desk.shown.len() > 1 { format!("{}: ", line.name) } else { String::new() };
    let wording = files::wording();
    let yardstick = yardstick_words(desk.settings(index).weights.downbeat, &wording);
    captions.push(Caption {
        name: numbered(0),
        text: format!("{of}{} {yardstick}", wording.word("picture-the-plan")),
    });
    for (number, other) in found.iter().enumerate() {
        let first = other.strokes.start;
        let name = numbered(number + 1);
        let (planned, name) = (&other.plan.strokes, name.clone());
        lanes.push(LanePlan { line, first, planned, hair, name: name.clone(), open: Vec::new() });
        let said = Saying::new("picture-other-way")
            .quoting("what", alternative_name(desk.score(), line, other, &wording))
            .with("points", Argument::Points(other.more.total()));
        captions.push(Caption { name, text: format!("{of}{}", wording.say(&said)) });
    }
    lanes
}

fn subtitle(desk: &StudioScore, bars: &RangeInclusive<u32>) -> String {
    let (score, wording) = (desk.score(), files::wording());
    let bars = match (score.bar_label(*bars.start()), score.bar_label(*bars.end())) {
        (first, last) if score.movement_of(*bars.start()) != score.movement_of(*bars.end()) => {
            let movement = |bar| score.movement_said(bar);
            let said = Saying::new("picture-from-to")
                .quoting("from", wording.bar(movement(*bars.start()), first))
                .quoting("to", wording.bar(movement(*bars.end()), last));
            wording.say(&said)
        }
        (first, last) => {
            let bars = match first == last {
                true => wording.bar(None, first),
                false => {
                    wording.say(&Saying::new("picture-bars").quoting("first", first).quoting("last", last))
                }
            };
            match score.movements.get(score.movement_of(*desk.bars.start())) {
                Some(movement) if score.movements.len() > 1 => format!("{}, {bars}", movement.name()),
                _ => capital(&bars),
            }
        }
    };
    std::iter::once(bars).chain(desk.assumptions()).collect::<Vec<_>>().join(". ")
}
