//! A score as it is bowed at one moment.

use std::sync::{Arc, OnceLock};

use arcata_bow::plan::{Anchor, Settled, Sureness, settled, sureness};
use arcata_bow::together::{Agreement, Together};
use arcata_bow::{Line, Plan, PlanSettings};
use arcata_layer::{Layer, ToldBows};
use arcata_review::{Beside, Piece, ReviewSettings, Reviewed, reviewed};
use arcata_score::Score;
use rayon::prelude::*;

use crate::asked::{BowedLine, told};
use crate::ground::Ground;

/// A score as it is bowed at one moment: the ground, what is asked of its strokes, and the plans. Cheap to copy.
#[derive(Clone, Debug)]
pub struct Snapshot {
    ground: Arc<Ground>,
    lines: Vec<Arc<AskedLine>>,
    plans: Vec<Arc<Plan>>,
}

/// A line with what is asked of it.
#[derive(Debug, Default)]
struct AskedLine {
    anchors: Vec<Anchor>,
    /// None where nothing is asked: the ground has them.
    settings: Option<PlanSettings>,
    /// Strokes whose wish to go on as the stroke before contradicts another one.
    contradicted: Vec<usize>,
    /// How sure the plan is of each stroke, once somebody has asked.
    sure: OnceLock<Vec<Option<Sureness>>>,
}

impl Snapshot {
    /// A score of which nothing is asked.
    #[must_use]
    pub fn new(ground: Arc<Ground>) -> Self {
        let lines = ground.bowed.lines.iter().map(|_| Arc::default()).collect();
        Self { lines, plans: ground.bowed.plans.clone(), ground }
    }

    /// The same score with other bows asked for, line by line. A line of which the same is asked as before keeps its plan.
    ///
    /// ```
    /// use std::sync::Arc;
    ///
    /// use arcata_analysis::{Config, Ground, Snapshot, Source};
    /// use arcata_bow::plan::Anchor;
    /// use arcata_score::BowDirection::Up;
    ///
    /// let music = arcata_testkit::musicxml("violin: 1/4 C5 D5 E5 F5");
    /// let free = Snapshot::new(Arc::new(Ground::new(Source::open(music.into_bytes())?, Config::default())));
    /// let up = Anchor { stroke: 0, direction: Some(Up), link: None };
    /// let asked = free.asking(vec![vec![up]]);
    /// assert_eq!(asked.plan(0).strokes[0].direction, Up);
    /// assert!(Arc::ptr_eq(free.plan(0), asked.asking(vec![vec![]]).plan(0)), "back is back");
    /// # Ok::<(), String>(())
    /// ```
    #[must_use]
    pub fn asking(&self, asked: Vec<Vec<Anchor>>) -> Self {
        self.asking_of(self.ground.clone(), asked)
    }

    /// The score after a change, with bows asked for. A line whose ground is as before, and of which the same is asked, keeps
    /// its plan.
    #[must_use]
    pub fn asking_of(&self, ground: Arc<Ground>, asked: Vec<Vec<Anchor>>) -> Self {
        let mut next = Self::new(ground);
        let found: Vec<(Arc<AskedLine>, Arc<Plan>)> = asked
            .into_par_iter()
            .enumerate()
            .take(next.lines.len())
            .map(|(line, anchors)| {
                // A free plan is the same one only where line and settings are the same.
                let free = &next.ground.bowed.plans[line];
                let was = self.ground.bowed.plans.iter().position(|plan| Arc::ptr_eq(plan, free));
                if let Some(was) = was.filter(|was| self.lines[*was].anchors == anchors) {
                    return (self.lines[was].clone(), self.plans[was].clone());
                }
                if anchors.is_empty() {
                    return (Arc::default(), free.clone());
                }
                let settings = next.ground.settings(line, &anchors);
                let Settled { plan, contradicted, .. } = settled(&next.ground.bowed.lines[line], &settings);
                let asked =
                    AskedLine { anchors, settings: Some(settings), contradicted, sure: OnceLock::new() };
                (Arc::new(asked), Arc::new(plan))
            })
            .collect();
        for (line, (asked, plan)) in found.into_iter().enumerate() {
            (next.lines[line], next.plans[line]) = (asked, plan);
        }
        next
    }

    /// What is below.
    #[must_use]
    pub const fn ground(&self) -> &Arc<Ground> {
        &self.ground
    }

    /// The music.
    #[must_use]
    pub fn score(&self) -> &Score {
        &self.ground.source.score
    }

    /// The lines of all bowed parts.
    #[must_use]
    pub fn lines(&self) -> &[Line] {
        &self.ground.bowed.lines
    }

    /// A plan for each line.
    #[must_use]
    pub fn plans(&self) -> &[Arc<Plan>] {
        &self.plans
    }

    /// The plan of a line.
    ///
    /// # Panics
    /// Where there is no such line.
    #[must_use]
    pub fn plan(&self, line: usize) -> &Arc<Plan> {
        &self.plans[line]
    }

    /// What is asked of a line.
    ///
    /// # Panics
    /// Where there is no such line.
    #[must_use]
    pub fn anchors(&self, line: usize) -> &[Anchor] {
        &self.lines[line].anchors
    }

    /// What a line was planned with, anchors and leanings in it.
    ///
    /// # Panics
    /// Where there is no such line.
    #[must_use]
    pub fn settings(&self, line: usize) -> &PlanSettings {
        self.lines[line].settings.as_ref().unwrap_or(&self.ground.bowed.settings[line])
    }

    /// How sure the plan of a line is of each of its strokes; reckoned once.
    ///
    /// # Panics
    /// Where there is no such line.
    #[must_use]
    pub fn sureness(&self, line: usize) -> &[Option<Sureness>] {
        let reckoned = || sureness(&self.lines()[line], self.settings(line), &self.plans[line]);
        self.lines[line].sure.get_or_init(reckoned)
    }

    /// How the lines go together, with what belongs together; none where each was planned for itself.
    #[must_use]
    pub fn together(&self) -> Option<(Together, &[Agreement])> {
        let (together, agreements) = self.ground.bowed.planned_together()?;
        let settings = (0..self.lines.len()).map(|line| self.settings(line).clone()).collect();
        Some((Together { plans: self.plans.clone(), settings, ..together }, agreements))
    }

    /// What the hooks and retakes of a layer come to whose bows are the ones asked for.
    #[must_use]
    pub fn told(&self, layer: &Layer) -> ToldBows {
        told((self.score(), self.lines()), layer, |line| BowedLine {
            plan: &self.plans[line],
            contradicted: &self.lines[line].contradicted,
            reach: self.ground.reach(line),
        })
    }

    /// Lets a question be put to everything that the review looks at; parts in files of their own are beside it.
    pub fn with_piece<T>(&self, beside: &[Beside], question: impl FnOnce(&Piece<'_>) -> T) -> T {
        let reading = self.ground.reading();
        question(&Piece {
            document: Some(self.ground.source.document()),
            score: self.score(),
            lines: self.lines(),
            plans: &self.plans,
            reading: Some(&reading),
            profile: &self.ground.config.player.profile,
            beside,
        })
    }

    /// The review of the score as it is bowed now.
    #[must_use]
    pub fn review(&self, beside: &[Beside], settings: &ReviewSettings) -> Reviewed {
        self.with_piece(beside, |piece| reviewed(piece, settings))
    }
}
