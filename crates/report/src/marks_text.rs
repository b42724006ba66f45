//! The audit of printed bow marks for people at a terminal.

use std::fmt::Write as _;

use arcata_bow::audit::MarkClass;
use arcata_languages::Saying;
use arcata_score::places::in_movement;
use unicode_width::UnicodeWidthStr;

use crate::marks_view::{CountsView, MarkView, MarkedPartView, MarksView};
use crate::style::{Ink, Page};
use crate::text::{heading, pad};

/// The audit: a table with a row a part, then the marks by class and reason with their bars.
#[must_use]
pub fn marks_text(views: &[MarksView], page: Page) -> String {
    page.set(|page| audits(views, page))
}

fn audits(views: &[MarksView], page: Page) -> String {
    let mut out = String::new();
    for (index, view) in views.iter().enumerate() {
        if index > 0 {
            out.push('\n');
        }
        heading(&mut out, &view.file, view.title.as_deref(), page);
        for assumption in &view.assumptions {
            let _ = writeln!(out, "{}", page.labelled("assumed", "", assumption));
        }
        out.push('\n');
        table(&mut out, view, page);
        for part in view.parts.iter().filter(|part| part.counts.marks > 0) {
            out.push('\n');
            part_text(&mut out, part, page);
        }
    }
    out
}

/// Columns of the numbers.
const NUMBERS: usize = 8 + 7 + 8 + 8 + 9 + 15 + 7;

fn table(out: &mut String, view: &MarksView, page: Page) {
    let room = page.width.saturating_sub(NUMBERS).max(12);
    let widest = view.parts.iter().map(|part| part.name.width()).max().unwrap_or(0).clamp(5, room);
    let columns = [
        ("strokes-column", 8),
        ("marks-column", 7),
        ("class-needed", 8),
        ("class-effect", 8),
        ("class-obvious", 9),
        ("class-contradictory", 15),
        ("least-column", 7),
    ];
    let heads: String = columns.iter().map(|(key, room)| right(&page.word(key), *room)).collect();
    let head = format!("{}{heads}", pad(&page.word("part"), widest));
    let _ = writeln!(out, "{}", page.ink(Ink::Faint, &head));
    for part in &view.parts {
        let name: String = part.name.chars().take(widest).collect();
        let _ = writeln!(out, "{}{}", pad(&name, widest), numbers(&part.counts));
    }
    if view.parts.len() > 1 {
        let row = format!("{}{}", pad(&page.word("in-total"), widest), numbers(&view.total));
        let _ = writeln!(out, "{}", page.ink(Ink::Strong, &row));
    }
}

/// A heading at the right end of its column, cut where it is too wide.
fn right(text: &str, room: usize) -> String {
    let cut: String = text.chars().take(room - 1).collect();
    format!("{}{cut}", " ".repeat(room.saturating_sub(cut.width())))
}

fn numbers(counts: &CountsView) -> String {
    format!(
        "{:>8}{:>7}{:>8}{:>8}{:>9}{:>15}{:>7}",
        counts.strokes,
        counts.marks,
        counts.needed,
        counts.effect,
        counts.obvious,
        counts.contradictory,
        counts.least
    )
}

/// A part's marks: for each class and reason how many there are, and in which bars.
fn part_text(out: &mut String, part: &MarkedPartView, page: Page) {
    let _ = writeln!(out, "{}", page.ink(Ink::Strong, &part.name));
    for class in MarkClass::ALL {
        let of_class = || part.printed.iter().filter(move |mark| mark.class == class.name());
        let mut reasons: Vec<&str> = of_class().map(|mark| mark.reason.as_str()).collect();
        reasons.sort_unstable();
        reasons.dedup();
        for reason in reasons {
            let marks: Vec<&MarkView> = of_class().filter(|mark| mark.reason == reason).collect();
            let movements = marks.chunk_by(|a, b| a.movement == b.movement).map(|marks| {
                let wording = page.wording();
                let bars: Vec<String> = marks.iter().map(|mark| wording.bar_number(&mark.bar)).collect();
                in_movement(marks[0].movement.as_deref(), bars_text(&bars, page))
            });
            let bars = movements.collect::<Vec<_>>().join("; ");
            let class = Saying::new(class_key(class));
            let label = page.say(&Saying::new("label").with("label", class));
            let said = format!("{label} {reason} · {} · {bars}", marks.len());
            let _ = writeln!(out, "{}", page.fill(&said, "  ", "    "));
        }
    }
}

/// Bars named once each, in order; many are cut short.
fn bars_text(bars: &[String], page: Page) -> String {
    const SHOWN: usize = 24;
    let mut once = bars.to_vec();
    once.dedup();
    let left = once.len().saturating_sub(SHOWN);
    once.truncate(SHOWN);
    page.say(&Saying::new("bar-of-marks").quoting("bars", once.join(", ")).with("left", left))
}

/// The key of a class's name.
const fn class_key(class: MarkClass) -> &'static str {
    match class {
        MarkClass::Needed => "class-needed",
        MarkClass::Effect => "class-effect",
        MarkClass::Obvious => "class-obvious",
        MarkClass::Contradictory => "class-contradictory",
    }
}
