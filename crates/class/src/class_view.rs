//! What the class shows together.

use std::collections::{BTreeMap, BTreeSet};

use crate::{ClassMeasure, HandIn, RecordedPassage, Task};

/// Groups of fewer are not broken down in what leaves the teacher's machine: who is meant could be guessed.
pub const LEAST_GROUP: usize = 10;
/// Examples for each rule.
const EXAMPLES: usize = 3;
/// Hand-ins told at each end of a measure.
const OUTLIERS: usize = 3;
/// How far from the middle half of the class a value lies that is told, hundredths of the width of that half (Tukey's fences,
/// Exploratory Data Analysis, 1977).
const FENCE: i64 = 150;

/// What the class shows together.
#[derive(Debug)]
pub struct ClassView<'a> {
    /// Hand-ins that were read.
    pub read: usize,
    /// Rules that somebody met, and those that the task trains, the most often met first.
    pub rules: Vec<RuleRow<'a>>,
    /// Values far from the others, by measure.
    pub outliers: Vec<Outlier<'a>>,
    /// For each measure what lies in the middle, and the ends of the middle half.
    pub middles: BTreeMap<ClassMeasure, (i64, i64, i64)>,
}

/// A rule, and who met it.
#[derive(Debug)]
pub struct RuleRow<'a> {
    /// Its id.
    pub rule: String,
    /// Hand-ins that met it.
    pub met: usize,
    /// Passages that are good to show, each of another hand-in.
    pub examples: Vec<&'a RecordedPassage>,
}

/// Values of a measure that lie far from the others.
#[derive(Debug)]
pub struct Outlier<'a> {
    /// Which measure.
    pub measure: ClassMeasure,
    /// The lowest, lowest first: name and value.
    pub low: Vec<(&'a HandIn<'a>, i64)>,
    /// The highest, highest first.
    pub high: Vec<(&'a HandIn<'a>, i64)>,
}

impl<'a> ClassView<'a> {
    /// From what the hand-ins show.
    #[must_use]
    pub fn new(hand_ins: &'a [HandIn<'a>], task: &Task) -> Self {
        let shown = || hand_ins.iter().filter_map(|hand_in| hand_in.record.shown());
        let mut ids: BTreeSet<&str> =
            shown().flat_map(|shown| shown.met.keys()).map(String::as_str).collect();
        ids.extend(task.trains.iter().map(String::as_str));
        ids.extend(task.expects.iter().map(|expected| expected.id()));
        let mut rules: Vec<RuleRow<'_>> = ids
            .into_iter()
            .map(|rule| RuleRow {
                rule: rule.to_owned(),
                met: shown().filter(|shown| shown.met.contains_key(rule)).count(),
                examples: examples(hand_ins, rule),
            })
            .collect();
        rules.sort_by(|one, other| other.met.cmp(&one.met).then_with(|| one.rule.cmp(&other.rule)));
        let mut view = Self { read: shown().count(), rules, outliers: Vec::new(), middles: BTreeMap::new() };
        for measure in ClassMeasure::ALL {
            view.measure(measure, hand_ins);
        }
        view
    }

    fn measure(&mut self, measure: ClassMeasure, hand_ins: &'a [HandIn<'a>]) {
        let value = |hand_in: &HandIn<'_>| hand_in.record.shown()?.measures.get(&measure).copied();
        let mut values: Vec<(&HandIn<'_>, i64)> =
            hand_ins.iter().filter_map(|hand_in| Some((hand_in, value(hand_in)?))).collect();
        values.sort_by_key(|(_, value)| *value);
        let at = |quarter: usize| {
            values.get((values.len().saturating_sub(1)) * quarter / 4).map(|(_, value)| *value)
        };
        let (Some(low), Some(middle), Some(high)) = (at(1), at(2), at(3)) else { return };
        self.middles.insert(measure, (low, middle, high));
        let room = (high - low).max(1) * FENCE / 100;
        let below = values.iter().filter(|(_, value)| *value < low - room).take(OUTLIERS);
        let above = values.iter().rev().filter(|(_, value)| *value > high + room).take(OUTLIERS);
        let outlier = Outlier { measure, low: below.copied().collect(), high: above.copied().collect() };
        if !outlier.low.is_empty() || !outlier.high.is_empty() {
            self.outliers.push(outlier);
        }
    }
}

/// Passages of a rule with a picture, small ones first: they are quick to look at together.
fn examples<'a>(hand_ins: &'a [HandIn<'a>], rule: &str) -> Vec<&'a RecordedPassage> {
    let passages = hand_ins.iter().filter_map(|hand_in| {
        let passages = &hand_in.record.shown()?.passages;
        passages.iter().find(|passage| passage.rule == rule && passage.now.is_some())
    });
    let mut passages: Vec<&RecordedPassage> = passages.collect();
    let size = |passage: &RecordedPassage| passage.now.as_ref().map_or(0, |now| now.svg.len());
    passages.sort_by_key(|passage| size(passage));
    passages.truncate(EXAMPLES);
    passages
}
