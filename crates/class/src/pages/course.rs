//! The class's way through its tasks as a picture: a row a rule, a column a task.

use std::collections::BTreeSet;
use std::fmt::Write as _;

use arcata_xml::escape;
use maud::{Markup, PreEscaped};

use crate::Words;
use crate::before::TaskBefore;

/// By definition: sizes, in the picture's own measure.
const NAMES: usize = 300;
const COLUMN: usize = 110;
const ROW: usize = 22;
const HEAD: usize = 38;
/// Rule of thumb: letters of a line of a task's title that have room over a column.
const TITLE: usize = 17;
/// Rule of thumb: letters of a rule's title that have room before the columns.
const NAME: usize = 46;
/// Rule of thumb: rules that are drawn, those that changed most first.
const MOST: usize = 24;

/// The rules of a course, those that changed most first, each with its share of hand-ins at every task, hundredths.
pub(super) fn course_rows(stages: &[TaskBefore]) -> Vec<(&str, Vec<usize>)> {
    let rules: BTreeSet<&String> = stages.iter().flat_map(|stage| stage.met.keys()).collect();
    let share = |stage: &TaskBefore, rule: &String| {
        stage.met.get(rule).copied().unwrap_or_default() * 100 / stage.hand_ins.max(1)
    };
    let mut rows: Vec<(&str, Vec<usize>)> = rules
        .into_iter()
        .map(|rule| (rule.as_str(), stages.iter().map(|stage| share(stage, rule)).collect()))
        .collect();
    let moved = |shares: &[usize]| shares.iter().max().unwrap_or(&0) - shares.iter().min().unwrap_or(&0);
    rows.sort_by_key(|(rule, shares)| (std::cmp::Reverse(moved(shares)), *rule));
    rows.truncate(MOST);
    rows
}

/// A title over a column, in two lines where it is long.
fn title_lines(title: &str) -> [String; 2] {
    let mut lines = [String::new(), String::new()];
    for word in title.split_whitespace() {
        let fits =
            |line: &String| line.is_empty() || line.chars().count() + 1 + word.chars().count() <= TITLE;
        let at = if lines[1].is_empty() && fits(&lines[0]) { 0 } else { 1 };
        if at == 1 && !fits(&lines[1]) {
            lines[1].push('…');
            break;
        }
        if !lines[at].is_empty() {
            lines[at].push(' ');
        }
        lines[at].push_str(word);
    }
    lines.map(|line| match line.char_indices().nth(TITLE) {
        Some((end, _)) => format!("{}…", &line[..end]),
        None => line,
    })
}

/// A bar for each task in each rule's row, as wide as the share of hand-ins that met it.
pub(super) fn course_svg(words: &Words, stages: &[TaskBefore]) -> Markup {
    let rows = course_rows(stages);
    let (width, height) = (NAMES + stages.len() * COLUMN, HEAD + rows.len() * ROW + 4);
    let mut out = format!(
        r#"<svg class="course" viewBox="0 0 {width} {height}" style="max-width:{width}px" role="img" aria-label="{}" fill="currentColor" font-size="12">"#,
        escape(&words.word("class-course-how")).replace('"', "&quot;")
    );
    for (column, stage) in stages.iter().enumerate() {
        for (line, text) in title_lines(&stage.task).iter().enumerate() {
            let (x, y) = (NAMES + column * COLUMN, 12 + line * 14);
            let _ = write!(out, r#"<text x="{x}" y="{y}" font-size="11">{}</text>"#, escape(text));
        }
    }
    for (row, (rule, shares)) in rows.into_iter().enumerate() {
        let y = HEAD + row * ROW;
        let title = words.title(rule);
        let title: String = match title.char_indices().nth(NAME) {
            Some((end, _)) => format!("{}…", &title[..end]),
            None => title,
        };
        let _ = write!(out, r#"<text x="0" y="{}">{}</text>"#, y + 12, escape(&title));
        for (column, share) in shares.into_iter().enumerate() {
            let x = NAMES + column * COLUMN;
            let _ = write!(
                out,
                r#"<rect x="{x}" y="{}" width="70" height="10" fill-opacity="0.12"/><rect x="{x}" y="{}" width="{}" height="10"/><text x="{}" y="{}" font-size="10">{share} %</text>"#,
                y + 3,
                y + 3,
                share * 70 / 100,
                x + 74,
                y + 12
            );
        }
    }
    out.push_str("</svg>");
    maud::html! { (PreEscaped(out)) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn long_titles_stand_in_two_lines() {
        assert_eq!(title_lines("Week 1"), ["Week 1".to_owned(), String::new()]);
        let long = title_lines("Harbour Melody: slurs, and a cello part");
        assert_eq!(long, ["Harbour Melody:".to_owned(), "slurs, and a…".to_owned()]);
        assert!(title_lines("Donaudampfschifffahrtsmelodie")[0].chars().count() <= TITLE + 1);
    }
}
