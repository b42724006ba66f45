//! Where strokes do not go with what they belong to, and why.

use std::collections::BTreeMap;
use std::ops::Range;

use arcata_score::BowDirection;

use super::{Agreement, Together};
use crate::plan::{Anchor, MarkReading, Wished, alternatives};
use crate::{Cost, Line, Link, Term};

/// A stretch of a line that does not go with the others, or not as it went elsewhere.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Departure {
    /// Index of the line.
    pub line: usize,
    /// Its strokes, from the first that departs to one past the last.
    pub strokes: Range<usize>,
    /// How many of them depart.
    pub departing: usize,
    /// [`Term::Unity`] or [`Term::Likeness`].
    pub term: Term,
    /// What going along at its first stroke would cost on top, term by term; negative shares are saved.
    /// Nothing where a printed mark or an anchor forbids it.
    pub dearer: Cost,
    /// Why it departs.
    pub reason: DepartureReason,
}

/// Why a stretch departs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DepartureReason {
    /// The mark printed on its first stroke says so.
    PrintedMark,
    /// It was fixed.
    Anchor,
    /// Going along would cost more, above all under this name.
    Dearer(Term),
    /// Either way costs the same.
    Even,
}

/// The stretches that depart from an agreement, by line and stroke.
#[must_use]
pub fn departures(lines: &[Line], together: &Together, agreements: &[Agreement]) -> Vec<Departure> {
    let mut departing: BTreeMap<(usize, Term), BTreeMap<usize, Wished>> = BTreeMap::new();
    for (agreement, wish) in agreements.iter().zip(&together.wishes) {
        for member in &agreement.members {
            if !wish.is_met(&together.plans[member.line].strokes[member.stroke]) {
                departing.entry((member.line, agreement.term)).or_default().insert(member.stroke, *wish);
            }
        }
    }
    // A reason is told of one pass.
    let once: Vec<Line> = lines.iter().map(|line| Line { repeats: Vec::new(), ..line.clone() }).collect();
    let mut found = Vec::new();
    for ((line, term), strokes) in departing {
        let list: Vec<usize> = strokes.keys().copied().collect();
        // Every second stroke may be of another figure: such gaps do not end a stretch.
        for stretch in list.chunk_by(|a, b| *b <= a + 2) {
            let first = stretch[0];
            let (dearer, reason) = why(&once[line], together, line, term, first, strokes[&first]);
            found.push(Departure {
                line,
                strokes: first..stretch[stretch.len() - 1] + 1,
                departing: stretch.len(),
                term,
                dearer,
                reason,
            });
        }
    }
    found.sort_by_key(|departure| (departure.line, departure.strokes.start, departure.term));
    found
}

/// Why a stroke does not go the way wished for, and what going it would cost on top.
fn why(
    line: &Line,
    together: &Together,
    index: usize,
    departs_from: Term,
    stroke: usize,
    wish: Wished,
) -> (Cost, DepartureReason) {
    let settings = &together.settings[index];
    let law = settings.marks == MarkReading::Law;
    let against = |direction: BowDirection| wish == Wished::Goes(direction.other());
    if law && line.strokes[stroke].printed.is_some_and(against) {
        return (Cost::default(), DepartureReason::PrintedMark);
    }
    let fixed = |anchor: &Anchor| anchor.stroke == stroke && anchor.direction.is_some_and(against);
    if settings.anchors.iter().any(fixed) {
        return (Cost::default(), DepartureReason::Anchor);
    }
    let dearer = dearer(line, together, index, stroke, wish);
    let others = dearer.parts().filter(|(term, share)| *share > 0 && *term != departs_from);
    let most = others.max_by_key(|(term, share)| (*share, std::cmp::Reverse(*term)));
    (dearer, most.map_or(DepartureReason::Even, |(term, _)| DepartureReason::Dearer(term)))
}

fn dearer(line: &Line, together: &Together, index: usize, stroke: usize, wish: Wished) -> Cost {
    let mut settings = together.settings[index].clone();
    let cheapest = |settings: &_| alternatives(line, settings, stroke..stroke + 1, 1).into_iter().next();
    let free = cheapest(&settings);
    settings.anchors.push(match wish {
        Wished::Goes(direction) => Anchor { stroke, direction: Some(direction), link: None },
        Wished::Changes(true) => Anchor { stroke, direction: None, link: Some(Link::Change) },
        Wished::Changes(false) => Anchor { stroke, direction: None, link: Some(Link::Hooked) },
    });
    match (free, cheapest(&settings)) {
        (Some(free), Some(along)) => along.plan.total.less(&free.plan.total),
        _ => Cost::default(),
    }
}
