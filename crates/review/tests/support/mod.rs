#![allow(dead_code, reason = "each test file uses a part of it")]
//! What the suite and the laws share: a fixture read, planned and reviewed, and its findings as text.

use std::sync::Arc;

use arcata_bow::plan::Plan;
use arcata_bow::{Line, LineOptions, Profile, Reading, all_lines, plan};
use arcata_review::{AtOnePlace, Beside, Finding, Piece, ReviewSettings, review};
use arcata_score::{Score, read};
use arcata_xml::{Document, Limits};

/// A file with everything a review needs.
pub(crate) struct Read {
    pub(crate) document: Document,
    score: Score,
    lines: Vec<Line>,
    plans: Vec<Arc<Plan>>,
    profile: Profile,
    beside: Vec<Beside>,
}

impl Read {
    pub(crate) fn new(bytes: Vec<u8>, profile: &Profile) -> Self {
        let document = Document::parse(bytes, &Limits::default()).expect("a fixture is well-formed");
        let mut score = read(&document);
        let beside = Beside::taken_out(&mut score);
        let lines = all_lines(&score, profile, &LineOptions::default());
        let mut read = Self { document, score, lines, plans: Vec::new(), profile: profile.clone(), beside };
        let plans = read
            .lines
            .iter()
            .enumerate()
            .map(|(at, line)| Arc::new(plan(line, &read.piece().plan_settings(at))));
        read.plans = plans.collect();
        read
    }

    pub(crate) fn piece(&self) -> Piece<'_> {
        Piece {
            document: Some(&self.document),
            score: &self.score,
            lines: &self.lines,
            plans: &self.plans,
            reading: None,
            profile: &self.profile,
            beside: &self.beside,
        }
    }

    pub(crate) fn review(&self, settings: &ReviewSettings) -> Vec<Finding> {
        let options = LineOptions::default();
        let reading = Reading::new(&self.score, &self.profile, &options);
        review(&Piece { reading: Some(&reading), ..self.piece() }, settings)
    }
}

/// Settings that ask every rule, each for itself.
pub(crate) fn all() -> ReviewSettings {
    ReviewSettings { places: AtOnePlace::Apart, ..ReviewSettings::default() }
}

/// Settings that ask one rule.
pub(crate) fn only(rule: &str) -> ReviewSettings {
    ReviewSettings { only: [rule.to_owned()].into(), ..all() }
}

/// Findings as the test documents print them.
pub(crate) fn text(findings: &[Finding]) -> String {
    findings.iter().map(one).collect::<Vec<_>>().join("\n")
}

fn one(finding: &Finding) -> String {
    let wording = arcata_languages::Wording::default();
    let mut lines = vec![format!(
        "{} {}: {}",
        finding.severity,
        finding.place.section_said(&wording),
        wording.say(&finding.sentence)
    )];
    for further in &finding.further {
        lines.push(format!(
            "  also {}, bar {}, beat {}",
            further.section_said(&wording),
            further.bar_label,
            further.beat_text()
        ));
    }
    lines.extend(finding.evidence.iter().map(|evidence| format!("  {}", evidence.line(&wording))));
    lines.extend(
        finding.assumptions.iter().map(|assumption| format!("  assumed: {}", wording.say(assumption))),
    );
    for proposal in &finding.proposals {
        let cost = proposal.cost_change.map_or_else(String::new, |cost| format!(" [costs {cost}]"));
        let file = if proposal.edits.is_empty() { "" } else { " (in the file)" };
        let (kind, grade) = (proposal.kind.name(), proposal.grade.name());
        lines.push(format!("  > {kind}, {grade}: {}{file}{cost}", wording.say(&proposal.sentence)));
    }
    lines.join("\n")
}
