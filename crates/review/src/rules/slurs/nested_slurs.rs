//! # A slur inside a slur
//!
//! ## What it finds
//! A solid slur that holds one or more shorter solid slurs of its voice, each from one note of it to another. Slurs of grace notes are ornaments and are
//! left out, and so is a slur over two notes that share the outer one's end with a tie, and one that joins two notes of one pitch:
//! it is meant as a tie, which is another rule's matter. Where the outer slur takes in one
//! more note, with a dot or a dash, it is the bow: that note is hooked on, and the inner slur says what is legato in it.
//!
//! ## Why it matters
//! One of the two lines must be a phrase mark, but they look alike: the player learns only by trying which of them is
//! the bow, and in a section several do.
//!
//! ## Example
//! ```music
//! quarter=80
//! violin: mf (1/4 C5 (2D5 E5)2 F5 | (2G5 F5)2 1/2 E5) |||
//! ```
//!
//! ## What it proposes
//! To make the outer one a dashed slur, as a phrase mark (mark as phrase, writer's choice).
//!
//! ## What it cannot know
//! Whether the inner line is the slip. The bow is planned by the inner slurs.
//!
//! ## Sources
//! Read 1969, as quoted: over bowing slurs a phrase line is drawn broken; Okura.

use arcata_languages::{Argument, Saying};
use arcata_score::{Note, NoteKind, Part, Slur};

use crate::phrase_change;
use crate::phrase_verdict::is_left_to_phrases;
use crate::under_slur::{main_notes, point, solid_slurs};
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct NestedSlurs;

impl Rule for NestedSlurs {
    const CARD: Card = Card {
        id: "nested-slurs",
        family: Family::Slurs,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::Slurs, Reads::Marks],
        since: "0.1",
        title: "A slur inside a slur",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() {
                continue;
            }
            for outer in solid_slurs(part) {
                let inside = inner(part, outer);
                if inside > 0 && !is_left_to_phrases(piece, part_index, outer) {
                    let draft = nested(piece, found, part_index, outer.0, inside);
                    found.report(draft);
                }
            }
        }
    }
}

/// How many slurs of the same voice lie inside.
pub(crate) fn inner(part: &Part, (outer, start, end): (&Slur, &Note, &Note)) -> usize {
    let (from, to) = (point(start), point(end));
    // Bars are compared sooner than moments, and most slurs lie in others.
    let near = |(_, first, last): &(&Slur, &Note, &Note)| start.bar <= first.bar && last.bar <= end.bar;
    let inside = solid_slurs(part).filter(near).filter(|(slur, first, last)| {
        let (begins, ends) = (point(first), point(last));
        let held = from <= begins && ends <= to && (begins, ends) != (from, to);
        if !held || ends <= begins || *slur == outer {
            return false;
        }
        let ornament = first.kind != NoteKind::Ordinary || start.kind != NoteKind::Ordinary;
        // A slur from one voice into another one is a line of its own.
        let one_voice = [first.voice, last.voice, end.voice].iter().all(|voice| *voice == start.voice);
        let hooked = || end.articulations.stops_the_bow() && follows(part, last, end);
        // One bow either way; that a tie is drawn as a slur is for `tie-or-slur` to say.
        let tied = || first.pitch == last.pitch && follows(part, first, last);
        one_voice && !ornament && !hooked() && !tied()
    });
    inside.count()
}

/// Whether a note is the next of its voice after another.
fn follows(part: &Part, before: &Note, note: &Note) -> bool {
    let between =
        |other: &Note| other.onset > before.onset && other.onset < note.onset && !other.pitch.is_rest();
    note.onset > before.onset && !main_notes(part, note.voice).any(|(_, other)| between(other))
}

fn nested(piece: &Piece<'_>, found: &Findings<'_>, part_index: usize, outer: &Slur, inside: usize) -> Draft {
    let part = &piece.score.parts[part_index];
    let draft = found.at_notes(Severity::B, part_index, &[outer.start, outer.end]);
    let sentence =
        Saying::new("say-nested-slurs").with("at", piece.where_is(draft.place())).with("inside", inside);
    draft
        .say(sentence)
        .evidence("evidence-slurs-inside", Argument::Whole(i64::try_from(inside).unwrap_or(i64::MAX)), "")
        .cause("nested")
        .propose_change(
            Grade::WritersChoice,
            ProposalKind::Phrase,
            Saying::new("offer-outer-dashed"),
            phrase_change::broken(piece, part, outer),
        )
}
