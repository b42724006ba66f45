//! The layouts that a house allows, and the cheapest of them.
//!
//! A smaller staff is tried only where turns stay too quick without it: it costs every player's eyes.

use super::breaking::{
    Blank, BookletSide, Chosen, FoldOuts, MeasuredUnit, Outlines, PaperRoom, PossibleLines, Rushed, choose,
    costs,
};
use super::house::House;

/// A part as wide and high as the engraver makes it on the house's staff, and the room that there is.
#[derive(Clone, Debug)]
pub(super) struct NaturalPart {
    pub(super) units: Vec<MeasuredUnit>,
    pub(super) room: PaperRoom,
    /// Height of the staff, tenths of a millimetre.
    pub(super) staff: i64,
}

/// What a house allows.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct LayoutLimits {
    /// Where the first page of music may lie; the first one is preferred.
    pub(super) sides: Vec<BookletSide>,
    /// Staffs, tenths of a millimetre, the largest first.
    pub(super) staffs: Vec<i64>,
    pub(super) blank: Blank,
    pub(super) fold: FoldOuts,
}

/// A layout with what it is made of.
#[derive(Clone, Debug)]
pub(super) struct PartLayout {
    pub(super) chosen: Chosen,
    /// With what a cover and a smaller staff cost.
    pub(super) cost: i64,
    /// Turns that are too quick.
    pub(super) rushed: usize,
    pub(super) part: NaturalPart,
}

impl LayoutLimits {
    pub(super) fn of(house: &House) -> Self {
        let (height, smallest) = (house.staff.height.value, house.staff.smallest.value);
        Self {
            sides: match house.pages.first.value.as_str() {
                "left" => vec![BookletSide::Left],
                "right" => vec![BookletSide::Right],
                _ => vec![BookletSide::Right, BookletSide::Left],
            },
            staffs: if smallest < height { vec![height, smallest] } else { vec![height] },
            blank: if house.pages.blank.value == "never" { Blank::Never } else { Blank::LeftPages },
            fold: if house.pages.fold_outs.value == "never" { FoldOuts::Never } else { FoldOuts::ForTurns },
        }
    }
}

impl PartLayout {
    fn folds_out(&self) -> bool {
        self.chosen.systems.iter().any(|system| system.side == BookletSide::FoldOut)
    }
}

impl NaturalPart {
    /// The cheapest layout within the limits.
    pub(super) fn best(&self, limits: &LayoutLimits, rushed: Rushed) -> Option<PartLayout> {
        let mut best: Option<PartLayout> = None;
        for staff in &limits.staffs {
            // A fold-out is work, too.
            if best.as_ref().is_some_and(|best| best.rushed == 0 && !best.folds_out()) {
                break;
            }
            let part = self.on_staff(*staff);
            for (place, side) in limits.sides.iter().enumerate() {
                let room = PaperRoom { first: *side, blank: limits.blank, fold: limits.fold, ..part.room };
                let part = NaturalPart { room, ..part.clone() };
                let more =
                    costs::SMALLER * (self.staff - staff).max(0) + if place > 0 { costs::COVER } else { 0 };
                let most = best.as_ref().map_or(i64::MAX, |best| best.cost - more);
                let Some(chosen) = part.lay_out(rushed, most) else { continue };
                let cost = chosen.cost + more;
                if best.as_ref().is_none_or(|best| cost < best.cost) {
                    best = Some(PartLayout { rushed: part.rushed_in(&chosen), chosen, cost, part });
                }
            }
        }
        best
    }

    /// On another staff: everything shrinks or grows with it, but not the paper and the heading of a movement.
    fn on_staff(&self, staff: i64) -> Self {
        let scaled = |length: i64| length * staff / self.staff.max(1);
        let unit = |unit: &MeasuredUnit| MeasuredUnit {
            width: scaled(unit.width),
            front: scaled(unit.front),
            above: scaled(unit.above),
            below: scaled(unit.below),
            ..*unit
        };
        let room = PaperRoom { staff: scaled(self.room.staff), ..self.room };
        Self { units: self.units.iter().map(unit).collect(), room, staff }
    }

    fn lay_out(&self, rushed: Rushed, most: i64) -> Option<Chosen> {
        let (units, room) = (&self.units[..], &self.room);
        let lines = PossibleLines::of(units, room);
        let outlines = Outlines { units, room };
        let times: Vec<_> = units.iter().map(|unit| unit.turn).collect();
        choose(&lines, &times, room, (rushed, most), |upper, lower| {
            outlines.distance(&lines.lines[upper], &lines.lines[lower])
        })
    }

    fn rushed_in(&self, chosen: &Chosen) -> usize {
        let ends = chosen.systems.windows(2);
        ends.filter(|pair| {
            pair[0].page != pair[1].page
                && pair[0].side.is_turned(pair[1].side)
                && self.units[pair[1].first].turn.is_rushed(self.room.turn)
        })
        .count()
    }
}
