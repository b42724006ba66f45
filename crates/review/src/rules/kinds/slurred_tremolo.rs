//! # A slurred tremolo that can be read in two ways
//!
//! ## What it finds
//! Tremolo of one or two beams under a slur: repeated notes abbreviated, two of them or more. One finding for each part.
//!
//! ## Why it matters
//! One or two beams are counted notes. Over them a slur can mean that all are played in one bow, or only that they are one
//! phrase and every note has its own bow; in one section both will be played, and it looks and sounds like a mistake.
//!
//! ## Example
//! ```music
//! quarter=100
//! viola: p (1/2 C4!trem1 D4!trem1) | 1/1 E4 |||
//! ```
//!
//! ## What it proposes
//! To write the first group out with its slurs, and simile after it (word, writer's choice). To take the slurs out, where
//! every note is to have its bow (word, writer's choice). Both are for the writer's hand.
//!
//! ## What it cannot know
//! Which is meant. Three beams and more are a shimmer, in which a slur only joins the line, and a slur over two notes that
//! alternate is the sign for both of them in one bow: these are left out, and so is what a word about the stroke explains.
//!
//! ## Sources
//! The signs: common practice. That players ask: a player's notes on played works.

use arcata_languages::{Argument, Saying};
use arcata_score::{Note, NoteKind, Part, Slur, TremoloRole};

use crate::attack_marks::StrokeWords;
use crate::under_slur::{is_main, solid_slurs, tied_from_before};
use crate::ways::WaysOfPlaying;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct SlurredTremolo;

/// More beams are not counted.
const COUNTED: u8 = 2;

impl Rule for SlurredTremolo {
    const CARD: Card = Card {
        id: "slurred-tremolo",
        family: Family::Kinds,
        gravest: Severity::C,
        lightest: Severity::C,
        reads: &[Reads::Slurs, Reads::Ties, Reads::Words],
        since: "0.1",
        title: "A slurred tremolo that can be read in two ways",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() {
                continue;
            }
            let words: Vec<StrokeWords> =
                (1..=part.staves.max(1)).map(|staff| StrokeWords::new(part, staff)).collect();
            let ways = WaysOfPlaying::new(piece.score, part);
            for (slur, start, end) in solid_slurs(part) {
                let said = words.get(usize::from(start.staff.saturating_sub(1)));
                let explained = said.is_some_and(|words| words.at(start.onset).is_some());
                let Some(beams) =
                    counted(part, start, end).filter(|_| !explained && ways.is_bowed(slur.start))
                else {
                    continue;
                };
                let draft = told(piece, found, part_index, slur, beams);
                found.report(draft);
            }
        }
    }
}

/// The beams of a slur's tremolo, where it can be read in two ways.
fn counted(part: &Part, start: &Note, end: &Note) -> Option<u8> {
    let from = part.notes.partition_point(|note| note.onset < start.onset);
    let under = part.notes[from..].iter().take_while(|note| note.onset <= end.onset);
    let notes: Vec<&Note> = under
        .filter(|note| note.voice == start.voice && note.kind == NoteKind::Ordinary && is_main(note))
        .collect();
    let tremolo: Option<Vec<_>> = notes.iter().map(|note| note.tremolo).collect();
    let tremolo = tremolo?;
    // Two notes that alternate under a slur are one bow of the left hand's making: that has one reading.
    if tremolo.iter().any(|tremolo| tremolo.role != TremoloRole::Single) {
        return None;
    }
    let groups = notes.iter().filter(|note| !tied_from_before(note));
    let few = tremolo.iter().all(|tremolo| (1..=COUNTED).contains(&tremolo.beams));
    (groups.count() >= 2 && few).then(|| tremolo.iter().map(|tremolo| tremolo.beams).max())?
}

fn told(piece: &Piece<'_>, found: &Findings<'_>, part: usize, slur: &Slur, beams: u8) -> Draft {
    let draft = found.at_notes(Severity::C, part, &[slur.start]);
    let sentence = Saying::new("say-slurred-tremolo").with("at", piece.where_is(draft.place()));
    draft
        .say(sentence)
        .evidence("evidence-beams", Argument::Whole(i64::from(beams)), "")
        .cause("tremolo")
        .propose(Grade::WritersChoice, ProposalKind::Word, Saying::new("offer-write-group-out"))
        .propose(Grade::WritersChoice, ProposalKind::Word, Saying::new("offer-slurs-out-own-bow"))
}
