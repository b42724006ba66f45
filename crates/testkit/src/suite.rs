//! Test documents: sentences, fixtures, and the findings expected of them.
//!
//! A document is Markdown. A block fenced as `music` is a fixture; the block fenced as `finding` or `findings`
//! after it is the text expected of its review, empty where nothing is to be found; fenced as `bowing` it is the
//! bowing expected of the planner. A block fenced as `profile`
//! holds settings (TOML) for the case it stands in: the open case above it, or else the next one. Other blocks are
//! for the reader only.

use std::fmt;
use std::ops::Range;

use crate::error::FixtureError;
use crate::fixture::Fixture;

/// One fixture of a test document, with what is expected of it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Case {
    /// The nearest heading above, without its `#`.
    pub heading: String,
    /// The paragraph right before the case, its lines joined by spaces.
    pub sentence: String,
    /// The fixture.
    pub music: FencedBlock,
    /// Settings in TOML.
    pub profile: Option<FencedBlock>,
    /// The expected text; none where the document does not say yet (see [`renew`]).
    pub expected: Option<FencedBlock>,
}

/// The text inside a fence.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FencedBlock {
    /// The lines between the fences, each with its line end.
    pub text: String,
    /// Line of the document in which the text begins, from 1.
    pub line: usize,
}

/// What is wrong with a test document.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SuiteError {
    /// Line of the document, from 1.
    pub line: usize,
    /// What is wrong, and what to do.
    pub trouble: String,
}

impl fmt::Display for SuiteError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "line {}: {}", self.line, self.trouble)
    }
}

impl std::error::Error for SuiteError {}

impl Case {
    /// The fixture, read; troubles carry lines of the document.
    ///
    /// # Errors
    /// As for [`Fixture::parse`].
    pub fn fixture(&self) -> Result<Fixture, FixtureError> {
        Fixture::parse_from_line(&self.music.text, self.music.line)
    }

    /// Whether `found` is what the document expects; blank lines and spaces around the text do not count.
    #[must_use]
    pub fn expects(&self, found: &str) -> bool {
        self.expected.as_ref().is_some_and(|expected| expected.text.trim() == found.trim())
    }
}

/// Reads the cases of a test document.
///
/// # Errors
/// A fence that is not closed, an expected block with no fixture before it, a fixture with two of them, or a profile
/// that belongs to no fixture.
///
/// # Examples
/// ````
/// let document = "\
/// ## A slur that is too long
/// Eight slow bars under one slur.
/// ```music
/// violin: (1/1 D4 E4)
/// ```
/// ```finding
/// the slur outlasts the bow
/// ```
/// ";
/// let cases = arcata_testkit::suite::parse(document)?;
/// assert_eq!(cases[0].sentence, "Eight slow bars under one slur.");
/// assert_eq!(cases[0].music.line, 4);
/// assert!(cases[0].expects("the slur outlasts the bow"));
/// # Ok::<(), arcata_testkit::suite::SuiteError>(())
/// ````
pub fn parse(markdown: &str) -> Result<Vec<Case>, SuiteError> {
    Ok(read(markdown)?.cases.into_iter().map(|located| located.case).collect())
}

/// The document with the expected text of every case replaced, one new text for each case in order; everything else
/// stays byte for byte. A case that had no expected block gets one behind its fixture.
///
/// # Errors
/// As for [`parse`], and a number of texts other than that of the cases.
pub fn renew(markdown: &str, new_texts: &[String]) -> Result<String, SuiteError> {
    let cases = read(markdown)?.cases;
    if cases.len() != new_texts.len() {
        let trouble =
            format!("the document has {} cases, {} texts were given for them", cases.len(), new_texts.len());
        return Err(SuiteError { line: 1, trouble });
    }
    let line_end = if markdown.contains("\r\n") { "\r\n" } else { "\n" };
    let mut out = String::new();
    let mut copied = 0;
    for (located, text) in cases.iter().zip(new_texts) {
        let mut body: String = text.trim().lines().map(|line| format!("{line}{line_end}")).collect();
        if text.trim().is_empty() {
            body.clear();
        }
        // A fence longer than any in the text cannot be closed by it.
        let fence = "`".repeat(longest_run_of_ticks(&body).max(2) + 1);
        match &located.expected {
            Some(place) => {
                out.push_str(&markdown[copied..place.whole.start]);
                out.push_str(&format!("{fence}{}{line_end}{body}{fence}{line_end}", place.word));
                copied = place.whole.end;
            }
            None => {
                out.push_str(&markdown[copied..located.after_music]);
                out.push_str(&format!("{fence}findings{line_end}{body}{fence}{line_end}"));
                copied = located.after_music;
            }
        }
    }
    out.push_str(&markdown[copied..]);
    Ok(out)
}

fn longest_run_of_ticks(text: &str) -> usize {
    text.split(|c| c != '`').map(str::len).max().unwrap_or(0)
}

/// A case and where its blocks stand in the document.
struct Located {
    case: Case,
    after_music: usize,
    expected: Option<ExpectedPlace>,
}

struct ExpectedPlace {
    /// Both fences and what is between them.
    whole: Range<usize>,
    /// `finding` or `findings`, as written.
    word: String,
}

#[derive(Default)]
struct SuiteReading {
    cases: Vec<Located>,
    heading: String,
    paragraph: Vec<String>,
    /// A profile read before its fixture.
    waiting_profile: Option<FencedBlock>,
}

/// A fenced block as it stands in the document.
struct Fenced {
    word: String,
    block: FencedBlock,
    fence_line: usize,
    whole: Range<usize>,
}

fn read(markdown: &str) -> Result<SuiteReading, SuiteError> {
    let mut reading = SuiteReading::default();
    let mut lines = SuiteLines { text: markdown, at: 0, number: 0 };
    let mut paragraph_ended = false;
    while let Some((start, line)) = lines.advance() {
        let fence_line = lines.number;
        if let Some((fence, word)) = opening_fence(line) {
            let fenced = read_fenced(&mut lines, start, fence, word, fence_line)?;
            reading.take_block(fenced)?;
            paragraph_ended = true;
        } else if line.starts_with('#') {
            line.trim_start_matches('#').trim().clone_into(&mut reading.heading);
            reading.paragraph.clear();
        } else if line.trim().is_empty() {
            paragraph_ended = true;
        } else {
            if paragraph_ended {
                reading.paragraph.clear();
            }
            paragraph_ended = false;
            reading.paragraph.push(line.trim().to_owned());
        }
    }
    match reading.waiting_profile {
        Some(profile) => Err(SuiteError {
            line: profile.line,
            trouble: "this profile belongs to no fixture: put it before a music block".to_owned(),
        }),
        None => Ok(reading),
    }
}

/// Lines with their line ends, and where they begin.
struct SuiteLines<'a> {
    text: &'a str,
    at: usize,
    /// Number of the line given last, from 1.
    number: usize,
}

impl<'a> SuiteLines<'a> {
    fn advance(&mut self) -> Option<(usize, &'a str)> {
        let start = self.at;
        let rest = self.text.get(start..).filter(|rest| !rest.is_empty())?;
        let length = rest.find('\n').map_or(rest.len(), |end| end + 1);
        self.at += length;
        self.number += 1;
        Some((start, &rest[..length]))
    }
}

/// The fence and the word behind it, if the line opens a block.
fn opening_fence(line: &str) -> Option<(&str, &str)> {
    let ticks = line.len() - line.trim_start_matches('`').len();
    (ticks >= 3).then(|| (&line[..ticks], line[ticks..].trim()))
}

fn read_fenced(
    lines: &mut SuiteLines<'_>,
    start: usize,
    fence: &str,
    word: &str,
    fence_line: usize,
) -> Result<Fenced, SuiteError> {
    let mut text = String::new();
    while let Some((_, line)) = lines.advance() {
        if line.starts_with(fence) && line.trim_end().chars().all(|c| c == '`') {
            let block = FencedBlock { text, line: fence_line + 1 };
            return Ok(Fenced { word: word.to_owned(), block, fence_line, whole: start..lines.at });
        }
        text.push_str(line);
    }
    Err(SuiteError { line: fence_line, trouble: format!("the block is never closed: put {fence} after it") })
}

impl SuiteReading {
    fn take_block(&mut self, fenced: Fenced) -> Result<(), SuiteError> {
        match fenced.word.as_str() {
            "music" => {
                let case = Case {
                    heading: self.heading.clone(),
                    sentence: self.paragraph.join(" "),
                    music: fenced.block,
                    profile: self.waiting_profile.take(),
                    expected: None,
                };
                self.cases.push(Located { case, after_music: fenced.whole.end, expected: None });
                Ok(())
            }
            "finding" | "findings" | "bowing" => self.take_expected(fenced),
            "profile" => self.take_profile(fenced),
            _ => Ok(()),
        }
    }

    fn take_expected(&mut self, fenced: Fenced) -> Result<(), SuiteError> {
        let trouble = match self.cases.last_mut() {
            Some(open) if open.expected.is_none() => {
                open.case.expected = Some(fenced.block);
                open.expected = Some(ExpectedPlace { whole: fenced.whole, word: fenced.word });
                return Ok(());
            }
            Some(_) => "a second block of findings for one fixture: put all of them into the first",
            None => "findings with no fixture before them: put a music block above",
        };
        Err(SuiteError { line: fenced.fence_line, trouble: trouble.to_owned() })
    }

    fn take_profile(&mut self, fenced: Fenced) -> Result<(), SuiteError> {
        let open = self.cases.last_mut().filter(|open| open.expected.is_none());
        let home = match open {
            Some(open) => &mut open.case.profile,
            None => &mut self.waiting_profile,
        };
        if home.is_some() {
            let trouble = "a second profile for one fixture: put all settings into the first".to_owned();
            return Err(SuiteError { line: fenced.fence_line, trouble });
        }
        *home = Some(fenced.block);
        Ok(())
    }
}
