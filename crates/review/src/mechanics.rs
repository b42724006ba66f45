//! What a stroke needs and what the bow has, for sentences and thresholds.

use arcata_bow::{Join, Loudness, PlannedStroke, Stroke, StrokeKind};
use arcata_languages::{Argument, Saying};
use arcata_score::BowDirection;

use crate::Piece;

/// Names of the dynamic steps, 100 apart from `n` = 0.
const STEPS: [&str; 9] = ["niente", "ppp", "pp", "p", "mp", "mf", "f", "ff", "fff"];

/// The dynamic mark nearest to a loudness.
#[must_use]
pub fn dynamic_name(loudness: Loudness) -> &'static str {
    let step = (loudness.0 + 50).div_euclid(100).clamp(0, 8);
    STEPS[usize::try_from(step).unwrap_or(0)]
}

/// The dynamic of a stroke as a sentence has it: "at f", or "from ff to p" where it changes.
#[must_use]
pub fn dynamics_said(stroke: &Stroke) -> Saying {
    let (from, to) = (dynamic_name(stroke.level_start), dynamic_name(stroke.level_end));
    let key = if from == to { "dynamics-steady" } else { "dynamics-changing" };
    Saying::new(key).quoting("from", from).quoting("to", to)
}

/// The same beside other numbers: "f", or "from ff to p".
pub(crate) fn dynamics_shown(stroke: &Stroke) -> Argument {
    let (from, to) = (dynamic_name(stroke.level_start), dynamic_name(stroke.level_end));
    if from == to { Argument::Text(from.to_owned()) } else { dynamics_said(stroke).into() }
}

/// How long one bow lasts at the slowest speed of a stroke's dynamic, microseconds.
#[must_use]
pub fn longest_bow(stroke: &Stroke, hair: i64) -> i64 {
    bow_lasts(stroke.speed.slowest, hair)
}

/// How long the hair lasts at a speed (micrometres a second), microseconds.
#[must_use]
pub fn bow_lasts(speed: u32, hair: i64) -> i64 {
    hair.saturating_mul(1_000_000) / i64::from(speed.max(1))
}

/// A stroke's duration in thousandths of the longest bow at its dynamic.
#[must_use]
pub fn share_of_longest(stroke: &Stroke, hair: i64) -> i64 {
    stroke.duration.micros.saturating_mul(1000) / longest_bow(stroke, hair).max(1)
}

/// Whether a stroke that is merely stretched fades: the hand spends less bow than a mark would say, and it lasts.
#[must_use]
pub fn fades_out(stroke: &Stroke) -> bool {
    stroke.level_end.0 + 100 <= stroke.level_start.0
}

/// Travel at the preferred speed, thousandths of the hair; not limited to the bow.
#[must_use]
pub fn preferred_travel(stroke: &Stroke, hair: i64) -> i64 {
    let micrometres = i64::from(stroke.speed.preferred).saturating_mul(stroke.duration.micros) / 1_000_000;
    micrometres.saturating_mul(1000) / hair.max(1)
}

/// Planned travel, thousandths of the hair.
#[must_use]
pub fn planned_travel(planned: &PlannedStroke) -> i64 {
    (i64::from(planned.end) - i64::from(planned.start)).abs()
}

impl Piece<'_> {
    /// Whether a stroke goes up straight after another on the down-bow that has an accent as heavy: of a row of accents
    /// every second comes so, and nobody minds.
    pub(crate) fn follows_like_accent(&self, line: usize, index: usize, stroke: &Stroke) -> bool {
        let Some(before) = index.checked_sub(1) else { return false };
        let Some(strokes) = self.lines.get(line).map(|line| &line.strokes) else { return false };
        let planned = self.planned(line);
        let down = |at: usize| planned.get(at).is_some_and(|planned| planned.direction == BowDirection::Down);
        let accent = strokes.get(before).map_or(0, |before| before.emphasis.accent);
        stroke.join == Join::Continues && !down(index) && down(before) && accent >= stroke.emphasis.accent
    }

    /// Whether a stroke comes straight after a dotted upbeat, a note and one of a third of its length or less: everybody hooks
    /// that where the bow comes out wrong (common practice), and nobody has to be told.
    pub(crate) fn follows_dotted_upbeat(&self, line: usize, index: usize) -> bool {
        let Some(strokes) = self.lines.get(line).map(|line| &line.strokes) else { return false };
        let Some([long, short, stroke]) = index.checked_sub(2).and_then(|first| strokes.get(first..=index))
        else {
            return false;
        };
        let one_note = |stroke: &Stroke| matches!(stroke.kind, StrokeKind::Single | StrokeKind::Short);
        let joined = [short, stroke].iter().all(|stroke| stroke.join == Join::Continues);
        let free = [long, short].iter().all(|stroke| one_note(stroke) && stroke.printed.is_none());
        joined && free && short.length.scaled(3, 1) <= long.length
    }
}

/// Planned speed in micrometres a second over a travel in thousandths of the hair.
#[must_use]
pub fn speed_over(travel: i64, stroke: &Stroke, hair: i64) -> i64 {
    travel.saturating_mul(hair).saturating_mul(1000) / stroke.duration.micros.max(1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn dynamics_are_named_by_the_nearest_step() {
        assert_eq!(dynamic_name(Loudness(300)), "p");
        assert_eq!(dynamic_name(Loudness(549)), "mf");
        assert_eq!(dynamic_name(Loudness(900)), "fff");
        assert_eq!(dynamic_name(Loudness(-20)), "niente");
    }
}
