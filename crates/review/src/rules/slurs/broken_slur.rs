//! # A slur with one end
//!
//! ## What it finds
//! A slur that begins and never ends, ends and never began, or stands on a single note. A slur that hangs
//! over a repeat sign or into an ending is complete for the player and left out. One in a part is a slip (A); several
//! were lost between programs, and the part is to be looked through (B).
//!
//! ## Why it matters
//! The player sees a line into nothing and cannot tell where the bow changes. Such ends are mostly left
//! over from an edit, and export from one program into another multiplies them.
//!
//! ## Example
//! ```music
//! quarter=80  broken-slurs
//! violin: mf (1/4 C5 D5 E5 F5 | 1/1 G5 |||
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

use arcata_languages::Saying;
use arcata_score::{EndingEdge, Note, NoteId, OpenSlur, Part, RepeatSign, SlurEnd};
use arcata_xml::NodeId;

use crate::change::Change;
use crate::under_slur::note;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct BrokenSlur;

impl Rule for BrokenSlur {
    const CARD: Card = Card {
        id: "broken-slur",
        family: Family::Slurs,
        gravest: Severity::A,
        lightest: Severity::B,
        reads: &[Reads::Slurs, Reads::Words],
        since: "0.1",
        title: "A slur with one end",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() {
                continue;
            }
            let mut drafts = Vec::new();
            for open in &part.open_slurs {
                let draft = match other_end_on_its_note(part, open) {
                    None => loose_end(piece, found, part_index, open),
                    // Told once, at its start.
                    Some(_) if open.written == SlurEnd::Stop => None,
                    Some(stop) => {
                        Some(on_one_note(piece, found, part_index, [open.node, stop.node], open.note))
                    }
                };
                drafts.extend(draft);
            }
            for slur in part.slurs.iter().filter(|slur| slur.start == slur.end) {
                let ends = [slur.start_node, slur.end_node];
                drafts.push(on_one_note(piece, found, part_index, ends, slur.start));
            }
            let severity = if drafts.len() > SLIPS { Severity::B } else { Severity::A };
            for draft in drafts {
                found.report(draft.weighing(severity).cause("loose end"));
            }
        }
    }
}

/// More of them in one part are no slips of the writer: ends were lost on the way between programs (rule of thumb).
const SLIPS: usize = 1;

/// The other end of a slur on a single note: two loose ends of one number.
fn other_end_on_its_note<'a>(part: &'a Part, open: &OpenSlur) -> Option<&'a OpenSlur> {
    part.open_slurs
        .iter()
        .find(|other| (other.note, other.number) == (open.note, open.number) && other.written != open.written)
}

fn on_one_note(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    part_index: usize,
    ends: [NodeId; 2],
    carrier: NoteId,
) -> Draft {
    let draft = found.at_notes(Severity::A, part_index, &[carrier]);
    let sentence = Saying::new("say-slur-on-one-note").with("at", piece.where_is(draft.place()));
    draft.say(sentence).propose_change(
        Grade::WritersChoice,
        ProposalKind::Split,
        Saying::new("offer-slur-out"),
        ends.map(Change::Remove).to_vec(),
    )
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
        SlurEnd::Start => Saying::new("say-slur-never-ends").with("at", place),
        SlurEnd::Stop => Saying::new("say-slur-never-began").with("at", place),
    };
    Some(draft.say(sentence).propose_change(
        Grade::WritersChoice,
        ProposalKind::Split,
        Saying::new("offer-loose-end-out"),
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
