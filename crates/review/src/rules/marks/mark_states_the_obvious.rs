//! # A bow mark that states the obvious
//!
//! ## What it finds
//! A printed down-bow or up-bow that the player would take anyway: it follows straight on, alternation
//! gives it, no row in one direction begins or ends there, it vouches for no unusual bow (an accent, a
//! swell or an ending against the rule), and without it the best plan is the same.
//!
//! ## Why it matters
//! Players read marks as exceptions. Where every second note carries one, the few that matter drown, and
//! a leader must take the rest out before bowing the part.
//!
//! ## Example
//! ```music
//! quarter=96
//! violin: mf c''4!down d''!up e''!down f''!up | g''1!down |.
//! ```
//!
//! ## What it proposes
//! To take the marks out (unmark, safe: every stroke stays as it is).
//!
//! ## What it cannot know
//! Whether a teaching edition wants every bow marked. Marks after rests, at the beginning and beside
//! another mark of the same direction are left alone: there players do differ.
//!
//! ## Sources
//! Bow marks in published chamber music stand mostly where the ordinary rule would give the other bow
//! (counted, 21 marked quartets, CC0: alternation predicts the next mark in 67 %).

use std::collections::BTreeSet;

use arcata_bow::plan::plan;
use arcata_bow::{Join, Line, Link, PlannedStroke, Stroke, Term};
use arcata_score::BowDirection;

use crate::change::Change;
use crate::under_slur::note;
use crate::words::bow;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct MarkStatesTheObvious;

impl Rule for MarkStatesTheObvious {
    const CARD: Card = Card {
        id: "mark-states-the-obvious",
        family: Family::Marks,
        gravest: Severity::D,
        lightest: Severity::D,
        since: "0.1",
        title: "A bow mark that states the obvious",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (at, line) in piece.lines.iter().enumerate() {
            for index in obvious(piece, at, line) {
                if let Some(draft) = surplus(piece, found, at, index) {
                    found.report(draft);
                }
            }
        }
    }
}

/// The marks of a line that could all go together without a stroke changing.
fn obvious(piece: &Piece<'_>, at: usize, line: &Line) -> BTreeSet<usize> {
    let planned = piece.planned(at);
    let mut surplus: BTreeSet<usize> =
        (1..planned.len()).filter(|index| comes_anyway(line, planned, *index)).collect();
    let ending_joint = piece.thresholds().ending_joint;
    surplus.retain(|index| !vouches_for(&line.strokes[*index], &planned[*index], ending_joint));
    // Without the marks the planner may find something better elsewhere: marks that hold it back stay.
    for _ in 0..ROUNDS {
        if surplus.is_empty() {
            return surplus;
        }
        let mut bare = line.clone();
        for index in &surplus {
            bare.strokes[*index].printed = None;
        }
        let without = plan(&bare, &piece.plan_settings(at));
        let changed: Vec<usize> = (0..planned.len())
            .filter(|index| {
                let now = without.strokes.get(*index);
                now.is_none_or(|now| {
                    (now.direction, now.link) != (planned[*index].direction, planned[*index].link)
                })
            })
            .collect();
        if changed.is_empty() {
            return surplus;
        }
        for changed in changed {
            let nearest = nearest(&surplus, changed);
            nearest.map(|needed| surplus.remove(&needed));
        }
    }
    BTreeSet::new()
}

/// So many times the line is planned without the marks that are left; if strokes still change, all marks
/// stay (a bound on time: each round takes out at least one mark, mostly all that matter).
const ROUNDS: usize = 6;

/// The mark that held a changed stroke back: the nearest to it.
fn nearest(surplus: &BTreeSet<usize>, changed: usize) -> Option<usize> {
    let before = surplus.range(..=changed).next_back();
    let after = surplus.range(changed..).next();
    before.into_iter().chain(after).copied().min_by_key(|index| (index.abs_diff(changed), *index))
}

/// Whether the mark says that an unusual bow is meant: on an accent, a swell or a phrase's end.
fn vouches_for(stroke: &Stroke, planned: &PlannedStroke, ending_joint: u16) -> bool {
    let against = [Term::Accent, Term::Swell].into_iter().any(|term| planned.cost.term(term) > 0);
    against || planned.direction == BowDirection::Up && stroke.phrase.joint_after >= ending_joint
}

fn comes_anyway(line: &Line, planned: &[PlannedStroke], index: usize) -> bool {
    let stroke = &line.strokes[index];
    let Some(printed) = stroke.printed else { return false };
    let in_a_row = |other: Option<usize>| {
        other.and_then(|other| line.strokes.get(other)).is_some_and(|other| other.printed == Some(printed))
    };
    stroke.join == Join::Continues
        && planned[index].link == Link::Change
        && planned[index - 1].direction == printed.other()
        && !in_a_row(index.checked_sub(1))
        && !in_a_row(Some(index + 1))
}

fn surplus(piece: &Piece<'_>, found: &Findings<'_>, at: usize, index: usize) -> Option<Draft> {
    let line = &piece.lines[at];
    let stroke = &line.strokes[index];
    let part = piece.score.parts.get(line.part)?;
    let mark = stroke.notes.iter().find_map(|id| note(part, *id)?.bow_mark)?;
    let draft = found.at_stroke(Severity::D, at, index);
    let sentence = format!(
        "The {} at {} is what comes anyway.",
        bow(mark.direction),
        piece.where_is(draft.place()),
    );
    Some(draft.say(sentence).cause("comes anyway").propose_change(
        Grade::Safe,
        ProposalKind::Unmark,
        "Take the mark out.",
        vec![Change::Remove(mark.node)],
    ))
}
