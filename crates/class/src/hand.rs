//! The teacher's hand: which passages a sheet shows, sentences to them, criteria ticked, marks that are the teacher's own. It is
//! a file of its own; sheets are made from it.

use std::collections::{BTreeMap, BTreeSet};

use arcata_review::Finding;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The name that the file gives its format.
const FORMAT: &str = "arcata-class-hand";
/// The name that a journal gives its format.
const JOURNAL: &str = "arcata-class-hand-journal";
/// The version that is read and written.
const VERSION: u32 = 1;

/// What the teacher has done to the sheets of a class.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct TeachersHand {
    #[schemars(extend("const" = "arcata-class-hand"))]
    format: String,
    #[schemars(extend("const" = 1))]
    version: u32,
    /// Sentences to be offered again.
    #[serde(default)]
    pub phrases: Vec<String>,
    /// By the student's pseudonym.
    #[serde(default)]
    pub hand_ins: BTreeMap<String, Touch>,
}

/// What the teacher has done to one sheet.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
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

/// A line of the journal of a hand.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(untagged, deny_unknown_fields)]
pub enum HandAct {
    /// A sheet is to be so from now on.
    Touched {
        /// The student's pseudonym.
        hand_in: String,
        /// How the sheet is after the act.
        touch: Touch,
        /// A sentence that was written, to be offered again.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        phrase: Option<String>,
    },
    /// The act before is taken back.
    Undone {
        /// Always true.
        undo: bool,
    },
}

impl HandAct {
    /// A line of the journal from its text; nothing where it is none.
    #[must_use]
    pub fn read(text: &str) -> Option<Self> {
        serde_json::from_str(text).ok()
    }

    /// The line, with its end.
    #[must_use]
    pub fn line(&self) -> String {
        arcata_xml::seen_json(serde_json::to_string(self).unwrap_or_default()) + "\n"
    }
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

    /// The first line of a journal.
    #[must_use]
    pub fn journal_head() -> String {
        format!("{{\"format\":\"{JOURNAL}\",\"version\":{VERSION}}}\n")
    }

    /// Whether a text is a journal rather than the file that the page saves.
    #[must_use]
    pub fn is_journal(text: &str) -> bool {
        text.lines().next().is_some_and(|head| head.contains(JOURNAL))
    }

    /// The hand after all acts of a journal.
    ///
    /// ```
    /// use arcata_class::{HandAct, TeachersHand, Touch};
    ///
    /// let note = |note: &str| HandAct::Touched {
    ///     hand_in: "Alder Bank".to_owned(),
    ///     touch: Touch { note: note.to_owned(), ..Touch::default() },
    ///     phrase: Some(note.to_owned()),
    /// };
    /// let acts = [note("Good."), note("Better."), HandAct::Undone { undo: true }];
    /// let journal: String = acts.iter().map(HandAct::line).collect();
    /// // The machine lost its power while a line was written: what was confirmed is there.
    /// let journal = TeachersHand::journal_head() + &journal + "{\"hand_in\":\"Ald";
    /// let hand = TeachersHand::replayed(&journal).expect("a journal");
    /// assert_eq!(hand.hand_ins["Alder Bank"].note, "Good.");
    /// assert_eq!(hand.phrases, ["Good."]);
    /// assert!(TeachersHand::replayed("{}\n{}").is_err());
    /// ```
    ///
    /// # Errors
    /// In words, with the line.
    pub fn replayed(journal: &str) -> Result<Self, String> {
        let mut lines = journal.split_inclusive('\n').enumerate();
        if lines.next().is_none_or(|(_, head)| head != Self::journal_head()) {
            return Err(format!("line 1: this is no \"{JOURNAL}\" of version {VERSION}"));
        }
        let mut acts = Vec::new();
        for (number, line) in lines {
            match HandAct::read(line) {
                Some(HandAct::Undone { .. }) => {
                    acts.pop();
                }
                Some(HandAct::Touched { hand_in, touch, phrase }) => acts.push((hand_in, touch, phrase)),
                // What was not written to its end was not confirmed.
                None if !line.ends_with('\n') => {}
                None => return Err(format!("line {}: this is no act; take the line out", number + 1)),
            }
        }
        let mut hand = Self::default();
        for (hand_in, touch, phrase) in acts {
            hand.hand_ins.insert(hand_in, touch);
            hand.phrases.extend(phrase.filter(|phrase| !hand.phrases.contains(phrase)));
        }
        Ok(hand)
    }

    /// The beginning of a journal that is understood, with its heading, and the first line that is not, counted from 1; nothing
    /// where all of it is understood, but for a last line that was not written to its end.
    ///
    /// ```
    /// use arcata_class::TeachersHand;
    ///
    /// let head = TeachersHand::journal_head();
    /// let undo = "{\"undo\":true}\n";
    /// assert_eq!(TeachersHand::understood(&format!("{head}{undo}{{\"und")), None);
    /// assert_eq!(TeachersHand::understood(&format!("{head}{undo}scribble\n{undo}")), Some((format!("{head}{undo}"), 3)));
    /// assert_eq!(TeachersHand::understood("notes of mine\n"), Some((head, 1)));
    /// ```
    #[must_use]
    pub fn understood(journal: &str) -> Option<(String, usize)> {
        let head = Self::journal_head();
        // A heading that was not written to its end has nothing behind it.
        if !journal.starts_with(&head) {
            return (!head.starts_with(journal)).then_some((head, 1));
        }
        let mut good = String::new();
        for (number, line) in journal.split_inclusive('\n').enumerate() {
            if number > 0 && line.ends_with('\n') && HandAct::read(line).is_none() {
                return Some((good, number + 1));
            }
            good.push_str(line);
        }
        None
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
