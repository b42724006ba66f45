//! Looking texts up.

use std::fmt;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use unic_langid::LanguageIdentifier;

use crate::Language;

/// The texts of one language, and those of English behind them.
pub struct Texts {
    language: Language,
    bundles: Vec<FluentBundle<FluentResource>>,
}

impl fmt::Debug for Texts {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_tuple("Texts").field(&self.language).finish()
    }
}

/// What a rule looks for and why, in one language.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Explanation {
    /// What it finds, as a heading.
    pub title: String,
    /// What it finds, a paragraph.
    pub finds: String,
    /// Why that matters to players, a paragraph.
    pub why: String,
}

impl Texts {
    /// The texts of a language.
    #[must_use]
    pub fn new(language: Language) -> Self {
        let chain: &[Language] = match language {
            Language::English => &[Language::English],
            Language::Italian => &[Language::Italian, Language::English],
            Language::French => &[Language::French, Language::English],
            Language::German => &[Language::German, Language::English],
        };
        Self { language, bundles: chain.iter().copied().map(bundle).collect() }
    }

    /// The language asked for.
    #[must_use]
    pub const fn language(&self) -> Language {
        self.language
    }

    /// A heading or word by its key; the key itself where no language has it.
    #[must_use]
    pub fn word(&self, key: &str) -> String {
        self.text(key, None).unwrap_or_else(|| key.to_owned())
    }

    /// A sentence by its key, with texts put in by name; the key itself where no language has it, or something is missing that it
    /// wants.
    ///
    /// ```
    /// use arcata_languages::{Language, Texts};
    ///
    /// let texts = Texts::new(Language::French);
    /// assert_eq!(texts.said("class-of", &[("met", "11"), ("read", "24")]), "11 sur 24");
    /// ```
    #[must_use]
    pub fn said(&self, key: &str, with: &[(&str, &str)]) -> String {
        let args: FluentArgs<'_> =
            with.iter().map(|(name, value)| (*name, FluentValue::from(*value))).collect();
        self.text_with(key, None, Some(&args)).unwrap_or_else(|| key.to_owned())
    }

    /// The explanation of a rule; `None` for a rule that there is not.
    #[must_use]
    pub fn rule(&self, rule: &str) -> Option<Explanation> {
        Some(Explanation {
            title: self.text(rule, None)?,
            finds: self.text(rule, Some("finds"))?,
            why: self.text(rule, Some("why"))?,
        })
    }

    /// A rule's explanation as a page of Markdown: heading, what it finds, why it matters.
    #[must_use]
    pub fn rule_page(&self, rule: &str) -> Option<String> {
        let text = self.rule(rule)?;
        let (finds, why) = (self.word("finds"), self.word("why"));
        Some(format!("# {}\n\n## {finds}\n{}\n\n## {why}\n{}\n", text.title, text.finds, text.why))
    }

    fn text(&self, key: &str, attribute: Option<&str>) -> Option<String> {
        self.text_with(key, attribute, None)
    }

    fn text_with(&self, key: &str, attribute: Option<&str>, args: Option<&FluentArgs<'_>>) -> Option<String> {
        self.bundles.iter().find_map(|bundle| {
            let message = bundle.get_message(key)?;
            let pattern = match attribute {
                None => message.value()?,
                Some(name) => message.get_attribute(name)?.value(),
            };
            let mut troubles = Vec::new();
            let text = bundle.format_pattern(pattern, args, &mut troubles);
            troubles.is_empty().then(|| text.into_owned())
        })
    }
}

/// A bundle of a language's files. They come with the program and are held to by the tests: what could not be read of them is
/// missing here, and English stands in.
fn bundle(language: Language) -> FluentBundle<FluentResource> {
    let tongue: LanguageIdentifier = language.code().parse().unwrap_or_default();
    let mut bundle = FluentBundle::new_concurrent(vec![tongue]);
    bundle.set_use_isolating(false);
    bundle.set_formatter(Some(|value, _| match value {
        FluentValue::String(text) => Some(text.to_string()),
        _ => None,
    }));
    for file in language.files() {
        let resource = FluentResource::try_new(file.to_owned()).unwrap_or_else(|(part, _)| part);
        bundle.add_resource_overriding(resource);
    }
    bundle
}
