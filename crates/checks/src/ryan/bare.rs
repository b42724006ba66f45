//! Ways of bowing without a planner.

use arcata_bow::MetricPlace;
use arcata_score::BowDirection;

use super::tunes::{Tune, TuneMark, TuneMarkPlace};

/// Down on every beat, up between beats and before a downbeat.
pub(super) fn place_in_the_bar(tune: &Tune) -> Vec<BowDirection> {
    let direction =
        |mark: &TuneMark| match (mark.place, tune.lines[mark.line].strokes[mark.stroke].emphasis.metric) {
            (TuneMarkPlace::Downbeat, _) => BowDirection::Down,
            (TuneMarkPlace::BeforeDownbeat, _) | (TuneMarkPlace::Elsewhere, MetricPlace::Offbeat) => {
                BowDirection::Up
            }
            (TuneMarkPlace::Elsewhere, _) => BowDirection::Down,
        };
    tune.marks.iter().map(direction).collect()
}

/// Alternation from the beginning of the tune to its end, begun so that the first downbeat is down.
pub(super) fn as_it_comes(tune: &Tune) -> Vec<BowDirection> {
    let marks = tune.marks.iter();
    marks.map(|mark| begun(tune, mark.line, mark.stroke)).collect()
}

/// The same, but a player who comes to a printed mark takes it, and alternates from there on.
pub(super) fn corrected(tune: &Tune) -> Vec<BowDirection> {
    let mut passed: Option<(usize, usize, BowDirection)> = None;
    let mut directions = Vec::with_capacity(tune.marks.len());
    for mark in &tune.marks {
        directions.push(match passed {
            Some((line, stroke, direction)) if line == mark.line => after(direction, mark.stroke - stroke),
            _ => begun(tune, mark.line, mark.stroke),
        });
        passed = Some((mark.line, mark.stroke, mark.direction));
    }
    directions
}

fn begun(tune: &Tune, line: usize, stroke: usize) -> BowDirection {
    let first_downbeat = tune.on_downbeat[line].iter().position(|on| *on).unwrap_or(0);
    after(BowDirection::Down, first_downbeat.abs_diff(stroke))
}

/// The direction this many strokes away from one in `direction`.
fn after(direction: BowDirection, strokes: usize) -> BowDirection {
    if strokes.is_multiple_of(2) { direction } else { direction.other() }
}
