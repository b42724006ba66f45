//! `arcata rules`: the rules of the review and their pages.

use std::fmt::Write as _;
use std::process::ExitCode;

use arcata_examples::{Example, with_examples};
use arcata_languages::{Language, Texts};
use arcata_review::{Family, REGISTER, Registered, Severity, rule};

use crate::args::RulesArguments;
use crate::failure::Failure;
use crate::files;

/// Prints the list, or one page.
pub(crate) fn run(arguments: &RulesArguments) -> Result<ExitCode, Failure> {
    let wording = files::wording();
    let texts = wording.texts();
    match &arguments.rule {
        None => files::show(&list(texts)),
        Some(id) => {
            let known = || REGISTER.iter().map(|rule| rule.card.id).collect();
            let rule = rule(id).ok_or_else(|| Failure::Rule { asked: id.clone(), known: known() })?;
            files::show_set(&page(rule, texts));
        }
    }
    Ok(ExitCode::SUCCESS)
}

/// A rule's page; in another language without its sources, and where those are.
fn page(rule: &Registered, texts: &Texts) -> String {
    let id = rule.card.id;
    if texts.language() == Language::English {
        return shown(rule);
    }
    let example = Example::of_rule(id).map(|example| example.text(id, files::page()));
    texts.rule_page(id, example.as_deref()).map_or_else(
        || shown(rule),
        |page| format!("{page}\n{}\narcata rules {id}\n", texts.word("english-only")),
    )
}

/// The English page, its example as the review reads it.
fn shown(rule: &Registered) -> String {
    let page = files::page();
    with_examples(&rule.page(), |_| {
        Example::of_rule(rule.card.id).map_or_else(String::new, |example| example.text(rule.card.id, page))
    })
}

/// The chapters with their rules, in the order of the manual.
fn list(texts: &Texts) -> String {
    let width = REGISTER.iter().map(|rule| rule.card.id.len()).max().unwrap_or_default();
    let mut out = String::new();
    for family in Family::ALL {
        let rules: Vec<&Registered> = REGISTER.iter().filter(|rule| rule.card.family == family).collect();
        if rules.is_empty() {
            continue;
        }
        let _ = writeln!(out, "{}", texts.word(&format!("family-{}", family.name())));
        for rule in rules {
            let card = rule.card;
            let weight = if card.gravest == card.lightest {
                card.gravest.to_string()
            } else {
                format!("{}-{}", card.gravest, card.lightest)
            };
            let title = texts.rule(card.id).map_or_else(|| card.title.to_owned(), |text| text.title);
            let _ = writeln!(out, "  {weight:3}  {:width$}  {}", card.id, title);
        }
        out.push('\n');
    }
    for severity in [Severity::A, Severity::B, Severity::C, Severity::D] {
        let _ = writeln!(
            out,
            "{severity}  {}",
            texts.word(&format!("severity-{}", severity.to_string().to_lowercase()))
        );
    }
    let _ = writeln!(out, "\n{}", texts.word("rules-foot"));
    out
}
