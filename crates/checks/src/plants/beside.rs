//! Faults in parts that are files of their own: the part is a copy of the score's, with one thing changed.

use arcata_bow::Profile;
use arcata_review::{Finding, ReviewSettings};
use arcata_score::Score;
use arcata_testkit::{Fixture, Random};
use arcata_xml::{Document, Limits};

use super::passage::{BARS, PlantPassage, Scale};
use super::{PLANTS, RuleFaults, TRIED};
use crate::reviewing::PlannedScore;

/// The rule that reads parts against the score.
const RULE: &str = "part-differs-from-score";
/// A bar as it stands in the score, and what a slip makes of it in the part: another note, rhythm, slur, mark, sign, word.
const PLAIN: &str = "(0/4 1/4) 2/4 3/4";
const SLIPS: &[&str] = &[
    "(0/4 1/4) 2/4 4/4",
    "(0/4 1/4) 2/2",
    "(0/4 1/4 2/4) 3/4",
    "0/4 1/4 2/4 3/4",
    "(0/4 1/4) 2/4!up 3/4",
    "(0/4 1/4) 2/4!. 3/4",
    "(0/4 1/4) \"pizz.\" 2/4 3/4",
];

/// Plants slips in parts, and counts those that are found in their bar.
pub(super) fn row(all: &[PlantPassage]) -> RuleFaults {
    let mut random = Random::new(PLANTS as u64);
    let mut row = RuleFaults { rule: RULE, planted: 0, found: 0, missed: None };
    for _ in 0..TRIED {
        if row.planted == PLANTS {
            break;
        }
        let mut clean = random.pick(all).clone();
        clean.tempo = Some(96);
        let part = random.below(clean.parts.len().max(1));
        let bar = random.below(BARS);
        let scale = Scale::on(clean.parts[part].instrument, &mut random);
        let Some(place) = clean.parts[part].bars.get_mut(bar) else { continue };
        *place = scale.figure(PLAIN);
        let mut slipped = clean.clone();
        slipped.parts[part].bars[bar] = scale.figure(random.pick::<&str>(SLIPS));
        let here = |finding: &Finding| {
            let mut places = std::iter::once(&finding.place).chain(&finding.further);
            places.any(|place| place.bar as usize == bar && place.part == Some(part))
        };
        let (Some(before), Some(after)) = (said(&clean, &clean, part), said(&clean, &slipped, part)) else {
            continue;
        };
        row.planted += 1;
        if before.is_empty() && after.iter().any(here) {
            row.found += 1;
        } else if row.missed.is_none() {
            row.missed = Some(slipped.text());
        }
    }
    row
}

/// What the review says of a passage beside one part of another; `None` where one of them cannot be written.
fn said(score: &PlantPassage, part_of: &PlantPassage, part: usize) -> Option<Vec<Finding>> {
    let whole = read(part_of)?;
    let alone = Score { parts: vec![whole.1.parts.get(part)?.clone()], ..whole.1 };
    let settings = ReviewSettings { only: [RULE.to_owned()].into(), ..ReviewSettings::default() };
    Some(PlannedScore::apart(read(score)?.0, &Profile::default()).ok()?.beside(alone).findings(&settings))
}

fn read(passage: &PlantPassage) -> Option<(Document, Score)> {
    let fixture = Fixture::parse(&passage.text()).ok()?;
    let document = Document::parse(fixture.musicxml().into_bytes(), &Limits::default()).ok()?;
    let score = arcata_score::read(&document);
    Some((document, score))
}
