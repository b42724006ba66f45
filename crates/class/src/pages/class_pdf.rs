//! The page of the class that may be shown, as PDF.

use arcata_report::paper::{Board, Face, POINTS_A_MILLIMETRE, PdfError, ReadAs};

use super::class_html::ClassPage;
use crate::{ClassView, KeptPicture, LEAST_GROUP, SaidOnSheet, Words};

/// Sizes, points.
const TITLE: f32 = 15.0;
const BODY: f32 = 9.0;
const LINE: f32 = 12.5;
/// Where the bars of the list begin, and how long the longest is.
const BARS: f32 = 0.56;
const LONGEST: f32 = 110.0;
/// Rules with examples, and the height of a row of them.
const WITH_EXAMPLES: usize = 6;
const HIGH: f32 = 34.0;

/// The class as PDF: what may be shown, whoever reads it.
///
/// # Errors
/// Only where the library that writes PDF refuses.
pub fn class_pdf(
    words: &Words,
    class: &ClassPage<'_>,
    outlined: &dyn Fn(&KeptPicture) -> Option<String>,
) -> Result<Vec<u8>, PdfError> {
    let view = ClassView::new(class.hand_ins, class.task);
    let title = format!("{}: {}", words.word("class-title"), class.task.title);
    let mut board = Board::new(class.task.sheet.paper, &title, words.language().code())?;
    board.start_section(&words.word("class-title"), &class.task.title);
    let mut y = board.top() + TITLE;
    board.begin(ReadAs::Heading(1));
    let shown = board.clipped(Face::Bold, TITLE, &title, board.width());
    board.text(Face::Bold, TITLE, board.left(), y, &shown);
    board.end();
    board.rule(board.left(), board.right(), y + 5.0, 1.2);
    y += LINE + 6.0;
    let counts = words.say(&SaidOnSheet::new("class-counts").with("read", view.read));
    y = paragraph(&mut board, &counts, y);
    let small = view.read < LEAST_GROUP;
    if small {
        y = paragraph(&mut board, &words.say(&SaidOnSheet::new("class-small").with("least", LEAST_GROUP)), y);
    }
    y = heading(&mut board, &words.word("class-rules"), y);
    for row in view.rules.iter().filter(|row| row.met > 0) {
        y = next(&mut board, y, LINE);
        board.begin(ReadAs::Paragraph);
        let name = board.clipped(Face::Regular, BODY, &words.title(&row.rule), board.width() * BARS - 8.0);
        board.text(Face::Regular, BODY, board.left(), y, &name);
        if !small {
            let x = board.left() + board.width() * BARS;
            let share = ratio(row.met, view.read) * LONGEST;
            let of = words.say(&SaidOnSheet::new("class-of").with("met", row.met).with("read", view.read));
            board.text(Face::Regular, BODY, x + LONGEST + 8.0, y, &of);
            board.end();
            board.rule(x, x + share.max(0.1), y - 3.0, 6.0);
        }
        board.end();
    }
    if !small {
        examples(&mut board, words, &view, y, outlined);
    }
    board.finish()
}

fn ratio(part: usize, whole: usize) -> f32 {
    let small = |count: usize| f32::from(u16::try_from(count).unwrap_or(u16::MAX));
    small(part) / small(whole.max(1))
}

fn examples(
    board: &mut Board,
    words: &Words,
    view: &ClassView<'_>,
    mut y: f32,
    outlined: &dyn Fn(&KeptPicture) -> Option<String>,
) {
    let with: Vec<_> = view.rules.iter().filter(|row| !row.examples.is_empty()).take(WITH_EXAMPLES).collect();
    if with.is_empty() {
        return;
    }
    let column = (board.width() - 16.0) / 3.0;
    let placed = |kept: &'_ KeptPicture| {
        #[expect(clippy::cast_possible_truncation, reason = "points of a page")]
        let (wide, tall) = (kept.width as f32, kept.height as f32);
        let scale = (column / POINTS_A_MILLIMETRE / wide.max(1.0)).min(HIGH / tall.max(1.0)).min(1.0);
        (wide * scale, tall * scale)
    };
    y = next(board, y, LINE);
    for (index, row) in with.into_iter().enumerate() {
        let pictures: Vec<&KeptPicture> =
            row.examples.iter().filter_map(|passage| passage.now.as_ref()).collect();
        let high = pictures.iter().map(|kept| placed(kept).1).fold(0.0, f32::max) * POINTS_A_MILLIMETRE;
        // The heading stays with its pictures, and the first one with the heading of all.
        let above = if index == 0 { 3.0 * LINE } else { LINE };
        y = next(board, y, above + high + LINE) - above - high - LINE;
        if index == 0 {
            y = heading(board, &words.word("class-examples"), y);
        }
        y += LINE;
        board.begin(ReadAs::Heading(3));
        board.text(Face::Bold, BODY, board.left(), y, &words.title(&row.rule));
        board.end();
        let mut x = board.left();
        for kept in pictures {
            if let Some(svg) = outlined(kept) {
                board.begin(ReadAs::Picture(kept.text.clone()));
                board.picture(&svg, placed(kept), x, y + 4.0);
                board.end();
            }
            x += column + 8.0;
        }
        y += high + LINE;
    }
}

fn heading(board: &mut Board, text: &str, y: f32) -> f32 {
    let y = next(board, y, 2.0 * LINE);
    board.begin(ReadAs::Heading(2));
    board.text(Face::Bold, BODY + 1.5, board.left(), y, text);
    board.end();
    y + 3.0
}

fn paragraph(board: &mut Board, text: &str, mut y: f32) -> f32 {
    board.begin(ReadAs::Paragraph);
    for line in board.wrapped(Face::Regular, BODY, text, board.width()) {
        y = next(board, y, LINE);
        board.text(Face::Regular, BODY, board.left(), y, &line);
    }
    board.end();
    y
}

/// Further down, on a new page where this one is full.
fn next(board: &mut Board, y: f32, step: f32) -> f32 {
    if y + step <= board.bottom() {
        return y + step;
    }
    board.start_page();
    board.top() + step
}
