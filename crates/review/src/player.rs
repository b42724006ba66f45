//! What a piece's player brings: words, hair, thresholds, and how places are said.

use arcata_bow::{Line, PlanSettings, Stroke, StrokeKind, Written};
use arcata_score::{Instrument, Moment, Note, Part};

use crate::beats::beat_in_bar;
use crate::words::beat_text;
use crate::{Draft, FindingPlace, Piece, Thresholds};

impl Piece<'_> {
    /// "bar" or "measure", as the player says.
    #[must_use]
    pub fn bar_word(&self) -> &str {
        &self.profile.words.bar.value
    }

    /// "frog" or "heel".
    #[must_use]
    pub fn frog_word(&self) -> &str {
        &self.profile.words.frog.value
    }

    /// "tip" or "point".
    #[must_use]
    pub fn tip_word(&self) -> &str {
        &self.profile.words.tip.value
    }

    /// "stand" or "desk".
    #[must_use]
    pub fn stand_word(&self) -> &str {
        &self.profile.words.stand.value
    }

    /// What counts as too much for this player.
    #[must_use]
    pub fn thresholds(&self) -> Thresholds {
        Thresholds::of(self.profile)
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
    pub fn where_is(&self, place: &FindingPlace) -> String {
        format!("{} {}, beat {}", self.bar_word(), place.bar_label, place.beat_text())
    }

    /// A note's place seen from another: "beat 3" in the same bar, "bar 13, beat 1" elsewhere.
    #[must_use]
    pub fn said_from(&self, from: &FindingPlace, part: &Part, note: &Note) -> String {
        let offset = self.score.offset_in_bar(note.onset, note.bar);
        let beat = part.meter_at(note.bar).map_or_else(String::new, |m| beat_text(beat_in_bar(m, offset)));
        if note.bar == from.bar {
            return format!("beat {beat}");
        }
        let label = self.score.bars.get(note.bar as usize).map_or("", |bar| bar.label.as_str());
        format!("{} {label}, beat {beat}", self.bar_word())
    }

    /// "bar 12, beat 3" for a stroke of a line.
    #[must_use]
    pub fn stroke_is_at(&self, line: usize, stroke: &Stroke) -> String {
        let part = self.lines.get(line).and_then(|line| self.score.parts.get(line.part));
        let meter = part.and_then(|part| part.meter_at(stroke.bar));
        let beat = meter.map_or_else(String::new, |meter| beat_text(beat_in_bar(meter, stroke.offset)));
        let label = self.score.bars.get(stroke.bar as usize).map_or("", |bar| bar.label.as_str());
        format!("{} {label}, beat {beat}", self.bar_word())
    }

    /// The printed number of the bar that holds a moment.
    #[must_use]
    pub fn bar_label_at(&self, at: Moment) -> &str {
        let bar = self.score.bar_at(at).and_then(|bar| self.score.bars.get(bar as usize));
        bar.map_or("", |bar| bar.label.as_str())
    }

    /// How long it takes to lift the bow at one place and set it down at another (thousandths of the
    /// hair), microseconds.
    #[must_use]
    pub fn lift_time(&self, from: u16, to: u16) -> i64 {
        let (lift, carry) = (self.profile.lift().micros, self.profile.carry().micros);
        lift + carry * i64::from(from.abs_diff(to)) / 1000
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
            Written::Assumed => draft.assuming("No tempo is written; the seconds rest on an assumed one."),
        }
    }
}
