//! The file of what is set aside, TOML: written by people as well as by the program.

use std::fmt;

use arcata_score::Length;
use serde::Deserialize;
use toml::Spanned;

use super::{Aside, AsideEntry};

/// The name that the file gives its format.
const FORMAT: &str = "arcata-aside";
/// The version that is read and written.
const VERSION: u32 = 1;

/// Why a file of findings set aside cannot be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct AsideError {
    /// Line, from 1.
    pub line: usize,
    /// What is wrong there and what to write instead.
    pub why: String,
}

impl fmt::Display for AsideError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "line {}: {}", self.line, self.why)
    }
}

impl std::error::Error for AsideError {}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    format: Spanned<String>,
    version: Spanned<u32>,
    #[serde(default)]
    aside: Vec<Spanned<Entry>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Entry {
    rule: Option<Spanned<String>>,
    part: Option<String>,
    bars: Option<Spanned<String>>,
    beat: Option<Spanned<String>>,
    movement: Option<usize>,
    reason: Option<String>,
}

impl Aside {
    /// Reads a file.
    ///
    /// # Errors
    /// TOML that cannot be read, another format, an entry with a rule that there is none of, without a reason or
    /// without anything that it sets aside; with the line.
    pub fn read(text: &str) -> Result<Self, AsideError> {
        let at = |offset: usize| 1 + text.bytes().take(offset).filter(|byte| *byte == b'\n').count();
        let file: File = toml::from_str(text).map_err(|error| AsideError {
            line: at(error.span().map_or(0, |span| span.start)),
            why: error.message().trim().replace('\n', "; "),
        })?;
        let wrong = |offset: usize, why: String| AsideError { line: at(offset), why };
        if file.format.get_ref() != FORMAT {
            return Err(wrong(file.format.span().start, format!("the format is not \"{FORMAT}\"")));
        }
        if *file.version.get_ref() != VERSION {
            let why = format!("version {} is not known, only version {VERSION}", file.version.get_ref());
            return Err(wrong(file.version.span().start, why));
        }
        let mut entries = Vec::with_capacity(file.aside.len());
        for entry in file.aside {
            let offset = entry.span().start;
            entries.push(
                entry.into_inner().entry().map_err(|(place, why)| wrong(place.unwrap_or(offset), why))?,
            );
        }
        Ok(Self { entries })
    }

    /// The first lines of a new file.
    #[must_use]
    pub fn head(score: &str) -> String {
        format!(
            "# Findings set aside in {}: the review does not report them.\nformat = \"{FORMAT}\"\nversion = {VERSION}\n",
            score.replace(['\n', '\r'], " ")
        )
    }
}

impl AsideEntry {
    /// The entry as lines of the file, a blank line in front.
    #[must_use]
    pub fn lines(&self) -> String {
        let quoted = |key: &str, value: &str| format!("{key} = {}\n", toml::Value::String(value.to_owned()));
        let mut lines = String::from("\n[[aside]]\n");
        let bars = self
            .bars
            .as_ref()
            .map(|(first, last)| if first == last { first.clone() } else { format!("{first}-{last}") });
        let beat = self.beat.map(|beat| beat.to_string());
        for (key, value) in [
            ("rule", self.rule.as_ref()),
            ("part", self.part.as_ref()),
            ("bars", bars.as_ref()),
            ("beat", beat.as_ref()),
        ] {
            lines.extend(value.map(|value| quoted(key, value)));
        }
        lines.extend(self.movement.map(|movement| format!("movement = {movement}\n")));
        lines.push_str(&quoted("reason", &self.reason));
        lines
    }

    /// A bar or two with a hyphen, by printed number.
    #[must_use]
    pub fn parse_bars(text: &str) -> Option<(String, String)> {
        let (first, last) = text.split_once('-').unwrap_or((text, text));
        let (first, last) = (first.trim(), last.trim());
        (!first.is_empty() && !last.is_empty()).then(|| (first.to_owned(), last.to_owned()))
    }

    /// A beat from 1: `3`, `3.5` or `7/2`.
    #[must_use]
    pub fn parse_beat(text: &str) -> Option<Length> {
        let text = text.trim();
        let whole = |text: &str| text.parse::<i64>().ok().filter(|number| (0..10_000).contains(number));
        let beat = if let Some((above, below)) = text.split_once('/') {
            Length::new(whole(above)?, whole(below).filter(|below| *below > 0)?)
        } else if let Some((number, decimals)) = text.split_once('.') {
            let places =
                10_i64.checked_pow(u32::try_from(decimals.len()).ok().filter(|places| *places <= 4)?)?;
            Length::new(whole(number)? * places + whole(decimals)?, places)
        } else {
            Length::new(whole(text)?, 1)
        };
        (beat >= Length::new(1, 1)).then_some(beat)
    }
}

impl Entry {
    fn entry(self) -> Result<AsideEntry, (Option<usize>, String)> {
        let rule = self.rule.as_ref().map(Spanned::get_ref);
        if let Some(unknown) = rule.filter(|rule| crate::rule(rule).is_none()) {
            let place = self.rule.as_ref().map(|rule| rule.span().start);
            return Err((place, format!("no rule is called \"{unknown}\"; `arcata rules` lists them")));
        }
        let bars = match &self.bars {
            Some(text) => Some(AsideEntry::parse_bars(text.get_ref()).ok_or_else(|| {
                (
                    Some(text.span().start),
                    "bars are one printed number or two with a hyphen, such as \"20-24\"".to_owned(),
                )
            })?),
            None => None,
        };
        let beat = match &self.beat {
            Some(text) => Some(AsideEntry::parse_beat(text.get_ref()).ok_or_else(|| {
                (
                    Some(text.span().start),
                    "a beat is a number from 1, such as \"3\", \"3.5\" or \"7/2\"".to_owned(),
                )
            })?),
            None => None,
        };
        if rule.is_none() && self.part.is_none() && bars.is_none() && self.movement.is_none() {
            return Err((
                None,
                "the entry names no rule, part, bars or movement: it would set everything aside".to_owned(),
            ));
        }
        let reason = self.reason.as_deref().unwrap_or("").trim().to_owned();
        if reason.is_empty() {
            return Err((
                None,
                "the entry has no reason: say why, for whoever reads it next year".to_owned(),
            ));
        }
        let rule = self.rule.map(Spanned::into_inner);
        Ok(AsideEntry { rule, part: self.part, bars, beat, movement: self.movement, reason })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn wrong(text: &str) -> String {
        Aside::read(text).map_or_else(|error| error.to_string(), |aside| format!("{aside:?}"))
    }

    #[test]
    fn what_is_written_is_read_again() {
        let entry = AsideEntry {
            rule: Some("broken-slur".to_owned()),
            part: Some("Violin \"I\"".to_owned()),
            bars: Some(("20".to_owned(), "24".to_owned())),
            beat: Some(Length::new(7, 2)),
            movement: Some(2),
            reason: "Let it ring:\nto the end".to_owned(),
        };
        let text = Aside::head("a\nscore.musicxml") + &entry.lines();
        assert_eq!(Aside::read(&text).map(|aside| aside.entries), Ok(vec![entry]));
    }

    #[test]
    fn errors_name_the_line_and_what_to_do() {
        const HEAD: &str = "format = \"arcata-aside\"\nversion = 1\n";
        for (text, said) in [
            ("format = \"other\"\nversion = 1", "line 1: the format is not \"arcata-aside\""),
            ("format = \"arcata-aside\"\nversion = 2", "line 2: version 2 is not known, only version 1"),
            (
                &format!("{HEAD}[[aside]]\nrule = \"no-such\"\nreason = \"x\""),
                "line 4: no rule is called \"no-such\"; `arcata rules` lists them",
            ),
            (
                &format!("{HEAD}[[aside]]\nbars = \"-\"\nreason = \"x\""),
                "line 4: bars are one printed number or two with a hyphen, such as \"20-24\"",
            ),
            (
                &format!("{HEAD}[[aside]]\nbeat = \"0\"\nreason = \"x\""),
                "line 4: a beat is a number from 1, such as \"3\", \"3.5\" or \"7/2\"",
            ),
            (
                &format!("{HEAD}[[aside]]\nreason = \"x\""),
                "line 3: the entry names no rule, part, bars or movement: it would set everything aside",
            ),
            (
                &format!("{HEAD}[[aside]]\nmovement = 1"),
                "line 3: the entry has no reason: say why, for whoever reads it next year",
            ),
        ] {
            assert_eq!(wrong(text), said, "{text}");
        }
        assert!(
            wrong(&format!("{HEAD}[[aside]]\nbar = 3\nreason = \"x\"")).starts_with("line 4: unknown field")
        );
        assert!(wrong("[[aside").starts_with("line 1: "));
    }

    #[test]
    fn beats_in_all_their_forms() {
        let beat = |text: &str| AsideEntry::parse_beat(text).map(|beat| beat.to_string());
        assert_eq!(beat("3"), Some("3".to_owned()));
        assert_eq!(beat(" 3.5 "), Some("7/2".to_owned()));
        assert_eq!(beat("7/2"), Some("7/2".to_owned()));
        for odd in ["0", "", "x", "1/0", "-2", "3.", "1e3", "99999999999999999999", "1.00000"] {
            assert_eq!(beat(odd), None, "{odd}");
        }
    }
}
