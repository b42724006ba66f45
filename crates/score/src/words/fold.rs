//! Printed text cut into plain tokens: lower case, without accents, dots remembered.

/// A word of a printed text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct WordToken {
    /// Lower case, accents taken off.
    pub(crate) text: String,
    /// A full stop follows at once: the word is an abbreviation or the end of a sentence.
    pub(crate) dot: Dot,
    /// What stands between this word and the next.
    pub(crate) gap: WordGap,
    /// How it was printed.
    pub(crate) case: LetterCase,
}

/// Whether a full stop follows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Dot {
    /// Nothing.
    None,
    /// A full stop.
    Printed,
}

/// What separates two words.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum WordGap {
    /// Spaces, hyphens, brackets: a phrase may go on.
    Open,
    /// A comma and the like: a phrase ends here.
    Closed,
}

/// How a word was printed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum LetterCase {
    /// Small letters only (or no letters).
    Small,
    /// A capital somewhere.
    Capital,
}

/// Cuts a text into tokens.
pub(crate) fn tokens(text: &str) -> Vec<WordToken> {
    let mut found: Vec<WordToken> = Vec::new();
    let mut open: Option<WordToken> = None;
    for letter in text.chars() {
        let plain = fold(letter);
        if matches!(plain, Folded::Dropped) {
            continue;
        }
        if let Folded::Letters(folded) = plain {
            let token = open.get_or_insert_with(WordToken::empty);
            folded.add_to(&mut token.text);
            if letter.is_uppercase() {
                token.case = LetterCase::Capital;
            }
            continue;
        }
        if let Some(mut token) = open.take() {
            if letter == '.' {
                token.dot = Dot::Printed;
            }
            found.push(token);
        }
        if let (Some(last), ',' | ';' | ':' | '/' | '|') = (found.last_mut(), letter) {
            last.gap = WordGap::Closed;
        }
    }
    found.extend(open);
    found
}

impl WordToken {
    fn empty() -> Self {
        Self { text: String::new(), dot: Dot::None, gap: WordGap::Open, case: LetterCase::Small }
    }

    /// The whole number this token is, when it is one (`1`, `1er`, `2me`, `3fach`).
    pub(crate) fn number(&self) -> Option<u8> {
        let digits = self.text.trim_end_matches(|letter: char| letter.is_ascii_alphabetic());
        let ending = &self.text[digits.len()..];
        let ordinal =
            ["", "st", "nd", "rd", "th", "er", "ere", "re", "me", "eme", "e", "o", "a", "te", "fach"];
        (!digits.is_empty() && ordinal.contains(&ending)).then(|| digits.parse().ok()).flatten()
    }
}

enum Folded {
    /// Part of a word.
    Letters(Letters),
    /// A combining accent or an ordinal sign: belongs to the word and is not kept.
    Dropped,
    /// Between words.
    Separator,
}

enum Letters {
    Fixed(&'static str),
    Lowered(char),
}

impl Letters {
    fn add_to(self, text: &mut String) {
        match self {
            Self::Fixed(letters) => text.push_str(letters),
            Self::Lowered(letter) => text.extend(letter.to_lowercase()),
        }
    }
}

/// Accented Latin letters that occur in the four languages (and their neighbours), by base letter.
const BASES: [(&str, &str); 14] = [
    ("àáâãäåāăÀÁÂÃÄÅ", "a"),
    ("èéêëēěÈÉÊËĒĚ", "e"),
    ("ìíîïīÌÍÎÏĪ", "i"),
    ("òóôõöøōőÒÓÔÕÖØŌŐ", "o"),
    ("ùúûüūůűÙÚÛÜŪŮŰ", "u"),
    ("çćčÇĆČ", "c"),
    ("ñńňÑŃŇ", "n"),
    ("ßẞ", "ss"),
    ("œŒ", "oe"),
    ("æÆ", "ae"),
    ("ýÿÝŸ", "y"),
    ("šśŠŚ", "s"),
    ("žźŽŹ", "z"),
    ("½", "half"),
];

fn fold(letter: char) -> Folded {
    if letter.is_ascii_alphanumeric() {
        return Folded::Letters(Letters::Lowered(letter));
    }
    if matches!(letter, '\u{300}'..='\u{36f}' | 'º' | 'ª' | '°' | '\u{ad}') {
        return Folded::Dropped;
    }
    if let Some((_, base)) = BASES.iter().find(|(accented, _)| accented.contains(letter)) {
        return Folded::Letters(Letters::Fixed(base));
    }
    if letter.is_alphanumeric() {
        return Folded::Letters(Letters::Lowered(letter));
    }
    Folded::Separator
}

#[cfg(test)]
mod tests {
    use super::*;

    fn texts(text: &str) -> Vec<String> {
        tokens(text).into_iter().map(|token| token.text).collect()
    }

    #[test]
    fn accents_composed_and_decomposed_fold_alike() {
        assert_eq!(texts("Ôtez"), ["otez"]);
        assert_eq!(texts("O\u{302}tez"), ["otez"]);
        assert_eq!(texts("Mäßig, DÄMPFER"), ["massig", "dampfer"]);
    }

    #[test]
    fn dots_and_commas_are_remembered() {
        let read = tokens("arco, div. unis");
        assert_eq!(read[0].gap, WordGap::Closed);
        assert_eq!(read[1].dot, Dot::Printed);
        assert_eq!(read[2].dot, Dot::None);
        assert_eq!(texts("D.C."), ["d", "c"]);
        assert_eq!(texts("punta d’arco"), ["punta", "d", "arco"]);
    }

    #[test]
    fn numbers_with_ordinal_endings_are_numbers() {
        let numbers: Vec<_> =
            tokens("1 1º 1er 2me 12. 3fach Pult IV 999 q165").iter().map(WordToken::number).collect();
        assert_eq!(numbers, [Some(1), Some(1), Some(1), Some(2), Some(12), Some(3), None, None, None, None]);
    }

    #[test]
    fn empty_and_odd_texts_give_no_tokens() {
        assert!(tokens("").is_empty());
        assert!(tokens(" .,;\n—(♯)").is_empty());
    }
}
