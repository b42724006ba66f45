//! What is to be said, before it is said in a language.

use std::fmt;

use arcata_score::Length;

use crate::{Language, Texts, TradeWords};

/// A sentence, or a part of one, as the key of a message and what is put into it: the rules and views say what they mean, and
/// [`Texts::say`](crate::Texts::say) finds the words.
///
/// ```
/// use arcata_languages::{Argument, Language, SaidPlace, Saying, Texts, TradeWords};
///
/// let place = SaidPlace::bar("5").on_beat(arcata_score::Length::new(1, 1));
/// let saying = Saying::new("say-slur-over-rest").with("at", place);
/// let said = |language| Texts::of(language).say(&saying, &TradeWords::default());
/// assert_eq!(said(Language::English), "The slur over bar 5, beat 1 covers a rest.");
/// assert!(said(Language::German).contains("Takt 5, Schlag 1"));
/// ```
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Saying {
    pub(crate) key: &'static str,
    pub(crate) arguments: Vec<(&'static str, Argument)>,
}

/// What is put into a message.
///
/// Under its name `n` a message finds the argument as it is printed; of some it finds more:
///
/// | argument | further names |
/// |---|---|
/// | [`Argument::Whole`] | `n-word`: up to twelve in words; `n-first`: the same as a sentence begins with it |
/// | [`Argument::Place`], [`Argument::Beat`] | `n-in`: with the preposition of a place (`à la mesure 5`); `n-first`: the same as a sentence begins with it; `n-the`: with the article where the language wants one (`la mesure 5`) |
/// | [`Argument::Chain`] | `n-the`: the places in it with their articles |
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Argument {
    /// A whole number: messages choose the plural by it.
    Whole(i64),
    /// Thousandths of a number, printed with up to two places.
    Thousandths(i64),
    /// Tenths of a number, always printed with one place.
    Tenths(i64),
    /// Thousandths of a point of a penalty, always printed with two places.
    Points(i64),
    /// Microseconds, printed in seconds with one place and the unit.
    Seconds(i64),
    /// Text as it stands in the score or the file: a part's name, a printed word, a dynamic.
    Text(String),
    /// One of the cases that the message tells apart: `down`, `up`.
    Choice(&'static str),
    /// A bar, or a point in it.
    Place(SaidPlace),
    /// A beat of the bar that the sentence is about.
    Beat(Length),
    /// A bar's printed number without the word, in quotation marks where it would be misread.
    BarNumber(String),
    /// A sounding pitch, cents above the C sixty semitones below middle C.
    Pitch(i32),
    /// Another saying.
    Saying(Saying),
    /// Several, with commas between them and *and* before the last.
    List(Vec<Argument>),
    /// Several with *and* between all of them: for places, which have commas of their own.
    Chain(Vec<Argument>),
    /// Several clauses, with semicolons between them.
    Clauses(Vec<Argument>),
    /// Several, with commas between them.
    Row(Vec<Argument>),
}

/// A place as a sentence names it.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct SaidPlace {
    /// The movement's number, where the file has several.
    pub movement: Option<String>,
    /// The bar's printed number.
    pub bar: String,
    /// The beat, from 1; `None` for the bar as a whole.
    pub beat: Option<Length>,
    /// What tells several notes of the place apart, in the language of the sentence; empty where nothing has to.
    pub detail: String,
}

impl SaidPlace {
    /// A bar by its printed number.
    #[must_use]
    pub fn bar(label: &str) -> Self {
        Self { movement: None, bar: label.to_owned(), beat: None, detail: String::new() }
    }

    /// The same in a movement, where there are several.
    #[must_use]
    pub fn of_movement(self, movement: Option<&str>) -> Self {
        Self { movement: movement.map(str::to_owned), ..self }
    }

    /// A beat of the bar.
    #[must_use]
    pub fn on_beat(self, beat: Length) -> Self {
        Self { beat: Some(beat), ..self }
    }

    /// One of several notes of the place.
    #[must_use]
    pub fn told_apart_by(self, detail: String) -> Self {
        Self { detail, ..self }
    }

    /// The bar alone where the place is its first beat.
    #[must_use]
    pub fn bar_if_first(self) -> Self {
        let beat = self.beat.filter(|beat| *beat != Length::new(1, 1));
        Self { beat, ..self }
    }
}

impl Saying {
    /// A message by its key; nothing is put into it yet.
    #[must_use]
    pub const fn new(key: &'static str) -> Self {
        Self { key, arguments: Vec::new() }
    }

    /// With something put into it under a name.
    #[must_use]
    pub fn with(mut self, name: &'static str, argument: impl Into<Argument>) -> Self {
        self.arguments.push((name, argument.into()));
        self
    }

    /// With one of the cases that the message tells apart.
    #[must_use]
    pub fn choosing(self, name: &'static str, case: &'static str) -> Self {
        self.with(name, Argument::Choice(case))
    }

    /// With a text as it stands in the score.
    #[must_use]
    pub fn quoting(self, name: &'static str, text: impl Into<String>) -> Self {
        self.with(name, Argument::Text(text.into()))
    }

    /// A text that comes from elsewhere and stays as it is: what the system says, a name.
    #[must_use]
    pub fn as_it_is(text: impl Into<String>) -> Self {
        Self::new("as-it-is").quoting("text", text)
    }

    /// The key of its message.
    #[must_use]
    pub const fn key(&self) -> &'static str {
        self.key
    }
}

/// In English, with the usual words of the trade: for logs and tests. People are told by [`Wording::say`](crate::Wording::say).
impl fmt::Display for Saying {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&Texts::of(Language::English).say(self, &TradeWords::default()))
    }
}

impl From<SaidPlace> for Argument {
    fn from(place: SaidPlace) -> Self {
        Self::Place(place)
    }
}

impl From<Saying> for Argument {
    fn from(saying: Saying) -> Self {
        Self::Saying(saying)
    }
}

impl From<i64> for Argument {
    fn from(number: i64) -> Self {
        Self::Whole(number)
    }
}

impl From<u32> for Argument {
    fn from(number: u32) -> Self {
        Self::Whole(i64::from(number))
    }
}

impl From<usize> for Argument {
    fn from(number: usize) -> Self {
        Self::Whole(i64::try_from(number).unwrap_or(i64::MAX))
    }
}
