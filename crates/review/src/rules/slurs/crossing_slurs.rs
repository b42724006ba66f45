//! # Slurs that cross
//!
//! ## What it finds
//! Two slurs of one voice of which the second begins under the first and ends after it.
//!
//! ## Why it matters
//! A bow cannot be in two strokes at once: nobody can say where it changes. Every stand decides
//! differently, and the section asks.
//!
//! ## Example
//! ```music
//! quarter=80
//! violin: mf (1/4 C5 D5 (2E5 F5) | 1/2 G5)2 C5 |||
//! ```
//!
//! ## What it proposes
//! To end the first slur where the second begins (shift, writer's choice).
//!
//! ## What it cannot know
//! Which of the two was meant as a bow. A dashed or dotted line counts as a phrase mark and is left out.
//!
//! ## Sources
//! Common practice; the same voice rule underlies the phrase-mark advice of Read, *Music Notation* (1969),
//! as quoted: where slurs nest, the outer line should be broken.

use arcata_languages::Saying;
use arcata_score::{Note, NoteId, Part, Slur};

use crate::change::Change;
use crate::under_slur::{VoicePoint, main_notes, point, solid_slurs};
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct CrossingSlurs;

impl Rule for CrossingSlurs {
    const CARD: Card = Card {
        id: "crossing-slurs",
        family: Family::Slurs,
        gravest: Severity::A,
        lightest: Severity::A,
        reads: &[Reads::Slurs],
        since: "0.1",
        title: "Slurs that cross",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() {
                continue;
            }
            for voice in (0u16..).take(part.voices.len()) {
                for (first, second) in crossings(part, voice) {
                    let draft = crossing(piece, found, part_index, &first, &second);
                    found.report(draft);
                }
            }
        }
    }
}

/// A slur as a span of its voice.
#[derive(Clone, Copy)]
struct Span<'a> {
    from: VoicePoint,
    to: VoicePoint,
    slur: &'a Slur,
    start: &'a Note,
}

/// Pairs that overlap without one holding the other, each slur with the first that crosses it.
fn crossings(part: &Part, voice: u16) -> Vec<(Span<'_>, Span<'_>)> {
    let mut spans: Vec<Span<'_>> = solid_slurs(part)
        .filter(|(_, start, end)| start.voice == voice && end.voice == voice)
        .map(|(slur, start, end)| Span { from: point(start), to: point(end), slur, start })
        .collect();
    spans.sort_by_key(|span| (span.from, span.to, span.slur.start));
    let mut pairs = Vec::new();
    for (index, first) in spans.iter().enumerate() {
        let later = spans[index + 1..].iter().take_while(|second| second.from < first.to);
        let crosses = |second: &&Span<'_>| first.from < second.from && first.to < second.to;
        pairs.extend(later.filter(crosses).take(1).map(|second| (*first, *second)));
    }
    pairs
}

fn crossing(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    part_index: usize,
    first: &Span<'_>,
    second: &Span<'_>,
) -> Draft {
    let part = &piece.score.parts[part_index];
    let notes = [first.slur.start, second.slur.start, first.slur.end, second.slur.end];
    let draft = found.at_notes(Severity::A, part_index, &notes);
    let start = piece.said_from(draft.place(), part, second.start);
    let sentence =
        Saying::new("say-crossing-slurs").with("at", piece.where_is(draft.place())).with("start", start);
    let draft = draft.say(sentence).cause("crossing");
    let Some((last, note)) = note_before(part, first, second) else { return draft };
    if last == first.slur.start {
        let changes = vec![Change::Remove(first.slur.start_node), Change::Remove(first.slur.end_node)];
        let sentence = Saying::new("offer-first-slur-out");
        return draft.propose_change(Grade::WritersChoice, ProposalKind::Shift, sentence, changes);
    }
    let end = piece.said_from(draft.place(), part, note);
    let xml = format!("<slur number=\"{}\" type=\"stop\"/>", first.slur.number);
    let changes = vec![Change::Remove(first.slur.end_node), Change::Notation { note: note.node, xml }];
    draft.propose_change(
        Grade::WritersChoice,
        ProposalKind::Shift,
        Saying::new("offer-end-first-slur").with("at", end),
        changes,
    )
}

/// The last note of the first slur before the second begins.
fn note_before<'a>(part: &'a Part, first: &Span<'_>, second: &Span<'_>) -> Option<(NoteId, &'a Note)> {
    main_notes(part, first.start.voice)
        .filter(|(_, note)| (first.from..second.from).contains(&point(note)) && !note.pitch.is_rest())
        .last()
}
