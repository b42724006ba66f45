//! Every single change by itself.

use std::ops::Range;

use super::forward::{StrokePieces, repaired};
use super::lattice::LatticeChange;
use super::notation::{Border, Borders};
use super::{ChangeKind, RepairRequest, Repaired};
use crate::LineSource;
use crate::lines::{Binding, Extent};

/// The best plan of a stretch of printed strokes with each single change that its notation allows, in
/// order of their places, after the best plan with none. The stretch must run from a free joint to a
/// free joint; indices of strokes in what is returned count from its first stroke.
#[must_use]
pub fn singly(source: &LineSource<'_>, request: &RepairRequest<'_>, stretch: &Range<usize>) -> Vec<Repaired> {
    let maker = source.maker();
    let borders = Borders::new(source, request.settings, stretch, &request.window);
    let printed: Vec<Extent> = source.extents()[stretch.clone()].to_vec();
    let as_printed: StrokePieces = printed.iter().map(|extent| (*extent, Binding::Written)).collect();
    let plain = repaired(source, &maker, request, &as_printed, &[], None);
    let before = plain.cost;
    let mut found = vec![plain];
    for event in borders.events() {
        for change in changes_at(borders.at(event), event) {
            let pieces = with(&printed, event, change);
            found.push(repaired(source, &maker, request, &pieces, &[change], Some(before)));
        }
    }
    for repaired in &mut found {
        for change in &mut repaired.changes {
            change.before = change.before.start - stretch.start..change.before.end - stretch.start;
        }
    }
    found
}

/// The changes that a border offers.
fn changes_at(border: Border, event: usize) -> Vec<LatticeChange> {
    let at = |event: usize| move |kind: ChangeKind| LatticeChange { event, kind };
    let mut changes: Vec<LatticeChange> = Vec::new();
    changes.extend(border.cut().map(at(event)));
    changes.extend(border.slur().map(at(event)));
    changes.extend(border.hook().map(at(event)));
    changes.extend(border.later().map(at(event + 1)));
    changes.extend(border.earlier().map(at(event.wrapping_sub(1))));
    changes
}

/// The pieces of the printed strokes with one change at the border before `event`.
fn with(printed: &[Extent], event: usize, change: LatticeChange) -> StrokePieces {
    let mut starts: Vec<usize> = printed.iter().map(|extent| extent.first).collect();
    match starts.binary_search(&event) {
        Ok(at) if change.event == event => drop(starts.remove(at)),
        Ok(at) => starts[at] = change.event,
        Err(at) => starts.insert(at, event),
    }
    let last = printed.last().map_or(0, |extent| extent.end);
    let ends = starts.iter().skip(1).copied().chain([last]);
    starts
        .iter()
        .zip(ends)
        .map(|(first, end)| {
            let hooked = change.kind == ChangeKind::Hook && (*first..end).contains(&event);
            let binding = if hooked { Binding::Stopped } else { Binding::Written };
            (Extent { first: *first, end }, binding)
        })
        .collect()
}
