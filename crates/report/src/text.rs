//! Text for people at a terminal.

use std::fmt::Write as _;

use arcata_languages::{Argument, Saying};
use arcata_score::places::in_movement;
use unicode_width::UnicodeWidthStr;

use crate::plan_view::{PlanStrokeView, PlannedLineView, TurnView};
use crate::review_view::{EvidenceView, FileView, FindingPlaceView, FindingView};
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
        let _ = writeln!(out, "{}", page.ink(Ink::Strong, &page.labelled("not-read", "", error)));
        return;
    }
    let strokes: usize = file.lines.iter().map(|line| line.strokes).sum();
    // "Viola, voice 1" would fall apart in a list with commas.
    let names: Vec<String> =
        file.bowed().into_iter().map(|(name, _)| name.replace(", voice", " voice")).collect();
    let facts = Saying::new("bars-and-strokes")
        .with("bars", file.bars)
        .with("strokes", strokes)
        .with("count", names.len())
        .quoting("names", page.wording().list(&names));
    let _ = writeln!(out, "{}", page.fill(&page.say(&facts), "", ""));
    for assumption in &file.assumptions {
        let _ = writeln!(out, "{}", page.labelled("assumed", "", assumption));
    }
    problems_text(out, file, page);
    if file.findings.is_empty() {
        let _ = writeln!(out, "\n{}", page.word("nothing-found"));
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
            .filter(|part| !part.is_empty())
            .cloned()
            .chain(problem.bar.iter().map(|bar| page.wording().bar(problem.movement.as_deref(), bar)))
            .collect();
        let there =
            Saying::new("failure-of").quoting("of", place.join(", ")).quoting("why", &problem.message);
        let said = if place.is_empty() { problem.message.clone() } else { page.say(&there) };
        let _ = writeln!(out, "{}", page.labelled("in-the-file", "", &said));
    }
    if file.problems.len() > SHOWN {
        let more = Saying::new("in-the-file-more").with("count", file.problems.len() - SHOWN);
        let _ = writeln!(out, "{}", page.say(&more));
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
        format!("{}  {}", place.said, place.section)
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
    numbers_text(out, &finding.evidence, &finding.assumptions, page);
    if finding.count > 1 {
        let line = Saying::new("times-in-all")
            .with("count", i64::from(finding.count))
            .quoting("places", further(&finding.further, page));
        let line = page.say(&line);
        let _ = writeln!(out, "{}", page.fill(&line, "  ", "  ").replace(KEPT, " "));
    }
    for reason in &finding.reasons {
        let text =
            format!("{} ({} {})", reason.sentence, reason.severity, reason.rule.replace('-', UNBROKEN));
        let _ = writeln!(out, "{}", page.labelled("also", "  ", &text).replace(UNBROKEN, "-"));
        numbers_text(out, &reason.evidence, &reason.assumptions, page);
    }
    for proposal in &finding.proposals {
        let text = format!("{} ({})", proposal.sentence, proposal.grade_said);
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
                let [name, value, unit] = &evidence.said;
                let value = format!("{value} {unit}").trim_end().replace(' ', KEPT);
                format!("{name}{KEPT}{value}")
            })
            .collect();
        let filled = page.fill(&numbers.join(" · "), "  ", "  ").replace(KEPT, " ");
        let _ = writeln!(out, "{}", page.ink(Ink::Faint, &filled));
    }
    for assumption in assumptions {
        let _ = writeln!(out, "{}", page.labelled("assumed", "  ", assumption));
    }
}

/// A hyphen at which no line is broken; written as a plain one.
const UNBROKEN: &str = "\u{2011}";
/// A space at which no line is broken; written as a plain one.
const KEPT: &str = "\u{a0}";

/// Bars with their beats: "bar 3, beats 1 and 3; bar 4, beat 1"; where there are many, the bars alone,
/// each once.
fn further(places: &[FindingPlaceView], page: Page) -> String {
    let movements = places.chunk_by(|one, other| one.movement == other.movement);
    let many = places.len() > 6;
    let said =
        movements.map(|places| if many { bars_alone(places, page) } else { bars_and_beats(places, page) });
    said.collect::<Vec<_>>().join(page.wording().language.semicolon())
}

fn bars_and_beats(places: &[FindingPlaceView], page: Page) -> String {
    let word = page.word("place-bar");
    let bars = places.chunk_by(|one, other| one.bar == other.bar).map(|places| {
        let beats: Vec<String> = places.iter().map(|place| place.spoken_beat.clone()).collect();
        // A number stays on the line of its word.
        let bar = places[0].bar_said.replace(&format!("{word} "), &format!("{word}{KEPT}"));
        let beats = Saying::new("beats-of-a-bar")
            .with("count", beats.len())
            .quoting("kept", KEPT)
            .quoting("beats", page.wording().list(&beats));
        format!("{bar}, {}", page.say(&beats))
    });
    bars.collect::<Vec<_>>().join(page.wording().language.semicolon())
}

fn bars_alone(places: &[FindingPlaceView], page: Page) -> String {
    const BARS: usize = 10;
    let wording = page.wording();
    let bars = places.chunk_by(|one, other| one.bar == other.bar);
    let bars: Vec<String> = bars.map(|places| wording.bar_number(&places[0].bar)).collect();
    let shown: Vec<String> = bars.iter().take(BARS).cloned().collect();
    let left = bars.len().saturating_sub(BARS);
    let said = Saying::new("bars-named")
        .with("count", bars.len())
        .with("left", left)
        .quoting("bars", if left > 0 { shown.join(", ") } else { wording.list(&shown) });
    in_movement(places[0].movement.as_deref(), wording.say(&said))
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
            let _ = writeln!(out, "{}", page.labelled("assumed", "", assumption));
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
    let sure = if asked { pad(&page.word("column-sure"), 6) } else { String::new() };
    let short = page.short_bar();
    let columns = ["column-beat", "column-bow", "column-how", "column-frog-tip", "column-penalty"];
    let [beat, bow, how, place, penalty] = columns.map(|key| page.word(key));
    let head = format!(
        "{short:>5} {} {} {} {sure}{} {:>6}  {penalty}",
        pad(&beat, 7),
        pad(&bow, 5),
        pad(&how, 7),
        pad(&place, bow_columns(page) + 2 - sure.width()),
        "s",
    );
    let _ = writeln!(out, "{}", page.ink(Ink::Faint, &head));
    let mut bar = "";
    for stroke in &line.strokes {
        let shown = if stroke.bar == bar { "" } else { &stroke.bar };
        bar = &stroke.bar;
        let _ = writeln!(out, "{}", stroke_row(shown, stroke, sure.width(), page).trim_end());
    }
    if line.strokes.iter().any(|stroke| stroke.printed.is_some()) {
        let _ = writeln!(out, "  * {}", page.word("printed-in-the-score"));
    }
    let _ = writeln!(out, "{}", page.fill(&yardstick_words(yardstick, &page.wording()), "  ", "    "));
    if asked {
        let open = line.strokes.iter().any(|stroke| stroke.open);

        let said = page.word(if open { "sure-and-open" } else { "sure-means" });
        let _ = writeln!(out, "{}", page.fill(&said, "  ", "    "));
    }
    for turn in &line.turns {
        let _ = writeln!(out, "{}", page.fill(&turn_text(turn, page), "  ", "    "));
    }
    text_ways::further(out, line, page);
}

/// How a second pass begins, in a sentence.
fn turn_text(turn: &TurnView, page: Page) -> String {
    let seconds = |seconds: Option<f64>| {
        Argument::Text(page.wording().decimal(&format!("{:.2}", seconds.unwrap_or_default())))
    };
    let said = Saying::new("turn")
        .choosing("road", road(turn.road))
        .with("bar", Argument::BarNumber(turn.bar.clone()))
        .with("from", Argument::BarNumber(turn.from_bar.clone()))
        .choosing("comes", turn.comes.map_or("unknown", comes))
        .choosing("link", turn.link)
        .choosing("bow", turn.begins)
        .with("there", seconds(turn.time_to_lift))
        .with("needed", seconds(turn.lift_takes))
        .choosing("weighed", if turn.weighed == "afterwards" { "afterwards" } else { "search" });
    page.say(&said)
}

/// The case of a term's message.
fn term_case(term: &'static str) -> &'static str {
    match term {
        "retake time" => "retake-time",
        "speed limit" => "speed-limit",
        term => term,
    }
}

/// The case of a way back.
fn road(road: &str) -> &'static str {
    match road {
        "repeat" => "repeat",
        "da capo" => "da-capo",
        "dal segno" => "dal-segno",
        _ => "onward",
    }
}

/// The case of what becomes of a second pass.
fn comes(comes: &str) -> &'static str {
    match comes {
        "by itself" => "by-itself",
        "free" => "free",
        "lifted" => "lifted",
        "retaken" => "retaken",
        _ => "reversed",
    }
}

/// A stroke on one row; `room` columns of the bow are given up to say how sure it is.
fn stroke_row(bar: &str, stroke: &PlanStrokeView, room: usize, page: Page) -> String {
    let beat = pad(&stroke.spoken_beat, 7);
    let sign = if stroke.printed.is_some() { "*" } else { "" };
    let direction = page.say(&Saying::new("row-bow").choosing("bow", stroke.direction));
    let way = pad(&format!("{direction}{sign}"), 5);
    let how = pad(&page.say(&Saying::new("row-link").choosing("link", stroke.link)), 7);
    let cost: i64 = stroke.cost.values().sum();
    let term = stroke.cost.iter().max_by_key(|(_, share)| **share).filter(|_| cost >= 100);
    let costs = term.map_or_else(String::new, |(term, _)| {
        let row = Saying::new("row-penalty")
            .with("points", Argument::Points(cost))
            .with("term", Saying::new("term").choosing("term", term_case(term)));
        page.say(&row)
    });
    let drawn = bow(stroke, bow_columns(page) - room);
    let ink = if stroke.direction == "down" { Ink::Down } else { Ink::Up };
    let percent =
        stroke.sure.map_or_else(String::new, |sure| format!("{sure}{}", if stroke.open { " ?" } else { "" }));
    let sure = if room > 0 { pad(&percent, room) } else { String::new() };
    let seconds = page.wording().decimal(&format!("{:.2}", stroke.seconds));
    format!("{bar:>5} {beat} {way} {how} {sure}{} {seconds:>6}  {costs}", page.ink(ink, &drawn))
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
        .max(page.word("file").width())
        .clamp(4, page.width.saturating_sub(42).max(20));
    let mut out = String::new();
    let head = format!(
        "{} {:>6} {:>8} {:>5} {:>5} {:>5} {:>5}",
        pad(&page.word("file"), widest),
        page.word("bars-column"),
        page.word("strokes-column"),
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
                let _ = writeln!(out, "{name} {}", page.ink(Ink::Strong, &page.word("not-read")));
            }
        }
    }
    if rows.len() > 1 {
        let _ =
            writeln!(out, "{}", page.ink(Ink::Faint, &summary_row(&pad(&page.word("in-all"), widest), sums)));
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
            bar_said: format!("bar {bar}"),
            said: format!("bar {bar}, beat {beat}"),
        }
    }

    #[test]
    fn further_places_were_bars_said_over_and_over_without_beats() {
        let places = [place("33", "2"), place("33", "2½"), place("34", "1")];
        assert_eq!(
            further(&places, Page::default()).replace(KEPT, " "),
            "bar 33, beats 2 and 2½; bar 34, beat 1"
        );
        let many: Vec<FindingPlaceView> = (0..24).map(|at| place(&(at / 2).to_string(), "1")).collect();
        assert_eq!(further(&many, Page::default()), "bars 0, 1, 2, 3, 4, 5, 6, 7, 8, 9 and 2 more");
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
