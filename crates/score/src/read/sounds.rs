//! `<sound>`: what a file says to players that are machines, and sometimes only to them.

use arcata_xml::{Element, Tag};

use super::numbers::{decimal, decimal_in};
use super::part_reader::PartReader;
use crate::{Jump, Length, Meaning, Place, ProblemKind, Tempo, TempoKind};

impl PartReader {
    /// Reads a `<sound>` that stands in the bar by itself.
    pub(super) fn read_lone_sound(&mut self, element: Element<'_>) {
        let ticks = element.child(Tag::OFFSET).and_then(decimal_in);
        let offset = ticks.map_or(Length::ZERO, |ticks| self.clock.span(ticks));
        let place = self.place(self.cursor + offset, 0, None, element.id());
        self.read_sound(element, place);
    }

    /// Reads a `<sound>`.
    pub(super) fn read_sound(&mut self, element: Element<'_>, place: Place) {
        let place = Place { node: element.id(), ..place };
        for attribute in element.attributes() {
            match (attribute.name(), attribute.value().as_ref()) {
                ("tempo", tempo) => self.read_sound_tempo(tempo, place),
                ("pizzicato", "yes") => self.instruct(place, Meaning::Pizzicato, ""),
                ("pizzicato", "no") => self.instruct(place, Meaning::Arco, ""),
                ("dacapo", "yes") => self.shared.jump(Jump::DaCapo),
                ("dalsegno", _) => self.shared.jump(Jump::DalSegno),
                ("segno", _) => self.shared.jump(Jump::Segno),
                ("coda", _) => self.shared.jump(Jump::Coda),
                ("tocoda", _) => self.shared.leave_for_coda(),
                ("fine", _) => self.shared.jump(Jump::Fine),
                _ => {}
            }
        }
    }

    fn read_sound_tempo(&mut self, text: &str, place: Place) {
        let Some(speed) = decimal(text).filter(|speed| speed.is_positive()) else {
            self.problem(
                ProblemKind::Tempo,
                place.node,
                format!("A tempo of \"{text}\" quarter notes a minute makes no sense; it is passed over."),
            );
            return;
        };
        self.tempos.push(Tempo { place, kind: TempoKind::Marked(speed), text: String::new() });
    }
}
