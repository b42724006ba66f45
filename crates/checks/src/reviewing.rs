//! A score reviewed as the command line does it, and reviewed again with a change in it.

use std::sync::Arc;

use arcata_analysis::{Bowed, Config, Ground, Planning, Snapshot, Source};
use arcata_bow::{Line, Plan, PlanSettings, Profile, plan};
use arcata_review::{Beside, Finding, ReviewSettings};
use arcata_score::Score;
use arcata_xml::{Document, Edit, EditList, Limits};

use crate::outcome::Result;

/// A score that is read and planned.
pub(crate) struct PlannedScore {
    snapshot: Snapshot,
    /// Parts in files of their own.
    beside: Vec<Beside>,
}

impl PlannedScore {
    /// Reads MusicXML and plans its bowed parts, those of one rhythm alike.
    pub(crate) fn new(document: Document, profile: &Profile) -> Result<Self> {
        Self::planned(document, Config::of(profile.clone()))
    }

    /// The same with each line planned for itself, which is much quicker.
    pub(crate) fn apart(document: Document, profile: &Profile) -> Result<Self> {
        Self::planned(document, Config { planning: Planning::Apart, ..Config::of(profile.clone()) })
    }

    fn planned(document: Document, config: Config) -> Result<Self> {
        let ground = Ground::new(Source::of(document.into())?, config);
        Ok(Self { snapshot: Snapshot::new(Arc::new(ground)), beside: Vec::new() })
    }

    /// The same with edits in it, each line planned for itself; lines that stay as they were are not planned again.
    pub(crate) fn with(&self, edits: &[Edit]) -> Result<Self> {
        let edits = EditList::new(edits.to_vec()).map_err(|problem| problem.to_string())?;
        let bytes = self.document().apply(&edits).map_err(|problem| problem.to_string())?;
        let document = Document::parse(bytes, &Limits::default()).map_err(|problem| problem.to_string())?;
        let source = Source::of(document.into())?;
        let config = self.snapshot.ground().config.clone();
        let lines = arcata_analysis::lines(&source.score, &config);
        let settings: Vec<PlanSettings> =
            lines.iter().map(|line| config.player.profile.plan_settings(line.instrument)).collect();
        let planned = |(at, line): (usize, &Line)| match self.lines().get(at) {
            Some(before) if before == line => self.snapshot.plan(at).clone(),
            _ => Arc::new(plan(line, &settings[at])),
        };
        let plans = lines.iter().enumerate().map(planned).collect();
        let bowed = Bowed { lines, settings, plans, ..Bowed::default() };
        let ground = Ground { source, options: config.line_options(), config, bowed };
        Ok(Self { snapshot: Snapshot::new(Arc::new(ground)), beside: self.beside.clone() })
    }

    /// The same with a part in a file of its own beside it.
    pub(crate) fn beside(mut self, part: Score) -> Self {
        self.beside.push(Beside { name: "The part".to_owned(), score: part });
        self
    }

    /// The document.
    pub(crate) fn document(&self) -> &Document {
        self.snapshot.ground().source.document()
    }

    /// The music.
    pub(crate) fn score(&self) -> &Score {
        self.snapshot.score()
    }

    /// The lines.
    pub(crate) fn lines(&self) -> &[Line] {
        self.snapshot.lines()
    }

    /// The lines with their plans.
    pub(crate) fn planned_lines(&self) -> impl Iterator<Item = (&Line, &Plan)> {
        self.lines().iter().zip(self.snapshot.plans().iter().map(AsRef::as_ref))
    }

    /// What the review finds.
    pub(crate) fn findings(&self, settings: &ReviewSettings) -> Vec<Finding> {
        self.snapshot.review(&self.beside, settings).findings
    }
}
