//! `arcata rules`.

use clap::Args;

#[derive(Debug, Args)]
pub(crate) struct RulesArguments {
    /// Show this rule's page: what it finds and why, what it proposes, what it cannot know, its sources
    #[arg(value_name = "RULE")]
    pub(crate) rule: Option<String>,
}
