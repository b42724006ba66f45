//! The lines cut into strokes that hang together: what is planned anew when wishes change.

use std::collections::BTreeMap;

use arcata_score::BowDirection;
use rayon::prelude::*;

use super::{Agreement, Member};
use crate::plan::{Anchor, BowAndLink, JoinedStrokes, Leaning, LeaningSearch, Turn, Wished, joined_strokes};
use crate::{Line, Link, Plan, PlanSettings, Term};

/// How repeated stretches are reckoned.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Repeats {
    /// As if they were played once: quick.
    Once,
    /// As cycles.
    Counted,
}

/// A stroke that is to lean to a wish under a term.
pub(super) struct StrokeTurn {
    pub(super) member: Member,
    pub(super) term: Term,
    pub(super) wish: Wished,
}

/// For each line, what the wishes make it lean to, in the order of its strokes.
pub(super) fn leanings(lines: usize, agreements: &[Agreement], wishes: &[Wished]) -> Vec<Vec<Leaning>> {
    let mut leanings: Vec<Vec<Leaning>> = vec![Vec::new(); lines];
    for (agreement, wish) in agreements.iter().zip(wishes) {
        for member in &agreement.members {
            leanings[member.line].push(Leaning {
                stroke: member.stroke,
                wished: *wish,
                thousandths: member.thousandths,
                term: agreement.term,
            });
        }
    }
    for line in &mut leanings {
        line.sort_by_key(|leaning| (leaning.stroke, leaning.term));
    }
    leanings
}

/// Strokes of a line that hang together.
struct Block {
    line: usize,
    of: JoinedStrokes,
    /// The strokes as if they were played once.
    once: LeaningSearch,
    /// The same with their repeats, where they have any.
    repeated: Option<LeaningSearch>,
}

impl Block {
    fn new(line: usize, whole: &Line, of: JoinedStrokes, settings: &PlanSettings) -> Self {
        let strokes = of.line(whole);
        let anchors = of.strokes().enumerate().flat_map(|(here, stroke)| {
            let anchors = settings.anchors.iter().filter(move |anchor| anchor.stroke == stroke);
            anchors.map(move |anchor| Anchor { stroke: here, ..*anchor })
        });
        let settings = PlanSettings { anchors: anchors.collect(), leanings: Vec::new(), ..settings.clone() };
        let once = Line { repeats: Vec::new(), ..strokes.clone() };
        let once = LeaningSearch::new(once, &settings);
        let repeated = (!strokes.repeats.is_empty()).then(|| LeaningSearch::new(strokes, &settings));
        Self { line, of, once, repeated }
    }

    /// The search in which repeats are reckoned like this.
    fn search(&mut self, repeats: Repeats) -> &mut LeaningSearch {
        match (&mut self.repeated, repeats) {
            (Some(repeated), Repeats::Counted) => {
                repeated.lean(self.once.settings().leanings.clone());
                repeated
            }
            _ => &mut self.once,
        }
    }

    /// The plan, told in the strokes and stretches of the line.
    fn plan(&mut self) -> Plan {
        let mut planned = self.search(Repeats::Counted).plan();
        let strokes: Vec<usize> = self.of.strokes().collect();
        for turn in &mut planned.turns {
            *turn = Turn {
                stretch: self.of.stretches[turn.stretch],
                from: strokes[turn.from],
                to: strokes[turn.to],
                ..*turn
            };
        }
        planned
    }
}

/// All blocks of all lines.
pub(super) struct Blocks {
    /// By line.
    list: Vec<Block>,
    /// For each stroke of each line, its block and its place in it.
    places: Vec<Vec<(usize, usize)>>,
}

impl Blocks {
    pub(super) fn new(lines: &[Line], settings: &[PlanSettings]) -> Self {
        let (mut list, mut places) = (Vec::new(), Vec::new());
        for (index, (line, settings)) in lines.iter().zip(settings).enumerate() {
            let mut of_line = vec![(0, 0); line.strokes.len()];
            for joined in joined_strokes(line) {
                joined.strokes().enumerate().for_each(|(here, stroke)| of_line[stroke] = (list.len(), here));
                list.push(Block::new(index, line, joined, settings));
            }
            places.push(of_line);
        }
        Self { list, places }
    }

    /// How many strokes hang together around a stroke.
    pub(super) fn length_around(&self, member: &Member) -> usize {
        self.list[self.places[member.line][member.stroke].0].of.count()
    }

    /// New leanings for all lines.
    pub(super) fn lean(&mut self, leanings: &[Vec<Leaning>]) {
        let mut of_block: Vec<Vec<Leaning>> = self.list.iter().map(|_| Vec::new()).collect();
        for (line, leanings) in leanings.iter().enumerate() {
            for leaning in leanings {
                let (block, stroke) = self.places[line][leaning.stroke];
                of_block[block].push(Leaning { stroke, ..*leaning });
            }
        }
        self.list.par_iter_mut().zip(of_block).for_each(|(block, leanings)| block.once.lean(leanings));
    }

    /// Turns the leanings of strokes to other wishes, where they lean to the opposite under the same term and all lines together
    /// cost less so, repeats played once; whether they do.
    pub(super) fn turn(&mut self, turns: &[StrokeTurn]) -> bool {
        let mut turned: BTreeMap<usize, Vec<Leaning>> = BTreeMap::new();
        for StrokeTurn { member, term, wish } in turns {
            let (block, stroke) = self.places[member.line][member.stroke];
            let leanings =
                turned.entry(block).or_insert_with(|| self.list[block].once.settings().leanings.clone());
            let from = leanings.partition_point(|leaning| leaning.stroke < stroke);
            let here = leanings[from..].iter_mut().take_while(|leaning| leaning.stroke == stroke);
            for leaning in here.filter(|leaning| leaning.term == *term && leaning.wished == wish.other()) {
                leaning.wished = *wish;
            }
        }
        let gain: i64 = turned
            .iter()
            .map(|(block, leanings)| {
                let once = &mut self.list[*block].once;
                once.total() - once.total_leaning(leanings.clone())
            })
            .sum();
        if gain <= 0 {
            return false;
        }
        for (block, leanings) in turned {
            self.list[block].once.lean(leanings);
        }
        true
    }

    /// What all lines cost.
    pub(super) fn total(&mut self, repeats: Repeats) -> i64 {
        self.list.par_iter_mut().map(|block| block.search(repeats).total()).sum()
    }

    /// What every stroke of every line does.
    pub(super) fn bows(&mut self, repeats: Repeats) -> Vec<Vec<BowAndLink>> {
        let nothing = BowAndLink { direction: BowDirection::Down, link: Link::Reset };
        let mut bows: Vec<_> = self.places.iter().map(|strokes| vec![nothing; strokes.len()]).collect();
        let done: Vec<_> = self.list.par_iter_mut().map(|block| block.search(repeats).bows()).collect();
        for (block, done) in self.list.iter().zip(done) {
            block.of.strokes().zip(done).for_each(|(stroke, done)| bows[block.line][stroke] = done);
        }
        bows
    }

    /// The plans of the whole lines, repeats counted.
    pub(super) fn plans(&mut self) -> Vec<Plan> {
        let mut plans = vec![Plan::default(); self.places.len()];
        let planned: Vec<Plan> = self.list.par_iter_mut().map(Block::plan).collect();
        for (plan, places) in plans.iter_mut().zip(&self.places) {
            plan.strokes = places.iter().map(|(block, stroke)| planned[*block].strokes[*stroke]).collect();
        }
        for (block, planned) in self.list.iter().zip(planned) {
            let whole = &mut plans[block.line];
            whole.turns.extend(planned.turns);
            whole.total += planned.total;
        }
        for plan in &mut plans {
            // In the order of the stretches; those of one stay in that of their endings.
            plan.turns.sort_by_key(|turn| turn.stretch);
        }
        plans
    }
}
