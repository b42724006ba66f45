//! What a review hands out: findings, each with its place, its numbers and its proposals.

use std::fmt;

use arcata_bow::Cost;
use arcata_languages::{Argument, SaidPlace, Saying, Wording};
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
    /// The key of what the letter means, one line.
    #[must_use]
    pub const fn meaning(self) -> &'static str {
        match self {
            Self::A => "severity-a",
            Self::B => "severity-b",
            Self::C => "severity-c",
            Self::D => "severity-d",
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
    pub sentence: Saying,
    /// The numbers it rests on.
    pub evidence: Vec<Evidence>,
    /// What had to be assumed to say so, one short sentence each; empty when all is written.
    pub assumptions: Vec<Saying>,
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
            sentence: Saying::new("say-nothing"),
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
    pub sentence: Saying,
    /// The numbers it rests on.
    pub evidence: Vec<Evidence>,
    /// What had to be assumed to say so.
    pub assumptions: Vec<Saying>,
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
    /// The section or part by name; empty when the whole score is meant.
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
    /// The place as sentences name it.
    #[must_use]
    pub fn said(&self) -> SaidPlace {
        SaidPlace::bar(&self.bar_label).of_movement(self.movement.as_deref()).on_beat(self.beat)
    }

    /// The beat as it is said: `3`, `3½`, `2⅓`.
    #[must_use]
    pub fn beat_text(&self) -> String {
        beat_said(self.beat)
    }

    /// The section by name, or the word for the whole score.
    #[must_use]
    pub fn section_said(&self, wording: &Wording) -> String {
        match self.part {
            Some(_) => self.section.clone(),
            None => wording.word("the-score"),
        }
    }
}

/// A number that a finding rests on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Evidence {
    /// The key of what was measured or looked up.
    pub name: &'static str,
    /// The value. Fractions are thousandths, so that they compare and print alike everywhere.
    pub value: Argument,
    /// The key of its unit, which is printed after the value; empty for pure numbers and words.
    pub unit: &'static str,
}

impl Evidence {
    /// What was measured, the value and its unit, in words.
    #[must_use]
    pub fn said(&self, wording: &Wording) -> [String; 3] {
        let unit = if self.unit.is_empty() { String::new() } else { wording.word(self.unit) };
        [wording.word(self.name), wording.argument(&self.value), unit]
    }

    /// All three in a row: `slur lasts: 6.2 s`.
    #[must_use]
    pub fn line(&self, wording: &Wording) -> String {
        let [name, value, unit] = self.said(wording);
        let gap = if unit.is_empty() { "" } else { " " };
        format!("{name}: {value}{gap}{unit}")
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
    /// The grade in words, as JSON has it; `grade-` and its key lead to it in other languages ([`Self::key`]).
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Safe => "safe",
            Self::PlayersChoice => "player's choice",
            Self::WritersChoice => "writer's choice",
        }
    }

    /// The key of its name.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Safe => "grade-safe",
            Self::PlayersChoice => "grade-player",
            Self::WritersChoice => "grade-writer",
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
    pub sentence: Saying,
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
    pub fn new(grade: Grade, kind: ProposalKind, sentence: Saying) -> Self {
        Self { grade, kind, sentence, edits: Vec::new(), sketch: Vec::new(), cost_change: None }
    }
}
