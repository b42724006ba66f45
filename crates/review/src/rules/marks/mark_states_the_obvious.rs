//! # A bow mark that states the obvious
//!
//! ## What it finds
//! A printed down-bow or up-bow that the player would take anyway: it follows straight on, alternation
//! gives it, no row in one direction begins or ends there, it vouches for no unusual bow (an accent, a
//! swell or an ending against the rule), it belongs to no effect (a row of loud down-bows, up-bows into a
//! strong down-bow, the first instances of a repeated figure), and without it the best plan is the same.
//! These are the marks that `arcata marks` counts as obvious, but for up-bows on a downbeat: they come anyway, but against
//! the rule, and the sign says that this is meant.
//!
//! ## Why it matters
//! Players read marks as exceptions. Where every second note carries one, the few that matter drown, and
//! a leader must take the rest out before bowing the part.
//!
//! ## Example
//! ```music
//! quarter=96
//! violin: mf 1/4 C5!down D5!up E5!down F5!up | 1/1 G5!down |||
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

use arcata_bow::MetricPlace;
use arcata_bow::audit::MarkReason;
use arcata_languages::Saying;
use arcata_score::BowDirection;

use crate::change::Change;
use crate::under_slur::note;
use crate::words::bow;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct MarkStatesTheObvious;

impl Rule for MarkStatesTheObvious {
    const CARD: Card = Card {
        id: "mark-states-the-obvious",
        family: Family::Marks,
        gravest: Severity::D,
        lightest: Severity::D,
        reads: &[Reads::Strokes, Reads::Bows, Reads::BowMarks],
        since: "0.1",
        title: "A bow mark that states the obvious",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for mark in found.audited().iter().filter(|mark| mark.reason == MarkReason::ComesAnyway) {
            let stroke = mark.stroke;
            if let Some(draft) = stroke.and_then(|(line, stroke)| surplus(piece, found, line, stroke)) {
                found.report(draft);
            }
        }
    }
}

fn surplus(piece: &Piece<'_>, found: &Findings<'_>, at: usize, index: usize) -> Option<Draft> {
    let line = &piece.lines[at];
    let stroke = &line.strokes[index];
    let part = piece.score.parts.get(line.part)?;
    let mark = stroke.notes.iter().find_map(|id| note(part, *id)?.bow_mark)?;
    if mark.direction == BowDirection::Up && stroke.emphasis.metric == MetricPlace::Downbeat {
        return None;
    }
    let draft = found.at_stroke(Severity::D, at, index);
    let sentence = Saying::new("say-mark-not-needed")
        .choosing("bow", bow(mark.direction))
        .with("at", piece.where_is(draft.place()));
    Some(draft.say(sentence).cause("comes anyway").propose_change(
        Grade::Safe,
        ProposalKind::Unmark,
        Saying::new("offer-mark-out"),
        vec![Change::Remove(mark.node)],
    ))
}
