//! # A slur with one end
//!
//! ## What it finds
//! A slur that begins and never ends, ends and never began, or stands on a single note. A slur that hangs
//! over a repeat sign or into an ending is complete for the player and left out.
//!
//! ## Why it matters
//! The player sees a line into nothing and cannot tell where the bow changes. Such ends are mostly left
//! over from an edit, and export from one program into another multiplies them.
//!
//! ## Example
//! ```music
//! quarter=80  broken-slurs
//! violin: mf (c''4 d'' e'' f'' | g''1 |.
//! ```
//!
//! ## What it proposes
//! To take the loose end out (split, writer's choice): the bow then changes at every note there.
//!
//! ## What it cannot know
//! Where the other end was meant to be.
//!
//! ## Sources
//! Common practice; MusicXML 4.0, element `slur`: every start has its stop of the same number.

use arcata_score::{EndingEdge, Note, OpenSlur, Part, RepeatSign, SlurEnd};

use crate::change::Change;
use crate::under_slur::note;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct BrokenSlur;

impl Rule for BrokenSlur {
    const CARD: Card = Card {
        id: "broken-slur",
        family: Family::Slurs,
        gravest: Severity::A,
        lightest: Severity::A,
        since: "0.1",
        title: "A slur with one end",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() {
                continue;
            }
            for open in &part.open_slurs {
                if let Some(draft) = loose_end(piece, found, part_index, open) {
                    found.report(draft);
                }
            }
            for slur in part.slurs.iter().filter(|slur| slur.start == slur.end) {
                let draft = found.at_notes(Severity::A, part_index, &[slur.start]);
                let sentence =
                    format!("The slur at {} begins and ends on the same note.", piece.where_is(draft.place()));
                let changes = vec![Change::Remove(slur.start_node), Change::Remove(slur.end_node)];
                let proposal = "Take the slur out.";
                found.report(draft.say(sentence).propose_change(
                    Grade::WritersChoice,
                    ProposalKind::Split,
                    proposal,
                    changes,
                ));
            }
        }
    }
}

fn loose_end(piece: &Piece<'_>, found: &Findings<'_>, part_index: usize, open: &OpenSlur) -> Option<Draft> {
    let part = &piece.score.parts[part_index];
    let carrier = note(part, open.note)?;
    if hangs_over(piece, part, carrier, open.written) {
        return None;
    }
    let draft = found.at_notes(Severity::A, part_index, &[open.note]);
    let place = piece.where_is(draft.place());
    let sentence = match open.written {
        SlurEnd::Start => format!("A slur begins at {place} and never ends."),
        SlurEnd::Stop => format!("A slur ends at {place} and never began."),
    };
    Some(draft.say(sentence).propose_change(
        Grade::WritersChoice,
        ProposalKind::Split,
        "Take the loose end out.",
        vec![Change::Remove(open.node)],
    ))
}

/// Whether the missing end is on the other side of a repeat sign or an ending: there the player's next
/// note is not the printed one.
fn hangs_over(piece: &Piece<'_>, part: &Part, carrier: &Note, written: SlurEnd) -> bool {
    let Some(bar) = piece.score.bars.get(carrier.bar as usize) else { return false };
    let in_bar = part.notes.iter().filter(|note| note.bar == carrier.bar && note.voice == carrier.voice);
    let sounding = in_bar.filter(|note| !note.pitch.is_rest());
    match written {
        SlurEnd::Start => {
            let last = sounding.map(|note| note.onset).max() == Some(carrier.onset);
            let leaves = matches!(bar.right.repeat, Some(RepeatSign::End { .. }))
                || bar.right.ending.as_ref().is_some_and(|ending| ending.edge != EndingEdge::Start);
            last && leaves
        }
        SlurEnd::Stop => {
            let first = sounding.map(|note| note.onset).min() == Some(carrier.onset);
            let enters = bar.left.repeat == Some(RepeatSign::Begin)
                || bar.left.ending.as_ref().is_some_and(|ending| ending.edge == EndingEdge::Start);
            first && enters
        }
    }
}
