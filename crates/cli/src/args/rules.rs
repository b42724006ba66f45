//! `arcata rules`.

use arcata_languages::Language;
use clap::Args;

#[derive(Debug, Args)]
pub(crate) struct RulesArguments {
    /// Show this rule's page: what it finds and why, what it proposes, what it cannot know, its sources
    #[arg(value_name = "RULE")]
    pub(crate) rule: Option<String>,
    /// Titles and explanations in this language: en, it, fr or de; the rest of a page is English
    #[arg(long, value_name = "LANGUAGE", default_value_t = Language::English)]
    pub(crate) language: Language,
}
