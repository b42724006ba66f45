//! What a writer would have to change in the slurs to have a stroke on the other bow.

use std::collections::BTreeMap;
use std::ops::Range;

use arcata_bow::plan::{Anchor, ChangeKind, NotationChange, RepairRequest, Repaired, same_bows, singly};
use arcata_bow::{LineSource, Stroke, plan};
use arcata_languages::Saying;
use arcata_score::{BowDirection, NoteId};

use crate::change::{Change, bow_mark};
use crate::other_bow::{kept_edges, passage, stretch};
use crate::repair_words;
use crate::slur_change;
use crate::trial::brings_worse;
use crate::under_slur::note;
use crate::words::bow;
use crate::{Grade, Piece, Proposal, ProposalKind, Severity};

/// That something comes on a certain bow.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct BowWish {
    pub(crate) line: usize,
    pub(crate) stroke: usize,
    pub(crate) direction: BowDirection,
    /// What comes on that bow, as a case of the message: `accent`.
    pub(crate) what: &'static str,
    pub(crate) sounding: WishedNote,
}

/// Which note of the stroke it is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum WishedNote {
    /// A stroke begins there.
    Begins,
    /// The last note sounds on that bow.
    Ends,
}

/// How many strokes back a writer is asked to change something: further away it is not seen as the cause
/// (rule of thumb).
const BACK: usize = 8;

/// How many changes are tried in the bars around before nothing is offered: the fifth best is far from what a writer would do
/// (rule of thumb).
const TRIED: usize = 4;

/// Looks for changes of the notation; parts are read anew once each, when first asked for.
pub(crate) struct Notations<'a> {
    piece: Piece<'a>,
    sources: BTreeMap<usize, Vec<LineSource<'a>>>,
}

impl<'a> Notations<'a> {
    pub(crate) fn new(piece: Piece<'a>) -> Self {
        Self { piece, sources: BTreeMap::new() }
    }

    /// The single change that grants the wish for the least, where it is less than what the arm can do, and brings nothing of
    /// the finding's weight somewhere around.
    pub(crate) fn offer(&mut self, wish: BowWish, weight: Severity) -> Option<(Proposal, Vec<Change>)> {
        let piece = self.piece;
        let line = piece.lines.get(wish.line)?;
        let reading = piece.reading?;
        let sources = self.sources.entry(line.part).or_insert_with(|| reading.sources(line.part));
        let source = sources.iter().find(|source| source.line().is_of(line))?;
        let range = passage(line, wish.stroke);
        let mut settings = piece.plan_settings(wish.line);
        settings.anchors = kept_edges(&piece, wish.line, &range, wish.stroke)?;
        let window = wish.stroke.saturating_sub(BACK).max(range.start)..(wish.stroke + 1).min(range.end);
        let request = RepairRequest { settings: &settings, window, most: 1, ending: None };
        let found = singly(source, &request, &range);
        let stretch = stretch(line, &range);
        settings.anchors.iter_mut().for_each(|anchor| anchor.stroke -= range.start);
        let free = plan(&stretch, &settings);
        let stroke = wish.stroke - range.start;
        settings.anchors.push(Anchor { stroke, direction: Some(wish.direction), link: None });
        let by_the_arm = plan(&stretch, &settings).total.total();
        let asked = asked(&line.strokes[wish.stroke], wish.sounding)?;
        let mut granting: Vec<&Repaired> = found
            .iter()
            .skip(1)
            .filter(|repaired| repaired.cost.total() < by_the_arm && grants(repaired, wish, asked))
            .filter(|repaired| !same_bows((&stretch, &free), (&repaired.line, &repaired.plan)))
            .filter(|repaired| does_it_alone(&piece, wish.line, &range, repaired))
            .collect();
        granting.sort_by_key(|repaired| repaired.cost.total());
        let (best, change, changes) = granting.into_iter().take(TRIED).find_map(|repaired| {
            let change = repaired.changes.first()?;
            let changes = changes(&piece, line.part, repaired, change).unwrap_or_default();
            let worse = brings_worse(&piece, &changes, weight);
            (!worse).then_some((repaired, change, changes))
        })?;
        let repair = repair_words::what(piece.score, line.part, change);
        let sentence = Saying::new("offer-repair-for")
            .with("repair", repair)
            .choosing("what", wish.what)
            .choosing("bow", bow(wish.direction));
        let proposal = Proposal {
            cost_change: Some(best.cost.less(&free.total)),
            ..Proposal::new(Grade::WritersChoice, kind(change), sentence)
        };
        Some((proposal, changes))
    }
}

/// What a change of the notation changes in the file.
fn changes(piece: &Piece<'_>, part: usize, best: &Repaired, change: &NotationChange) -> Option<Vec<Change>> {
    match change.kind {
        ChangeKind::Hook => hooked(piece, part, best, change),
        _ => slur_change::changes(piece.score.parts.get(part)?, change),
    }
}

/// The note that the wish is about.
fn asked(stroke: &Stroke, sounding: WishedNote) -> Option<NoteId> {
    match sounding {
        WishedNote::Begins => stroke.notes.first().copied(),
        WishedNote::Ends => stroke.notes.last().copied(),
    }
}

/// Whether the note comes on the bow asked for in the best plan of the other notation, of itself.
fn grants(repaired: &Repaired, wish: BowWish, asked: NoteId) -> bool {
    let found = repaired.line.strokes.iter().position(|stroke| match wish.sounding {
        WishedNote::Begins => stroke.notes.first() == Some(&asked),
        WishedNote::Ends => stroke.notes.contains(&asked),
    });
    let planned = found.and_then(|at| repaired.plan.strokes.get(at));
    planned.is_some_and(|planned| planned.direction == wish.direction)
}

/// Whether the bows before the change stay as they are planned, so that the change brings what is wished.
fn does_it_alone(piece: &Piece<'_>, line: usize, range: &Range<usize>, repaired: &Repaired) -> bool {
    let Some(change) = repaired.changes.first() else { return false };
    let untouched = change.before.start.min(change.after.start);
    let planned = piece.planned(line).get(range.clone()).unwrap_or_default();
    let bows = planned.iter().zip(&repaired.plan.strokes).take(untouched.max(1));
    bows.into_iter().all(|(planned, repaired)| planned.direction == repaired.direction)
}

/// A hook is told by one mark on both strokes.
fn hooked(piece: &Piece<'_>, part: usize, best: &Repaired, change: &NotationChange) -> Option<Vec<Change>> {
    let part = piece.score.parts.get(part)?;
    let stroke = change.after.start;
    let direction = best.plan.strokes.get(stroke)?.direction;
    let first = *best.line.strokes.get(stroke)?.notes.first()?;
    let notes = [note(part, first)?, note(part, change.note)?];
    Some(notes.into_iter().flat_map(|note| bow_mark(note, direction)).collect())
}

/// What kind of proposal a change of the notation is.
pub(crate) fn kind(change: &NotationChange) -> ProposalKind {
    match change.kind {
        ChangeKind::Split | ChangeKind::SplitTie => ProposalKind::Split,
        ChangeKind::JoinNotes | ChangeKind::JoinSlurs => ProposalKind::Join,
        ChangeKind::Hook => ProposalKind::Hook,
        ChangeKind::EndEarlier
        | ChangeKind::BeginLater
        | ChangeKind::EndLater
        | ChangeKind::BeginEarlier
        | ChangeKind::HandOverLater
        | ChangeKind::HandOverEarlier => ProposalKind::Shift,
    }
}
