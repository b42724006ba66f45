//! From fixed points backwards: the best plan with anchors, what they cost, and which do not go together.

use arcata_score::BowDirection;

use super::alternatives::{cut, differences, independent};
use super::{Anchor, Difference, MarkReading, Plan, PlanSettings, plan};
use crate::{Cost, Join, Line};

/// The best plan with anchors, beside the best without.
#[derive(Clone, Debug)]
pub struct Anchored {
    /// The best plan with the anchors; they hold in it.
    pub plan: Plan,
    /// What it costs more than the best plan without them, term by term.
    pub more: Cost,
    /// What the arm does otherwise than in the best plan without them.
    pub differences: Vec<Difference>,
    /// What does not go together, in order of the line.
    pub conflicts: Vec<Conflict>,
}

/// Two demands that do not go together: the smallest pair, neighbours in the line.
#[derive(Clone, Debug)]
pub struct Conflict {
    /// The earlier demand.
    pub one: Wish,
    /// The later one; one of the two is an anchor.
    pub other: Wish,
    /// How they clash.
    pub clash: Clash,
}

/// What demands something of a stroke.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wish {
    /// An anchor.
    Anchor(Anchor),
    /// A printed mark that holds.
    Printed {
        /// The stroke.
        stroke: usize,
        /// The bow.
        direction: BowDirection,
    },
}

/// How two demands clash.
#[derive(Clone, Debug)]
pub enum Clash {
    /// They ask one stroke to go both ways; the anchor holds, of two anchors the later named one.
    SameStroke,
    /// Both hold, but together they cost more than each does alone.
    Pays {
        /// What both together cost more than the dearer of the two alone.
        more: Cost,
        /// What the arm has to do for it otherwise.
        differences: Vec<Difference>,
    },
}

impl Wish {
    /// The stroke of which something is demanded.
    #[must_use]
    pub fn stroke(&self) -> usize {
        match self {
            Self::Anchor(anchor) => anchor.stroke,
            Self::Printed { stroke, .. } => *stroke,
        }
    }

    fn direction(&self) -> Option<BowDirection> {
        match self {
            Self::Anchor(anchor) => anchor.direction,
            Self::Printed { direction, .. } => Some(*direction),
        }
    }

    fn as_anchor(&self) -> Anchor {
        match self {
            Self::Anchor(anchor) => *anchor,
            Self::Printed { stroke, direction } => {
                Anchor { stroke: *stroke, direction: Some(*direction), link: None }
            }
        }
    }
}

/// From here on two demands together cost so much more than apart that it is told: half of what an
/// up-bow on a main beat costs, thousandths of a point. Below it lies what the place in the bow makes.
const TOLD: i64 = 500;

/// The best plan of a line with the anchors in the settings, what they cost, and what clashes.
#[must_use]
pub fn anchored(line: &Line, settings: &PlanSettings) -> Anchored {
    let free = plan(line, &PlanSettings { anchors: Vec::new(), ..settings.clone() });
    let bound = plan(line, settings);
    Anchored {
        more: bound.total.less(&free.total),
        differences: differences(&free, &bound, 0),
        conflicts: conflicts(line, settings),
        plan: bound,
    }
}

fn conflicts(line: &Line, settings: &PlanSettings) -> Vec<Conflict> {
    let wishes = wishes(line, settings);
    let mut found = Vec::new();
    for (one, other) in wishes.iter().zip(wishes.iter().skip(1)) {
        let printed = |wish: &Wish| matches!(wish, Wish::Printed { .. });
        if printed(one) && printed(other) {
            continue;
        }
        let clash = if one.stroke() == other.stroke() {
            let both = one.direction().zip(other.direction());
            both.is_some_and(|(one, other)| one != other).then_some(Clash::SameStroke)
        } else {
            price_of_both(line, settings, one, other)
        };
        found.extend(clash.map(|clash| Conflict { one: *one, other: *other, clash }));
    }
    found
}

/// All demands in order of the line; on one stroke the printed mark first.
fn wishes(line: &Line, settings: &PlanSettings) -> Vec<Wish> {
    let printed = line.strokes.iter().enumerate().filter_map(|(stroke, written)| {
        let direction = written.printed.filter(|_| settings.marks == MarkReading::Law)?;
        Some(Wish::Printed { stroke, direction })
    });
    let mut wishes: Vec<Wish> = printed.chain(settings.anchors.iter().copied().map(Wish::Anchor)).collect();
    wishes.sort_by_key(Wish::stroke);
    wishes
}

/// What two demands cost together beyond what they cost apart.
fn price_of_both(line: &Line, settings: &PlanSettings, one: &Wish, other: &Wish) -> Option<Clash> {
    let between = one.stroke() + 1..=other.stroke();
    if between.clone().any(|stroke| line.strokes[stroke].join == Join::Entry) {
        return None;
    }
    let around = independent(line, &(one.stroke()..other.stroke() + 1));
    let stretch = cut(line, &around);
    let with = |wishes: &[&Wish]| {
        let local = |wish: &&Wish| Anchor { stroke: wish.stroke() - around.start, ..wish.as_anchor() };
        let anchors = wishes.iter().map(local).collect();
        plan(&stretch, &PlanSettings { anchors, marks: MarkReading::Hidden, ..settings.clone() })
    };
    let (free, first, second, both) = (with(&[]), with(&[one]), with(&[other]), with(&[one, other]));
    let total = |plan: &Plan| plan.total.total();
    if total(&both) + total(&free) - total(&first) - total(&second) < TOLD {
        return None;
    }
    let dearer = if total(&second) > total(&first) { &second } else { &first };
    let differences = differences(dearer, &both, around.start);
    let nearest = differences.iter().copied().filter(|difference| between.contains(&difference.stroke));
    let told: Vec<Difference> = nearest.collect();
    let differences = if told.is_empty() { differences } else { told };
    Some(Clash::Pays { more: both.total.less(&dearer.total), differences })
}
