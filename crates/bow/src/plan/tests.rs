//! The planner against its brute-force twin, and the laws it must keep.

use arcata_score::{BowDirection, Instrument, Length, Moment, NoteId};
use proptest::prelude::*;

use super::alternatives::cut;
use super::costs::Costs;
use super::search::{Choice, LineSearch};
use super::*;
use crate::*;

pub(crate) mod repeats;

/// A stroke of a quarter note at mf that nothing else is known about.
fn plain_stroke(index: usize) -> Stroke {
    let at = Length::new(i64::try_from(index).unwrap(), 4);
    Stroke {
        notes: vec![NoteId(u32::try_from(index).unwrap())],
        onset: Moment(at),
        length: Length::QUARTER,
        bar: 0,
        offset: at,
        duration: RealTime::from_micros(600_000),
        silence_after: RealTime::default(),
        lendable: RealTime::default(),
        kind: StrokeKind::Single,
        join: if index == 0 { Join::Entry } else { Join::Continues },
        printed: None,
        emphasis: Emphasis::default(),
        level_start: Loudness(500),
        level_end: Loudness(500),
        speed: SpeedWindow { slowest: 80_000, preferred: 200_000, fastest: 500_000 },
        home: BowInterval::ANYWHERE,
        note_count: 1,
        phrase: PhrasePlace::default(),
    }
}

fn line_of(strokes: Vec<Stroke>, repeats: Vec<RepeatedStretch>) -> Line {
    Line {
        movement: 0,
        part: 0,
        staff: 1,
        voices: vec![0],
        name: "Violin".into(),
        instrument: Instrument::Violin,
        force: Force::Solo,
        strokes,
        repeats,
        tempo_written: Written::InScore,
    }
}

prop_compose! {
    fn any_stroke()(
        duration in prop::sample::select(vec![80_000i64, 200_000, 450_000, 900_000, 2_500_000]),
        silence in prop::sample::select(vec![0i64, 0, 0, 200_000, 700_000]),
        lendable in prop::sample::select(vec![0i64, 50_000, 300_000]),
        kind in prop::sample::select(vec![StrokeKind::Single, StrokeKind::Short, StrokeKind::Slurred, StrokeKind::BrokenChord]),
        free in 0u8..8,
        printed in prop::sample::select(vec![None, None, None, Some(BowDirection::Down), Some(BowDirection::Up)]),
        metric in prop::sample::select(vec![MetricPlace::Downbeat, MetricPlace::MidBar, MetricPlace::Beat, MetricPlace::Offbeat]),
        accent in prop::sample::select(vec![0u16, 0, 60, 100]),
        bars in prop::sample::select(vec![8u16, 25, 33, 50, 100, 200]),
        count in prop::sample::select(vec![BarCount::Even, BarCount::Triple, BarCount::Compound]),
        bar_end in prop::sample::select(vec![BarEnd::Within, BarEnd::With, BarEnd::Beyond]),
        levels in (200i32..800, 200i32..800),
        home in prop::sample::select(vec![(0u16, 1000u16), (0, 300), (250, 450), (600, 1000)]),
        joints in (0u16..=100, 0u16..=100),
    ) -> (Stroke, u8) {
        let mut stroke = plain_stroke(0);
        stroke.duration = RealTime::from_micros(duration);
        stroke.silence_after = RealTime::from_micros(silence);
        stroke.lendable = RealTime::from_micros(lendable);
        stroke.kind = kind;
        stroke.printed = printed;
        stroke.emphasis = Emphasis { metric, accent, bars, count, bar_end, ..Emphasis::default() };
        stroke.level_start = Loudness(levels.0);
        stroke.level_end = Loudness(levels.1);
        stroke.home = BowInterval { from: home.0, to: home.1 };
        stroke.phrase = PhrasePlace { joint_before: joints.0, joint_after: joints.1, marked: false };
        (stroke, free)
    }
}

/// Lines as the score could make them: joins follow from silences, one in eight is free.
pub(crate) fn any_line(longest: usize) -> impl Strategy<Value = Line> {
    prop::collection::vec(any_stroke(), 1..=longest).prop_map(|drawn| {
        let mut strokes: Vec<Stroke> = Vec::new();
        for (index, (mut stroke, free)) in drawn.into_iter().enumerate() {
            let at = plain_stroke(index);
            (stroke.notes, stroke.onset, stroke.offset) = (at.notes, at.onset, at.offset);
            stroke.join = match strokes.last() {
                None => Join::Entry,
                Some(_) if free == 0 => Join::Entry,
                Some(before) if before.silence_after.micros > 0 => Join::AfterRest,
                Some(_) => Join::Continues,
            };
            strokes.push(stroke);
        }
        line_of(strokes, Vec::new())
    })
}

fn any_line_with_repeat(longest: usize) -> impl Strategy<Value = Line> {
    (any_line(longest), any::<[prop::sample::Index; 3]>(), 0i64..900_000, 0i64..900_000).prop_map(
        |(mut line, cuts, turn, skip)| {
            let count = line.strokes.len();
            let mut cuts = cuts.map(|cut| cut.index(count + 1));
            cuts.sort_unstable();
            let stretch = RepeatedStretch {
                first: cuts[0],
                body_end: cuts[1],
                first_ending_end: cuts[2],
                silence_at_turn: RealTime::from_micros(turn),
                silence_at_skip: RealTime::from_micros(skip),
                ..RepeatedStretch::between(cuts[0], cuts[1], RealTime::default())
            };
            if stretch.is_sound(count) {
                line.repeats.push(stretch);
            }
            line
        },
    )
}

/// Exhaustive search: every direction, link, start and end of every stroke. A branch is left only
/// when what is already paid exceeds the best whole plan (costs are never negative).
struct Twin<'a, const CELLS: usize> {
    line: &'a Line,
    costs: Costs<'a>,
    allowed: Vec<Allowed>,
    best: i64,
}

impl<const CELLS: usize> Twin<'_, CELLS> {
    fn search(&mut self, chosen: &mut Vec<Choice>, paid: i64) {
        if paid >= self.best {
            return;
        }
        let index = chosen.len();
        if index == self.line.strokes.len() {
            self.best = self.best.min(evaluate::evaluate(&self.costs, chosen).total.total());
            return;
        }
        for direction in [BowDirection::Down, BowDirection::Up] {
            for link in [Link::Change, Link::Hooked, Link::Retake, Link::Reset] {
                if !self.allowed[index].permits(direction, link) {
                    continue;
                }
                for start in 0..CELLS {
                    let ends = if direction == BowDirection::Down { start..CELLS } else { 0..start + 1 };
                    for end in ends {
                        let choice = Choice { direction, link, start, end };
                        if let Some(step) = self.step(index, chosen, choice) {
                            chosen.push(choice);
                            self.search(chosen, paid + step);
                            chosen.pop();
                        }
                    }
                }
            }
        }
    }

    /// The cost of one step, or `None` where the arm cannot do it.
    fn step(&self, index: usize, chosen: &[Choice], choice: Choice) -> Option<i64> {
        let (before, approach) = (self.costs.course.into[index].before, self.costs.approach(index));
        let from = before.map_or(choice.begun(), |before| chosen[before].ended());
        if let Some(kept) = self.costs.confined(index) {
            let begins = self.costs.thousandths(choice.start);
            let far = choice.start.abs_diff(choice.end) * 1000 / CELLS;
            if begins < kept.begins.0.into() || begins > kept.begins.1.into() || far > kept.travels.into() {
                return None;
            }
        }
        let mut sum = 0i64;
        if !self.costs.link(approach.as_ref(), choice.link, (from, choice.begun()), &mut sum) {
            return None;
        }
        self.costs.direction(index, choice.direction, &mut sum);
        self.costs.begin_at(index, choice.start, &mut sum);
        self.costs.travel(
            &self.costs.pace(&self.line.strokes[index]),
            choice.start.abs_diff(choice.end),
            &mut sum,
        );
        self.costs.end_at(index, choice.end, &mut sum);
        Some(sum)
    }
}

fn exhaustive<const CELLS: usize>(line: &Line, settings: &PlanSettings, at_most: i64) -> i64 {
    let mut twin = Twin::<CELLS> {
        line,
        costs: Costs::new(line, settings, CELLS),
        allowed: anchors::allowed(line, settings),
        best: at_most,
    };
    twin.search(&mut Vec::new(), 0);
    twin.best
}

fn total_on<const CELLS: usize>(line: &Line, settings: &PlanSettings) -> i64 {
    let allowed = anchors::allowed(line, settings);
    plan_on::<CELLS>(line, settings, &allowed, &[]).expect("a way through").total.total()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1500))]

    #[test]
    fn no_confined_plan_is_cheaper(
        line in any_line(5),
        stroke in 0usize..5,
        from in 0u16..800,
        wide in 100u16..600,
        travels in 0u16..1000,
    ) {
        let settings = PlanSettings::default();
        let confined = [Confined { stroke, begins: (from, from + wide), travels }];
        let allowed = anchors::allowed(&line, &settings);
        let found = plan_on::<4>(&line, &settings, &allowed, &confined).map(|plan| plan.total.total());
        // Prices that forbid are as dear as a few hundred points: a plan that pays one is found, too.
        let at_most = found.map_or(i64::from(step_prices::NEVER), |found| found + 1);
        let costs = Costs::new(&line, &settings, 4).confining(&confined);
        let mut twin = Twin::<4> { line: &line, costs, allowed, best: at_most };
        twin.search(&mut Vec::new(), 0);
        prop_assert_eq!(twin.best, found.unwrap_or(i64::from(step_prices::NEVER)));
    }

    #[test]
    fn no_plan_of_seven_strokes_is_cheaper(line in any_line(7)) {
        let settings = PlanSettings::default();
        let found = total_on::<3>(&line, &settings);
        // One more than found: the twin must find the same plan again, and nothing below it.
        prop_assert_eq!(exhaustive::<3>(&line, &settings, found + 1), found);
    }

    #[test]
    fn no_plan_on_a_finer_grid_is_cheaper(line in any_line(4)) {
        let settings = PlanSettings { marks: MarkReading::Hidden, ..PlanSettings::default() };
        let found = total_on::<6>(&line, &settings);
        prop_assert_eq!(exhaustive::<6>(&line, &settings, found + 1), found);
    }

    #[test]
    fn no_cycle_through_a_repeat_is_cheaper(line in any_line_with_repeat(5)) {
        let settings = PlanSettings::default();
        let found = total_on::<3>(&line, &settings);
        prop_assert_eq!(exhaustive::<3>(&line, &settings, found + 1), found);
    }
}

/// A plan of plain alternation on a real grid: what the exact plan may never exceed.
fn greedy(line: &Line, settings: &PlanSettings) -> Plan {
    let directions = as_it_comes(line);
    let anchors = directions
        .iter()
        .enumerate()
        .map(|(stroke, direction)| Anchor { stroke, direction: Some(*direction), link: None })
        .collect();
    plan(line, &PlanSettings { anchors, ..settings.clone() })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn never_dearer_than_as_it_comes(line in any_line_with_repeat(40)) {
        let settings = PlanSettings { marks: MarkReading::Hidden, ..PlanSettings::default() };
        prop_assert!(plan(&line, &settings).total.total() <= greedy(&line, &settings).total.total());
    }

    /// Each link is named for what the arm does.
    #[test]
    fn links_are_what_the_arm_does(line in any_line_with_repeat(25), marks in any::<bool>()) {
        let marks = if marks { MarkReading::Law } else { MarkReading::Hidden };
        let plan = plan(&line, &PlanSettings { marks, ..PlanSettings::default() });
        let course = course::Course::new(&line);
        for (index, stroke) in plan.strokes.iter().enumerate() {
            let way = course.into[index];
            let Some(before) = way.before.filter(|_| way.by == course::WalkBy::Print) else { continue };
            let (from, to) = (plan.strokes[before], stroke);
            let (same, there) = (from.direction == to.direction, from.end == to.start);
            let back = match to.direction {
                BowDirection::Down => i32::from(from.end) - i32::from(to.start),
                BowDirection::Up => i32::from(to.start) - i32::from(from.end),
            };
            let fits = match (line.strokes[index].join, to.link) {
                (Join::Entry, link) => link == Link::Reset,
                (_, Link::Change) => !same && there,
                (_, Link::Hooked) => same && there,
                (Join::Continues, Link::Retake) => same && back >= 40,
                (Join::AfterRest, Link::Reset) => back.abs() >= 40,
                _ => false,
            };
            prop_assert!(fits, "stroke {}: {:?} after {:?}", index, to, from);
        }
    }

    /// A lift without the time it needs is only made where marks ask for it.
    #[test]
    fn no_lift_is_rushed_unasked(line in any_line(25)) {
        let settings = PlanSettings { marks: MarkReading::Hidden, ..PlanSettings::default() };
        let plan = plan(&line, &settings);
        for index in 1..line.strokes.len() {
            let time = lift_time(&line, &plan, index, settings.reach);
            prop_assert!(!time.is_some_and(|time| time.is_rushed()), "stroke {}", index);
        }
    }

    #[test]
    fn planning_twice_gives_the_same_plan(line in any_line_with_repeat(30)) {
        let settings = PlanSettings::default();
        prop_assert_eq!(plan(&line, &settings), plan(&line, &settings));
    }

    #[test]
    fn the_terms_add_up(line in any_line_with_repeat(20)) {
        let plan = plan(&line, &PlanSettings::default());
        let strokes: i64 = plan.strokes.iter().map(|stroke| stroke.cost.total()).sum();
        let turns: i64 = plan.turns.iter().map(|turn| turn.cost.total()).sum();
        prop_assert_eq!(strokes + turns, plan.total.total());
    }

    #[test]
    fn printed_marks_and_anchors_hold(line in any_line(25), at in any::<prop::sample::Index>()) {
        let stroke = at.index(line.strokes.len());
        for direction in [BowDirection::Down, BowDirection::Up] {
            let anchors = vec![Anchor { stroke, direction: Some(direction), link: None }];
            let plan = plan(&line, &PlanSettings { anchors, ..PlanSettings::default() });
            prop_assert_eq!(plan.strokes[stroke].direction, direction);
            for (index, (printed, planned)) in line.strokes.iter().zip(&plan.strokes).enumerate() {
                if index != stroke && let Some(printed) = printed.printed {
                    prop_assert_eq!(printed, planned.direction);
                }
            }
        }
    }

    #[test]
    fn forbidding_a_choice_never_makes_a_plan_cheaper(line in any_line(20), at in any::<prop::sample::Index>()) {
        let settings = PlanSettings { marks: MarkReading::Hidden, ..PlanSettings::default() };
        let free = plan(&line, &settings);
        let stroke = at.index(line.strokes.len());
        let anchors = vec![Anchor { stroke, direction: Some(free.strokes[stroke].direction.other()), link: None }];
        let bound = plan(&line, &PlanSettings { anchors, ..settings });
        prop_assert!(free.total.total() <= bound.total.total());
    }

    #[test]
    fn alternatives_differ_and_come_in_order(line in any_line_with_repeat(9)) {
        let settings = PlanSettings { marks: MarkReading::Hidden, ..PlanSettings::default() };
        let count = line.strokes.len();
        let found = alternatives(&line, &settings, 0..count, 6);
        prop_assert_eq!(found[0].plan.total.total(), plan(&line, &settings).total.total());
        let mut seen = std::collections::BTreeSet::new();
        let mut before = i64::MIN;
        for alternative in &found {
            prop_assert!(alternative.plan.total.total() >= before);
            before = alternative.plan.total.total();
            prop_assert!(seen.insert(as_heard(&line, &alternative.plan)));
        }
    }

    /// What players ask for first is there, whatever the best plan is: nothing printed forbids it.
    #[test]
    fn the_standing_ways_are_always_among_them(line in any_line(9), count in 2usize..6) {
        let settings = PlanSettings { marks: MarkReading::Hidden, ..PlanSettings::default() };
        let window = 0..line.strokes.len();
        let found = alternatives(&line, &settings, window, count);
        let of = |standing| found.iter().find(|way| way.standing.contains(&standing));
        let plain = of(Standing::AsItComes).expect("nothing stands against alternation");
        let directions: Vec<BowDirection> = plain.plan.strokes.iter().map(|stroke| stroke.direction).collect();
        prop_assert_eq!(directions, as_it_comes(&cut(&line, &plain.strokes)));
        let other = of(Standing::OtherStart).expect("a line may begin on either bow");
        prop_assert!(other.plan.strokes[0].direction != found[0].plan.strokes[0].direction);
        let others = found.iter().skip(1).filter(|way| way.standing.is_empty()).count();
        prop_assert!(found.len() <= count || others == 0);
    }
}

/// What a player hears and does: after a rest the direction, straight on the link as well.
fn as_heard(line: &Line, plan: &Plan) -> Vec<(BowDirection, Option<Link>)> {
    let strokes = plan.strokes.iter().zip(&line.strokes).enumerate();
    let heard = strokes.map(|(index, (planned, stroke))| {
        let straight_on = index > 0 && stroke.join == Join::Continues;
        (planned.direction, straight_on.then_some(planned.link))
    });
    heard.collect()
}

/// The cheapest plan for each thing that a player may do, by trying every plan there is: the ways offered are the cheapest
/// of these, with a rest on the way, where one bowing has several plans.
#[test]
fn the_ways_offered_are_the_cheapest_of_all_that_differ_to_a_player() {
    let mut strokes: Vec<Stroke> = (0..5).map(plain_stroke).collect();
    strokes[1].silence_after = RealTime::from_micros(300_000);
    strokes[2].join = Join::AfterRest;
    strokes[3].emphasis.metric = MetricPlace::Downbeat;
    let line = line_of(strokes, Vec::new());
    let settings = PlanSettings::default();
    let choices: Vec<(BowDirection, Link)> = [BowDirection::Down, BowDirection::Up]
        .into_iter()
        .flat_map(|way| [Link::Change, Link::Hooked, Link::Retake, Link::Reset].map(|link| (way, link)))
        .collect();
    let mut cheapest = std::collections::BTreeMap::new();
    for number in 0..choices.len().pow(5) {
        let allowed: Vec<Allowed> = (0..5)
            .map(|index| choices[number / choices.len().pow(index) % choices.len()])
            .map(|(way, link)| Allowed::only(way, link))
            .collect();
        if let Some(plan) = plan_allowed(&line, &settings, &allowed) {
            let total = plan.total.total();
            let known = cheapest.entry(as_heard(&line, &plan)).or_insert(total);
            *known = total.min(*known);
        }
    }
    let mut all: Vec<i64> = cheapest.into_values().collect();
    all.sort_unstable();
    let found: Vec<i64> =
        alternatives(&line, &settings, 0..5, 20).iter().map(|way| way.plan.total.total()).collect();
    assert_eq!(found, all[..20]);
}

/// The figure of a half and two quarters: as it comes, begun on the other bow, and hooked at the end of each bar.
#[test]
fn the_end_of_an_odd_bar_is_hooked_in_one_of_the_ways() {
    let strokes: Vec<Stroke> = (0..12)
        .map(|index| {
            let mut stroke = plain_stroke(index);
            stroke.bar = u32::try_from(index / 3).unwrap();
            stroke.emphasis.metric = if index % 3 == 0 { MetricPlace::Downbeat } else { MetricPlace::Beat };
            stroke
        })
        .collect();
    let line = line_of(strokes, Vec::new());
    let found = alternatives(&line, &PlanSettings::default(), 0..12, 4);
    let hooked = found.iter().find(|way| way.standing.contains(&Standing::LastTwoHooked)).expect("odd bars");
    let links: Vec<Link> = hooked.plan.strokes.iter().map(|stroke| stroke.link).collect();
    for (index, link) in links.iter().enumerate().skip(1) {
        let expected = if index % 3 == 2 && index < 11 { Link::Hooked } else { Link::Change };
        assert_eq!(*link, expected, "stroke {index}: {links:?}");
    }
}

/// The k best by Lawler's method are the k best of all: compared with every action sequence forced in turn.
#[test]
fn the_alternatives_are_the_best_of_all_ways() {
    let strokes: Vec<Stroke> = (0..4)
        .map(|index| {
            let mut stroke = plain_stroke(index);
            stroke.emphasis.metric = if index == 1 { MetricPlace::Downbeat } else { MetricPlace::Beat };
            stroke
        })
        .collect();
    let line = line_of(strokes, Vec::new());
    let settings = PlanSettings::default();
    let mut all = Vec::new();
    let directions = [BowDirection::Down, BowDirection::Up];
    let ways: Vec<(BowDirection, Link)> = directions
        .iter()
        .flat_map(|d| [Link::Change, Link::Hooked, Link::Retake].map(|link| (*d, link)))
        .collect();
    for first in directions {
        for a in &ways {
            for b in &ways {
                for c in &ways {
                    let actions = [(first, Link::Reset), *a, *b, *c];
                    let fits = actions
                        .windows(2)
                        .all(|pair| (pair[0].0 != pair[1].0) == (pair[1].1 == Link::Change));
                    if fits {
                        let allowed: Vec<Allowed> =
                            actions.iter().map(|(d, l)| Allowed::only(*d, *l)).collect();
                        all.push(
                            plan_allowed(&line, &settings, &allowed).expect("a way through").total.total(),
                        );
                    }
                }
            }
        }
    }
    all.sort_unstable();
    let found: Vec<i64> =
        alternatives::k_best(&line, &settings, &(0..4), 12).iter().map(|plan| plan.total.total()).collect();
    assert_eq!(found, all[..12]);
}

#[test]
fn a_finer_grid_changes_little() {
    let strokes: Vec<Stroke> = (0..64)
        .map(|index| {
            let mut stroke = plain_stroke(index);
            stroke.duration = RealTime::from_micros([400_000, 1_200_000, 300_000][index % 3]);
            stroke.emphasis.metric = if index % 3 == 0 { MetricPlace::Downbeat } else { MetricPlace::Beat };
            stroke
        })
        .collect();
    let line = line_of(strokes, Vec::new());
    let total = |grid| plan(&line, &PlanSettings { grid, ..PlanSettings::default() }).total.total();
    let (fine, finest) = (total(Grid::Fine), total(Grid::Finest));
    assert!((fine - finest).abs() * 20 <= finest, "48 cells {fine}, 192 cells {finest}");
}

/// Reading the plan back must land on the sums the search found.
#[test]
fn the_search_and_the_terms_agree() {
    let line = line_of((0..12).map(plain_stroke).collect(), Vec::new());
    let settings = PlanSettings::default();
    let allowed = vec![Allowed::ANY; 12];
    let search = LineSearch::<12>::new(Costs::new(&line, &settings, 12), &allowed);
    let mut row = None;
    let mut base = 0;
    for index in 0..12 {
        let settled = search.forward(index, row.as_ref());
        base += settled.base;
        row = Some(settled.row);
    }
    assert_eq!(base, plan_on::<12>(&line, &settings, &allowed, &[]).expect("a way through").total.total());
}
