//! # Plucked too fast
//!
//! ## What it finds
//! Six or more plucked notes in a row, faster than a section plucks: 6 a second on violin and viola, 5 on the cello, 4 on
//! the double bass.
//!
//! ## Why it matters
//! The plucking finger tires and the notes come apart; above its speed the passage is simplified by whoever plays it.
//!
//! ## Example
//! ```music
//! quarter=132
//! cello: f "pizz." 1/8 C3 D3 E3 F3 G3 F3 E3 D3 | {3:2 C3 E3 G3} {3:2 C4 G3 E3} {3:2 C3 E3 G3} {3:2 C4 G3 E3} | 1/1 C3 |||
//! ```
//!
//! ## What it proposes
//! To divide the notes between the players of a stand (state, writer's choice).
//!
//! ## What it cannot know
//! Two fingers in turn, the guitar's way, go faster; so does a single player used to it.
//!
//! ## Sources
//! The speeds are defaults of the profile, from memory.

use arcata_languages::{Argument, Saying};
use arcata_score::{Instrument, Note};

use crate::speed::{rate, said_rate};
use crate::under_slur::{SoundedBy, is_main, sounding_at, sounding_changes};
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct PizzTooFast;

/// Fewer are a figure that the hand still catches (rule of thumb).
const RUN: usize = 6;

impl Rule for PizzTooFast {
    const CARD: Card = Card {
        id: "pizz-too-fast",
        family: Family::States,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::Words],
        since: "0.1",
        title: "Plucked too fast",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let Some(reading) = piece.reading else { return };
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            let Some(most) = most(piece, part.instrument) else { continue };
            for staff in 1..=part.staves.max(1) {
                let changes = sounding_changes(piece.score, part, staff);
                for voice in 0..u16::try_from(part.voices.len()).unwrap_or(u16::MAX).max(1) {
                    let plucked = |note: &&Note| {
                        note.staff == staff
                            && note.voice == voice
                            && is_main(note)
                            && note.length.is_positive()
                    };
                    let notes: Vec<&Note> = part.notes.iter().filter(plucked).collect();
                    let fast = |pair: &[&Note]| {
                        let (from, to) = (pair[0], pair[1]);
                        let finger = |note: &Note| sounding_at(&changes, note.onset) != SoundedBy::Bowed;
                        let sounds =
                            !from.pitch.is_rest() && !to.pitch.is_rest() && finger(from) && finger(to);
                        let micros = reading.tempo.between(from.onset, to.onset).micros;
                        sounds && rate(1, micros).is_some_and(|rate| rate > most)
                    };
                    let mut at = 0;
                    while at + 1 < notes.len() {
                        let gaps = notes[at..].windows(2).take_while(|pair| fast(pair)).count();
                        if gaps + 1 >= RUN {
                            let micros =
                                reading.tempo.between(notes[at].onset, notes[at + gaps].onset).micros;
                            let attacks = i64::try_from(gaps).unwrap_or(i64::MAX);
                            if let Some(rate) = rate(attacks, micros) {
                                let draft =
                                    too_fast(piece, found, (part_index, notes[at]), (gaps + 1, rate, most));
                                found.report(draft);
                            }
                        }
                        at += gaps.max(1);
                    }
                }
            }
        }
    }
}

/// Notes in 100 s that a section of this instrument plucks.
fn most(piece: &Piece<'_>, instrument: Instrument) -> Option<i64> {
    let name = match instrument {
        Instrument::Violin | Instrument::Viola | Instrument::OtherBowed => "pizzicato_most",
        Instrument::Cello => "pizzicato_most_cello",
        Instrument::Bass => "pizzicato_most_bass",
        Instrument::NotBowed => return None,
    };
    piece.profile.rate(name)
}

fn too_fast(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    (part_index, first): (usize, &Note),
    (notes, rate, most): (usize, i64, i64),
) -> Draft {
    let draft = found.at(Severity::B, Some(part_index), first.bar, first.onset);
    let sentence = Saying::new("say-pizz-too-fast")
        .with("count", notes)
        .with("at", piece.where_is(draft.place()))
        .with("rate", said_rate(rate))
        .with("most", said_rate(most));
    draft
        .say(sentence)
        .evidence("evidence-notes-a-second", Argument::Thousandths(rate * 10), "")
        .evidence("evidence-at-most", Argument::Thousandths(most * 10), "")
        .cause(format!("{}", rate / 25))
        .propose(Grade::WritersChoice, ProposalKind::State, Saying::new("offer-divide-between-players"))
}
