//! # A bow mark that cannot be
//!
//! ## What it finds
//! A bow mark on a note where no stroke begins: inside a slur, on a note tied from before, in pizzicato, on
//! a rest, on a note that is not bowed. Also two different marks at the beginning of one stroke, unless they
//! stand on one note that is held long enough for a change of bow. These are the marks that `arcata marks`
//! counts as contradictory.
//!
//! ## Why it matters
//! The mark contradicts the slur, or the pizz., beside it. Each player believes one of the two.
//!
//! ## Example
//! ```music
//! quarter=96
//! violin: mf (1/4 C5 D5!up E5 F5) | 1/1 G5 |||
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

use arcata_bow::audit::{AuditedMark, MarkReason, contradictions};

use crate::change::Change;
use crate::under_slur::note;
use crate::words::bow;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};
use arcata_languages::Saying;

/// See the module's page.
#[derive(Debug)]
pub struct MarkCannotBe;

impl Rule for MarkCannotBe {
    const CARD: Card = Card {
        id: "mark-cannot-be",
        family: Family::Marks,
        gravest: Severity::A,
        lightest: Severity::A,
        reads: &[Reads::Ties, Reads::Strokes, Reads::Bows, Reads::BowMarks, Reads::Words],
        since: "0.1",
        title: "A bow mark that cannot be",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() {
                continue;
            }
            let mut before = None;
            for mark in contradictions(piece.score, part_index, piece.lines) {
                // Both bows on one note are one matter.
                if before.replace(mark.note) == Some(mark.note) {
                    continue;
                }
                let draft = match mark.reason {
                    MarkReason::BothBows => both_bows(piece, found, &mark),
                    _ => impossible(piece, found, &mark),
                };
                if let Some(draft) = draft {
                    found.report(draft);
                }
            }
        }
    }
}

fn impossible(piece: &Piece<'_>, found: &Findings<'_>, mark: &AuditedMark) -> Option<Draft> {
    let printed = &note(piece.score.parts.get(mark.part)?, mark.note)?.bow_mark?;
    let where_it_is = mark.reason.name();
    let draft = found.at_notes(Severity::A, mark.part, &[mark.note]);
    let sentence = Saying::new("say-mark-cannot-be")
        .choosing("bow", bow(mark.direction))
        .with("at", piece.where_is(draft.place()))
        .choosing("where", where_it_is);
    Some(draft.say(sentence).cause(where_it_is).propose_change(
        Grade::Safe,
        ProposalKind::Unmark,
        Saying::new("offer-mark-out"),
        vec![Change::Remove(printed.node)],
    ))
}

/// Down and up at the beginning of one stroke: on one note, or on two that sound together.
fn both_bows(piece: &Piece<'_>, found: &Findings<'_>, marked: &AuditedMark) -> Option<Draft> {
    let part = piece.score.parts.get(marked.part)?;
    let stroke = marked.stroke.and_then(|(line, index)| {
        Some((piece.lines.get(line)?.strokes.get(index)?, piece.planned(line).get(index)))
    });
    let beginning = note(part, marked.note)?.onset;
    let mut together: Vec<_> = stroke.map_or_else(Vec::new, |(stroke, _)| stroke.notes.clone());
    if !together.contains(&marked.note) {
        together.push(marked.note);
    }
    let marks: Vec<_> = together
        .iter()
        .filter_map(|id| note(part, *id))
        .filter(|note| note.onset == beginning)
        .flat_map(|note| note.bow_mark.iter().chain(&note.more_bow_marks))
        .collect();
    let kept = stroke.and_then(|(_, planned)| planned).map_or(marked.direction, |planned| planned.direction);
    let surplus = marks.iter().filter(|each| each.direction != kept);
    let changes = surplus.map(|each| Change::Remove(each.node)).collect();
    let draft = found.at_notes(Severity::A, marked.part, &[marked.note]);
    let sentence = Saying::new("say-both-bows").with("at", piece.where_is(draft.place()));
    Some(draft.say(sentence).propose_change(
        Grade::PlayersChoice,
        ProposalKind::Unmark,
        Saying::new("offer-keep-one-bow").choosing("bow", bow(kept)),
        changes,
    ))
}
