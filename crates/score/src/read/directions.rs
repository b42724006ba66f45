//! `<direction>`: dynamics, hairpins, words, rehearsal marks and signs of the road.

use arcata_xml::{Element, Tag};

use super::notes::staff_in;
use super::numbers::decimal_in;
use super::part_reader::PartReader;
use super::swells::SwellMark;
use crate::{Instruction, Jump, Length, Meaning, Moment, Place};

impl PartReader {
    pub(super) fn read_direction(&mut self, element: Element<'_>) {
        let (mut offset, mut staff, mut voice, mut sound) = (None, 0, None, None);
        for child in element.children() {
            match child.tag() {
                Tag::OFFSET => offset = Some(child),
                Tag::STAFF => staff = staff_in(child).unwrap_or(0),
                Tag::VOICE => voice = Some(self.voice(&child.text())),
                Tag::SOUND => sound = Some(child),
                _ => {}
            }
        }
        let place = self.place(self.cursor, staff, voice, element.id());
        let moved = Place { at: place.at + self.offset_in(offset), ..place };
        for kind in element.children_named(Tag::DIRECTION_TYPE) {
            self.read_direction_type(kind, moved);
        }
        if let Some(sound) = sound {
            // An offset moves what is printed; the sound only when the file says so.
            let sounding = offset.is_some_and(|offset| offset.attribute("sound").as_deref() == Some("yes"));
            let at = if sounding { moved } else { place };
            self.read_sound(sound, at);
        }
    }

    fn offset_in(&mut self, offset: Option<Element<'_>>) -> Length {
        let ticks = offset.and_then(decimal_in);
        ticks.map_or(Length::ZERO, |ticks| self.clock.span(ticks))
    }

    fn read_direction_type(&mut self, element: Element<'_>, place: Place) {
        let mut texts = String::new();
        let mut texts_place = None;
        for child in element.children() {
            let place = Place { node: child.id(), ..place };
            match child.tag() {
                // Several <words> in a row are one text in several styles.
                Tag::WORDS | Tag::OTHER_DIRECTION => {
                    if !texts.is_empty() {
                        texts.push(' ');
                    }
                    texts.push_str(&child.text());
                    texts_place.get_or_insert(place);
                }
                Tag::DYNAMICS => self.read_dynamics(child, place),
                Tag::WEDGE => self.swells.extend(SwellMark::wedge(child, place)),
                Tag::DASHES => self.swells.extend(SwellMark::dashes(child, place)),
                Tag::METRONOME => self.read_metronome(child, place),
                Tag::REHEARSAL => self.shared.rehearsal(child),
                Tag::SEGNO => self.shared.jump(Jump::Segno),
                Tag::CODA => self.shared.jump(Jump::Coda),
                Tag::STRING_MUTE => self.read_string_mute(child, place),
                _ => {}
            }
        }
        if let Some(place) = texts_place {
            if place.at == Moment::START {
                self.shared.heading(&texts);
            }
            self.read_text(&texts, place);
        }
    }

    fn read_string_mute(&mut self, element: Element<'_>, place: Place) {
        let meaning = match element.attribute("type").as_deref() {
            Some("on") => Meaning::MuteOn,
            Some("off") => Meaning::MuteOff,
            _ => return,
        };
        self.instruct(place, meaning, "");
    }

    /// Takes up an instruction, unless words at the same place have just said it.
    pub(super) fn instruct(&mut self, place: Place, meaning: Meaning, text: &str) {
        let said = self.part.instructions.iter().rev().take_while(|known| known.place.bar == place.bar).any(
            |known| {
                known.meaning == meaning && known.place.at == place.at && known.place.staff == place.staff
            },
        );
        if !said || !text.is_empty() {
            self.part.instructions.push(Instruction { place, meaning, text: text.to_owned() });
        }
    }
}
