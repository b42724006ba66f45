//! # A chord for a section: all of it, or divided?
//!
//! ## What it finds
//! In the part of a section, a chord or two voices at once where neither div. nor non div. nor unis. has been said: told
//! once a part, at the first, with the number of others.
//!
//! ## Why it matters
//! Half the stands will divide and the other half play double stops, with twice the noise on the wrong notes, and the first
//! rehearsal question is always the same.
//!
//! ## Example
//! ```music
//! quarter=96
//! Violins I: mf 1/4 C5 D5 1/2 C5+E5 | D5+F5 G5 |||
//! Violins II: mf 1/4 C5 D5 1/2 E5 | F5 G5 |||
//! ```
//!
//! ## What it proposes
//! To write div. at the first chord, or non div. (state, writer's choice).
//!
//! ## What it cannot know
//! Chords of three and four strings are broken by everybody and are left out; so are chords that no hand can stop, which say
//! by themselves that the part divides.
//!
//! ## Sources
//! MOLA, as quoted: divisions are marked; common practice.

use arcata_languages::{Argument, Saying};
use arcata_score::{ChordRole, Instruction, Meaning, Note, NoteId, NoteKind, Part, Players};

use crate::change::direction_before;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct ChordOrDivisi;

impl Rule for ChordOrDivisi {
    const CARD: Card = Card {
        id: "chord-or-divisi",
        family: Family::States,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::Words],
        since: "0.1",
        title: "A chord for a section: all of it, or divided?",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() || part.players != Players::Section {
                continue;
            }
            let unsaid = pairs(part).into_iter().filter(|id| !is_settled(part, part.note(*id)));
            let unsaid: Vec<NoteId> = unsaid.collect();
            if let Some(first) = unsaid.first() {
                let draft = divided_or_not(piece, found, part_index, *first, unsaid.len());
                found.report(draft);
            }
        }
    }
}

/// The lower notes of chords of two, bowed together by one voice.
fn pairs(part: &Part) -> Vec<NoteId> {
    let ids = (0u32..).map(NoteId);
    let mut found = Vec::new();
    for (id, note) in ids.zip(&part.notes) {
        let chord = note.kind == NoteKind::Ordinary && note.chord == ChordRole::Main && !note.pitch.is_rest();
        if !chord {
            continue;
        }
        let first = part.notes.partition_point(|other| other.onset < note.onset);
        let members: Vec<&Note> = part.notes[first..]
            .iter()
            .take_while(|other| other.onset == note.onset)
            .filter(|other| other.voice == note.voice && other.kind == NoteKind::Ordinary)
            .collect();
        if members.len() == 2 && members[0].pitch.cents() != members[1].pitch.cents() {
            found.push(id);
        }
    }
    found
}

/// Whether any word has said how chords are taken, up to the chord.
fn is_settled(part: &Part, note: &Note) -> bool {
    let says = |said: &&Instruction| {
        said.place.at <= note.onset
            && matches!(
                said.meaning,
                Meaning::Divisi(_) | Meaning::NonDivisi | Meaning::Unison | Meaning::Solo
            )
    };
    part.instructions.iter().any(|said| says(&said))
}

fn divided_or_not(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    part_index: usize,
    first: NoteId,
    count: usize,
) -> Draft {
    let part = &piece.score.parts[part_index];
    let draft = found.at_notes(Severity::B, part_index, &[first]);
    let sentence = Saying::new("say-chord-or-divisi").with("at", piece.where_is(draft.place()));
    let word = |word: &str| {
        vec![direction_before(part.note(first), part.staves, "above", &format!("<words>{word}</words>"))]
    };
    draft
        .say(sentence)
        .evidence(
            "evidence-chords-without-div-or-non-div",
            Argument::Whole(i64::try_from(count).unwrap_or(i64::MAX)),
            "",
        )
        .propose_change(
            Grade::WritersChoice,
            ProposalKind::State,
            Saying::new("offer-write-div"),
            word("div."),
        )
        .propose_change(
            Grade::WritersChoice,
            ProposalKind::State,
            Saying::new("offer-write-non-div"),
            word("non div."),
        )
}
