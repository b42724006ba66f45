//! What a piece's player brings: words, hair, thresholds, and how places are said.

use arcata_bow::{Line, PlanSettings, Written};
use arcata_score::{Note, Part};

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

    /// Says that the seconds of a draft rest on an assumed tempo, when they do.
    #[must_use]
    pub fn with_tempo_assumption(&self, draft: Draft, line: &Line) -> Draft {
        match line.tempo_written {
            Written::InScore => draft,
            Written::Assumed => draft.assuming("No tempo is written; the seconds rest on an assumed one."),
        }
    }
}
