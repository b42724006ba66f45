//! One finding: where, what, the picture, the numbers, what could be done.

use arcata_languages::{Saying, Wording, capital};
use maud::{Markup, PreEscaped, html};

use super::page::WEIGHTS;
use super::{DrawnPicture, FindingPictures};
use crate::review_view::{EvidenceView, FindingPlaceView, FindingView, ProposalView};

/// A severity as a disc: full, half, empty, dotted, from the gravest to the lightest. What it means stands beside it.
pub(super) fn sign(severity: &str) -> Markup {
    html! { span class=(format!("weight {severity}")) aria-hidden="true" {} }
}

fn meaning(severity: &str, words: &Wording) -> Option<String> {
    WEIGHTS.iter().find(|(letter, _)| *letter == severity).map(|(_, meaning)| words.word(meaning))
}

/// Further places that are named one by one.
const NAMED: usize = 12;

/// "Bar 23, beat 1".
pub(super) fn place(finding: &FindingView) -> String {
    spot(&finding.place)
}

fn spot(place: &FindingPlaceView) -> String {
    capital(&place.said)
}

pub(super) fn markup(
    number: usize,
    finding: &FindingView,
    title: &str,
    pictures: &FindingPictures,
    words: &Wording,
) -> Markup {
    html! {
        article id=(format!("finding-{number}")) data-finding=(number) data-weight=(finding.severity) data-section=(finding.place.section) data-rule=(finding.rule) {
            header {
                (sign(&finding.severity))
                h3 { a href=(format!("#finding-{number}")) { (place(finding)) ", " (finding.place.section) } }
                p.rule { a href=(format!("#rule-{}", finding.rule)) { (title) } }
                @if let Some(meaning) = meaning(&finding.severity, words) { p.severity { (meaning) } }
            }
            p.sentence { (finding.sentence) }
            (numbers(&finding.evidence, &finding.assumptions))
            (further(finding, words))
            @for reason in &finding.reasons {
                p.sentence {
                    (sign(&reason.severity)) span.unseen { (meaning(&reason.severity, words).unwrap_or_default()) ":" } " " (reason.sentence) " "
                    a href=(format!("#rule-{}", reason.rule)) { (reason.rule) }
                }
                (numbers(&reason.evidence, &reason.assumptions))
            }
            div.ways {
                @if let Some(now) = &pictures.now {
                    figure { figcaption { b { (words.word("as-it-stands")) } } (picture(now)) }
                } @else {
                    p.note { (words.word("no-picture")) }
                }
                @for (index, proposal) in finding.proposals.iter().enumerate() {
                    (way(index, proposal, pictures.proposals.get(index).and_then(Option::as_ref), words))
                }
            }
        }
    }
}

/// The numbers that a sentence rests on, and what was assumed.
fn numbers(evidence: &[EvidenceView], assumptions: &[String]) -> Markup {
    html! {
        @if !evidence.is_empty() || !assumptions.is_empty() {
            ul.numbers {
                @for evidence in evidence {
                    @let [name, value, unit] = &evidence.said;
                    li { (name) " " b { (value) @if !unit.is_empty() { " " (unit) } } }
                }
                @for assumption in assumptions { li { (assumption) } }
            }
        }
    }
}

fn further(finding: &FindingView, words: &Wording) -> Markup {
    if finding.further.is_empty() {
        return html! {};
    }
    let named = finding.further.iter().take(NAMED).map(|place| {
        let section = if place.section == finding.place.section {
            String::new()
        } else {
            format!(" ({})", place.section)
        };
        format!("{}{section}", place.said)
    });
    let named: Vec<String> = named.collect();
    let rest = finding.further.len().saturating_sub(NAMED);
    let said =
        Saying::new("also-at").quoting("places", named.join(words.language.semicolon())).with("rest", rest);
    html! { p.further { (words.say(&said)) } }
}

fn way(index: usize, proposal: &ProposalView, drawn: Option<&DrawnPicture>, words: &Wording) -> Markup {
    let number = words.say(&Saying::new("proposal-numbered").with("number", index + 1));
    let weighed = |key: &'static str, list: &[String]| {
        words.say(&Saying::new("weighed").with("what", Saying::new(key)).quoting("list", list.join(", ")))
    };
    html! {
        figure {
            figcaption {
                b { (number) } " " span.grade { (proposal.grade_said) }
                span.say { (proposal.sentence) }
                @if !proposal.gains.is_empty() { span.gain { (weighed("better", &proposal.gains)) } }
                @if !proposal.losses.is_empty() { span.gain { (weighed("worse", &proposal.losses)) } }
            }
            @if let Some(drawn) = drawn { (picture(drawn)) }
        }
    }
}

pub(super) fn picture(drawn: &DrawnPicture) -> Markup {
    let size = |millimetres: f64| format!("{millimetres:.2}");
    let head = format!(
        r#"<svg class="music-and-bow" viewBox="0 0 {} {}" role="img" aria-label="{}" style="max-width:{}mm">"#,
        size(drawn.width),
        size(drawn.height),
        maud_escape(&drawn.text),
        size(drawn.width)
    );
    html! { (PreEscaped(head)) (PreEscaped(&drawn.svg)) (PreEscaped("</svg>")) }
}

fn maud_escape(text: &str) -> String {
    html! { (text) }.into_string().replace('"', "&quot;")
}
