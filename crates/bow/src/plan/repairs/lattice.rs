//! The strokes that repairs could make of some notes, and which of them may follow one another.

use std::ops::Range;

use super::ChangeKind;
use super::notation::{Borders, price};
use crate::lines::{Binding, Extent};
use crate::plan::Weights;

/// One change of the notation at an event.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct LatticeChange {
    pub(super) event: usize,
    pub(super) kind: ChangeKind,
}

/// How a stroke begins.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum StrokeBegin {
    /// Where one is printed.
    Printed,
    /// By a change that this stroke pays: a cut, or a beginning moved from one note later.
    Paid(LatticeChange),
    /// By a change that the stroke before pays.
    Given,
}

/// How a stroke ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum StrokeEnd {
    /// Where one is printed.
    Printed,
    /// Inside a printed stroke; the next stroke pays.
    Open,
    /// Inside a printed stroke, moved there from one note earlier; this stroke has paid.
    Paid(LatticeChange),
}

/// A stroke that repairs could make, with the changes that make it.
#[derive(Clone, Debug)]
pub(super) struct LatticeNode {
    pub(super) extent: Extent,
    /// Index of its stroke among those with the same notes and binding.
    pub(super) shape: usize,
    begin: StrokeBegin,
    end: StrokeEnd,
    pub(super) changes: Vec<LatticeChange>,
    /// Their price.
    pub(super) price: i64,
}

impl LatticeNode {
    /// Whether the other stroke may follow this one; it must begin where this one ends.
    pub(super) fn may_precede(&self, next: &Self) -> bool {
        matches!(
            (self.end, next.begin),
            (StrokeEnd::Printed, StrokeBegin::Printed)
                | (StrokeEnd::Open, StrokeBegin::Paid(_))
                | (StrokeEnd::Paid(_), StrokeBegin::Given)
        )
    }
}

/// All strokes that repairs with at most so many changes could make, in order of their first event.
pub(super) struct Lattice {
    pub(super) nodes: Vec<LatticeNode>,
    /// The notes and binding of each shape.
    pub(super) shapes: Vec<(Extent, Binding)>,
    pub(super) events: Range<usize>,
}

impl Lattice {
    pub(super) fn new(borders: &Borders, weights: &Weights, most: usize) -> Self {
        let events = borders.events();
        let mut lattice = Self { nodes: Vec::new(), shapes: Vec::new(), events: events.clone() };
        let growing = Growing { borders, weights, most };
        for first in events {
            lattice.from(&growing, first);
            lattice.hooked_from(&growing, first);
        }
        lattice
    }

    /// Strokes from one event on, as long as they may be.
    fn from(&mut self, growing: &Growing<'_>, first: usize) {
        let begins = growing.begins(first);
        if begins.is_empty() {
            return;
        }
        let mut gone = Vec::new();
        for end in first + 1..=self.events.end {
            if end > first + 1 {
                let border = growing.borders.at(end - 1);
                if border.is_printed() {
                    let Some(kind) = border.slur() else { return };
                    gone.push(LatticeChange { event: end - 1, kind });
                }
            }
            // The two ends may each pay for one of the borders that are gone.
            if gone.len() > growing.most + 1 {
                return;
            }
            let extent = Extent { first, end };
            let ends = growing.ends(extent, self.events.end);
            let known = self.nodes.len();
            for begin in &begins {
                for end in &ends {
                    self.nodes.extend(growing.node(extent, self.shapes.len(), *begin, *end, &gone));
                }
            }
            if self.nodes.len() > known {
                self.shapes.push((extent, Binding::Written));
            }
        }
    }

    /// Notes from one event on that are hooked.
    fn hooked_from(&mut self, growing: &Growing<'_>, first: usize) {
        if !growing.borders.at(first).is_printed() {
            return;
        }
        let mut changes = Vec::new();
        for end in first + 2..=self.events.end.min(first + 1 + growing.most) {
            let Some(kind) = growing.borders.at(end - 1).hook() else { return };
            changes.push(LatticeChange { event: end - 1, kind });
            let printed_end = end == self.events.end || growing.borders.at(end).is_printed();
            if !printed_end {
                return;
            }
            let (extent, shape) = (Extent { first, end }, self.shapes.len());
            let price = changes.iter().map(|change| price(growing.weights, change.kind)).sum();
            let (begin, end) = (StrokeBegin::Printed, StrokeEnd::Printed);
            self.nodes.push(LatticeNode { extent, shape, begin, end, changes: changes.clone(), price });
            self.shapes.push((extent, Binding::Stopped));
        }
    }
}

/// What the strokes of a lattice grow from.
struct Growing<'a> {
    borders: &'a Borders,
    weights: &'a Weights,
    most: usize,
}

impl Growing<'_> {
    /// The ways in which a stroke may begin with an event.
    fn begins(&self, event: usize) -> Vec<StrokeBegin> {
        let border = self.borders.at(event);
        if border.is_printed() {
            return vec![StrokeBegin::Printed];
        }
        if self.most == 0 {
            return Vec::new();
        }
        let mut begins = Vec::new();
        let paid = |kind| StrokeBegin::Paid(LatticeChange { event, kind });
        begins.extend(border.cut().map(paid));
        begins.extend(self.borders.at(event + 1).earlier().map(paid));
        begins.extend(self.borders.at(event - 1).later().map(|_| StrokeBegin::Given));
        begins
    }

    /// The ways in which a stroke may end.
    fn ends(&self, extent: Extent, last: usize) -> Vec<StrokeEnd> {
        if extent.end == last || self.borders.at(extent.end).is_printed() {
            return vec![StrokeEnd::Printed];
        }
        if self.most == 0 {
            return Vec::new();
        }
        let mut ends = vec![StrokeEnd::Open];
        if extent.end > extent.first + 1 {
            let later = self.borders.at(extent.end - 1).later();
            ends.extend(later.map(|kind| StrokeEnd::Paid(LatticeChange { event: extent.end, kind })));
        }
        ends
    }

    fn node(
        &self,
        extent: Extent,
        shape: usize,
        begin: StrokeBegin,
        end: StrokeEnd,
        gone: &[LatticeChange],
    ) -> Option<LatticeNode> {
        let mut changes = gone.to_vec();
        // A border that has only moved is not gone.
        let mut moved = |event: usize| {
            let at = changes.iter().position(|change| change.event == event);
            at.map(|at| changes.remove(at)).is_some()
        };
        let mut paid = Vec::new();
        if let StrokeBegin::Paid(change) = begin {
            if change.kind == ChangeKind::HandOverEarlier && !moved(change.event + 1) {
                return None;
            }
            paid.push(change);
        }
        if let StrokeEnd::Paid(change) = end {
            if !moved(change.event - 1) {
                return None;
            }
            paid.push(change);
        }
        changes.extend(paid);
        changes.sort_unstable();
        if changes.len() > self.most {
            return None;
        }
        let price = changes.iter().map(|change| price(self.weights, change.kind)).sum();
        Some(LatticeNode { extent, shape, begin, end, changes, price })
    }
}
