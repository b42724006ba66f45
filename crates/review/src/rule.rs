//! What a rule is, and what it is given.

use std::sync::Arc;

use arcata_bow::{Line, Plan, PlannedStroke, Reading, Stroke};
use arcata_score::{Part, Score};
use arcata_xml::Document;

use crate::{Findings, Profile, Severity};

/// What a rule says about itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Card {
    /// Its name: lower-case words with hyphens, naming the trouble, not the remedy.
    pub id: &'static str,
    /// The chapter of the manual it belongs to.
    pub family: Family,
    /// The gravest it can report.
    pub gravest: Severity,
    /// The lightest it can report.
    pub lightest: Severity,
    /// What of the music it looks at. A proposal that changes some of it is tried against this rule.
    pub reads: &'static [Reads],
    /// The version it first appeared in.
    pub since: &'static str,
    /// What it finds, as a heading: a noun phrase without a full stop.
    pub title: &'static str,
}

/// What of the music a rule looks at, as far as proposals change it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Reads {
    /// Slurs as they are drawn.
    Slurs,
    /// Ties as they are drawn.
    Ties,
    /// Where bows begin and end, how long they last, of what kind they are.
    Strokes,
    /// Which way the bow goes, from where to where.
    Bows,
    /// Printed down- and up-bows.
    BowMarks,
    /// Dots, dashes, accents.
    Marks,
    /// Words to the player: pizz., div., spicc.
    Words,
}

/// The chapters of the review.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Family {
    /// Length of the bow.
    Length,
    /// Slurs as written.
    Slurs,
    /// The beat.
    Beat,
    /// Direction and dynamics.
    Direction,
    /// Kinds of stroke.
    Kinds,
    /// States and time.
    States,
    /// The left hand, where the bow needs it.
    Hand,
    /// Between parts.
    Between,
    /// Bow marks.
    Marks,
    /// Parts.
    Parts,
}

impl Family {
    /// All chapters in order.
    pub const ALL: [Self; 10] = [
        Self::Length,
        Self::Slurs,
        Self::Beat,
        Self::Direction,
        Self::Kinds,
        Self::States,
        Self::Hand,
        Self::Between,
        Self::Marks,
        Self::Parts,
    ];

    /// Folder and key: one lower-case word.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Length => "length",
            Self::Slurs => "slurs",
            Self::Beat => "beat",
            Self::Direction => "direction",
            Self::Kinds => "kinds",
            Self::States => "states",
            Self::Hand => "hand",
            Self::Between => "between",
            Self::Marks => "marks",
            Self::Parts => "parts",
        }
    }

    /// The chapter's heading.
    #[must_use]
    pub const fn title(self) -> &'static str {
        match self {
            Self::Length => "Length of the bow",
            Self::Slurs => "Slurs as written",
            Self::Beat => "The beat",
            Self::Direction => "Direction and dynamics",
            Self::Kinds => "Kinds of stroke",
            Self::States => "Ways of playing, and time to change them",
            Self::Hand => "The left hand, where the bow needs it",
            Self::Between => "Between parts",
            Self::Marks => "Bow marks",
            Self::Parts => "Parts",
        }
    }
}

/// How much of a file a rule is given at once.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sees {
    /// One movement after another, each as if it were alone in its file.
    EachMovement,
    /// The whole file.
    WholeFile,
}

/// One question put to a piece of music.
///
/// A rule is one file, `rules/<family>/<rule>.rs`. Its module documentation is its page in the manual.
pub trait Rule {
    /// What it says about itself.
    const CARD: Card;

    /// How much of a file it must see at once.
    const SEES: Sees = Sees::EachMovement;

    /// Puts the question to the whole piece and hands in what it finds, in any order.
    fn check(piece: &Piece<'_>, found: &mut Findings<'_>);
}

/// Everything a rule may look at.
#[derive(Clone, Copy, Debug)]
pub struct Piece<'a> {
    /// The file, when there is one; without it proposals carry no edits, and other bows are not looked for.
    pub document: Option<&'a Document>,
    /// The music.
    pub score: &'a Score,
    /// The bowing lines.
    pub lines: &'a [Line],
    /// A plan for each line, in the same order. A line whose plan is missing or of another length is
    /// looked at without directions.
    pub plans: &'a [Arc<Plan>],
    /// What the lines were read by, so that other slurs can be tried on their notes; without it nothing
    /// is proposed that only a search among other slurs finds.
    pub reading: Option<&'a Reading<'a>>,
    /// The player: thresholds, words, mechanics.
    pub profile: &'a Profile,
    /// Parts of the score in files of their own.
    pub beside: &'a [Beside],
}

/// A file with a part, or parts, of the score.
#[derive(Clone, Debug)]
pub struct Beside {
    /// What it is called.
    pub name: String,
    /// What it holds.
    pub score: Score,
}

impl Beside {
    /// Takes the staves called "beside …" out of a score: in examples each stands for the file of a part.
    #[must_use]
    pub fn taken_out(score: &mut Score) -> Vec<Self> {
        const BESIDE: &str = "beside ";
        let all = score.clone();
        score.parts.retain(|part| !part.name.starts_with(BESIDE));
        let apart = all.parts.iter().filter(|part| part.name.starts_with(BESIDE));
        apart
            .map(|part| {
                let name = part.name.trim_start_matches(BESIDE).to_owned();
                let part = Part { name: name.clone(), abbreviation: String::new(), ..part.clone() };
                Self { name: format!("The part {name}"), score: Score { parts: vec![part], ..all.clone() } }
            })
            .collect()
    }
}

impl<'a> Piece<'a> {
    /// The planned strokes of a line; empty when it has no plan that fits.
    #[must_use]
    pub fn planned(&self, line: usize) -> &'a [PlannedStroke] {
        let strokes = self.lines.get(line).map_or(0, |line| line.strokes.len());
        match self.plans.get(line) {
            Some(plan) if plan.strokes.len() == strokes => &plan.strokes,
            _ => &[],
        }
    }

    /// Every stroke with its plan: (line index, stroke index, stroke, planned).
    pub fn planned_strokes(
        &self,
    ) -> impl Iterator<Item = (usize, usize, &'a Stroke, &'a PlannedStroke)> + '_ {
        self.lines.iter().enumerate().flat_map(|(at, line)| {
            let both = line.strokes.iter().zip(self.planned(at));
            both.enumerate().map(move |(index, (stroke, planned))| (at, index, stroke, planned))
        })
    }
}
