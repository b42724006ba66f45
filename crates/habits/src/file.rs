//! The file of a leader's habits, TOML: written by the program, small enough to be read.

use std::collections::BTreeMap;
use std::fmt;
use std::ops::RangeInclusive;

use arcata_bow::{Profile, Style};
use serde::Deserialize;
use toml::Spanned;

/// What is learned: what depends on direction and link. Speeds and places are mechanics and stay.
pub const LEARNED: [&str; 29] = [
    "downbeat",
    "downbeat_slurred",
    "downbeat_bar",
    "downbeat_bars",
    "downbeat_even",
    "mid_bar",
    "mid_bar_slurred",
    "half_bar",
    "beat",
    "offbeat",
    "upbeat",
    "upbeat_slurred",
    "upbeat_long",
    "flow_slurred",
    "flow_long",
    "upbeat_mid_bar",
    "entry",
    "entry_elsewhere",
    "before_rest",
    "ending",
    "hook",
    "hook_last_two",
    "hook_by_slur",
    "hook_slurs",
    "retake",
    "retake_apart",
    "retake_up",
    "reset",
    "swell",
];

/// The name that the file gives its format.
const FORMAT: &str = "arcata-habits";
/// The version that is read and written (by definition).
const VERSION: u32 = 1;
/// A learned price is at most so many times the style's, and at least that part of it (rule of thumb).
const FARTHEST: i64 = 100;
/// What a price of nothing may become, thousandths of a point (rule of thumb).
const FROM_NOTHING: i64 = 5000;

/// What a leader prices otherwise than a style does.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Habits {
    /// The style that they were learned in.
    pub style: Style,
    /// Marked strokes that they were learned from.
    pub strokes: usize,
    /// What they foresee of bars that they were not learned from.
    pub foreseen: Foreseen,
    /// The prices, thousandths of a point, by the names of a profile's `[weights]`.
    pub prices: BTreeMap<String, i64>,
}

/// What a price may be learned to be.
pub(crate) const fn measure(by_style: i64) -> RangeInclusive<i64> {
    match by_style {
        0 => 0..=FROM_NOTHING,
        by_style => by_style / FARTHEST..=by_style.saturating_mul(FARTHEST),
    }
}

/// What was foreseen of strokes that were left out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Foreseen {
    /// Strokes that were left out.
    pub strokes: usize,
    /// Of these, how many the style's own prices foresee.
    pub before: usize,
    /// How many the learned ones foresee.
    pub after: usize,
    /// Standard error of what is won, hundredths of a point.
    pub error: i64,
}

/// Why a file of habits cannot be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct HabitsError {
    /// Line, from 1.
    pub line: usize,
    /// What is wrong there and what to do.
    pub why: String,
}

impl fmt::Display for HabitsError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "line {}: {}", self.line, self.why)
    }
}

impl std::error::Error for HabitsError {}

/// What is read before anything else: the rest may be another in another version.
#[derive(Deserialize)]
struct Head {
    format: Spanned<String>,
    version: Spanned<u32>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct HabitsFile {
    #[serde(rename = "format")]
    _format: String,
    #[serde(rename = "version")]
    _version: u32,
    style: Spanned<String>,
    strokes: usize,
    foreseen: Foreseen,
    prices: BTreeMap<Spanned<String>, Spanned<i64>>,
}

impl Habits {
    /// The file.
    ///
    /// ```
    /// use arcata_bow::Style;
    /// use arcata_habits::{Foreseen, Habits};
    ///
    /// let foreseen = Foreseen { strokes: 200, before: 150, after: 170, error: 300 };
    /// let prices = [("downbeat".to_owned(), 1400)].into();
    /// let habits = Habits { style: Style::Concert, strokes: 220, foreseen, prices };
    /// assert_eq!(Habits::read(&habits.text()).unwrap(), habits);
    /// let other = habits.text().replace("version = 1", "version = 7");
    /// assert_eq!(Habits::read(&other).unwrap_err().line, 4);
    /// ```
    #[must_use]
    pub fn text(&self) -> String {
        let Foreseen { strokes, before, after, error } = self.foreseen;
        let prices: String = self.prices.iter().map(|(name, price)| format!("{name} = {price}\n")).collect();
        format!(
            "# How a leader bows, as prices of the plan (thousandths of a point): made by arcata habits learn,\n\
             # read by --habits. It holds no music and no names. `arcata habits show` says it in words.\n\
             format = \"{FORMAT}\"\nversion = {VERSION}\nstyle = \"{}\"\nstrokes = {}\n\n\
             # Strokes of bars that were left out: how many the style foresees, how many these prices do, and\n\
             # the standard error of the difference in hundredths of a point.\n\
             [foreseen]\nstrokes = {strokes}\nbefore = {before}\nafter = {after}\nerror = {error}\n\n\
             [prices]\n{prices}",
            self.style.name(),
            self.strokes,
        )
    }

    /// Reads a file.
    ///
    /// # Errors
    /// TOML that cannot be read, another format or version, a style or a price that there is none of, a price out of all
    /// measure; with the line.
    pub fn read(text: &str) -> Result<Self, HabitsError> {
        let at = |offset: usize| 1 + text.bytes().take(offset).filter(|byte| *byte == b'\n').count();
        let wrong = |offset: usize, why: String| HabitsError { line: at(offset), why };
        let broken = |error: toml::de::Error| {
            wrong(error.span().map_or(0, |span| span.start), error.message().trim().replace('\n', "; "))
        };
        let Head { format, version } = toml::from_str(text).map_err(broken)?;
        if format.get_ref() != FORMAT {
            let why = format!("the format is not \"{FORMAT}\": this is no file of arcata habits learn");
            return Err(wrong(format.span().start, why));
        }
        if *version.get_ref() != VERSION {
            let why =
                format!("version {} is not known, only version {VERSION}: learn it anew", version.get_ref());
            return Err(wrong(version.span().start, why));
        }
        let file: HabitsFile = toml::from_str(text).map_err(broken)?;
        let Some(style) = Style::named(file.style.get_ref()) else {
            let known = Style::ALL.map(Style::name).join(", ");
            let why = format!("there is no style \"{}\": {known}", file.style.get_ref());
            return Err(wrong(file.style.span().start, why));
        };
        let profile = Profile::default().in_style(style);
        let mut prices = BTreeMap::new();
        for (name, price) in file.prices {
            let offset = name.span().start;
            let (name, price) = (name.into_inner(), price.into_inner());
            let by_style = profile.weight(&name).filter(|_| LEARNED.contains(&name.as_str()));
            let Some(by_style) = by_style else {
                return Err(wrong(offset, format!("there is no price \"{name}\" that is learned")));
            };
            let measure = measure(by_style);
            if !measure.contains(&price) {
                let why = format!(
                    "{name} = {price} is out of all measure: the style {} has {by_style}, and {} to {} is read",
                    style.name(),
                    measure.start(),
                    measure.end()
                );
                return Err(wrong(offset, why));
            }
            prices.insert(name, price);
        }
        Ok(Self { style, strokes: file.strokes, foreseen: file.foreseen, prices })
    }

    /// The same player with these habits.
    ///
    /// # Errors
    /// A player whose music is bowed in another style than the habits were learned in, in words.
    pub fn put_into(&self, profile: Profile) -> Result<Profile, String> {
        if profile.style != self.style {
            return Err(format!(
                "these habits were learned in the style {}, and this is to be bowed in {}: say --style {}, or learn them in {}",
                self.style.name(),
                profile.style.name(),
                self.style.name(),
                profile.style.name()
            ));
        }
        let reason = format!("a leader's habit, learned from {} marked strokes", self.strokes);
        Ok(profile.with_prices(&self.prices, &reason))
    }
}
