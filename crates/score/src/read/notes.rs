//! `<note>`: pitch, time and what is drawn.

use arcata_xml::{Element, NodeId, Tag};

use super::numbers::{decimal_in, integer_in};
use super::part_reader::PartReader;
use crate::{
    Articulations, ChordRole, Length, Note, NoteKind, NoteValue, Notehead, Pitch, ProblemKind, Technical,
    Tie, TieEnd,
};

/// What the children of a `<note>` say.
struct NoteFacts<'d> {
    pitch: Option<Pitch>,
    rest: RestKind,
    kind: NoteKind,
    chord: ChordRole,
    duration: Option<Element<'d>>,
    voice: Option<Element<'d>>,
    staff: u8,
    base: Option<Length>,
    dots: u8,
    actual: u16,
    normal: u16,
    tie: Tie,
    notehead: Notehead,
    notations: Option<Element<'d>>,
}

/// Whether a rest fills its bar.
#[derive(Clone, Copy, PartialEq, Eq)]
enum RestKind {
    Timed,
    WholeBar,
}

impl PartReader {
    pub(super) fn read_note(&mut self, element: Element<'_>) {
        let mut facts = self.note_facts(element);
        let is_printed = element.attribute("print-object").is_none_or(|print| print != "no");
        // Neither head nor stem: there is nothing to see.
        let on_page = is_printed && !(is_none(element, Tag::NOTEHEAD) && is_none(element, Tag::STEM));
        let is_hidden = !on_page && !facts.pitch.is_some_and(Pitch::is_rest);
        if is_hidden {
            if facts.chord == ChordRole::Member
                || facts.kind != NoteKind::Ordinary && facts.duration.is_none()
            {
                return;
            }
            // Nobody reads it: its time passes, as in a rest.
            (facts.pitch, facts.tie, facts.notehead) =
                (Some(Pitch::Rest), Tie::default(), Notehead::Ordinary);
        }
        let written = facts.base.map(|base| NoteValue {
            base,
            dots: facts.dots,
            actual: facts.actual,
            normal: facts.normal,
        });
        let voice = match facts.voice {
            Some(voice) => self.voice(&voice.text()),
            None => self.voice("1"),
        };
        let length = self.note_length(element, &facts, written);
        let index = self.part.notes.len();
        let (onset, chord) = match (facts.chord, self.part.notes[self.first_note..].last()) {
            (ChordRole::Member, Some(main)) => {
                // Of a chord whose first note is hidden the next one leads.
                let leads = main.pitch.is_rest() && main.chord == ChordRole::Main;
                let role = if leads { ChordRole::Main } else { ChordRole::Member };
                (main.onset.since_start(), role)
            }
            _ => (self.cursor, ChordRole::Main),
        };
        self.part.notes.push(Note {
            onset: crate::Moment(onset),
            length,
            bar: self.bar,
            staff: facts.staff,
            voice,
            pitch: facts.pitch.unwrap_or(Pitch::Unpitched),
            kind: facts.kind,
            chord,
            written,
            tie: facts.tie,
            notehead: facts.notehead,
            on_page,
            ..blank(element.id())
        });
        if facts.pitch.is_none() {
            self.problem(
                ProblemKind::Pitch,
                element.id(),
                "A note has no pitch that can be read; it counts in time only.",
            );
        }
        let moves_on = if facts.chord == ChordRole::Member && index > self.first_note {
            ChordRole::Member
        } else {
            chord
        };
        self.advance(onset + length, moves_on, facts.rest, index as u32);
        if facts.notations.is_some() {
            for notations in element.children_named(Tag::NOTATIONS) {
                self.read_notations(notations, index);
            }
        }
        if is_hidden {
            // The ends of slurs stay: the slur is printed, and goes to the nearest note that is.
            let note = &mut self.part.notes[index];
            *note = Note {
                articulations: Articulations::default(),
                bow_mark: None,
                more_bow_marks: Vec::new(),
                tremolo: None,
                ornament: None,
                fermata: crate::Fermata::None,
                arpeggio: crate::Arpeggio::None,
                technical: Technical::default(),
                tie: Tie::default(),
                ..note.clone()
            };
        }
    }

    fn advance(&mut self, end: Length, chord: ChordRole, rest: RestKind, note: u32) {
        if chord == ChordRole::Main {
            self.cursor = end;
        }
        if rest == RestKind::WholeBar {
            self.bar_rests.push(note);
            self.this_bar.rest_until(end);
        } else {
            self.this_bar.reach(end);
            self.this_bar.note_written();
        }
    }

    fn note_facts<'d>(&mut self, element: Element<'d>) -> NoteFacts<'d> {
        let mut facts = NoteFacts {
            pitch: None,
            rest: RestKind::Timed,
            kind: NoteKind::Ordinary,
            chord: ChordRole::Main,
            duration: None,
            voice: None,
            staff: 1,
            base: None,
            dots: 0,
            actual: 1,
            normal: 1,
            tie: Tie::default(),
            notehead: Notehead::Ordinary,
            notations: None,
        };
        for child in element.children() {
            match child.tag() {
                Tag::PITCH => facts.pitch = read_pitch(child),
                Tag::UNPITCHED => facts.pitch = Some(Pitch::Unpitched),
                Tag::REST => {
                    facts.pitch = Some(Pitch::Rest);
                    if child.attribute("measure").as_deref() == Some("yes") {
                        facts.rest = RestKind::WholeBar;
                    }
                }
                Tag::DURATION => facts.duration = Some(child),
                Tag::VOICE => facts.voice = Some(child),
                Tag::STAFF => facts.staff = staff_in(child).unwrap_or(1),
                Tag::TYPE => facts.base = base_value(&child.text()),
                Tag::DOT => facts.dots = facts.dots.saturating_add(1),
                Tag::TIME_MODIFICATION => (facts.actual, facts.normal) = time_modification(child),
                Tag::CHORD => facts.chord = ChordRole::Member,
                Tag::GRACE if facts.kind != NoteKind::Cue => facts.kind = grace_kind(child),
                Tag::CUE => facts.kind = NoteKind::Cue,
                Tag::TIE => mark_tie(&mut facts.tie, child),
                Tag::NOTEHEAD => facts.notehead = notehead(&child.text()),
                Tag::NOTATIONS => facts.notations = Some(child),
                _ => {}
            }
        }
        facts
    }

    /// How long a note lasts: by its duration, else by what is drawn, else no time.
    fn note_length(
        &mut self,
        element: Element<'_>,
        facts: &NoteFacts<'_>,
        written: Option<NoteValue>,
    ) -> Length {
        let grace = matches!(facts.kind, NoteKind::Grace | NoteKind::SlashedGrace);
        if grace || (facts.kind == NoteKind::Cue && facts.duration.is_none()) {
            return Length::ZERO;
        }
        let drawn = written.map(NoteValue::length);
        if let (Some(duration), Some(drawn)) = (facts.duration, drawn.filter(|drawn| drawn.is_positive())) {
            self.infer_divisions(duration, drawn);
        }
        let told = facts.duration.and_then(|duration| self.length_in(duration));
        match told {
            Some(length) if length.is_positive() => {
                if let Some(drawn) = drawn.filter(|drawn| *drawn != length) {
                    self.compare_with_drawn(element, facts, length, drawn);
                }
                length
            }
            _ if facts.rest == RestKind::WholeBar => Length::ZERO,
            _ => {
                let length = drawn.unwrap_or(Length::ZERO);
                let taken = match drawn {
                    Some(_) => "its note value is taken",
                    None => "it takes no time",
                };
                let what = if facts.duration.is_none() { "is missing" } else { "makes no sense" };
                self.problem(
                    ProblemKind::Duration,
                    element.id(),
                    format!("The duration of a note {what}; {taken}."),
                );
                length
            }
        }
    }

    fn compare_with_drawn(
        &mut self,
        element: Element<'_>,
        facts: &NoteFacts<'_>,
        told: Length,
        drawn: Length,
    ) {
        let difference = if told > drawn { told - drawn } else { drawn - told };
        // Where the divisions are too coarse for a tuplet, writers round to the next tick. A whole rest
        // stands for a bar of any length. Two notes that alternate are drawn with twice their value.
        let rounded = difference < self.clock.tick();
        let bar_rest = facts.pitch == Some(Pitch::Rest) && drawn >= Length::WHOLE;
        if rounded || bar_rest || facts.kind == NoteKind::Cue || alternates(facts.notations) {
            return;
        }
        self.problem(
            ProblemKind::ValueContradictsDuration,
            element.id(),
            format!(
                "A note is drawn as {drawn} of a whole note, but its duration is {told}; the duration is taken."
            ),
        );
    }
}

fn alternates(notations: Option<Element<'_>>) -> bool {
    let tremolo = notations
        .and_then(|notations| notations.child(Tag::ORNAMENTS))
        .and_then(|ornaments| ornaments.child(Tag::TREMOLO));
    tremolo.is_some_and(|tremolo| matches!(tremolo.attribute("type").as_deref(), Some("start" | "stop")))
}

/// A note of which nothing but its element is known.
fn blank(node: NodeId) -> Note {
    Note {
        node,
        onset: crate::Moment::START,
        length: Length::ZERO,
        bar: 0,
        staff: 1,
        voice: 0,
        pitch: Pitch::Unpitched,
        kind: NoteKind::Ordinary,
        chord: ChordRole::Main,
        written: None,
        tie: Tie::default(),
        articulations: Articulations::default(),
        bow_mark: None,
        more_bow_marks: Vec::new(),
        tremolo: None,
        ornament: None,
        fermata: crate::Fermata::None,
        arpeggio: crate::Arpeggio::None,
        technical: Technical::default(),
        notehead: Notehead::Ordinary,
        on_page: true,
    }
}

fn read_pitch(element: Element<'_>) -> Option<Pitch> {
    let (mut step, mut alter, mut octave) = (None, 0_i16, None);
    for child in element.children() {
        match child.tag() {
            Tag::STEP => step = step_number(&child.text()),
            Tag::ALTER => {
                let cents = decimal_in(child)?.scaled(100, 1).floor();
                alter = i16::try_from(cents).ok().filter(|cents| cents.abs() <= 1200)?;
            }
            Tag::OCTAVE => octave = integer_in(child).and_then(|octave| i8::try_from(octave).ok()),
            _ => {}
        }
    }
    Some(Pitch::Pitched { step: step?, alter, octave: octave? })
}

fn step_number(text: &str) -> Option<u8> {
    ["C", "D", "E", "F", "G", "A", "B"].iter().position(|step| *step == text).map(|step| step as u8)
}

pub(super) fn staff_in(element: Element<'_>) -> Option<u8> {
    integer_in(element).and_then(|staff| u8::try_from(staff).ok()).filter(|staff| *staff > 0)
}

fn grace_kind(element: Element<'_>) -> NoteKind {
    match element.attribute("slash").as_deref() {
        Some("yes") => NoteKind::SlashedGrace,
        _ => NoteKind::Grace,
    }
}

fn time_modification(element: Element<'_>) -> (u16, u16) {
    let number = |tag| {
        element
            .child(tag)
            .and_then(integer_in)
            .and_then(|number| u16::try_from(number).ok())
            .filter(|number| *number > 0)
    };
    match (number(Tag::ACTUAL_NOTES), number(Tag::NORMAL_NOTES)) {
        (Some(actual), Some(normal)) => (actual, normal),
        _ => (1, 1),
    }
}

/// Takes one end of a tie from a `<tie>` or `<tied>`; partners are found when the part is complete.
pub(super) fn mark_tie(tie: &mut Tie, element: Element<'_>) {
    match element.attribute("type").as_deref() {
        Some("start") => tie.to_after = TieEnd::Open,
        Some("stop") => tie.from_before = TieEnd::Open,
        Some("continue") => *tie = Tie { from_before: TieEnd::Open, to_after: TieEnd::Open },
        _ => {}
    }
}

/// Whether the note says that it has no such part.
fn is_none(note: Element<'_>, part: Tag) -> bool {
    note.child(part).is_some_and(|child| child.text().trim() == "none")
}

fn notehead(text: &str) -> Notehead {
    match text {
        "x" | "cross" | "circle-x" => Notehead::Cross,
        "diamond" => Notehead::Diamond,
        _ => Notehead::Ordinary,
    }
}

/// The undotted value behind a name of `<type>` or `<beat-unit>`.
pub(super) fn base_value(name: &str) -> Option<Length> {
    let (numerator, denominator) = match name {
        "quarter" => (1, 4),
        "eighth" => (1, 8),
        "16th" => (1, 16),
        "half" => (1, 2),
        "32nd" => (1, 32),
        "whole" => (1, 1),
        "64th" => (1, 64),
        "128th" => (1, 128),
        "256th" => (1, 256),
        "512th" => (1, 512),
        "1024th" => (1, 1024),
        "breve" => (2, 1),
        "long" => (4, 1),
        "maxima" => (8, 1),
        _ => return None,
    };
    Some(Length::new(numerator, denominator))
}
