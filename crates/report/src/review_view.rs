//! The review as data.

use std::collections::BTreeMap;

use arcata_bow::Line;
use arcata_languages::{Language, SaidPlace, Saying, Wording, retold};
use arcata_review::{Evidence, Finding, FindingPlace, Proposal, Reason};
use arcata_score::places::{beat_exact, beat_said};
use arcata_score::{Movement, Score};
use schemars::JsonSchema;
use serde::Serialize;

use crate::AsideView;
use crate::term_words::gains_and_losses;

/// The review of one or several files.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ReviewView {
    /// Always `arcata-review`.
    #[schemars(extend("const" = "arcata-review"))]
    pub format: &'static str,
    /// Version of this format.
    #[schemars(extend("const" = 1))]
    pub version: u32,
    /// One entry a file, in the order they were named.
    pub files: Vec<FileView>,
}

/// The review of one file.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct FileView {
    /// The file as named.
    pub file: String,
    /// Why it could not be read; the rest is empty then.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub error: Option<String>,
    /// Title of the work.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// Bars in the score.
    pub bars: usize,
    /// The movements, where the file has several.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub movements: Vec<ReviewMovementView>,
    /// Bowing lines: names and numbers of strokes.
    pub lines: Vec<ReviewLineView>,
    /// What was assumed because the score does not say it.
    pub assumptions: Vec<String>,
    /// Where the file contradicts itself.
    pub problems: Vec<ProblemView>,
    /// What the review found.
    pub findings: Vec<FindingView>,
    /// What is set aside, where a file says so.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub aside: Option<AsideView>,
}

/// A movement of the file.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ReviewMovementView {
    /// Its number as people say it: `II`.
    pub number: String,
    /// Its heading as printed, else its number.
    pub name: String,
    /// Its first bar by position in the file, from 1.
    pub first_bar: u32,
    /// How many bars it has.
    pub bars: u32,
}

impl ReviewMovementView {
    /// The movements of a score; none where it has but one.
    #[must_use]
    pub fn all(score: &Score) -> Vec<Self> {
        if score.movements.len() < 2 {
            return Vec::new();
        }
        let view = |movement: &Movement| Self {
            number: movement.number.clone(),
            name: movement.name().to_owned(),
            first_bar: movement.bars.start() + 1,
            bars: movement.bars.end() - movement.bars.start() + 1,
        };
        score.movements.iter().map(view).collect()
    }
}

/// A bowing line.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ReviewLineView {
    /// Name.
    pub name: String,
    /// The number of its movement, where the file has several.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub movement: Option<String>,
    /// Strokes.
    pub strokes: usize,
}

/// A contradiction in the file.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ProblemView {
    /// Part by name.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub part: Option<String>,
    /// The number of its movement, where the file has several.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub movement: Option<String>,
    /// Bar as printed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub bar: Option<String>,
    /// One sentence.
    pub message: String,
}

/// A finding.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct FindingView {
    /// The rule's name.
    pub rule: &'static str,
    /// `A` cannot be played or is undefined, `B` costs rehearsal time, `C` probably not meant, `D` clutter.
    pub severity: String,
    /// Where it is first.
    pub place: FindingPlaceView,
    /// One sentence for players.
    pub sentence: String,
    /// The numbers it rests on.
    pub evidence: Vec<EvidenceView>,
    /// What had to be assumed.
    pub assumptions: Vec<String>,
    /// How often the same cause shows.
    pub count: u32,
    /// Where else.
    pub further: Vec<FindingPlaceView>,
    /// What other rules say of the same place, the gravest first.
    pub reasons: Vec<ReasonView>,
    /// What could be done, the best first; after it what the further reasons propose.
    pub proposals: Vec<ProposalView>,
}

/// What a further rule says of a place.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ReasonView {
    /// The rule's name.
    pub rule: &'static str,
    /// Its own weight, no more than the finding's.
    pub severity: String,
    /// One sentence for players.
    pub sentence: String,
    /// The numbers it rests on.
    pub evidence: Vec<EvidenceView>,
    /// What had to be assumed.
    pub assumptions: Vec<String>,
}

/// A place in the score.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct FindingPlaceView {
    /// Section or part.
    pub section: String,
    /// The number of its movement, where the file has several.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub movement: Option<String>,
    /// Bar as printed.
    pub bar: String,
    /// Bar by position in the file, from 1.
    pub bar_ordinal: u32,
    /// Beat from 1 as an exact fraction: `7/2` is the second half of beat 3.
    pub beat: String,
    /// The beat as it is said.
    #[serde(skip)]
    pub spoken_beat: String,
    /// The bar as people say it: "bar 17", "II, bar 17".
    #[serde(skip)]
    pub bar_said: String,
    /// The place as people say it: "bar 17, beat 3½".
    #[serde(skip)]
    pub said: String,
}

/// A number behind a finding.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct EvidenceView {
    /// What was measured, in English.
    pub name: String,
    /// The value as printed in English.
    pub value: String,
    /// Its unit.
    pub unit: String,
    /// Name, value and unit in the language of the sentences.
    #[serde(skip)]
    pub said: [String; 3],
}

/// A change offered.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct ProposalView {
    /// `safe`, `player's choice` or `writer's choice`.
    pub grade: &'static str,
    /// The same in the language of the sentences.
    #[serde(skip)]
    pub grade_said: String,
    /// The kind of change.
    pub kind: &'static str,
    /// One sentence that begins with a verb.
    pub sentence: String,
    /// What the bow plan would cost more (or less, negative), thousandths of a point, term by term.
    #[serde(skip_serializing_if = "BTreeMap::is_empty")]
    pub cost_change: BTreeMap<&'static str, i64>,
    /// What of it is gained, in words, the largest first.
    #[serde(skip)]
    pub gains: Vec<String>,
    /// What of it is lost.
    #[serde(skip)]
    pub losses: Vec<String>,
}

impl ReviewView {
    /// Several files.
    #[must_use]
    pub fn new(files: Vec<FileView>) -> Self {
        Self { format: "arcata-review", version: 1, files }
    }
}

impl FileView {
    /// Who bows in the file, each once, and all strokes of each: a player has a line in every movement.
    pub(crate) fn bowed(&self) -> Vec<(&str, usize)> {
        let mut bowed: Vec<(&str, usize)> = Vec::new();
        for line in &self.lines {
            match bowed.iter_mut().find(|(name, _)| *name == line.name) {
                Some((_, strokes)) => *strokes += line.strokes,
                None => bowed.push((&line.name, line.strokes)),
            }
        }
        bowed
    }

    /// A file that was read and reviewed.
    #[must_use]
    pub fn reviewed(
        file: &str,
        score: &Score,
        lines: &[Line],
        assumptions: Vec<String>,
        (findings, wording): (&[Finding], &Wording),
    ) -> Self {
        Self {
            file: file.to_owned(),
            error: None,
            title: score.title.clone(),
            bars: score.bars.len(),
            movements: ReviewMovementView::all(score),
            lines: lines
                .iter()
                .map(|line| ReviewLineView {
                    name: line.name.clone(),
                    movement: movement_of(score, line),
                    strokes: line.strokes.len(),
                })
                .collect(),
            assumptions,
            problems: score
                .problems
                .iter()
                .map(|problem| ProblemView {
                    part: problem
                        .part
                        .and_then(|part| score.parts.get(part as usize))
                        .map(|part| part.name.clone()),
                    movement: problem.bar.and_then(|bar| score.movement_said(bar)).map(str::to_owned),
                    bar: problem
                        .bar
                        .and_then(|bar| score.bars.get(bar as usize))
                        .map(|bar| bar.label.clone()),
                    message: wording.say(&retold(&problem.message)),
                })
                .collect(),
            findings: findings.iter().map(|finding| FindingView::of(finding, wording)).collect(),
            aside: None,
        }
    }

    /// A file that could not be read.
    #[must_use]
    pub fn unreadable(file: &str, error: &str) -> Self {
        Self {
            file: file.to_owned(),
            error: Some(error.to_owned()),
            title: None,
            bars: 0,
            movements: Vec::new(),
            lines: Vec::new(),
            assumptions: Vec::new(),
            problems: Vec::new(),
            findings: Vec::new(),
            aside: None,
        }
    }

    /// The same with what is set aside.
    #[must_use]
    pub fn beside(self, aside: Option<AsideView>) -> Self {
        Self { aside, ..self }
    }
}

impl FindingView {
    /// A finding as data.
    #[must_use]
    pub fn of(finding: &Finding, wording: &Wording) -> Self {
        Self {
            rule: finding.rule,
            severity: finding.severity.to_string(),
            place: FindingPlaceView::of(&finding.place, wording),
            sentence: wording.say(&finding.sentence),
            evidence: EvidenceView::all(&finding.evidence, wording),
            assumptions: said(&finding.assumptions, wording),
            count: finding.count,
            further: finding.further.iter().map(|place| FindingPlaceView::of(place, wording)).collect(),
            reasons: finding.reasons.iter().map(|reason| ReasonView::of(reason, wording)).collect(),
            proposals: finding.proposals.iter().map(|proposal| ProposalView::of(proposal, wording)).collect(),
        }
    }
}

impl ReasonView {
    fn of(reason: &Reason, wording: &Wording) -> Self {
        Self {
            rule: reason.rule,
            severity: reason.severity.to_string(),
            sentence: wording.say(&reason.sentence),
            evidence: EvidenceView::all(&reason.evidence, wording),
            assumptions: said(&reason.assumptions, wording),
        }
    }
}

impl EvidenceView {
    fn all(evidence: &[Evidence], wording: &Wording) -> Vec<Self> {
        // Programs find a number under one name and in one form, whoever reads the sentences.
        let english = Wording { language: Language::English, ..wording.clone() };
        let view = |evidence: &Evidence| {
            let [name, value, unit] = evidence.said(&english);
            Self { name, value, unit, said: evidence.said(wording) }
        };
        evidence.iter().map(view).collect()
    }
}

/// Sayings in words.
fn said(sayings: &[Saying], wording: &Wording) -> Vec<String> {
    sayings.iter().map(|saying| wording.say(saying)).collect()
}

/// The number of a line's movement, where the file has several.
pub(crate) fn movement_of(score: &Score, line: &Line) -> Option<String> {
    let movement = score.movements.get(line.movement).filter(|_| score.movements.len() > 1);
    movement.map(|movement| movement.number.clone())
}

impl FindingPlaceView {
    pub(crate) fn of(place: &FindingPlace, wording: &Wording) -> Self {
        let point = place.said();
        let bar = SaidPlace { beat: None, ..point.clone() };
        Self {
            section: place.section_said(wording),
            movement: place.movement.clone(),
            bar: place.bar_label.clone(),
            bar_ordinal: place.bar + 1,
            beat: beat_exact(place.beat),
            spoken_beat: beat_said(place.beat),
            bar_said: wording.argument(&bar.into()),
            said: wording.argument(&point.into()),
        }
    }
}

impl ProposalView {
    fn of(proposal: &Proposal, wording: &Wording) -> Self {
        let (gains, losses) =
            proposal.cost_change.as_ref().map(|change| gains_and_losses(change, wording)).unwrap_or_default();
        Self {
            grade: proposal.grade.name(),
            grade_said: wording.word(proposal.grade.key()),
            kind: proposal.kind.name(),
            sentence: wording.say(&proposal.sentence),
            cost_change: proposal
                .cost_change
                .iter()
                .flat_map(|cost| cost.parts().collect::<Vec<_>>())
                .map(|(term, share)| (term.name(), share))
                .collect(),
            gains,
            losses,
        }
    }
}
