//! A line that is planned again and again with other leanings.
//!
//! What the planner works out of the strokes themselves stays. Of the rows, those before the first stroke whose leaning is
//! another stay too, and those from where the rows come out as they were; of what is read back, what hangs on those. Of a
//! line with repeats, the rounds of those stretches stay in which nothing leans otherwise. Everything comes out as
//! [`plan`](super::plan) has it: a property test holds the two together.

use super::costs::Costs;
use super::route::RoundMemory;
use super::search::{Choice, KeptTables, LineSearch, SettledRow, cheapest};
use super::{Allowed, BowAndLink, Grid, Leaning, Link, Plan, PlanSettings, anchors, evaluate, route};
use crate::Line;

/// See the head of this file.
pub(crate) struct LeaningSearch {
    asked: LineToPlan,
    kept: Box<dyn KeptSearch + Send>,
}

/// What is planned.
struct LineToPlan {
    line: Line,
    settings: PlanSettings,
    allowed: Vec<Allowed>,
}

impl LeaningSearch {
    /// A line with settings, whose leanings are left out.
    pub(crate) fn new(line: Line, settings: &PlanSettings) -> Self {
        let settings = settings.alone();
        let allowed = anchors::allowed(&line, &settings);
        let kept = match settings.grid {
            Grid::Coarse => keeping::<24>(&line),
            Grid::Fine => keeping::<48>(&line),
            Grid::Finer => keeping::<96>(&line),
            Grid::Finest => keeping::<192>(&line),
        };
        Self { asked: LineToPlan { line, settings, allowed }, kept }
    }

    /// What it is planned with, the leanings in it.
    pub(crate) fn settings(&self) -> &PlanSettings {
        &self.asked.settings
    }

    /// New leanings, in the order of their strokes.
    pub(crate) fn lean(&mut self, leanings: Vec<Leaning>) {
        if leanings != self.asked.settings.leanings {
            self.kept.lean(&mut self.asked, leanings);
        }
    }

    /// What the best plan costs, thousandths of a point.
    pub(crate) fn total(&mut self) -> i64 {
        self.kept.total(&self.asked)
    }

    /// What it would cost with other leanings; it is not planned with them.
    pub(crate) fn total_leaning(&mut self, leanings: Vec<Leaning>) -> i64 {
        self.kept.total_leaning(&mut self.asked, leanings)
    }

    /// What each stroke does in the best plan.
    pub(crate) fn bows(&mut self) -> Vec<BowAndLink> {
        self.kept.bows(&self.asked)
    }

    /// The best plan.
    pub(crate) fn plan(&mut self) -> Plan {
        self.kept.plan(&self.asked)
    }
}

fn keeping<const CELLS: usize>(line: &Line) -> Box<dyn KeptSearch + Send> {
    if line.repeats.is_empty() {
        Box::new(KeptRows::<CELLS>::default())
    } else {
        Box::new(KeptRounds::<CELLS>::default())
    }
}

/// What is kept on one grid.
trait KeptSearch {
    fn lean(&mut self, asked: &mut LineToPlan, leanings: Vec<Leaning>);
    fn total(&mut self, asked: &LineToPlan) -> i64;
    fn total_leaning(&mut self, asked: &mut LineToPlan, leanings: Vec<Leaning>) -> i64;
    fn bows(&mut self, asked: &LineToPlan) -> Vec<BowAndLink>;
    fn plan(&mut self, asked: &LineToPlan) -> Plan;
}

/// What is kept of a line without repeats.
#[derive(Default)]
struct KeptRows<const CELLS: usize> {
    tables: Option<KeptTables<CELLS>>,
    /// Behind each stroke, as far as it was reckoned.
    rows: Vec<SettledRow<CELLS>>,
    /// The sum of what was taken off the rows.
    total: i64,
    /// What was read back of the rows.
    choices: Vec<Choice>,
    /// Strokes whose rows are not those of the leanings; behind the last of them rows are right if the row before them is.
    stale: StrokeRange,
    /// Strokes whose rows were reckoned anew and not read back.
    unread: StrokeRange,
}

/// Strokes from one to before another; none where the first does not lie before the second.
#[derive(Clone, Copy)]
struct StrokeRange {
    from: usize,
    to: usize,
}

impl Default for StrokeRange {
    fn default() -> Self {
        Self { from: usize::MAX, to: 0 }
    }
}

impl StrokeRange {
    const fn is_empty(self) -> bool {
        self.from >= self.to
    }

    /// The least stretch that holds both.
    fn with(self, other: Self) -> Self {
        Self { from: self.from.min(other.from), to: self.to.max(other.to) }
    }

    fn of(strokes: &[usize]) -> Self {
        match strokes {
            [] => Self::default(),
            [first, ..] => Self { from: *first, to: strokes[strokes.len() - 1] + 1 },
        }
    }
}

/// The strokes whose leanings are not the same, in order.
fn otherwise(one: &[Leaning], other: &[Leaning]) -> Vec<usize> {
    let (mut one, mut other, mut found) = (one, other, Vec::new());
    while let Some(stroke) = one.iter().chain(other).map(|leaning| leaning.stroke).min() {
        let of_stroke = |leanings: &[Leaning]| leanings.partition_point(|leaning| leaning.stroke <= stroke);
        let ((here, rest), (there, others)) =
            (one.split_at(of_stroke(one)), other.split_at(of_stroke(other)));
        if here != there {
            found.push(stroke);
        }
        (one, other) = (rest, others);
    }
    found
}

impl<const CELLS: usize> KeptRows<CELLS> {
    /// Does something with the search over what is asked, and keeps its tables.
    fn with<'a, T>(
        &mut self,
        asked: &'a LineToPlan,
        act: impl FnOnce(&mut Self, &mut LineSearch<'a, CELLS>) -> T,
    ) -> T {
        let LineToPlan { line, settings, allowed } = asked;
        let mut search = match self.tables.take() {
            Some(tables) => LineSearch::again(line, settings, allowed, tables),
            None => LineSearch::new(Costs::new(line, settings, CELLS), allowed),
        };
        let done = act(self, &mut search);
        self.tables = Some(search.into_kept());
        done
    }

    fn row(&self, before: usize) -> Option<&SettledRow<CELLS>> {
        before.checked_sub(1).map(|before| &self.rows[before])
    }

    /// Reckons what is stale.
    fn refresh(&mut self, asked: &LineToPlan) {
        let count = asked.line.strokes.len();
        let stale = if self.rows.len() < count { StrokeRange { from: 0, to: count } } else { self.stale };
        if stale.is_empty() {
            return;
        }
        let reckoned = self.with(asked, |kept, search| {
            let mut at = stale.from;
            while at < count {
                let settled = search.forward(at, kept.row(at).map(|before| &before.row));
                kept.total += settled.base;
                at += 1;
                if at > kept.rows.len() {
                    kept.rows.push(settled);
                    continue;
                }
                let old = std::mem::replace(&mut kept.rows[at - 1], settled);
                kept.total -= old.base;
                if at >= stale.to && old.row == kept.rows[at - 1].row {
                    break;
                }
            }
            at
        });
        self.unread = self.unread.with(StrokeRange { from: stale.from, to: reckoned });
        self.stale = StrokeRange::default();
    }

    /// Reads back what was reckoned anew.
    fn read(&mut self, asked: &LineToPlan) {
        self.refresh(asked);
        if self.unread.is_empty() {
            return;
        }
        let unread = std::mem::take(&mut self.unread);
        self.with(asked, |kept, search| {
            let last = kept.rows.len() - 1;
            let (mut at, mut stand) = match kept.choices.get(unread.to) {
                Some(choice) => (unread.to, choice.ended()),
                None => (last, cheapest(&kept.rows[last].row)),
            };
            let nothing = Choice { direction: stand.direction, link: Link::Reset, start: 0, end: 0 };
            kept.choices.resize(last + 1, nothing);
            // Before what was reckoned anew, what is reached as before is done as before.
            while at >= unread.from || kept.choices[at].ended() != stand {
                let before = kept.row(at).map(|before| &before.row);
                let choice = search.choose(at, None, before, stand);
                let stood = before.map(|before| search.stood(at, None, before, choice));
                kept.choices[at] = choice;
                let Some(stood) = stood else { break };
                stand = stood;
                at -= 1;
            }
        });
    }
}

impl<const CELLS: usize> KeptSearch for KeptRows<CELLS> {
    fn lean(&mut self, asked: &mut LineToPlan, leanings: Vec<Leaning>) {
        let changed = otherwise(&asked.settings.leanings, &leanings);
        asked.settings.leanings = leanings;
        if self.tables.is_some() {
            self.with(asked, |_, search| {
                for stroke in &changed {
                    search.lean_anew(*stroke);
                }
            });
        }
        self.stale = self.stale.with(StrokeRange::of(&changed));
    }

    fn total(&mut self, asked: &LineToPlan) -> i64 {
        self.refresh(asked);
        self.total
    }

    fn total_leaning(&mut self, asked: &mut LineToPlan, leanings: Vec<Leaning>) -> i64 {
        self.refresh(asked);
        let changed = otherwise(&asked.settings.leanings, &leanings);
        let stretch = StrokeRange::of(&changed);
        let before = std::mem::replace(&mut asked.settings.leanings, leanings);
        let total = self.with(asked, |kept, search| {
            let prices: Vec<_> = changed.iter().map(|stroke| search.lean_anew(*stroke)).collect();
            let mut total = kept.total;
            let mut row = None;
            for (at, old) in kept.rows.iter().enumerate().skip(stretch.from) {
                let settled = search.forward(at, row.as_ref().or(kept.row(at).map(|before| &before.row)));
                total += settled.base - old.base;
                if at + 1 >= stretch.to && settled.row == old.row {
                    break;
                }
                row = Some(settled.row);
            }
            for (stroke, prices) in changed.iter().zip(prices) {
                search.put_back(*stroke, prices);
            }
            total
        });
        asked.settings.leanings = before;
        total
    }

    fn bows(&mut self, asked: &LineToPlan) -> Vec<BowAndLink> {
        self.read(asked);
        let bow = |choice: &Choice| BowAndLink { direction: choice.direction, link: choice.link };
        self.choices.iter().map(bow).collect()
    }

    fn plan(&mut self, asked: &LineToPlan) -> Plan {
        self.read(asked);
        self.with(asked, |kept, search| evaluate::evaluate(&search.costs, &kept.choices))
    }
}

/// What is kept of a line with repeats.
#[derive(Default)]
struct KeptRounds<const CELLS: usize> {
    tables: Option<KeptTables<CELLS>>,
    rounds: RoundMemory<CELLS>,
    /// Leanings that were planned with, the last ones last.
    tried: Vec<(Vec<Leaning>, Plan)>,
}

/// So many leanings of a line with repeats are remembered with their plans: a search for agreement comes back to most of them
/// (rule of thumb).
const REMEMBERED: usize = 6;

impl<const CELLS: usize> KeptRounds<CELLS> {
    fn planned(&mut self, asked: &LineToPlan) -> &Plan {
        let known = self.tried.iter().position(|(leanings, _)| *leanings == asked.settings.leanings);
        let planned = match known {
            Some(known) => self.tried.remove(known),
            None => (asked.settings.leanings.clone(), self.planned_anew(asked)),
        };
        if self.tried.len() == REMEMBERED {
            self.tried.remove(0);
        }
        self.tried.push(planned);
        &self.tried[self.tried.len() - 1].1
    }

    fn planned_anew(&mut self, asked: &LineToPlan) -> Plan {
        let LineToPlan { line, settings, allowed } = asked;
        let mut search = match self.tables.take() {
            Some(tables) => LineSearch::again(line, settings, allowed, tables),
            None => LineSearch::new(Costs::new(line, settings, CELLS), allowed),
        };
        search.rounds = Some(&self.rounds);
        // As `plan` has it: there is a way through.
        let choices = route::best(&search);
        let planned = choices.map(|choices| evaluate::evaluate(&search.costs, &choices));
        self.tables = Some(search.into_kept());
        planned.unwrap_or_default()
    }
}

impl<const CELLS: usize> KeptSearch for KeptRounds<CELLS> {
    fn lean(&mut self, asked: &mut LineToPlan, leanings: Vec<Leaning>) {
        let changed = otherwise(&asked.settings.leanings, &leanings);
        asked.settings.leanings = leanings;
        if let Some(tables) = self.tables.take() {
            let mut search = LineSearch::again(&asked.line, &asked.settings, &asked.allowed, tables);
            changed.into_iter().for_each(|stroke| {
                search.lean_anew(stroke);
            });
            self.tables = Some(search.into_kept());
        }
    }

    fn total(&mut self, asked: &LineToPlan) -> i64 {
        self.planned(asked).total.total()
    }

    fn total_leaning(&mut self, asked: &mut LineToPlan, leanings: Vec<Leaning>) -> i64 {
        let before = asked.settings.leanings.clone();
        self.lean(asked, leanings);
        let total = self.total(asked);
        self.lean(asked, before);
        total
    }

    fn bows(&mut self, asked: &LineToPlan) -> Vec<BowAndLink> {
        self.planned(asked).strokes.iter().map(BowAndLink::from).collect()
    }

    fn plan(&mut self, asked: &LineToPlan) -> Plan {
        self.planned(asked).clone()
    }
}

#[cfg(test)]
mod tests {
    use arcata_score::BowDirection;
    use proptest::prelude::*;

    use super::*;
    use crate::Term;
    use crate::plan::tests::any_line;
    use crate::plan::tests::repeats::{any_repeated_line, nested_line};
    use crate::plan::{Wished, plan};

    prop_compose! {
        fn any_leaning()(
            stroke in any::<prop::sample::Index>(),
            wished in prop::sample::select(vec![
                Wished::Goes(BowDirection::Down),
                Wished::Goes(BowDirection::Up),
                Wished::Changes(true),
                Wished::Changes(false),
            ]),
            thousandths in prop::sample::select(vec![60i64, 700, 3_000, 1_000_000]),
            term in prop::sample::select(vec![Term::Unity, Term::Likeness]),
        ) -> (prop::sample::Index, Leaning) {
            (stroke, Leaning { stroke: 0, wished, thousandths, term })
        }
    }

    proptest! {
        /// Many leanings one after the other, some only tried, some asked for what they cost, some for the whole plan: each comes
        /// out as the planner has it that knows nothing of the others.
        #[test]
        fn what_is_kept_is_as_planned_anew(
            line in prop_oneof![any_line(24), any_repeated_line(12, 3), nested_line(12).prop_map(|(line, _)| line)],
            turns in prop::collection::vec((prop::collection::vec(any_leaning(), 0..6), 0u8..4), 1..8),
        ) {
            let count = line.strokes.len();
            let mut kept = LeaningSearch::new(line.clone(), &PlanSettings { grid: Grid::Coarse, ..PlanSettings::default() });
            for (drawn, asked_for) in turns {
                let mut leanings: Vec<Leaning> = drawn
                    .into_iter()
                    .map(|(stroke, leaning)| Leaning { stroke: stroke.index(count), ..leaning })
                    .collect();
                leanings.sort_by_key(|leaning| (leaning.stroke, leaning.term));
                let settings = PlanSettings { leanings: leanings.clone(), ..kept.settings().clone() };
                let anew = plan(&line, &settings);
                let total = anew.total.total();
                if asked_for == 0 {
                    prop_assert_eq!(kept.total_leaning(leanings), total);
                    continue;
                }
                kept.lean(leanings);
                match asked_for {
                    1 => {}
                    2 => prop_assert_eq!(kept.total(), total),
                    _ => {
                        let bows: Vec<BowAndLink> = kept.bows();
                        prop_assert_eq!(bows, anew.strokes.iter().map(BowAndLink::from).collect::<Vec<_>>());
                        let plan = kept.plan();
                        prop_assert_eq!(plan, anew);
                    }
                }
            }
        }
    }
}
