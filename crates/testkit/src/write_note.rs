//! Writes one note, chord or rest.

use crate::marks::{FixtureMark, MarkHome};
use crate::model::{ChordNote, FixtureEvent, FixtureSound, Grace, TupletEdge, WrittenPitch, WrittenValue};
use crate::write::PartWriter;

pub(crate) fn write(out: &mut String, part: &PartWriter<'_>, event: &FixtureEvent) {
    match &event.sound {
        FixtureSound::Notes(notes) => {
            for (index, note) in notes.iter().enumerate() {
                write_element(out, part, event, Some((index, note)));
            }
        }
        FixtureSound::Rest | FixtureSound::BarRest => write_element(out, part, event, None),
        FixtureSound::Gap => {}
    }
}

/// One `note` element; `note` is the member of the chord, none for a rest.
fn write_element(
    out: &mut String,
    part: &PartWriter<'_>,
    event: &FixtureEvent,
    note: Option<(usize, &ChordNote)>,
) {
    out.push_str("      <note>");
    match event.grace {
        Some(Grace::Plain) => out.push_str("<grace/>"),
        Some(Grace::Slashed) => out.push_str("<grace slash=\"yes\"/>"),
        None => {}
    }
    if event.is_cue() {
        out.push_str("<cue/>");
    }
    match note {
        Some((index, note)) => {
            if index > 0 {
                out.push_str("<chord/>");
            }
            out.push_str(&pitch_xml(note.pitch));
        }
        None if matches!(event.sound, FixtureSound::BarRest) => out.push_str("<rest measure=\"yes\"/>"),
        None => out.push_str("<rest/>"),
    }
    if event.grace.is_none() {
        out.push_str(&format!("<duration>{}</duration>", part.duration(event.settled.length)));
    }
    if let Some((_, note)) = note.filter(|_| !event.is_cue()) {
        out.push_str(&ties(note, "tie"));
    }
    out.push_str(&format!("<voice>{}</voice>", event.settled.voice));
    if !matches!(event.sound, FixtureSound::BarRest) {
        let dots = usize::try_from(event.value.dots).unwrap_or_default();
        out.push_str(&format!("<type>{}</type>{}", event.value.name(), "<dot/>".repeat(dots)));
    }
    out.push_str(&time_modification(event));
    if event.marks.iter().any(|mark| mark.home == MarkHome::CrossHead) {
        out.push_str("<notehead>x</notehead>");
    }
    out.push_str(&part.staff(event.staff));
    let notations = notations(event, note);
    if !notations.is_empty() {
        out.push_str(&format!("<notations>{notations}</notations>"));
    }
    out.push_str("</note>\n");
}

fn pitch_xml(pitch: WrittenPitch) -> String {
    let alter = if pitch.alter == 0 { String::new() } else { format!("<alter>{}</alter>", pitch.alter) };
    format!("<pitch><step>{}</step>{alter}<octave>{}</octave></pitch>", pitch.step, pitch.octave)
}

/// The ends of ties at a note, as `tie` for the sound or `tied` for the eye.
fn ties(note: &ChordNote, element: &str) -> String {
    let mut out = String::new();
    if note.tied_from {
        out.push_str(&format!("<{element} type=\"stop\"/>"));
    }
    if note.tied_on {
        out.push_str(&format!("<{element} type=\"start\"/>"));
    }
    out
}

fn time_modification(event: &FixtureEvent) -> String {
    if event.tuplets.is_empty() {
        return String::new();
    }
    let actual: u32 = event.tuplets.iter().map(|tuplet| tuplet.actual).product();
    let normal: u32 = event.tuplets.iter().map(|tuplet| tuplet.normal).product();
    format!(
        "<time-modification><actual-notes>{actual}</actual-notes><normal-notes>{normal}</normal-notes></time-modification>"
    )
}

/// Slurs, tuplets and marks are written on the first note of a chord, ties and arpeggios on each.
fn notations(event: &FixtureEvent, note: Option<(usize, &ChordNote)>) -> String {
    let mut out = String::new();
    if let Some((_, note)) = note {
        out.push_str(&ties(note, "tied"));
    }
    let first = note.is_none_or(|(index, _)| index == 0);
    if first {
        for number in &event.slur_stops {
            out.push_str(&format!("<slur number=\"{number}\" type=\"stop\"/>"));
        }
        for number in &event.slur_starts {
            out.push_str(&format!("<slur number=\"{number}\" type=\"start\"/>"));
        }
        for edge in &event.tuplet_edges {
            let (number, kind) = match edge {
                TupletEdge::Start(number) => (number, "start"),
                TupletEdge::Stop(number) => (number, "stop"),
            };
            out.push_str(&format!("<tuplet number=\"{number}\" type=\"{kind}\"/>"));
        }
        out.push_str(&gathered(&event.marks, MarkHome::Ornaments, "ornaments"));
        out.push_str(&gathered(&event.marks, MarkHome::Technical, "technical"));
        out.push_str(&gathered(&event.marks, MarkHome::Articulations, "articulations"));
        out.push_str(&gathered(&event.marks, MarkHome::Dynamics, "dynamics"));
        out.push_str(&plain(&event.marks, MarkHome::Notations));
    }
    out.push_str(&plain(&event.marks, MarkHome::EveryNote));
    out
}

fn plain(marks: &[FixtureMark], home: MarkHome) -> String {
    marks.iter().filter(|mark| mark.home == home).map(|mark| mark.xml.as_str()).collect()
}

fn gathered(marks: &[FixtureMark], home: MarkHome, element: &str) -> String {
    let inside = plain(marks, home);
    if inside.is_empty() { inside } else { format!("<{element}>{inside}</{element}>") }
}

impl WrittenValue {
    /// The value's name in MusicXML.
    pub(crate) fn name(self) -> &'static str {
        match self.denominator {
            1 => "whole",
            2 => "half",
            4 => "quarter",
            8 => "eighth",
            16 => "16th",
            32 => "32nd",
            64 => "64th",
            _ => "128th",
        }
    }
}
