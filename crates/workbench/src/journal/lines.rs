//! The lines of a journal, in this form and in the first one.

use arcata_xml::seen_json;
use serde::Deserialize;
use serde_json::Value;
use sha2::{Digest as _, Sha256};

use super::JournalLine;
use crate::act::Act;

/// The first line.
pub(super) const HEADING: &str = "{\"format\":\"arcata-acts\",\"version\":2}";
/// What the first line calls the format.
const FORMAT: &str = "arcata-acts";
/// The version that is written.
const VERSION: u64 = 2;

/// What a journal's file holds.
#[derive(Debug, Default)]
pub(super) struct JournalContent {
    pub(super) steps: Vec<JournalLine>,
    /// Whether it has a heading; those of the first form have none.
    pub(super) headed: bool,
    /// How many bytes of it are whole.
    pub(super) good: usize,
    pub(super) end: JournalEnd,
}

/// How it ends.
#[derive(Debug, Default)]
pub(super) enum JournalEnd {
    #[default]
    Whole,
    /// In a line without its end: it was never confirmed.
    Torn,
    /// In what cannot be understood, and why.
    Broken { why: String },
}

#[derive(Deserialize)]
struct JournalHeading {
    format: String,
    version: u64,
}

impl JournalContent {
    pub(super) fn read(bytes: &[u8]) -> Self {
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

/// A step as a line.
pub(super) fn line(number: u64, step: &JournalLine) -> Result<String, String> {
    let step = seen_json(serde_json::to_string(step).map_err(|problem| problem.to_string())?);
    Ok(format!("{{\"number\":{number},\"step\":{step},\"check\":\"{}\"}}\n", check(number, &step)))
}

/// Eight hexadecimal digits over number and step.
pub(super) fn check(number: u64, step: &str) -> String {
    let digest = Sha256::digest(format!("{number} {step}").as_bytes());
    digest.iter().take(4).map(|byte| format!("{byte:02x}")).collect()
}

/// The step of a line, if it is the one of this number and nothing in it has changed. It is taken as it is written: the
/// checksum is over that, whatever a later program would make of it.
fn sound(line: &str, number: u64) -> Option<&str> {
    let rest = line.strip_prefix(&format!("{{\"number\":{number},\"step\":"))?;
    let (step, sum) = rest.rsplit_once(",\"check\":\"")?;
    (sum.strip_suffix("\"}") == Some(check(number, step).as_str())).then_some(step)
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
