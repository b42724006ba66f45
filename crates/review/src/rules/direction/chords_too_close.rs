//! # Chords on down-bows too close to each other
//!
//! ## What it finds
//! Two chords of three or four strings one after the other, both to be taken down-bow by marks or by words, with less
//! time from the first to the second than it takes to break the first, let it speak and bring the bow back (B).
//!
//! ## Why it matters
//! A chord is rolled from the lower strings to the upper ones, and that takes its own time before the bow can leave.
//! Where there is none, the upper notes of the first chord are missing, or the second comes late.
//!
//! ## Example
//! ```music
//! quarter=160
//! violin: ff 1/4 G3+D4+B4+G5!down G3+D4+B4+G5!down 1/2 rest | 1/1 C5 |||
//! ```
//!
//! ## What it proposes
//! To take the second mark out and alternate (unmark, player's choice). To write fewer notes in the chords, which
//! two strings can hold (hook or lift as you like), for the writer's hand.
//!
//! ## What it cannot know
//! How quickly this player breaks a chord. Chords that nothing printed asks to take down-bow are alternated where they
//! come too fast, and not reported. Where even a lift between single notes would lack the time, `no-time-to-retake`
//! tells it.
//!
//! ## Sources
//! Three strings sound together only for the attack (encyclopedia article on string playing); the times of lift and
//! chord are from memory.

use arcata_bow::StrokeKind;
use arcata_languages::{Argument, Saying};
use arcata_score::{BowDirection, Meaning, Moment, Part};

use crate::attack_marks::is_for;
use crate::change::Change;
use crate::under_slur::note;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct ChordsTooClose;

impl Rule for ChordsTooClose {
    const CARD: Card = Card {
        id: "chords-too-close",
        family: Family::Direction,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::Strokes, Reads::BowMarks, Reads::Words],
        since: "0.1",
        title: "Chords on down-bows too close to each other",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (at, line) in piece.lines.iter().enumerate() {
            let Some(part) = piece.score.parts.get(line.part) else { continue };
            for index in 1..line.strokes.len() {
                let pair = [&line.strokes[index - 1], &line.strokes[index]];
                let chords = pair.iter().all(|stroke| stroke.kind == StrokeKind::BrokenChord);
                if !chords {
                    continue;
                }
                let marked = pair.iter().all(|stroke| stroke.printed == Some(BowDirection::Down));
                let told = marked || all_downs(part, line.staff, pair[1].onset);
                if let Some(draft) = too_close(piece, found, at, index).filter(|_| told) {
                    found.report(draft);
                }
            }
        }
    }
}

/// Whether words ask for every note down-bow at a moment.
fn all_downs(part: &Part, staff: u8, at: Moment) -> bool {
    let mut said = part.instructions.iter().filter(|said| said.place.at <= at && is_for(part, said, staff));
    let orders = |meaning| {
        matches!(
            meaning,
            Meaning::AllDownBows
                | Meaning::AllUpBows
                | Meaning::AsItComes
                | Meaning::Ordinario
                | Meaning::Pizzicato
        )
    };
    said.rfind(|said| orders(said.meaning)).is_some_and(|said| said.meaning == Meaning::AllDownBows)
}

fn too_close(piece: &Piece<'_>, found: &Findings<'_>, at: usize, index: usize) -> Option<Draft> {
    let line = &piece.lines[at];
    let before = &line.strokes[index - 1];
    let limits = piece.thresholds();
    let lift = piece.lift_in_row(at, index - 1);
    let time = before.duration.micros + before.silence_after.micros;
    let needed = limits.chord_speaks + lift.needed;
    if needed - time < limits.retake_lack || told_of_single_notes(piece, at, index) {
        return None;
    }
    let draft = found.at_stroke(Severity::B, at, index);
    let sentence = Saying::new("say-chords-too-close")
        .with("at", piece.where_is(draft.place()))
        .with("time", Argument::Thousandths(time / 1000))
        .with("needed", Argument::Thousandths(needed / 1000));
    let part = piece.score.parts.get(line.part)?;
    let notes = line.strokes[index].notes.iter().filter_map(|id| note(part, *id));
    let marks: Vec<Change> =
        notes.filter_map(|note| note.bow_mark).map(|mark| Change::Remove(mark.node)).collect();
    let draft = draft
        .say(sentence)
        .seconds("evidence-time-between-them", time)
        .seconds("evidence-the-first-chord-speaks", limits.chord_speaks)
        .seconds("evidence-the-lift-takes", lift.needed)
        .cause(format!("{}", before.length));
    let draft = if marks.is_empty() {
        draft.propose(Grade::PlayersChoice, ProposalKind::Unmark, Saying::new("offer-chords-as-they-come"))
    } else {
        draft.propose_change(
            Grade::PlayersChoice,
            ProposalKind::Unmark,
            Saying::new("offer-second-down-out"),
            marks,
        )
    };
    let draft =
        draft.propose(Grade::WritersChoice, ProposalKind::Word, Saying::new("offer-chords-on-two-strings"));
    Some(piece.with_tempo_assumption(draft, line))
}

/// Whether the lift alone lacks time in a printed row of three and more, which has a rule of its own.
fn told_of_single_notes(piece: &Piece<'_>, at: usize, index: usize) -> bool {
    let strokes = &piece.lines[at].strokes;
    let down = |at: usize| strokes.get(at).is_some_and(|stroke| stroke.printed == Some(BowDirection::Down));
    let row = down(index - 1) && down(index) && (down(index + 1) || index >= 2 && down(index - 2));
    row && piece.lift_in_row(at, index - 1).lacks() >= piece.thresholds().retake_lack
}
