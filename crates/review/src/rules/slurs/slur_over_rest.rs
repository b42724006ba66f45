//! # A rest under a slur
//!
//! ## What it finds
//! A rest of the slur's own voice between its first and its last note.
//!
//! ## Why it matters
//! A slur is one bow, a rest takes the bow off the string or stops it. Whether the player lifts and goes on in the
//! same direction, stops on the string, or bows anew is anybody's guess; as a phrase mark the line says nothing
//! about the bow at all.
//!
//! ## Example
//! ```music
//! quarter=80
//! violin: mf (1/4 C5 D5 rest E5 | 1/2 F5) rest |||
//! ```
//!
//! ## What it proposes
//! To end the slur before the rest and begin another after it (split, writer's choice); to make it a dashed slur,
//! as a phrase mark (mark, writer's choice).
//!
//! ## What it cannot know
//! Whether a stop inside one bow is wanted: beside a short rest (no longer than the longer of its neighbours) a dot, wedge
//! or dash says so, and such hooked strokes are left out.
//!
//! ## Sources
//! Common practice; Okura (a slur over rests is a phrase mark).

use arcata_languages::Saying;
use arcata_score::{Moment, Note, NoteId, NoteKind, Part, Slur};

use crate::phrase_change;
use crate::phrase_verdict::is_left_to_phrases;
use crate::split::{self, Split};
use crate::under_slur::{main_notes, note, solid_slurs};
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct SlurOverRest;

impl Rule for SlurOverRest {
    const CARD: Card = Card {
        id: "slur-over-rest",
        family: Family::Slurs,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::Slurs, Reads::Marks],
        since: "0.1",
        title: "A rest under a slur",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() {
                continue;
            }
            for (slur, start, end) in solid_slurs(part) {
                let rest = rest_under(part, start, end);
                if let Some(rest) =
                    rest.filter(|_| !is_left_to_phrases(piece, part_index, (slur, start, end)))
                {
                    let draft = over_rest(piece, found, part_index, slur, rest);
                    found.report(draft);
                }
            }
        }
    }
}

/// The first rest between the ends of a slur that is no stop.
pub(crate) fn rest_under(part: &Part, start: &Note, end: &Note) -> Option<NoteId> {
    rests_under(part, start, end).first().map(|(rest, _)| *rest)
}

/// The rests between the ends of a slur, each with the note after it.
fn rests_under(part: &Part, start: &Note, end: &Note) -> Vec<(NoteId, NoteId)> {
    let under: Vec<(NoteId, &Note)> = main_notes(part, start.voice)
        .filter(|(_, note)| note.kind == NoteKind::Ordinary)
        .filter(|(_, note)| note.onset >= start.onset && note.onset <= end.onset)
        .collect();
    let covers = |at: &usize| {
        let (rest, before) = (under[*at].1, under[at - 1].1);
        let next = under.get(at + 1).map(|(_, note)| *note);
        rest.pitch.is_rest() && rest.on_page && !next.is_none_or(|next| is_stop(before, rest, next))
    };
    let after = |at: usize| under[at..].iter().find(|(_, note)| !note.pitch.is_rest()).map(|(id, _)| *id);
    let mut rests: Vec<(NoteId, NoteId)> =
        (1..under.len()).filter(covers).filter_map(|at| Some((under[at].0, after(at)?))).collect();
    // Two rests in a row are followed by the same note.
    rests.dedup_by_key(|(_, after)| *after);
    rests
}

/// A short rest beside a note with a dot, wedge or dash: the bow stops on the string and goes on, hooked.
fn is_stop(before: &Note, rest: &Note, next: &Note) -> bool {
    let stops = before.articulations.stops_the_bow() || next.articulations.stops_the_bow();
    stops && rest.length <= before.length.max(next.length)
}

/// A slur before the first rest, one between each two, one after the last.
fn split_at_rests(part_index: usize, part: &Part, slur: &Slur) -> Option<Split> {
    let (start, end) = crate::under_slur::ends(part, slur)?;
    let rests = rests_under(part, start, end);
    let cuts: Option<Vec<Moment>> = rests.iter().map(|(_, after)| Some(note(part, *after)?.onset)).collect();
    split::at_moments(part_index, part, slur, &cuts?)
}

fn over_rest(piece: &Piece<'_>, found: &Findings<'_>, part_index: usize, slur: &Slur, rest: NoteId) -> Draft {
    let part = &piece.score.parts[part_index];
    let draft = found.at_notes(Severity::B, part_index, &[rest, slur.start, slur.end]);
    let sentence = Saying::new("say-slur-over-rest").with("at", piece.where_is(draft.place()));
    let length = note(part, slur.end).zip(note(part, slur.start)).map(|(end, start)| end.onset - start.onset);
    let draft = draft.say(sentence).cause(format!("{}", length.unwrap_or_default()));
    let draft = match split_at_rests(part_index, part, slur) {
        Some(split) => draft.propose_change(
            Grade::WritersChoice,
            ProposalKind::Split,
            Saying::new("offer-slurs-beside-rest"),
            split.changes(piece),
        ),
        None => draft,
    };
    draft.propose_change(
        Grade::WritersChoice,
        ProposalKind::Phrase,
        Saying::new("offer-dashed-slur"),
        phrase_change::broken(piece, part, slur),
    )
}
