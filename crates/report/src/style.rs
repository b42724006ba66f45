//! Width, colour and words of terminal text.

use arcata_languages::{Language, Saying, TradeWords, Wording};
use arcata_xml::seen;

use crate::BarWord;

/// What begins an ink.
const ESCAPE: char = '\u{1b}';

use arcata_score::places::tokens::fraction_of;
use unicode_width::UnicodeWidthStr;

/// Whether text may carry colour.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Colour {
    /// Plain characters only: files, pipes, `NO_COLOR`.
    #[default]
    Off,
    /// A terminal that shows colour.
    On,
}

/// Which characters drawings and new texts may use.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Characters {
    /// ASCII: files, pipes, terminals that do not say that they know more.
    #[default]
    Ascii,
    /// A terminal that shows UTF-8.
    Unicode,
}

/// The page that text is set on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Page {
    /// Columns.
    pub width: usize,
    /// Colour.
    pub colour: Colour,
    /// Characters.
    pub characters: Characters,
    /// What a bar is called in English.
    pub bar: BarWord,
    /// The language.
    pub language: Language,
}

impl Default for Page {
    fn default() -> Self {
        Self {
            width: 80,
            colour: Colour::Off,
            characters: Characters::Ascii,
            bar: BarWord::Bar,
            language: Language::English,
        }
    }
}

/// How a piece of text is set.
#[derive(Clone, Copy)]
pub(crate) enum Ink {
    Strong,
    Faint,
    Plain,
    Grave,
    /// A down-bow.
    Down,
    /// An up-bow.
    Up,
}

impl Page {
    /// A text for people, of which nothing reaches a terminal raw but the page's own inks: titles, names and words come from
    /// strangers. Where they hold an escape themselves there is no colour, so that none can pass for an ink.
    pub(crate) fn set(self, render: impl Fn(Self) -> String) -> String {
        let plain = render(Self { colour: Colour::Off, ..self });
        if self.colour == Colour::Off || plain.contains(ESCAPE) {
            return seen(&plain).into_owned();
        }
        let pieces: Vec<String> = render(self).split(ESCAPE).map(|piece| seen(piece).into_owned()).collect();
        pieces.join("\u{1b}")
    }

    /// In whose words the page is.
    #[must_use]
    pub fn wording(self) -> Wording {
        let words = TradeWords { bar: self.bar.word().to_owned(), ..TradeWords::default() };
        Wording { language: self.language, words }
    }

    /// A word of the page.
    pub(crate) fn word(self, key: &'static str) -> String {
        self.wording().word(key)
    }

    /// A sentence of the page.
    pub(crate) fn say(self, saying: &Saying) -> String {
        self.wording().say(saying)
    }

    /// What a bar is called over a narrow column.
    pub(crate) fn short_bar(self) -> String {
        match self.language {
            Language::English => self.bar.short().to_owned(),
            _ => self.word("column-bar"),
        }
    }

    /// Text behind a label and a colon, hanging below it.
    pub(crate) fn labelled(self, label: &'static str, indent: &str, text: &str) -> String {
        let first = format!("{indent}{}", self.say(&Saying::new("label").with("label", Saying::new(label))));
        // Fluent leaves no blank at the end of a message.
        let first = format!("{first} ");
        let rest = " ".repeat(first.width());
        self.fill(text, &first, &rest)
    }

    /// The text in an ink, plain where the page has no colour.
    pub(crate) fn ink(self, ink: Ink, text: &str) -> String {
        if self.colour == Colour::Off || text.is_empty() {
            return text.to_owned();
        }
        let code = match ink {
            Ink::Strong => "1",
            Ink::Faint => "2",
            Ink::Plain => return text.to_owned(),
            Ink::Grave => "1;4",
            Ink::Down => "33",
            Ink::Up => "36",
        };
        format!("{ESCAPE}[{code}m{text}{ESCAPE}[0m")
    }

    /// The text in the page's characters: fractions and signs written out where it has only ASCII.
    pub(crate) fn plain(self, text: &str) -> String {
        if self.characters == Characters::Unicode || text.is_ascii() {
            return text.to_owned();
        }
        let mut out = String::new();
        for letter in text.chars() {
            match fraction_of(letter) {
                Some((above, below)) => out.push_str(&format!(" {above}/{below}")),
                // Names of parts and works stay as they are.
                None => out.push(letter),
            }
        }
        out
    }

    /// Text filled to the page's width, every line after `first` indented by `rest`.
    #[must_use]
    pub fn fill(self, text: &str, first: &str, rest: &str) -> String {
        let options = textwrap::Options::new(self.width.max(40))
            .initial_indent(first)
            .subsequent_indent(rest)
            .break_words(false);
        match self.language {
            Language::English => textwrap::fill(&self.bar.said(text), options),
            _ => textwrap::fill(text, options),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_the_pages_own_inks_escape() {
        let page = Page { colour: Colour::On, ..Page::default() };
        let set = |title: &str| page.set(|page| page.ink(Ink::Strong, title));
        assert_eq!(set("Study"), "\u{1b}[1mStudy\u{1b}[0m");
        assert_eq!(set("St\u{9b}1mudy\u{202e}"), "\u{1b}[1mSt[U+009B]1mudy[U+202E]\u{1b}[0m");
        assert_eq!(set("St\u{1b}[0mudy"), "St[U+001B][0mudy");
    }
}
