//! One lane under one system.

use std::fmt::Write as _;

use arcata_bow::{Link, StrokeKind};
use arcata_score::{BowDirection, Moment};
use arcata_xml::{escape, seen};

use super::shapes::{PaperPoint, arrowhead, down_sign, spot, tapered, thin, up_sign};
use super::{Axis, LanePace, LaneSign, LaneStroke};
use crate::fonts::WORDS;
use crate::sheet::rounded;

/// Where a lane stands and what is written beside it.
#[derive(Clone, Debug)]
pub(crate) struct LaneFrame<'a> {
    /// Upper edge, mm: the signs stand here, the frog below them.
    pub(crate) top: f64,
    /// From frog to tip, mm.
    pub(crate) height: f64,
    /// What the frog is called.
    pub(crate) frog: &'a str,
    /// What the tip is called.
    pub(crate) tip: &'a str,
    /// A number or name in front of the lane, empty for none.
    pub(crate) name: &'a str,
    /// Ends of the bars, mm from the left.
    pub(crate) barlines: &'a [f64],
}

/// Room above the frog for the signs.
pub(crate) const SIGNS: f64 = 2.9;
/// Room below the tip.
pub(crate) const FOOT: f64 = 1.2;
const SIGN_HEIGHT: f64 = 2.1;
/// A stroke at the frog and at the tip.
const THICK: f64 = 1.25;
const THIN: f64 = 0.38;
/// What a stop or a lift leaves open.
const GAP: f64 = 0.9;

/// Colours from cool to warm, dark enough for print; none of them says anything alone.
const fn colour(pace: LanePace) -> &'static str {
    match pace {
        LanePace::Fitting => "#1d4b63",
        LanePace::Starved => "#6a3d7c",
        LanePace::Rushed => "#b04a12",
    }
}

/// Everything that one lane needs to place its strokes.
struct Lane<'a> {
    frame: &'a LaneFrame<'a>,
    axis: &'a Axis,
}

/// Part of a stroke that a system shows.
struct ShownStroke {
    from: PaperPoint,
    to: PaperPoint,
    thick_from: f64,
    thick_to: f64,
}

/// The lane as SVG, in millimetres.
pub(crate) fn draw(frame: &LaneFrame<'_>, axis: &Axis, strokes: &[LaneStroke]) -> String {
    let lane = Lane { frame, axis };
    let mut out = format!(
        r#"<g class="lane" data-frog="{}" data-tip="{}">"#,
        rounded(lane.height_of(0.0)),
        rounded(lane.height_of(1000.0))
    );
    lane.rails(&mut out);
    for (index, stroke) in strokes.iter().enumerate() {
        let before = index.checked_sub(1).and_then(|index| strokes.get(index));
        lane.stroke(stroke, before, strokes.get(index + 1), &mut out);
    }
    out.push_str("</g>");
    out
}

impl Lane<'_> {
    fn height_of(&self, thousandths: f64) -> f64 {
        self.frame.top + SIGNS + self.frame.height * thousandths / 1000.0
    }

    fn rails(&self, out: &mut String) {
        let (left, right) = (self.axis.left() - 1.5, self.axis.right());
        let (frog, middle, tip) = (self.height_of(0.0), self.height_of(500.0), self.height_of(1000.0));
        let across = |y: f64| [PaperPoint { x: left, y }, PaperPoint { x: right, y }];
        out.push_str(r#"<g class="rails">"#);
        out.push_str(&thin(&across(frog), 0.32, ""));
        out.push_str(&thin(&across(middle), 0.1, r#" stroke-dasharray="0.3 0.9""#));
        out.push_str(&thin(&across(tip), 0.12, ""));
        for barline in self.frame.barlines {
            let x = *barline;
            out.push_str(&thin(
                &[PaperPoint { x, y: frog }, PaperPoint { x, y: tip }],
                0.1,
                r#" opacity="0.55""#,
            ));
        }
        for (word, y) in [(self.frame.frog, frog + 0.7), (self.frame.tip, tip + 0.6)] {
            self.word(word, left - 0.8, y, r#" font-style="italic""#, out);
        }
        if !self.frame.name.is_empty() {
            self.word(self.frame.name, left - 7.5, middle + 0.9, r#" font-weight="bold""#, out);
        }
        out.push_str("</g>");
    }

    fn word(&self, word: &str, x: f64, y: f64, more: &str, out: &mut String) {
        let _ = write!(
            out,
            r#"<text x="{}" y="{}" font-family="{WORDS}" font-size="2.4" text-anchor="end" fill="currentColor"{more}>{}</text>"#,
            rounded(x),
            rounded(y),
            escape(&seen(word))
        );
    }

    fn stroke(
        &self,
        stroke: &LaneStroke,
        before: Option<&LaneStroke>,
        after: Option<&LaneStroke>,
        out: &mut String,
    ) {
        let Some(shown) = self.shown(stroke, after) else { return };
        let _ = write!(
            out,
            r#"<g class="stroke {}" data-stroke="{}" data-bow="{}" data-from="{}" data-to="{}" data-x="{} {}" data-y="{} {}" color="{}" fill="currentColor">"#,
            stroke.pace.name(),
            stroke.index,
            if stroke.direction == BowDirection::Down { "down" } else { "up" },
            stroke.start,
            stroke.end,
            rounded(shown.from.x),
            rounded(shown.to.x),
            rounded(shown.from.y),
            rounded(shown.to.y),
            colour(stroke.pace)
        );
        let begins_here = stroke.begins >= self.axis.begins();
        if stroke.pace != LanePace::Fitting {
            self.wanted(stroke, &shown, out);
        }
        body(stroke, &shown, out);
        self.pulses(stroke, &shown, out);
        if begins_here {
            self.beginning(stroke, before, &shown, out);
        }
        out.push_str("</g>");
    }

    /// The part of a stroke inside the system: a stroke that began on the line before goes on at the height
    /// that it has reached.
    fn shown(&self, stroke: &LaneStroke, after: Option<&LaneStroke>) -> Option<ShownStroke> {
        let (begins, ends) = (stroke.begins.max(self.axis.begins()), stroke.ends.min(self.axis.ends()));
        let left = self.axis.place(begins);
        let right = self.axis.place(ends).max(left + 0.2);
        if begins >= ends && stroke.ends > stroke.begins {
            return None;
        }
        let turns = after.is_some_and(|after| {
            after.link == Link::Change && after.begins == stroke.ends && after.begins < self.axis.ends()
        });
        let open = if turns || stroke.ends > self.axis.ends() { 0.0 } else { GAP };
        let lift = after.is_some_and(|after| after.link == Link::Retake && after.begins == stroke.ends);
        let open = if lift { ((right - left) * 0.35).clamp(open, 4.5) } else { open };
        let right = (right - open).max(left + 0.3);
        let (from, to) = (place_at(stroke, begins), place_at(stroke, ends));
        Some(ShownStroke {
            from: PaperPoint { x: left, y: self.height_of(from) },
            to: PaperPoint { x: right, y: self.height_of(to) },
            thick_from: thickness(from),
            thick_to: thickness(to),
        })
    }

    /// Dots to where the speed that the dynamic prefers would have led, up to the end of the bow; a small
    /// bar on the rail where the bow would have been used up.
    fn wanted(&self, stroke: &LaneStroke, shown: &ShownStroke, out: &mut String) {
        if stroke.begins < self.axis.begins() || stroke.ends > self.axis.ends() {
            return;
        }
        let (start, wanted) = (f64::from(stroke.start), stroke.wanted_end as f64);
        let end = wanted.clamp(0.0, 1000.0);
        let share = if (wanted - start).abs() < 1.0 { 1.0 } else { (end - start) / (wanted - start) };
        let to = PaperPoint { x: shown.from.x + (shown.to.x - shown.from.x) * share, y: self.height_of(end) };
        out.push_str(&thin(&[shown.from, to], 0.2, r#" stroke-dasharray="0.2 0.7" stroke-linecap="round""#));
        if (wanted - end).abs() > 1.0 {
            let bar = [PaperPoint { x: to.x, y: to.y - 0.9 }, PaperPoint { x: to.x, y: to.y + 0.9 }];
            out.push_str(&thin(&bar, 0.35, ""));
        }
    }

    fn pulses(&self, stroke: &LaneStroke, shown: &ShownStroke, out: &mut String) {
        for pulse in stroke.pulses.iter().filter(|pulse| **pulse > self.axis.begins()) {
            let place = place_at(stroke, *pulse);
            let along = |x: f64| (x - shown.from.x) / (shown.to.x - shown.from.x).max(0.01);
            let at = shown.from.towards(shown.to, along(self.axis.place(*pulse)).clamp(0.0, 1.0));
            if stroke.kind == StrokeKind::HookedPair {
                out.push_str(&stop(at));
            } else {
                out.push_str(&spot(at, thickness(place) / 2.0 + 0.32));
            }
        }
    }

    /// How the arm gets to the stroke, and its sign.
    fn beginning(
        &self,
        stroke: &LaneStroke,
        before: Option<&LaneStroke>,
        shown: &ShownStroke,
        out: &mut String,
    ) {
        match stroke.link {
            Link::Change => out.push_str(&spot(shown.from, shown.thick_from / 2.0)),
            Link::Hooked => out.push_str(&stop(PaperPoint { x: shown.from.x - GAP / 2.0, y: shown.from.y })),
            Link::Retake | Link::Reset => {
                if let Some(end) = before.and_then(|before| self.shown(before, Some(stroke)))
                    && stroke.link == Link::Retake
                {
                    out.push_str(&lifted(end.to, shown.from));
                }
                let _ = write!(
                    out,
                    r##"<circle cx="{}" cy="{}" r="{}" fill="#fff" stroke="currentColor" stroke-width="0.25"/>"##,
                    rounded(shown.from.x),
                    rounded(shown.from.y),
                    rounded(shown.thick_from / 2.0 + 0.2)
                );
            }
        }
        if stroke.sign == LaneSign::Worked {
            let at = PaperPoint { x: shown.from.x + 0.3, y: self.frame.top + SIGN_HEIGHT };
            let drawn = match stroke.direction {
                BowDirection::Down => down_sign(at, SIGN_HEIGHT),
                BowDirection::Up => up_sign(at, SIGN_HEIGHT),
            };
            let _ = write!(out, r##"<g class="sign" color="#000">{drawn}</g>"##);
        }
    }
}

/// The place in the bow at a moment of a stroke, thousandths.
fn place_at(stroke: &LaneStroke, moment: Moment) -> f64 {
    let (start, end) = (f64::from(stroke.start), f64::from(stroke.end));
    let whole = stroke.ends.since_start() - stroke.begins.since_start();
    if !whole.is_positive() {
        return start;
    }
    let share = (moment.since_start() - stroke.begins.since_start()).to_f64() / whole.to_f64();
    start + (end - start) * share.clamp(0.0, 1.0)
}

fn thickness(thousandths: f64) -> f64 {
    THICK + (THIN - THICK) * thousandths / 1000.0
}

/// The stroke itself: whole where it fits, broken where the tone starves, with arrowheads where it rushes.
fn body(stroke: &LaneStroke, shown: &ShownStroke, out: &mut String) {
    let piece = |from: f64, to: f64| {
        let thick = |share: f64| shown.thick_from + (shown.thick_to - shown.thick_from) * share;
        let (start, end) = (shown.from.towards(shown.to, from), shown.from.towards(shown.to, to));
        let drawn = tapered(start, end, thick(from), thick(to));
        if stroke.open {
            format!(r##"<g class="open" fill="#fff" stroke="currentColor" stroke-width="0.18">{drawn}</g>"##)
        } else {
            drawn
        }
    };
    let length = (shown.to.x - shown.from.x).hypot(shown.to.y - shown.from.y);
    match stroke.pace {
        LanePace::Starved => {
            let pieces = (length / 2.4).floor().clamp(2.0, 60.0);
            #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "2 to 60")]
            for index in 0..pieces as u32 {
                let from = f64::from(index) / pieces;
                out.push_str(&piece(from, from + 0.68 / pieces));
            }
        }
        LanePace::Fitting | LanePace::Rushed => out.push_str(&piece(0.0, 1.0)),
    }
    if stroke.pace == LanePace::Rushed {
        for share in [0.45, 0.75] {
            let at = shown.from.towards(shown.to, share);
            out.push_str(&arrowhead(shown.from, shown.to, at, 1.2, 0.32));
        }
    }
    if stroke.kind == StrokeKind::Tremolo {
        out.push_str(&trembling(shown, length));
    }
}

/// Many short strokes about one place.
fn trembling(shown: &ShownStroke, length: f64) -> String {
    let count = (length / 0.8).floor().clamp(2.0, 200.0);
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "2 to 200")]
    let points: Vec<PaperPoint> = (0..=count as u32)
        .map(|index| {
            let on = shown.from.towards(shown.to, f64::from(index) / count);
            let aside = if index % 2 == 0 { 0.7 } else { -0.7 };
            PaperPoint { x: on.x, y: on.y + aside }
        })
        .collect();
    thin(&points, 0.2, "")
}

/// The bow stands on the string.
fn stop(at: PaperPoint) -> String {
    thin(&[PaperPoint { x: at.x, y: at.y - 1.2 }, PaperPoint { x: at.x, y: at.y + 1.2 }], 0.32, "")
}

/// The bow goes through the air from one place to another, with an arrow where it comes down.
fn lifted(from: PaperPoint, to: PaperPoint) -> String {
    let high = from.y.min(to.y) - 2.2;
    let (cx, cy) = (f64::midpoint(from.x, to.x), high);
    let path = format!(
        r#"<path d="M{} {} Q{} {} {} {}" fill="none" stroke="currentColor" stroke-width="0.22" stroke-dasharray="0.7 0.45"/>"#,
        rounded(from.x),
        rounded(from.y),
        rounded(cx),
        rounded(cy),
        rounded(to.x),
        rounded(to.y)
    );
    let last = PaperPoint { x: cx, y: cy };
    format!("{path}{}", arrowhead(last, to, to.towards(last, 0.18), 0.9, 0.22))
}
