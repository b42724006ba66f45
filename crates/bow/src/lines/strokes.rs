//! Strokes from events.

use arcata_score::{Arpeggio, Articulation, Fermata, Length, Ornament, Part, TieEnd, TremoloRole};

use super::bows::{Going, goings};
use super::events::{Event, Events, Sounding, TieInto, events};
use super::voices::Group;
use super::{Reading, repeats};
use crate::emphasis::Emphases;
use crate::loudness::LoudnessCurve;
use crate::phrase;
use crate::profile::{Homes, SpeedTable, milliseconds};
use crate::techniques::Techniques;
use crate::{
    BowInterval, Emphasis, Force, Join, Line, Loudness, PhrasePlace, Seconds, Stroke, StrokeKind, Written,
};

/// What the strokes of a line are made from.
pub(super) struct Material<'a> {
    pub(super) reading: &'a Reading<'a>,
    pub(super) part_index: usize,
    pub(super) part: &'a Part,
    pub(super) staff: u8,
    pub(super) force: Force,
    pub(super) techniques: &'a Techniques,
    pub(super) speeds: &'a SpeedTable,
}

/// The events of one stroke: `first..end`.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Extent {
    pub(crate) first: usize,
    pub(crate) end: usize,
}

/// A stroke takes this share of the hair before it may live anywhere, percent.
const LONG_SHARE: i64 = 60;

pub(super) fn line(material: &Material<'_>, group: &Group) -> Line {
    let Material { reading, part, part_index, staff, .. } = *material;
    let mut events = events(part, staff, group, material.techniques);
    let phrase_marks = &reading.options.phrase_marks;
    let goings = goings(part, &mut events, |slur| phrase_marks.contains(&(part_index, slur)));
    let curve = LoudnessCurve::new(reading.score, part, staff, &group.voices, reading.profile);
    let mut maker = Maker { material, events: &events, goings: &goings, curve: &curve };
    let extents = maker.extents();
    let mut strokes = maker.strokes(&extents);
    Emphases::new(reading.score, part, &events.list, &curve).fill(&extents, &mut strokes);
    phrase::fill(reading.score, &events.list, &extents, &mut strokes);
    maker.homes(&mut strokes);
    Line {
        part: part_index,
        staff,
        voices: group.voices.clone(),
        name: part.name.clone(),
        instrument: part.instrument,
        force: material.force,
        repeats: repeats::stretches(reading.score, &reading.tempo, &strokes),
        tempo_written: strokes.first().map_or(Written::Assumed, |stroke| reading.tempo.written(stroke.onset)),
        strokes,
    }
}

struct Maker<'a> {
    material: &'a Material<'a>,
    events: &'a Events,
    goings: &'a [Going],
    curve: &'a LoudnessCurve,
}

impl Maker<'_> {
    /// The bowed events, cut into strokes.
    fn extents(&mut self) -> Vec<Extent> {
        let mut extents: Vec<Extent> = Vec::new();
        for (index, event) in self.events.list.iter().enumerate() {
            if event.stroke == Sounding::Otherwise {
                continue;
            }
            match extents.last_mut() {
                Some(last) if self.goings[index] != Going::Anew && last.end == index => last.end = index + 1,
                _ => extents.push(Extent { first: index, end: index + 1 }),
            }
        }
        extents
    }

    fn strokes(&self, extents: &[Extent]) -> Vec<Stroke> {
        let mut strokes: Vec<Stroke> = Vec::with_capacity(extents.len());
        for (index, extent) in extents.iter().enumerate() {
            let before = index.checked_sub(1).map(|before| (extents[before], &strokes[before]));
            let stroke = self.stroke(*extent, extents.get(index + 1).copied(), before);
            strokes.push(stroke);
        }
        strokes
    }

    fn stroke(&self, extent: Extent, next: Option<Extent>, before: Option<(Extent, &Stroke)>) -> Stroke {
        let reading = self.material.reading;
        let events = &self.events.list[extent.first..extent.end];
        let (first, last) = (&events[0], &events[events.len() - 1]);
        let kind = kind(events, &self.goings[extent.first..extent.end]);
        let held: i64 = events.iter().map(|event| self.held_longer(event)).sum();
        let duration = reading.tempo.between(first.onset, last.end).micros + held;
        let attack = self.curve.attack(first.onset);
        let begun = self.curve.begun(first.onset);
        let level_start = attack.map_or(begun, |attack| attack.loudness);
        let level_end = self.curve.reached(last.end);
        // After a loud attack most of the stroke is at the level that follows.
        let level = match attack {
            Some(_) => (level_start.0 + 3 * level_end.0) / 4,
            None => i32::midpoint(level_start.0, level_end.0),
        };
        Stroke {
            notes: events.iter().flat_map(|event| event.notes.iter().copied()).collect(),
            onset: first.onset,
            length: last.end - first.onset,
            bar: first.bar,
            offset: reading.score.offset_in_bar(first.onset, first.bar),
            duration: Seconds::from_micros(duration),
            silence_after: self.silence_after(last, next),
            lendable: self.lendable(last),
            kind,
            join: self.join(extent, before),
            printed: first.printed,
            emphasis: Emphasis::default(),
            level_start,
            level_end,
            speed: self.material.speeds.window(Loudness(level)),
            home: BowInterval::ANYWHERE,
            note_count: attacks(events),
            phrase: PhrasePlace::default(),
        }
    }

    /// By how much a fermata lengthens an event, microseconds.
    fn held_longer(&self, event: &Event) -> i64 {
        match event.fermata {
            Fermata::None => 0,
            Fermata::Held => self.longer(self.material.reading.tempo.between(event.onset, event.end)),
        }
    }

    fn longer(&self, plain: Seconds) -> i64 {
        plain.micros * (self.material.reading.profile.assumed.fermata.value - 100).max(0) / 100
    }

    fn silence_after(&self, last: &Event, next: Option<Extent>) -> Seconds {
        let reading = self.material.reading;
        let until = next.map_or_else(|| reading.score.end(), |next| self.events.list[next.first].onset);
        let until = until.max(last.end);
        let rests = &self.events.held_rests;
        let held = rests[rests.partition_point(|(onset, _)| *onset < last.end)..]
            .iter()
            .take_while(|(onset, _)| *onset < until)
            .map(|(onset, length)| self.longer(reading.tempo.between(*onset, *onset + *length)))
            .sum::<i64>();
        let caesura = if last.articulations.has(Articulation::Caesura) {
            milliseconds(reading.profile.times.caesura.value).micros
        } else {
            0
        };
        Seconds::from_micros(reading.tempo.between(last.end, until).micros + held + caesura)
    }

    /// What the last note of a stroke may give to a lift.
    fn lendable(&self, last: &Event) -> Seconds {
        let reading = self.material.reading;
        let times = &reading.profile.times;
        let tied_on = last
            .notes
            .iter()
            .any(|id| matches!(self.material.part.note(*id).tie.to_after, TieEnd::Joined(_)));
        let has = |mark| last.articulations.has(mark);
        let percent = if is_short(last) || is_accented(last) || has(Articulation::Breath) {
            times.short_share.value
        } else if tied_on || has(Articulation::Tenuto) {
            0
        } else {
            times.plain_share.value
        };
        let note = reading.tempo.between(last.onset, last.end).micros + self.held_longer(last);
        Seconds::from_micros(note * percent / 100)
    }

    fn join(&self, extent: Extent, before: Option<(Extent, &Stroke)>) -> Join {
        let Some((before_extent, before)) = before else { return Join::Entry };
        let last = &self.events.list[before_extent.end - 1];
        let rest = self.events.list[extent.first].onset - last.end;
        let free = milliseconds(self.material.reading.profile.times.free_rest.value);
        let interrupted = before_extent.end != extent.first;
        if interrupted
            || before.kind == StrokeKind::Tremolo
            || rest >= Length::WHOLE
            || before.silence_after >= free
        {
            Join::Entry
        } else if before.silence_after.micros > 0 {
            Join::AfterRest
        } else {
            Join::Continues
        }
    }

    /// Where each stroke lives.
    fn homes(&self, strokes: &mut [Stroke]) {
        let profile = self.material.reading.profile;
        let hair = profile.hair_micrometres(self.material.part.instrument);
        for stroke in strokes {
            let travel = i64::from(stroke.speed.preferred).saturating_mul(stroke.duration.micros) / 1_000_000;
            let long = travel * 100 > hair * LONG_SHARE;
            stroke.home = match stroke.kind {
                StrokeKind::Single | StrokeKind::Short if long => BowInterval::ANYWHERE,
                _ => home(&profile.homes, stroke),
            };
        }
    }
}

/// A dynamic from which strokes are loud, and up to which they are soft.
const LOUD: i32 = 600;
const SOFT: i32 = 300;

fn home(homes: &Homes, stroke: &Stroke) -> BowInterval {
    let level = i32::midpoint(stroke.level_start.0, stroke.level_end.0);
    let (soft, loud) = (level <= SOFT, level >= LOUD);
    let accented = stroke.emphasis.accent >= 50 && !soft;
    let setting = match stroke.kind {
        StrokeKind::BrokenChord => &homes.broken_chord,
        StrokeKind::Single if accented => &homes.accented,
        StrokeKind::Single if soft && stroke.join == Join::Entry => &homes.soft_entry,
        StrokeKind::Single if soft => &homes.single_soft,
        StrokeKind::Single if loud => &homes.single_loud,
        StrokeKind::Single => &homes.single,
        StrokeKind::Short if soft => &homes.short_soft,
        StrokeKind::Short if loud => &homes.short_loud,
        StrokeKind::Short => &homes.short,
        StrokeKind::Slurred => &homes.slurred,
        StrokeKind::Pulsed => &homes.pulsed,
        StrokeKind::HookedPair => &homes.hooked_pair,
        StrokeKind::Tremolo if soft => &homes.tremolo_soft,
        StrokeKind::Tremolo => &homes.tremolo,
    };
    BowInterval { from: setting.value[0], to: setting.value[1] }
}

fn is_short(event: &Event) -> bool {
    [Articulation::Staccato, Articulation::Staccatissimo, Articulation::Spiccato]
        .into_iter()
        .any(|mark| event.articulations.has(mark))
}

fn is_accented(event: &Event) -> bool {
    [Articulation::Accent, Articulation::StrongAccent].into_iter().any(|mark| event.articulations.has(mark))
}

/// A dot, wedge or dash under a slur: the bow pulses.
fn is_pulsed(event: &Event) -> bool {
    is_short(event)
        || [Articulation::Tenuto, Articulation::DetachedLegato]
            .into_iter()
            .any(|mark| event.articulations.has(mark))
}

fn attacks(events: &[Event]) -> u16 {
    let held = events.iter().skip(1).filter(|event| event.tie == TieInto::Held).count();
    u16::try_from(events.len() - held).unwrap_or(u16::MAX)
}

fn kind(events: &[Event], goings: &[Going]) -> StrokeKind {
    let first = &events[0];
    let fingered = events
        .windows(2)
        .zip(&goings[1..])
        .any(|(pair, going)| pair[0].tremolo == Some(TremoloRole::PairStart) && *going == Going::Slurred);
    if !fingered && events.iter().any(|event| event.tremolo.is_some()) {
        return StrokeKind::Tremolo;
    }
    if let [event] = events {
        return single_kind(event);
    }
    let pulses = events.iter().filter(|event| is_pulsed(event)).count();
    match events {
        [long, short] if pulses == 1 && is_short(short) && long.length() >= short.length() * 2 => {
            StrokeKind::HookedPair
        }
        // A dot on the last note alone only shortens it.
        _ if pulses >= 2 || pulses == 1 && is_pulsed(first) && events.len() == 2 => StrokeKind::Pulsed,
        _ => StrokeKind::Slurred,
    }
}

fn single_kind(event: &Event) -> StrokeKind {
    if event.stopped >= 3 || event.stopped >= 2 && event.rolled == Arpeggio::Rolled {
        StrokeKind::BrokenChord
    } else if event.ornament == Some(Ornament::Trill) {
        StrokeKind::Slurred
    } else if is_short(event) {
        StrokeKind::Short
    } else {
        StrokeKind::Single
    }
}
