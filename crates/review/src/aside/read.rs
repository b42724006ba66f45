//! The file of what is set aside, TOML: written by people as well as by the program.

use std::fmt;

use arcata_score::{Length, SlurTold};
use arcata_xml::{acts_unseen, seen};
use serde::Deserialize;
use toml::Spanned;

use super::{Aside, AsideEntry, SlurEntry};

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
    #[serde(default)]
    slur: Vec<Spanned<Slurs>>,
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

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Slurs {
    is: Spanned<String>,
    part: Option<String>,
    bars: Option<Spanned<String>>,
    beat: Option<Spanned<String>>,
    movement: Option<usize>,
    reason: Option<String>,
}

/// What is wrong, and where if not at the beginning of the entry.
type Wrong = (Option<usize>, String);

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
        let mut slurs = Vec::with_capacity(file.slur.len());
        for slur in file.slur {
            let offset = slur.span().start;
            slurs
                .push(slur.into_inner().entry().map_err(|(place, why)| wrong(place.unwrap_or(offset), why))?);
        }
        Ok(Self { entries, slurs })
    }

    /// The first lines of a new file.
    #[must_use]
    pub fn head(score: &str) -> String {
        format!(
            "# Findings set aside in {}: the review does not report them.\nformat = \"{FORMAT}\"\nversion = {VERSION}\n",
            // TOML has no control characters, not even in comments.
            seen(&score.replace('\n', " "))
        )
    }
}

impl AsideEntry {
    /// The entry as lines of the file, a blank line in front.
    #[must_use]
    pub fn lines(&self) -> String {
        let place = Place { part: &self.part, bars: &self.bars, beat: self.beat, movement: self.movement };
        let mut lines = String::from("\n[[aside]]\n");
        lines.extend(self.rule.as_ref().map(|rule| quoted("rule", rule)));
        lines.push_str(&place.lines());
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
    fn entry(self) -> Result<AsideEntry, Wrong> {
        let rule = self.rule.as_ref().map(Spanned::get_ref);
        if let Some(unknown) = rule.filter(|rule| crate::rule(rule).is_none()) {
            let place = self.rule.as_ref().map(|rule| rule.span().start);
            return Err((place, format!("no rule is called \"{unknown}\"; `arcata rules` lists them")));
        }
        let (bars, beat) = (bars(self.bars.as_ref())?, beat(self.beat.as_ref())?);
        if rule.is_none() && self.part.is_none() && bars.is_none() && self.movement.is_none() {
            return Err((
                None,
                "the entry names no rule, part, bars or movement: it would set everything aside".to_owned(),
            ));
        }
        let reason = reason(self.reason)?;
        let rule = self.rule.map(Spanned::into_inner);
        Ok(AsideEntry { rule, part: self.part, bars, beat, movement: self.movement, reason })
    }
}

impl Slurs {
    fn entry(self) -> Result<SlurEntry, Wrong> {
        let told = SlurEntry::parse_told(self.is.get_ref())
            .ok_or_else(|| (Some(self.is.span().start), "a slur is = \"phrase\" or \"bow\"".to_owned()))?;
        let (bars, beat) = (bars(self.bars.as_ref())?, beat(self.beat.as_ref())?);
        let reason = reason(self.reason)?;
        Ok(SlurEntry { told, part: self.part, bars, beat, movement: self.movement, reason })
    }
}

impl SlurEntry {
    /// `phrase` or `bow`.
    #[must_use]
    pub fn parse_told(text: &str) -> Option<SlurTold> {
        match text.trim() {
            "phrase" => Some(SlurTold::Phrase),
            "bow" => Some(SlurTold::Bow),
            _ => None,
        }
    }

    /// The entry as lines of the file, a blank line in front.
    #[must_use]
    pub fn lines(&self) -> String {
        let told = if self.told == SlurTold::Bow { "bow" } else { "phrase" };
        let place = Place { part: &self.part, bars: &self.bars, beat: self.beat, movement: self.movement };
        format!("\n[[slur]]\n{}{}{}", quoted("is", told), place.lines(), quoted("reason", &self.reason))
    }
}

fn bars(text: Option<&Spanned<String>>) -> Result<Option<(String, String)>, Wrong> {
    let Some(text) = text else { return Ok(None) };
    let why = "bars are one printed number or two with a hyphen, such as \"20-24\"";
    AsideEntry::parse_bars(text.get_ref()).map(Some).ok_or_else(|| (Some(text.span().start), why.to_owned()))
}

fn beat(text: Option<&Spanned<String>>) -> Result<Option<Length>, Wrong> {
    let Some(text) = text else { return Ok(None) };
    let why = "a beat is a number from 1, such as \"3\", \"3.5\" or \"7/2\"";
    AsideEntry::parse_beat(text.get_ref()).map(Some).ok_or_else(|| (Some(text.span().start), why.to_owned()))
}

fn reason(text: Option<String>) -> Result<String, Wrong> {
    let reason = text.unwrap_or_default().trim().to_owned();
    if reason.is_empty() {
        let why = "the entry has no reason: say why, for whoever reads it next year";
        return Err((None, why.to_owned()));
    }
    Ok(reason)
}

fn quoted(key: &str, value: &str) -> String {
    let mut text = String::new();
    for letter in value.chars() {
        match letter {
            '"' | '\\' => text.extend(['\\', letter]),
            // TOML escapes as JSON does; all that act unseen lie below U+10000.
            '\n' => text.push_str("\\n"),
            letter if acts_unseen(letter) => text.push_str(&format!("\\u{:04X}", u32::from(letter))),
            letter => text.push(letter),
        }
    }
    format!("{key} = \"{text}\"\n")
}

/// Where an entry holds.
struct Place<'a> {
    part: &'a Option<String>,
    bars: &'a Option<(String, String)>,
    beat: Option<Length>,
    movement: Option<usize>,
}

impl Place<'_> {
    fn lines(&self) -> String {
        let bars = self.bars.as_ref();
        let bars =
            bars.map(|(first, last)| if first == last { first.clone() } else { format!("{first}-{last}") });
        let beat = self.beat.map(|beat| beat.to_string());
        let mut lines = String::new();
        for (key, value) in [("part", self.part.as_ref()), ("bars", bars.as_ref()), ("beat", beat.as_ref())] {
            lines.extend(value.map(|value| quoted(key, value)));
        }
        lines.extend(self.movement.map(|movement| format!("movement = {movement}\n")));
        lines
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
        let slur = SlurEntry {
            told: SlurTold::Phrase,
            part: Some("Violin \"I\"".to_owned()),
            bars: Some(("3".to_owned(), "3".to_owned())),
            beat: Some(Length::new(2, 1)),
            movement: None,
            reason: "So she said.".to_owned(),
        };
        let text = Aside::head("a\nscore.musicxml") + &entry.lines() + &slur.lines();
        assert_eq!(Aside::read(&text), Ok(Aside { entries: vec![entry], slurs: vec![slur] }));
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
                &format!("{HEAD}[[slur]]\nis = \"tie\"\nreason = \"x\""),
                "line 4: a slur is = \"phrase\" or \"bow\"",
            ),
            (
                &format!("{HEAD}[[slur]]\nis = \"bow\""),
                "line 3: the entry has no reason: say why, for whoever reads it next year",
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
