//! The file of what is set aside, TOML: written by people as well as by the program.

use std::fmt;

use arcata_score::places::{self, Misread, Passage, Within, bars_typed, beat_exact};
use arcata_score::{Length, SlurTold};
use arcata_xml::{acts_unseen, seen};
use serde::Deserialize;
use toml::Spanned;

use super::{Aside, AsideEntry, SlurEntry};

/// The name that the file gives its format.
const FORMAT: &str = "arcata-aside";
/// The version that is read and written (by definition).
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
struct AsideFile {
    format: Spanned<String>,
    version: Spanned<u32>,
    #[serde(default)]
    aside: Vec<Spanned<ReadEntry>>,
    #[serde(default)]
    slur: Vec<Spanned<AsideSlurs>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct ReadEntry {
    rule: Option<Spanned<String>>,
    part: Option<String>,
    bars: Option<Spanned<String>>,
    beat: Option<Spanned<String>>,
    movement: Option<usize>,
    reason: Option<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct AsideSlurs {
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
        let file: AsideFile = toml::from_str(text).map_err(|error| AsideError {
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
        let place =
            EntryPlace { part: &self.part, bars: &self.bars, beat: self.beat, movement: self.movement };
        let mut lines = String::from("\n[[aside]]\n");
        lines.extend(self.rule.as_ref().map(|rule| quoted("rule", rule)));
        lines.push_str(&place.lines());
        lines.push_str(&quoted("reason", &self.reason));
        lines
    }
}

impl AsideEntry {
    /// The printed numbers of the first and the last bar of a place.
    ///
    /// # Errors
    /// Where it tells bars of one number apart: entries do not.
    pub fn bars_named(passage: &Passage) -> Result<(String, String), &'static str> {
        let (first, last) = passage.bars();
        if first.nth.or(last.nth).is_some() {
            return Err("what is set aside holds for all bars of one number; leave (1), (2) out");
        }
        Ok((first.label, last.label))
    }
}

impl ReadEntry {
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

impl AsideSlurs {
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
        let place =
            EntryPlace { part: &self.part, bars: &self.bars, beat: self.beat, movement: self.movement };
        format!("\n[[slur]]\n{}{}{}", quoted("is", told), place.lines(), quoted("reason", &self.reason))
    }
}

fn bars(text: Option<&Spanned<String>>) -> Result<Option<(String, String)>, Wrong> {
    let Some(text) = text else { return Ok(None) };
    let wrong = |why: String| (Some(text.span().start), why);
    let named = places::passage(text.get_ref()).map_err(|misread| wrong(misread.to_string()))?;
    let more = named.movement.is_some() || named.section.is_some();
    let within = named.to.as_ref().map_or(named.from.within, |to| to.within);
    if more || (named.from.within, within) != (Within::Bar, Within::Bar) {
        let why =
            "bars are printed numbers alone; the part, the movement and the beat have lines of their own";
        return Err(wrong(why.to_owned()));
    }
    AsideEntry::bars_named(&named).map(Some).map_err(|why| wrong(why.to_owned()))
}

fn beat(text: Option<&Spanned<String>>) -> Result<Option<Length>, Wrong> {
    let Some(text) = text else { return Ok(None) };
    let misread = |misread: Misread| (Some(text.span().start), misread.to_string());
    places::beat(text.get_ref()).map(Some).map_err(misread)
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
struct EntryPlace<'a> {
    part: &'a Option<String>,
    bars: &'a Option<(String, String)>,
    beat: Option<Length>,
    movement: Option<usize>,
}

impl EntryPlace<'_> {
    fn lines(&self) -> String {
        let bars = self.bars.as_ref().map(|(first, last)| bars_typed((first, last)));
        let beat = self.beat.map(beat_exact);
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
                "line 4: expected a bar such as 37, 37/3 or 41-42, found \"-\". Places are written 12, 12/3½, \"bar 12, beat 3½\", 41-42 or II: 12.",
            ),
            (
                &format!("{HEAD}[[aside]]\nbeat = \"0\"\nreason = \"x\""),
                "line 4: expected a beat such as 3, 3½, 3.5, 7/2 or 3+1/3, found \"0\". Places are written 12, 12/3½, \"bar 12, beat 3½\", 41-42 or II: 12.",
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
    fn bars_and_beats_are_written_as_anybody_writes_them() {
        const HEAD: &str = "format = \"arcata-aside\"\nversion = 1\n";
        let read = |bars: &str, beat: &str| {
            let text = format!("{HEAD}[[aside]]\nbars = '{bars}'\nbeat = '{beat}'\nreason = \"x\"");
            Aside::read(&text).map(|aside| (aside.entries[0].bars.clone(), aside.entries[0].beat))
        };
        let half = Some(Length::new(7, 2));
        let bars = |first: &str, last: &str| Some((first.to_owned(), last.to_owned()));
        assert_eq!(read("20-24", "3½"), Ok((bars("20", "24"), half)));
        assert_eq!(read("Takte 20 bis 24", "Schlag 3.5"), Ok((bars("20", "24"), half)));
        assert_eq!(read("X1", "7/2"), Ok((bars("X1", "X1"), half)));
        assert_eq!(read("bar \"5-8\"", "7/2"), Ok((bars("5-8", "5-8"), half)));
        for wrong in ["II: 20", "20/3", "Viola 20", "20(2)", "20, 24", ""] {
            assert!(read(wrong, "1").is_err(), "{wrong}");
        }
    }
}
