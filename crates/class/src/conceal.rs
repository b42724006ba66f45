//! Names that stand inside a score are kept out of pages.

use std::collections::BTreeSet;

use arcata_xml::{Document, escape};

/// Elements of a file that say whose it is (MusicXML 4.0, `<identification>` and `<credit>`).
const SAYING_WHOSE: [&str; 7] =
    ["creator", "rights", "source", "relation", "encoder", "miscellaneous-field", "credit-words"];

/// What pages say instead.
const INSTEAD: &str = "…";

/// Words shorter than this are too common to be told from words of the music.
const SHORTEST: usize = 4;

/// Words of music that are names, too: where they stand in a score they are the music's.
const OF_MUSIC: [&str; 14] = [
    "Viola",
    "Violin",
    "Violino",
    "Cello",
    "Violoncello",
    "Bass",
    "Double",
    "String",
    "Strings",
    "Quartet",
    "Solo",
    "Allegro",
    "Grace",
    "Mark",
];

/// The names that a page must not say.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Concealed {
    /// The longest first: a name goes before its parts.
    phrases: Vec<String>,
}

impl Concealed {
    /// The student's name, the names of others in the class, and what a file says of whose it is.
    #[must_use]
    pub fn new<'a>(names: impl IntoIterator<Item = &'a str>, document: &Document) -> Self {
        let mut phrases: BTreeSet<String> = BTreeSet::new();
        let mut take = |text: &str| {
            let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
            let words = text.split(|letter: char| !letter.is_alphanumeric());
            let is_name = |word: &&str| {
                word.chars().count() >= SHORTEST
                    && word.chars().next().is_some_and(char::is_uppercase)
                    && !OF_MUSIC.contains(word)
            };
            phrases.extend(words.filter(is_name).map(str::to_owned));
            if text.chars().count() >= SHORTEST && !OF_MUSIC.contains(&text.as_str()) {
                phrases.insert(text);
            }
        };
        names.into_iter().for_each(&mut take);
        for element in document.elements().filter(|element| SAYING_WHOSE.contains(&element.name())) {
            take(&element.text());
        }
        let mut phrases: Vec<String> = phrases.into_iter().collect();
        phrases.sort_by_key(|phrase| std::cmp::Reverse(phrase.len()));
        Self { phrases }
    }

    /// A text without the names.
    #[must_use]
    pub fn text(&self, text: &str) -> String {
        let mut text = text.to_owned();
        for phrase in &self.phrases {
            text = without(&text, phrase);
        }
        text
    }

    /// Markup whose texts are without the names; tags and their attributes stay.
    #[must_use]
    pub fn markup(&self, markup: &str) -> String {
        let mut out = String::with_capacity(markup.len());
        for (index, piece) in markup.split('<').enumerate() {
            if index > 0 {
                out.push('<');
            }
            let (tag, text) =
                if index == 0 { ("", piece) } else { piece.split_once('>').unwrap_or((piece, "")) };
            out.push_str(tag);
            if index > 0 && piece.contains('>') {
                out.push('>');
            }
            if text.trim().is_empty() {
                out.push_str(text);
                continue;
            }
            let mut text = text.to_owned();
            for phrase in &self.phrases {
                text = without(&text, &escape(phrase));
            }
            out.push_str(&text);
        }
        out
    }
}

/// A text without a phrase, where the phrase stands as whole words.
fn without(text: &str, phrase: &str) -> String {
    let mut out = String::new();
    let mut rest = text;
    while let Some(at) = rest.find(phrase) {
        let (before, from) = rest.split_at(at);
        let after = &from[phrase.len()..];
        let inside = before.ends_with(char::is_alphanumeric) || after.starts_with(char::is_alphanumeric);
        out.push_str(before);
        out.push_str(if inside { phrase } else { INSTEAD });
        rest = after;
    }
    out + rest
}

#[cfg(test)]
mod tests {
    use arcata_xml::Limits;

    use super::*;

    fn concealed() -> Concealed {
        let score = r#"<score-partwise><identification><creator type="composer">Pim Sandrake</creator>
            <rights>(c) P. Sandrake &amp; sons</rights></identification><part-list/></score-partwise>"#;
        let document = Document::parse(score.as_bytes().to_vec(), &Limits::default()).expect("a document");
        Concealed::new(["Odile Marrowfen"], &document)
    }

    #[test]
    fn names_go_and_words_stay() {
        let concealed = concealed();
        assert_eq!(concealed.text("Pim Sandrake's page, as Odile says"), "…'s page, as … says");
        assert_eq!(concealed.text("Sandrakeville and the viola"), "Sandrakeville and the viola");
        assert_eq!(concealed.text("(c) P. Sandrake & sons"), "…");
    }

    #[test]
    fn tags_stay_whole() {
        let markup = r#"<g class="Odile"><text x="1">for Odile &amp; me</text> < 3</g>"#;
        let without = concealed().markup(markup);
        assert_eq!(without, r#"<g class="Odile"><text x="1">for … &amp; me</text> < 3</g>"#);
    }
}
