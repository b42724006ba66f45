//! Sentences that can be said in every language.

use std::collections::BTreeMap;

use arcata_languages::{Language, Texts};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A sentence: the key of its text, and what is put into it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct SaidOnSheet {
    /// Key of the text.
    pub key: String,
    /// What stands for what in it. Names of parts are put in as they are called in English.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub with: BTreeMap<String, String>,
}

impl SaidOnSheet {
    /// A sentence without anything put in.
    #[must_use]
    pub fn new(key: &str) -> Self {
        Self { key: key.to_owned(), with: BTreeMap::new() }
    }

    /// With something put in.
    #[must_use]
    pub fn with(mut self, name: &str, value: impl ToString) -> Self {
        self.with.insert(name.to_owned(), value.to_string());
        self
    }
}

/// The words of one language.
#[derive(Debug)]
pub struct Words {
    texts: Texts,
}

/// Names that generic parts have, and the keys of the words for them.
const PARTS: [(&str, &str); 6] = [
    ("Violin", "part-violin"),
    ("Viola", "part-viola"),
    ("Violoncello", "part-cello"),
    ("Double bass", "part-bass"),
    ("Bowed string", "part-other-bowed"),
    ("Part", "part-other"),
];

impl Words {
    /// Of a language.
    #[must_use]
    pub fn of(language: Language) -> Self {
        Self { texts: Texts::new(language) }
    }

    /// Which language.
    #[must_use]
    pub const fn language(&self) -> Language {
        self.texts.language()
    }

    /// The texts of the language.
    #[must_use]
    pub const fn texts(&self) -> &Texts {
        &self.texts
    }

    /// A text into which nothing is put.
    #[must_use]
    pub fn word(&self, key: &str) -> String {
        self.texts.word(key)
    }

    /// A sentence.
    #[must_use]
    pub fn say(&self, said: &SaidOnSheet) -> String {
        let with: Vec<(&str, String)> = said
            .with
            .iter()
            .map(|(name, value)| {
                let value = if name == "part" { self.part(value) } else { value.clone() };
                (name.as_str(), value)
            })
            .collect();
        let with: Vec<(&str, &str)> = with.iter().map(|(name, value)| (*name, value.as_str())).collect();
        self.texts.said(&said.key, &with)
    }

    /// The name of a part: of one that has a generic name, in this language.
    #[must_use]
    pub fn part(&self, name: &str) -> String {
        let (base, number) = match name.rsplit_once(' ') {
            Some((base, number)) if number.bytes().all(|byte| byte.is_ascii_digit()) => (base, Some(number)),
            _ => (name, None),
        };
        let Some((_, key)) = PARTS.iter().find(|(known, _)| *known == base) else { return name.to_owned() };
        let word = self.word(key);
        number.map_or_else(|| word.clone(), |number| format!("{word} {number}"))
    }

    /// What a rule, or something expected, is called.
    #[must_use]
    pub fn title(&self, rule: &str) -> String {
        self.texts.rule(rule).map_or_else(|| rule.to_owned(), |text| text.title)
    }

    /// Why it matters: the first sentences of the rule's page.
    #[must_use]
    pub fn why(&self, rule: &str) -> String {
        let why = self.texts.rule(rule).map(|text| text.why).unwrap_or_default();
        first_sentences(&why, 2)
    }

    /// A question to think about.
    #[must_use]
    pub fn question(&self, rule: &str) -> String {
        let own = format!("question-{rule}");
        let asked = self.word(&own);
        if asked != own {
            return asked;
        }
        let family = arcata_review::rule(rule).map_or("parts", |rule| rule.card.family.name());
        self.word(&format!("question-family-{family}"))
    }
}

/// The first sentences of a paragraph. An abbreviation before a small letter ends none.
fn first_sentences(text: &str, count: usize) -> String {
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ").replace('`', "");
    let mut left = count;
    for (at, _) in text.match_indices(['.', '?', '!']) {
        let rest = &text[at + 1..];
        let goes_on = rest.strip_prefix(' ').is_some_and(|rest| !rest.starts_with(char::is_uppercase));
        if rest.is_empty() || (rest.starts_with(' ') && !goes_on) {
            left -= 1;
            if left == 0 {
                return text[..=at].to_owned();
            }
        }
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sentences_end_where_they_end() {
        assert_eq!(
            first_sentences("At pizz. the bow rests. Then 0.5 s. More.", 1),
            "At pizz. the bow rests."
        );
        assert_eq!(first_sentences("One. Two. Three.", 2), "One. Two.");
    }

    #[test]
    fn parts_have_names_in_every_language() {
        assert_eq!(Words::of(Language::German).part("Violin 2"), "Violine 2");
        assert_eq!(Words::of(Language::English).part("Horn in F"), "Horn in F");
    }
}
