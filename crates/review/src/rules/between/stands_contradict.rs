//! # Stands of one section with opposite marks
//!
//! ## What it finds
//! Two voices of a part, or two parts of one section (first and second stand, a and b), that play the same rhythm and carry
//! opposite bow marks on the same note.
//!
//! ## Why it matters
//! The bows of one section cross in the air, and everybody looks for the mistake in his own part.
//!
//! ## Example
//! ```music
//! quarter=96
//! violin: mf "div." {voices 1/4 C5!down D5 E5 F5 over E4!up F4 G4 A4 } | "unis." 1/1 G4 |||
//! ```
//!
//! ## What it proposes
//! To take the mark out in the lower voice (unmark, writer's choice).
//!
//! ## What it cannot know
//! Whether the mirror image is wanted for its even sound: then it is marked throughout, and where more than half of the marks
//! are opposite nothing is said.
//!
//! ## Sources
//! Common practice.

use std::collections::BTreeMap;

use arcata_languages::Saying;
use arcata_score::{Moment, Note, NoteId, NoteKind, Part};

use crate::change::take_out_mark;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct StandsContradict;

impl Rule for StandsContradict {
    const CARD: Card = Card {
        id: "stands-contradict",
        family: Family::Between,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::BowMarks],
        since: "0.1",
        title: "Stands of one section with opposite marks",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let parts = &piece.score.parts;
        for (index, part) in parts.iter().enumerate().filter(|(_, part)| part.instrument.is_bowed()) {
            for voice in 1..u16::try_from(part.voices.len()).unwrap_or(u16::MAX) {
                for upper in 0..voice {
                    let pairs = pairs((part, Some(upper)), (part, Some(voice)));
                    report(piece, found, index, &pairs);
                }
            }
            for (other, below) in parts.iter().enumerate().skip(index + 1) {
                if below.instrument == part.instrument && of_one_section(part, below) {
                    let pairs = pairs((part, None), (below, None));
                    report(piece, found, other, &pairs);
                }
            }
        }
    }
}

/// Whether two parts are stands of one section: their names differ in a last word of one letter or a number behind
/// "stand" or "desk".
fn of_one_section(one: &Part, other: &Part) -> bool {
    let split = |name: &str| {
        let words: Vec<String> = name.split_whitespace().map(str::to_lowercase).collect();
        let (last, front) = words.split_last()?;
        let stand = front
            .iter()
            .any(|word| matches!(word.as_str(), "stand" | "desk" | "pult" | "pupitre" | "leggio"));
        let letter = last.chars().count() == 1
            && last.chars().all(char::is_alphabetic)
            && !matches!(last.as_str(), "i" | "v");
        (stand || letter).then(|| front.join(" "))
    };
    matches!((split(&one.name), split(&other.name)), (Some(one), Some(other)) if one == other)
}

/// Marked notes of two lines at one moment and of one length.
fn pairs<'a>(
    (upper, first): (&'a Part, Option<u16>),
    (lower, second): (&'a Part, Option<u16>),
) -> Vec<(&'a Note, (NoteId, &'a Note))> {
    let marked = |part: &'a Part, voice: Option<u16>| {
        let notes = (0u32..).map(NoteId).zip(&part.notes);
        notes.filter(move |(_, note)| {
            note.kind == NoteKind::Ordinary
                && note.bow_mark.is_some()
                && voice.is_none_or(|voice| note.voice == voice)
        })
    };
    let above: BTreeMap<Moment, &Note> = marked(upper, first).map(|(_, note)| (note.onset, note)).collect();
    let below = marked(lower, second);
    below
        .filter_map(|(id, note)| {
            Some((*above.get(&note.onset).filter(|above| above.length == note.length)?, (id, note)))
        })
        .collect()
}

fn report(
    piece: &Piece<'_>,
    found: &mut Findings<'_>,
    part_index: usize,
    pairs: &[(&Note, (NoteId, &Note))],
) {
    let direction = |note: &Note| note.bow_mark.as_ref().map(|mark| mark.direction);
    let opposite: Vec<_> =
        pairs.iter().filter(|(above, (_, below))| direction(above) != direction(below)).collect();
    if opposite.len() * 2 > pairs.len() && pairs.len() > 2 {
        return;
    }
    for (_, (id, note)) in opposite {
        let draft = contradicts(piece, found, part_index, *id, note);
        found.report(draft);
    }
}

fn contradicts(piece: &Piece<'_>, found: &Findings<'_>, part_index: usize, id: NoteId, note: &Note) -> Draft {
    let draft = found.at_notes(Severity::B, part_index, &[id]);
    let sentence = Saying::new("say-stands-contradict").with("at", piece.where_is(draft.place()));
    draft.say(sentence).cause("opposite").propose_change(
        Grade::WritersChoice,
        ProposalKind::Unmark,
        Saying::new("offer-lower-mark-out"),
        take_out_mark(note),
    )
}
