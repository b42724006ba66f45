//! What one step of a plan costs: the only place where costs are made.
//!
//! The search asks for sums, reports ask for terms; both come from the same functions, which add
//! named shares to a [`Tally`].

use std::ops::Range;

use arcata_score::BowDirection;

use super::course::Course;
use super::{Anchor, Confined, Leaning, MarkReading, PlanSettings, Weights, Wished};
use crate::logarithm::milli_octaves;
use crate::{BarCount, Cost, Join, Line, MetricPlace, RealTime, Stroke, StrokeKind, Term};

/// Something that named shares of cost are added to.
pub(crate) trait Tally {
    /// Add a share.
    fn add(&mut self, term: Term, thousandths: i64);
}

impl Tally for i64 {
    fn add(&mut self, _: Term, thousandths: i64) {
        *self += thousandths;
    }
}

impl Tally for Cost {
    fn add(&mut self, term: Term, thousandths: i64) {
        *self += Self::of(term, thousandths);
    }
}

/// What the mechanics needs besides the strokes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BowReach {
    /// Usable hair, micrometres.
    pub hair: i64,
    /// Time to lift and set down on the spot.
    pub lift: RealTime,
    /// Further time to carry the bow its whole length through the air.
    pub carry: RealTime,
    /// A silence this long frees the bow altogether.
    pub free_rest: RealTime,
}

impl Default for BowReach {
    /// Violin: 0.60 m of hair; lift 0.15 s and 0.3 s a bow; free after 1.5 s (defaults, from memory).
    fn default() -> Self {
        Self {
            hair: 600_000,
            lift: RealTime::from_micros(150_000),
            carry: RealTime::from_micros(300_000),
            free_rest: RealTime::from_micros(1_500_000),
        }
    }
}

/// A stroke of about a bar begins here, one of several here, hundredths of a bar (rule of thumb).
const A_BAR: u16 = 90;
/// See [`A_BAR`] (rule of thumb).
const TWO_BARS: u16 = 180;
/// A stroke longer than this does not lead to the next beat but has a weight of its own, hundredths of a bar:
/// a beat of three (rule of thumb).
const LEADING: u16 = 34;
/// Up to here an entry is soft: p (by definition).
const SOFT: i32 = crate::Loudness::P.0;
/// Notes up to here have no time to shape a long way of the bow: it is heard as a jerk (rule of thumb).
const ORDINARY: i64 = 600_000;

/// The costs of a line on a grid of `cells` places in the bow.
pub(crate) struct Costs<'a> {
    pub(crate) strokes: &'a [Stroke],
    pub(crate) weights: &'a Weights,
    pub(crate) reach: BowReach,
    pub(crate) cells: usize,
    pub(crate) marks: MarkReading,
    leanings: &'a [Leaning],
    confined: &'a [Confined],
    anchors: &'a [Anchor],
    pub(crate) course: Course,
    spans: WaySpans,
}

/// For each number of cells travelled, the shortest and the longest way it may stand for.
pub(crate) struct WaySpans(Vec<[BowWay; 2]>);

/// A way on the bow: micrometres, and their logarithm in thousandths of an octave.
type BowWay = (u64, i32);

impl WaySpans {
    fn of(reach: BowReach, cells: usize) -> Self {
        let hair = u64::try_from(reach.hair).unwrap_or(1);
        let span = |half_cells: u64| {
            let way = (hair * half_cells / (2 * cells as u64)).max(1);
            (way, milli_octaves(way))
        };
        let cells = 0..cells as u64;
        Self(cells.map(|cell| [span((2 * cell).saturating_sub(1)), span(2 * cell + 1)]).collect())
    }
}

/// The ways that a stroke's dynamic asks for over its duration: micrometres and thousandths of an octave.
pub(crate) struct Pace {
    preferred: u64,
    /// What an octave above the preferred speed costs.
    fast: i64,
    preferred_octaves: i32,
    slowest_octaves: i32,
    fastest_octaves: i32,
}

impl<'a> Costs<'a> {
    pub(crate) fn new(line: &'a Line, settings: &'a PlanSettings, cells: usize) -> Self {
        Self::of(&line.strokes, Course::new(line), settings, cells)
    }

    /// The costs of strokes, in whatever order.
    pub(crate) fn of(
        strokes: &'a [Stroke],
        course: Course,
        settings: &'a PlanSettings,
        cells: usize,
    ) -> Self {
        Self::kept(strokes, (course, WaySpans::of(settings.reach, cells)), settings, cells)
    }

    /// The costs of strokes whose course and ways are known.
    pub(crate) fn kept(
        strokes: &'a [Stroke],
        (course, spans): (Course, WaySpans),
        settings: &'a PlanSettings,
        cells: usize,
    ) -> Self {
        Self {
            strokes,
            weights: &settings.weights,
            reach: settings.reach,
            cells,
            marks: settings.marks,
            leanings: &settings.leanings,
            confined: &[],
            anchors: &settings.anchors,
            course,
            spans,
        }
    }

    /// What does not change while only the settings' leanings do.
    pub(crate) fn into_kept(self) -> (Course, WaySpans) {
        (self.course, self.spans)
    }

    /// Whether something is asked of a stroke.
    pub(crate) fn is_asked(&self, index: usize) -> bool {
        self.anchors.iter().any(|anchor| anchor.stroke == index)
    }

    /// The same with strokes that must keep to a part of the bow.
    pub(crate) fn confining(self, confined: &'a [Confined]) -> Self {
        Self { confined, ..self }
    }

    /// Everything that depends on the direction alone.
    pub(crate) fn direction<T: Tally>(&self, index: usize, direction: BowDirection, tally: &mut T) {
        self.direction_before(index, self.strokes.get(index + 1), direction, tally);
    }

    /// Everything that depends on the direction alone, before a stroke that may be another than the
    /// next one.
    pub(crate) fn direction_before<T: Tally>(
        &self,
        index: usize,
        next: Option<&Stroke>,
        direction: BowDirection,
        tally: &mut T,
    ) {
        let stroke = &self.strokes[index];
        if stroke.kind == StrokeKind::Tremolo {
            // Many strokes, each way: any bow begins them, whatever they do, but like ones had better begin alike.
            let up = if direction == BowDirection::Up { self.weights.tremolo } else { 0 };
            tally.add(Term::Entry, up);
        } else {
            self.metre(stroke, next, direction, tally);
            let rise = i64::from(stroke.level_end.0 - stroke.level_start.0);
            let against = if direction == BowDirection::Down { rise } else { -rise };
            tally.add(Term::Swell, self.weights.swell * against.max(0) / 100);
        }
        for leaning in self.leanings(index) {
            if leaning.wished == Wished::Goes(direction.other()) {
                tally.add(leaning.term, leaning.thousandths);
            }
        }
    }

    /// What a stroke leans to.
    fn leanings(&self, index: usize) -> impl Iterator<Item = &'a Leaning> {
        let first = self.leanings.partition_point(|leaning| leaning.stroke < index);
        self.leanings[first..].iter().take_while(move |leaning| leaning.stroke == index)
    }

    /// What some strokes lean to.
    pub(crate) fn leanings_of(&self, strokes: Range<usize>) -> &'a [Leaning] {
        let before = |end: usize| self.leanings.partition_point(|leaning| leaning.stroke < end);
        &self.leanings[before(strokes.start)..before(strokes.end)]
    }

    /// What it costs a stroke, for the sake of others, not to change from the one before it, and to change.
    pub(crate) fn change_leaning(&self, index: usize) -> [i64; 2] {
        let mut prices = [0; 2];
        for leaning in self.leanings(index) {
            if let Wished::Changes(changes) = leaning.wished {
                prices[usize::from(!changes)] += leaning.thousandths;
            }
        }
        prices
    }

    /// What the place of a stroke in bar and phrase asks of its direction.
    fn metre<T: Tally>(
        &self,
        stroke: &Stroke,
        next: Option<&Stroke>,
        direction: BowDirection,
        tally: &mut T,
    ) {
        let (weights, emphasis) = (self.weights, stroke.emphasis);
        let onto = |place: MetricPlace| {
            // A stroke that holds a downbeat itself is weighed as one, not as the way to the next.
            emphasis.metric != MetricPlace::Downbeat
                && next.is_some_and(|next| next.emphasis.metric == place && next.join == Join::Continues)
        };
        if direction == BowDirection::Up {
            tally.add(Term::Beat, self.beat_on_up_bow(stroke));
            tally.add(Term::Accent, weights.accent * i64::from(emphasis.accent) / 100);
            if stroke.join != Join::Continues {
                if emphasis.metric == MetricPlace::Downbeat {
                    tally.add(Term::Entry, weights.entry);
                } else if !onto(MetricPlace::Downbeat) {
                    tally.add(Term::Entry, weights.entry_elsewhere);
                }
            }
            if onto(MetricPlace::Downbeat) {
                tally.add(Term::Upbeat, self.flows(stroke));
            }
            // A last note that grows may well end up (treatises on the last note of a phrase).
            if stroke.level_end <= stroke.level_start {
                tally.add(Term::Ending, weights.ending * i64::from(stroke.phrase.joint_after) / 100);
            }
        } else {
            match emphasis.metric {
                MetricPlace::Beat => tally.add(Term::Beat, weights.beat),
                MetricPlace::Offbeat => tally.add(Term::Beat, weights.offbeat),
                MetricPlace::MidBar if Self::slurred(stroke) => tally.add(Term::Beat, weights.half_bar),
                MetricPlace::Downbeat | MetricPlace::MidBar => {}
            }
            if next.is_some_and(|next| next.join == Join::AfterRest) {
                tally.add(Term::Ending, weights.before_rest);
            }
            if onto(MetricPlace::MidBar) && Self::leads(stroke) {
                tally.add(Term::Upbeat, weights.upbeat_mid_bar);
            }
            if onto(MetricPlace::Downbeat) {
                let upbeat = if !Self::leads(stroke) {
                    weights.upbeat_long
                } else if Self::slurred(stroke) {
                    weights.upbeat_slurred
                } else {
                    weights.upbeat
                };
                tally.add(Term::Upbeat, upbeat);
                if stroke.join != Join::Continues {
                    tally.add(Term::Entry, weights.entry);
                }
            }
        }
    }

    /// What a beat on an up-bow costs: the longer the stroke, the less a player minds.
    fn beat_on_up_bow(&self, stroke: &Stroke) -> i64 {
        let (weights, emphasis) = (self.weights, stroke.emphasis);
        let slurred = Self::slurred(stroke);
        match emphasis.metric {
            MetricPlace::Downbeat if emphasis.bars >= TWO_BARS => weights.downbeat_bars,
            MetricPlace::Downbeat if emphasis.bars >= A_BAR => weights.downbeat_bar,
            MetricPlace::Downbeat => {
                let by_kind = if slurred { weights.downbeat_slurred } else { weights.downbeat };
                let by_count = if emphasis.count == BarCount::Even { weights.downbeat_even } else { 0 };
                by_kind + by_count
            }
            MetricPlace::MidBar if slurred => weights.mid_bar_slurred,
            MetricPlace::MidBar => weights.mid_bar,
            MetricPlace::Beat | MetricPlace::Offbeat => 0,
        }
    }

    /// What it costs an up-bow to flow into a downbeat: a legato line comes as it comes.
    fn flows(&self, stroke: &Stroke) -> i64 {
        if !Self::leads(stroke) {
            self.weights.flow_long
        } else if Self::slurred(stroke) {
            self.weights.flow_slurred
        } else {
            0
        }
    }

    fn slurred(stroke: &Stroke) -> bool {
        matches!(stroke.kind, StrokeKind::Slurred | StrokeKind::Pulsed)
    }

    /// Whether a stroke is short enough to lead to the beat after it.
    fn leads(stroke: &Stroke) -> bool {
        stroke.emphasis.bars <= LEADING
    }

    /// Setting the bow down at a cell.
    pub(crate) fn begin_at<T: Tally>(&self, index: usize, cell: usize, tally: &mut T) {
        let stroke = &self.strokes[index];
        self.place(stroke, cell, tally);
        let from_frog = self.thousandths(cell);
        tally.add(
            Term::Place,
            self.weights.accent_place * i64::from(stroke.emphasis.accent) * from_frog / 100_000,
        );
        if Self::enters_softly(stroke) {
            tally.add(Term::Place, self.weights.soft_entry_place * (1000 - from_frog) / 1000);
        }
    }

    /// Whether a stroke begins softly out of silence: not where the bow is heavy.
    pub(crate) fn enters_softly(stroke: &Stroke) -> bool {
        stroke.join != Join::Continues && stroke.level_start.0 <= SOFT && stroke.emphasis.accent == 0
    }

    /// Ending at a cell.
    pub(crate) fn end_at<T: Tally>(&self, index: usize, cell: usize, tally: &mut T) {
        self.place(&self.strokes[index], cell, tally);
    }

    fn place<T: Tally>(&self, stroke: &Stroke, cell: usize, tally: &mut T) {
        let at = self.thousandths(cell);
        let outside = (i64::from(stroke.home.from) - at).max(at - i64::from(stroke.home.to)).max(0);
        tally.add(Term::Place, self.weights.place * outside / 1000);
    }

    /// What a stroke's dynamic and duration make of the bow.
    pub(crate) fn pace(&self, stroke: &Stroke) -> Pace {
        let duration = u64::try_from(stroke.duration.micros.max(1)).unwrap_or(1);
        let distance = |speed: u32| (u64::from(speed) * duration / 1_000_000).max(1);
        let preferred = distance(stroke.speed.preferred);
        let short = stroke.duration.micros <= ORDINARY;
        Pace {
            preferred,
            fast: if short { self.weights.speed_fast_short } else { self.weights.speed_fast },
            preferred_octaves: milli_octaves(preferred),
            slowest_octaves: milli_octaves(distance(stroke.speed.slowest)),
            fastest_octaves: milli_octaves(distance(stroke.speed.fastest)),
        }
    }

    /// Travelling over a number of cells. A cell is an interval, so travel is known to half a cell:
    /// the speed nearest the preferred one is taken, and short notes do not pay for the grid.
    pub(crate) fn travel<T: Tally>(&self, pace: &Pace, cells: usize, tally: &mut T) {
        let [least, most] = self.spans.0[cells];
        let octaves = if pace.preferred < least.0 {
            least.1
        } else if pace.preferred > most.0 {
            most.1
        } else {
            pace.preferred_octaves
        };
        let off = i64::from(octaves - pace.preferred_octaves);
        if off > 0 {
            tally.add(Term::Speed, pace.fast * off / 1000);
        } else {
            tally.add(Term::Speed, self.weights.speed_slow * -off / 1000);
        }
        let over = i64::from(octaves - pace.fastest_octaves).max(0);
        let under = i64::from(pace.slowest_octaves - octaves).max(0);
        tally.add(Term::SpeedLimit, self.weights.speed_limit * (over + under) / 1000);
    }

    /// The part of the bow that a stroke must keep to, where it must.
    pub(crate) fn confined(&self, index: usize) -> Option<Confined> {
        self.confined.iter().find(|confined| confined.stroke == index).copied()
    }

    /// The middle of a cell, thousandths of the hair.
    pub(crate) fn thousandths(&self, cell: usize) -> i64 {
        (2 * cell as i64 + 1) * 1000 / (2 * self.cells as i64)
    }
}
