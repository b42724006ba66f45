//! From fixed points backwards: the best plan with anchors, what they cost, and which do not go together.

use arcata_score::BowDirection;

use super::alternatives::{cut, differences, independent};
use super::giving_way::{given_up, giving_way};
use super::{Anchor, Difference, MarkReading, Plan, PlanSettings, plan, settled};
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
    pub conflicts: Vec<DemandConflict>,
}

/// Two demands that do not go together: the smallest pair, neighbours in the line.
#[derive(Clone, Debug)]
pub struct DemandConflict {
    /// The earlier demand.
    pub one: DemandedBy,
    /// The later one; one of the two is an anchor.
    pub other: DemandedBy,
    /// How they clash.
    pub clash: Clash,
}

/// What demands something of a stroke.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DemandedBy {
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
    /// Both hold, but plain alternation does not lead from one to the other, or together they cost more
    /// than the sum of each alone.
    Pays {
        /// What both together cost more than neither.
        more: Cost,
        /// What the arm has to do for it otherwise.
        differences: Vec<Difference>,
    },
}

impl DemandedBy {
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
/// up-bow on a main beat costs, thousandths of a point. Below it lies what the place in the bow makes (rule of thumb).
const TOLD: i64 = 500;

/// The best plan of a line with the anchors in the settings, what they cost, and what clashes. Leanings give way around them
/// ([`giving_way`]); what going against the others costs is told all the same.
#[must_use]
pub fn anchored(line: &Line, settings: &PlanSettings) -> Anchored {
    let free = plan(line, &PlanSettings { anchors: Vec::new(), ..settings.clone() });
    let yielding = giving_way(line, &free, settings);
    let bound = settled(line, &yielding).plan;
    let more = bound.total + given_up(settings, &yielding, &bound.strokes);
    Anchored {
        more: more.less(&free.total),
        differences: differences(&free, &bound, 0),
        conflicts: conflicts(line, settings),
        plan: bound,
    }
}

fn conflicts(line: &Line, settings: &PlanSettings) -> Vec<DemandConflict> {
    let wishes = wishes(line, settings);
    let mut found = Vec::new();
    for (one, other) in wishes.iter().zip(wishes.iter().skip(1)) {
        let printed = |wish: &DemandedBy| matches!(wish, DemandedBy::Printed { .. });
        if printed(one) && printed(other) {
            continue;
        }
        let clash = if one.stroke() == other.stroke() {
            let both = one.direction().zip(other.direction());
            both.is_some_and(|(one, other)| one != other).then_some(Clash::SameStroke)
        } else {
            price_of_both(line, settings, one, other)
        };
        found.extend(clash.map(|clash| DemandConflict { one: *one, other: *other, clash }));
    }
    found
}

/// All demands in order of the line; on one stroke the printed mark first.
fn wishes(line: &Line, settings: &PlanSettings) -> Vec<DemandedBy> {
    let printed = line.strokes.iter().enumerate().filter_map(|(stroke, written)| {
        let direction = written.printed.filter(|_| settings.marks == MarkReading::Law)?;
        Some(DemandedBy::Printed { stroke, direction })
    });
    let mut wishes: Vec<DemandedBy> =
        printed.chain(settings.anchors.iter().copied().map(DemandedBy::Anchor)).collect();
    wishes.sort_by_key(DemandedBy::stroke);
    wishes
}

/// What two demands cost together, if they clash.
fn price_of_both(
    line: &Line,
    settings: &PlanSettings,
    one: &DemandedBy,
    other: &DemandedBy,
) -> Option<Clash> {
    let between = one.stroke() + 1..=other.stroke();
    if between.clone().any(|stroke| line.strokes[stroke].join == Join::Entry) {
        return None;
    }
    let around = independent(line, &(one.stroke()..other.stroke() + 1));
    let stretch = cut(line, &around);
    let with = |wishes: &[&DemandedBy]| {
        let local = |wish: &&DemandedBy| Anchor { stroke: wish.stroke() - around.start, ..wish.as_anchor() };
        let anchors = wishes.iter().map(local).collect();
        plan(&stretch, &PlanSettings { anchors, marks: MarkReading::Hidden, ..settings.alone() })
    };
    let (free, first, second, both) = (with(&[]), with(&[one]), with(&[other]), with(&[one, other]));
    let total = |plan: &Plan| plan.total.total();
    let together = total(&both) - total(&free);
    let beyond_apart = together - (total(&first) - total(&free)) - (total(&second) - total(&free));
    let crossed = !alternate(one, other);
    if beyond_apart < TOLD && !(crossed && together >= TOLD) {
        return None;
    }
    let differences = differences(&free, &both, around.start);
    let nearest = differences.iter().copied().filter(|difference| between.contains(&difference.stroke));
    let told: Vec<Difference> = nearest.collect();
    let differences = if told.is_empty() { differences } else { told };
    Some(Clash::Pays { more: both.total.less(&free.total), differences })
}

/// Whether plain alternation leads from one demand to the other.
fn alternate(one: &DemandedBy, other: &DemandedBy) -> bool {
    let Some((first, second)) = one.direction().zip(other.direction()) else { return true };
    (other.stroke() - one.stroke()).is_multiple_of(2) == (first == second)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lines::tests::line;

    fn anchor(stroke: usize, direction: BowDirection) -> Anchor {
        Anchor { stroke, direction: Some(direction), link: None }
    }

    fn with(line: &Line, anchors: Vec<Anchor>) -> Anchored {
        anchored(line, &PlanSettings { anchors, ..PlanSettings::default() })
    }

    const QUARTERS: &str = "violin: mf 1/4 C5 D5 E5 F5 | G5 A5 B5 C6 | 1/1 D6";

    #[test]
    fn what_the_best_plan_does_anyway_costs_nothing() {
        let line = line(QUARTERS);
        let found = with(&line, vec![anchor(0, BowDirection::Down)]);
        assert_eq!((found.more.total(), found.conflicts.len()), (0, 0));
        assert_eq!(found.differences, []);
    }

    #[test]
    fn two_downs_where_one_stroke_lies_between_do_not_go_together() {
        let line = line(QUARTERS);
        let found = with(&line, vec![anchor(4, BowDirection::Down), anchor(5, BowDirection::Down)]);
        assert!(found.more.total() > 0);
        let [conflict] = found.conflicts.as_slice() else { panic!("{:?}", found.conflicts) };
        assert_eq!((conflict.one.stroke(), conflict.other.stroke()), (4, 5));
        let Clash::Pays { more, differences } = &conflict.clash else { panic!("{conflict:?}") };
        assert!(more.total() > 0 && differences.iter().all(|difference| difference.stroke == 5));
    }

    #[test]
    fn an_anchor_against_the_mark_on_its_own_stroke_is_named_with_it() {
        let line = line("violin: mf 1/4 C5 D5!down E5 F5 | 1/1 G5");
        let found = with(&line, vec![anchor(1, BowDirection::Up)]);
        assert_eq!(found.plan.strokes[1].direction, BowDirection::Up);
        assert!(matches!(
            found.conflicts[0],
            DemandConflict {
                one: DemandedBy::Printed { stroke: 1, .. },
                other: DemandedBy::Anchor(_),
                clash: Clash::SameStroke
            }
        ));
    }

    #[test]
    fn anchors_parted_by_a_long_rest_never_conflict() {
        let line = line("violin: mf 1/4 C5 D5 E5 F5 | bar-rest | bar-rest | G5 A5 B5 C6");
        let found = with(&line, vec![anchor(3, BowDirection::Down), anchor(4, BowDirection::Up)]);
        assert_eq!(found.conflicts.len(), 0, "{:?}", found.conflicts);
    }

    #[test]
    fn the_price_is_what_the_plans_differ_by() {
        let line = line(QUARTERS);
        let free = plan(&line, &PlanSettings::default()).total;
        let found = with(&line, vec![anchor(8, BowDirection::Up)]);
        assert_eq!(found.more, found.plan.total.less(&free));
        assert_eq!(found.plan.strokes[8].direction, BowDirection::Up);
    }
}
