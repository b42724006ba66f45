//! The bow plan as data.

use std::collections::BTreeMap;
use std::ops::RangeInclusive;

use arcata_bow::plan::{
    Alternative, BowReach, Comes, Difference, DifferenceKind, Leads, Standing, Sureness, Turn, Weighed,
    second_pass,
};
use arcata_bow::{Cost, Line, Link, Plan, PlannedStroke, Profile, Road, Stroke, StrokeKind, Style, Weights};
use arcata_languages::{Argument, SaidPlace, Saying, Wording};
use arcata_review::beats::beat_in_bar;
use arcata_review::{repair_words, words};
use arcata_score::places::{beat_exact, beat_said};
use arcata_score::{BowDirection, Length, Score};
use schemars::JsonSchema;
use serde::Serialize;

use crate::repairs_view::RepairsView;
use crate::review_view::movement_of;
use crate::term_words::gains_and_losses;
use crate::together_view::{DownbeatsView, TogetherView};
use crate::ways_view::{AnchorsView, EndingView};

/// The plan of one score.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct PlanView {
    /// Always `arcata-plan`.
    #[schemars(extend("const" = "arcata-plan"))]
    pub format: &'static str,
    /// Version of this format.
    #[schemars(extend("const" = 1))]
    pub version: u32,
    /// The file as named.
    pub file: String,
    /// Title of the work.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub title: Option<String>,
    /// The style that it is planned in: `concert`, `dance`, `early`.
    pub style: &'static str,
    /// What an up-bow on a downbeat, one note shorter than a bar, costs there: the yardstick of all costs, thousandths of a point.
    pub yardstick: i64,
    /// What was assumed because the score does not say it.
    pub assumptions: Vec<String>,
    /// The bowing lines.
    pub lines: Vec<PlannedLineView>,
    /// Which lines go together; absent where each line was planned for itself.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub together: Option<TogetherView>,
    /// Who begins a stroke on which downbeat.
    pub downbeats: DownbeatsView,
    /// In whose words it is.
    #[serde(skip)]
    pub wording: Wording,
}

/// One planned line.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct PlannedLineView {
    /// Name.
    pub name: String,
    /// The number of its movement, where the file has several.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub movement: Option<String>,
    /// The heading of its movement as printed, for people.
    #[serde(skip)]
    pub heading: Option<String>,
    /// The strokes, in order.
    pub strokes: Vec<PlanStrokeView>,
    /// Repeated stretches: how the second pass begins.
    pub turns: Vec<TurnView>,
    /// What the whole line costs, thousandths of a point, term by term.
    pub cost: BTreeMap<&'static str, i64>,
    /// Ways to bow the bars asked for: the best, then others, the cheapest first.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub alternatives: Vec<AlternativeView>,
    /// What the anchors that were asked for come to.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub anchors: Option<AnchorsView>,
    /// Ways to end a bar on the bow that was asked for.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub ending: Option<EndingView>,
    /// What could be changed in the slurs, and what it buys.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub repairs: Option<RepairsView>,
}

/// One stroke.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct PlanStrokeView {
    /// Bar as printed.
    pub bar: String,
    /// Bar by position in the file, from 1.
    pub bar_ordinal: u32,
    /// Beat from 1 as an exact fraction.
    pub beat: String,
    /// The beat as it is said.
    #[serde(skip)]
    pub spoken_beat: String,
    /// Score time from the first onset to the last note's end, whole notes as a fraction.
    pub length: String,
    /// Seconds on the string.
    pub seconds: f64,
    /// Seconds of silence after it.
    pub silence: f64,
    /// Attacks in the stroke.
    pub notes: u16,
    /// Kind of stroke.
    pub kind: &'static str,
    /// `down` or `up`.
    pub direction: &'static str,
    /// How it follows the stroke before: `change`, `hooked`, `retake`, `reset`.
    pub link: &'static str,
    /// Where it begins, thousandths of the usable hair from the frog.
    pub start: u16,
    /// Where it ends.
    pub end: u16,
    /// The mark printed on it: `down` or `up`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub printed: Option<&'static str>,
    /// How many players in a hundred would go this way; absent where it was not asked for, and in a tremolo.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub sure: Option<u8>,
    /// Whether two ways are nearly equal.
    #[serde(skip)]
    pub open: bool,
    /// What it costs, thousandths of a point, term by term.
    pub cost: BTreeMap<&'static str, i64>,
}

/// How a repeated stretch comes back to its beginning, or how the line goes on behind one that crosses
/// another.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct TurnView {
    /// Bar that it leads to, as printed.
    pub bar: String,
    /// Bar of the last stroke before it.
    pub from_bar: String,
    /// What leads there: `repeat`, `da capo`, `dal segno`, `onward`.
    pub road: &'static str,
    /// The link into the second pass.
    pub link: &'static str,
    /// The bow that the second pass begins with, as the first: `down` or `up`.
    pub begins: &'static str,
    /// How it comes to that bow: `by itself`, `free`, `lifted` (in the rest), `retaken`, or `reversed`: there
    /// is no time to lift, so that who goes on as it comes plays the second pass on the other bow.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub comes: Option<&'static str>,
    /// Seconds of rest at the turn, and what the last note may lend.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub time_to_lift: Option<f64>,
    /// Seconds that lifting the bow to the beginning takes.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub lift_takes: Option<f64>,
    /// Whether the search chose with this price in mind: `in search`, or `afterwards` where the stretch
    /// crosses another one.
    pub weighed: &'static str,
    /// What it costs.
    pub cost: BTreeMap<&'static str, i64>,
}

/// Another way to bow a passage.
#[derive(Clone, Debug, Serialize, JsonSchema)]
pub struct AlternativeView {
    /// Its name in the trade's words.
    pub name: String,
    /// Which of the ways it is that players ask for first: `as it comes`, `other start`, `last two hooked`; mostly none.
    pub standing: Vec<&'static str>,
    /// What it costs more than the best, thousandths of a point.
    pub more: i64,
    /// The difference, term by term.
    pub cost_change: BTreeMap<&'static str, i64>,
    /// What is gained against the best, in words.
    pub gains: Vec<String>,
    /// What is lost, in words.
    pub losses: Vec<String>,
    /// The directions of the bars asked for.
    pub directions: Vec<&'static str>,
    /// The strokes of the bars asked for.
    pub strokes: Vec<PlanStrokeView>,
}

/// `down` or `up`.
#[must_use]
pub const fn direction_name(direction: BowDirection) -> &'static str {
    match direction {
        BowDirection::Down => "down",
        BowDirection::Up => "up",
    }
}

/// The link in one word.
#[must_use]
pub const fn link_name(link: Link) -> &'static str {
    match link {
        Link::Change => "change",
        Link::Hooked => "hooked",
        Link::Retake => "retake",
        Link::Reset => "reset",
    }
}

const fn kind_name(kind: StrokeKind) -> &'static str {
    match kind {
        StrokeKind::Single => "single",
        StrokeKind::Short => "short",
        StrokeKind::Slurred => "slurred",
        StrokeKind::Pulsed => "pulsed",
        StrokeKind::HookedPair => "hooked pair",
        StrokeKind::BrokenChord => "broken chord",
        StrokeKind::Tremolo => "tremolo",
    }
}

pub(crate) fn terms(cost: &Cost) -> BTreeMap<&'static str, i64> {
    cost.parts().map(|(term, share)| (term.name(), share)).collect()
}

impl PlanView {
    /// A plan view with its lines still to come.
    #[must_use]
    pub fn new(file: &str, score: &Score, assumptions: Vec<String>, wording: Wording) -> Self {
        let (file, title) = (file.to_owned(), score.title.clone());
        let downbeats = DownbeatsView { lines: Vec::new(), bars: Vec::new() };
        Self {
            format: "arcata-plan",
            version: 1,
            file,
            title,
            style: Style::default().name(),
            yardstick: Weights::default().downbeat,
            assumptions,
            lines: Vec::new(),
            together: None,
            downbeats,
            wording,
        }
    }

    /// Says for which player the lines are planned, in which style; concert where nothing is said.
    #[must_use]
    pub fn planned_for(mut self, profile: &Profile) -> Self {
        self.style = profile.style.name();
        self.yardstick = profile.weight("downbeat").unwrap_or(self.yardstick);
        self
    }

    /// Add a line; only strokes that begin in `bars` (indices) are shown. `reach` is the player's, by which
    /// the second passes of repeats are judged.
    pub fn add(
        &mut self,
        score: &Score,
        line: &Line,
        plan: &Plan,
        bars: &RangeInclusive<u32>,
        others: &[Alternative],
        reach: BowReach,
    ) {
        let strokes = line
            .strokes
            .iter()
            .zip(&plan.strokes)
            .filter(|(stroke, _)| bars.contains(&stroke.bar))
            .map(|(stroke, planned)| PlanStrokeView::of(score, line, stroke, planned))
            .collect();
        let turns = plan
            .turns
            .iter()
            .filter(|turn| line.strokes.get(turn.to).is_some_and(|stroke| bars.contains(&stroke.bar)))
            .map(|turn| TurnView::of(score, line, plan, turn, reach))
            .collect();
        let alternatives =
            others.iter().map(|other| AlternativeView::of(score, line, other, bars, &self.wording)).collect();
        let cost = terms(&plan.total);
        self.lines.push(PlannedLineView {
            name: line.name.clone(),
            movement: movement_of(score, line),
            heading: movement_of(score, line)
                .and_then(|_| Some(score.movements.get(line.movement)?.name().to_owned())),
            strokes,
            turns,
            cost,
            alternatives,
            anchors: None,
            ending: None,
            repairs: None,
        });
    }
}

impl PlannedLineView {
    /// Says how sure the plan is of each stroke that is shown; `sureness` is that of all strokes of the line.
    pub fn say_how_sure(&mut self, line: &Line, bars: &RangeInclusive<u32>, sureness: &[Option<Sureness>]) {
        let shown = line.strokes.iter().zip(sureness).filter(|(stroke, _)| bars.contains(&stroke.bar));
        for (view, (_, sureness)) in self.strokes.iter_mut().zip(shown) {
            view.sure = sureness.map(|sureness| sureness.0);
            view.open = sureness.is_some_and(Sureness::is_open);
        }
    }
}

pub(crate) fn bar_label(score: &Score, bar: u32) -> String {
    score.bar_label(bar).to_owned()
}

/// Beat of a stroke in its bar, from 1.
fn beat(score: &Score, line: &Line, stroke: &Stroke) -> Length {
    let one = Length::new(1, 1);
    let meter = score.parts.get(line.part).and_then(|part| part.meter_at(stroke.bar));
    meter.map_or(one, |meter| beat_in_bar(meter, stroke.offset))
}

impl PlanStrokeView {
    pub(crate) fn of(score: &Score, line: &Line, stroke: &Stroke, planned: &PlannedStroke) -> Self {
        let beat = beat(score, line, stroke);
        Self {
            bar: bar_label(score, stroke.bar),
            bar_ordinal: stroke.bar + 1,
            beat: beat_exact(beat),
            spoken_beat: beat_said(beat),
            length: stroke.length.to_string(),
            seconds: stroke.duration.to_f64(),
            silence: stroke.silence_after.to_f64(),
            notes: stroke.note_count,
            kind: kind_name(stroke.kind),
            direction: direction_name(planned.direction),
            link: link_name(planned.link),
            start: planned.start,
            end: planned.end,
            printed: stroke.printed.map(direction_name),
            sure: None,
            open: false,
            cost: terms(&planned.cost),
        }
    }
}

impl TurnView {
    fn of(score: &Score, line: &Line, plan: &Plan, turn: &Turn, reach: BowReach) -> Self {
        let bar = |stroke: usize| {
            line.strokes.get(stroke).map_or_else(String::new, |stroke| bar_label(score, stroke.bar))
        };
        let road = line.repeats.get(turn.stretch).map_or(Road::RepeatSign, |stretch| stretch.road);
        let pass = second_pass(line, plan, turn, reach);
        Self {
            bar: bar(turn.to),
            from_bar: bar(turn.from),
            road: match (turn.leads, road) {
                (Leads::On, _) => "onward",
                (Leads::Back, Road::RepeatSign) => "repeat",
                (Leads::Back, Road::DaCapo) => "da capo",
                (Leads::Back, Road::DalSegno) => "dal segno",
            },
            link: link_name(turn.link),
            begins: plan.strokes.get(turn.to).map_or("", |first| direction_name(first.direction)),
            comes: pass.map(|pass| match pass.comes {
                Comes::ByItself => "by itself",
                Comes::Free => "free",
                Comes::Lifted => "lifted",
                Comes::Retaken => "retaken",
                Comes::Reversed => "reversed",
            }),
            time_to_lift: pass.map(|pass| pass.available.to_f64()),
            lift_takes: pass.map(|pass| pass.needed.to_f64()),
            weighed: match turn.weighed {
                Weighed::InSearch => "in search",
                Weighed::Afterwards => "afterwards",
            },
            cost: terms(&turn.cost),
        }
    }
}

impl AlternativeView {
    fn of(
        score: &Score,
        line: &Line,
        other: &Alternative,
        bars: &RangeInclusive<u32>,
        wording: &Wording,
    ) -> Self {
        let strokes: Vec<PlanStrokeView> = other
            .strokes
            .clone()
            .zip(&other.plan.strokes)
            .filter(|(index, _)| bars.contains(&line.strokes[*index].bar))
            .map(|(index, planned)| PlanStrokeView::of(score, line, &line.strokes[index], planned))
            .collect();
        let name = if other.differences.is_empty() {
            wording.say(&best_name(score, line, other, bars))
        } else {
            alternative_name(score, line, other, wording)
        };
        let (gains, losses) = gains_and_losses(&other.more, wording);
        Self {
            name,
            standing: other.standing.iter().map(|standing| standing_name(*standing)).collect(),
            more: other.more.total(),
            cost_change: terms(&other.more),
            gains,
            losses,
            directions: strokes.iter().map(|stroke| stroke.direction).collect(),
            strokes,
        }
    }
}

/// The best way, with the bow it begins on in the bars shown and what it does besides alternating.
fn best_name(score: &Score, line: &Line, best: &Alternative, bars: &RangeInclusive<u32>) -> Saying {
    let shown = best.strokes.clone().zip(&best.plan.strokes);
    let mut shown = shown.filter(|(index, _)| bars.contains(&line.strokes[*index].bar));
    let Some((_, first)) = shown.next() else { return best_called(best) };
    let begins = Saying::new("way-begins").choosing("bow", words::bow(first.direction));
    let links = shown.filter_map(|(index, planned)| {
        let key = match planned.link {
            Link::Hooked => "way-hook-at",
            Link::Retake => "way-retake-at",
            Link::Change | Link::Reset => return None,
        };
        Some(Saying::new(key).with("at", stroke_place(score, line, &line.strokes[index])).into())
    });
    let does = std::iter::once(begins.into()).chain(links).collect();
    Saying::new("way-best-does").with("best", best_called(best)).with("does", Argument::Row(does))
}

/// Where a stroke begins: `bar 8, beat 3`.
pub(crate) fn stroke_place(score: &Score, line: &Line, stroke: &Stroke) -> SaidPlace {
    repair_words::place(score, line.part, stroke.bar, stroke.offset)
}

/// An alternative in a player's words: what the arm does otherwise, in order.
#[must_use]
pub fn alternative_name(score: &Score, line: &Line, other: &Alternative, wording: &Wording) -> String {
    if other.differences.is_empty() {
        return wording.say(&best_called(other));
    }
    let said =
        other.differences.iter().map(|difference| difference_words(score, line, difference).into()).collect();
    let name = Saying::new("way-does").with("does", Argument::Row(said));
    let named = match standing_words(other) {
        None => name,
        Some(standing) => Saying::new("way-standing").with("standing", standing).with("name", name),
    };
    wording.say(&named)
}

/// The best way, with what it is where players ask for that first: `the best way (plain alternation)`.
fn best_called(best: &Alternative) -> Saying {
    match standing_words(best) {
        None => Saying::new("way-best"),
        Some(standing) => Saying::new("way-best-standing").with("standing", standing),
    }
}

/// What a way is that players ask for first; nothing where it is none of these.
fn standing_words(way: &Alternative) -> Option<Argument> {
    let said = way.standing.iter().map(|standing| {
        Saying::new(match standing {
            Standing::AsItComes => "standing-plain-alternation",
            Standing::OtherStart => "standing-other-bow-first",
            Standing::LastTwoHooked => "standing-last-two-hooked",
        })
        .into()
    });
    let said: Vec<Argument> = said.collect();
    (!said.is_empty()).then_some(Argument::Row(said))
}

/// A way that players ask for first, as data.
const fn standing_name(standing: Standing) -> &'static str {
    match standing {
        Standing::AsItComes => "as it comes",
        Standing::OtherStart => "other start",
        Standing::LastTwoHooked => "last two hooked",
    }
}

/// One thing that the arm does otherwise, in a player's words.
pub(crate) fn difference_words(score: &Score, line: &Line, difference: &Difference) -> Saying {
    let (key, direction) = match difference.kind {
        DifferenceKind::Start(direction) => ("way-start", direction),
        DifferenceKind::Hook(direction) => ("way-hook", direction),
        DifferenceKind::Retake(direction) => ("way-retake", direction),
        DifferenceKind::AsItComes(direction) => ("way-as-it-comes", direction),
    };
    let place = stroke_place(score, line, &line.strokes[difference.stroke]);
    Saying::new(key).choosing("bow", words::bow(direction)).with("at", place)
}
