//! Movements one by one, all at a time: no agreement leads from one into the next.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use rayon::prelude::*;

use super::solve::{MovementPlanned, plan_movement};
use super::{Agreement, Together};
use crate::plan::Wished;
use crate::{Cost, Line, Plan, PlanSettings};

/// Lines that were planned together before something in their score was changed.
#[derive(Clone, Copy, Debug)]
pub struct PlannedBefore<'a> {
    /// The lines as they were.
    pub lines: &'a [Line],
    /// What they agreed on.
    pub agreements: &'a [Agreement],
    /// What came of it.
    pub together: &'a Together,
}

/// Plans lines together. `settings` are one for each line, without leanings.
///
/// Deterministic; where several beginnings end equally dear, the first is kept (each line for itself,
/// then the lines as leaders in their order).
///
/// # Examples
///
/// ```
/// use arcata_bow::{LineOptions, Profile, all_lines, together};
///
/// let xml = arcata_testkit::musicxml("violin: 1/4 C5 D5 E5 F5\nviola: 1/4 C4 D4 E4 F4");
/// let document = arcata_xml::Document::parse(xml.into_bytes(), &arcata_xml::Limits::default()).unwrap();
/// let score = arcata_score::read(&document);
/// let profile = Profile::default();
/// let lines = all_lines(&score, &profile, &LineOptions::default());
/// let settings: Vec<_> = lines.iter().map(|line| profile.plan_settings(line.instrument)).collect();
/// let agreements = together::agreements(&score, &lines, &settings[0].weights);
/// let planned = together::plan_together(&lines, &settings, &agreements);
/// let directions = |line: usize| planned.plans[line].strokes.iter().map(|stroke| stroke.direction);
/// assert!(directions(0).eq(directions(1)));
/// ```
#[must_use]
pub fn plan_together(lines: &[Line], settings: &[PlanSettings], agreements: &[Agreement]) -> Together {
    plan_together_after(lines, settings, agreements, None)
}

/// The same after something was changed in the score: a movement whose lines, settings and agreements are as they were keeps
/// its plans, the very same ones.
#[must_use]
pub fn plan_together_after(
    lines: &[Line],
    settings: &[PlanSettings],
    agreements: &[Agreement],
    before: Option<PlannedBefore<'_>>,
) -> Together {
    let movements: BTreeSet<usize> = lines.iter().map(|line| line.movement).collect();
    let planned: Vec<(MovementProblem, MovementPlanned)> = movements
        .into_par_iter()
        .map(|movement| {
            let problem = MovementProblem::new(movement, lines, settings, agreements);
            let planned = before.and_then(|before| problem.as_before(&before));
            let planned = planned
                .unwrap_or_else(|| plan_movement(&problem.lines, &problem.settings, &problem.agreements));
            (problem, planned)
        })
        .collect();
    let nothing = Arc::new(Plan::default());
    let mut whole = Together {
        plans: vec![nothing; lines.len()],
        wishes: agreements.iter().map(|agreement| agreement.about.plain()).collect(),
        settings: settings.to_vec(),
        total: Cost::default(),
        apart: BTreeMap::new(),
    };
    for (problem, planned) in planned {
        let found = planned.plans.into_iter().zip(planned.settings);
        for (line, (plan, settings)) in problem.of_lines.into_iter().zip(found) {
            whole.total += plan.total;
            (whole.plans[line], whole.settings[line]) = (plan, settings);
        }
        for (index, wish) in problem.of_agreements.into_iter().zip(planned.wishes) {
            whole.wishes[index] = wish;
        }
        whole.apart.insert(problem.movement, planned.apart);
    }
    whole
}

/// The lines of a movement with what they agree on, counted among themselves.
struct MovementProblem {
    movement: usize,
    /// Which lines of the whole they are.
    of_lines: Vec<usize>,
    /// Which agreements of the whole theirs are.
    of_agreements: Vec<usize>,
    lines: Vec<Line>,
    settings: Vec<PlanSettings>,
    agreements: Vec<Agreement>,
}

impl MovementProblem {
    fn new(movement: usize, lines: &[Line], settings: &[PlanSettings], agreements: &[Agreement]) -> Self {
        let of_lines: Vec<usize> =
            (0..lines.len()).filter(|line| lines[*line].movement == movement).collect();
        let is_own = |index: &usize| lines[agreements[*index].members[0].line].movement == movement;
        let of_agreements: Vec<usize> = (0..agreements.len()).filter(is_own).collect();
        Self {
            movement,
            lines: of_lines.iter().map(|line| lines[*line].clone()).collect(),
            settings: of_lines.iter().map(|line| settings[*line].clone()).collect(),
            agreements: of_agreements.iter().map(|index| counted(&agreements[*index], &of_lines)).collect(),
            of_lines,
            of_agreements,
        }
    }

    /// What came of it before, where nothing of it has changed.
    fn as_before(&self, before: &PlannedBefore<'_>) -> Option<MovementPlanned> {
        let PlannedBefore { lines, agreements, together } = before;
        let was = Self::new(self.movement, lines, &together.settings, agreements);
        let alike = |(one, other): (&PlanSettings, &PlanSettings)| {
            // The settings that were kept have the leanings that came of it.
            *one == PlanSettings { leanings: one.leanings.clone(), ..other.clone() }
        };
        let same = self.lines == was.lines
            && self.agreements == was.agreements
            && self.settings.len() == was.settings.len()
            && self.settings.iter().zip(&was.settings).all(alike);
        let apart = *together.apart.get(&self.movement)?;
        same.then(|| MovementPlanned {
            plans: was.of_lines.iter().map(|line| together.plans[*line].clone()).collect(),
            wishes: was.of_agreements.iter().map(|index| together.wishes[*index]).collect::<Vec<Wished>>(),
            settings: was.settings,
            apart,
        })
    }
}

/// An agreement whose lines are counted among some lines only.
fn counted(agreement: &Agreement, lines: &[usize]) -> Agreement {
    let mut counted = agreement.clone();
    for member in &mut counted.members {
        member.line = lines.partition_point(|line| *line < member.line);
    }
    counted
}
