//! The lines of a journal, in this form and in the first one.
//!
//! A line that says what the file is and in which version, then one line of JSON a step, with a number and a checksum. Whoever
//! keeps a session puts each line where it stays before the act is confirmed, and reads them again with [`JournalContent::read`].

use arcata_xml::seen_json;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use sha2::{Digest as _, Sha256};

use crate::act::Act;

/// One step.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum JournalLine {
    /// An act; what was undone before it is gone.
    Did(Act),
    /// The last act that counts is undone.
    Undid,
    /// The first act that was undone counts again.
    Redid,
}

/// The first line, without its end.
pub const HEADING: &str = "{\"format\":\"arcata-acts\",\"version\":2}";
/// What the first line calls the format.
const FORMAT: &str = "arcata-acts";
/// The version that is written.
const VERSION: u64 = 2;

/// What a journal's file holds.
#[derive(Debug, Default)]
pub struct JournalContent {
    /// The steps that can be read.
    pub steps: Vec<JournalLine>,
    /// Whether it has a heading; those of the first form have none.
    pub headed: bool,
    /// How many bytes of it are whole.
    pub good: usize,
    /// How it ends.
    pub end: JournalEnd,
}

/// How it ends.
#[derive(Debug, Default)]
pub enum JournalEnd {
    /// With a whole line.
    #[default]
    Whole,
    /// In a line without its end: it was never confirmed.
    Torn,
    /// In what cannot be understood, and why.
    Broken {
        /// In words.
        why: String,
    },
}

#[derive(Deserialize)]
struct JournalHeading {
    format: String,
    version: u64,
}

impl JournalContent {
    /// Reads a journal as far as it can be understood.
    #[must_use]
    pub fn read(bytes: &[u8]) -> Self {
        let mut read = Self::default();
        for (index, line) in bytes.split_inclusive(|byte| *byte == b'\n').enumerate() {
            let Some(text) = line.strip_suffix(b"\n") else {
                read.end = JournalEnd::Torn;
                break;
            };
            let taken = match (index, serde_json::from_slice::<JournalHeading>(text)) {
                (0, Ok(heading)) => read.head(&heading),
                _ => read.step(text).map_err(|why| format!("line {} {why}", index + 1)),
            };
            if let Err(why) = taken {
                read.end = JournalEnd::Broken { why };
                break;
            }
            read.good += line.len();
        }
        read
    }

    fn head(&mut self, heading: &JournalHeading) -> Result<(), String> {
        if heading.format != FORMAT {
            return Err(format!("it says that it is {}, which is no journal", heading.format));
        }
        if heading.version != VERSION {
            return Err(format!(
                "it is written in version {}, and this program reads version {VERSION}",
                heading.version
            ));
        }
        self.headed = true;
        Ok(())
    }

    fn step(&mut self, text: &[u8]) -> Result<(), String> {
        let number = self.steps.len() as u64;
        let step = std::str::from_utf8(text).ok().and_then(|text| sound(text, number)).ok_or("is broken")?;
        let step = serde_json::from_str(step).ok().or_else(|| of_the_first_form(step));
        self.steps.push(step.ok_or("holds an act that this program does not know")?);
        Ok(())
    }
}

/// A step as a line, with its end; steps are counted from 0.
///
/// ```
/// use arcata_desk::{HEADING, JournalContent, JournalEnd, JournalLine, journal_line};
///
/// let steps = [JournalLine::Undid, JournalLine::Redid];
/// let lines: String = steps.iter().zip(0..).map(|(step, number)| journal_line(number, step).unwrap()).collect();
/// let read = JournalContent::read(format!("{HEADING}\n{lines}").as_bytes());
/// assert_eq!(read.steps, steps);
/// assert!(matches!(read.end, JournalEnd::Whole));
/// ```
///
/// # Errors
/// A step that cannot be written as JSON, in words.
pub fn journal_line(number: u64, step: &JournalLine) -> Result<String, String> {
    let step = seen_json(serde_json::to_string(step).map_err(|problem| problem.to_string())?);
    Ok(format!("{{\"number\":{number},\"step\":{step},\"check\":\"{}\"}}\n", journal_check(number, &step)))
}

/// Eight hexadecimal digits over number and step.
#[must_use]
pub fn journal_check(number: u64, step: &str) -> String {
    let digest = Sha256::digest(format!("{number} {step}").as_bytes());
    digest.iter().take(4).map(|byte| format!("{byte:02x}")).collect()
}

/// The step of a line, if it is the one of this number and nothing in it has changed. It is taken as it is written: the
/// checksum is over that, whatever a later program would make of it.
fn sound(line: &str, number: u64) -> Option<&str> {
    let rest = line.strip_prefix(&format!("{{\"number\":{number},\"step\":"))?;
    let (step, sum) = rest.rsplit_once(",\"check\":\"")?;
    (sum.strip_suffix("\"}") == Some(journal_check(number, step).as_str())).then_some(step)
}

/// A step that only the first form has: a layer without a name went into the one layer there was, and one layer was carried.
fn of_the_first_form(step: &str) -> Option<JournalLine> {
    let mut step: Value = serde_json::from_str(step).ok()?;
    let did = step.get_mut("did")?.as_object_mut()?;
    match did.get("act")?.as_str()? {
        "layer" if !did.contains_key("name") => {
            let text = did.get("text")?.as_str()?.to_owned();
            Some(JournalLine::Did(Act::TakeUpText { text }))
        }
        "carried" => {
            let layer = did.remove("layer")?;
            did.insert("layers".to_owned(), Value::Array(vec![layer]));
            serde_json::from_value(step).ok()
        }
        _ => None,
    }
}
