//! Text for people at a terminal.

use std::fmt::Write as _;

use unicode_width::UnicodeWidthStr;

use crate::plan_view::{PlannedLineView, StrokeView};
use crate::review_view::{FileView, FindingView};
use crate::style::{Ink, Page};
use crate::term_words::points;
use crate::{Outcome, PlanView, ReviewView, SummaryRow, text_ways};

/// The review: a heading a file, then its findings in order of the score.
#[must_use]
pub fn review_text(view: &ReviewView, page: Page) -> String {
    let mut out = String::new();
    for (index, file) in view.files.iter().enumerate() {
        if index > 0 {
            out.push('\n');
        }
        file_text(&mut out, file, page);
    }
    out
}

fn heading(out: &mut String, file: &str, title: Option<&str>, page: Page) {
    let title = title.unwrap_or(file);
    let _ = writeln!(out, "{}", page.ink(Ink::Strong, title));
    if title != file {
        let _ = writeln!(out, "{}", page.ink(Ink::Faint, file));
    }
}

fn file_text(out: &mut String, file: &FileView, page: Page) {
    heading(out, &file.file, file.title.as_deref(), page);
    if let Some(error) = &file.error {
        let _ = writeln!(out, "{}", page.ink(Ink::Grave, "not read"));
        let _ = writeln!(out, "{}", page.fill(error, "  ", "  "));
        return;
    }
    let strokes: usize = file.lines.iter().map(|line| line.strokes).sum();
    let names: Vec<&str> = file.lines.iter().map(|line| line.name.as_str()).collect();
    let facts = format!("{} bars, {strokes} strokes in {}", file.bars, listed(&names));
    let _ = writeln!(out, "{}", page.fill(&facts, "", ""));
    for assumption in &file.assumptions {
        let _ = writeln!(out, "{}", page.fill(assumption, "assumed: ", "         "));
    }
    problems_text(out, file, page);
    if file.findings.is_empty() {
        let _ = writeln!(out, "\nNothing found.");
    }
    for finding in &file.findings {
        out.push('\n');
        finding_text(out, finding, page);
    }
}

/// Contradictions in the file: the first few, then their number.
fn problems_text(out: &mut String, file: &FileView, page: Page) {
    const SHOWN: usize = 6;
    for problem in file.problems.iter().take(SHOWN) {
        let place: Vec<String> =
            problem.part.iter().cloned().chain(problem.bar.iter().map(|bar| format!("bar {bar}"))).collect();
        let place = if place.is_empty() { String::new() } else { format!("{}: ", place.join(", ")) };
        let _ = writeln!(
            out,
            "{}",
            page.fill(&format!("{place}{}", problem.message), "in the file: ", "             ")
        );
    }
    if file.problems.len() > SHOWN {
        let _ = writeln!(
            out,
            "in the file: {} more (all of them with --format json)",
            file.problems.len() - SHOWN
        );
    }
}

fn listed(names: &[&str]) -> String {
    match names {
        [] => "no bowed part".to_owned(),
        [one] => (*one).to_owned(),
        [first @ .., last] => format!("{} and {last}", first.join(", ")),
    }
}

fn severity_ink(severity: &str) -> Ink {
    match severity {
        "A" => Ink::Grave,
        "B" => Ink::Warm,
        "C" => Ink::Cool,
        _ => Ink::Faint,
    }
}

fn finding_text(out: &mut String, finding: &FindingView, page: Page) {
    let place = &finding.place;
    let left = if place.bar.is_empty() {
        place.section.clone()
    } else {
        format!("bar {}, beat {}  {}", place.bar, place.spoken_beat, place.section)
    };
    let right = format!("{} {}", finding.severity, finding.rule);
    let gap = page.width.saturating_sub(left.width() + right.width()).max(2);
    let _ = writeln!(
        out,
        "{}{}{}",
        page.ink(Ink::Strong, &left),
        " ".repeat(gap),
        page.ink(severity_ink(&finding.severity), &right)
    );
    let _ = writeln!(out, "{}", page.fill(&finding.sentence, "  ", "  "));
    if !finding.evidence.is_empty() {
        let numbers: Vec<String> = finding
            .evidence
            .iter()
            .map(|evidence| {
                format!("{} {} {}", evidence.name, evidence.value, evidence.unit).trim_end().to_owned()
            })
            .collect();
        let _ = writeln!(out, "{}", page.ink(Ink::Faint, &page.fill(&numbers.join(" · "), "  ", "  ")));
    }
    for assumption in &finding.assumptions {
        let _ = writeln!(out, "{}", page.fill(assumption, "  assumed: ", "           "));
    }
    if finding.count > 1 {
        let places: Vec<String> = finding.further.iter().take(8).map(|place| place.bar.clone()).collect();
        let more = if finding.further.len() > 8 { ", …" } else { "" };
        let line = format!("{} times in all; also in bar {}{more}", finding.count, places.join(", "));
        let _ = writeln!(out, "{}", page.fill(&line, "  ", "  "));
    }
    for proposal in &finding.proposals {
        let text = format!("{} ({})", proposal.sentence, proposal.grade);
        let _ = writeln!(out, "{}", page.fill(&text, "  → ", "    "));
    }
}

/// Plans: a table a line, one row a stroke, the bow drawn from frog to tip.
#[must_use]
pub fn plan_text(views: &[PlanView], page: Page) -> String {
    let mut out = String::new();
    for (index, view) in views.iter().enumerate() {
        if index > 0 {
            out.push('\n');
        }
        heading(&mut out, &view.file, view.title.as_deref(), page);
        for assumption in &view.assumptions {
            let _ = writeln!(out, "{}", page.fill(assumption, "assumed: ", "         "));
        }
        for line in &view.lines {
            out.push('\n');
            line_text(&mut out, line, page);
        }
    }
    out
}

/// Columns of the drawn bow.
const BOW: usize = 24;

fn line_text(out: &mut String, line: &PlannedLineView, page: Page) {
    let _ = writeln!(out, "{}", page.ink(Ink::Strong, &line.name));
    let head = format!(
        "{:>5} {:<7} {:<5} {:<7} {:<width$} {:>6}  {}",
        "bar",
        "beat",
        "bow",
        "how",
        "frog … tip",
        "s",
        "costs",
        width = BOW + 2
    );
    let _ = writeln!(out, "{}", page.ink(Ink::Faint, &head));
    let mut bar = "";
    for stroke in &line.strokes {
        let shown = if stroke.bar == bar { "" } else { &stroke.bar };
        bar = &stroke.bar;
        let _ = writeln!(out, "{}", stroke_row(shown, stroke, page).trim_end());
    }
    for turn in &line.turns {
        let _ = writeln!(out, "  repeat from bar {}: second pass by {}", turn.bar, turn.link);
    }
    text_ways::further(out, line, page);
}

fn stroke_row(bar: &str, stroke: &StrokeView, page: Page) -> String {
    let beat = pad(&stroke.spoken_beat, 7);
    let sign = if stroke.printed.is_some() { "*" } else { "" };
    let way = pad(&format!("{}{sign}", stroke.direction), 5);
    let how = if stroke.link == "change" { "" } else { stroke.link };
    let cost: i64 = stroke.cost.values().sum();
    let reason = stroke
        .cost
        .iter()
        .max_by_key(|(_, share)| **share)
        .filter(|_| cost >= 100)
        .map_or("", |(term, _)| *term);
    let costs = if cost >= 100 { format!("{} {reason}", points(cost)) } else { String::new() };
    let drawn = bow(stroke);
    let ink = if stroke.direction == "down" { Ink::Warm } else { Ink::Cool };
    format!("{bar:>5} {beat} {way} {how:<7} {} {:>6.2}  {costs}", page.ink(ink, &drawn), stroke.seconds)
}

/// Text padded to a number of columns.
fn pad(text: &str, columns: usize) -> String {
    format!("{text}{}", " ".repeat(columns.saturating_sub(text.width())))
}

/// The stroke on the bow: the frog left, the tip right, an arrow head where it ends.
fn bow(stroke: &StrokeView) -> String {
    let column = |place: u16| usize::from(place) * BOW / 1000;
    let (start, end) = (column(stroke.start).min(BOW - 1), column(stroke.end).min(BOW - 1));
    let (low, high) = (start.min(end), start.max(end));
    let drawn: String = (0..BOW)
        .map(|at| match at {
            at if at == end && stroke.direction == "down" => '>',
            at if at == end => '<',
            at if (low..=high).contains(&at) => '=',
            _ => '·',
        })
        .collect();
    format!("|{drawn}|")
}

/// The table over several files.
#[must_use]
pub fn summary_text(rows: &[SummaryRow], page: Page) -> String {
    let widest = rows
        .iter()
        .map(|row| row.file.width())
        .max()
        .unwrap_or(4)
        .clamp(4, page.width.saturating_sub(42).max(20));
    let mut out = String::new();
    let head = format!(
        "{} {:>6} {:>8} {:>5} {:>5} {:>5} {:>5}",
        pad("file", widest),
        "bars",
        "strokes",
        "A",
        "B",
        "C",
        "D"
    );
    let _ = writeln!(out, "{}", page.ink(Ink::Faint, &head));
    for row in rows {
        let name = pad(&shortened(&row.file, widest), widest);
        match &row.outcome {
            Outcome::Reviewed { bars, strokes, findings: [a, b, c, d], .. } => {
                let _ = writeln!(out, "{name} {bars:>6} {strokes:>8} {a:>5} {b:>5} {c:>5} {d:>5}");
            }
            Outcome::Unreadable { .. } => {
                let _ = writeln!(out, "{name} {}", page.ink(Ink::Grave, "not read"));
            }
        }
    }
    out
}

/// The end of a path, which tells files of one folder apart.
fn shortened(file: &str, columns: usize) -> String {
    if file.width() <= columns {
        return file.to_owned();
    }
    let mut kept: Vec<char> = file.chars().rev().take(columns.saturating_sub(1)).collect();
    kept.push('…');
    kept.into_iter().rev().collect()
}
