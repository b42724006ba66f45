//! Who begins a stroke on the downbeat.

use std::borrow::Borrow;

use arcata_score::{BowDirection, Score};

use crate::{Line, Plan};

/// What a line's bow does on a downbeat.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Speaking {
    /// A stroke begins, this way.
    Begins(BowDirection),
    /// A stroke goes on over the barline.
    GoesOn,
    /// The bow is off the string: a rest, or pizzicato.
    Rests,
}

/// A bar's downbeat.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Downbeat {
    /// Index of the bar.
    pub bar: u32,
    /// What each line does.
    pub lines: Vec<Speaking>,
}

impl Downbeat {
    /// Whether no bow begins though one goes on.
    #[must_use]
    pub fn is_unspoken(&self) -> bool {
        let begins = |line: &Speaking| matches!(line, Speaking::Begins(_));
        self.lines.contains(&Speaking::GoesOn) && !self.lines.iter().any(begins)
    }
}

/// What every line does on the downbeat of every bar.
#[must_use]
pub fn downbeats(score: &Score, lines: &[Line], plans: &[impl Borrow<Plan>]) -> Vec<Downbeat> {
    let bars = score.bars.iter().enumerate();
    bars.map(|(index, bar)| {
        let speaking = |(line, plan): (&Line, &Plan)| {
            let after = line.strokes.partition_point(|stroke| stroke.onset <= bar.start);
            let Some(last) = after.checked_sub(1) else { return Speaking::Rests };
            let stroke = &line.strokes[last];
            if stroke.onset == bar.start {
                Speaking::Begins(plan.strokes[last].direction)
            } else if stroke.onset + stroke.length > bar.start {
                Speaking::GoesOn
            } else {
                Speaking::Rests
            }
        };
        Downbeat {
            bar: u32::try_from(index).unwrap_or(u32::MAX),
            lines: lines.iter().zip(plans.iter().map(Borrow::borrow)).map(speaking).collect(),
        }
    })
    .collect()
}
