//! One place, one finding: what several rules say of one note is told once, with the gravest first.

use std::collections::BTreeMap;

use crate::{Finding, FindingPlace, Reason};

/// Findings of all rules, in their order, with those of one place made one.
///
/// A finding joins the gravest of its part, bar and beat. One that has further places of its own joins only where the other
/// is found in all of them, too: otherwise it would be lost there. What is about the whole score stays by itself.
pub(crate) fn joined(findings: Vec<Finding>) -> Vec<Finding> {
    // By place, the finding that leads there; its index in the result.
    let mut leads: BTreeMap<(usize, String, u32, arcata_score::Length), Vec<usize>> = BTreeMap::new();
    let mut told: Vec<Finding> = Vec::with_capacity(findings.len());
    for finding in findings {
        let key = key(&finding.place);
        let here = key.as_ref().and_then(|key| leads.get(key)).into_iter().flatten();
        match here.copied().find(|lead| holds(&told[*lead], &finding)) {
            Some(lead) => take_in(&mut told[lead], finding),
            None => {
                if let Some(key) = key {
                    leads.entry(key).or_default().push(told.len());
                }
                told.push(finding);
            }
        }
    }
    told
}

fn key(place: &FindingPlace) -> Option<(usize, String, u32, arcata_score::Length)> {
    Some((place.part?, place.section.clone(), place.bar, place.beat))
}

/// Whether all places of a finding are places of the other one.
fn holds(lead: &Finding, finding: &Finding) -> bool {
    let places: Vec<_> = std::iter::once(&lead.place).chain(&lead.further).map(key).collect();
    finding.further.iter().all(|place| places.contains(&key(place)))
}

/// A finding as a reason of another one; the same proposal is made once.
fn take_in(lead: &mut Finding, finding: Finding) {
    let Finding { rule, severity, sentence, evidence, assumptions, proposals, .. } = finding;
    for proposal in proposals {
        if !lead.proposals.iter().any(|known| known.sentence == proposal.sentence) {
            lead.proposals.push(proposal);
        }
    }
    lead.reasons.push(Reason { rule, severity, sentence, evidence, assumptions });
}

#[cfg(test)]
mod tests {
    use arcata_languages::Saying;
    use arcata_score::Length;
    use arcata_testkit::Random;

    use super::*;
    use crate::{Grade, Proposal, ProposalKind, Severity};

    fn place(part: Option<usize>, bar: u32) -> FindingPlace {
        FindingPlace {
            bar,
            beat: Length::new(1, 1),
            part,
            section: part.map_or_else(String::new, |part| format!("part {part}")),
            bar_label: bar.to_string(),
            stroke: None,
            notes: Vec::new(),
            movement: None,
        }
    }

    fn finding(rule: &'static str, severity: Severity, places: Vec<FindingPlace>) -> Finding {
        let mut places = places.into_iter();
        let first = places.next().expect("a place");
        let further: Vec<FindingPlace> = places.collect();
        Finding {
            sentence: Saying::new("say-no-tempo"),
            count: u32::try_from(further.len()).expect("few") + 1,
            further,
            proposals: vec![Proposal::new(
                Grade::PlayersChoice,
                ProposalKind::Hook,
                Saying::new("offer-mark-out"),
            )],
            ..Finding::at(rule, severity, first)
        }
    }

    #[test]
    fn one_chord_is_told_once_and_its_remedy_too() {
        let one = finding("stop-held-too-long", Severity::B, vec![place(Some(0), 4)]);
        let other = finding("accent-at-tip", Severity::C, vec![place(Some(0), 4)]);
        let score = finding("no-tempo", Severity::B, vec![place(None, 4)]);
        let found = joined(vec![score.clone(), one, other]);
        assert_eq!(found.len(), 2, "{found:?}");
        assert_eq!(found[0], score);
        assert_eq!(found[1].rules().collect::<Vec<_>>(), ["stop-held-too-long", "accent-at-tip"]);
        assert_eq!(found[1].proposals.len(), 1);
    }

    #[test]
    fn a_finding_with_places_elsewhere_is_not_lost_there() {
        let one = finding("stop-held-too-long", Severity::B, vec![place(Some(0), 4)]);
        let many = finding("accent-at-tip", Severity::C, vec![place(Some(0), 4), place(Some(0), 9)]);
        assert_eq!(joined(vec![one, many.clone()]).len(), 2);
        let same = finding("beat-on-up-bow", Severity::C, vec![place(Some(0), 4), place(Some(0), 9)]);
        assert_eq!(joined(vec![many, same]).len(), 1);
    }

    /// Whatever is found: nothing is lost, nothing is told twice, the gravest leads, and joining again changes nothing.
    #[test]
    fn joining_loses_nothing() {
        const RULES: [&str; 4] = ["one", "two", "three", "four"];
        const SEVERITIES: [Severity; 4] = [Severity::A, Severity::B, Severity::C, Severity::D];
        let mut random = Random::new(5);
        for _ in 0..300 {
            let mut all: Vec<Finding> = (0..random.below(12))
                .map(|_| {
                    let part = [None, Some(0), Some(1)][random.below(3)];
                    let count = 1 + random.below(2);
                    let places: Vec<FindingPlace> = (0..count)
                        .map(|_| place(part, u32::try_from(random.below(3)).unwrap_or(0)))
                        .collect();
                    finding(RULES[random.below(4)], SEVERITIES[random.below(4)], places)
                })
                .collect();
            all.sort_by(|a, b| crate::findings::order(a).cmp(&crate::findings::order(b)));
            let told = joined(all.clone());
            let mut before: Vec<&str> = all.iter().map(|finding| finding.rule).collect();
            let mut after: Vec<&str> = told.iter().flat_map(Finding::rules).collect();
            before.sort_unstable();
            after.sort_unstable();
            assert_eq!(before, after);
            for finding in &told {
                assert!(finding.reasons.iter().all(|reason| reason.severity >= finding.severity));
            }
            // No two findings of one place alone are left beside each other.
            for (at, one) in told.iter().enumerate() {
                let twice = told[at + 1..].iter().any(|other| {
                    other.further.is_empty() && one.place == other.place && one.place.part.is_some()
                });
                assert!(!twice, "{told:?}");
            }
            assert_eq!(joined(told.clone()), told);
        }
    }
}
