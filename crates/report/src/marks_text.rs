//! The audit of printed bow marks for people at a terminal.

use std::fmt::Write as _;

use arcata_bow::audit::MarkClass;
use arcata_score::places::{in_movement, label_said};
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
            let _ = writeln!(out, "{}", page.fill(assumption, "assumed: ", "         "));
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
    let head = format!(
        "{}{:>8}{:>7}{:>8}{:>8}{:>9}{:>15}{:>7}",
        pad("part", widest),
        "strokes",
        "marks",
        "needed",
        "effect",
        "obvious",
        "contradictory",
        "least"
    );
    let _ = writeln!(out, "{}", page.ink(Ink::Faint, &head));
    for part in &view.parts {
        let name: String = part.name.chars().take(widest).collect();
        let _ = writeln!(out, "{}{}", pad(&name, widest), numbers(&part.counts));
    }
    if view.parts.len() > 1 {
        let row = format!("{}{}", pad("total", widest), numbers(&view.total));
        let _ = writeln!(out, "{}", page.ink(Ink::Strong, &row));
    }
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
        let mut reasons: Vec<&str> = of_class().map(|mark| mark.reason).collect();
        reasons.sort_unstable();
        reasons.dedup();
        for reason in reasons {
            let marks: Vec<&MarkView> = of_class().filter(|mark| mark.reason == reason).collect();
            let movements = marks.chunk_by(|a, b| a.movement == b.movement).map(|marks| {
                let bars: Vec<String> = marks.iter().map(|mark| label_said("bar", &mark.bar)).collect();
                in_movement(marks[0].movement.as_deref(), format!("bar {}", bars_text(&bars)))
            });
            let bars = movements.collect::<Vec<_>>().join("; ");
            let said = format!("{}: {reason} · {} · {bars}", class.name(), marks.len());
            let _ = writeln!(out, "{}", page.fill(&said, "  ", "    "));
        }
    }
}

/// Bars named once each, in order; many are cut short.
fn bars_text(bars: &[String]) -> String {
    const SHOWN: usize = 24;
    let mut once = bars.to_vec();
    once.dedup();
    let more = if once.len() > SHOWN { format!(" and {} more", once.len() - SHOWN) } else { String::new() };
    once.truncate(SHOWN);
    format!("{}{more}", once.join(", "))
}
