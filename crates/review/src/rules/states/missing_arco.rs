//! # arco is missing
//!
//! ## What it finds
//! After pizz., with no arco since: a slur over several notes, a bowed tremolo, or a bow mark (A). Also
//! pizz. said again though it is still in force (C).
//!
//! ## Why it matters
//! These signs only make sense with the bow. Half the section will put the finger down and half will pick
//! the bow up, and the rehearsal stops.
//!
//! ## Example
//! ```music
//! quarter=96
//! cello: mf "pizz." c4 e g c' | r1 | (c4 e g c') |.
//! ```
//!
//! ## What it proposes
//! To write arco at the first note that shows the bow (state, writer's choice); to take out the second
//! pizz. (state, writer's choice).
//!
//! ## What it cannot know
//! Whether the sign is the slip and not the missing word. Plucked slurs by the left hand are left out
//! where they are marked; so is a pizz. in brackets, which only reminds.
//!
//! ## Sources
//! Common practice.

use std::collections::BTreeSet;

use arcata_score::{Instruction, Meaning, Moment, Note, NoteId, NoteKind, Part, Plucked, TremoloRole};

use crate::change::{direction_before, take_out};
use crate::under_slur::{Sounding, solid_slurs, sounding_at, sounding_changes};
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct MissingArco;

impl Rule for MissingArco {
    const CARD: Card = Card {
        id: "missing-arco",
        family: Family::States,
        gravest: Severity::A,
        lightest: Severity::C,
        since: "0.1",
        title: "arco is missing",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() {
                continue;
            }
            for staff in 1..=part.staves.max(1) {
                for draft in bowed_while_plucked(piece, found, part_index, staff) {
                    found.report(draft);
                }
                for draft in plucked_twice(piece, found, part_index, staff) {
                    found.report(draft);
                }
            }
        }
    }
}

/// What shows that a note is bowed.
fn sign_of_bow(part: &Part, slurred: &BTreeSet<NoteId>, id: NoteId, note: &Note) -> Option<&'static str> {
    let tremolo = note.tremolo.is_some_and(|tremolo| tremolo.role != TremoloRole::PairStop);
    if note.technical.plucked != Plucked::None || note.pitch.is_rest() || note.kind != NoteKind::Ordinary {
        None
    } else if note.bow_mark.is_some() {
        Some("A bow mark")
    } else if tremolo {
        Some("A tremolo")
    } else if slurred.contains(&id) && part.slurs.iter().any(|slur| slur.start == id) {
        Some("A slur")
    } else {
        None
    }
}

/// Notes that begin a slur to another moment.
fn slur_starts(part: &Part) -> BTreeSet<NoteId> {
    solid_slurs(part)
        .filter(|(_, start, end)| end.onset > start.onset && end.technical.plucked == Plucked::None)
        .map(|(slur, ..)| slur.start)
        .collect()
}

/// Whether arco stands under the slur that begins on a note: then another rule speaks.
fn arco_comes(part: &Part, id: NoteId) -> bool {
    let under = |said: &Instruction| {
        solid_slurs(part)
            .filter(|(slur, ..)| slur.start == id)
            .any(|(_, start, end)| (start.onset..=end.onset).contains(&said.place.at))
    };
    part.instructions.iter().any(|said| said.meaning == Meaning::Arco && under(said))
}

/// The first sign of the bow in each stretch of pizzicato.
fn bowed_while_plucked(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    part_index: usize,
    staff: u8,
) -> Vec<Draft> {
    let part = &piece.score.parts[part_index];
    let (changes, slurred) = (sounding_changes(piece.score, part, staff), slur_starts(part));
    let mut reported: BTreeSet<Moment> = BTreeSet::new();
    let mut drafts = Vec::new();
    let notes = (0u32..).map(NoteId).zip(&part.notes).filter(|(_, note)| note.staff == staff);
    for (id, note) in notes {
        let Sounding::Plucked(since) = sounding_at(&changes, note.onset) else { continue };
        let Some(sign) = sign_of_bow(part, &slurred, id, note) else { continue };
        if sign == "A slur" && arco_comes(part, id) {
            continue;
        }
        if !reported.insert(since) {
            continue;
        }
        let draft = found.at_notes(Severity::A, part_index, &[id]);
        let sentence = format!(
            "{sign} stands at {}, and the last word was pizz. in {} {}.",
            piece.where_is(draft.place()),
            piece.bar_word(),
            piece.bar_label_at(since),
        );
        let arco = direction_before(note, part.staves, "above", "<words>arco</words>");
        drafts.push(draft.say(sentence).propose_change(
            Grade::WritersChoice,
            ProposalKind::State,
            "Write arco here.",
            vec![arco],
        ));
    }
    drafts
}

/// pizz. said while it is in force.
fn plucked_twice(piece: &Piece<'_>, found: &Findings<'_>, part_index: usize, staff: u8) -> Vec<Draft> {
    let part = &piece.score.parts[part_index];
    let on_staff = part.instructions.iter().filter(|said| said.place.staff <= 1 || said.place.staff == staff);
    let movement = |said: &Instruction| piece.score.movement_of(said.place.bar);
    let mut before: Option<&Instruction> = None;
    let mut drafts = Vec::new();
    for said in on_staff {
        let ends = matches!(said.meaning, Meaning::Arco | Meaning::ColLegno | Meaning::ColLegnoBattuto);
        if ends {
            before = None;
        }
        if said.meaning != Meaning::Pizzicato {
            continue;
        }
        if let Some(before) = before.filter(|before| {
            // Every movement begins with the bow: there the word is said again.
            movement(before) == movement(said) && speaks_again(part, before, said)
        }) {
            drafts.push(twice(piece, found, part_index, before, said));
        }
        before = Some(said);
    }
    drafts
}

/// Whether a second pizz. is more than an echo of the first: printed, not in brackets, later in the music.
fn speaks_again(part: &Part, before: &Instruction, said: &Instruction) -> bool {
    let printed = |said: &Instruction| !said.text.is_empty() && !said.text.trim_start().starts_with(['(', '[']);
    let between = part.notes.iter().any(|note| {
        (before.place.at..said.place.at).contains(&note.onset) && !note.pitch.is_rest()
    });
    // Where another voice or player takes the bow at the same place, the word says who goes on plucking.
    let divides = part.instructions.iter().any(|other| other.meaning == Meaning::Arco && other.place.at == said.place.at);
    printed(before) && printed(said) && between && !divides && before.place.voice == said.place.voice
}

fn twice(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    part_index: usize,
    before: &Instruction,
    said: &Instruction,
) -> Draft {
    let draft = found.at(Severity::C, Some(part_index), said.place.bar, said.place.at);
    let sentence = format!(
        "pizz. is written at {} though it holds since {} {}: either arco is missing between them, or the \
         second word is one too many.",
        piece.where_is(draft.place()),
        piece.bar_word(),
        piece.bar_label_at(before.place.at),
    );
    draft.say(sentence).cause("pizz. twice").propose_change(
        Grade::WritersChoice,
        ProposalKind::State,
        "Take the second pizz. out.",
        vec![take_out(&said.place)],
    )
}
