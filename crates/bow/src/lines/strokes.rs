//! Strokes from events.

use std::borrow::Cow;

use arcata_score::{
    Arpeggio, Articulation, Fermata, Length, Ornament, Part, Slur, SlurLine, SlurTold, TieEnd, TremoloRole,
};

use super::MovementReading;
use super::bows::{Going, goings};
use super::events::{Event, Events, Sounding, TieInto, events};
use super::voices::VoiceGroup;
use crate::emphasis::Emphases;
use crate::loudness::LoudnessCurve;
use crate::phrase::Phrases;
use crate::profile::{Homes, SpeedTable, milliseconds};
use crate::techniques::Techniques;
use crate::{BowInterval, Emphasis, Join, Loudness, PhrasePlace, RealTime, Stroke, StrokeKind};

/// What the strokes of a line are made from.
pub(super) struct Material<'a> {
    pub(super) reading: &'a MovementReading<'a>,
    pub(super) part: &'a Part,
    pub(super) events: Events,
    pub(super) goings: Vec<Going>,
    pub(super) curve: LoudnessCurve,
    pub(super) speeds: SpeedTable,
}

/// The events of one stroke: `first..end`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Extent {
    pub(crate) first: usize,
    pub(crate) end: usize,
}

/// How the notes of one stroke hang together.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Binding {
    /// As their marks say; under a slur where there are several.
    Written,
    /// With dots or dashes added, so that each is heard: a hook that is written out.
    Stopped,
}

/// A stroke takes this share of the hair before it may live anywhere, percent (rule of thumb).
const LONG_SHARE: i64 = 60;

/// So many notes from a printed bow somebody has looked at the bows: a phrase or so (rule of thumb).
pub const MARKED_AROUND: usize = 16;
/// Nobody writes rests shorter than this part of a whole note (a limit).
const SHORTEST_REST: i64 = 512;

impl<'a> Material<'a> {
    pub(super) fn new(
        reading: &'a MovementReading<'a>,
        part: &'a Part,
        staff: u8,
        techniques: &Techniques,
        speeds: &SpeedTable,
        group: &VoiceGroup,
    ) -> Self {
        let mut events = events(part, staff, group, techniques);
        let curve = LoudnessCurve::new(&reading.score, part, staff, &group.voices, reading.profile)
            .louder(reading.louder);
        let hair = reading.profile.hair_micrometres(part.instrument);
        let is_phrase_mark = |index: usize| {
            let slur = &part.slurs[index];
            match slur.told {
                SlurTold::Bow => false,
                SlurTold::Phrase => true,
                SlurTold::Nothing => {
                    slur.line == SlurLine::Broken && outlasts_bow(reading, part, slur, (&curve, speeds, hair))
                }
            }
        };
        let mut goings = goings(part, &mut events, is_phrase_mark);
        split_doubles(&mut events, &mut goings);
        Self { reading, part, events, goings, curve, speeds: speeds.clone() }
    }

    /// The bowed events, cut into strokes as printed.
    pub(super) fn extents(&self) -> Vec<Extent> {
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
}

/// Lets the second bow of a note that bears both begin in the middle of it.
fn split_doubles(events: &mut Events, goings: &mut Vec<Going>) {
    let mut index = 0;
    while let Some(event) = events.list.get_mut(index) {
        index += 1;
        if event.stroke == Sounding::Bowed
            && let Some(rest) = event.split_off()
        {
            events.list.insert(index, rest);
            goings.insert(index, Going::Anew);
            index += 1;
        }
    }
}

/// Whether a slur lasts longer than the slowest bow at the dynamic of its first note. A broken line is an editor's bow where a
/// bow lasts for it, and a phrase mark where none does: both are common practice.
fn outlasts_bow(
    reading: &MovementReading<'_>,
    part: &Part,
    slur: &Slur,
    (curve, speeds, hair): (&LoudnessCurve, &SpeedTable, i64),
) -> bool {
    let (start, end) = (part.note(slur.start), part.note(slur.end));
    let lasts = reading.tempo.between(start.onset, end.onset + end.length).micros;
    let slowest = i64::from(speeds.window(curve.begun(start.onset)).slowest);
    lasts.saturating_mul(slowest) > hair.saturating_mul(1_000_000)
}

/// Makes strokes: those that are printed, and others from the same notes.
pub(crate) struct StrokeMaker<'a> {
    material: &'a Material<'a>,
    /// The strokes as printed.
    extents: &'a [Extent],
    emphases: Emphases<'a>,
    phrases: Phrases<'a>,
    hair: i64,
}

impl<'a> StrokeMaker<'a> {
    /// A maker for a line, and the strokes as printed.
    pub(super) fn new(material: &'a Material<'a>, extents: &'a [Extent]) -> (Self, Vec<Stroke>) {
        let Material { reading, part, events, curve, .. } = material;
        let mut maker = Self {
            material,
            extents,
            emphases: Emphases::new(&reading.score, part, &events.list, curve),
            phrases: Phrases::new(&reading.score, &events.list),
            hair: reading.profile.hair_micrometres(part.instrument),
        };
        let mut strokes: Vec<Stroke> =
            extents.iter().map(|extent| maker.stroke(*extent, Binding::Written)).collect();
        maker.phrases.count(extents, &mut strokes);
        (maker, strokes)
    }

    /// Strokes that follow one another, in order.
    pub(super) fn strokes(&self, pieces: &[(Extent, Binding)]) -> Vec<Stroke> {
        let mut strokes: Vec<Stroke> =
            pieces.iter().map(|(extent, binding)| self.tried(*extent, *binding)).collect();
        Phrases::chain(&mut strokes);
        strokes
    }

    /// One stroke with its joint after it; the joint before belongs to the stroke before.
    pub(crate) fn tried(&self, extent: Extent, binding: Binding) -> Stroke {
        let mut stroke = self.stroke(extent, binding);
        stroke.phrase.joint_after = self.phrases.joint_after(&stroke, extent, self.bowed_from(extent.end));
        stroke
    }

    /// The next event that the bow sounds.
    fn bowed_from(&self, event: usize) -> Option<usize> {
        let later = self.extents[self.extents.partition_point(|extent| extent.end <= event)..].first()?;
        Some(later.first.max(event))
    }

    /// The event that the bow sounds last before another.
    fn bowed_before(&self, event: usize) -> Option<usize> {
        let before = self.extents.partition_point(|extent| extent.first < event).checked_sub(1)?;
        Some(self.extents[before].end.min(event) - 1)
    }

    /// All of a stroke but its place in the phrase.
    fn stroke(&self, extent: Extent, binding: Binding) -> Stroke {
        let Material { reading, events, goings, curve, speeds, .. } = self.material;
        let events = bound(&events.list[extent.first..extent.end], binding);
        let (first, last) = (&events[0], &events[events.len() - 1]);
        let kind = kind(&events, &goings[extent.first..extent.end]);
        let held: i64 = events.iter().map(|event| self.held_longer(event)).sum();
        let duration = reading.tempo.between(first.onset, last.end).micros + held;
        let attack = curve.attack(first.onset);
        let begun = curve.begun(first.onset);
        let level_start = attack.map_or(begun, |attack| attack.loudness);
        let level_end = curve.reached(last.end);
        // After a loud attack most of the stroke is at the level that follows.
        let level = match attack {
            Some(_) => (level_start.0 + 3 * level_end.0) / 4,
            None => i32::midpoint(level_start.0, level_end.0),
        };
        let before = self.bowed_before(extent.first);
        let mut stroke = Stroke {
            notes: events.iter().flat_map(|event| event.notes.iter().copied()).collect(),
            onset: first.onset,
            length: last.end - first.onset,
            bar: first.bar,
            offset: reading.score.offset_in_bar(first.onset, first.bar),
            duration: RealTime::from_micros(duration),
            silence_after: self.silence_after(last, self.bowed_from(extent.end)),
            lendable: self.lendable(last),
            kind,
            join: self.join(extent.first, before),
            printed: first.printed,
            emphasis: Emphasis::default(),
            level_start,
            level_end,
            speed: speeds.window(Loudness(level)),
            home: BowInterval::ANYWHERE,
            note_count: attacks(&events),
            phrase: PhrasePlace { marked: self.is_marked(extent.first), ..PhrasePlace::default() },
        };
        let level_before = before.map(|before| curve.reached(self.material.events.list[before].end));
        stroke.emphasis = self.emphases.of(extent.first, &stroke, level_before);
        stroke.home = self.home(&stroke);
        stroke
    }

    /// Whether a bow is printed on one of the notes around an event.
    fn is_marked(&self, event: usize) -> bool {
        let list = &self.material.events.list;
        let around = event.saturating_sub(MARKED_AROUND)..(event + MARKED_AROUND + 1).min(list.len());
        list[around].iter().any(|event| event.printed.is_some())
    }

    /// By how much a fermata lengthens an event, microseconds.
    fn held_longer(&self, event: &Event) -> i64 {
        match event.fermata {
            Fermata::None => 0,
            Fermata::Held => self.longer(self.material.reading.tempo.between(event.onset, event.end)),
        }
    }

    fn longer(&self, plain: RealTime) -> i64 {
        plain.micros * (self.material.reading.profile.assumed.fermata.value - 100).max(0) / 100
    }

    fn silence_after(&self, last: &Event, next: Option<usize>) -> RealTime {
        let Material { reading, events, .. } = self.material;
        let until = next.map_or_else(|| reading.score.end(), |next| events.list[next].onset);
        let until = until.max(last.end);
        // A gap that no rest is written for comes of rounded durations, and is no silence.
        let until = if until - last.end < Length::new(1, SHORTEST_REST) { last.end } else { until };
        let rests = &events.held_rests;
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
        RealTime::from_micros(reading.tempo.between(last.end, until).micros + held + caesura)
    }

    /// What the last note of a stroke may give to a lift.
    fn lendable(&self, last: &Event) -> RealTime {
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
        RealTime::from_micros(note * percent / 100)
    }

    fn join(&self, first: usize, before: Option<usize>) -> Join {
        let Some(before) = before else { return Join::Entry };
        let list = &self.material.events.list;
        let rest = list[first].onset - list[before].end;
        let silence = self.silence_after(&list[before], Some(first));
        let free = milliseconds(self.material.reading.profile.times.free_rest.value);
        let interrupted = before + 1 != first;
        if interrupted || self.ends_tremolo(before) || rest >= Length::WHOLE || silence >= free {
            Join::Entry
        } else if silence.micros > 0 {
            Join::AfterRest
        } else {
            Join::Continues
        }
    }

    /// Whether an event is the last of a tremolo, which no repair touches.
    fn ends_tremolo(&self, event: usize) -> bool {
        let Material { events, goings, .. } = self.material;
        let at = self.extents.partition_point(|extent| extent.end <= event);
        let extent = self.extents[at];
        extent.end == event + 1
            && kind(&events.list[extent.first..extent.end], &goings[extent.first..extent.end])
                == StrokeKind::Tremolo
    }

    /// Where a stroke lives.
    fn home(&self, stroke: &Stroke) -> BowInterval {
        let travel = i64::from(stroke.speed.preferred).saturating_mul(stroke.duration.micros) / 1_000_000;
        let long = travel * 100 > self.hair * LONG_SHARE;
        match stroke.kind {
            StrokeKind::Single | StrokeKind::Short if long => BowInterval::ANYWHERE,
            _ => home(&self.material.reading.profile.homes, stroke),
        }
    }
}

/// The events of a stroke with the marks that its binding adds: in a dotted pair a dot on the short
/// note, else a dash on each, as hooks are written (common practice).
fn bound(events: &[Event], binding: Binding) -> Cow<'_, [Event]> {
    match (binding, events) {
        (Binding::Written, _) | (_, [_]) => Cow::Borrowed(events),
        (Binding::Stopped, [long, short]) if long.length() >= short.length() * 2 => {
            let mut short = short.clone();
            short.articulations = short.articulations.with(Articulation::Staccato);
            Cow::Owned(vec![long.clone(), short])
        }
        (Binding::Stopped, _) => Cow::Owned(
            events
                .iter()
                .map(|event| Event {
                    articulations: event.articulations.with(Articulation::Tenuto),
                    ..event.clone()
                })
                .collect(),
        ),
    }
}

/// A dynamic from which strokes are loud, and up to which they are soft (by definition).
const LOUD: i32 = Loudness::F.0;
/// See [`LOUD`] (by definition).
const SOFT: i32 = Loudness::P.0;

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
