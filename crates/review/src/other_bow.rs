//! What a player would have to do otherwise to take a stroke on the other bow.

use std::ops::Range;

use arcata_bow::plan::{Alternative, Anchor, DifferenceKind, alternatives};
use arcata_bow::{Link, Plan};
use arcata_score::BowDirection;

use crate::words::a_bow;
use crate::{Draft, Grade, Piece, Proposal, ProposalKind};

/// Offers the cheapest way to have a stroke on the bow asked for, with what it costs.
pub(crate) fn with_bow(
    piece: &Piece<'_>,
    draft: Draft,
    at: usize,
    index: usize,
    direction: BowDirection,
) -> Draft {
    match cheapest(piece, at, index, direction) {
        Some(proposal) => draft.propose_whole(proposal, Vec::new()),
        None => draft,
    }
}

fn cheapest(piece: &Piece<'_>, at: usize, index: usize, direction: BowDirection) -> Option<Proposal> {
    let line = piece.lines.get(at)?;
    let window: Range<usize> = index..(index + 1).min(line.strokes.len());
    let mut settings = piece.plan_settings(at);
    let best = alternatives(line, &settings, window.clone(), 1).into_iter().next()?;
    settings.anchors.push(Anchor { stroke: index, direction: Some(direction), link: None });
    let other = alternatives(line, &settings, window, 1).into_iter().next()?;
    let (kind, sentence) = nearest_difference(piece, at, index, &best, &other)?;
    let change = other.plan.total.less(&best.plan.total);
    Some(Proposal {
        grade: Grade::PlayersChoice,
        kind,
        sentence,
        edits: Vec::new(),
        cost_change: Some(change),
    })
}

/// What the arm does otherwise, nearest before the stroke.
fn nearest_difference(
    piece: &Piece<'_>,
    at: usize,
    index: usize,
    best: &Alternative,
    other: &Alternative,
) -> Option<(ProposalKind, String)> {
    let offset = other.strokes.start;
    let last = index.checked_sub(offset)?;
    let (local, kind) = (0..=last)
        .rev()
        .find_map(|local| difference(&best.plan, &other.plan, local).map(|kind| (local, kind)))?;
    let place = piece.stroke_is_at(at, piece.lines[at].strokes.get(offset + local)?);
    Some(match kind {
        DifferenceKind::Start(direction) => {
            (ProposalKind::Start, format!("Start on {} at {place}.", a_bow(direction)))
        }
        DifferenceKind::Hook(_) => {
            (ProposalKind::Hook, format!("Hook the note at {place} to the one before it."))
        }
        DifferenceKind::Retake(direction) => {
            (ProposalKind::Retake, format!("Retake for {} at {place}.", a_bow(direction)))
        }
        DifferenceKind::AsItComes(direction) => {
            (ProposalKind::Mark, format!("Go on as it comes at {place}, on {}.", a_bow(direction)))
        }
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
