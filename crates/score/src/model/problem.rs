//! What reading found wrong.

use arcata_xml::NodeId;

/// Something in the file that contradicts itself or that no music can be made of.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Problem {
    /// What is wrong.
    pub kind: ProblemKind,
    /// The element that shows it.
    pub node: Option<NodeId>,
    /// Part index, when it belongs to one.
    pub part: Option<u32>,
    /// Bar index, when it belongs to one.
    pub bar: Option<u32>,
    /// One sentence for people, without the place.
    pub message: String,
}

/// The kinds of problem.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ProblemKind {
    /// The document is XML, but no score.
    NotAScore,
    /// A part without a `<score-part>`, or the other way round.
    PartMismatch,
    /// `<divisions>` missing, zero, negative or not a number.
    Divisions,
    /// A duration that is missing, negative or not a number.
    Duration,
    /// A duration that its note value contradicts.
    ValueContradictsDuration,
    /// The notes of a voice do not fill the bar.
    BarUnderfull,
    /// The notes of a voice overflow the bar.
    BarOverfull,
    /// A `<backup>` that leaves the bar.
    BackupBeforeBar,
    /// A slur with one end, or reused before its end.
    Slur,
    /// A tie with one end, or between two pitches.
    Tie,
    /// A wedge or dashes with one end.
    Swell,
    /// A tempo that is zero, negative or not a number.
    Tempo,
    /// A time signature that cannot be read.
    Meter,
    /// A pitch that cannot be read.
    Pitch,
    /// A repeat or ending without its partner.
    Repeat,
    /// Anything else: the message tells.
    Other,
}
