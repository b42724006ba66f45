//! What the review says, kept in the languages of a task's sheets.

use std::collections::BTreeMap;

use arcata_languages::{Language, Saying, Wording};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::{Concealed, Words};

/// A sentence in several languages, by their two letters. A record of an earlier run has it in English alone, as a plain text.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(from = "KeptSentence")]
pub struct InLanguages(BTreeMap<String, String>);

#[derive(Deserialize, JsonSchema)]
#[serde(untagged)]
enum KeptSentence {
    English(String),
    Each(BTreeMap<String, String>),
}

impl From<KeptSentence> for InLanguages {
    fn from(kept: KeptSentence) -> Self {
        match kept {
            KeptSentence::English(text) => Self::english(text),
            KeptSentence::Each(texts) => Self(texts),
        }
    }
}

impl InLanguages {
    fn english(text: String) -> Self {
        let letters = Language::English.code().to_owned();
        Self(if text.is_empty() { BTreeMap::new() } else { [(letters, text)].into() })
    }

    /// A saying in some wordings, without the names that are concealed.
    pub(crate) fn new(saying: &Saying, wordings: &[Wording], concealed: &Concealed) -> Self {
        let said =
            |wording: &Wording| (wording.language.code().to_owned(), concealed.text(&wording.say(saying)));
        Self(wordings.iter().map(said).collect())
    }

    /// Whether nothing is said.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// The sentence in the language of a sheet; in another one where it was not kept in this.
    ///
    /// ```
    /// use arcata_class::{InLanguages, Words};
    /// use arcata_languages::Language;
    ///
    /// let kept: InLanguages = serde_json::from_str(r#"{"en": "Split the slur.", "de": "Den Bindebogen teilen."}"#)?;
    /// assert_eq!(kept.said(&Words::of(Language::German)), "Den Bindebogen teilen.");
    /// assert_eq!(kept.said(&Words::of(Language::French)), "Split the slur.");
    /// let earlier: InLanguages = serde_json::from_str("\"Split the slur.\"")?;
    /// assert_eq!(earlier.said(&Words::of(Language::German)), "Split the slur.");
    /// # Ok::<(), serde_json::Error>(())
    /// ```
    #[must_use]
    pub fn said(&self, words: &Words) -> &str {
        let of = |language: Language| self.0.get(language.code());
        let other = of(Language::English).or_else(|| self.0.values().next());
        of(words.language()).or(other).map_or("", String::as_str)
    }
}
