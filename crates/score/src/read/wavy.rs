//! Wavy lines: a trill that goes on over several notes.

use arcata_xml::Element;

use crate::{Note, Ornament};

/// One end of a wavy line.
#[derive(Clone, Copy, Debug)]
pub(super) struct WavyMark {
    /// The note that carries it.
    pub(super) note: u32,
    number: u8,
    end: WavyEnd,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum WavyEnd {
    Start,
    Stop,
}

impl WavyMark {
    pub(super) fn read(element: Element<'_>, note: u32) -> Option<Self> {
        let end = match element.attribute("type").as_deref() {
            Some("start") => WavyEnd::Start,
            Some("stop") => WavyEnd::Stop,
            _ => return None,
        };
        let number = element.attribute("number").and_then(|number| number.parse().ok()).unwrap_or(1);
        Some(Self { note, number, end })
    }
}

/// Trills every note of the same voice under a wavy line that has both ends.
pub(super) fn trill_under_waves(notes: &mut [Note], marks: &[WavyMark]) {
    let mut open: Vec<WavyMark> = Vec::new();
    for mark in marks {
        let same = |other: &WavyMark| {
            other.number == mark.number && notes[other.note as usize].voice == notes[mark.note as usize].voice
        };
        let before = open.iter().rposition(same).map(|index| open.remove(index));
        match (mark.end, before) {
            (WavyEnd::Start, _) => {
                trill(&mut notes[mark.note as usize]);
                open.push(*mark);
            }
            (WavyEnd::Stop, Some(start)) if start.note <= mark.note => {
                let voice = notes[mark.note as usize].voice;
                let under = &mut notes[start.note as usize..=mark.note as usize];
                under.iter_mut().filter(|note| note.voice == voice).for_each(trill);
            }
            (WavyEnd::Stop, _) => {}
        }
    }
}

fn trill(note: &mut Note) {
    if note.ornament.is_none() && !note.pitch.is_rest() {
        note.ornament = Some(Ornament::Trill);
    }
}
