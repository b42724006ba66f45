//! What a piece's player brings: words, hair, thresholds, and how places are said.

use arcata_bow::{Line, PlanSettings, Stroke, StrokeKind, Written};
use arcata_languages::{Argument, SaidPlace, Saying, TradeWords};
use arcata_score::{Instrument, Length, Moment, Note, Part};

use crate::beats::beat_in_bar;
use crate::mechanics::preferred_travel;
use crate::{Draft, FindingPlace, Piece, Profile, Thresholds};

/// A lift between two strokes, microseconds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub(crate) struct LiftSeconds {
    /// How long it takes.
    pub(crate) needed: i64,
    /// Silence before the second stroke.
    pub(crate) silence: i64,
    /// What the first one gives.
    pub(crate) lent: i64,
}

impl LiftSeconds {
    /// What there is for it.
    pub(crate) fn available(self) -> i64 {
        self.silence + self.lent
    }

    /// How much is missing; negative where there is time to spare.
    pub(crate) fn lacks(self) -> i64 {
        self.needed - self.available()
    }
}

/// What this player's English calls things.
#[must_use]
pub fn trade_words(profile: &Profile) -> TradeWords {
    let words = &profile.words;
    TradeWords {
        bar: words.bar.value.clone(),
        stand: words.stand.value.clone(),
        frog: words.frog.value.clone(),
        tip: words.tip.value.clone(),
    }
}

impl Piece<'_> {
    /// What counts as too much for this player.
    #[must_use]
    pub fn thresholds(&self) -> Thresholds {
        Thresholds::of(self.profile)
    }

    /// How long it takes from the bow to the plucking finger, or back, microseconds.
    pub(crate) fn time_to_change(&self, to_finger: bool) -> i64 {
        let times = &self.profile.times;
        if to_finger { times.to_pizzicato.value * 1000 } else { times.to_arco.value * 1000 }
    }

    /// How long it takes to put the mute on, or off, microseconds.
    pub(crate) fn time_to_mute(&self, on: bool) -> i64 {
        let times = &self.profile.times;
        if on { times.mute_on.value * 1000 } else { times.mute_off.value * 1000 }
    }

    /// Usable hair of a line's bow, micrometres.
    #[must_use]
    pub fn hair(&self, line: usize) -> i64 {
        let instrument = self.lines.get(line).map_or(Instrument::Violin, |line| line.instrument);
        self.profile.hair_micrometres(instrument)
    }

    /// How a line is planned by this player.
    #[must_use]
    pub fn plan_settings(&self, line: usize) -> PlanSettings {
        let instrument = self.lines.get(line).map_or(Instrument::Violin, |line| line.instrument);
        self.profile.plan_settings(instrument)
    }

    /// "bar 12, beat 3".
    #[must_use]
    pub fn where_is(&self, place: &FindingPlace) -> SaidPlace {
        place.said()
    }

    /// A note's place seen from another: "beat 3" in the same bar, "bar 13, beat 1" elsewhere.
    #[must_use]
    pub fn said_from(&self, from: &FindingPlace, part: &Part, note: &Note) -> Argument {
        let offset = self.score.offset_in_bar(note.onset, note.bar);
        let beat = part.meter_at(note.bar).map_or(Length::WHOLE, |meter| beat_in_bar(meter, offset));
        if note.bar == from.bar {
            return Argument::Beat(beat);
        }
        SaidPlace::bar(self.score.bar_label(note.bar)).on_beat(beat).into()
    }

    /// "bar 12, beat 3" for a stroke of a line.
    #[must_use]
    pub fn stroke_is_at(&self, line: usize, stroke: &Stroke) -> SaidPlace {
        let part = self.lines.get(line).map_or(usize::MAX, |line| line.part);
        let beat = self.score.beat_at(part, stroke.bar, stroke.offset);
        SaidPlace::bar(self.score.bar_label(stroke.bar)).on_beat(beat)
    }

    /// "bar 12".
    #[must_use]
    pub fn bar_said(&self, bar: u32) -> SaidPlace {
        SaidPlace::bar(self.score.bar_label(bar))
    }

    /// "bar 12": the bar that holds a moment.
    #[must_use]
    pub fn bar_said_at(&self, at: Moment) -> SaidPlace {
        self.bar_said(self.score.bar_at(at).unwrap_or(u32::MAX))
    }

    /// "12": a bar's number in a stretch.
    #[must_use]
    pub fn bar_number(&self, bar: u32) -> Argument {
        Argument::BarNumber(self.score.bar_label(bar).to_owned())
    }

    /// How long it takes to lift the bow at one place and set it down at another (thousandths of the
    /// hair), microseconds.
    #[must_use]
    pub fn lift_time(&self, from: u16, to: u16) -> i64 {
        let (lift, carry) = (self.profile.lift().micros, self.profile.carry().micros);
        lift + carry * i64::from(from.abs_diff(to)) / 1000
    }

    /// A lift after a stroke to take its direction again, at the least the bow has to do: the stroke at the
    /// slowest speed of its dynamic, and back over what it travelled.
    pub(crate) fn lift_after(&self, line: usize, stroke: usize) -> LiftSeconds {
        let Some(before) = self.lines.get(line).and_then(|line| line.strokes.get(stroke)) else {
            return LiftSeconds::default();
        };
        let lent = before.lendable.micros;
        LiftSeconds {
            silence: before.silence_after.micros,
            lent,
            needed: self.least_lift(line, before, lent),
        }
    }

    /// The same in a row of strokes in one direction, where every note gives up half its length.
    pub(crate) fn lift_in_row(&self, line: usize, stroke: usize) -> LiftSeconds {
        let Some(before) = self.lines.get(line).and_then(|line| line.strokes.get(stroke)) else {
            return LiftSeconds::default();
        };
        let lent = before.duration.micros / 2;
        LiftSeconds {
            silence: before.silence_after.micros,
            lent,
            needed: self.least_lift(line, before, lent),
        }
    }

    fn least_lift(&self, line: usize, before: &Stroke, lent: i64) -> i64 {
        let sounding = (before.duration.micros - lent).max(0);
        let least = i64::from(before.speed.slowest).saturating_mul(sounding) / 1_000_000;
        let share = (least * 1000 / self.hair(line).max(1)).clamp(0, 1000);
        self.lift_time(0, u16::try_from(share).unwrap_or(1000))
    }

    /// Whether two like marks on a stroke and the one before are played as a hook: both fit in one bow at
    /// the speeds their dynamic wants, or a single note half as long or shorter is caught up.
    pub(crate) fn can_be_hooked(&self, line: usize, stroke: usize) -> bool {
        let strokes = self.lines.get(line).map_or(&[][..], |line| &line.strokes);
        let before = stroke.checked_sub(1).and_then(|before| strokes.get(before));
        let (Some(before), Some(after)) = (before, strokes.get(stroke)) else { return false };
        let hair = self.hair(line);
        let caught_up = after.note_count == 1 && after.duration.micros * 2 <= before.duration.micros;
        caught_up || preferred_travel(before, hair) + preferred_travel(after, hair) <= 1000
    }

    /// Whether the direction after a stroke is free whatever it was.
    #[must_use]
    pub fn is_free_after(&self, stroke: &Stroke) -> bool {
        stroke.kind == StrokeKind::Tremolo
    }

    /// Says that the seconds of a draft rest on an assumed tempo, when they do.
    #[must_use]
    pub fn with_tempo_assumption(&self, draft: Draft, line: &Line) -> Draft {
        match line.tempo_written {
            Written::InScore => draft,
            Written::Assumed => draft.assuming(Saying::new("assume-tempo")),
        }
    }
}
