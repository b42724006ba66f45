//! The change sheet as PDF, for A4 and Letter.

use arcata_languages::Saying;

use super::signs;
use super::text::{COLUMNS, summary};
use super::view::{BarChanges, LeftList, SectionSheet, SheetView, key, time_words};
use crate::paper::{Board, Face, POINTS_A_MILLIMETRE, Paper, PdfError};

/// Room between bar blocks' columns, points.
const GUTTER: f32 = 9.0 * POINTS_A_MILLIMETRE;
/// Where beats, signs and words begin in a column, points from its left.
const BEAT: f32 = 40.0;
const SIGN: f32 = 76.0;
const WORDS: f32 = 92.0;
/// Sizes of letters, points.
const SMALL: f32 = 9.0;
const BODY: f32 = 10.5;
const BAR: f32 = 13.0;
const NAME: f32 = 20.0;
/// White above and below engraved music.
const MUSIC: f32 = 8.0;
/// From one line to the next.
const LINE: f32 = 14.5;

/// The sheet as PDF: a page or more a section, then the librarian's.
///
/// # Errors
///
/// Only where the library that writes PDF refuses.
pub fn sheet_pdf(view: &SheetView, paper: Paper) -> Result<Vec<u8>, PdfError> {
    let mut board = Board::new(
        paper,
        &format!("{}: {}", view.work, view.wording.word("sheet-title")),
        view.wording.language.code(),
    )?;
    for section in &view.sections {
        section_pages(&mut board, view, section);
    }
    librarian_pages(&mut board, view);
    board.finish()
}

/// The head of a page; gives where the page goes on.
fn head(board: &mut Board, view: &SheetView, name: &str, count: &str) -> f32 {
    let top = board.top() + NAME;
    let room = board.width() - board.measure(Face::Bold, BODY, count) - GUTTER;
    let name = board.clipped(Face::Bold, NAME, name, room);
    board.text(Face::Bold, NAME, board.left(), top, &name);
    board.text_right(Face::Bold, BODY, board.right(), top, count);
    board.rule(board.left(), board.right(), top + 5.0, 1.4);
    let by = view.composer.as_ref().map_or(String::new(), |composer| format!(", {composer}"));
    let mut y = top + 19.0;
    for line in [
        format!("{}{by}", view.work),
        format!("{} {}", view.wording.word("sheet-head-write"), view.after.words()),
        format!("{} {}", view.wording.word("sheet-head-so-far"), view.before_words()),
    ] {
        for part in board.wrapped(Face::Regular, SMALL, &line, board.width()) {
            board.text(Face::Regular, SMALL, board.left(), y, &part);
            y += 12.0;
        }
    }
    y + 6.0
}

fn section_pages(board: &mut Board, view: &SheetView, section: &SectionSheet) {
    let count = view.count(section);
    board.start_section(&section.name, &view.work);
    let mut top = head(board, view, &section.name, &count);
    board.text(Face::Regular, SMALL, board.left(), top, &view.wording.word(key(section)));
    top += 8.0;
    let column = (board.width() - GUTTER) / 2.0;
    let blocks: Vec<BarBlock<'_>> =
        section.bars.iter().map(|bar| BarBlock::new(board, bar, column, view)).collect();
    let mut rest = blocks.as_slice();
    loop {
        let taken = columns(rest, board.bottom() - top);
        let mut left = board.left();
        let mut from = 0;
        for upto in taken {
            let mut y = top;
            for block in &rest[from..upto] {
                block.draw(board, left, y, column);
                y += block.height;
            }
            from = upto;
            left += column + GUTTER;
        }
        rest = &rest[from..];
        if rest.is_empty() {
            return;
        }
        board.start_page();
        top = head(
            board,
            view,
            &view.wording.say(&Saying::new("sheet-continued").quoting("name", &section.name)),
            &count,
        );
    }
}

/// How many blocks go into the first column, and how many into both: full columns, or two of about one
/// height on the last page.
fn columns(blocks: &[BarBlock<'_>], room: f32) -> [usize; 2] {
    let fill = |from: usize, room: f32| {
        let mut height = 0.0;
        let count = blocks[from..]
            .iter()
            .take_while(|block| {
                height += block.height;
                height <= room
            })
            .count();
        // A bar that is higher than the page is drawn all the same.
        from + count.max(usize::from(from < blocks.len()))
    };
    let first = fill(0, room);
    let both = fill(first, room);
    if both < blocks.len() || blocks.len() < 8 {
        return [first, both];
    }
    let half = blocks.iter().map(|block| block.height).sum::<f32>() / 2.0;
    let mut height = 0.0;
    let even = blocks.iter().take_while(|block| {
        let before = height;
        height += block.height;
        before < half
    });
    [even.count().min(first), blocks.len()]
}

/// What is said of one bar, broken into lines.
struct BarBlock<'v> {
    bar: &'v BarChanges,
    /// For each change its lines.
    lines: Vec<Vec<String>>,
    height: f32,
}

impl<'v> BarBlock<'v> {
    fn new(board: &Board, bar: &'v BarChanges, column: f32, view: &SheetView) -> Self {
        let lines: Vec<Vec<String>> = bar
            .changes
            .iter()
            .map(|change| {
                let mut text = change.words.clone();
                if let Some(which) = &change.which {
                    text = format!("{text}, {which}");
                }
                if let Some(was) = &change.was {
                    text = format!("{text} {}", view.was(was));
                }
                board.wrapped(Face::Regular, BODY, &text, column - WORDS)
            })
            .collect();
        let count: usize = lines.iter().map(Vec::len).sum();
        let movement = if bar.movement.is_some() { LINE + 4.0 } else { 0.0 };
        let rehearsal = if bar.rehearsal.is_some() { LINE + 2.0 } else { 0.0 };
        let music = bar.music.as_ref().map_or(0.0, |music| music.height * POINTS_A_MILLIMETRE + MUSIC);
        Self { bar, lines, height: points(count) * LINE + 5.0 + movement + rehearsal + music }
    }

    fn draw(&self, board: &mut Board, left: f32, top: f32, column: f32) {
        let mut y = top + LINE - 2.0;
        if let Some(movement) = &self.bar.movement {
            let shown = board.clipped(Face::Bold, BODY, movement, column);
            board.text(Face::Bold, BODY, left, y, &shown);
            y += LINE + 4.0;
        }
        if let Some(rehearsal) = &self.bar.rehearsal {
            let shown = board.clipped(Face::Bold, SMALL, rehearsal, column);
            board.boxed(Face::Bold, SMALL, left, y, &shown);
            y += LINE + 2.0;
        }
        let label = board.clipped(Face::Bold, BAR, &self.bar.bar, BEAT - 4.0);
        board.text(Face::Bold, BAR, left, y, &label);
        for ((change, beat), lines) in self.bar.with_beats().zip(&self.lines) {
            board.text(Face::Regular, BODY, left + BEAT, y, beat);
            if let Some(sign) = change.sign {
                board.outline(signs::outline(sign), left + SIGN, y - 8.6, 1.0);
            }
            for line in lines {
                board.text(Face::Regular, BODY, left + WORDS, y, line);
                y += LINE;
            }
        }
        if let Some(music) = &self.bar.music {
            let foot = top + self.height - MUSIC / 2.0 - 2.0;
            board.picture(
                &music.svg,
                (music.width, music.height),
                left,
                foot - music.height * POINTS_A_MILLIMETRE,
            );
        }
        board.rule(left, left + column, top + self.height - 1.0, 0.4);
    }
}

/// A small count as a length in points.
fn points(count: usize) -> f32 {
    f32::from(u16::try_from(count).unwrap_or(u16::MAX))
}

fn librarian_pages(board: &mut Board, view: &SheetView) {
    let librarian = &view.librarian;
    let heading = view.wording.word("sheet-librarian");
    board.start_section(&heading, &view.work);
    let mut y = head(board, view, &heading, &time_words(librarian.seconds)) + LINE;
    let right = |column: u16| board.left() + board.width() * (0.44 + 0.112 * f32::from(column));
    let ends = [right(0), right(1), right(2), right(3), board.right()];
    let row = |board: &mut Board, face, y: f32, name: &str, cells: &[String]| {
        let name = board.clipped(face, BODY, name, board.width() * 0.33);
        board.text(face, BODY, board.left(), y, &name);
        for (end, cell) in ends.iter().zip(cells) {
            board.text_right(face, BODY, *end, y, cell);
        }
        board.rule(board.left(), board.right(), y + 4.0, 0.4);
    };
    let [section, heads @ ..] = COLUMNS.map(|key| view.wording.word(key));
    row(board, Face::Bold, y, &section, &heads);
    for section in &librarian.sections {
        y = next_line(board, y, LINE + 2.0);
        let cells = [
            section.to_write.to_string(),
            section.to_take_off.to_string(),
            section.stands.to_string(),
            section.marks.to_string(),
            time_words(section.seconds),
        ];
        row(board, Face::Regular, y, &section.name, &cells);
    }
    y += LINE;
    for line in summary(librarian, &view.wording) {
        for part in board.wrapped(Face::Regular, BODY, &line, board.width()) {
            y = next_line(board, y, LINE);
            board.text(Face::Regular, BODY, board.left(), y, &part);
        }
    }
    for list in librarian.lists(&view.wording) {
        y = left_list(board, &list, y);
    }
}

/// A list of what is left to do by hand; gives where the page goes on.
fn left_list(board: &mut Board, list: &LeftList, y: f32) -> f32 {
    const INDENT: f32 = 14.0;
    // A heading does not stand alone at the foot of a page.
    let mut y = if y + 3.0 * LINE > board.bottom() { board.bottom() } else { y };
    y = next_line(board, y, 2.0 * LINE);
    board.text(Face::Bold, BAR, board.left(), y, &list.heading);
    for (place, about) in &list.items {
        let line = format!("{place}: {about}");
        let lines = board.wrapped(Face::Regular, BODY, &line, board.width() - INDENT);
        for (index, part) in lines.iter().enumerate() {
            y = next_line(board, y, LINE);
            let indent = if index == 0 { 0.0 } else { INDENT };
            board.text(Face::Regular, BODY, board.left() + indent, y, part);
        }
    }
    y
}

/// One line further down, on a new page where this one is full.
fn next_line(board: &mut Board, y: f32, step: f32) -> f32 {
    if y + step <= board.bottom() {
        return y + step;
    }
    board.start_page();
    board.top() + LINE
}
