//! What is kept of a hand-in: all that its sheet and the class page say.

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::alike::Trace;
use crate::{InLanguages, KeptPicture, Measures, SaidOnSheet, Touch};

/// The name that the file gives its format.
const FORMAT: &str = "arcata-class-record";
/// The version that is read and written.
const VERSION: u32 = 1;

/// What is kept of a hand-in.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Record {
    #[schemars(extend("const" = "arcata-class-record"))]
    format: String,
    #[schemars(extend("const" = 1))]
    version: u32,
    /// The task, as its title says.
    pub task: String,
    /// Everything that the record was made of, as one number: the file, the task, the program.
    pub made_of: String,
    /// The file alone.
    pub file: String,
    /// What the student is called on pages.
    pub pseudonym: String,
    /// How often a new file has come in the place of an older one.
    #[serde(default)]
    pub replaced: u32,
    /// What it shows, or why it cannot be read.
    pub outcome: HandInOutcome,
    /// What the teacher has done to its sheet.
    #[serde(default)]
    pub touch: Touch,
    /// The tasks before this one, in order of time.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub earlier: Vec<RememberedTask>,
}

/// A task as a later one remembers it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct RememberedTask {
    /// Its title.
    pub task: String,
    /// Rules that were met, and how often.
    pub met: BTreeMap<String, u32>,
}

/// What a hand-in shows, or why it cannot be read.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum HandInOutcome {
    /// It was read.
    Read(Shown),
    /// It was not.
    Unreadable {
        /// In words.
        why: String,
    },
}

/// A hand-in as pages take it: its record, and where its sheet is.
#[derive(Clone, Debug)]
pub struct HandIn<'a> {
    /// What is kept of it.
    pub record: &'a Record,
    /// What it is called on this page: the pseudonym, or the name.
    pub name: String,
    /// Address of its sheet, where there is one.
    pub sheet: Option<String>,
}

/// What a hand-in shows.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Shown {
    /// What works.
    pub works: Vec<Work>,
    /// The passages of the sheet, the most useful first.
    pub passages: Vec<RecordedPassage>,
    /// Everything that was found, for the teacher to choose from.
    pub candidates: Vec<CandidatePassage>,
    /// What is found besides, a line for each rule.
    pub rest: Vec<RestLine>,
    /// Rules that were met, things expected that are missing among them, and at how many places.
    pub met: BTreeMap<String, u32>,
    /// What is told of the given melody and of models.
    pub given: Vec<SaidOnSheet>,
    /// What was measured.
    pub measures: Measures,
    /// What was taken for given that is not in the score.
    pub assumed: Vec<InLanguages>,
    /// Traces of its notes, to see which hand-ins are alike.
    pub traces: Vec<Trace>,
}

/// Something that works.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct Work {
    /// The sentence.
    pub said: SaidOnSheet,
    /// Index of the part.
    pub part: usize,
    /// The bars that it praises, by index, in order.
    pub bars: Vec<u32>,
}

/// A passage that a sheet shows.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct RecordedPassage {
    /// Id of the rule, or of what is expected.
    pub rule: String,
    /// Key of the words for how much it weighs: `severity-b`.
    pub weight: String,
    /// Bar as printed.
    pub bar: String,
    /// Beat, as it is said.
    pub beat: String,
    /// The part; none where the whole score is meant.
    pub part: Option<String>,
    /// What happens, a sentence.
    pub sentence: InLanguages,
    /// What else happens there.
    pub reasons: Vec<InLanguages>,
    /// The numbers behind it, in English.
    pub numbers: Vec<String>,
    /// Further places of the same, as they are said.
    pub further: Vec<String>,
    /// The music as it stands.
    pub now: Option<KeptPicture>,
    /// One repair to try.
    pub repair: Option<Repair>,
    /// A sentence that the teacher has written to it.
    #[serde(default)]
    pub own: Option<String>,
}

/// Something that was found and that a sheet can show.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct CandidatePassage {
    /// What it is called in the file of the teacher's hand.
    pub id: String,
    /// Id of the rule.
    pub rule: String,
    /// Bar as printed.
    pub bar: String,
    /// The part; none where the whole score is meant.
    pub part: Option<String>,
    /// What happens, a sentence.
    pub sentence: InLanguages,
    /// Whether the program would show it.
    pub proposed: bool,
}

/// One repair to try.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Repair {
    /// Its kind in one word, as in reports.
    pub kind: String,
    /// The sentence.
    pub sentence: InLanguages,
    /// The music with it.
    pub picture: Option<KeptPicture>,
}

/// What is found besides the passages: a rule with its places.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct RestLine {
    /// Id of the rule.
    pub rule: String,
    /// Part and bars, as they are listed.
    pub places: Vec<(Option<String>, String)>,
}

impl Record {
    /// A record.
    #[must_use]
    pub fn new(
        task: &str,
        pseudonym: &str,
        (made_of, file): (String, String),
        outcome: HandInOutcome,
    ) -> Self {
        Self {
            format: FORMAT.to_owned(),
            version: VERSION,
            task: task.to_owned(),
            made_of,
            file,
            pseudonym: pseudonym.to_owned(),
            replaced: 0,
            outcome,
            touch: Touch::default(),
            earlier: Vec::new(),
        }
    }

    /// Reads a record; none where it is no record of this version.
    #[must_use]
    pub fn read(text: &str) -> Option<Self> {
        let record: Self = serde_json::from_str(text).ok()?;
        (record.format == FORMAT && record.version == VERSION).then_some(record)
    }

    /// The file.
    ///
    /// # Errors
    /// What the library says that writes JSON.
    pub fn text(&self) -> Result<String, String> {
        let text = serde_json::to_string(self).map_err(|error| error.to_string())?;
        Ok(arcata_xml::seen_json(text) + "\n")
    }

    /// What it shows, where it was read.
    #[must_use]
    pub const fn shown(&self) -> Option<&Shown> {
        match &self.outcome {
            HandInOutcome::Read(shown) => Some(shown),
            HandInOutcome::Unreadable { .. } => None,
        }
    }
}

#[cfg(test)]
pub(crate) fn nothing() -> Shown {
    Shown {
        works: Vec::new(),
        passages: Vec::new(),
        candidates: Vec::new(),
        rest: Vec::new(),
        met: BTreeMap::new(),
        given: Vec::new(),
        measures: Measures::new(),
        assumed: Vec::new(),
        traces: Vec::new(),
    }
}
