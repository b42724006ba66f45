//! Ways to come out on a certain bow: of the arm, and of the notation.

use std::ops::Range;

use super::alternatives::differences;
use super::repairs::passages;
use super::{
    Anchor, Difference, DifferenceKind, NotationChange, Plan, PlanSettings, RepairRequest, Repaired,
    WishedEnding, alternatives, plan, repairs, singly,
};
use crate::{Cost, Line, LineSource};

/// The ways to come out on a certain bow, the cheapest first.
#[derive(Clone, Debug)]
pub struct WaysThere {
    /// The printed strokes of the passage, from a free joint to a free joint.
    pub strokes: Range<usize>,
    /// Its best plan without the wish.
    pub free: Plan,
    /// The ways; the first is the cheapest of all.
    pub ways: Vec<WayThere>,
}

/// One way.
#[derive(Clone, Debug)]
pub struct WayThere {
    /// What is changed in the notation; often nothing. Strokes count in the whole line before and in
    /// [`Self::line`] after.
    pub changes: Vec<NotationChange>,
    /// What the arm does otherwise than in the best plan without the wish: strokes of the whole line,
    /// up to the note that was asked for; where the notation changes only how the passage starts.
    pub differences: Vec<Difference>,
    /// The passage as it would be written.
    pub line: Line,
    /// Its plan.
    pub plan: Plan,
    /// What it costs more than the best plan without the wish, term by term.
    pub more: Cost,
}

/// The most changes of the notation in one way (rule of thumb).
const MOST: usize = 2;

/// The `count` cheapest ways to have a note on the bow that `ending` asks for: the best plans that differ
/// in what the arm does in the window, the best plan for every single change of the notation in it that
/// makes the wish cheaper, and the best with two changes. Repeats are weighed as played once, and the line
/// is looked at alone: leanings do not count.
#[must_use]
pub fn ways_to_end(
    source: &LineSource<'_>,
    settings: &PlanSettings,
    ending: WishedEnding,
    window: &Range<usize>,
    count: usize,
) -> WaysThere {
    let settings = &settings.alone();
    let passage = passages(source.line()).into_iter().find(|passage| passage.contains(&ending.stroke));
    let Some(strokes) = passage else {
        return WaysThere { strokes: 0..0, free: Plan::default(), ways: Vec::new() };
    };
    let window = window.start.max(strokes.start)..window.end.min(ending.stroke + 1).max(strokes.start);
    let as_printed = passage_line(source.line(), &strokes);
    let local = local_settings(settings, &strokes);
    let free = plan(&as_printed, &local);
    let mut ways = by_the_arm(&as_printed, &local, ending, &strokes, &window, count);
    let Some(best) = ways.first() else { return WaysThere { strokes, free, ways } };
    let wish = best.more.total() - free.total.total();
    let request = |most, ending| RepairRequest { settings, window: window.clone(), most, ending };
    if wish > 0 {
        let freely = singly(source, &request(1, None), &strokes);
        let bound = singly(source, &request(1, Some(ending)), &strokes);
        let helps = |(free, bound): &(Repaired, Repaired)| bound.cost.total() - free.cost.total() < wish;
        let pairs = freely.into_iter().zip(bound).skip(1).filter(helps);
        ways.extend(pairs.map(|(_, bound)| rewritten(bound, &free, strokes.start)));
        ways.extend(two_changes(source, &request(MOST, Some(ending)), &strokes, &free, wish));
    }
    for way in &mut ways {
        let whole = way.more;
        way.more = whole.less(&free.total);
    }
    ways.sort_by_key(|way| way.more.total());
    ways.truncate(count);
    WaysThere { strokes, free, ways }
}

/// A passage by itself, played once.
fn passage_line(line: &Line, strokes: &Range<usize>) -> Line {
    Line {
        strokes: line.strokes[strokes.clone()].to_vec(),
        repeats: Vec::new(),
        voices: line.voices.clone(),
        name: line.name.clone(),
        ..*line
    }
}

fn local_settings(settings: &PlanSettings, strokes: &Range<usize>) -> PlanSettings {
    let inside = settings.anchors.iter().filter(|anchor| strokes.contains(&anchor.stroke));
    let anchors = inside.map(|anchor| Anchor { stroke: anchor.stroke - strokes.start, ..*anchor }).collect();
    PlanSettings { anchors, ..settings.clone() }
}

/// Ways that leave the notation as it is. `more` still holds the whole cost.
fn by_the_arm(
    as_printed: &Line,
    local: &PlanSettings,
    ending: WishedEnding,
    strokes: &Range<usize>,
    window: &Range<usize>,
    count: usize,
) -> Vec<WayThere> {
    let last = ending.stroke - strokes.start;
    let free = plan(as_printed, local);
    let mut bound = local.clone();
    bound.anchors.push(Anchor { stroke: last, direction: Some(ending.direction), link: None });
    let inside = window.start - strokes.start..window.end - strokes.start;
    alternatives(as_printed, &bound, inside, count)
        .into_iter()
        .map(|way| {
            let mut told = differences(&free, &way.plan, strokes.start);
            told.retain(|difference| difference.stroke <= ending.stroke);
            let more = way.plan.total;
            WayThere {
                changes: Vec::new(),
                differences: told,
                line: as_printed.clone(),
                plan: way.plan,
                more,
            }
        })
        .collect()
}

/// A way that changes the notation. `more` still holds the whole cost.
fn rewritten(repaired: Repaired, free: &Plan, first: usize) -> WayThere {
    let Repaired { mut changes, line, plan, cost, .. } = repaired;
    for change in &mut changes {
        change.before = change.before.start + first..change.before.end + first;
    }
    let starts = free.strokes.first().zip(plan.strokes.first());
    let differences = starts
        .filter(|(free, now)| free.direction != now.direction)
        .map(|(_, now)| Difference { stroke: first, kind: DifferenceKind::Start(now.direction) });
    WayThere { changes, differences: differences.into_iter().collect(), line, plan, more: cost }
}

/// The best way with two changes, if it beats all with fewer and makes the wish cheaper. It is found for
/// the whole line; only the passage differs from what it would be without.
fn two_changes(
    source: &LineSource<'_>,
    request: &RepairRequest<'_>,
    strokes: &Range<usize>,
    free: &Plan,
    wish: i64,
) -> Option<WayThere> {
    let frontier = repairs(source, request);
    let step = frontier.steps.into_iter().find(|step| step.changes.len() == MOST)?;
    let outside = source.line().strokes.len() - strokes.len();
    let inside = strokes.start..step.line.strokes.len() - (outside - strokes.start);
    let line = passage_line(&step.line, &inside);
    let plan = Plan {
        strokes: step.plan.strokes[inside.clone()].to_vec(),
        turns: Vec::new(),
        total: step.plan.strokes[inside.clone()]
            .iter()
            .fold(Cost::default(), |sum, stroke| sum + stroke.cost),
    };
    let unbound = plan_unbound(source, request.settings, strokes, &line);
    if plan.total.total() - unbound >= wish {
        return None;
    }
    let notation = step.cost.less(&step.plan.total);
    let mut changes = step.changes;
    for change in &mut changes {
        change.before = change.before.start - strokes.start..change.before.end - strokes.start;
        change.after = change.after.start - strokes.start..change.after.end - strokes.start;
    }
    let cost = plan.total + notation;
    let repaired = Repaired { changes, line, plan, cost, change: Cost::default() };
    Some(rewritten(repaired, free, strokes.start))
}

/// What the best plan of a passage with other slurs costs without the wish. Anchors stay on the strokes
/// that begin with their notes.
fn plan_unbound(
    source: &LineSource<'_>,
    settings: &PlanSettings,
    strokes: &Range<usize>,
    line: &Line,
) -> i64 {
    let moved = |anchor: &Anchor| {
        let note = source.line().strokes.get(anchor.stroke)?.notes.first()?;
        let stroke = line.strokes.iter().position(|stroke| stroke.notes.first() == Some(note))?;
        strokes.contains(&anchor.stroke).then_some(Anchor { stroke, ..*anchor })
    };
    let anchors = settings.anchors.iter().filter_map(moved).collect();
    plan(line, &PlanSettings { anchors, ..settings.clone() }).total.total()
}

#[cfg(test)]
mod tests {
    use arcata_score::{BowDirection, Moment};

    use super::*;
    use crate::lines::tests::score;
    use crate::{LineOptions, Profile, Reading};

    fn ways(fixture: &str, stroke: usize, direction: BowDirection, count: usize) -> (WaysThere, usize) {
        let score = score(fixture);
        let (profile, options) = (Profile::default(), LineOptions::default());
        let reading = Reading::new(&score, &profile, &options);
        let sources = reading.sources(0);
        let strokes = sources[0].line().strokes.len();
        let ending = WishedEnding { stroke, until: score.end().max(Moment::START), direction };
        (ways_to_end(&sources[0], &PlanSettings::default(), ending, &(0..strokes), count), strokes)
    }

    const PHRASE: &str = "violin: mf 1/4 C5 (D5 E5) F5 | G5 (A5 B5) C6 | (1/8 D6 C6 B4 A4 1/2 G4) |||";

    #[test]
    fn the_wish_holds_in_every_way_and_the_cheapest_comes_first() {
        for direction in [BowDirection::Down, BowDirection::Up] {
            let (found, _) = ways(PHRASE, 6, direction, 8);
            assert!(!found.ways.is_empty());
            for way in &found.ways {
                assert_eq!(way.plan.strokes.last().map(|stroke| stroke.direction), Some(direction));
            }
            assert!(found.ways.is_sorted_by_key(|way| way.more.total()));
        }
    }

    #[test]
    fn where_the_best_plan_ends_so_anyway_no_change_of_the_notation_is_offered() {
        let (free, _) = ways(PHRASE, 6, BowDirection::Down, 1);
        let direction = free.free.strokes[6].direction;
        let (found, _) = ways(PHRASE, 6, direction, 6);
        assert_eq!(found.ways[0].more.total(), 0);
        assert!(found.ways.iter().all(|way| way.changes.is_empty()));
    }

    #[test]
    fn a_repair_may_be_the_cheapest_way() {
        let (free, _) = ways(PHRASE, 6, BowDirection::Down, 1);
        let other = free.free.strokes[6].direction.other();
        let (found, _) = ways(PHRASE, 6, other, 12);
        let rewritten: Vec<&WayThere> = found.ways.iter().filter(|way| !way.changes.is_empty()).collect();
        assert!(!rewritten.is_empty());
        for way in rewritten {
            let notation = way.more.term(crate::Term::Notation);
            assert!(notation > 0);
            assert!(way.changes.iter().all(|change| change.after.end <= way.line.strokes.len()));
        }
    }
}
