//! The review of a score as a page of its own.

use std::collections::BTreeSet;
use std::fmt;

use arcata_analysis::Snapshot;
use arcata_bow::together::downbeats;
use arcata_bow::{Line, Plan};
use arcata_engrave::{Engraver, music_style_sheet};
use arcata_languages::{Language, Texts, Wording};
use arcata_report::{FileView, ReportPage, RuleExample, RuleExplanation, RulePage, Strip, review_html};
use arcata_review::{Finding, rule};

use crate::pictures::Scenes;

/// The example of a rule by the rule's name, engraved, where there is one.
pub type ExampleOfRule<'a> = &'a dyn Fn(&str) -> Option<RuleExample>;

/// What the page of a review is made of.
///
/// ```
/// use std::sync::Arc;
/// use arcata_analysis::{Config, Ground, Player, Snapshot, Source};
/// use arcata_bow::Profile;
/// use arcata_engrave::Engraver;
/// use arcata_export::ReviewExport;
/// use arcata_languages::Wording;
/// use arcata_report::FileView;
/// use arcata_review::ReviewSettings;
///
/// let score = include_bytes!("../../../demo/lantern-study.musicxml").to_vec();
/// let config = Config::of(Profile::default());
/// let snapshot = Snapshot::new(Arc::new(Ground::new(Source::open(score)?, config)));
/// let findings = snapshot.review(&[], &ReviewSettings::default()).findings;
/// let wording = Wording::default();
/// let view = FileView::reviewed(
///     "lantern-study.musicxml",
///     snapshot.score(),
///     snapshot.lines(),
///     Vec::new(),
///     (&findings, &wording),
/// );
/// let shown: Vec<usize> = (0..snapshot.lines().len()).collect();
/// let page = ReviewExport {
///     snapshot: &snapshot,
///     view: &view,
///     findings: &findings,
///     shown: &shown,
///     settings: Vec::new(),
///     engraver: &Engraver::new(),
///     examples: &|_| None,
///     wording: &wording,
/// };
/// assert!(page.html().starts_with("<!DOCTYPE html>"));
/// # Ok::<(), String>(())
/// ```
pub struct ReviewExport<'a> {
    /// The score as it was looked at.
    pub snapshot: &'a Snapshot,
    /// What the review found, as it is shown.
    pub view: &'a FileView,
    /// The same as it was found, in the same order.
    pub findings: &'a [Finding],
    /// The lines that the strip over the page shows, by index.
    pub shown: &'a [usize],
    /// What the numbers were calculated for, in words.
    pub settings: Vec<String>,
    /// Who engraves. Where it has to wait for drawings, pictures are left out, and it knows which it wants.
    pub engraver: &'a Engraver,
    /// The examples of the rules' pages; none where they are not at hand.
    pub examples: ExampleOfRule<'a>,
    /// In whose words.
    pub wording: &'a Wording,
}

impl fmt::Debug for ReviewExport<'_> {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.debug_struct("ReviewExport").field("findings", &self.findings.len()).finish_non_exhaustive()
    }
}

impl ReviewExport<'_> {
    /// The page, HTML: it needs no other file and no network.
    #[must_use]
    pub fn html(&self) -> String {
        let pictures = Scenes::new(self.snapshot, self.engraver, self.wording).draw(self.findings);
        let music_in_text = pictures.iter().any(|pictures| {
            let all = pictures.now.iter().chain(pictures.proposals.iter().flatten());
            all.into_iter().any(|drawn| drawn.svg.contains(r#"font-family="Bravura""#))
        });
        let texts = self.wording.texts();
        let rules: BTreeSet<&str> = self.findings.iter().flat_map(Finding::rules).collect();
        let rules = rules.into_iter().filter_map(rule).map(|rule| RulePage {
            rule: rule.card.id.to_owned(),
            title: texts.rule(rule.card.id).map_or(rule.card.title.to_owned(), |text| text.title),
            page: rule.page(),
            example: (self.examples)(rule.card.id),
            explanation: explanation(rule.card.id, texts),
        });
        let (snapshot, score) = (self.snapshot, self.snapshot.score());
        let (lines, plans): (Vec<Line>, Vec<&Plan>) = self
            .shown
            .iter()
            .map(|index| (snapshot.lines()[*index].clone(), snapshot.plan(*index).as_ref()))
            .unzip();
        review_html(&ReportPage {
            view: self.view,
            strip: Strip::new(score, &lines, &downbeats(score, &lines, &plans)),
            settings: self.settings.clone(),
            yardstick: snapshot.ground().config.player.profile.weight("downbeat").unwrap_or_default(),
            rules: rules.collect(),
            pictures,
            wording: self.wording,
            fonts: if music_in_text { music_style_sheet().to_owned() } else { String::new() },
        })
    }
}

fn explanation(rule: &str, texts: &Texts) -> Option<RuleExplanation> {
    if texts.language() == Language::English {
        return None;
    }
    let page = texts.rule_page(rule, None)?;
    Some(RuleExplanation {
        language: texts.language().code().to_owned(),
        text: format!("{page}\n{}\n", texts.word("english-only")),
    })
}
