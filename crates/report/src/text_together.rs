//! What lines do together, for people at a terminal.

use std::fmt::Write as _;

use arcata_languages::{Argument, Saying};

use crate::plan_view::PlanView;
use crate::style::{Ink, Page};
use crate::text::heading;
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
        let said = |bar: &DownbeatView| page.wording().bar(bar.movement.as_deref(), &bar.bar);
        let label = view.downbeats.bars.iter().map(|bar| said(bar).chars().count()).max().unwrap_or(0);
        for bar in &view.downbeats.bars {
            let head = format!("{:label$}  ", said(bar));
            let hanging = " ".repeat(head.chars().count());
            let _ = writeln!(out, "{}", page.fill(&who(&view.downbeats, bar, page), &head, &hanging));
        }
    }
    out
}

/// "down: Violin I, Viola · goes on: Violoncello".
fn who(table: &DownbeatsView, bar: &DownbeatView, page: Page) -> String {
    let of = |does: &str| -> Vec<String> {
        let lines = table.lines.iter().zip(&bar.lines);
        lines.filter(|(_, found)| **found == does).map(|(name, _)| in_a_list(name)).collect()
    };
    let mut parts: Vec<String> = Vec::new();
    if bar.unspoken {
        parts.push(format!("! {}", page.word("no-bow-begins")));
    }
    for (does, key) in
        [("down", "does-down"), ("up", "does-up"), ("goes on", "does-go-on"), ("rests", "does-rest")]
    {
        let names = of(does);
        let what = |names: String| {
            page.say(&Saying::new("who-does").with("does", Saying::new(key)).quoting("names", names))
        };
        if names.len() == table.lines.len() {
            parts.push(what(page.word("all-of-them")));
        } else if !names.is_empty() {
            parts.push(what(names.join(", ")));
        }
    }
    parts.join(" · ")
}

/// The groups and the departures.
pub(crate) fn together_text(out: &mut String, together: &TogetherView, page: Page) {
    if !together.groups.is_empty() {
        let _ = writeln!(out, "\n{}", page.ink(Ink::Strong, &page.word("bowed-alike")));
        for group in together.groups.iter().take(SHOWN) {
            let _ = writeln!(out, "{}", page.fill(&group_text(group, page), "  ", "      "));
        }
        more(out, together.groups.len(), "groups-more", page);
    }
    if !together.departures.is_empty() {
        let _ = writeln!(out, "\n{}", page.ink(Ink::Strong, &page.word("bowed-differently")));
        for departure in together.departures.iter().take(SHOWN) {
            let _ = writeln!(out, "{}", page.fill(&departure_text(departure, page), "  ", "      "));
        }
        more(out, together.departures.len(), "places-more", page);
    }
}

fn more(out: &mut String, count: usize, key: &'static str, page: Page) {
    if count > SHOWN {
        let _ = writeln!(out, "  {}", page.say(&Saying::new(key).with("count", count - SHOWN)));
    }
}

/// "Viola, voice 1" would fall apart in a list with commas.
fn in_a_list(name: &str) -> String {
    name.replace(", voice", " voice")
}

fn group_text(group: &GroupView, page: Page) -> String {
    let names: Vec<String> = group.lines.iter().map(|name| in_a_list(name)).collect();
    let wording = page.wording();
    let said = Saying::new("group")
        .quoting("bars", wording.bars(group.movement.as_deref(), (&group.from_bar, &group.to_bar)))
        .quoting("lines", wording.list(&names))
        .choosing(
            "relation",
            match group.relation {
                "in unison" => "unison",
                "in octaves" => "octaves",
                "in parallel" => "parallel",
                _ => "rhythm",
            },
        )
        .with("strokes", group.strokes);
    wording.say(&said)
}

fn departure_text(departure: &DepartureView, page: Page) -> String {
    let wording = page.wording();
    let bar = wording.bar(departure.movement.as_deref(), &departure.bar);
    let at = Saying::new("place-of-bar").quoting("bar", bar).quoting("beat", &departure.spoken_beat);
    let price: i64 = departure.dearer.values().sum();
    let why = match departure.reason.as_str() {
        PRINTED_MARK => Saying::new("departs-by-mark"),
        ANCHOR => Saying::new("departs-by-anchor"),
        EVEN => Saying::new("departs-evenly"),
        reason => {
            Saying::new("departs-for").with("points", Argument::Points(price)).quoting("reason", reason)
        }
    };
    let said = Saying::new("departure")
        .with("at", at)
        .quoting("line", &departure.line)
        .with("strokes", departure.strokes)
        .choosing("from", departure.from)
        .with("why", why);
    wording.say(&said)
}
