//! Repeated stretches, from repeat signs and first endings.

use arcata_score::{EndingEdge, Moment, RepeatSign, Score};

use crate::timing::TempoMap;
use crate::{RepeatedStretch, Seconds, Stroke};

/// Bars that are played again.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Section {
    begin: Moment,
    /// Where the first ending begins; the end when there is none.
    first_ending: Moment,
    end: Moment,
}

/// The repeated stretches of a line. An end sign inside a second or later ending, da capo and dal segno
/// make none: what they send back to is already a stretch, or not yet understood.
pub(super) fn stretches(score: &Score, tempo: &TempoMap, strokes: &[Stroke]) -> Vec<RepeatedStretch> {
    let stretch = |section: &Section| stretch(section, tempo, strokes);
    sections(score).iter().filter_map(stretch).filter(|stretch| stretch.is_sound(strokes.len())).collect()
}

fn sections(score: &Score) -> Vec<Section> {
    let mut sections = Vec::new();
    let mut begin = Moment::START;
    let mut first_ending: Option<Moment> = None;
    let mut later_ending = false;
    for bar in &score.bars {
        if bar.left.repeat == Some(RepeatSign::Begin) {
            begin = bar.start;
            first_ending = None;
            later_ending = false;
        }
        if let Some(ending) = bar.left.ending.as_ref().filter(|ending| ending.edge == EndingEdge::Start) {
            later_ending = !ending.numbers.contains(&1);
            if !later_ending {
                first_ending = Some(bar.start);
            }
        }
        let end = bar.start + bar.length;
        if matches!(bar.right.repeat, Some(RepeatSign::End { .. })) && !later_ending {
            let first_ending = first_ending.filter(|at| *at > begin).unwrap_or(end);
            sections.push(Section { begin, first_ending, end });
            begin = end;
        }
        if later_ending && bar.right.ending.as_ref().is_some_and(|ending| ending.edge != EndingEdge::Start) {
            later_ending = false;
            first_ending = None;
            begin = end;
        }
    }
    sections
}

fn stretch(section: &Section, tempo: &TempoMap, strokes: &[Stroke]) -> Option<RepeatedStretch> {
    let from = |moment: Moment| strokes.partition_point(|stroke| stroke.onset < moment);
    let (first, body_end, end) = (from(section.begin), from(section.first_ending), from(section.end));
    let beginning = strokes.get(first)?;
    let silence_until = |stroke: usize, moment: Moment| {
        let end = strokes.get(stroke).map_or(moment, |stroke| stroke.onset + stroke.length);
        tempo.between(end.min(moment), moment).micros
    };
    let last = end.checked_sub(1)?;
    let lead_in = tempo.between(section.begin, beginning.onset.max(section.begin)).micros;
    let after_skip = strokes.get(end).map_or(0, |stroke| tempo.between(section.end, stroke.onset).micros);
    let skip = body_end.checked_sub(1).map_or(0, |body| silence_until(body, section.first_ending));
    Some(RepeatedStretch {
        first,
        body_end,
        first_ending_end: end,
        silence_at_turn: Seconds::from_micros(silence_until(last, section.end) + lead_in),
        silence_at_skip: Seconds::from_micros(skip + after_skip),
    })
}
