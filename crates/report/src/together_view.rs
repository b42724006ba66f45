//! What lines do together, as data.

use std::collections::BTreeMap;
use std::ops::RangeInclusive;
use std::sync::Arc;

use arcata_bow::together::{Agreement, Departure, Downbeat, Group, Speaking, Together};
use arcata_bow::together::{DepartureReason, departures, downbeats, groups};
use arcata_bow::{Line, Plan, Term};
use arcata_languages::Wording;
use arcata_review::beats::beat_in_bar;
use arcata_score::places::{beat_exact, beat_said};
use arcata_score::{Length, Score};
use schemars::JsonSchema;
use serde::Serialize;

use crate::plan_view::{bar_label, direction_name, terms};
use crate::review_view::movement_of;
use crate::term_words::worse;

pub(crate) const PRINTED_MARK: &str = "printed mark";
pub(crate) const ANCHOR: &str = "anchor";
pub(crate) const EVEN: &str = "even";

/// Which lines go together, and where one goes its own way.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct TogetherView {
    /// Lines that play one rhythm with the same slurs for some bars.
    pub groups: Vec<GroupView>,
    /// Stretches that go against their group, or not as their figure went elsewhere.
    pub departures: Vec<DepartureView>,
    /// What bowing alike costs all lines of the score more than each by itself would, thousandths of a
    /// point; what the departures pay is in it.
    pub more: i64,
}

/// Lines that play one rhythm with the same slurs.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct GroupView {
    /// The number of its movement, where the file has several.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub movement: Option<String>,
    /// First bar as printed.
    pub from_bar: String,
    /// Last bar as printed.
    pub to_bar: String,
    /// Names of the lines.
    pub lines: Vec<String>,
    /// Strokes that they share.
    pub strokes: usize,
    /// How their notes lie to each other: `in unison`, `in octaves`, `in parallel`, `in one rhythm`.
    pub relation: &'static str,
}

/// A stretch of a line that goes its own way.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct DepartureView {
    /// Name of the line.
    pub line: String,
    /// The number of its movement, where the file has several.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub movement: Option<String>,
    /// Bar of its first stroke as printed.
    pub bar: String,
    /// Beat from 1 as an exact fraction.
    pub beat: String,
    /// The beat as it is said.
    #[serde(skip)]
    pub spoken_beat: String,
    /// Bar of its last stroke.
    pub to_bar: String,
    /// How many strokes depart.
    pub strokes: usize,
    /// What they depart from: `section` or `figure`.
    pub from: &'static str,
    /// `printed mark`, `anchor`, `even` (either way costs the same), or what going along would bring more
    /// of.
    pub reason: String,
    /// What going along at its first stroke would cost more, thousandths of a point, term by term.
    pub dearer: BTreeMap<&'static str, i64>,
}

/// Who begins a stroke on which downbeat.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct DownbeatsView {
    /// Names of all lines of the score.
    pub lines: Vec<String>,
    /// The bars asked for.
    pub bars: Vec<DownbeatView>,
}

/// One downbeat.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct DownbeatView {
    /// The number of its movement, where the file has several.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub movement: Option<String>,
    /// Bar as printed.
    pub bar: String,
    /// Bar by position in the file, from 1.
    pub bar_ordinal: u32,
    /// For each line `down`, `up`, `goes on` (a stroke goes on over the barline) or `rests`.
    pub lines: Vec<&'static str>,
    /// Whether a bow goes on over the barline and none begins.
    pub unspoken: bool,
}

impl TogetherView {
    /// What concerns the bars (indices) and the lines (indices) asked for.
    #[must_use]
    pub fn new(
        score: &Score,
        lines: &[Line],
        (together, agreements): (&Together, &[Agreement]),
        bars: &RangeInclusive<u32>,
        shown: &[usize],
        wording: &Wording,
    ) -> Self {
        let touches = |group: &Group| {
            group.bars.start <= *bars.end()
                && group.bars.end > *bars.start()
                && group.lines.iter().any(|line| shown.contains(line))
        };
        let inside = |departure: &Departure| {
            let first = &lines[departure.line].strokes[departure.strokes.start];
            shown.contains(&departure.line) && bars.contains(&first.bar)
        };
        let groups = groups(score, lines).into_iter().filter(touches);
        let departing = departures(lines, together, agreements).into_iter().filter(inside);
        Self {
            groups: groups.map(|group| GroupView::of(score, lines, &group)).collect(),
            departures: departing
                .map(|departure| DepartureView::of(score, lines, &departure, wording))
                .collect(),
            more: together.total.total() - together.apart.values().sum::<i64>(),
        }
    }
}

impl GroupView {
    fn of(score: &Score, lines: &[Line], group: &Group) -> Self {
        Self {
            movement: score.movement_said(group.bars.start).map(str::to_owned),
            from_bar: bar_label(score, group.bars.start),
            to_bar: bar_label(score, group.bars.end.saturating_sub(1)),
            lines: group.lines.iter().map(|line| lines[*line].name.clone()).collect(),
            strokes: group.strokes,
            relation: group.relation.phrase(),
        }
    }
}

impl DepartureView {
    fn of(score: &Score, lines: &[Line], departure: &Departure, wording: &Wording) -> Self {
        let line = &lines[departure.line];
        let first = &line.strokes[departure.strokes.start];
        let last = &line.strokes[departure.strokes.end - 1];
        let meter = score.parts.get(line.part).and_then(|part| part.meter_at(first.bar));
        let beat = meter.map_or(Length::new(1, 1), |meter| beat_in_bar(meter, first.offset));
        Self {
            line: line.name.clone(),
            movement: movement_of(score, line),
            bar: bar_label(score, first.bar),
            beat: beat_exact(beat),
            spoken_beat: beat_said(beat),
            to_bar: bar_label(score, last.bar),
            strokes: departure.departing,
            from: if departure.term == Term::Unity { "section" } else { "figure" },
            reason: match departure.reason {
                DepartureReason::PrintedMark => PRINTED_MARK.to_owned(),
                DepartureReason::Anchor => ANCHOR.to_owned(),
                DepartureReason::Even => EVEN.to_owned(),
                DepartureReason::Dearer(term) => wording.word(worse(term)),
            },
            dearer: terms(&departure.dearer),
        }
    }
}

impl DownbeatsView {
    /// The downbeats of the bars (indices) asked for.
    #[must_use]
    pub fn new(score: &Score, lines: &[Line], plans: &[Arc<Plan>], bars: &RangeInclusive<u32>) -> Self {
        let told = downbeats(score, lines, plans).into_iter().filter(|downbeat| bars.contains(&downbeat.bar));
        let names = line_names(lines);
        let bars = told.map(|downbeat| DownbeatView::of(score, lines, &names, &downbeat)).collect();
        Self { lines: names, bars }
    }
}

/// The names of lines, each once: a player has a line in every movement.
pub(crate) fn line_names(lines: &[Line]) -> Vec<String> {
    let mut names: Vec<String> = Vec::new();
    for line in lines {
        if !names.contains(&line.name) {
            names.push(line.name.clone());
        }
    }
    names
}

/// What the line of a name does on a downbeat, in the movement that holds it; it rests where the movement has none.
pub(crate) fn speaking((score, lines): (&Score, &[Line]), name: &str, downbeat: &Downbeat) -> Speaking {
    let movement = score.movement_of(downbeat.bar);
    let here = lines.iter().position(|line| line.movement == movement && line.name == name);
    here.and_then(|line| downbeat.lines.get(line)).copied().unwrap_or(Speaking::Rests)
}

impl DownbeatView {
    fn of(score: &Score, lines: &[Line], names: &[String], downbeat: &Downbeat) -> Self {
        let does = |speaking: Speaking| match speaking {
            Speaking::Begins(direction) => direction_name(direction),
            Speaking::GoesOn => "goes on",
            Speaking::Rests => "rests",
        };
        Self {
            movement: score.movement_said(downbeat.bar).map(str::to_owned),
            bar: bar_label(score, downbeat.bar),
            bar_ordinal: downbeat.bar + 1,
            lines: names.iter().map(|name| does(speaking((score, lines), name, downbeat))).collect(),
            unspoken: downbeat.is_unspoken(),
        }
    }
}
