//! The teacher's hand: which passages a sheet shows, sentences to them, criteria ticked, marks that are the teacher's own. It is
//! a file of its own; sheets are made from it.

use std::collections::{BTreeMap, BTreeSet};

use arcata_review::Finding;
use serde::{Deserialize, Serialize};

/// The name that the file gives its format.
const FORMAT: &str = "arcata-class-hand";
/// The version that is read and written.
const VERSION: u32 = 1;

/// What the teacher has done to the sheets of a class.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TeachersHand {
    format: String,
    version: u32,
    /// Sentences to be offered again.
    #[serde(default)]
    pub phrases: Vec<String>,
    /// By the student's pseudonym.
    #[serde(default)]
    pub hand_ins: BTreeMap<String, Touch>,
}

/// What the teacher has done to one sheet.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Touch {
    /// Findings that are not to be shown, named by rule, bar and part.
    pub struck: BTreeSet<String>,
    /// Findings that are to be shown.
    pub taken: BTreeSet<String>,
    /// A sentence to a finding.
    pub said: BTreeMap<String, String>,
    /// Criteria that are met, counted from 0.
    pub ticked: BTreeSet<usize>,
    /// A sentence to the whole.
    pub note: String,
    /// The teacher's own marks, where the school wants some. The program neither makes nor reads them.
    pub marks: String,
}

impl Default for TeachersHand {
    fn default() -> Self {
        Self { format: FORMAT.to_owned(), version: VERSION, phrases: Vec::new(), hand_ins: BTreeMap::new() }
    }
}

impl TeachersHand {
    /// Reads the file.
    ///
    /// ```
    /// use arcata_class::TeachersHand;
    ///
    /// let text = r#"{"format": "arcata-class-hand", "version": 1, "hand_ins": {"Alder Bank": {"note": "Good."}}}"#;
    /// assert_eq!(TeachersHand::read(text).expect("a hand").hand_ins["Alder Bank"].note, "Good.");
    /// assert!(TeachersHand::read("{").expect_err("broken").contains("line 1"));
    /// ```
    ///
    /// # Errors
    /// In words, with line and column.
    pub fn read(text: &str) -> Result<Self, String> {
        let hand: Self = serde_json::from_str(text).map_err(|error| {
            let said = error.to_string();
            let why = said.split(" at line ").next().unwrap_or_default().replace('`', "\"");
            format!("line {}, column {}: {why}", error.line(), error.column())
        })?;
        if hand.format != FORMAT {
            return Err(format!(
                "line 1: the format is not \"{FORMAT}\": name the file that the page of the hand gave"
            ));
        }
        if hand.version != VERSION {
            return Err(format!("line 1: version {} is not known, only version {VERSION}", hand.version));
        }
        Ok(hand)
    }

    /// What was done to the sheet of a student.
    #[must_use]
    pub fn of(&self, pseudonym: &str) -> Touch {
        self.hand_ins.get(pseudonym).cloned().unwrap_or_default()
    }
}

/// How a finding is named in the file: its rule, its bar by position from 1, its part from 1 (0 for the whole score).
#[must_use]
pub(crate) fn name_of(finding: &Finding) -> String {
    let part = finding.place.part.map_or(0, |part| part + 1);
    format!("{} {} {part}", finding.rule, finding.place.bar + 1)
}

/// The findings of a sheet after the teacher's hand: those chosen without the struck ones, then those taken.
#[must_use]
pub(crate) fn after<'f>(chosen: Vec<&'f Finding>, all: &'f [Finding], touch: &Touch) -> Vec<&'f Finding> {
    let mut shown: Vec<&Finding> =
        chosen.into_iter().filter(|finding| !touch.struck.contains(&name_of(finding))).collect();
    for finding in all.iter().filter(|finding| touch.taken.contains(&name_of(finding))) {
        if !shown.iter().any(|known| name_of(known) == name_of(finding)) {
            shown.push(finding);
        }
    }
    shown.truncate(MOST);
    shown
}

/// A sheet of one page holds no more passages.
const MOST: usize = 4;
