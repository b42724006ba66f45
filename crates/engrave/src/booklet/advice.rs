//! What would mend page turns that are too quick.

use super::breaking::{Blank, BookletSide, FoldOuts, Rushed, costs};
use super::layout::{LayoutLimits, NaturalPart, PartLayout};
use super::{PageEnd, PageEndKind};

/// A part with turns that are too quick: what else could be done.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Advice {
    /// The layout's cost in points, and without what its quick turns cost.
    pub cost: i64,
    /// See `cost`.
    pub without_turns: i64,
    /// How many turns are too quick.
    pub rushed: usize,
    /// How many stay too quick in every layout that the house allows, whatever its pages look like.
    pub unavoidable: usize,
    /// What makes fewer of them, the best first.
    pub mends: Vec<Mend>,
}

/// Another layout with fewer turns that are too quick.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Mend {
    /// What is to be done.
    pub mending: Mending,
    /// How many are too quick then.
    pub rushed: usize,
    /// Pages then.
    pub pages: usize,
    /// What the layout costs then, points.
    pub cost: i64,
}

/// What a house can do about page turns.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mending {
    /// Emptier pages, whatever they cost.
    EmptierPages,
    /// The first page on the other side.
    OtherSide,
    /// Left pages that stay blank.
    BlankPages,
    /// A staff of 7 mm.
    SmallerStaff,
    /// A third page that folds out.
    FoldOuts,
    /// All that the house does not allow yet together.
    AllTogether,
}

/// A staff that can still be read at the stand, tenths of a millimetre (MOLA guidelines 2017, as quoted).
const SMALL_STAFF: i64 = 70;

/// Tries other layouts where turns are too quick.
pub(super) fn advice(
    part: &NaturalPart,
    (now, limits): (&PartLayout, &LayoutLimits),
    turns: &[PageEnd],
) -> Option<Advice> {
    let quick = || turns.iter().filter(|turn| turn.kind == PageEndKind::Rushed);
    let rushed = quick().count();
    if rushed == 0 {
        return None;
    }
    let fewest = part.best(limits, Rushed::Fewest)?;
    let price =
        |layout: &PartLayout| layout.cost - costs::ANY_RUSHED * i64::try_from(layout.rushed).unwrap_or(0);
    let mend = |mending, layout: &PartLayout, cost: i64| Mend {
        mending,
        rushed: layout.rushed,
        pages: layout.chosen.systems.last().map_or(0, |system| system.page + 1),
        cost: cost / costs::POINT,
    };
    let mut mends = vec![mend(Mending::EmptierPages, &fewest, price(&fewest))];
    let ways = wider(limits);
    for (mending, limits) in &ways {
        let found = part.best(limits, Rushed::Priced);
        mends.extend(found.map(|found| mend(*mending, &found, found.cost)));
    }
    if ways.len() > 1 {
        let all = LayoutLimits {
            sides: vec![BookletSide::Right, BookletSide::Left],
            staffs: ways.iter().map(|(_, wider)| &wider.staffs).max_by_key(|staffs| staffs.len())?.clone(),
            blank: Blank::LeftPages,
            fold: FoldOuts::ForTurns,
        };
        let found = part.best(&all, Rushed::Priced);
        // What one way alone does needs no other.
        let least = mends.iter().map(|mend| mend.rushed).min().unwrap_or(rushed);
        let found = found.filter(|found| found.rushed < least);
        mends.extend(found.map(|found| mend(Mending::AllTogether, &found, found.cost)));
    }
    mends.retain(|mend| mend.rushed < rushed);
    mends.sort_by_key(|mend| (mend.rushed, mend.cost));
    let dear: i64 = quick().map(|turn| now.part.room.turn_cost(turn.time)).sum();
    Some(Advice {
        cost: now.cost / costs::POINT,
        without_turns: (now.cost - dear) / costs::POINT,
        rushed,
        unavoidable: fewest.rushed.min(rushed),
        mends,
    })
}

/// The house's limits, each made wider by one thing that it does not allow yet.
fn wider(limits: &LayoutLimits) -> Vec<(Mending, LayoutLimits)> {
    let mut ways = Vec::new();
    if let [side] = limits.sides[..] {
        let sides = vec![side, side.next()];
        ways.push((Mending::OtherSide, LayoutLimits { sides, ..limits.clone() }));
    }
    if limits.blank == Blank::Never {
        ways.push((Mending::BlankPages, LayoutLimits { blank: Blank::LeftPages, ..limits.clone() }));
    }
    if limits.staffs.iter().all(|staff| *staff > SMALL_STAFF) {
        let staffs = limits.staffs.iter().copied().chain([SMALL_STAFF]).collect();
        ways.push((Mending::SmallerStaff, LayoutLimits { staffs, ..limits.clone() }));
    }
    if limits.fold == FoldOuts::Never {
        ways.push((Mending::FoldOuts, LayoutLimits { fold: FoldOuts::ForTurns, ..limits.clone() }));
    }
    ways
}
