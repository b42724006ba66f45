//! # Three or four strings asked to sound on
//!
//! ## What it finds
//! A chord over three strings or four that is written longer than the strings can sound together, in a
//! dynamic below forte, where the bow cannot press three strings down (B); with no sign that it is to be broken.
//!
//! ## Why it matters
//! A bow lies on two strings. Three sound together for a moment, and only loud; each player then chooses which two
//! to hold.
//!
//! ## Example
//! ```music
//! quarter=60
//! cello: p 1/4 C3 G3 E4 G3 | 1/1 C3+G3+E4+A4 |||
//! ```
//!
//! ## What it proposes
//! To write which two strings are held, the lower ones as grace notes or the chord broken (word, writer's
//! choice): in words only, since it changes the notes.
//!
//! ## What it cannot know
//! That the chord is meant broken and everybody knows it, as in old music: set the rule aside there.
//!
//! ## Sources
//! Two strings can be sustained, three together only in forte, four are broken: an encyclopedia's article on
//! double stops, as quoted. How long is a setting, from memory.

use arcata_bow::{Line, Stroke, StrokeKind};
use arcata_languages::{Argument, Saying};
use arcata_score::{Length, Note, TieEnd};

use crate::left_hand::chords;
use crate::under_slur::note;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// Loudness of f, hundredths of a step (rule of thumb).
const FORTE: i32 = arcata_bow::Loudness::F.0;

/// See the module's page.
#[derive(Debug)]
pub struct StopHeldTooLong;

impl Rule for StopHeldTooLong {
    const CARD: Card = Card {
        id: "stop-held-too-long",
        family: Family::Hand,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::Ties, Reads::Strokes],
        since: "0.1",
        title: "Three or four strings asked to sound on",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (at, line) in piece.lines.iter().enumerate() {
            for index in 0..line.strokes.len() {
                if let Some(draft) = held(piece, found, at, index) {
                    found.report(draft);
                }
            }
        }
    }
}

/// Whether three of a chord's notes last so long, and not only two of them while another voice has moved on.
fn sound_on(piece: &Piece<'_>, line: &Line, stroke: &Stroke) -> bool {
    let Some(part) = piece.score.parts.get(line.part) else { return false };
    let begun =
        stroke.notes.iter().filter_map(|id| note(part, *id)).filter(|note| note.onset == stroke.onset);
    let goes_on = |note: &Note| matches!(note.tie.to_after, TieEnd::Joined(_));
    let mut lengths: Vec<Length> =
        begun.map(|note| if goes_on(note) { stroke.length.max(note.length) } else { note.length }).collect();
    lengths.sort_unstable_by(|one, other| other.cmp(one));
    let share = lengths.get(2).and_then(|third| third.in_units_of(stroke.length));
    share.is_some_and(|share| {
        let micros = i128::from(stroke.duration.micros) * i128::from(share.numerator())
            / i128::from(share.denominator());
        micros > i128::from(piece.thresholds().stop_held)
    })
}

fn held(piece: &Piece<'_>, found: &Findings<'_>, at: usize, index: usize) -> Option<Draft> {
    let line = &piece.lines[at];
    let stroke = &line.strokes[index];
    let part = piece.score.parts.get(line.part)?;
    let long = stroke.duration.micros > piece.thresholds().stop_held && stroke.note_count == 1;
    if !long || stroke.kind == StrokeKind::Tremolo || stroke.level_start.0 >= FORTE {
        return None;
    }
    let chords = chords(part, stroke);
    let [chord] = &chords[..] else { return None };
    let strings = chord.pitches.len();
    if chord.broken || !(3..=4).contains(&strings) || !sound_on(piece, line, stroke) {
        return None;
    }
    let draft = found.at_stroke(Severity::B, at, index);

    let sentence = Saying::new("say-stop-held-too-long")
        .with("strings", strings)
        .with("lasts", Argument::Seconds(stroke.duration.micros))
        .with("at", piece.where_is(draft.place()));
    let draft = draft
        .say(sentence)
        .seconds("evidence-chord-lasts", stroke.duration.micros)
        .seconds("evidence-strings-together-loud", piece.thresholds().stop_held)
        .cause("held")
        .propose(Grade::WritersChoice, ProposalKind::Word, Saying::new("offer-write-which-strings-held"));
    Some(piece.with_tempo_assumption(draft, line))
}
