//! The change sheet as plain text.

use std::fmt::Write as _;

use super::signs;
use super::view::{ChangeView, LibrarianView, SectionSheet, SheetView, counted, time_words};
use crate::style::{Ink, Page};

/// What ends a section's page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SheetEnd {
    /// A form feed: a printer begins a new page.
    FormFeed,
    /// An empty line: for a terminal.
    EmptyLine,
}

/// The sheet: a page a section, then the librarian's.
#[must_use]
pub fn sheet_text(view: &SheetView, page: Page, end: SheetEnd) -> String {
    let mut out = String::new();
    for section in &view.sections {
        out.push_str(&page.set(|page| section_text(view, section, page)));
        out.push_str(match end {
            SheetEnd::FormFeed => "\u{c}",
            SheetEnd::EmptyLine => "\n",
        });
    }
    out.push_str(&page.set(|page| librarian_text(view, page)));
    out
}

fn heading(out: &mut String, view: &SheetView, left: &str, right: &str, page: Page) {
    let gap = page.width.saturating_sub(left.chars().count() + right.chars().count()).max(2);
    let _ = writeln!(out, "{}{}{right}", page.ink(Ink::Strong, left), " ".repeat(gap));
    let by = view.composer.as_ref().map_or(String::new(), |composer| format!(", {composer}"));
    let _ = writeln!(out, "{}", page.fill(&format!("{}{by}", view.work), "", ""));
    let _ = writeln!(out, "{}", page.fill(&view.after.words(), "to write: ", "          "));
    let _ = writeln!(out, "{}", page.fill(&view.before_words(), "so far:   ", "          "));
}

fn section_text(view: &SheetView, section: &SectionSheet, page: Page) -> String {
    let mut out = String::new();
    let marks = format!("{} to write, {} to take off", section.to_write, section.to_take_off);
    heading(&mut out, view, &section.name, &marks, page);
    let head = format!("\n{:>6}  {:<8}", "bar", "beat");
    let _ = writeln!(out, "{}", page.ink(Ink::Faint, &head));
    for bar in &section.bars {
        if let Some(movement) = &bar.movement {
            let _ = writeln!(out, "{}", page.ink(Ink::Strong, movement));
        }
        if let Some(letter) = &bar.rehearsal {
            let _ = writeln!(out, "{}", page.ink(Ink::Strong, &format!("[{letter}]")));
        }
        for (index, (change, beat)) in bar.with_beats().enumerate() {
            let label = if index == 0 { bar.bar.as_str() } else { "" };
            let first = format!("{label:>6}  {beat:<8}");
            let _ = writeln!(out, "{}", page.fill(&change_words(change), &first, &" ".repeat(18)));
        }
    }
    out
}

/// The sign in words, then what is said of it.
pub(super) fn change_words(change: &ChangeView) -> String {
    let mut text = change.words.clone();
    // A hook's or retake's direction stands in its words already.
    if let Some(sign) = change.sign
        && !text.contains(signs::name(sign).trim_end_matches("-bow"))
    {
        text = format!("{} {text}", signs::name(sign));
    }
    if let Some(which) = &change.which {
        let _ = write!(text, ", {which}");
    }
    if let Some(was) = &change.was {
        let _ = write!(text, " (was: {was})");
    }
    text
}

fn librarian_text(view: &SheetView, page: Page) -> String {
    let mut out = String::new();
    let librarian = &view.librarian;
    heading(&mut out, view, "For the librarian", &time_words(librarian.seconds), page);
    let width =
        librarian.sections.iter().map(|section| section.name.chars().count()).max().unwrap_or(7).max(7);
    let head = format!(
        "\n{:<width$} {:>7} {:>9} {:>7} {:>7} {:>11}",
        "section", "write", "take off", "stands", "marks", "time"
    );
    let _ = writeln!(out, "{}", page.ink(Ink::Faint, &head));
    for section in &librarian.sections {
        let _ = writeln!(
            out,
            "{:<width$} {:>7} {:>9} {:>7} {:>7} {:>11}",
            section.name,
            section.to_write,
            section.to_take_off,
            section.stands,
            section.marks,
            time_words(section.seconds)
        );
    }
    out.push('\n');
    for line in summary(librarian) {
        let _ = writeln!(out, "{}", page.fill(&line, "", "  "));
    }
    for list in librarian.lists() {
        let _ = writeln!(out, "\n{}", page.ink(Ink::Strong, list.heading));
        for (place, about) in &list.items {
            let _ = writeln!(out, "{}", page.fill(&format!("{place}: {about}"), "  ", "    "));
        }
    }
    out
}

/// What the librarian's page says below its table.
pub(super) fn summary(librarian: &LibrarianView) -> Vec<String> {
    let setting = &librarian.settings.seconds_a_mark;
    let mut lines = vec![
        format!(
            "{} on all stands: about {} of copying.",
            counted(librarian.marks, "mark"),
            time_words(librarian.seconds)
        ),
        format!(
            "The estimate takes {} {} for a mark ({}; {}; {}).",
            setting.value,
            setting.unit,
            setting.reason,
            setting.source,
            status_words(setting.status)
        ),
    ];
    if librarian.spared > 0 {
        lines.push(format!(
            "{} of the layer not written: players who bow as it comes do the same without them.",
            counted(u64::from(librarian.spared), "mark")
        ));
    }
    if librarian.not_carried.is_empty() {
        lines.push("Every bowing of the layer has its note in this score.".to_owned());
    }
    lines
}

fn status_words(status: arcata_bow::profile::Status) -> &'static str {
    use arcata_bow::profile::Status;
    match status {
        Status::Seen => "seen",
        Status::Counted => "counted",
        Status::Derived => "derived",
        Status::Default => "a default",
        Status::Yours => "yours",
    }
}
