//! A score reviewed as the command line does it, and reviewed again with a change in it.

use arcata_bow::together::{agreements, plan_together};
use arcata_bow::{Line, LineOptions, Plan, PlanSettings, Profile, Reading, plan};
use arcata_review::{Beside, Finding, Piece, ReviewSettings, review};
use arcata_score::Score;
use arcata_xml::{Document, Edit, EditList, Limits};

use crate::outcome::Result;
use crate::scores;

/// A score that is read and planned.
pub(crate) struct Desk {
    pub(crate) document: Document,
    pub(crate) score: Score,
    lines: Vec<Line>,
    plans: Vec<Plan>,
    profile: Profile,
    /// Parts in files of their own.
    beside: Vec<Beside>,
}

impl Desk {
    /// Reads MusicXML and plans its bowed parts, those of one rhythm alike.
    pub(crate) fn new(document: Document, profile: &Profile) -> Self {
        let score = arcata_score::read(&document);
        let lines = scores::lines(&score, profile);
        let plans = bowed_alike(&score, &lines, profile);
        Self { document, score, lines, plans, profile: profile.clone(), beside: Vec::new() }
    }

    /// The same with each line planned for itself, which is much quicker.
    pub(crate) fn apart(document: Document, profile: &Profile) -> Self {
        let score = arcata_score::read(&document);
        let lines = scores::lines(&score, profile);
        let plans = lines.iter().map(|line| plan(line, &profile.plan_settings(line.instrument))).collect();
        Self { document, score, lines, plans, profile: profile.clone(), beside: Vec::new() }
    }

    /// The same with edits in it, each line planned for itself; lines that stay as they were are not planned again.
    pub(crate) fn with(&self, edits: &[Edit]) -> Result<Self> {
        let edits = EditList::new(edits.to_vec()).map_err(|problem| problem.to_string())?;
        let bytes = self.document.apply(&edits).map_err(|problem| problem.to_string())?;
        let document = Document::parse(bytes, &Limits::default()).map_err(|problem| problem.to_string())?;
        let score = arcata_score::read(&document);
        let lines = scores::lines(&score, &self.profile);
        let planned = |(at, line): (usize, &Line)| match self.lines.get(at) {
            Some(before) if before == line => self.plans[at].clone(),
            _ => plan(line, &self.profile.plan_settings(line.instrument)),
        };
        let plans = lines.iter().enumerate().map(planned).collect();
        Ok(Self { document, score, lines, plans, profile: self.profile.clone(), beside: self.beside.clone() })
    }

    /// The same with a part in a file of its own beside it.
    pub(crate) fn beside(mut self, part: Score) -> Self {
        self.beside.push(Beside { name: "The part".to_owned(), score: part });
        self
    }

    /// The lines.
    pub(crate) fn lines(&self) -> &[Line] {
        &self.lines
    }

    /// The lines with their plans.
    pub(crate) fn planned(&self) -> impl Iterator<Item = (&Line, &Plan)> {
        self.lines.iter().zip(&self.plans)
    }

    /// What the review finds.
    pub(crate) fn findings(&self, settings: &ReviewSettings) -> Vec<Finding> {
        let options = LineOptions::default();
        let reading = Reading::new(&self.score, &self.profile, &options);
        let piece = Piece {
            document: Some(&self.document),
            score: &self.score,
            lines: &self.lines,
            plans: &self.plans,
            reading: Some(&reading),
            profile: &self.profile,
            beside: &self.beside,
        };
        review(&piece, settings)
    }
}

/// The plans of all lines, those of one rhythm and figures that come back bowed alike.
pub(crate) fn bowed_alike(score: &Score, lines: &[Line], profile: &Profile) -> Vec<Plan> {
    let settings: Vec<PlanSettings> =
        lines.iter().map(|line| profile.plan_settings(line.instrument)).collect();
    let weights = settings.first().map(|settings| settings.weights.clone()).unwrap_or_default();
    plan_together(lines, &settings, &agreements(score, lines, &weights)).plans
}
