//! What would mend page turns that are too quick.

use super::breaking::{
    Blank, Chosen, MeasuredUnit, Outlines, PaperRoom, PossibleLines, Rushed, choose, costs,
};
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
}

/// A staff that can still be read at the stand, tenths of a millimetre (MOLA guidelines 2017, as quoted).
const SMALL_STAFF: i64 = 70;

/// Tries other layouts where turns are too quick.
pub(super) fn advice(units: &[MeasuredUnit], room: &PaperRoom, turns: &[PageEnd]) -> Option<Advice> {
    let rushed = turns.iter().filter(|turn| turn.kind == PageEndKind::Rushed).count();
    if rushed == 0 {
        return None;
    }
    let now = lay_out(units, room, Rushed::Priced)?;
    let dear: i64 = turns
        .iter()
        .filter(|turn| turn.kind == PageEndKind::Rushed)
        .map(|turn| room.turn_cost(turn.time))
        .sum();
    let small: Vec<MeasuredUnit> = units.iter().map(|unit| smaller(*unit, room)).collect();
    let small_room = PaperRoom { staff: room.staff.min(SMALL_STAFF * 10), ..*room };
    let ways = [
        (Mending::EmptierPages, units, *room, Rushed::Refused),
        (Mending::OtherSide, units, PaperRoom { first: room.first.other(), ..*room }, Rushed::Priced),
        (Mending::BlankPages, units, PaperRoom { blank: Blank::LeftPages, ..*room }, Rushed::Priced),
        (Mending::SmallerStaff, &small, small_room, Rushed::Priced),
    ];
    let mut mends: Vec<Mend> = ways
        .into_iter()
        .filter_map(|(mending, units, room, how)| {
            let found = lay_out(units, &room, how)?;
            let rushed = rushed_in(&found, units, &room);
            let pages = found.systems.last().map_or(0, |system| system.page + 1);
            Some(Mend { mending, rushed, pages, cost: found.cost / costs::POINT })
        })
        .filter(|mend| mend.rushed < rushed)
        .collect();
    mends.sort_by_key(|mend| (mend.rushed, mend.cost));
    let points = |cost: i64| cost / costs::POINT;
    Some(Advice { cost: points(now.cost), without_turns: points(now.cost - dear), rushed, mends })
}

/// The cheapest layout of units.
pub(super) fn lay_out(units: &[MeasuredUnit], room: &PaperRoom, rushed: Rushed) -> Option<Chosen> {
    let lines = PossibleLines::of(units, room);
    let outlines = Outlines { units, room };
    let times: Vec<_> = units.iter().map(|unit| unit.turn).collect();
    choose(&lines, &times, room, rushed, |upper, lower| {
        outlines.distance(&lines.lines[upper], &lines.lines[lower])
    })
}

fn rushed_in(chosen: &Chosen, units: &[MeasuredUnit], room: &PaperRoom) -> usize {
    let ends =
        chosen.systems.windows(2).filter(|pair| pair[0].page != pair[1].page && room.is_turned(pair[0].page));
    ends.filter(|pair| units[pair[1].first].turn.is_rushed(room.turn)).count()
}

/// A unit on a smaller staff: everything shrinks with it.
fn smaller(unit: MeasuredUnit, room: &PaperRoom) -> MeasuredUnit {
    let shrunk = |length: i64| {
        if room.staff > SMALL_STAFF * 10 { length * SMALL_STAFF * 10 / room.staff } else { length }
    };
    MeasuredUnit {
        width: shrunk(unit.width),
        front: shrunk(unit.front),
        above: shrunk(unit.above),
        below: shrunk(unit.below),
        ..unit
    }
}
