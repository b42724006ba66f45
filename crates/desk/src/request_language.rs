//! The language that a page asks for.

use std::str::FromStr as _;

use arcata_languages::{Language, Wording};
use arcata_review::trade_words;

use crate::desk::Desk;

/// The first language of the request's `Accept-Language` that there are texts in; English where there is none.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct RequestLanguage(pub(crate) Language);

impl RequestLanguage {
    /// In whose words a desk is spoken of.
    pub(crate) fn wording(self, desk: &Desk) -> Wording {
        Wording { language: self.0, words: trade_words(desk.base.profile()) }
    }

    /// As the header of a request says.
    pub(crate) fn of(header: &str) -> Self {
        let wishes = header.split(',').filter_map(|wish| wish.split(';').next());
        Self(wishes.map(str::trim).find_map(|wish| Language::from_str(wish).ok()).unwrap_or_default())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_language_that_is_known_is_spoken() {
        assert_eq!(RequestLanguage::of("pt, fr-CH;q=0.9, en;q=0.8"), RequestLanguage(Language::French));
        assert_eq!(RequestLanguage::of("*"), RequestLanguage(Language::English));
        assert_eq!(RequestLanguage::of(""), RequestLanguage(Language::English));
    }
}
