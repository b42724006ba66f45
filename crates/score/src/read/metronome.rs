//! Metronome marks and metric modulations.

use arcata_xml::{Element, Tag};

use super::notes::base_value;
use super::numbers::{first_decimal, integer_in};
use super::part_reader::PartReader;
use crate::{Length, NoteValue, Place, ProblemKind, Tempo, TempoKind};

/// One side of a metronome mark.
#[derive(Clone, Copy)]
enum MetronomeSide {
    Value(Length),
    PerMinute(Length),
}

impl PartReader {
    pub(super) fn read_metronome(&mut self, element: Element<'_>, place: Place) {
        match metronome(element) {
            Some(kind) => {
                self.tempos.push(Tempo { place, kind, text: printed(element) });
            }
            None => self.problem(
                ProblemKind::Tempo,
                element.id(),
                "A metronome mark cannot be read; it is passed over.",
            ),
        }
    }
}

fn metronome(element: Element<'_>) -> Option<TempoKind> {
    if element.child(Tag::METRONOME_NOTE).is_some() {
        let (old, new) = relation(element)?;
        return Some(TempoKind::Modulation(old, new));
    }
    let mut sides: Vec<MetronomeSide> = Vec::with_capacity(2);
    for child in element.children() {
        match child.tag() {
            Tag::BEAT_UNIT => {
                let following = element.children().skip_while(|other| other.id() != child.id()).skip(1);
                sides.push(MetronomeSide::Value(beat_unit(child, following)?));
            }
            Tag::BEAT_UNIT_TIED => {
                let unit = child.child(Tag::BEAT_UNIT)?;
                let tied = beat_unit(unit, child.children().filter(|other| other.id() != unit.id()))?;
                if let Some(MetronomeSide::Value(value)) = sides.last_mut() {
                    *value += tied;
                }
            }
            Tag::PER_MINUTE => {
                let speed = first_decimal(&child.text()).filter(|speed| speed.is_positive())?;
                sides.push(MetronomeSide::PerMinute(speed));
            }
            _ => {}
        }
    }
    match sides[..] {
        [MetronomeSide::Value(unit), MetronomeSide::PerMinute(speed)] => {
            let quarters = unit.in_units_of(Length::QUARTER)?;
            Some(TempoKind::Marked(speed.scaled(quarters.numerator(), quarters.denominator())))
        }
        [MetronomeSide::Value(old), MetronomeSide::Value(new)] => Some(TempoKind::Modulation(old, new)),
        _ => None,
    }
}

/// A beat unit with the dots that directly follow it.
fn beat_unit<'d>(unit: Element<'_>, following: impl Iterator<Item = Element<'d>>) -> Option<Length> {
    let base = base_value(&unit.text())?;
    let dots = following.take_while(|other| other.tag() == Tag::BEAT_UNIT_DOT).count().min(8) as u8;
    Some(NoteValue { base, dots, actual: 1, normal: 1 }.length())
}

/// The two sides of a modulation written with `<metronome-note>`s.
fn relation(element: Element<'_>) -> Option<(Length, Length)> {
    let mut sides = [Length::ZERO; 2];
    let mut side = 0;
    for child in element.children() {
        match child.tag() {
            Tag::METRONOME_RELATION => side = 1,
            Tag::METRONOME_NOTE => sides[side] += metronome_note(child)?,
            _ => {}
        }
    }
    let [old, new] = sides;
    (old.is_positive() && new.is_positive()).then_some((old, new))
}

fn metronome_note(element: Element<'_>) -> Option<Length> {
    let base = base_value(&element.child(Tag::METRONOME_TYPE)?.text())?;
    let dots = element.children_named(Tag::METRONOME_DOT).count().min(8) as u8;
    let tuplet = element.child(Tag::METRONOME_TUPLET);
    let number = |tag| {
        tuplet
            .and_then(|tuplet| tuplet.child(tag))
            .and_then(integer_in)
            .and_then(|number| u16::try_from(number).ok())
            .filter(|number| *number > 0)
            .unwrap_or(1)
    };
    let value =
        NoteValue { base, dots, actual: number(Tag::ACTUAL_NOTES), normal: number(Tag::NORMAL_NOTES) };
    Some(value.length())
}

/// The mark in words: "quarter. = 60", "half + eighth = 40".
fn printed(element: Element<'_>) -> String {
    let mut text = String::new();
    for child in element.children() {
        match child.tag() {
            Tag::BEAT_UNIT | Tag::PER_MINUTE => {
                if !text.is_empty() {
                    text.push_str(" = ");
                }
                text.push_str(&child.text());
            }
            Tag::BEAT_UNIT_DOT => text.push('.'),
            Tag::BEAT_UNIT_TIED => {
                for part in child.children() {
                    match part.tag() {
                        Tag::BEAT_UNIT => {
                            text.push_str(" + ");
                            text.push_str(&part.text());
                        }
                        Tag::BEAT_UNIT_DOT => text.push('.'),
                        _ => {}
                    }
                }
            }
            _ => {}
        }
    }
    text
}
