//! From one stroke to the next: what the arm does, when, and at which price.
//!
//! Each link has one definition, by direction, place and silence:
//!
//! | link | direction | place | silence |
//! |---|---|---|---|
//! | change | the other | where the bow was | any |
//! | hooked | the same | where the bow was: it stops on the string, or waits over it | any |
//! | retake | the same | carried back against it, by a twentieth of the bow or more | none |
//! | reset | either | elsewhere, by a twentieth of the bow or more; anywhere where the bow is free | some |

use arcata_score::BowDirection;

use super::costs::{Costs, Tally};
use super::course::{Leads, Return, WalkBy};
use super::search::DirectionAndCell;
use super::{Link, MarkReading};
use crate::{BarEnd, Join, RealTime, Stroke, StrokeKind, Term};

/// Up to here an onset is not accented enough for a lift to be part of it, hundredths (rule of thumb).
const ACCENTED: u16 = 50;
/// From here on a note is loud enough for that (rule of thumb).
const LOUD: i32 = crate::Loudness::MF.0;
/// The last two strokes of a bar are long enough to be hooked without a thought from here on, hundredths of
/// the bar: a beat of four (rule of thumb).
const BEAT_OF_FOUR: u16 = 25;

/// How a stroke is reached from another.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Approach {
    /// Silence before the stroke on this way in.
    pub(crate) silence: RealTime,
    /// Time that the stroke before may lend.
    pub(crate) lendable: RealTime,
    /// How the line goes on.
    pub(crate) join: Join,
    /// Which of the two are slurred.
    pub(crate) slurs: SlurredSides,
    /// Whether the line sounds on between the two.
    pub(crate) sounding: SoundingOn,
    /// How the stroke's length is to that of the one before.
    pub(crate) lengths: Lengths,
    /// Phrase joint, hundredths.
    pub(crate) joint: i64,
    /// What part of the price of a link is paid here, percent: less at a repeat's turn, more near printed marks.
    pub(crate) share: i64,
    /// What not changing costs for the sake of other strokes, and what changing.
    pub(crate) change_leaning: [i64; 2],
}

/// Which of two neighbours are slurred.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum SlurredSides {
    None,
    One,
    /// Both, and neither has dots or dashes.
    Both,
}

/// Whether a line sounds on from one stroke to the next.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum SoundingOn {
    On,
    /// A dot, a chord or an accent parts the two.
    Apart,
    /// Both carry the same printed bow, which holds: the second is asked for.
    Asked,
}

/// How a stroke's length is to that of the one before.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Lengths {
    Any,
    /// Half as long, or shorter.
    Shorter,
    /// Both are one note, equally long, of a beat or more, and the bar ends with the second.
    LastTwo,
}

impl Approach {
    fn plain(marks: MarkReading, before: &Stroke, stroke: &Stroke, silence: RealTime) -> Self {
        let law = marks == MarkReading::Law && stroke.printed.is_some();
        let asked = law && stroke.printed == before.printed;
        Self {
            silence,
            lendable: before.lendable,
            join: stroke.join,
            slurs: slurs(before, stroke),
            sounding: if asked { SoundingOn::Asked } else { sounding(before, stroke) },
            lengths: lengths(before, stroke),
            share: 100,
            change_leaning: [0; 2],
            joint: i64::from(stroke.phrase.joint_before),
        }
    }
}

fn slurs(before: &Stroke, stroke: &Stroke) -> SlurredSides {
    let slurred = |stroke: &Stroke| matches!(stroke.kind, StrokeKind::Slurred | StrokeKind::Pulsed);
    if before.kind == StrokeKind::Slurred && stroke.kind == StrokeKind::Slurred {
        SlurredSides::Both
    } else if slurred(before) || slurred(stroke) {
        SlurredSides::One
    } else {
        SlurredSides::None
    }
}

fn sounding(before: &Stroke, stroke: &Stroke) -> SoundingOn {
    let accented = stroke.emphasis.accent >= ACCENTED && stroke.level_start.0 >= LOUD;
    let short = matches!(before.kind, StrokeKind::Short | StrokeKind::BrokenChord);
    if short || accented || stroke.kind == StrokeKind::BrokenChord {
        SoundingOn::Apart
    } else {
        SoundingOn::On
    }
}

fn lengths(before: &Stroke, stroke: &Stroke) -> Lengths {
    let one_note = |stroke: &Stroke| matches!(stroke.kind, StrokeKind::Single | StrokeKind::Short);
    let last = stroke.emphasis.bar_end == BarEnd::With && stroke.emphasis.bars >= BEAT_OF_FOUR;
    if last && before.length == stroke.length && one_note(before) && one_note(stroke) {
        Lengths::LastTwo
    } else if stroke.duration.micros * 2 <= before.duration.micros {
        Lengths::Shorter
    } else {
        Lengths::Any
    }
}

/// What carrying the bow through the air costs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(crate) struct Carry {
    /// For each cell of the way.
    pub(crate) per_cell: i64,
    /// So many cells far there is time; none where there is not even time to lift.
    pub(crate) in_time: Option<usize>,
    /// What going farther costs on top.
    pub(crate) rushed: i64,
}

impl Costs<'_> {
    /// How stroke `index` is reached the first time; `None` at the beginning.
    pub(crate) fn approach(&self, index: usize) -> Option<Approach> {
        let way = self.course.into[index];
        let before = way.before?;
        Some(match way.by {
            WalkBy::Print => {
                let stroke = &self.strokes[before];
                let plain = Approach::plain(self.marks, stroke, &self.strokes[index], stroke.silence_after);
                let asked = self.is_asked(index);
                let plain = if asked { plain } else { self.among_marks(plain, &self.strokes[index]) };
                Approach { change_leaning: self.change_leaning(index), ..plain }
            }
            WalkBy::Skip(silence) => self.jump(before, index, silence),
            WalkBy::Anew => Approach { join: Join::Entry, ..self.jump(before, index, self.reach.free_rest) },
        })
    }

    /// How one stroke is reached from another that is only tried before it.
    pub(crate) fn tried(&self, before: &Stroke, stroke: &Stroke) -> Approach {
        let plain = Approach::plain(self.marks, before, stroke, before.silence_after);
        self.among_marks(Approach { joint: i64::from(before.phrase.joint_after), ..plain }, stroke)
    }

    /// Who marks the bows marks the exceptions: an unmarked hook, retake or reset near printed marks is dearer.
    fn among_marks(&self, approach: Approach, stroke: &Stroke) -> Approach {
        let unmarked = self.marks == MarkReading::Law && stroke.phrase.marked && stroke.printed.is_none();
        Approach { share: if unmarked { self.weights.unmarked } else { approach.share }, ..approach }
    }

    /// How a stretch's beginning is reached again from its end. A repeat sign is a joint of the phrase,
    /// and the second pass need not be as smooth as the first: a part of the price counts.
    pub(crate) fn turn(&self, way: &Return) -> Approach {
        let approach = self.jump(way.from, way.to, way.silence);
        match way.leads {
            Leads::Back => Approach { share: self.weights.turn, ..approach },
            Leads::On => approach,
        }
    }

    fn jump(&self, before: usize, index: usize, silence: RealTime) -> Approach {
        let before = &self.strokes[before];
        let join = if before.kind == StrokeKind::Tremolo || silence >= self.reach.free_rest {
            Join::Entry
        } else if silence.micros > 0 {
            Join::AfterRest
        } else {
            Join::Continues
        };
        Approach { join, ..Approach::plain(self.marks, before, &self.strokes[index], silence) }
    }

    /// The least way that counts as carrying the bow, in cells.
    pub(crate) fn least_way(&self) -> usize {
        (self.cells / 20).max(1)
    }

    /// Whether the arm does this link between two stands: the definitions at the head of this file.
    pub(crate) fn is_link(
        &self,
        join: Join,
        link: Link,
        from: DirectionAndCell,
        to: DirectionAndCell,
    ) -> bool {
        let (same, there) = (from.direction == to.direction, from.cell == to.cell);
        let carried = from.cell.abs_diff(to.cell) >= self.least_way();
        let back = match to.direction {
            BowDirection::Down => to.cell < from.cell,
            BowDirection::Up => to.cell > from.cell,
        };
        match (join, link) {
            (Join::Entry, Link::Reset) => true,
            (Join::Continues | Join::AfterRest, Link::Change) => !same && there,
            (Join::Continues | Join::AfterRest, Link::Hooked) => same && there,
            (Join::Continues, Link::Retake) => same && back && carried,
            (Join::AfterRest, Link::Reset) => carried,
            _ => false,
        }
    }

    /// Linking one stroke to the next, the bow having stood at `from`. False where this is no such link.
    pub(crate) fn link<T: Tally>(
        &self,
        approach: Option<&Approach>,
        link: Link,
        (from, to): (DirectionAndCell, DirectionAndCell),
        tally: &mut T,
    ) -> bool {
        let Some(approach) = approach else { return link == Link::Reset };
        if !self.is_link(approach.join, link, from, to) {
            return false;
        }
        self.act(approach, link, from.direction, to.direction, tally);
        if approach.join != Join::Entry && matches!(link, Link::Retake | Link::Reset) {
            let carry = self.carry(approach);
            let way = from.cell.abs_diff(to.cell);
            tally.add(Term::Retake, carry.per_cell * way as i64);
            if carry.in_time.is_none_or(|far| way > far) {
                tally.add(Term::RetakeTime, carry.rushed);
            }
        }
        true
    }

    /// What a link costs besides the way through the air.
    pub(crate) fn act<T: Tally>(
        &self,
        approach: &Approach,
        link: Link,
        from: BowDirection,
        to: BowDirection,
        tally: &mut T,
    ) {
        let weights = self.weights;
        let paid = |price: i64| price * approach.share / 100;
        let less = |price: i64, relief: i64| price * (100 - relief).max(0) / 100;
        let [otherwise, change] = approach.change_leaning;
        tally.add(Term::Likeness, if link == Link::Change { change } else { otherwise });
        match (approach.join, link) {
            (Join::Continues, Link::Hooked) => {
                tally.add(Term::Hook, paid(self.hook(approach, to)));
            }
            (Join::Continues, Link::Retake) => {
                let price = match approach.sounding {
                    SoundingOn::On => weights.retake,
                    SoundingOn::Apart => weights.retake_apart,
                    SoundingOn::Asked => weights.retake_asked,
                };
                let price = less(price, weights.retake_joint_relief * approach.joint / 100);
                let up = if to == BowDirection::Up { weights.retake_up } else { 0 };
                tally.add(Term::Retake, paid(price + up));
            }
            (Join::AfterRest, Link::Hooked | Link::Reset) if from == to => {
                let needed = self.reach.lift.micros + self.reach.carry.micros;
                let tight = (needed * 100 / approach.silence.micros.max(1)).min(200);
                tally.add(Term::Reset, paid(weights.reset * tight / 100));
            }
            _ => {}
        }
    }

    fn hook(&self, approach: &Approach, direction: BowDirection) -> i64 {
        let weights = self.weights;
        if approach.sounding == SoundingOn::Asked {
            return weights.hook_asked;
        }
        let joint = weights.hook_joint_relief * approach.joint / 100;
        let (price, relief) = match (approach.lengths, direction) {
            (Lengths::LastTwo, BowDirection::Up) => (weights.hook_last_two, joint),
            (Lengths::Shorter, _) => (weights.hook, joint.max(weights.hook_short_relief)),
            _ => (weights.hook, joint),
        };
        let beside = match approach.slurs {
            SlurredSides::None => 0,
            SlurredSides::One => weights.hook_by_slur,
            SlurredSides::Both => weights.hook_slurs,
        };
        price * (100 - relief).max(0) / 100 + beside
    }

    /// What carrying the bow costs on this way in.
    pub(crate) fn carry(&self, approach: &Approach) -> Carry {
        let (weights, cells) = (self.weights, self.cells as i64);
        let paid = |price: i64| price * approach.share / 100;
        let left = approach.silence.micros + approach.lendable.micros - self.reach.lift.micros;
        // Told in thousandths of the bow, a way may be one longer than it is in cells.
        let thousandths = left * 1000 / self.reach.carry.micros.max(1) - 1;
        let far = (left >= 0).then(|| thousandths.max(0) * cells / 1000);
        Carry {
            per_cell: paid(weights.retake_distance) / cells,
            in_time: far.map(|far| usize::try_from(far).unwrap_or(self.cells).min(self.cells)),
            rushed: paid(match approach.sounding {
                SoundingOn::Asked => weights.rushed_asked,
                SoundingOn::On | SoundingOn::Apart => weights.rushed,
            }),
        }
    }
}
