//! House profiles: paper, staff, bar numbers, heads of parts.
//!
//! Houses disagree, so all of it is settings. The shipped profile says for each value where it comes from; a
//! user's file gives only what is to differ, as bare values.

use std::fmt::Write as _;

use arcata_bow::RealTime;
use arcata_bow::profile::Setting;
use serde::Deserialize;
use toml::{Table, Value};

const SHIPPED: &str = include_str!("house.toml");

/// A whole number in the unit that the setting names.
pub(crate) type Number = Setting<i64>;
/// One of the words that the setting names.
pub(crate) type HouseChoice = Setting<String>;

/// How parts look in one house.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct House {
    /// What it is called.
    pub(crate) name: String,
    /// In a sentence.
    pub(crate) about: String,
    /// Size and margins.
    pub(crate) paper: PaperSettings,
    /// The staff.
    pub(crate) staff: StaffSettings,
    /// How pages are filled and turned.
    pub(crate) pages: PageSettings,
    /// Where and how movements begin.
    pub(crate) movements: MovementSettings,
    /// Bar numbers.
    pub(crate) bars: BarSettings,
    /// Rests over several bars.
    pub(crate) rests: RestSettings,
    /// What stands above the music.
    pub(crate) heads: HeadSettings,
    /// What files are called.
    pub(crate) files: FileSettings,
}

/// Size and margins.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct PaperSettings {
    pub(crate) width: Number,
    pub(crate) height: Number,
    pub(crate) sides: Number,
    pub(crate) head: Number,
    pub(crate) foot: Number,
    pub(crate) bleed: Number,
}

/// The staff.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct StaffSettings {
    pub(crate) height: Number,
    pub(crate) smallest: Number,
    pub(crate) between: Number,
    pub(crate) apart: Number,
}

/// How pages are filled and turned.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct PageSettings {
    pub(crate) first: HouseChoice,
    pub(crate) systems_first: Number,
    pub(crate) systems: Number,
    pub(crate) turn: Number,
    pub(crate) turn_words: HouseChoice,
    pub(crate) blank: HouseChoice,
    pub(crate) fold_outs: HouseChoice,
}

/// Where and how movements begin.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct MovementSettings {
    pub(crate) start: HouseChoice,
    pub(crate) indent: Number,
    pub(crate) pause: Number,
}

/// Bar numbers.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct BarSettings {
    pub(crate) numbers: HouseChoice,
}

/// Rests over several bars.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct RestSettings {
    pub(crate) shortest: Number,
    pub(crate) cue: Number,
    pub(crate) cue_bars: Number,
}

/// What stands above the music.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct HeadSettings {
    pub(crate) title: HouseChoice,
    pub(crate) composer: HouseChoice,
    pub(crate) page_numbers: HouseChoice,
}

/// What files are called.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct FileSettings {
    pub(crate) name: HouseChoice,
}

/// Why a house profile cannot be read: the key and what is expected there.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct HouseError(String);

impl std::fmt::Display for HouseError {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        out.write_str(&self.0)
    }
}

impl std::error::Error for HouseError {}

impl Default for House {
    #[expect(clippy::expect_used, reason = "a test reads the shipped profile")]
    fn default() -> Self {
        Self::of(shipped()).expect("the shipped house profile is whole")
    }
}

impl House {
    /// Reads a user's profile: what it does not say is as shipped.
    ///
    /// ```
    /// use arcata_engrave::House;
    /// let house = House::parse("name = \"Eight\"\n[staff]\nheight = 80\n")?;
    /// assert_eq!(house.staff_height(), 8.0);
    /// let wrong = House::parse("[staff]\nheight = 8\n").unwrap_err().to_string();
    /// assert!(wrong.contains("staff.height") && wrong.contains("from 40 to 120"));
    /// # Ok::<(), arcata_engrave::HouseError>(())
    /// ```
    ///
    /// # Errors
    /// Text that is no TOML, a key that no house profile has, a value of another kind or out of range.
    pub fn parse(text: &str) -> Result<Self, HouseError> {
        let own: Table = text.parse().map_err(|error: toml::de::Error| HouseError(error.to_string()))?;
        let staff = own.get("staff").and_then(Value::as_table);
        let means_it =
            staff.is_some_and(|staff| staff.contains_key("height") && !staff.contains_key("smallest"));
        let mut table = shipped();
        for (key, value) in own {
            lay(&mut table, &key, value)?;
        }
        let mut house = Self::of(table)?;
        // Who asks for a staff of 9 mm has a reason: it does not shrink unless they say how far.
        if means_it {
            house.staff.smallest.value = house.staff.height.value;
        }
        house.check_room()?;
        Ok(house)
    }

    /// What it is called.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// From the first line of a staff to the fifth, mm.
    #[must_use]
    pub fn staff_height(&self) -> f64 {
        super::millimetres(self.staff.height.value)
    }

    /// Width and height of the paper, tenths of a millimetre.
    #[must_use]
    pub fn paper_size(&self) -> (i64, i64) {
        (self.paper.width.value, self.paper.height.value)
    }

    /// What is printed beyond the edge of the paper and cut off, mm.
    #[must_use]
    pub fn bleed(&self) -> f64 {
        super::millimetres(self.paper.bleed.value)
    }

    /// The pattern of the names of files: `{number}`, `{part}`, `{title}` and `{composer}` stand for what a part has.
    #[must_use]
    pub fn file_name_pattern(&self) -> &str {
        &self.files.name.value
    }

    /// Rest that a page turn needs.
    #[must_use]
    pub fn turn(&self) -> RealTime {
        RealTime::from_micros(self.pages.turn.value * 1000)
    }

    fn of(table: Table) -> Result<Self, HouseError> {
        Value::Table(table).try_into().map_err(|error: toml::de::Error| HouseError(error.to_string()))
    }

    fn check_room(&self) -> Result<(), HouseError> {
        let paper = &self.paper;
        let wide = paper.width.value - 2 * paper.sides.value;
        let high = paper.height.value - paper.head.value - paper.foot.value;
        let staff = self.staff.height.value;
        if wide < 10 * staff || high < 8 * staff {
            return Err(HouseError(format!(
                "paper: the margins leave {} by {} mm, too little for a staff of {} mm; at least 10 by 8 staff \
                 heights are needed",
                tenths(wide),
                tenths(high),
                tenths(staff)
            )));
        }
        Ok(())
    }

    /// The page of the manual: every setting with its source.
    #[must_use]
    pub fn manual() -> String {
        let mut text = String::from(
            "# House profile\n\nMade from `crates/engrave/src/booklet/house.toml`. Lengths are tenths of a millimetre.\n\n\
             `arcata parts --house FILE` takes a file with what is to differ, as bare values:\n\n\
             ```toml\nname = \"Eight millimetres\"\n[staff]\nheight = 80\n[bars]\nnumbers = \"bars\"\n```\n",
        );
        for (section, value) in shipped().iter().filter(|(_, value)| value.is_table()) {
            let _ = write!(
                text,
                "\n## `[{section}]`\n\n| setting | value | unit | reason | source | status |\n|---|---|---|---|---|---|\n"
            );
            for (key, setting) in value.as_table().into_iter().flatten() {
                let cell = |name: &str| match setting.get(name) {
                    Some(Value::String(text)) => text.clone(),
                    Some(other) => other.to_string(),
                    None => String::new(),
                };
                let cells = ["value", "unit", "reason", "source", "status"].map(cell);
                let _ = writeln!(text, "| `{key}` | {} |", cells.join(" | "));
            }
        }
        text
    }
}

fn shipped() -> Table {
    SHIPPED.parse().unwrap_or_default()
}

/// Tenths of a millimetre for people.
fn tenths(value: i64) -> String {
    format!("{}.{}", value / 10, value.rem_euclid(10))
}

/// Lays one entry of a user's file over the table.
fn lay(table: &mut Table, key: &str, value: Value) -> Result<(), HouseError> {
    let known = || table.keys().cloned().collect::<Vec<_>>().join(", ");
    let unknown = || HouseError(format!("{key}: there is no such key; allowed are {}", known()));
    match (table.get(key).ok_or_else(unknown)?, value) {
        (Value::String(_), Value::String(text)) => {
            table.insert(key.to_owned(), Value::String(text));
            Ok(())
        }
        (Value::String(_), _) => Err(HouseError(format!("{key}: text in quotation marks is expected"))),
        (_, Value::Table(section)) => {
            let Some(Value::Table(settings)) = table.get_mut(key) else { return Ok(()) };
            section.into_iter().try_for_each(|(name, value)| set(settings, key, &name, value))
        }
        _ => Err(HouseError(format!("{key}: a section in square brackets is expected"))),
    }
}

fn set(settings: &mut Table, section: &str, name: &str, value: Value) -> Result<(), HouseError> {
    let known = settings.keys().cloned().collect::<Vec<_>>().join(", ");
    let Some(Value::Table(setting)) = settings.get_mut(name) else {
        return Err(HouseError(format!("{section}.{name}: there is no such setting; allowed are {known}")));
    };
    let text = |key: &str| setting.get(key).and_then(Value::as_str).unwrap_or_default();
    let unit = text("unit");
    let is_fitting = match (&value, setting.get("value")) {
        (Value::Integer(number), Some(Value::Integer(_))) => {
            let (low, high) = range(section, name);
            (low..=high).contains(number)
        }
        (Value::String(pattern), Some(Value::String(_))) if section == "files" => is_pattern(pattern),
        (Value::String(word), Some(Value::String(_))) => choices(unit).any(|choice| choice == word),
        _ => false,
    };
    if !is_fitting {
        let expected = if section == "files" {
            format!("{unit}, with {{number}} in it,")
        } else if setting.get("value").is_some_and(Value::is_str) {
            format!("one of these in quotation marks: {unit}")
        } else {
            let (low, high) = range(section, name);
            format!("a whole number from {low} to {high} ({unit})")
        };
        return Err(HouseError(format!("{section}.{name}: {expected} is expected")));
    }
    setting.insert("value".to_owned(), value);
    setting.insert("status".to_owned(), Value::String("yours".to_owned()));
    Ok(())
}

/// What may be put into the pattern of a file's name.
const FIELDS: [&str; 4] = ["{number}", "{part}", "{title}", "{composer}"];

/// Whether a pattern makes names that every system takes, no two alike.
fn is_pattern(pattern: &str) -> bool {
    let rest = FIELDS.iter().fold(pattern.to_owned(), |rest, field| rest.replace(field, ""));
    let is_plain = |letter: char| letter.is_alphanumeric() || matches!(letter, '-' | '_');
    pattern.contains(FIELDS[0]) && rest.chars().all(is_plain)
}

/// The words that a setting may hold: its unit lists them.
fn choices(unit: &str) -> impl Iterator<Item = &str> {
    unit.split(", ").flat_map(|words| words.split(" or "))
}

/// What numbers make sense: wide enough for any house, narrow enough to catch a slip of unit.
fn range(section: &str, name: &str) -> (i64, i64) {
    match (section, name) {
        ("paper", "width" | "height") => (1000, 6000),
        ("paper", "bleed") => (0, 100),
        ("paper", _) => (0, 600),
        ("staff", "height" | "smallest") => (40, 120),
        ("staff", _) => (0, 300),
        ("pages", "turn") | ("movements", "pause") => (0, 60_000),
        ("movements", "indent") => (0, 400),
        ("pages", _) => (1, 30),
        ("rests", "cue_bars") => (1, 8),
        _ => (2, 1000),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_shipped_value_is_within_what_a_user_may_write() {
        let house = House::default();
        for (section, value) in shipped().iter().filter(|(_, value)| value.is_table()) {
            for (key, setting) in value.as_table().unwrap() {
                let value = &setting["value"];
                let text = format!("[{section}]\n{key} = {value}\n");
                let again = House::parse(&text).unwrap();
                assert_eq!(again.staff.height.value, house.staff.height.value);
                assert!(!setting["source"].as_str().unwrap().is_empty(), "{section}.{key} has no source");
            }
        }
    }

    #[test]
    fn a_staff_that_somebody_asks_for_does_not_shrink_unless_they_say_so() {
        let smallest = |text: &str| House::parse(text).unwrap().staff.smallest.value;
        assert_eq!(smallest("[staff]\nheight = 90"), 90);
        assert_eq!(smallest("[staff]\nheight = 90\nsmallest = 80"), 80);
        assert_eq!(smallest("[paper]\nwidth = 2286"), House::default().staff.smallest.value);
    }

    #[test]
    fn what_no_house_has_is_told_with_what_is_allowed() {
        for (text, wanted) in [
            ("[stave]\nheight = 75", "stave"),
            ("[staff]\nhight = 75", "height"),
            ("[bars]\nnumbers = \"some\"", "systems, bars or none"),
            ("[paper]\nsides = 590\nwidth = 1000", "margins"),
            ("[staff\n", "TOML"),
            ("[files]\nname = \"{part}\"", "with {number} in it"),
            ("[files]\nname = \"../{number}\"", "with {number} in it"),
            ("[files]\nname = \"{number}{stand}\"", "with {number} in it"),
        ] {
            let error = House::parse(text).unwrap_err().to_string();
            assert!(error.contains(wanted), "{text}: {error}");
        }
    }

    /// `docs/house.md` is the manual's page; `ARCATA_RENEW=1` writes it anew.
    #[test]
    #[allow(clippy::disallowed_methods, reason = "the page lies in the checkout")]
    fn the_page_of_the_manual_is_up_to_date() {
        let path = concat!(env!("CARGO_MANIFEST_DIR"), "/../../docs/house.md");
        if std::env::var_os("ARCATA_RENEW").is_some() {
            std::fs::write(path, House::manual()).unwrap();
        }
        let page = std::fs::read_to_string(path).unwrap_or_default();
        assert!(page == House::manual(), "docs/house.md: run this test with ARCATA_RENEW=1");
    }
}
