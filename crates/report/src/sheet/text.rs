//! The change sheet as plain text.

use std::fmt::Write as _;

use super::signs;
use super::view::SheetSign;
use super::view::{ChangeView, LibrarianView, SectionSheet, SheetView, time_words};
use crate::style::{Ink, Page};
use crate::text::pad;
use arcata_bow::profile::Status;
use arcata_languages::{Saying, Wording};
use unicode_width::UnicodeWidthStr;

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
    let labels = ["sheet-label-write", "sheet-label-so-far"].map(|key| view.wording.word(key));
    let room = labels.iter().map(|label| label.width()).max().unwrap_or(0) + 1;
    for (label, text) in labels.iter().zip([view.after.words(), view.before_words()]) {
        let _ = writeln!(out, "{}", page.fill(&text, &pad(label, room), &" ".repeat(room)));
    }
}

fn section_text(view: &SheetView, section: &SectionSheet, page: Page) -> String {
    let mut out = String::new();
    let marks = view.count(section);
    heading(&mut out, view, &section.name, &marks, page);
    let head = format!("\n{:>6}  {:<8}", page.short_bar(), view.wording.word("column-beat"));
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
            let _ = writeln!(out, "{}", page.fill(&change_words(change, view), &first, &" ".repeat(18)));
        }
    }
    out
}

/// The sign in words, then what is said of it.
pub(super) fn change_words(change: &ChangeView, view: &SheetView) -> String {
    let mut text = change.words.clone();
    // A hook's or retake's direction stands in its words already.
    if let Some(sign) = change.sign
        && !says(&text, sign, &view.wording)
    {
        text = format!("{} {text}", signs::name(sign, &view.wording));
    }
    if let Some(which) = &change.which {
        let _ = write!(text, ", {which}");
    }
    if let Some(was) = &change.was {
        let _ = write!(text, " {}", view.was(was));
    }
    text
}

/// Whether words name the way of a bow already.
fn says(text: &str, sign: SheetSign, wording: &Wording) -> bool {
    let way = Saying::new("bow-way").choosing("bow", sign.case());
    text.to_lowercase().contains(&wording.say(&way).to_lowercase())
}

fn librarian_text(view: &SheetView, page: Page) -> String {
    let mut out = String::new();
    let librarian = &view.librarian;
    heading(&mut out, view, &view.wording.word("sheet-librarian"), &time_words(librarian.seconds), page);
    let width =
        librarian.sections.iter().map(|section| section.name.chars().count()).max().unwrap_or(7).max(7);
    let [section, write, off, stands, marks, time] = COLUMNS.map(|key| view.wording.word(key));
    let width = width.max(section.width());
    let head = format!("\n{} {write:>7} {off:>9} {stands:>7} {marks:>7} {time:>11}", pad(&section, width));
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
    for line in summary(librarian, &view.wording) {
        let _ = writeln!(out, "{}", page.fill(&line, "", "  "));
    }
    for list in librarian.lists(&view.wording) {
        let _ = writeln!(out, "\n{}", page.ink(Ink::Strong, &list.heading));
        for (place, about) in &list.items {
            let _ = writeln!(out, "{}", page.fill(&format!("{place}: {about}"), "  ", "    "));
        }
    }
    out
}

/// The headings of the librarian's table.
pub(super) const COLUMNS: [&str; 6] =
    ["sheet-section", "sheet-write", "sheet-off", "sheet-stands", "sheet-marks", "sheet-time"];

/// What the librarian's page says below its table.
pub(super) fn summary(librarian: &LibrarianView, wording: &Wording) -> Vec<String> {
    let setting = &librarian.settings.seconds_a_mark;
    let whole = |count: u64| i64::try_from(count).unwrap_or(i64::MAX);
    let copying = Saying::new("sheet-copying")
        .with("marks", whole(librarian.marks))
        .quoting("time", time_words(librarian.seconds));
    let yours = setting.status == Status::Yours;
    let source = if yours { "sheet-estimate-set-by-user" } else { "sheet-estimate-source" };
    let estimate = Saying::new("sheet-estimate")
        .quoting("value", setting.value.to_string())
        .quoting("unit", &setting.unit)
        .with("reason", Saying::new("sheet-estimate-reason"))
        .with("source", Saying::new(source))
        .choosing("status", status(setting.status));
    let mut lines = vec![wording.say(&copying), wording.say(&estimate)];
    if librarian.spared > 0 {
        lines.push(wording.say(&Saying::new("sheet-spared").with("marks", i64::from(librarian.spared))));
    }
    if librarian.not_carried.is_empty() {
        lines.push(wording.word("sheet-all-found"));
    }
    lines
}

const fn status(status: Status) -> &'static str {
    use arcata_bow::profile::Status;
    match status {
        Status::Seen => "seen",
        Status::Counted => "counted",
        Status::Derived => "derived",
        Status::Default => "default",
        Status::Yours => "yours",
    }
}
