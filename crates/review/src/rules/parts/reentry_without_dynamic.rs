//! # An entry after a long rest without a dynamic
//!
//! ## What it finds
//! A note of a string part after eight whole bars of rest or more in its movement, with no dynamic, hairpin or sforzato at
//! it, shortly after it or in the last bar of the rest.
//!
//! ## Why it matters
//! The dynamic of the last entry may be a page back, and the music has gone on without it. Players who counted that long take
//! the dynamic from what they hear, each as he hears it; a part repeats it as a matter of course.
//!
//! ## Example
//! ```music
//! quarter=96
//! violin: p 1/4 C5 D5 E5 F5 | bar-rest*8 | C5 D5 E5 F5 |||
//! ```
//!
//! ## What it proposes
//! To write the dynamic that the other parts have at that moment, when they agree (state, writer's choice).
//!
//! ## What it cannot know
//! Whether a cue tells how loud it is. How many bars count is the player's to say. First entries belong to
//! `entry-without-dynamic`.
//!
//! ## Sources
//! Common practice in preparing parts: every entry after a long rest carries its dynamic.

use arcata_languages::{Argument, Saying};
use arcata_score::{Length, Meaning, Note, NoteId, NoteKind, Part};

use super::entry_without_dynamic::{levels, propose_agreed_level};
use crate::{Card, Draft, Family, Findings, Piece, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct ReentryWithoutDynamic;

impl Rule for ReentryWithoutDynamic {
    const CARD: Card = Card {
        id: "reentry-without-dynamic",
        family: Family::Parts,
        gravest: Severity::C,
        lightest: Severity::C,
        reads: &[Reads::Words],
        since: "0.1",
        title: "An entry after a long rest without a dynamic",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let movement = |bar: u32| piece.score.movement_of(bar);
        let least = piece.thresholds().reentry_bars;
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            // Where a part has no dynamic at all, its first entry is told.
            if !part.instrument.is_bowed() || levels(part).next().is_none() {
                continue;
            }
            let mut last: Option<&Note> = None;
            for (id, note) in sounding(part) {
                if let Some(before) = last.filter(|before| movement(before.bar) == movement(note.bar)) {
                    let bars = silent_bars(piece, before, note);
                    if bars >= least && !is_told(piece, part, before, note) {
                        let draft = silent_entry(piece, found, (part_index, id), note, bars);
                        found.report(draft);
                    }
                }
                // What sounds longest hides the rests of another voice.
                if last.is_none_or(|last| last.onset + last.length <= note.onset + note.length) {
                    last = Some(note);
                }
            }
        }
    }
}

/// The notes that are played, in order.
fn sounding(part: &Part) -> impl Iterator<Item = (NoteId, &Note)> {
    (0u32..)
        .map(NoteId)
        .zip(&part.notes)
        .filter(|(_, note)| !note.pitch.is_rest() && note.kind != NoteKind::Cue)
}

/// Whole bars between the end of a note and the beginning of another.
fn silent_bars(piece: &Piece<'_>, before: &Note, after: &Note) -> usize {
    let end = before.onset + before.length;
    let bars = piece.score.bars.get(before.bar as usize..after.bar as usize).unwrap_or_default();
    bars.iter().filter(|bar| bar.start >= end).count()
}

/// Whether anything says how loud the entry is: from the bar before it on, and within a quarter note after it.
fn is_told(piece: &Piece<'_>, part: &Part, before: &Note, note: &Note) -> bool {
    let bar_before = note.bar.checked_sub(1).and_then(|bar| piece.score.bars.get(bar as usize));
    let from = bar_before.map_or(note.onset, |bar| bar.start).max(before.onset + before.length);
    let here = from..note.onset + Length::QUARTER;
    let words = part.instructions.iter().filter(|said| matches!(said.meaning, Meaning::LevelWord(_)));
    part.dynamics.iter().any(|dynamic| here.contains(&dynamic.place.at))
        || part.swells.iter().any(|swell| here.contains(&swell.place.at))
        || words.into_iter().any(|said| here.contains(&said.place.at))
}

fn silent_entry(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    (part, id): (usize, NoteId),
    note: &Note,
    bars: usize,
) -> Draft {
    let draft = found.at_notes(Severity::C, part, &[id]);
    let sentence = Saying::new("say-reentry-without-dynamic")
        .quoting("part", &piece.score.parts[part].name)
        .with("at", piece.where_is(draft.place()))
        .with("bars", bars);
    let draft = draft
        .say(sentence)
        .evidence("evidence-bars-of-rest", Argument::Whole(i64::try_from(bars).unwrap_or(i64::MAX)), "")
        .cause("reentry");
    propose_agreed_level(piece, draft, part, note)
}
