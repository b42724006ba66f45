//! `<attributes>`: divisions, key, time, staves, clefs, transposition.

use arcata_xml::{Element, Tag};

use super::notes::staff_in;
use super::numbers::{decimal_in, integer_in};
use super::part_reader::PartReader;
use crate::{BeatGroup, ClefChange, ClefSign, Meter, MeterSymbol, ProblemKind};

impl PartReader {
    pub(super) fn read_attributes(&mut self, element: Element<'_>) {
        let (mut keyed, mut timed) = (SeenAttribute::No, SeenAttribute::No);
        for child in element.children() {
            match child.tag() {
                Tag::DIVISIONS => self.read_divisions(child),
                // A part with several staves may give each its own; players count by the first.
                Tag::KEY if keyed == SeenAttribute::No => {
                    keyed = SeenAttribute::Yes;
                    self.read_key(child);
                }
                Tag::TIME if timed == SeenAttribute::No => {
                    timed = SeenAttribute::Yes;
                    self.read_time(child);
                }
                Tag::STAVES => {
                    if let Some(staves) = staff_in(child) {
                        self.part.staves = self.part.staves.max(staves);
                    }
                }
                Tag::CLEF => self.part.clefs.push(read_clef(child, self.bar)),
                Tag::TRANSPOSE => self.read_transposition(child),
                _ => {}
            }
        }
    }

    fn read_divisions(&mut self, element: Element<'_>) {
        match decimal_in(element) {
            Some(divisions) if divisions.is_positive() => self.clock.set(divisions),
            _ => {
                let text = element.text();
                self.problem(
                    ProblemKind::Divisions,
                    element.id(),
                    format!(
                        "\"{text}\" divisions to a quarter note make no sense; the count before is kept."
                    ),
                );
            }
        }
    }

    fn read_key(&mut self, element: Element<'_>) {
        let fifths =
            element.child(Tag::FIFTHS).and_then(integer_in).and_then(|fifths| i8::try_from(fifths).ok());
        if let Some(fifths) = fifths {
            self.part.keys.push((self.bar, fifths));
        }
    }

    fn read_time(&mut self, element: Element<'_>) {
        match read_meter(element) {
            Some(meter) => {
                // Two signatures in one bar: the later one holds.
                self.part.meters.retain(|(bar, _)| *bar != self.bar);
                self.part.meters.push((self.bar, meter));
            }
            None => self.problem(
                ProblemKind::Meter,
                element.id(),
                "A time signature cannot be read; the one before stays in force.",
            ),
        }
    }

    fn read_transposition(&mut self, element: Element<'_>) {
        let chromatic = element
            .child(Tag::CHROMATIC)
            .and_then(decimal_in)
            .map_or(0, |steps| steps.scaled(100, 1).floor());
        let octaves = element.child(Tag::OCTAVE_CHANGE).and_then(integer_in).unwrap_or(0);
        let cents = octaves.saturating_mul(1200).saturating_add(chromatic);
        if let Ok(cents) = i32::try_from(cents) {
            self.part.transpose_cents = cents;
        }
    }
}

fn read_clef(element: Element<'_>, bar: u32) -> ClefChange {
    let number = |tag| element.child(tag).and_then(integer_in);
    let staff = element.attribute("number").and_then(|staff| staff.trim().parse().ok()).unwrap_or(1);
    let sign = match element.child(Tag::SIGN).map(Element::text).as_deref() {
        Some("G") => ClefSign::G,
        Some("F") => ClefSign::F,
        Some("C") => ClefSign::C,
        _ => ClefSign::Other,
    };
    let line = number(Tag::LINE).and_then(|line| u8::try_from(line).ok()).unwrap_or(0);
    let octaves = number(Tag::CLEF_OCTAVE_CHANGE).and_then(|octaves| i8::try_from(octaves).ok()).unwrap_or(0);
    ClefChange { bar, staff, sign, line, octaves }
}

#[derive(PartialEq, Eq)]
enum SeenAttribute {
    No,
    Yes,
}

fn read_meter(element: Element<'_>) -> Option<Meter> {
    if element.child(Tag::SENZA_MISURA).is_some() {
        return Some(Meter { groups: Vec::new(), symbol: MeterSymbol::SenzaMisura });
    }
    let symbol = match element.attribute("symbol").as_deref() {
        Some("common") => MeterSymbol::Common,
        Some("cut") => MeterSymbol::Cut,
        _ => MeterSymbol::Numbers,
    };
    let mut groups = Vec::new();
    let mut beats = None;
    for child in element.children() {
        match child.tag() {
            Tag::BEATS => beats = Some(child.text()),
            Tag::BEAT_TYPE => {
                let unit =
                    integer_in(child).and_then(|unit| u16::try_from(unit).ok()).filter(|unit| *unit > 0)?;
                for count in beats.take()?.split('+') {
                    let count = count.trim().parse().ok().filter(|count| *count > 0)?;
                    groups.push(BeatGroup { count, unit });
                }
            }
            _ => {}
        }
    }
    (!groups.is_empty()).then_some(Meter { groups, symbol })
}
