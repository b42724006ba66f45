//! The table made ready for matching: every phrase spelt out, found by its first word.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use super::fold::{Dot, WordGap, WordToken};
use super::table::{self, Sense, When};

/// One way of printing one entry of the table.
pub(crate) struct Phrase {
    words: Vec<Word>,
    pub(crate) senses: &'static [Sense],
    pub(crate) when: When,
}

#[derive(Clone, PartialEq, Eq, PartialOrd, Ord)]
enum Word {
    /// This word, with or without a full stop.
    Plain(String),
    /// This word with a full stop: without one it means something else.
    Dotted(String),
    /// Any small whole number.
    Number,
}

/// All phrases, longest first; those that begin with a number stand under `#`.
static PHRASES: LazyLock<BTreeMap<String, Vec<Phrase>>> = LazyLock::new(|| {
    let mut by_first: BTreeMap<String, Vec<Phrase>> = BTreeMap::new();
    for entry in table::entries() {
        for words in entry.phrases.iter().flat_map(|pattern| spell_out(pattern)) {
            let Some(first) = words.first().map(Word::key) else { continue };
            by_first.entry(first).or_default().push(Phrase { words, senses: entry.senses, when: entry.when });
        }
    }
    for phrases in by_first.values_mut() {
        // Among equals a condition or a dotted spelling is the more exact; the sort is stable, so table
        // order decides last.
        phrases.sort_by_key(|phrase| {
            let dotted = phrase.words.iter().filter(|word| matches!(word, Word::Dotted(_))).count();
            std::cmp::Reverse((phrase.words.len(), dotted, phrase.when != When::Anywhere))
        });
    }
    by_first
});

/// The phrases that fit at the head of `tokens`, longest first, each with its number of tokens.
pub(crate) fn fitting(tokens: &[WordToken]) -> impl Iterator<Item = (&'static Phrase, usize)> {
    let by_word = tokens.first().and_then(|token| PHRASES.get(token.text.as_str()));
    let by_number = tokens.first().filter(|token| token.number().is_some()).and_then(|_| PHRASES.get("#"));
    by_word
        .into_iter()
        .chain(by_number)
        .flatten()
        .filter(|phrase| phrase.fits(tokens))
        .map(|phrase| (phrase, phrase.words.len()))
}

impl Phrase {
    fn fits(&self, tokens: &[WordToken]) -> bool {
        let count = self.words.len();
        tokens.len() >= count
            && self.words.iter().zip(tokens).all(|(word, token)| word.fits(token))
            && tokens[..count - 1].iter().all(|token| token.gap == WordGap::Open)
    }
}

impl Word {
    fn read(word: &str) -> Self {
        match word.strip_suffix('.') {
            Some(stem) => Self::Dotted(stem.to_owned()),
            None if word == "#" => Self::Number,
            None => Self::Plain(word.to_owned()),
        }
    }

    fn key(&self) -> String {
        match self {
            Self::Plain(text) | Self::Dotted(text) => text.clone(),
            Self::Number => "#".to_owned(),
        }
    }

    fn fits(&self, token: &WordToken) -> bool {
        match self {
            Self::Plain(text) => *text == token.text,
            Self::Dotted(text) => *text == token.text && token.dot == Dot::Printed,
            Self::Number => token.number().is_some(),
        }
    }
}

/// `"con/c. sord/sordino"` stands for four spellings, `"la?"` may be left out.
fn spell_out(pattern: &str) -> Vec<Vec<Word>> {
    let mut spellings = vec![Vec::new()];
    for place in pattern.split(' ') {
        let (choices, optional) = match place.strip_suffix('?') {
            Some(choices) => (choices, true),
            None => (place, false),
        };
        let mut longer = Vec::new();
        for spelling in &spellings {
            for choice in choices.split('/') {
                let mut next: Vec<Word> = spelling.clone();
                next.push(Word::read(choice));
                longer.push(next);
            }
            if optional {
                longer.push(spelling.clone());
            }
        }
        spellings = longer;
    }
    spellings
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;
    use crate::words::tokens;

    #[test]
    fn patterns_spell_out() {
        assert_eq!(spell_out("a/b c").len(), 2);
        assert_eq!(spell_out("otez la/les? sourd/sourdine").len(), 6);
    }

    /// A phrase with capitals, accents or punctuation could never match a folded token.
    #[test]
    fn every_phrase_is_written_as_text_folds() {
        for entry in table::entries() {
            for pattern in entry.phrases {
                for word in pattern.split(['/', ' ']) {
                    let stem = word.trim_end_matches('?').trim_end_matches('.');
                    let folded = tokens(stem);
                    assert!(
                        stem == "#" || (folded.len() == 1 && folded[0].text == stem),
                        "{word:?} in {pattern:?} of the table does not fold to itself"
                    );
                }
            }
        }
    }

    #[test]
    fn no_phrase_stands_in_the_table_twice_under_one_condition() {
        let mut seen = BTreeSet::new();
        let mut twice = Vec::new();
        for entry in table::entries() {
            for pattern in entry.phrases {
                for words in spell_out(pattern) {
                    if !seen.insert((words, format!("{:?}", entry.when))) {
                        twice.push(*pattern);
                    }
                }
            }
        }
        assert!(twice.is_empty(), "in the table twice: {twice:?}");
    }
}
