//! A sheet as PDF: one page, text that can be searched, tags for those who have it read out.
//!
//! The same sheet is laid out again and again with less of each thing until it fits: smaller pictures first, then fewer lines.

use arcata_report::paper::{Board, Face, POINTS_A_MILLIMETRE, Paper, PdfError, ReadAs};

use super::sheet_fit::{FITS, KeepOnSheet, SheetFit};
use super::sheet_view::{SheetPassageView, StudentSheetView, Tongue};
use crate::KeptPicture;

/// Between two pictures, points.
const GUTTER: f32 = 14.0;
/// Where the text of a passage begins behind its label, points.
const LABEL: f32 = 84.0;
/// What can be ticked by hand begins with this sign, which the font does not have.
const TICK: &str = "☐ ";
/// And what was ticked with this one.
const TICKED: &str = "☑ ";

/// A piece of the sheet with its height.
enum SheetBlock<'a> {
    Head,
    Heading(String),
    /// Where, what it is called, how much it weighs.
    Passage(&'a SheetPassageView<'a>),
    /// Lines over the whole width.
    Wide(Vec<String>),
    /// Label, lines behind it.
    Text(String, Vec<String>),
    /// Something in a list; something to tick.
    Item(SheetMark, Vec<String>),
    Pictures(Vec<PlacedPicture<'a>>),
    Gap(f32),
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum SheetMark {
    Dot,
    Box,
    Ticked,
}

/// A picture in its size on the page, points.
struct PlacedPicture<'a> {
    caption: &'a str,
    kept: &'a KeptPicture,
    width: f32,
    height: f32,
}

/// A sheet as one page of PDF. `outlined` gives a picture as SVG that needs no font; a picture that it gives none for is left
/// out.
///
/// # Errors
/// Only where the library that writes PDF refuses.
pub fn sheet_pdf(
    view: &StudentSheetView<'_>,
    paper: Paper,
    outlined: &dyn Fn(&KeptPicture) -> Option<String>,
) -> Result<Vec<u8>, PdfError> {
    let mut board = Board::new(paper, &format!("{}: {}", view.title, view.who), view.language)?;
    board.start_section(&view.who, &view.title);
    let (blocks, fit) = fitted(&board, view);
    let mut y = board.top();
    for block in &blocks {
        // Only where even the least does not fit: what is left then stands on the HTML page.
        if y + block.height(fit) > board.bottom() {
            break;
        }
        block.draw(&mut board, view, fit, y, outlined);
        y += block.height(fit);
    }
    board.finish()
}

/// The most of everything that has room on one page.
fn fitted<'a>(board: &Board, view: &'a StudentSheetView<'a>) -> (Vec<SheetBlock<'a>>, SheetFit) {
    let room = board.bottom() - board.top();
    let least = FITS[FITS.len() - 1];
    let fits = |fit: &SheetFit| {
        blocks(board, view, *fit).iter().map(|block| block.height(*fit)).sum::<f32>() <= room
    };
    let fit = FITS.into_iter().find(fits).unwrap_or(least);
    (blocks(board, view, fit), fit)
}

/// How much of everything has room on one page; the HTML page is printed by it.
pub(super) fn fit_of(view: &StudentSheetView<'_>, paper: Paper) -> SheetFit {
    let board = Board::new(paper, &view.title, view.language);
    board.map_or(FITS[FITS.len() - 1], |board| fitted(&board, view).1)
}

fn line(fit: SheetFit) -> f32 {
    fit.body * 1.3
}

fn blocks<'a>(board: &Board, view: &'a StudentSheetView<'a>, fit: SheetFit) -> Vec<SheetBlock<'a>> {
    let wrapped = |text: &str, room: f32, most: usize| {
        let mut lines = board.wrapped(Face::Regular, fit.body, text, room);
        if lines.len() > most {
            lines.truncate(most);
            if let Some(last) = lines.last_mut() {
                *last = board.clipped(Face::Regular, fit.body, &format!("{last} …"), room);
                if !last.ends_with('…') {
                    last.push('…');
                }
            }
        }
        lines
    };
    let item = |text: &str, most: usize| {
        let ticked = text.strip_prefix(TICKED).map(|text| (SheetMark::Ticked, text));
        let (mark, text) = ticked
            .or(text.strip_prefix(TICK).map(|text| (SheetMark::Box, text)))
            .unwrap_or((SheetMark::Dot, text));
        SheetBlock::Item(mark, wrapped(text, board.width() - 12.0, most))
    };
    let mut blocks = vec![SheetBlock::Head];
    if let Some(say) = &view.say {
        blocks.push(SheetBlock::Wide(wrapped(say, board.width(), fit.lines)));
    }
    blocks.push(SheetBlock::Heading(view.works.0.clone()));
    blocks.extend(view.works.1.iter().map(|work| item(work, fit.lines)));
    blocks.push(SheetBlock::Heading(view.heading.0.clone()));
    if let Some(nothing) = &view.heading.1 {
        blocks.push(SheetBlock::Wide(wrapped(nothing, board.width(), fit.lines)));
    }
    for passage in &view.passages {
        blocks.push(SheetBlock::Passage(passage));
        let pictures = pictures(board, passage, fit);
        if !pictures.is_empty() {
            blocks.push(SheetBlock::Pictures(pictures));
        }
        for (index, (label, text, tongue)) in passage.says.iter().enumerate() {
            if fit.why == KeepOnSheet::No && is_reason((index, label), *tongue) {
                continue;
            }
            blocks.push(SheetBlock::Text(label.clone(), wrapped(text, board.width() - LABEL, fit.lines)));
        }
        blocks.push(SheetBlock::Gap(4.0));
    }
    let mut rest: Vec<String> = view.rest.1.iter().take(fit.rest).cloned().collect();
    if let Some(last) = rest.last_mut().filter(|_| view.rest.1.len() > fit.rest) {
        last.push_str("; …");
    }
    if !rest.is_empty() {
        blocks.push(SheetBlock::Heading(view.rest.0.clone()));
        blocks.extend(rest.iter().map(|text| item(text, 1.max(fit.lines / 2))));
    }
    for (heading, lines) in &view.further {
        blocks.push(SheetBlock::Heading(heading.clone()));
        blocks.extend(lines.iter().map(|text| item(text, fit.lines.min(3))));
    }
    blocks.push(SheetBlock::Gap(5.0));
    for text in &view.foot {
        blocks.push(SheetBlock::Wide(wrapped(text, board.width(), 4)));
    }
    blocks
}

/// Whether a text of a passage is its reason: behind what happens, before what to try and the question.
pub(super) fn is_reason((index, label): (usize, &str), tongue: Tongue) -> bool {
    let asks = tongue == Tongue::Asks;
    let first = index == 0 || label.is_empty();
    let tries = tongue == Tongue::Review;
    !asks && !first && !tries
}

/// The pictures of a passage, beside each other.
fn pictures<'a>(board: &Board, passage: &'a SheetPassageView<'a>, fit: SheetFit) -> Vec<PlacedPicture<'a>> {
    let repair = passage.repair.iter().filter(|_| fit.repair == KeepOnSheet::Yes);
    let all = passage.now.iter().chain(repair);
    let column = (board.width() - GUTTER) / 2.0 * fit.pictures / 100.0;
    all.map(|(caption, kept)| {
        #[expect(clippy::cast_possible_truncation, reason = "points of a page")]
        let (wide, high) =
            (kept.width as f32 * POINTS_A_MILLIMETRE, kept.height as f32 * POINTS_A_MILLIMETRE);
        let scale = (column / wide.max(1.0)).min(fit.high * POINTS_A_MILLIMETRE / high.max(1.0)).min(1.0);
        PlacedPicture { caption, kept, width: wide * scale, height: high * scale }
    })
    .collect()
}

impl SheetBlock<'_> {
    fn height(&self, fit: SheetFit) -> f32 {
        let lines = |count: usize| f32::from(u16::try_from(count).unwrap_or(u16::MAX)) * line(fit);
        match self {
            Self::Head => fit.body * 1.6 + 12.0,
            Self::Heading(_) => line(fit) + 9.0,
            Self::Passage(_) => line(fit) + 3.0,
            Self::Wide(text) | Self::Text(_, text) | Self::Item(_, text) => lines(text.len()),
            Self::Pictures(pictures) => {
                pictures.iter().map(|placed| placed.height).fold(0.0, f32::max) + line(fit) + 3.0
            }
            Self::Gap(gap) => *gap,
        }
    }

    fn draw(
        &self,
        board: &mut Board,
        view: &StudentSheetView<'_>,
        fit: SheetFit,
        top: f32,
        outlined: &dyn Fn(&KeptPicture) -> Option<String>,
    ) {
        let base = top + fit.body;
        match self {
            Self::Head => head(board, view, fit, top),
            Self::Heading(text) => {
                board.begin(ReadAs::Heading(2));
                board.text(Face::Bold, fit.body + 1.0, board.left(), base + 5.0, text);
                board.end();
                board.rule(board.left(), board.right(), base + 8.0, 0.4);
            }
            Self::Passage(passage) => passage_head(board, passage, fit, base),
            Self::Wide(lines) => {
                board.begin(ReadAs::Paragraph);
                lines_at(board, fit, board.left(), base, lines);
                board.end();
            }
            Self::Text(label, lines) => {
                board.begin(ReadAs::Paragraph);
                let shown = board.clipped(Face::Regular, fit.body - 0.6, label, LABEL - 4.0);
                board.text(Face::Regular, fit.body - 0.6, board.left(), base, &shown);
                lines_at(board, fit, board.left() + LABEL, base, lines);
                board.end();
            }
            Self::Item(mark, lines) => {
                board.begin(match mark {
                    SheetMark::Dot => ReadAs::Paragraph,
                    SheetMark::Ticked => ReadAs::Said(format!("{TICKED}{}", lines.join(" "))),
                    SheetMark::Box => ReadAs::Said(format!("{TICK}{}", lines.join(" "))),
                });
                match mark {
                    SheetMark::Dot => board.text(Face::Regular, fit.body, board.left() + 2.0, base, "•"),
                    SheetMark::Ticked => board.boxed(Face::Bold, 6.0, board.left(), base, "×"),
                    SheetMark::Box => board.boxed(Face::Regular, 4.0, board.left(), base - 1.0, ""),
                }
                lines_at(board, fit, board.left() + 12.0, base, lines);
                board.end();
            }
            Self::Pictures(pictures) => {
                let mut x = board.left();
                for PlacedPicture { caption, kept, width, height } in pictures {
                    board.begin(ReadAs::Paragraph);
                    board.text(Face::Regular, fit.body - 1.0, x, base, caption);
                    board.end();
                    if let Some(svg) = outlined(kept) {
                        board.begin(ReadAs::Picture(kept.text.clone()));
                        let size = (width / POINTS_A_MILLIMETRE, height / POINTS_A_MILLIMETRE);
                        board.picture(&svg, size, x, top + line(fit));
                        board.end();
                    }
                    x += (board.width() - GUTTER) / 2.0 + GUTTER;
                }
            }
            Self::Gap(_) => {}
        }
    }
}

fn lines_at(board: &mut Board, fit: SheetFit, x: f32, base: f32, lines: &[String]) {
    let mut y = base;
    for text in lines {
        board.text(Face::Regular, fit.body, x, y, text);
        y += line(fit);
    }
}

fn head(board: &mut Board, view: &StudentSheetView<'_>, fit: SheetFit, top: f32) {
    let size = fit.body * 1.6;
    let base = top + size;
    let due = view.due.as_ref().map_or(String::new(), |due| format!(" · {due}"));
    let beside = format!("{}{due}", view.who);
    let beside = board.clipped(Face::Bold, fit.body, &beside, board.width() * 0.5);
    let room = board.width() - board.measure(Face::Bold, fit.body, &beside) - GUTTER;
    // A long title is set smaller before it is cut.
    let narrower = [1.6, 1.4, 1.2].map(|times| fit.body * times);
    let fits = |size: &f32| board.measure(Face::Bold, *size, &view.title) <= room;
    let size = narrower.into_iter().find(fits).unwrap_or(fit.body * 1.2);
    let title = board.clipped(Face::Bold, size, &view.title, room);
    board.begin(ReadAs::Heading(1));
    board.text(Face::Bold, size, board.left(), base, &title);
    board.end();
    board.begin(ReadAs::Paragraph);
    board.text_right(Face::Bold, fit.body, board.right(), base, &beside);
    board.end();
    board.rule(board.left(), board.right(), base + 4.0, 1.2);
}

/// Where, what it is called, how much it weighs, on one line.
fn passage_head(board: &mut Board, passage: &SheetPassageView<'_>, fit: SheetFit, base: f32) {
    board.begin(ReadAs::Heading(3));
    let place = board.clipped(Face::Bold, fit.body, &passage.place, board.width() * 0.45);
    board.text(Face::Bold, fit.body, board.left(), base, &place);
    let x = board.left() + board.measure(Face::Bold, fit.body, &place) + 8.0;
    let weight = board.clipped(Face::Regular, fit.body - 0.6, &passage.weight, board.width() * 0.3);
    let room = board.right() - board.measure(Face::Regular, fit.body, &weight) - 8.0 - x;
    let title = board.clipped(Face::Regular, fit.body, &passage.title, room);
    board.text(Face::Regular, fit.body, x, base, &title);
    board.text_right(Face::Regular, fit.body - 0.6, board.right(), base, &weight);
    board.end();
}
