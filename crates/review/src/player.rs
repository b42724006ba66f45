//! What a piece's player brings: words, hair, thresholds, and how places are said.

use arcata_bow::{Line, PlanSettings, Stroke, StrokeKind, Written};
use arcata_score::{Moment, Note, Part};

use crate::beats::beat_in_bar;
use crate::words::{Words, beat_text};
use crate::{Draft, FindingPlace, Piece, Thresholds};

impl Piece<'_> {
    /// The words the player uses.
    #[must_use]
    pub fn words(&self) -> Words {
        Words::default()
    }

    /// What counts as too much for this player.
    #[must_use]
    pub fn thresholds(&self) -> Thresholds {
        Thresholds::default()
    }

    /// Usable hair of a line's bow, micrometres.
    #[must_use]
    pub fn hair(&self, line: usize) -> i64 {
        self.plan_settings(line).reach.hair
    }

    /// How a line is planned.
    #[must_use]
    pub fn plan_settings(&self, _line: usize) -> PlanSettings {
        PlanSettings::default()
    }

    /// "bar 12, beat 3".
    #[must_use]
    pub fn where_is(&self, place: &FindingPlace) -> String {
        format!("{} {}, beat {}", self.words().bar(), place.bar_label, place.beat_text())
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
        format!("{} {label}, beat {beat}", self.words().bar())
    }

    /// "bar 12, beat 3" for a stroke of a line.
    #[must_use]
    pub fn stroke_is_at(&self, line: usize, stroke: &Stroke) -> String {
        let part = self.lines.get(line).and_then(|line| self.score.parts.get(line.part));
        let meter = part.and_then(|part| part.meter_at(stroke.bar));
        let beat = meter.map_or_else(String::new, |meter| beat_text(beat_in_bar(meter, stroke.offset)));
        let label = self.score.bars.get(stroke.bar as usize).map_or("", |bar| bar.label.as_str());
        format!("{} {label}, beat {beat}", self.words().bar())
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
    pub fn lift_time(&self, line: usize, from: u16, to: u16) -> i64 {
        let reach = self.plan_settings(line).reach;
        reach.lift.micros + reach.carry.micros * i64::from(from.abs_diff(to)) / 1000
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
