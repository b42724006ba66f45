//! What typed bars, beats and notes mean in a score.

use arcata_score::places::{Point, bar_said, beat_said};
use arcata_score::{ChordRole, Length, NoteId, NoteKind};

use super::problem::{ShorthandProblem, ShorthandProblemKind};
use super::sections::Sections;
use super::strokes::{StrokeBeginning, Strokes, is_played};
use super::syntax::{At, BarName, NoteSpot, Where, Within};
use super::wish::Wish;
use crate::address::Addresses;
use crate::model::PitchName;

/// A bar and how far into it; open where the whole bar belongs to a stretch.
pub(super) type Edge = (u32, Option<Length>);

/// Finds sections and bars.
pub(super) struct Locator<'a> {
    addresses: &'a Addresses<'a>,
    sections: Sections<'a>,
    /// The bar named last on this line, as an index.
    bar: Option<u32>,
    /// The movement named last; all of them before one is.
    movement: Option<usize>,
}

/// The bars of a place.
#[derive(Clone, Copy, Debug)]
pub(super) struct Target {
    /// Index of the bar.
    pub(super) bar: u32,
    /// Index of the bar in which a stretch ends.
    pub(super) to: Option<u32>,
}

impl<'a> Locator<'a> {
    pub(super) fn new(addresses: &'a Addresses<'a>) -> Self {
        Self { addresses, sections: Sections::new(addresses.score()), bar: None, movement: None }
    }

    pub(super) fn begin_line(&mut self) {
        self.bar = None;
    }

    /// The bar that a beat without a bar belongs to; other bars are of its movement.
    pub(super) fn stand_in(&mut self, bar: u32) {
        self.bar = Some(bar);
        self.movement = Some(self.addresses.score().movement_of(bar));
    }

    /// The movement that bars are of from now on.
    pub(super) fn movement(&mut self, name: &str) -> Result<(), ShorthandProblemKind> {
        let score = self.addresses.score();
        self.movement = score.movement_named(name);
        self.movement.map(|_| ()).ok_or_else(|| ShorthandProblemKind::UnknownMovement {
            name: name.to_owned(),
            known: score.movements.iter().map(|movement| movement.name().to_owned()).collect(),
        })
    }

    /// The parts that the names mean, in the order of the names, each once.
    pub(super) fn sections(
        &mut self,
        names: &[At<String>],
        complaints: &mut Vec<ShorthandProblem>,
    ) -> Vec<usize> {
        let mut parts: Vec<usize> = Vec::new();
        for At { value: name, spot } in names {
            match self.sections.find(name) {
                Ok(found) => {
                    for part in found {
                        if !parts.contains(&part) {
                            parts.push(part);
                        }
                    }
                }
                Err(trouble) => complaints.push(ShorthandProblem::wrong(*spot, trouble)),
            }
        }
        parts
    }

    /// The bars of a place.
    pub(super) fn target(&mut self, place: &Where) -> Result<Target, ShorthandProblemKind> {
        let bar = self.bar(&place.from)?;
        let to = place.to.as_ref().map(|to| self.bar(to)).transpose()?;
        if let Some(last) = to
            && last < bar
        {
            return Err(self.backwards(place, bar, last));
        }
        Ok(Target { bar, to })
    }

    fn backwards(&self, place: &Where, from: u32, to: u32) -> ShorthandProblemKind {
        let label = |bar: u32| bar_said("bar", None, self.addresses.score().bar_label(bar));
        // "41/1-3": the 3 is read as a bar, and was perhaps meant as a beat.
        let suggestion = match (&place.from.within, &place.to) {
            (Within::Beat(_), Some(NoteSpot { bar: Some(bar), within: Within::Bar, .. })) => {
                Some(format!("{}-/{}", place.from, bar.label))
            }
            _ => None,
        };
        ShorthandProblemKind::Backwards { from: label(from), to: label(to), suggestion }
    }

    fn bar(&mut self, spot: &NoteSpot) -> Result<u32, ShorthandProblemKind> {
        let bar = match &spot.bar {
            Some(name) => self.named(name)?,
            None => self.bar.ok_or(ShorthandProblemKind::NoBarBefore)?,
        };
        self.bar = Some(bar);
        Ok(bar)
    }

    fn named(&self, name: &BarName) -> Result<u32, ShorthandProblemKind> {
        let score = self.addresses.score();
        let movement = self.movement.and_then(|movement| score.movements.get(movement));
        let within = movement.map_or(0..=u32::MAX, |movement| movement.bars.clone());
        let found = score.bars_called(name, within);
        match found.as_slice() {
            [only] => Ok(*only),
            [] => {
                let movement = self.movement.filter(|_| score.movements.len() > 1);
                Err(ShorthandProblemKind::UnknownBar(score.no_bar(name, movement)))
            }
            several => {
                let mut movements: Vec<String> =
                    several.iter().filter_map(|bar| score.movement_said(*bar)).map(str::to_owned).collect();
                movements.dedup();
                Err(ShorthandProblemKind::SeveralBars {
                    label: name.label.clone(),
                    count: several.len(),
                    movements,
                })
            }
        }
    }
}

/// Bar, beat and section of a note, in the way it would be typed.
pub(super) fn said(addresses: &Addresses<'_>, part: usize, note: NoteId) -> String {
    let score = addresses.score();
    let written = score.parts[part].note(note);
    let offset = score.offset_in_bar(written.onset, written.bar);
    format!("{} in {}", bar_and_beat(addresses, part, written.bar, offset), addresses.part_keys()[part])
}

fn bar_and_beat(addresses: &Addresses<'_>, part: usize, bar: u32, offset: Length) -> Point {
    let score = addresses.score();
    let within = Within::Beat(score.beat_at(part, bar, offset));
    Point { bar: Some(BarName::new(score.bar_label(bar))), within }
}

/// How far into its bar a beat or a note value lies; nothing for what says neither.
fn offset(
    addresses: &Addresses<'_>,
    part: usize,
    bar: u32,
    within: Within,
) -> Result<Option<Length>, ShorthandProblemKind> {
    let score = addresses.score();
    score.offset_of(part, bar, within).map_err(|no_beat| ShorthandProblemKind::UnknownBeat {
        bar: bar_said("bar", None, score.bar_label(bar)),
        beat: within_said(within),
        beats: no_beat.to_string(),
    })
}

/// Where in a bar, without the bar.
fn within_said(within: Within) -> String {
    match within {
        Within::Bar => "its first note".to_owned(),
        Within::Beat(beat) => format!("beat {}", beat_said(beat)),
        Within::After(length) => format!("after {length}"),
        Within::Note(number) => format!("note {number}"),
    }
}

impl Target {
    /// Where a bar or a stretch begins and ends.
    pub(super) fn bounds(
        self,
        addresses: &Addresses<'_>,
        wish: &Wish<'_>,
        strokes: &Strokes,
    ) -> Result<((u32, Length), Edge), ShorthandProblemKind> {
        let from = edge(addresses, wish, strokes, &wish.place.from, self.bar)?;
        let from = (from.0, from.1.unwrap_or(Length::ZERO));
        let to = match (&wish.place.to, self.to) {
            (Some(to), Some(bar)) => edge(addresses, wish, strokes, to, bar)?,
            _ => (self.bar, None),
        };
        if from.0 == to.0 && to.1.is_some_and(|offset| offset < from.1) {
            return Err(ShorthandProblemKind::Backwards {
                from: bar_and_beat(addresses, wish.part, from.0, from.1).to_string(),
                to: bar_and_beat(addresses, wish.part, to.0, to.1.unwrap_or(from.1)).to_string(),
                suggestion: None,
            });
        }
        Ok((from, to))
    }

    /// The one note that the beginning of the place means.
    pub(super) fn note(
        self,
        addresses: &Addresses<'_>,
        wish: &Wish<'_>,
        strokes: &Strokes,
    ) -> Result<NoteId, ShorthandProblemKind> {
        note(addresses, wish, strokes, &wish.place.from, self.bar)
    }
}

fn edge(
    addresses: &Addresses<'_>,
    wish: &Wish<'_>,
    strokes: &Strokes,
    spot: &NoteSpot,
    bar: u32,
) -> Result<Edge, ShorthandProblemKind> {
    match spot.within {
        Within::Bar | Within::Beat(_) | Within::After(_) => {
            Ok((bar, offset(addresses, wish.part, bar, spot.within)?))
        }
        Within::Note(_) => {
            let id = note(addresses, wish, strokes, spot, bar)?;
            let written = addresses.score().parts[wish.part].note(id);
            Ok((bar, Some(addresses.score().offset_in_bar(written.onset, bar))))
        }
    }
}

/// The note that a spot means.
pub(super) fn note(
    addresses: &Addresses<'_>,
    wish: &Wish<'_>,
    strokes: &Strokes,
    spot: &NoteSpot,
    bar: u32,
) -> Result<NoteId, ShorthandProblemKind> {
    let voice = voice(addresses, wish.part, spot)?;
    let there = strokes.in_bar(bar, voice);
    let found = match spot.within {
        Within::Beat(_) | Within::After(_) => {
            let offset = offset(addresses, wish.part, bar, spot.within)?.unwrap_or(Length::ZERO);
            return at_offset(addresses, wish.part, bar, offset, voice, spot, &there);
        }
        Within::Note(number) => there.get(usize::from(number) - 1),
        Within::Bar => there.iter().find(|note| note.inside.is_none()).or(there.first()),
    };
    match found {
        Some(found) => at_offset(addresses, wish.part, bar, found.offset, Some(found.voice), spot, &there),
        None => Err(no_note(addresses, wish.part, bar, &within_said(spot.within), &there)),
    }
}

fn voice(
    addresses: &Addresses<'_>,
    part: usize,
    spot: &NoteSpot,
) -> Result<Option<u16>, ShorthandProblemKind> {
    let Some(name) = &spot.voice else { return Ok(None) };
    let voices = &addresses.score().parts[part].voices;
    let index = voices.iter().position(|voice| voice == name);
    match index.and_then(|index| u16::try_from(index).ok()) {
        Some(index) => Ok(Some(index)),
        None => Err(ShorthandProblemKind::Unexpected {
            found: format!("\"{name}\""),
            expected: "a voice of this part",
            suggestion: voices.first().cloned(),
        }),
    }
}

fn no_note(
    addresses: &Addresses<'_>,
    part: usize,
    bar: u32,
    within: &str,
    there: &[StrokeBeginning],
) -> ShorthandProblemKind {
    let score = addresses.score();
    let bar_called = bar_said("bar", None, score.bar_label(bar));
    let place = format!("{bar_called}, {within} in {}", addresses.part_keys()[part]);
    let beat = |note: &StrokeBeginning| beat_said(score.beat_at(part, bar, note.offset));
    ShorthandProblemKind::NoNote { place, there: there.iter().map(beat).collect() }
}

/// The note at an offset that fits what else was said of it.
fn at_offset(
    addresses: &Addresses<'_>,
    part: usize,
    bar: u32,
    offset: Length,
    voice: Option<u16>,
    spot: &NoteSpot,
    there: &[StrokeBeginning],
) -> Result<NoteId, ShorthandProblemKind> {
    let notes = &addresses.score().parts[part];
    let here = addresses.at(part, bar, offset);
    let said =
        || format!("{} in {}", bar_and_beat(addresses, part, bar, offset), addresses.part_keys()[part]);
    let sounding: Vec<NoteId> =
        here.iter().copied().filter(|note| !notes.note(*note).pitch.is_rest()).collect();
    if sounding.is_empty() {
        let within = Within::Beat(addresses.score().beat_at(part, bar, offset));
        return Err(match here.as_slice() {
            [] => no_note(addresses, part, bar, &within_said(within), there),
            _ => ShorthandProblemKind::Rest { place: said() },
        });
    }
    let pitch = match &spot.pitch {
        None => None,
        Some(text) => Some(PitchName::parse(text).ok_or_else(|| ShorthandProblemKind::Unexpected {
            found: format!("\"{text}\""),
            expected: "a pitch such as F#5 or Bb3",
            suggestion: None,
        })?),
    };
    // Without a voice the first that has a note of its own here; cue notes are nobody's to bow, but may be
    // named.
    let main = |note: &&NoteId| is_played(notes.note(**note)) && notes.note(**note).chord == ChordRole::Main;
    let voice = voice
        .or_else(|| sounding.iter().filter(main).map(|note| notes.note(*note).voice).min())
        .or_else(|| sounding.iter().map(|note| notes.note(*note).voice).min());
    let fits = |note: &&NoteId| {
        let written = notes.note(**note);
        let named = addresses.spot(part, **note);
        Some(written.voice) == voice
            && named.as_ref().is_some_and(|named| named.grace == spot.grace)
            && pitch.is_none_or(|pitch| pitch.0 == written.pitch)
            && named.is_some_and(|named| spot.copy.is_none_or(|copy| named.copy == copy))
    };
    let fitting: Vec<NoteId> = sounding.iter().filter(fits).copied().collect();
    let ordinary = fitting.iter().find(|note| notes.note(**note).kind != NoteKind::Cue);
    ordinary.or(fitting.first()).copied().ok_or_else(|| {
        let pitches = sounding.iter().map(|note| PitchName(notes.note(*note).pitch).to_string());
        ShorthandProblemKind::OtherNote { place: said(), there: pitches.collect() }
    })
}
