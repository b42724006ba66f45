//! # Notes that no hand can stop together
//!
//! ## What it finds
//! Two to four notes under one stem, or of two voices for one player, that do not fit on neighbouring strings
//! within one hand: on a solo part (A); in a section, which can divide unasked (B). Also five notes and more.
//!
//! ## Why it matters
//! The player has to leave a note out or break the chord, and chooses alone which; a section will ask who
//! plays what.
//!
//! ## Example
//! ```music
//! quarter=96
//! violin: mf 1/4 D4 E4 F#4 G4 | 1/2 A3+Bb3 rest |||
//! ```
//!
//! ## What it proposes
//! In a section, to write div. (state, writer's choice). On a solo part nothing: which note can go is the writer's
//! to say.
//!
//! ## What it cannot know
//! The size of the hand, which is a setting of the player profile, and a string tuned otherwise. Harmonics are
//! left out, and so are chords with them. That a chord can be stopped does not make it ring.
//!
//! ## Sources
//! C. Forsyth, Orchestration, pp. 316-317: which double stops are easy on the violin. Reach in first position:
//! Freund and Cutler 2024. The limits for two stopped notes (tenth, octave, sixth) are from memory.

use arcata_bow::techniques::{Division, Techniques};
use arcata_bow::{Force, Stroke};
use arcata_hand::Fingerboard;

use crate::change::direction_before;
use crate::left_hand::{Chord, chords, fingerboard, instrument_word};
use crate::under_slur::{is_hidden, note};
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};
use arcata_languages::{Argument, Saying};

/// See the module's page.
#[derive(Debug)]
pub struct StopUnplayable;

impl Rule for StopUnplayable {
    const CARD: Card = Card {
        id: "stop-unplayable",
        family: Family::Hand,
        gravest: Severity::A,
        lightest: Severity::B,
        reads: &[Reads::Strokes, Reads::Words],
        since: "0.1",
        title: "Notes that no hand can stop together",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (at, line) in piece.lines.iter().enumerate() {
            let Some(part) = piece.score.parts.get(line.part) else { continue };
            let Some(board) = fingerboard(piece, part) else { continue };
            let techniques = Techniques::new(piece.score, part, line.staff);
            // A divided section shares the notes of a chord out.
            let whole = |stroke: &&Stroke| techniques.at(stroke.onset).division == Division::Together;
            for stroke in line.strokes.iter().filter(whole) {
                for chord in chords(part, stroke).iter().filter(|chord| is_impossible(&board, chord)) {
                    if chord.notes.iter().any(|id| is_hidden(piece, part, *id)) {
                        continue;
                    }
                    let draft = impossible(piece, found, at, chord);
                    found.report(draft);
                }
            }
        }
    }
}

/// Notes outside the instrument are another rule's.
fn is_impossible(board: &Fingerboard, chord: &Chord) -> bool {
    let within = |pitch: &i32| (board.lowest()..=board.highest()).contains(pitch);
    chord.pitches.len() > 1 && chord.pitches.iter().all(within) && board.stoppings(&chord.pitches).is_empty()
}

fn impossible(piece: &Piece<'_>, found: &Findings<'_>, at: usize, chord: &Chord) -> Draft {
    let line = &piece.lines[at];
    let (severity, cause) = match line.force {
        Force::Solo => (Severity::A, "solo"),
        Force::Section => (Severity::B, "section"),
    };
    let draft = found.at_notes(severity, line.part, &chord.notes);
    let sentence = Saying::new("say-stop-unplayable")
        .with("pitches", Argument::List(chord.pitches.iter().copied().map(Argument::Pitch).collect()))
        .with("at", piece.where_is(draft.place()))
        .choosing("instrument", instrument_word(line));
    let draft = draft.say(sentence).cause(format!("{cause} {:?}", chord.pitches));
    let part = piece.score.parts.get(line.part);
    let first = part.and_then(|part| Some((part, note(part, *chord.notes.first()?)?)));
    match (line.force, first) {
        (Force::Section, Some((part, first))) => draft.propose_change(
            Grade::WritersChoice,
            ProposalKind::State,
            Saying::new("offer-write-div-and-unis"),
            vec![direction_before(first, part.staves, "above", "<words>div.</words>")],
        ),
        _ => draft,
    }
}
