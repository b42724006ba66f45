//! Where rules hand in what they find: places named, repeats of one cause gathered, all in order.

use std::collections::BTreeMap;
use std::sync::OnceLock;

use arcata_bow::Stroke;
use arcata_bow::audit::{AuditedMark, audit};
use arcata_languages::{Argument, Saying};
use arcata_score::{Length, Moment, Note, NoteId};

use crate::aside::{AsideIn, SetAside};
use crate::beats::beat_in_bar;
use crate::change::{self, Change};
use crate::other_notation::{BowWish, Notations};
use crate::review::Reviewed;
use crate::taste::Otherwise;
use crate::trial::fails;
use crate::{Card, Evidence, Finding, FindingPlace, Grade, Piece, Proposal, ProposalKind, Severity};

/// Findings of one rule over one piece.
#[derive(Debug)]
pub struct Findings<'a> {
    piece: Piece<'a>,
    card: Card,
    drafts: Vec<Draft>,
    choices: Choices,
    audited: &'a AuditOnce,
}

/// The printed bow marks of a piece with their reasons, looked at once for all rules.
pub(crate) type AuditOnce = OnceLock<Vec<AuditedMark>>;

/// What becomes of findings that players can do away with for hardly more.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Choices {
    /// They are the plan's own choice, and not told.
    LeftOut,
    /// They are told without a look at what else players could do, which takes most of the time.
    NotLookedFor,
}

/// A finding and the cause by which it is gathered with others.
#[derive(Clone, Debug, PartialEq)]
pub struct Draft {
    finding: Finding,
    /// For each proposal, what it changes in the file.
    changes: Vec<Vec<Change>>,
    /// For each proposal, what its picture changes at the first place when the file cannot be changed.
    sketches: Vec<Vec<Change>>,
    /// Findings of one rule, part and cause are one finding with a count.
    cause: Option<String>,
    /// A bow that a change of the notation could bring for less than the arm can.
    wish: Option<BowWish>,
}

impl<'a> Findings<'a> {
    pub(crate) fn new(piece: Piece<'a>, card: Card, audited: &'a AuditOnce) -> Self {
        Self { piece, card, drafts: Vec::new(), choices: Choices::LeftOut, audited }
    }

    /// Every printed bow mark of the piece, and why it is there.
    pub(crate) fn audited(&self) -> &'a [AuditedMark] {
        self.audited.get_or_init(|| {
            let Piece { score, lines, plans, profile, .. } = self.piece;
            let parts: Vec<usize> = (0..score.parts.len()).collect();
            audit(score, &parts, lines, plans, profile)
        })
    }

    /// The same with what becomes of the plan's choices.
    pub(crate) fn with(self, choices: Choices) -> Self {
        Self { choices, ..self }
    }

    /// Whether a finding is left out because players may as well do otherwise at a stroke.
    pub(crate) fn is_choice(&self, (line, stroke): (usize, usize), otherwise: Otherwise) -> bool {
        self.choices == Choices::LeftOut && self.piece.is_choice(line, stroke, otherwise)
    }

    /// What has been handed in so far.
    pub(crate) fn drafts(&self) -> &[Draft] {
        &self.drafts
    }

    /// Hands a draft in.
    pub fn report(&mut self, draft: Draft) {
        self.drafts.push(draft);
    }

    /// A draft at a moment of a part, about some of its notes.
    #[must_use]
    pub fn at_notes(&self, severity: Severity, part: usize, notes: &[NoteId]) -> Draft {
        let known = self.piece.score.parts.get(part);
        let first = notes.first().and_then(|id| known?.notes.get(id.0 as usize));
        let (bar, at) = first.map_or((0, Moment::START), |note: &Note| (note.bar, note.onset));
        self.at(severity, Some(part), bar, at).about(notes.to_vec())
    }

    /// A draft at a moment; without a part it is about the whole score.
    #[must_use]
    pub fn at(&self, severity: Severity, part: Option<usize>, bar: u32, at: Moment) -> Draft {
        let score = self.piece.score;
        let known = part.and_then(|part| score.parts.get(part));
        let offset = score.offset_in_bar(at, bar);
        let meter = known.or(score.parts.first()).and_then(|part| part.meter_at(bar));
        let place = FindingPlace {
            bar,
            beat: meter.map_or(Length::new(1, 1), |meter| beat_in_bar(meter, offset)),
            part,
            section: known.map_or_else(String::new, |part| part.name.clone()),
            bar_label: score.bars.get(bar as usize).map_or_else(String::new, |bar| bar.label.clone()),
            stroke: None,
            notes: Vec::new(),
            movement: score.movement_said(bar).map(str::to_owned),
        };
        Draft::new(self.card.id, severity, place)
    }

    /// A draft about one stroke of a line, at its onset.
    #[must_use]
    pub fn at_stroke(&self, severity: Severity, line: usize, index: usize) -> Draft {
        let Some(line_read) = self.piece.lines.get(line) else {
            return self.at(severity, None, 0, Moment::START);
        };
        let Some(stroke): Option<&Stroke> = line_read.strokes.get(index) else {
            return self.at(severity, Some(line_read.part), 0, Moment::START);
        };
        let mut draft = self.at(severity, Some(line_read.part), stroke.bar, stroke.onset);
        draft.finding.place.section.clone_from(&line_read.name);
        draft.finding.place.stroke = Some((line, index));
        draft.about(stroke.notes.clone())
    }

    /// The findings gathered and in order of the score, and those set aside, each by itself.
    pub(crate) fn gathered(self, aside: &AsideIn<'_>) -> Reviewed {
        let (mut drafts, mut set_aside) = (Vec::new(), Vec::new());
        let mut notations = Notations::new(self.piece);
        for draft in self.drafts {
            match aside.holds(&draft.finding) {
                Some(entry) => set_aside.push(SetAside { finding: draft.finding, entry }),
                None => drafts.push(draft.tried(&self.piece)),
            }
        }
        drafts.sort_by(|a, b| order(&a.finding).cmp(&order(&b.finding)));
        let mut first_of: BTreeMap<(String, Severity, String), usize> = BTreeMap::new();
        let mut gathered: Vec<Draft> = Vec::new();
        for draft in drafts {
            let key = draft
                .cause
                .clone()
                .map(|cause| (draft.finding.place.section.clone(), draft.finding.severity, cause));
            match key.as_ref().and_then(|key| first_of.get(key)) {
                Some(first) => gathered[*first].join(draft),
                None => {
                    if let Some(key) = key {
                        first_of.insert(key, gathered.len());
                    }
                    gathered.push(draft);
                }
            }
        }
        let findings =
            gathered.into_iter().map(|draft| draft.rewritten(&mut notations).finished(&self.piece));
        Reviewed { findings: findings.collect(), set_aside }
    }
}

/// The order of findings: place in the score, then weight, rule and words, so that it is total.
pub(crate) fn order(finding: &Finding) -> (&FindingPlace, Severity, &str, &Saying) {
    (&finding.place, finding.severity, finding.rule, &finding.sentence)
}

impl Draft {
    fn new(rule: &'static str, severity: Severity, place: FindingPlace) -> Self {
        let finding = Finding::at(rule, severity, place);
        Self { finding, changes: Vec::new(), sketches: Vec::new(), cause: None, wish: None }
    }

    /// Where it is.
    #[must_use]
    pub fn place(&self) -> &FindingPlace {
        &self.finding.place
    }

    /// How much it weighs.
    #[must_use]
    pub fn severity(&self) -> Severity {
        self.finding.severity
    }

    /// For each proposal, what it changes in the file.
    #[cfg(test)]
    pub(crate) fn changes(&self) -> &[Vec<Change>] {
        &self.changes
    }

    /// With another weight.
    #[must_use]
    pub fn weighing(mut self, severity: Severity) -> Self {
        self.finding.severity = severity;
        self
    }

    /// The notes it is about.
    #[must_use]
    pub fn about(mut self, notes: Vec<NoteId>) -> Self {
        self.finding.place.notes = notes;
        self
    }

    /// The sentence.
    #[must_use]
    pub fn say(mut self, sentence: Saying) -> Self {
        self.finding.sentence = sentence;
        self
    }

    /// A number it rests on, with the keys of its name and unit.
    #[must_use]
    pub fn evidence(mut self, name: &'static str, value: Argument, unit: &'static str) -> Self {
        self.finding.evidence.push(Evidence { name, value, unit });
        self
    }

    /// Seconds it rests on.
    #[must_use]
    pub fn seconds(self, name: &'static str, micros: i64) -> Self {
        self.evidence(name, Argument::Thousandths((micros + 500).div_euclid(1000)), "unit-seconds")
    }

    /// Something that had to be assumed.
    #[must_use]
    pub fn assuming(mut self, assumption: Saying) -> Self {
        self.finding.assumptions.push(assumption);
        self
    }

    /// Gathers it with other findings of this rule that have the same cause in the same section.
    #[must_use]
    pub fn cause(mut self, cause: impl Into<String>) -> Self {
        self.cause = Some(cause.into());
        self
    }

    /// Gathers it only with findings whose remedy is the same, too.
    #[must_use]
    pub(crate) fn and_remedy(mut self, kind: ProposalKind) -> Self {
        if let Some(cause) = &mut self.cause {
            cause.push('/');
            cause.push_str(kind.name());
        }
        self
    }

    /// Asks for the change of the notation that brings a bow for less than the arm can.
    #[must_use]
    pub(crate) fn wishing(mut self, wish: BowWish) -> Self {
        self.wish = Some(wish);
        self
    }

    /// With its proposals tried: one that leaves the finding, or brings something as grave somewhere around, is for the pencil.
    fn tried(mut self, piece: &Piece<'_>) -> Self {
        for changes in &mut self.changes {
            if fails(piece, changes, &self.finding) {
                changes.clear();
            }
        }
        self
    }

    /// With the change that it asked for, if there is one: of several places, for the first.
    fn rewritten(mut self, notations: &mut Notations<'_>) -> Self {
        let weight = self.finding.severity;
        let Some((proposal, changes)) = self.wish.take().and_then(|wish| notations.offer(wish, weight))
        else {
            return self;
        };
        if self.finding.count > 1 {
            return self.propose_whole(proposal, Vec::new()).sketched(changes);
        }
        self.propose_whole(proposal, changes)
    }

    /// A change for the pencil.
    #[must_use]
    pub fn propose(self, grade: Grade, kind: ProposalKind, sentence: Saying) -> Self {
        self.propose_change(grade, kind, sentence, Vec::new())
    }

    /// A change to the file.
    #[must_use]
    pub fn propose_change(
        self,
        grade: Grade,
        kind: ProposalKind,
        sentence: Saying,
        changes: Vec<Change>,
    ) -> Self {
        self.propose_whole(Proposal::new(grade, kind, sentence), changes)
    }

    /// A proposal as it is; its edits are made from the changes.
    #[must_use]
    pub fn propose_whole(mut self, proposal: Proposal, changes: Vec<Change>) -> Self {
        self.finding.proposals.push(proposal);
        self.sketches.push(changes.clone());
        self.changes.push(changes);
        self
    }

    /// Lets the picture of the proposal made last show these changes, where it has none for the file.
    #[must_use]
    pub(crate) fn sketched(mut self, changes: Vec<Change>) -> Self {
        if let Some(sketch) = self.sketches.last_mut() {
            *sketch = changes;
        }
        self
    }

    /// What the proposal made last costs more than the plan; `None` where it has no price.
    pub(crate) fn last_price(&self) -> Option<i64> {
        self.finding.proposals.last()?.cost_change.as_ref().map(arcata_bow::Cost::total)
    }

    /// Takes in another place of the same cause, with what the same proposals change there.
    fn join(&mut self, other: Self) {
        self.finding.count += 1;
        self.finding.further.push(other.finding.place);
        let mut elsewhere: Vec<_> =
            other.finding.proposals.iter().map(|proposal| proposal.kind).zip(other.changes).collect();
        for (proposal, changes) in self.finding.proposals.iter_mut().zip(&mut self.changes) {
            let same = elsewhere.iter().position(|(kind, _)| *kind == proposal.kind);
            let there = same.map(|same| elsewhere.remove(same).1).unwrap_or_default();
            // A change that cannot be made everywhere would leave the finding: then it is for the pencil.
            // Bows that were found for one place alone may turn each other about: with others they are for the pencil.
            if changes.is_empty() || there.is_empty() || proposal.cost_change.is_some() {
                changes.clear();
            } else {
                changes.extend(there);
            }
            proposal.cost_change = None;
        }
    }

    /// The finding, its changes made into edits of the file.
    fn finished(self, piece: &Piece<'_>) -> Finding {
        let mut finding = self.finding;
        for ((proposal, changes), sketch) in finding.proposals.iter_mut().zip(self.changes).zip(self.sketches)
        {
            if let Some(document) = piece.document.filter(|_| !changes.is_empty()) {
                proposal.edits = change::edits(document, &changes);
            }
            if let Some(document) = piece.document.filter(|_| proposal.edits.is_empty()) {
                proposal.sketch = change::edits(document, &sketch);
            }
            if finding.count > 1 && !changes.is_empty() {
                proposal.sentence = Saying::new("offer-and-further").with("offer", proposal.sentence.clone());
            }
        }
        finding
    }
}
