//! `<notations>`: what is written about a single note.

use arcata_xml::{Element, Tag};

use super::notes::mark_tie;
use super::numbers::integer_in;
use super::part_reader::PartReader;
use super::slurs::SlurMark;
use super::wavy::WavyMark;
use crate::{
    Arpeggio, Articulation, BowDirection, BowMark, Fermata, Harmonic, Note, NoteId, OpenString, Ornament,
    Plucked, SlurEnd, SlurLine, TieEnd, Tremolo, TremoloRole,
};

impl PartReader {
    /// Reads one `<notations>` of the note at `index`.
    pub(super) fn read_notations(&mut self, element: Element<'_>, index: usize) {
        for child in element.children() {
            match child.tag() {
                Tag::SLUR => self.read_slur(child, index),
                Tag::TIED => self.read_tied(child, index),
                Tag::ARTICULATIONS => {
                    let note = &mut self.part.notes[index];
                    child.children().filter_map(|mark| Articulation::of_tag(mark.tag())).for_each(|mark| {
                        note.articulations = note.articulations.with(mark);
                    });
                }
                Tag::TECHNICAL => {
                    let note = &mut self.part.notes[index];
                    child.children().for_each(|mark| read_technical(note, mark));
                }
                Tag::ORNAMENTS => self.read_ornaments(child, index),
                Tag::FERMATA => self.part.notes[index].fermata = Fermata::Held,
                Tag::ARPEGGIATE => self.part.notes[index].arpeggio = Arpeggio::Rolled,
                Tag::NON_ARPEGGIATE => self.part.notes[index].arpeggio = Arpeggio::NotRolled,
                Tag::DYNAMICS => {
                    let note = &self.part.notes[index];
                    let place =
                        self.place(note.onset.since_start(), note.staff, Some(note.voice), child.id());
                    self.read_dynamics(child, place);
                }
                _ => {}
            }
        }
    }

    fn read_slur(&mut self, element: Element<'_>, index: usize) {
        let (mut number, mut end, mut line) = (1, None, SlurLine::Solid);
        for attribute in element.attributes() {
            match (attribute.name(), attribute.raw_value()) {
                ("type", "start") => end = Some(SlurEnd::Start),
                ("type", "stop") => end = Some(SlurEnd::Stop),
                ("number", value) => number = value.trim().parse().unwrap_or(1),
                ("line-type", "dashed" | "dotted") => line = SlurLine::Broken,
                _ => {}
            }
        }
        // `continue` only shapes the curve where a system breaks.
        if let Some(end) = end {
            let head = self.part.chord_head(NoteId(index as u32)).0;
            self.slurs.push(SlurMark {
                note: index as u32,
                head,
                bar: self.bar,
                number,
                end,
                line,
                node: element.id(),
            });
        }
    }

    fn read_tied(&mut self, element: Element<'_>, index: usize) {
        let tie = &mut self.part.notes[index].tie;
        if element.attribute("type").as_deref() == Some("let-ring") {
            tie.to_after = TieEnd::Open;
            self.ringing.push(index as u32);
        } else {
            mark_tie(tie, element);
        }
    }

    fn read_ornaments(&mut self, element: Element<'_>, index: usize) {
        for child in element.children() {
            let ornament = match child.tag() {
                Tag::TREMOLO => {
                    self.part.notes[index].tremolo = Some(read_tremolo(child));
                    continue;
                }
                Tag::WAVY_LINE => {
                    self.waves.extend(WavyMark::read(child, index as u32));
                    continue;
                }
                Tag::TRILL_MARK => Ornament::Trill,
                Tag::TURN
                | Tag::DELAYED_TURN
                | Tag::INVERTED_TURN
                | Tag::DELAYED_INVERTED_TURN
                | Tag::VERTICAL_TURN
                | Tag::INVERTED_VERTICAL_TURN => Ornament::Turn,
                Tag::MORDENT | Tag::INVERTED_MORDENT => Ornament::Mordent,
                Tag::SHAKE | Tag::SCHLEIFER | Tag::HAYDN | Tag::OTHER_ORNAMENT => Ornament::Other,
                _ => continue,
            };
            let known = &mut self.part.notes[index].ornament;
            // Of two ornaments the first keeps its place, unless it was one that says nothing.
            if matches!(known, None | Some(Ornament::Other)) {
                *known = Some(ornament);
            }
        }
    }
}

fn read_technical(note: &mut Note, mark: Element<'_>) {
    let technical = &mut note.technical;
    match mark.tag() {
        Tag::DOWN_BOW => add_bow_mark(note, BowMark { direction: BowDirection::Down, node: mark.id() }),
        Tag::UP_BOW => add_bow_mark(note, BowMark { direction: BowDirection::Up, node: mark.id() }),
        Tag::HARMONIC if mark.child(Tag::ARTIFICIAL).is_some() => technical.harmonic = Harmonic::Artificial,
        Tag::HARMONIC => technical.harmonic = Harmonic::Natural,
        Tag::OPEN_STRING => technical.open_string = OpenString::Written,
        Tag::STRING => {
            technical.string = integer_in(mark).and_then(|string| u8::try_from(string).ok()).unwrap_or(0);
        }
        Tag::SNAP_PIZZICATO => technical.plucked = Plucked::Snap,
        // The + of MusicXML: on a bowed string it means the left hand plucks.
        Tag::STOPPED => technical.plucked = Plucked::LeftHand,
        _ => {}
    }
}

fn add_bow_mark(note: &mut Note, mark: BowMark) {
    match note.bow_mark {
        None => note.bow_mark = Some(mark),
        Some(_) => note.more_bow_marks.push(mark),
    }
}

fn read_tremolo(element: Element<'_>) -> Tremolo {
    let (role, unmeasured) = match element.attribute("type").as_deref() {
        Some("start") => (TremoloRole::PairStart, false),
        Some("stop") => (TremoloRole::PairStop, false),
        Some("unmeasured") => (TremoloRole::Single, true),
        _ => (TremoloRole::Single, false),
    };
    let beams = integer_in(element).and_then(|beams| u8::try_from(beams).ok()).unwrap_or(0);
    Tremolo { beams: if unmeasured { 0 } else { beams.min(8) }, role }
}
