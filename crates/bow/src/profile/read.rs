//! Reading a profile: the user's values laid over the profile it extends.

use std::fmt;
use std::ops::Range;

use toml::Spanned;
use toml::de::{DeTable, DeValue};
use toml::{Table, Value};

use super::{Shipped, Style};

/// Why a profile cannot be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ProfileError {
    /// Line in the profile, from 1.
    pub line: usize,
    /// Column, from 1.
    pub column: usize,
    /// The key, with its section; empty when the text is not TOML at all.
    pub key: String,
    /// What is wrong and what is allowed.
    pub message: String,
}

impl fmt::Display for ProfileError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "line {}, column {}: ", self.line, self.column)?;
        if !self.key.is_empty() {
            write!(f, "{}: ", self.key)?;
        }
        f.write_str(&self.message)
    }
}

impl std::error::Error for ProfileError {}

/// Keys that are plain text at the top of a profile.
const TOP_TEXTS: [&str; 4] = ["extends", "name", "about", "style"];

/// What one setting may carry besides its value.
const SETTING_KEYS: [&str; 5] = ["value", "unit", "reason", "source", "status"];

/// The merged table of a profile: complete, every setting with its five entries.
pub(super) fn read(text: &str) -> Result<Table, ProfileError> {
    let source = ProfileSource { text };
    let own = DeTable::parse(text).map_err(|error| source.syntax(&error))?;
    let own = own.get_ref();
    let base = match own.get("extends") {
        Some(value) => read(source.extended(value)?.text())?,
        // The professional profile is the root: it stands alone and gives every setting in full.
        None if text == Shipped::Professional.text() => return complete(text, &source),
        None => read(Shipped::Professional.text())?,
    };
    source.lay_over(base, own)
}

fn complete(text: &str, source: &ProfileSource<'_>) -> Result<Table, ProfileError> {
    toml::from_str(text).map_err(|error| source.syntax(&error))
}

struct ProfileSource<'a> {
    text: &'a str,
}

impl ProfileSource<'_> {
    fn error(&self, span: Range<usize>, key: &str, message: String) -> ProfileError {
        let before = self.text.get(..span.start.min(self.text.len())).unwrap_or_default();
        let line = before.matches('\n').count() + 1;
        let column = before.rsplit('\n').next().unwrap_or_default().chars().count() + 1;
        ProfileError { line, column, key: key.to_owned(), message }
    }

    fn syntax(&self, error: &toml::de::Error) -> ProfileError {
        self.error(error.span().unwrap_or(0..0), "", error.message().to_owned())
    }

    fn extended(&self, value: &Spanned<DeValue<'_>>) -> Result<Shipped, ProfileError> {
        let name = value.get_ref().as_str().unwrap_or_default();
        Shipped::ALL.into_iter().find(|shipped| shipped.name() == name).ok_or_else(|| {
            let names = Shipped::ALL.map(Shipped::name).join(", ");
            self.error(value.span(), "extends", format!("no such profile; allowed are {names}"))
        })
    }

    fn lay_over(&self, mut base: Table, own: &DeTable<'_>) -> Result<Table, ProfileError> {
        for (key, value) in own {
            let name = key.get_ref().as_ref();
            if TOP_TEXTS.contains(&name) {
                let text = value.get_ref().as_str().ok_or_else(|| {
                    self.error(value.span(), name, "text in quotation marks is expected".to_owned())
                })?;
                if name == "style" && Style::named(text).is_none() {
                    let names = Style::ALL.map(Style::name).join(", ");
                    return Err(self.error(
                        value.span(),
                        name,
                        format!("no such style; allowed are {names}"),
                    ));
                }
                if name != "extends" {
                    base.insert(name.to_owned(), Value::String(text.to_owned()));
                }
                continue;
            }
            let Some(Value::Table(section)) = base.get_mut(name) else {
                let allowed = sections(&base).join(", ");
                return Err(self.error(key.span(), name, format!("no such section; allowed are {allowed}")));
            };
            let entries = value
                .get_ref()
                .as_table()
                .ok_or_else(|| self.error(value.span(), name, format!("a section is expected: [{name}]")))?;
            self.lay_section(name, section, entries)?;
        }
        Ok(base)
    }

    fn lay_section(&self, name: &str, section: &mut Table, own: &DeTable<'_>) -> Result<(), ProfileError> {
        for (key, value) in own {
            let full = format!("{name}.{}", key.get_ref());
            let Some(Value::Table(setting)) = section.get_mut(key.get_ref().as_ref()) else {
                let allowed = section.keys().cloned().collect::<Vec<_>>().join(", ");
                return Err(self.error(key.span(), &full, format!("no such setting; allowed are {allowed}")));
            };
            match value.get_ref().as_table() {
                Some(parts) => self.lay_setting(&full, setting, parts)?,
                None => {
                    let bare = self.value(&full, setting, value)?;
                    setting.insert("value".to_owned(), bare);
                    setting.insert("source".to_owned(), Value::String("your profile".to_owned()));
                    setting.insert("status".to_owned(), Value::String("yours".to_owned()));
                }
            }
        }
        Ok(())
    }

    /// A setting written out: its value and, where the user knows better, its reason and source.
    fn lay_setting(&self, full: &str, setting: &mut Table, own: &DeTable<'_>) -> Result<(), ProfileError> {
        for (key, value) in own {
            let name = key.get_ref().as_ref();
            let part = format!("{full}.{name}");
            let laid = match name {
                "value" => self.value(full, setting, value)?,
                "unit" if value.get_ref().as_str() != setting.get("unit").and_then(Value::as_str) => {
                    let unit = setting.get("unit").and_then(Value::as_str).unwrap_or_default();
                    return Err(self.error(value.span(), &part, format!("the unit is {unit}")));
                }
                "status" => self.status(&part, value)?,
                _ if SETTING_KEYS.contains(&name) => match value.get_ref().as_str() {
                    Some(text) => Value::String(text.to_owned()),
                    None => {
                        let message = "text in quotation marks is expected".to_owned();
                        return Err(self.error(value.span(), &part, message));
                    }
                },
                _ => {
                    let allowed = SETTING_KEYS.join(", ");
                    return Err(self.error(key.span(), &part, format!("allowed are {allowed}")));
                }
            };
            setting.insert(name.to_owned(), laid);
        }
        if own.get("status").is_none() {
            setting.insert("status".to_owned(), Value::String("yours".to_owned()));
        }
        Ok(())
    }

    fn status(&self, part: &str, value: &Spanned<DeValue<'_>>) -> Result<Value, ProfileError> {
        const ALLOWED: [&str; 5] = ["seen", "counted", "derived", "default", "yours"];
        match value.get_ref().as_str() {
            Some(text) if ALLOWED.contains(&text) => Ok(Value::String(text.to_owned())),
            _ => Err(self.error(value.span(), part, format!("allowed are {}", ALLOWED.join(", ")))),
        }
    }

    /// A new value of the shape and within the range that the setting has.
    fn value(&self, key: &str, setting: &Table, new: &Spanned<DeValue<'_>>) -> Result<Value, ProfileError> {
        let unit = setting.get("unit").and_then(Value::as_str).unwrap_or_default();
        let wrong = |expected: String| Err(self.error(new.span(), key, expected));
        match setting.get("value") {
            Some(Value::String(_)) => match new.get_ref().as_str() {
                Some(word) if !word.trim().is_empty() => Ok(Value::String(word.to_owned())),
                _ => wrong("a word in quotation marks is expected".to_owned()),
            },
            Some(Value::Array(old)) => {
                let numbers: Option<Vec<i64>> =
                    new.get_ref().as_array().map(|array| array.iter().filter_map(whole).collect());
                let (low, high) = range(unit);
                match numbers {
                    Some(list)
                        if list.len() == old.len()
                            && list.is_sorted()
                            && list.iter().all(|number| (low..=high).contains(number)) =>
                    {
                        Ok(Value::Array(list.into_iter().map(Value::Integer).collect()))
                    }
                    _ => wrong(format!(
                        "{} whole numbers from small to large are expected, from {low} to {high} ({unit})",
                        old.len()
                    )),
                }
            }
            _ => {
                let (low, high) = range(unit);
                match whole(new) {
                    Some(number) if (low..=high).contains(&number) => Ok(Value::Integer(number)),
                    _ => wrong(format!("a whole number from {low} to {high} is expected ({unit})")),
                }
            }
        }
    }
}

fn whole(value: &Spanned<DeValue<'_>>) -> Option<i64> {
    let integer = value.get_ref().as_integer()?;
    i64::from_str_radix(&integer.as_str().replace('_', ""), integer.radix()).ok()
}

fn sections(base: &Table) -> Vec<&str> {
    base.iter().filter(|(_, value)| value.is_table()).map(|(key, _)| key.as_str()).collect()
}

/// What numbers make sense in a unit: wide enough for any player, narrow enough to catch a slip of
/// unit, and never zero where a value divides.
fn range(unit: &str) -> (i64, i64) {
    match unit {
        "mm" => (50, 1000),
        "mm of string" => (100, 2000),
        // Nothing where the thumb stays behind the neck.
        "mm along the string" => (0, 500),
        "semitones" => (0, 60),
        "cm/s" => (1, 500),
        "ms" => (0, 60_000),
        "%" => (0, 1000),
        "% of the slowest bow" => (10, 10_000),
        "% of the tempo" => (10, 1000),
        "thousandths of the hair" => (0, 1000),
        "quarters a minute" => (10, 1000),
        "bars" => (1, 1000),
        unit if unit.starts_with("loudness") => (0, 800),
        unit if unit.ends_with("in 100 s") => (1, 10_000),
        _ => (0, 1_000_000),
    }
}
