//! # A note lasts longer than one bow
//!
//! ## What it finds
//! One note, with its ties, that lasts 1.2 times the slowest bow at its dynamic or longer: B for a player
//! alone (C up to 1.3 bows, where it is only stretched), D for a section. Pedal tones are left out: a note over two bars or more while other parts move.
//! So is a note that is only stretched, under a fermata, where the players hold it as long as they like and on as many bows,
//! or with a diminuendo of a dynamic step or more, where the hand saves bow.
//!
//! ## Why it matters
//! A player alone must change bow inside the note, and a listener may hear where. A section hides the
//! change if the players do it at different times; nothing need be written for that, but it should be
//! known.
//!
//! ## Example
//! ```music
//! quarter=60
//! violin: ff 1/1 C5_ | C5_ | C5 |||
//! ```
//!
//! ## What it proposes
//! In a section: players change at different times (stagger, player's choice). That writes nothing: they do
//! it unasked, and a word for it would hold until another ends it. For one player: break the
//! note where a change is least heard (split, writer's choice).
//!
//! ## What it cannot know
//! Whether a fermata will be held longer or shorter than twice the note, and whether a soloist wants the
//! change to be heard.
//!
//! ## Sources
//! R. Hoffmann, "Bow length duration on strings"; staggered changes: M. Berry, stringsection.co.uk.

use arcata_bow::{Force, Stroke, StrokeKind};
use arcata_languages::{Argument, Saying};
use arcata_score::{Fermata, Moment, NoteId, NoteKind, Part};

use crate::mechanics::{dynamics_said, dynamics_shown, fades_out, longest_bow, share_of_longest};
use crate::under_slur::{free_bowing, note, tied_from_before};
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct NoteOutlastsBow;

/// So many onsets in other parts while a note lies still make it a pedal tone (common practice: the
/// other parts play on; the figure from memory).
const ONSETS_OVER_A_PEDAL: usize = 4;

impl Rule for NoteOutlastsBow {
    const CARD: Card = Card {
        id: "note-outlasts-bow",
        family: Family::Length,
        gravest: Severity::B,
        lightest: Severity::D,
        reads: &[Reads::Ties, Reads::Strokes],
        since: "0.1",
        title: "A note lasts longer than one bow",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (at, line) in piece.lines.iter().enumerate() {
            for index in 0..line.strokes.len() {
                if let Some(draft) = outlasting(piece, found, at, index) {
                    found.report(draft);
                }
            }
        }
    }
}

fn outlasting(piece: &Piece<'_>, found: &Findings<'_>, at: usize, index: usize) -> Option<Draft> {
    let line = &piece.lines[at];
    let stroke = &line.strokes[index];
    if stroke.note_count != 1 || stroke.kind == StrokeKind::Tremolo {
        return None;
    }
    let hair = piece.hair(at);
    let ratio = share_of_longest(stroke, hair);
    let part = piece.score.parts.get(line.part)?;
    if ratio <= piece.thresholds().note_too_long
        || free_bowing(part, stroke.onset)
        || is_pedal(piece, at, index)
        || ratio <= piece.thresholds().slur_stretched && is_left_to_players(part, stroke)
    {
        return None;
    }
    let severity = match line.force {
        Force::Solo if ratio > piece.thresholds().slur_stretched => Severity::B,
        Force::Solo => Severity::C,
        Force::Section => Severity::D,
    };
    let longest = longest_bow(stroke, hair);
    let draft = found.at_stroke(severity, at, index);
    let sentence = Saying::new("say-note-outlasts-bow")
        .with("at", piece.where_is(draft.place()))
        .with("lasts", Argument::Seconds(stroke.duration.micros))
        .with("longest", Argument::Seconds(longest))
        .with("dynamics", dynamics_said(stroke));
    let draft = draft
        .say(sentence)
        .seconds("evidence-note-lasts", stroke.duration.micros)
        .seconds("evidence-slowest-bow-lasts", longest)
        .evidence("evidence-bows-needed", Argument::Thousandths(ratio), "")
        .evidence("evidence-dynamic", dynamics_shown(stroke), "")
        .cause(format!("{ratio}"));
    let draft = match line.force {
        Force::Section => {
            draft.propose(Grade::PlayersChoice, ProposalKind::Stagger, Saying::new("offer-stagger-unheard"))
        }
        Force::Solo => draft.propose(
            Grade::WritersChoice,
            ProposalKind::Split,
            Saying::new("offer-break-note-at-barline"),
        ),
    };
    Some(piece.with_tempo_assumption(draft, line))
}

/// A stretched note under a fermata, whose length is for the players, and so is the bow; or one that fades.
fn is_left_to_players(part: &Part, stroke: &Stroke) -> bool {
    let held = |id: &NoteId| note(part, *id).is_some_and(|note| note.fermata == Fermata::Held);
    fades_out(stroke) || stroke.notes.iter().any(held)
}

/// A note over two bars or more while others move.
fn is_pedal(piece: &Piece<'_>, at: usize, index: usize) -> bool {
    let line = &piece.lines[at];
    let stroke = &line.strokes[index];
    let bar = piece.score.bars.get(stroke.bar as usize);
    let two_bars = bar.is_some_and(|bar| stroke.length >= bar.length * 2);
    let (from, to) = (stroke.onset, stroke.onset + stroke.length);
    let others = piece.score.parts.iter().enumerate().filter(|(part, _)| *part != line.part);
    two_bars && others.map(|(_, part)| onsets_between(part, from, to)).any(|n| n >= ONSETS_OVER_A_PEDAL)
}

fn onsets_between(part: &Part, from: Moment, to: Moment) -> usize {
    let first = part.notes.partition_point(|note| note.onset <= from);
    let inside = part.notes[first..].iter().take_while(|note| note.onset < to);
    inside
        .filter(|note| !note.pitch.is_rest() && note.kind == NoteKind::Ordinary && !tied_from_before(note))
        .count()
}
