//! The review as a page of its own, in words; with pictures of each place it is made by `arcata review --format html`.

use std::collections::BTreeSet;

use arcata_bow::together::downbeats;
use arcata_languages::{Language, Saying, Wording};
use arcata_report::{BarWord, FileView, ReportPage, RuleExplanation, RulePage, Strip, review_html};
use arcata_review::{Finding, rule};

use crate::desk::Desk;
use crate::state::SessionState;

/// The page, HTML.
pub(crate) fn review_page(
    (file, desk, state): (&str, &Desk, &SessionState),
    findings: &[Finding],
    wording: &Wording,
) -> String {
    let (score, lines) = (desk.base.score(), desk.base.lines());
    let assumptions = desk.base.assumptions(wording);
    let view = FileView::reviewed(file, score, lines, assumptions, (findings, wording));
    let calculated = match state.profile.as_str() {
        "amateur" => "calculated-amateur",
        "student" => "calculated-student",
        _ => "calculated-professional",
    };
    let style = Saying::new("calculated-style").quoting("style", state.style.name());
    let rules: BTreeSet<&str> = findings.iter().flat_map(Finding::rules).collect();
    let html = review_html(&ReportPage {
        view: &view,
        strip: Strip::new(score, lines, &downbeats(score, lines, desk.plans())),
        settings: vec![wording.say(&Saying::new(calculated)), wording.say(&style)],
        yardstick: desk.base.profile().weight("downbeat").unwrap_or_default(),
        rules: rules.into_iter().filter_map(|named| rule_page(named, wording)).collect(),
        pictures: Vec::new(),
        fonts: String::new(),
        wording,
    });
    let word = match wording.language {
        Language::English => BarWord::named(&wording.words.bar),
        _ => BarWord::Bar,
    };
    word.said(&html).into_owned()
}

fn rule_page(named: &str, wording: &Wording) -> Option<RulePage> {
    let rule = rule(named)?;
    let texts = wording.texts();
    let explanation = match wording.language {
        Language::English => None,
        language => texts.rule_page(named, None).map(|page| RuleExplanation {
            language: language.code().to_owned(),
            text: format!("{page}\n{}\n", texts.word("english-only")),
        }),
    };
    Some(RulePage {
        rule: named.to_owned(),
        title: texts.rule(named).map_or_else(|| rule.card.title.to_owned(), |text| text.title),
        page: rule.page(),
        example: None,
        explanation,
    })
}
