//! # A tremolo slow enough to be counted
//!
//! ## What it finds
//! Tremolo written with three beams or more, for which the tempo gives so few strokes a second that players
//! will count them as notes (B), and no word that says tremolo. One finding for each part. Where another section has a
//! tremolo of three beams at the same time, it is a colour of the whole chord, and everybody shimmers.
//!
//! ## Why it matters
//! Three beams are thirty-seconds in a slow tempo and a shimmer in a quick one. Where the thirty-seconds are slow,
//! half of a section plays them and the other half shimmers.
//!
//! ## Example
//! ```music
//! quarter=48
//! violin: p 1/1 C5!trem3 | D5!trem3 |||
//! ```
//!
//! ## What it proposes
//! To write trem. where it begins, if a shimmer is meant (word, writer's choice). To write the notes out, or
//! fewer beams, if they are meant to be counted (word, writer's choice), which is for the writer's hand.
//!
//! ## What it cannot know
//! Which of the two is meant. One and two beams are taken as measured, a tremolo that the file calls unmeasured
//! as a shimmer, and one that was called trem. once in a part stays so. Tremolo between two notes is left out.
//!
//! ## Sources
//! The rate from which strokes are counted: from memory. That three beams are the sign for both: common
//! practice.

use arcata_bow::{Line, Stroke, StrokeKind};
use arcata_languages::{Argument, Saying};
use arcata_score::{Length, Meaning, Moment, NoteId, Part, TremoloRole};

use crate::attack_marks::is_for;
use crate::change::direction_before;
use crate::speed::{rate, said_rate};
use crate::under_slur::note;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct CountableTremolo;

impl Rule for CountableTremolo {
    const CARD: Card = Card {
        id: "countable-tremolo",
        family: Family::Kinds,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::Strokes, Reads::Words],
        since: "0.1",
        title: "A tremolo slow enough to be counted",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (at, line) in piece.lines.iter().enumerate() {
            let Some(part) = piece.score.parts.get(line.part) else { continue };
            let said = first_said(part, line.staff);
            let mut leads = None;
            for (index, stroke) in line.strokes.iter().enumerate() {
                if said.is_some_and(|said| said <= stroke.onset) {
                    break;
                }
                let slow = slow_tremolo(piece, part, stroke);
                let Some(slow) = slow.filter(|_| !is_colour(piece, line.part, stroke)) else { continue };
                let leads = *leads.get_or_insert(slow.note);
                found.report(counted(piece, found, (at, index), &slow, leads));
            }
        }
    }
}

/// When tremolo is first called by its name on a staff.
fn first_said(part: &Part, staff: u8) -> Option<Moment> {
    let mut said = part.instructions.iter().filter(|said| is_for(part, said, staff));
    said.find(|said| said.meaning == Meaning::TremoloWord).map(|said| said.place.at)
}

/// Beams from which a tremolo can be a shimmer (common practice).
const SHIMMER: u8 = 3;

/// Whether another bowed part has a tremolo on one note, with as many beams, while a stroke sounds: notes that are to be
/// counted in several parts at once are written out.
fn is_colour(piece: &Piece<'_>, own: usize, stroke: &Stroke) -> bool {
    let (from, to) = (stroke.onset, stroke.onset + stroke.length);
    let others =
        piece.score.parts.iter().enumerate().filter(|(at, part)| *at != own && part.instrument.is_bowed());
    others.into_iter().any(|(_, part)| {
        let before = part.notes.partition_point(|note| note.onset < to);
        part.notes[..before].iter().any(|note| {
            let shimmers = |tremolo: arcata_score::Tremolo| {
                tremolo.role == TremoloRole::Single && tremolo.beams >= SHIMMER
            };
            note.onset + note.length > from && note.tremolo.is_some_and(shimmers)
        })
    })
}

/// A tremolo that will be counted.
struct Slow {
    note: NoteId,
    beams: u8,
    /// Strokes in 100 s.
    rate: i64,
}

fn slow_tremolo(piece: &Piece<'_>, part: &Part, stroke: &Stroke) -> Option<Slow> {
    if stroke.kind != StrokeKind::Tremolo {
        return None;
    }
    let (id, first) = stroke.notes.iter().find_map(|id| Some((*id, note(part, *id)?)))?;
    let tremolo =
        first.tremolo.filter(|tremolo| tremolo.role == TremoloRole::Single && tremolo.beams >= SHIMMER)?;
    // Beams through the stem divide the note as beams on quarters do; flags of shorter notes add theirs.
    let base = first.written.map_or(first.length, |written| written.base).min(Length::new(1, 4));
    let one = base.scaled(1, 1i64.checked_shl(u32::from(tremolo.beams)).filter(|parts| *parts > 0)?);
    let strokes = stroke.length.in_units_of(one)?;
    let attacks = strokes.numerator().checked_div(strokes.denominator()).filter(|attacks| *attacks > 0)?;
    let rate = rate(attacks, stroke.duration.micros)?;
    (rate < piece.profile.thresholds.countable_tremolo.value).then_some(Slow {
        note: id,
        beams: tremolo.beams,
        rate,
    })
}

fn counted(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    (at, index): (usize, usize),
    slow: &Slow,
    leads: NoteId,
) -> Draft {
    let line: &Line = &piece.lines[at];
    let draft = found.at_stroke(Severity::B, at, index);
    let sentence = Saying::new("say-countable-tremolo")
        .with("at", piece.where_is(draft.place()))
        .with("rate", said_rate(slow.rate));
    let draft = draft
        .say(sentence)
        .evidence("evidence-beams", Argument::Whole(i64::from(slow.beams)), "")
        .evidence("evidence-strokes-a-second", Argument::Thousandths(slow.rate * 10), "")
        .cause("slow");
    let part = &piece.score.parts[line.part];
    let word =
        note(part, leads).map(|note| direction_before(note, part.staves, "above", "<words>trem.</words>"));
    let draft = draft
        .propose_change(
            Grade::WritersChoice,
            ProposalKind::Word,
            Saying::new("offer-write-trem"),
            word.into_iter().collect(),
        )
        .propose(Grade::WritersChoice, ProposalKind::Word, Saying::new("offer-write-out-or-measured"));
    piece.with_tempo_assumption(draft, line)
}
