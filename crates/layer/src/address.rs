//! From addresses to notes and back.

use std::fmt;

use arcata_languages::{Argument, SaidPlace, Saying};
use arcata_score::places;
use arcata_score::{Length, Note, NoteId, NoteKind, Part, Score};

use crate::model::{Address, PitchName, Spot};

/// The notes of a score by their addresses.
///
/// ```
/// use arcata_layer::Addresses;
/// # let text = arcata_testkit::musicxml("violin: 1/4 C5 D5 E5 F5");
/// # let document = arcata_xml::Document::parse(text.into_bytes(), &Default::default()).unwrap();
/// let score = arcata_score::read(&document);
/// let addresses = Addresses::new(&score);
/// let note = arcata_score::NoteId(2);
/// let place = addresses.place(0, note).unwrap();
/// assert_eq!(place.to_string(), "violin, bar 1 after 1/2, E5");
/// assert_eq!(addresses.find(&place).unwrap().note, note);
/// ```
#[derive(Debug)]
pub struct Addresses<'s> {
    score: &'s Score,
    keys: Vec<String>,
}

/// A note that an address names.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct NamedNote {
    /// Index of the part.
    pub part: usize,
    /// The note.
    pub note: NoteId,
}

/// Why an address names no note.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NotFound {
    /// No part bears that name.
    Part {
        /// The names there are.
        known: Vec<String>,
    },
    /// No bar bears that number.
    Bar,
    /// Several bars bear that number, and the address does not say which.
    SeveralBars {
        /// Their positions in the file, from 1.
        ordinals: Vec<u32>,
    },
    /// The bar at that position bears another number.
    OtherBar {
        /// The number it bears.
        label: String,
    },
    /// No note begins there.
    Nothing,
    /// A rest stands there.
    Rest,
    /// Notes begin there, but none of that voice, pitch or count.
    OtherNote {
        /// The pitches that begin there.
        pitches: Vec<String>,
    },
}

impl NotFound {
    /// Why, as the end of a sentence that begins with the place.
    #[must_use]
    pub fn saying(&self) -> Saying {
        match self {
            Self::Part { known } => Saying::new("why-no-part").quoting("parts", known.join(", ")),
            Self::Bar => Saying::new("why-no-bar"),
            Self::SeveralBars { ordinals } => {
                let ordinals = ordinals.iter().map(|ordinal| Argument::from(*ordinal)).collect();
                Saying::new("why-several-bars").with("ordinals", Argument::Row(ordinals))
            }
            Self::OtherBar { label } => Saying::new("why-other-bar").with("bar", SaidPlace::bar(label)),
            Self::Nothing => Saying::new("why-no-note"),
            Self::Rest => Saying::new("why-rest"),
            Self::OtherNote { pitches } => {
                Saying::new("why-other-note").quoting("pitches", pitches.join(", "))
            }
        }
    }
}

impl fmt::Display for NotFound {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.saying().fmt(out)
    }
}

impl<'s> Addresses<'s> {
    /// Looks through a score.
    #[must_use]
    pub fn new(score: &'s Score) -> Self {
        Self { score, keys: part_keys(score) }
    }

    /// The score.
    #[must_use]
    pub fn score(&self) -> &'s Score {
        self.score
    }

    /// The names that entries use for the parts, in score order.
    #[must_use]
    pub fn part_keys(&self) -> &[String] {
        &self.keys
    }

    /// The part that a name means.
    #[must_use]
    pub fn part(&self, key: &str) -> Option<usize> {
        let by_id = || self.score.parts.iter().position(|part| part.id == key);
        self.keys.iter().position(|known| known == key).or_else(by_id)
    }

    /// The bar that a spot names, as an index.
    ///
    /// # Errors
    ///
    /// No bar, several, or another one: see [`NotFound`].
    pub fn bar(&self, spot: &Spot) -> Result<u32, NotFound> {
        let bars = &self.score.bars;
        if let Some(ordinal) = spot.bar_ordinal {
            let index = ordinal.wrapping_sub(1);
            return match bars.get(index as usize) {
                Some(bar) if bar.label == spot.bar => Ok(index),
                Some(bar) => Err(NotFound::OtherBar { label: bar.label.clone() }),
                None => Err(NotFound::Bar),
            };
        }
        let named = bars.iter().zip(0..).filter(|(bar, _)| bar.label == spot.bar);
        let named: Vec<u32> = named.map(|(_, index)| index).collect();
        match named.as_slice() {
            [] => Err(NotFound::Bar),
            [only] => Ok(*only),
            several => {
                Err(NotFound::SeveralBars { ordinals: several.iter().map(|index| index + 1).collect() })
            }
        }
    }

    /// The note that an address names.
    ///
    /// # Errors
    ///
    /// No such part, bar or note, each with what there is instead.
    pub fn find(&self, place: &Address) -> Result<NamedNote, NotFound> {
        let part = self.part(&place.part).ok_or_else(|| NotFound::Part { known: self.keys.clone() })?;
        self.find_in(part, &place.spot)
    }

    /// A place as it is said where the score is known: by bar and beat, with its movement where there are several.
    ///
    /// ```
    /// use arcata_layer::Addresses;
    /// # let text = arcata_testkit::musicxml("violin: 1/4 C5 D5 1/8 E5 F5 1/4 G5");
    /// # let document = arcata_xml::Document::parse(text.into_bytes(), &arcata_xml::Limits::default())?;
    /// let score = arcata_score::read(&document);
    /// let addresses = Addresses::new(&score);
    /// let place = addresses.place(0, arcata_score::NoteId(3)).ok_or("an address")?;
    /// assert_eq!(addresses.said(&place), "violin, bar 1, beat 3½, F5");
    /// assert_eq!(place.to_string(), "violin, bar 1 after 5/8, F5");
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub fn said(&self, place: &Address) -> String {
        let Some(part) = self.part(&place.part) else { return place.to_string() };
        let Ok(bar) = self.bar(&place.spot) else { return place.to_string() };
        // Names of sections hold commas and numerals: a colon parts the movement from them.
        let movement = self.score.movement_said(bar).map(places::numeral);
        let movement = movement.map_or_else(String::new, |numeral| format!("{numeral}: "));
        format!("{movement}{}, {}", place.part, self.spot_said(part, &place.spot))
    }

    /// A spot of a part as it is said where the score is known, without movement and part: `bar 1, beat 3½, F5`.
    #[must_use]
    pub fn spot_said(&self, part: usize, spot: &Spot) -> String {
        let Ok(bar) = self.bar(spot) else { return spot.to_string() };
        let beat = self.score.beat_at(part, bar, spot.offset);
        format!("{}{}", places::place_said("bar", None, &spot.bar, beat), spot.note_said())
    }

    /// The same, to be said in a language; as its file has it where the bar is not there.
    #[must_use]
    pub fn spot_argument(&self, part: usize, spot: &Spot) -> Argument {
        let Ok(bar) = self.bar(spot) else { return spot.argument() };
        let place = SaidPlace::bar(&spot.bar).on_beat(self.score.beat_at(part, bar, spot.offset));
        spot.among_notes(place.into())
    }

    /// The note of a part that a spot names.
    ///
    /// # Errors
    ///
    /// As for [`Addresses::find`].
    pub fn find_in(&self, part: usize, spot: &Spot) -> Result<NamedNote, NotFound> {
        let bar = self.bar(spot)?;
        let here = self.at(part, bar, spot.offset);
        if here.is_empty() {
            return Err(NotFound::Nothing);
        }
        let notes = &self.score.parts[part];
        let sounding: Vec<NoteId> =
            here.iter().copied().filter(|note| !notes.note(*note).pitch.is_rest()).collect();
        if sounding.is_empty() {
            return Err(NotFound::Rest);
        }
        let voice_of = |note: &NoteId| voice_name(notes, notes.note(*note));
        let wanted = |note: &&NoteId| {
            let described = notes.note(**note);
            voice_of(note) == spot.voice
                && spot.pitch.is_none_or(|pitch| pitch.0 == described.pitch)
                && self.grace_number(part, **note) == spot.grace
        };
        let mut fitting = sounding.iter().filter(wanted);
        match fitting.nth(usize::from(spot.copy.max(1) - 1)) {
            Some(note) => Ok(NamedNote { part, note: *note }),
            None => Err(NotFound::OtherNote {
                pitches: sounding.iter().map(|note| described(notes, *note)).collect(),
            }),
        }
    }

    /// The address of a note; nothing for rests and notes that do not exist.
    #[must_use]
    pub fn place(&self, part: usize, note: NoteId) -> Option<Address> {
        Some(Address { part: self.keys.get(part)?.clone(), spot: self.spot(part, note)? })
    }

    /// The address of a note within its part.
    #[must_use]
    pub fn spot(&self, part: usize, id: NoteId) -> Option<Spot> {
        let notes = self.score.parts.get(part)?;
        let note = notes.notes.get(id.0 as usize).filter(|note| !note.pitch.is_rest())?;
        let bar = self.score.bars.get(note.bar as usize)?;
        let offset = self.score.offset_in_bar(note.onset, note.bar);
        let grace = self.grace_number(part, id);
        let agrees = |other: &&NoteId| {
            let described = notes.note(**other);
            described.voice == note.voice
                && described.pitch == note.pitch
                && self.grace_number(part, **other) == grace
        };
        let here = self.at(part, note.bar, offset);
        let copy = here.iter().filter(agrees).take_while(|other| **other != id).count();
        Some(Spot {
            bar: bar.label.clone(),
            bar_ordinal: Some(note.bar + 1),
            offset,
            voice: voice_name(notes, note).to_owned(),
            pitch: Some(PitchName(note.pitch)),
            grace,
            copy: u16::try_from(copy + 1).unwrap_or(u16::MAX),
        })
    }

    /// The notes and rests that begin at an offset of a bar, in document order.
    #[must_use]
    pub fn at(&self, part: usize, bar: u32, offset: Length) -> Vec<NoteId> {
        let (Some(notes), Some(within)) = (self.score.parts.get(part), self.score.bars.get(bar as usize))
        else {
            return Vec::new();
        };
        // Notes stand in the order of their bars; a bar has so few that no index is worth its making.
        let moment = within.start + offset;
        let first = notes.notes.partition_point(|note| note.bar < bar);
        let of_bar = notes.notes[first..].iter().zip(first..).take_while(|(note, _)| note.bar == bar);
        let here = of_bar.filter(|(note, _)| note.onset == moment);
        here.filter_map(|(_, index)| u32::try_from(index).ok().map(NoteId)).collect()
    }

    /// Which of the grace notes of its voice and moment a note is, chords counted once; nothing for other
    /// notes.
    fn grace_number(&self, part: usize, id: NoteId) -> Option<u16> {
        let notes = &self.score.parts[part];
        let note = notes.note(id);
        if !is_grace(note) {
            return None;
        }
        let offset = self.score.offset_in_bar(note.onset, note.bar);
        let here = self.at(part, note.bar, offset);
        let before = here.iter().filter(|other| {
            let described = notes.note(**other);
            **other <= id
                && is_grace(described)
                && described.voice == note.voice
                && described.chord == arcata_score::ChordRole::Main
        });
        Some(u16::try_from(before.count().max(1)).unwrap_or(u16::MAX))
    }
}

fn is_grace(note: &Note) -> bool {
    matches!(note.kind, NoteKind::Grace | NoteKind::SlashedGrace)
}

fn voice_name<'p>(part: &'p Part, note: &Note) -> &'p str {
    part.voices.get(usize::from(note.voice)).map_or("1", String::as_str)
}

fn described(part: &Part, id: NoteId) -> String {
    let note = part.note(id);
    let (pitch, voice) = (PitchName(note.pitch), voice_name(part, note));
    let grace = if is_grace(note) { " (grace note)" } else { "" };
    if voice == "1" { format!("{pitch}{grace}") } else { format!("{pitch} in voice {voice}{grace}") }
}

/// The names that entries use: the printed one where it is the only one of its kind, else the `id`.
fn part_keys(score: &Score) -> Vec<String> {
    let parts = &score.parts;
    let key = |part: &Part| {
        let bears = |other: &&Part| other.name == part.name || other.id == part.name;
        let alone = parts.iter().filter(bears).count() == 1;
        if alone && !part.name.trim().is_empty() { part.name.clone() } else { part.id.clone() }
    };
    parts.iter().map(key).collect()
}
