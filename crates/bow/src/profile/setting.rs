//! One constant with everything a sceptic may ask about it.

use serde::Deserialize;

/// A constant that shapes a result, with its unit, reason, source and status.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Setting<T> {
    /// The value, in `unit`.
    pub value: T,
    /// What one of it is.
    pub unit: String,
    /// Why it is there and why this large.
    pub reason: String,
    /// Where it comes from.
    pub source: String,
    /// How sure it is.
    pub status: Status,
}

impl Setting<i64> {
    /// Puts this setting in the place of another in a profile's table.
    pub(super) fn write_into(&self, table: &mut toml::Table) {
        let texts = [("unit", &self.unit), ("reason", &self.reason), ("source", &self.source)]
            .map(|(key, text)| (key, text.clone()));
        for (key, text) in texts.into_iter().chain([("status", self.status.name().to_owned())]) {
            table.insert(key.to_owned(), toml::Value::String(text));
        }
        table.insert("value".to_owned(), toml::Value::Integer(self.value));
    }
}

/// How a value was come by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Status {
    /// Read in the source.
    Seen,
    /// Counted in open data.
    Counted,
    /// Arithmetic on seen or counted values.
    Derived,
    /// From memory or by rule of thumb.
    Default,
    /// Set in a user's own profile.
    Yours,
}

impl Status {
    /// As it stands in a profile.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Seen => "seen",
            Self::Counted => "counted",
            Self::Derived => "derived",
            Self::Default => "default",
            Self::Yours => "yours",
        }
    }
}

/// One value for each instrument.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ByInstrument {
    /// Violin.
    pub violin: Setting<i64>,
    /// Viola.
    pub viola: Setting<i64>,
    /// Cello.
    pub cello: Setting<i64>,
    /// Double bass.
    pub bass: Setting<i64>,
    /// Any other bowed string instrument; also the answer for what is not bowed at all.
    pub other_bowed: Setting<i64>,
}

impl ByInstrument {
    /// The setting of an instrument.
    #[must_use]
    pub fn of(&self, instrument: arcata_score::Instrument) -> &Setting<i64> {
        use arcata_score::Instrument;
        match instrument {
            Instrument::Violin => &self.violin,
            Instrument::Viola => &self.viola,
            Instrument::Cello => &self.cello,
            Instrument::Bass => &self.bass,
            Instrument::OtherBowed | Instrument::NotBowed => &self.other_bowed,
        }
    }
}
