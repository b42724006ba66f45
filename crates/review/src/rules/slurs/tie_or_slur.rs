//! # A slur where a tie is meant, or a tie where a slur is
//!
//! ## What it finds
//! A tie that leads to another pitch (A); a slur over two neighbouring notes of one pitch and nothing else, without
//! dots, dashes or accents (B, all of a part gathered: many writers mean a pulse by it, and say so nowhere).
//!
//! ## Why it matters
//! Both lines look alike on the page. A slur on one pitch without dots can be one held note or two notes
//! pulsed in one bow; a tie to another pitch is certainly a slur. Each player decides alone, and the section
//! is not together.
//!
//! ## Example
//! ```music
//! quarter=80
//! viola: mf 1/4 C4 D4 (1/2 E4 | 1/4 E4) F4 1/2 G4 |||
//! ```
//!
//! ## What it proposes
//! For one pitch: to tie the notes, or to put dashes on both for a pulse in one bow (mark, writer's choice).
//! For two pitches: to write a slur (mark, writer's choice).
//!
//! ## What it cannot know
//! Which of the two was meant. Slurs over one pitch with a change of string or finger written on them mean the
//! change, and are left out; so are notes with a tremolo or an ornament, and grace notes. So are two unlike notes that
//! fill a beat, or a plain value, from its beginning: one held note would be written as one, and the two are a rhythm.
//!
//! ## Sources
//! Silverman (a slur between two notes of one pitch is a tie or wants dots); common practice for ties.

use arcata_languages::Saying;
use arcata_score::{Articulations, Length, Note, NoteId, NoteKind, Part, Pitch, Slur, TieEnd};
use arcata_xml::Tag;

use crate::beats::beat_length;
use crate::change::Change;
use crate::tie_change;
use crate::under_slur::{ends, main_notes, note, solid_slurs};
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct TieOrSlur;

impl Rule for TieOrSlur {
    const CARD: Card = Card {
        id: "tie-or-slur",
        family: Family::Slurs,
        gravest: Severity::A,
        lightest: Severity::B,
        reads: &[Reads::Slurs, Reads::Ties, Reads::BowMarks, Reads::Marks],
        since: "0.1",
        title: "A slur where a tie is meant, or a tie where a slur is",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() {
                continue;
            }
            let joined =
                solid_slurs(part).filter(|(slur, start, end)| is_on_one_pitch(part, slur, start, end));
            let joined: Vec<_> = joined.collect();
            // Fingers are printed where a figure comes first; the same pitch is meant so where it comes again.
            let fingered: Vec<Pitch> = joined
                .iter()
                .filter(|(_, start, end)| is_fingered(piece, start, end))
                .map(|(_, start, _)| start.pitch)
                .collect();
            for (slur, start, _) in joined {
                if !fingered.contains(&start.pitch) {
                    let draft = slur_for_tie(piece, found, part_index, slur);
                    found.report(draft);
                }
            }
            for (from, to) in ties_to_another_pitch(part) {
                let draft = tie_for_slur(piece, found, part_index, from, to);
                found.report(draft);
            }
        }
    }
}

/// Whether nothing but the slur joins two neighbours of one pitch.
fn is_on_one_pitch(part: &Part, slur: &Slur, start: &Note, end: &Note) -> bool {
    let plain = |note: &Note| {
        note.kind == NoteKind::Ordinary
            && note.articulations == Articulations::default()
            && note.tremolo.is_none()
            && note.ornament.is_none()
            && note.technical == arcata_score::Technical::default()
    };
    let same = start.pitch.cents().is_some() && start.pitch == end.pitch && start.voice == end.voice;
    let untied = start.tie.to_after == TieEnd::None && end.tie.from_before == TieEnd::None;
    let neighbours = start.onset + start.length == end.onset;
    // Under a longer slur the short one may be the pulse's own sign.
    let over = part.slurs.iter().filter_map(|other| ends(part, other).map(|(from, to)| (other, from, to)));
    let alone = !over.into_iter().any(|(other, from, to)| {
        other != slur && from.voice == start.voice && from.onset <= start.onset && end.onset <= to.onset
    });
    same && untied
        && neighbours
        && !is_rhythm(part, start, end)
        && plain(start)
        && plain(end)
        && single(part, slur.start)
        && single(part, slur.end)
        && alone
}

/// Whether two notes of unlike length fill a value that one note could have been written for: a beat, or a plain note
/// that begins on its own place.
fn is_rhythm(part: &Part, start: &Note, end: &Note) -> bool {
    let whole = start.length + end.length;
    let plain = whole.numerator() == 1 && whole.denominator().count_ones() == 1;
    let beat = part.meter_at(start.bar).map_or(Length::QUARTER, beat_length);
    let bar_start = part.notes.iter().find(|note| note.bar == start.bar).map(|note| note.onset);
    let offset = bar_start.map(|bar| start.onset - bar);
    let placed = offset.and_then(|offset| offset.in_units_of(whole)).is_some_and(|at| at.denominator() == 1);
    start.length != end.length && start.bar == end.bar && (plain || whole == beat) && placed
}

/// Whether one of the notes carries a finger: the change of finger or string is what the slur means.
fn is_fingered(piece: &Piece<'_>, start: &Note, end: &Note) -> bool {
    let Some(document) = piece.document else { return false };
    [start, end]
        .iter()
        .filter_map(|note| document.element(note.node))
        .any(|note| note.descendants().any(|element| element.tag() == Tag::FINGERING))
}

/// Whether a note sounds alone in its voice.
fn single(part: &Part, id: NoteId) -> bool {
    let Some(note) = note(part, id) else { return false };
    let first = part.notes.partition_point(|other| other.onset < note.onset);
    part.notes[first..]
        .iter()
        .take_while(|other| other.onset == note.onset)
        .filter(|other| other.voice == note.voice && other.kind == NoteKind::Ordinary)
        .count()
        == 1
}

/// Single notes whose ties have no partner, because the next note is another pitch.
fn ties_to_another_pitch(part: &Part) -> Vec<(NoteId, NoteId)> {
    let voices = 0..u16::try_from(part.voices.len()).unwrap_or(u16::MAX).max(1);
    let pairs = voices.flat_map(|voice| {
        let notes: Vec<(NoteId, &Note)> =
            main_notes(part, voice).filter(|(_, note)| note.kind == NoteKind::Ordinary).collect();
        let odd = notes.windows(2).filter(|pair| {
            let ((_, from), (_, to)) = (pair[0], pair[1]);
            from.tie.to_after == TieEnd::Open
                && to.tie.from_before == TieEnd::Open
                && from.onset + from.length == to.onset
                && from.pitch.cents().is_some()
                && to.pitch.cents().is_some()
                && from.pitch.cents() != to.pitch.cents()
        });
        odd.map(|pair| (pair[0].0, pair[1].0)).collect::<Vec<_>>()
    });
    pairs.filter(|(from, to)| single(part, *from) && single(part, *to)).collect()
}

fn slur_for_tie(piece: &Piece<'_>, found: &Findings<'_>, part_index: usize, slur: &Slur) -> Draft {
    let part = &piece.score.parts[part_index];
    let draft = found.at_notes(Severity::B, part_index, &[slur.start, slur.end]);
    let sentence = Saying::new("say-tie-or-slur").with("at", piece.where_is(draft.place()));
    let mut tie = vec![Change::Remove(slur.start_node), Change::Remove(slur.end_node)];
    tie.extend(tie_change::tie(piece, part, slur.start, slur.end));
    let dashes = [slur.start, slur.end].into_iter().filter_map(|id| {
        let note = note(part, id)?;
        Some(Change::Notation { note: note.node, xml: "<articulations><tenuto/></articulations>".to_owned() })
    });
    draft
        .say(sentence)
        .cause("one pitch")
        .propose_change(Grade::WritersChoice, ProposalKind::Mark, Saying::new("offer-tie-two-notes"), tie)
        .propose_change(
            Grade::WritersChoice,
            ProposalKind::Mark,
            Saying::new("offer-dashes-on-both"),
            dashes.collect(),
        )
}

fn tie_for_slur(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    part_index: usize,
    from: NoteId,
    to: NoteId,
) -> Draft {
    let part = &piece.score.parts[part_index];
    let draft = found.at_notes(Severity::A, part_index, &[from, to]);
    let sentence = Saying::new("say-tie-to-another-pitch").with("at", piece.where_is(draft.place()));
    draft.say(sentence).propose_change(
        Grade::WritersChoice,
        ProposalKind::Mark,
        Saying::new("offer-slur-for-tie"),
        tie_change::slur(piece, part, from, to),
    )
}
