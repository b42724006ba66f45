//! The page of the class as PDF: one that stays with the teacher, one that may be shown.

use arcata_report::paper::{Board, Face, POINTS_A_MILLIMETRE, PdfError, ReadAs};

use super::class_html::{ClassPage, ClassPageFor};
use super::class_pdf_table::{course, table};
use crate::before::since;
use crate::{ClassMeasure, ClassView, HandInOutcome, KeptPicture, LEAST_GROUP, SaidOnSheet, Words};

/// By definition: sizes, points.
const TITLE: f32 = 15.0;
pub(super) const BODY: f32 = 9.0;
pub(super) const LINE: f32 = 12.5;
/// Rule of thumb: where the bars of the list begin, of the width, and how long the longest is, points.
const BARS: f32 = 0.56;
const LONGEST: f32 = 110.0;
/// Rule of thumb: rules with examples, and the height of a row of them, millimetres.
const WITH_EXAMPLES: usize = 6;
const HIGH: f32 = 34.0;

/// The class as PDF, for the teacher or for anybody who reads it.
///
/// # Errors
/// Only where the library that writes PDF refuses.
pub fn class_pdf(
    words: &Words,
    class: &ClassPage<'_>,
    told: ClassPageFor,
    outlined: &dyn Fn(&KeptPicture) -> Option<String>,
) -> Result<Vec<u8>, PdfError> {
    let view = ClassView::new(class.hand_ins, class.task);
    let title = format!("{}: {}", words.word("class-title"), class.task.title);
    let mut board = Board::new(class.task.sheet.paper, &title, words.language().code())?;
    board.start_section(&words.word("class-title"), &class.task.title);
    let small = told == ClassPageFor::Anybody && view.read < LEAST_GROUP;
    let mut y = head(&mut board, words, &title, (&view, told));
    if small {
        y = paragraph(&mut board, &words.say(&SaidOnSheet::new("class-small").with("least", LEAST_GROUP)), y);
    }
    y = rules(&mut board, words, &view, (small, y));
    if told == ClassPageFor::Teacher {
        y = table(&mut board, words, class, (&view, y));
        y = nothing(&mut board, words, class, y);
        y = since_before(&mut board, words, class, y);
        y = outliers(&mut board, words, &view, y);
    }
    if !small {
        y = course(&mut board, words, &class.course_for(told), y);
        y = middles(&mut board, words, &view, y);
        examples(&mut board, words, &view, y, outlined);
    }
    board.finish()
}

fn head(board: &mut Board, words: &Words, title: &str, (view, told): (&ClassView<'_>, ClassPageFor)) -> f32 {
    let mut y = board.top() + TITLE;
    board.begin(ReadAs::Heading(1));
    let shown = board.clipped(Face::Bold, TITLE, title, board.width());
    board.text(Face::Bold, TITLE, board.left(), y, &shown);
    board.end();
    board.rule(board.left(), board.right(), y + 5.0, 1.2);
    y += LINE + 6.0;
    let whose = if told == ClassPageFor::Teacher { "class-stays" } else { "class-to-show" };
    y = paragraph(board, &words.word(whose), y);
    paragraph(board, &words.say(&SaidOnSheet::new("class-counts").with("read", view.read)), y)
}

fn rules(board: &mut Board, words: &Words, view: &ClassView<'_>, (small, y): (bool, f32)) -> f32 {
    let mut y = heading(board, &words.word("class-rules"), y);
    for row in view.rules.iter().filter(|row| row.met > 0) {
        y = next(board, y, LINE);
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
    let free: Vec<String> =
        view.rules.iter().filter(|row| row.met == 0).map(|row| words.title(&row.rule)).collect();
    if small || free.is_empty() {
        return y;
    }
    let free = SaidOnSheet::new("class-not-met").with("rules", free.join("; "));
    paragraph(board, &words.say(&free), y + 4.0)
}

/// From whom nothing came, what could not be read and why, what came anew.
fn nothing(board: &mut Board, words: &Words, class: &ClassPage<'_>, y: f32) -> f32 {
    let mut lines = Vec::new();
    if !class.nothing_from.is_empty() {
        let names = class.nothing_from.join(", ");
        lines.push(words.say(&SaidOnSheet::new("class-nothing-from").with("names", names)));
    }
    for hand_in in class.hand_ins {
        if let HandInOutcome::Unreadable { why } = &hand_in.record.outcome {
            lines.push(format!("{}: {why}", hand_in.name));
        }
        if hand_in.record.replaced > 0 {
            let replaced = SaidOnSheet::new("class-replaced").with("count", hand_in.record.replaced);
            lines.push(format!("{}: {}", hand_in.name, words.say(&replaced)));
        }
    }
    list(board, &words.word("class-none"), &lines, y)
}

/// What has gone since the task before, what is new, what is back again, by hand-in.
fn since_before(board: &mut Board, words: &Words, class: &ClassPage<'_>, y: f32) -> f32 {
    let told = |(key, rules): (&str, &Vec<String>)| {
        let titles: Vec<String> = rules.iter().map(|rule| words.title(rule)).collect();
        (!titles.is_empty()).then(|| format!("{}: {}", words.word(key), titles.join("; ")))
    };
    let mut lines = Vec::new();
    for hand_in in class.hand_ins {
        let Some(since) = hand_in.record.shown().and_then(|shown| since(&hand_in.record.earlier, shown))
        else {
            continue;
        };
        let all = [("class-gone", &since.gone), ("class-new", &since.new), ("class-back", &since.back)];
        let all: Vec<String> = all.into_iter().filter_map(told).collect();
        if !all.is_empty() {
            lines.push(format!("{} · {}", hand_in.name, all.join(". ")));
        }
    }
    list(board, &words.word("class-since"), &lines, y)
}

fn outliers(board: &mut Board, words: &Words, view: &ClassView<'_>, y: f32) -> f32 {
    let mut lines = Vec::new();
    for outlier in &view.outliers {
        let ends = [("class-lowest", &outlier.low), ("class-highest", &outlier.high)];
        let ends = ends.into_iter().filter(|(_, values)| !values.is_empty()).map(|(key, values)| {
            let values = values
                .iter()
                .map(|(hand_in, value)| format!("{} {}", hand_in.name, outlier.measure.said(*value, words)));
            format!("{} {}", words.word(key), values.collect::<Vec<_>>().join(", "))
        });
        let ends: Vec<String> = ends.collect();
        lines.push(format!("{}: {}", words.word(outlier.measure.key()), ends.join(". ")));
    }
    list(board, &words.word("class-outliers"), &lines, y)
}

/// The middle of the class by each measure, and between what half of it lies.
fn middles(board: &mut Board, words: &Words, view: &ClassView<'_>, y: f32) -> f32 {
    let (middle_word, half_word) = (words.word("class-middle"), words.word("class-half"));
    let line = |(measure, (low, middle, high)): (&ClassMeasure, &(i64, i64, i64))| {
        let [low, middle, high] = [low, middle, high].map(|value| measure.said(*value, words));
        format!("{}: {middle_word} {middle}, {half_word} {low} – {high}", words.word(measure.key()))
    };
    let lines: Vec<String> = view.middles.iter().map(line).collect();
    list(board, &words.word("class-middles"), &lines, y)
}

fn list(board: &mut Board, title: &str, lines: &[String], y: f32) -> f32 {
    if lines.is_empty() {
        return y;
    }
    let y = heading(board, title, y);
    lines.iter().fold(y, |y, line| paragraph(board, line, y))
}

pub(super) fn ratio(part: usize, whole: usize) -> f32 {
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

pub(super) fn heading(board: &mut Board, text: &str, y: f32) -> f32 {
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
pub(super) fn next(board: &mut Board, y: f32, step: f32) -> f32 {
    if y + step <= board.bottom() {
        return y + step;
    }
    board.start_page();
    board.top() + step
}
