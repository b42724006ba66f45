//! Who asks for one bow in a soft line gets a phrase that goes on from it, not a lift back to the others.

use arcata_score::BowDirection::{Down, Up};
use proptest::prelude::*;

use super::*;
use crate::plan::tests::any_line;
use crate::plan::{Leaning, Link, MarkReading, plan};
use crate::together::{agreements, plan_together};
use crate::{LineOptions, Profile, Term, all_lines};

/// A bar a bow in two lines of one rhythm, and a rest that frees the bow after eight bars.
const PHRASE: &str = "violin: p 1/1 A4 | (1/2 B4 C5) | (1/2 D5 C5) | 1/1 B4 | (1/2 A4 G4) | (1/2 F4 E4) | 1/1 D4 | \
                      bar-rest | bar-rest | 1/1 A4 | (1/2 B4 C5) | 1/1 D5\n\
                      viola: p 1/1 F4 | (1/2 G4 A4) | (1/2 B4 A4) | 1/1 G4 | (1/2 F4 E4) | (1/2 D4 C4) | 1/1 B3 | \
                      bar-rest | bar-rest | 1/1 F4 | (1/2 G4 A4) | 1/1 B4";

fn read() -> (Vec<Line>, crate::together::Together) {
    let xml = arcata_testkit::musicxml(PHRASE);
    let document = arcata_xml::Document::parse(xml.into_bytes(), &arcata_xml::Limits::default()).unwrap();
    let score = arcata_score::read(&document);
    let profile = Profile::default();
    let lines = all_lines(&score, &profile, &LineOptions::default());
    let alone: Vec<PlanSettings> = lines.iter().map(|line| profile.plan_settings(line.instrument)).collect();
    let agreed = agreements(&score, &lines, &alone[0].weights);
    let together = plan_together(&lines, &alone, &agreed);
    (lines, together)
}

// Common practice: a phrase of a bar a bow goes on in plain alternation from the bow that the leader names.
#[test]
fn a_phrase_turns_round_with_the_bow_that_is_asked_for() {
    let (lines, together) = read();
    let free = &together.plans[0];
    assert_eq!(free.strokes[2].direction, Down);
    let anchor = Anchor { stroke: 2, direction: Some(Up), link: None };
    let asked = PlanSettings { anchors: vec![anchor], ..together.settings[0].clone() };
    let yielding = giving_way(&lines[0], free, &asked);
    let found = settled(&lines[0], &yielding).plan;
    let links: Vec<Link> = found.strokes[1..7].iter().map(|stroke| stroke.link).collect();
    assert_eq!(links, [Link::Change; 6]);
    // Beyond the rest the line is with the others again.
    assert_eq!(found.strokes[7..], free.strokes[7..]);
    assert!(yielding.leanings.iter().any(|leaning| leaning.stroke >= 7));
    assert!(given_up(&asked, &yielding, &found.strokes).parts().any(|(term, _)| term == Term::Unity));
}

#[test]
fn what_the_plan_does_by_itself_changes_nothing() {
    let (lines, together) = read();
    let anchor = Anchor { stroke: 2, direction: Some(Down), link: None };
    let asked = PlanSettings { anchors: vec![anchor], ..together.settings[0].clone() };
    assert_eq!(giving_way(&lines[0], &together.plans[0], &asked).leanings, asked.leanings);
}

proptest! {
    #[test]
    fn beyond_the_free_joints_nothing_gives_way(
        line in any_line(24),
        wishes in prop::collection::vec((any::<bool>(), 0i64..3_000), 24),
        at in any::<prop::sample::Index>(),
        up in any::<bool>(),
    ) {
        let leanings: Vec<Leaning> = wishes.iter().take(line.strokes.len()).enumerate().map(|(stroke, (down, price))| {
            let wished = Wished::Goes(if *down { Down } else { Up });
            Leaning { stroke, wished, thousandths: *price, term: Term::Unity }
        }).collect();
        let settings = PlanSettings { leanings, marks: MarkReading::Hidden, ..PlanSettings::default() };
        let free = plan(&line, &settings);
        let stroke = at.index(line.strokes.len());
        let anchor = Anchor { stroke, direction: Some(if up { Up } else { Down }), link: None };
        let asked = PlanSettings { anchors: vec![anchor], ..settings.clone() };
        let yielding = giving_way(&line, &free, &asked);
        let around = independent(&line, &(stroke..stroke + 1));
        for leaning in &settings.leanings {
            prop_assert!(around.contains(&leaning.stroke) || yielding.leanings.contains(leaning));
        }
        let (now, pulled) = (plan(&line, &yielding), plan(&line, &asked));
        prop_assert_eq!(now.strokes[stroke].direction, anchor.direction.unwrap());
        // Seen with all leanings, the pulled plan is the cheapest; seen with those that are left, the other.
        let seen_whole = (now.total + given_up(&asked, &yielding, &now.strokes)).total();
        prop_assert!(seen_whole >= pulled.total.total());
    }
}
