//! The audit of printed bow marks as data.

use std::collections::BTreeMap;
use std::sync::Arc;

use arcata_bow::audit::{AuditedMark, MarkClass};
use arcata_bow::plan::least_marks;
use arcata_bow::{Line, Plan, Profile};
use arcata_languages::{Saying, Wording};
use arcata_review::beats::beat_in_bar;
use arcata_score::places::{beat_exact, beat_said};
use arcata_score::{Length, Score};
use schemars::JsonSchema;
use serde::Serialize;

use crate::plan_view::direction_name;

/// The audit of one score.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct MarksView {
    /// Always `arcata-marks`.
    #[schemars(extend("const" = "arcata-marks"))]
    pub format: &'static str,
    /// Version of this format.
    #[schemars(extend("const" = 1))]
    pub version: u32,
    /// The file as named.
    pub file: String,
    /// Title of the work.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// What was assumed because the score does not say it.
    pub assumptions: Vec<String>,
    /// The parts that were looked at.
    pub parts: Vec<MarkedPartView>,
    /// All of them together.
    pub total: CountsView,
}

/// One part.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct MarkedPartView {
    /// Name.
    pub name: String,
    /// What was counted.
    #[serde(flatten)]
    pub counts: CountsView,
    /// Every printed mark, in order.
    pub printed: Vec<MarkView>,
}

/// What was counted.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, JsonSchema)]
pub struct CountsView {
    /// Strokes of the bow.
    pub strokes: usize,
    /// Printed down- and up-bow marks.
    pub marks: usize,
    /// Those without which players would bow otherwise, or could.
    pub needed: usize,
    /// Those that belong to an effect.
    pub effect: usize,
    /// Those that would come anyway.
    pub obvious: usize,
    /// Those that contradict what they stand on or beside.
    pub contradictory: usize,
    /// The fewest marks from which players bowing as it comes would do the same.
    pub least: usize,
    /// The marks by reason.
    pub reasons: BTreeMap<String, usize>,
}

/// One printed mark.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct MarkView {
    /// The number of its movement, where the file has several.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub movement: Option<String>,
    /// Bar as printed.
    pub bar: String,
    /// Bar by position in the file, from 1.
    pub bar_ordinal: u32,
    /// Beat from 1 as an exact fraction.
    pub beat: String,
    /// The beat as it is said.
    #[serde(skip)]
    pub spoken_beat: String,
    /// `down` or `up`.
    pub direction: &'static str,
    /// `needed`, `effect`, `obvious` or `contradictory`.
    pub class: &'static str,
    /// Why, in words.
    pub reason: String,
}

impl CountsView {
    /// The marks of a class.
    #[must_use]
    pub const fn of(&self, class: MarkClass) -> usize {
        match class {
            MarkClass::Needed => self.needed,
            MarkClass::Effect => self.effect,
            MarkClass::Obvious => self.obvious,
            MarkClass::Contradictory => self.contradictory,
        }
    }

    fn count(&mut self, mark: &AuditedMark) {
        self.marks += 1;
        match mark.reason.class() {
            MarkClass::Needed => self.needed += 1,
            MarkClass::Effect => self.effect += 1,
            MarkClass::Obvious => self.obvious += 1,
            MarkClass::Contradictory => self.contradictory += 1,
        }
        // In JSON the reasons are keys, and keys are English.
        *self.reasons.entry(reason(mark, &Wording::default())).or_default() += 1;
    }

    fn add(&mut self, other: &Self) {
        self.strokes += other.strokes;
        self.marks += other.marks;
        self.needed += other.needed;
        self.effect += other.effect;
        self.obvious += other.obvious;
        self.contradictory += other.contradictory;
        self.least += other.least;
        for (reason, count) in &other.reasons {
            *self.reasons.entry(reason.clone()).or_default() += count;
        }
    }
}

impl MarksView {
    /// The audit of a score. `marks` are those to be counted; strokes and fewest marks are counted where
    /// `counts_stroke` says so of a bar (index), so that a view of some bars counts those bars alone.
    #[must_use]
    pub fn new(
        file: &str,
        score: &Score,
        (lines, plans): (&[Line], &[Arc<Plan>]),
        marks: &[AuditedMark],
        (profile, wording): (&Profile, &Wording),
        counts_bar: impl Fn(u32) -> bool,
    ) -> Self {
        let mut parts: BTreeMap<usize, MarkedPartView> = BTreeMap::new();
        for (line, plan) in lines.iter().zip(plans) {
            let counts = &mut part(&mut parts, score, line.part).counts;
            let in_bars =
                |stroke: usize| line.strokes.get(stroke).is_some_and(|stroke| counts_bar(stroke.bar));
            counts.strokes += (0..line.strokes.len()).filter(|stroke| in_bars(*stroke)).count();
            let reach = profile.plan_settings(line.instrument).reach;
            counts.least += least_marks(line, plan, reach).iter().filter(|mark| in_bars(mark.stroke)).count();
        }
        for mark in marks {
            let seen = part(&mut parts, score, mark.part);
            seen.counts.count(mark);
            seen.printed.extend(MarkView::of(score, mark, wording));
        }
        let parts: Vec<MarkedPartView> = parts.into_values().collect();
        let mut total = CountsView::default();
        parts.iter().for_each(|part| total.add(&part.counts));
        Self {
            format: "arcata-marks",
            version: 1,
            file: file.to_owned(),
            title: score.title.clone(),
            assumptions: Vec::new(),
            parts,
            total,
        }
    }
}

fn part<'p>(
    parts: &'p mut BTreeMap<usize, MarkedPartView>,
    score: &Score,
    index: usize,
) -> &'p mut MarkedPartView {
    let name = || score.parts.get(index).map_or_else(String::new, |part| part.name.clone());
    parts.entry(index).or_insert_with(|| MarkedPartView {
        name: name(),
        counts: CountsView::default(),
        printed: Vec::new(),
    })
}

/// What a mark is for, in words.
fn reason(mark: &AuditedMark, wording: &Wording) -> String {
    wording.say(&Saying::new("mark-reason").choosing("reason", mark.reason.name()))
}

impl MarkView {
    fn of(score: &Score, mark: &AuditedMark, wording: &Wording) -> Option<Self> {
        let part = score.parts.get(mark.part)?;
        let note = part.notes.get(mark.note.0 as usize)?;
        let offset = score.offset_in_bar(note.onset, note.bar);
        let beat = part.meter_at(note.bar).map_or(Length::new(1, 1), |meter| beat_in_bar(meter, offset));
        Some(Self {
            movement: score.movement_said(note.bar).map(str::to_owned),
            bar: score.bar_label(note.bar).to_owned(),
            bar_ordinal: note.bar + 1,
            beat: beat_exact(beat),
            spoken_beat: beat_said(beat),
            direction: direction_name(mark.direction),
            class: mark.reason.class().name(),
            reason: reason(mark, wording),
        })
    }
}
