//! Looking texts up.

use std::fmt;
use std::sync::OnceLock;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use unic_langid::LanguageIdentifier;

use crate::print::{self, Before};
use crate::{Argument, Language, Saying, TradeWords};

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
    /// What it proposes, a paragraph.
    pub proposes: String,
    /// What it cannot know, a paragraph.
    pub limits: String,
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

    /// The texts of a language, read once.
    #[must_use]
    pub fn of(language: Language) -> &'static Self {
        static READ: [OnceLock<Texts>; 4] = [const { OnceLock::new() }; 4];
        READ[language as usize].get_or_init(|| Self::new(language))
    }

    /// A saying in words; the key of its message where no language has it, or something is missing that it wants.
    #[must_use]
    pub fn say(&self, saying: &Saying, words: &TradeWords) -> String {
        let args = self.arguments(saying, words);
        self.text_with(saying.key, None, Some(&args)).unwrap_or_else(|| saying.key.to_owned())
    }

    /// A word into which the words of the trade are put.
    pub(crate) fn trade_word(&self, key: &'static str, words: &TradeWords) -> String {
        self.say(&Saying::new(key), words)
    }

    /// What a message finds: the words of the trade, and each argument in the forms that it may want.
    fn arguments<'w>(&self, saying: &'w Saying, words: &'w TradeWords) -> FluentArgs<'w> {
        let trade = [
            ("bar-word", &words.bar),
            ("stand-word", &words.stand),
            ("frog-word", &words.frog),
            ("tip-word", &words.tip),
        ];
        let mut args: FluentArgs<'_> =
            trade.into_iter().map(|(name, word)| (name, FluentValue::from(word.as_str()))).collect();
        for (name, argument) in &saying.arguments {
            match argument {
                Argument::Whole(number) => {
                    let word = print::in_words(*number, self);
                    args.set(format!("{name}-first"), print::capital(&word));
                    args.set(format!("{name}-word"), word);
                    args.set(*name, *number);
                    continue;
                }
                Argument::Place(place) => {
                    let said = |before| print::place(place, before, self, words);
                    args.set(format!("{name}-first"), print::capital(&said(Before::In)));
                    args.set(format!("{name}-in"), said(Before::In));
                    args.set(format!("{name}-the"), said(Before::The));
                }
                Argument::Beat(beat) => {
                    let said = |before| print::beat(*beat, before, self);
                    args.set(format!("{name}-first"), print::capital(&said(Before::In)));
                    args.set(format!("{name}-in"), said(Before::In));
                    args.set(format!("{name}-the"), said(Before::The));
                }
                Argument::Chain(items) => {
                    args.set(format!("{name}-the"), print::chain(items, Before::The, self, words));
                }
                _ => {}
            }
            args.set(*name, print::argument(argument, self, words));
        }
        args
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
            proposes: self.text(rule, Some("proposes"))?,
            limits: self.text(rule, Some("limits"))?,
        })
    }

    /// A rule's explanation as a page of Markdown: heading, what it finds, why it matters, its example where there is one, what it
    /// proposes, what it cannot know.
    #[must_use]
    pub fn rule_page(&self, rule: &str, example: Option<&str>) -> Option<String> {
        let text = self.rule(rule)?;
        let mut page = format!("# {}\n", text.title);
        let sections = [
            ("finds", Some(text.finds.as_str())),
            ("why", Some(text.why.as_str())),
            ("example", example),
            ("proposes", Some(text.proposes.as_str())),
            ("limits", Some(text.limits.as_str())),
        ];
        for (key, section) in sections {
            if let Some(section) = section {
                page.push_str(&format!("\n## {}\n{}\n", self.word(key), section.trim_end()));
            }
        }
        Some(page)
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
