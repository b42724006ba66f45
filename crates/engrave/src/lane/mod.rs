//! The bow lane: what the bow does, drawn under the notes.
//!
//! Time runs with the music and the height is the place in the bow, the frog on top, so that a down-bow goes
//! down. A stroke is thick near the frog and thin near the tip, like the weight of the bow. What an arm
//! does between two strokes is drawn as what it does: a turn on the string is a corner, a stop in the same
//! direction is a gap with a bar, a lift is an arc through the air, and where the bow comes out of the air
//! there is a ring. A stroke that might as well go the other way is hollow. Everything reads without colour.

mod axis;
mod draw;
mod shapes;

use std::ops::RangeInclusive;

use arcata_bow::{Line, Link, PlannedStroke, RealTime, Stroke, StrokeKind};
use arcata_score::{BowDirection, Moment, Part};

pub(crate) use axis::Axis;
pub(crate) use draw::{FOOT, LaneFrame, SIGNS, draw};

/// How the speed of a stroke stands to its dynamic.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LanePace {
    /// Within what the dynamic allows.
    Fitting,
    /// Slower than the tone bears: the bow is too short for the stroke.
    Starved,
    /// Faster than the dynamic wants: it will stick out.
    Rushed,
}

impl LanePace {
    /// One word, for files and style sheets.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Fitting => "fitting",
            Self::Starved => "starved",
            Self::Rushed => "rushed",
        }
    }
}

/// One stroke as the lane shows it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LaneStroke {
    /// Index in its line.
    pub index: usize,
    /// Which way.
    pub direction: BowDirection,
    /// How it follows the one before.
    pub link: Link,
    /// Where it begins, thousandths of the hair from the frog.
    pub start: u16,
    /// Where it ends.
    pub end: u16,
    /// When it begins.
    pub begins: Moment,
    /// When it ends.
    pub ends: Moment,
    /// Attacks inside it.
    pub pulses: Vec<Moment>,
    /// What kind of stroke.
    pub kind: StrokeKind,
    /// Its speed against its dynamic.
    pub pace: LanePace,
    /// Where the speed that the dynamic prefers would have led, thousandths; outside 0 to 1000 where the
    /// bow is not long enough.
    pub wanted_end: i64,
    /// Whether its direction is said by a sign in the lane.
    pub sign: LaneSign,
    /// Whether the other direction is nearly as good: then it is drawn hollow.
    pub open: bool,
}

/// Whether a stroke has its sign in the lane.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LaneSign {
    /// In the lane: it was worked out.
    Worked,
    /// In the staff: it is printed there.
    Printed,
    /// Nowhere: the line says it.
    Plain,
}

impl LaneStroke {
    /// The strokes of a planned stretch of a line that sound in `bars`. `first` is the index in the line of
    /// the first of the planned strokes, `hair` the usable hair in micrometres.
    #[must_use]
    pub fn of_plan(
        part: &Part,
        line: &Line,
        first: usize,
        planned: &[PlannedStroke],
        hair: i64,
        bars: &RangeInclusive<u32>,
    ) -> Vec<Self> {
        let strokes = line.strokes.iter().enumerate().skip(first).zip(planned);
        let mut lane: Vec<Self> = Vec::new();
        for ((index, stroke), planned) in strokes {
            let last = stroke.notes.last().map_or(stroke.bar, |note| part.note(*note).bar);
            if stroke.bar > *bars.end() || last < *bars.start() {
                continue;
            }
            let sign = sign(stroke, planned, lane.is_empty());
            lane.push(Self::of(part, index, stroke, planned, hair, sign));
        }
        lane
    }

    fn of(
        part: &Part,
        index: usize,
        stroke: &Stroke,
        planned: &PlannedStroke,
        hair: i64,
        sign: LaneSign,
    ) -> Self {
        let travel = i64::from(planned.start.abs_diff(planned.end));
        let wanted = thousandths(stroke.speed.preferred, stroke.duration, hair);
        let way = if planned.direction == BowDirection::Down { 1 } else { -1 };
        Self {
            index,
            direction: planned.direction,
            link: planned.link,
            start: planned.start,
            end: planned.end,
            begins: stroke.onset,
            ends: stroke.onset + stroke.length,
            pulses: pulses(part, stroke),
            kind: stroke.kind,
            pace: pace(stroke, travel, hair),
            wanted_end: i64::from(planned.start) + way * wanted,
            sign,
            open: false,
        }
    }
}

/// Signs stand where a player needs one: at the beginning, on downbeats, and wherever the bow does not simply
/// turn. (A sign on every stroke would say what the line says.)
fn sign(stroke: &Stroke, planned: &PlannedStroke, first: bool) -> LaneSign {
    if stroke.printed == Some(planned.direction) {
        LaneSign::Printed
    } else if first || planned.link != Link::Change || stroke.offset.is_zero() {
        LaneSign::Worked
    } else {
        LaneSign::Plain
    }
}

/// The share of the bow that a speed (µm/s) takes in a time.
fn thousandths(speed: u32, time: RealTime, hair: i64) -> i64 {
    let micrometres = i128::from(speed) * i128::from(time.micros) / 1_000_000;
    i64::try_from(micrometres * 1000 / i128::from(hair.max(1))).unwrap_or(i64::MAX / 4)
}

/// Speeds are told from one cell of the planner's usual grid: what is less is the grid's doing.
fn pace(stroke: &Stroke, travel: i64, hair: i64) -> LanePace {
    const CELL: i64 = 1000 / 48;
    if stroke.kind == StrokeKind::Tremolo {
        return LanePace::Fitting;
    }
    if travel + CELL < thousandths(stroke.speed.slowest, stroke.duration, hair) {
        LanePace::Starved
    } else if travel > thousandths(stroke.speed.fastest, stroke.duration, hair) + CELL {
        LanePace::Rushed
    } else {
        LanePace::Fitting
    }
}

/// The later attacks of a stroke that has pulses.
fn pulses(part: &Part, stroke: &Stroke) -> Vec<Moment> {
    if !matches!(stroke.kind, StrokeKind::Pulsed | StrokeKind::HookedPair) {
        return Vec::new();
    }
    let mut moments: Vec<Moment> = stroke
        .notes
        .iter()
        .map(|note| part.note(*note))
        .filter(|note| note.onset > stroke.onset && note.tie.from_before == arcata_score::TieEnd::None)
        .map(|note| note.onset)
        .collect();
    moments.sort_unstable();
    moments.dedup();
    moments
}
