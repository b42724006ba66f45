//! Whether a planned lift has the time it needs.

use super::{BowReach, Link, Plan};
use crate::{Line, RealTime};

/// The time that a lift has, and the time that it takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LiftTime {
    /// Silence before the stroke, and what the note before may lend.
    pub available: RealTime,
    /// To lift the bow, carry it and set it down.
    pub needed: RealTime,
}

impl LiftTime {
    /// Whether it has not the time. The planner makes such a lift only where marks or anchors ask for it.
    #[must_use]
    pub fn is_rushed(&self) -> bool {
        self.available < self.needed
    }
}

/// The time of the lift by which a planned stroke is reached from the one printed before it; `None` where the
/// bow is not lifted there, or is free.
///
/// ```
/// use arcata_bow::plan::{BowReach, lift_time};
/// use arcata_bow::{Line, Plan};
///
/// fn rushed_lifts(line: &Line, plan: &Plan) -> usize {
///     let times = (1..plan.strokes.len()).filter_map(|stroke| lift_time(line, plan, stroke, BowReach::default()));
///     times.filter(|time| time.is_rushed()).count()
/// }
/// ```
#[must_use]
pub fn lift_time(line: &Line, plan: &Plan, stroke: usize, reach: BowReach) -> Option<LiftTime> {
    let before = stroke.checked_sub(1)?;
    let (from, to) = (plan.strokes.get(before)?, plan.strokes.get(stroke)?);
    let (last, first) = (line.strokes.get(before)?, line.strokes.get(stroke)?);
    let lifted = matches!(to.link, Link::Retake | Link::Reset) && first.join != crate::Join::Entry;
    let distance = i64::from(from.end.abs_diff(to.start));
    let needed = reach.lift.micros + reach.carry.micros * distance / 1000;
    let available = last.silence_after.micros + last.lendable.micros;
    lifted.then(|| LiftTime {
        available: RealTime::from_micros(available),
        needed: RealTime::from_micros(needed),
    })
}
