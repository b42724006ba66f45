//! The bowing of all lines at once.
//!
//! With the wished direction of every agreement given, the lines do not hang together any more and each
//! is planned exactly. So the search goes over the wishes: from several beginnings it plans all lines and
//! lets each agreement wish what most of it does, by price, until nothing changes; every such step costs
//! no more than the one before. Then stretches between free joints are turned round as a whole where that
//! is cheaper. All this reckons with repeats played once; what it ends with is settled once more with
//! them. With few agreements all wishes are tried, and the result is the optimum; else
//! [`Together::apart`] bounds how far from it the result can be.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::blocks::{Blocks, Repeats, StrokeTurn, leanings};
use super::{About, Agreement, Member};
use crate::plan::{BowAndLink, Leaning, Wished};
use crate::{Cost, Join, Line, Plan, PlanSettings, Term};

/// Lines planned together.
#[derive(Clone, Debug)]
pub struct Together {
    /// A plan for each line; going against an agreement counts in it.
    pub plans: Vec<Arc<Plan>>,
    /// For each agreement, what most of it does.
    pub wishes: Vec<Wished>,
    /// The settings that each plan was made with.
    pub settings: Vec<PlanSettings>,
    /// What all plans cost.
    pub total: Cost,
    /// What the lines of each movement cost planned each for itself, agreements unseen, thousandths: no bowing of all
    /// lines costs less.
    pub apart: BTreeMap<usize, i64>,
}

/// What came of the lines of one movement.
pub(super) struct MovementPlanned {
    pub(super) plans: Vec<Arc<Plan>>,
    pub(super) wishes: Vec<Wished>,
    pub(super) settings: Vec<PlanSettings>,
    pub(super) apart: i64,
}

/// Up to so many agreements all wishes are tried (rule of thumb).
const EXACT: usize = 10;
/// Planning and wishing anew hardly ever takes so many turns (rule of thumb).
const TURNS: usize = 16;
/// So many lines at most are tried as leaders (rule of thumb).
const LEADERS: usize = 4;
/// No comfort of a stroke's neighbours comes to so much, thousandths of a point (by definition).
const FORCED: i64 = 1_000_000;
/// Blocks of more strokes are not turned round piece by piece: each piece would plan the whole block (rule of thumb).
const LONGEST: usize = 600;

/// Plans the lines of a movement together.
pub(super) fn plan_movement(
    lines: &[Line],
    settings: &[PlanSettings],
    agreements: &[Agreement],
) -> MovementPlanned {
    let problem = TogetherProblem { lines, agreements };
    let mut blocks = Blocks::new(lines, settings);
    let bound = blocks.total(Repeats::Counted);
    let apart = blocks.bows(Repeats::Counted);
    let best = if agreements.len() <= EXACT {
        problem.every_wish(&mut blocks)
    } else {
        problem.search(&mut blocks, &apart)
    };
    let leanings = leanings(lines.len(), agreements, &best);
    blocks.lean(&leanings);
    MovementPlanned {
        plans: blocks.plans().into_iter().map(Arc::new).collect(),
        settings: settings
            .iter()
            .zip(leanings)
            .map(|(settings, leanings)| PlanSettings { leanings, ..settings.clone() })
            .collect(),
        wishes: best,
        apart: bound,
    }
}

type Wishes = Vec<Wished>;

struct TogetherProblem<'a> {
    lines: &'a [Line],
    agreements: &'a [Agreement],
}

impl TogetherProblem<'_> {
    fn leanings(&self, wishes: &[Wished]) -> Vec<Vec<Leaning>> {
        leanings(self.lines.len(), self.agreements, wishes)
    }

    /// What most of each agreement does, by price; where it is even, what `even` says.
    fn wishes(&self, strokes: &[Vec<BowAndLink>], even: impl Fn(usize) -> Wished) -> Wishes {
        let wish = |(index, agreement): (usize, &Agreement)| {
            let plain = agreement.about.plain();
            let mut for_it = 0;
            for member in &agreement.members {
                let met = plain.is_met_by(strokes[member.line][member.stroke]);
                for_it += if met { member.thousandths } else { -member.thousandths };
            }
            match for_it {
                0 => even(index),
                1.. => plain,
                _ => plain.other(),
            }
        };
        self.agreements.iter().enumerate().map(wish).collect()
    }

    /// Wishes to begin with: what most lines do by themselves; then what each leader does.
    fn beginnings(&self, apart: &[Vec<BowAndLink>]) -> Vec<Wishes> {
        let first = |index: usize| {
            let member = self.agreements[index].members[0];
            self.agreements[index].about.done_by(apart[member.line][member.stroke])
        };
        let most = self.wishes(apart, first);
        let mut leaders: Vec<usize> = Vec::new();
        for agreement in self.agreements.iter().filter(|agreement| agreement.term == Term::Unity) {
            let leader = agreement.members[0].line;
            if leaders.len() < LEADERS && !leaders.contains(&leader) {
                leaders.push(leader);
            }
        }
        leaders.sort_unstable();
        let led = leaders.into_iter().map(|leader| {
            let wish = |(agreement, most): (&Agreement, &Wished)| {
                let member = agreement.members.iter().find(|member| member.line == leader);
                member.map_or(*most, |member| agreement.about.done_by(apart[member.line][member.stroke]))
            };
            self.agreements.iter().zip(&most).map(wish).collect()
        });
        std::iter::once(most.clone()).chain(led).collect()
    }

    /// Wishes to begin with: what most do when every agreement is forced to go as most of its lines do by
    /// themselves. A stroke of two agreements that are forced both ways obeys the last. Without repeats this
    /// makes the search never dearer than planning apart and forcing unity: the cost of the forced bowing is
    /// what it costs under these wishes, and no step from there costs more.
    fn forced(&self, blocks: &mut Blocks, apart: &[Vec<BowAndLink>]) -> Wishes {
        let plain = |index: usize| self.agreements[index].about.plain();
        let most = self.wishes(apart, plain);
        let mut leanings = self.leanings(&most);
        let mut last: BTreeMap<(usize, usize), Wished> = BTreeMap::new();
        for (agreement, wish) in
            self.agreements.iter().zip(&most).filter(|(agreement, _)| agreement.about == About::Direction)
        {
            last.extend(agreement.members.iter().map(|member| ((member.line, member.stroke), *wish)));
        }
        for (line, leanings) in leanings.iter_mut().enumerate() {
            leanings.retain(|leaning| matches!(leaning.wished, Wished::Goes(_)));
            leanings.dedup_by_key(|leaning| leaning.stroke);
            for leaning in leanings {
                leaning.thousandths = FORCED;
                leaning.wished = last.get(&(line, leaning.stroke)).copied().unwrap_or(leaning.wished);
            }
        }
        blocks.lean(&leanings);
        self.wishes(&blocks.bows(Repeats::Once), plain)
    }

    /// The best wishes found from all beginnings.
    fn search(&self, blocks: &mut Blocks, apart: &[Vec<BowAndLink>]) -> Wishes {
        let mut best: Option<(i64, Wishes)> = None;
        let mut beginnings = self.beginnings(apart);
        let most = beginnings[0].clone();
        beginnings.push(self.forced(blocks, apart));
        for wishes in beginnings {
            let settled = self.settle(blocks, wishes, Repeats::Once);
            if best.as_ref().is_none_or(|best| settled.0 < best.0) {
                best = Some(settled);
            }
        }
        let found = best.map_or_else(|| most.clone(), |(_, wishes)| self.turn_round(blocks, wishes));
        let found = self.settle(blocks, found, Repeats::Counted);
        // Without repeats one thing may be best and with them another: what the lines do by themselves
        // is always tried with them too.
        let plain = self.settle(blocks, most, Repeats::Counted);
        if plain.0 < found.0 { plain.1 } else { found.1 }
    }

    /// Plans and wishes in turn until nothing changes; what it costs then.
    fn settle(&self, blocks: &mut Blocks, mut wishes: Wishes, repeats: Repeats) -> (i64, Wishes) {
        blocks.lean(&self.leanings(&wishes));
        let mut total = blocks.total(repeats);
        for _ in 0..TURNS {
            let next = self.wishes(&blocks.bows(repeats), |index| wishes[index]);
            if next == wishes {
                break;
            }
            wishes = next;
            blocks.lean(&self.leanings(&wishes));
            total = blocks.total(repeats);
        }
        (total, wishes)
    }

    /// Tries all wishes.
    fn every_wish(&self, blocks: &mut Blocks) -> Wishes {
        let mut best = (i64::MAX, Vec::new());
        for pattern in 0..1_usize << self.agreements.len() {
            let wish = |index: usize| {
                let plain = self.agreements[index].about.plain();
                if pattern >> index & 1 == 0 { plain } else { plain.other() }
            };
            let wishes: Wishes = (0..self.agreements.len()).map(wish).collect();
            blocks.lean(&self.leanings(&wishes));
            let total = blocks.total(Repeats::Counted);
            if total < best.0 {
                best = (total, wishes);
            }
        }
        best.1
    }

    /// Turns stretches round, each from a free joint to the next, and changes in bars that are alike, where all lines that
    /// agree then cost less.
    fn turn_round(&self, blocks: &mut Blocks, mut wishes: Wishes) -> Wishes {
        blocks.lean(&self.leanings(&wishes));
        // What all do alike is as it should be.
        let strokes = blocks.bows(Repeats::Once);
        let parted = |index: &usize| {
            let agreement = &self.agreements[*index];
            let met = |member: &Member| wishes[*index].is_met_by(strokes[member.line][member.stroke]);
            agreement.about == About::Change && !agreement.members.iter().all(met)
        };
        let changes: Vec<usize> = (0..self.agreements.len()).filter(parted).collect();
        for run in self.runs().into_iter().chain(changes.into_iter().map(|index| vec![index])) {
            let members = run.iter().flat_map(|index| &self.agreements[*index].members);
            if members.clone().any(|member| blocks.length_around(member) > LONGEST) {
                continue;
            }
            let turns = run.iter().flat_map(|index| {
                let (Agreement { members, term, .. }, wish) =
                    (&self.agreements[*index], wishes[*index].other());
                members.iter().map(move |member| StrokeTurn { member: *member, term: *term, wish })
            });
            if blocks.turn(&turns.collect::<Vec<_>>()) {
                for index in run {
                    wishes[index] = wishes[index].other();
                }
            }
        }
        wishes
    }

    /// Unity's agreements in order of time, cut where the lines change or one of them begins anew.
    fn runs(&self) -> Vec<Vec<usize>> {
        let mut runs: Vec<Vec<usize>> = Vec::new();
        let unity = |index: &usize| self.agreements[*index].term == Term::Unity;
        for index in (0..self.agreements.len()).filter(unity) {
            let last = runs.last().and_then(|run| run.last());
            if last.is_some_and(|last| self.goes_on(*last, index))
                && let Some(run) = runs.last_mut()
            {
                run.push(index);
            } else {
                runs.push(vec![index]);
            }
        }
        runs
    }

    /// Whether the same lines agree in both, and no bow is free in between.
    fn goes_on(&self, before: usize, after: usize) -> bool {
        let (before, after) = (&self.agreements[before].members, &self.agreements[after].members);
        before.len() == after.len()
            && before.iter().zip(after).all(|(from, to)| {
                let free = |stroke: usize| self.lines[to.line].strokes[stroke].join == Join::Entry;
                from.line == to.line && !(from.stroke + 1..to.stroke + 1).any(free)
            })
    }
}
