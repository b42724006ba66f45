//! Repeats inside one another, with endings, da capo and dal segno: the search against the twin, and the
//! course against a player who turns the pages.

use super::*;
use crate::plan::course::{Course, WalkBy};

fn any_stretch(count: usize) -> impl Strategy<Value = Option<RepeatedStretch>> {
    let roads = prop::sample::select(vec![Road::RepeatSign, Road::RepeatSign, Road::DalSegno, Road::DaCapo]);
    let silences = prop::array::uniform4(0i64..900_000);
    (any::<[prop::sample::Index; 4]>(), roads, any::<[bool; 2]>(), silences).prop_map(
        move |(cuts, road, [later, anew], silences)| {
            let mut cuts = cuts.map(|cut| cut.index(count + 1));
            cuts.sort_unstable();
            let silences = silences.map(RealTime::from_micros);
            let ending = LaterEnding {
                strokes: cuts[3] - cuts[2],
                silence_at_turn: silences[2],
                silence_at_skip: silences[3],
            };
            let stretch = RepeatedStretch {
                body_end: cuts[1],
                first_ending_end: cuts[2],
                silence_at_skip: silences[1],
                later_endings: if later && cuts[2] > cuts[1] { vec![ending] } else { Vec::new() },
                road,
                onward: if anew { Onward::Anew } else { Onward::GoesOn },
                ..RepeatedStretch::between(cuts[0], cuts[1], silences[0])
            };
            stretch.is_sound(count).then_some(stretch)
        },
    )
}

pub(crate) fn any_repeated_line(longest: usize, stretches: usize) -> impl Strategy<Value = Line> {
    any_line(longest).prop_flat_map(move |line| {
        let count = line.strokes.len();
        prop::collection::vec(any_stretch(count), 1..=stretches).prop_map(move |stretches| {
            let repeats = stretches.into_iter().flatten().collect();
            Line {
                repeats,
                voices: line.voices.clone(),
                name: line.name.clone(),
                strokes: line.strokes.clone(),
                ..line
            }
        })
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1200))]

    /// Exact where stretches nest; where they cross, off by no more than the turns that were not weighed.
    #[test]
    fn no_way_through_repeats_is_cheaper(line in any_repeated_line(5, 3)) {
        let settings = PlanSettings::default();
        let allowed = anchors::allowed(&line, &settings);
        let found = plan_on::<3>(&line, &settings, &allowed, &[]).expect("a way through");
        let total = found.total.total();
        let best = exhaustive::<3>(&line, &settings, total + 1);
        let afterwards = found.turns.iter().filter(|turn| turn.weighed == Weighed::Afterwards);
        let bound: i64 = afterwards.map(|turn| turn.cost.total()).sum();
        prop_assert!(best <= total && total <= best + bound, "best {best}, found {total}, bound {bound}");
    }

    #[test]
    fn no_way_through_nested_repeats_is_cheaper(line in nested_line(5)) {
        let settings = PlanSettings::default();
        let found = total_on::<3>(&line.0, &settings);
        prop_assert_eq!(exhaustive::<3>(&line.0, &settings, found + 1), found);
    }

    /// Every two strokes that a player takes one after the other are a way of the course, and every way of
    /// the course is taken.
    #[test]
    fn the_course_is_what_a_player_plays((line, played) in nested_line(14)) {
        let course = Course::new(&line);
        let mut taken: std::collections::BTreeSet<(usize, usize)> = std::collections::BTreeSet::new();
        let mut reached = vec![false; line.strokes.len()];
        for pair in played.windows(2) {
            let (from, to) = (pair[0], pair[1]);
            if !reached[to] && to != played[0] {
                prop_assert_eq!(course.into[to].before, Some(from));
            }
            reached[to] = true;
            taken.insert((from, to));
        }
        let first_ways = course.into.iter().enumerate().filter(|(_, way)| way.by != WalkBy::Anew);
        let ways = first_ways
            .filter_map(|(to, way)| Some((way.before?, to)))
            .chain(course.returns.iter().map(|way| (way.from, way.to)));
        let ways: std::collections::BTreeSet<(usize, usize)> = ways.collect();
        prop_assert_eq!(ways, taken);
        prop_assert!(course.returns.iter().all(|way| way.weight == Weighed::InSearch));
    }

    #[test]
    fn crossing_or_not_the_terms_add_up(line in any_repeated_line(30, 4)) {
        let plan = plan(&line, &PlanSettings::default());
        prop_assert_eq!(plan.strokes.len(), line.strokes.len());
        let strokes: i64 = plan.strokes.iter().map(|stroke| stroke.cost.total()).sum();
        let turns: i64 = plan.turns.iter().map(|turn| turn.cost.total()).sum();
        prop_assert_eq!(strokes + turns, plan.total.total());
    }
}

/// A line with nested repeats and the strokes as a player takes them, all passes played.
pub(crate) fn nested_line(longest: usize) -> impl Strategy<Value = (Line, Vec<usize>)> {
    (any_line(longest), prop::collection::vec(0u8..=255, 40)).prop_map(|(mut line, draws)| {
        let mut builder = Builder { draws, repeats: Vec::new() };
        let played = builder.stretch(0, line.strokes.len(), 3);
        line.repeats = builder.repeats;
        (line, played)
    })
}

struct Builder {
    draws: Vec<u8>,
    repeats: Vec<RepeatedStretch>,
}

impl Builder {
    fn draw(&mut self, below: usize) -> usize {
        usize::from(self.draws.pop().unwrap_or(0)) % below.max(1)
    }

    /// Strokes `from..to`, some of them repeated; returns them as played.
    fn stretch(&mut self, from: usize, to: usize, depth: usize) -> Vec<usize> {
        if to - from < 1 || depth == 0 || self.draw(4) == 0 {
            return (from..to).collect();
        }
        let first = from + self.draw(to - from);
        let mut played: Vec<usize> = (from..first).collect();
        let body_end = first + 1 + self.draw(to - first);
        let body = self.stretch(first, body_end, depth - 1);
        let mut at = body_end;
        let mut endings = Vec::new();
        for _ in 0..self.draw(3) {
            let end = at + self.draw(3).min(to - at);
            if end > at {
                endings.push((at, self.stretch(at, end, depth - 1)));
            }
            at = end;
        }
        let silence = RealTime::from_micros(40_000 * self.draw(20) as i64);
        let ends: Vec<usize> = endings.iter().skip(1).map(|(at, _)| *at).chain(std::iter::once(at)).collect();
        let later = ends.windows(2).map(|pair| LaterEnding {
            strokes: pair[1] - pair[0],
            silence_at_turn: silence,
            silence_at_skip: RealTime::default(),
        });
        self.repeats.push(RepeatedStretch {
            body_end,
            first_ending_end: ends[0],
            later_endings: later.collect(),
            ..RepeatedStretch::between(first, body_end, silence)
        });
        if endings.is_empty() {
            played.extend(body.iter().chain(&body));
        } else {
            for (_, ending) in &endings {
                played.extend(body.iter().chain(ending));
            }
            played.extend(&body);
        }
        played.extend(self.stretch(at, to, depth - 1));
        played
    }
}

/// D.S. into the middle of a repeated stretch: paid, not weighed, and told so.
#[test]
fn a_segno_inside_another_repeat_is_paid_afterwards() {
    let mut line = line_of((0..6).map(plain_stroke).collect(), Vec::new());
    line.repeats.push(RepeatedStretch::between(0, 4, RealTime::default()));
    let dal_segno = RepeatedStretch::between(2, 6, RealTime::default());
    line.repeats.push(RepeatedStretch { road: Road::DalSegno, onward: Onward::Anew, ..dal_segno });
    let plan = plan(&line, &PlanSettings::default());
    let told: Vec<_> = plan.turns.iter().map(|turn| (turn.from, turn.to, turn.weighed)).collect();
    assert_eq!(told, [(3, 0, Weighed::InSearch), (5, 2, Weighed::Afterwards)]);
}
