//! What lines do together, for people at a terminal.

use std::fmt::Write as _;

use arcata_bow::points;
use arcata_score::places;

use crate::plan_view::PlanView;
use crate::review_view::bar_said;
use crate::style::{Ink, Page};
use crate::text::{counted, heading};
use crate::together_view::{
    ANCHOR, DepartureView, DownbeatView, DownbeatsView, EVEN, GroupView, PRINTED_MARK, TogetherView,
};

/// So many groups, and so many departures, are told at a terminal.
const SHOWN: usize = 12;

/// Who begins a stroke on which downbeat, bar by bar.
#[must_use]
pub fn downbeats_text(views: &[PlanView], page: Page) -> String {
    page.set(|page| downbeats(views, page))
}

fn downbeats(views: &[PlanView], page: Page) -> String {
    let mut out = String::new();
    for (index, view) in views.iter().enumerate() {
        if index > 0 {
            out.push('\n');
        }
        heading(&mut out, &view.file, view.title.as_deref(), page);
        out.push('\n');
        let said = |bar: &DownbeatView| bar_said(bar.movement.as_ref(), &bar.bar);
        let label = view.downbeats.bars.iter().map(|bar| said(bar).chars().count()).max().unwrap_or(0);
        for bar in &view.downbeats.bars {
            let head = format!("{:label$}  ", said(bar));
            let hanging = " ".repeat(head.chars().count());
            let _ = writeln!(out, "{}", page.fill(&who(&view.downbeats, bar), &head, &hanging));
        }
    }
    out
}

/// "down: Violin I, Viola · goes on: Violoncello".
fn who(table: &DownbeatsView, bar: &DownbeatView) -> String {
    let of = |does: &str| -> Vec<String> {
        let lines = table.lines.iter().zip(&bar.lines);
        lines.filter(|(_, found)| **found == does).map(|(name, _)| in_a_list(name)).collect()
    };
    let mut parts: Vec<String> = Vec::new();
    if bar.unspoken {
        parts.push("! no bow begins".to_owned());
    }
    for does in ["down", "up", "goes on", "rests"] {
        let names = of(does);
        if names.len() == table.lines.len() {
            parts.push(format!("{does}: all"));
        } else if !names.is_empty() {
            parts.push(format!("{does}: {}", names.join(", ")));
        }
    }
    parts.join(" · ")
}

/// The groups and the departures.
pub(crate) fn together_text(out: &mut String, together: &TogetherView, page: Page) {
    if !together.groups.is_empty() {
        let _ = writeln!(out, "\n{}", page.ink(Ink::Strong, "bowed alike"));
        for group in together.groups.iter().take(SHOWN) {
            let _ = writeln!(out, "{}", page.fill(&group_text(group), "  ", "      "));
        }
        more(out, together.groups.len(), "groups");
    }
    if !together.departures.is_empty() {
        let _ = writeln!(out, "\n{}", page.ink(Ink::Strong, "bowed differently, and why"));
        for departure in together.departures.iter().take(SHOWN) {
            let _ = writeln!(out, "{}", page.fill(&departure_text(departure), "  ", "      "));
        }
        more(out, together.departures.len(), "places");
    }
}

fn more(out: &mut String, count: usize, what: &str) {
    if count > SHOWN {
        let _ = writeln!(out, "  and {} {what} more (all of them with --format json)", count - SHOWN);
    }
}

/// "Viola, voice 1" would fall apart in a list with commas.
fn in_a_list(name: &str) -> String {
    name.replace(", voice", " voice")
}

fn bars(group: &GroupView) -> String {
    let (from, to) = (&group.from_bar, &group.to_bar);
    places::bars_said("bar", group.movement.as_deref(), (from, to))
}

fn group_text(group: &GroupView) -> String {
    let names: Vec<String> = group.lines.iter().map(|name| in_a_list(name)).collect();
    let lines = match names.as_slice() {
        [first @ .., last] if !first.is_empty() => format!("{} and {last}", first.join(", ")),
        lines => lines.join(", "),
    };
    let strokes = counted(group.strokes, "stroke");
    format!("{}: {lines} {}, {strokes}", bars(group), group.relation)
}

fn departure_text(departure: &DepartureView) -> String {
    let strokes = counted(departure.strokes, "stroke");
    let what = if departure.from == "section" {
        "bowed unlike those who play the same rhythm"
    } else {
        "bowed unlike the same figure elsewhere"
    };
    let bar = bar_said(departure.movement.as_ref(), &departure.bar);
    let place = format!("{}, {}", places::at_beat(&bar, &departure.spoken_beat), departure.line);
    let price: i64 = departure.dearer.values().sum();
    let why = match departure.reason {
        PRINTED_MARK => "the printed mark says so".to_owned(),
        ANCHOR => "an anchor says so".to_owned(),
        EVEN => "going along would cost the same".to_owned(),
        reason => format!("going along would raise the penalty by {}, above all: {reason}", points(price)),
    };
    format!("{place}: {strokes} {what}; {why}")
}
