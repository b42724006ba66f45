//! # From bow to finger and back too quickly
//!
//! ## What it finds
//! pizz. or arco with so little time between the last note of one kind and the first of the other that the hand cannot
//! turn the bow (less than two fifths of what the profile gives it: 0.5 s to pizzicato, 1 s back to the bow).
//!
//! ## Why it matters
//! Players will drop the last note or come in late with the first. A section solves it by letting half of it stop
//! earlier, which somebody has to order.
//!
//! ## Example
//! ```music
//! quarter=120
//! violin: f 1/8 C5 D5 E5 F5 "pizz." G5 A5 G5 F5 | "arco" E5 D5 C5 D5 1/2 E5 |||
//! ```
//!
//! ## What it proposes
//! To let the stands change over at different times (stagger, player's choice); to give the change a rest, or the last
//! plucked note to the left hand (word, writer's choice).
//!
//! ## What it cannot know
//! Whether the bow is in the hand all the while, as many hold it for a single plucked note: from one or two plucked notes
//! the bow comes back as quickly as the finger moves, and they are left out.
//!
//! ## Sources
//! Common practice; the times are defaults of the profile from memory.

use arcata_languages::{Argument, Saying};
use arcata_score::{Moment, Note, Part};

use crate::under_slur::{SoundedBy, sounding_at, sounding_changes};
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct PizzChangeTooQuick;

impl Rule for PizzChangeTooQuick {
    const CARD: Card = Card {
        id: "pizz-change-too-quick",
        family: Family::States,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::Words],
        since: "0.1",
        title: "From bow to finger and back too quickly",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let Some(reading) = piece.reading else { return };
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() {
                continue;
            }
            for staff in 1..=part.staves.max(1) {
                let changes = sounding_changes(piece.score, part, staff);
                for (from, to) in hand_overs(part, staff, &changes) {
                    let plucked = sounding_at(&changes, to.onset) != SoundedBy::Bowed;
                    let needed = piece.time_to_change(plucked);
                    // A plucked note rings by itself; a bowed one must be played out, but for a share of it.
                    let freed = if plucked { from.onset + from.length.scaled(3, 4) } else { from.onset };
                    let time = reading.tempo.between(freed, to.onset).micros;
                    if time * 5 < needed * 2 {
                        let draft = too_quick(piece, found, (part_index, to), (time, needed), plucked);
                        found.report(draft);
                    }
                }
            }
        }
    }
}

/// Fewer plucked notes are taken with the bow in the hand (rule of thumb).
const PLUCKED_WITH_THE_BOW: usize = 3;

/// The last note before and the first after each change, where more than a note or two is plucked.
fn hand_overs<'a>(part: &'a Part, staff: u8, changes: &[(Moment, SoundedBy)]) -> Vec<(&'a Note, &'a Note)> {
    let sounding: Vec<&Note> = part
        .notes
        .iter()
        .filter(|note| note.staff == staff && crate::under_slur::is_main(note) && !note.pitch.is_rest())
        .collect();
    let kind = |note: &Note| sounding_at(changes, note.onset) != SoundedBy::Bowed;
    let mut overs = Vec::new();
    for at in 1..sounding.len() {
        let (from, to) = (sounding[at - 1], sounding[at]);
        if kind(from) == kind(to) || from.onset >= to.onset {
            continue;
        }
        let run = if kind(to) {
            sounding[at..].iter().take_while(|note| kind(note)).count()
        } else {
            sounding[..at].iter().rev().take_while(|note| kind(note)).count()
        };
        if run >= PLUCKED_WITH_THE_BOW {
            overs.push((from, to));
        }
    }
    overs
}

fn too_quick(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    (part_index, to): (usize, &Note),
    (time, needed): (i64, i64),
    plucked: bool,
) -> Draft {
    let draft = found.at(Severity::B, Some(part_index), to.bar, to.onset);
    let word = if plucked { "pizz" } else { "arco" };
    let sentence = Saying::new("say-pizz-change-too-quick")
        .choosing("word", word)
        .with("at", piece.where_is(draft.place()))
        .with("there", Argument::Thousandths(time / 1000))
        .with("needed", Argument::Thousandths(needed / 1000));
    draft
        .say(sentence)
        .seconds("evidence-time-there-is", time)
        .seconds("evidence-time-it-takes", needed)
        .cause(word)
        .propose(Grade::PlayersChoice, ProposalKind::Stagger, Saying::new("offer-one-player-earlier"))
        .propose(Grade::WritersChoice, ProposalKind::Word, Saying::new("offer-give-change-a-rest"))
}
