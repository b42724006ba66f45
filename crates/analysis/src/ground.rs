//! What stays the same while only bows are asked for.

use arcata_bow::plan::{Anchor, BowReach, giving_way};
use arcata_bow::{LineOptions, PlanSettings, Reading};

use crate::bowed::Bowed;
use crate::config::Config;
use crate::source::Source;

/// A score that is read and bowed, with nothing asked of its strokes.
#[derive(Debug)]
pub struct Ground {
    /// The score.
    pub source: Source,
    /// How it was read and bowed.
    pub config: Config,
    /// What shaped its lines.
    pub options: LineOptions,
    /// Its lines and plans.
    pub bowed: Bowed,
}

impl Ground {
    /// Bows a score.
    #[must_use]
    pub fn new(source: Source, config: Config) -> Self {
        Self::after(source, config, None)
    }

    /// Bows a score after a change, of itself or of how it is bowed. It comes out as [`new`](Self::new) has it; movements that the
    /// change does not touch keep the plans of `before`.
    #[must_use]
    pub fn after(source: Source, config: Config, before: Option<&Self>) -> Self {
        let bowed = Bowed::after(&source.score, &config, before.map(|before| &before.bowed));
        Self { options: config.line_options(), source, config, bowed }
    }

    /// The score, to be read with other slurs than its own; seconds too.
    #[must_use]
    pub fn reading(&self) -> Reading<'_> {
        Reading::new(&self.source.score, &self.config.player.profile, &self.options)
    }

    /// How a line is planned with what is asked of it. What leans to other lines gives way around that.
    ///
    /// # Panics
    /// Where there is no such line.
    #[must_use]
    pub fn settings(&self, line: usize, anchors: &[Anchor]) -> PlanSettings {
        let asked = PlanSettings { anchors: anchors.to_vec(), ..self.bowed.settings[line].clone() };
        giving_way(&self.bowed.lines[line], &self.bowed.plans[line], &asked)
    }

    /// What the bow of a line can do.
    ///
    /// # Panics
    /// Where there is no such line.
    #[must_use]
    pub fn reach(&self, line: usize) -> BowReach {
        self.bowed.settings[line].reach
    }
}
