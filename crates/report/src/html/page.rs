//! The page of one score.

use std::collections::BTreeMap;

use arcata_xml::seen;
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use maud::{DOCTYPE, Markup, PreEscaped, html};
use sha2::{Digest, Sha256};

use super::{FindingPictures, ReportPage, finding, rules};
use crate::AsideView;
use crate::review_view::{FindingView, bar_said};
use crate::term_words::yardstick_words;

const STYLE: &str = include_str!("style.css");
const SCRIPT: &str = include_str!("script.js");

/// What the severities mean, gravest first; in programs and on the command line they are called by letters.
pub(super) const WEIGHTS: [(&str, &str); 4] = [
    ("A", "cannot be played, or is not defined"),
    ("B", "costs rehearsal time"),
    ("C", "probably not meant"),
    ("D", "clutter"),
];

/// The review of one score as a page that needs nothing else: no network, no other file.
#[must_use]
pub fn review_html(page: &ReportPage<'_>) -> String {
    let title = page.view.title.clone().unwrap_or_else(|| page.view.file.clone());
    let findings = in_order(&page.view.findings);
    let body = html! {
        a.skip href="#findings" { "Skip to the findings" }
        header.head {
            h1 { (title) }
            p.file { (page.view.file) }
            (about(page))
        }
        main {
            section aria-labelledby="glance" {
                h2 id="glance" { "At a glance" }
                (page.strip.markup(&findings))
                (strip_key())
            }
            section aria-labelledby="findings" {
                h2 id="findings" tabindex="-1" { "Findings" }
                @if findings.is_empty() {
                    p { "Nothing was found." }
                } @else {
                    (choice(page, &findings))
                    @if weighs(&findings) { p.key { (yardstick_words(page.yardstick)) " A number in brackets is a share of a penalty." } }
                    @for (number, found) in &findings { (one(page, *number, found)) }
                }
            }
            @if !page.rules.is_empty() {
                section aria-labelledby="rules" {
                    h2 id="rules" { "The rules, and why they matter" }
                    (rules::markup(&page.rules))
                }
            }
        }
        footer {
            p { (lane_key()) }
            p { "Arcata calculates and advises; players decide. Strain in hand, arm or back is a reason to rest and to ask a teacher or physician." }
        }
    };
    let (body, glyphs) = gathered(body.into_string());
    document(&title, &body, &glyphs, &page.fonts)
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
    finding::markup(number, found, title, page.pictures.get(number - 1).unwrap_or(&none))
}

fn about(page: &ReportPage<'_>) -> Markup {
    let view = page.view;
    html! {
        dl.about {
            dt { "Bars" } dd { (view.bars) }
            dt { "Bowed parts" }
            dd {
                @for (index, (name, strokes)) in view.bowed().into_iter().enumerate() {
                    @if index > 0 { ", " }
                    span.part { (name) " (" (strokes) " strokes)" }
                }
            }
            @if !page.settings.is_empty() || !view.assumptions.is_empty() {
                dt { "Calculated for" }
                dd { (page.settings.iter().chain(&view.assumptions).cloned().collect::<Vec<_>>().join("; ")) }
            }
            @for (letter, meaning) in WEIGHTS {
                @let count = view.findings.iter().filter(|finding| finding.severity == letter).count();
                @if count > 0 {
                    dt { (finding::sign(letter)) " " (meaning) }
                    dd { (count) }
                }
            }
        }
        @if !view.problems.is_empty() {
            details {
                summary { "The file contradicts itself at " (view.problems.len()) @if view.problems.len() == 1 { " place" } @else { " places" } }
                ul {
                    @for problem in &view.problems {
                        li {
                            @if let Some(bar) = &problem.bar { (bar_said(problem.movement.as_ref(), bar)) ": " }
                            @if let Some(part) = &problem.part { (part) ": " }
                            (problem.message)
                        }
                    }
                }
            }
        }
        @if let Some(aside) = &view.aside { (set_aside(aside)) }
    }
}

/// What is set aside, folded in, and entries that nothing is found for, in the open.
fn set_aside(aside: &AsideView) -> Markup {
    let count = aside.findings.len();
    html! {
        @if count > 0 {
            details {
                summary { (count) @if count == 1 { " place is" } @else { " places are" } " set aside" }
                p { "In " (aside.file) ", with the reasons given there." }
                ul {
                    @for held in &aside.findings {
                        li {
                            (finding::sign(&held.severity)) " " (held.rule) ", " (held.place.section) ", " (held.place.bar_said()) ": "
                            (held.sentence) " " em { "Set aside: " (held.reason) }
                        }
                    }
                }
            }
        }
        @for unused in &aside.unused {
            p { "Entry " (unused.number) " of " (aside.file) " (" (unused.asks) ") sets aside what is not found any more: " (unused.reason) }
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
    let order = |name: &str| page.view.lines.iter().position(|line| line.name == name);
    let mut sections: Vec<(&str, usize)> = sections.into_iter().collect();
    sections.sort_by_key(|(name, _)| (order(name).is_none(), order(name)));
    html! {
        form.choice id="choice" hidden aria-label="Which findings to show" {
            fieldset {
                legend { "Severity" }
                @for (letter, meaning) in WEIGHTS {
                    @let count = findings.iter().filter(|(_, finding)| finding.severity == letter).count();
                    @if count > 0 { (tick("weight", letter, html! { (finding::sign(letter)) " " (meaning) }, count)) }
                }
            }
            fieldset {
                legend { "Section" }
                @for (name, count) in &sections { (tick("section", name, html! { (name) }, *count)) }
            }
            fieldset {
                legend { "Rule" }
                @for (name, count) in &rules {
                    @let title = page.rules.iter().find(|rule| rule.rule == *name).map_or(*name, |rule| rule.title.as_str());
                    (tick("rule", name, html! { (title) }, *count))
                }
            }
            p.shown { span id="shown" role="status" {} " " button type="button" id="all" { "Show all" } }
        }
    }
}

fn tick(group: &str, value: &str, said: Markup, count: usize) -> Markup {
    html! {
        label { input type="checkbox" name=(group) value=(value) checked; " " (said) " " span.count { (count) } }
    }
}

fn strip_key() -> Markup {
    html! {
        p.key {
            "A column a bar. Tall block: the section begins a down-bow on the downbeat; low block: an up-bow; line: a stroke goes on over it; nothing: it rests or plucks. "
            "Block in the row “All”: on this downbeat bows go on and none begins. Discs: findings, "
            @for (letter, meaning) in WEIGHTS { (finding::sign(letter)) " " (meaning) @if letter == "D" { "." } @else { ", " } }
        }
    }
}

fn lane_key() -> &'static str {
    "Under the music, time runs with the notes and the height is the place in the bow, the frog on top: thick at the frog, thin at the tip. Ring: placed after a rest. Dashed arc: lifted. Short bar: stop, same direction. Beads: pulses. Zigzag: tremolo. Arrowheads: more bow than the dynamic wants. Dashed line: less bow than the tone needs; dots show where the usual speed would lead. Signs in outline were worked out, solid ones are printed."
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

pub(super) fn document(title: &str, body: &str, glyphs: &str, fonts: &str) -> String {
    let allowed = format!(
        "default-src 'none'; style-src 'unsafe-inline'; font-src data:; script-src 'sha256-{}'",
        STANDARD.encode(Sha256::digest(SCRIPT.as_bytes()))
    );
    html! {
        (DOCTYPE)
        html lang="en" {
            head {
                meta charset="utf-8";
                meta http-equiv="Content-Security-Policy" content=(allowed);
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="generator" content="Arcata";
                meta name="color-scheme" content="light dark";
                title { (seen(title)) ": what the bows do" }
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
