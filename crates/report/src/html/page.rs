//! The page of one score.

use std::collections::BTreeMap;

use arcata_languages::{Saying, Wording};
use arcata_xml::seen;
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use maud::{DOCTYPE, Markup, PreEscaped, html};
use sha2::{Digest, Sha256};

use super::{FindingPictures, ReportPage, finding, rules};
use crate::AsideView;
use crate::review_view::FindingView;
use crate::term_words::yardstick_words;

const STYLE: &str = include_str!("style.css");
const SCRIPT: &str = include_str!("script.js");

/// What the severities mean, gravest first; in programs and on the command line they are called by letters.
pub(super) const WEIGHTS: [(&str, &str); 4] =
    [("A", "severity-a"), ("B", "severity-b"), ("C", "severity-c"), ("D", "severity-d")];

/// The review of one score as a page that needs nothing else: no network, no other file.
#[must_use]
pub fn review_html(page: &ReportPage<'_>) -> String {
    let title = page.view.title.clone().unwrap_or_else(|| page.view.file.clone());
    let findings = in_order(&page.view.findings);
    let words = page.wording;
    let body = html! {
        a.skip href="#findings" { (words.word("page-skip")) }
        header.head {
            h1 { (title) }
            p.file { (page.view.file) }
            (about(page))
        }
        main {
            section aria-labelledby="glance" {
                h2 id="glance" { (words.word("page-glance")) }
                (page.strip.markup(&findings, words))
                (strip_key(words))
            }
            section aria-labelledby="findings" {
                h2 id="findings" tabindex="-1" { (words.word("page-findings")) }
                @if findings.is_empty() {
                    p { (words.word("nothing-found")) }
                } @else {
                    (choice(page, &findings))
                    @if weighs(&findings) { p.key { (yardstick_words(page.yardstick, words)) " " (words.word("page-brackets")) } }
                    @for (number, found) in &findings { (one(page, *number, found)) }
                }
            }
            @if !page.rules.is_empty() {
                section aria-labelledby="rules" {
                    h2 id="rules" { (words.word("page-rules")) }
                    (rules::markup(&page.rules))
                }
            }
        }
        footer {
            p { (words.word("page-lane-key")) }
            p { (words.word("page-advice")) }
        }
    };
    let (body, glyphs) = gathered(body.into_string());
    document(&title, &body, (&glyphs, &page.fonts), words)
}

/// Whether a proposal says what is better or worse.
fn weighs(findings: &[(usize, &FindingView)]) -> bool {
    let mut proposals = findings.iter().flat_map(|(_, finding)| &finding.proposals);
    proposals.any(|proposal| !proposal.gains.is_empty() || !proposal.losses.is_empty())
}

/// Findings in the order of the score, each with its number on the page.
fn in_order(findings: &[FindingView]) -> Vec<(usize, &FindingView)> {
    let mut ordered: Vec<(usize, &FindingView)> = findings.iter().enumerate().collect();
    // The order within a bar stays as it was: by beat, then from the gravest.
    ordered.sort_by_key(|(_, finding)| finding.place.bar_ordinal);
    ordered.into_iter().map(|(number, finding)| (number + 1, finding)).collect()
}

fn one(page: &ReportPage<'_>, number: usize, found: &FindingView) -> Markup {
    let title =
        page.rules.iter().find(|rule| rule.rule == found.rule).map_or(found.rule, |rule| rule.title.as_str());
    let none = FindingPictures::default();
    finding::markup(number, found, title, page.pictures.get(number - 1).unwrap_or(&none), page.wording)
}

fn about(page: &ReportPage<'_>) -> Markup {
    let (view, words) = (page.view, page.wording);
    let strokes = |count: usize| words.say(&Saying::new("strokes-counted").with("count", count));
    let contradicts = Saying::new("page-contradicts").with("count", view.problems.len());
    html! {
        dl.about {
            dt { (words.word("page-bars")) } dd { (view.bars) }
            dt { (words.word("page-bowed-parts")) }
            dd {
                @for (index, (name, count)) in view.bowed().into_iter().enumerate() {
                    @if index > 0 { ", " }
                    span.part { (name) " (" (strokes(count)) ")" }
                }
            }
            @if !page.settings.is_empty() || !view.assumptions.is_empty() {
                dt { (words.word("page-calculated-for")) }
                dd { (page.settings.iter().chain(&view.assumptions).cloned().collect::<Vec<_>>().join(words.language.semicolon())) }
            }
            @for (letter, meaning) in WEIGHTS {
                @let count = view.findings.iter().filter(|finding| finding.severity == letter).count();
                @if count > 0 {
                    dt { (finding::sign(letter)) " " (words.word(meaning)) }
                    dd { (count) }
                }
            }
        }
        @if !view.problems.is_empty() {
            details {
                summary { (words.say(&contradicts)) }
                ul {
                    @for problem in &view.problems {
                        li {
                            @if let Some(bar) = &problem.bar { (words.bar(problem.movement.as_deref(), bar)) ": " }
                            @if let Some(part) = &problem.part { (part) ": " }
                            (problem.message)
                        }
                    }
                }
            }
        }
        @if let Some(aside) = &view.aside { (set_aside(aside, words)) }
    }
}

/// What is set aside, folded in, and entries that nothing is found for, in the open.
fn set_aside(aside: &AsideView, words: &Wording) -> Markup {
    let count = aside.findings.len();
    let counted = Saying::new("page-set-aside").with("count", count);
    let reasons = Saying::new("page-reasons-in").quoting("file", &aside.file);
    let held_for = |reason: &str| words.say(&Saying::new("page-held-for").quoting("reason", reason));
    let unused_said = |number: usize, asks: &str, reason: &str| {
        let said = Saying::new("page-entry-unused").with("number", number).quoting("file", &aside.file);
        words.say(&said.quoting("asks", asks).quoting("reason", reason))
    };
    html! {
        @if count > 0 {
            details {
                summary { (words.say(&counted)) }
                p { (words.say(&reasons)) }
                ul {
                    @for held in &aside.findings {
                        li {
                            (finding::sign(&held.severity)) " " (held.rule) ", " (held.place.section) ", " (held.place.bar_said) ": "
                            (held.sentence) " " em { (held_for(&held.reason)) }
                        }
                    }
                }
            }
        }
        @for unused in &aside.unused {
            p { (unused_said(unused.number, &unused.asks, &unused.reason)) }
        }
    }
}

/// What is to be seen: nothing of it works without a script, so a script brings it to light.
fn choice(page: &ReportPage<'_>, findings: &[(usize, &FindingView)]) -> Markup {
    let mut sections: BTreeMap<&str, usize> = BTreeMap::new();
    let mut rules: BTreeMap<&str, usize> = BTreeMap::new();
    for (_, finding) in findings {
        *sections.entry(&finding.place.section).or_default() += 1;
        *rules.entry(finding.rule).or_default() += 1;
    }
    let words = page.wording;
    let order = |name: &str| page.view.lines.iter().position(|line| line.name == name);
    let mut sections: Vec<(&str, usize)> = sections.into_iter().collect();
    sections.sort_by_key(|(name, _)| (order(name).is_none(), order(name)));
    html! {
        form.choice id="choice" hidden aria-label=(words.word("page-which")) data-shown=(words.word("page-shown")) {
            fieldset {
                legend { (words.word("page-severity")) }
                @for (letter, meaning) in WEIGHTS {
                    @let count = findings.iter().filter(|(_, finding)| finding.severity == letter).count();
                    @if count > 0 { (tick("weight", letter, html! { (finding::sign(letter)) " " (words.word(meaning)) }, count)) }
                }
            }
            fieldset {
                legend { (words.word("page-section")) }
                @for (name, count) in &sections { (tick("section", name, html! { (name) }, *count)) }
            }
            fieldset {
                legend { (words.word("page-rule")) }
                @for (name, count) in &rules {
                    @let title = page.rules.iter().find(|rule| rule.rule == *name).map_or(*name, |rule| rule.title.as_str());
                    (tick("rule", name, html! { (title) }, *count))
                }
            }
            p.shown { span id="shown" role="status" {} " " button type="button" id="all" { (words.word("page-show-all")) } }
        }
    }
}

fn tick(group: &str, value: &str, said: Markup, count: usize) -> Markup {
    html! {
        label { input type="checkbox" name=(group) value=(value) checked; " " (said) " " span.count { (count) } }
    }
}

fn strip_key(words: &Wording) -> Markup {
    html! {
        p.key {
            (words.word("page-strip-key")) " "
            @for (letter, meaning) in WEIGHTS { (finding::sign(letter)) " " (words.word(meaning)) @if letter == "D" { "." } @else { ", " } }
        }
    }
}

/// Every glyph once for the whole page instead of once a picture.
fn gathered(body: String) -> (String, String) {
    let mut glyphs: BTreeMap<String, String> = BTreeMap::new();
    let mut out = String::with_capacity(body.len());
    let mut rest = body.as_str();
    while let Some((before, after)) = rest.split_once("<defs>") {
        out.push_str(before);
        let Some((inside, after)) = after.split_once("</defs>") else { break };
        for glyph in inside.split_inclusive("</g>").flat_map(|text| text.split_inclusive("</symbol>")) {
            let name = glyph.split("id=\"").nth(1).and_then(|text| text.split('"').next());
            if let Some(name) = name {
                glyphs.entry(name.to_owned()).or_insert_with(|| glyph.to_owned());
            }
        }
        rest = after;
    }
    out.push_str(rest);
    (out, glyphs.into_values().collect())
}

pub(super) fn document(title: &str, body: &str, (glyphs, fonts): (&str, &str), words: &Wording) -> String {
    let allowed = format!(
        "default-src 'none'; style-src 'unsafe-inline'; font-src data:; script-src 'sha256-{}'",
        STANDARD.encode(Sha256::digest(SCRIPT.as_bytes()))
    );
    html! {
        (DOCTYPE)
        html lang=(words.language.code()) {
            head {
                meta charset="utf-8";
                meta http-equiv="Content-Security-Policy" content=(allowed);
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="generator" content="Arcata";
                meta name="color-scheme" content="light dark";
                title { (seen(title)) ": " (words.word("page-title")) }
                style { (PreEscaped(STYLE)) (PreEscaped(fonts)) }
            }
            body {
                @if !glyphs.is_empty() {
                    svg.glyphs width="0" height="0" aria-hidden="true" { defs { (PreEscaped(seen(glyphs))) } }
                }
                (PreEscaped(seen(body)))
                script { (PreEscaped(SCRIPT)) }
            }
        }
    }
    .into_string()
}
