//! # Too much for one throw
//!
//! ## What it finds
//! A group of notes under one slur that a word asks to be thrown (gettato, jeté, ricochet), and that has more
//! notes than one throw holds, or comes slower or faster than a thrown bow rebounds (B).
//!
//! ## Why it matters
//! The bow is let fall once and counts by itself. After a few rebounds it lies on the string; slower than it
//! rebounds, every note has to be placed, which is another stroke and sounds so.
//!
//! ## Example
//! ```music
//! quarter=144
//! violin: mf "ricochet" (1/16 C5!. D5!. E5!. F5!. G5!. A5!. B5!. C6!.) 1/2 C6 | 1/1 rest |||
//! ```
//!
//! ## What it proposes
//! To divide a group that is too long (split, writer's choice). To ask for another stroke where the speed is
//! wrong (word, writer's choice): only the writer knows which sound was meant.
//!
//! ## What it cannot know
//! What a soloist can do: groups of ten and more are thrown in show pieces. A group without dots under its slur is
//! not looked at; a word holds until another word about the stroke, arco, pizz. or ord.
//!
//! ## Sources
//! Guettler 1997, as quoted (10 to 20 attacks a second), and teaching notes (2 to 6 notes a throw); the lower
//! end of the speed is from memory.

use arcata_bow::{Line, Stroke, StrokeKind};
use arcata_languages::{Argument, Saying};
use arcata_score::{Meaning, NoteKind};

use crate::attack_marks::StrokeWords;
use crate::change::Change;
use crate::speed::{rate_of, said_rate};
use crate::split::{self, Keep};
use crate::under_slur::{note, solid_slurs};
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct ThrownCount;

impl Rule for ThrownCount {
    const CARD: Card = Card {
        id: "thrown-count",
        family: Family::Kinds,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::Slurs, Reads::Strokes, Reads::Words],
        since: "0.1",
        title: "Too much for one throw",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (at, line) in piece.lines.iter().enumerate() {
            let Some(part) = piece.score.parts.get(line.part) else { continue };
            let words = StrokeWords::new(part, line.staff);
            for (index, stroke) in line.strokes.iter().enumerate() {
                let thrown = words.at(stroke.onset).is_some_and(|(_, word)| word == Meaning::Thrown);
                if thrown && stroke.kind == StrokeKind::Pulsed {
                    let drafts = [too_many(piece, found, at, index), out_of_speed(piece, found, at, index)];
                    drafts.into_iter().flatten().for_each(|draft| found.report(draft));
                }
            }
        }
    }
}

fn too_many(piece: &Piece<'_>, found: &Findings<'_>, at: usize, index: usize) -> Option<Draft> {
    let line = &piece.lines[at];
    let stroke = &line.strokes[index];
    let most = piece.profile.thresholds.thrown_notes.value;
    let count = i64::from(stroke.note_count);
    if count <= most {
        return None;
    }
    let draft = found.at_stroke(Severity::B, at, index);
    let sentence = Saying::new("say-thrown-too-many")
        .with("count", count)
        .with("at", piece.where_is(draft.place()))
        .with("most", most);
    let changes = if count <= 2 * most { halves(piece, line, stroke) } else { Vec::new() };
    Some(
        draft
            .say(sentence)
            .evidence("evidence-notes-in-one-throw", Argument::Whole(count), "")
            .cause("many")
            .propose_change(
                Grade::WritersChoice,
                ProposalKind::Split,
                Saying::new("offer-divide-into-throws").with("most", most),
                changes,
            ),
    )
}

/// The slur in two halves.
fn halves(piece: &Piece<'_>, line: &Line, stroke: &Stroke) -> Vec<Change> {
    let Some(part) = piece.score.parts.get(line.part) else { return Vec::new() };
    let main: Vec<_> = stroke
        .notes
        .iter()
        .copied()
        .filter(|id| {
            note(part, *id).is_some_and(|note| {
                note.kind == NoteKind::Ordinary && note.chord == arcata_score::ChordRole::Main
            })
        })
        .collect();
    let Some(middle) = main.get(main.len().div_ceil(2)) else { return Vec::new() };
    let slur = solid_slurs(part)
        .find(|(slur, ..)| stroke.notes.contains(&slur.start) && stroke.notes.contains(&slur.end));
    let split = slur.and_then(|(slur, ..)| split::before_note(line.part, part, slur, *middle, Keep::Both));
    split.map_or_else(Vec::new, |split| split.changes(piece))
}

fn out_of_speed(piece: &Piece<'_>, found: &Findings<'_>, at: usize, index: usize) -> Option<Draft> {
    let line = &piece.lines[at];
    let rate = rate_of(&line.strokes[index])?;
    let (least, most) = (piece.profile.rate("thrown_least")?, piece.profile.rate("thrown_most")?);
    if (least..=most).contains(&rate) {
        return None;
    }
    let draft = found.at_stroke(Severity::B, at, index);
    let (pace, limit, remedy) = if rate < least {
        ("slower", least, "offer-slurred-staccato")
    } else {
        ("faster", most, "offer-slur-without-dots")
    };
    let sentence = Saying::new("say-thrown-out-of-speed")
        .with("at", piece.where_is(draft.place()))
        .with("rate", said_rate(rate))
        .choosing("pace", pace)
        .with("limit", said_rate(limit));
    let draft = draft
        .say(sentence)
        .evidence("evidence-notes-a-second", Argument::Thousandths(rate * 10), "")
        .cause(pace)
        .propose(Grade::WritersChoice, ProposalKind::Word, Saying::new(remedy));
    Some(piece.with_tempo_assumption(draft, line))
}
