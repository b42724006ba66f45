//! Which instrument plays a part, and how many play it, by the names that a score gives.
//!
//! The printed name decides first: it is what the players read. Sound ids come next, MIDI programs
//! last, because programs are often left as a default. What no source names is not taken for a bowed
//! instrument: a plan for a flute is worse than none.

mod names;
mod players;
mod section;

pub use players::players_of_score;
pub use section::{Naming, SectionName, bowed_names, section_name};

use crate::{Instrument, Players};

/// What a part's head (`<score-part>`) says about its instrument; empty where it says nothing.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct PartHead<'a> {
    /// `<part-name>`.
    pub name: &'a str,
    /// `<part-abbreviation>`.
    pub abbreviation: &'a str,
    /// `<instrument-name>`.
    pub instrument_name: &'a str,
    /// `<instrument-sound>`, such as `strings.violin`.
    pub instrument_sound: &'a str,
    /// `<midi-program>`, counted from 1 as MusicXML does.
    pub midi_program: Option<u8>,
}

/// The names that instruments are recognised by, several in one text.
pub(crate) fn names() -> impl Iterator<Item = &'static str> {
    names::all().map(|(_, names)| names)
}

/// What was recognised.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Recognised {
    /// The instrument.
    pub instrument: Instrument,
    /// One player or several, when the head says so; see [`players_of_score`] for the rest.
    pub players: Players,
    /// What it was recognised by.
    pub by: RecognisedBy,
}

/// Which entry of a part's head decided.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RecognisedBy {
    /// The printed name.
    Name,
    /// The printed abbreviation.
    Abbreviation,
    /// The name of the playback instrument.
    InstrumentName,
    /// The sound id.
    Sound,
    /// The MIDI program.
    MidiProgram,
    /// Nothing: not bowed for want of any hint.
    Nothing,
}

/// Recognises a part's instrument.
///
/// ```
/// use arcata_score::instrument::{PartHead, recognise};
/// use arcata_score::{Instrument, Players};
/// let read = recognise(&PartHead { name: "Violini I", ..PartHead::default() });
/// assert_eq!(read.instrument, Instrument::Violin);
/// assert_eq!(read.players, Players::Section);
/// let clarinet = recognise(&PartHead { name: "Bass Clarinet", ..PartHead::default() });
/// assert_eq!(clarinet.instrument, Instrument::NotBowed);
/// ```
#[must_use]
pub fn recognise(head: &PartHead<'_>) -> Recognised {
    let sound = by_sound(head.instrument_sound);
    let program = head.midi_program.and_then(by_program);
    let texts = [
        (RecognisedBy::Name, names::read(head.name, names::NameSpelling::Full)),
        (RecognisedBy::Abbreviation, names::read(head.abbreviation, names::NameSpelling::Short)),
        (RecognisedBy::InstrumentName, names::read(head.instrument_name, names::NameSpelling::Full)),
    ];
    // Only what is printed for the players: "String Ensemble" is a favourite sound for a quartet.
    let printed = &texts[..2];
    let players = printed.iter().map(|(_, read)| read.players).find(|players| *players != Players::Unknown);
    let mut decided = None;
    for (by, read) in &texts {
        decided = decided.or_else(|| Some((decide(read.claim, sound, program, head.midi_program)?, *by)));
    }
    let (instrument, by) = decided
        .or_else(|| sound.map(|instrument| (instrument, RecognisedBy::Sound)))
        .or_else(|| program.map(|instrument| (instrument, RecognisedBy::MidiProgram)))
        .unwrap_or((Instrument::NotBowed, RecognisedBy::Nothing));
    let group = by == RecognisedBy::Sound && head.instrument_sound.trim() == "strings.group";
    let players = match players {
        _ if !instrument.is_bowed() => Players::Unknown,
        Some(players) => players,
        None if group => Players::Section,
        None => Players::Unknown,
    };
    Recognised { instrument, players, by }
}

/// What a name's claim comes to beside the sound and the program; `None` when the name leaves it open.
fn decide(
    claim: names::Claim,
    sound: Option<Instrument>,
    program: Option<Instrument>,
    midi_program: Option<u8>,
) -> Option<Instrument> {
    match claim {
        names::Claim::Nothing => None,
        names::Claim::Sure(instrument) => Some(instrument),
        // "Bass" is also a singer and a guitar, "Alto" a singer and a viola: something else must agree.
        names::Claim::Perhaps(instrument) => {
            let agreed = sound.or(program) == Some(instrument);
            Some(if agreed { instrument } else { Instrument::NotBowed })
        }
        // Soprano, oboe and violin on one staff: the sound says who is meant, else the others count.
        names::Claim::Shared(instrument) => {
            let strings = sound.is_some_and(Instrument::is_bowed)
                || (sound.is_none() && midi_program.is_some() && program == Some(instrument));
            Some(if strings { instrument } else { Instrument::NotBowed })
        }
    }
}

/// The instrument of a sound id of MusicXML's list; `None` for an empty or unknown family.
///
/// Source: MusicXML 4.0, `sounds.xml`.
fn by_sound(id: &str) -> Option<Instrument> {
    let id = id.trim();
    let family = id.split('.').next().unwrap_or(id);
    match id {
        "" => None,
        "strings.violin" | "strings.fiddle" | "strings.stroh-violin" => Some(Instrument::Violin),
        "strings.viola" => Some(Instrument::Viola),
        "strings.cello" => Some(Instrument::Cello),
        "strings.contrabass" => Some(Instrument::Bass),
        "strings.hurdy-gurdy" | "strings.group.synth" => Some(Instrument::NotBowed),
        _ if family == "strings" => Some(Instrument::OtherBowed),
        _ => Some(Instrument::NotBowed),
    }
}

/// The instrument of a General MIDI program counted from 1; `None` where the program says nothing
/// (1 is what is written when nobody chose).
///
/// Source: General MIDI level 1, instrument families 41–48 and 49–56.
fn by_program(program: u8) -> Option<Instrument> {
    match program {
        0 | 1 => None,
        41 => Some(Instrument::Violin),
        42 => Some(Instrument::Viola),
        43 => Some(Instrument::Cello),
        44 => Some(Instrument::Bass),
        // Tremolo, pizzicato and ensemble strings: bowed, without saying which.
        45 | 46 | 49 | 50 => Some(Instrument::OtherBowed),
        // A fiddle.
        111 => Some(Instrument::Violin),
        _ => Some(Instrument::NotBowed),
    }
}

#[cfg(test)]
mod tests;
