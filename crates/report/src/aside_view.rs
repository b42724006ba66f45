//! What somebody has set aside, as data and as text.

use std::fmt::Write as _;

use arcata_review::{Aside, AsideEntry, SetAside, UnusedSlurEntry};
use arcata_score::places;
use schemars::JsonSchema;
use serde::Serialize;

use crate::review_view::FindingPlaceView;
use crate::style::{Ink, Page};
use crate::text::counted;

/// What is set aside in one score.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct AsideView {
    /// The file that says so.
    pub file: String,
    /// The findings that it holds, each of one place.
    pub findings: Vec<SetAsideView>,
    /// Entries that hold nothing (any more).
    pub unused: Vec<UnusedView>,
}

/// A finding that is set aside.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct SetAsideView {
    /// The rule's name.
    pub rule: &'static str,
    /// Its severity.
    pub severity: String,
    /// Where it is.
    pub place: FindingPlaceView,
    /// One sentence for players.
    pub sentence: String,
    /// Why it is set aside.
    pub reason: String,
}

/// An entry that holds nothing.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct UnusedView {
    /// Its number among the entries of its kind in the file, from 1.
    pub number: usize,
    /// What it asks for.
    pub asks: String,
    /// Its reason.
    pub reason: String,
}

impl AsideView {
    /// What a review left out, and by which entries; `unused` holds indices of entries.
    #[must_use]
    pub fn new(file: &str, aside: &Aside, set_aside: &[SetAside], unused: &[usize]) -> Self {
        let reason =
            |entry: usize| aside.entries.get(entry).map_or_else(String::new, |entry| entry.reason.clone());
        let findings = set_aside.iter().map(|aside| SetAsideView {
            rule: aside.finding.rule,
            severity: aside.finding.severity.to_string(),
            place: FindingPlaceView::of(&aside.finding.place),
            sentence: aside.finding.sentence.clone(),
            reason: reason(aside.entry),
        });
        let unused = unused.iter().filter_map(|index| {
            let entry = aside.entries.get(*index)?;
            Some(UnusedView { number: index + 1, asks: asks(entry), reason: entry.reason.clone() })
        });
        Self { file: file.to_owned(), findings: findings.collect(), unused: unused.collect() }
    }

    /// The same with entries that say what slurs are and that no slur answers to.
    #[must_use]
    pub fn with_slurs(mut self, aside: &Aside, unused: &[UnusedSlurEntry]) -> Self {
        self.unused.extend(unused.iter().filter_map(|unused| {
            let entry = aside.slurs.get(unused.entry)?;
            let place = AsideEntry {
                rule: Some("slurs".to_owned()),
                part: entry.part.clone(),
                bars: entry.bars.clone(),
                beat: entry.beat,
                movement: entry.movement,
                reason: String::new(),
            };
            Some(UnusedView { number: unused.entry + 1, asks: asks(&place), reason: entry.reason.clone() })
        }));
        self
    }

    pub(crate) fn text(&self, out: &mut String, page: Page) {
        if !self.findings.is_empty() {
            let said = format!("{} in {}", counted(self.findings.len(), "place"), self.file);
            let _ =
                writeln!(out, "\n{}", page.ink(Ink::Faint, &page.fill(&said, "set aside: ", "           ")));
        }
        for unused in &self.unused {
            let said =
                format!("entry {} of {} ({}): {}", unused.number, self.file, unused.asks, unused.reason);
            let _ = writeln!(out, "\n{}", page.fill(&said, "set aside, but nothing is found: ", "    "));
        }
    }
}

/// What an entry asks for, in words.
fn asks(entry: &AsideEntry) -> String {
    let bars = entry.bars.as_ref().map(|(first, last)| places::bars_said("bar", None, (first, last)));
    let beat = entry.beat.map(|beat| format!("beat {}", places::beat_said(beat)));
    let movement = entry.movement.map(|movement| format!("movement {movement}"));
    let all = [entry.rule.clone(), entry.part.clone(), movement, bars, beat];
    all.into_iter().flatten().collect::<Vec<_>>().join(", ")
}
