//! What a text wants, part by part, and which notes of the score are meant.

use arcata_score::Length;

use super::enter::MOST_DECISIONS;
use super::locate::{Edge, Locator, Target};
use super::problem::{ShorthandProblem, ShorthandProblemKind};
use super::strokes::{StrokeBeginning, Strokes};
use super::syntax::{At, Item, Statement, Text, Typed, Where, Within};
use crate::address::Addresses;

/// A statement for one place in one part.
pub(super) struct Wish<'t> {
    pub(super) part: usize,
    pub(super) at: Typed,
    pub(super) place: &'t Where,
    /// What the place means in the score.
    pub(super) target: Target,
    pub(super) statement: &'t Statement,
}

/// Gives every statement its parts and bars.
pub(super) fn assigned<'t>(
    text: &'t Text,
    locator: &mut Locator<'_>,
    complaints: &mut Vec<ShorthandProblem>,
) -> Vec<Wish<'t>> {
    let mut wanted = Vec::new();
    let mut parts: Option<Vec<usize>> = None;
    for line in &text.lines {
        locator.begin_line();
        if let Some(At { value: name, spot }) = &line.movement
            && let Err(trouble) = locator.movement(name)
        {
            complaints.push(ShorthandProblem::wrong(*spot, trouble));
        }
        for item in &line.items {
            match item {
                Item::Sections(names) => parts = Some(locator.sections(names, complaints)),
                Item::Statement(said) => {
                    if parts.is_none() {
                        complaints.push(ShorthandProblem::wrong(said.spot, ShorthandProblemKind::NoSection));
                        // Told once: what follows is read as if a section had been named.
                        parts = Some(Vec::new());
                    }
                    for At { value: place, spot } in &said.value.places {
                        let target = match locator.target(place) {
                            Ok(target) => target,
                            Err(trouble) => {
                                complaints.push(ShorthandProblem::wrong(*spot, trouble));
                                continue;
                            }
                        };
                        let parts = parts.iter().flatten();
                        if wanted.len() > MOST_DECISIONS {
                            let trouble = ShorthandProblemKind::TooManyDecisions { most: MOST_DECISIONS };
                            complaints.push(ShorthandProblem::wrong(*spot, trouble));
                            return wanted;
                        }
                        wanted.extend(parts.map(|part| Wish {
                            part: *part,
                            at: *spot,
                            place,
                            target,
                            statement: &said.value,
                        }));
                    }
                }
            }
        }
    }
    wanted
}

impl Wish<'_> {
    /// Whether a bar or a stretch is meant and not one note.
    pub(super) fn is_wide(&self) -> bool {
        self.place.to.is_some() || self.place.from.within == Within::Bar
    }

    /// The voice that was named, as the part numbers it.
    pub(super) fn voice(&self, addresses: &Addresses<'_>) -> Option<u16> {
        let name = self.place.from.voice.as_ref()?;
        let voices = &addresses.score().parts[self.part].voices;
        let index = voices.iter().position(|voice| voice == name)?;
        u16::try_from(index).ok()
    }

    /// First and last place of a bar or a stretch.
    pub(super) fn bounds(
        &self,
        addresses: &Addresses<'_>,
        strokes: &Strokes,
    ) -> Result<((u32, Length), Edge), ShorthandProblemKind> {
        self.target.bounds(addresses, self, strokes)
    }

    pub(super) fn stretch(
        &self,
        addresses: &Addresses<'_>,
        strokes: &Strokes,
    ) -> Result<Vec<StrokeBeginning>, ShorthandProblemKind> {
        let (from, to) = self.bounds(addresses, strokes)?;
        Ok(strokes.between(from, to, self.voice(addresses)))
    }

    /// The one note that is meant.
    pub(super) fn single(
        &self,
        addresses: &Addresses<'_>,
        strokes: &Strokes,
    ) -> Result<StrokeBeginning, ShorthandProblemKind> {
        let note = self.target.note(addresses, self, strokes)?;
        let found = strokes.of(note);
        let written = addresses.score().parts[self.part].note(note);
        Ok(found.unwrap_or_else(|| StrokeBeginning {
            note,
            bar: written.bar,
            offset: addresses.score().offset_in_bar(written.onset, written.bar),
            voice: written.voice,
            inside: None,
        }))
    }
}
