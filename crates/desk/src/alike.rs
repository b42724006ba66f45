//! The strokes that are played as one is: its other places in the line, and the other players of the moment.

use std::collections::BTreeSet;

use arcata_bow::together::About;
use arcata_bow::{Line, Term};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use crate::desk::Base;

/// Which strokes an act is for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Deserialize, ToSchema)]
#[serde(rename_all = "lowercase")]
pub(crate) enum Goes {
    /// The stroke alone.
    #[default]
    Here,
    /// The stroke wherever its figure comes in the line.
    Places,
    /// The stroke with all who play the same rhythm with it.
    Players,
    /// All places, and all players there.
    All,
}

/// A stroke of a line.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, ToSchema)]
pub(crate) struct StrokeAt {
    /// The line.
    pub(crate) line: usize,
    /// The stroke.
    pub(crate) stroke: usize,
}

/// Who plays as a stroke does; the stroke itself is among them.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub(crate) struct AlikeView {
    /// Its places in the line, in order.
    pub(crate) places: Vec<StrokeAt>,
    /// Who plays it with it.
    pub(crate) players: Vec<StrokeAt>,
    /// Both.
    pub(crate) all: Vec<StrokeAt>,
}

impl AlikeView {
    /// For a stroke that there is.
    pub(crate) fn new(base: &Base, at: StrokeAt) -> Self {
        let sorted = |goes: Goes| alike(base, at, goes).into_iter().collect();
        Self { places: sorted(Goes::Places), players: sorted(Goes::Players), all: sorted(Goes::All) }
    }
}

/// The strokes that an act is for.
pub(crate) fn alike(base: &Base, at: StrokeAt, goes: Goes) -> BTreeSet<StrokeAt> {
    let alone = || BTreeSet::from([at]);
    match goes {
        Goes::Here => alone(),
        Goes::Places => places(base, at),
        Goes::Players => players(base, at),
        Goes::All => places(base, at).into_iter().flat_map(|place| players(base, place)).collect(),
    }
}

/// The same place of the same figure, wherever it comes in the line: what agrees with the stroke, what agrees with that, and so
/// on, at the same place of the bar.
fn places(base: &Base, at: StrokeAt) -> BTreeSet<StrokeAt> {
    let line = &base.lines()[at.line].strokes;
    let as_this = |stroke: usize| {
        let (one, other) = (&line[at.stroke], &line[stroke]);
        one.offset == other.offset && one.length == other.length && one.kind == other.kind
    };
    let (mut found, mut open) = (BTreeSet::from([at]), vec![at]);
    while let Some(one) = open.pop() {
        for other in agreeing(base, one, Term::Likeness) {
            if other.line == at.line && as_this(other.stroke) && found.insert(other) {
                open.push(other);
            }
        }
    }
    found
}

/// Those who play the same rhythm at the same moment.
fn players(base: &Base, at: StrokeAt) -> BTreeSet<StrokeAt> {
    agreeing(base, at, Term::Unity).chain([at]).collect()
}

/// The members of all agreements on the direction of a stroke.
fn agreeing(base: &Base, at: StrokeAt, term: Term) -> impl Iterator<Item = StrokeAt> + '_ {
    let of = base.agreements().iter().filter(move |agreement| {
        agreement.term == term
            && agreement.about == About::Direction
            && agreement.members.iter().any(|member| (member.line, member.stroke) == (at.line, at.stroke))
    });
    of.flat_map(|agreement| {
        agreement.members.iter().map(|member| StrokeAt { line: member.line, stroke: member.stroke })
    })
}

/// Whether there is such a stroke.
pub(crate) fn is_there(lines: &[Line], at: StrokeAt) -> bool {
    lines.get(at.line).is_some_and(|line| at.stroke < line.strokes.len())
}
