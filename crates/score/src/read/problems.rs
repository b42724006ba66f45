//! Collecting what was found wrong.

use arcata_xml::NodeId;

use crate::{Problem, ProblemKind};

/// Where a problem shows.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct ProblemPlace {
    pub(super) node: Option<NodeId>,
    pub(super) part: Option<u32>,
    pub(super) bar: Option<u32>,
}

/// Problems in the order they were met; document order is made at the end.
#[derive(Debug, Default)]
pub(super) struct Problems(Vec<Problem>);

impl Problems {
    pub(super) fn add(&mut self, kind: ProblemKind, place: ProblemPlace, message: impl Into<String>) {
        self.0.push(Problem {
            kind,
            node: place.node,
            part: place.part,
            bar: place.bar,
            message: message.into(),
        });
    }

    pub(super) fn append(&mut self, mut other: Self) {
        self.0.append(&mut other.0);
    }

    /// All of them in document order; those of no element first.
    pub(super) fn in_document_order(mut self) -> Vec<Problem> {
        self.0.sort_by_key(|problem| problem.node);
        self.0
    }
}
