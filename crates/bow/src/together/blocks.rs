//! The lines cut at their free joints: what is planned anew when wishes change.

use std::ops::Range;

use super::{Agreement, Member};
use crate::plan::{Anchor, Leaning, Turn, Wished, cut, independent};
use crate::{Line, Plan, PlanSettings, PlannedStroke, Term, plan};

/// How repeated stretches are reckoned.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Repeats {
    /// As if they were played once: quick.
    Once,
    /// As cycles.
    Counted,
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

/// A stretch of a line from a free joint to the next.
struct Block {
    line: usize,
    first: usize,
    /// For each of its repeated stretches, which of the whole line's it is.
    stretches: Vec<usize>,
    strokes: Line,
    /// The same without its repeats, where it has any.
    once: Option<Line>,
    settings: PlanSettings,
    /// The plans under the settings' leanings.
    plans: Plans,
    /// Leanings that were tried before, the last ones last, and their plans: the search comes back to most of them, from other
    /// beginnings or after a turn that was not worth it.
    before: Vec<(Vec<Leaning>, Plans)>,
}

/// So many leanings of a block are remembered with their plans (rule of thumb).
const REMEMBERED: usize = 6;

#[derive(Default)]
struct Plans {
    once: Option<Plan>,
    counted: Option<Plan>,
}

impl Block {
    fn new(line: usize, whole: &Line, range: &Range<usize>, settings: &PlanSettings) -> Self {
        let strokes = cut(whole, range);
        let once = (!strokes.repeats.is_empty()).then(|| Line { repeats: Vec::new(), ..strokes.clone() });
        let anchors = settings.anchors.iter().filter(|anchor| range.contains(&anchor.stroke));
        let anchors =
            anchors.map(|anchor| Anchor { stroke: anchor.stroke - range.start, ..*anchor }).collect();
        let settings = PlanSettings { anchors, leanings: Vec::new(), ..settings.clone() };
        // As `cut` keeps them.
        let kept = whole.repeats.iter().enumerate();
        let kept = kept.filter(|(_, stretch)| range.start <= stretch.first && stretch.end() <= range.end);
        Self {
            line,
            first: range.start,
            stretches: kept.map(|(index, _)| index).collect(),
            strokes,
            once,
            settings,
            plans: Plans::default(),
            before: Vec::new(),
        }
    }

    /// New leanings, counted from the block's first stroke; the last ones are kept at hand.
    fn lean(&mut self, leanings: Vec<Leaning>) {
        if leanings == self.settings.leanings {
            return;
        }
        let known = self.before.iter().position(|(before, _)| *before == leanings);
        let plans = known.map_or_else(Plans::default, |known| self.before.remove(known).1);
        let old = std::mem::replace(&mut self.settings.leanings, leanings);
        if self.before.len() == REMEMBERED {
            self.before.remove(0);
        }
        self.before.push((old, std::mem::replace(&mut self.plans, plans)));
    }

    fn plan(&mut self, repeats: Repeats) -> &Plan {
        match (&self.once, repeats) {
            (Some(once), Repeats::Once) => self.plans.once.get_or_insert_with(|| plan(once, &self.settings)),
            _ => self.plans.counted.get_or_insert_with(|| plan(&self.strokes, &self.settings)),
        }
    }
}

/// All blocks of all lines.
pub(super) struct Blocks {
    /// By line, then by first stroke.
    list: Vec<Block>,
    /// For each line, where its blocks begin in the list.
    of_line: Vec<usize>,
}

impl Blocks {
    pub(super) fn new(lines: &[Line], settings: &[PlanSettings]) -> Self {
        let mut list = Vec::new();
        let mut of_line = Vec::new();
        for (index, (line, settings)) in lines.iter().zip(settings).enumerate() {
            of_line.push(list.len());
            let mut first = 0;
            while first < line.strokes.len() {
                let range = independent(line, &(first..first + 1));
                list.push(Block::new(index, line, &range, settings));
                first = range.end.max(first + 1);
            }
        }
        of_line.push(list.len());
        Self { list, of_line }
    }

    fn at(&self, line: usize, stroke: usize) -> usize {
        let (from, to) = (self.of_line[line], self.of_line[line + 1]);
        from + self.list[from..to].partition_point(|block| block.first <= stroke) - 1
    }

    /// How many strokes hang together around a stroke.
    pub(super) fn length_around(&self, member: &Member) -> usize {
        self.list[self.at(member.line, member.stroke)].strokes.strokes.len()
    }

    /// New leanings for all lines.
    pub(super) fn lean(&mut self, leanings: &[Vec<Leaning>]) {
        for block in &mut self.list {
            let all = &leanings[block.line];
            let from = all.partition_point(|leaning| leaning.stroke < block.first);
            let end = block.first + block.strokes.strokes.len();
            let to = all.partition_point(|leaning| leaning.stroke < end);
            let local = all[from..to].iter();
            block.lean(
                local.map(|leaning| Leaning { stroke: leaning.stroke - block.first, ..*leaning }).collect(),
            );
        }
    }

    /// Turns the leaning of one stroke to a wish, where it leans to the opposite under this term.
    pub(super) fn turn(&mut self, member: &Member, term: Term, wish: Wished) {
        let at = self.at(member.line, member.stroke);
        let block = &mut self.list[at];
        let stroke = member.stroke - block.first;
        let mut leanings = block.settings.leanings.clone();
        let opposite = |leaning: &&mut Leaning| {
            leaning.stroke == stroke && leaning.term == term && leaning.wished == wish.other()
        };
        for leaning in leanings.iter_mut().filter(opposite) {
            leaning.wished = wish;
        }
        block.lean(leanings);
    }

    /// What all lines cost.
    pub(super) fn total(&mut self, repeats: Repeats) -> i64 {
        self.list.iter_mut().map(|block| block.plan(repeats).total.total()).sum()
    }

    /// What every stroke of every line does.
    pub(super) fn strokes(&mut self, repeats: Repeats) -> Vec<Vec<PlannedStroke>> {
        let mut strokes = vec![Vec::new(); self.of_line.len() - 1];
        for block in &mut self.list {
            let line = block.line;
            strokes[line].extend_from_slice(&block.plan(repeats).strokes);
        }
        strokes
    }

    /// The plans of the whole lines.
    pub(super) fn plans(&mut self, repeats: Repeats) -> Vec<Plan> {
        let mut plans = vec![Plan::default(); self.of_line.len() - 1];
        for block in &mut self.list {
            let (line, first) = (block.line, block.first);
            let stretches = block.stretches.clone();
            let planned = block.plan(repeats);
            let whole: &mut Plan = &mut plans[line];
            whole.strokes.extend_from_slice(&planned.strokes);
            whole.turns.extend(planned.turns.iter().map(|turn| Turn {
                stretch: stretches.get(turn.stretch).copied().unwrap_or(turn.stretch),
                from: turn.from + first,
                to: turn.to + first,
                ..*turn
            }));
            whole.total += planned.total;
        }
        plans
    }
}
