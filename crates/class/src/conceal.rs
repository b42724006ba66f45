//! Names that stand inside a score are kept out of pages.
//!
//! A word of a name goes wherever it stands. A word that the music or the program says, too ("Viola", "Forte", "Long"), goes
//! where it stands as a name: beside another word of the same name, behind a word such as "by" or "for", before "'s". Where it
//! stands alone nobody can tell, and it stays.

use std::collections::{BTreeMap, BTreeSet};

use arcata_score::words::is_of_music;
use arcata_xml::{Document, escape};

/// Elements of a file that say whose it is (MusicXML 4.0, `<identification>` and `<credit>`).
const SAYING_WHOSE: [&str; 7] =
    ["creator", "rights", "source", "relation", "encoder", "miscellaneous-field", "credit-words"];

/// What pages say instead.
const INSTEAD: &str = "…";

/// Rule of thumb: names of fewer letters go only where they begin with a capital; "li" and "ada" are words, too.
const SMALL: usize = 4;

/// Before a name: who made something, and for whom. In the four languages, folded.
const BEFORE_A_NAME: [&str; 24] = [
    "by",
    "for",
    "to",
    "composer",
    "lyricist",
    "arranger",
    "arr",
    "comp",
    "copyright",
    "di",
    "da",
    "per",
    "compositore",
    "autore",
    "par",
    "pour",
    "compositeur",
    "auteur",
    "von",
    "fur",
    "komponist",
    "name",
    "student",
    "c",
];

/// The names that a page must not say.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Concealed {
    /// Whole names and lines, the longest first: a name goes before its parts.
    phrases: Vec<String>,
    /// Words of names in small letters, with the names that they are of, and how sure it is that a name is meant.
    words: BTreeMap<String, NameWord>,
    /// How many names there are.
    names: usize,
}

#[derive(Clone, Debug, PartialEq, Eq)]
struct NameWord {
    /// Numbers of the names.
    of: BTreeSet<usize>,
    means: WordOfName,
}

/// What a word means where it is found.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum WordOfName {
    /// A name, if it stands as one.
    Perhaps,
    /// A name, if it begins with a capital.
    WithCapital,
    /// A name.
    Always,
}

/// A word of a text.
struct FoundWord<'t> {
    at: usize,
    text: &'t str,
    known: Option<&'t NameWord>,
}

impl FoundWord<'_> {
    fn end(&self) -> usize {
        self.at + self.text.len()
    }

    fn begins_with_a_capital(&self) -> bool {
        self.text.chars().next().is_some_and(char::is_uppercase)
    }
}

/// Whose name it is.
#[derive(Clone, Copy, PartialEq, Eq)]
enum NameIn {
    /// Of somebody in the class: every word of it is a name.
    Class,
    /// Of somebody whom the file names: capitals tell names from other words.
    Creator,
    /// A line of the file, which may say something else, too.
    Line,
}

impl Concealed {
    /// The student's name, the names of others in the class, and what a file says of whose it is.
    #[must_use]
    pub fn new<'a>(names: impl IntoIterator<Item = &'a str>, document: &Document) -> Self {
        let mut concealed = Self::of_names(names);
        for element in document.elements().filter(|element| SAYING_WHOSE.contains(&element.name())) {
            let whose = if element.name() == "creator" { NameIn::Creator } else { NameIn::Line };
            concealed.take(&element.text(), whose);
        }
        concealed.sorted()
    }

    /// Names of people alone.
    ///
    /// ```
    /// use arcata_class::Concealed;
    ///
    /// let concealed = Concealed::of_names(["Ada Li", "Viola Forte"]);
    /// assert_eq!(concealed.text("Viola Forte wrote for Ada, viola forte"), "… wrote for …, viola forte");
    /// ```
    #[must_use]
    pub fn of_names<'a>(names: impl IntoIterator<Item = &'a str>) -> Self {
        let mut concealed = Self::default();
        for name in names {
            concealed.take(name, NameIn::Class);
        }
        concealed.sorted()
    }

    fn take(&mut self, name: &str, whose: NameIn) {
        let name = name.split_whitespace().collect::<Vec<_>>().join(" ");
        // "Allegro moderato" at the head of a page names nobody.
        let mut names_somebody = whose != NameIn::Line;
        for (_, word) in words(&name) {
            let Some(means) = meaning(word, whose) else { continue };
            names_somebody |= means > WordOfName::Perhaps;
            let known = self.words.entry(word.to_lowercase());
            let known = known.or_insert(NameWord { of: BTreeSet::new(), means });
            known.of.insert(self.names);
            known.means = known.means.max(means);
        }
        self.names += 1;
        // One word by itself is looked at where it stands.
        if names_somebody && words(&name).count() > 1 {
            self.phrases.push(name);
        }
    }

    fn sorted(mut self) -> Self {
        self.phrases.sort_by(|one, other| other.len().cmp(&one.len()).then_with(|| one.cmp(other)));
        self.phrases.dedup();
        self
    }

    /// A text without the names.
    #[must_use]
    pub fn text(&self, text: &str) -> String {
        let mut text = text.to_owned();
        for phrase in &self.phrases {
            text = without(&text, phrase);
        }
        self.without_words(&text)
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
            out.push_str(&self.without_words(&text));
        }
        out
    }

    /// A text without the single words of names.
    fn without_words(&self, text: &str) -> String {
        if self.words.is_empty() {
            return text.to_owned();
        }
        let words: Vec<FoundWord<'_>> = words(text)
            .map(|(at, word)| FoundWord { at, text: word, known: self.words.get(&word.to_lowercase()) })
            .collect();
        let mut out = String::new();
        let mut end = 0;
        for (index, word) in
            words.iter().enumerate().filter(|(index, _)| stands_as_a_name(text, &words, *index))
        {
            let between = &text[end..word.at];
            // A name of several words is one gap.
            let goes_on = index > 0
                && end == words[index - 1].end()
                && out.ends_with(INSTEAD)
                && between.chars().all(is_between);
            if !goes_on {
                out.push_str(between);
                out.push_str(INSTEAD);
            }
            end = word.end();
        }
        out + &text[end..]
    }
}

/// What a word of a name means; none for what is no word.
fn meaning(word: &str, whose: NameIn) -> Option<WordOfName> {
    let letters = word.chars().count();
    let capital = word.chars().next().is_some_and(char::is_uppercase);
    let is_word = letters > 1 && word.chars().any(char::is_alphabetic);
    match whose {
        _ if !is_word => None,
        NameIn::Creator | NameIn::Line if !capital => None,
        _ if is_of_music(word) || arcata_languages::says(word) => Some(WordOfName::Perhaps),
        NameIn::Class if letters >= SMALL => Some(WordOfName::Always),
        NameIn::Class | NameIn::Creator | NameIn::Line => Some(WordOfName::WithCapital),
    }
}

/// The words of a text, and where they begin. Names of characters in markup (`&amp;`) are none.
fn words(text: &str) -> impl Iterator<Item = (usize, &str)> {
    let mut at = 0;
    text.split(|letter: char| !letter.is_alphanumeric()).filter_map(move |word| {
        let here = at;
        // What parts words may be longer than a byte.
        at += word.len() + text[here + word.len()..].chars().next().map_or(0, char::len_utf8);
        let named = text[..here].ends_with('&') && text[here + word.len()..].starts_with(';');
        (!word.is_empty() && !named).then_some((here, word))
    })
}

/// What may stand between two words of one name.
fn is_between(letter: char) -> bool {
    letter.is_whitespace() || [',', '.', '-', '\'', '’'].contains(&letter)
}

fn stands_as_a_name(text: &str, words: &[FoundWord<'_>], index: usize) -> bool {
    let word = &words[index];
    let Some(known) = word.known else { return false };
    match known.means {
        WordOfName::Always => return true,
        WordOfName::WithCapital => return word.begins_with_a_capital(),
        WordOfName::Perhaps if !word.begins_with_a_capital() => return false,
        WordOfName::Perhaps => {}
    }
    let beside = |other: Option<&FoundWord<'_>>| {
        other.is_some_and(|other| {
            let (from, to) = if other.at < word.at { (other.end(), word.at) } else { (word.end(), other.at) };
            let same = other.known.is_some_and(|other| !other.of.is_disjoint(&known.of));
            same && other.begins_with_a_capital() && text[from..to].chars().all(is_between)
        })
    };
    let before = index.checked_sub(1).map(|before| &words[before]);
    let behind = before.is_some_and(|before| {
        let said = arcata_score::words::folded_words(before.text);
        let parted = text[before.end()..word.at].contains([';', '\n']);
        !parted && said.iter().any(|said| BEFORE_A_NAME.contains(&said.as_str()))
    });
    let rest = &text[word.end()..];
    let owns = rest.starts_with("'s")
        || rest.starts_with("’s")
        || rest.starts_with("&apos;s")
        || rest.starts_with("&#39;s");
    behind
        || owns
        || text[..word.at].trim_end().ends_with('©')
        || beside(before)
        || beside(words.get(index + 1))
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
        assert_eq!(concealed.text("ODILE MARROWFEN, marrowfen"), "…");
    }

    #[test]
    fn tags_stay_whole() {
        let markup = r#"<g class="Odile"><text x="1">for Odile &amp; me</text> < 3</g>"#;
        let without = concealed().markup(markup);
        assert_eq!(without, r#"<g class="Odile"><text x="1">for … &amp; me</text> < 3</g>"#);
    }

    #[test]
    fn short_names_and_names_that_are_words_of_music() {
        let concealed = Concealed::of_names(["Ut", "Ada Li", "Viola Forte", "Grace Long", "li wei"]);
        for (text, left) in [
            ("Ut wrote this; but ut stays", "… wrote this; but ut stays"),
            ("Ada's solo, Li", "…'s solo, …"),
            ("Forte, Viola", "…"),
            ("Viola forte, then Forte", "Viola forte, then Forte"),
            ("by Viola", "by …"),
            ("© Forte 2026", "© … 2026"),
            ("für Grace", "für …"),
            ("Grace’s bar; the Grace note. Long slurs", "…’s bar; the Grace note. Long slurs"),
            ("Wei and WEI, Viola I", "… and …, Viola I"),
        ] {
            assert_eq!(concealed.text(text), left, "{text}");
        }
    }
}
