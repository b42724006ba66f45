//! Sections, figures and the search over all lines at once.

use std::sync::Arc;

use arcata_score::{BowDirection, Score};
use proptest::prelude::*;

use super::*;
use crate::lines::tests::score;
use crate::plan::{Anchor, Grid, Wished};
use crate::{Line, LineOptions, Plan, PlanSettings, Profile, all_lines, plan};

fn read(fixture: &str) -> (Score, Vec<Line>) {
    let score = score(fixture);
    let lines = all_lines(&score, &Profile::default(), &LineOptions::default());
    (score, lines)
}

fn settings(lines: &[Line], grid: Grid) -> Vec<PlanSettings> {
    let profile = Profile::default();
    lines.iter().map(|line| PlanSettings { grid, ..profile.plan_settings(line.instrument) }).collect()
}

fn together(lines: &[Line], agreements: &[Agreement], grid: Grid) -> Together {
    plan_together(lines, &settings(lines, grid), agreements)
}

fn directions(plan: &Plan) -> String {
    plan.strokes.iter().map(|s| if s.direction == BowDirection::Down { 'D' } else { 'U' }).collect()
}

/// The lines of an orchestra: a bass makes the others sections.
const BASS: &str = "\ncontrabass: bar-rest | bar-rest";

#[test]
fn one_rhythm_is_a_group_and_its_relation_is_told() {
    for (other, relation) in [
        ("1/4 C5 D5 1/2 E5 | 1/4 F5 E5 1/2 D5", Relation::Unison),
        ("1/4 C4 D4 1/2 E4 | 1/4 F4 E4 1/2 D4", Relation::Octaves),
        ("1/4 A4 B4 1/2 C5 | 1/4 G4 G4 1/2 G4", Relation::Chordal),
    ] {
        let (score, lines) =
            read(&format!("violin: 1/4 C5 D5 1/2 E5 | 1/4 F5 E5 1/2 D5\nviola: {other}{BASS}"));
        let groups = groups(&score, &lines);
        assert_eq!(groups.len(), 1, "{groups:?}");
        assert_eq!((groups[0].bars.clone(), groups[0].strokes, groups[0].relation), (0..2, 6, relation));
    }
}

#[test]
fn independent_lines_are_left_free() {
    let (score, lines) = read(&format!(
        "violin: 1/4 C5 D5 1/2 E5 | 1/1 F5\nviola: 1/8 C4 D4 E4 F4 G4 A4 B4 C5 | 1/2 C4 D4{BASS}"
    ));
    assert_eq!(groups(&score, &lines), []);
}

#[test]
fn a_section_goes_along_and_a_player_alone_may_not() {
    // The viola's bar begins after an extra upbeat, so that by itself it would come out the other way.
    let fixture = "violin: 3/4 rest 1/4 C5 | D5 E5 F5 G5\nviola: 1/2 rest 1/4 C4 C4 | D4 E4 F4 G4";
    let (score, lines) = read(&format!("{fixture}{BASS}"));
    let weights = Profile::default().plan_settings(lines[0].instrument).weights;
    let planned = together(&lines, &agreements(&score, &lines, &weights), Grid::Fine);
    assert_eq!(directions(&planned.plans[0])[1..], directions(&planned.plans[1])[2..]);
}

#[test]
fn a_figure_agrees_with_itself_transposed_at_the_same_place_of_the_bar() {
    let (score, lines) =
        read("violin: 1/8 C5 D5 E5 C5 1/4 D5 C5 | 1/8 G4 A4 B4 G4 1/4 A4 G4 | 1/8 rest C5 D5 E5 1/2 C5");
    let weights = Profile::default().plan_settings(lines[0].instrument).weights;
    let likeness: Vec<Vec<usize>> = agreements(&score, &lines, &weights)
        .iter()
        .filter(|agreement| agreement.about == About::Direction)
        .map(|agreement| agreement.members.iter().map(|member| member.stroke).collect())
        .collect();
    // As a figure, and as neighbouring bars of the same strokes.
    let alike = [[0, 6], [1, 7], [2, 8], [3, 9], [4, 10], [5, 11]];
    assert_eq!(likeness, [alike, alike].concat());
}

#[test]
fn equal_neighbouring_bars_agree_whatever_their_pitches() {
    let likeness = |fixture: &str, about: About| -> Vec<Vec<usize>> {
        let (_, lines) = read(fixture);
        let weights = Profile::default().plan_settings(lines[0].instrument).weights;
        let found = figures::bars(&lines, &weights).into_iter().filter(|agreement| agreement.about == about);
        found.map(|agreement| agreement.members.iter().map(|member| member.stroke).collect()).collect()
    };
    let four = "violin: 1/4 C5 D5 (1/8 E5 F5) 1/4 G5 | G5 B5 (1/8 G5 F5) 1/4 D5 | 1/1 C5";
    assert_eq!(likeness(four, About::Direction), [[0, 4], [1, 5], [2, 6], [3, 7]]);
    assert_eq!(likeness(four, About::Change), [[1, 5], [2, 6], [3, 7]]);
    // Three strokes of which the last two cannot be hooked come out mirrored: they agree on where the bow changes alone.
    let slurred = "time 3/4\nviolin: (1/8 C5 D5) (E5 F5) (G5 A5) | (C5 D5) (E5 F5) (G5 A5)";
    assert!(likeness(slurred, About::Direction).is_empty());
    assert_eq!(likeness(slurred, About::Change), [[1, 4], [2, 5]]);
    let three = "time 3/4\nviolin: 1/4 C5 D5 E5 | F5 E5 D5";
    assert_eq!(likeness(three, About::Direction).len(), 3);
    assert_eq!(likeness(three, About::Change), [[1, 4], [2, 5]]);
}

#[test]
fn bars_of_three_are_all_hooked_or_all_mirrored() {
    // By itself the first bar would go up, down, up and the second down, up-up, to have the long note down.
    let fixture = "time 3/4\nviolin: f 3/4 C5!down | 1/4 D5 E5 F5 | D5 E5 F5 | 3/4 G5";
    let (score, lines) = read(fixture);
    let weights = Profile::default().plan_settings(lines[0].instrument).weights;
    let planned = together(&lines, &agreements(&score, &lines, &weights), Grid::Fine);
    let links = |bar: std::ops::Range<usize>| -> Vec<Link> {
        planned.plans[0].strokes[bar].iter().skip(1).map(|stroke| stroke.link).collect()
    };
    assert_eq!(links(1..4), links(4..7));
}

#[test]
fn what_departs_says_what_going_along_would_cost() {
    // Printed marks hold the two apart at the first note; over the rest one of them goes on and joins the other.
    let (score, lines) = read("violin: 1/4 C5!down rest D5 E5\nviola: 1/4 C4!up rest D4 E4");
    let weights = Profile::default().plan_settings(lines[0].instrument).weights;
    let agreements = agreements(&score, &lines, &weights);
    let planned = together(&lines, &agreements, Grid::Fine);
    assert_eq!(planned.total.term(Term::Unity), weights.unity_alone);
    let found = departures(&lines, &planned, &agreements);
    let found: Vec<_> = found.iter().filter(|departure| departure.term == Term::Unity).collect();
    assert_eq!(found.len(), 1, "{found:?}");
    assert_eq!((found[0].strokes.clone(), found[0].departing), (0..1, 1));
}

#[test]
fn every_downbeat_says_who_begins() {
    let (score, lines) = read("violin: 1/2 C5 (D5 | E5) F5\nviola: 1/1 rest | C4");
    let settings = Profile::default().plan_settings(lines[0].instrument);
    let plans: Vec<Plan> = lines.iter().map(|line| plan(line, &settings)).collect();
    let told = downbeats(&score, &lines, &plans);
    assert_eq!(told[0].lines, [Speaking::Begins(BowDirection::Down), Speaking::Rests]);
    assert_eq!(told[1].lines, [Speaking::GoesOn, Speaking::Begins(BowDirection::Down)]);
    assert!(!told[1].is_unspoken());
}

/// The least cost over all directions of all strokes of all lines, by trying every one.
fn by_force(lines: &[Line], settings: &[PlanSettings], agreements: &[Agreement]) -> i64 {
    let count: usize = lines.iter().map(|line| line.strokes.len()).sum();
    let mut best = i64::MAX;
    for pattern in 0..1_u32 << count {
        let mut bit = 0;
        let mut sum = 0;
        let mut chosen: Vec<Vec<BowDirection>> = Vec::new();
        for (line, settings) in lines.iter().zip(settings) {
            let directions: Vec<BowDirection> = line
                .strokes
                .iter()
                .map(|_| {
                    bit += 1;
                    if pattern >> (bit - 1) & 1 == 0 { BowDirection::Down } else { BowDirection::Up }
                })
                .collect();
            let mut settings = settings.clone();
            settings.anchors.extend(directions.iter().enumerate().map(|(stroke, direction)| Anchor {
                stroke,
                direction: Some(*direction),
                link: None,
            }));
            sum += plan(line, &settings).total.total();
            chosen.push(directions);
        }
        for agreement in agreements {
            let side = |wanted: BowDirection| -> i64 {
                assert_eq!(agreement.about, About::Direction, "lines of one bar agree on nothing else");
                let members = agreement.members.iter();
                members.filter(|m| chosen[m.line][m.stroke] == wanted).map(|m| m.thousandths).sum()
            };
            sum += side(BowDirection::Down).min(side(BowDirection::Up));
        }
        best = best.min(sum);
    }
    best
}

const RHYTHMS: [&str; 6] = [
    "1/4 C5 D5 1/2 E5",
    "1/2 C5 1/4 D5 E5",
    "(1/4 C5 D5) 1/2 E5",
    "1/4 rest C5 D5 E5",
    "1/4 C5 D5 E5 F5",
    "3/4 C5 1/4 D5",
];

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn short_lines_cost_what_trying_everything_costs(
        rhythms in prop::collection::vec(prop::sample::select(RHYTHMS.to_vec()), 2..=3),
        alone in any::<bool>(),
    ) {
        let names = ["violin", "viola", "cello"];
        let mut fixture: Vec<String> =
            rhythms.iter().zip(names).map(|(rhythm, name)| format!("{name}: {rhythm}")).collect();
        if !alone {
            fixture.push("contrabass: bar-rest".to_owned());
        }
        let (score, lines) = read(&fixture.join("\n"));
        let settings = settings(&lines, Grid::Coarse);
        let agreements = agreements(&score, &lines, &settings[0].weights);
        let planned = plan_together(&lines, &settings, &agreements);
        prop_assert_eq!(planned.total.total(), by_force(&lines, &settings, &agreements));
    }

    #[test]
    fn never_dearer_than_planning_apart_and_forcing_unity(seed in any::<u64>()) {
        let xml = arcata_testkit::random_score(seed, arcata_testkit::ScoreShape { parts: 3, ..arcata_testkit::ScoreShape::default() });
        let document = arcata_xml::Document::parse(xml.into_bytes(), &arcata_xml::Limits::default()).unwrap();
        let score = arcata_score::read(&document);
        let mut lines = all_lines(&score, &Profile::default(), &LineOptions::default());
        for line in &mut lines {
            line.repeats.clear();
            // Near printed marks an asked bow costs less than one that nobody asked for: what is forced by anchors would
            // be told at another price than the same bow planned.
            line.strokes.iter_mut().for_each(|stroke| stroke.phrase.marked = false);
        }
        prop_assume!(!lines.is_empty());
        let settings = settings(&lines, Grid::Coarse);
        let agreements = agreements(&score, &lines, &settings[0].weights);
        let planned = plan_together(&lines, &settings, &agreements);
        let apart: Vec<Plan> = lines.iter().zip(&settings).map(|(line, settings)| plan(line, settings)).collect();
        // Forced: every agreement goes as most of its lines do by themselves.
        let mut forced = settings.clone();
        for agreement in agreements.iter().filter(|agreement| agreement.about == About::Direction) {
            let down: i64 = agreement.members.iter().map(|m| match apart[m.line].strokes[m.stroke].direction {
                BowDirection::Down => m.thousandths,
                BowDirection::Up => -m.thousandths,
            }).sum();
            let wish = if down >= 0 { BowDirection::Down } else { BowDirection::Up };
            for m in &agreement.members {
                // An anchor goes before a printed mark; a bowing that breaks one is none to compare with.
                if lines[m.line].strokes[m.stroke].printed.is_none_or(|printed| printed == wish) {
                    forced[m.line].anchors.push(Anchor { stroke: m.stroke, direction: Some(wish), link: None });
                }
            }
        }
        // A stroke of two agreements may be forced both ways: the last one holds, and the other is paid.
        let forced_plans: Vec<Plan> = lines.iter().zip(&forced).map(|(line, settings)| plan(line, settings)).collect();
        let paid: i64 = agreements.iter().map(|agreement| {
            let side = |wanted: Wished| -> i64 {
                let members = agreement.members.iter();
                members.filter(|m| wanted.is_met(&forced_plans[m.line].strokes[m.stroke])).map(|m| m.thousandths).sum()
            };
            let plain = agreement.about.done(&forced_plans[agreement.members[0].line].strokes[agreement.members[0].stroke]);
            side(plain).min(side(plain.other()))
        }).sum();
        let forced_total = forced_plans.iter().map(|plan| plan.total.total()).sum::<i64>() + paid;
        prop_assert!(planned.total.total() <= forced_total);
        prop_assert!(planned.total.total() >= planned.apart.values().sum());
    }

    /// Twin: everything planned anew.
    #[test]
    fn after_a_change_only_its_movement_is_planned_and_all_is_as_if_planned_anew(
        seed in any::<u64>(),
        at in any::<(prop::sample::Index, prop::sample::Index)>(),
        up in any::<bool>(),
        grows in any::<bool>(),
    ) {
        let xml = arcata_testkit::random_score(seed, arcata_testkit::ScoreShape { parts: 3, ..arcata_testkit::ScoreShape::default() });
        let document = arcata_xml::Document::parse(xml.into_bytes(), &arcata_xml::Limits::default()).unwrap();
        let score = arcata_score::read(&document);
        let own = all_lines(&score, &Profile::default(), &LineOptions::default());
        prop_assume!(!own.is_empty());
        let count = own.len();
        let agreed = agreements(&score, &own, &settings(&own, Grid::Coarse)[0].weights);
        // The same music once more, as the second movement.
        let again = own.iter().map(|line| Line { movement: 1, ..line.clone() });
        let mut lines: Vec<Line> = own.iter().cloned().chain(again).collect();
        let again = agreed.iter().cloned().map(|mut agreement| {
            agreement.members.iter_mut().for_each(|member| member.line += count);
            agreement
        });
        let agreed: Vec<Agreement> = agreed.iter().cloned().chain(again).collect();
        let before = together(&lines, &agreed, Grid::Coarse);
        let were = lines.clone();
        let line = count + at.0.index(count);
        let stroke = at.1.index(lines[line].strokes.len());
        lines[line].strokes[stroke].printed = Some(if up { BowDirection::Up } else { BowDirection::Down });
        if grows {
            // A change may also bring a line more into the movement, behind all others.
            lines.push(Line { name: "another".to_owned(), ..lines[line].clone() });
        }
        let settings = settings(&lines, Grid::Coarse);
        let earlier = PlannedBefore { lines: &were, agreements: &agreed, together: &before };
        let after = plan_together_after(&lines, &settings, &agreed, Some(earlier));
        let anew = plan_together(&lines, &settings, &agreed);
        prop_assert_eq!(&after.plans, &anew.plans);
        prop_assert_eq!((&after.wishes, &after.settings), (&anew.wishes, &anew.settings));
        prop_assert_eq!((after.total, &after.apart), (anew.total, &anew.apart));
        for line in 0..count {
            prop_assert!(Arc::ptr_eq(&after.plans[line], &before.plans[line]), "line {} was planned again", line);
        }
    }
}

/// A free joint parts the line into blocks that are planned apart: what is told of a repeat in a later one is told in
/// the strokes of the line.
#[test]
fn repeats_behind_a_free_joint_keep_their_place() {
    let score = score(
        "quarter=60\nviolin: mf 1/4 C5 D5 E5 F5 | 1/1 rest | |: 1/4 G5 A5 B5 G5 :|\nviola: 1/4 C4 D4 E4 F4 | 1/1 rest | |: 1/4 G4 A4 B4 G4 :|",
    );
    let lines = all_lines(&score, &Profile::default(), &LineOptions::default());
    let settings: Vec<PlanSettings> =
        lines.iter().map(|line| Profile::default().plan_settings(line.instrument)).collect();
    let found = agreements(&score, &lines, &settings[0].weights);
    let together = plan_together(&lines, &settings, &found);
    let places = |plan: &Plan| -> Vec<(usize, usize, usize)> {
        plan.turns.iter().map(|turn| (turn.stretch, turn.from, turn.to)).collect()
    };
    for (line, planned) in lines.iter().zip(&together.plans) {
        assert_eq!(places(planned), [(0, 7, 4)], "{}", line.name);
        assert_eq!(places(planned), places(&plan(line, &settings[0])));
    }
}
