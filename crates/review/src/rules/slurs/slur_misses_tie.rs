//! # A slur that misses the end of a tie
//!
//! ## What it finds
//! A slur that ends on a note which is tied on, or begins on a note which is tied from before, where no other
//! slur begins or ends there: the line on the page covers only a piece of the sounding note. One finding for each
//! part (of a movement), with all its places (D). Where three slurs of a movement are drawn so, it is the page's own
//! manner, as in many old editions: players have met it before, and nothing is told of them.
//!
//! Where two slurs meet on a tied note, one to it and one from it, the page says two things: one bow, for the note is
//! not struck again, or two, for each slur is a bow. Players change on the tied note, and so does the plan. It is asked
//! once a part (D). Where no bow lasts as long as both slurs, two are meant, and nothing is asked.
//!
//! ## Why it matters
//! The bow takes the tied note whole; a slur drawn to the wrong end of a tie makes the player look for a bow
//! change that nobody can make. Engravers draw it to the last tied note, and from the first.
//!
//! ## Example
//! ```music
//! quarter=80
//! cello: mf (1/4 C3 D3 E3 F3_ | 1/2 F3) G3 | (1/4 E3 D3 C3 B2_) | 1/2 B2 C3 |||
//! ```
//! The first slur is drawn as engravers do, the second ends a note too soon.
//!
//! ## What it proposes
//! To take the end of the slur to the last tied note, or its beginning to the first (shift, writer's choice). Where two
//! slurs meet, one slur over both if one bow is meant (join, writer's choice); a bow mark on the tied note says two. In a chain of such slurs it
//! is said in words only.
//!
//! ## What it cannot know
//! Nothing hangs on it for the bow: the sound is the same. Where two slurs meet, it does not know what is meant.
//!
//! ## Sources
//! Gould, as quoted in surveys of engraving: slurs include all the tied notes at their ends.

use arcata_bow::Line;
use arcata_languages::Saying;
use arcata_score::{Note, NoteId, NoteKind, Part, Slur, TieEnd};

use crate::change::Change;
use crate::mechanics::share_of_longest;
use crate::under_slur::{note, solid_slurs};
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct SlurMissesTie;

impl Rule for SlurMissesTie {
    const CARD: Card = Card {
        id: "slur-misses-tie",
        family: Family::Slurs,
        gravest: Severity::D,
        lightest: Severity::D,
        reads: &[Reads::Slurs, Reads::Ties, Reads::Strokes, Reads::BowMarks],
        since: "0.1",
        title: "A slur that misses the end of a tie",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let own_manner = is_own_manner(piece);
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() {
                continue;
            }
            if !own_manner {
                for (slur, missed) in missed_in(part) {
                    let draft = misses(piece, found, part_index, slur, missed);
                    found.report(draft);
                }
            }
            for slurs in meetings(part).filter(|slurs| fits_one_bow(piece, part_index, *slurs)) {
                let draft = meets(piece, found, part_index, slurs);
                found.report(draft);
            }
        }
    }
}

/// So many slurs that miss their ties make a manner, whatever the others do (rule of thumb: two may be slips; what is
/// met a third time has been played twice).
const MANNER: usize = 3;

/// Whether slurs are drawn to the near notes of ties as a matter of course.
fn is_own_manner(piece: &Piece<'_>) -> bool {
    let bowed = piece.score.parts.iter().filter(|part| part.instrument.is_bowed());
    bowed.flat_map(missed_in).take(MANNER).count() == MANNER
}

/// Slurs that miss the ends of ties.
fn missed_in(part: &Part) -> impl Iterator<Item = (&Slur, Missed)> {
    solid_slurs(part).flat_map(move |(slur, start, end)| {
        let missed = [too_soon(part, slur, end), too_late(part, slur, start)];
        missed.into_iter().flatten().map(move |missed| (slur, missed))
    })
}

/// The end of a slur that is drawn to the wrong note.
#[derive(Clone, Copy)]
struct Missed {
    end: &'static str,
    drawn_to: NoteId,
    belongs_to: NoteId,
}

/// Follows a tie as far as it goes; `None` where it is none, or a grace note's.
fn last_of(part: &Part, from: NoteId, onward: impl Fn(&Note) -> TieEnd) -> Option<NoteId> {
    let mut at = from;
    while let TieEnd::Joined(next) = onward(note(part, at)?) {
        // A file may tie notes in a circle; none goes back in time twice.
        if next == at || part.notes.len() <= next.0 as usize {
            return None;
        }
        let (here, there) = (note(part, at)?.onset, note(part, next)?.onset);
        if here == there || note(part, next)?.kind != NoteKind::Ordinary {
            return None;
        }
        at = next;
    }
    (at != from).then_some(at)
}

fn too_soon(part: &Part, slur: &Slur, end: &Note) -> Option<Missed> {
    let last = last_of(part, slur.end, |note| note.tie.to_after)?;
    // From the tied note on another slur may go: the two meet there, which is asked by itself.
    let goes_on =
        slurs_at(part, end, last).any(|(other, start, _)| other != slur && start.onset >= end.onset);
    (!goes_on).then_some(Missed { end: "ends", drawn_to: slur.end, belongs_to: last })
}

fn too_late(part: &Part, slur: &Slur, start: &Note) -> Option<Missed> {
    let first = last_of(part, slur.start, |note| note.tie.from_before)?;
    let comes_in =
        slurs_at(part, start, first).any(|(other, _, end)| other != slur && end.onset <= start.onset);
    (!comes_in).then_some(Missed { end: "begins", drawn_to: slur.start, belongs_to: first })
}

/// Slurs of the voice that touch the time between two notes.
fn slurs_at<'a>(
    part: &'a Part,
    one: &'a Note,
    other: NoteId,
) -> impl Iterator<Item = (&'a Slur, &'a Note, &'a Note)> {
    let other = note(part, other).map_or(one.onset, |other| other.onset);
    let (from, to) = (one.onset.min(other), one.onset.max(other));
    solid_slurs(part)
        .filter(move |(_, start, end)| start.voice == one.voice && start.onset <= to && end.onset >= from)
}

fn misses(piece: &Piece<'_>, found: &Findings<'_>, part_index: usize, slur: &Slur, missed: Missed) -> Draft {
    let part = &piece.score.parts[part_index];
    let draft = found.at_notes(Severity::D, part_index, &[missed.drawn_to, missed.belongs_to]);
    let (kind, node) =
        if missed.end == "ends" { ("stop", slur.end_node) } else { ("start", slur.start_node) };
    let sentence = Saying::new("say-slur-misses-tie")
        .choosing("end", missed.end)
        .with("at", piece.where_is(draft.place()));
    let put = note(part, missed.belongs_to).map(|note| Change::Notation {
        note: note.node,
        xml: format!("<slur number=\"{}\" type=\"{kind}\"/>", slur.number),
    });
    draft.say(sentence).cause("tie").propose_change(
        Grade::WritersChoice,
        ProposalKind::Shift,
        Saying::new("offer-slur-over-tied-note"),
        put.into_iter().chain([Change::Remove(node)]).collect(),
    )
}

/// Slurs that meet on a tied note, the one that ends there first. A slur over both, or a bow mark where the second
/// begins, says what is meant.
fn meetings(part: &Part) -> impl Iterator<Item = (&Slur, &Slur)> {
    let one_over = |first: &Note, last: &Note| {
        solid_slurs(part).any(|(_, start, end)| {
            start.voice == first.voice && start.onset <= first.onset && end.onset >= last.onset
        })
    };
    solid_slurs(part).filter_map(move |(next, start, end)| {
        let head = last_of(part, next.start, |note| note.tie.from_before)?;
        let struck = note(part, head)?;
        if start.bow_mark.is_some() {
            return None;
        }
        let (one, first, _) = solid_slurs(part).find(|(one, first, last)| {
            *one != next
                && first.voice == start.voice
                && first.onset < struck.onset
                && (struck.onset..=start.onset).contains(&last.onset)
        })?;
        (!one_over(first, end)).then_some((one, next))
    })
}

/// Whether the notes of both slurs together could be one bow at all: otherwise the page says two, and nothing is asked.
fn fits_one_bow(piece: &Piece<'_>, part: usize, (one, next): (&Slur, &Slur)) -> bool {
    let held = |line: &&Line| {
        line.part == part && line.strokes.iter().any(|stroke| stroke.notes.contains(&next.start))
    };
    let Some((at, line)) = piece.lines.iter().enumerate().find(|(_, line)| held(line)) else { return true };
    let part = &piece.score.parts[part];
    let (Some(start), Some(end)) = (note(part, one.start), note(part, next.end)) else { return true };
    let under = line.strokes.iter().filter(|stroke| (start.onset..=end.onset).contains(&stroke.onset));
    let share: i64 = under.map(|stroke| share_of_longest(stroke, piece.hair(at))).sum();
    share <= piece.thresholds().slur_too_long
}

/// Whether neither end of the slur that would go over both lies on a tied note, where it would meet the next.
fn ends_clear(part: &Part, (one, next): (&Slur, &Slur)) -> bool {
    let from_before = note(part, one.start).map(|note| note.tie.from_before);
    let to_after = note(part, next.end).map(|note| note.tie.to_after);
    [from_before, to_after].into_iter().flatten().all(|tie| tie == TieEnd::None)
}

fn meets(piece: &Piece<'_>, found: &Findings<'_>, part_index: usize, (one, next): (&Slur, &Slur)) -> Draft {
    let part = &piece.score.parts[part_index];
    let draft = found.at_notes(Severity::D, part_index, &[next.start]);
    let sentence = Saying::new("say-slurs-meet-on-tie").with("at", piece.where_is(draft.place()));
    let put = note(part, next.end).map(|note| Change::Notation {
        note: note.node,
        xml: format!("<slur number=\"{}\" type=\"stop\"/>", one.number),
    });
    let removed = [one.end_node, next.start_node, next.end_node].map(Change::Remove);
    let joined: Vec<Change> = removed.into_iter().chain(put).collect();
    let in_file = if ends_clear(part, (one, next)) { joined.clone() } else { Vec::new() };
    draft
        .say(sentence)
        .cause("meeting")
        .propose_change(
            Grade::WritersChoice,
            ProposalKind::Join,
            Saying::new("offer-one-slur-over-both"),
            in_file,
        )
        .sketched(joined)
}
