//! # arco is missing
//!
//! ## What it finds
//! After pizz., with no arco since: a bowed tremolo or a bow mark (A), or a slur over three notes or more: after a rest in
//! which the bow could be taken (B), or in a later bar (C). Also pizz. said again though it is still in force (C).
//!
//! ## Why it matters
//! These signs only make sense with the bow. Half the section will put the finger down and half will pick
//! the bow up, and the rehearsal stops.
//!
//! ## Example
//! ```music
//! quarter=96
//! cello: mf "pizz." 1/4 C3 E3 G3 C4 | 1/1 rest | (1/4 C3 E3 G3 C4) |||
//! ```
//!
//! ## What it proposes
//! To write arco at the first note that shows the bow (state, writer's choice); to take out the second
//! pizz. (state, writer's choice).
//!
//! ## What it cannot know
//! Whether the sign is the slip and not the missing word. A slur may well stand over plucked notes: it lets the string
//! ring, shows a phrase, or has the left hand stop the second note. Slurs of two notes are left out for that, and all
//! slurs of a passage that is slurred from the word on. So are notes marked for the left hand, and a pizz. in brackets,
//! which only reminds.
//!
//! ## Sources
//! Common practice.

use std::collections::{BTreeMap, BTreeSet};

use arcata_languages::Saying;
use arcata_score::{Instruction, Meaning, Moment, Note, NoteId, NoteKind, Part, Plucked, TremoloRole};

use crate::change::{direction_before, take_out};
use crate::under_slur::{SoundedBy, is_main, note, solid_slurs, sounding_at, sounding_changes};
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct MissingArco;

impl Rule for MissingArco {
    const CARD: Card = Card {
        id: "missing-arco",
        family: Family::States,
        gravest: Severity::A,
        lightest: Severity::C,
        reads: &[Reads::Slurs, Reads::BowMarks, Reads::Words],
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

/// What shows that a note is bowed, whatever stands around it.
fn sign_of_bow(note: &Note) -> Option<&'static str> {
    let tremolo = note.tremolo.is_some_and(|tremolo| tremolo.role != TremoloRole::PairStop);
    if note.technical.plucked != Plucked::None || note.pitch.is_rest() || note.kind != NoteKind::Ordinary {
        None
    } else if note.bow_mark.is_some() {
        Some("bow-mark")
    } else if tremolo {
        Some("tremolo")
    } else {
        None
    }
}

/// Fewer notes under a slur are let ring, or the left hand stops the second one (rule of thumb).
const SLURRED: usize = 3;

/// The notes that begin a slur to another moment, with how many notes of their voice stand under it.
fn slur_starts(part: &Part) -> BTreeMap<NoteId, usize> {
    let plucked = solid_slurs(part)
        .filter(|(_, start, end)| end.onset > start.onset && end.technical.plucked == Plucked::None);
    plucked
        .map(|(slur, start, end)| {
            let from = part.notes.partition_point(|note| note.onset < start.onset);
            let under = part.notes[from..].iter().take_while(|note| note.onset <= end.onset);
            (slur.start, under.filter(|note| note.voice == start.voice && is_main(note)).count())
        })
        .collect()
}

/// What a slur over plucked notes weighs: `None` where it may stand.
fn slur_weighs(piece: &Piece<'_>, part: &Part, since: Moment, note: &Note) -> Option<Severity> {
    let on_staff =
        |other: &&Note| other.staff == note.staff && !other.pitch.is_rest() && other.onset >= since;
    let ends = part.notes.iter().filter(on_staff).take_while(|other| other.onset < note.onset);
    let silent_from = ends.map(|other| other.onset + other.length).max()?;
    let bar = piece.score.bar_at(since).unwrap_or(0);
    let time = piece.reading.map_or(0, |reading| reading.tempo.between(silent_from, note.onset).micros);
    if time >= piece.time_to_change(false) {
        Some(Severity::B)
    } else {
        (bar != note.bar).then_some(Severity::C)
    }
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

/// The gravest sign of the bow in each stretch of pizzicato, of several the first.
fn bowed_while_plucked(piece: &Piece<'_>, found: &Findings<'_>, part_index: usize, staff: u8) -> Vec<Draft> {
    let part = &piece.score.parts[part_index];
    let (changes, slurred) = (sounding_changes(piece.score, part, staff), slur_starts(part));
    let mut signs: BTreeMap<Moment, (Severity, &'static str, NoteId)> = BTreeMap::new();
    // Stretches that are slurred from the word on: there the slurs are a manner of writing.
    let mut manner: BTreeSet<Moment> = BTreeSet::new();
    let notes = (0u32..).map(NoteId).zip(&part.notes).filter(|(_, note)| note.staff == staff);
    for (id, note) in notes {
        let SoundedBy::Plucked(since) = sounding_at(&changes, note.onset) else { continue };
        let sign = sign_of_bow(note).map(|sign| (Severity::A, sign, id));
        let under =
            slurred.get(&id).filter(|_| note.technical.plucked == Plucked::None && !arco_comes(part, id));
        let slur = under.filter(|_| !manner.contains(&since)).and_then(|under| {
            let weight = slur_weighs(piece, part, since, note);
            if weight.is_none() {
                manner.insert(since);
            }
            weight.filter(|_| *under >= SLURRED).map(|weight| (weight, "slur", id))
        });
        if let Some(sign) = sign.or(slur) {
            signs.entry(since).and_modify(|known| *known = (*known).min(sign)).or_insert(sign);
        }
    }
    let told = signs.into_iter();
    told.map(|(since, (severity, sign, id))| bowed(piece, found, (part_index, id), (severity, sign), since))
        .collect()
}

fn bowed(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    (part_index, id): (usize, NoteId),
    (severity, sign): (Severity, &'static str),
    since: Moment,
) -> Draft {
    let part = &piece.score.parts[part_index];
    let draft = found.at_notes(severity, part_index, &[id]);
    let sentence = Saying::new("say-missing-arco")
        .choosing("sign", sign)
        .with("at", piece.where_is(draft.place()))
        .with("since", piece.bar_said_at(since));
    let arco = note(part, id).map(|note| direction_before(note, part.staves, "above", "<words>arco</words>"));
    draft.say(sentence).propose_change(
        Grade::WritersChoice,
        ProposalKind::State,
        Saying::new("offer-write-arco"),
        arco.into_iter().collect(),
    )
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
    let printed =
        |said: &Instruction| !said.text.is_empty() && !said.text.trim_start().starts_with(['(', '[']);
    let between = part
        .notes
        .iter()
        .any(|note| (before.place.at..said.place.at).contains(&note.onset) && !note.pitch.is_rest());
    // Where another voice or player takes the bow at the same place, the word says who goes on plucking.
    let divides = part
        .instructions
        .iter()
        .any(|other| other.meaning == Meaning::Arco && other.place.at == said.place.at);
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
    let sentence = Saying::new("say-pizz-again")
        .with("at", piece.where_is(draft.place()))
        .with("since", piece.bar_said_at(before.place.at));
    draft.say(sentence).cause("pizz. twice").propose_change(
        Grade::WritersChoice,
        ProposalKind::State,
        Saying::new("offer-second-pizz-out"),
        vec![take_out(&said.place)],
    )
}
