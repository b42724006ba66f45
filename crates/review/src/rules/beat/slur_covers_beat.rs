//! # A slur over a beat that wants to be spoken
//!
//! ## What it finds
//! A slur or tie that runs over a barline on which a new tempo or metre begins, while another part begins a stroke there;
//! and a sforzato or an upright accent, on a strong beat, under a slur that goes on: none of them on the first note of a bow.
//!
//! ## Why it matters
//! The strongest thing a bow can say is its beginning. Where the slur goes on, the new tempo or the accent is left to an
//! impulse in the middle of a stroke, softer than the others begin it.
//!
//! ## Example
//! ```music
//! quarter=72
//! violin: mf (1/4 C5 D5 E5 F5 | sf G5 F5 E5 D5) |||
//! ```
//!
//! ## What it proposes
//! To split the slur there (split, writer's choice); in words only where that brings the accent on an up-bow, or
//! another trouble into the bars around it: then the slurs before it must be thought over, too.
//!
//! ## What it cannot know
//! Whether the impulse inside the bow is the effect that is wanted: where the same part does so in several places it is
//! told once, with their number. A slur that ends on the note leads into it, as a run into its goal, and is left out. So are
//! slurs over the beats of slow syncopation, notes with a breath of silence before them, and ornaments.
//!
//! ## Sources
//! Common practice.

use std::collections::BTreeSet;

use arcata_languages::Saying;
use arcata_score::{Articulation, DynamicKind, Moment, Note, NoteId, Part, Slur, TempoKind};

use crate::split::{self, Keep};
use crate::under_slur::{is_main, main_notes, solid_slurs, tied_from_before};
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct SlurCoversBeat;

impl Rule for SlurCoversBeat {
    const CARD: Card = Card {
        id: "slur-covers-beat",
        family: Family::Beat,
        gravest: Severity::C,
        lightest: Severity::C,
        reads: &[Reads::Slurs, Reads::Ties, Reads::Marks],
        since: "0.1",
        title: "A slur over a beat that wants to be spoken",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let starts = new_starts(piece);
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() {
                continue;
            }
            for (slur, start, end) in solid_slurs(part) {
                for (id, why) in wanted(piece, part, (start, end), &starts) {
                    let draft = covered(piece, found, part_index, slur, (id, why));
                    found.report(draft);
                }
            }
        }
    }
}

/// Barlines on which a tempo begins that is no return, or the metre changes its length.
fn new_starts(piece: &Piece<'_>) -> BTreeSet<Moment> {
    let bars: BTreeSet<Moment> = piece.score.bars.iter().skip(1).map(|bar| bar.start).collect();
    let at_once = |kind: &TempoKind| {
        matches!(kind, TempoKind::Marked(_) | TempoKind::Word(_) | TempoKind::Modulation(..))
    };
    let tempos = piece.score.tempos.iter().filter(|tempo| at_once(&tempo.kind) && !tempo.text.is_empty());
    tempos.map(|tempo| tempo.place.at).filter(|at| bars.contains(at)).collect()
}

/// Notes under the slur, after its first, that want a bow of their own, and why.
fn wanted(
    piece: &Piece<'_>,
    part: &Part,
    (start, end): (&Note, &Note),
    starts: &BTreeSet<Moment>,
) -> Vec<(NoteId, &'static str)> {
    let under = main_notes(part, start.voice)
        .filter(|(_, note)| note.onset > start.onset && note.onset <= end.onset)
        .filter(|(_, note)| is_main(note) && !tied_from_before(note));
    let why = |note: &Note| {
        if starts.contains(&note.onset) && begun_elsewhere(piece, part, note.onset) {
            Some("tempo")
        } else if is_strong(piece, note) && is_forced(part, note) {
            Some("accent")
        } else {
            None
        }
    };
    let wanted = under.filter(|(_, note)| !is_led_into(part, end, note));
    wanted.filter_map(|(id, note)| Some((id, why(note)?))).collect()
}

/// Whether the slur leads into the note: it ends on it, or on what is tied to it.
fn is_led_into(part: &Part, end: &Note, note: &Note) -> bool {
    note.onset == end.onset
        || !main_notes(part, note.voice).any(|(_, other)| {
            other.onset > note.onset && other.onset <= end.onset && !tied_from_before(other)
        })
}

/// Whether another bowed part begins a note there.
fn begun_elsewhere(piece: &Piece<'_>, own: &Part, at: Moment) -> bool {
    let others = piece.score.parts.iter().filter(|part| part.instrument.is_bowed() && part.id != own.id);
    others.into_iter().any(|part| {
        let first = part.notes.partition_point(|note| note.onset < at);
        let here = part.notes[first..].iter().take_while(|note| note.onset == at);
        here.into_iter().any(|note| !note.pitch.is_rest() && !tied_from_before(note))
            && !solid_slurs(part).any(|(_, start, end)| start.onset < at && end.onset >= at)
    })
}

/// The downbeat.
fn is_strong(piece: &Piece<'_>, note: &Note) -> bool {
    piece.score.offset_in_bar(note.onset, note.bar).is_zero()
}

/// sf and its kin, or the upright accent.
fn is_forced(part: &Part, note: &Note) -> bool {
    let sign = note.articulations.has(Articulation::StrongAccent);
    let first = part.dynamics.partition_point(|dynamic| dynamic.place.at < note.onset);
    let mut here = part.dynamics[first..].iter().take_while(|dynamic| dynamic.place.at == note.onset);
    sign || here.any(|dynamic| {
        let staff = dynamic.place.staff == 0 || part.staves <= 1 || dynamic.place.staff == note.staff;
        staff && matches!(dynamic.kind, DynamicKind::Accented(_) | DynamicKind::Shape(..))
    })
}

fn covered(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    part_index: usize,
    slur: &Slur,
    (id, why): (NoteId, &'static str),
) -> Draft {
    let part = &piece.score.parts[part_index];
    let draft = found.at_notes(Severity::C, part_index, &[id]);
    let sentence =
        Saying::new("say-slur-covers-beat").with("at", piece.where_is(draft.place())).choosing("why", why);
    let draft = draft.say(sentence).cause(why);
    match split::before_note(part_index, part, slur, id, Keep::Both) {
        Some(split) => draft
            .propose_change(
                Grade::WritersChoice,
                ProposalKind::Split,
                Saying::new("offer-split-slur-there"),
                split.changes(piece),
            )
            .sketched(split.changes(piece)),
        None => draft,
    }
}
