//! Whether a finding hangs on the music or on the plan's taste.
//!
//! What disappears in a bowing that costs hardly more than the best is a choice of the players, and nothing to tell a
//! writer: the plan itself chose it. How much more still counts as hardly are two thresholds of the profile: one for
//! the direction of a stroke, a smaller one for its place, as places cost little beside directions.

use arcata_bow::plan;
use arcata_bow::plan::{Anchor, Confined, plan_confined};
use arcata_score::BowDirection;

use crate::Piece;
use crate::other_bow::{kept_edges, passage, stretch};

/// What a stroke is asked to do otherwise.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Otherwise {
    /// To go this way.
    Goes(BowDirection),
    /// To begin between two places, thousandths of the hair from the frog.
    Begins(u16, u16),
    /// To travel so far at most, thousandths of the hair.
    Travels(u16),
}

impl Piece<'_> {
    /// Whether players may as well do otherwise: the best way of the passage in which the stroke does so costs hardly more
    /// than the best. The strokes at the edges of the passage keep their bows.
    pub(crate) fn is_choice(&self, at: usize, index: usize, otherwise: Otherwise) -> bool {
        let thresholds = self.thresholds();
        let hardly = match otherwise {
            Otherwise::Goes(_) => thresholds.choice_of_bow,
            Otherwise::Begins(..) | Otherwise::Travels(_) => thresholds.choice_of_place,
        };
        self.costs_more(at, index, otherwise).is_some_and(|more| more <= hardly)
    }

    /// What the best way in which the stroke does otherwise costs more, thousandths of a point.
    fn costs_more(&self, at: usize, index: usize, otherwise: Otherwise) -> Option<i64> {
        let line = self.lines.get(at)?;
        let range = passage(line, index);
        let stretch = stretch(line, &range);
        let mut settings = self.plan_settings(at);
        settings.anchors = kept_edges(self, at, &range, index)?;
        settings.anchors.iter_mut().for_each(|anchor| anchor.stroke -= range.start);
        let best = plan(&stretch, &settings).total.total();
        let stroke = index - range.start;
        let anywhere = Confined { stroke, begins: (0, 1000), travels: 1000 };
        let confined = match otherwise {
            Otherwise::Goes(direction) => {
                settings.anchors.retain(|anchor| anchor.stroke != stroke);
                settings.anchors.push(Anchor { stroke, direction: Some(direction), link: None });
                anywhere
            }
            Otherwise::Begins(from, to) => Confined { begins: (from, to), ..anywhere },
            Otherwise::Travels(travels) => Confined { travels, ..anywhere },
        };
        let other = plan_confined(&stretch, &settings, &[confined])?;
        Some(other.total.total() - best)
    }
}
