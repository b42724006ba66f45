//! # A bow mark that cannot be
//!
//! ## What it finds
//! A bow mark on a note where no stroke begins: inside a slur, on a note tied from before, in pizzicato,
//! on a rest. Also two different marks on one note.
//!
//! ## Why it matters
//! The mark contradicts the slur or the state beside it. Each player believes one of the two.
//!
//! ## Example
//! ```music
//! quarter=96
//! violin: mf (c''4 d''!up e'' f'') | g''1 |.
//! ```
//!
//! ## What it proposes
//! To take the mark out (unmark, safe where nothing else begins there); of two marks, the one that does
//! not come (unmark, player's choice).
//!
//! ## What it cannot know
//! Whether the mark is right and the slur wrong. Several marks of one direction over a slur with dots only
//! spell the stroke out and are left alone.
//!
//! ## Sources
//! Common practice; MusicXML 4.0 puts a bow mark on the note that begins the stroke.

use std::collections::BTreeMap;

use arcata_bow::StrokeKind;
use arcata_score::{BowMark, Note, NoteId, Part};

use crate::change::Change;
use crate::under_slur::{Sounding, note, sounding_at, sounding_changes, strokes_by_note, tied_from_before};
use crate::words::bow;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct MarkCannotBe;

impl Rule for MarkCannotBe {
    const CARD: Card = Card {
        id: "mark-cannot-be",
        family: Family::Marks,
        gravest: Severity::A,
        lightest: Severity::A,
        since: "0.1",
        title: "A bow mark that cannot be",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() || part.notes.iter().all(|note| note.bow_mark.is_none()) {
                continue;
            }
            let strokes = strokes_by_note(piece, part_index);
            for (id, note) in (0u32..).map(NoteId).zip(&part.notes) {
                let Some(mark) = note.bow_mark else { continue };
                if let Some(draft) = two_marks(piece, found, part_index, id, mark, &strokes) {
                    found.report(draft);
                }
                if let Some(where_it_is) = contradiction(piece, part, &strokes, id, note, mark) {
                    let draft = impossible(piece, found, part_index, id, mark, where_it_is);
                    found.report(draft);
                }
            }
        }
    }
}

/// What the mark contradicts, in words that follow "stands".
fn contradiction(
    piece: &Piece<'_>,
    part: &Part,
    strokes: &BTreeMap<NoteId, (usize, usize)>,
    id: NoteId,
    marked: &Note,
    mark: BowMark,
) -> Option<&'static str> {
    if marked.pitch.is_rest() {
        return Some("on a rest");
    }
    let plucked = matches!(
        sounding_at(&sounding_changes(part, marked.staff), marked.onset),
        Sounding::Plucked(_)
    );
    let Some((line, index)) = strokes.get(&id) else { return plucked.then_some("in pizzicato") };
    let stroke = &piece.lines[*line].strokes[*index];
    let first = note(part, *stroke.notes.first()?)?;
    let spelt_out = stroke.kind == StrokeKind::Pulsed && stroke.printed == Some(mark.direction);
    if marked.onset <= first.onset || spelt_out {
        None
    } else if tied_from_before(marked) {
        Some("on a note that is tied from before")
    } else {
        Some("inside a slur")
    }
}

fn impossible(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    part_index: usize,
    id: NoteId,
    mark: BowMark,
    where_it_is: &'static str,
) -> Draft {
    let draft = found.at_notes(Severity::A, part_index, &[id]);
    let sentence = format!(
        "The {} at {} stands {where_it_is}, where no stroke begins.",
        bow(mark.direction),
        piece.where_is(draft.place()),
    );
    draft.say(sentence).cause(where_it_is).propose_change(
        Grade::Safe,
        ProposalKind::Unmark,
        "Take the mark out.",
        vec![Change::Remove(mark.node)],
    )
}

/// Down and up on one note.
fn two_marks(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    part_index: usize,
    id: NoteId,
    mark: BowMark,
    strokes: &BTreeMap<NoteId, (usize, usize)>,
) -> Option<Draft> {
    let part = &piece.score.parts[part_index];
    let others = &note(part, id)?.more_bow_marks;
    let other = others.iter().find(|other| other.direction != mark.direction)?;
    let planned = strokes.get(&id).and_then(|(line, index)| piece.planned(*line).get(*index));
    let kept = planned.map_or(mark.direction, |planned| planned.direction);
    let surplus = std::iter::once(&mark).chain(others).filter(|each| each.direction != kept);
    let changes = surplus.map(|each| Change::Remove(each.node)).collect();
    let draft = found.at_notes(Severity::A, part_index, &[id]);
    let sentence = format!("The note at {} is marked both down-bow and up-bow.", piece.where_is(draft.place()));
    Some(draft.say(sentence).propose_change(
        Grade::PlayersChoice,
        ProposalKind::Unmark,
        format!("Keep the {} and take the {} out.", bow(kept), bow(if other.direction == kept { mark.direction } else { other.direction })),
        changes,
    ))
}
