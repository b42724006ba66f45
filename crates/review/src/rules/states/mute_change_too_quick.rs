//! # A mute put on or taken off too quickly
//!
//! ## What it finds
//! con sordino or senza sordino with less than three quarters of the rest that the hand takes: 4.5 s to put a mute on,
//! 2.5 s to take it off (B); a player alone with no rest at all, or less than a tenth of it (A).
//!
//! ## Why it matters
//! The mute has to be found, set and pressed while the other hand holds the bow. Players who do not manage play on without
//! it, or drop notes.
//!
//! ## Example
//! ```music
//! quarter=96
//! violin: mf 1/4 C5 D5 E5 F5 | 1/2 G5 1/4 rest "con sord." C5 | 1/1 D5 |||
//! ```
//!
//! ## What it proposes
//! To let the players of each stand change one after the other (stagger, player's choice); to give it a longer rest (word,
//! writer's choice).
//!
//! ## What it cannot know
//! Mutes that stay on the instrument and slide: they take about half a second, and whoever writes for them sets the
//! profile so. Where the word stands earlier or later in the rest does not matter: the whole rest counts.
//!
//! ## Sources
//! Berlioz, as quoted: two bars of 4/4 moderato to put it on, less to take it off.

use arcata_languages::{Argument, Saying};
use arcata_score::{Fermata, Instruction, Meaning, Note, Part, Players};

use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct MuteChangeTooQuick;

impl Rule for MuteChangeTooQuick {
    const CARD: Card = Card {
        id: "mute-change-too-quick",
        family: Family::States,
        gravest: Severity::A,
        lightest: Severity::B,
        reads: &[Reads::Words],
        since: "0.1",
        title: "A mute put on or taken off too quickly",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let Some(reading) = piece.reading else { return };
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() {
                continue;
            }
            let said =
                part.instructions.iter().filter(|said| !said.text.trim_start().starts_with(['(', '[']));
            for said in said.filter(|said| matches!(said.meaning, Meaning::MuteOn | Meaning::MuteOff)) {
                let Some((from, to)) = around(piece, part, said) else { continue };
                if held_between(part, from, to) {
                    continue;
                }
                let needed = piece.time_to_mute(said.meaning == Meaning::MuteOn);
                let time = reading.tempo.between(from.onset + from.length, to.onset).micros.max(0);
                if time * 4 < needed * 3 {
                    let draft = too_quick(piece, found, part_index, said, (time, needed));
                    found.report(draft);
                }
            }
        }
    }
}

/// The last note before the change and the first after it; `None` at the start of a movement, and where the word
/// repeats what holds.
fn around<'a>(piece: &Piece<'_>, part: &'a Part, said: &Instruction) -> Option<(&'a Note, &'a Note)> {
    let movement = piece.score.movements.get(piece.score.movement_of(said.place.bar))?;
    let start = piece.score.bars.get(*movement.bars.start() as usize)?.start;
    let mut before =
        part.instructions.iter().filter(|other| other.place.at < said.place.at && other.place.at >= start);
    let last = before.rfind(|other| matches!(other.meaning, Meaning::MuteOn | Meaning::MuteOff));
    let holds = last.map_or(Meaning::MuteOff, |last| last.meaning);
    if holds == said.meaning {
        return None;
    }
    let staff = |note: &&Note| {
        (said.place.staff == 0 || part.staves <= 1 || note.staff == said.place.staff) && !note.pitch.is_rest()
    };
    let notes = || part.notes.iter().filter(staff).filter(|note| note.onset >= start);
    let next = notes().find(|note| note.onset >= said.place.at)?;
    let last = notes()
        .filter(|note| note.onset < said.place.at.min(next.onset))
        .max_by_key(|note| note.onset + note.length)?;
    Some((last, next))
}

/// Whether a fermata stands on a rest between two notes: then there is as much time as the players take.
fn held_between(part: &Part, from: &Note, to: &Note) -> bool {
    let mut rests = part.notes.iter().filter(|note| note.pitch.is_rest() && note.staff == from.staff);
    rests.any(|rest| (from.onset..to.onset).contains(&rest.onset) && rest.fermata == Fermata::Held)
}

fn too_quick(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    part_index: usize,
    said: &Instruction,
    (time, needed): (i64, i64),
) -> Draft {
    let alone = piece.score.parts[part_index].players == Players::Solo;
    let severity = if time * 10 < needed && alone { Severity::A } else { Severity::B };
    let draft = found.at(severity, Some(part_index), said.place.bar, said.place.at);
    let on = said.meaning == Meaning::MuteOn;
    let sentence = Saying::new("say-mute-change-too-quick")
        .choosing("change", if on { "on" } else { "off" })
        .with("at", piece.where_is(draft.place()))
        .choosing("rest", if time == 0 { "none" } else { "some" })
        .with("there", Argument::Thousandths(time / 1000))
        .with("needed", Argument::Thousandths(needed / 1000));
    let draft = draft
        .say(sentence)
        .seconds("evidence-rest", time)
        .seconds("evidence-time-it-takes", needed)
        .cause(format!("{on}"));
    let draft = if alone {
        draft
    } else {
        draft.propose(
            Grade::PlayersChoice,
            ProposalKind::Stagger,
            Saying::new("offer-change-one-after-the-other"),
        )
    };
    draft.propose(Grade::WritersChoice, ProposalKind::Word, Saying::new("offer-longer-rest"))
}
