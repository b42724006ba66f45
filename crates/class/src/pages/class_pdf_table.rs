//! The table of hand-ins by rules, and the class's way through its tasks, on paper.

use arcata_report::paper::{Board, Face, ReadAs};

use super::class_html::ClassPage;
use super::class_pdf::{BODY, LINE, heading, next, ratio};
use super::course::course_rows;
use crate::before::TaskBefore;
use crate::{ClassView, Shown, Words};

/// Rule of thumb: room for the name of a hand-in, points.
const NAME: f32 = 112.0;
/// Rule of thumb: width of a column, height of a row, size of its letters, points.
const COLUMN: f32 = 15.0;
const ROW: f32 = 11.5;
const SMALL: f32 = 7.6;
/// Rule of thumb: room for the names of rules over their columns, points.
const HEAD: f32 = 172.0;
/// Rule of thumb: rows that stay together with the head.
const TOGETHER: f32 = 6.0;
/// Rule of thumb: room for the name of a rule in the course, for a task, and the longest bar, points.
const RULE: f32 = 190.0;
const TASK: f32 = 78.0;
const BAR: f32 = 44.0;

/// Rows of hand-ins, columns of rules; where there are more columns than the paper is wide, the table goes on below.
pub(super) fn table(
    board: &mut Board,
    words: &Words,
    class: &ClassPage<'_>,
    (view, y): (&ClassView<'_>, f32),
) -> f32 {
    let rules: Vec<&str> = view.rules.iter().filter(|row| row.met > 0).map(|row| row.rule.as_str()).collect();
    let rows: Vec<(&str, &Shown)> = class
        .hand_ins
        .iter()
        .filter_map(|hand_in| Some((hand_in.name.as_str(), hand_in.record.shown()?)))
        .collect();
    if rules.is_empty() || rows.is_empty() {
        return y;
    }
    let fit = columns(board.width());
    // The heading stays with its table.
    let high = 2.0 * LINE + HEAD + TOGETHER * ROW;
    let y = next(board, y, high) - high;
    let mut y = heading(board, &words.word("class-table"), y);
    for (part, rules) in rules.chunks(fit).enumerate() {
        y = next(board, y, HEAD + TOGETHER * ROW) - TOGETHER * ROW;
        head(board, words, rules, y);
        // Where the table goes on with further columns, only those who have something in them.
        let met = |shown: &Shown| rules.iter().any(|rule| shown.met.contains_key(*rule));
        let rows = rows.iter().filter(|(_, shown)| part == 0 || met(shown));
        for (index, (name, shown)) in rows.enumerate() {
            if y + ROW > board.bottom() {
                board.start_page();
                y = board.top() + HEAD;
                head(board, words, rules, y);
            }
            y += ROW;
            row(board, words, (name, shown, rules), y);
            // Every fifth line leads the eye.
            let weight = if (index + 1) % 5 == 0 { 0.6 } else { 0.2 };
            board.rule(board.left(), board.left() + NAME + COLUMN * width(rules.len()), y + 2.5, weight);
        }
        y += LINE;
    }
    y
}

/// How many columns have room.
fn columns(width: f32) -> usize {
    let mut count = 1;
    while NAME + COLUMN * self::width(count + 1) <= width {
        count += 1;
    }
    count
}

fn width(count: usize) -> f32 {
    f32::from(u16::try_from(count).unwrap_or(u16::MAX))
}

fn head(board: &mut Board, words: &Words, rules: &[&str], y: f32) {
    for (index, rule) in rules.iter().enumerate() {
        let x = board.left() + NAME + COLUMN * width(index);
        let title = board.clipped(Face::Regular, SMALL, &words.title(rule), HEAD - 6.0);
        board.begin(ReadAs::Paragraph);
        board.text_rising(Face::Regular, SMALL, x + COLUMN * 0.66, y - 2.0, &title);
        board.end();
    }
    board.rule(board.left(), board.left() + NAME + COLUMN * width(rules.len()), y + 1.0, 0.8);
}

/// Read out it is a sentence: the name, then each rule that was met with its number.
fn row(board: &mut Board, words: &Words, (name, shown, rules): (&str, &Shown, &[&str]), y: f32) {
    let met = |rule: &&str| shown.met.get(*rule).map(|count| format!("{}: {count}", words.title(rule)));
    let told: Vec<String> = rules.iter().filter_map(met).collect();
    board.begin(ReadAs::Said(format!("{name}. {}", told.join("; "))));
    let name = board.clipped(Face::Regular, BODY, name, NAME - 6.0);
    board.text(Face::Regular, BODY, board.left(), y, &name);
    for (index, rule) in rules.iter().enumerate() {
        let x = board.left() + NAME + COLUMN * (width(index) + 1.0) - 3.0;
        match shown.met.get(*rule) {
            Some(count) => board.text_right(Face::Bold, BODY, x, y, &count.to_string()),
            None => board.text_right(Face::Regular, BODY, x - 1.0, y, "·"),
        }
    }
    board.end();
}

/// For each rule the share of hand-ins that met it, task by task; the last tasks, where there are more than the paper is wide.
pub(super) fn course(board: &mut Board, words: &Words, stages: &[TaskBefore], y: f32) -> f32 {
    if stages.len() < 2 {
        return y;
    }
    let mut fit = 1;
    while RULE + TASK * width(fit + 1) <= board.width() {
        fit += 1;
    }
    let stages = &stages[stages.len().saturating_sub(fit)..];
    let high = 4.0 * LINE;
    let y = next(board, y, high) - high;
    let y = heading(board, &words.word("class-course"), y);
    let mut y = next_line(board, y);
    board.begin(ReadAs::Paragraph);
    for (column, stage) in stages.iter().enumerate() {
        let title = board.clipped(Face::Regular, SMALL, &stage.task, TASK - 6.0);
        board.text(Face::Regular, SMALL, board.left() + RULE + TASK * width(column), y, &title);
    }
    board.end();
    for (rule, shares) in course_rows(stages) {
        y = next_line(board, y);
        board.begin(ReadAs::Paragraph);
        let title = board.clipped(Face::Regular, BODY, &words.title(rule), RULE - 8.0);
        board.text(Face::Regular, BODY, board.left(), y, &title);
        for (column, share) in shares.iter().enumerate() {
            let x = board.left() + RULE + TASK * width(column);
            board.text(Face::Regular, SMALL, x + BAR + 3.0, y, &format!("{share} %"));
        }
        board.end();
        for (column, share) in shares.iter().enumerate() {
            let x = board.left() + RULE + TASK * width(column);
            board.rule(x, x + BAR, y - 3.0, 0.3);
            if *share > 0 {
                board.rule(x, x + BAR * ratio(*share, 100), y - 3.0, 6.0);
            }
        }
    }
    y + LINE
}

fn next_line(board: &mut Board, y: f32) -> f32 {
    next(board, y, LINE)
}
