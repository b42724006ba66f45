//! What is measured of a hand-in: counts of what stands on the page, never of what somebody is worth.

use std::collections::BTreeMap;

use arcata_analysis::Snapshot;
use arcata_bow::stroke::MetricPlace;
use arcata_languages::{Argument, Wording};
use arcata_score::{BowDirection, ChordRole, NoteKind};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::Words;

/// Something that is measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum ClassMeasure {
    /// Bars of the score.
    Bars,
    /// Notes of the bowed parts.
    Notes,
    /// Slurs in a hundred notes.
    Slurs,
    /// Printed bow marks in a hundred notes.
    BowMarks,
    /// Dynamics, hairpins and words for them in ten bars.
    Dynamics,
    /// Signs on notes in a hundred notes.
    Articulations,
    /// The longest slur, tenths of a second.
    LongestSlur,
    /// Downbeats that fall on a down-bow, of a hundred that begin a stroke.
    DownbeatsDown,
}

/// What was measured.
pub type Measures = BTreeMap<ClassMeasure, i64>;

impl ClassMeasure {
    /// All of them.
    pub const ALL: [Self; 8] = [
        Self::Bars,
        Self::Notes,
        Self::Slurs,
        Self::BowMarks,
        Self::Dynamics,
        Self::Articulations,
        Self::LongestSlur,
        Self::DownbeatsDown,
    ];

    /// Key of its words, and its name in tables.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Bars => "measure-bars",
            Self::Notes => "measure-notes",
            Self::Slurs => "measure-slurs",
            Self::BowMarks => "measure-bow-marks",
            Self::Dynamics => "measure-dynamics",
            Self::Articulations => "measure-articulations",
            Self::LongestSlur => "measure-longest-slur",
            Self::DownbeatsDown => "measure-downbeats-down",
        }
    }

    /// A value of it as it is said, with the decimal mark of the language.
    ///
    /// ```
    /// use arcata_class::{ClassMeasure, Words};
    /// use arcata_languages::Language;
    ///
    /// assert_eq!(ClassMeasure::LongestSlur.said(133, &Words::of(Language::English)), "13.3 s");
    /// assert_eq!(ClassMeasure::LongestSlur.said(133, &Words::of(Language::German)), "13,3 s");
    /// ```
    #[must_use]
    pub fn said(self, value: i64, words: &Words) -> String {
        match self {
            Self::LongestSlur => {
                format!("{} s", Wording::of(words.language()).argument(&Argument::Tenths(value)))
            }
            Self::DownbeatsDown => format!("{value} %"),
            _ => value.to_string(),
        }
    }
}

/// Measures a score.
pub(crate) fn measured(snapshot: &Snapshot) -> Measures {
    let score = snapshot.score();
    let bowed = || score.parts.iter().filter(|part| part.instrument.is_bowed());
    let notes = || {
        bowed().flat_map(|part| &part.notes).filter(|note| {
            note.chord == ChordRole::Main && note.kind == NoteKind::Ordinary && !note.pitch.is_rest()
        })
    };
    let count = |count: usize| i64::try_from(count).unwrap_or(i64::MAX);
    let (bars, all) = (count(score.bars.len()), count(notes().count()));
    let in_notes = |counted: usize| (count(counted) * 100).checked_div(all).unwrap_or_default();
    let dynamics = bowed().map(|part| part.dynamics.len() + part.swells.len()).sum::<usize>();
    let slurred =
        snapshot.lines().iter().flat_map(|line| &line.strokes).filter(|stroke| stroke.note_count > 1);
    let longest = slurred.map(|stroke| stroke.duration.micros / 100_000).max().unwrap_or_default();
    let strokes = snapshot
        .lines()
        .iter()
        .zip(snapshot.plans())
        .flat_map(|(line, plan)| line.strokes.iter().zip(&plan.strokes));
    let downbeats: Vec<BowDirection> = strokes
        .filter(|(stroke, _)| stroke.emphasis.metric == MetricPlace::Downbeat)
        .map(|(_, planned)| planned.direction)
        .collect();
    let down = downbeats.iter().filter(|direction| **direction == BowDirection::Down).count();
    let mut measures = Measures::from([
        (ClassMeasure::Bars, bars),
        (ClassMeasure::Notes, all),
        (ClassMeasure::Slurs, in_notes(bowed().map(|part| part.slurs.len()).sum())),
        (ClassMeasure::BowMarks, in_notes(notes().filter(|note| note.bow_mark.is_some()).count())),
        (ClassMeasure::Dynamics, (count(dynamics) * 10).checked_div(bars).unwrap_or_default()),
        (
            ClassMeasure::Articulations,
            in_notes(notes().filter(|note| !note.articulations.is_empty()).count()),
        ),
        (ClassMeasure::LongestSlur, longest),
    ]);
    if !downbeats.is_empty() {
        measures.insert(ClassMeasure::DownbeatsDown, count(down) * 100 / count(downbeats.len()));
    }
    measures
}
