//! The pages of the class, made of all records.

use std::path::{Path, PathBuf};

use arcata_class::alike::{self, Stretch};
use arcata_class::before::{TaskBefore, course};
use arcata_class::pages::{
    AlikePair, ClassPage, ClassPageFor, HandPageBy, alike_html, class_csv, class_html, class_pdf, hand_html,
};
use arcata_class::{ClassView, HandIn, KeptPicture, LEAST_GROUP, TeachersHand};
use arcata_engrave::music_style_sheet;
use arcata_export::Scenes;
use arcata_review::{Finding, FindingPlace, Severity};
use arcata_score::{Length, NoteId};

use crate::class_one::{MadeSheet, SheetRequest, StudentNames, Whose, bowed, outlined, said, writes_music};
use crate::failure::Failure;
use crate::files;

/// Pairs that the page about hand-ins that are alike shows.
const PAIRS: usize = 20;

/// What was written of the class.
pub(crate) struct WrittenPages {
    pub(crate) index: PathBuf,
    pub(crate) to_show: PathBuf,
    /// The page about hand-ins that are alike, and how many pairs it shows.
    pub(crate) alike: Option<(PathBuf, usize)>,
    /// The page of the teacher's hand, as the program serves it.
    pub(crate) to_go_through: String,
}

/// Writes the pages of the class.
pub(crate) fn write(
    request: &SheetRequest<'_>,
    all: &[(Whose<'_>, MadeSheet)],
    nothing_from: &[String],
) -> Result<WrittenPages, Failure> {
    let mut order: Vec<&(Whose<'_>, MadeSheet)> = all.iter().collect();
    // By what pages say, so that the order tells nothing of names or files.
    order.sort_by_key(|(whose, _)| called(whose, request));
    let words = &request.words[0];
    let hand_ins: Vec<HandIn<'_>> = order
        .iter()
        .map(|(whose, made)| HandIn {
            record: &made.record,
            name: called(whose, request),
            sheet: made.record.shown().map(|_| address(&whose.sheet(request, words, "html"))),
        })
        .collect();
    let stages = stages(request, &hand_ins);
    let alike = write_alike(request, &order)?;
    let fonts = fonts(&hand_ins);
    let page = ClassPage {
        task: request.task,
        hand_ins: &hand_ins,
        nothing_from,
        course: &stages,
        alike: alike.as_ref().map(|_| "./alike.html".to_owned()),
        fonts,
    };
    let (index, to_show) = (request.out.join("index.html"), request.out.join("class-to-show.html"));
    let html = said(words, &class_html(words, &page, ClassPageFor::Teacher));
    arcata_files::write_whole(&index, html.as_bytes())?;
    let html = said(words, &class_html(words, &page, ClassPageFor::Anybody));
    arcata_files::write_whole(&to_show, html.as_bytes())?;
    for (name, told) in [("class.pdf", ClassPageFor::Teacher), ("class-to-show.pdf", ClassPageFor::Anybody)] {
        let pdf = class_pdf(words, &page, told, &outlined);
        let pdf = pdf.map_err(|error| Failure::Picture { why: files::told(&error.to_string()) })?;
        arcata_files::write_whole(&request.out.join(name), &pdf)?;
    }
    let hand = |hand, by| said(words, &hand_html(words, request.task, &hand_ins, (hand, by)));
    let by_file = hand(request.hand, HandPageBy::File);
    arcata_files::write_whole(&request.out.join("hand.html"), by_file.as_bytes())?;
    // The journal that the program keeps holds all of it.
    let to_go_through = hand(&TeachersHand::default(), HandPageBy::Program);
    let view = ClassView::new(&hand_ins, request.task);
    let rules: Vec<String> =
        view.rules.iter().filter(|row| row.met > 0).map(|row| row.rule.clone()).collect();
    arcata_files::write_whole(&request.out.join("class.csv"), class_csv(&hand_ins, &rules).as_bytes())?;
    Ok(WrittenPages { index, to_show, alike, to_go_through })
}

fn called(whose: &Whose<'_>, request: &SheetRequest<'_>) -> String {
    match request.naming {
        StudentNames::Pseudonyms => whose.pseudonym.to_owned(),
        StudentNames::Own => whose.hand_in.name.clone(),
    }
}

/// The address of a sheet from the page of the class.
fn address(sheet: &Path) -> String {
    let name = sheet.file_name().unwrap_or_default().to_string_lossy();
    files::address("./sheets/", &name)
}

/// The music font, where an example writes with it.
fn fonts(hand_ins: &[HandIn<'_>]) -> &'static str {
    let passages =
        hand_ins.iter().filter_map(|hand_in| hand_in.record.shown()).flat_map(|shown| &shown.passages);
    let mut pictures = passages.filter_map(|passage| passage.now.as_ref());
    if pictures.any(writes_music) { music_style_sheet() } else { "" }
}

/// The class's way through its tasks, this one last; nothing where there was none before.
fn stages(request: &SheetRequest<'_>, hand_ins: &[HandIn<'_>]) -> Vec<TaskBefore> {
    if request.before.is_none() {
        return Vec::new();
    }
    course(&request.task.title, hand_ins.iter().map(|hand_in| hand_in.record))
}

/// Writes the page about hand-ins that are alike; takes an old one away where there are none.
fn write_alike(
    request: &SheetRequest<'_>,
    all: &[&(Whose<'_>, MadeSheet)],
) -> Result<Option<(PathBuf, usize)>, Failure> {
    let path = request.out.join("alike.html");
    let traces: Vec<&[alike::Trace]> = all
        .iter()
        .map(|(_, made)| made.record.shown().map_or([].as_slice(), |shown| shown.traces.as_slice()))
        .collect();
    let pairs = alike::pairs(&traces);
    if pairs.is_empty() {
        files::take_away(&path)?;
        return Ok(None);
    }
    let shown: Vec<AlikePair> = pairs
        .iter()
        .take(PAIRS)
        .map(|pair| {
            let (one, other) = (&all[pair.hand_ins.0], &all[pair.hand_ins.1]);
            let (first, second) =
                (engraved(&one.0, pair.stretches.0, request), engraved(&other.0, pair.stretches.1, request));
            AlikePair {
                names: (called(&one.0, request), called(&other.0, request)),
                share: pair.share,
                bars: (first.0, second.0),
                pictures: (first.1, second.1),
            }
        })
        .collect();
    let writes =
        shown.iter().flat_map(|pair| [&pair.pictures.0, &pair.pictures.1]).flatten().any(writes_music);
    let words = &request.words[0];
    let html = alike_html(words, request.task, &shown, if writes { music_style_sheet() } else { "" });
    arcata_files::write_whole(&path, said(words, &html).as_bytes())?;
    Ok(Some((path, shown.len())))
}

/// Bars that are engraved of a stretch.
const ENGRAVED: u32 = 4;

/// The first of some bars of a hand-in, engraved, and all of them as they are said.
fn engraved(
    whose: &Whose<'_>,
    stretch: Stretch,
    request: &SheetRequest<'_>,
) -> (String, Option<KeptPicture>) {
    let Stretch { part, first, last } = stretch;
    let Ok((desk, concealed)) = whose.hand_in.bytes().and_then(|bytes| bowed(bytes, request)) else {
        return (format!("{}–{}", first + 1, last + 1), None);
    };
    let score = desk.score();
    let label = |bar: u32| score.bars.get(bar as usize).map_or_else(String::new, |bar| bar.label.clone());
    let bars = if first == last { label(first) } else { format!("{}–{}", label(first), label(last)) };
    // A picture begins a bar before its place: the place is the second bar, and a note of the last one is named.
    let end = last.min(first + ENGRAVED - 1);
    let notes = score.parts.get(part).map_or([].as_slice(), |part| part.notes.as_slice());
    let note = notes.iter().position(|note| note.bar == end).and_then(|note| u32::try_from(note).ok());
    let place = FindingPlace {
        bar: (first + 1).min(end),
        beat: Length::new(1, 1),
        part: Some(part),
        section: String::new(),
        bar_label: String::new(),
        stroke: None,
        notes: note.map(NoteId).into_iter().collect(),
        movement: None,
    };
    // Pictures are drawn of what a review finds; here of what it finds nothing in.
    let finding = Finding::at("", Severity::D, place);
    let wording = request.pictures_wording();
    let drawn = Scenes::new(desk.snapshot(), request.engraver, &wording)
        .narrow()
        .draw(std::slice::from_ref(&finding));
    let kept = drawn.into_iter().next().and_then(|pictures| pictures.now).map(|drawn| KeptPicture {
        svg: concealed.markup(&drawn.svg),
        text: concealed.text(&drawn.text),
        ..drawn.into()
    });
    (bars, kept)
}

/// Whether the class is too small to be broken down in what is shown.
pub(crate) const fn is_small(read: usize) -> bool {
    read < LEAST_GROUP
}
