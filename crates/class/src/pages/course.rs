//! The class's way through its tasks as a picture: a row a rule, a column a task.

use std::collections::BTreeSet;
use std::fmt::Write as _;

use arcata_xml::escape;
use maud::{Markup, PreEscaped};

use crate::Words;
use crate::before::TaskBefore;

/// Sizes, in the picture's own measure.
const NAMES: usize = 300;
const COLUMN: usize = 110;
const ROW: usize = 22;
const HEAD: usize = 34;
/// Letters of a task's title.
const TITLE: usize = 15;
/// Rules that are drawn, those that changed most first.
const MOST: usize = 24;

/// A bar for each task in each rule's row, as wide as the share of hand-ins that met it.
pub(super) fn course_svg(words: &Words, stages: &[TaskBefore]) -> Markup {
    let rules: BTreeSet<&String> = stages.iter().flat_map(|stage| stage.met.keys()).collect();
    let share = |stage: &TaskBefore, rule: &String| {
        stage.met.get(rule).copied().unwrap_or_default() * 100 / stage.hand_ins.max(1)
    };
    let moved = |rule: &String| {
        let shares: Vec<usize> = stages.iter().map(|stage| share(stage, rule)).collect();
        shares.iter().max().unwrap_or(&0) - shares.iter().min().unwrap_or(&0)
    };
    let mut rules: Vec<&String> = rules.into_iter().collect();
    rules.sort_by_key(|rule| (std::cmp::Reverse(moved(rule)), (*rule).clone()));
    rules.truncate(MOST);
    let (width, height) = (NAMES + stages.len() * COLUMN, HEAD + rules.len() * ROW + 4);
    let mut out = format!(
        r#"<svg class="course" viewBox="0 0 {width} {height}" role="img" aria-label="{}" fill="currentColor" font-size="12">"#,
        escape(&words.word("class-course-how")).replace('"', "&quot;")
    );
    for (column, stage) in stages.iter().enumerate() {
        let title: String = stage.task.chars().take(TITLE).collect();
        let _ = write!(out, r#"<text x="{}" y="14">{}</text>"#, NAMES + column * COLUMN, escape(&title));
    }
    for (row, rule) in rules.into_iter().enumerate() {
        let y = HEAD + row * ROW;
        let _ = write!(out, r#"<text x="0" y="{}">{}</text>"#, y + 12, escape(&words.title(rule)));
        for (column, stage) in stages.iter().enumerate() {
            let x = NAMES + column * COLUMN;
            let share = share(stage, rule);
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
