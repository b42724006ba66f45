//! Ways to bow a passage, anchors and repairs as text for people.

use std::fmt::Write as _;

use arcata_bow::points;

use crate::lane::lanes;
use crate::plan_view::{AlternativeView, PlanStrokeView, PlannedLineView};
use crate::repairs_view::{NotationChangeView, RepairsView};
use crate::style::{Ink, Page};
use crate::ways_view::{AnchorsView, EndingView, PlanWayView};

/// All that was asked about a line besides its plan.
pub(crate) fn further(out: &mut String, line: &PlannedLineView, page: Page) {
    if let Some(anchors) = &line.anchors {
        anchors_text(out, anchors, page);
    }
    if let Some(ending) = &line.ending {
        ending_text(out, ending, page);
    }
    if !line.alternatives.is_empty() {
        alternatives_text(out, &line.alternatives, page);
    }
    if let Some(repairs) = &line.repairs {
        repairs_text(out, repairs, page);
    }
}

fn filled(out: &mut String, page: Page, text: &str, first: &str, rest: &str) {
    let _ = writeln!(out, "{}", page.fill(&page.plain(text), first, rest));
}

fn heading(out: &mut String, page: Page, text: &str) {
    let _ = writeln!(out, "\n{}", page.ink(Ink::Strong, &page.fill(&page.plain(text), "  ", "  ")));
}

/// What is better and what is worse, a paragraph each.
fn weighed(out: &mut String, page: Page, (gains, losses): (&[String], &[String])) {
    for (what, list) in [("Better: ", gains), ("Worse: ", losses)] {
        if !list.is_empty() {
            filled(out, page, &format!("{what}{}", list.join("; ")), "     ", "             ");
        }
    }
}

fn lane_text(out: &mut String, strokes: &[PlanStrokeView], page: Page) {
    for row in lanes(strokes, page.width.saturating_sub(5), page) {
        let _ = writeln!(out, "{}", format!("     {row}").trim_end());
    }
}

const KEY: &str = "D down, U up; h hooked to the stroke before, r retaken";

fn alternatives_text(out: &mut String, ways: &[AlternativeView], page: Page) {
    heading(out, page, "ways to bow these bars");
    let _ = writeln!(out, "  {}", page.ink(Ink::Faint, KEY));
    for (rank, way) in ways.iter().enumerate() {
        let more = if way.more == 0 { String::new() } else { format!(" (penalty +{})", points(way.more)) };
        out.push('\n');
        filled(out, page, &format!("{}. {}{more}", rank + 1, way.name), "  ", "     ");
        weighed(out, page, (&way.gains, &way.losses));
        lane_text(out, &way.strokes, page);
    }
    if ways.len() == 1 {
        filled(out, page, "The printed marks and anchors leave no other way.", "\n  ", "  ");
    }
}

fn ending_text(out: &mut String, ending: &EndingView, page: Page) {
    heading(out, page, &format!("ways to {}", ending.asked));
    for assumption in &ending.assumptions {
        filled(out, page, assumption, "  assumed: ", "           ");
    }
    if ending.ways.is_empty() {
        let _ = writeln!(out, "  There is none.");
    }
    for (rank, way) in ending.ways.iter().enumerate() {
        way_text(out, rank, way, page);
    }
}

fn way_text(out: &mut String, rank: usize, way: &PlanWayView, page: Page) {
    let touched = match way.changes {
        0 => String::new(),
        1 => ", one change to the notation".to_owned(),
        more => format!(", {more} changes to the notation"),
    };
    let sign = if way.more < 0 { "" } else { "+" };
    out.push('\n');
    let head = format!("{}. {} (penalty {sign}{}{touched})", rank + 1, way.name, points(way.more));
    filled(out, page, &head, "  ", "     ");
    weighed(out, page, (&way.gains, &way.losses));
    lane_text(out, &way.strokes, page);
}

fn anchors_text(out: &mut String, anchors: &AnchorsView, page: Page) {
    heading(out, page, &format!("anchors: {}", anchors.anchors.join("; ")));
    if anchors.more == 0 && anchors.conflicts.is_empty() {
        filled(out, page, "No penalty: the best plan does so anyway.", "  ", "  ");
        return;
    }
    filled(
        out,
        page,
        &format!("Penalty: {} higher than the best plan without them.", points(anchors.more)),
        "  ",
        "  ",
    );
    weighed(out, page, (&anchors.gains, &anchors.losses));
    if !anchors.otherwise.is_empty() {
        filled(out, page, &format!("otherwise: {}", anchors.otherwise.join(", ")), "     ", "            ");
    }
    for conflict in &anchors.conflicts {
        filled(out, page, &conflict.sentence, "  ! ", "    ");
    }
}

fn repairs_text(out: &mut String, repairs: &RepairsView, page: Page) {
    let printed: i64 = repairs.printed.values().sum();
    heading(out, page, &format!("repairs: the whole line as printed has a penalty of {}", points(printed)));
    for assumption in &repairs.assumptions {
        filled(out, page, assumption, "  assumed: ", "           ");
    }
    if repairs.steps.is_empty() {
        let _ = writeln!(out, "  No change to the slurs is worth its price.");
    }
    let mut before = 0;
    for step in &repairs.steps {
        let count = step.changes.len();
        let changes = if count == 1 { "one change".to_owned() } else { format!("{count} changes") };
        let further = if before == 0 {
            String::new()
        } else {
            format!(", {} of it by this step", points(step.gain - before))
        };
        before = step.gain;
        out.push('\n');
        filled(
            out,
            page,
            &format!("with {changes}: penalty {} lower{further}", points(step.gain)),
            "  ",
            "     ",
        );
        for change in &step.changes {
            change_text(out, change, page);
        }
        weighed(out, page, (&step.gains, &step.losses));
    }
}

fn change_text(out: &mut String, change: &NotationChangeView, page: Page) {
    filled(out, page, &change.sentence, "   > ", "     ");
    filled(out, page, &change.before.join("; "), "     before: ", "             ");
    filled(out, page, &change.after.join("; "), "     after:  ", "             ");
}
