//! What a player would have to do otherwise to take a stroke on the other bow.

use std::ops::Range;

use arcata_bow::plan::{Anchor, DifferenceKind};
use arcata_bow::{Join, Line, Link, Plan, plan};
use arcata_languages::Saying;
use arcata_score::BowDirection;

use crate::change::{self, Change};
use crate::other_notation::{BowWish, WishedNote};
use crate::under_slur::note;
use crate::words::bow;
use crate::{Draft, Grade, Piece, Proposal, ProposalKind};

/// Offers the cheapest way to have a stroke on the bow asked for, with what it costs and the marks that
/// tell the players, and asks for a change of the notation that does it for less. Findings are gathered by
/// the first of these, too, so it comes after the cause.
pub(crate) fn with_bow(
    piece: &Piece<'_>,
    draft: Draft,
    (at, index): (usize, usize),
    direction: BowDirection,
    (what, sounding): (&'static str, WishedNote),
) -> Draft {
    if piece.document.is_none() {
        return draft;
    }
    let draft = match cheapest(piece, at, index, direction) {
        Some(Remedy { proposal, changes, sketch }) => {
            draft.and_remedy(proposal.kind).propose_whole(proposal, changes).sketched(sketch)
        }
        None => draft,
    };
    draft.wishing(BowWish { line: at, stroke: index, direction, what, sounding })
}

/// How far around the stroke the passage is planned again: beyond it the plan stays as it is, because
/// the strokes at the edges keep their bows (rule of thumb).
const BEFORE: usize = 24;
/// See [`BEFORE`]. Twelve did not see the accent two bars on that comes out on the wrong bow then (rule of thumb).
const AFTER: usize = 24;

struct Remedy {
    proposal: Proposal,
    /// The marks that tell the players; none where the arm has no time for it: then it is for the pencil.
    changes: Vec<Change>,
    /// The same marks, whether there is time or not.
    sketch: Vec<Change>,
}

fn cheapest(piece: &Piece<'_>, at: usize, index: usize, direction: BowDirection) -> Option<Remedy> {
    let line = piece.lines.get(at)?;
    let range = passage(line, index);
    let stretch = stretch(line, &range);
    let mut settings = piece.plan_settings(at);
    settings.anchors = kept_edges(piece, at, &range, index)?;
    for anchor in &mut settings.anchors {
        anchor.stroke -= range.start;
    }
    let best = plan(&stretch, &settings);
    let local = index - range.start;
    settings.anchors.push(Anchor { stroke: local, direction: Some(direction), link: None });
    let other = plan(&stretch, &settings);
    let (departure, difference) = nearest_difference(&best, &other, local)?;
    let (kind, sentence) = said(piece, at, range.start + departure, difference)?;
    let mut marked = vec![departure, local];
    if matches!(kind, ProposalKind::Hook | ProposalKind::Retake) {
        marked.push(departure.checked_sub(1)?);
    }
    let strokes = marked.iter().map(|local| (range.start + local, other.strokes[*local].direction));
    let in_time =
        kind != ProposalKind::Retake || piece.lift_after(at, range.start + departure - 1).lacks() <= 0;
    let sketch = marks(piece, at, strokes);
    let changes = if in_time { sketch.clone() } else { Vec::new() };
    let cost_change = Some(other.total.less(&best.total));
    let proposal = Proposal { cost_change, ..Proposal::new(Grade::PlayersChoice, kind, sentence) };
    Some(Remedy { proposal, changes, sketch })
}

/// Bow marks on the first notes of strokes of a line.
pub(crate) fn marks(
    piece: &Piece<'_>,
    at: usize,
    strokes: impl Iterator<Item = (usize, BowDirection)>,
) -> Vec<Change> {
    let Some(line) = piece.lines.get(at) else { return Vec::new() };
    let Some(part) = piece.score.parts.get(line.part) else { return Vec::new() };
    strokes
        .filter_map(|(index, direction)| {
            let first = line.strokes.get(index)?.notes.first()?;
            Some(change::bow_mark(note(part, *first)?, direction))
        })
        .flatten()
        .collect()
}

/// A line's strokes by themselves, played once.
pub(crate) fn stretch(line: &Line, range: &Range<usize>) -> Line {
    Line {
        strokes: line.strokes[range.clone()].to_vec(),
        repeats: Vec::new(),
        voices: line.voices.clone(),
        name: line.name.clone(),
        ..*line
    }
}

/// The bows at the edges of a passage that the rest of the plan rests on, by stroke of the line; the
/// stroke that is asked to turn is free.
pub(crate) fn kept_edges(
    piece: &Piece<'_>,
    at: usize,
    range: &Range<usize>,
    index: usize,
) -> Option<Vec<Anchor>> {
    let line = piece.lines.get(at)?;
    let planned = piece.planned(at);
    let edges = [range.start, range.end.checked_sub(1)?];
    let kept = edges.into_iter().filter(|edge| *edge != index && !is_free(line, *edge, range.end));
    kept.map(|edge| Some(Anchor { stroke: edge, direction: Some(planned.get(edge)?.direction), link: None }))
        .collect()
}

/// The strokes around one, from and to a free joint where one is near.
pub(crate) fn passage(line: &Line, index: usize) -> Range<usize> {
    let entry = |at: &usize| line.strokes[*at].join == Join::Entry;
    let from = index.saturating_sub(BEFORE);
    let start = (from..=index).rev().find(entry).unwrap_or(from);
    let to = (index + 1 + AFTER).min(line.strokes.len());
    let end = (index + 1..to).find(entry).unwrap_or(to);
    start..end
}

/// Whether an edge of the passage lies at a free joint, so that its bow need not be kept.
fn is_free(line: &Line, edge: usize, end: usize) -> bool {
    let enters = |at: usize| line.strokes.get(at).is_none_or(|stroke| stroke.join == Join::Entry);
    if edge + 1 == end { enters(end) } else { enters(edge) }
}

/// What the arm does otherwise, nearest before the stroke, and where.
fn nearest_difference(best: &Plan, other: &Plan, last: usize) -> Option<(usize, DifferenceKind)> {
    (0..=last).rev().find_map(|local| difference(best, other, local).map(|kind| (local, kind)))
}

fn said(
    piece: &Piece<'_>,
    at: usize,
    index: usize,
    difference: DifferenceKind,
) -> Option<(ProposalKind, Saying)> {
    let place = piece.stroke_is_at(at, piece.lines[at].strokes.get(index)?);
    Some(match difference {
        DifferenceKind::Start(direction) => (
            ProposalKind::Start,
            Saying::new("offer-start").choosing("bow", bow(direction)).with("at", place),
        ),
        DifferenceKind::Hook(_) => (ProposalKind::Hook, Saying::new("offer-hook").with("at", place)),
        DifferenceKind::Retake(direction) => (
            ProposalKind::Retake,
            Saying::new("offer-retake").choosing("bow", bow(direction)).with("at", place),
        ),
        DifferenceKind::AsItComes(direction) => (
            ProposalKind::Mark,
            Saying::new("offer-begin").choosing("bow", bow(direction)).with("at", place.bar_if_first()),
        ),
    })
}

/// What the second plan does otherwise at one stroke, if anything.
fn difference(best: &Plan, other: &Plan, index: usize) -> Option<DifferenceKind> {
    let (best, other) = (best.strokes.get(index)?, other.strokes.get(index)?);
    match (best.link, other.link) {
        (before, Link::Reset) if before != Link::Reset || best.direction != other.direction => {
            Some(DifferenceKind::Start(other.direction))
        }
        (Link::Reset | Link::Hooked | Link::Retake, Link::Change) => {
            Some(DifferenceKind::AsItComes(other.direction))
        }
        (before, Link::Hooked) if before != Link::Hooked => Some(DifferenceKind::Hook(other.direction)),
        (before, Link::Retake) if before != Link::Retake => Some(DifferenceKind::Retake(other.direction)),
        _ => None,
    }
}
