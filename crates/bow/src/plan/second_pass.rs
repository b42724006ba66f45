//! On which bow a repeated stretch begins again.

use super::{BowReach, Leads, Plan, Turn};
use crate::{Line, RealTime, StrokeKind};

/// How the second pass comes to the bow that is printed for the first.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Comes {
    /// By itself: the stroke before goes the other way.
    ByItself,
    /// After a tremolo or a long silence any bow may begin.
    Free,
    /// The bow is lifted in the rest before it.
    Lifted,
    /// The bow is retaken in the time that the last note lends.
    Retaken,
    /// Not: there is no time to lift, and who goes on as it comes begins on the other bow.
    Reversed,
}

/// One way back, and what it asks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SecondPass {
    /// How the bow of the first pass is reached.
    pub comes: Comes,
    /// Rests at the turn, and what the last note may lend.
    pub available: RealTime,
    /// What lifting the bow and setting it down at the beginning takes.
    pub needed: RealTime,
}

/// How the second pass begins over a turn of a plan; `None` for a turn that leads on, or a plan that is not
/// this line's.
#[must_use]
pub fn second_pass(line: &Line, plan: &Plan, turn: &Turn, reach: BowReach) -> Option<SecondPass> {
    let (from, to) = (plan.strokes.get(turn.from)?, plan.strokes.get(turn.to)?);
    let last = line.strokes.get(turn.from).filter(|_| turn.leads == Leads::Back)?;
    let distance = i64::from(from.end.abs_diff(to.start));
    let needed = reach.lift.micros + reach.carry.micros * distance / 1000;
    let available = turn.silence.micros + last.lendable.micros;
    let comes = if from.direction != to.direction {
        Comes::ByItself
    } else if last.kind == StrokeKind::Tremolo || turn.silence >= reach.free_rest {
        Comes::Free
    } else if available < needed {
        Comes::Reversed
    } else if turn.silence.micros > 0 {
        Comes::Lifted
    } else {
        Comes::Retaken
    };
    let (available, needed) = (RealTime::from_micros(available), RealTime::from_micros(needed));
    Some(SecondPass { comes, available, needed })
}
