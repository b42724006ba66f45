//! Ways to bow a passage, anchors and repairs as text for people.

use std::fmt::Write as _;

use arcata_languages::{Argument, Saying};
use unicode_width::UnicodeWidthStr;

use crate::lane::lanes;
use crate::plan_view::{AlternativeView, PlanStrokeView, PlannedLineView};
use crate::repairs_view::{NotationChangeView, RepairsView};
use crate::style::{Ink, Page};
use crate::text::pad;
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
    for (what, list) in [("better", gains), ("worse", losses)] {
        if !list.is_empty() {
            let said = Saying::new("label").with("label", Saying::new(what));
            let said = format!("{} {}", page.say(&said), list.join(page.wording().language.semicolon()));
            filled(out, page, &said, "     ", "             ");
        }
    }
}

fn lane_text(out: &mut String, strokes: &[PlanStrokeView], page: Page) {
    for row in lanes(strokes, page.width.saturating_sub(5), page) {
        let _ = writeln!(out, "{}", format!("     {row}").trim_end());
    }
}

fn alternatives_text(out: &mut String, ways: &[AlternativeView], page: Page) {
    heading(out, page, &page.word("ways-to-bow"));
    let _ = writeln!(out, "  {}", page.ink(Ink::Faint, &page.word("lane-letters")));
    for (rank, way) in ways.iter().enumerate() {
        let more = Saying::new("way-penalty").with("points", Argument::Points(way.more));
        let more = if way.more == 0 { String::new() } else { format!(" {}", page.say(&more)) };
        out.push('\n');
        filled(out, page, &format!("{}. {}{more}", rank + 1, way.name), "  ", "     ");
        weighed(out, page, (&way.gains, &way.losses));
        lane_text(out, &way.strokes, page);
    }
    if ways.len() == 1 {
        filled(out, page, &page.word("no-other-way"), "\n  ", "  ");
    }
}

fn ending_text(out: &mut String, ending: &EndingView, page: Page) {
    heading(out, page, &page.say(&Saying::new("ways-to").quoting("asked", &ending.asked)));
    for assumption in &ending.assumptions {
        let _ = writeln!(out, "{}", page.labelled("assumed", "  ", &page.plain(assumption)));
    }
    if ending.ways.is_empty() {
        let _ = writeln!(out, "  {}", page.word("no-way"));
    }
    for (rank, way) in ending.ways.iter().enumerate() {
        way_text(out, rank, way, page);
    }
}

fn way_text(out: &mut String, rank: usize, way: &PlanWayView, page: Page) {
    let sign = if way.more < 0 { "" } else { "+" };
    out.push('\n');
    let penalty = Saying::new("way-penalty-and-changes")
        .quoting("points", format!("{sign}{}", page.wording().argument(&Argument::Points(way.more))))
        .with("changes", way.changes);
    let head = format!("{}. {} {}", rank + 1, way.name, page.say(&penalty));
    filled(out, page, &head, "  ", "     ");
    weighed(out, page, (&way.gains, &way.losses));
    lane_text(out, &way.strokes, page);
}

fn anchors_text(out: &mut String, anchors: &AnchorsView, page: Page) {
    heading(
        out,
        page,
        &page.say(
            &Saying::new("anchors")
                .quoting("anchors", anchors.anchors.join(page.wording().language.semicolon())),
        ),
    );
    if anchors.more == 0 && anchors.conflicts.is_empty() {
        filled(out, page, &page.word("anchors-cost-nothing"), "  ", "  ");
        return;
    }
    filled(
        out,
        page,
        &page.say(&Saying::new("anchors-cost").with("points", Argument::Points(anchors.more))),
        "  ",
        "  ",
    );
    weighed(out, page, (&anchors.gains, &anchors.losses));
    if !anchors.otherwise.is_empty() {
        let said = page.say(&Saying::new("otherwise").quoting("what", anchors.otherwise.join(", ")));
        filled(out, page, &said, "     ", "            ");
    }
    for conflict in &anchors.conflicts {
        filled(out, page, &conflict.sentence, "  ! ", "    ");
    }
}

fn repairs_text(out: &mut String, repairs: &RepairsView, page: Page) {
    let printed: i64 = repairs.printed.values().sum();
    heading(out, page, &page.say(&Saying::new("repairs").with("points", Argument::Points(printed))));
    for assumption in &repairs.assumptions {
        let _ = writeln!(out, "{}", page.labelled("assumed", "  ", &page.plain(assumption)));
    }
    if repairs.steps.is_empty() {
        let _ = writeln!(out, "  {}", page.word("no-repair"));
    }
    let mut before = 0;
    for step in &repairs.steps {
        let said = Saying::new("repair-step")
            .with("count", step.changes.len())
            .with("points", Argument::Points(step.gain))
            .choosing("step", if before == 0 { "first" } else { "further" })
            .with("more", Argument::Points(step.gain - before));
        before = step.gain;
        out.push('\n');
        filled(out, page, &page.say(&said), "  ", "     ");
        for change in &step.changes {
            change_text(out, change, page);
        }
        weighed(out, page, (&step.gains, &step.losses));
    }
}

fn change_text(out: &mut String, change: &NotationChangeView, page: Page) {
    filled(out, page, &change.sentence, "   > ", "     ");
    let width = page.word("before").width().max(page.word("after").width()) + 2;
    for (key, strokes) in [("before", &change.before), ("after", &change.after)] {
        let label = page.say(&Saying::new("label").with("label", Saying::new(key)));
        let rest = " ".repeat(width + 5);
        filled(
            out,
            page,
            &strokes.join(page.wording().language.semicolon()),
            &format!("     {}", pad(&label, width)),
            &rest,
        );
    }
}
