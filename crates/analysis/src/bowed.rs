//! The lines of a score, and how they are bowed where nothing is asked for.

use std::sync::Arc;

use arcata_bow::together::{Agreement, PlannedBefore, Together, agreements, plan_together_after};
use arcata_bow::{Line, Plan, PlanSettings, Reading, plan};
use arcata_languages::Saying;
use arcata_score::Score;
use rayon::prelude::*;

use crate::assumed::assumptions;
use crate::config::{Config, Planning};

/// The lines of a score with their plans.
#[derive(Clone, Debug, Default)]
pub struct Bowed {
    /// The lines of all bowed parts, in the order of the score.
    pub lines: Vec<Line>,
    /// What each line was planned with; leanings towards the other lines are in it.
    pub settings: Vec<PlanSettings>,
    /// A plan for each line.
    pub plans: Vec<Arc<Plan>>,
    /// How the lines were planned together; none where each was planned for itself.
    pub agreed: Option<Agreed>,
    /// What is taken for given that is not in the score, in words.
    pub assumptions: Vec<Saying>,
}

/// What had better go the same way, and what came of it. Plans and settings stand in [`Bowed`] and not in here.
#[derive(Clone, Debug)]
pub struct Agreed {
    /// Strokes that had better do the same.
    pub agreements: Vec<Agreement>,
    /// What most of each agreement does, and what all costs.
    pub outcome: Together,
}

/// The lines of all bowed parts, in the order of the score, without plans.
#[must_use]
pub fn lines(score: &Score, config: &Config) -> Vec<Line> {
    let options = config.line_options();
    lines_in(&Reading::new(score, &config.player.profile, &options), score)
}

fn lines_in(reading: &Reading<'_>, score: &Score) -> Vec<Line> {
    let bowed = |part: &usize| score.parts[*part].instrument.is_bowed();
    let bowed: Vec<usize> = (0..score.parts.len()).filter(bowed).collect();
    bowed.par_iter().flat_map(|part| reading.lines(*part)).collect()
}

impl Bowed {
    /// Finds the lines of a score and bows them.
    ///
    /// ```
    /// use arcata_analysis::{Bowed, Config};
    ///
    /// let music = arcata_testkit::musicxml("violin: 1/4 C5 D5 E5 F5\nviola: 1/4 C4 D4 E4 F4");
    /// let document = arcata_xml::Document::parse(music.into_bytes(), &Default::default())?;
    /// let bowed = Bowed::new(&arcata_score::read(&document), &Config::default());
    /// assert_eq!((bowed.lines.len(), bowed.plans[1].strokes.len()), (2, 4));
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub fn new(score: &Score, config: &Config) -> Self {
        Self::after(score, config, None)
    }

    /// The same after something was changed in the score: movements in which nothing that the bow depends on is otherwise keep
    /// their plans, the very same ones.
    #[must_use]
    pub fn after(score: &Score, config: &Config, before: Option<&Self>) -> Self {
        let options = config.line_options();
        let reading = Reading::new(score, &config.player.profile, &options);
        let lines = lines_in(&reading, score);
        let told = config.player.told.iter().cloned();
        let assumptions = told.chain(assumptions(&lines, &options, reading.tempo.assumed())).collect();
        let settings = |line: &Line| PlanSettings {
            marks: config.marks,
            ..config.player.profile.plan_settings(line.instrument)
        };
        let settings: Vec<PlanSettings> = lines.iter().map(settings).collect();
        match config.planning {
            Planning::Together => Self::together(score, lines, (&settings, before), assumptions),
            Planning::Apart => {
                let plans = lines.par_iter().zip(&settings);
                let plans = plans.map(|(line, settings)| Arc::new(plan(line, settings))).collect();
                Self { lines, settings, plans, agreed: None, assumptions }
            }
        }
    }

    /// How the lines go together, with what belongs together; none where each was planned for itself.
    #[must_use]
    pub fn planned_together(&self) -> Option<(Together, &[Agreement])> {
        let Agreed { agreements, outcome } = self.agreed.as_ref()?;
        let (plans, settings) = (self.plans.clone(), self.settings.clone());
        Some((Together { plans, settings, ..outcome.clone() }, agreements))
    }

    fn together(
        score: &Score,
        lines: Vec<Line>,
        (settings, before): (&[PlanSettings], Option<&Self>),
        assumptions: Vec<Saying>,
    ) -> Self {
        let weights = settings.first().map(|settings| settings.weights.clone()).unwrap_or_default();
        let agreements = agreements(score, &lines, &weights);
        let were = before.and_then(|before| Some((&before.lines, before.planned_together()?)));
        let were = were.as_ref().map(|(lines, (together, agreements))| PlannedBefore {
            lines,
            agreements,
            together,
        });
        let mut outcome = plan_together_after(&lines, settings, &agreements, were);
        let plans = std::mem::take(&mut outcome.plans);
        let settings = std::mem::take(&mut outcome.settings);
        Self { lines, settings, plans, agreed: Some(Agreed { agreements, outcome }), assumptions }
    }
}
