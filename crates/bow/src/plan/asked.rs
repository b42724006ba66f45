//! Bows that are asked for: made one with each other, with the printed marks and with what the line offers.
//!
//! A hook or a retake asks for the direction of the stroke before. That binds two strokes, and the search binds each stroke
//! for itself; so what several such wishes come to is settled first. Strokes that hang together by such wishes are a *row* and
//! go in one direction.
//! 1. A row goes the way that one of its wishes names, else the way of its first printed mark: an asked row is stronger than
//!    the marks that stand against it.
//! 2. Two wishes that name different ways cannot be in one row: the later one begins anew and is told.
//! 3. Where the line offers no such link (a retake over a rest, a hook after pizzicato) there is still a direction to keep:
//!    that of the stroke before as it is planned without the wish.

use std::collections::{BTreeMap, BTreeSet};

use arcata_score::BowDirection;

use super::anchors::offered;
use super::as_it_comes::{Arrival, arrivals};
use super::{Anchor, BowReach, Link, MarkReading, Plan, PlanSettings, plan};
use crate::{Join, Line};

/// What wishes come to.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Settled {
    /// The best plan with all of them.
    pub plan: Plan,
    /// What the plan was held to, in the order of the strokes.
    pub anchors: Vec<Anchor>,
    /// Strokes whose wish to go on as the stroke before contradicts another wish: their direction holds, the link does not.
    pub contradicted: Vec<usize>,
}

/// Strokes that shall go in one direction, each but the first for the sake of the one before it.
#[derive(Clone, Debug, Default)]
struct OneWayRow {
    strokes: BTreeSet<usize>,
    way: Option<BowDirection>,
}

/// Whether an anchor asks for the direction of the stroke before.
const fn follows(anchor: &Anchor) -> bool {
    matches!(anchor.link, Some(Link::Hooked | Link::Retake))
}

/// For each stroke the one that is played before it when it is reached first; for the first stroke of a second ending that is
/// the last before the first ending.
#[must_use]
pub fn strokes_before(line: &Line, reach: BowReach) -> Vec<Option<usize>> {
    arrivals(line, reach).into_iter().map(|ways| ways.first().and_then(|way| way.before)).collect()
}

/// Settles the anchors of the settings and plans. Of two anchors on one stroke the first counts.
///
/// ```
/// use arcata_bow::plan::{Anchor, Link, settled};
/// use arcata_bow::{Line, PlanSettings};
///
/// /// Whether a hook on the second stroke goes on as the first.
/// fn is_hooked(line: &Line) -> bool {
///     let hook = Anchor { stroke: 1, direction: None, link: Some(Link::Hooked) };
///     let found = settled(line, &PlanSettings { anchors: vec![hook], ..PlanSettings::default() });
///     found.plan.strokes[0].direction == found.plan.strokes[1].direction
/// }
/// ```
#[must_use]
pub fn settled(line: &Line, settings: &PlanSettings) -> Settled {
    let mut wishes = settings.anchors.clone();
    wishes.retain(|wish| wish.stroke < line.strokes.len());
    wishes.sort_by_key(|wish| wish.stroke);
    wishes.dedup_by_key(|wish| wish.stroke);
    let mut anchors: BTreeMap<usize, Anchor> = wishes.iter().map(|wish| (wish.stroke, *wish)).collect();
    let ways_in: Vec<Arrival> =
        arrivals(line, settings.reach).into_iter().filter_map(|ways| ways.first().copied()).collect();
    let mut contradicted = Vec::new();
    let mut rows: Vec<OneWayRow> = Vec::new();
    for wish in wishes.iter().filter(|wish| follows(wish)) {
        let Some(before) = ways_in.get(wish.stroke).and_then(|way| way.before) else { continue };
        match joined(&rows, &anchors, (before, wish.stroke)) {
            Some(row) => {
                rows.retain(|other| other.strokes.is_disjoint(&row.strokes));
                rows.push(row);
            }
            None => contradicted.push(wish.stroke),
        }
    }
    let mut open = Vec::new();
    for row in rows {
        let has_links = keep_offered_links(line, &ways_in, &mut anchors, &row);
        match row.way.or_else(|| printed(line, settings.marks, &row)) {
            Some(way) => bind(&mut anchors, &row, way),
            None if !has_links => open.push(row),
            None => {}
        }
    }
    for stroke in &contradicted {
        anchors.entry(*stroke).and_modify(|anchor| anchor.link = None);
    }
    let with = |anchors: &BTreeMap<usize, Anchor>| {
        plan(line, &PlanSettings { anchors: anchors.values().copied().collect(), ..settings.clone() })
    };
    let mut best = with(&anchors);
    if !open.is_empty() {
        for row in open {
            let first = row.strokes.first().and_then(|stroke| best.strokes.get(*stroke));
            if let Some(way) = first.map(|planned| planned.direction) {
                bind(&mut anchors, &row, way);
            }
        }
        best = with(&anchors);
    }
    Settled { plan: best, anchors: anchors.into_values().collect(), contradicted }
}

/// The row that two strokes make with all that hangs on them; nothing where its wishes name two ways.
fn joined(
    rows: &[OneWayRow],
    anchors: &BTreeMap<usize, Anchor>,
    (before, stroke): (usize, usize),
) -> Option<OneWayRow> {
    let mut all = OneWayRow { strokes: BTreeSet::from([before, stroke]), way: None };
    let named = all.strokes.iter().filter_map(|stroke| anchors.get(stroke)?.direction);
    let mut ways: Vec<BowDirection> = named.collect();
    for row in rows.iter().filter(|row| !row.strokes.is_disjoint(&BTreeSet::from([before, stroke]))) {
        all.strokes.extend(&row.strokes);
        ways.extend(row.way);
    }
    all.way = ways.first().copied();
    ways.iter().all(|way| Some(*way) == all.way).then_some(all)
}

/// The first mark that is printed on a row and holds.
fn printed(line: &Line, marks: MarkReading, row: &OneWayRow) -> Option<BowDirection> {
    let strokes = row.strokes.iter().filter(|_| marks == MarkReading::Law);
    strokes.filter_map(|stroke| line.strokes[*stroke].printed).next()
}

/// Drops the links that the way into their stroke does not offer; whether all of them stay.
fn keep_offered_links(
    line: &Line,
    ways_in: &[Arrival],
    anchors: &mut BTreeMap<usize, Anchor>,
    row: &OneWayRow,
) -> bool {
    let mut all = true;
    for stroke in &row.strokes {
        let Some(anchor) = anchors.get_mut(stroke) else { continue };
        let Some(link) = anchor.link.filter(|_| follows(anchor)) else { continue };
        let offers = |join: Join| offered(join).contains(&link);
        if !(offers(line.strokes[*stroke].join) && offers(ways_in[*stroke].join)) {
            anchor.link = None;
            all = false;
        }
    }
    all
}

/// Holds a row to one direction.
fn bind(anchors: &mut BTreeMap<usize, Anchor>, row: &OneWayRow, way: BowDirection) {
    for stroke in &row.strokes {
        let free = Anchor { stroke: *stroke, direction: None, link: None };
        anchors.entry(*stroke).or_insert(free).direction = Some(way);
    }
}

#[cfg(test)]
mod tests {
    use BowDirection::{Down, Up};
    use proptest::prelude::*;

    use super::*;
    use crate::lines::tests::line;
    use crate::plan::tests::repeats::nested_line;

    fn wish(stroke: usize, direction: Option<BowDirection>, link: Option<Link>) -> Anchor {
        Anchor { stroke, direction, link }
    }

    fn with(line: &Line, anchors: &[Anchor]) -> Settled {
        settled(line, &PlanSettings { anchors: anchors.to_vec(), ..PlanSettings::default() })
    }

    fn ways(found: &Settled) -> Vec<BowDirection> {
        found.plan.strokes.iter().map(|planned| planned.direction).collect()
    }

    const HOOK: Option<Link> = Some(Link::Hooked);
    const RETAKE: Option<Link> = Some(Link::Retake);

    #[test]
    fn a_hook_goes_on_as_the_stroke_before_whatever_is_printed() {
        // The mark on the stroke before is stronger than the one on the hooked note.
        let printed = line("violin: mf 1/4 C5!down D5!up E5 F5 | 1/1 G5");
        let found = with(&printed, &[wish(1, None, HOOK)]);
        assert_eq!(ways(&found)[..2], [Down, Down]);
        assert_eq!(found.plan.strokes[1].link, Link::Hooked);
        // A way that is asked for is stronger than both.
        assert_eq!(ways(&with(&printed, &[wish(1, Some(Up), HOOK)]))[..2], [Up, Up]);
        // Where only the hooked note is marked the row goes that way.
        let later = line("violin: mf 1/4 C5 D5!up E5 F5 | 1/1 G5");
        assert_eq!(ways(&with(&later, &[wish(1, None, HOOK)]))[..2], [Up, Up]);
    }

    #[test]
    fn a_row_goes_the_way_that_any_of_its_wishes_names() {
        let line = line("violin: mf 1/4 C5 D5 E5 F5 | G5 A5 B5 C6 |");
        let found = with(&line, &[wish(1, None, HOOK), wish(2, None, RETAKE), wish(3, Some(Up), HOOK)]);
        assert_eq!(ways(&found)[..4], [Up; 4]);
        let found = with(&line, &[wish(4, Some(Down), None), wish(5, None, RETAKE)]);
        assert_eq!(ways(&found)[4..6], [Down, Down]);
        assert_eq!(found.plan.strokes[5].link, Link::Retake);
    }

    #[test]
    fn wishes_that_contradict_are_told_and_a_plan_is_made() {
        let line = line("violin: mf 1/4 C5 D5 E5 F5 | 1/1 G5");
        let found = with(&line, &[wish(0, Some(Down), None), wish(1, Some(Up), HOOK)]);
        assert_eq!(found.contradicted, [1]);
        assert_eq!(ways(&found)[..2], [Down, Up]);
        assert!(with(&line, &[wish(0, None, HOOK)]).contradicted.is_empty(), "nothing comes before it");
    }

    #[test]
    fn over_a_rest_and_after_plucking_the_direction_is_kept() {
        for music in [
            "violin: mf 1/4 C5 D5 rest F5 | 1/1 G5",
            "violin: mf 1/4 C5 D5 1/2 rest | bar-rest | G5 A5",
            "violin: mf 1/4 C5 D5 \"pizz.\" E5 F5 | \"arco\" 1/2 G5 A5",
        ] {
            let line = line(music);
            for link in [HOOK, RETAKE] {
                let found = with(&line, &[wish(2, None, link)]);
                let ways = ways(&found);
                assert_eq!(ways[1], ways[2], "{music}");
            }
        }
    }

    proptest! {
        /// Whatever is asked on whatever line: a plan is made, and each wish that is not told holds in it.
        #[test]
        fn every_wish_holds_or_is_told(
            (line, _) in nested_line(12),
            asked in proptest::collection::vec((0usize..12, 0..3u8, 0..3u8), 0..8),
            prints in proptest::collection::vec(0..6u8, 12),
        ) {
            let mut line = line;
            for (stroke, print) in line.strokes.iter_mut().zip(&prints) {
                stroke.printed = match print { 0 => Some(Down), 1 => Some(Up), _ => None };
            }
            let mut wishes: Vec<Anchor> = asked
                .iter()
                .filter(|(stroke, ..)| *stroke < line.strokes.len())
                .map(|(stroke, way, link)| wish(
                    *stroke,
                    [None, Some(Down), Some(Up)][usize::from(*way)],
                    [None, HOOK, RETAKE][usize::from(*link)],
                ))
                .collect();
            wishes.sort_by_key(|wish| wish.stroke);
            wishes.dedup_by_key(|wish| wish.stroke);
            let found = with(&line, &wishes);
            let before = strokes_before(&line, BowReach::default());
            prop_assert_eq!(found.plan.strokes.len(), line.strokes.len());
            for wish in &wishes {
                let way = found.plan.strokes[wish.stroke].direction;
                prop_assert!(wish.direction.is_none_or(|asked| asked == way));
                if let Some(before) = before[wish.stroke]
                    && follows(wish)
                    && !found.contradicted.contains(&wish.stroke)
                {
                    prop_assert_eq!(found.plan.strokes[before].direction, way);
                }
            }
        }
    }
}
