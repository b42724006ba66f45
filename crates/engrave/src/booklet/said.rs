//! What is said of a part on paper: how its pages end, what would mend quick turns, what its player should know.

use arcata_bow::RealTime;
use arcata_bow::turns::TurnTime;
use arcata_languages::{Argument, Saying};

use super::{Advice, BookletRemark, HouseConflict, Mending, PageEnd, PageEndKind};

/// Microseconds in a tenth of a second (by definition).
const TENTH: i64 = 100_000;

/// How a page ends; `needed` is what a turn needs.
#[must_use]
pub fn page_end_said(turn: &PageEnd, needed: RealTime) -> Saying {
    let key = match turn.kind {
        PageEndKind::Facing => "page-end-facing",
        PageEndKind::FoldsOut => "page-end-fold",
        PageEndKind::Turned => "page-end-turned",
        PageEndKind::Rushed => "page-end-rushed",
    };
    let said = Saying::new(key).quoting("page", turn.page.to_string()).with("bar", turn.bar.clone());
    match turn.kind {
        PageEndKind::Facing | PageEndKind::FoldsOut => said,
        PageEndKind::Turned => with_times(said, turn.time),
        PageEndKind::Rushed => with_times(said, turn.time).with("needed", tenths(needed)),
    }
}

/// The rest that there is, what sounds on open strings, and the rest on the way back.
fn with_times(said: Saying, time: TurnTime) -> Saying {
    let has_open = time.open.micros * 2 >= TENTH;
    let said = said
        .with("rest", tenths(time.rest))
        .choosing("strings", if has_open { "some" } else { "none" })
        .with("open", tenths(time.open))
        .choosing("returns", if time.back.is_some() { "yes" } else { "no" });
    said.with("back", tenths(time.back.unwrap_or(RealTime::from_micros(0))))
}

fn tenths(time: RealTime) -> Argument {
    Argument::Tenths((time.micros + TENTH / 2).div_euclid(TENTH))
}

/// What the quick turns of a part cost and what would mend them: sentences, and how far each stands in.
#[must_use]
pub fn advice_said(advice: &Advice) -> Vec<(usize, Saying)> {
    let cost = Saying::new("quick-turns-cost")
        .with("count", advice.rushed)
        .with("cost", advice.cost)
        .with("without", advice.without_turns);
    let least = match advice.unavoidable {
        0 => Saying::new("quick-turns-dearer"),
        least if least < advice.rushed => Saying::new("quick-turns-least").with("count", least),
        1 => Saying::new("quick-turns-one-stays"),
        _ => Saying::new("quick-turns-stay"),
    };
    let mut said = vec![(0, cost), (1, least)];
    said.extend(advice.mends.iter().map(|mend| {
        let what = match mend.mending {
            Mending::EmptierPages => "emptier",
            Mending::OtherSide => "side",
            Mending::BlankPages => "blank",
            Mending::SmallerStaff => "smaller",
            Mending::FoldOuts => "folds",
            Mending::AllTogether => "all",
        };
        let said = Saying::new("quick-turns-mend").choosing("what", what).with("count", mend.rushed);
        (1, said.with("pages", mend.pages).with("cost", mend.cost))
    }));
    if advice.mends.is_empty() {
        said.push((1, Saying::new("quick-turns-partner")));
    }
    said
}

/// A remark, and whether it wants mending before the part is used.
#[must_use]
pub fn remark_said(remark: &BookletRemark) -> (Saying, bool) {
    match remark {
        BookletRemark::Tacet => (Saying::new("part-tacet"), false),
        BookletRemark::NotesNotDrawn { count, bar } => {
            (Saying::new("part-notes-missing").with("count", *count).with("bar", bar.clone()), true)
        }
        BookletRemark::NoCue { bars: (first, last), count } => {
            let said = Saying::new("part-no-cue").with("first", first.clone()).with("last", last.clone());
            (said.with("count", *count), false)
        }
        BookletRemark::RestsWrittenOut => (Saying::new("part-rests-written-out"), false),
        BookletRemark::SmallerStaff { tenths } => {
            (Saying::new("part-smaller-staff").with("height", Argument::Tenths(*tenths)), false)
        }
        BookletRemark::TooHigh { bar } => (Saying::new("part-too-high").with("bar", bar.clone()), true),
    }
}

/// What a house profile asks for that cannot be had together.
#[must_use]
pub fn house_conflict_said(conflict: &HouseConflict) -> Saying {
    let tenths = |length: i64| Argument::Tenths(length);
    match *conflict {
        HouseConflict::Lines { first, asked, fit, staff, apart } => Saying::new("house-lines")
            .choosing("page", if first { "first" } else { "other" })
            .with("count", asked)
            .with("fit", fit)
            .with("staff", tenths(staff))
            .with("apart", tenths(apart)),
        HouseConflict::Smallest => Saying::new("house-smallest"),
        HouseConflict::Cue { bars, rest } => Saying::new("house-cue").with("bars", bars).with("rest", rest),
        HouseConflict::Indent { indent, left } => {
            Saying::new("house-indent").with("indent", tenths(indent)).with("left", tenths(left))
        }
        HouseConflict::Margin { margin } => Saying::new("house-margin").with("margin", tenths(margin)),
    }
}
