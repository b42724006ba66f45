//! `arcata rules`: the rules of the review and their pages.

use std::fmt::Write as _;
use std::process::ExitCode;

use arcata_review::{Family, REGISTER, Registered, Severity, rule};
use clap::Args;

use crate::failure::Failure;
use crate::files;

#[derive(Debug, Args)]
pub(crate) struct RulesArguments {
    /// Show this rule's page: what it finds and why, what it proposes, what it cannot know, its sources
    #[arg(value_name = "RULE")]
    pub(crate) rule: Option<String>,
}

/// Prints the list, or one page.
pub(crate) fn run(arguments: &RulesArguments) -> Result<ExitCode, Failure> {
    match &arguments.rule {
        None => files::show(&list()),
        Some(id) => {
            let known = || REGISTER.iter().map(|rule| rule.card.id).collect();
            let rule = rule(id).ok_or_else(|| Failure::Rule { asked: id.clone(), known: known() })?;
            files::show(&rule.page());
        }
    }
    Ok(ExitCode::SUCCESS)
}

/// The chapters with their rules, in the order of the manual.
fn list() -> String {
    let width = REGISTER.iter().map(|rule| rule.card.id.len()).max().unwrap_or_default();
    let mut out = String::new();
    for family in Family::ALL {
        let rules: Vec<&Registered> = REGISTER.iter().filter(|rule| rule.card.family == family).collect();
        if rules.is_empty() {
            continue;
        }
        let _ = writeln!(out, "{}", family.title());
        for rule in rules {
            let card = rule.card;
            let weight = if card.gravest == card.lightest {
                card.gravest.to_string()
            } else {
                format!("{}-{}", card.gravest, card.lightest)
            };
            let _ = writeln!(out, "  {weight:3}  {:width$}  {}", card.id, card.title);
        }
        out.push('\n');
    }
    for severity in [Severity::A, Severity::B, Severity::C, Severity::D] {
        let _ = writeln!(out, "{severity}  {}", severity.meaning());
    }
    let _ = writeln!(
        out,
        "\nA rule's page: arcata rules RULE. Leave one out: arcata review SCORE --without RULE,"
    );
    let _ = writeln!(out, "or in one score, with a reason: arcata aside SCORE --rule RULE --reason TEXT.");
    out
}
