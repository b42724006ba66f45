//! One part from its first bar to its last: the cursor, and what is gathered on the way.
//!
//! While a part is read, moments count from the beginning of their bar: how long the bars before it are is
//! known only when every part has been read. [`finish`](super::finish) makes them absolute.

use arcata_xml::{Element, NodeId, Tag};
use rustc_hash::FxHashMap;

use super::barlines::SharedBar;
use super::bars::PartBar;
use super::clock::{Clock, DivisionsGiven};
use super::numbers::{decimal_in, integer_in};
use super::problems::{ProblemPlace, Problems};
use super::slurs::SlurMark;
use super::source::MeasureSource;
use super::swells::SwellMark;
use super::text::LevelStep;
use super::wavy::WavyMark;
use crate::{Length, Moment, Part, Place, ProblemKind, Tempo};

/// Whole notes that no single duration exceeds: a note of them lasts hours. The sum of all durations of a
/// file stays exact below it (a limit).
const LONGEST: i64 = 4096;

/// A part while it is read.
pub(super) struct PartReader {
    pub(super) part: Part,
    pub(super) index: u32,
    /// Index of the bar that is read.
    pub(super) bar: u32,
    pub(super) clock: Clock,
    /// Where the next note begins, from the beginning of the bar.
    pub(super) cursor: Length,
    /// The first note of this bar in the part's list.
    pub(super) first_note: usize,
    /// Whether the notes of this bar stand in the order of time.
    pub(super) order: NoteOrder,
    pub(super) this_bar: PartBar,
    pub(super) shared: SharedBar,
    voices: Voices,
    pub(super) slurs: Vec<SlurMark>,
    pub(super) waves: Vec<WavyMark>,
    pub(super) swells: Vec<SwellMark>,
    pub(super) tempos: Vec<Tempo>,
    pub(super) levels: Vec<LevelStep>,
    /// Notes whose tie leads nowhere on purpose.
    pub(super) ringing: Vec<u32>,
    /// Rests that last the bar, however long it is.
    pub(super) bar_rests: Vec<u32>,
    pub(super) bars: Vec<PartBar>,
    pub(super) shared_bars: Vec<SharedBar>,
    pub(super) problems: Problems,
}

/// Whether notes stand in the order of time.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum NoteOrder {
    /// As written.
    OfTime,
    /// A `<backup>` went back.
    Mixed,
}

/// The voices of a part by name.
#[derive(Debug, Default)]
struct Voices {
    /// Only looked up.
    known: FxHashMap<String, u16>,
    /// The one asked for last: voices come in runs.
    last: u16,
}

impl PartReader {
    pub(super) fn new(part: Part, index: u32) -> Self {
        Self {
            part,
            index,
            bar: 0,
            clock: Clock::new(),
            cursor: Length::ZERO,
            first_note: 0,
            order: NoteOrder::OfTime,
            this_bar: PartBar::default(),
            shared: SharedBar::default(),
            voices: Voices::default(),
            slurs: Vec::new(),
            waves: Vec::new(),
            swells: Vec::new(),
            tempos: Vec::new(),
            levels: Vec::new(),
            ringing: Vec::new(),
            bar_rests: Vec::new(),
            bars: Vec::new(),
            shared_bars: Vec::new(),
            problems: Problems::default(),
        }
    }

    /// Reads the next bar; `None` where the part has none.
    pub(super) fn read_bar(&mut self, source: Option<MeasureSource<'_>>) {
        self.cursor = Length::ZERO;
        self.order = NoteOrder::OfTime;
        self.first_note = self.part.notes.len();
        self.part.measures.push(source.map(|source| source.content.id()));
        if let Some(source) = source {
            self.shared.read_header(source.header);
            self.this_bar.node = Some(source.content.id());
            for child in source.content.children() {
                self.read_item(child);
            }
        }
        if self.order == NoteOrder::Mixed {
            self.sort_bar();
        }
        self.bars.push(std::mem::take(&mut self.this_bar));
        self.shared_bars.push(std::mem::take(&mut self.shared));
        self.bar += 1;
    }

    fn read_item(&mut self, child: Element<'_>) {
        match child.tag() {
            Tag::NOTE => self.read_note(child),
            Tag::BACKUP => self.go_back(child),
            Tag::FORWARD => self.go_on(child),
            Tag::DIRECTION => self.read_direction(child),
            Tag::ATTRIBUTES => self.read_attributes(child),
            Tag::PRINT => self.shared.read_print(child),
            Tag::BARLINE => self.shared.read_barline(child),
            Tag::SOUND => self.read_lone_sound(child),
            _ => {}
        }
    }

    fn go_back(&mut self, element: Element<'_>) {
        let Some(length) = self.duration_of(element) else { return };
        self.order = NoteOrder::Mixed;
        if length > self.cursor {
            let by = length - self.cursor;
            self.problem(
                ProblemKind::BackupBeforeBar,
                element.id(),
                format!("A <backup> goes back {by} of a whole note too far, before the bar begins; what follows is read from the beginning of the bar."),
            );
            self.cursor = Length::ZERO;
        } else {
            self.cursor = self.cursor - length;
        }
    }

    fn go_on(&mut self, element: Element<'_>) {
        let Some(length) = self.duration_of(element) else { return };
        self.cursor += length;
        self.this_bar.reach(self.cursor);
    }

    /// The `<duration>` of a backup or forward; a problem and `None` when it makes no sense.
    fn duration_of(&mut self, element: Element<'_>) -> Option<Length> {
        let length = element.child(Tag::DURATION).and_then(|duration| self.length_in(duration));
        match length {
            Some(length) if length >= Length::ZERO => Some(length),
            _ => {
                self.problem(
                    ProblemKind::Duration,
                    element.id(),
                    format!(
                        "A <{}> has no duration, or one that makes no sense; it is passed over.",
                        element.name()
                    ),
                );
                None
            }
        }
    }

    /// The ticks that an element holds, as a length; negative ones too, but none beyond all music.
    pub(super) fn length_in(&mut self, element: Element<'_>) -> Option<Length> {
        self.miss_divisions(element);
        let length = match integer_in(element) {
            Some(ticks) => self.clock.whole_span(ticks),
            None => self.clock.span(decimal_in(element)?),
        };
        (-LONGEST..=LONGEST).contains(&length.floor()).then_some(length)
    }

    /// Says once that the file has not told what a duration counts.
    fn miss_divisions(&mut self, element: Element<'_>) {
        if *self.clock.given() == DivisionsGiven::No {
            *self.clock.given() = DivisionsGiven::Reported;
            self.problem(
                ProblemKind::Divisions,
                element.id(),
                "A duration comes before any <divisions> says what it counts; it is taken from the first note value, or as a quarter note.",
            );
        }
    }

    /// Works out missing divisions from a note whose value is drawn.
    pub(super) fn infer_divisions(&mut self, duration: Element<'_>, drawn: Length) {
        if *self.clock.given() == DivisionsGiven::No {
            self.miss_divisions(duration);
            let ticks = decimal_in(duration).filter(|ticks| ticks.is_positive());
            let quarters = drawn.in_units_of(Length::QUARTER);
            if let Some(divisions) =
                ticks.zip(quarters).and_then(|(ticks, quarters)| ticks.in_units_of(quarters))
            {
                self.clock.set(divisions);
            }
        }
    }

    /// The index of a voice by its name.
    pub(super) fn voice(&mut self, name: &str) -> u16 {
        let Voices { known, last } = &mut self.voices;
        if self.part.voices.get(usize::from(*last)).is_some_and(|voice| voice == name) {
            return *last;
        }
        *last = match known.get(name) {
            Some(index) => *index,
            // More voices than this are no music: the rest share the last one.
            None if self.part.voices.len() > usize::from(u16::MAX) => u16::MAX,
            None => {
                let index = self.part.voices.len() as u16;
                self.part.voices.push(name.to_owned());
                known.insert(name.to_owned(), index);
                index
            }
        };
        *last
    }

    /// A place in this bar.
    pub(super) fn place(&self, at: Length, staff: u8, voice: Option<u16>, node: NodeId) -> Place {
        Place { at: Moment(at), bar: self.bar, staff, voice, node }
    }

    pub(super) fn problem(&mut self, kind: ProblemKind, node: NodeId, message: impl Into<String>) {
        let place = ProblemPlace { node: Some(node), part: Some(self.index), bar: Some(self.bar) };
        self.problems.add(kind, place, message);
    }

    /// Puts the notes of this bar in the order of time, equals as the document has them, and lets
    /// everything that refers to them follow.
    fn sort_bar(&mut self) {
        let first = self.first_note;
        let notes = &mut self.part.notes[first..];
        if notes.is_sorted_by_key(|note| note.onset) {
            return;
        }
        let mut order: Vec<u32> = (0..notes.len() as u32).collect();
        order.sort_by_key(|old| notes[*old as usize].onset);
        let mut new_of_old = vec![0_u32; order.len()];
        for (new, old) in order.iter().enumerate() {
            new_of_old[*old as usize] = (first + new) as u32;
        }
        notes.sort_by_key(|note| note.onset);
        let moved = |note: &mut u32| {
            if let Some(old) = (*note as usize).checked_sub(first) {
                *note = new_of_old[old];
            }
        };
        let bar = self.bar;
        for mark in self.slurs.iter_mut().rev().take_while(|mark| mark.bar == bar) {
            moved(&mut mark.note);
            moved(&mut mark.head);
        }
        for mark in self.waves.iter_mut().rev().take_while(|mark| mark.note as usize >= first) {
            moved(&mut mark.note);
        }
        for list in [&mut self.ringing, &mut self.bar_rests] {
            list.iter_mut().rev().take_while(|note| **note as usize >= first).for_each(moved);
        }
    }
}
