//! What a proposal would bring that was not there before: the bars around are read, bowed and reviewed as they would be with
//! it, by every rule that reads what it changes.

use std::cell::LazyCell;
use std::collections::{BTreeMap, BTreeSet};
use std::ops::RangeInclusive;
use std::sync::Arc;

use arcata_bow::plan::Anchor;
use arcata_bow::{Join, Line, Plan, Reading, plan};
use arcata_score::{Beginning, Length, NoteId, Score};
use arcata_xml::{Document, NodeId};

use crate::change::Change;
use crate::changed_music::{note_of, put_in, stands_at};
use crate::findings::{AuditOnce, Choices};
use crate::other_bow::passage;
use crate::{Finding, Findings, Piece, REGISTER, Reads, Sees, Severity};

/// So many bars before and behind a change are bowed with it, where the passage goes on so far: beyond them the bow does as it
/// does (rule of thumb).
const BARS_AROUND: u32 = 16;
/// Bars beyond which a change is no change at a place, and is not tried: an edition of its own (rule of thumb).
const MOST_BARS: u32 = 120;

/// A finding by its rule and place.
type ToldFinding = (&'static str, Option<usize>, u32, Length);

/// Whether changes to the file bring a finding of a weight, or a graver one, that the bars around do not have as they are.
/// Where there is no file, or where nothing that a rule reads is changed, they bring none.
pub(crate) fn brings_worse(piece: &Piece<'_>, changes: &[Change], weight: Severity) -> bool {
    ProposalTrial::of(piece, changes).is_some_and(|trial| trial.fails(changes, weight, None))
}

/// The same, and whether changes leave a finding that they were to take away.
pub(crate) fn fails(piece: &Piece<'_>, changes: &[Change], finding: &Finding) -> bool {
    let Finding { rule, severity, place, .. } = finding;
    let told = (*rule, place.part, place.bar, place.beat);
    ProposalTrial::of(piece, changes).is_some_and(|trial| trial.fails(changes, *severity, Some(&told)))
}

/// The bars around a proposal.
struct ProposalTrial<'a> {
    piece: &'a Piece<'a>,
    document: &'a Document,
    reading: &'a Reading<'a>,
    /// Parts whose notes are changed.
    parts: BTreeSet<usize>,
    /// Notes that are changed: they keep no bow.
    changed: BTreeSet<(usize, NoteId)>,
    score: Score,
    beginning: Beginning,
}

impl<'a> ProposalTrial<'a> {
    fn of(piece: &'a Piece<'a>, changes: &[Change]) -> Option<Self> {
        let (document, reading) = (piece.document?, piece.reading?);
        let places: Vec<ChangePlace> =
            changes.iter().filter_map(|change| ChangePlace::of(piece, document, stands_at(change))).collect();
        let bars =
            places.iter().map(|place| place.bar).min()?..=places.iter().map(|place| place.bar).max()?;
        let parts: BTreeSet<usize> = places.iter().map(|place| place.part).collect();
        let bars = around(piece, &parts, bars);
        if bars.end() - bars.start() > MOST_BARS {
            return None;
        }
        let (score, beginning) = piece.score.excerpt(bars)?;
        let changed = places.iter().filter_map(|place| Some((place.part, place.note?))).collect();
        Some(Self { piece, document, reading, parts, changed, score, beginning })
    }

    fn fails(&self, changes: &[Change], weight: Severity, gone: Option<&ToldFinding>) -> bool {
        let mut with = self.score.clone();
        let touched = put_in(self.document, &mut with, changes);
        if touched.is_empty() {
            return false;
        }
        let would_be = self.bowed_as(&with);
        let was = LazyCell::new(|| self.bowed_as(&self.score));
        let asked = |bowed: &AsBowed<'_>, choices| self.told(bowed, &touched, weight, choices);
        let times = |told: &BTreeMap<ToldFinding, usize>, finding: &ToldFinding| {
            told.get(finding).copied().unwrap_or(0)
        };
        let failed = |choices: Choices| {
            let after = asked(&would_be, choices);
            if after.is_empty() {
                return false;
            }
            let before = asked(&was, choices);
            let stays =
                |gone: &ToldFinding| before.contains_key(gone) && times(&after, gone) >= times(&before, gone);
            gone.is_some_and(stays) || after.keys().any(|found| times(&after, found) > times(&before, found))
        };
        // Most changes bring nothing, choices or not.
        failed(Choices::NotLookedFor) && failed(Choices::LeftOut)
    }

    /// The bars read and bowed.
    fn bowed_as<'s>(&'s self, score: &'s Score) -> AsBowed<'s> {
        let reading = self.reading.of_excerpt(score, &self.beginning);
        let lines: Vec<Line> = reading
            .iter()
            .flat_map(|reading| self.parts.iter().flat_map(|part| reading.lines(*part)))
            .collect();
        let plans = lines.iter().map(|line| Arc::new(self.bowed(line))).collect();
        AsBowed { score, lines, plans, audited: AuditOnce::new() }
    }

    /// What the rules that read one of some things say of the bars, and how often at one place.
    fn told(
        &self,
        AsBowed { score, lines, plans, audited }: &AsBowed<'_>,
        touched: &BTreeSet<Reads>,
        weight: Severity,
        choices: Choices,
    ) -> BTreeMap<ToldFinding, usize> {
        let piece = Piece {
            // Without a document no rule looks for a remedy: it is only asked what it sees.
            document: None,
            reading: None,
            score,
            lines,
            plans,
            beside: &[],
            ..*self.piece
        };
        let asked = REGISTER.iter().filter(|rule| {
            rule.sees == Sees::EachMovement
                // What a rule says is never graver than its card.
                && rule.card.gravest <= weight
                && rule.card.reads.iter().any(|reads| touched.contains(reads))
        });
        let mut all = BTreeMap::new();
        for rule in asked {
            let mut found = Findings::new(piece, rule.card, audited).with(choices);
            (rule.check)(&piece, &mut found);
            let grave = found.drafts().iter().filter(|draft| draft.severity() <= weight);
            for place in grave.map(crate::Draft::place) {
                let bar = place.bar + self.beginning.bar;
                *all.entry((rule.card.id, place.part, bar, place.beat)).or_insert(0) += 1;
            }
        }
        all
    }

    /// The line bowed; at its ends, where the music goes on, with the bows that the plan has there.
    fn bowed(&self, line: &Line) -> Plan {
        let mut settings = self.piece.profile.plan_settings(line.instrument);
        settings.anchors = self.edges(line).collect();
        plan(line, &settings)
    }

    fn edges<'l>(&'l self, line: &'l Line) -> impl Iterator<Item = Anchor> + 'l {
        let last = line.strokes.len().saturating_sub(1);
        let edges: BTreeSet<usize> = [0, last].into();
        edges.into_iter().filter_map(move |edge| {
            let stroke = line.strokes.get(edge)?;
            let whole = |note: &NoteId| self.beginning.note(line.part, *note);
            if stroke.notes.iter().any(|note| self.changed.contains(&(line.part, whole(note)))) {
                return None;
            }
            let first = whole(stroke.notes.first()?);
            let (at, index) = self.stroke_from(line.part, first)?;
            let strokes = &self.piece.lines[at].strokes;
            let outer = if edge == 0 { Some(&strokes[index]) } else { strokes.get(index + 1) };
            if outer.is_none_or(|outer| outer.join == Join::Entry) {
                return None;
            }
            let direction = self.piece.planned(at).get(index)?.direction;
            Some(Anchor { stroke: edge, direction: Some(direction), link: None })
        })
    }

    /// The stroke of the whole line that begins with a note.
    fn stroke_from(&self, part: usize, note: NoteId) -> Option<(usize, usize)> {
        let lines = self.piece.lines.iter().enumerate().filter(|(_, line)| line.part == part);
        lines.into_iter().find_map(|(at, line)| {
            let begins = |stroke: &arcata_bow::Stroke| stroke.notes.first() == Some(&note);
            line.strokes.iter().position(begins).map(|index| (at, index))
        })
    }
}

/// The bars as they are bowed, with a proposal or without.
struct AsBowed<'s> {
    score: &'s Score,
    lines: Vec<Line>,
    plans: Vec<Arc<Plan>>,
    audited: AuditOnce,
}

/// Where a change stands.
struct ChangePlace {
    part: usize,
    bar: u32,
    note: Option<NoteId>,
}

impl ChangePlace {
    fn of(piece: &Piece<'_>, document: &Document, node: NodeId) -> Option<Self> {
        let parts = piece.score.parts.iter().enumerate();
        let Some(element) = note_of(document, node) else {
            // Words stand between notes.
            return parts.into_iter().find_map(|(part, read)| {
                let said = read.instructions.iter().find(|said| said.place.node == node)?;
                Some(Self { part, bar: said.place.bar, note: None })
            });
        };
        parts.into_iter().find_map(|(part, read)| {
            let at = read.notes.iter().position(|note| note.node == element.id())?;
            let note = u32::try_from(at).ok().map(NoteId);
            Some(Self { part, bar: read.notes[at].bar, note })
        })
    }
}

/// The bars of the passages that lie over some bars.
fn around(piece: &Piece<'_>, parts: &BTreeSet<usize>, bars: RangeInclusive<u32>) -> RangeInclusive<u32> {
    let (mut from, mut to) = bars.clone().into_inner();
    for line in piece.lines.iter().filter(|line| parts.contains(&line.part)) {
        let first = line.strokes.partition_point(|stroke| stroke.bar < *bars.start());
        let end = line.strokes.partition_point(|stroke| stroke.bar <= *bars.end());
        // The slur that leads into the first bar.
        let ends = [first.saturating_sub(1), end.max(1) - 1];
        for stroke in ends.into_iter().filter(|stroke| *stroke < line.strokes.len()) {
            let range = passage(line, stroke);
            from = from.min(line.strokes[range.start].bar);
            let last = line.strokes[range.end - 1].notes.last();
            let note = last.and_then(|note| piece.score.parts.get(line.part)?.notes.get(note.0 as usize));
            to = to.max(note.map_or(0, |note| note.bar));
        }
    }
    from.max(bars.start().saturating_sub(BARS_AROUND))..=to.min(bars.end() + BARS_AROUND)
}
