//! The languages there are texts in.

use std::fmt;
use std::str::FromStr;

/// A language that explanations are given in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Language {
    /// English, what everything else falls back to.
    #[default]
    English,
    /// Italian.
    Italian,
    /// French.
    French,
    /// German.
    German,
}

impl Language {
    /// All of them, English first.
    pub const ALL: [Self; 4] = [Self::English, Self::Italian, Self::French, Self::German];

    /// The two letters of the language (ISO 639-1, BCP 47): `en`, `it`, `fr`, `de`.
    #[must_use]
    pub const fn code(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Italian => "it",
            Self::French => "fr",
            Self::German => "de",
        }
    }

    /// What parts the clauses of a list: French sets a space before the semicolon.
    ///
    /// ```
    /// assert_eq!(arcata_languages::Language::French.semicolon(), " ; ");
    /// ```
    #[must_use]
    pub const fn semicolon(self) -> &'static str {
        match self {
            Self::French => " ; ",
            Self::English | Self::Italian | Self::German => "; ",
        }
    }

    /// The language by its own name.
    #[must_use]
    pub const fn own_name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::Italian => "Italiano",
            Self::French => "Français",
            Self::German => "Deutsch",
        }
    }

    /// The Fluent file of what crates below say in English.
    pub(crate) const fn told(self) -> &'static str {
        match self {
            Self::English => include_str!("../texts/told.en.ftl"),
            Self::Italian => include_str!("../texts/told.it.ftl"),
            Self::French => include_str!("../texts/told.fr.ftl"),
            Self::German => include_str!("../texts/told.de.ftl"),
        }
    }

    /// The English Fluent file of reasons, which crates below give as sentences in part.
    pub(crate) const fn english_reasons() -> &'static str {
        include_str!("../texts/reasons.en.ftl")
    }

    /// The Fluent files: `words`, `rules`, `class`, `findings`, `proposals`, `pages`, `commands`, `reasons`, `failures` and `told`.
    pub(crate) const fn files(self) -> [&'static str; 11] {
        match self {
            Self::English => [
                include_str!("../texts/words.en.ftl"),
                include_str!("../texts/rules.en.ftl"),
                include_str!("../texts/class.en.ftl"),
                include_str!("../texts/findings.en.ftl"),
                include_str!("../texts/proposals.en.ftl"),
                include_str!("../texts/pages.en.ftl"),
                include_str!("../texts/commands.en.ftl"),
                include_str!("../texts/reasons.en.ftl"),
                include_str!("../texts/failures.en.ftl"),
                include_str!("../texts/parts.en.ftl"),
                self.told(),
            ],
            Self::Italian => [
                include_str!("../texts/words.it.ftl"),
                include_str!("../texts/rules.it.ftl"),
                include_str!("../texts/class.it.ftl"),
                include_str!("../texts/findings.it.ftl"),
                include_str!("../texts/proposals.it.ftl"),
                include_str!("../texts/pages.it.ftl"),
                include_str!("../texts/commands.it.ftl"),
                include_str!("../texts/reasons.it.ftl"),
                include_str!("../texts/failures.it.ftl"),
                include_str!("../texts/parts.it.ftl"),
                self.told(),
            ],
            Self::French => [
                include_str!("../texts/words.fr.ftl"),
                include_str!("../texts/rules.fr.ftl"),
                include_str!("../texts/class.fr.ftl"),
                include_str!("../texts/findings.fr.ftl"),
                include_str!("../texts/proposals.fr.ftl"),
                include_str!("../texts/pages.fr.ftl"),
                include_str!("../texts/commands.fr.ftl"),
                include_str!("../texts/reasons.fr.ftl"),
                include_str!("../texts/failures.fr.ftl"),
                include_str!("../texts/parts.fr.ftl"),
                self.told(),
            ],
            Self::German => [
                include_str!("../texts/words.de.ftl"),
                include_str!("../texts/rules.de.ftl"),
                include_str!("../texts/class.de.ftl"),
                include_str!("../texts/findings.de.ftl"),
                include_str!("../texts/proposals.de.ftl"),
                include_str!("../texts/pages.de.ftl"),
                include_str!("../texts/commands.de.ftl"),
                include_str!("../texts/reasons.de.ftl"),
                include_str!("../texts/failures.de.ftl"),
                include_str!("../texts/parts.de.ftl"),
                self.told(),
            ],
        }
    }
}

impl fmt::Display for Language {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.code())
    }
}

impl FromStr for Language {
    type Err = String;

    /// Reads the two letters of a language, `it` as well as `it-CH`.
    ///
    /// # Errors
    /// Says which languages there are, where it is none of them.
    fn from_str(text: &str) -> Result<Self, String> {
        let letters = text.split(['-', '_']).next().unwrap_or_default().to_ascii_lowercase();
        Self::ALL.into_iter().find(|language| language.code() == letters).ok_or_else(|| {
            let known: Vec<&str> = Self::ALL.iter().map(|language| language.code()).collect();
            format!("there are no explanations in \"{text}\"; there are {}", known.join(", "))
        })
    }
}
