//! Whose words a text is in: the language, and in English whose English.

use crate::print;
use crate::{Argument, Language, SaidPlace, Saying, Texts};

/// What English players call things, one word for each in one text; the other languages have one word anyway.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TradeWords {
    /// `bar` or `measure`.
    pub bar: String,
    /// `stand` or `desk`.
    pub stand: String,
    /// `frog` or `heel`.
    pub frog: String,
    /// `tip` or `point`.
    pub tip: String,
}

impl Default for TradeWords {
    fn default() -> Self {
        let [bar, stand, frog, tip] = ["bar", "stand", "frog", "tip"].map(str::to_owned);
        Self { bar, stand, frog, tip }
    }
}

/// A language and the words of the trade in it.
///
/// ```
/// use arcata_languages::{Language, Saying, TradeWords, Wording};
///
/// let bars = Saying::new("say-bars-without-number").with("count", 3usize);
/// assert_eq!(Wording::default().say(&bars), "Three bars have no number.");
/// let american = TradeWords { bar: "measure".to_owned(), ..TradeWords::default() };
/// assert_eq!(Wording { words: american, ..Wording::default() }.say(&bars), "Three measures have no number.");
/// assert_eq!(Wording::of(Language::Italian).say(&bars), "Tre battute non hanno numero.");
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Wording {
    /// The language.
    pub language: Language,
    /// The words of the trade, in English.
    pub words: TradeWords,
}

impl Wording {
    /// A language with the usual words.
    #[must_use]
    pub fn of(language: Language) -> Self {
        Self { language, words: TradeWords::default() }
    }

    /// A saying in words.
    #[must_use]
    pub fn say(&self, saying: &Saying) -> String {
        self.texts().say(saying, &self.words)
    }

    /// What is put into a message, by itself.
    #[must_use]
    pub fn argument(&self, argument: &Argument) -> String {
        print::argument(argument, self.texts(), &self.words)
    }

    /// A bar as people say it: `bar 17`, `II, bar 17`.
    #[must_use]
    pub fn bar(&self, movement: Option<&str>, label: &str) -> String {
        self.argument(&SaidPlace::bar(label).of_movement(movement).into())
    }

    /// Bars as people say them: `bars 5-8`; `bar 5` where it is but one.
    #[must_use]
    pub fn bars(&self, movement: Option<&str>, stretch: (&str, &str)) -> String {
        print::bars(movement, stretch, self.texts(), &self.words)
    }

    /// A bar's number without the word, in quotation marks where it would be misread.
    #[must_use]
    pub fn bar_number(&self, label: &str) -> String {
        print::bar_number(label, self.texts(), &self.words)
    }

    /// A number that was printed with a point, with the mark of the language.
    #[must_use]
    pub fn decimal(&self, number: &str) -> String {
        print::with_decimal_mark(number, self.language)
    }

    /// Several in a row, with *and* before the last.
    #[must_use]
    pub fn list(&self, items: &[String]) -> String {
        print::list(items, self.texts())
    }

    /// A word, or a sentence into which nothing is put but the words of the trade.
    #[must_use]
    pub fn word(&self, key: &'static str) -> String {
        self.say(&Saying::new(key))
    }

    /// The texts of the language.
    #[must_use]
    pub fn texts(&self) -> &'static Texts {
        Texts::of(self.language)
    }
}
