//! What was given with the task: a melody that must stay, models to compare with.

use std::collections::{BTreeMap, BTreeSet};

use arcata_analysis::Snapshot;
use arcata_score::{BowDirection, Length, Moment, NoteKind, Part, Score};

use crate::SaidOnSheet;
use crate::alike::grams;
use crate::runs::listed;

/// Pieces of lists of bars.
const LISTED: usize = 12;

/// What hand-ins are compared with.
#[derive(Clone, Debug, Default)]
pub struct GivenMaterial {
    /// A melody that must stay.
    pub melody: Option<Melody>,
    /// Ways to solve the task.
    pub models: Vec<ModelScore>,
    /// What everybody was given, as traces are made of it: no sign that two hand-ins are alike.
    pub grams: BTreeSet<u64>,
}

/// What sounds in a bar: offset, length, pitch in cents.
type GivenBar = Vec<(Length, Length, i32)>;

/// A melody that must stay.
#[derive(Clone, Debug)]
pub struct Melody {
    bars: Vec<GivenBar>,
    /// The bowed part of hand-ins that holds it, from 1; none searches for it.
    part: Option<usize>,
}

/// A way to solve the task.
#[derive(Clone, Debug)]
pub struct ModelScore {
    name: String,
    /// Slurs and bow marks by bowed part and bar.
    bowing: BTreeMap<(usize, u32), ModelBowing>,
}

/// What is written of the bow in a bar: slurs by where they begin and end, bow marks.
type ModelBowing = BTreeSet<(Length, Option<Moment>, Option<BowDirection>)>;

impl Melody {
    /// From the first part of a score that has notes.
    #[must_use]
    pub fn new(score: &Score, part: Option<usize>) -> Option<Self> {
        let first =
            score.parts.iter().find(|part| part.notes.iter().any(|note| note.pitch.cents().is_some()))?;
        Some(Self { bars: bars(score, first), part })
    }

    /// What the melody itself leaves as traces.
    #[must_use]
    pub fn grams(score: &Score) -> BTreeSet<u64> {
        score.parts.iter().flat_map(grams).map(|(gram, _)| gram).collect()
    }

    /// The bars of a part that are not as in the melody, by index.
    fn changed(&self, bars: &[GivenBar]) -> Vec<u32> {
        let empty = GivenBar::new();
        let differs = |bar: &usize| self.bars[*bar] != *bars.get(*bar).unwrap_or(&empty);
        (0..self.bars.len()).filter(differs).filter_map(|bar| u32::try_from(bar).ok()).collect()
    }
}

/// What sounds in each bar of a part; sounding pitch, so that clefs and transposition do not matter.
fn bars(score: &Score, part: &Part) -> Vec<GivenBar> {
    let mut bars = vec![GivenBar::new(); score.bars.len()];
    for note in part.notes.iter().filter(|note| note.kind == NoteKind::Ordinary) {
        let (Some(cents), Some(bar)) = (note.pitch.cents(), bars.get_mut(note.bar as usize)) else {
            continue;
        };
        bar.push((score.offset_in_bar(note.onset, note.bar), note.length, cents + part.transpose_cents));
    }
    bars.iter_mut().for_each(|bar| bar.sort());
    bars
}

impl ModelScore {
    /// A model by its name and its score, with the marks of its layer in it if it has one.
    #[must_use]
    pub fn new(name: &str, score: &Score) -> Self {
        Self { name: name.to_owned(), bowing: bowing(score) }
    }
}

fn bowing(score: &Score) -> BTreeMap<(usize, u32), ModelBowing> {
    let mut all: BTreeMap<(usize, u32), ModelBowing> = BTreeMap::new();
    let bowed = score.parts.iter().filter(|part| part.instrument.is_bowed());
    for (index, part) in bowed.enumerate() {
        for slur in &part.slurs {
            let (start, end) = (part.note(slur.start), part.note(slur.end));
            let offset = score.offset_in_bar(start.onset, start.bar);
            all.entry((index, start.bar)).or_default().insert((offset, Some(end.onset), None));
        }
        for note in &part.notes {
            if let Some(mark) = &note.bow_mark {
                let offset = score.offset_in_bar(note.onset, note.bar);
                all.entry((index, note.bar)).or_default().insert((offset, None, Some(mark.direction)));
            }
        }
    }
    all
}

/// What is told of the melody and of the models.
pub(crate) fn told(snapshot: &Snapshot, material: &GivenMaterial) -> Vec<SaidOnSheet> {
    let score = snapshot.score();
    let melody = material.melody.as_ref().and_then(|melody| melody_told(score, melody));
    let models = material.models.iter().filter_map(|model| model_told(score, model));
    melody.into_iter().chain(models).collect()
}

fn label(score: &Score, bar: u32) -> String {
    score.bars.get(bar as usize).map_or_else(|| (bar + 1).to_string(), |bar| bar.label.clone())
}

fn melody_told(score: &Score, melody: &Melody) -> Option<SaidOnSheet> {
    let bowed: Vec<&Part> = score.parts.iter().filter(|part| part.instrument.is_bowed()).collect();
    let candidates: Vec<&Part> = match melody.part {
        Some(number) => bowed.get(number - 1).copied().into_iter().collect(),
        None => bowed,
    };
    let changed = candidates.into_iter().map(|part| (melody.changed(&bars(score, part)), part));
    let (changed, part) = changed.min_by_key(|(changed, _)| changed.len())?;
    Some(if changed.is_empty() {
        SaidOnSheet::new("given-melody-stays").with("part", &part.name)
    } else if changed.len() == melody.bars.len() {
        SaidOnSheet::new("given-melody-missing")
    } else {
        let bars = listed(&changed, |bar| label(score, bar), LISTED);
        SaidOnSheet::new("given-melody-changed").with("part", &part.name).with("bars", bars)
    })
}

fn model_told(score: &Score, model: &ModelScore) -> Option<SaidOnSheet> {
    let own = bowing(score);
    let bars: BTreeSet<(usize, u32)> = own.keys().chain(model.bowing.keys()).copied().collect();
    let nothing = ModelBowing::new();
    let same = |place: &&(usize, u32)| {
        own.get(place).unwrap_or(&nothing) == model.bowing.get(place).unwrap_or(&nothing)
    };
    if bars.is_empty() {
        return None;
    }
    let alike = bars.iter().filter(same).count();
    let mut other: Vec<u32> = bars.iter().filter(|place| !same(place)).map(|(_, bar)| *bar).collect();
    other.sort_unstable();
    let key = if other.is_empty() { "given-model-same" } else { "given-model-other" };
    Some(
        SaidOnSheet::new(key)
            .with("model", &model.name)
            .with("same", alike)
            .with("all", bars.len())
            .with("bars", listed(&other, |bar| label(score, bar), LISTED)),
    )
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use arcata_analysis::{Config, Ground, Source};

    use super::*;

    fn source(fixture: &str) -> Source {
        Source::open(arcata_testkit::musicxml(fixture).into_bytes()).expect("a score")
    }

    fn keys(fixture: &str, material: &GivenMaterial) -> Vec<(String, String)> {
        let snapshot = Snapshot::new(Arc::new(Ground::new(source(fixture), Config::usual())));
        let said = told(&snapshot, material).into_iter();
        said.map(|said| (said.key, said.with.get("bars").cloned().unwrap_or_default())).collect()
    }

    #[test]
    fn a_changed_note_is_told_by_its_bar_and_a_slur_is_none() {
        let melody = source("violin: 1/4 C5 D5 E5 F5 | G5 F5 E5 D5 | 1/1 C5 |||").score;
        let material = GivenMaterial { melody: Melody::new(&melody, None), ..GivenMaterial::default() };
        let kept = "violin: (1/4 C5 D5) (E5 F5) | (G5 F5 E5 D5) | 1/1 C5 |||";
        assert_eq!(keys(kept, &material), [("given-melody-stays".to_owned(), String::new())]);
        let changed = "violin: 1/4 C5 D5 E5 F5 | G5 A5 E5 D5 | 1/1 C5 |||";
        assert_eq!(keys(changed, &material), [("given-melody-changed".to_owned(), "2".to_owned())]);
        let other = "violin: 1/4 A4 A4 A4 A4 | A4 A4 A4 A4 | 1/1 A4 |||";
        assert_eq!(keys(other, &material)[0].0, "given-melody-missing");
    }

    #[test]
    fn models_are_ways_among_others() {
        let model = source("violin: (1/4 C5 D5) E5 F5 | (G5 F5) (E5 D5) |||").score;
        let material = GivenMaterial {
            models: vec![ModelScore::new("the first way", &model)],
            ..GivenMaterial::default()
        };
        let same = "violin: (1/4 C5 D5) E5 F5 | (G5 F5) (E5 D5) |||";
        assert_eq!(keys(same, &material)[0].0, "given-model-same");
        let other = "violin: (1/4 C5 D5) E5 F5 | (G5 F5 E5 D5) |||";
        assert_eq!(keys(other, &material), [("given-model-other".to_owned(), "2".to_owned())]);
    }
}
