//! What one step of a plan costs: the only place where costs are made.
//!
//! The search asks for sums, reports ask for terms; both come from the same functions, which add
//! named shares to a [`Tally`].

use arcata_score::BowDirection;

use super::course::{By, Course, Leads, Return};
use super::{Leaning, Link, PlanSettings, Weights};
use crate::logarithm::milli_octaves;
use crate::{Cost, Join, Line, MetricPlace, Seconds, Stroke, StrokeKind, Term};

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
pub struct Reach {
    /// Usable hair, micrometres.
    pub hair: i64,
    /// Time to lift and set down on the spot.
    pub lift: Seconds,
    /// Further time to carry the bow its whole length through the air.
    pub carry: Seconds,
    /// A silence this long frees the bow altogether.
    pub free_rest: Seconds,
}

impl Default for Reach {
    /// Violin: 0.60 m of hair; lift 0.15 s and 0.3 s a bow; free after 1.5 s (defaults, from memory).
    fn default() -> Self {
        Self {
            hair: 600_000,
            lift: Seconds::from_micros(150_000),
            carry: Seconds::from_micros(300_000),
            free_rest: Seconds::from_micros(1_500_000),
        }
    }
}

/// Whether a stroke's first note is a place where the line turns back or skips an ending.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Approach {
    /// Silence before the stroke on this way in.
    pub(crate) silence: Seconds,
    /// Time that the stroke before may lend.
    pub(crate) lendable: Seconds,
    /// How the line goes on.
    pub(crate) join: Join,
    /// Whether either neighbour is slurred.
    pub(crate) slurred: bool,
    /// Whether the stroke is half as long as the one before, or shorter.
    pub(crate) shorter: bool,
    /// Phrase joint, hundredths.
    pub(crate) joint: i64,
    /// What part of the price of a link is paid here, percent: all of it but for a repeat's turn.
    pub(crate) share: i64,
}

impl Approach {
    /// How one stroke is reached from another that is only tried before it.
    pub(crate) fn tried(before: &Stroke, stroke: &Stroke) -> Self {
        let plain = Self::plain(before, stroke, before.silence_after);
        Self { joint: i64::from(before.phrase.joint_after), ..plain }
    }

    fn plain(before: &Stroke, stroke: &Stroke, silence: Seconds) -> Self {
        let slurred =
            [before, stroke].iter().any(|s| matches!(s.kind, StrokeKind::Slurred | StrokeKind::Pulsed));
        Self {
            silence,
            lendable: before.lendable,
            join: stroke.join,
            slurred,
            shorter: stroke.duration.micros * 2 <= before.duration.micros,
            share: 100,
            joint: i64::from(stroke.phrase.joint_before),
        }
    }
}

/// The costs of a line on a grid of `cells` places in the bow.
pub(crate) struct Costs<'a> {
    pub(crate) strokes: &'a [Stroke],
    pub(crate) weights: &'a Weights,
    pub(crate) reach: Reach,
    pub(crate) cells: usize,
    leanings: &'a [Leaning],
    pub(crate) course: Course,
    /// For each number of cells travelled, the shortest and the longest way it may stand for.
    spans: Vec<[Span; 2]>,
}

/// A way on the bow: micrometres, and their logarithm in thousandths of an octave.
type Span = (u64, i32);

/// The ways that a stroke's dynamic asks for over its duration: micrometres and thousandths of an octave.
pub(crate) struct Pace {
    preferred: u64,
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
        let (weights, reach, leanings) = (&settings.weights, settings.reach, &settings.leanings);
        let hair = u64::try_from(reach.hair).unwrap_or(1);
        let span = |half_cells: u64| {
            let way = (hair * half_cells / (2 * cells as u64)).max(1);
            (way, milli_octaves(way))
        };
        let spans = (0..cells as u64).map(|cell| [span((2 * cell).saturating_sub(1)), span(2 * cell + 1)]);
        Self { strokes, weights, reach, cells, leanings, course, spans: spans.collect() }
    }

    /// How stroke `index` is reached the first time; `None` at the beginning.
    pub(crate) fn approach(&self, index: usize) -> Option<Approach> {
        let way = self.course.into[index];
        let before = way.before?;
        Some(match way.by {
            By::Print => {
                let stroke = &self.strokes[before];
                Approach::plain(stroke, &self.strokes[index], stroke.silence_after)
            }
            By::Skip(silence) => self.jump(before, index, silence),
            By::Anew => Approach { join: Join::Entry, ..self.jump(before, index, self.reach.free_rest) },
        })
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

    fn jump(&self, before: usize, index: usize, silence: Seconds) -> Approach {
        let before = &self.strokes[before];
        let join = if before.kind == StrokeKind::Tremolo || silence >= self.reach.free_rest {
            Join::Entry
        } else if silence.micros > 0 {
            Join::AfterRest
        } else {
            Join::Continues
        };
        Approach { join, ..Approach::plain(before, &self.strokes[index], silence) }
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
        let (stroke, weights) = (&self.strokes[index], self.weights);
        let emphasis = stroke.emphasis;
        if direction == BowDirection::Up {
            let beat = match emphasis.metric {
                MetricPlace::Downbeat => weights.downbeat,
                MetricPlace::MidBar => weights.mid_bar,
                MetricPlace::Beat | MetricPlace::Offbeat => 0,
            };
            tally.add(Term::Beat, beat);
            tally.add(Term::Accent, weights.accent * i64::from(emphasis.accent) / 100);
            if stroke.join != Join::Continues && emphasis.metric == MetricPlace::Downbeat {
                tally.add(Term::Entry, weights.entry);
            }
            // A last note that grows may well end up (treatises on the last note of a phrase).
            if stroke.level_end <= stroke.level_start {
                tally.add(Term::Ending, weights.ending * i64::from(stroke.phrase.joint_after) / 100);
            }
        } else {
            match emphasis.metric {
                MetricPlace::Beat => tally.add(Term::Beat, weights.beat),
                MetricPlace::Offbeat => tally.add(Term::Beat, weights.offbeat),
                MetricPlace::Downbeat | MetricPlace::MidBar => {}
            }
            // A stroke that holds a downbeat itself is weighed as one, not as the way to the next.
            let leads_on = emphasis.metric != MetricPlace::Downbeat
                && next.is_some_and(|next| {
                    next.emphasis.metric == MetricPlace::Downbeat && next.join == Join::Continues
                });
            let into_middle = emphasis.metric != MetricPlace::Downbeat
                && next.is_some_and(|next| {
                    next.emphasis.metric == MetricPlace::MidBar && next.join == Join::Continues
                });
            if into_middle {
                tally.add(Term::Upbeat, weights.upbeat_mid_bar);
            }
            if leads_on {
                tally.add(Term::Upbeat, weights.upbeat);
                if stroke.join != Join::Continues {
                    tally.add(Term::Entry, weights.entry);
                }
            }
        }
        let rise = i64::from(stroke.level_end.0 - stroke.level_start.0);
        let against = if direction == BowDirection::Down { rise } else { -rise };
        tally.add(Term::Swell, weights.swell * against.max(0) / 100);
        let first = self.leanings.partition_point(|leaning| leaning.stroke < index);
        for leaning in self.leanings[first..].iter().take_while(|leaning| leaning.stroke == index) {
            if leaning.direction != direction {
                tally.add(leaning.term, leaning.thousandths);
            }
        }
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
        Pace {
            preferred,
            preferred_octaves: milli_octaves(preferred),
            slowest_octaves: milli_octaves(distance(stroke.speed.slowest)),
            fastest_octaves: milli_octaves(distance(stroke.speed.fastest)),
        }
    }

    /// Travelling over a number of cells. A cell is an interval, so travel is known to half a cell:
    /// the speed nearest the preferred one is taken, and short notes do not pay for the grid.
    pub(crate) fn travel<T: Tally>(&self, pace: &Pace, cells: usize, tally: &mut T) {
        let [least, most] = self.spans[cells];
        let octaves = if pace.preferred < least.0 {
            least.1
        } else if pace.preferred > most.0 {
            most.1
        } else {
            pace.preferred_octaves
        };
        let off = i64::from(octaves - pace.preferred_octaves);
        if off > 0 {
            tally.add(Term::Speed, self.weights.speed_fast * off / 1000);
        } else {
            tally.add(Term::Speed, self.weights.speed_slow * -off / 1000);
        }
        let over = i64::from(octaves - pace.fastest_octaves).max(0);
        let under = i64::from(pace.slowest_octaves - octaves).max(0);
        tally.add(Term::SpeedLimit, self.weights.speed_limit * (over + under) / 1000);
    }

    /// Linking one stroke to the next; `distance` in cells between where the bow was and where it is
    /// set down. `None` where the approach does not allow the link.
    pub(crate) fn link<T: Tally>(
        &self,
        approach: Option<&Approach>,
        link: Link,
        distance: usize,
        tally: &mut T,
    ) -> bool {
        let Some(approach) = approach else { return link == Link::Reset };
        let weights = self.weights;
        let paid = |price: i64| price * approach.share / 100;
        match (approach.join, link) {
            (Join::Entry, Link::Reset) => {}
            (Join::Continues | Join::AfterRest, Link::Change) => {}
            (Join::Continues, Link::Hooked) => {
                let mut relief = weights.hook_joint_relief * approach.joint / 100;
                if approach.shorter {
                    relief = relief.max(weights.hook_short_relief);
                }
                tally.add(Term::Hook, paid(weights.hook * (100 - relief).max(0) / 100));
                if approach.slurred {
                    tally.add(Term::Hook, paid(weights.hook_by_slur));
                }
            }
            (Join::AfterRest, Link::Hooked) => tally.add(Term::Hook, paid(weights.hook_over_rest)),
            (Join::Continues, Link::Retake) => {
                let relief = weights.retake_joint_relief * approach.joint / 100;
                tally.add(Term::Retake, paid(weights.retake * (100 - relief).max(0) / 100));
                self.lift(approach, distance, tally);
            }
            (Join::AfterRest, Link::Reset) => {
                let needed = self.reach.lift.micros + self.reach.carry.micros;
                let tight = (needed * 100 / approach.silence.micros.max(1)).min(200);
                tally.add(Term::Reset, paid(weights.reset * tight / 100));
                self.lift(approach, distance, tally);
            }
            _ => return false,
        }
        true
    }

    /// A lift: its distance, and the time it lacks. Both are linear in the distance (what a carry over
    /// the whole bow lacks is shared out evenly over its cells), which keeps the search linear too.
    fn lift<T: Tally>(&self, approach: &Approach, distance: usize, tally: &mut T) {
        let weights = self.weights;
        let (distance, cells) = (distance as i64, self.cells as i64);
        let paid = |price: i64| price * approach.share / 100;
        tally.add(Term::Retake, paid(weights.retake_distance) / cells * distance);
        let available = approach.silence.micros + approach.lendable.micros;
        let lacking_here = (self.reach.lift.micros - available).max(0);
        let lacking_far =
            (self.reach.lift.micros + self.reach.carry.micros - available).max(0) - lacking_here;
        tally.add(Term::RetakeTime, paid(weights.retake_lack) * lacking_here / 100_000);
        tally.add(Term::RetakeTime, paid(weights.retake_lack) * lacking_far / 100_000 / cells * distance);
    }

    /// The middle of a cell, thousandths of the hair.
    pub(crate) fn thousandths(&self, cell: usize) -> i64 {
        (2 * cell as i64 + 1) * 1000 / (2 * self.cells as i64)
    }
}
