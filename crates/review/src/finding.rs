//! What a review hands out: findings, each with its place, its numbers and its proposals.

use std::fmt;

use arcata_bow::Cost;
use arcata_score::places::beat_said;
use arcata_score::{Length, NoteId};
use arcata_xml::Edit;

/// How much a finding weighs. The order is weight: `A` is the gravest and sorts first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// It cannot be played, or it is not said what to play.
    A,
    /// It will cost rehearsal time.
    B,
    /// It is probably not what was meant.
    C,
    /// Clutter: nothing is wrong, something could go.
    D,
}

impl Severity {
    /// One line that says what the letter means.
    #[must_use]
    pub const fn meaning(self) -> &'static str {
        match self {
            Self::A => "cannot be played, or is not defined",
            Self::B => "costs rehearsal time",
            Self::C => "probably not meant",
            Self::D => "clutter",
        }
    }
}

impl fmt::Display for Severity {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::A => "A",
            Self::B => "B",
            Self::C => "C",
            Self::D => "D",
        })
    }
}

/// Something the review reports.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// Id of the rule, as in the register: `slur-outlasts-bow`.
    pub rule: &'static str,
    /// How much it weighs here.
    pub severity: Severity,
    /// Where it is first.
    pub place: FindingPlace,
    /// One sentence in a player's words, with bar and beat.
    pub sentence: String,
    /// The numbers it rests on.
    pub evidence: Vec<Evidence>,
    /// What had to be assumed to say so, one short sentence each; empty when all is written.
    pub assumptions: Vec<String>,
    /// How often the same cause shows: 1, or 1 + the number of further places.
    pub count: u32,
    /// The further places of the same cause, in order of the score.
    pub further: Vec<FindingPlace>,
    /// What other rules say of the same place, the gravest first; what they propose stands among the proposals.
    pub reasons: Vec<Reason>,
    /// What could be done, the best first; after it what the further reasons propose.
    pub proposals: Vec<Proposal>,
}

impl Finding {
    /// Something at one place, of which nothing is said yet.
    #[must_use]
    pub fn at(rule: &'static str, severity: Severity, place: FindingPlace) -> Self {
        Self {
            rule,
            severity,
            place,
            sentence: String::new(),
            evidence: Vec::new(),
            assumptions: Vec::new(),
            count: 1,
            further: Vec::new(),
            reasons: Vec::new(),
            proposals: Vec::new(),
        }
    }

    /// The rules that speak at this place, its own first.
    pub fn rules(&self) -> impl Iterator<Item = &'static str> {
        std::iter::once(self.rule).chain(self.reasons.iter().map(|reason| reason.rule))
    }
}

/// What a further rule says of the place of a finding.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Reason {
    /// Id of the rule.
    pub rule: &'static str,
    /// How much it weighs here; no more than the finding itself.
    pub severity: Severity,
    /// One sentence in a player's words, with bar and beat.
    pub sentence: String,
    /// The numbers it rests on.
    pub evidence: Vec<Evidence>,
    /// What had to be assumed to say so.
    pub assumptions: Vec<String>,
}

/// Where in the score.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct FindingPlace {
    /// Bar index in the score.
    pub bar: u32,
    /// Beat in the bar, from 1, exact: the second half of beat 3 is 7/2.
    pub beat: Length,
    /// Index of the part in the score; `None` when the whole score is meant.
    pub part: Option<usize>,
    /// The section or part by name; `"the score"` when the whole score is meant.
    pub section: String,
    /// The bar's printed number.
    pub bar_label: String,
    /// Index of the bowing line and of the stroke in it, when one stroke is meant.
    pub stroke: Option<(usize, usize)>,
    /// The notes it is about, in the part's order; may be empty.
    pub notes: Vec<NoteId>,
    /// The number of its movement (`"II"`), where the file has several.
    pub movement: Option<String>,
}

impl FindingPlace {
    /// The beat as it is said: `3`, `3½`, `2⅓`.
    #[must_use]
    pub fn beat_text(&self) -> String {
        beat_said(self.beat)
    }
}

/// A number that a finding rests on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Evidence {
    /// What was measured or looked up, in words.
    pub name: &'static str,
    /// The value.
    pub value: Figure,
    /// Its unit, as printed after the value; empty for pure numbers and words.
    pub unit: &'static str,
}

/// A value of evidence. Fractions are thousandths, so that they compare and print alike everywhere.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Figure {
    /// A whole number.
    Whole(i64),
    /// A number in thousandths of its unit.
    Thousandths(i64),
    /// A word: a dynamic, a mark.
    Word(String),
}

impl fmt::Display for Figure {
    /// Thousandths are rounded to two places, and noughts at the end are left out.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Whole(value) => write!(f, "{value}"),
            Self::Word(word) => f.write_str(word),
            Self::Thousandths(value) => {
                let hundredths = (value.unsigned_abs() + 5) / 10;
                let sign = if *value < 0 && hundredths > 0 { "−" } else { "" };
                match (hundredths / 100, hundredths % 100) {
                    (whole, 0) => write!(f, "{sign}{whole}"),
                    (whole, part) if part % 10 == 0 => write!(f, "{sign}{whole}.{}", part / 10),
                    (whole, part) => write!(f, "{sign}{whole}.{part:02}"),
                }
            }
        }
    }
}

impl fmt::Display for Evidence {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let gap = if self.unit.is_empty() { "" } else { " " };
        write!(f, "{}: {}{gap}{}", self.name, self.value, self.unit)
    }
}

/// What accepting a proposal touches. The order is from the least to the most intrusive.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Grade {
    /// Marks only, and every stroke stays as it is.
    Safe,
    /// Marks only, but the arm does something else.
    PlayersChoice,
    /// The notation itself: slurs, dynamics, words. Only ever by an explicit act.
    WritersChoice,
}

impl Grade {
    /// The grade in words.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Safe => "safe",
            Self::PlayersChoice => "player's choice",
            Self::WritersChoice => "writer's choice",
        }
    }
}

/// The kinds of proposal.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ProposalKind {
    /// A slur in two.
    Split,
    /// Two strokes in one.
    Join,
    /// A slur's end on another note.
    Shift,
    /// Two strokes in one direction, stopped on the string.
    Hook,
    /// Lift, and the same direction again.
    Retake,
    /// Begin on the other bow.
    Start,
    /// Add a bow mark.
    Mark,
    /// Take a bow mark out.
    Unmark,
    /// A text instruction.
    Word,
    /// Say a state: arco, unis., a dynamic, a tempo.
    State,
    /// Players change bow at different times.
    Stagger,
    /// A slur drawn as a phrase mark, which leaves the bow free.
    Phrase,
    /// The slurs or marks of another place or part.
    Copy,
}

impl ProposalKind {
    /// The kind in one word, as in reports and settings.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Split => "split",
            Self::Join => "join",
            Self::Shift => "shift",
            Self::Hook => "hook",
            Self::Retake => "retake",
            Self::Start => "start",
            Self::Mark => "mark",
            Self::Unmark => "unmark",
            Self::Word => "word",
            Self::State => "state",
            Self::Stagger => "stagger",
            Self::Phrase => "phrase",
            Self::Copy => "copy",
        }
    }
}

/// A change offered. Nothing is changed until somebody accepts one.
#[derive(Clone, Debug, PartialEq)]
pub struct Proposal {
    /// What accepting it touches.
    pub grade: Grade,
    /// What kind of change.
    pub kind: ProposalKind,
    /// One sentence that begins with a verb.
    pub sentence: String,
    /// The change as byte edits, sorted and disjoint; empty when it is for the pencil, not the file.
    pub edits: Vec<Edit>,
    /// What it would look like at the first place, as byte edits, where `edits` is empty: for a picture, not
    /// for the file. Empty too where nothing of it can be seen.
    pub sketch: Vec<Edit>,
    /// What the bow plan would cost less (negative) or more, term by term, when it was computed.
    pub cost_change: Option<Cost>,
}

impl Proposal {
    /// A proposal in words, without edits, sketch or price.
    #[must_use]
    pub fn new(grade: Grade, kind: ProposalKind, sentence: impl Into<String>) -> Self {
        let sentence = sentence.into();
        Self { grade, kind, sentence, edits: Vec::new(), sketch: Vec::new(), cost_change: None }
    }
}
