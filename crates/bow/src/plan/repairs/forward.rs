//! From a request to the frontier: passage by passage, then the changes shared out among them.

use std::ops::Range;

use super::lattice::{Lattice, LatticeChange};
use super::notation::{Borders, price};
use super::search::{Way, ways};
use super::{ChangeKind, NotationChange, RepairRequest, Repaired};
use crate::lines::{Binding, Extent, StrokeMaker};
use crate::plan::anchors::printed_allows;
use crate::plan::{Allowed, Anchor, PlanSettings, Weights, plan};
use crate::{Cost, Join, Line, LineSource, Stroke, Term};

/// The strokes of a line, piece by piece.
pub(super) type StrokePieces = Vec<(Extent, Binding)>;

/// The passages of a line, from free joint to free joint: nothing outside one bears on it.
pub(crate) fn passages(line: &Line) -> Vec<Range<usize>> {
    let mut passages: Vec<Range<usize>> = Vec::new();
    for (index, stroke) in line.strokes.iter().enumerate() {
        match passages.last_mut() {
            Some(last) if stroke.join != Join::Entry => last.end = index + 1,
            _ => passages.push(index..index + 1),
        }
    }
    passages
}

/// A passage's cheapest ways by number of changes.
struct Offers {
    lattice: Lattice,
    ways: Vec<Option<Way>>,
}

pub(super) fn steps(source: &LineSource<'_>, request: &RepairRequest<'_>) -> Vec<Repaired> {
    let maker = source.maker();
    let offers: Vec<Offers> = passages(source.line())
        .into_iter()
        .filter(|passage| overlap(passage, &request.window))
        .map(|passage| offers(source, &maker, request, &passage))
        .collect();
    let shares = shares(&offers, request.most);
    let mut steps: Vec<Repaired> = Vec::new();
    for share in shares.into_iter().flatten() {
        let (pieces, changes) = put_together(source, &offers, &share);
        let before = steps.first().map(|printed| printed.cost);
        let repaired = repaired(source, &maker, request, &pieces, &changes, before);
        if steps.last().is_none_or(|last| repaired.cost.total() < last.cost.total()) {
            steps.push(repaired);
        }
    }
    steps
}

fn overlap(one: &Range<usize>, other: &Range<usize>) -> bool {
    one.start < other.end && other.start < one.end
}

fn offers(
    source: &LineSource<'_>,
    maker: &StrokeMaker<'_>,
    request: &RepairRequest<'_>,
    passage: &Range<usize>,
) -> Offers {
    let borders = Borders::new(source, request.settings, passage, &request.window);
    let lattice = Lattice::new(&borders, &request.settings.weights, request.most);
    let strokes: Vec<Stroke> =
        lattice.shapes.iter().map(|(extent, binding)| maker.tried(*extent, *binding)).collect();
    let allowed = allowed(source, request, &lattice.shapes, &strokes);
    let ways = ways(&lattice, &strokes, &allowed, request.settings, request.most);
    Offers { lattice, ways }
}

/// What each stroke of a lattice may do.
fn allowed(
    source: &LineSource<'_>,
    request: &RepairRequest<'_>,
    shapes: &[(Extent, Binding)],
    strokes: &[Stroke],
) -> Vec<Allowed> {
    let settings = request.settings;
    let mut allowed: Vec<Allowed> =
        strokes.iter().map(|stroke| printed_allows(stroke, settings.marks)).collect();
    for (at, (extent, _)) in shapes.iter().enumerate() {
        for anchor in anchors(source, request, *extent) {
            allowed[at] = anchor.narrow(allowed[at], strokes[at].join);
        }
    }
    allowed
}

/// The anchors that bind a stroke: those of the printed stroke with whose first note it begins, and the
/// wish for the bow of a note that it holds.
fn anchors(source: &LineSource<'_>, request: &RepairRequest<'_>, extent: Extent) -> Vec<Anchor> {
    let printed = |stroke: usize| source.extents().get(stroke).copied();
    let plain = request.settings.anchors.iter().copied();
    let begun = plain.filter(|anchor| printed(anchor.stroke).is_some_and(|of| of.first == extent.first));
    let ended = request.ending.and_then(|ending| {
        let of = printed(ending.stroke)?;
        let last = (of.first..of.end).rfind(|event| source.onset(*event) < ending.until)?;
        let direction = Some(ending.direction);
        (extent.first..extent.end).contains(&last).then_some(Anchor {
            stroke: ending.stroke,
            direction,
            link: None,
        })
    });
    begun.chain(ended).collect()
}

/// For each number of changes the cheapest share of it for every passage.
fn shares(offers: &[Offers], most: usize) -> Vec<Option<Vec<usize>>> {
    let mut best: Vec<Option<(i64, Vec<usize>)>> = vec![None; most + 1];
    best[0] = Some((0, Vec::new()));
    for offer in offers {
        let mut next: Vec<Option<(i64, Vec<usize>)>> = vec![None; most + 1];
        for (made, so_far) in best.iter().enumerate() {
            let Some((total, share)) = so_far else { continue };
            for (more, way) in offer.ways.iter().enumerate().take(most + 1 - made) {
                let Some(way) = way else { continue };
                let total = total + way.total;
                let slot = &mut next[made + more];
                if slot.as_ref().is_none_or(|(least, _)| total < *least) {
                    let mut share = share.clone();
                    share.push(more);
                    *slot = Some((total, share));
                }
            }
        }
        best = next;
    }
    best.into_iter().map(|found| found.map(|(_, share)| share)).collect()
}

/// The pieces of the whole line and the changes that make them.
fn put_together(
    source: &LineSource<'_>,
    offers: &[Offers],
    share: &[usize],
) -> (StrokePieces, Vec<LatticeChange>) {
    let mut pieces: StrokePieces = Vec::new();
    let mut changes = Vec::new();
    let printed = source.extents();
    let mut at = 0;
    for (offer, made) in offers.iter().zip(share) {
        let Some(way) = &offer.ways[*made] else { continue };
        let events = &offer.lattice.events;
        while printed[at].first < events.start {
            pieces.push((printed[at], Binding::Written));
            at += 1;
        }
        for node in way.nodes.iter().map(|node| &offer.lattice.nodes[*node]) {
            pieces.push(offer.lattice.shapes[node.shape]);
            changes.extend(node.changes.iter().copied());
        }
        while printed.get(at).is_some_and(|extent| extent.first < events.end) {
            at += 1;
        }
    }
    pieces.extend(printed[at..].iter().map(|extent| (*extent, Binding::Written)));
    changes.sort_unstable();
    (pieces, changes)
}

/// The settings of the printed line for a line of other pieces.
fn settings_for(source: &LineSource<'_>, request: &RepairRequest<'_>, pieces: &StrokePieces) -> PlanSettings {
    let mut settings = request.settings.clone();
    settings.anchors = pieces
        .iter()
        .enumerate()
        .flat_map(|(stroke, (extent, _))| {
            let bound = anchors(source, request, *extent);
            bound.into_iter().map(move |anchor| Anchor { stroke, ..anchor })
        })
        .collect();
    settings
}

/// The plan of the line with its changes; `before` is what the printed notation costs.
pub(super) fn repaired(
    source: &LineSource<'_>,
    maker: &StrokeMaker<'_>,
    request: &RepairRequest<'_>,
    pieces: &StrokePieces,
    changes: &[LatticeChange],
    before: Option<Cost>,
) -> Repaired {
    let mut line = source.rebuilt(maker, pieces);
    line.repeats.clear();
    let plan = plan(&line, &settings_for(source, request, pieces));
    let cost = plan.total + notation(&request.settings.weights, changes);
    let changes = changes.iter().map(|change| told(source, pieces, *change)).collect();
    let change = cost.less(&before.unwrap_or(cost));
    Repaired { changes, line, plan, cost, change }
}

/// What changes cost.
fn notation(weights: &Weights, changes: &[LatticeChange]) -> Cost {
    Cost::of(Term::Notation, changes.iter().map(|change| price(weights, change.kind)).sum())
}

/// A change with its place and the strokes before and after.
fn told(source: &LineSource<'_>, pieces: &StrokePieces, change: LatticeChange) -> NotationChange {
    let (bar, offset, note) = source.place(change.event);
    let around = |event: usize| (event.saturating_sub(1), event);
    let printed_at = match change.kind {
        ChangeKind::HandOverLater => change.event - 1,
        ChangeKind::HandOverEarlier => change.event + 1,
        _ => change.event,
    };
    NotationChange {
        kind: change.kind,
        note,
        bar,
        offset,
        before: holding(source.extents().iter().copied(), around(printed_at)),
        after: holding(pieces.iter().map(|(extent, _)| *extent), around(change.event)),
    }
}

/// The strokes that hold two neighbouring events.
fn holding(extents: impl Iterator<Item = Extent>, (from, to): (usize, usize)) -> Range<usize> {
    let mut held: Option<Range<usize>> = None;
    for (index, extent) in extents.enumerate() {
        if extent.first <= to && extent.end > from {
            held = Some(held.map_or(index, |held| held.start)..index + 1);
        }
    }
    held.unwrap_or(0..0)
}
