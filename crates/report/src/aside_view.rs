//! What somebody has set aside, as data and as text.

use std::fmt::Write as _;

use arcata_languages::{Argument, Saying, Wording};
use arcata_review::{Aside, AsideEntry, SetAside, UnusedSlurEntry};
use schemars::JsonSchema;
use serde::Serialize;

use crate::review_view::FindingPlaceView;
use crate::style::{Ink, Page};

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
    pub fn new(
        file: &str,
        aside: &Aside,
        (set_aside, unused): (&[SetAside], &[usize]),
        wording: &Wording,
    ) -> Self {
        let reason =
            |entry: usize| aside.entries.get(entry).map_or_else(String::new, |entry| entry.reason.clone());
        let findings = set_aside.iter().map(|aside| SetAsideView {
            rule: aside.finding.rule,
            severity: aside.finding.severity.to_string(),
            place: FindingPlaceView::of(&aside.finding.place, wording),
            sentence: wording.say(&aside.finding.sentence),
            reason: reason(aside.entry),
        });
        let unused = unused.iter().filter_map(|index| {
            let entry = aside.entries.get(*index)?;
            Some(UnusedView { number: index + 1, asks: asks(entry, wording), reason: entry.reason.clone() })
        });
        Self { file: file.to_owned(), findings: findings.collect(), unused: unused.collect() }
    }

    /// The same with entries that say what slurs are and that no slur answers to.
    #[must_use]
    pub fn with_slurs(mut self, aside: &Aside, unused: &[UnusedSlurEntry], wording: &Wording) -> Self {
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
            Some(UnusedView {
                number: unused.entry + 1,
                asks: asks(&place, wording),
                reason: entry.reason.clone(),
            })
        }));
        self
    }

    pub(crate) fn text(&self, out: &mut String, page: Page) {
        if !self.findings.is_empty() {
            let said =
                Saying::new("places-in-file").with("count", self.findings.len()).quoting("file", &self.file);
            let said = page.labelled("set-aside", "", &page.say(&said));
            let _ = writeln!(out, "\n{}", page.ink(Ink::Faint, &said));
        }
        for unused in &self.unused {
            let said = Saying::new("aside-entry")
                .with("number", unused.number)
                .quoting("file", &self.file)
                .quoting("asks", &unused.asks)
                .quoting("reason", &unused.reason);
            let label = page.say(&Saying::new("label").with("label", Saying::new("aside-nothing-found")));
            let _ = writeln!(out, "\n{}", page.fill(&page.say(&said), &format!("{label} "), "    "));
        }
    }
}

/// What an entry asks for, in words.
fn asks(entry: &AsideEntry, wording: &Wording) -> String {
    let bars = entry.bars.as_ref().map(|(first, last)| wording.bars(None, (first, last)));
    let beat = entry.beat.map(|beat| wording.argument(&Argument::Beat(beat)));
    let movement = |movement: usize| wording.say(&Saying::new("movement-numbered").with("number", movement));
    let all = [entry.rule.clone(), entry.part.clone(), entry.movement.map(movement), bars, beat];
    all.into_iter().flatten().collect::<Vec<_>>().join(", ")
}
