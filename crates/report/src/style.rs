//! Width and colour of terminal text.

use arcata_score::places::tokens::fraction_of;

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
}

impl Default for Page {
    fn default() -> Self {
        Self { width: 80, colour: Colour::Off, characters: Characters::Ascii }
    }
}

/// How a piece of text is set.
#[derive(Clone, Copy)]
pub(crate) enum Ink {
    Strong,
    Faint,
    Grave,
    Warm,
    Cool,
}

impl Page {
    /// The text in an ink, plain where the page has no colour.
    pub(crate) fn ink(self, ink: Ink, text: &str) -> String {
        if self.colour == Colour::Off || text.is_empty() {
            return text.to_owned();
        }
        let code = match ink {
            Ink::Strong => "1",
            Ink::Faint => "2",
            Ink::Grave => "1;31",
            Ink::Warm => "33",
            Ink::Cool => "36",
        };
        format!("\u{1b}[{code}m{text}\u{1b}[0m")
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
        textwrap::fill(text, options)
    }
}
