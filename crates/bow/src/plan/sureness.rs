//! How sure a plan is of the direction of each stroke.
//!
//! The chance of a direction over all ways of bowing the line ([`Inverse`]) says how much dearer the other one is, not how
//! often players take it: prices are no chances. So it is read in a table of how often players did as planned.

use arcata_score::BowDirection;

use super::{Anchor, Inverse, MarkReading, Plan, PlanSettings};
use crate::{Line, StrokeKind};

/// Chance of the planned direction over all ways, ten-thousandths, and in how many of a hundred such strokes a player went
/// that way. Counted: 5,196 strokes of fifteen pieces as violinists took them on film, bowed in the style of concert music
/// (`cargo xtask played` prints how far off it is, also where each piece is told by what the others say).
const PLAYED: [(u32, u32); 7] =
    [(0, 50), (5_000, 62), (6_000, 73), (7_500, 76), (9_500, 88), (9_935, 96), (9_985, 99)];
/// Below this many in a hundred a stroke is open: two ways are nearly equal (rule of thumb).
const OPEN: u8 = 80;

/// How many players in a hundred would go as planned.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Sureness(pub u8);

impl Sureness {
    /// What is printed, or asked for.
    pub const CERTAIN: Self = Self(100);

    /// Whether two ways are nearly equal.
    #[must_use]
    pub const fn is_open(self) -> bool {
        self.0 < OPEN
    }
}

/// The strokes of a line for which two ways are nearly equal.
#[must_use]
pub fn open_strokes(sureness: &[Option<Sureness>]) -> Vec<usize> {
    let open = |stroke: &usize| sureness[*stroke].is_some_and(Sureness::is_open);
    (0..sureness.len()).filter(open).collect()
}

/// How sure a plan is of each direction. Strokes whose direction is printed or asked for are certain; of a tremolo, which
/// any bow begins, nothing is said. A repeated stretch is taken as played once.
///
/// Takes about two and a half times as long as planning the line (`cargo xtask bench`). Deterministic.
///
/// ```
/// use arcata_bow::plan::{Sureness, sureness};
/// use arcata_bow::{LineOptions, Profile, all_lines, plan};
///
/// let xml = arcata_testkit::musicxml("violin: f 1/4 C5!down D5 E5 F5 | 1/1 C5 |||");
/// let document = arcata_xml::Document::parse(xml.into_bytes(), &arcata_xml::Limits::default()).unwrap();
/// let score = arcata_score::read(&document);
/// let profile = Profile::default();
/// let lines = all_lines(&score, &profile, &LineOptions::default());
/// let settings = profile.plan_settings(lines[0].instrument);
/// let plan = plan(&lines[0], &settings);
/// let sure = sureness(&lines[0], &settings, &plan);
/// assert_eq!(sure[0], Some(Sureness::CERTAIN));
/// assert!(sure[4].is_some_and(|sure| !sure.is_open()));
/// ```
#[must_use]
pub fn sureness(line: &Line, settings: &PlanSettings, plan: &Plan) -> Vec<Option<Sureness>> {
    let known = known(line, settings);
    let chances = Inverse::new(line, settings, &[]).chances(&[], &known);
    let each = line.strokes.iter().zip(&plan.strokes).zip(known.iter().zip(&chances.down));
    each.map(|((stroke, planned), (known, down))| match known {
        _ if stroke.kind == StrokeKind::Tremolo => None,
        Some(_) => Some(Sureness::CERTAIN),
        None => {
            let chance = if planned.direction == BowDirection::Down { *down } else { 1.0 - down };
            Some(played(chance))
        }
    })
    .collect()
}

/// What is printed and holds, or is asked for.
fn known(line: &Line, settings: &PlanSettings) -> Vec<Option<BowDirection>> {
    let law = settings.marks == MarkReading::Law;
    let mut known: Vec<Option<BowDirection>> =
        line.strokes.iter().map(|stroke| stroke.printed.filter(|_| law)).collect();
    for Anchor { stroke, direction, .. } in &settings.anchors {
        if let Some(known) = known.get_mut(*stroke) {
            *known = direction.or(*known);
        }
    }
    known
}

/// The share of players for a chance, between the rows of the table in proportion.
fn played(chance: f64) -> Sureness {
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a chance is 0 to 1")]
    let chance = (chance.clamp(0.0, 1.0) * 10_000.0) as u32;
    let share = PLAYED.windows(2).find(|rows| chance < rows[1].0).map(|rows| {
        let ((from, low), (to, high)) = (rows[0], rows[1]);
        low + (high - low) * (chance - from) / (to - from)
    });
    Sureness(u8::try_from(share.unwrap_or(PLAYED[PLAYED.len() - 1].1)).unwrap_or(u8::MAX))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_greater_chance_is_no_less_sure() {
        assert!(PLAYED.is_sorted());
        let each: Vec<Sureness> = (0..=1000).map(|chance| played(f64::from(chance) / 1000.0)).collect();
        assert!(each.is_sorted());
        assert_eq!((each[0], each[1000]), (Sureness(50), Sureness(99)));
    }
}
