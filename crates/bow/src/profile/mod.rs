//! Player profiles: every constant that shapes a result, with unit, reason, source and status.
//!
//! Three profiles are shipped. A user's own file says which one it `extends` and overrides single
//! values with bare numbers:
//!
//! ```
//! use arcata_bow::profile::{Profile, Status};
//! let profile = Profile::parse("extends = \"amateur\"\n[hair]\nviolin = 560\n").unwrap();
//! assert_eq!(profile.hair.violin.value, 560);
//! assert_eq!(profile.hair.violin.status, Status::Yours);
//! let mistake = Profile::parse("[hair]\nviolon = 560\n").unwrap_err();
//! assert_eq!((mistake.line, mistake.key.as_str()), (2, "hair.violon"));
//! ```

mod document;
mod read;
mod sections;
mod setting;
mod speeds;
mod style;

use std::collections::BTreeMap;

use arcata_score::Instrument;
use serde::Deserialize;

use crate::plan::BowReach;
use crate::{PlanSettings, RealTime, Weights};
pub use read::ProfileError;
pub use sections::{Assumed, Homes, Named, Speeds, Thresholds, Times, Words};
pub use setting::{ByInstrument, Setting, Status};
pub use speeds::SpeedTable;
pub use style::Style;

/// The constants by which one kind of player is judged.
#[derive(Clone, Debug, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Profile {
    /// Its name.
    pub name: String,
    /// Whom it describes.
    pub about: String,
    /// How the music is bowed. [`Profile::in_style`] changes it.
    #[serde(default)]
    pub style: Style,
    /// What things are called.
    pub words: Words,
    /// Usable hair, millimetres.
    pub hair: ByInstrument,
    /// Bow speeds of a violin.
    pub speed: Speeds,
    /// Bow speeds of the other instruments, percent of a violin's.
    pub scale: ByInstrument,
    /// Where strokes live.
    pub homes: Homes,
    /// Times that players need.
    pub times: Times,
    /// What is assumed where the score is silent.
    pub assumed: Assumed,
    /// Rates of strokes, strokes in 100 s.
    pub rates: Named,
    /// Thresholds of the review.
    pub thresholds: Thresholds,
    /// From nut to bridge, millimetres.
    pub strings: ByInstrument,
    /// From the first finger to the fourth without stretching, millimetres along the string.
    pub hand_close: ByInstrument,
    /// The same, stretched.
    pub hand_stretched: ByInstrument,
    /// From the thumb set on the string to the finger farthest from it, millimetres; 0 where the thumb stays
    /// behind the neck.
    pub hand_thumb: ByInstrument,
    /// From how many semitones above the open string the thumb can be set on it.
    pub thumb_from: ByInstrument,
    /// The highest note on the highest string that a part may ask for, semitones above the open string.
    pub fingerboard: ByInstrument,
    /// Weights of the planner.
    pub weights: Named,
    /// All of it as read, for the documented form.
    #[serde(skip)]
    table: toml::Table,
}

/// The profiles that come with the program.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Shipped {
    /// An experienced player.
    #[default]
    Professional,
    /// A community orchestra's player.
    Amateur,
    /// A school orchestra's player.
    Student,
}

impl Shipped {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Professional, Self::Amateur, Self::Student];

    /// The name by which a profile extends it.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Professional => "professional",
            Self::Amateur => "amateur",
            Self::Student => "student",
        }
    }

    fn text(self) -> &'static str {
        match self {
            Self::Professional => include_str!("../../profiles/professional.toml"),
            Self::Amateur => include_str!("../../profiles/amateur.toml"),
            Self::Student => include_str!("../../profiles/student.toml"),
        }
    }
}

impl Default for Profile {
    /// The professional profile.
    fn default() -> Self {
        Self::shipped(Shipped::Professional)
    }
}

impl Profile {
    /// A profile that comes with the program.
    #[must_use]
    #[expect(clippy::expect_used, reason = "the shipped files are part of the program; a test reads each")]
    pub fn shipped(which: Shipped) -> Self {
        Self::parse(which.text()).expect("shipped profiles are sound")
    }

    /// A user's profile from its text.
    ///
    /// # Errors
    /// The first thing that is not TOML, not a known setting, or not an allowed value, with its line.
    pub fn parse(text: &str) -> Result<Self, ProfileError> {
        let table = read::read(text)?;
        Self::try_from_table(table)
    }

    fn try_from_table(table: toml::Table) -> Result<Self, ProfileError> {
        let mut profile: Self = table.clone().try_into().map_err(|error: toml::de::Error| ProfileError {
            line: 1,
            column: 1,
            key: String::new(),
            message: error.message().to_owned(),
        })?;
        profile.table = table;
        let style = profile.style;
        Ok(profile.in_style(style))
    }

    /// The same player in another style: the style's prices stand in for those that are not the user's own.
    /// A profile that has been in another style than concert keeps what that one priced and this one does not:
    /// begin with a fresh one.
    #[must_use]
    pub fn in_style(mut self, style: Style) -> Self {
        self.style = style;
        self.table.insert("style".to_owned(), toml::Value::String(style.name().to_owned()));
        for (name, setting) in style.weights() {
            let Some(own) = self.weights.get_mut(&name).filter(|own| own.status != Status::Yours) else {
                continue;
            };
            let described = self.table.get_mut("weights").and_then(|weights| weights.get_mut(&name));
            if let Some(described) = described.and_then(toml::Value::as_table_mut) {
                setting.write_into(described);
            }
            *own = setting;
        }
        self
    }

    /// The same player with some of the planner's prices set anew, thousandths of a point, all for one reason. Names that are no
    /// weight are passed over.
    #[must_use]
    pub fn with_prices(mut self, prices: &BTreeMap<String, i64>, reason: &str) -> Self {
        for (name, price) in prices {
            let Some(own) = self.weights.get_mut(name) else { continue };
            own.value = *price;
            own.status = Status::Yours;
            reason.clone_into(&mut own.reason);
            let described = self.table.get_mut("weights").and_then(|weights| weights.get_mut(name));
            if let Some(described) = described.and_then(toml::Value::as_table_mut) {
                own.write_into(described);
            }
        }
        self
    }

    /// Usable hair of an instrument's bow, micrometres.
    #[must_use]
    pub fn hair_micrometres(&self, instrument: Instrument) -> i64 {
        self.hair.of(instrument).value * 1000
    }

    /// Time to lift the bow and set it down on the spot.
    #[must_use]
    pub fn lift(&self) -> RealTime {
        milliseconds(self.times.lift.value)
    }

    /// Further time to carry the bow its whole length through the air.
    #[must_use]
    pub fn carry(&self) -> RealTime {
        milliseconds(self.times.carry.value)
    }

    /// How lines of an instrument are planned: this player's weights, hair and times.
    #[must_use]
    pub fn plan_settings(&self, instrument: Instrument) -> PlanSettings {
        let mut weights = Weights::default();
        for (name, weight) in weights.named() {
            if let Some(value) = self.weight(name) {
                *weight = value;
            }
        }
        let reach = BowReach {
            hair: self.hair_micrometres(instrument),
            lift: self.lift(),
            carry: self.carry(),
            free_rest: milliseconds(self.times.free_rest.value),
        };
        PlanSettings { weights, reach, style: self.style, ..PlanSettings::default() }
    }

    /// A weight of the planner by its name.
    #[must_use]
    pub fn weight(&self, name: &str) -> Option<i64> {
        self.weights.get(name).map(|setting| setting.value)
    }

    /// A rate by its name, strokes in 100 s.
    #[must_use]
    pub fn rate(&self, name: &str) -> Option<i64> {
        self.rates.get(name).map(|setting| setting.value)
    }
}

/// Milliseconds as real time.
pub(crate) const fn milliseconds(value: i64) -> RealTime {
    RealTime::from_micros(value * 1000)
}

#[cfg(test)]
mod tests;
