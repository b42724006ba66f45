//! Text for people at a terminal.

use std::fmt::Write as _;

use arcata_bow::points;
use arcata_score::places::{in_movement, label_said};
use unicode_width::UnicodeWidthStr;

use crate::plan_view::{PlanStrokeView, PlannedLineView, TurnView};
use crate::review_view::{EvidenceView, FileView, FindingPlaceView, FindingView, bar_said};
use crate::style::{Ink, Page};
use crate::term_words::yardstick_words;
use crate::text_together::together_text;
use crate::{Outcome, PlanView, ReviewView, SummaryRow, text_ways};

/// The review: a heading a file, then its findings in order of the score.
#[must_use]
pub fn review_text(view: &ReviewView, page: Page) -> String {
    page.set(|page| reviews(view, page))
}

fn reviews(view: &ReviewView, page: Page) -> String {
    let mut out = String::new();
    for (index, file) in view.files.iter().enumerate() {
        if index > 0 {
            out.push('\n');
        }
        file_text(&mut out, file, page);
    }
    out
}

pub(crate) fn heading(out: &mut String, file: &str, title: Option<&str>, page: Page) {
    let title = title.unwrap_or(file);
    let _ = writeln!(out, "{}", page.ink(Ink::Strong, title));
    if title != file {
        let _ = writeln!(out, "{}", page.ink(Ink::Faint, file));
    }
}

fn file_text(out: &mut String, file: &FileView, page: Page) {
    heading(out, &file.file, file.title.as_deref(), page);
    if let Some(error) = &file.error {
        let _ = writeln!(out, "{}", page.ink(Ink::Strong, &page.fill(error, "not read: ", "  ")));
        return;
    }
    let strokes: usize = file.lines.iter().map(|line| line.strokes).sum();
    // "Viola, voice 1" would fall apart in a list with commas.
    let names: Vec<String> =
        file.bowed().into_iter().map(|(name, _)| name.replace(", voice", " voice")).collect();
    let facts =
        format!("{}, {} in {}", counted(file.bars, "bar"), counted(strokes, "stroke"), listed(&names));
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
    if let Some(aside) = &file.aside {
        aside.text(out, page);
    }
}

/// Contradictions in the file: the first few, then their number.
fn problems_text(out: &mut String, file: &FileView, page: Page) {
    const SHOWN: usize = 6;
    for problem in file.problems.iter().take(SHOWN) {
        let place: Vec<String> = problem
            .part
            .iter()
            .cloned()
            .chain(problem.bar.iter().map(|bar| bar_said(problem.movement.as_ref(), bar)))
            .collect();
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

pub(crate) fn counted(count: usize, what: &str) -> String {
    if count == 1 { format!("1 {what}") } else { format!("{count} {what}s") }
}

fn listed(names: &[String]) -> String {
    match names {
        [] => "no bowed part".to_owned(),
        [one] => one.clone(),
        [first @ .., last] => format!("{} and {last}", first.join(", ")),
    }
}

/// The graver, the stronger; colours are left to the directions of the bow.
fn severity_ink(severity: &str) -> Ink {
    match severity {
        "A" => Ink::Grave,
        "B" => Ink::Strong,
        "C" => Ink::Plain,
        _ => Ink::Faint,
    }
}

fn finding_text(out: &mut String, finding: &FindingView, page: Page) {
    let place = &finding.place;
    let left = if place.bar.is_empty() {
        place.section.clone()
    } else {
        format!("{}  {}", place.said(), place.section)
    };
    let right = format!("{} {}", finding.severity, finding.rule);
    let left = page.bar.said(&left);
    let gap = page.width.saturating_sub(left.width() + right.width()).max(2);
    let _ = writeln!(
        out,
        "{}{}{}",
        page.ink(Ink::Strong, &left),
        " ".repeat(gap),
        page.ink(severity_ink(&finding.severity), &right)
    );
    let _ = writeln!(out, "{}", page.fill(&finding.sentence, "  ", "  "));
    numbers_text(out, &finding.evidence, &finding.assumptions, page);
    if finding.count > 1 {
        let line = format!("{} times in all; also in {}", finding.count, further(&finding.further));
        let _ = writeln!(out, "{}", page.fill(&line, "  ", "  ").replace(KEPT, " "));
    }
    for reason in &finding.reasons {
        let text =
            format!("{} ({} {})", reason.sentence, reason.severity, reason.rule.replace('-', UNBROKEN));
        let _ = writeln!(out, "{}", page.fill(&text, "  also: ", "        ").replace(UNBROKEN, "-"));
        numbers_text(out, &reason.evidence, &reason.assumptions, page);
    }
    for proposal in &finding.proposals {
        let text = format!("{} ({})", proposal.sentence, proposal.grade);
        let _ = writeln!(out, "{}", page.fill(&text, "  → ", "    "));
    }
}

/// The numbers that a sentence rests on, and what was assumed.
fn numbers_text(out: &mut String, evidence: &[EvidenceView], assumptions: &[String], page: Page) {
    if !evidence.is_empty() {
        let numbers: Vec<String> = evidence
            .iter()
            .map(|evidence| {
                // A number and its unit stay on one line.
                let value = format!("{} {}", evidence.value, evidence.unit).trim_end().replace(' ', KEPT);
                format!("{}{KEPT}{value}", evidence.name)
            })
            .collect();
        let filled = page.fill(&numbers.join(" · "), "  ", "  ").replace(KEPT, " ");
        let _ = writeln!(out, "{}", page.ink(Ink::Faint, &filled));
    }
    for assumption in assumptions {
        let _ = writeln!(out, "{}", page.fill(assumption, "  assumed: ", "           "));
    }
}

/// A hyphen at which no line is broken; written as a plain one.
const UNBROKEN: &str = "\u{2011}";
/// A space at which no line is broken; written as a plain one.
const KEPT: &str = "\u{a0}";

/// Bars with their beats: "bar 3, beats 1 and 3; bar 4, beat 1"; where there are many, the bars alone,
/// each once.
fn further(places: &[FindingPlaceView]) -> String {
    let movements = places.chunk_by(|one, other| one.movement == other.movement);
    let many = places.len() > 6;
    let said = movements.map(|places| if many { bars_alone(places) } else { bars_and_beats(places) });
    said.collect::<Vec<_>>().join("; ")
}

fn bars_and_beats(places: &[FindingPlaceView]) -> String {
    let bars = places.chunk_by(|one, other| one.bar == other.bar).map(|places| {
        let beats: Vec<String> = places.iter().map(|place| place.spoken_beat.clone()).collect();
        let word = if beats.len() == 1 { "beat" } else { "beats" };
        // A number stays on the line of its word.
        let bar = places[0].bar_said().replace("bar ", &format!("bar{KEPT}"));
        format!("{bar}, {word}{KEPT}{}", listed(&beats))
    });
    bars.collect::<Vec<_>>().join("; ")
}

fn bars_alone(places: &[FindingPlaceView]) -> String {
    const BARS: usize = 10;
    let bars = places.chunk_by(|one, other| one.bar == other.bar);
    let bars: Vec<String> = bars.map(|places| label_said("bar", &places[0].bar)).collect();
    let word = if bars.len() == 1 { "bar" } else { "bars" };
    let shown: Vec<String> = bars.iter().take(BARS).cloned().collect();
    let said = match bars.len().checked_sub(BARS).filter(|left| *left > 0) {
        Some(left) => format!("{word} {} and {left} more", shown.join(", ")),
        None => format!("{word} {}", listed(&shown)),
    };
    in_movement(places[0].movement.as_deref(), said)
}

/// Plans: a table a line, one row a stroke, the bow drawn from frog to tip.
#[must_use]
pub fn plan_text(views: &[PlanView], page: Page) -> String {
    page.set(|page| plans(views, page))
}

fn plans(views: &[PlanView], page: Page) -> String {
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
            line_text(&mut out, line, view.yardstick, page);
        }
        if let Some(together) = &view.together {
            together_text(&mut out, together, page);
        }
    }
    out
}

/// The lines of a plan alone, without what was assumed and agreed.
#[must_use]
pub fn lanes_text(view: &PlanView, page: Page) -> String {
    page.set(|page| lanes_of(view, page))
}

fn lanes_of(view: &PlanView, page: Page) -> String {
    let mut out = String::new();
    for (index, line) in view.lines.iter().enumerate() {
        if index > 0 {
            out.push('\n');
        }
        line_text(&mut out, line, view.yardstick, page);
    }
    out
}

/// Columns of the drawn bow: what the other columns leave, within reason.
fn bow_columns(page: Page) -> usize {
    /// Bar, beat, direction, link, seconds and the longest reason.
    const OTHERS: usize = 55;
    page.width.saturating_sub(OTHERS).clamp(8, 24)
}

fn line_text(out: &mut String, line: &PlannedLineView, yardstick: i64, page: Page) {
    let name = line
        .heading
        .as_ref()
        .map_or_else(|| line.name.clone(), |heading| format!("{} · {heading}", line.name));
    let _ = writeln!(out, "{}", page.ink(Ink::Strong, &name));
    let asked = line.strokes.iter().any(|stroke| stroke.sure.is_some());
    let sure = if asked { "sure  " } else { "" };
    let head = format!(
        "{:>5} {:<7} {:<5} {:<7} {sure}{:<width$} {:>6}  {}",
        page.bar.short(),
        "beat",
        "bow",
        "how",
        "frog … tip",
        "s",
        "penalty",
        width = bow_columns(page) + 2 - sure.len()
    );
    let _ = writeln!(out, "{}", page.ink(Ink::Faint, &head));
    let mut bar = "";
    for stroke in &line.strokes {
        let shown = if stroke.bar == bar { "" } else { &stroke.bar };
        bar = &stroke.bar;
        let _ = writeln!(out, "{}", stroke_row(shown, stroke, sure.len(), page).trim_end());
    }
    if line.strokes.iter().any(|stroke| stroke.printed.is_some()) {
        let _ = writeln!(out, "  * printed in the score");
    }
    let _ = writeln!(out, "{}", page.fill(&yardstick_words(yardstick), "  ", "    "));
    if asked {
        let open = line.strokes.iter().any(|stroke| stroke.open);
        let more = "; ? two ways are nearly equal, --alternatives 3 with these --bars shows them";
        let said = format!(
            "sure: how many players in a hundred would take this bow{}",
            if open { more } else { "" }
        );
        let _ = writeln!(out, "{}", page.fill(&said, "  ", "    "));
    }
    for turn in &line.turns {
        let _ = writeln!(out, "{}", page.fill(&turn_text(turn), "  ", "    "));
    }
    text_ways::further(out, line, page);
}

/// How a second pass begins, in a sentence.
fn turn_text(turn: &TurnView) -> String {
    let label = |bar: &str| label_said("bar", bar);
    let way = match turn.road {
        "repeat" => format!("repeat from bar {} to {}", label(&turn.bar), label(&turn.from_bar)),
        road => format!("{road} from bar {} to {}", label(&turn.from_bar), label(&turn.bar)),
    };
    let times = format!(
        "{:.2} s there, {:.2} s needed",
        turn.time_to_lift.unwrap_or_default(),
        turn.lift_takes.unwrap_or_default()
    );
    let begins = turn.begins;
    let said = match turn.comes {
        None => format!("by {}, on the {begins}-bow", turn.link),
        Some("by itself") => format!("second pass on the {begins}-bow again, by itself"),
        Some("free") => format!("second pass on the {begins}-bow again: the bow is free"),
        Some("lifted") => format!("lift in the rest for the {begins}-bow again ({times})"),
        Some("retaken") => format!("retake for the {begins}-bow again ({times})"),
        Some(_) => format!("no time to lift ({times}): as it comes, the second pass begins on the other bow"),
    };
    let afterwards = if turn.weighed == "afterwards" { "; crosses another repeat: not weighed" } else { "" };
    format!("{way}: {said}{afterwards}")
}

/// A stroke on one row; `room` columns of the bow are given up to say how sure it is.
fn stroke_row(bar: &str, stroke: &PlanStrokeView, room: usize, page: Page) -> String {
    let beat = pad(&stroke.spoken_beat, 7);
    let sign = if stroke.printed.is_some() { "*" } else { "" };
    let way = pad(&format!("{}{sign}", stroke.direction), 5);
    let how = link_words(stroke.link);
    let cost: i64 = stroke.cost.values().sum();
    let reason = stroke
        .cost
        .iter()
        .max_by_key(|(_, share)| **share)
        .filter(|_| cost >= 100)
        .map_or("", |(term, _)| if *term == "reset" { "lift" } else { *term });
    let costs = if cost >= 100 { format!("{} {reason}", points(cost)) } else { String::new() };
    let drawn = bow(stroke, bow_columns(page) - room);
    let ink = if stroke.direction == "down" { Ink::Down } else { Ink::Up };
    let percent =
        stroke.sure.map_or_else(String::new, |sure| format!("{sure}{}", if stroke.open { " ?" } else { "" }));
    let sure = if room > 0 { pad(&percent, room) } else { String::new() };
    format!("{bar:>5} {beat} {way} {how:<7} {sure}{} {:>6.2}  {costs}", page.ink(ink, &drawn), stroke.seconds)
}

/// How a stroke follows the one before, as people say it; nothing where it simply changes.
fn link_words(link: &str) -> &str {
    match link {
        "change" => "",
        "reset" => "placed",
        link => link,
    }
}

/// Text padded to a number of columns.
pub(crate) fn pad(text: &str, columns: usize) -> String {
    format!("{text}{}", " ".repeat(columns.saturating_sub(text.width())))
}

/// The stroke on the bow: the frog left, the tip right, an arrow head where it ends.
fn bow(stroke: &PlanStrokeView, columns: usize) -> String {
    let column = |place: u16| (usize::from(place) * columns / 1000).min(columns - 1);
    let (start, end) = (column(stroke.start), column(stroke.end));
    let (low, high) = (start.min(end), start.max(end));
    let drawn: String = (0..columns)
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
    page.set(|page| summary(rows, page))
}

fn summary(rows: &[SummaryRow], page: Page) -> String {
    let names = without_common_folder(rows);
    let widest = names
        .iter()
        .map(|name| name.width())
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
    let mut sums = [0; 6];
    for (row, name) in rows.iter().zip(names) {
        let name = pad(&shortened(name, widest), widest);
        match &row.outcome {
            Outcome::Reviewed { bars, strokes, findings: [a, b, c, d], .. } => {
                let numbers = [*bars, *strokes, *a, *b, *c, *d];
                let _ = writeln!(out, "{}", summary_row(&name, numbers));
                for (sum, number) in sums.iter_mut().zip(numbers) {
                    *sum += number;
                }
            }
            Outcome::Unreadable { .. } => {
                let _ = writeln!(out, "{name} {}", page.ink(Ink::Strong, "not read"));
            }
        }
    }
    if rows.len() > 1 {
        let _ = writeln!(out, "{}", page.ink(Ink::Faint, &summary_row(&pad("in all", widest), sums)));
    }
    out
}

fn summary_row(name: &str, [bars, strokes, a, b, c, d]: [usize; 6]) -> String {
    format!("{name} {bars:>6} {strokes:>8} {a:>5} {b:>5} {c:>5} {d:>5}")
}

/// The files as named, without the folder that all of them lie in.
fn without_common_folder(rows: &[SummaryRow]) -> Vec<&str> {
    let folder = |file: &str| file.rfind(['/', '\\']).map_or(0, |at| at + 1);
    let mut common = rows.first().map_or("", |row| &row.file[..folder(&row.file)]);
    for row in rows {
        while !row.file.starts_with(common) {
            common = &common[..folder(common.trim_end_matches(['/', '\\']))];
        }
    }
    rows.iter().map(|row| &row.file[common.len()..]).collect()
}

/// A name cut in its middle: its beginning and its end tell files apart.
fn shortened(file: &str, columns: usize) -> String {
    if file.width() <= columns {
        return file.to_owned();
    }
    let letters: Vec<char> = file.chars().collect();
    let kept = columns.saturating_sub(1).min(letters.len());
    let (head, tail) = (kept - kept / 2, kept / 2);
    let mut short: String = letters[..head].iter().collect();
    short.push('…');
    short.extend(&letters[letters.len() - tail..]);
    short
}

#[cfg(test)]
mod tests {
    use super::*;

    fn place(bar: &str, beat: &str) -> FindingPlaceView {
        FindingPlaceView {
            section: String::new(),
            movement: None,
            bar: bar.to_owned(),
            bar_ordinal: 1,
            beat: beat.to_owned(),
            spoken_beat: beat.to_owned(),
        }
    }

    #[test]
    fn further_places_were_bars_said_over_and_over_without_beats() {
        let places = [place("33", "2"), place("33", "2½"), place("34", "1")];
        assert_eq!(further(&places).replace(KEPT, " "), "bar 33, beats 2 and 2½; bar 34, beat 1");
        let many: Vec<FindingPlaceView> = (0..24).map(|at| place(&(at / 2).to_string(), "1")).collect();
        assert_eq!(further(&many), "bars 0, 1, 2, 3, 4, 5, 6, 7, 8, 9 and 2 more");
    }

    #[test]
    fn files_of_one_folder_are_told_apart_in_a_narrow_table() {
        let row = |file: &str| SummaryRow {
            file: file.to_owned(),
            outcome: Outcome::Unreadable { error: String::new() },
        };
        let rows = [row("scores/old/one.mxl"), row("scores/new/two.mxl")];
        assert_eq!(without_common_folder(&rows), ["old/one.mxl", "new/two.mxl"]);
        assert_eq!(without_common_folder(&rows[..1]), ["one.mxl"]);
        assert_eq!(shortened("string-quartet-no-1.mxl", 11), "strin…1.mxl");
    }
}
