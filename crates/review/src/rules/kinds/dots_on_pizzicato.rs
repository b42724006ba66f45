//! # Dots on plucked notes
//!
//! ## What it finds
//! Dots, wedges or spiccato signs on plucked notes that follow each other (D), one finding for each part.
//!
//! ## Why it matters
//! A plucked note is short anyway. Dots left over from a bowed version make players look for the arco that
//! they may have missed.
//!
//! ## Example
//! ```music
//! quarter=96
//! cello: mf "pizz." 1/4 C3!. E3!. G3!. rest | 1/1 C4 |||
//! ```
//!
//! ## What it proposes
//! To take the dots out (unmark, writer's choice).
//!
//! ## What it cannot know
//! Whether the writer wants the notes damped at once, for which there are words ("damp", "secco"). On a note or chord
//! before a rest a dot is read so, and left out: the string would ring into the silence.
//! Notes plucked by the left hand or snapped against the fingerboard while the bow plays are left out.
//!
//! ## Sources
//! Common practice.

use arcata_bow::techniques::{Contact, Techniques};
use arcata_languages::Saying;
use arcata_score::{NoteId, NoteKind, Part};

use crate::attack_marks::{SHORT, is_dotted, take_marks};
use crate::change::Change;
use crate::under_slur::note;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct DotsOnPizzicato;

impl Rule for DotsOnPizzicato {
    const CARD: Card = Card {
        id: "dots-on-pizzicato",
        family: Family::Kinds,
        gravest: Severity::D,
        lightest: Severity::D,
        reads: &[Reads::Marks, Reads::Words],
        since: "0.1",
        title: "Dots on plucked notes",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() {
                continue;
            }
            for staff in 1..=part.staves.max(1) {
                let runs = dotted_runs(piece, part_index, staff).into_iter();
                for run in runs.filter(|run| follow_each_other(part, run)) {
                    found.report(dots(piece, found, part_index, &run));
                }
            }
        }
    }
}

/// Runs of plucked notes with dots; a plucked note without one, or a bowed note, ends a run, a rest does not.
fn dotted_runs(piece: &Piece<'_>, part_index: usize, staff: u8) -> Vec<Vec<NoteId>> {
    let part = &piece.score.parts[part_index];
    let techniques = Techniques::new(piece.score, part, staff);
    if techniques.runs.iter().all(|run| run.contact != Contact::Pizzicato) {
        return Vec::new();
    }
    let played = (0u32..)
        .map(NoteId)
        .zip(&part.notes)
        .filter(|(_, note)| note.staff == staff && note.kind != NoteKind::Cue && !note.pitch.is_rest());
    let mut runs: Vec<Vec<NoteId>> = Vec::new();
    let mut open = false;
    for (id, note) in played {
        let dotted = techniques.at(note.onset).contact == Contact::Pizzicato && is_dotted(note);
        match runs.last_mut().filter(|_| open) {
            Some(run) if dotted => run.push(id),
            _ if dotted => runs.push(vec![id]),
            _ => {}
        }
        // The further notes of a chord carry no marks of their own.
        open = dotted || (open && note.chord == arcata_score::ChordRole::Member);
    }
    runs
}

/// Whether notes of a run are plucked one after the other, with no rest between: there a dot damps nothing.
fn follow_each_other(part: &Part, run: &[NoteId]) -> bool {
    run.windows(2).any(|pair| {
        let notes = note(part, pair[0]).zip(note(part, pair[1]));
        notes.is_some_and(|(one, next)| one.onset < next.onset && one.onset + one.length == next.onset)
    })
}

fn dots(piece: &Piece<'_>, found: &Findings<'_>, part_index: usize, run: &[NoteId]) -> Draft {
    let part = &piece.score.parts[part_index];
    let draft = found.at_notes(Severity::D, part_index, run);
    let place = piece.where_is(draft.place());
    let sentence = Saying::new("say-dots-on-pizzicato").with("count", run.len()).with("at", place);
    let changes: Vec<Change> = run
        .iter()
        .filter_map(|id| note(part, *id))
        .flat_map(|note| take_marks(piece, note, &SHORT))
        .collect();
    draft.say(sentence).cause("dots").propose_change(
        Grade::WritersChoice,
        ProposalKind::Unmark,
        Saying::new("offer-dots-out"),
        changes,
    )
}
