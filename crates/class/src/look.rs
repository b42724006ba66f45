//! A look at one hand-in.

use std::collections::{BTreeMap, BTreeSet};

use arcata_analysis::Snapshot;
use arcata_languages::{Language, Saying, Wording};
use arcata_report::FindingPictures;
use arcata_review::{Finding, FindingPlace, Proposal, ReviewSettings, trade_words};
use arcata_score::{Instrument, Score};

use crate::alike::traces;
use crate::choose::chosen;
use crate::given::{self, GivenMaterial};
use crate::hand::{self, name_of};
use crate::lacks::lacking;
use crate::measures::measured;
use crate::runs::listed;
use crate::works::works;
use crate::{
    CandidatePassage, Concealed, Expected, InLanguages, RecordedPassage, Repair, Repairs, RestLine, Shown,
    Task, Touch,
};

/// Further places that a passage names.
const FURTHER: usize = 6;
/// Pieces of a list of bars in a line for a rule.
const LISTED: usize = 10;

/// Bars by part; none is the whole score.
type Places = BTreeMap<Option<usize>, Vec<u32>>;

/// What was found in one hand-in.
#[derive(Debug)]
pub struct LookAtHandIn<'a> {
    snapshot: &'a Snapshot,
    task: &'a Task,
    /// What counts for the task, and what is expected and missing.
    pub findings: Vec<Finding>,
    /// Part and bar of everything that was found, whether it counts or not.
    pub blamed: BTreeSet<(usize, u32)>,
}

/// Calls the parts by their instruments, numbered where there are several: names of parts can name people.
pub fn generic_names(score: &mut Score) {
    let base = |instrument: Instrument| match instrument {
        Instrument::Violin => "Violin",
        Instrument::Viola => "Viola",
        Instrument::Cello => "Violoncello",
        Instrument::Bass => "Double bass",
        Instrument::OtherBowed => "Bowed string",
        Instrument::NotBowed => "Part",
    };
    let mut all: BTreeMap<&str, usize> = BTreeMap::new();
    for part in &score.parts {
        *all.entry(base(part.instrument)).or_default() += 1;
    }
    let mut seen: BTreeMap<&str, usize> = BTreeMap::new();
    for part in &mut score.parts {
        let base = base(part.instrument);
        let number = seen.entry(base).or_default();
        *number += 1;
        part.name = if all[base] > 1 { format!("{base} {number}") } else { base.to_owned() };
        part.abbreviation = part.name.clone();
    }
}

/// Part and bar of every place of findings. What is about the whole score blames the bar in all parts.
#[must_use]
pub fn blamed(score: &Score, findings: &[Finding]) -> BTreeSet<(usize, u32)> {
    let mut blamed = BTreeSet::new();
    for finding in findings {
        for place in std::iter::once(&finding.place).chain(&finding.further) {
            match place.part {
                None => blamed.extend((0..score.parts.len()).map(|part| (part, place.bar))),
                Some(part) => {
                    blamed.insert((part, place.bar));
                    let notes = score.parts.get(part).map_or([].as_slice(), |part| part.notes.as_slice());
                    let bars =
                        place.notes.iter().filter_map(|note| notes.get(note.0 as usize)).map(|note| note.bar);
                    let (first, last) = bars
                        .fold((place.bar, place.bar), |(first, last), bar| (first.min(bar), last.max(bar)));
                    blamed.extend((first..=last).map(|bar| (part, bar)));
                }
            }
        }
    }
    blamed
}

impl<'a> LookAtHandIn<'a> {
    /// Reviews a hand-in by a task.
    #[must_use]
    pub fn new(snapshot: &'a Snapshot, task: &'a Task) -> Self {
        let settings = task.review();
        let everything = ReviewSettings::default();
        let mut findings = snapshot.review(&[], &settings).findings;
        let narrowed = ReviewSettings { lightest: None, ..settings.clone() } != everything
            || settings.lightest.is_some_and(|lightest| lightest < arcata_review::Severity::D);
        let score = snapshot.score();
        let lacks = lacking(snapshot, &task.expects, &task.parts);
        let mut blamed = if narrowed {
            blamed(score, &snapshot.review(&[], &everything).findings)
        } else {
            blamed(score, &findings)
        };
        blamed.extend(self::blamed(score, &lacks));
        // That slurs are missing says it already.
        if lacks.iter().any(|lack| lack.rule == Expected::Slurs.id()) {
            findings.retain(|finding| finding.rule != "legato-without-slurs" || !finding.reasons.is_empty());
        }
        findings.extend(lacks);
        Self { snapshot, task, findings, blamed }
    }

    /// The findings that the sheet shows after the teacher's hand, each with the one proposal that it shows.
    #[must_use]
    pub fn chosen(&self, touch: &Touch) -> Vec<Finding> {
        let with_one = |finding: &Finding| Finding {
            proposals: self.repair(finding).into_iter().cloned().collect(),
            ..finding.clone()
        };
        let chosen = chosen(&self.findings, self.task);
        hand::after(chosen, &self.findings, touch).into_iter().map(with_one).collect()
    }

    /// The repair to try: the best that can be pictured, else the best.
    fn repair<'f>(&self, finding: &'f Finding) -> Option<&'f Proposal> {
        if self.task.sheet.repairs == Repairs::Withheld {
            return None;
        }
        let pictured = |proposal: &&Proposal| !proposal.edits.is_empty() || !proposal.sketch.is_empty();
        finding.proposals.iter().find(pictured).or(finding.proposals.first())
    }

    /// What is kept of it, with the pictures of the chosen findings, in their order.
    #[must_use]
    pub fn shown(
        &self,
        (chosen, touch): (&[Finding], &Touch),
        pictures: Vec<FindingPictures>,
        material: &GivenMaterial,
        concealed: &Concealed,
    ) -> Shown {
        let score = self.snapshot.score();
        let mut pictures = pictures.into_iter();
        let passages = chosen.iter().map(|finding| {
            let pictures = pictures.next().unwrap_or_default();
            RecordedPassage {
                own: touch.said.get(&name_of(finding)).cloned(),
                ..self.passage(finding, pictures, concealed)
            }
        });
        Shown {
            passages: passages.collect(),
            works: works(self.snapshot, &self.blamed, &self.task.expects),
            candidates: self.candidates(concealed),
            rest: self.rest(chosen),
            met: self.met(),
            given: given::told(self.snapshot, material),
            measures: measured(self.snapshot),
            assumed: self
                .snapshot
                .ground()
                .bowed
                .assumptions
                .iter()
                .map(|said| self.said(said, concealed))
                .collect(),
            traces: traces(score, &material.grams),
        }
    }

    /// What the review says, in the languages of the task's sheets.
    fn said(&self, saying: &Saying, concealed: &Concealed) -> InLanguages {
        let words = self.task.profile().map(|profile| trade_words(&profile)).unwrap_or_default();
        let wording = |language: &Language| Wording { language: *language, words: words.clone() };
        let wordings: Vec<Wording> = self.task.languages.iter().map(wording).collect();
        InLanguages::new(saying, &wordings, concealed)
    }

    fn passage(
        &self,
        finding: &Finding,
        pictures: FindingPictures,
        concealed: &Concealed,
    ) -> RecordedPassage {
        let kept = |drawn: arcata_report::DrawnPicture| crate::KeptPicture {
            svg: concealed.markup(&drawn.svg),
            text: concealed.text(&drawn.text),
            ..drawn.into()
        };
        let mut drawn = pictures.proposals.into_iter();
        let repair = finding.proposals.first().map(|proposal| {
            let hinted = self.task.sheet.repairs == Repairs::Hinted;
            Repair {
                kind: proposal.kind.name().to_owned(),
                sentence: match hinted {
                    true => InLanguages::default(),
                    false => self.said(&proposal.sentence, concealed),
                },
                picture: drawn.next().flatten().filter(|_| !hinted).map(kept),
            }
        });
        let place = &finding.place;
        let weight = format!("severity-{}", finding.severity).to_lowercase();
        RecordedPassage {
            rule: finding.rule.to_owned(),
            weight,
            bar: bar_said(place),
            beat: place.beat_text(),
            part: place.part.map(|_| concealed.text(&place.section)),
            sentence: self.said(&finding.sentence, concealed),
            reasons: finding.reasons.iter().map(|reason| self.said(&reason.sentence, concealed)).collect(),
            numbers: finding
                .evidence
                .iter()
                .map(|evidence| concealed.text(&evidence.line(&Wording::default())))
                .collect(),
            further: further(finding),
            now: pictures.now.map(kept),
            repair,
            own: None,
        }
    }

    fn candidates(&self, concealed: &Concealed) -> Vec<CandidatePassage> {
        let proposed: Vec<String> = chosen(&self.findings, self.task).into_iter().map(name_of).collect();
        let candidate = |finding: &Finding| CandidatePassage {
            id: name_of(finding),
            rule: finding.rule.to_owned(),
            bar: bar_said(&finding.place),
            part: finding.place.part.map(|_| concealed.text(&finding.place.section)),
            sentence: self.said(&finding.sentence, concealed),
            proposed: proposed.contains(&name_of(finding)),
        };
        self.findings.iter().map(candidate).collect()
    }

    /// How often each rule was met, further reasons too.
    fn met(&self) -> BTreeMap<String, u32> {
        let mut met: BTreeMap<String, u32> = BTreeMap::new();
        let counts = |rule: &str| {
            let asked =
                self.task.only.is_empty() || self.task.only.contains(rule) || Expected::of_id(rule).is_some();
            asked && !self.task.off.contains(rule)
        };
        for finding in &self.findings {
            *met.entry(finding.rule.to_owned()).or_default() += finding.count;
            for reason in finding.reasons.iter().filter(|reason| counts(reason.rule)) {
                *met.entry(reason.rule.to_owned()).or_default() += finding.count;
            }
        }
        met
    }

    /// What was found and is not shown, by rule.
    fn rest(&self, chosen: &[Finding]) -> Vec<RestLine> {
        let score = self.snapshot.score();
        let shown = |finding: &Finding| {
            chosen.iter().any(|chosen| chosen.rule == finding.rule && chosen.place == finding.place)
        };
        let mut rules: Vec<(&Finding, Places)> = Vec::new();
        for finding in self.findings.iter().filter(|finding| !shown(finding)) {
            let places = std::iter::once(&finding.place).chain(&finding.further);
            let at = rules.iter().position(|(first, _)| first.rule == finding.rule);
            let at = at.unwrap_or_else(|| {
                rules.push((finding, Places::new()));
                rules.len() - 1
            });
            for place in places {
                rules[at].1.entry(place.part).or_default().push(place.bar);
            }
        }
        rules.sort_by(|(one, _), (other, _)| {
            let order = |finding: &Finding| crate::choose::usefulness(finding, self.task);
            order(one).cmp(&order(other)).then_with(|| one.rule.cmp(other.rule))
        });
        let label = |bar: u32| score.bars.get(bar as usize).map_or_else(String::new, |bar| bar.label.clone());
        let line = |(finding, places): (&Finding, Places)| RestLine {
            rule: finding.rule.to_owned(),
            places: places
                .into_iter()
                .map(|(part, mut bars)| {
                    bars.sort_unstable();
                    let name = part.and_then(|part| score.parts.get(part)).map(|part| part.name.clone());
                    (name, listed(&bars, label, LISTED))
                })
                .collect(),
        };
        rules.into_iter().map(line).collect()
    }
}

fn bar_said(place: &FindingPlace) -> String {
    place
        .movement
        .as_ref()
        .map_or_else(|| place.bar_label.clone(), |movement| format!("{movement}, {}", place.bar_label))
}

/// The further places of a finding as they are said: part where it is another, bar.
fn further(finding: &Finding) -> Vec<String> {
    let mut said: Vec<String> = Vec::new();
    let same = |place: &&FindingPlace| place.part == finding.place.part && place.bar == finding.place.bar;
    for place in finding.further.iter().filter(|place| !same(place)) {
        let other = place.section != finding.place.section;
        let place = if other { format!("{} ({})", bar_said(place), place.section) } else { bar_said(place) };
        if !said.contains(&place) {
            said.push(place);
        }
    }
    if said.len() > FURTHER {
        said.truncate(FURTHER);
        said.push("…".to_owned());
    }
    said
}
